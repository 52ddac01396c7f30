"""What a season's workbook shows at the terminal: costs, prices and a batch, as records."""

from typing import Any

from openpyxl.cell.cell import ERROR_CODES

from candlecalc.season.season import Season
from candlecalc.season.tables import TABLES
from candlecalc.season.tables.set_up import RECIPES
from candlecalc.workbook.cells.table_tab import TableTab
from candlecalc.workbook.reading.opening import cell_at
from candlecalc.workbook.reports.report import Calculated, Finding
from candlecalc.workbook.tabs.make import batch
from candlecalc.workbook.tabs.make.batch.parts import NAMED
from candlecalc.workbook.tabs.registry import registered
from candlecalc.workbook.tabs.set_up import settings
from candlecalc.workbook.tabs.working.amounts import COUNTED, WEIGHED
from candlecalc.workbook.writing.writer import format_of

Record = dict[str, Any]

NOT_KNOWN = "#N/A"  # for what a cell cannot say, whatever error stands in it


def of_list(calculated: Calculated, word: str, product: str = "") -> list[Record]:
    """What the list that answers to a word shows of each product, or of one."""
    season, (tab, columns) = calculated.season, _list(calculated, word)
    if "product" in TABLES[tab.typed_on].keys and not tab.counted:
        return _records(calculated, tab.key, columns, _rows(season, tab.typed_on, product))
    if product:
        raise ValueError(
            f"--product goes with costs, prices, pours, candles and batch; {tab.title} is a list of materials"
        )
    # A tab with lines of its own has some for each row of a log, or none.
    own = range(calculated.plan.layouts[tab.key].rows) if tab.counted else (at for at, _ in season.rows(tab.typed_on))
    records = _records(calculated, tab.key, columns, list(own))
    return [record for record in records if any(value is not None for value in record.values())]


def formats(calculated: Calculated, word: str) -> dict[str, str]:
    """The number formats of what a list shows, by head."""
    tab, columns = _list(calculated, word)
    return {calculated.plan.head(tab.columns[key].head): format_of(tab.columns[key]) for key in columns}


def _list(calculated: Calculated, word: str) -> tuple[TableTab, list[str]]:
    """The list that answers to a word, and the columns that are shown of it."""
    for each in registered(calculated.season.records):
        if each.shown and each.shown.word == word and isinstance(each.tab, TableTab):
            return each.tab, list(each.shown.columns)
    raise ValueError(
        f"{word} is in a workbook with the year's records; make one of this with `candlecalc new NEW.xlsx --from THIS "
        "--records`"
    )


def bench(calculated: Calculated, product: str) -> list[Record]:
    """What to weigh and count for a batch, as on Batch, which was set to the product."""
    card, named = calculated.tab(batch.TAB.title), _parts(calculated.season, product)
    lines = []
    for row in range(batch.WEIGH + 1, batch.DO):
        what, amount = _told(cell_at(card, row, 1)), _told(cell_at(card, row, 2))
        # A part whose name is not told either is one that the recipe may not have.
        what = named.get(row) if what == NOT_KNOWN else what
        if what and (amount == NOT_KNOWN or isinstance(amount, (int, float))):
            weighed = row < batch.COUNTING
            unit = calculated.season.measures.weight_unit if weighed else "each"
            short_by = _told(cell_at(card, row, 8 if weighed else 4))
            lines.append({"what": what, "for all": amount, "unit": unit, "short by": short_by})
    return lines


def _records(calculated: Calculated, table: str, keys: list[str], rows: list[int]) -> list[Record]:
    return [{head: _told(value) for head, value in row.items()} for row in calculated.columns(table, keys, rows)]


def _told(value: Any) -> Any:
    return NOT_KNOWN if value in ERROR_CODES else None if value == "" else value


def _parts(season: Season, product: str) -> dict[int, str]:
    """The names of a product's parts by their rows on Batch."""
    recipe = next(row for _, row in season.rows("recipes") if row["product"] == product)
    bought = {row["vessel"]: row["bought_as"] or row["vessel"] for _, row in season.rows("vessels")}
    starts = ((batch.WEIGH, WEIGHED), (batch.COUNTING, COUNTED))
    rows = {part: row for start, parts in starts for row, part in enumerate(parts, start=start + 1)}
    named = {part: recipe[NAMED.get(part, part)] for part in rows}
    named["vessel"] = bought.get(named["vessel"], named["vessel"])
    return {row: str(named[part]) for part, row in rows.items() if named[part]}


def concerning(season: Season, product: str, found: list[Finding]) -> list[Finding]:
    """The findings that a product's batch rests on: its own, those of all it is made of, and the settings'."""
    behind = _behind(season, "recipes", product)
    return [each for each in found if each.tab == settings.TAB.title or (each.tab, each.row) in behind]


def _behind(season: Season, table: str, name: str) -> set[tuple[str, int]]:
    """Tab and row within its table of a name, and of all that it is made of."""
    first = TABLES[table].fields[0].key
    places = set()
    for place, row in season.rows(table):
        if str(row[first]).casefold() == name.casefold():
            places.add((TABLES[table].title, place))
            for field in TABLES[table].fields if table != "materials" else ():
                if field.names_from and row[field.key] and field.key != first:
                    places |= _behind(season, field.names_from, str(row[field.key]))
    return places | (_behind(season, "sets", name) if table == RECIPES.key else set())


def _rows(season: Season, table: str, product: str) -> list[int]:
    """The rows of one product, or of all where none is named."""
    name = known(season, product).casefold()
    rows = [at for at, row in season.rows(table) if not product or str(row["product"]).casefold() == name]
    if not rows:
        whose = f' for "{known(season, product)}"' if product else ""
        raise ValueError(f"{TABLES[table].title} holds no line{whose} yet")
    return rows


def known(season: Season, product: str) -> str:
    """A product's name as Recipes has it, however it is written; the first where none is named."""
    names = {name.casefold(): name for name in season.names("recipes")}
    if not names:
        raise ValueError("Recipes holds no product yet: type what you sell there")
    if product and product.casefold() not in names:
        raise ValueError(f'"{product}" is not on Recipes; there are {", ".join(names.values())}')
    return names[product.casefold()] if product else next(iter(names.values()))
