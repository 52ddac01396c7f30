"""A season as typed: what is wrong with it is found, each thing once."""

import datetime

import pytest

from candlecalc.season import folder
from candlecalc.season.season import Season, frame, problems
from candlecalc.season.tables import TABLES


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


@pytest.mark.parametrize("key", TABLES)
def test_what_must_stand_alone_is_found_the_second_time_however_it_is_written(season, key):
    rows, alone = rows_of(season, key), TABLES[key].alone
    again = rows[0] | {field: str(rows[0][field]).upper() for field in alone}
    found = [problem for problem in problems(with_rows(season, key, [*rows, again])) if "twice" in problem.words]
    assert [(problem.tab, problem.row, problem.column) for problem in found] == [
        (TABLES[key].title, len(rows), alone[0])
    ]


@pytest.mark.parametrize("key, part", [(key, part) for key in ("sets", "prices") for part in TABLES[key].alone])
def test_half_a_pair_may_stand_again(season, key, part):
    rows = rows_of(season, key)
    pairs = {tuple(row[field] for field in TABLES[key].alone) for row in rows}
    other = next(
        row | {part: one[part]} for row in rows for one in rows
        if tuple((row | {part: one[part]})[field] for field in TABLES[key].alone) not in pairs
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
