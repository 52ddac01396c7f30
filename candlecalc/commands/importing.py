"""The command that reads a file into a new workbook."""

import datetime
from collections.abc import Sequence
from decimal import Decimal
from pathlib import Path

from candlecalc.commands import make, sheets
from candlecalc.commands.counted import counted
from candlecalc.faces.asked.question import CallError
from candlecalc.quantities.rounding import round_half_away
from candlecalc.season.fields import Table
from candlecalc.season.importing import doubles, foot
from candlecalc.season.importing import file as csv_file
from candlecalc.season.importing.amounts import HEADS, OF_MONEY, Amounts, added, amounts_of
from candlecalc.season.importing.faults import Fault
from candlecalc.season.importing.layout import Layout, UnknownLayoutError, layout_of, mapped_heads
from candlecalc.season.importing.rows import Reader, Result, Taken, own_heads
from candlecalc.season.season import Row, Season, Tables, frame, problems
from candlecalc.season.tables.imports import IMPORTS, READ_AS
from candlecalc.season.tables.labels import OIL_SHEETS
from candlecalc.season.tables.set_up import MATERIALS
from candlecalc.workbook import book, size

TO_COMPARE = "Compare each line with the sheet itself; what is not read of it is not counted"
NOT_WRITTEN = "Nothing was taken over, and {} was not written"
NAMED_TWICE = 12  # orders or documents that are named; the others are counted


def lines(kind: str, file: Path, source: Path, out: Path, name: str, *, force: bool) -> make.Answer:
    """Write the workbook with the lines of a file, read by a layout of its tab Imports."""
    held = make.held_in(source)
    season = held.season.compacted()
    season = season if season.records else season.with_records()
    table = READ_AS[kind]
    layout = _layout(season, kind, name)
    fields = layout.fields.values()
    found = csv_file.read(file, [*mapped_heads(layout)], [head for each in fields for head in own_heads(layout, each)])
    reader = Reader(layout, found, season)
    result = reader.result()
    there = [row for _, row in season.rows(table.key)]
    new, double = doubles.parted(kind, result.taken, there)
    full = Season(season.settings, _with(season, table, [*there, *(each.row for each in new)]))
    _judge(full, table, len(there), new, reader)
    if layout.problems or result.faults:
        wrong = [f"{source}, {each.tab}, line {each.row + 1} of the list: {each.words}" for each in layout.problems]
        return make.Answer([*wrong, *result.faults.told(file), NOT_WRITTEN.format(out)], True)
    told = _told(file, kind, layout, reader, result, new, double, season)
    if not new:
        return make.Answer([*told, NOT_WRITTEN.format(out)], True)
    rows = size.rows_that_fit(full)
    if rows is None:
        fit = size.lines_that_fit(season, table.key, len(new))
        raise ValueError(
            f"{file}: {len(new):,} lines do not fit: {table.title} of {source} has room for {fit:,} more. "
            "Begin another workbook for what comes, with a season of its own"
        )
    like = [each for each in doubles.alike(new, there) if not doubles.name_of(kind, each.row)]
    if like:
        told.append(f"{counted(len(like), 'line')} without a number to tell by, the first line {like[0].line} of the file, "
                    f"stand on {table.title} just so already: look whether they are the same")  # fmt: skip
    answer = make.written(out, full, source, held, None, told, rows, force=force)
    return answer._replace(wrong=answer.wrong or not all(total.agrees for total in foot.totals(reader)))


def _layout(season: Season, kind: str, name: str) -> Layout:
    try:
        return layout_of(season, kind, name)
    except UnknownLayoutError as problem:
        raise CallError(str(problem)) from None


def _with(season: Season, table: Table, rows: list[Row]) -> Tables:
    return Tables({key: [row for _, row in season.rows(key)] for key in season.tables} | {table.key: rows})


def _judge(full: Season, table: Table, before: int, new: Sequence[Taken], reader: Reader) -> None:
    """Note what is wrong with the new rows, as with any that are typed, and with the lines on Imports."""
    rooms = {key: len(list(full.rows(key))) + 1 for key in full.tables}
    for problem in problems(full, rooms):
        if problem.tab == IMPORTS.title:
            reader.layout.problems.append(problem)
        elif problem.tab == table.title and problem.row >= before:
            line = new[problem.row - before].line
            reader.faults.add(line, problem.column, Fault(reader.head(problem.column), problem.words))


def _told(
    file: Path, kind: str, layout: Layout, reader: Reader, result: Result, new: list[Taken], double: list[Taken], season: Season
) -> list[str]:
    """What was read, what each part of it comes to, and what was left out."""
    by = f'by the layout "{layout.name}"' if layout.name else "by the layout on Imports" if layout.rules else "by its heads"
    told = [f"{file}: read as {kind}, {by}" + (", in Windows-1252" if reader.lines.old_code_page else "")]
    told += [f"taken by their heads, without a line on Imports: {', '.join(reader.by_their_heads)}"] if layout.rules and reader.by_their_heads else []
    told += [f"not read: {', '.join(reader.unread)}"] if reader.unread else []
    told += make.as_table(_sums(kind, result, new, double, book.coin_digits(season.currency)))
    told += _doubles_told(kind, double)
    totals = foot.totals(reader)
    return [*told, *result.notes, *(total.told for total in totals), *foot.words(reader, totals)]


def _sums(kind: str, result: Result, new: list[Taken], double: list[Taken], digits: int) -> list[dict[str, object]]:
    """How many lines, and what they come to: of the file as it has them, of the workbook as its rows have them."""
    every = [*result.taken, *result.outside, *result.meant_not]
    parts = {
        "the file": [each.amounts for each in every],
        "left out by a word on Imports": [each.amounts for each in result.meant_not],
        "outside the season": [each.amounts for each in result.outside],
        "there already": [each.amounts for each in double],
        "taken over": [amounts_of(kind, each.row) for each in new],
    }
    return [
        {"": what, "Lines": str(len(amounts)), **_shown(kind, added(amounts, kind), digits)}
        for what, amounts in parts.items()
        if amounts or what in ("the file", "taken over")
    ]


def _shown(kind: str, sums: Amounts, digits: int) -> dict[str, str]:
    return {head: _sum(total, digits if head == OF_MONEY else None) for head, total in zip(HEADS[kind], sums, strict=True)}


def _sum(total: Decimal, digits: int | None) -> str:
    return f"{round_half_away(float(total), digits):,.{digits}f}" if digits is not None else f"{float(total):,.15g}"


def _doubles_told(kind: str, double: Sequence[Taken]) -> list[str]:
    """Which lines were refused because they are there."""
    named = dict.fromkeys(doubles.name_of(kind, each.row) for each in double)
    shown = list(named)[:NAMED_TWICE]
    more = len(named) - len(shown)
    return [f"there already, not taken again: {'; '.join(shown)}{f'; and {more:,} more' if more else ''}"] if named else []


def oil_sheet(
    file: Path, source: Path, out: Path, material: str, of: datetime.date | None, version: str, *, force: bool
) -> make.Answer:
    """Write the workbook with the lines of a data sheet, in place of those that it had of the same oil or dye."""
    held = make.held_in(source)
    season = held.season.compacted()
    season = season if season.records else season.with_records()
    name = _known(season, material)
    read = sheets.read(file)
    typed_once = {"sheet_date": of, "version": version or None}
    lines: list[Row] = [
        dict.fromkeys(OIL_SHEETS.keys) | {"material": name, **dict(zip(sheets.FIELDS, line, strict=True))}
        for line in zip(*(getattr(read, column) for column in sheets.COLUMNS), strict=True)
    ]
    lines[0] |= typed_once
    every = [row for _, row in season.rows(OIL_SHEETS.key)]
    kept = [row for row in every if str(row["material"]).casefold() != name.casefold()]
    season.tables[OIL_SHEETS.key] = frame([*kept, *lines], OIL_SHEETS)
    gone = len(every) - len(kept)
    told = sheets.told_of(file, read)
    told += [f"{counted(gone, 'line')} of {name} that stood there: in {source} as before, not in {out}"] if gone else []
    return make.written(out, season, source, held, None, [*told, TO_COMPARE], force=force)


def _known(season: Season, material: str) -> str:
    names = season.names(MATERIALS.key)
    for name in names:
        if name.casefold() == material.casefold():
            return name
    oils = [*season.names(MATERIALS.key, "fragrance oil"), *season.names(MATERIALS.key, "dye")]
    raise ValueError(f'"{material}" is not on {MATERIALS.title}; there are {", ".join(oils)}')
