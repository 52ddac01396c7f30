"""What stands under the list of a file: totals, or a word of when it was written."""

from collections.abc import Mapping, Sequence

from candlecalc.season.importing.file import Line
from candlecalc.season.tables.imports import THING

THINGS = ("product", "material", THING, "batch")
TOTAL = ("total", "totals", "sum", "subtotal")


def lines_of_foot(lines: Sequence[Line], columns: Mapping[str, int]) -> list[Line]:
    """The last lines that name no thing and no day. The columns are ours, with their places in the file."""
    at = len(lines)
    while at and any(key in columns for key in THINGS) and _is_of_foot(lines[at - 1], columns):
        at -= 1
    return [*lines[at:]]


def _is_of_foot(line: Line, columns: Mapping[str, int]) -> bool:
    day = line.cells[columns["date"]] if "date" in columns else ""
    things = [cell for key in THINGS if key in columns and (cell := line.cells[columns[key]])]
    return not day[:1].isdigit() and (not things or (len(things) == 1 and _is_total(things[0]) and not day))


def _is_total(text: str) -> bool:
    return text.casefold().rstrip(":").split()[-1] in TOTAL
