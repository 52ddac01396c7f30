"""A season as typed: what is wrong with it is found, each thing once."""

import datetime

import pytest

from candlecalc.season import folder
from candlecalc.season.season import Season, frame, problems
from candlecalc.season.tables import TABLES, tables_of


@pytest.fixture
def season():
    return folder.read(folder.DEMO)


def with_rows(season, key, rows):
    season.tables[key] = frame(rows, TABLES[key])
    return season


def rows_of(season, key):
    return [row for _, row in season.rows(key)]


def test_the_demo_has_no_problem(season):
    assert problems(season) == []


@pytest.mark.parametrize("key", tables_of(False))
def test_what_must_stand_alone_is_found_the_second_time_however_it_is_written(season, key):
    rows, alone = rows_of(season, key), TABLES[key].unique
    again = rows[0] | {field: str(rows[0][field]).upper() for field in alone}
    found = [problem for problem in problems(with_rows(season, key, [*rows, again])) if "twice" in problem.words]
    assert [(problem.tab, problem.row, problem.column) for problem in found] == [
        (TABLES[key].title, len(rows), alone[0])
    ]


@pytest.mark.parametrize("key, part", [(key, part) for key in ("sets", "prices") for part in TABLES[key].unique[:2]])
def test_half_a_pair_may_stand_again(season, key, part):
    rows = rows_of(season, key)
    pairs = {tuple(row[field] for field in TABLES[key].unique) for row in rows}
    other = next(
        row | {part: one[part]} for row in rows for one in rows
        if tuple((row | {part: one[part]})[field] for field in TABLES[key].unique) not in pairs
    )  # fmt: skip
    assert not [problem for problem in problems(with_rows(season, key, [*rows, other])) if "twice" in problem.words]


def test_the_names_of_a_table_are_gathered_once_however_many_rows_ask(season, monkeypatch):
    asked = []
    names = Season.names
    monkeypatch.setattr(Season, "names", lambda self, *of: asked.append(of) or names(self, *of))
    problems(season)
    assert len(asked) == len(set(asked)) > 0


def said(season):
    return [(problem.tab, problem.column, problem.words) for problem in problems(season)]


@pytest.mark.parametrize("day", ["1850-01-01", "1999-12-31", "2100-01-01"])
def test_a_day_that_the_workbook_refuses_is_a_problem(season, day):
    season.tables["materials"].loc[0, "priced_on"] = datetime.date.fromisoformat(day)
    words = f"it is {day}; it takes a day from 2000-01-01 to 2099-12-31"
    assert said(season) == [("Materials", "priced_on", words)]


@pytest.mark.parametrize("day", ["2000-01-01", "2099-12-31"])
def test_a_day_that_the_workbook_takes_is_none(season, day):
    season.tables["materials"].loc[0, "priced_on"] = datetime.date.fromisoformat(day)
    assert said(season) == []


@pytest.mark.parametrize("room", [TABLES["places"].usual_rows, 30])
def test_a_row_below_those_that_formulas_read_is_a_problem(season, room):
    rows = rows_of(season, "places")
    blank = dict.fromkeys(TABLES["places"].keys)
    with_rows(season, "places", [*rows, *[blank] * (room - len(rows)), rows[0] | {"place": "Fair"}])
    words = f"the tab has room for {room} rows, and no formula reads this one: move it up"
    rooms = {key: table.usual_rows for key, table in TABLES.items()} | {"places": room}
    assert [(problem.row, problem.words) for problem in problems(season, rooms)] == [(room, words)]
    assert problems(season.compacted()) == []


@pytest.mark.parametrize("typed, mend", [
    (" Soft plant wax for jars", "type it without the blank"),
    ("soft plant wax for jars ", "type it without the blank"),
    (" ", "add it there, or choose another"),
])  # fmt: skip
def test_blanks_around_a_name_are_a_problem_and_gone_from_a_fresh_workbook(season, typed, mend):
    season.tables["recipes"].loc[0, "wax"] = typed
    assert said(season) == [("Recipes", "wax", f'"{typed}" is not on Materials: {mend}')]
    assert season.compacted().tables["recipes"].loc[0, "wax"] == (typed.strip() or None)


def test_a_name_with_a_blank_is_told_where_it_stands_and_where_it_is_missed(season):
    season.tables["materials"].loc[0, "material"] = "Soft plant wax for jars "
    first, *others = said(season)
    words = 'it is "Soft plant wax for jars ", with a blank that nobody sees: type it without the blank'
    assert first == ("Materials", "material", words)
    users = [row for row in rows_of(season, "recipes") if row["wax"] == "Soft plant wax for jars"]
    missed = ("Recipes", "wax", '"Soft plant wax for jars" stands on Materials with a blank too many')
    weighed = [row for row in rows_of(season, "vessels") if row["fill_wax"] == "Soft plant wax for jars"]
    missed_there = ("Vessels", "fill_wax", missed[-1])
    assert others == [missed_there] * len(weighed) + [missed] * len(users) != []
    assert problems(season.compacted()) == []


@pytest.mark.parametrize("blanks", ["{} ", " {}", "{}\u00a0"])
def test_a_name_whose_blank_is_typed_everywhere_is_a_problem_since_engines_look_it_up_in_their_own_ways(season, blanks):
    name = season.tables["places"].loc[0, "place"]
    season.tables["places"].loc[0, "place"] = blanks.format(name)
    season.tables["prices"]["place"] = season.tables["prices"]["place"].replace(name, blanks.format(name))
    assert {tab for tab, _, _ in said(season)} == {"Places sold", "Prices"}
    assert problems(season.compacted()) == []


def test_a_choice_with_a_blank_is_told_with_what_to_do(season):
    season.tables["places"].loc[0, "collector"] = "Maker "
    assert said(season) == [("Places sold", "collector", 'it is "Maker "; type it without the blank')]


def test_what_is_missing_is_asked_for_in_the_makers_own_unit(season):
    season.tables["vessels"].loc[0, "water"] = None  # of an ounces workbook
    assert said(season) == [("Vessels", "water", "it is missing; type more than 0.35, at most 710")]


@pytest.mark.parametrize(
    "typed, words", [(datetime.time(5, 30), '"05:30:00"'), (float("inf"), '"inf"'), (datetime.timedelta(3), '"3 days')]
)
def test_what_is_no_number_stays_the_words_that_were_typed(season, typed, words):
    season.tables["recipes"].loc[0, "minutes"] = typed
    [(tab, column, told)] = said(season)
    assert (tab, column) == ("Recipes", "minutes")
    assert told.startswith(f"it is the text {words}")
