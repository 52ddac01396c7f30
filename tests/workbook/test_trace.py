"""Every lot in a batch, and every batch of a lot: as the year's reference has them."""

import functools

import pytest
from books import Book
from click.testing import CliRunner
from engine import Held
from year_reference import worked_out
from year_seasons import year
from year_workbook import Typed, season_of, without_sets

from candlecalc.commands.cli import main
from candlecalc.workbook.tabs.stock import trace

HOW = {"noted": "noted", "opened": trace.ASSUMED[0], "oldest": trace.ASSUMED[1]}


class Traced:
    """A year in the embedded engine, where what is asked is typed on Trace; and the same year worked out."""

    def __init__(self, seed, path):
        self.year = without_sets(year(seed))
        book = Book(season_of(self.year), path)
        self.worked = worked_out(Typed(self.year, book.plan, book.held).as_poured())
        self.engine = Held(path)

    def asked(self, **picks):
        """The rows of Trace once its entries are typed."""
        entries = {
            (trace.TAB.title, f"D{row}"): picks.get(field.key.removeprefix("trace_"))
            for row, field in enumerate(trace.PICKS, start=trace.FIRST_PICK)
        }
        return self.engine.changed(entries)[trace.TAB.title]


@pytest.fixture(scope="module")
def traced(tmp_path_factory):
    """The year of a seed, made once."""
    return functools.cache(lambda seed: Traced(seed, tmp_path_factory.mktemp("trace") / f"{seed}.xlsx"))


def section(rows, head, lines, columns):
    """The rows of a section of Trace in which the first of the columns holds something."""
    for row in rows[head : head + lines]:
        found = [row["ABCDEFGHIJKLMNOP".index(letter)] for letter in columns]
        if found[0] not in (None, ""):
            yield found


@pytest.mark.parametrize("seed", [1, 3])
def test_the_lots_of_a_batch_are_those_of_the_reference(traced, seed):
    here, made = traced(seed), traced(seed).year
    poured = [at for at, pour in enumerate(made.pours, start=1) if pour.kind == "poured"]
    for number in poured[:: len(poured) // 3]:
        rows = here.asked(batch=float(number))
        batch = made.pours[number - 1].batch
        expected = {}
        for each in here.worked.took():
            if each.tab == "Used" and each.row[0] == batch:
                expected.setdefault(each.thing, []).append((each.lot, HOW[each.how]))
        lines = section(rows, trace.PARTS, trace.PART_LINES, "AEO")
        found = {material: (int(row) - 1, how) for material, how, row in lines}
        # Of what is used beyond all that was bought the reference knows no lot, and the tab names the last.
        assert {thing: found[thing] for thing in expected} == {thing: lots[0] for thing, lots in expected.items()}


@pytest.mark.parametrize("seed", [1, 3])
def test_no_batch_that_may_hold_a_lot_is_missing(traced, seed):
    here, made = traced(seed), traced(seed).year
    numbers = {pour.batch: number for number, pour in enumerate(made.pours, start=1)}
    lots = [(row, line) for row, line in enumerate(made.purchases, start=1) if line.lot]
    for row, line in lots[:: max(1, len(lots) // 4)]:
        if [other.lot for other in made.purchases if other.material == line.material].count(line.lot) > 1:
            continue
        rows = here.asked(material=line.material, lot=line.lot)
        noted = [batch for batch, *_ in section(rows, trace.NOTED, trace.NOTED_LINES, "B")]
        may = [batch for batch, is_it in section(rows, trace.WENT, trace.WENT_LINES, "BF") if is_it == "this lot"]
        # Each as its name and how it is known.
        expected = {numbers[batch.split()[0]] for batch in here.worked.batches_of(line.material, row)}
        assert expected <= {*noted, *may}


def test_with_nothing_picked_the_tab_says_nothing(traced):
    rows = traced(3).asked()
    for head, lines in (
        (trace.PARTS, trace.PART_LINES),
        (trace.NOTED, trace.NOTED_LINES),
        (trace.WENT, trace.WENT_LINES),
    ):
        assert list(section(rows, head, lines, "A")) == []


def test_a_lot_that_two_materials_have_asks_for_the_material(tmp_path):
    made = without_sets(year(3))
    season = season_of(made)
    season.tables["purchases"]["lot"] = "A1"
    book = Book(season, tmp_path / "year.xlsx")
    done = CliRunner().invoke(main, ["show", str(book.path), "trace", "--lot", "a1"])
    assert done.exit_code == 1 and "say which with --material" in done.output


@pytest.mark.parametrize("given", [["trace"], ["trace", "--batch", "1", "--lot", "A"], ["stock", "--lot", "A"]])
def test_trace_takes_a_batch_or_a_lot(given, tmp_path):
    (tmp_path / "any.xlsx").write_bytes(b"")
    done = CliRunner().invoke(main, ["show", str(tmp_path / "any.xlsx"), *given])
    assert done.exit_code == 2 and "either --batch or --lot" in done.output
