"""Workbooks to test: a season's file on disk, where its cells stand, and what their formulas hold."""

import functools
import math
import re
import zipfile

import libreoffice
from typed_in import DATED, SPARE

from candlecalc.season import folder, presets
from candlecalc.season.season import empty
from candlecalc.season.tables.sell import PLACE_KINDS
from candlecalc.season.tables.taken import KINDS
from candlecalc.workbook import book
from candlecalc.workbook.cells.layout import FIRST_ROW
from candlecalc.workbook.tabs.set_up import settings as settings_tab


def few(season, spare=SPARE):
    """Rooms for what is typed in a season and little more: formulas that would stay blank cost time alone."""
    return {key: season.tables.room(key) + spare for key in season.tables}


class Book:
    """The workbook of a season, saved at a path: of few rows, or with the rows_of that are asked for."""

    def __init__(self, season, path, *, stored=True, rows_of=None):
        self.season, self.path, self.rows_of = season, path, rows_of or few(season)
        self.plan = book.plan_of(season, self.rows_of)
        path.write_bytes(self.made(stored=stored))

    def made(self, season=None, dated=DATED, *, stored=True):
        """The bytes of its workbook, or of one like it."""
        return book.made(season or self.season, dated, stored=stored, rows_of=self.rows_of)

    def cell(self, table, key, row):
        """A cell by its table, column and row, given as a number from 0 or by the row's name."""
        place = self.plan.layouts[table]
        return place.title, f"{place.letters[key]}{FIRST_ROW + (self.row(table, row) if isinstance(row, str) else row)}"

    def row(self, table, name):
        """The row whose name, or whose names joined by " @ ", stand in its first columns."""
        for place, row in self.rows(table):
            values = [str(value) for value in row.values()]
            if name in (values[0], " @ ".join(values[:2])):
                return place
        raise LookupError(f"{table}: {name}")

    def edited_each(self, office, edits, tabs=()):
        """The values after each set of changes, each calculated twice; of some tabs, if they are named.

        The office's calculation of all cells leaves the second line of Prices and Selling one behind.
        """
        return office.edited_each(self.path, edits, times=2, tabs=tabs)

    def named(self, name):
        """The cell that a name of the workbook stands for."""
        return self.names[name]

    @functools.cached_property
    def names(self):
        """{name: its cell} of the names that formulas use."""
        with zipfile.ZipFile(self.path) as package:
            text = package.read("xl/workbook.xml").decode()
        found = re.findall(r'<definedName name="([a-z_]+)"[^>]*>([^<]*)<', text)
        cells = {name: cell.replace("$", "").rpartition("!") for name, cell in found}
        return {name: (sheet.strip("'"), cell) for name, (sheet, _, cell) in cells.items()}

    def rows(self, table):
        """(row, its entries) of a table."""
        return list(self.season.rows(NAMES_FROM.get(table, table)))

    @functools.cached_property
    def formulas(self):
        return formulas(self.path)

    @functools.cached_property
    def held(self):
        """What the file holds as it stands, read once; a test that changes a value takes a copy."""
        return libreoffice.stored(self.path)


def formulas(path):
    """{("Costing", "B4"): its XML} of every cell that holds a formula."""
    return {
        (title, re.search(r'r="(\w+)"', cell)[1]): cell
        for title, text in sheets(path).items()
        for cell in re.findall(r"<c [^>]*[^/]>.*?</c>", text)
        if "<f" in cell
    }


def sheets(path):
    """The XML of each sheet by its title. A package numbers its sheets in the order of its tabs."""
    with zipfile.ZipFile(path) as package:
        titles = re.findall(r'<sheet [^>]*name="([^"]*)"', package.read("xl/workbook.xml").decode())
        return {
            title: package.read(f"xl/worksheets/sheet{number}.xml").decode()
            for number, title in enumerate(titles, start=1)
        }


# Tabs whose rows go with the rows of a table that people type.
NAMES_FROM = {
    "workings": "recipes",
    "amounts": "recipes",
    "parts": "recipes",
    "costing": "recipes",
    "selling": "prices",
}


def users(demo, table, name):
    """Products that need a row of a table, by their recipes and extra parts, with the sets that hold them."""
    recipes, vessels, sets = ([row for _, row in demo.rows(key)] for key in ("recipes", "vessels", "sets"))
    bought = {row["vessel"]: row["bought_as"] for row in vessels}
    named = {row["product"]: {row["product"], bought.get(row["vessel"]), *row.values()} for row in recipes}
    found = {product for product, names in named.items() if name in names}
    found |= {row["product"] for _, row in demo.rows("extras") if row["material"] == name}
    return found | {line["set"] for line in sets if line["product"] in found}


def setting(key, column="B"):
    """The cell of a setting's entry, or of what is used of it in column D."""
    return "Settings", f"{column}{settings_tab.line_of(key)}"


def rewritten(path, target, sheet, pattern, replacement):
    """A copy of a package with one sheet's text changed in one place; the change must be found."""
    changed = f"xl/worksheets/sheet{list(sheets(path)).index(sheet) + 1}.xml"
    with zipfile.ZipFile(path) as before, zipfile.ZipFile(target, "w", zipfile.ZIP_DEFLATED) as after:
        for name in before.namelist():
            text = before.read(name)
            if name == changed:
                text, count = re.subn(pattern.encode(), replacement.encode(), text)
                assert count == 1, f"{pattern} found {count} times"
                assert text != before.read(name)
            after.writestr(name, text)
    return target


def demo():
    return folder.read(folder.DEMO)


SMALL = ("Orange and clove tumbler", "Pear and honey tin", "Bitter orange tin", "Two tins in a box")
SMALL_ROWS = {"materials": 24, "vessels": 8, "recipes": 10, "extras": 6, "sets": 8, "places": 8, "prices": 16}


def small(products=SMALL, places=3):
    """The demo with some of its products, all they are made of, and the first places."""
    season = demo()
    rows = {key: [row for _, row in season.rows(key)] for key in season.tables}
    rows["recipes"] = [row for row in rows["recipes"] if row["product"] in products]
    rows["sets"] = [row for row in rows["sets"] if row["set"] in products]
    rows["extras"] = [row for row in rows["extras"] if row["product"] in products]
    used = {value for row in rows["recipes"] for value in row.values()}
    rows["vessels"] = [row for row in rows["vessels"] if row["vessel"] in used]
    used |= {row["bought_as"] for row in rows["vessels"]} | {row["fill_wax"] for row in rows["vessels"]}
    used |= {row["material"] for row in rows["extras"]}
    rows["materials"] = [row for row in rows["materials"] if row["material"] in used]
    rows["places"] = rows["places"][:places]
    sold = {row["place"] for row in rows["places"]}
    rows["prices"] = [row for row in rows["prices"] if row["product"] in products and row["place"] in sold]
    for key in season.tables:
        season.tables[key] = rows[key]
    return season


def alike(a, b):
    """Whether two values of a cell are the same; an empty text is stored as no text at all."""
    if isinstance(a, float) and isinstance(b, float):
        return math.isclose(a, b, rel_tol=1e-9, abs_tol=1e-12)
    a, b = ("" if value is None else value for value in (a, b))
    return type(a) is type(b) and a == b


def blank(region):
    return empty(presets.blank_settings(region, DATED))


def full(products=60, prices=180):
    """A season that fills its tables, with every kind of material, vessel and place in it."""
    season = blank("gb")
    season.settings |= {"registered": "yes", "tax_rate": 0.2, "paid_rate": 12.5, "own_rate": 16.0, "waste": 0.015,
                        "production_overhead": 2100.0, "running_costs": 940.0, "price_ending": 0.95}  # fmt: skip
    for key, rows in {
        "materials": [_material(number) for number in range(200)],
        "vessels": [_vessel(number) for number in range(24)],
        "places": [_place(number) for number in range(12)],
        "recipes": [_recipe(number) for number in range(products)],
        "sets": [
            {"set": f"Product {number}", "product": f"Product {number - step}", "count": float(step)}
            for number in range(products)
            if number % 6 == 5
            for step in (1, 2)
        ],
        "prices": [
            {"product": f"Product {n % products}", "place": f"Place {n // products}", "price": 9 + n * 0.37}
            for n in range(prices)
        ],
    }.items():
        season.tables[key] = rows
    return season


def _material(number):
    kind = KINDS[number % len(KINDS)]
    row = {"material": f"{kind} {number}", "kind": kind, "pack_size": 3.0 + number, "pack_price": 11 + number * 0.77,
           "pack_unit": "each", "on_hand": 4.0 * (number % 7)}  # fmt: skip
    if kind in KINDS[:3]:
        row["pack_unit"] = ("g", "kg", "oz", "lb")[number % 4]
    if kind == "wax":
        row |= {"density": 0.84 + number * 0.0003, "highest_load": 0.12, "pour_at": 62.0, "cure_days": 14.0}
    if kind == "fragrance oil":
        row |= {"highest_load": 0.1 + number * 0.0002, "basis": ("of wax", "of total")[number % 2], "flash_point": 77.0}
    if number % 3:
        row["shipping"] = 0.4 + number * 0.01
    if number % 4 == 1:
        row["tax"] = 0.31
    return row


def _vessel(number):
    row = {"vessel": f"Vessel {number}", "use": "stays", "bought_as": "vessel 4", "headspace": 0.08 + number * 0.002}
    if number % 3 == 0:
        return row | {"measured": "water", "water": 210.0 + number, "water_temperature": 19.5}
    shape = ("round", "box")[number % 3 - 1]
    return row | {"measured": shape, "top": 74.0 + number, "bottom": 66.0, "height": 81.0, "base": 0.5 * (number % 4)}


def _place(number):
    return {"place": f"Place {number}", "kind": PLACE_KINDS[number % 5], "fee": 0.011 * number, "least_fee": 0.9,
            "fee_basis": ("net", "gross")[number % 2], "fee_item": 0.1, "per_order": 1 + 0.3 * number, "margin": 0.25,
            "postage_paid": 3.4, "packing_order": 0.6, "fixed_cost": 14.0 * number, "fixed_times": 5.0, "rules": "gb",
            "discount": 0.03 * number, "stated": ("with tax", "before tax")[number % 2],
            "collector": ("maker", "place", "nobody")[number % 3]}  # fmt: skip


def _recipe(number):
    row = {"product": f"Product {number}", "minutes": 3 + number * 0.1, "setup": 35.0, "usual_batch": 12.0 + number,
           "label": "label 6", "packing": "packaging 7"}  # fmt: skip
    if number % 6 == 5:
        return row | {"kind": "set"}
    row |= {"kind": "made", "vessel": f"Vessel {number % 24}", "wax": f"wax {9 * (number % 20)}", "load": 0.07,
            "oil_first": f"fragrance oil {1 + 9 * (number % 22)}", "wick": "wick 3", "wicks": 1.0 + number % 3,
            "paid_share": number / 100}  # fmt: skip
    if number % 4 == 1:
        row |= {"wax_second": "wax 189", "share_wax": 0.3, "dye": "dye 2", "dye_share": 0.0005}
    if number % 3 == 1:
        row |= {"share_first": 0.6, "oil_second": "fragrance oil 10", "share_second": 0.4}
    return row
