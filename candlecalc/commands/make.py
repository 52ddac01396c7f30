"""The commands about workbooks: make one, check one, show what is in one."""

import csv
import datetime
import io
import json
from collections.abc import Mapping, Sequence
from dataclasses import replace
from pathlib import Path
from typing import Any, NamedTuple, cast

import candlecalc.commands.without_numpy  # noqa: F401  before what brings openpyxl
from candlecalc.commands.counted import counted
from candlecalc.faces.asked.question import CallError
from candlecalc.files import write_whole
from candlecalc.quantities.rounding import round_half_away
from candlecalc.season import folder
from candlecalc.season.opening import on_hand_as_purchases
from candlecalc.season.presets import blank_settings
from candlecalc.season.room import NONE_ASKED, fresh
from candlecalc.season.season import Row, Season, empty, trimmed
from candlecalc.workbook import book, size
from candlecalc.workbook.reading import read
from candlecalc.workbook.reading.left_out import not_carried
from candlecalc.workbook.reports import report, shown
from candlecalc.workbook.tabs.make.batch import NOTHING_PICKED
from candlecalc.workbook.writing.draft import ALL_WELL, FROM_NOTHING, MadeFrom


class Answer(NamedTuple):
    """What a command says, a line each, and whether anything is wrong with the data."""

    lines: list[str]
    wrong: bool


class Shown(NamedTuple):
    """What is shown of a season: records, of what they are, and what to say beside them."""

    records: list[shown.Record]
    heading: str
    beside: list[str]
    wrong: bool
    formats: Mapping[str, str] = {}  # of numbers, by head


def held_in(source: Path, *, records: bool = False) -> read.Held:
    """What a folder of CSV files or a workbook holds; of a folder with the year's records, where they are asked for."""
    return read.Held(folder.read(source, records=records), {}, []) if source.is_dir() else read.held(source)


def new(
    out: Path,
    source: Path | None,
    name: str | None,
    region: str,
    date: datetime.date | None,
    *,
    records: bool = False,
    stock: str = "",
    rows: Mapping[str, int] = NONE_ASKED,
    force: bool = False,
) -> Answer:
    """Make a season workbook. Nothing is left half written."""
    held = held_in(source, records=records) if source else None
    if name and held and held.season.records and _is_own(source):
        raise CallError(
            f"--from {source} keeps its season and its records; the season after is made with --after {source} --season"
        )
    blank = blank_settings(region, date or datetime.date.today())
    season = held.season.compacted() if held else empty(blank)
    mine = held is not None and _is_own(source)
    season, lines = _kept(season, mine, records, stock)
    if name:
        season.settings["season"] = name
    lines += _taken_over(season, name) if mine else []
    return written(out, season, source, held, date, lines, rows, force=force)


def _is_own(source: Path | None) -> bool:
    """Whether a source is a maker's own, and not the demo."""
    return source is not None and source != folder.DEMO


def written(
    out: Path,
    season: Season,
    source: Path | None,
    held: read.Held | None,
    date: datetime.date | None,
    told: Sequence[str] = (),
    rows: Mapping[str, int] = NONE_ASKED,
    *,
    force: bool,
) -> Answer:
    """Write the workbook of a season that came from a source, and say what was left out and what is wrong.

    `told` is what else to say, `rows` how many rows a table is to have where that is asked for.
    """
    card = trimmed(held.card) if held else {}
    own = _is_own(source)
    before = MadeFrom(_printable(source.resolve().name), held.log) if source and held and own else FROM_NOTHING
    rows_of = fresh(season, book.USUAL_ROWS, rows)
    size.refuse_too_large(season, rows_of)
    drafted = book.drafted(season, date or book.date_of(season), card or None, before, rows_of)
    made = book.packed(drafted)
    left_out = _left_out(source, held) if source and held else []
    write_whole(out, made, force=force)
    lines = [
        f"{out}: {len(season.names('recipes'))} products, {len(season.names('materials'))} materials",
        *left_out,
        *told,
    ]
    wrong = report.everything_wrong(report.Calculated(season, drafted), card) if source else []
    return Answer([*lines, *(f"{out}, {finding}" for finding in wrong)], bool(wrong))


def _kept(season: Season, mine: bool, records: bool, stock: str) -> tuple[Season, list[str]]:
    """The season with the year's records where they are asked for, and what is to be confirmed about them."""
    kept_before, was = season.records, season.stock
    lines: list[str] = []
    if records:
        season = season.with_records()
    if stock and not season.records:
        raise CallError("--stock is for a workbook with the year's records: add --records")
    if stock:
        season.settings["stock"] = stock
    if kept_before and season.stock != was:
        lines.append(
            f"Stock is valued by {season.stock}, where it was {was}: costs of what went and what is left are others, "
            "from the first day on"
        )
    if mine and season.records and not kept_before:
        season, taken = on_hand_as_purchases(season, book.coin_digits(season.currency))
        lines += _opening(season, taken)
    return season, lines


def _opening(season: Season, taken: Sequence[Row]) -> list[str]:
    """Each amount on hand that is now a line of Purchases, to be confirmed, and those that are not."""
    if not taken:
        return []
    lines = {row["material"]: row for _, row in season.rows("purchases")}
    told = [
        f"  {row['material']}: {row['on_hand']:.15g} {row['pack_unit']}, "
        f"worth {lines[row['material']]['price']:.{book.coin_digits(season.currency)}f} {season.currency}"
        for row in taken
    ]
    left = [str(row["material"]) for _, row in season.rows("materials") if row["on_hand"]]
    also = [f"Still on Materials, since their rows are to mend: {', '.join(left)}"] if left else []
    head = f"Look at Purchases: what was on hand is opening stock of {season.settings['first_day']}; confirm each:"
    return [head, *told, *also]


def _left_out(source: Path, held: read.Held) -> list[str]:
    """What the source has not, and what in it is not carried over."""
    absent = [f"{source}: {words}" for words in held.absent]
    if source.is_dir():
        return absent
    own = not_carried(source, held.origin, book.plan_of(held.season).head)
    return [*absent, *(f"not carried over from {source}: {what}" for what in own)]


def _printable(name: str) -> str:
    return "".join(letter for letter in name if letter.isprintable())


def _taken_over(season: Season, name: str | None) -> list[str]:
    """What stands as it stood in the data that a workbook was made from, and may be of last season."""
    settings, materials = season.settings, [row for _, row in season.rows("materials")]
    days = sorted(row["priced_on"] for row in materials if isinstance(row["priced_on"], datetime.date))
    seen = f", seen from {days[0]} to {days[-1]}" if days else ""
    on_hand = len([row for row in materials if row["on_hand"]])
    stocked = "" if season.records else f", {on_hand} amounts on hand"
    called = "the" if name else f'the season\'s name, "{settings["season"]}", and its'
    return [
        f"Look at Settings: {called} first and last day, {settings['first_day']} and {settings['last_day']}, "
        "are as they were",
        f"Look at Materials and Prices: {len(materials)} pack prices{seen}{stocked} and "
        f"{len(list(season.rows('prices')))} prices of yours are as they were",
    ]


def check(path: Path) -> Answer:
    """Every problem of a workbook or a folder, a line each, and what else is to be known of it."""
    return checked(path, held_in(path))


def checked(path: Path, held: read.Held) -> Answer:
    """The same of what was read of it."""
    work = worked_out(path, held, held.card)
    found = [f"{path}, {finding}" for finding in work.wrong]
    unlikely = [f"{path}, {doubt}" for doubt in work.doubts]
    verdict = f"{path}: {len(unlikely)} to look at; leave what is meant" if unlikely else f"{path}: {ALL_WELL}"
    return Answer([*(found or [verdict]), *unlikely, *work.beside], bool(found))


class Work(NamedTuple):
    """A season's workbook made anew, what is wrong with what was typed, what is unlikely, and what to say beside it."""

    calculated: report.Calculated
    drafted: book.Drafted
    wrong: list[report.Finding]
    doubts: list[report.Finding]
    beside: list[str]


def calculated(held: read.Held) -> report.Calculated:
    """A season calculated from its entries."""
    return report.Calculated(held.season, _drafted(held, held.card))


def _drafted(held: read.Held, card: Row) -> book.Drafted:
    rooms = held.rooms or fresh(held.season, book.USUAL_ROWS)
    size.refuse_giant(book.plan_of(held.season, rooms))
    return book.drafted(held.season, book.date_of(held.season), card or None, rows_of=rooms)


def worked_out(path: Path, held: read.Held, card: Row) -> Work:
    """A season calculated from its entries, with the card set."""
    season, ours = held.season, _drafted(held, card)
    calculated = report.Calculated(season, ours)
    wrong = report.everything_wrong(calculated, held.card, held.spots)
    doubts = report.doubts(calculated, held.spots) + report.to_look_at(calculated)
    beside = [f"{path}: {words}" for words in held.absent]
    # The formulas of another version are others, and nobody's fault.
    if not path.is_dir() and not held.origin.older:
        overwritten, moved = report.overwritten(held.formulas, ours)
        wrong += overwritten
        doubts += report.outdated(held.formulas, ours)
        beside += [f"{path}: {MOVED.format(', '.join(moved))}"] if moved else []
    return Work(calculated, ours, wrong, doubts, [*beside, *held.origin.advice(path)])


UNIT_COST_DIGITS = 4
NO_FORMATS: Mapping[str, str] = {}
MOVED = "{}: columns or rows have moved since it was made, so its formulas were not compared with ours"
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
    work = worked_out(path, held, held.card)
    records = shown.of_list(work.calculated, what, product)
    formats = shown.formats(work.calculated, what)
    return Shown(records, "", [*tally(path, work.wrong), *work.beside], bool(work.wrong), formats)


def trace(path: Path, batch: int | None, lot: str, material: str) -> Shown:
    """Every lot in a batch; or of a lot the batches that it was noted for, then those that may hold it."""
    held = held_in(path)
    picks: Row = {"trace_batch": batch} if batch is not None else shown.lot_picked(held.season, lot, material)
    season = replace(held.season, settings=held.season.settings | picks)
    work = worked_out(path, held._replace(season=season), held.card)
    if batch is not None:
        records, heading = shown.lots_of(work.calculated, batch), f"batch {batch}"
    else:
        records, heading = shown.batches_of(work.calculated), f"{picks['trace_material']}, lot {lot}"
    beside = [] if batch is not None else [shown.ASSUMED]
    return Shown(records, heading, [*beside, *tally(path, work.wrong), *work.beside], bool(work.wrong))


def _batch(path: Path, held: read.Held, product: str, count: int | None) -> Shown:
    card = _card(path, held, product, count)
    name, many = str(card["product"]), counted(cast(float, card["count"]), "piece")
    work = worked_out(path, held, card)
    records = shown.bench(work.calculated, name)
    unknown = any(shown.NOT_KNOWN in record.values() for record in records)
    its_own = [f"{path}, {finding}" for finding in shown.concerning(held.season, name, work.wrong)]
    beside = [CAUTION, *its_own, *tally(path, work.wrong), *work.beside]
    return Shown(records, f"{name}, {many}", beside, bool(work.wrong) or unknown or not records)


def _card(path: Path, held: read.Held, product: str, count: int | None) -> Row:
    """What the card is set to: as the call says, else as Batch says, else the first product and a dozen."""
    first = shown.known(held.season, product)
    typed = held.card or NOTHING_PICKED
    card: Row = typed | {
        "product": first if product else typed["product"] or first,
        "count": count or typed["count"] or USUAL_COUNT,
    }
    wrong = report.on_card(held.season, card, held.spots)
    if wrong:
        raise ValueError("; ".join(f"{path}, {finding}" for finding in wrong))
    return card | {"product": shown.known(held.season, str(card["product"])), "count": float(str(card["count"]))}


def tally(path: Path, wrong: Sequence[report.Finding]) -> list[str]:
    """How much is wrong, and where to read what."""
    return [f"{path}: {counted(len(wrong), 'problem')}; candlecalc check {path} says which"] if wrong else []


def as_table(records: Sequence[dict[str, Any]], formats: Mapping[str, str] = NO_FORMATS) -> list[str]:
    """Records as lines of aligned columns, each with decimals of its own as its tab has."""
    heads = list(records[0]) if records else []
    columns = [_column([record[head] for record in records], formats.get(head, "")) for head in heads]
    rows = [*([heads] if heads else []), *(list(row) for row in zip(*columns, strict=True))]
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


def _column(values: Sequence[Any], number: str) -> list[str]:
    """The values of a column as they are shown."""
    numbers = [value for value in values if isinstance(value, (int, float))]
    whole = all(float(value).is_integer() for value in numbers) and not number.startswith("money")
    digits = UNIT_COST_DIGITS if number == "unit_cost" else 0 if whole else 2
    return [_shown(value, number, digits) for value in values]


def _shown(value: Any, number: str, digits: int) -> str:
    if value is None:
        return ""
    if not isinstance(value, (int, float)):
        return str(value)
    # Rounded as a sheet rounds what it shows: half a coin away from zero.
    if "percent" in number:
        return f"{round_half_away(100 * value, 1):.1f} %"
    return f"{round_half_away(value, digits):.{digits}f}"
