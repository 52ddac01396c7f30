"""People cut, paste, copy, fill, clear, sort and undo: afterwards every number is as if what stands were typed there.

Done in LibreOffice by its own commands, on the protected tabs; what should come of it is told by `gestures.Rows`.
"""

import random

import books
import engine
import pytest
from gestures import Rows, torn_or_twice

from candlecalc.season.tables import tables_of


@pytest.fixture(scope="module")
def small(tmp_path_factory):
    return books.Book(books.small(), tmp_path_factory.mktemp("small") / "small.xlsx", rows_of=books.SMALL_ROWS)


@pytest.fixture(scope="module")
def typed(small):
    """The same workbook in the embedded engine, where entries are typed into their cells."""
    return engine.Held(small.path)


def first_middle_and_last(rows):
    middle = sorted(rows.rows)[len(rows.rows) // 2]
    return dict.fromkeys((rows.first, middle, rows.last))


def cases(book):
    """{what is done: the rows it is done to}."""
    for table in tables_of(False):
        start = Rows(book, table)
        for row in first_middle_and_last(start):
            done = Rows(book, table)
            done.cut(row, row, to=done.last + 2)
            yield f"{table}: row {row} cut to a free row", done
        done = Rows(book, table)
        before = dict(done.rows)
        done.cut(done.first, done.first, to=done.last + 1)
        done.undo(before, times=2)
        yield f"{table}: a cut undone", done
        done = Rows(book, table)
        done.cut(done.first, done.first, to=done.last + 2)
        done.type(start.first, {done.keys[0]: "Another"})
        yield f"{table}: the freed row takes another name", done
        done = Rows(book, table)
        done.cut(done.first, done.first + 1, to=done.end - 1)
        yield f"{table}: two rows cut to the end", done
        done = Rows(book, table)
        done.cut(done.first, done.last, to=done.first + 1)
        yield f"{table}: all rows cut down one", done
        yield from torn_or_twice(book, table, Rows(book, table).keys[1:3])
        done = Rows(book, table)
        done.clear(done.first, done.first)
        yield f"{table}: cleared", done
        for ascending in (True, False):
            done = Rows(book, table)
            done.sort(ascending)
            yield f"{table}: sorted {'up' if ascending else 'down'}", done


def differing(shown, typed):
    """Formulas that show another value than where the same entries are typed: (shown, typed)."""
    both = {cell: (shown.get(cell, ""), value) for cell, value in typed.items()}
    return {cell: each for cell, each in both.items() if not engine.alike(*each, digits=9)}


def test_after_a_gesture_every_number_is_as_if_the_rows_were_typed_so(small, typed, office):
    done = dict(cases(small))
    shown = office.after_gestures(small.path, [rows.gestures for rows in done.values()])
    wrong = {}
    for (name, rows), values in zip(done.items(), shown, strict=True):
        sheets = typed.changed(rows.entries())
        wrong[name] = differing(values, typed.cells(sheets, small.formulas))
    assert {name: found for name, found in wrong.items() if found} == {}


def test_after_a_row_is_cut_to_a_free_one_each_product_costs_and_earns_what_it_did(small, office):
    tables = ("materials", "vessels", "places", "sets")
    done = []
    for table in tables:
        rows = Rows(small, table)
        rows.cut(rows.first, rows.first, to=rows.last + 2)
        done.append(rows.gestures)
    untouched, *shown = office.after_gestures(small.path, [[], *done], tabs=["Costing", "Prices", "Checks"])
    for table, values in zip(tables, shown, strict=True):
        for row in range(len(small.rows("recipes"))):
            cell = small.cell("costing", "full", row)
            assert values[cell] == untouched[cell], table
        for row in range(len(small.rows("prices"))):
            cell = small.cell("prices", "profit", row)
            assert values[cell] == untouched[cell], table
        assert values[small.named("master_check")] == "Numbers agree", table


GESTURES = ("cut", "copy", "clear", "fill_down", "sort", "undo")


def walk(book, table, seed, steps=4):
    """A short sequence of gestures on a table, by chance."""
    chance, rows = random.Random(seed), Rows(book, table)  # noqa: S311
    for _ in range(steps):
        name = chance.choice(GESTURES)
        row = chance.randint(rows.first, rows.last)
        before = dict(rows.rows)
        if name in ("cut", "copy"):
            getattr(rows, name)(row, row, to=chance.randint(rows.first, rows.end))
        elif name == "undo":
            rows.clear(row, row)
            rows.undo(before)
        elif name == "sort":
            rows.sort(chance.choice((True, False)))
        elif name == "fill_down":
            rows.fill_down(row, min(row + 1, rows.end))
        elif len(rows.rows) > 1:
            rows.clear(row, row)
    return rows


def test_short_sequences_of_gestures_come_to_what_a_model_of_the_table_says(small, typed, office):
    done = [walk(small, table, seed) for table in ("vessels", "materials", "places", "recipes") for seed in range(4)]
    shown = office.after_gestures(small.path, [rows.gestures for rows in done])
    for rows, values in zip(done, shown, strict=True):
        sheets = typed.changed(rows.entries())
        assert differing(values, typed.cells(sheets, small.formulas)) == {}, rows.gestures


SETTINGS_CUT = [("cut", "Settings", "B11:B12"), ("paste", "Settings", "B14")]
CARD_CUT = [("cut", "Batch", "A3"), ("paste", "Batch", "I3")]


@pytest.mark.parametrize("gestures", [SETTINGS_CUT, CARD_CUT], ids=["Settings", "Batch"])
def test_an_entry_that_stands_alone_is_missed_where_it_was_and_comes_back_with_undo(small, office, gestures):
    untouched, cut, undone = office.after_gestures(small.path, [[], gestures, [*gestures, ("undo", 2)]])
    assert cut[small.named("master_check")] != "Numbers agree"
    assert undone == untouched
