"""The pour day: pots in order with the maker's own times, and what is short over all of them.

Times are compared with the functions, called with the readings that are typed; what is needed of each material is
added up anew from the recipes' amounts.
"""

import math
from collections import defaultdict

import books
import burn_logs
import pytest

import candlecalc
from candlecalc.workbook.tabs.make.pour_day import SHORT_LINES
from candlecalc.workbook.tabs.working.amounts import PARTS

DAY = {"Orange and clove tumbler": 24.0, "Pear and honey tin": 36.0, "Bitter orange tin": 60.0}
MELTS = [  # date, weight, power, began, ended, minutes, first, second, apart, room
    (80.0, 1000.0, 70.0, 185.0, 43.0, 176.0, 134.0, 52.0, 71.0),
    (92.0, 1000.0, 72.0, 185.0, 51.0, 175.0, 133.0, 56.0, 73.0),
    (60.0, 1000.0, 69.0, 183.0, 31.0, None, None, None, None),
]
KEYS = ("weight", "power", "began", "ended", "minutes", "first", "second", "apart", "room")


def season():
    made = books.small().with_records()
    wax = next(row["material"] for _, row in made.rows("materials") if row["kind"] == "wax")
    day = made.settings["first_day"]
    melts = [{"date": day, "wax": wax, **dict(zip(KEYS, melt, strict=True))} for melt in MELTS]
    return burn_logs.put(made, melts=melts, pour_day=[{"product": name, "count": many} for name, many in DAY.items()])


def celsius(degrees):
    return (degrees - 32) / 1.8


@pytest.fixture(scope="module")
def made(tmp_path_factory):
    return books.Book(season(), tmp_path_factory.mktemp("pour day") / "evening.xlsx")


@pytest.fixture(scope="module")
def wax(made):
    return next(row for _, row in made.rows("materials") if row["kind"] == "wax")


def times(made, wax):
    """The mean and worst efficiency of the heater, and the mean and longest minutes from oil to pouring."""
    grams, melting = made.season.measures.weight_g, celsius(wax["melt_high"])
    efficiencies, cooling = [], []
    for weight, power, began, ended, minutes, first, second, apart, room in MELTS:
        heat = candlecalc.heat_for_wax(weight * grams, celsius(began), celsius(ended), melting)
        efficiencies.append(candlecalc.heater_efficiency(heat, power, minutes))
        if first:
            readings = celsius(first), celsius(second), apart, celsius(room), melting
            oil, pour = (candlecalc.cooling_time(*readings, celsius(wax[key])) for key in ("add_at", "pour_at"))
            cooling.append(pour - oil)
    return (sum(efficiencies) / 3, min(efficiencies)), (sum(cooling) / 2, max(cooling))


def evening(made, wax, values):
    """[(melter on, first pot, last pot, latest)] of each product in minutes, by the functions."""
    (mean, worst), (cooling, longest) = times(made, wax)
    grams, start = made.season.measures.weight_g, sum(melt[2] for melt in MELTS) / 3
    free, free_late, found = 0.0, 0.0, []
    for row, (product, count) in enumerate(DAY.items()):
        melt = values[made.cell("amounts", "melt", product)] * count
        pots = candlecalc.pots_needed(melt, made.season.settings["largest_pot"])
        degrees = (celsius(each) for each in (start, wax["add_at"], wax["melt_high"]))
        heat = candlecalc.heat_for_wax(melt / pots * grams, *degrees)
        heating, slow = (candlecalc.melt_time(heat, 1000, share) for share in (mean, worst))
        assert values[made.cell("pour_day", "pots", row)] == pots
        begins, free, free_late = free, free + pots * heating, free_late + pots * slow
        found.append((begins, begins + heating + cooling, free + cooling, free_late + longest))
    return found


def needed(made, values):
    """By material: what the evening takes of it."""
    found = defaultdict(float)
    for product, count in DAY.items():
        for part, row in PARTS.items():
            at = values.get(made.cell("workings", row, product), "")
            if at != "":
                found[int(at) - 2] += values[made.cell("amounts", part, product)] * count
    return found


def differences(made, wax, values):
    found = []
    for row, minutes in enumerate(evening(made, wax, values)):
        for key, expected in zip(("begins", "first_at", "last_at", "latest"), minutes, strict=True):
            got = values[made.cell("pour_day", key, row)] * 1440
            # A time of day is read back to the thousandth of a second.
            if not math.isclose(got, expected, abs_tol=1e-4):
                found.append((row, key, got, expected))
    wanted = needed(made, values)
    for row, material in made.rows("materials"):
        got = values[made.cell("pour_needs", "needed", row)]
        if got != pytest.approx(wanted[row]):
            found.append((material["material"], got, wanted[row]))
    return found


def test_the_evening_is_what_the_functions_make_of_the_makers_own_readings(made, wax, office):
    for values in (made.held, office.recalculated(made.path)):
        assert differences(made, wax, values) == []


def test_a_pot_that_cools_otherwise_is_found(made, wax):
    values = made.held
    cell = made.cell("pour_day", "last_at", 2)
    assert differences(made, wax, values | {cell: values[cell] + 1 / 1440})


def test_the_page_shows_the_evening_in_its_order_and_each_material_that_is_short(made):
    values = made.held
    shown = [values.get(("Pour day", f"A{row}"), "") for row in range(9, 12)]
    assert shown == list(DAY)
    assert values["Pour day", "B3"] == max(values[made.cell("pour_day", "last_at", row)] for row in range(3))
    short = {}
    for row, material in made.rows("materials"):
        by = values[made.cell("pour_needs", "short", row)]
        assert by == pytest.approx(max(0, needed(made, values)[row] - values[made.cell("materials", "stock", row)]))
        short |= {material["material"]: by} if by else {}
    first = 9 + made.plan.layouts["pour_day"].rows + 2  # a line for each row of Pour list, a blank one, the heads
    rows = range(first, first + SHORT_LINES)
    lines = {values[("Pour day", f"A{row}")]: values[("Pour day", f"E{row}")] for row in rows}
    assert lines == pytest.approx(dict(list(short.items())[:SHORT_LINES]))
    assert values["Pour day", f"G{rows[-1]}"] == f"and {len(short) - SHORT_LINES} more: see Pour day needs"


def test_without_a_melt_of_ones_own_there_is_no_time_and_it_says_what_to_type(made, office):
    gone = {made.cell("melts", key, row): None for row in range(len(MELTS)) for key in ("date", "wax", *KEYS)}
    (values,) = office.edited_each(made.path, [gone])
    assert values.get(made.cell("pour_day", "first_at", 0), "") == ""
    assert values[made.cell("pour_day", "status", 0)].startswith("Melts timed: type a melt of yours")
    assert values[made.cell("pour_day", "melt", 0)] > 0
