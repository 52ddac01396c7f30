"""The bench card being written: where its sections stand, and how a cell of it is put."""

from collections.abc import Sequence
from dataclasses import dataclass

from candlecalc.season.tables import TABLES
from candlecalc.workbook.cells.columns import calculated
from candlecalc.workbook.cells.references import (
    Expression,
    Named,
    Whole,
    at,
    blank,
    standing,
    text,
)
from candlecalc.workbook.cells.table_tab import Tab
from candlecalc.workbook.tabs.working.made_of import COUNTED, PARTS, WEIGHED
from candlecalc.workbook.writing.draft import ruled_where
from candlecalc.workbook.writing.page import Page, Part, made_of, part

TAB = Tab("Batch", "output", "The bench card: pick a product, say how many, weigh and tick.")

# Rows of the card: those of the head, and the heads of its sections.
SAID, PICK, ENOUGH, POTS, WEIGH = 2, 3, 4, 5, 9
CANDLE_LINES, EXTRA_LINES = len(WEIGHED), 4  # of a set its candles stand where else is weighed
COUNTING = WEIGH + len(WEIGHED) + 2
DO = COUNTING + len(COUNTED) + EXTRA_LINES + 2
STEPS = 9
COSTS = DO + STEPS + 2
COST_LINES = 7
LAST = COSTS + COST_LINES
NOTES = LAST + 2
NOTE_LINES = 3
FOOT = NOTES + NOTE_LINES

COLUMNS = "ABCDEFGHIJ"
BOXES = "IJ"  # to write in by hand
WORDS = "A" + BOXES  # columns of words; the others hold numbers


def asked(function: str, **arguments: Part) -> Expression:
    """What a declared function makes of cells and expressions."""
    return calculated(function, **{name: part(given) for name, given in arguments.items()})


def empty(cell: Part) -> Expression:
    """The test that a cell is blank."""
    return blank(part(cell))


# Named cells of the card, and of Settings.
MAKES, MELT, LARGEST, STEP = (Named(name) for name in ("batch_makes", "batch_melt", "largest_pot", "scale_step"))
ROW, POTS_IN_ALL, IN_A_POT = (Named(name) for name in ("batch_row", "batch_pots", "batch_in_pot"))
FULLER, FEWER = (
    Named(name) for name in ("batch_fuller_pots", "batch_fewer_pots")
)  # pots; the second for one candle less
PACKED = f"$M${POTS}"  # 1 where a set is on the card
UNPICKED = empty(MAKES)
NOT_POURED: tuple[Part, ...] = (UNPICKED, f"{PACKED}=1")


def typed(letter: str, sheet: str = "") -> str:
    """An entry of the card, by its column, as formulas reach it: those on another tab name this one."""
    return standing(f"{letter}{PICK}", SAID, ENOUGH, f"B{PICK}", sheet)


@dataclass(frozen=True)
class Card(Page):
    """The card, whose lines are ruled only where they say something."""

    def line(self, row: int, letters: str, where: str) -> None:
        """A line under cells, where a test holds: a row that says nothing has none."""
        ruled_where(self.sheet, f"{letters[0]}{row}:{letters[-1]}{row}", where)

    def section(
        self, row: int, heads: Sequence[Part], words: str = WORDS, *, numbers: str = "before", tall: bool = False
    ) -> None:
        super().section(row, heads, words, numbers=numbers, tall=tall)


def of(table: str, key: str, row: Part = ROW) -> Expression:
    """A value of the chosen product's row."""
    return at(table, key, part(row))


# A set is packed, not poured: it has no melt, no pot and no fill.
IS_SET = made_of('{kind}="set"', kind=of("recipes", "kind"))


def unless_set(made: Part, packed: Part) -> Expression:
    """One thing on the card of a candle that is poured, and another on that of a set."""
    return made_of(f"IF({PACKED}=1,{{packed}},{{made}})", made=made, packed=packed)


def words_unless_set(made: str, packed: str = "") -> Expression:
    """Words of the card for a candle that is poured, and others for a set."""
    return unless_set(text(made), text(packed))


def line_of_product(table: str, line: int) -> Expression:
    """The row of one of the product's lines on Sets or on Extra parts, which number them."""
    return made_of(f'MATCH(batch_row&" {line}",{{keys}},0)', keys=Whole(table, "key"))


def lines_beyond(table: str, key: str, room: int) -> Expression:
    """How many lines the product has there that the card has no room for, in words."""
    count = made_of("COUNTIF({rows},batch_row)", rows=Whole(table, key))
    return made_of(
        f'IFERROR(IF({{count}}>{room},"and "&({{count}}-{room})&" more: see {TABLES[table].title}",""),"")', count=count
    )


def of_material(key: str, name: str) -> Expression:
    """A value of the material that is a part of the chosen product."""
    return of("materials", key, of("workings", PARTS[name]))
