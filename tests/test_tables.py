"""The published tables: each says at its head where it is from, and every row is whole."""

import pytest

from candlecalc import tables

FOLDER = tables.Path(tables.__file__).parent
NAMES = sorted(path.stem for path in FOLDER.glob("*.csv"))
STATUSES = {"read in the text", "second-hand", "derived", "from memory"}


@pytest.mark.parametrize("name", NAMES)
def test_a_table_says_what_it_is_its_source_and_what_checks_it(name):
    head = [line for line in (FOLDER / f"{name}.csv").read_text(encoding="utf-8").splitlines() if line[:1] == "#"]
    assert len(head) >= 3
    assert any(line.startswith("# source: ") for line in head)
    assert any(line.startswith("# checked: tests/") for line in head)


@pytest.mark.parametrize("name", NAMES)
def test_every_row_of_a_table_fills_its_heads_and_no_more(name):
    rows = tables.rows(name)
    assert rows
    for row in rows:
        assert None not in row and None not in row.values(), row


@pytest.mark.parametrize("name", NAMES)
def test_a_status_is_one_of_the_words_we_use(name):
    for row in tables.rows(name):
        assert {word for head, word in row.items() if head.startswith("status")} <= STATUSES, row
