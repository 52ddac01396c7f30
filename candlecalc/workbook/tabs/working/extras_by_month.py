"""The Extras by month tab: what each line of Extra parts takes for what Plan makes until the end of each month."""

from candlecalc.season.tables.set_up import EXTRAS
from candlecalc.workbook.cells.columns import Column, calculated, look
from candlecalc.workbook.cells.references import Carry, Results, Same, written
from candlecalc.workbook.cells.table_tab import lines_tab
from candlecalc.workbook.tabs.registry import register
from candlecalc.workbook.tabs.working.made_by_month import KEY as MADE
from candlecalc.workbook.tabs.working.made_by_month import MONTHS, UNTIL

KEY = "extras_by_month"
READY = Same("extras", "ready")


def _until(nth: int, key: str) -> Column:
    made = written(
        "SUMIFS({made},{products},{product})",
        made=Results(MADE, key),
        products=Results("recipes_by_day", "first"),
        product=Same("extras", "first"),
    )
    taken = calculated("pieces_for", each=Carry("extras", "count"), count=made)
    head = "Taken in the whole plan" if nth == MONTHS else f"Taken until the end of month {nth}"
    return look(head, taken, "quantity", needs=(READY,))


TAB = lines_tab(
    "Extras by month",
    "working",
    "What each line of Extra parts takes for what Plan makes until the end of each month.",
    KEY,
    EXTRAS,
    {key: _until(nth, key) for nth, key in enumerate(UNTIL, start=1)},
)

register(TAB, __name__, 65, records=True)
