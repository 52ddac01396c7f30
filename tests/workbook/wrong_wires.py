"""A wrong wire in a maker's words: which entry moved what, what it should have moved too, and what it should not.

Whether there is one is found without the formulas' trees. They say only which column comes first of those that
moved or went wrong, so that the others, which rest on it, need no line.
"""

from dataclasses import dataclass

import books
import pytest

from candlecalc.season.fields import Field
from candlecalc.season.tables.once import SETTING_FIELDS
from candlecalc.workbook.book import lists

MOST = 3  # rows of a column, and entries, that are named


@dataclass(frozen=True)
class Fault:
    """An entry that moved other cells than it should, each a (tab, column, row)."""

    entry: tuple
    moved: frozenset  # as it should
    missing: frozenset
    strange: frozenset

    def told(self, book):
        wrong = _first(book, self.missing | self.strange)
        lines = [*_in_words(book, [self.entry]), "  moved           "]
        lines[-1] += "; ".join(_in_words(book, _first(book, self.moved))) or "nothing that it should"
        for words, cells in (("expected also ", self.missing), ("did not expect", self.strange)):
            lines += [f"  {words}  {line}" for line in _in_words(book, wrong & cells)]
        rest = len({cell[:2] for cell in self.missing | self.strange} - {cell[:2] for cell in wrong})
        return "\n".join(lines + [f"  columns that rest on it and went wrong too: {rest}"] * bool(rest))


def _first(book, cells):
    """The cells of those columns that read no other of them."""
    columns = {cell[:2] for cell in cells}
    first = {column for column in columns if not _fed_by(book, column) & columns}
    return {cell for cell in cells if cell[:2] in first}


def fail_unless_moved(entry, moved, expected):
    """... with a line such as "Waste moved Slate rain jar; expected also Fig melt bar"."""
    said = {"expected also": expected - moved, "did not expect": moved - expected}
    wrong = [f"{words} {', '.join(sorted(each))}" for words, each in said.items() if each]
    if wrong:
        pytest.fail("; ".join([f"{entry} moved {', '.join(sorted(moved)) or 'nothing'}", *wrong]), pytrace=False)


def fail_if_any(faults, book):
    """... with the first of a field's entries in words."""
    more = [f"and {len(faults) - MOST} more entries"] if len(faults) > MOST else []
    if faults:
        pytest.fail("\n".join([*(fault.told(book) for fault in faults[:MOST]), *more]), pytrace=False)


def _in_words(book, cells):
    """Costing › Oils (Slate rain jar, Fig melt bar, 3 more): a line for each column of some cells."""
    lines = []
    for column in sorted({cell[:2] for cell in cells}):
        rows = [_row(book, cell) for cell in sorted(cells) if cell[:2] == column]
        rows = [*rows[:MOST], *([f"{len(rows) - MOST} more"] if len(rows) > MOST else [])]
        lines.append(_column(book, *column) + f" ({', '.join(rows)})" * any(rows))
    return lines


def _column(book, tab, key):
    """Costing › Oils, by the tab's title and the column's head; cells that stand alone by what they are called."""
    if tab in lists(False):
        return f"{book.plan.layouts[tab].title} › {_short(lists(False)[tab].columns[key].head)}"
    head = SETTING_FIELDS[key].head if key in SETTING_FIELDS else key.replace("_", " ").replace(".", ", column ")
    return f"{tab.replace('_', ' ').capitalize()} › {head[:1].upper()}{_short(head)[1:]}"


def _short(head):
    """A head without its unit."""
    return head.partition(", {")[0]


def _row(book, cell):
    """The name of a cell's row; both, where a row of the list names two things."""
    tab, _, row = (*cell, 0)[:3]
    if tab not in lists(False):
        return ""
    both = books.NAMES_FROM.get(tab, tab) in ("prices", "sets")
    return " @ ".join([str(value) for value in dict(book.rows(tab)).get(row, {}).values()][: 1 + both])


def _fed_by(book, column):
    """The columns that one reads; a cell that stands alone may read any."""
    tab, key = column
    if tab not in lists(False):
        return {(each, name) for each, declared in lists(False).items() for name in declared.columns}
    declared = lists(False)[tab].columns[key]
    return set() if isinstance(declared, Field) else declared.fed_by(book.plan, book.plan.layouts[tab]) - {column}
