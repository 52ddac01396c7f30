"""What sales came to, line by line, and where the candles are: in exact fractions, from the words of the rules.

What the rules leave open is decided here:

- The lines of an order are its sales and what was sold there: a refund of it is charged nothing, and is never its first
  line. A fee that was typed stands for all that the place kept of that line, and that line's share is no part of what
  the least fee is compared with.
- A fee by share, a fee an item and a fee an order go by the place's row in force on the line's own day.
- A refund, a deposit and a gift card count no pieces.
- A deposit and a gift card are handed over on their day, whether or not a day of payment is typed.
- A card firm's fee at a market is of the part of what buyers paid that day there that was paid by card, all of it at
  most; of all where nothing was typed, and where nothing was sold.
- Postage and packing are of a sale's order, on its first line; what was sold at a shop is not sent.
- Nothing is taken off a price that was typed.
- Pieces that lie at a shop are of the product that went out: of a set, sets.
- Candles are ready by the cure that is over on the day asked for, less all that left on any day.
"""

from collections import Counter, defaultdict
from collections.abc import Iterable
from fractions import Fraction
from typing import NamedTuple

import pandas
from year_cards import coins, sum_or_none
from year_reference import Worked, in_force, ready_on
from year_selling import HELD, MONEY_SIGN, ON_CONSIGNMENT, Day, Place, Sale, Selling, TaxRate, at_the_shop

SALE_KINDS = ("", "sold there")


class Sold(NamedTuple):
    """A line of the joined list. Money is cents, as it changes what the maker has."""

    log: str  # Sales or Market lines
    row: int  # there
    day: Day
    kind: str
    place_row: int  # of the place in force, on Places sold; the first is 1
    place: str
    collector: str
    product: str
    area: str
    rate: Fraction
    pieces: int
    gross: int
    tax: int
    net: int
    fee: int
    sent: int  # postage and packing
    comes_in: int
    held: int  # for buyers
    cost: int | None
    paid: bool


def sold(worked: Worked) -> list[Sold]:
    selling = worked.year.selling
    orders = _fees_by_share(selling)
    return [
        *(_of_sales(worked, row, line, orders) for row, line in enumerate(selling.sales, start=1)),
        *(
            _of_sales(worked, row, as_sale(selling, row), {}, log="Market lines")
            for row in range(1, len(selling.market_lines) + 1)
        ),
    ]


def as_sale(selling: Selling, row: int) -> Sale:
    """A line of Market lines as the sale that it is."""
    line = selling.market_lines[row - 1]
    place = line.place or next(each.place for each in selling.market_days if each.day == line.day)
    return Sale(line.day, place, line.product, line.pieces, price=line.price, paid_on=line.day)


# What holds on a day


def place_of(selling: Selling, line: Sale) -> tuple[int, Place]:
    """The row of the place that holds, and where it stands."""
    held = in_force([each for each in selling.places if each.name == line.place], line.day)
    return selling.places.index(held) + 1, held


def price_each(selling: Selling, place: Place, line: Sale) -> Fraction:
    if line.price is not None:
        return Fraction(line.price)
    held = [each for each in selling.prices if (each.product, each.place) == (line.product, line.place)]
    return in_force(held, line.day).price * (1 - place.discount)


def rate_of(selling: Selling, place: Place, line: Sale) -> Fraction:
    if line.tax_rate is not None:
        return line.tax_rate
    if place.collector == "nobody":
        return Fraction(0)
    for area in dict.fromkeys((line.area, "")):
        held: list[TaxRate] = [each for each in selling.tax_rates if each.area == area and each.since <= line.day]
        if held:
            return in_force(held, line.day).rate
    return selling.tax_rate


# Money


class Money(NamedTuple):
    gross: int
    tax: int
    net: int


def money_of(selling: Selling, line: Sale) -> Money:
    """What buyers paid for a line, whichever way the money went."""
    _, place = place_of(selling, line)
    pieces = (line.pieces or 0) if line.product else 1
    rate = rate_of(selling, place, line)
    stated = Fraction(coins(pieces * price_each(selling, place, line) - line.discount + line.postage))
    if (place.stated or selling.stated) == "with tax":
        gross, tax = coins(stated), coins(stated - stated / (1 + rate))
        return Money(gross, tax, gross - tax)
    net, tax = coins(stated), coins(stated * rate)
    return Money(net + tax, tax, net)


def share_kept(selling: Selling, line: Sale) -> Fraction:
    """What a place keeps by share of the price, not rounded."""
    _, place = place_of(selling, line)
    money = money_of(selling, line)
    by_card = paid_by_card(selling, line) if place.cards_alone else 1
    return place.fee * by_card * (money.net if place.basis == "net" else money.gross)


def paid_by_card(selling: Selling, line: Sale) -> Fraction:
    """The part of a market day's takings that was paid by card."""
    for each in selling.market_days:
        if (each.day, each.place) == (line.day, line.place) and each.card is not None:
            taken = sum(
                MONEY_SIGN.get(sale.kind, 0) * money_of(selling, sale).gross
                for sale in _all_lines(selling)
                if (sale.day, sale.place) == (line.day, line.place) and sale.kind in MONEY_SIGN
            )
            return min(Fraction(1), Fraction(each.card, taken)) if taken > 0 else Fraction(1)
    return Fraction(1)


def _all_lines(selling: Selling) -> Iterable[Sale]:
    yield from selling.sales
    yield from (as_sale(selling, row) for row in range(1, len(selling.market_lines) + 1))


def _order_of(row: int, line: Sale) -> tuple[object, ...]:
    return (line.place, line.order) if line.order else (row,)


Orders = dict[tuple[object, ...], tuple[int, Fraction]]


def _fees_by_share(selling: Selling) -> Orders:
    """Of each order its first line, and what the place keeps of it by share."""
    found: Orders = {}
    for row, line in enumerate(selling.sales, start=1):
        if line.kind in SALE_KINDS:
            order = _order_of(row, line)
            first, share = found.get(order, (row, Fraction(0)))
            found[order] = first, share + (share_kept(selling, line) if line.fee is None else 0)
    return found


def fee_of(selling: Selling, row: int, line: Sale, orders: Orders) -> int:
    if line.fee is not None:
        return line.fee
    if line.kind not in SALE_KINDS:
        return 0
    _, place = place_of(selling, line)
    fee = share_kept(selling, line) + place.fee_item * (line.pieces or 0)
    first, share = orders.get(_order_of(row, line), (None, Fraction(0)))
    if row == first:
        fee += place.fee_order + max(Fraction(0), place.least_fee - share)
    return coins(fee)


def _of_sales(worked: Worked, row: int, line: Sale, orders: Orders, log: str = "Sales") -> Sold:
    selling = worked.year.selling
    place_row, place = place_of(selling, line)
    sign = MONEY_SIGN.get(line.kind, 0)
    money, fee, held = Money(0, 0, 0), 0, HELD.get(line.kind, 0) * (line.price or 0)
    first, _ = orders.get(_order_of(row, line), (None, None))
    sent = place.postage + place.packing if log == "Sales" and not line.kind and row == first else 0
    if sign:
        money = Money(*(sign * each for each in money_of(selling, line)))
        fee = fee_of(selling, row, line, orders)
    taken = money.tax if place.collector == "place" else 0
    return Sold(
        log,
        row,
        line.day,
        line.kind,
        place_row,
        line.place,
        place.collector,
        line.product,
        line.area,
        rate_of(selling, place, line),
        sign * (line.pieces or 0) if line.product and line.kind != "refund" else 0,
        *money,
        fee,
        sent,
        money.gross - fee - taken + held,
        held,
        sum_or_none(worked.costs.get((log, row), [0])),
        line.paid_on is not None or HELD.get(line.kind, 0) > 0,
    )


def owed(lines: Iterable[Sold]) -> int:
    """What the maker has not been paid yet."""
    return sum(line.comes_in for line in lines if not line.paid)


def held_for_buyers(lines: Iterable[Sold]) -> int:
    return sum(line.held for line in lines)


SUMMED = ("pieces", *Money._fields, "fee", "sent", "comes_in", "cost")


def sums(lines: Iterable[Sold], by: str) -> dict[object, dict[str, int]]:
    """Pieces and money by what lines have alike (place, month, product, rate, area), as pandas sums them.

    A sum with a cost in it that is not known is left out.
    """
    frame = pandas.DataFrame([line._asdict() | {"month": line.day.replace(day=1)} for line in lines])
    if frame.empty:
        return {}
    summed = frame.astype({"cost": float}).groupby(by)[list(SUMMED)].agg(lambda column: column.sum(skipna=False))
    return {
        key: {name: int(value) for name, value in row.items() if not pandas.isna(value)}
        for key, row in summed.to_dict("index").items()
    }


class Shop(NamedTuple):
    """What a shop that pays when it has sold had of a product, and what that brought."""

    out: int
    back: int
    sold: int
    there: int
    comes_in: int
    owed: int


def shops(selling: Selling, lines: Iterable[Sold]) -> dict[tuple[str, str], Shop]:
    """By product and place."""
    there = at_shops(selling)
    pieces: Counter[tuple[str, str, str]] = Counter()
    for each in selling.sales:
        pieces[each.product, each.place, each.kind] += each.pieces or 0
    sold_there = [line for line in lines if line.kind == "sold there"]
    return {
        (product, place): Shop(
            *(pieces[product, place, kind] for kind in ("out", "back", "sold there")),
            there[product, place],
            *(sum(line.comes_in for line in of) for of in (each, [line for line in each if not line.paid])),
        )
        for product, place in {pair[:2] for pair in pieces if pair[2] in ON_CONSIGNMENT}
        for each in [[line for line in sold_there if (line.product, line.place) == (product, place)]]
    }


# Candles


class Candles(NamedTuple):
    """A product at the end of the records."""

    left: Fraction
    there: Fraction  # at shops, still the maker's own
    at_home: Fraction
    packed: Fraction  # in packed sets, wherever these are
    ready: Fraction
    curing: Fraction


def at_shops(selling: Selling) -> Counter[tuple[str, str]]:
    """Pieces by product and place."""
    found: Counter[tuple[str, str]] = Counter()
    for line in selling.sales:
        found[line.product, line.place] += at_the_shop(line)
    return found


def candles(worked: Worked, as_of: Day | None = None) -> dict[str, Candles]:
    year = worked.year
    there, packed = defaultdict(Fraction), defaultdict(Fraction)
    for (product, _), pieces in at_shops(year.selling).items():
        there[product] += pieces
    for each in year.sets:
        for line in each.holds:
            packed[line.thing] += max(Fraction(0), worked.cards[each.name].left) * line.each
    found = {}
    for product in dict.fromkeys(recipe.product for recipe in year.recipes):
        pours = [pour for pour in year.pours if pour.product == product]
        curing = sum(pour.good for pour in pours if ready_on(year, pour) > (as_of or year.as_of))
        left = worked.cards[product].left
        loose = left - there[product] - packed[product]
        ready = max(Fraction(0), loose - curing)
        still = max(Fraction(0), loose - ready)
        found[product] = Candles(left, there[product], left - there[product], packed[product], ready, still)
    return found
