"""What rows say, kept once: a cell of tests gives codes, and the tab Words has the words of each.

A code is the number of a thing and a letter for what is said of it: "047b" is the second that is said of the 47th. A
cell of tests joins the codes of all that is wrong: so it tells of each thing whether anything is, and its first code is
of what to do first. A cell an entry, each with its own words, would be most of a workbook.
"""

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from typing import TypeVar

from candlecalc.workbook.cells.layout import Layout, Plan
from candlecalc.workbook.cells.references import Expression, Given, Own, Results, braced, joined, quoted, written

KEY = "words"  # of the tab
LETTERS = "abcd"  # one for each that can be said of a thing
STOPS_NOT = "/"  # stands before the code of what a row counts with all the same
TYPED = "\u2026"  # in words, stands for what was typed
# A cell of tests is read test by test; so many keep it far from the 8,192 characters that a formula may have.
TESTS_IN_A_CELL = 16


Tested = TypeVar("Tested")


@dataclass(frozen=True)
class Said:
    """What rows can say of one thing: of an entry, of a name that waits, of a check."""

    of: str
    ways: int
    words: Callable[[Plan], Sequence[str]]
    place: int | None = None  # of an entry: which of its row it is


def code(plan: Plan, table: str, thing: str, way: int | None = None) -> str:
    """The code of what is said; without `way`, what all codes of the thing have alike."""
    return f"{plan.things[table, thing]:03d}{'' if way is None else LETTERS[way]}"


@dataclass(frozen=True)
class Code(Expression):
    """A code as a text in a formula, with what stands before it."""

    table: str
    thing: str
    way: int | None = None
    before: str = ""

    def spell(self, plan: Plan, layout: Layout) -> str:
        return quoted(self.before + code(plan, self.table, self.thing, self.way))


def says(table: str, thing: str, codes: Given) -> Expression:
    """The test that a cell of tests says anything of a thing."""
    return written("ISNUMBER(FIND({code},{codes}))", code=Code(table, thing), codes=codes)


def saying(plan: Plan, table: str, thing: str) -> str:
    """The criterion that a cell of tests says anything of a thing."""
    return quoted(f"*{code(plan, table, thing)}*")


@dataclass(frozen=True)
class WithCode(Expression):
    """The same in a formula."""

    table: str
    thing: str

    def spell(self, plan: Plan, layout: Layout) -> str:
        return saying(plan, self.table, self.thing)


def words_of(codes: Given) -> Expression:
    """The words of the first code; nothing where there is none."""
    return _words(_first(codes))


def words_of_doubt(codes: Given) -> Expression:
    """The words of the first code of a doubt."""
    return _words(written(f'MID({{codes}},FIND("{STOPS_NOT}",{{codes}})+1,4)', codes=codes))


def _words(code: Expression) -> Expression:
    return written('IFERROR(INDEX({words},{line}),"")', words=Results(KEY, "words"), line=_line(code))


def words_of_entries(codes: Given, first: str, last: str) -> Expression:
    """The words of the first code of a row's entries, from the first to the last, with what was typed in them."""
    line = _line(_first(written(f'SUBSTITUTE({{codes}},"{STOPS_NOT}","")', codes=codes)))
    # What was typed may be an error: its words ask for nothing.
    typed = written(
        'IFERROR(INDEX({row},1,INDEX({places},{line}))&"","")',
        row=Own(first, last),
        places=Results(KEY, "place"),
        line=line,
    )
    return written(
        f'IFERROR(SUBSTITUTE(INDEX({{words}},{{line}}),"{TYPED}",{{typed}}),"")',
        words=Results(KEY, "words"),
        line=line,
        typed=typed,
    )


def _first(codes: Given) -> Expression:
    return written("LEFT({codes},4)", codes=codes)


def _line(code: Expression) -> Expression:
    return written("MATCH({code},{all},0)", code=code, all=Results(KEY, "code"))


def with_numbers(words: Expression, shares: Iterable[str]) -> Expression:
    """Words with the numbers in them, each where its column's key stands between braces."""
    for key in shares:
        # By itself, so that a program shows it with its own decimal mark.
        words = written(
            f'SUBSTITUTE({{words}},{braced(quoted("{" + key + "}"))},IFERROR(ROUND({{share}}*100,2),""))',
            words=words,
            share=key,
        )
    return words


def in_cells(things: Sequence[Tested]) -> list[Sequence[Tested]]:
    """Things that are tested, shared out evenly over as few cells as hold them."""
    cells = -(-len(things) // TESTS_IN_A_CELL)
    ends = [len(things) * at // cells for at in range(cells + 1)] if cells else [0]
    return [things[first:last] for first, last in zip(ends, ends[1:], strict=False)]


def all_codes(keys: Sequence[str]) -> Given:
    """The codes of several cells of tests."""
    return keys[0] if len(keys) == 1 else joined("&", keys)
