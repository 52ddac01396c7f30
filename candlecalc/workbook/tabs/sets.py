"""The Sets tab: which candles a set holds, and what they bring into its cost."""

from candlecalc.season.tables import SETS
from candlecalc.workbook.columns import READY, Result, at, look, place_of, result, running
from candlecalc.workbook.table_tab import entry_tab


def _brings(head: str, part: str) -> Result:
    return result(f"{head}, {{money}}", "cost_of_all", cost=at("parts", part, "row"), count="count")


TAB = entry_tab(
    SETS,
    {
        "row": look("Candle, row", place_of("recipes", "product"), "row", when=READY, width=8),
        "key": look("Line of the set", running("set"), width=36),
        "wax": _brings("Wax", "wax"),
        "oils": _brings("Oils", "oils"),
        "other": _brings("Vessel and other parts", "other"),
        "paid": _brings("Paid work", "paid"),
        "overhead": _brings("Production overhead", "overhead"),
        "own": _brings("Own time", "own"),
        "running": _brings("Running costs", "running"),
    },
    # A line half typed must not leave its set too cheap: with a set's name it is begun, and an error.
    required=("set",),
)
