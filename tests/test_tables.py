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


def test_a_row_is_found_by_what_it_reaches_up_to():
    samples = [tables.row_up_to("reference_test", batch)["sample"] for batch in (1, 500, 501, 3200, 1e9)]
    assert samples == ["50", "50", "80", "80", "125"]
    with pytest.raises(LookupError, match="^the table here ends at 25000$"):
        tables.row_up_to("tolerable_errors", 25_001)


@pytest.mark.parametrize("name", [name for name in NAMES if "up_to" in tables.rows(name)[0]])
def test_steps_rise_and_only_the_last_may_be_open(name):
    ends = [row["up_to"] for row in tables.rows(name)]
    assert "" not in ends[:-1]
    assert sorted(map(float, filter(None, ends))) == [float(end) for end in ends if end]
