"""Selling against worked examples: what an hour and a shop leave, and what carriers charge for."""

import pytest

LB, KG = 453.59237, 1000  # international yard and pound agreement, 1959


# Accounting for Managers (Saylor), 6.5: 4 hours at 100 and 1 hour at 150 an hour printed; the margins follow.
@pytest.mark.parametrize("left, hours, an_hour", [(400, 4, 100), (150, 1, 150)])
def test_an_hour_earns_the_contribution_over_the_hours_it_takes(face, left, hours, an_hour):
    assert face.hourly_earnings(price=left + 80, cost=80, minutes=60 * hours) == pytest.approx(an_hour, rel=1e-12)


def test_a_day_at_a_market_leaves_its_takings_less_all_that_went_out(face):
    # Common practice, no source; worked here.
    assert face.stall_result(640, 210, 85, 16) == pytest.approx(329)
    assert face.stall_result(100, 60, 85) == pytest.approx(-45)
    assert face.stall_per_hour(640, 210, 85, 10, 16) == pytest.approx(32.9)


def test_the_margin_of_a_bundle_is_on_its_price(face):
    # OpenStax, Contemporary Mathematics 6.2, by its definitions; worked here, no printed example.
    assert face.bundle_margin(40, [6, 6, 5], 3) == pytest.approx(0.5)
    assert face.bundle_margin(50, [10, 15], 0, 5) == pytest.approx(0.4)
    assert face.bundle_margin(20, [15, 10]) == pytest.approx(-0.25)
    with face.refuses("price is 0; it takes more than 0"):
        face.bundle_margin(0, [6])


def test_a_shop_that_keeps_half_sells_at_twice_the_wholesale_price(face):
    # Monash Business School, Marketing Dictionary, "keystone markup": retailed at 20, cost 10 (printed).
    assert face.retail_from_wholesale(10, 0.5) == 20
    assert face.wholesale_price(face.retail_from_wholesale(12, 0.4), 0.4) == pytest.approx(12)


ORDERS = [  # order, price, cost, profit, case, candles, where
    (18_000, 100, 20, 0, 1, 225, "printed: OpenStax, Managerial Accounting, chapter 3"),
    (18_000, 100, 20, 0, 50, 250, "the same in cases of 50, worked here"),
    (30, 12, 7, 20, 6, 12, "worked here: 10 candles, two cases of 6"),
    (0, 12, 7, 0, 6, 0, "worked here: an order that costs nothing"),
]


@pytest.mark.parametrize("order, price, cost, profit, case, candles, where", ORDERS)
def test_the_smallest_order_breaks_even_in_whole_cases(face, order, price, cost, profit, case, candles, where):
    # OpenStax, Managerial Accounting, chapter 3: break-even in units; whole cases are worked here.
    assert face.minimum_order(order, price, cost, profit, case) == candles


def test_an_order_at_or_below_cost_is_refused(face):
    # OpenStax, Managerial Accounting, chapter 3: without a contribution no number breaks even.
    with face.refuses("the price must be above what each one costs"):
        face.minimum_order(30, 7, 7)


def test_a_shop_owes_the_price_less_its_commission(face):
    # accountingformanagement.org, "ordinary commission in consignment", example 1: 150 of 200 pieces sold at 50 each,
    # 20 % of sales; the commission of 1,500 and the 6,000 left are worked here.
    assert face.consignment_due(150, 50, 0.2) == pytest.approx(6000)
    assert face.consignment_due(150, 50, 0.2, 6100) == pytest.approx(-100)


def test_a_price_that_matches_is_in_step_with_the_weight(face):
    # Unit pricing by its definition, no printed example; worked here.
    assert face.price_to_match(20, 200, 250) == pytest.approx(25)
    assert face.price_to_match(18, "8 oz", "4 oz") == pytest.approx(9)


INCHES, CENTIMETRES = 25.4, 10
PARCELS = [  # weight, sides, their unit, divisor, per, step, charged, tolerance, where
    (14 * KG, (30, 45, 65), CENTIMETRES, 6000, "cm3 per kg", 0, 14.625 * KG, 1e-6,
     "printed: 14.625 kg for 14 kg, IATA's rule (a freight agent's fact sheet)"),
    (14 * KG, (30, 45, 65), CENTIMETRES, 6000, "cm3 per kg", KG, 15 * KG, 1e-6, "printed: charged as 15 kg"),
    (1 * KG, (70, 50, 60), CENTIMETRES, 6000, "cm3 per kg", 0, 35 * KG, 1e-6, "printed: 35 kg (a course on cargo)"),
    (1 * LB, (27, 20, 24), INCHES, 166, "in3 per lb", 0, 78.1 * LB, 0.05 * LB, "printed: 78.1 lb (the same course)"),
    (1 * LB, (25, 6, 43), INCHES, 139, "in3 per lb", 0, 46.40 * LB, 0.005 * LB, "printed: 46.40 lb (a carrier's page)"),
    (1 * LB, (25, 6, 43), INCHES, 139, "in3 per lb", LB, 47 * LB, 1e-6, "printed: charged as 47 lb"),
    (2.75 * LB, (8, 8, 8), INCHES, 166, "in3 per lb", LB, 4 * LB, 1e-6, "printed: 4 lb (a shop's page on its postage)"),
    (2.75 * LB, (8, 4, 4), INCHES, 166, "in3 per lb", LB, 3 * LB, 1e-6, "printed: 2.75 lb weighed goes up to 3"),
]  # fmt: skip


@pytest.mark.parametrize("weight, sides, unit, divisor, per, step, charged, tolerance, where", PARCELS)
def test_a_light_large_parcel_is_charged_by_its_size(
    face, weight, sides, unit, divisor, per, step, charged, tolerance, where
):
    # Carriers' and shippers' pages with worked examples of dimensional weight, as each row says.
    millimetres = [side * unit for side in sides]
    assert face.billable_weight(weight, *millimetres, divisor, per, step) == pytest.approx(charged, abs=tolerance)


CARTONS = [  # carton, candle, how many
    ((310, 220, 130), (100, 100, 120), 6),
    ((300, 200, 250), (100, 100, 120), 12),  # two layers
    ((300, 200, 120), (150, 100, 120), 4),
    ((200, 300, 120), (150, 100, 120), 4),  # turned the other way
    ((90, 200, 120), (100, 100, 120), 0),
    ((0.3e3, 0.1e3, 100), (100, 100, 100), 3),  # just fits
]


@pytest.mark.parametrize("carton, candle, count", CARTONS)
def test_a_carton_takes_whole_candles_upright(face, carton, candle, count):
    # Common practice, no source; counted here.
    assert face.per_carton(*carton, *candle) == count
