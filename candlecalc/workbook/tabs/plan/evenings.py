"""The Evenings tab: on which days the maker pours, and how many pots."""

from candlecalc.season.tables.plan import EVENINGS, WEEKDAYS
from candlecalc.workbook.cells.checks import Check
from candlecalc.workbook.cells.columns import look
from candlecalc.workbook.cells.references import joined, written
from candlecalc.workbook.cells.table_tab import entry_tab
from candlecalc.workbook.tabs.registry import register

# By comparison, and not by what a program calls the days.
NUMBER = joined(
    "+", [written(f'{nth}*({{weekday}}="{day}")', weekday="weekday") for nth, day in enumerate(WEEKDAYS, 1)]
)

TAB = entry_tab(
    EVENINGS,
    {"weekday_number": look("Day of the week, a number", NUMBER, "row", needs=("ready", "weekday"), width=8)},
    checks=(
        Check('(weekday="")+(date="")=1', "a day of the week or a single day", "type one of the two in a row", "weekday"),
    ),
)  # fmt: skip

register(TAB, __name__, 20, records=True)
