"""What is said of a file that was read in: what each part of its lines comes to, and what was left out."""

from collections.abc import Sequence
from decimal import Decimal
from pathlib import Path

from candlecalc.commands.counted import counted
from candlecalc.commands.make import as_table
from candlecalc.quantities.rounding import round_half_away
from candlecalc.season.fields import Table
from candlecalc.season.importing import doubles, totals
from candlecalc.season.importing.amounts import HEADS, MONEY, Amounts, added, amounts_of
from candlecalc.season.importing.rows import Reader, Result, Taken
from candlecalc.workbook import book

NAMED = 12  # orders or documents that are named; the others are counted


def told(file: Path, reader: Reader, result: Result, new: list[Taken], double: list[Taken]) -> list[str]:
    """How the file was read, its sums beside those that were taken over, and what was not taken."""
    kind, stated = reader.layout.kind, totals.stated(reader)
    digits = book.coin_digits(reader.season.currency)
    return [
        f"{file}: read as {kind}, {_by(reader)}",
        *_columns(reader),
        *as_table(_sums(kind, result, new, double, digits)),
        *_there_already(kind, double),
        *_fees(result.fees_given_back, digits),
        *(total.told for total in stated),
        *totals.words_beside(reader, stated),
    ]


def alike_told(alike: Sequence[Taken], table: Table) -> list[str]:
    """Lines that may be there already, and may be others like them."""
    if not alike:
        return []
    return [
        f"line {alike[0].line}{f' and {len(alike) - 1:,} more' if len(alike) > 1 else ''}: taken over, though "
        f"{table.title} has such a line already and no number tells them apart: look whether it is the same"
    ]


def _by(reader: Reader) -> str:
    layout = reader.layout
    by = f'layout "{layout.name}"' if layout.name else "the layout on Imports" if layout.rules else "its heads"
    return f"by {by}{', in Windows-1252' if reader.lines.old_code_page else ''}"


def _columns(reader: Reader) -> list[str]:
    own = reader.by_heads if reader.layout.rules else []
    by_heads = [f"read by their heads alone: {', '.join(own)}"] if own else []
    return [*by_heads, *([f"not read: {', '.join(reader.unread)}"] if reader.unread else [])]


def _sums(kind: str, result: Result, new: list[Taken], double: list[Taken], digits: int) -> list[dict[str, object]]:
    """How many lines, and what they come to: of the file as it has them, of the workbook as its rows have them."""
    left_out = {
        "left out, as Imports says": result.not_meant,
        "outside the season": result.outside,
        "there already": double,
    }
    every = [*result.taken, *result.outside, *result.not_meant]
    parts = {"the file": [each.amounts for each in every]}
    parts |= {what: [each.amounts for each in lines] for what, lines in left_out.items() if lines}
    parts["taken over"] = [amounts_of(kind, each.row) for each in new]
    return [
        {"": what, "Lines": f"{len(amounts):,}", **_shown(kind, added(amounts, kind), digits)}
        for what, amounts in parts.items()
    ]


def _shown(kind: str, sums: Amounts, digits: int) -> dict[str, str]:
    return {
        head: _money(total, digits) if head == MONEY else f"{float(total):,.15g}"
        for head, total in zip(HEADS[kind], sums, strict=True)
    }


def _money(total: Decimal, digits: int) -> str:
    return f"{round_half_away(float(total), digits):,.{digits}f}"


def _there_already(kind: str, double: Sequence[Taken]) -> list[str]:
    """Which lines were refused because they are there."""
    named = list(dict.fromkeys(doubles.name_of(kind, each.row) for each in double))
    more = f"; and {len(named) - NAMED:,} more" if len(named) > NAMED else ""
    return [f"there already, and not taken again: {'; '.join(named[:NAMED])}{more}"] if named else []


def _fees(given_back: Sequence[Decimal], digits: int) -> list[str]:
    if not given_back:
        return []
    come_to = _money(sum(given_back, Decimal(0)), digits)
    return [f"{counted(len(given_back), 'fee')} given back on refunds, {come_to} in all: Sales has no place for them"]
