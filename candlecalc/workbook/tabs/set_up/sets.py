"""The Sets tab: which candles a set holds, and what they bring into its cost."""

from candlecalc.season.tables.set_up import SETS
from candlecalc.workbook.cells.columns import READY, Column, look, result, total
from candlecalc.workbook.cells.references import Names, Whole, at, constant, if_records, row_in, running, written
from candlecalc.workbook.cells.table_tab import entry_tab, no_number, words_column
from candlecalc.workbook.tabs.registry import register
from candlecalc.workbook.tabs.working.parts import PIECES, piece


def _brings(key: str) -> Column:
    return result(piece(key), "cost_of_all", cost=at("parts", key, "row"), count="count")


CANDLES_LOAD = written('IFERROR(INDEX({said},{row})&"","")', said=Whole("workings", "loads"), row="row")

PACKED = written("MAX(0,{sets})*{count}", sets=at("candles", "left", written("MATCH({set},{names},0)", set="set", names=Names("recipes", ready=False))), count="count")  # fmt: skip
OWN_TIME = written("{minutes}*{count}", minutes=at("parts", "own_minutes", "row"), count="count")

TAB = entry_tab(
    SETS,
    {
        "row": look("Candle, row", row_in("recipes", "product"), "row", needs=READY, width=8),
        # By itself, ready or not: a line half typed must not leave its set too cheap.
        "set_row": look("Set, row", row_in("recipes", "set"), "row", needs=("set",), width=7),
        "key": look("Line of the set", running("set_row"), width=9),
        **{key: _brings(key) for key in PIECES},
        "product_row": look(
            "Candle, first row", row_in("recipes", "product", ready=False), "row", needs=("product",), width=8
        ),
        "packed": look("In packed sets", if_records(PACKED, constant(0)), "pieces"),
        "brought": total("All of it, {money}", *PIECES),
        "own_minutes": look("Own time, minutes", OWN_TIME, "minutes"),
    },
    waits={"product": no_number("brought")},
    also={"loads": words_column("Load of the candle, from Workings", CANDLES_LOAD)},
    # With a set's name a line is begun, and an error until it is whole.
    required=("set",),
)  # fmt: skip
register(TAB, __name__, 60)
