"""What a season's workbook shows at the terminal: costs, prices and a batch, as records."""

from typing import Any

from openpyxl.cell.cell import ERROR_CODES

from candlecalc.season.season import Row, Season
from candlecalc.season.tables import TABLES
from candlecalc.season.tables.set_up import RECIPES
from candlecalc.workbook.cells.table_tab import TableTab
from candlecalc.workbook.reading.opening import cell_at
from candlecalc.workbook.reports.report import Calculated, Finding
from candlecalc.workbook.tabs.make import batch
from candlecalc.workbook.tabs.registry import registered
from candlecalc.workbook.tabs.set_up import settings
from candlecalc.workbook.tabs.stock import trace
from candlecalc.workbook.tabs.working.made_of import COUNTED, WEIGHED
from candlecalc.workbook.writing.writer import format_of

Record = dict[str, Any]

NOT_KNOWN = "#N/A"  # for what a cell cannot say, whatever error stands in it


def of_list(calculated: Calculated, word: str, product: str = "") -> list[Record]:
    """What the list that answers to a word shows of each product, or of one."""
    season, (tab, columns) = calculated.season, _list(calculated, word)
    if "product" in tab.columns and not tab.counted:
        return _records(calculated, tab.key, columns, _rows(season, tab.typed_on, product))
    if product and "product" not in tab.columns:
        raise ValueError(
            "--product goes with costs, prices, pours, candles, season, plan and batch; "
            f"{tab.title} is no list of products"
        )
    if tab.counted or tab.kind == "working":
        rows = range(calculated.plan.layouts[tab.key].rows)
        records = _records(calculated, tab.key, columns, list(rows))
        asked = {"Product": known(season, product)} if product else {}
        return [
            record
            for record in records
            if any(value is not None for value in record.values()) and asked.items() <= record.items()
        ]
    return _records(calculated, tab.key, columns, [at for at, _ in season.rows(tab.typed_on)])


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
    poured = _recipe(calculated.season, product)["kind"] != "set"
    lines = []
    for row in range(batch.WEIGH + 1, batch.DO):
        what, amount = _told(cell_at(card, row, 1)), _told(cell_at(card, row, 2))
        # A part whose name is not told either is one that the recipe may not have.
        what = named.get(row) if what == NOT_KNOWN else what
        if what and (amount == NOT_KNOWN or isinstance(amount, (int, float))):
            weighed = poured and row < batch.COUNTING
            unit = calculated.season.measures.weight_unit if weighed else "each"
            short_by = _told(cell_at(card, row, 8 if weighed else 4))
            lines.append({"what": what, "for all": amount, "unit": unit, "short by": short_by})
    return lines


ASSUMED = (
    "Batches for which the lot was noted come first. Where no lot was noted it is assumed, from the lot before on: "
    "any of those batches may hold it, and none is cleared by this list."
)


def lot_picked(season: Season, lot: str, material: str) -> Record:
    """A lot that was bought, as Trace is set to it: its material is named where several have that lot."""
    bought = [row for _, row in season.rows("purchases")] if season.records else []
    having = [str(row["material"]) for row in bought if str(row["lot"] or "").casefold() == lot.casefold()]
    materials = {name.casefold(): name for name in having}
    if not having:
        raise ValueError(f'"{lot}" is not among the lots on Purchases')
    if material and material.casefold() not in materials:
        raise ValueError(f'Purchases has no lot "{lot}" of "{material}"; of {", ".join(materials.values())} it has')
    if not material and len(materials) > 1:
        raise ValueError(f'lot "{lot}" is of {" and of ".join(materials.values())}: say which with --material')
    return {"trace_material": materials[material.casefold()] if material else having[0], "trace_lot": lot}


def lots_of(calculated: Calculated, batch: int) -> list[Record]:
    """What went into a batch, with its lots."""
    if not calculated.season.records or not any(row["batch"] == batch for _, row in calculated.season.rows("pours")):
        raise ValueError(f"there is no batch {batch} on the Batch log")
    return _section(calculated, trace.PARTS, trace.PART_LINES, trace.PART_HEADS)


def batches_of(calculated: Calculated) -> list[Record]:
    """Where the lot went to which Trace is set: the batches it was noted for, then what went from the lot before on."""
    noted = _section(calculated, trace.NOTED, trace.NOTED_LINES, trace.NOTED_HEADS)
    went = _section(calculated, trace.WENT, trace.WENT_LINES, trace.WENT_HEADS)
    heads = dict.fromkeys(calculated.plan.head(each) for each in trace.WENT_HEADS)
    first = [
        heads
        | {trace.WENT_HEADS[0]: each["Product"], "Batch number": each["Batch number"], "Date": each["Poured on"]}
        | {"How it is known": "noted", trace.WENT_HEADS[5]: "this lot"}
        for each in noted
    ]
    listed = {each["Batch number"] for each in first}
    return first + [each for each in went if each["Batch number"] is None or each["Batch number"] not in listed]


def _section(calculated: Calculated, head: int, lines: int, heads: tuple[str, ...]) -> list[Record]:
    """The lines of a section of Trace that hold something, by its heads."""
    found = []
    for row in range(head + 1, head + lines + 1):
        values = [_told(calculated.cell(trace.TAB.title, row, column)) for column in range(1, len(heads) + 1)]
        if any(value is not None for value in values):
            named = zip(heads, values, strict=True)
            found.append({calculated.plan.head(name): value for name, value in named if name})
    return found


def _records(calculated: Calculated, table: str, keys: list[str], rows: list[int]) -> list[Record]:
    return [{head: _told(value) for head, value in row.items()} for row in calculated.columns(table, keys, rows)]


def _told(value: Any) -> Any:
    return NOT_KNOWN if value in ERROR_CODES else None if value == "" else value


def _recipe(season: Season, product: str) -> Row:
    return next(row for _, row in season.rows("recipes") if row["product"] == product)


def _parts(season: Season, product: str) -> dict[int, str]:
    """The names of a product's parts by their rows on Batch."""
    recipe = _recipe(season, product)
    bought = {row["vessel"]: row["bought_as"] or row["vessel"] for _, row in season.rows("vessels")}
    starts = ((batch.WEIGH, WEIGHED), (batch.COUNTING, COUNTED))
    rows = {part: row for start, parts in starts for row, part in enumerate(parts, start=start + 1)}
    named = {part: recipe["wax" if part == "wax_first" else part] for part in rows}
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
    return places.union(*(_behind(season, key, name) for key in ("extras", "sets") if table == RECIPES.key))


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
