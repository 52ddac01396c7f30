"""Test burns: the maker's wicks by size, what a burn is to come to, the tests, and a log of their burns."""

from candlecalc.calc import terms
from candlecalc.calc.terms import burn, heat
from candlecalc.declaration.term import Term
from candlecalc.season.fields import Field, Table, term_of
from candlecalc.season.tables.set_up import MADE
from candlecalc.season.tables.taken import MONEY

SIZE = Term("", "a number", low_excluded=True, high=1e4)
WICKS_EACH = Term("", "how many", low=1.0, high=12.0, whole=True)
A_RATE = Term("g/h", "a rate of burning", low_excluded=True, high=burn.QUICKEST)
FLAME = Term("mm", "a height of flame", low=burn.LOWEST_FLAME, high=300.0)
POOL = Term("mm", "a width", high=600.0)
STOP_FLAME = term_of(burn.MostFlame)
HOT = Term("C", "a temperature", low=20.0, high=250.0)
HOURS = Term("h", "hours", low_excluded=True, high=24.0)
WEIGHED = Term("g", "a weight", low_excluded=True, high=20e3)
ROOM, A_MELT = (
    Term("C", "a temperature", low=-20.0, high=heat.WARMEST_ROOM),
    Term("C", "a temperature", low=30.0, high=heat.HOTTEST),
)
A_TIME = Term("min", "minutes", low_excluded=True, high=1440.0)
SECONDS = Term("s", "seconds", high=3600.0)

WICKS = Table(
    "wicks",
    "Wicks",
    (
        Field("wick", "Wick", "a wick of yours, as it stands on Materials", names_from="materials", kind="wick", required=True),
        Field("kind", "Kind", "a word of your own: wicks of one kind differ in size alone", required=True, width=20, longest=32),
        Field("size", "Size", "its size within the kind: a larger number for a larger wick", SIZE, required=True),
    ),
    usual_rows=24,
    purpose="Your wicks by kind and size, so that a test can name the next one to try.",
    unique=("wick",),
    optional=True,
    records=True,
)  # fmt: skip

TARGETS = Table(
    "burn_targets",
    "Burn targets",
    (
        Field("vessel", "Vessel", "one line for each vessel that you test", names_from="vessels", required=True),
        Field("rate_low", "Burn rate from, {weight} an hour", "the slowest that suits you", A_RATE),
        Field("rate_high", "Burn rate to, {weight} an hour", "the fastest that suits you", A_RATE),
        Field("flame_low", "Flame from, {length}", "the lowest flame that suits you", FLAME),
        Field("flame_high", "Flame to, {length}", "the tallest flame that suits you; a stop is below", FLAME),
        Field("pool_low", "Melt pool from, {length} across", "how wide the pool is to get", POOL),
        Field("hot_high", "Vessel to, {temperature}", "the hottest outside that suits you; by its maker's data", HOT),
        Field("longest", "Longest burn, hours", "the longest that one burn may last; 4 if left out", HOURS),
        Field("tallest", "Stop: flame over, {length}", "a taller flame stops the test; 75 mm if left out", STOP_FLAME),
        Field("depth", "Stop: wax left, {length} deep", "where burning has to stop; 13 mm if left out", term_of(burn.StopDepth)),
    ),
    usual_rows=24,
    purpose="What a burn in each vessel is to come to, by your own aims.",
    unique=("vessel",),
    optional=True,
    records=True,
)  # fmt: skip

TESTS = Table(
    "burn_tests",
    "Burn tests",
    (
        Field("test", "Test", "your number of the piece, a line for each: T1a, T1b", name=True, required=True),
        Field("date", "First lit on", "the day of its first burn", date=True, required=True),
        Field("product", "Product", "the candle it is a trial of, also where only its wick differs; none for a free trial", names_from="recipes", kind=MADE[1][0]),
        Field("vessel", "Vessel", "what it was poured into", names_from="vessels", required=True),
        Field("wax", "Wax", "the wax, or the first of two", names_from="materials", kind="wax", required=True),
        Field("load", "Load, of wax", "fragrance oil as a share of wax weight", term_of(terms.Load), required=True),
        Field("wick", "Wick", "the wick that was tested", names_from="materials", kind="wick", required=True),
        Field("wicks", "Wicks, each", "how many wicks it has; 1 if left out", WICKS_EACH),
        Field("batch", "Batch", "the number of the batch it is from", width=14, longest=32),
        Field("fill", "Fill, {weight}", "wax and oil in it; the product's own if left out", WEIGHED),
        Field("other_burning", "Other burning, seconds", "the longest that anything but the wick burnt; 0 for never, blank if not looked at", SECONDS),
        Field("afterglow", "Glow or smoke after, seconds", "the longest after putting out; blank if not looked at", SECONDS),
        Field("vessel_after", "Vessel after", "how it came through all burns; blank if not looked at", choices=term_of(burn.VesselState).choices, width=10),
        Field("lit_again", "Lit again", "whether it lit again by itself; blank if not looked at", choices=term_of(burn.LitAgain).choices, width=8),
        Field("cost", "Cost, {money}", "what it cost besides what the Batch log and Taken out have: a trial poured for it, a test house", MONEY),
    ),
    usual_rows=60,
    purpose="What you test: a line for each candle burnt, and what was looked at from lighting to cold.",
    unique=("test",),
    optional=True,
    records=True,
)  # fmt: skip

BURNS = Table(
    "burn_cycles",
    "Burn cycles",
    (
        Field("test", "Test", "its line on Burn tests", names_from="burn_tests", required=True),
        Field("date", "Date", "the day of this burn", date=True, required=True),
        Field("hours", "Burnt, hours", "from lighting to putting out", HOURS, required=True),
        Field("before", "Before, {weight}", "what it weighed at lighting, jar and all", WEIGHED, required=True),
        Field("after", "After, {weight}", "what it weighed once it was out", WEIGHED, required=True),
        Field("pool", "Melt pool, {length} across", "how wide the pool was at the end", POOL),
        Field("flame", "Flame, {length}", "the tallest flame of this burn", FLAME),
        Field("hot", "Vessel, {temperature}", "the hottest that the vessel was outside", HOT),
        Field("seen", "Seen", "a sign from the list of Signs", width=30, longest=40, offers="signs"),
        Field("seen_too", "Also seen", "a second sign", width=30, longest=40, offers="signs"),
    ),
    usual_rows=240,
    purpose="Each burn of a test: hours, weights, pool, flame, and what was seen.",
    optional=True,
    records=True,
)  # fmt: skip

MELTS = Table(
    "melts",
    "Melts timed",
    (
        Field("date", "Date", "the day of this melt", date=True, required=True),
        Field("wax", "Wax", "what was melted", names_from="materials", kind="wax", required=True),
        Field("weight", "Wax in the pot, {weight}", "how much of it", WEIGHED, required=True),
        Field("power", "Heater, watts", "by the plate of your melter", term_of(heat.Power), required=True),
        Field("began", "Set wax at, {temperature}", "how warm the wax was before", ROOM, required=True),
        Field("ended", "Brought to, {temperature}", "how hot it was at the end of the time beside", A_MELT, required=True),
        Field("minutes", "Heated, minutes", "how long the heater took for it", A_TIME, required=True),
        Field("first", "Cooling from, {temperature}", "first reading of the stirred pot, the heat off", A_MELT),
        Field("second", "Cooling to, {temperature}", "a later reading, still above the melting range", A_MELT, needed_when=("first", ())),
        Field("apart", "Between them, minutes", "how long it took from one reading to the other", A_TIME, needed_when=("first", ())),
        Field("room", "Room, {temperature}", "how warm the room was", ROOM, needed_when=("first", ())),
    ),
    usual_rows=24,
    purpose="Melts of yours with a clock: how long your heater and your pots take.",
    optional=True,
    records=True,
)  # fmt: skip

POUR_DAY = Table(
    "pour_day",
    "Pour list",
    (
        Field("product", "Product", "what to pour, in the order of pouring", names_from="recipes", kind=MADE[1][0], required=True),
        Field("count", "How many", "how many pieces", Term("", "how many", low=1.0, high=10000.0, whole=True), required=True),
    ),
    usual_rows=12,
    purpose="What to pour in one evening, in order; Pour day puts it on one page.",
    unique=("product",),
    optional=True,
    records=True,
)  # fmt: skip
