"""The Checks tab: what must hold in the whole workbook, a line each, and the master check."""

from collections.abc import Iterator
from dataclasses import dataclass

from openpyxl.worksheet.worksheet import Worksheet

from candlecalc.season.tables import SETTINGS, TABLES
from candlecalc.workbook.columns import FIRST_ROW, Place
from candlecalc.workbook.printed import print_list
from candlecalc.workbook.table_tab import Tab, TableTab
from candlecalc.workbook.tabs import batch, settings
from candlecalc.workbook.tabs import costing as costing_tab
from candlecalc.workbook.tabs.amounts import WEIGHED
from candlecalc.workbook.writer import Draft, Formula, mark_up, turns_red

TAB = Tab("Checks", "check", "What must hold in this workbook, and what to do where it does not.")
HEADS = ("Check", "Tab", "Found", "Should be", "Difference", "Tolerance", "Verdict", "What to do")
LETTERS = 1.15  # of a text, where one digit has room
WIDTHS = (51, 12, 11, 11, 11, 11, 10, 63)


@dataclass(frozen=True)
class Line:
    """One check of the workbook: two numbers that must agree within a tolerance."""

    name: str
    tab: str
    found: str
    should_be: str
    mend: str
    tolerance: float | str = 0


def lines(places: dict[str, Place], tabs: dict[str, TableTab], coin_digits: int) -> Iterator[Line]:
    """Every check, in the order of the tabs."""
    first, last = (settings.line_of(SETTINGS.keys[at]) for at in (0, -1))
    settings_mend = f"Settings!$C${first}:$C${last}"
    yield Line(
        "Settings are what they take",
        "Settings",
        f'COUNTIF({settings_mend},"?*")',
        "0",
        "see To mend beside the setting",
    )
    yield Line(
        "The season ends after it begins",
        "Settings",
        f"IF(Settings!$D${settings.line_of('last_day')}<Settings!$D${settings.line_of('first_day')},1,0)",
        "0",
        "the last day comes after the first",
    )
    for key, table in TABLES.items():
        mend = places[key].range("mend")
        yield Line(
            f"{table.title}: every row begun is whole",
            table.title,
            f'COUNTIF({mend},"?*")',
            "0",
            f"see To mend in the rows of {table.title}",
        )
        for check in tabs[key].checks:
            yield _of_rows(check.words, table.title, places[key].range("warnings"), check.mend)
    for check in tabs["workings"].checks:
        yield _of_rows(check.words, "Recipes", places["workings"].range("warnings"), check.mend)
    yield from _sums(places, coin_digits)


def _of_rows(words: str, title: str, cells: str, mend: str) -> Line:
    return Line(f"{title}: no {words}", title, f'COUNTIF({cells},"*{words}*")', "0", mend)


def _sums(places: dict[str, Place], coin_digits: int) -> Iterator[Line]:
    """Numbers that come together by two ways."""
    overwritten = "a formula was typed over: make a fresh workbook from this one"
    amounts, workings, costing, parts, sets, prices = (
        places[key] for key in ("amounts", "workings", "costing", "parts", "sets", "prices")
    )
    yield Line(
        "Wax and oil in parts make up the fills",
        "Amounts",
        f"SUM({amounts.range('melt')})",
        f"SUM({workings.range('weigh')})",
        overwritten,
        0.001,
    )
    yield Line(
        "The rise of materials is what it takes",
        costing_tab.TAB.title,
        f'COUNTIF({costing_tab.TAB.title}!{costing_tab.RISE_LINE.mend},"?*")',
        "0",
        "see the words to the left of it, over the heads of Costing",
    )
    pieces = ",".join(costing.range(key) for key in ("wax", "oils", "other", "paid", "overhead", "own", "running"))
    yield Line(
        "Parts of the cost make up the full cost",
        "Costing",
        f"SUM({pieces})",
        f"SUM({costing.range('full')})",
        overwritten,
        0.005,
    )
    own = ",".join([parts.range(key) for key in ("wax", "oils", "other", "paid", "overhead", "own", "running")])
    brought = ",".join([sets.range(key) for key in ("wax", "oils", "other", "paid", "overhead", "own", "running")])
    yield Line(
        "Sets carry what their candles cost",
        "Costing",
        f"SUM({costing.range('full')})",
        f"SUM({own},{brought})",
        overwritten,
        0.005,
    )
    spent = ",".join(prices.range(key) for key in ("full", "fees", "profit"))
    yield Line(
        "Prices are cost, fees and profit",
        "Prices",
        f"SUM({spent})",
        f"SUM({prices.range('received')})",
        overwritten,
        0.005,
    )
    first, last = batch.WEIGH + 1, batch.WEIGH + len(WEIGHED)
    step = f"{len(WEIGHED)}*N(scale_step)/2+0.000001"
    dye = f"N(Batch!$B${last})"
    yield Line(
        "Batch: weights make up the melt",
        "Batch",
        f"SUM(Batch!$B${first}:$B${last})-{dye}",
        "N(batch_melt)",
        overwritten,
        step,
    )
    full, part = f"MAX(Batch!$E${first}:$E${last})*N(batch_pots)", f"MAX(Batch!$G${first}:$G${last})"
    pots = f"{len(WEIGHED)}*N(scale_step)/2*(N(batch_pots)+2)+0.000001"
    yield Line(
        "Batch: the jugs hold what is weighed",
        "Batch",
        f"SUM({full},{part})",
        f"SUM(Batch!$B${first}:$B${last})",
        overwritten,
        pots,
    )
    rounded_lines = 5  # of money: the other two are their sums
    yield Line(
        "Batch: its money is that of its pieces, but for rounding",
        "Batch",
        f"N(Batch!$C${batch.LAST})",
        f"N(Batch!$B${batch.LAST})*N(batch_makes)",
        overwritten,
        rounded_lines * 10**-coin_digits / 2 + 0.000001,
    )
    yield Line(
        "Batch: product and number can be used",
        "Batch",
        f'IF(Batch!$A${batch.ENOUGH}="",0,IF(ISBLANK(batch_product)*ISBLANK(batch_count),0,1))',
        "0",
        "pick a product and type a whole number",
    )


def write(draft: Draft, tabs: dict[str, TableTab]) -> None:
    sheet = draft.tab(TAB)
    for number, (head, width) in enumerate(zip(HEADS, WIDTHS, strict=True), start=1):
        draft.put(sheet.cell(FIRST_ROW - 1, number), head, "head", "row" if 3 <= number <= 6 else "text")
        sheet.column_dimensions["ABCDEFGH"[number - 1]].width = width
    all_lines = list(lines(draft.plan.places, tabs, draft.plan.coin_digits))
    for row, line in enumerate(all_lines, start=FIRST_ROW):
        _line(draft, sheet, row, line)
    last = FIRST_ROW + len(all_lines) - 1
    cells = f"$G${FIRST_ROW}:$G${last}"
    wrong = f'COUNTA({cells})-COUNTIF({cells},"agrees")'
    master = Formula(f'=IF({wrong}=0,"Numbers agree",{wrong}&" to fix")')
    draft.put(sheet["A2"], master, "verdict", "words")
    turns_red(sheet, "A2", 'A2<>"Numbers agree"')
    draft.name("master_check", "Checks", "A2")
    turns_red(sheet, f"G{FIRST_ROW}:G{last}", f'G{FIRST_ROW}<>"agrees"')
    mark_up(sheet, "Checks_list", list(HEADS), last)
    sheet.freeze_panes = f"B{FIRST_ROW}"
    print_list(sheet, len(HEADS), last)


def _line(draft: Draft, sheet: Worksheet, row: int, line: Line) -> None:
    number = "quantity" if line.tolerance else "count"
    tolerance = Formula(f"={line.tolerance}") if isinstance(line.tolerance, str) else line.tolerance
    verdict = f'=IF(COUNTIFS(E{row},">="&-F{row},E{row},"<="&F{row})=1,"agrees","to fix")'
    cells = [
        (line.name, "strong_result", "text"),
        (line.tab, "result", "text"),
        (Formula(f"={line.found}"), "result", number),
        (Formula(f"={line.should_be}"), "result", number),
        (Formula(f"=ROUND(C{row}-D{row},6)"), "result", number),
        (tolerance, "result", "factor"),
        (Formula(verdict), "verdict", "words"),
        (line.mend, "note", "text"),
    ]
    for column, (value, look, shown) in enumerate(cells, start=1):
        draft.put(sheet.cell(row, column), value, look, shown, wrap=column in (1, len(cells)))
    one_line = len(line.name) <= WIDTHS[0] * LETTERS and len(line.mend) <= WIDTHS[-1] * LETTERS
    sheet.row_dimensions[row].height = 18 if one_line else 31
