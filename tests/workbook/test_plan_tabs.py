"""Plan and To buy: what to make by when, on which evenings, and what to buy, by textbooks and by brute force."""

import datetime

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from plan_books import EVERY_DAY, WAX, Planned, day, maker
from plan_cases import cheapest, least_early, pots_on_evenings

from candlecalc.calc import evenings_needed, packs_at_breaks, pour_by_own_days, price_at_breaks
from candlecalc.quantities.days import serial
from candlecalc.workbook.tabs.plan.weeks_ahead import CASH
from candlecalc.workbook.tabs.plan.weeks_ahead import TAB as WEEKS_AHEAD

FIRST = day("2028-01-03")  # a Monday


def wanted(when, product, pieces, **more):
    return {"day": when, "product": product, "pieces": float(pieces), "finishing": 0.0} | more


def serials(days):
    return [serial(each) for each in days]


# OpenStax, Principles of Managerial Accounting, 7.2, Big Bad Bikes: sales by quarter, closing stock wanted, what to
# make. A quarter's first days that are no first of a month, so that nothing sells over a month.
QUARTERS = [
    ("2028-01-04", 1000, 300, 1300),
    ("2028-04-03", 1000, 450, 1150),
    ("2028-07-03", 1500, 750, 1800),
    ("2028-10-02", 2500, 1050, 2800),
]


def test_a_production_budget_of_a_textbook_is_made_by_the_plan():
    lines = [wanted(day(when), "Bike", sales, buffer=float(closing)) for when, sales, closing, _ in QUARTERS]
    season = maker(FIRST, candles=["Bike"], materials={"Fibre": (1.0, {"Bike": 3.2})}, demand=lines)
    planned = Planned(season)
    assert planned.column("plan_lines", "make") == [make for *_, make in QUARTERS]
    # 3.2 lb each for 7,050 of them: 22,560 lb before what is to be left of it.
    assert planned.column("plan_needs", "need", material="Fibre") == [pytest.approx(22_560)]


# A published exercise on net requirements, its answer recomputed (second-hand): A takes 2 B and 3 C, B one F,
# C one D, one E and two F. On hand 20 A, 50 B, 60 C, 25 D. Packs of 50 D, 100 E, 100 F. A is a set here.
def test_requirements_go_through_sets_to_whole_packs():
    day_of = {week: FIRST + datetime.timedelta(7 * week) for week in range(1, 9)}
    lines = [wanted(day_of[week], "A", count) for week, count in ((1, 20), (2, 20), (6, 60), (8, 50))]
    # What the 20 A hold, and the 30 B that come, besides what the exercise has on hand.
    stood = {"B": 50 + 30 + 2 * 20, "C": 60 + 3 * 20, "A": 20}
    opening = [
        {"date": FIRST - datetime.timedelta(20 - nth), "batch": float(nth), "product": product, "good": float(count)}
        | {"kind": "opening", "cost": 1.0}
        for nth, (product, count) in enumerate(stood.items(), start=1)
    ]
    bought = [{"date": FIRST - datetime.timedelta(20), "material": "D", "packs": 0.5, "price": 1.0, "kind": "opening"}]
    packs = {"D": (50.0, {"C": 1}), "E": (100.0, {"C": 1}), "F": (100.0, {"B": 1, "C": 2})}
    season = maker(
        FIRST,
        candles=["B", "C"],
        materials=packs,
        sets={"A": {"B": 2, "C": 3}},
        demand=lines,
        pours=opening,
        purchases=bought,
    )
    planned = Planned(season)
    # 130 A are started, in three lots of 20, 60 and 50; 180 B (80 and 100) and 330 C (180 and 150).
    assert [pack for pack in planned.column("demand", "pack") if pack] == [20, 60, 50]
    made = planned.rows("plan_lines", "thing", "make")
    assert [sum(make for thing, make in made if thing == row) for row in (2, 3)] == [180, 330]
    # ... and for them 350 of D, 400 of E, 900 of F: seven, four and nine packs.
    assert dict(planned.rows("to_buy", "material", "packs")) == {WAX: 51, "D": 7, "E": 4, "F": 9}


def test_a_month_offers_what_was_sold_last_season_times_the_factor_and_gives_way_to_what_is_typed():
    sold = [
        {"month": day("2027-03-01"), "product": "Fig", "place": place, "pieces": pieces}
        for place, pieces in (("Stall", 10.0), ("Shop", 30.0))
    ]
    place = {"kind": "own stall", "per_order": 1.0, "collector": "maker", "margin": 0.1, "rules": "gb"}
    lines = [
        {"day": day("2028-03-01"), "product": "Fig", "factor": 1.2},
        {"day": day("2028-03-01"), "product": "Fig", "place": "Stall"},
        {"day": day("2028-03-01"), "product": "Fig", "place": "Shop", "pieces": 7.0},
    ]
    season = maker(
        FIRST,
        candles=["Fig"],
        last_sold=sold,
        demand=lines,
        places=[place | {"place": each} for each in ("Stall", "Shop")],
    )
    assert Planned(season).rows("demand", "offered", "wanted") == [(48, 48), (10, 10), (30, 7)]


def test_a_scent_of_one_season_is_made_up_to_where_one_more_would_not_pay():
    # stockpyl 1.0.2, newsvendor_normal_explicit(1, 0.3, 0.12, 50, 8): 56.60; here with the cost of the candle itself.
    cost = Planned(maker(FIRST, candles=["Fig"], demand=[])).column("costing", "making")[0]
    scale = cost / 0.3
    line = wanted(day("2028-03-02"), "Fig", 50, spread=8.0, brings=1 * scale, leftover=0.12 * scale)
    assert Planned(maker(FIRST, candles=["Fig"], demand=[line])).column("demand", "wanted") == [57]


@settings(max_examples=3, deadline=None)
@given(st.integers(10, 120), st.integers(0, 20), st.integers(0, 4), st.integers(1, 30))
def test_pour_days_are_those_of_the_function_for_own_days(ahead, cure, finishing, pots):
    """One line alone, so late that there is time for it."""
    sale = FIRST + datetime.timedelta(130 + ahead)
    week = [{"weekday": name, "pots": 3.0} for name in ("Tuesday", "Thursday", "Saturday")]
    off = [sale - datetime.timedelta(back) for back in (20, 21, 22)]
    evenings = [*week, *({"date": each, "pots": 0.0} for each in off)]
    line = wanted(sale, "Fig", 10 * pots, finishing=float(finishing))
    season = maker(FIRST, candles=["Fig"], cure=float(cure), evenings=evenings, demand=[line])
    begin = pour_by_own_days(sale, cure, "Tue Thu Sat", evenings_needed(pots, 3), finishing, off)
    assert Planned(season).column("plan", "begin") == [serial(begin)]


def test_what_is_curing_counts_once_it_has_cured_by_then():
    pour = [{"date": day("2028-01-02"), "batch": 1.0, "product": "Fig", "good": 12.0}]
    lines = [wanted(day("2028-01-10"), "Fig", 5), wanted(day("2028-01-20"), "Fig", 20)]
    season = maker(FIRST, candles=["Fig"], cure=14.0, demand=lines, pours=pour)
    # 5 that nothing stands for yet; then 25 in all, less those 5 and the 12 that have cured.
    assert Planned(season).column("plan_lines", "make") == [5, 8]


@pytest.mark.parametrize("seed", range(2))
def test_no_pot_is_poured_earlier_than_it_must_be(seed):
    case = pots_on_evenings(seed)
    planned = Planned(case.season())
    assert case.early(planned.rows("plan", "due", "pots", "before")) == least_early(case)


@given(st.integers(0, 12), st.integers(2, 10), st.integers(1, 10), st.data())
def test_no_number_of_packs_costs_less_than_the_one_at_the_breaks(packs, first, more, data):
    prices = sorted(data.draw(st.lists(st.integers(1, 40), min_size=3, max_size=3)), reverse=True)
    given_ = packs, prices[0], first, prices[1], first + more, prices[2]
    best = packs_at_breaks(*given_)
    assert best >= packs
    assert best * price_at_breaks(best, *given_[1:]) == cheapest(*given_)


def test_what_comes_too_late_or_in_time_decides_by_when_to_buy():
    terms = [{"material": WAX, "lead": 6.0, "first": 4.0, "first_price": 7.0}]
    # 3,300 g in February and none before: 4 packs at 7 cost less than 4 at 10; on order is one, due in March.
    coming = [{"material": WAX, "packs": 1.0, "due": day("2028-03-10"), "to_pay": 8.0}]
    line = wanted(day("2028-02-20"), "Fig", 43)
    season = maker(FIRST, candles=["Fig"], demand=[line], buying_terms=terms, on_order=coming)
    assert Planned(season).rows("to_buy", "packs", "each", "cost", "there_by", "order_by") == [
        (4, 7, 28, *serials([day("2028-02-01"), day("2028-01-26")]))
    ]


# By hand: 100 candles of 100 g take ten packs of 1,000 g, and 60 take six.
TEN_PACKS = [{"material": WAX, "lead": 0.0, "first": 10.0, "first_price": 7.0}]


@pytest.mark.parametrize(
    "wanted_in, coming, packs, each",
    [
        ((60, 50), 0, 11, 7),  # six for the first month and five for the second are one order of eleven
        ((100, 0), 0, 10, 7),
        ((60, 0), 0, 6, 10),  # six at 10 are 60, ten at 7 are 70
        ((100, 20), 8, 4, 10),  # what was ordered before brings no later order to a cheaper price
        ((100, 100), 8, 12, 7),
    ],
)
def test_a_material_is_one_order_at_the_price_of_its_own_packs(wanted_in, coming, packs, each):
    months = [day("2028-02-20"), day("2028-03-20")]
    demand = [wanted(when, "Fig", pieces) for when, pieces in zip(months, wanted_in, strict=True) if pieces]
    on_order = [{"material": WAX, "packs": float(coming), "due": day("2028-01-20"), "to_pay": 80.0}] if coming else []
    season = maker(FIRST, candles=["Fig"], demand=demand, buying_terms=TEN_PACKS, on_order=on_order)
    planned = Planned(season)
    assert planned.rows("to_buy", "packs", "each", "cost") == [(packs, each, packs * each)]
    assert planned.rows("to_order", "packs", "cost", "in_month") == [(packs, packs * each, packs * each)]


def test_what_to_order_stands_by_the_month_in_which_it_is_to_be_ordered():
    # Wax for February, 14 days on its way: ordered in January. Cord for March alone, there at once.
    terms = [{"material": WAX, "lead": 14.0}]
    demand = [wanted(day("2028-02-20"), "Fig", 50), wanted(day("2028-03-20"), "Pear", 40)]
    season = maker(
        FIRST, candles=["Fig", "Pear"], materials={"Cord": (10.0, {"Pear": 1})}, demand=demand, buying_terms=terms
    )
    planned = Planned(season)
    january, march = serials([FIRST, day("2028-03-01")])
    # Nine packs of wax for all of it at 10; four of cord at 3.
    assert planned.rows("to_order", "month", "material", "packs", "cost", "in_month") == [
        (january, WAX, 9, 90, 90),
        (march, "Cord", 4, 12, 12),
    ]
    place = planned.values[WEEKS_AHEAD.title]
    cash = [row[6] for row in place[CASH : CASH + 3]]  # by month: to order
    assert cash == [90, 0, 12]


def test_evenings_that_are_too_few_are_said_beside_the_line():
    line = wanted(FIRST + datetime.timedelta(3), "Fig", 50)
    season = maker(FIRST, candles=["Fig"], evenings=[each | {"pots": 1.0} for each in EVERY_DAY], demand=[line])
    assert Planned(season).column("plan", "status") == ["1 of its pots come too late: add evenings, or make fewer"]


# A number typed over a formula: the tab, its cell, and the one line of Checks that turns.
FAULTS = {
    "plan": ("make", "Plan makes what its lines need"),
    "plan_needs": ("need", "Needed of all materials is what Plan's candles take"),
    "to_order": ("cost", "To order comes to what To buy comes to"),
    "to_buy": ("number", "To buy has a line for each material that is short"),
    "weeks": (f"G{CASH + 2}", "Cash to order by month is what To buy comes to"),
}


@pytest.mark.parametrize("tab", FAULTS)
def test_a_formula_typed_over_turns_its_line_of_checks_and_no_other(tab):
    cell, line = FAULTS[tab]
    season = maker(
        FIRST, candles=["Fig"], materials={"Cord": (5.0, {"Fig": 1})}, demand=[wanted(day("2028-02-20"), "Fig", 43)]
    )
    planned = Planned(season)
    before = planned.turned()
    place = planned.plan.layouts.get(tab)
    sheet, at = (
        (place.title, f"{place.letters[cell]}{place.first_row + 1 * (tab == 'to_buy')}")
        if place
        else (WEEKS_AHEAD.title, cell)
    )
    planned.type_over(sheet, at, "" if tab == "to_buy" else 7)
    assert planned.turned() - before == {line}
