"""The Melts timed tab: the maker's own melts with a clock, and what of the heat got into the wax."""

from candlecalc.season.tables.burning import MELTS
from candlecalc.workbook.cells.checks import Check
from candlecalc.workbook.cells.columns import calculated, look, result
from candlecalc.workbook.cells.references import Expression, at, blank, row_in, step_by_step, written
from candlecalc.workbook.cells.table_tab import entry_tab, not_ready_there
from candlecalc.workbook.tabs.registry import register

WAX_ROW = row_in("materials", "wax", ready=False)


def _of_wax(key: str) -> Expression:
    return at("materials", key, WAX_ROW)


# Newton's law holds between the two readings alone.
READ = ("ready", "first", "second", "apart", "room", _of_wax("add_at"), _of_wax("pour_at"), _of_wax("melt_high"))
BEYOND = written(
    "({first}<{hot})+({second}>{cool})+({second}<{melted})>0",
    first="first",
    second="second",
    hot=_of_wax("add_at"),
    cool=_of_wax("pour_at"),
    melted=_of_wax("melt_high"),
)
HEAT = calculated("heat_for_wax", wax="weight", start="began", end="ended", melting=_of_wax("melt_high"))


def _cooled_to(key: str) -> Expression:
    """Minutes from the first reading until the pot had come down to a temperature of its wax."""
    readings = {"first": "first", "second": "second", "minutes": "apart", "room": "room"}
    time = calculated("cooling_time", **readings, melting=_of_wax("melt_high"), temperature=_of_wax(key))
    return step_by_step([*(blank(given) for given in READ), BEYOND], time)


TAB = entry_tab(
    MELTS,
    {
        "heat": look("Heat into the wax, kJ", step_by_step([blank("ready"), blank(_of_wax("melt_high"))], HEAT), "quantity"),
        "efficiency": result("Heat that got into it, of the heater's", "heater_efficiency", heat="heat", power="power", minutes="minutes", needs=("heat",)),
        "to_oil": look("From the first reading to oil, minutes", _cooled_to("add_at"), "minutes"),
        "to_pour": look("From the first reading to pouring, minutes", _cooled_to("pour_at"), "minutes"),
        "cooling": look("From oil to pouring, minutes", written("{pour}-{oil}", pour="to_pour", oil="to_oil"), "minutes", needs=("to_pour",)),
        "wax_row": look("Wax, row", WAX_ROW, "row"),
        # A number in every row: a blank would stop a look through all of them.
        "cooling_number": look("The same, or 0", written("N({cooling})", cooling="cooling"), "minutes", needs=()),
    },
    checks=(
        Check("ended>began", "no warmer after the heating", "the end is warmer than the start", "ended"),
        Check('(first=0)+(first>second)>0', "not cooled", "the first reading is the warmer one", "second"),
        Check("(first=0)+(second>room)>0", "colder than the room", "both readings are above the room", "room"),
    ),
    waits={"wax": not_ready_there("materials", "wax")},
)  # fmt: skip
register(TAB, __name__, 30, records=True)
