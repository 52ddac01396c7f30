"""An evening as Start tells it, typed in LibreOffice as a person types, in two languages.

Wicks, aims, a test with its burns, a melt with a clock, and what to pour.
"""

import books
import pytest

TYPED = [  # (table, row, entries in the order of the columns, by key)
    ("wicks", 0, {"wick": "Cotton braid, fine", "kind": "cotton", "size": "1"}),
    ("burn_targets", 0, {"vessel": "Travel tin", "rate_low": "0.08", "rate_high": "0.13", "flame_high": "1.4"}),
    ("burn_tests", 0, {"test": "T1", "date": "2027-09-01", "product": "Pear and honey tin", "vessel": "Travel tin",
                       "wax": "Soft plant wax for jars", "load": "8%", "wick": "Cotton braid, fine",
                       "other_burning": "0", "afterglow": "3", "vessel_after": "whole", "lit_again": "no"}),
    ("burn_cycles", 0, {"test": "T1", "date": "2027-09-01", "hours": "4", "before": "6.12", "after": "5.7",
                        "flame": "1.05"}),
    ("burn_cycles", 1, {"test": "T1", "date": "2027-09-03", "hours": "4", "before": "5.28", "after": "4.85",
                        "flame": "1.1", "seen": "mushrooming"}),
    ("burn_cycles", 2, {"test": "T1", "date": "2027-09-02", "hours": "4", "before": "5.7", "after": "5.28",
                        "flame": "1"}),
    ("melts", 0, {"date": "2027-09-04", "wax": "Soft plant wax for jars", "weight": "80", "power": "1000",
                  "began": "70", "ended": "185", "minutes": "43.5", "first": "176", "second": "134", "apart": "52",
                  "room": "71"}),
    ("pour_day", 0, {"product": "Pear and honey tin", "count": "24"}),
    ("pour_day", 1, {"product": "Orange and clove tumbler", "count": "12"}),
]  # fmt: skip
ROOM = {"wicks": 3, "burn_targets": 3, "burn_tests": 3, "burn_cycles": 5, "melts": 3, "pour_day": 12, "purchases": 2}


@pytest.fixture(scope="module")
def blank(tmp_path_factory):
    season = books.small().with_records()
    rooms = books.few(season) | ROOM
    return books.Book(season, tmp_path_factory.mktemp("evening") / "blank.xlsx", rows_of=rooms)


@pytest.fixture(scope="module", params=["en-US", "de-DE"])
def typed(request, blank, office_in):
    def as_typed(text):
        return text.replace(".", ",") if request.param == "de-DE" else text

    gestures = [
        ("type", *blank.cell(table, key, row), as_typed(text))
        for table, row, entries in TYPED
        for key, text in entries.items()
    ]
    gestures += [("type", "Test sheet", "A3", "T1"), ("type", "Wick summary", "A3", "Pear and honey tin")]
    (values,) = office_in(request.param).after_gestures(blank.path, [gestures])
    return values


def test_nothing_is_to_mend(blank, typed):
    for table, row, _ in TYPED:
        assert typed.get(blank.cell(table, "status", row), "") == "", (table, row)


def test_the_test_is_judged_and_its_burns_stand_in_order(blank, typed):
    rate, verdict, sign = (typed[blank.cell("test_results", key, 0)] for key in ("rate", "verdict", "sign"))
    # 6.12, 5.7, 5.28 and 4.85 oz after 0, 4, 8 and 12 hours: (3 x 1.27 + 0.42) / 40 (worked).
    assert rate == pytest.approx((3 * 1.27 + 0.42) / 40)
    assert (verdict, sign) == ("meets the maker's targets", "mushrooming")
    assert [typed[blank.cell("burns", "hours", row)] for row in range(3)] == [4, 8, 12]


def test_the_sheet_and_the_summary_show_it(typed):
    assert [typed["Test sheet", f"E{row}"] for row in (13, 14, 15)] == [5.7, 5.28, 4.85]
    assert typed["Test sheet", "I15"] == "mushrooming"
    assert (typed["Wick summary", "A12"], typed["Wick summary", "B12"]) == ("Cotton braid, fine", 1)
    assert typed["Wick summary", "B26"] == "within targets in 1 of at least 3 pieces: burn another"


def test_the_evening_has_its_hours(blank, typed):
    first, second = (typed[blank.cell("pour_day", "last_at", row)] for row in range(2))
    assert 0 < first < second == typed["Pour day", "B3"]
