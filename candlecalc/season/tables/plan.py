"""What is planned: what is wanted by when, when the maker pours, how suppliers sell, and what is on its way."""

from candlecalc.declaration.term import Term
from candlecalc.season.fields import Field, Table
from candlecalc.season.tables.stock import PACKS
from candlecalc.season.tables.taken import MONEY, PRICE

WANTED = Term("", "how many pieces", high=1e5, whole=True)
FACTOR = Term("", "a number such as 1.2 for a fifth more", high=20.0)
SPREAD = Term("", "how many pieces", low_excluded=True, high=1e5)
FINISHING = Term("", "whole days", high=60.0, whole=True)
POTS = Term("", "how many pots", high=1000.0, whole=True)
DAYS_TO_COME = Term("", "whole days", high=365.0, whole=True)
FROM_PACKS = Term("", "how many packs", low=2.0, high=1e5, whole=True)
WEEKDAYS = ("Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday")
FINISHING_DAYS = 1  # working days to label and pack, where nothing is typed

DEMAND = Table(
    "demand",
    "Demand",
    (
        Field("day", "Needed by", "the day of a market or an order; for what sells over a month, the first day of that month", date=True, required=True),
        Field("product", "Product", "the candle or set", names_from="recipes", required=True),
        Field("pieces", "How many", "how many you want to sell then; left out for a month, what was sold last season, times the factor", WANTED),
        Field("place", "Place", "which market or shop, if you plan by place: then only what was sold there is offered", names_from="places"),
        Field("factor", "Factor on last season", "1.2 for a fifth more than last season; 1 if left out", FACTOR),
        Field("buffer", "Buffer", "how many more to have at home then, in case more are wanted", WANTED),
        Field("finishing", "Finishing, days", f"working days to label, pack and carry before that day; {FINISHING_DAYS} if left out", FINISHING),
        Field("spread", "Of one season: may differ by", "of a scent that sells only then: by how much the number usually misses, up or down (its standard deviation)", SPREAD),
        Field("brings", "One brings, {money}", "of such a scent: what one brings in its season, after fees", MONEY, needed_when=("spread", ())),
        Field("leftover", "Left over it brings, {money}", "of such a scent: what one still brings afterwards; nothing if left out", MONEY),
    ),
    usual_rows=80,
    purpose="What you want to sell, a line for each product and month, market day or order: Plan says what to make for it.",
    unique=("day", "product", "place"),
    optional=True,
    records=True,
)  # fmt: skip

EVENINGS = Table(
    "evenings",
    "Evenings",
    (
        Field("weekday", "Day of the week", "a day on which you pour every week", choices=WEEKDAYS, width=13),
        Field("date", "Or one day", "a single day that is otherwise: an evening more, or one off", date=True),
        Field("pots", "Pots", "how many pots you pour then; 0 for a day off", POTS, required=True),
    ),
    usual_rows=24,
    purpose="When you pour, and how many pots an evening: a line for each day of the week, and for days that are otherwise.",
    optional=True,
    records=True,
)  # fmt: skip

BUYING_TERMS = Table(
    "buying_terms",
    "Buying terms",
    (
        Field("material", "Material", "its line on Materials", names_from="materials", required=True),
        Field("lead", "Days to come", "days from ordering it to having it; 0 if left out", DAYS_TO_COME),
        Field("first", "Cheaper from, packs", "from how many packs on each is cheaper", FROM_PACKS),
        Field("first_price", "Then, {money} a pack", "the price of each pack then", PRICE, needed_when=("first", ())),
        Field("second", "Cheaper still from, packs", "from how many packs on each is cheaper still", FROM_PACKS),
        Field("second_price", "And then, {money} a pack", "the price of each pack then", PRICE, needed_when=("second", ())),
    ),
    usual_rows=60,
    purpose="How long a material takes to come, and from how many packs on it is cheaper: a line for each that has such terms.",
    unique=("material",),
    optional=True,
    records=True,
)  # fmt: skip

ON_ORDER = Table(
    "on_order",
    "On order",
    (
        Field("material", "Material", "what you ordered: its line on Materials", names_from="materials", required=True),
        Field("packs", "Packs", "how many packs are still to come", PACKS, required=True),
        Field("due", "Due on", "the day on which it should be there", date=True, required=True),
        Field("to_pay", "Still to pay, {money}", "what is to be paid for it when it comes; left out if it is paid", MONEY),
        Field("notes", "Notes", "the supplier, the order's number", width=36, not_in_cost=True),
    ),
    usual_rows=24,
    purpose="What you ordered and do not have yet. When it comes, clear its line here and type it on Purchases.",
    optional=True,
    records=True,
)  # fmt: skip
