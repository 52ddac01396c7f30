"""The season after: what it takes over from the one that is closed, and what it does not, table by table."""

import datetime
from collections import defaultdict
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import NamedTuple

from candlecalc.calc.terms.burn import VERDICTS
from candlecalc.quantities.rounding import round_half_away
from candlecalc.season.season import Row, Season, Tables, trimmed
from candlecalc.season.tables import TABLES
from candlecalc.season.tables.books import ENTRIES, EXPENSES
from candlecalc.season.tables.burning import BURNS, POUR_DAY, TESTS
from candlecalc.season.tables.carried import LAST_SOLD, STILL_OPEN
from candlecalc.season.tables.labels import LABELS, PARTS, WEIGHTS
from candlecalc.season.tables.plan import DEMAND, EVENINGS
from candlecalc.season.tables.sales import COMPLAINTS, MARKET_DAYS, MARKET_LINES, SALES, TAX_RATES
from candlecalc.season.tables.sell import PLACES, PRICES
from candlecalc.season.tables.set_up import MATERIALS, RECIPES
from candlecalc.season.tables.stock import COUNTS, INSTEAD, MOVES, OPENING, POURS, PURCHASES, RATES
from candlecalc.workbook.next_season.at_shops import OUT, there
from candlecalc.workbook.next_season.closing import OF_CANDLES, OF_MATERIALS, left_of
from candlecalc.workbook.next_season.in_force import needed
from candlecalc.workbook.next_season.money import by_month
from candlecalc.workbook.next_season.owed import day_of, is_open, still_open
from candlecalc.workbook.reports.report import Calculated

NOT_JUDGED = VERDICTS[1]
BURN_HOURS = PARTS[-1]
SINCE = "at the shop since "  # begins the note of a line that stands for what was at a shop when a season began


class Kept(NamedTuple):
    """What a table holds in the season after, and what of it is not taken over: how many rows, and of what kind."""

    rows: list[Row]
    left_out: int = 0
    of: str = ""


@dataclass(frozen=True)
class Closed:
    """A season that is closed, calculated, and the first day of the one after."""

    calculated: Calculated
    first_day: datetime.date

    def rows(self, key: str) -> list[Row]:
        return [trimmed(row) for _, row in self.calculated.season.rows(key)]

    def by_place(self, key: str) -> dict[int, Row]:
        """The rows of a table by their places."""
        return {place: trimmed(row) for place, row in self.calculated.season.rows(key)}


Rule = Callable[[Closed], Kept]


def season_after(closed: Closed, name: str, last_day: datetime.date) -> tuple[Season, dict[str, Kept]]:
    """The season after, and what became of each table."""
    season = closed.calculated.season
    dates: Row = {"season": name, "first_day": closed.first_day, "last_day": last_day, "as_of": None}
    kept = {key: RULES[key](closed) if key in RULES else Kept(closed.rows(key)) for key in season.tables}
    return Season(trimmed(season.settings) | dates, Tables({key: each.rows for key, each in kept.items()})), kept


# --- stock --------------------------------------------------------------------------------------


def _lots(closed: Closed) -> Kept:
    """A lot keeps its own day: the oldest goes on being used first."""
    lots, purchases = left_of(closed.calculated, OF_MATERIALS), closed.by_place(PURCHASES.key)
    rows = []
    for lot in lots:
        bought = purchases[lot.place]
        material = _of_thing(closed, MATERIALS.key, bought["material"])
        rows.append(
            _blank(PURCHASES.key)
            | {key: bought[key] for key in ("date", "material", "supplier", "lot", "expiry", "opened")}
            | {"packs": lot.amount / closed.calculated.value(MATERIALS.key, "size", material), "price": lot.value}
            | {"kind": OPENING}
        )
    return Kept(rows, len(purchases) - len(lots), "of which nothing is left")


def _batches(closed: Closed) -> Kept:
    """A batch keeps its own day: what is curing is ready when it was to be."""
    batches, pours = left_of(closed.calculated, OF_CANDLES), closed.by_place(POURS.key)
    rows = []
    for batch in batches:
        poured = pours[batch.place]
        kept = {key: poured[key] for key in ("date", "batch", "product", "notes")}
        rows.append(_blank(POURS.key) | kept | {"good": batch.amount, "cost": batch.value, "kind": OPENING})
    return Kept(rows, len(pours) - len(batches), "of which nothing is left")


def _at_shops(closed: Closed) -> Kept:
    rows, sales = [], closed.by_place(SALES.key)
    for each in there(closed.calculated.season):
        out = sales[each.line]
        since = out["notes"] if str(out["notes"]).startswith(SINCE) else f"{SINCE}{out['date']}"
        kept = {key: out[key] for key in ("place", "product", "price", "order", "batch")}
        rows.append(
            _blank(SALES.key) | kept | {"date": closed.first_day, "kind": OUT, "pieces": each.pieces, "notes": since}
        )
    return Kept(rows, len(sales) - len(rows))


def _materials(closed: Closed) -> Kept:
    """Each with what was paid last, where that is newer than the price that was typed."""
    rows = closed.rows(MATERIALS.key)
    for material, (day, landed) in last_landed(closed).items():
        row = next(row for row in rows if str(row["material"]).casefold() == material)
        seen = row["priced_on"]
        if not isinstance(seen, datetime.date) or seen < day:
            row |= {"pack_price": landed, "shipping": None, "tax": None, "priced_on": day}
    return Kept(rows)


def last_landed(closed: Closed) -> dict[str, tuple[datetime.date, float]]:
    """Of each material that was bought in the season the last day, and a pack's cost with freight, duty and tax."""
    found: dict[str, tuple[datetime.date, float]] = {}
    for place, row in closed.calculated.season.rows(PURCHASES.key):
        day, material = row["date"], str(row["material"]).casefold()
        if row["kind"] != OPENING and isinstance(day, datetime.date) and day >= found.get(material, (day,))[0]:
            landed = closed.calculated.value(PURCHASES.key, "landed", place) / float(str(row["packs"]))
            found[material] = day, round_half_away(landed, closed.calculated.plan.coin_digits)
    return found


# --- what holds from a day on -------------------------------------------------------------------


def _in_force(key: str) -> Rule:
    def rule(closed: Closed) -> Kept:
        rows = closed.rows(key)
        kept = needed(rows, TABLES[key], closed.first_day)
        return Kept(kept, len(rows) - len(kept), "that no longer hold")

    return rule


def _recipes(closed: Closed) -> Kept:
    """What is left of a batch goes on by the recipe it was poured by: its cure does not change."""
    rows = closed.rows(RECIPES.key)
    poured: defaultdict[str, set[datetime.date]] = defaultdict(set)
    for batch in _batches(closed).rows:
        poured[str(batch["product"]).casefold()].add(day_of(batch))
    kept = needed(rows, RECIPES, closed.first_day, poured)
    return Kept(kept, len(rows) - len(kept), "that no longer hold")


# --- what is finished ---------------------------------------------------------------------------


def _nothing(key: str) -> Rule:
    def rule(closed: Closed) -> Kept:
        return Kept([], len(closed.rows(key)))

    return rule


def _complaints(closed: Closed) -> Kept:
    rows = closed.rows(COMPLAINTS.key)
    kept = [row for row in rows if row["done"] is None]
    return Kept(kept, len(rows) - len(kept), "that are done")


def _unfinished(closed: Closed) -> list[Row]:
    """Tests that nothing was burnt of yet, or too little to judge them, and those whose hours stand on a label."""
    on_labels = {str(row["code"]).casefold() for row in closed.rows(LABELS.key) if row["part"] == BURN_HOURS}
    return [
        trimmed(row)
        for place, row in closed.calculated.season.rows(TESTS.key)
        if closed.calculated.value("test_results", "verdict", place) in (None, "", NOT_JUDGED)
        or str(row["test"]).casefold() in on_labels
    ]


def _tests(closed: Closed) -> Kept:
    kept = _unfinished(closed)
    return Kept(kept, len(closed.rows(TESTS.key)) - len(kept), "that are judged")


def _burns(closed: Closed) -> Kept:
    rows, tests = closed.rows(BURNS.key), {str(row["test"]).casefold() for row in _unfinished(closed)}
    kept = [row for row in rows if str(row["test"]).casefold() in tests]
    return Kept(kept, len(rows) - len(kept), "of those tests")


def _weights(closed: Closed) -> Kept:
    """But for those of batches of which nothing is left: what else is typed there may be of any."""
    rows, logged = closed.rows(WEIGHTS.key), closed.rows(POURS.key)
    gone = _numbers(logged) - _numbers(_batches(closed).rows)
    kept = [row for row in rows if row["batch"] not in gone]
    return Kept(kept, len(rows) - len(kept), "of batches of which nothing is left")


def _numbers(batches: list[Row]) -> set[str]:
    return {f"{row['batch']:.0f}" for row in batches}


def _still_open(closed: Closed) -> Kept:
    settled = [row for row in closed.rows(STILL_OPEN.key) if not is_open(row, closed.first_day)]
    return Kept(still_open(closed.calculated, closed.first_day), len(settled), "that are settled")


def _to_come(key: str, day: str) -> Rule:
    """Lines without a day, and those of the month in which the season begins and later."""

    def rule(closed: Closed) -> Kept:
        begins = closed.first_day.replace(day=1)
        rows = closed.rows(key)
        past = [row for row in rows if isinstance(row[day], datetime.date) and str(row[day]) < str(begins)]
        return Kept([row for row in rows if row not in past], len(past), "of days that are past")

    return rule


CLOSED_WITH_IT = (INSTEAD, MOVES, COUNTS, MARKET_DAYS, MARKET_LINES, EXPENSES, ENTRIES, POUR_DAY)
RULES: Mapping[str, Rule] = {
    MATERIALS.key: _materials,
    RECIPES.key: _recipes,
    PURCHASES.key: _lots,
    POURS.key: _batches,
    SALES.key: _at_shops,
    STILL_OPEN.key: _still_open,
    LAST_SOLD.key: lambda closed: Kept(by_month(closed.calculated), len(closed.rows(LAST_SOLD.key))),
    COMPLAINTS.key: _complaints,
    TESTS.key: _tests,
    BURNS.key: _burns,
    WEIGHTS.key: _weights,
    **{table.key: _in_force(table.key) for table in (PLACES, PRICES, RATES, TAX_RATES)},
    DEMAND.key: _to_come(DEMAND.key, "day"),
    EVENINGS.key: _to_come(EVENINGS.key, "date"),
    **{table.key: _nothing(table.key) for table in CLOSED_WITH_IT},
}


def _blank(key: str) -> Row:
    return dict.fromkeys(TABLES[key].keys)


def _of_thing(closed: Closed, key: str, name: object) -> int:
    """The place of a name in its table."""
    names = ((place, next(iter(row.values()))) for place, row in closed.calculated.season.rows(key))
    return next(place for place, each in names if str(each).casefold() == str(name).casefold())
