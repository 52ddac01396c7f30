"""The commands about workbooks: make one, check one, show what is in one."""

import csv
import datetime
import io
import json
from collections.abc import Sequence
from pathlib import Path
from typing import Any, NamedTuple

from candlecalc.files import write_whole
from candlecalc.season import folder
from candlecalc.season.presets import blank_settings
from candlecalc.season.season import Row, Season, empty
from candlecalc.workbook import book, read, report, shown
from candlecalc.workbook.draft import NOTHING_BEFORE, Before


class Told(NamedTuple):
    """What a command has to say: what was asked for, and what is wrong, a line each."""

    lines: list[str]
    wrong: list[str]


class Shown(NamedTuple):
    """What is shown of a season: records, of what they are, and what to say beside them."""

    records: list[shown.Record]
    heading: str
    beside: list[str]
    wrong: bool


def held_in(source: Path) -> read.Held:
    """What a folder of CSV files or a workbook holds."""
    return read.Held(folder.read(source), {}, []) if source.is_dir() else read.held(source)


def new(out: Path, source: Path | None, name: str | None, region: str, date: datetime.date | None) -> Told:
    """Make a season workbook. Nothing is left half written."""
    held = held_in(source) if source else None
    blank = blank_settings(region, date or datetime.date.today())
    season = held.season.compacted() if held else empty(blank)
    if name:
        season.settings["season"] = name
    mine = held is not None and source != folder.DEMO
    before = Before(_printable(source.resolve().name), held.log) if source and held and mine else NOTHING_BEFORE
    made = book.made(season, date or book.date_of(season), before=before)
    write_whole(out, made)
    told = f"{out}: {len(season.names('recipes'))} products, {len(season.names('materials'))} materials"
    wrong = report.everything_wrong(report.Calculated(season, made), {}) if source else []
    return Told([told, *(_taken_over(season, name) if mine else [])], [f"{out}, {finding}" for finding in wrong])


def _printable(name: str) -> str:
    return "".join(letter for letter in name if letter.isprintable())


def _taken_over(season: Season, name: str | None) -> list[str]:
    """What stands as it stood in the data that a workbook was made from, and may be of last season."""
    settings, materials = season.settings, [row for _, row in season.rows("materials")]
    days = sorted(row["priced_on"] for row in materials if isinstance(row["priced_on"], datetime.date))
    seen = f", seen from {days[0]} to {days[-1]}" if days else ""
    stocked = len([row for row in materials if row["on_hand"]])
    called = "the" if name else f'the season\'s name, "{settings["season"]}", and its'
    return [
        f"Look at Settings: {called} first and last day, {settings['first_day']} and {settings['last_day']}, "
        "are as they were",
        f"Look at Materials and Prices: {len(materials)} pack prices{seen}, {stocked} amounts on hand and "
        f"{len(list(season.rows('prices')))} prices of yours are as they were",
    ]


def check(path: Path) -> list[str]:
    """Every problem of a workbook or a folder, a line each; nothing where its numbers agree."""
    held = held_in(path)
    _, wrong = _worked_out(path, held, held.card)
    return [f"{path}, {finding}" for finding in wrong]


def _worked_out(path: Path, held: read.Held, card: Row) -> tuple[report.Calculated, list[report.Finding]]:
    """A season's workbook made anew with its card set, and everything wrong with what was typed."""
    season = held.season
    picked = (card["product"], card["count"]) if card else None
    ours = book.drafted(season, book.date_of(season), picked)
    calculated = report.Calculated(season, book.packed(ours))
    wrong = report.everything_wrong(calculated, held.card)
    return calculated, [*wrong, *([] if path.is_dir() else report.overwritten(path, ours.book))]


USUAL_COUNT = 12.0
CAUTION = (
    "Hot wax burns skin and can catch fire: before you weigh, read the cautions on the Batch tab. "
    "Where a data sheet says otherwise, the data sheet decides."
)


def show(path: Path, what: str, product: str, count: int | None) -> Shown:
    """Costs, prices or a batch as records, with what is wrong beside them."""
    held = held_in(path)
    if what == "batch":
        return _batch(path, held, product, count)
    calculated, wrong = _worked_out(path, held, held.card)
    records = (shown.costs if what == "costs" else shown.prices)(calculated, product)
    return Shown(records, "", _tally(path, wrong), bool(wrong))


def _batch(path: Path, held: read.Held, product: str, count: int | None) -> Shown:
    card = _card(path, held, product, count)
    name, many = str(card["product"]), f"{card['count']:g} piece{'' if card['count'] == 1 else 's'}"
    calculated, wrong = _worked_out(path, held, card)
    records = shown.bench(calculated, name)
    unknown = any(shown.NOT_KNOWN in record.values() for record in records)
    its_own = [f"{path}, {finding}" for finding in shown.concerning(held.season, name, wrong)]
    beside = [CAUTION, *its_own, *_tally(path, wrong)]
    return Shown(records, f"{name}, {many}", beside, bool(wrong) or unknown or not records)


def _card(path: Path, held: read.Held, product: str, count: int | None) -> Row:
    """What the card is set to: as the call says, else as Batch says, else the first product and a dozen."""
    first = shown.known(held.season, product)
    typed = held.card or {"product": None, "count": None}
    card: Row = {
        "product": first if product else typed["product"] or first,
        "count": count or typed["count"] or USUAL_COUNT,
    }
    wrong = report.on_card(held.season, card)
    if wrong:
        raise ValueError("; ".join(f"{path}, {finding}" for finding in wrong))
    return card | {"product": shown.known(held.season, str(card["product"])), "count": float(str(card["count"]))}


def _tally(path: Path, wrong: Sequence[report.Finding]) -> list[str]:
    """How much is wrong, and where to read what."""
    many = f"{len(wrong)} problem{'' if len(wrong) == 1 else 's'}"
    return [f"{path}: {many}; candlecalc check {path} says which"] if wrong else []


def as_table(records: Sequence[dict[str, Any]]) -> list[str]:
    """Records as lines of aligned columns."""
    heads = list(records[0]) if records else []
    rows = [*([heads] if heads else []), *([_shown(record[head]) for head in heads] for record in records)]
    widths = [max(len(row[at]) for row in rows) for at in range(len(heads))]
    numeric = [all(_is_number(record[head]) for record in records) for head in heads]
    return [
        "  ".join(
            text.rjust(width) if right else text.ljust(width)
            for text, width, right in zip(row, widths, numeric, strict=True)
        ).rstrip()
        for row in rows
    ]


def _is_number(value: Any) -> bool:
    """Whether a value stands where numbers stand: a blank and an error do, too."""
    return value is None or value == shown.NOT_KNOWN or isinstance(value, (int, float))


def as_csv(records: Sequence[dict[str, Any]]) -> str:
    if not records:
        return ""
    out = io.StringIO()
    writer = csv.DictWriter(out, list(records[0]), lineterminator="\n")
    writer.writeheader()
    for record in records:
        writer.writerow({head: folder.protected(one) if isinstance(one, str) else one for head, one in record.items()})
    return out.getvalue()


def as_json(records: Sequence[dict[str, Any]]) -> str:
    known = [{head: None if value == shown.NOT_KNOWN else value for head, value in each.items()} for each in records]
    return json.dumps(known, ensure_ascii=False, indent=1)


def _shown(value: Any) -> str:
    if value is None:
        return ""
    return f"{value:.2f}" if isinstance(value, float) else str(value)
