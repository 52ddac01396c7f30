"""The Checks tab: what must hold in the whole workbook, a line each, and the master check."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from openpyxl.worksheet.worksheet import Worksheet

from candlecalc.season.tables import SETTINGS, TABLES
from candlecalc.workbook.cells.place import FIRST_ROW, Place
from candlecalc.workbook.cells.table_tab import Check, Tab, TableTab
from candlecalc.workbook.tabs import batch, costing, settings
from candlecalc.workbook.tabs.amounts import WEIGHED
from candlecalc.workbook.tabs.parts import PIECES
from candlecalc.workbook.writing.draft import ALL_WELL, Draft, Formula, mark_up, turns_red
from candlecalc.workbook.writing.printed import print_list

TAB = Tab("Checks", "check", "What must hold in this workbook, and what to do where it does not.")
# By head.
WIDTHS = {
    "Check": 51, "Tab": 12, "Found": 11, "Should be": 11, "Difference": 11, "Tolerance": 11, "Verdict": 10,
    "What to do": 63,
}  # fmt: skip
NUMBERS = ("Found", "Should be", "Difference", "Tolerance")
AGREES, TO_FIX, WAITS, TO_LOOK_AT = "agrees", "to fix", "waits", "to look at"
MEND_FIRST = "mend first what is to fix; if nothing is, make a fresh workbook"
OVERWRITTEN = "a formula was typed over: make a fresh workbook from this one"
LETTERS = 1.15  # of a text, where one digit has room
ROUNDING = 0.000001  # what is left of a sum in binary numbers


@dataclass(frozen=True)
class Line:
    """One check of the workbook: two numbers that must agree within a tolerance."""

    name: str
    tab: str
    found: str
    mend: str
    should_be: str = "0"
    tolerance: float | str = 0
    sums: bool = False  # two sums that agree while the lines they rest on do
    rested_on: bool = False  # sums rest on it
    unlikely: bool = False  # may be meant: to look at, and no more


def lines(places: dict[str, Place], tabs: dict[str, TableTab], coin_digits: int) -> Iterator[Line]:
    """Every check, in the order of the tabs."""
    yield from _settings()
    for key, table in TABLES.items():
        whole = f"{table.title}: every row begun is whole"
        yield Line(
            whole,
            table.title,
            _words_in(places[key].results("mend")),
            f"see To mend in the rows of {table.title}",
            rested_on=True,
        )
        yield from _of_rows(tabs[key].checks, table.title, places[key])
    yield from _of_rows(tabs["workings"].checks, TABLES["recipes"].title, places["workings"])
    yield from _rise(places["costing"])
    yield from _sums(places)
    yield from _batch(coin_digits)


def _words_in(cells: str) -> str:
    """How many cells say something: a formula that says nothing gives an empty text."""
    return f'COUNTIF({cells},"?*")'


def _of_rows(checks: Sequence[Check], title: str, place: Place) -> Iterator[Line]:
    for check in checks:
        if not check.unlikely:
            found = f'COUNTIF({place.results("warnings")},"*{check.words}*")'
            yield Line(f"{title}: no {check.words}", title, found, check.mend, rested_on=check.sums)
    if any(check.unlikely for check in checks):
        mend = f"read Is it meant? in the rows of {title}; leave what is meant"
        yield Line(f"{title}: entries are likely", title, _words_in(place.results("doubts")), mend, unlikely=True)


def _settings() -> Iterator[Line]:
    first, last = (settings.line_of(SETTINGS.keys[at]) for at in (0, -1))
    mend = f"{SETTINGS.title}!$C${first}:$C${last}"
    begins, ends = (f"{SETTINGS.title}!$D${settings.line_of(key)}" for key in ("first_day", "last_day"))
    yield Line(
        "Settings are what they take", SETTINGS.title, _words_in(mend), "see To mend beside the setting", rested_on=True
    )
    turned = f"IF({ends}<{begins},1,0)"
    yield Line("The season ends after it begins", SETTINGS.title, turned, "the last day comes after the first")


def _rise(costed: Place) -> Iterator[Line]:
    mend = f"{costed.sheet}!{costing.RISE_LINE.mend}"
    words = "see the words to the left of it, over the heads of Costing"
    yield Line("The rise of materials is what it takes", costed.title, _words_in(mend), words)


def _sums(places: dict[str, Place]) -> Iterator[Line]:
    """Numbers that come together by two ways."""
    amounts, workings, costed, parts, sets, prices = (
        places[key] for key in ("amounts", "workings", "costing", "parts", "sets", "prices")
    )
    full = _sum(costed, "full")
    yield _agree(
        "Wax and oil in parts make up the fills", amounts.title, _sum(amounts, "melt"), _sum(workings, "weigh"), 0.001
    )
    yield _agree("Parts of the cost make up the full cost", costed.title, _sum(costed, *PIECES), full)
    own, brought = (",".join(place.results(key) for key in PIECES) for place in (parts, sets))
    yield _agree("Sets carry what their candles cost", costed.title, full, f"SUM({own},{brought})")
    spent = _sum(prices, "full", "fees", "profit")
    yield _agree("Prices are cost, fees and profit", prices.title, spent, _sum(prices, "received"))


def _sum(place: Place, *keys: str) -> str:
    return f"SUM({','.join(place.results(key) for key in keys)})"


def _agree(name: str, title: str, found: str, should_be: str, tolerance: float | str = 0.005) -> Line:
    return Line(name, title, found, OVERWRITTEN, should_be, tolerance, sums=True)


def _batch(coin_digits: int) -> Iterator[Line]:
    """What the bench card adds up to."""
    title, first, last = batch.TAB.title, batch.WEIGH + 1, batch.WEIGH + len(WEIGHED)

    def column(letter: str) -> str:
        return f"{title}!${letter}${first}:${letter}${last}"

    weighed, half_steps = f"SUM({column('B')})", f"{len(WEIGHED)}*N(scale_step)/2"
    dye = f"N({title}!$B${last})"
    jugs = f"SUM(MAX({column('E')})*N(batch_pots),MAX({column('G')}))"
    jug_steps = f"{half_steps}*(N(batch_pots)+2)+{ROUNDING:f}"
    a_piece, of_all = (f"N({title}!${letter}${batch.LAST})" for letter in "BC")
    rounded = sum(not cost.function for cost in batch.COST) * 10**-coin_digits / 2 + ROUNDING
    product, count = (batch.typed(letter, title) for letter in list(batch.ENTRIES)[:2])
    unused = f'IF({title}!$B${batch.ENOUGH}="",0,IF(ISBLANK({product})*ISBLANK({count}),0,1))'
    yield _agree(
        "Batch: weights make up the melt", title, f"{weighed}-{dye}", "N(batch_melt)", f"{half_steps}+{ROUNDING:f}"
    )
    yield _agree("Batch: the jugs hold what is weighed", title, jugs, weighed, jug_steps)
    name = "Batch: its money is that of its pieces, but for rounding"
    yield _agree(name, title, of_all, f"{a_piece}*N(batch_makes)", rounded)
    yield Line("Batch: product and number can be used", title, unused, "pick a product and type a whole number")


def write(draft: Draft, tabs: dict[str, TableTab]) -> None:
    sheet = draft.tab(TAB)
    for letter, (head, width) in zip("ABCDEFGH", WIDTHS.items(), strict=True):
        draft.put(sheet[f"{letter}{FIRST_ROW - 1}"], head, "head", "row" if head in NUMBERS else "text")
        sheet.column_dimensions[letter].width = width
    all_lines = list(lines(draft.plan.places, tabs, draft.plan.coin_digits))
    rested_on = [f"$G${row}" for row, line in enumerate(all_lines, start=FIRST_ROW) if line.rested_on]
    for row, line in enumerate(all_lines, start=FIRST_ROW):
        _line(draft, sheet, row, line, rested_on)
    last = FIRST_ROW + len(all_lines) - 1
    draft.put(sheet["A2"], Formula(f"={_master(f'$G${FIRST_ROW}:$G${last}')}"), "verdict", "words")
    turns_red(sheet, "A2", f'A2<>"{ALL_WELL}"')
    draft.name("master_check", "Checks", "A2")
    turns_red(sheet, f"G{FIRST_ROW}:G{last}", f'G{FIRST_ROW}<>"{AGREES}"')
    mark_up(sheet, "Checks_list", list(WIDTHS), last)
    sheet.freeze_panes = f"B{FIRST_ROW}"
    print_list(sheet, len(WIDTHS), last)
    sheet.page_setup.fitToHeight = 1


def _master(verdicts: str) -> str:
    """What all lines come to: how many are to fix, else how many wait or are to look at."""
    to_fix, waits, doubts = (f'COUNTIF({verdicts},"{verdict}")' for verdict in (TO_FIX, WAITS, TO_LOOK_AT))
    wrong = f'IF({to_fix}=0,{waits},{to_fix})&" {TO_FIX}"'
    return f'IF({to_fix}+{waits}>0,{wrong},IF({doubts}>0,{doubts}&" {TO_LOOK_AT}","{ALL_WELL}"))'


def _line(draft: Draft, sheet: Worksheet, row: int, line: Line, rested_on: Sequence[str]) -> None:
    """`rested_on` are the verdicts that sums rest on."""
    number = "quantity" if line.tolerance else "count"
    tolerance = Formula(f"={line.tolerance}") if isinstance(line.tolerance, str) else line.tolerance
    # A sum over a row that is to mend is an error, or short of it: it waits, and the row is what is to fix.
    otherwise = f'"{TO_LOOK_AT if line.unlikely else TO_FIX}"'
    if line.sums:
        fixed_first = "+".join(f'({verdict}="{TO_FIX}")' for verdict in rested_on)
        otherwise = f'IF({fixed_first}>0,"{WAITS}",{otherwise})'
    verdict = f'=IF(ISERROR(E{row}+F{row}),"{WAITS}",IF(ABS(E{row})<=F{row},"{AGREES}",{otherwise}))'
    what = Formula(f'=IF(G{row}="{WAITS}","{MEND_FIRST}","{line.mend}")')
    cells = [
        (line.name, "strong_result", "text"),
        (line.tab, "result", "text"),
        (Formula(f"={line.found}"), "result", number),
        (Formula(f"={line.should_be}"), "result", number),
        (Formula(f"=ROUND(C{row}-D{row},6)"), "result", number),
        (tolerance, "result", "factor"),
        (Formula(verdict), "verdict", "words"),
        (what, "note", "words"),
    ]
    for column, (value, look, shown) in enumerate(cells, start=1):
        draft.put(sheet.cell(row, column), value, look, shown, wrap=column in (1, len(cells)))
    one_line = all(
        len(text) <= WIDTHS[head] * LETTERS for head, text in (("Check", line.name), ("What to do", line.mend))
    )
    sheet.row_dimensions[row].height = 18 if one_line else 31
