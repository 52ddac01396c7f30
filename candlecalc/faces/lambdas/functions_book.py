"""The functions workbook: every function that a cell can say, as a name, with an example to play with.

The embedded engine calculates no LAMBDA, so the value beside each call is Python's own answer.
"""

import datetime
import re
from collections.abc import Mapping, Sequence
from typing import Any, NamedTuple
from xml.sax.saxutils import escape

from openpyxl import Workbook
from openpyxl.cell.cell import Cell
from openpyxl.utils import get_column_letter
from openpyxl.workbook.defined_name import DefinedName
from openpyxl.worksheet.worksheet import Worksheet

from candlecalc import __version__
from candlecalc.declaration.declared import Argument, Function, Term
from candlecalc.faces.addins import wizard
from candlecalc.faces.described import reference
from candlecalc.faces.lambdas import names as lambdas
from candlecalc.files import zipped
from candlecalc.quantities.days import serial
from candlecalc.season.presets import blank_settings
from candlecalc.season.season import empty
from candlecalc.workbook import book
from candlecalc.workbook.cells import styles
from candlecalc.workbook.cells.layout import FIRST_ROW
from candlecalc.workbook.cells.table_tab import Tab
from candlecalc.workbook.tabs.start import CAUTION
from candlecalc.workbook.writing import pack
from candlecalc.workbook.writing.draft import Draft, Formula, band, link, mark_up

DATED = datetime.date(2027, 1, 1)
# The answer stands beside the first yellow cells, so that both are on the screen.
HEADS = {"Function": 40, "Subject": 11, "What it is for": 46, "Answer": 20}
AFTER = {"Arguments, with units and ranges": 60, "The call": 46, "Gives": 34, "Source": 44}
INPUT_WIDTH = 19
START = Tab("Start", "control", "The arithmetic of candle making as functions.")
FUNCTIONS = Tab(
    "Functions",
    "output",
    "Every function with an example: change a yellow cell and the answer follows. Parts that tabs need come last.",
)
DEFINITIONS = Tab("Definitions", "control", "What each name stands for, to paste into the names of another workbook.")
WORDS = {
    "What to do": (
        "1. Press Enable Editing, if a bar at the top offers it. Until then every answer reads #NAME?.",
        "2. On Functions find what you want to know, change the yellow cells of its row, and read the answer.",
        "3. To use the functions in a workbook of your own, take one of the ways below.",
    ),
    "In your own workbook": (
        "Start here: save this file under another name and build your own tabs in it.",
        "With candlecalc: candlecalc add-functions MINE.xlsx OUT.xlsx puts all names into a copy of your workbook.",
        "By hand: on Definitions copy the name and the definition of a function; in your workbook choose Formulas, "
        "Name Manager, New, and paste both.",
        "Then type =CANDLE_ in a cell: the program offers the names, with what each takes.",
    ),
    "Which programs": (
        "Microsoft 365 (Windows, macOS, the web) and Excel 2024 calculate these functions: they are names for LAMBDA "
        "formulas. Nothing is installed and no macro runs.",
        "Excel 2021 and older do not know LAMBDA: an answer reads #NAME? there once it is calculated.",
        "A file from mail or a download opens in Protected View: every answer reads #NAME? until you press Enable "
        "Editing, whatever is stored.",
        "LibreOffice calculates no LAMBDA and shows Err:509 in every answer. Use the add-in there: candlecalc addin "
        "calc candles.oxt.",
        "For any other spreadsheet, candlecalc formula NAME writes the same as a plain formula to paste.",
        "Where the same functions are in use through xlwings, take one way or the other: two functions of one name get "
        "in each other's way.",
        "Excel itself was not run in making this file: the names are written as Excel writes them, and another "
        "program that knows LAMBDA has calculated each.",
    ),
    "Good to know": (
        "Units are grams, millilitres, millimetres, degrees C and one currency, unless an argument says otherwise. "
        "Text such as 12 oz is not read.",
        "A share is typed as 8% or 0.08. A load of 8 gives #N/A: it is out of range.",
        "#N/A means that something is missing, is text, or is out of its range; the column of arguments says what is "
        "taken.",
        "What may be left out stands at its default, also where its cell is blank.",
        "Give single cells and fill down. A list is one column or one row of numbers; blanks at its end are passed "
        "over.",
        "Load is a share of wax weight, unless a name says of total.",
        CAUTION,
    ),
}


class Plain(Draft):
    """A workbook without a master check: nothing in it must agree with anything."""

    def _master(self, cell: Cell) -> None:
        pass


class Example(NamedTuple):
    """A function with its example laid out in a row: what stands in which cell, and the call over it."""

    formula: Function
    cells: list[tuple[Argument, Any]]
    call: str
    answer: Any


def made(dated: datetime.date = DATED) -> bytes:
    """The workbook: the same bytes each time."""
    parts, answers = _drafted(dated)
    name = "xl/worksheets/sheet2.xml"
    return zipped({**parts, name: _with_answers(parts[name], answers)})


def _drafted(dated: datetime.date) -> tuple[pack.Parts, dict[str, Any]]:
    draft = _draft(dated)
    functions = sorted((formula for formula in reference.every() if formula.native), key=lambda it: it.part)
    _write_start(draft)
    answers = _write_functions(draft, functions)
    _write_definitions(draft)
    for named in lambdas.every():
        names = draft.book.defined_names
        names[named.name] = DefinedName(
            named.name, comment=named.comment, hidden=named.hidden or None, attr_text=named.definition
        )
    properties = draft.book.properties
    properties.title, properties.subject = "Candle functions", "The arithmetic of a candle maker, as functions"
    properties.creator = properties.lastModifiedBy = f"candlecalc {__version__}"
    properties.language = "en"
    properties.created = datetime.datetime(dated.year, dated.month, dated.day)
    draft.book.calculation.fullCalcOnLoad = True
    return pack.parts_of(draft.book, dated, {}), answers


def _draft(dated: datetime.date) -> Draft:
    season = empty(blank_settings("gb", dated))
    workbook = Workbook()
    workbook.remove(workbook.active)
    return Plain(workbook, season, book.plan_of(season), styles.number_formats(2, 1, 0), dated)


def _write_start(draft: Draft) -> None:
    sheet = draft.tab(START, portrait=True)
    sheet.column_dimensions["A"].width, sheet.column_dimensions["B"].width = 22, 92
    draft.put(sheet["A2"], "Made by", "label")
    draft.put(sheet["B2"], f"candlecalc {__version__}", "strong")
    row = 4
    for head, lines in WORDS.items():
        row = _section(draft, sheet, row, head, lines)
    row = _section(draft, sheet, row, "The tabs", ())
    for at, tab in enumerate((FUNCTIONS, DEFINITIONS), start=row - 1):
        link(draft, sheet.cell(at, 1), tab.title, tab.title)
        draft.put(sheet.cell(at, 2), tab.purpose, "note", wrap=True)
    sheet.print_area = f"A1:B{row}"


def _section(draft: Draft, sheet: Worksheet, row: int, head: str, lines: Sequence[str]) -> int:
    """A heading with its lines; the row where the next one goes, one left free between them."""
    band(draft, sheet, row, head, "AB")
    for at, line in enumerate(lines, start=row + 1):
        draft.put(sheet.cell(at, 1), line, "label", wrap=True)
        sheet.merge_cells(start_row=at, end_row=at, start_column=1, end_column=2)
        sheet.row_dimensions[at].height = 16 * _lines(line, 104)
    return row + len(lines) + 2


def _write_functions(draft: Draft, functions: Sequence[Function]) -> dict[str, Any]:
    """The list of functions; the answers by cell."""
    sheet = draft.tab(FUNCTIONS)
    examples = [_example(formula, row) for row, formula in enumerate(functions, start=FIRST_ROW)]
    inputs = max(len(example.cells) for example in examples)
    heads = {**HEADS, **{f"Example, {at}": INPUT_WIDTH for at in range(1, inputs + 1)}, **AFTER}
    _write_heads(draft, sheet, heads, entries=range(len(HEADS) + 1, len(HEADS) + inputs + 1))
    answers = {}
    for row, example in enumerate(examples, start=FIRST_ROW):
        answers[_write_example(draft, sheet, row, example, inputs)] = example.answer
    last = FIRST_ROW + len(examples) - 1
    mark_up(sheet, "Functions_list", list(heads), last)
    sheet.freeze_panes = f"B{FIRST_ROW}"
    sheet.print_title_rows, sheet.print_title_cols = f"1:{FIRST_ROW - 1}", "A:A"
    sheet.print_area = f"A1:{get_column_letter(len(heads))}{last}"
    sheet.page_setup.fitToWidth = 3
    return answers


def _write_heads(draft: Draft, sheet: Worksheet, heads: Mapping[str, float], entries: Sequence[int] = ()) -> None:
    for column, (head, width) in enumerate(heads.items(), start=1):
        draft.put(sheet.cell(FIRST_ROW - 1, column), head, "head", "row" if head == "Answer" else "text", wrap=True)
        sheet.column_dimensions[get_column_letter(column)].width = width
        if column in entries:
            draft.put(sheet.cell(FIRST_ROW - 2, column), "entry", "mark")
    sheet.row_dimensions[FIRST_ROW - 1].height = 22


def _example(formula: Function, row: int) -> Example:
    """The example of a function's own documentation, its values in the cells of a row."""
    cells: list[tuple[Argument, Any]] = []
    references: list[str] = []
    given = reference.example(formula)
    wanted = list(formula.arguments.values())
    last = max(at for at, argument in enumerate(wanted) if argument.name in given)
    for argument in wanted[: last + 1]:
        value = given.get(argument.name)
        typed = value if isinstance(value, list) else [value] if argument.name in given else []
        ends = [f"{get_column_letter(len(HEADS) + 1 + len(cells) + at)}{row}" for at in (0, len(typed) - 1)]
        references.append(":".join(dict.fromkeys(ends)) if typed else "")
        # An example writes a day as text; a cell holds its number.
        dated = argument.term.unit == "date"
        cells += [(argument, argument.term.read(each) if dated else each) for each in typed]
    call = f"={wizard.name(formula)}({','.join(references)})"
    return Example(formula, cells, call, formula.checked(**given))


def _write_example(draft: Draft, sheet: Worksheet, row: int, example: Example, inputs: int) -> str:
    """One row; where its answer stands."""
    formula = example.formula
    name = wizard.name(formula)
    before = (name, formula.subject + ", a part" * formula.part, formula.summary)
    taken = "\n".join(_taken(argument) for argument in formula.arguments.values())
    after = (taken, example.call, f"{formula.gives}: {formula.result.help}", formula.source)
    for column, text in enumerate(before, start=1):
        draft.put(sheet.cell(row, column), text, "strong_result" if column == 1 else "result", wrap=True)
    answer = draft.put(sheet.cell(row, len(HEADS)), Formula(example.call), "strong_result", "row")
    answer.number_format = _shown(formula.result, example.answer, unit=True) + "_)" * formula.result.is_number
    for at, (argument, value) in enumerate(example.cells, start=len(HEADS) + 1):
        cell = draft.put(sheet.cell(row, at), _in_cell(value), "entry", "words")
        cell.number_format = f'"{argument.name} "{_shown(argument.term, value)}'
    for at in range(len(HEADS) + 1 + len(example.cells), len(HEADS) + 1 + inputs):
        draft.put(sheet.cell(row, at), None, "result")
    for at, text in enumerate(after, start=len(HEADS) + 1 + inputs):
        draft.put(sheet.cell(row, at), text, "result", wrap=True)
    widths = [*HEADS.values(), *AFTER.values()]
    sheet.row_dimensions[row].height = 15 * max(map(_lines, (*before, "", *after), widths)) + 5
    return str(answer.coordinate)


def _taken(argument: Argument) -> str:
    left_out = reference.default_words(argument)
    return f"{argument.name}, {reference.span(argument.term)}{left_out}: {argument.term.help}"


def _in_cell(value: Any) -> Any:
    return serial(value) if isinstance(value, datetime.date) else value


def _shown(term: Term, value: Any, unit: bool = False) -> str:
    """The number format for a value of a term, with its unit beside it if asked."""
    if isinstance(value, datetime.date):
        return styles.NUMBERS["date"]
    if isinstance(value, str):
        return "@"
    if term.unit.startswith("of "):
        return "0.0##%"
    if not unit:
        return "General"
    if term.unit.startswith("money"):
        return "#,##0.00##"
    return ("General" if term.whole else "#,##0.0####") + (f'" {term.unit}"' if term.unit else "")


def _lines(text: str, width: float) -> int:
    """How many lines a text takes in a column."""
    return sum(max(1, -(-len(line) // int(width * 1.1))) for line in text.split("\n"))


def _write_definitions(draft: Draft) -> None:
    sheet = draft.tab(DEFINITIONS)
    heads = {"Name": HEADS["Function"], "Definition": 150}
    _write_heads(draft, sheet, heads)
    functions = {wizard.name(formula): formula for formula in reference.every() if formula.native}
    for row, (name, formula) in enumerate(sorted(functions.items()), start=FIRST_ROW):
        definition = lambdas.typed(formula)
        draft.put(sheet.cell(row, 1), name, "strong_result")
        draft.put(sheet.cell(row, 2), definition, "result", wrap=True)
        sheet.row_dimensions[row].height = 15 * _lines(definition, heads["Definition"]) + 4
    last = FIRST_ROW + len(functions) - 1
    mark_up(sheet, "Definitions_list", list(heads), last)
    sheet.freeze_panes, sheet.print_area = f"B{FIRST_ROW}", f"A1:B{last}"
    sheet.print_title_rows, sheet.print_title_cols = f"1:{FIRST_ROW - 1}", "A:A"


def _with_answers(sheet: bytes, answers: Mapping[str, Any]) -> bytes:
    """The sheet with a value stored beside each call."""

    def filled(found: "re.Match[bytes]") -> bytes:
        answer = _in_cell(answers[found["cell"].decode()])
        text = isinstance(answer, str)
        stored = escape(answer) if text else repr(float(answer)).removesuffix(".0")
        kind = b' t="str"' if text else b""
        return b"<c" + found["rest"] + kind + b">" + found["formula"] + f"<v>{stored}</v></c>".encode()

    filled_in, count = CALL.subn(filled, sheet)
    if count != len(answers):
        raise ValueError(f"{count} of {len(answers)} answers found their cell")
    return filled_in


CALL = re.compile(rb'<c(?P<rest> r="(?P<cell>[A-Z]+[0-9]+)"[^>]*?)>(?P<formula><f>[^<]*</f>)<v ?(?:/>|></v>)</c>')
