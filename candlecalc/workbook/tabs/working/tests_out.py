"""The Tests taken out tab: what each line of Taken out that was a test cost, beside its line there."""

from candlecalc.season.tables.stock import MOVES
from candlecalc.workbook.cells.columns import look
from candlecalc.workbook.cells.layout import OWN_ROW
from candlecalc.workbook.cells.references import Carry, Expression, Same, Whole, blank, joined, step_by_step, written
from candlecalc.workbook.cells.table_tab import lines_tab
from candlecalc.workbook.tabs.registry import register
from candlecalc.workbook.tabs.stock import used
from candlecalc.workbook.tabs.working import candles_out

KEY, KIND = "tests_out", "test"
# Where the lines of Taken out are listed with their cost, and what they are called there.
LISTED = {used.TAB.key: used.FROM_MOVES, candles_out.TAB.key: candles_out.FROM_MOVES}


def _listed(text: str, table: str) -> Expression:
    """Of the lines that follow from this one their costs, `{cost}`, by the test which they are, `{these}`."""
    these = written(
        f"{{what}},{LISTED[table]},{{sources}},{{row}}",
        what=Whole(table, "what"),
        sources=Whole(table, "source"),
        row=OWN_ROW,
    )
    return written(text, cost=Whole(table, "cost"), these=these)


COUNTED = joined("+", [_listed('COUNTIFS({these},{cost},">"&-1)', table) for table in LISTED])
COST = joined("+", [_listed("SUMIFS({cost},{these})", table) for table in LISTED])
# A material has a line, a candle as many as it brings along. A line whose cost is not known is no test for nothing.
LINES = written('IF({product}="",1,{lines})', product=Carry(MOVES.key, "product"), lines=Same(MOVES.key, "lines"))
NO_TEST = written(f'{{kind}}<>"{KIND}"', kind=Carry(MOVES.key, "kind"))

TAB = lines_tab(
    "Tests taken out",
    "working",
    "What candles and materials that were taken out for tests cost, beside each line of Taken out.",
    KEY,
    MOVES,
    {
        "cost": look(
            "Cost, {money}",
            step_by_step(
                [blank(Same(MOVES.key, "ready")), NO_TEST],
                written("IF({counted}={lines},{cost},NA())", counted=COUNTED, lines=LINES, cost=COST),
            ),
            "money",
            needs=(),
        ),
    },
)  # fmt: skip

register(TAB, __name__, 52, records=True)
