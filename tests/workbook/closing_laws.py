"""What holds of every season that is closed and of those after it: each law gives what breaks it, in words."""

from collections import defaultdict
from functools import cached_property

from year_workbook import type_in
from years_to_close import A_YEAR, NEXT, after, batches, calculated, copy, lots, things

from candlecalc.season.tables.carried import OWED_TO_MAKER
from candlecalc.workbook.next_season.against import differences

AMOUNT, COIN = 1e-6, 0.004


class Closing:
    """A season, the one after it, and the one after that, with nothing typed in between; each calculated when asked."""

    def __init__(self, season):
        self.season = season

    @cached_property
    def before(self):
        return calculated(self.season)

    @cached_property
    def _first(self):
        return after(self.before)

    @property
    def next_season(self):
        return self._first[0]

    @property
    def kept(self):
        return self._first[1]

    @cached_property
    def next(self):
        return calculated(self.next_season)

    @cached_property
    def again(self):
        return after(self.next, NEXT + A_YEAR)[0]


def unlike(one, other, crumb):
    """Where two tables of numbers differ by more than a crumb."""
    return [
        f"{name}: {one.get(name, 0)} and {other.get(name, 0)}"
        for name in {**one, **other}
        if abs(one.get(name, 0) - other.get(name, 0)) > crumb
    ]


def summed(rows, names, number):
    sums = defaultdict(float)
    for _, row in rows:
        sums[tuple(row[name] for name in names)] += row[number] or 0
    return {name: round(amount, 6) for name, amount in sums.items()}


def open_lots_add_up_to_what_is_left_to_the_cent(closing):
    found = []
    for tab, log, name, number in (
        ("stock", "purchases", "material", "price"),
        ("candles", "pours", "product", "cost"),
    ):
        closes = {(each,): value for each, (_, value) in things(closing.before, tab).items() if value}
        found += unlike(closes, summed(closing.next_season.rows(log), (name,), number), COIN)
    return found


def the_next_season_opens_with_what_there_was_and_its_worth(closing):
    found = []
    for tab in ("stock", "candles"):
        before, now = things(closing.before, tab), things(closing.next, tab)
        for at, crumb in ((0, AMOUNT), (1, COIN)):
            found += unlike(*({name: both[at] for name, both in side.items()} for side in (before, now)), crumb)
    return found


def every_lot_is_there_by_its_own_name(closing):
    return unlike(lots(closing.before), lots(closing.next), AMOUNT)


def closing_twice_changes_no_lot(closing):
    """By moving average the value of a material holds; a cent may pass from one of its lots to another."""
    averaged = closing.season.stock == "average"
    found = []
    for log, names, amount, value in (
        ("purchases", ("material", "lot", "date"), "packs", "price"),
        ("pours", ("product", "batch", "date"), "good", "cost"),
    ):
        once, twice = (list(season.rows(log)) for season in (closing.next_season, closing.again))
        found += unlike(summed(once, names, amount), summed(twice, names, amount), AMOUNT)
        names = names[:1] if averaged else names
        found += unlike(summed(once, names, value), summed(twice, names, value), COIN)
    return found


def what_cures_is_ready_on_its_day(closing):
    before, now = batches(closing.before), batches(closing.next)
    return [f"batch {number}" for number, batch in now.items() if batch.ready_on != before[number].ready_on]


def no_less_is_ready_than_before(closing):
    def ready(found):
        return {
            row["product"]: found.value("candles", "ready_now", place)
            for place, row in found.season.rows("recipes")
            if isinstance(found.value("candles", "ready_now", place), (int, float))
        }

    before, now = ready(closing.before), ready(closing.next)
    return [f"{name}: {now[name]} after {pieces}" for name, pieces in before.items() if now[name] < pieces]


def at_each_shop_is_what_was_there(closing):
    """Out less back less sold there, counted here from the lines themselves."""
    return unlike(at_shops(closing.season), at_shops(closing.next_season), AMOUNT)


def at_shops(season):
    """{(place, product): pieces} by the lines of Sales."""
    counts = {"out": 1, "back": -1, "sold there": -1}
    found = defaultdict(float)
    for _, row in season.rows("sales"):
        found[row["place"], row["product"]] += counts.get(row["kind"], 0) * (row["pieces"] or 0)
    return found


def all_that_is_owed_is_there_by_reference(closing):
    """Held for buyers by its number, unpaid purchases by document; unpaid sales come to what the tabs say is owed."""
    before, now = closing.before, summed(closing.next_season.rows("still_open"), ("kind", "document"), "sum")
    signs = {"deposit": 1, "deposit used": -1, "gift card sold": 1, "gift card spent": -1}
    held, bought, owed = defaultdict(float), defaultdict(float), 0.0
    for place, row in closing.season.rows("sales"):
        if row["kind"] in signs:
            held[row["kind"].rsplit(" ", 1)[0], row["order"]] += signs[row["kind"]] * row["price"]
        owed += before.value("sales", "owed", place)
    for place, row in closing.season.rows("purchases"):
        if row["kind"] is None:
            bought["purchase", row["document"]] += before.value("purchases", "landed", place)
    owed += sum(row["sum"] for _, row in closing.season.rows("still_open") if not row["paid_on"])
    to_maker = sum(amount for (kind, _), amount in now.items() if kind in OWED_TO_MAKER)
    by_maker = {name: amount for name, amount in now.items() if name[0] not in OWED_TO_MAKER}
    return unlike(held | bought, by_maker, COIN) + unlike({"owed": owed}, {"owed": to_maker}, COIN)


def what_was_sold_is_there_by_month(closing):
    sold = defaultdict(float)
    for row in range(closing.before.room("sold")):
        day, place, product, net = (
            closing.before.value("sold", key, row) for key in ("date", "place", "product", "net")
        )
        if product:
            sold[day.replace(day=1), product, place] += net
    return unlike(sold, summed(closing.next_season.rows("last_sold"), ("month", "product", "place"), "net"), COIN)


def all_that_was_typed_is_there_or_told_of(closing):
    """Row by row; of what is stock, at shops or owed the laws above speak."""
    by_law = {"purchases", "pours", "sales", "still_open", "last_sold"}
    found = []
    for key, kept in closing.kept.items():
        before, now = ([row for _, row in season.rows(key)] for season in (closing.season, closing.next_season))
        if key == "materials":
            before, now = ([row["material"] for row in rows] for rows in (before, now))
        gone = [row for row in before if row not in now]
        if key not in by_law and len(gone) != kept.left_out:
            found.append(f"{key}: {len(gone)} rows are not there, {kept.left_out} are told of")
    return found


def it_agrees_with_the_season_it_was_made_from(closing):
    return differences(closing.next_season, after(closing.before)[0])


LAWS = (
    open_lots_add_up_to_what_is_left_to_the_cent,
    the_next_season_opens_with_what_there_was_and_its_worth,
    every_lot_is_there_by_its_own_name,
    closing_twice_changes_no_lot,
    what_cures_is_ready_on_its_day,
    no_less_is_ready_than_before,
    at_each_shop_is_what_was_there,
    all_that_is_owed_is_there_by_reference,
    what_was_sold_is_there_by_month,
    all_that_was_typed_is_there_or_told_of,
    it_agrees_with_the_season_it_was_made_from,
)


def two_seasons_end_as_one(season):
    """First in first out: what was typed from some day on, typed into the season after, ends with the same.

    Each lot and batch that was carried may be worth a cent more or less, and what was made of it with it. A candle
    that comes back in the second season costs what the oldest there then does, so none does here.
    """
    type_in(season, "sales", [row for _, row in season.rows("sales") if row["kind"] != "returned"])
    parted = season.settings["first_day"] + A_YEAR / 2
    dated = ("purchases", "pours", "moves", "sales", "market_days", "market_lines")
    first, later = copy(season), copy(season)
    for key in dated:
        rows = [row for _, row in season.rows(key)]
        type_in(first, key, [row for row in rows if row["date"] < parted])
        type_in(later, key, [row for row in rows if row["date"] >= parted])
    batches_then = {row["batch"] for _, row in first.rows("pours")}
    changes = [row for _, row in season.rows("instead")]
    type_in(first, "instead", [row for row in changes if row["batch"] in batches_then])
    second, kept = after(calculated(first), parted)
    for key in dated:
        rows = [row for part in (second, later) for _, row in part.rows(key)]
        type_in(second, key, rows)
    type_in(second, "instead", [row for row in changes if row["batch"] not in batches_then])
    whole, ends = calculated(season), calculated(second)
    cents = 0.01 * (len(kept["purchases"].rows) + len(kept["pours"].rows)) + COIN
    found = []
    for tab in ("stock", "candles"):
        one, other = things(whole, tab), things(ends, tab)
        for at, crumb in ((0, AMOUNT), (1, cents)):
            found += unlike(*({name: both[at] for name, both in side.items()} for side in (one, other)), crumb)
    return found
