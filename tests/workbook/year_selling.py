"""What a maker sells, as it is typed: exact numbers, and rows known by their place in their log, from 1.

Money is whole cents. A line of Sales that names no kind is a sale.
"""

import datetime
from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction
from typing import NamedTuple

Day = datetime.date

ON_CONSIGNMENT = ("out", "back", "sold there")
HELD = {"deposit": 1, "deposit used": -1, "gift card sold": 1, "gift card spent": -1}
MONEY_SIGN = {"": 1, "sold there": 1, "refund": -1, "returned": -1}
BACK_IN_STOCK = "back in stock"


@dataclass(frozen=True)
class Place:
    """Where it is sold, and what the place keeps, from a day on."""

    name: str
    kind: str
    collector: str  # who pays the tax over: maker, place or nobody
    fee: Fraction = Fraction(0)  # of the price
    basis: str = "net"  # or gross
    fee_item: int = 0
    fee_order: int = 0
    least_fee: int = 0  # by share, an order
    cards_alone: bool = False  # the fee is a card firm's
    postage: int = 0  # that the maker pays for an order
    packing: int = 0  # of an order
    discount: Fraction = Fraction(0)
    stated: str = ""  # with tax or before tax; as the settings say if blank
    since: Day | None = None


@dataclass(frozen=True)
class Price:
    """What a product costs in a place, from a day on."""

    product: str
    place: str
    price: int
    since: Day | None = None


@dataclass(frozen=True)
class TaxRate:
    """A rate of tax from a day on, in one area or in all others."""

    since: Day
    rate: Fraction
    area: str = ""


@dataclass(frozen=True)
class Sale:
    """A line of Sales."""

    day: Day
    place: str
    product: str = ""
    pieces: int | None = None
    kind: str = ""
    price: int | None = None
    discount: int = 0
    order: str = ""
    postage: int = 0
    fee: int | None = None
    tax_rate: Fraction | None = None
    area: str = ""
    batch: str = ""
    became: str = ""  # what became of a candle that was returned
    paid_on: Day | None = None


@dataclass(frozen=True)
class MarketDay:
    day: Day
    place: str
    card: int | None = None  # what was paid by card that day


@dataclass(frozen=True)
class MarketLine:
    """A product on a market day: counted as it was sold, or by what came back."""

    day: Day
    product: str
    along: int | None = None
    back: int | None = None
    sold: int | None = None
    given: int | None = None
    broken: int | None = None
    price: int | None = None
    place: str = ""

    @property
    def pieces(self) -> int:
        if self.sold is not None:
            return self.sold
        return (self.along or 0) - (self.back or 0) - self.lost

    @property
    def lost(self) -> int:
        """What left without money."""
        return (self.given or 0) + (self.broken or 0)


@dataclass(frozen=True)
class Selling:
    """All that has to do with sales."""

    places: tuple[Place, ...] = ()
    prices: tuple[Price, ...] = ()
    tax_rate: Fraction = Fraction(0)
    stated: str = "before tax"
    tax_rates: tuple[TaxRate, ...] = ()
    sales: tuple[Sale, ...] = ()
    market_days: tuple[MarketDay, ...] = ()
    market_lines: tuple[MarketLine, ...] = ()


class Left(NamedTuple):
    """Pieces that left the maker's stock, or came back into it."""

    log: str  # Sales, Market lines, or Given for what a market line lost
    row: int
    day: Day
    product: str
    pieces: int


def left_stock(selling: Selling) -> Iterator[Left]:
    for row, line in enumerate(selling.sales, start=1):
        if line.kind in ("", "sold there"):
            yield Left("Sales", row, line.day, line.product, line.pieces or 0)
        elif line.kind == "returned" and line.became == BACK_IN_STOCK:
            yield Left("Sales", row, line.day, line.product, -(line.pieces or 0))
    for row, line in enumerate(selling.market_lines, start=1):
        for log, pieces in (("Market lines", line.pieces), ("Given", line.lost)):
            if pieces:
                yield Left(log, row, line.day, line.product, pieces)


def at_the_shop(line: Sale) -> int:
    """What a line changes of what lies at a shop, still the maker's own."""
    sign = {"out": 1, "back": -1, "sold there": -1}.get(line.kind, 0)
    return sign * (line.pieces or 0)
