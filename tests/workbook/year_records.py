"""A year's records as a maker types them: exact numbers, and rows known by their place in their log, from 1.

Money is whole cents, but for a price, which may have a fraction of one. An amount is in the maker's unit of the
material (grams, or pieces of what is counted); candles are counted.
"""

import datetime
from dataclasses import dataclass
from fractions import Fraction

from year_selling import Selling

Day = datetime.date

WEIGHED = ("wax", "fragrance oil", "dye")
IN_MAKERS_UNIT = {"each": 1, "g": 1, "kg": 1000}


@dataclass(frozen=True)
class Material:
    """What is bought. Nothing of it has a date: a pack of another size is another material."""

    name: str
    kind: str
    pack_size: Fraction
    pack_unit: str  # each, g or kg
    cure_days: int = 0  # of a wax
    reorder_point: Fraction | None = None

    @property
    def pack(self) -> Fraction:
        return self.pack_size * IN_MAKERS_UNIT[self.pack_unit]


@dataclass(frozen=True)
class Line:
    """One thing in a piece of a product: a material before waste, or a candle in a set."""

    thing: str
    each: Fraction


@dataclass(frozen=True)
class Recipe:
    """How a product is made, from a day on. One that lists candles is a set."""

    product: str
    lines: tuple[Line, ...]  # each thing once
    minutes: Fraction  # for each piece
    setup: Fraction  # minutes, once a batch
    paid_share: Fraction  # paid help, of the time
    since: Day | None = None  # from the beginning if None


@dataclass(frozen=True)
class Set:
    """A set that goes on holding its candles until it leaves: its recipe lists its box and label alone."""

    name: str
    holds: tuple[Line, ...]


@dataclass(frozen=True)
class Rates:
    """What work and the workshop cost, from a day on."""

    paid_rate: int  # cents an hour of paid help
    overhead: int  # production overhead of the season, cents
    since: Day | None = None


@dataclass(frozen=True)
class Purchase:
    """A line of the purchases: bought, or there at the start (kind opening, with its amount and value)."""

    day: Day
    material: str
    kind: str = "bought"  # or opening
    packs: Fraction = Fraction(0)
    price: Fraction = Fraction(0)  # cents a pack
    discount: int = 0
    charges: int = 0  # freight and duty of the whole document, typed on one of its lines
    tax: int = 0  # that cannot be claimed back
    document: str = ""
    supplier: str = ""
    lot: str = ""
    use_by: Day | None = None
    opened_on: Day | None = None
    amount: Fraction = Fraction(0)  # opening
    value: int = 0  # opening


@dataclass(frozen=True)
class Pour:
    """A line of the batch log: poured (or a set that was packed), or candles there at the start (kind opening)."""

    day: Day
    batch: str
    product: str
    good: int
    kind: str = "poured"  # or opening
    planned: int | None = None
    seconds: int = 0
    scrapped: int = 0
    tests: int = 0
    hours: Fraction | None = None
    poured_on: Day | None = None  # opening
    value: int = 0  # opening: what they cost in all


@dataclass(frozen=True)
class Change:
    """What was otherwise in a batch than its recipe says."""

    batch: str
    material: str  # of the recipe
    instead: str = ""
    weighed: Fraction | None = None
    lot: str = ""  # of what was used


@dataclass(frozen=True)
class Move:
    """What left without a sale, a material or candles."""

    day: Day
    kind: str  # test, sample, gift, broken, own use, sent back
    thing: str
    amount: Fraction
    lot: str = ""  # of a material; of candles, their batch


@dataclass(frozen=True)
class Count:
    """What was counted at the end of a day."""

    day: Day
    thing: str
    counted: Fraction
    by: str
    is_move: bool = False  # whether the difference leaves the stock


@dataclass(frozen=True)
class Year:
    """All records, each log in the order of its rows. A name is of a material or of a product, never of both."""

    method: str  # fifo or average
    as_of: Day
    waste: Fraction  # of what is weighed out
    season_hours: Fraction
    materials: tuple[Material, ...]
    recipes: tuple[Recipe, ...]
    rates: tuple[Rates, ...]
    purchases: tuple[Purchase, ...] = ()
    pours: tuple[Pour, ...] = ()
    changes: tuple[Change, ...] = ()
    moves: tuple[Move, ...] = ()
    counts: tuple[Count, ...] = ()
    sets: tuple[Set, ...] = ()
    selling: Selling = Selling()
