"""The command that reads a file into a new workbook."""

import datetime
from collections.abc import Sequence
from pathlib import Path

from candlecalc.commands import imported, make, sheets
from candlecalc.commands.counted import counted
from candlecalc.faces.asked.question import CallError
from candlecalc.season.fields import Table
from candlecalc.season.importing import doubles, totals
from candlecalc.season.importing import file as csv_file
from candlecalc.season.importing.faults import Fault
from candlecalc.season.importing.layout import Layout, UnknownLayoutError, layout_of
from candlecalc.season.importing.rows import Reader, Taken
from candlecalc.season.season import Row, Season, Tables, frame, problems
from candlecalc.season.tables.imports import IMPORTS, READ_AS
from candlecalc.season.tables.labels import OIL_SHEETS
from candlecalc.season.tables.set_up import MATERIALS
from candlecalc.workbook import size

TO_TYPE = "Section 14, which the carrier asks about, is yours to type on Oil sheets"
TO_COMPARE = "Compare each line with the sheet itself; what is not read of it is not counted"
NOT_WRITTEN = "Nothing was taken over, and {} was not written"


def lines(kind: str, file: Path, source: Path, out: Path, name: str, *, force: bool) -> make.Answer:
    """Write the workbook with the lines of a file, read by a layout of its tab Imports: all that are new, or none."""
    held = make.held_in(source, records=True)
    season = held.season.compacted()
    season = season if season.records else season.with_records()
    table = READ_AS[kind]
    layout = _layout(season, kind, name)
    own_heads = [head for key in layout.fields for head in layout.heads(key)]
    reader = Reader(layout, csv_file.read(file, layout.named_heads, own_heads), season)
    result = reader.result()
    there = [row for _, row in season.rows(table.key)]
    new, double = doubles.parted(kind, result.taken, there)
    full = _with(season, table, [*there, *(each.row for each in new)])
    _judge(full, table, len(there), new, reader)
    if layout.problems or reader.faults:
        wrong = [f"{source}, {each.tab}, line {each.row + 1} of the list: {each.words}" for each in layout.problems]
        return make.Answer([*wrong, *reader.faults.told(file), NOT_WRITTEN.format(out)], True)
    told = imported.told(file, reader, result, new, double)
    if not new:
        return make.Answer([*told, NOT_WRITTEN.format(out)], True)
    told += imported.alike_told(doubles.alike(kind, new, there), table)
    rows = size.rows_that_fit(full)
    if rows is None:
        fit = size.lines_that_fit(season, table.key, len(new))
        raise ValueError(
            f"{file}: {len(new):,} lines do not fit: {table.title} of {source} has room for {fit:,} more. Read in a "
            f"part of them, or begin another workbook for what comes. {NOT_WRITTEN.format(out)}"
        )
    answer = make.written(out, full, source, held, None, told, rows, force=force)
    return answer._replace(wrong=answer.wrong or not all(total.agrees for total in totals.stated(reader)))


def _layout(season: Season, kind: str, name: str) -> Layout:
    try:
        return layout_of(season, kind, name)
    except UnknownLayoutError as problem:
        raise CallError(str(problem)) from None


def _with(season: Season, table: Table, rows: list[Row]) -> Season:
    tables = {key: [row for _, row in season.rows(key)] for key in season.tables} | {table.key: rows}
    return Season(season.settings, Tables(tables), season.doubts)


def _judge(full: Season, table: Table, before: int, new: Sequence[Taken], reader: Reader) -> None:
    """Note what is wrong with the new rows, as with any that are typed, and with the lines on Imports."""
    rooms = {key: full.tables.room(key) for key in full.tables}
    for problem in problems(full, rooms):
        if problem.tab == IMPORTS.title:
            reader.layout.problems.append(problem)
        elif problem.tab == table.title and problem.row >= before:
            line = new[problem.row - before].line
            reader.faults.add(line, problem.column, Fault(reader.head(problem.column), problem.words))


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
    return make.written(out, season, source, held, None, [*told, TO_COMPARE, TO_TYPE], force=force)


def _known(season: Season, material: str) -> str:
    names = season.names(MATERIALS.key)
    for name in names:
        if name.casefold() == material.casefold():
            return name
    oils = [*season.names(MATERIALS.key, "fragrance oil"), *season.names(MATERIALS.key, "dye")]
    raise ValueError(f'"{material}" is not on {MATERIALS.title}; there are {", ".join(oils)}')
