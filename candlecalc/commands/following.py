"""The season after: a workbook that opens with what another closes with, and whether it still does."""

import datetime
from collections.abc import Mapping
from pathlib import Path

from candlecalc.commands import make
from candlecalc.commands.counted import counted
from candlecalc.faces.asked.question import CallError
from candlecalc.season.fields import FIRST_DAY, LAST_DAY
from candlecalc.season.room import NONE_ASKED
from candlecalc.season.season import Row, Season
from candlecalc.season.tables import TABLES
from candlecalc.season.tables.carried import OWED_TO_MAKER, STILL_OPEN
from candlecalc.season.tables.sales import SALES
from candlecalc.season.tables.stock import POURS, PURCHASES
from candlecalc.workbook.next_season.against import differences
from candlecalc.workbook.next_season.carried import Closed, Kept, season_after
from candlecalc.workbook.next_season.closing import stopped_by
from candlecalc.workbook.next_season.money import of_no_product
from candlecalc.workbook.reports.report import Calculated

A_DAY = datetime.timedelta(days=1)


def new(
    out: Path,
    source: Path,
    name: str,
    first_day: datetime.date | None,
    last_day: datetime.date | None,
    date: datetime.date | None,
    rows: Mapping[str, int] = NONE_ASKED,
    *,
    force: bool,
) -> make.Answer:
    """Make the workbook of the season after. Where the one before cannot be closed, nothing is made."""
    held = make.held_in(source)
    if not held.season.records:
        raise CallError(f"{source} keeps no records of the year: make one of it with --from {source} --season")
    first_day, last_day = _days(held.season, first_day, last_day)
    closed = Closed(make.calculated(held), first_day)
    stopped = stopped_by(closed.calculated, held.spots, first_day)
    if stopped:
        told = [f"{source}, {finding}" for finding in stopped]
        return make.Answer([*told, f"{out} was not made: put this right in {source} first"], wrong=True)
    season, kept = season_after(closed, name, last_day)
    told = [*_opens_with(out, source, season, held.season), *_not_carried(source, closed.calculated, held.card, kept)]
    held = held._replace(card=held.card | {"date": None} if held.card else held.card)
    return make.written(out, season, source, held, date, told, rows, force=force)


def _days(
    season: Season, first_day: datetime.date | None, last_day: datetime.date | None
) -> tuple[datetime.date, datetime.date]:
    """The first and the last day: where none is given the season begins after the one before, and is as long."""
    began, ended = season.settings["first_day"], season.settings["last_day"]
    if not (isinstance(began, datetime.date) and isinstance(ended, datetime.date) and began <= ended):
        raise ValueError("tab Settings: First day and Last day do not say when the season is: put them right first")
    first = first_day or ended + A_DAY
    last = last_day or first + (ended - began)
    if not began < first <= last:
        raise CallError(f"a season from {first} to {last} does not come after one that began on {began}")
    if not FIRST_DAY <= first <= last <= LAST_DAY:
        raise CallError(f"--first-day and --last-day take days from {FIRST_DAY} to {LAST_DAY}")
    return first, last


def _opens_with(out: Path, source: Path, season: Season, before: Season) -> list[str]:
    """What the season opens with, a line each."""
    settings, currency = season.settings, season.currency
    lots, batches, at_shops, still_open = (
        [row for _, row in season.rows(key)] for key in (PURCHASES.key, POURS.key, SALES.key, STILL_OPEN.key)
    )
    materials = len({row["material"] for row in lots})
    shops = len({row["place"] for row in at_shops})
    to_you = [row for row in still_open if row["kind"] in OWED_TO_MAKER]
    by_you = [row for row in still_open if row["kind"] not in OWED_TO_MAKER]
    return [
        f"{out}: {settings['season']}, {settings['first_day']} to {settings['last_day']}, opens with what {source} "
        "closes with:",
        f"  {counted(len(lots), 'lot')} of {counted(materials, 'material')}, worth {_sum(lots, 'price')} {currency}",
        f"  {counted(len(batches), 'batch', 'batches')}, {_pieces(batches, 'good')}, worth {_sum(batches, 'cost')} "
        f"{currency}; of them {_pieces(at_shops, 'pieces')} at {counted(shops, 'shop')}",
        f"  still open: {_sum(to_you, 'sum')} {currency} owed to you, {_sum(by_you, 'sum')} {currency} that you owe",
        *_next_number(season, before),
        "Look at Settings: hours at the bench, overhead and running costs are those of the season before",
    ]


def _next_number(season: Season, before: Season) -> list[str]:
    """Where the last batch is sold out, the new season's tabs do not know its number."""
    last, known = (
        max((float(str(row["batch"])) for _, row in each.rows(POURS.key)), default=0) for each in (before, season)
    )
    taken = f"Number your first batch {last + 1:.0f}: {last:.0f} is taken, and nothing is left of it"
    return [taken] if last > known else []


def _sum(rows: list[Row], key: str) -> str:
    return f"{sum(float(str(row[key])) for row in rows):.2f}"


def _pieces(rows: list[Row], key: str) -> str:
    return counted(sum(float(str(row[key])) for row in rows), "candle")


def _not_carried(source: Path, calculated: Calculated, card: Row, kept: Mapping[str, Kept]) -> list[str]:
    """What of a season is left in its own workbook, a line each."""
    told = [
        f"{TABLES[key].title}: {counted(each.left_out, 'row')} {each.of}".rstrip()
        for key, each in kept.items()
        if each.left_out
    ]
    back = of_no_product(calculated)
    told += [f"Sold: {back:.2f} of no product, which is in no month of Sold last season"] if back else []
    told += ["Trace: what went into these batches; when a lot is called back, look there too"]
    told += ["Settings: As of"] if calculated.season.settings["as_of"] else []
    told += ["Batch: its date"] if card.get("date") else []
    return [f"not carried over from {source}: {each}" for each in told]


def check(path: Path, before: Path) -> make.Answer:
    """What is wrong in a workbook, and where it does not open with what the season before closes with."""
    ours, held = make.held_in(path), make.held_in(before)
    answer, opened = make.checked(path, ours), ours.season
    first_day = opened.settings["first_day"]
    if not (opened.records and held.season.records and isinstance(first_day, datetime.date)):
        raise ValueError("--against compares two workbooks with the year's records, the later with its First day")
    closed = Closed(make.calculated(held), first_day)
    stopped = [f"{before}, {finding}" for finding in stopped_by(closed.calculated, held.spots, first_day)]
    if stopped:
        return make.Answer([*answer.lines, *stopped], wrong=True)
    closes, _ = season_after(closed, str(opened.settings["season"]), first_day)
    found = [f"{path}, {words}" for words in differences(opened, closes)]
    alike = [] if found else [f"{path}: it opens with what {before} closes with"]
    return make.Answer([*answer.lines, *found, *alike], answer.wrong or bool(found))
