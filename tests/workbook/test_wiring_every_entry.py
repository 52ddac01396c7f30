"""Each typed entry of the demo, moved in turn, moves exactly what uses it.

Every cell of every field that the tables declare is changed to another value that it takes, the workbook is
calculated anew, and the cells that moved are compared with `who_moves.py`, which says in a maker's words who must.
"""

from dataclasses import replace

import books
import engine
import naming
import pytest
from other_values import fits, others
from shop import Entry, Shop
from who_moves import TABLE, expected
from wrong_wires import Fault, fail_if_any

from candlecalc.season.fields import Field
from candlecalc.season.tables import tables_of
from candlecalc.season.tables.once import SETTINGS, WHAT_IF
from candlecalc.workbook.book import TABLE_TABS, lists
from candlecalc.workbook.cells.columns import Column, calculated
from candlecalc.workbook.cells.layout import OWN_ROW
from candlecalc.workbook.cells.references import Named, Same, at
from candlecalc.workbook.tabs.make import batch, costing

FIELDS = {
    **{
        (table.key, field.key): field
        for table in (SETTINGS, WHAT_IF, *tables_of(False).values())
        for field in table.fields
    },
    **{("batch", field.key): field for field in (batch.PRODUCT, batch.COUNT, batch.DATE)},
}
# A name is the row itself: whoever changes it takes the row from its users (test_bad_entries.py).
MOVED = [each for each, field in FIELDS.items() if not field.name]
# Steps so fine and numbers so large that no rounding hides a move, while all that is on hand runs short.
FINE = {"scale_step": 1e-6, "price_step": 1e-4, "price_ending": 2e-5}
COUNT, WAX_ON_HAND, COST_OF_PLACE = 99991.0, 100.0, 2e4  # times the demo's wax, and its costs of a place
COARSE = {
    "scale_step": [3.5, 2.3],
    "price_step": [1.0, 0.3],
    "flash_point": [90.0, 400.0],
}  # what such entries are changed to
SAID = ("Batch", f"B{batch.SAID}")
# What a vessel says besides where it is measured otherwise.
SIZES = {"top": 3.0, "bottom": 2.9, "height": 3.1, "headspace": 0.1}
BESIDE = {
    "fill": {"fill": 9.0, "fill_wax": "Soft plant wax for jars"},
    "water": {"water": 9.0, "water_temperature": 70.0, "headspace": 0.1},
    "round": SIZES,
    "box": SIZES,
}


def magnified():
    """The demo with a few of its numbers such that nothing is hidden."""
    season = books.demo()
    season.settings |= FINE
    materials, places = season.tables["materials"], season.tables["places"]
    materials.loc[materials["kind"] == "wax", "on_hand"] *= WAX_ON_HAND
    # What the demo leaves out: of use where there are records, or more rows of a recipe.
    season.settings["as_of"], materials["price_from"] = season.settings["last_day"], "typed"
    season.settings |= {
        "books": "accrual",
        "year_from": season.settings["first_day"],
        "closed_to": season.settings["first_day"],
    }
    for dated in ("recipes", "places", "prices"):
        season.tables[dated]["holds_from"] = season.settings["first_day"]
    places["fixed_cost"] = [cost and cost * COST_OF_PLACE for cost in places["fixed_cost"]]
    return season


class Workbook:
    """A made workbook in the engine, and its season as the maker knows it with each product on the card."""

    def __init__(self, path):
        self.book = books.Book(magnified(), path, stored=False)
        self.held, self.names = engine.Held(path), naming.cell_names(self.book)
        self.shops = {name: Shop(self.book.season, name) for name in self.book.season.names("recipes")}
        self.shop = next(iter(self.shops.values()))
        self.before = {}

    def entries(self, table, key):
        """{entry: what it holds} of the cells of a field that hold something."""
        if table in tables_of(False):
            found = {Entry(table, number, key): row[key] for number, row in enumerate(self.shop.tables[table])}
            return {entry: value for entry, value in found.items() if value is not None}
        entry = Entry(table, 0, key)
        return {entry: self.held.value(self.cell(entry)) if table == "batch" else self.book.season.settings[key]}

    def cell(self, entry):
        if entry.table in tables_of(False):
            return self.book.cell(entry.table, entry.key, entry.row)
        if entry.table == WHAT_IF.key:
            return costing.TAB.title, costing.RISE_LINE.entry
        return self.book.named(f"batch_{entry.key}") if entry.table == "batch" else books.setting(entry.key)

    def changes(self, entry, value):
        """What is typed to change an entry, in a few ways."""
        other = COARSE.get(entry.key) or others(FIELDS[entry.table, entry.key], value, self.book.season)
        for each in [each for each in other if fits(self.shop, entry, each)][:4]:
            beside = BESIDE[each] if entry.key == "measured" else {}
            yield {self.cell(replace(entry, key=key)): more for key, more in beside.items()} | {self.cell(entry): each}

    def moved(self, changes, shown):
        """Names of the cells that move, with a product on the card. Checks add up the whole workbook."""
        card = self.card(shown)
        if shown not in self.before:
            self.before[shown] = self.held.changed(card)
        cells = engine.moved(self.before[shown], self.held.changed(card | changes)) - changes.keys()
        return {self.names.get(cell, cell) for cell in cells if cell[0] != "Checks"} - {naming.MASTER}

    def must_move(self, entry):
        return expected(self.shop, entry)[0]

    def card(self, shown):
        return {self.book.named("batch_product"): shown, self.book.named("batch_count"): COUNT}

    def cards(self, entry):
        """{product on the card: (cells that must move, cells that may)}, one for each way that the card moves."""
        found = {product: expected(shop, entry) for product, shop in self.shops.items()}
        ways = {
            frozenset(cell for cell in must | may if cell[0] == "batch"): name for name, (must, may) in found.items()
        }
        return {product: found[product] for product in ways.values()}


def faults(workbook, table, key):
    """The faults of a field's entries, and how many of them were changed."""
    found, changed = [], 0
    for entry, value in workbook.entries(table, key).items():
        ways = list(workbook.changes(entry, value))
        changed += bool(ways)
        right, missing, strange = set(), set(), set()
        for shown, (must, may) in workbook.cards(entry).items() if ways else ():
            moved = set()
            for way in ways:
                moved |= workbook.moved(way, shown)
                if must <= moved and not FIELDS[table, key].choices:
                    break
            right |= moved & must
            missing |= must - moved
            strange |= {cell for cell in moved - must - may if not remark(cell, entry, must | may)}
        if missing or strange:
            found.append(Fault((entry.table, entry.key, entry.row), right, missing, strange))
    return found, changed


def remark(cell, entry, told):
    """Whether a cell says in words what is to be looked at in a row that moves, or on the card."""
    if cell == SAID or cell in FIRST_SAID or (cell[0], "*", 0) in told:
        return True
    # What is said of a load goes wherever its figures are used, and a row's words stand beside its name.
    return is_word(*cell[:2]) and (
        cell[1] in ("status", "loads", "checked", "asked", "told")
        or cell[::2] in {(entry.table, entry.row), *(each[::2] for each in told)}
    )


def is_word(tab, key):
    """Whether a column holds words on what is wrong."""
    column = TABLE_TABS[tab].columns.get(key) if tab in TABLE_TABS else None
    return isinstance(column, Column) and column.is_fault


# The line beside a list's title, which gives way to what its first row says.
FIRST_SAID = {(tab.title, "C1") for tab in TABLE_TABS.values()}


@pytest.fixture(scope="module")
def workbook(tmp_path_factory):
    return Workbook(tmp_path_factory.mktemp("magnified") / "demo.xlsx")


@pytest.mark.parametrize("table, key", MOVED)
def test_each_entry_moves_exactly_what_uses_it(workbook, table, key):
    found, changed = faults(workbook, table, key)
    assert changed
    fail_if_any(found, workbook.book)


# Columns that no entry moves while its row is right: names carried to a tab or kept while a row is ready, pieces of
# which one goes with each, whether every line of Sets names its set, whether a product, a place or a price has a
# later row, and what is packed and what tests cost, which only records say.
STILL = {*((tab, "ready_name") for tab in ("materials", "vessels", "recipes", "places")),
         *((tab, "product") for tab in ("workings", "amounts", "parts", "costing")),
         *(("amounts", piece) for piece in ("vessel", "lid", "label", "packing")), ("workings", "whole"),
         ("materials", "limits"), ("parts", "open"), ("parts", "tests"), ("extras", "kind"), ("workings", "unknown"),
         ("recipes", "now"), ("places", "other"), ("selling", "other"),
         ("sets", "packed")}  # fmt: skip
# Columns that speak of the row: where it stands, whether it counts, what is wrong, what it waits for.
OF_THE_ROW = (OWN_ROW, "ready")


def test_every_field_has_its_line_and_every_column_an_entry_that_must_move_it(workbook):
    assert {(table, key) for table, lines in TABLE.items() for key in lines} == set(MOVED)
    must = {cell[:2] for each in MOVED for entry in workbook.entries(*each) for cell in workbook.must_move(entry)}
    columns = {
        (tab, key)
        for tab, each in lists(False).items()
        for key, column in each.columns.items()
        if not isinstance(column, Field) and key not in OF_THE_ROW and not is_word(tab, key)
    }
    assert columns - must == STILL


ALSO, NOT = "  expected also   ", "  did not expect  "
# A wrong wire: a column, what it is made to hold, a field that shows it, and what is then said of some entries.
PLANTED = {
    "oil 2 at the price of oil 1": (
        ("parts", "oil_second"), at("materials", "unit_cost", Same("workings", "oil_first_row")),
        ("materials", "pack_price"), {
            "Materials › Pack price (Clove and bay oil)": f"{ALSO}Part costs › Oil 2 (Orange and clove tumbler",
            "Materials › Pack price (Bitter orange oil)": f"{NOT}Part costs › Oil 2 (Orange and clove tumbler",
        },
    ),
    "own time at the rate of paid help": (
        ("parts", "own"), calculated("labour_cost", minutes="own_minutes", rate=Named("paid_rate")),
        ("settings", "own_rate"), {"Settings › Own time": f"{ALSO}Part costs › Own time (Fig and cedar jar"},
    ),
    "a set's overhead with the own time of its candles": (
        ("costing", "overhead"), TABLE_TABS["costing"].columns["own"].holds,
        ("settings", "own_rate"), {"Settings › Own time": f"{NOT}Costing › Production overhead (Fig and cedar jar"},
    ),
    "tax as on Settings, whoever collects it": (
        ("prices", "tax"), calculated("tax_on", price="received", tax=Named("tax_rate")),
        ("settings", "tax_rate"), {
            "Settings › Tax rate, of the price": f"{NOT}Prices › Tax on it (Fig and cedar jar @ Ferry Street",
        },
    ),
}  # fmt: skip


@pytest.mark.parametrize("column, wrong, field, said", PLANTED.values(), ids=PLANTED)
def test_a_wrong_wire_is_found_and_named(monkeypatch, tmp_path, column, wrong, field, said):
    tab, key = column
    with monkeypatch.context() as patch:
        patch.setitem(TABLE_TABS[tab].columns, key, replace(TABLE_TABS[tab].columns[key], holds=wrong))
        workbook = Workbook(tmp_path / "wrong.xlsx")
        told = [fault.told(workbook.book) for fault in faults(workbook, *field)[0]]
    found = {text.partition("\n")[0]: text for text in told}
    for entry, words in said.items():
        assert words in found[entry]


def test_the_office_comes_to_the_same_after_a_change(workbook, office):
    entries = [(entry, value) for each in MOVED for entry, value in workbook.entries(*each).items()]
    sample = [way for entry, value in entries[::150] for way in list(workbook.changes(entry, value))[:1]]
    card = workbook.card("Orange and clove tumbler")
    answers = workbook.book.edited_each(office, [card | way for way in sample])
    for way, values in zip(sample, answers, strict=True):
        held = workbook.held.cells(workbook.held.changed(card | way), workbook.book.formulas)
        assert [cell for cell, value in held.items() if not engine.alike(value, values.get(cell, ""), 9)] == [], way
