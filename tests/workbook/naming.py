"""The cells of a made workbook by what they are: (tab, column, row), with 0 for the row of a cell that stands alone."""

import re

import books

from candlecalc.season.tables.once import SETTINGS, WHAT_IF
from candlecalc.workbook.book import lists
from candlecalc.workbook.cells.layout import FIRST_ROW
from candlecalc.workbook.tabs.make import batch
from candlecalc.workbook.tabs.working.amounts import COUNTED, WEIGHED

MASTER = ("checks", "master", 0)
COSTS = ("materials", "paid", "overhead", "making", "own", "running", "full")


def cell_names(book):
    """{(tab, cell): (tab, column, row)}."""
    named = {**_lists(book), **_settings(book), **_card(book), **_drop_downs(book)}
    return {**named, **_echoes(book, named)}


def _lists(book):
    return {
        (place.title, f"{place.letters[key]}{FIRST_ROW + row}"): (tab, key, row)
        for tab, each in lists(False).items()
        for place in [book.plan.layouts[tab]]
        for key in each.columns
        for row in range(place.rows)
    }


def _settings(book):
    """The values in use, and what follows from them."""
    used = {books.setting(key, "D"): ("settings", key, 0) for key in SETTINGS.keys}
    named = {cell: ("settings", name, 0) for name, cell in book.names.items() if cell[0] == "Settings"}
    return named | used | {book.names[key]: ("what_if", key, 0) for key in WHAT_IF.keys}


def _card(book):
    blocks = {part: (batch.WEIGH + nth, "ABCDEH") for nth, part in enumerate(WEIGHED, start=1)}
    blocks |= {part: (batch.COUNTING + nth, "ABCDE") for nth, part in enumerate(COUNTED, start=1)}
    candles = batch.COUNTING + len(COUNTED)
    blocks |= {f"candle_{nth}": (candles + nth, "AB") for nth in range(1, batch.SET_LINES + 1)}
    blocks |= {kind: (batch.COSTS + nth, "BC") for nth, kind in enumerate(COSTS, start=1)}
    cells = {f"{letter}{row}": f"{name}.{letter}" for name, (row, letters) in blocks.items() for letter in letters}
    steps = {2: "melt_high", 3: "ceiling", 4: "add_at", 5: "pour_at", 8: "cure_days"}
    cells |= {f"B{batch.DO + step}": key for step, key in steps.items()}
    cells |= {f"{letter}{batch.POTS + 1}": name for letter, name in {"B": "enough", "E": "load", "H": "recipe"}.items()}
    cells |= {f"B{batch.POTS}": "fill"}
    cells |= {f"{letter}{batch.POTS + line}": f"words_{letter}{line}" for line in (0, 1) for letter in "ADG"}
    cells |= {f"A{batch.POTS + 2}": "words_A2"}
    cells |= {f"A{batch.DO + step}": f"step_{step}" for step in range(1, 9)}
    cells |= {f"C{batch.DO + step}": f"degree_{step}" for step in range(2, 7)}
    cells |= {f"B{batch.ENOUGH}": "says", f"E{batch.COSTS + len(batch.CAUTIONS) + 1}": "flash"}
    cells |= {cell: name.removeprefix("batch_") for name, (tab, cell) in book.names.items() if tab == "Batch"}
    return {("Batch", cell): ("batch", name, 0) for cell, name in cells.items()}


def _drop_downs(book):
    """The lists that drop-downs offer: each a cell, whatever its length."""
    place = book.plan.layouts["lists"]
    return {
        ("Lists", f"{letter}{row}"): ("lists", key.replace(" ", "_"), 0)
        for key, letter in place.letters.items()
        for row in range(FIRST_ROW, place.last_row + 1)
    }


def _echoes(book, named):
    """Cells that show a named cell elsewhere go by its name."""
    found = {cell: re.search(r"<f>([a-z_]+)</f>", xml) for cell, xml in book.formulas.items()}
    echoed = {cell: book.names[echo[1]] for cell, echo in found.items() if echo and echo[1] in book.names}
    return {cell: named.get(other, MASTER) for cell, other in echoed.items()}
