"""The commands about workbooks: make one, check one, show what is in one."""

import csv
import datetime
import io
import json
from collections.abc import Sequence
from pathlib import Path
from typing import Any

from candlecalc.files import write_whole
from candlecalc.season import folder
from candlecalc.season.presets import blank_settings
from candlecalc.season.season import Season, empty
from candlecalc.workbook import book, read, report


def season_from(source: Path) -> Season:
    """A season from a folder of CSV files or from a workbook."""
    return folder.read(source) if source.is_dir() else read.season_of(source)


def new(out: Path, source: Path | None, name: str | None, region: str, date: datetime.date | None) -> list[str]:
    """Make a season workbook; the lines to tell. Nothing is left half written."""
    blank = blank_settings(region, date or datetime.date.today())
    season = season_from(source).compacted() if source else empty(blank)
    if name:
        season.settings["season"] = name
    made = book.made(season, date or book.date_of(season))
    write_whole(out, made)
    told = f"{out}: {len(season.names('recipes'))} products, {len(season.names('materials'))} materials"
    wrong = report.findings(report.Calculated(season, made)) if source else []
    return [told, *(f"{out}, {finding}" for finding in wrong)]


def check(path: Path) -> list[str]:
    """Every problem of a workbook, a line each; nothing where its numbers agree."""
    season, card = read.held(path)
    ours = book.drafted(season, book.date_of(season), (card["product"], card["count"]))
    calculated = report.Calculated(season, book.packed(ours))
    wrong = report.findings(calculated) + report.on_card(season, card)
    # What the entries do not explain is told as the workbook itself tells it.
    wrong = wrong or report.disagreeing(calculated)
    return [f"{path}, {finding}" for finding in (*wrong, *report.overwritten(path, ours.book))]


def show(path: Path, what: str, product: str, count: int) -> list[dict[str, Any]]:
    """Costs, prices or a batch as records."""
    season = season_from(path)
    if what == "costs":
        return report.costs(season, product)
    if what == "prices":
        return report.prices(season, product)
    return report.bench(season, product, count)


def as_table(records: Sequence[dict[str, Any]]) -> list[str]:
    """Records as lines of aligned columns."""
    heads = list(records[0]) if records else []
    rows = [heads, *([_shown(record[head]) for head in heads] for record in records)]
    widths = [max(len(row[at]) for row in rows) for at in range(len(heads))]
    numeric = [all(isinstance(record[head], (int, float, type(None))) for record in records) for head in heads]
    return [
        "  ".join(
            text.rjust(width) if right else text.ljust(width)
            for text, width, right in zip(row, widths, numeric, strict=True)
        ).rstrip()
        for row in rows
    ]


def as_csv(records: Sequence[dict[str, Any]]) -> str:
    out = io.StringIO()
    writer = csv.DictWriter(out, list(records[0]) if records else [], lineterminator="\n")
    writer.writeheader()
    writer.writerows(records)
    return out.getvalue()


def as_json(records: Sequence[dict[str, Any]]) -> str:
    return json.dumps(records, ensure_ascii=False, indent=1)


def _shown(value: Any) -> str:
    if value is None:
        return ""
    return f"{value:.2f}" if isinstance(value, float) else str(value)
