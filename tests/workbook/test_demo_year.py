"""The demo maker's autumn: it reads as it should, and every figure of it is what exact fractions say."""

from collections import Counter

import books
import engine
import pytest
from test_checks import verdicts
from year_figures import differences, figures
from year_of_season import year_of
from year_reference import worked_out
from year_workbook import Typed

from candlecalc.season import folder
from candlecalc.season.season import problems
from candlecalc.workbook.book import drafted
from candlecalc.workbook.reports import report, shown

# What the maker is asked about, and means: two batches gone wrong, an oil to be used first, a complaint that is open,
# and more to pour in spring than there are evenings for.
ASKED = {
    "Batch log: entries are likely",
    "Stock: no row to look at",
    "Tested products: no row to look at",
    "Complaints: entries are likely",
    "Evenings have room for what Plan makes",
}


NOT_OF_THIS_MAKER = {"claimed"}  # tax on purchases to claim back, as under VAT


@pytest.fixture(scope="module")
def season():
    return folder.read(folder.DEMO, records=True).with_records()


@pytest.fixture(scope="module")
def made(season, tmp_path_factory):
    # A batch of this maker takes more than six things: the list of what was used has more lines than six a batch.
    rows = books.few(season) | {"pours": season.tables.room("pours") + 16}
    return books.Book(season, tmp_path_factory.mktemp("demo_year") / "demo.xlsx", rows_of=rows)


@pytest.fixture(scope="module")
def values(made):
    return made.held


def compared(tabs):
    """What differs between the tabs and the reference, and how many figures of each tab they both have.

    A month, a place or a product in which nothing was sold is a line of nothing on the tabs alone.
    """
    expected, found = figures(worked_out(tabs.as_poured())), tabs.figures()
    found = {figure: value for figure, value in found.items() if figure in expected or value != 0}
    both = {figure: expected[figure] for figure in found if figure in expected}
    return differences(both, found), Counter(figure.tab for figure in both)


def test_it_is_an_autumn_of_sixty_purchases_and_eighty_batches(season):
    bought, pours = ([row for _, row in season.rows(key) if not row["kind"]] for key in ("purchases", "pours"))
    assert (len(bought), len(pours)) == (60, 80)
    assert problems(season, {key: season.tables.room(key) for key in season.tables}) == [] and season.doubts == ()
    assert {row["product"] for row in pours} == set(season.names("recipes"))
    for key in ("purchases", "pours", "instead", "moves", "counts", "rates"):
        columns = [{name for name, value in row.items() if value is not None} for _, row in season.rows(key)]
        assert set().union(*columns) == set(season.tables[key].columns) - NOT_OF_THIS_MAKER, key


def test_every_figure_is_what_the_rules_come_to(season, made, values):
    different, count = compared(Typed(year_of(season), made.plan, values))
    assert different == []
    logs = {"Purchases", "Batch log", "Used", "Moves", "Counts", "Sales", "Market lines"}
    assert set(count) == logs | {"Stock", "Candles", "Lots", "Sold", "At shops", "By place", "By product", "Months"}
    assert sum(count.values()) > 10000


def test_a_cent_that_is_not_there_is_found(season, made, values):
    cell = made.cell("pours", "making", len(made.rows("pours")) - 1)
    tabs = Typed(year_of(season), made.plan, values | {cell: values[cell] + 0.01})
    assert len(compared(tabs)[0]) == 1


def test_the_office_comes_to_the_same(season, made, office):
    tabs = Typed(year_of(season), made.plan, office.recalculated(made.path))
    assert compared(tabs)[0] == []


def test_nothing_is_to_mend_and_what_is_asked_is_meant(made, values):
    assert values[made.named("master_check")] == "5 to look at"
    assert {line for line, verdict in verdicts(values).items() if verdict != "agrees"} == ASKED


def test_show_gives_every_line_of_what_was_used(season, made):
    calculated = report.Calculated(season, drafted(season, books.DATED, rows_of=made.rows_of))
    lines = shown.of_list(calculated, "used")
    batches = {f"{row['batch']:.0f}" for _, row in season.rows("pours") if not row["kind"]}
    assert {f"{line['Batch number']:.0f}" for line in lines if line["Batch number"]} == batches
    with pytest.raises(ValueError, match="--product goes with costs, prices, pours, candles, season, plan and batch"):
        shown.of_list(calculated, "used", "Fig melt bar")


def faults(made):
    """Line -> what is typed, and other lines that cannot but turn with it."""

    def at(table, row, **entries):
        return {made.cell(table, key, row): value for key, value in entries.items()}

    def row(table, **wanted):
        return next(
            place for place, held in made.rows(table) if all(held[key] == value for key, value in wanted.items())
        )

    jars = row("purchases", document="4651", material="Clear jar, straight")
    wax = row("purchases", document="H-21405", material="Soft plant wax for jars")
    batch = row("pours", batch=470.0)
    raffle = row("moves", notes="School raffle")
    over_sets = "Candles: no more in packed sets than there are"
    too_late = "Stock: no day on which more was used than had come by then"
    return {
        "Purchases: every row begun is whole": (at("purchases", jars, date="the 8th"), ()),
        "Batch log: every row begun is whole": (at("pours", batch, batch=469), ()),
        "Batch log: no more came out than was planned": (at("pours", batch, planned=30), ()),
        "Batch log: no opening stock of no candles": (at("pours", 0, good=0), ()),
        too_late: (at("purchases", jars, date=books.DATED.replace(month=11)), ()),
        "Stock: no use of more than was bought": (at("purchases", wax, packs=0.1), (too_late,)),
        over_sets: (at("moves", raffle, amount=6), ()),
        "Candles: no more gone than were made": (
            at("moves", raffle, amount=400),
            (over_sets, "Candles: no row to look at"),
        ),
        "Used otherwise: no material that the batch does not take": (
            at("instead", 2, material="Cork lid, tumbler"),
            (),
        ),
        "Used otherwise: no line in which nothing is otherwise": (at("instead", 2, lot=None), ()),
        "Taken out: no line of neither material nor product, or of both": (
            at("moves", raffle, material="Steel lid, jar"),
            (),
        ),
        "Counts: no line of neither material nor product, or of both": (at("counts", 0, material=None), ()),
    }


def test_a_fault_turns_its_own_line_and_no_other(made):
    held, lines = engine.Held(made.path), [cell for cell in made.held if cell[0] == "Checks"]
    for line, (edits, with_it) in faults(made).items():
        after = held.cells(held.changed(edits), lines)
        turned = {name for name, verdict in verdicts(after).items() if verdict not in ("agrees", "waits")}
        assert turned - ASKED == {line, *with_it}, line
