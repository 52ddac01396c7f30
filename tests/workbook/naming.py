"""The cells of a made workbook by what they are: (tab, column, row), with 0 for the row of a cell that stands alone."""

import re

import books

from candlecalc.season.tables.once import SETTINGS, WHAT_IF
from candlecalc.workbook.book import lists
from candlecalc.workbook.cells.layout import FIRST_ROW
from candlecalc.workbook.tabs.make import batch
from candlecalc.workbook.tabs.working.made_of import COUNTED, WEIGHED

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
    blocks = {part: (batch.WEIGH + nth, "ABCDEFGHLM") for nth, part in enumerate(WEIGHED, start=1)}
    counted = [*COUNTED, *(f"extra_{nth}" for nth in range(1, batch.EXTRA_LINES + 1))]
    blocks |= {part: (batch.COUNTING + nth, "ABCDELM") for nth, part in enumerate(counted, start=1)}
    blocks |= {kind: (batch.COSTS + nth, "BC") for nth, kind in enumerate(COSTS, start=1)}
    cells = {f"{letter}{row}": f"{name}.{letter}" for name, (row, letters) in blocks.items() for letter in letters}
    steps = {2: "melt_high", 3: "heat_to", 4: "ceiling", 5: "add_at", 6: "pour_at", 9: "cure_days"}
    cells |= {f"B{batch.DO + step}": key for step, key in steps.items()}
    head = {"B0": "fill", "B1": "enough", "J0": "load", "J1": "load_fewer", "E2": "recipe", "A3": "fill_words"}
    head |= {"H0": "candles", "E1": "shown_fewer", "H1": "candles_fewer"}
    cells |= {f"{cell[0]}{batch.POTS + int(cell[1])}": name for cell, name in head.items()}
    cells |= {f"{letter}{batch.WEIGH}": f"head_{letter}" for letter in "ABCDEFGHIJ"}
    cells |= {f"{letter}{batch.POTS + line}": f"words_{letter}{line}" for line in range(3) for letter in "ADGI"}
    cells |= {f"H{batch.POTS + 2}": "words_H2"}
    cells |= {f"E{batch.PICK}": "tag", f"D{batch.DO + 8}": "panel", f"E{batch.DO + 8}": "panel_wide",
              f"F{batch.DO + 8}": "panel_by", f"G{batch.DO + 8}": "panel_high"}  # fmt: skip
    cells |= {f"{letter}{batch.DO}": f"do_{letter}" for letter in "BIJ"}
    cells |= {f"E{batch.COSTS + line}": f"caution_{line}" for line in range(1, 1 + len(batch.CAUTIONS))}
    cells |= {f"A{batch.DO + step}": f"step_{step}" for step in range(1, 10)}
    cells |= {f"C{batch.DO + step}": f"degree_{step}" for step in range(2, 8)}
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
