"""Laws of money: entries balance, splits and taxes add up, schedules agree with each other."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from candlecalc.calc import (
    cost_of_goods_made,
    cost_of_goods_schedule,
    cost_of_goods_sold,
    early_discount,
    early_payment,
    entries_out_of_balance,
    materials_used,
    period_entries,
    tax_by_line,
    tax_by_order,
    trial_balance,
)

money = st.decimals(0, 100_000, places=2).map(float)


@given(*[money] * 9)
def test_every_entry_of_a_period_balances(bought, used, labour, overhead, made, sold, sales, tax, short):
    lines = period_entries(bought, used, labour, overhead, made, sold, sales, tax, sales / 10, short)
    if lines:
        journal = [line.debit for line in lines], [line.credit for line in lines]
        assert entries_out_of_balance([line.event for line in lines], *journal) == []
        total = trial_balance([line.account for line in lines], *journal)[-1]
        assert total.debit == total.credit


@given(st.lists(money, min_size=1, max_size=20), st.floats(0, 0.5))
def test_tax_by_line_and_by_order_differ_by_half_a_cent_a_line_at_most(amounts, tax):
    apart = math.fsum(tax_by_line(amounts, tax)) - tax_by_order(amounts, tax)
    assert abs(apart) <= 0.005 * (len(amounts) + 1) + 1e-9


@given(money, money, st.floats(0, 0.5))
def test_discount_and_payment_are_the_invoice(invoice, returned, discount):
    invoice, returned = max(invoice, returned), min(invoice, returned)
    whole = early_discount(invoice, discount, returned) + early_payment(invoice, discount, returned)
    assert whole == pytest.approx(invoice - returned, abs=1e-6)


@given(*[money] * 4)
def test_the_schedule_is_the_three_cost_sheets_in_one(bought, labour, overhead, stock):
    # All stock in one figure, as the form has it, or by materials, work in hand and finished candles.
    used = materials_used(stock, bought, stock)
    made = cost_of_goods_made(used, labour, overhead)
    sold = cost_of_goods_sold(0, made, 0)
    assert cost_of_goods_schedule(stock, bought, stock, labour, 0, overhead).line_42 == pytest.approx(sold, abs=1e-6)
