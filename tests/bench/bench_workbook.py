"""What making a season's workbook costs, in time and memory, over writing the same cells bare. Run by hand:

    python tests/bench/bench_workbook.py

Exit code 1 where a target is missed. Times are wall times of this machine: judge the ratios.

Bare is openpyxl alone: a new workbook, the same values and formulas in the same cells, one named style each,
saved to memory. It has no drop-downs, checks, tables or chart, and stores no value beside a formula.
"""

# ruff: noqa: S301, S603  the programs started here are our own choice, and so are the pickled cells

import datetime
import gc
import io
import pickle
import re
import resource
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable
from pathlib import Path
from typing import Any, NamedTuple
from unittest.mock import patch

from openpyxl import Workbook, load_workbook
from openpyxl.cell.cell import MergedCell
from openpyxl.styles import NamedStyle
from openpyxl.utils import column_index_from_string

from candlecalc.season import folder
from candlecalc.season.fields import Field, Value
from candlecalc.season.season import Row, Season, frame, problems
from candlecalc.season.tables import TABLES
from candlecalc.workbook import book
from candlecalc.workbook.writing import memory

ROUNDS, MOST_OVER_BARE = 5, 3.0
DATED = datetime.date(2027, 8, 2)
LARGE = {"materials": 200, "vessels": 24, "recipes": 60, "sets": 30, "places": 6, "prices": 180}
REFERENCE = re.compile(r"(\$?)\b([A-Z]{1,3})(\$?)(\d+)\b(?!\()")


class Cells(NamedTuple):
    """What stands in a workbook's cells: (row, column, value, is it text, style) by tab."""

    tabs: dict[str, list[tuple[int, int, object, bool, str]]]
    styles: list[NamedStyle]


def main() -> int:
    with tempfile.TemporaryDirectory() as work:
        pickled = {name: Path(work, name) for name in SEASONS}
        for name, path in pickled.items():
            run("cells", name, path)
        # Asked for before the work here: a process starts from the peak of the one that starts it.
        peaks = {name: [run(what, name, path) for what in PEAKS] for name, path in pickled.items()}
        figures = {name: measured(name, pickle.loads(path.read_bytes())) for name, path in pickled.items()}
    print(f"{'':44}" + "".join(f"{name:>14}" for name in SEASONS))
    for head, shown in (*LINES.items(), *memory_lines().items()):
        print(f"{head:44}" + "".join(f"{shown(figures[name], peaks[name]):>14}" for name in SEASONS))
    met = all(each["made"] / each["bare"] <= MOST_OVER_BARE for each in figures.values())
    print(f"Made over bare: at most {MOST_OVER_BARE:g}. " + ("The target is met." if met else "The target is missed."))
    return 0 if met else 1


def large() -> Season:
    """The demo's rows again and again, numbered, until each table has what LARGE asks for."""
    demo = folder.read(folder.DEMO)
    tables = {key: frame(_repeated(demo, key, LARGE.get(key, 0)), TABLES[key]) for key in demo.tables}
    season = Season(dict(demo.settings), tables)
    assert not problems(season), problems(season)
    return season


def _repeated(demo: Season, key: str, count: int) -> list[Row]:
    rows = [row for _, row in demo.rows(key)]
    numbered = [(place // len(rows), rows[place % len(rows)]) for place in range(count)]
    return [
        {name: _numbered(demo, TABLES[key][name], value, time) for name, value in row.items()} for time, row in numbered
    ]


def _numbered(demo: Season, field: Field, value: Value, time: int) -> Value:
    """A name of the nth time over; one that names another row goes over those that stand there whole."""
    if field.names_from:
        time %= LARGE[field.names_from] // len(demo.tables[field.names_from])
    return f"{value} {time + 1}" if value and (field.name or field.names_from) else value


SEASONS: dict[str, Callable[[], Season]] = {"demo": lambda: folder.read(folder.DEMO), "large": large}


def cells_of(workbook: bytes) -> Cells:
    opened = load_workbook(io.BytesIO(workbook))
    tabs = {
        sheet.title: [
            (cell.row, cell.column, cell.value, cell.data_type == "s", cell.style)
            for row in sheet.iter_rows()
            for cell in row
            if not isinstance(cell, MergedCell) and (cell.has_style or cell.value is not None)
        ]
        for sheet in opened.worksheets
    }
    used = {cell[4] for tab in tabs.values() for cell in tab} - {"Normal"}
    return Cells(tabs, [_style(style) for style in opened._named_styles if style.name in used])


def _style(style: NamedStyle) -> NamedStyle:
    """A style apart from the workbook that it was read from."""
    parts = ("font", "fill", "border", "alignment", "protection", "number_format")
    return NamedStyle(style.name, **{part: getattr(style, part) for part in parts})


def bare(cells: Cells) -> bytes:
    written = Workbook()
    written.remove(written.active)
    for style in cells.styles:
        written.add_named_style(_style(style))
    for title, tab in cells.tabs.items():
        sheet = written.create_sheet(title)
        for row, column, value, text, style in tab:
            cell = sheet.cell(row, column)
            cell.value, cell.style = value, style
            if text:
                cell.data_type = "s"
    out = io.BytesIO()
    written.save(out)
    return out.getvalue()


def measured(name: str, cells: Cells) -> dict[str, float]:
    season = SEASONS[name]()
    figures: dict[str, list[float]] = {}
    for _ in range(ROUNDS):  # in turns, so that all see the same machine
        for key, took in one_round(season, cells).items():
            figures.setdefault(key, []).append(took)
    values = [(row, column, value) for tab in cells.tabs.values() for row, column, value, text, _ in tab if not text]
    formulas = [(row, column, value) for row, column, value in values if str(value).startswith("=")]
    return {
        **{key: min(times) for key, times in figures.items()},
        "size": len(book.made(season, DATED)) / 1000,
        "bare size": len(bare(cells)) / 1000,
        "cells": sum(map(len, cells.tabs.values())),
        "formulas": len(formulas),
        "unique": len({_relative(row, column, value) for row, column, value in formulas}),
    }


def one_round(season: Season, cells: Cells) -> dict[str, float]:
    """Seconds of the bare write and of ours, and what of ours went into its last two steps."""
    bare_took, _ = seconds(lambda: bare(cells))
    step: list[float] = []
    work = memory.calculated

    def calculated(*given: Any) -> object:
        step.append(time.perf_counter())
        values = work(*given)
        step.append(time.perf_counter())
        return values

    start = time.perf_counter()
    with patch.object(memory, "calculated", calculated):
        made_took, _ = seconds(lambda: book.made(season, DATED))
    build, fill = step[0] - start, step[1] - step[0]
    return {"bare": bare_took, "made": made_took, "build": build, "pack": made_took - build - fill, "fill": fill}


def seconds(work: Callable[[], Any]) -> tuple[float, Any]:
    gc.collect()
    start = time.perf_counter()
    result = work()
    return time.perf_counter() - start, result


def _relative(row: int, column: int, formula: str) -> str:
    """A formula with its references as steps from its own cell, as they copy down and across."""

    def steps(found: re.Match[str]) -> str:
        fixed_column, letters, fixed_row, number = found.groups()
        across = letters if fixed_column else column_index_from_string(letters) - column
        return f"[{across},{number if fixed_row else int(number) - row}]"

    return REFERENCE.sub(steps, formula)


# --- peak memory: each task in a process of its own -------------------------------------------

TASKS: dict[str, Callable[[str, Path], object]] = {
    "cells": lambda name, path: path.write_bytes(pickle.dumps(cells_of(book.made(SEASONS[name](), DATED)))),
    "imports": lambda name, path: __import__("formualizer"),
    "bare": lambda name, path: bare(pickle.loads(path.read_bytes())),
    "unfilled": lambda name, path: book.made(SEASONS[name](), DATED, stored=False),
    "made": lambda name, path: book.made(SEASONS[name](), DATED),
}
PEAKS = ("imports", "bare", "unfilled", "made")


def run(what: str, name: str, path: Path) -> float:
    """The peak of a task's memory, MB."""
    command = [sys.executable, __file__, what, name, str(path)]
    return float(subprocess.run(command, check=True, capture_output=True, text=True).stdout)


def peak(what: str, name: str, path: str) -> None:
    TASKS[what](name, Path(path))
    unit = 1e6 if sys.platform == "darwin" else 1e3  # bytes there, kB elsewhere
    print(resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / unit)


# --- the table --------------------------------------------------------------------------------

Shown = Callable[[dict[str, float], list[float]], str]


def _ms(key: str) -> Shown:
    return lambda figures, peaks: f"{figures[key] * 1e3:,.0f}"


def _count(key: str) -> Shown:
    return lambda figures, peaks: f"{figures[key]:,.0f}"


def _peak(place: int) -> Shown:
    return lambda figures, peaks: f"{peaks[place]:,.0f}"


LINES: dict[str, Shown] = {
    f"bare write, ms, best of {ROUNDS}": _ms("bare"),
    "made, values stored, ms": _ms("made"),
    "made over bare, times": lambda figures, peaks: f"{figures['made'] / figures['bare']:.2f}",
    "  of it: build, ms": _ms("build"),
    "  of it: pack, ms": _ms("pack"),
    "  of it: fill, ms": _ms("fill"),
    "cells": _count("cells"),
    "formula cells": _count("formulas"),
    "unique formulas, as they copy": _count("unique"),
    "size, kB": _count("size"),
    "size bare, kB": _count("bare size"),
}


def memory_lines() -> dict[str, Shown]:
    heads = ("imports alone", "bare write", "made, no values stored", "made, values stored")
    return {f"peak memory, MB: {head}": _peak(place) for place, head in enumerate(heads)}


if __name__ == "__main__":
    if sys.argv[1:]:
        peak(*sys.argv[1:])
    else:
        raise SystemExit(main())
