"""The Wicks tab: the maker's wicks by kind and size, and the place of each in its kind."""

from candlecalc.season.tables.burning import WICKS
from candlecalc.workbook.cells.columns import look
from candlecalc.workbook.cells.layout import OWN_ROW
from candlecalc.workbook.cells.references import Whole, written
from candlecalc.workbook.cells.table_tab import entry_tab
from candlecalc.workbook.tabs.registry import register

# Of one size the one that is typed first.
BEFORE = written(
    'SUMPRODUCT(({kinds}={kind})*({ready}<>"")*(({sizes}<{size})+({sizes}={size})*({rows}<{row})))+1',
    kinds=Whole("wicks", "kind"),
    ready=Whole("wicks", "ready"),
    sizes=Whole("wicks", "size"),
    rows=Whole("wicks", OWN_ROW),
    kind="kind",
    size="size",
    row=OWN_ROW,
)

TAB = entry_tab(WICKS, {"place": look("Place in its kind, smallest first", BEFORE, "row")})
register(TAB, __name__, 10, records=True)
