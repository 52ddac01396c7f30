"""Workbooks of earlier versions: every entry set to a value of its own, and where an entry stands in any of them.

What an entry takes is read from the workbook itself (its drop-downs and limits), not from today's declarations.
"""

import datetime
from functools import cache
from itertools import count
from pathlib import Path

import openpyxl
from openpyxl.utils import get_column_letter
from openpyxl.utils.datetime import from_excel

FIXTURES = Path(__file__).parent / "fixtures" / "0.1.0"
NAMES = sorted(path.name for path in FIXTURES.glob("*.xlsx"))
TYPED_TABS = ("Settings", "Materials", "Vessels", "Recipes", "Sets", "Costing", "Places sold", "Prices", "Batch",
              "Changes")  # fmt: skip
HEAD_ROW = 3
ONCE = ("Settings", "Costing", "Batch")  # tabs whose entries are typed once
# Of the names that a drop-down on Lists offers: the tab they stand on, and the column of their kind.
NAMED = {"Materials": "B", "Products": "C", "Vessels": None, "Places": None}
CARD = {"batch_product": "product", "batch_count": "count", "batch_date": "date"}


def entries(book):
    """{(tab, head, row): cell} of every cell that a maker may type in."""
    found = {}
    for sheet in book:
        for row in sheet.iter_rows():
            for cell in row:
                if not cell.protection.locked:
                    found[_place(sheet, cell)] = cell
    return found


def placed(path):
    """{(tab, head, row): value} of every entry of a workbook on disk."""
    return {place: cell.value for place, cell in entries(openpyxl.load_workbook(path)).items()}


def filled(path, target):
    """A copy with a value of its own in every entry; what was typed, by its place."""
    book = openpyxl.load_workbook(path)
    cells, numbers = entries(book), count(1)
    rules_of = {tab: _rules(book[tab]) for tab in {place[0] for place in cells}}
    rules = {place: rules_of[place[0]][cell.coordinate] for place, cell in cells.items()}
    names = cache(lambda reference: _names(book, reference))
    # Names first: drop-downs offer them, and none is typed any more once they are asked for.
    for place in sorted(cells, key=lambda place: rules[place].type == "list" and "!" in rules[place].formula1):
        cells[place].value = _value(names, place, rules[place], next(numbers))
    book.save(target)
    return {place: cell.value for place, cell in cells.items()}


def _place(sheet, cell):
    """An entry by what it is about: its head and row, its label, or that it is one of the card's."""
    if sheet.title == "Settings":
        return sheet.title, sheet.cell(cell.row, 1).value, 0
    if sheet.title == "Batch":
        return sheet.title, cell.coordinate, 0
    if sheet.title == "Costing":
        return sheet.title, "rise", 0
    return sheet.title, sheet.cell(HEAD_ROW, cell.column).value, cell.row


def _rules(sheet):
    """{cell: the rule for what may be typed there}; of two rules the first."""
    found = {}
    for rule in sheet.data_validations.dataValidation:
        for row, column in (cell for cells in rule.sqref.ranges for cell in cells.cells):
            found.setdefault(f"{get_column_letter(column)}{row}", rule)
    return found


def _value(names, place, rule, number):
    if rule.type == "list":
        offered = names(rule.formula1) if "!" in rule.formula1 else rule.formula1.strip('"').split(",")
        return offered[(place[2] or number) % len(offered)]
    if rule.type == "textLength":
        return f"{number} {place[1]}"[: int(rule.formula1)].strip()
    low = float(rule.formula1)
    if rule.type == "date":
        return from_excel(int(low) + number) if isinstance(from_excel(int(low)), datetime.datetime) else None
    high = float(rule.formula2) if rule.formula2 and rule.operator in (None, "between") else low + 10_000
    if rule.type == "whole":
        return int(low + number % (high - low + 1))
    return round(low + (high - low) * (number % 9_973 + 1) / 10_000, 9)


def _names(book, reference):
    """The names that a drop-down offers, from the tab where they are typed."""
    title, _, cells = reference.replace("$", "").rpartition("!")
    head = book[title.strip("'")][f"{cells.rstrip('0123456789').partition(':')[0][0]}{HEAD_ROW}"].value
    whose, _, kind = head.partition(": ")
    sheet = book[{"Products": "Recipes", "Places": "Places sold"}.get(whose, whose)]
    rows = [row for row in range(HEAD_ROW + 1, sheet.max_row + 1) if not sheet[f"A{row}"].protection.locked]
    column = NAMED[whose]
    return [sheet[f"A{row}"].value for row in rows if not kind or sheet[f"{column}{row}"].value == kind]
