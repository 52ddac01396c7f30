"""The Our texts tab: statements that a label may carry, as we have them, and how each was read."""

from collections.abc import Mapping

from candlecalc.season.tables.labels import LABELS
from candlecalc.season.texts import ours
from candlecalc.workbook.cells.layout import Layout
from candlecalc.workbook.cells.table_tab import layout_of_tab
from candlecalc.workbook.cells.values_tab import value, values_tab
from candlecalc.workbook.tabs.registry import register

TAB = values_tab(
    "Our texts",
    "Statements for labels as we have them, in English, those on hazards in some other languages too, and how each was read: none is confirmed until you confirm it.",
    "our_texts",
    LABELS,
    {
        "code": value("Code or topic", width=40),
        "text": value("Our words", width=90),
        "how_read": value("How it was read", width=18),
    },
    lambda _: ours(),
)


def layout(rows_of: Mapping[str, int]) -> Layout:
    """As many rows as there are texts, however many a maker types."""
    return layout_of_tab(TAB, len(ours()))


register(TAB, __name__, 56, layout=layout, records=True)
