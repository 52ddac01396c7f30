"""The command that reads a file into a new workbook."""

import datetime
from pathlib import Path

from candlecalc.commands import make, sheets
from candlecalc.commands.counted import counted
from candlecalc.season.season import Row, Season, frame
from candlecalc.season.tables.labels import OIL_SHEETS
from candlecalc.season.tables.set_up import MATERIALS

TO_COMPARE = "Compare each line with the sheet itself; what is not read of it is not counted"


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
