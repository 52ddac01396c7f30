"""The command that hands workbooks over to a bookkeeper, or a stock list to others, and the check of such a folder."""

import datetime
from collections.abc import Iterator, Sequence
from pathlib import Path
from typing import Any

from candlecalc.books import folder_check, for_others
from candlecalc.books.events import events_of
from candlecalc.books.figures import by_month
from candlecalc.books.handover import PACKAGE, Handed, handed_over
from candlecalc.books.joining import Span, joined
from candlecalc.books.journal import as_money
from candlecalc.books.reading import Reading
from candlecalc.books.tax_report import tax_lines
from candlecalc.commands import make
from candlecalc.commands.counted import counted
from candlecalc.faces.asked.question import CallError
from candlecalc.files import write_folder
from candlecalc.workbook.book import Drafted
from candlecalc.workbook.reports.report import Finding
from candlecalc.workbook.tabs.registry import registered

MOST_BYTES = 200_000_000  # of a folder to check or to compare with


def write(
    books: Sequence[Path],
    folder: Path,
    first: datetime.date | None,
    last: datetime.date,
    earlier: Path | None,
    *,
    without_costs: bool,
) -> Iterator[str]:
    """Write the folder whole or not at all, and say each file and what to look at."""
    refuse_filled(folder)
    names = [path.stem if path.suffix else path.name for path in books]
    if len(set(names)) < len(names):
        raise ValueError("two workbooks have the same name; rename one, so that entries can say where they are from")
    read = [_read(path, name) for path, name in zip(books, names, strict=True)]
    if without_costs:
        there = [each for each, _, _ in read if each.first_day <= last]
        if not there:
            raise ValueError(f"none of the workbooks had begun on {last}")
        files = for_others.files_for_others(max(there, key=lambda each: each.first_day), last)
        told: Iterator[str] = iter(())
    else:
        before = _earlier_files(earlier) if earlier else None
        closed = [day for each, _, _ in read if isinstance(day := each.season.settings.get("closed_to"), datetime.date)]
        findings = {each.name: [(f.tab, f.cell, f.words) for f in found] for each, _, found in read}
        span = Span(first or _year_begins([each for each, _, _ in read], last), last, max(closed, default=None))
        handed = handed_over([(each, draft) for each, draft, _ in read], span, findings, before)
        files, told = handed.files, _told(handed, earlier)
    write_folder({folder / name: data for name, data in files.items()})
    yield from (f"{folder / name}: {len(data):,} bytes" for name, data in files.items())
    yield from told


def _read(path: Path, name: str) -> tuple[Reading, Drafted, list[Finding]]:
    """A workbook worked out anew, its draft, and what check says of it."""
    held = make.held_in(path)
    if not held.season.records:
        raise ValueError(
            f"{path}: it keeps no records of the year; make one with candlecalc new NEW.xlsx --from {path} --records"
        )
    work = make.worked_out(path, held, held.card)
    doubts = [doubt for doubt in work.doubts if doubt.tab in _of_the_books()]
    return Reading(name, work.calculated), work.drafted, [*work.wrong, *doubts]


def _of_the_books() -> set[str]:
    """The tabs that a bookkeeper may ask about: not whether a candle was tested, or what to order again."""
    groups = ("stock", "sell", "books")
    return {each.tab.title for each in registered() if each.group in groups} | {"Settings", "Batch log", "Rates by day"}


def _year_begins(reads: Sequence[Reading], last: datetime.date) -> datetime.date:
    """The first day of the financial year that a day is in, or of the first workbook where that begins later."""
    days = [day for each in reads if isinstance(day := each.season.settings.get("year_from"), datetime.date)]
    if not days:
        raise CallError("say from which day: --from 2027-01-01, or type Financial year from on Settings")
    day = max(days)
    year = last.year if (last.month, last.day) >= (day.month, day.day) else last.year - 1
    # A year that begins on 29 February begins on the 28th in others.
    begins = datetime.date(year, day.month, min(day.day, 28) if day.month == 2 else day.day)
    return max(begins, min(each.first_day for each in reads))


def _told(handed: Handed, earlier: Path | None) -> Iterator[str]:
    journal = handed.journal
    yield f"{len(journal.entries)} entries from {journal.first} to {journal.last}; begin with open_questions.csv"
    if earlier:
        yield f"{counted(len(handed.changed), 'amount')} changed since {earlier}" + (
            ": changes.csv" if handed.changed else ""
        )


def refuse_filled(folder: Path) -> None:
    """Nothing is written among files that are there."""
    if folder.exists() and not folder.is_dir():
        raise ValueError(f"{folder} is a file; name a folder")
    if folder.is_dir() and any(folder.iterdir()):
        raise ValueError(
            f"{folder} is not empty; name a new folder, so that what was handed over before stays as it is"
        )


def files_in(folder: Path) -> dict[str, bytes]:
    """The files of a folder by their names."""
    found = {path.name: path for path in sorted(folder.iterdir()) if path.is_file()}
    if sum(path.stat().st_size for path in found.values()) > MOST_BYTES:
        raise ValueError(f"{folder}: it is too large to be a hand-over")
    return {name: path.read_bytes() for name, path in found.items()}


def is_handed_over(folder: Path) -> bool:
    return (folder / PACKAGE).is_file() and folder_check.is_ours({PACKAGE: (folder / PACKAGE).read_bytes()})


def checked(folder: Path) -> make.Answer:
    """Everything wrong with a folder that was handed over."""
    found = folder_check.wrong(files_in(folder))
    return make.Answer([f"{folder}, {words}" for words in found] or [f"{folder}: the hand-over is whole"], bool(found))


def _earlier_files(folder: Path) -> dict[str, bytes]:
    if not folder.is_dir() or not is_handed_over(folder):
        raise ValueError(f"{folder} is no hand-over of candlecalc")
    files = files_in(folder)
    # The bookkeeper may have typed numbers in accounts.csv: whether the journal holds is asked all the same.
    wrong = [words for words in folder_check.wrong(files) if not words.startswith("accounts.csv: it is not as")]
    if wrong:
        raise ValueError(f"{folder} cannot be compared with: {'; '.join(wrong[:3])}")
    return files


def books_of(path: Path, what: str) -> make.Shown:
    """What a workbook comes to by month, or its tax, as records."""
    read, _, found = _read(path, path.stem)
    events, accounts = joined([(read, list(events_of(read)))])
    days = [event.day for event in events] or [read.first_day]
    if what == "books":
        records = by_month(events, dict(accounts), read.digits)
        formats = {head: "money" for record in records[:1] for head in record if head != "Month"}
    else:
        records = _tax_records(read, min(days), max(days))
        formats = {"Rate": "percent", **dict.fromkeys(("With tax", "No tax due", "Before tax", "Tax"), "money")}
    wrong = [each for each in found if each.words]
    return make.Shown(records, "", make.tally(path, wrong), bool(wrong), formats)


def _tax_records(read: Reading, first: datetime.date, last: datetime.date) -> list[dict[str, Any]]:
    heads = ("With tax", "No tax due", "Before tax", "Tax")
    return [
        {"What": line.what, "Area": line.area or None, "Rate": line.rate, "Place": line.place, "Paid by": line.paid_by}
        | {head: float(as_money(coins, read.digits)) for head, coins in zip(heads, line[6:], strict=True)}
        for line in tax_lines([read], first, last)
    ]
