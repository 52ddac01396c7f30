"""The Pour day steps tab: how much each product of the evening melts, how long its pots take, and what it uses.

Times are the maker's own: what their heater gave to the wax, and what their pots took from oil to pouring.
"""

from candlecalc.season.tables.burning import POUR_DAY
from candlecalc.workbook.cells.columns import calculated, look, result
from candlecalc.workbook.cells.references import (
    Above,
    Carry,
    Expression,
    Named,
    Results,
    Whole,
    at,
    blank,
    row_in,
    step_by_step,
    sum_where,
    written,
)
from candlecalc.workbook.cells.table_tab import result_tab
from candlecalc.workbook.tabs.registry import register
from candlecalc.workbook.tabs.working.made_of import HEADS, PARTS

KEY = "pour_steps"
EFFICIENCIES = Results("melts", "efficiency")


def _of_wax(key: str) -> Expression:
    return at("materials", key, "wax_row")


def _heating(efficiency: str) -> Expression:
    """Minutes for a pot by the maker's own melts: at their mean power, and their mean or worst efficiency."""
    return calculated(
        "melt_time",
        heat="heat",
        power=written("AVERAGE({powers})", powers=Whole("melts", "power")),
        efficiency=written(f"{efficiency}({{all}})", all=EFFICIENCIES),
    )


# What pots of this wax took to cool from oil to pouring: on average, and at the longest.
COOLED = written(
    'COUNTIFS({waxes},{wax},{times},">"&0)', waxes=Whole("melts", "wax_row"), wax="wax_row", times=Whole("melts", "cooling_number")
)  # fmt: skip
COOLING = written("{sum}/{count}", sum=sum_where("melts", "cooling_number", wax_row="wax_row"), count=COOLED)
LONGEST_COOLING = written(
    "SUMPRODUCT(LARGE(({waxes}={wax})*{times},1))",
    waxes=Results("melts", "wax_row"),
    wax="wax_row",
    times=Results("melts", "cooling_number"),
)
NOT_COOLED = written("{count}=0", count=COOLED)
NO_MELTS = written("COUNT({all})=0", all=EFFICIENCIES)
HEATED = ("ready", "wax_row", _of_wax("add_at"), _of_wax("melt_high"))


def _free(key: str, heating: str) -> Expression:
    """Minutes after the beginning at which the melter is free again, down the list."""
    return written(
        'IF({ready}="",{above},{above}+{pots}*{heating})', ready="ready", above=Above(key), pots="pots", heating=heating
    )


HEAT = calculated(
    "heat_for_wax",
    wax="pot",
    start=written("AVERAGE({all})", all=Whole("melts", "began")),
    end=_of_wax("add_at"),
    melting=_of_wax("melt_high"),
)


def _taken(part: str) -> Expression:
    """What the product takes of a part; blank where it has no such part."""
    each = at("amounts", part, "row")
    return step_by_step([blank("ready"), blank(each)], calculated("pieces_for", each=each, count=COUNT))


COUNT = Carry(POUR_DAY.key, "count")
TAB = result_tab(
    "Pour day steps",
    "working",
    "How long each product of the evening takes, by your own melts, and what it uses.",
    KEY,
    POUR_DAY,
    {
        "row": look("Row of the recipe", row_in("recipes", Carry(POUR_DAY.key, "product")), "row"),
        "wax_row": look("Wax that melts, row", at("workings", "wax_row", "row"), "row"),
        "melt": result("Wax and oil in all, {weight}", "cost_of_all", cost=at("amounts", "melt", "row"), count=COUNT, format="weight"),
        "pots": result("Pots", "pots_needed", melt="melt", pot=Named("largest_pot")),
        "pot": result("holding, {weight}", "equal_pot", melt="melt", pots="pots", format="weight"),
        "heat": look("Heat for a pot, kJ", step_by_step([*(blank(given) for given in HEATED), NO_MELTS], HEAT), "quantity"),
        "heating": look("Melting a pot, minutes", _heating("AVERAGE"), "minutes", needs=("ready", "heat")),
        "heating_late": look("Melting at the longest, minutes", _heating("MIN"), "minutes", needs=("ready", "heat")),
        "cooling": look("Cooling from oil to pouring, minutes", COOLING, "minutes", needs=("ready", "wax_row"), blank_if=(NOT_COOLED,)),
        "cooling_late": look("Cooling at the longest, minutes", LONGEST_COOLING, "minutes", needs=("ready", "wax_row"), blank_if=(NOT_COOLED,)),
        "free": look("Melter free, minutes after you begin", _free("free", "heating"), "minutes", needs=()),
        "free_late": look("Melter free at the latest, minutes", _free("free_late", "heating_late"), "minutes", needs=()),
        **{f"{part}_at": look(f"{HEADS[part]}, row", at("workings", there, "row"), "row") for part, there in PARTS.items()},
        **{part: look(f"{HEADS[part]}, {{weight}} or each", _taken(part), "quantity") for part in PARTS},
    },
)  # fmt: skip

register(TAB, __name__, 50, records=True)
