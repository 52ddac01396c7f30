"""Two candles of the demo worked by hand, step by step, against the workbook's cells and the functions.

Inputs are typed here as they stand in the demo's files; steps are plain arithmetic. Units: an inch is
25.4 mm, an ounce 28.349523125 g, a pound 16 ounces (NIST SP 811, appendix B.8, from memory; exact).
"""

# ruff: noqa: C408  steps keep the names they are worked under

import math

import pytest

import candlecalc.calc as calc

OUNCE, POUND, CUBIC_INCH = 28.349523125, 16, 2.54**3  # g, oz, ml
DENSITY = 0.87  # materials.csv: Soft plant wax for jars
HEADSPACE = {"jar": 0.12, "tumbler": 0.15}  # vessels.csv: Clear jar, Smoke tumbler
WASTE = 0.02  # settings.csv
TAX = 0.06  # settings.csv


def worked_jar():
    """Fig and cedar jar, measured by water: 9.65 oz at 68 degrees Fahrenheit, which is 20 Celsius."""
    # Water at 20 degrees has 0.9982067 g/ml (Tanaka and others 2001; CRC Handbook 0.99821: from memory). Air of
    # 0.0012 g/ml carries part of the water, and of the 8 g/ml weights (OIML R 111, conventional values).
    water = 9.65 * OUNCE  # 273.573 g by the scale
    volume = water * (1 - 0.0012 / 8) / (0.9982067 - 0.0012)  # 274.353 ml to the brim
    fill = volume * (1 - HEADSPACE["jar"]) * DENSITY / OUNCE  # less the headspace, in ounces
    weigh = fill / (1 - WASTE)  # waste is a share of what is weighed out
    wax = weigh / 1.08  # load 0.08 on the wax: 1 part wax and 0.08 of oil
    oil = wax * 0.08
    wax_cost = wax * (92 + 16.2) / (45 * POUND)  # pack of 45 lb with its shipping
    oil_cost = oil * (27.5 + 3.1) / 16  # Fig and cedar oil, 16 oz
    other = (
        (37.2 + 9.6) / 24  # Clear jar, straight
        + (15.6 + 2.4) / 24  # Steel lid, jar
        + (9.8 + 1.4) / 100  # Cotton braid, medium
        + (47 + 4.2) / 250  # Jar label with cautions
        + (33.5 + 6.1 + 2.01) / 50  # Folded carton, small, with tax kept
    )
    minutes = 5.5 + 55 / 24  # each, and set-up over the usual batch
    paid = minutes * 0.5 / 60 * 18.5  # half of the time is paid help
    overhead = minutes / 60 * 1890 / 420  # overhead over the hours of the season
    own = minutes * 0.5 / 60 * 24
    running = minutes / 60 * 1365 / 420
    making = wax_cost + oil_cost + other + paid + overhead
    full = making + own + running
    # Own web shop: 0.031 of all that is paid, with tax; an order of 2.4 candles costs 0.28, postage and carton, and the
    # buyer pays 7 of it; 0.05 discount; prices stated before tax; the season's fixed cost is 6 months at 23.
    fixed = (0.28 + 9.4 + 1.15 - 7 + 7 * (1 + TAX) * 0.031) / 2.4
    received = 20.5 * (1 - 0.05)
    fee = received * (1 + TAX) * 0.031
    profit = received - full - fee - fixed
    target = (full + fixed) / (1 - 0.32 - 0.031 * (1 + TAX))  # before tax: margin and fee are shares of it
    materials = wax_cost + oil_cost + other
    lowest = (materials + fixed) / (1 - 0.031 * (1 + TAX)) / 0.95
    return dict(
        volume=volume, fill=fill, weigh=weigh, wax=wax, oils=[oil], wax_cost=wax_cost, oil_cost=oil_cost, other=other,
        materials=materials, paid=paid, overhead=overhead, making=making, own=own, running=running, full=full,
        received=received, tax=received * TAX, fees=fee + fixed, profit=profit, margin=profit / received,
        to_state=target / 0.95, target_price=math.ceil(target / 0.95 - 0.5) + 0.5, lowest=lowest,
        must_sell=math.ceil(23 * 6 / profit),
    )  # fmt: skip


def worked_tumbler():
    """Winter hearth tumbler: three oils, a tapered glass by its inside measures in inches."""
    top, bottom, height, base = 2.95, 2.55, 3.25, 0.14
    # A cone cut off (frustum), less the round cap that the floor is pushed up by; both in any geometry handbook.
    whole = math.pi * height / 12 * (top * top + top * bottom + bottom * bottom)
    cap = math.pi * base / 6 * (3 * (bottom / 2) ** 2 + base * base)
    volume = (whole - cap) * CUBIC_INCH
    fill = volume * (1 - HEADSPACE["tumbler"]) * DENSITY / OUNCE
    weigh = fill / (1 - WASTE)
    wax = weigh / 1.07  # load 0.07
    oil = wax * 0.07
    oils = [oil * 0.5, oil * 0.3, oil * 0.2]
    wax_cost = wax * (92 + 16.2) / (45 * POUND)
    oil_cost = (
        oils[0] * (26.2 + 3.1) / 16  # Fir and juniper oil, 16 oz
        + oils[1] * (25.8 + 3.1) / POUND  # Smoked plum oil, 1 lb
        + oils[2] * (14.2 + 1.9) / 8  # Clove and bay oil, 8 oz
    )
    other = (
        (22.8 + 6.3) / 12  # Smoke tumbler, tapered
        + (10.2 + 1.2) / 12  # Cork lid, tumbler
        + (15.5 + 1.6) / 50  # Wooden strip, narrow
        + (52 + 4.2) / 250  # Tumbler label with cautions
        + (33.5 + 6.1 + 2.01) / 50  # Folded carton, small
        + (7.6 + 1.5 + 0.46) / 100  # extras.csv: Tissue, unbleached
        + 0.4 * (11.5 + 1.2) / 50  # ... and two fifths of a yard of Waxed cord
    )
    minutes = 6.5 + 70 / 24
    paid = minutes * 0.25 / 60 * 18.5  # a quarter is paid help
    overhead = minutes / 60 * 1890 / 420
    own = minutes * 0.75 / 60 * 24
    running = minutes / 60 * 1365 / 420
    making = wax_cost + oil_cost + other + paid + overhead
    full = making + own + running
    # Saturday market stall: 0.027 of the price with tax, nothing else; prices stated with tax; 16 days at 38.
    received = 22.5 / (1 + TAX)
    fee = 22.5 * 0.027
    profit = received - full - fee
    target = full / (1 - 0.38 - 0.027 * (1 + TAX)) * (1 + TAX)
    materials = wax_cost + oil_cost + other
    lowest = materials / (1 - 0.027 * (1 + TAX)) * (1 + TAX)
    return dict(
        volume=volume, fill=fill, weigh=weigh, wax=wax, oils=oils, wax_cost=wax_cost, oil_cost=oil_cost, other=other,
        materials=materials, paid=paid, overhead=overhead, making=making, own=own, running=running, full=full,
        received=received, tax=received * TAX, fees=fee, profit=profit, margin=profit / received,
        to_state=target, target_price=math.ceil(target - 0.5) + 0.5, lowest=lowest,
        must_sell=math.ceil(38 * 16 / profit),
    )  # fmt: skip


WORKED = {
    ("Fig and cedar jar", "Own web shop"): worked_jar(),
    ("Winter hearth tumbler", "Saturday market stall"): worked_tumbler(),
}
# Step by hand -> the tab and column that must show it.
CELLS = {
    "volume": ("workings", "volume"), "fill": ("workings", "fill"), "weigh": ("workings", "weigh"),
    "wax": ("amounts", "wax_first"), "wax_cost": ("costing", "wax"), "oil_cost": ("costing", "oils"),
    "other": ("costing", "other"), "materials": ("costing", "materials"), "paid": ("costing", "paid"),
    "overhead": ("costing", "overhead"), "making": ("costing", "making"), "own": ("costing", "own"),
    "running": ("costing", "running"), "full": ("costing", "full"),
}  # fmt: skip
PRICE_CELLS = {
    "full": ("prices", "full"), "received": ("prices", "received"), "tax": ("prices", "tax"),
    "fees": ("prices", "fees"), "profit": ("prices", "profit"), "margin": ("prices", "margin"),
    "to_state": ("selling", "to_state"), "target_price": ("prices", "target_price"), "lowest": ("prices", "lowest"),
    "must_sell": ("prices", "must_sell"),
}  # fmt: skip


def test_a_weighed_fill_is_taken_in_its_own_wax_and_scaled_to_a_blend(demo, values):
    # vessels.csv: the tin was weighed with the wax that is in it, the square glass with the first of its two waxes.
    tin, square = 4.05, 13.1
    # Four parts of 0.87 g/ml and one of 0.84: each gram takes so many millilitres.
    blend = 1 / (0.8 / 0.87 + 0.2 / 0.84)
    fills = {"Pear and honey tin": tin, "Fir square, two wicks": square * blend / 0.87}
    for product, fill in fills.items():
        assert values[demo.cell("workings", "fill", product)] == pytest.approx(fill, rel=1e-9)
        assert values[demo.cell("workings", "volume", product)] == ""  # no headspace is taken off
        melt = values[demo.cell("amounts", "melt", product)]
        assert melt == pytest.approx(fill / (1 - WASTE), rel=1e-9)


@pytest.mark.parametrize("product, place", WORKED)
@pytest.mark.parametrize("step", CELLS)
def test_a_candle_costs_in_the_workbook_what_it_costs_by_hand(demo, values, product, place, step):
    assert values[demo.cell(*CELLS[step], product)] == pytest.approx(WORKED[product, place][step], rel=1e-6)


@pytest.mark.parametrize("product, place", WORKED)
def test_its_oils_weigh_in_the_workbook_what_they_weigh_by_hand(demo, values, product, place):
    cells = [demo.cell("amounts", key, product) for key in ("oil_first", "oil_second", "oil_third")]
    oils = [values[cell] for cell in cells if values[cell] != ""]
    assert oils == pytest.approx(WORKED[product, place]["oils"], rel=1e-6)


@pytest.mark.parametrize("product, place", WORKED)
@pytest.mark.parametrize("step", PRICE_CELLS)
def test_its_price_line_holds_what_it_comes_to_by_hand(demo, values, product, place, step):
    cell = demo.cell(*PRICE_CELLS[step], f"{product} @ {place}")
    assert values[cell] == pytest.approx(WORKED[product, place][step], rel=1e-6)


def functions_jar():
    volume = calc.volume_from_water(water=9.65 * OUNCE, temperature=20)
    fill = calc.fill_weight(volume=volume, headspace=0.12, density=0.87)
    weigh = calc.before_waste(amount=fill, waste=0.02)
    oil = calc.oil_for_fill(fill=weigh, load=0.08)
    bought = [(37.2, 24, 9.6, 0), (15.6, 24, 2.4, 0), (9.8, 100, 1.4, 0), (47, 250, 4.2, 0), (33.5, 50, 6.1, 2.01)]
    terms = {"fee": 0.031, "tax": 0.06, "basis": "gross", "least": 0}
    order = calc.order_cost(fee=0.28 + calc.fee_at(price=7, **terms), postage=9.4, packing=1.15, charged=7)
    return (
        _functions(volume, fill, weigh, 0.08, [oil], [(27.5, 16, 3.1)], bought, (5.5, 55, 0.5)),
        {"fixed": calc.fixed_each(item=0, order=order, per_order=2.4), **terms},
        {"shelf": 20.5, "discount": 0.05, "stated": "before tax", "margin": 0.32, "season": 23 * 6},
    )


def functions_tumbler():
    volume = calc.tapered_volume(top=2.95 * 25.4, bottom=2.55 * 25.4, height=3.25 * 25.4, base=0.14 * 25.4)
    fill = calc.fill_weight(volume=volume, headspace=0.15, density=0.87)
    weigh = calc.before_waste(amount=fill, waste=0.02)
    oils = calc.oil_parts(oil=calc.oil_for_fill(fill=weigh, load=0.07), shares=[0.5, 0.3, 0.2])
    bought = [(22.8, 12, 6.3, 0), (10.2, 12, 1.2, 0), (15.5, 50, 1.6, 0), (52, 250, 4.2, 0), (33.5, 50, 6.1, 2.01)]
    bought += [(7.6, 100, 1.5, 0.46), (11.5, 50, 1.2, 0)]
    packs = [(26.2, 16, 3.1), (25.8, 16, 3.1), (14.2, 8, 1.9)]
    return (
        _functions(volume, fill, weigh, 0.07, oils, packs, bought, (6.5, 70, 0.25), pieces=[1, 1, 1, 1, 1, 1, 0.4]),
        {"fee": 0.027, "fixed": 0, "tax": 0.06, "basis": "gross", "least": 0},
        {"shelf": 22.5, "discount": 0, "stated": "with tax", "margin": 0.38, "season": 38 * 16},
    )


def _functions(volume, fill, weigh, load, oils, packs, bought, time, pieces=(1, 1, 1, 1, 1)):
    wax = calc.wax_for_fill(fill=weigh, load=load)
    wax_unit = calc.unit_cost(price=92, size=45 * POUND * OUNCE, shipping=16.2)
    oil_units = [calc.unit_cost(price=price, size=size * OUNCE, shipping=shipping) for price, size, shipping in packs]
    units = [
        calc.unit_cost(price=price, size=size, shipping=shipping, tax=tax) for price, size, shipping, tax in bought
    ]
    wax_cost = calc.material_cost(amount=wax, cost=wax_unit)
    oil_cost = calc.parts_cost(amounts=oils, costs=oil_units)
    other = calc.parts_cost(amounts=list(pieces), costs=units)
    minutes = calc.minutes_each(each=time[0], setup=time[1], batch=24)
    paid = calc.labour_cost(minutes=calc.paid_minutes(minutes=minutes, share=time[2]), rate=18.5)
    own = calc.labour_cost(minutes=calc.own_minutes(minutes=minutes, share=time[2]), rate=24)
    overhead = calc.overhead_cost(minutes=minutes, rate=calc.overhead_rate(overhead=1890, activity=420))
    running = calc.overhead_cost(minutes=minutes, rate=calc.overhead_rate(overhead=1365, activity=420))
    making = calc.making_cost(materials=wax_cost + oil_cost + other, labour=paid, overhead=overhead)
    return dict(
        volume=volume, fill=fill / OUNCE, weigh=weigh / OUNCE, wax=wax / OUNCE, oils=[oil / OUNCE for oil in oils],
        wax_cost=wax_cost, oil_cost=oil_cost, other=other, materials=wax_cost + oil_cost + other, paid=paid,
        overhead=overhead, making=making, own=own, running=running,
        full=calc.full_cost(making=making, own_time=own, running=running),
    )  # fmt: skip


@pytest.mark.parametrize(
    "named, functions", list(zip(WORKED, (functions_jar, functions_tumbler), strict=True)), ids=[a for a, _ in WORKED]
)
def test_the_functions_come_to_what_is_worked_by_hand(named, functions):
    worked = WORKED[named]
    costs, terms, sold = functions()
    assert costs == {key: pytest.approx(worked[key], rel=1e-6) for key in costs}
    stated = {key: sold[key] for key in ("discount", "stated")} | {"tax": 0.06}
    received = calc.price_received(shelf=sold["shelf"], **stated)
    fees = calc.fee_at(price=received, **{key: value for key, value in terms.items() if key != "fixed"})
    profit = calc.profit_at(price=received, cost=costs["full"], fees=fees + terms["fixed"])
    target = calc.price_for_margin(cost=costs["full"], margin=sold["margin"], **terms)
    lowest = calc.lowest_price(materials=costs["materials"], **terms)
    to_state = calc.price_to_state(price=target, **stated)
    found = {
        "received": received, "tax": calc.tax_on(price=received, tax=0.06), "fees": fees + terms["fixed"],
        "profit": profit, "margin": calc.margin_at(profit=profit, price=received), "to_state": to_state,
        "target_price": calc.round_up_price(price=to_state, step=1, ending=0.5),
        "lowest": calc.price_to_state(price=lowest, **stated),
    }  # fmt: skip
    assert found == {key: pytest.approx(worked[key], rel=1e-6) for key in found}
    cost = costs["full"] + fees + terms["fixed"]
    assert calc.break_even_units(fixed=sold["season"], price=received, cost=cost) == worked["must_sell"]
