"""The season after opens with what the one before closes with: the laws that no closing may break.

`python tests/bench/close_years.py 200` tries as many years as it is asked for.
"""

from collections import Counter

import pytest
from click.testing import CliRunner
from closing_laws import LAWS, Closing, at_shops, two_seasons_end_as_one
from year_workbook import type_in
from years_to_close import A_YEAR, LAST, NEXT, STALL, WEB, calculated, closable, copy, things

from candlecalc.commands.cli import main
from candlecalc.season import folder
from candlecalc.season.tables import TABLES
from candlecalc.season.tables.sell import PRICES
from candlecalc.season.tables.set_up import RECIPES
from candlecalc.workbook.next_season.carried import RULES
from candlecalc.workbook.next_season.closing import stopped_by
from candlecalc.workbook.next_season.in_force import needed
from candlecalc.workbook.reading.spots import TODAYS

pytestmark = pytest.mark.usefixtures("few_rows", "made_once")

YEARS = [(11, "fifo"), (12, "average")]


@pytest.fixture(scope="module", params=YEARS, ids=lambda param: f"year {param[0]}, {param[1]}")
def closing(request):
    return Closing(closable(*request.param))


@pytest.mark.parametrize("law", LAWS, ids=lambda law: law.__name__)
def test_of_a_year_and_the_seasons_after_it(closing, law):
    assert law(closing) == []


def test_two_seasons_end_as_one():
    assert two_seasons_end_as_one(closable(13, "fifo", counts=False)) == []


# --- what stops it ------------------------------------------------------------------------------


@pytest.fixture(scope="module")
def first_closing():
    return Closing(closable(*YEARS[0]))


@pytest.fixture(scope="module")
def stops(first_closing):
    """What stops the same season once slips are typed into its logs, one of each kind."""
    before, season = first_closing.before, copy(first_closing.season)
    wax, (of_wax, _) = next(iter(things(before, "stock").items()))
    (candle, (of_candle, _)), (other, (of_other, _)), (third, _), *_ = things(before, "candles").items()
    line, there = {"date": LAST, "price": 5.0}, Counter()
    for (_, product), pieces in at_shops(season).items():
        there[product] += pieces
    slips = {
        "moves": [
            {"date": LAST, "kind": "broken", "material": wax, "amount": of_wax + 7},
            {"date": NEXT, "kind": "broken", "material": wax, "amount": 1.0},
        ],
        "counts": [
            {"date": LAST, "product": candle, "counted": of_candle - there[candle] + 2},
            {"date": LAST, "product": other, "counted": of_other + 2},
            {"date": LAST, "product": other, "counted": of_other - there[other]},
        ],
        "sales": [
            line | {"place": WEB, "kind": "gift card spent", "order": "G-99"},
            line | {"place": STALL, "product": third, "kind": "back", "pieces": 1.0},
        ],
    }
    for key, rows in slips.items():
        type_in(season, key, [*(row for _, row in season.rows(key)), *rows])
    return (
        wax,
        candle,
        other,
        third,
        [f"{each.tab}: {each.words}" for each in stopped_by(calculated(season), TODAYS, NEXT)],
    )


def test_a_material_of_which_more_is_gone_than_came_stops_it(stops):
    wax, *_, told = stops
    assert f"Stock: {wax}: 8 more gone than there were: type a purchase that is missing, or count them" in told


def test_the_last_count_of_a_thing_stops_it_where_its_difference_is_not_booked(stops):
    _, candle, other, _, told = stops
    words = f"by the count of {LAST} 2 are too many, and not booked: type yes under Take over, or find them"
    assert f"Counts: {candle}: {words}" in told and not any(other in each for each in told)


def test_more_that_comes_back_from_a_shop_than_went_there_stops_it(stops):
    *_, candle, told = stops
    words = f"1 more came back from {STALL} or were sold there than had gone there: type what went out"
    assert f"Sales: {candle}: {words}" in told


def test_a_gift_card_of_which_too_much_is_spent_stops_it(stops):
    assert "Sales: gift card G-99: 5 more was used than there was of it" in stops[-1]


def test_a_line_of_the_next_season_stops_it(stops):
    words = f"{NEXT} is in the next season, from {NEXT} on: type this line there, or let it begin later"
    assert f"Taken out: {words}" in stops[-1]


def test_an_entry_that_is_no_number_stops_it(first_closing):
    season = copy(first_closing.season)
    rows = [row for _, row in season.rows("purchases")]
    type_in(season, "purchases", [rows[0] | {"packs": "two"}, *rows[1:]])
    told = [f"{each.tab}: {each.words}" for each in stopped_by(calculated(season), TODAYS, NEXT)]
    assert len(told) == 1 and told[0].startswith('Purchases: it is the text "two"')


# --- what holds from a day on -------------------------------------------------------------------


def prices(*days):
    return [{"product": "Tin", "place": STALL, "price": float(at), "holds_from": day} for at, day in enumerate(days)]


BEFORE, EARLIER, LATER = NEXT - A_YEAR / 2, NEXT - A_YEAR, NEXT + A_YEAR / 2


@pytest.mark.parametrize(
    "days, kept",
    [
        ((None, EARLIER, BEFORE), [2]),
        ((None, BEFORE, LATER), [1, 2]),
        ((BEFORE, None), [0]),
        ((None,), [0]),
        ((LATER,), [0]),
        ((None, NEXT), [1]),
    ],
)
def test_the_row_that_holds_and_those_to_come_are_kept(days, kept):
    assert [row["price"] for row in needed(prices(*days), PRICES, NEXT)] == kept


def test_a_recipe_is_kept_while_something_is_left_that_was_poured_by_it():
    rows = [{"product": "Tin", "holds_from": day} for day in (None, EARLIER, BEFORE)]
    kept = needed(rows, RECIPES, NEXT, {"tin": [EARLIER]})
    assert [row["holds_from"] for row in kept] == [EARLIER, BEFORE]


# --- the commands -------------------------------------------------------------------------------


def run(*given):
    return CliRunner().invoke(main, [str(each) for each in given])


@pytest.fixture(scope="module")
def made(first_closing, tmp_path_factory):
    """A season as a folder, and the workbook of the season after it."""
    path = tmp_path_factory.mktemp("after")
    folder.write(first_closing.season, path / "before")
    done = run("new", path / "next.xlsx", "--after", path / "before", "--season", "Spring")
    return path, done


def test_the_command_says_what_it_opens_with_and_what_is_not_carried_over(made):
    path, done = made
    lines = done.output.splitlines()
    assert (
        f"{path / 'next.xlsx'}: Spring, 2027-01-01 to 2027-12-31, opens with what {path / 'before'} closes with:"
        in lines
    )
    assert any(line.startswith(f"not carried over from {path / 'before'}: Used otherwise: ") for line in lines)


def test_a_line_typed_late_shows_in_the_check_against_the_season_before(made):
    path, _ = made
    same = run("check", path / "next.xlsx", "--against", path / "before")
    assert same.output.splitlines()[-1] == f"{path / 'next.xlsx'}: it opens with what {path / 'before'} closes with"
    late = folder.read(path / "before")
    name = late.names("materials")[0]
    more = {"date": LAST, "material": name, "packs": 2.0, "price": 10.0, "lot": "late", "paid_on": LAST}
    type_in(late, "purchases", [*(row for _, row in late.rows("purchases")), more])
    folder.write(late, path / "late")
    told = run("check", path / "next.xlsx", "--against", path / "late")
    words = f"Purchases: {name}, late, {LAST}: opens with nothing; the season before closes with Packs 2, Price 20"
    assert told.exit_code == 1 and f"{path / 'next.xlsx'}, {words}" in told.output.splitlines()


def test_a_season_that_cannot_be_closed_makes_no_workbook(made):
    path, _ = made
    short = folder.read(path / "before")
    name = short.names("materials")[0]
    type_in(short, "moves", [{"date": LAST, "kind": "broken", "material": name, "amount": 9e6}])
    folder.write(short, path / "short")
    told = run("new", path / "none.xlsx", "--after", path / "short", "--season", "Spring")
    assert told.exit_code == 1 and f"{name}: " in told.output and not (path / "none.xlsx").exists()


@pytest.mark.parametrize(
    "given, words",
    [
        (["--after", "before"], "--after needs --season"),
        (["--after", "before", "--demo", "--season", "S"], "do not go together"),
        (["--after", "before", "--records", "--season", "S"], "as they are in the workbook before"),
        (["--last-day", "2028-01-01"], "go with --after"),
        (["--from", "before", "--season", "S"], "keeps its season and its records"),
        (["--after", "before", "--season", "S", "--first-day", "2025-01-01"], "does not come after"),
    ],
)
def test_what_does_not_go_together_is_refused(made, given, words):
    path, _ = made
    told = run("new", path / "none.xlsx", *(path / "before" if each == "before" else each for each in given))
    assert (told.exit_code, words in told.output) == (2, True), told.output


def test_every_table_of_records_is_thought_of():
    """What is taken over as it stands is named here, so that a new table is decided on."""
    as_it_stands = {"vessels", "extras", "sets", "oil_sheets", "labels", "papers", "wicks", "burn_targets", "melts"}
    as_it_stands |= {"accounts", "imports", "buying_terms", "on_order"}
    assert set(TABLES) == set(RULES) | as_it_stands
