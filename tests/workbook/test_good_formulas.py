"""A workbook's formulas against published good practice: points 4 and 26 to 38 of those in test_good_practice.py."""

import itertools
import re

import pytest
from formulas import COMPARISONS, anywhere, depth, kinds, nodes, places, tree

from candlecalc.declaration import native
from candlecalc.declaration.declared import REGISTRY
from candlecalc.season.fields import NAME_LENGTH
from candlecalc.season.room import CROWDED
from candlecalc.season.tables import tables_of
from candlecalc.season.tables.once import SETTING_FIELDS
from candlecalc.season.tables.taken import A_MOMENT
from candlecalc.workbook import book
from candlecalc.workbook.cells.entries import FIRST_SERIAL, LAST_SERIAL
from candlecalc.workbook.cells.layout import FIRST_ROW, HEAD_ROW
from candlecalc.workbook.cells.table_tab import FIRST_LIKELY_DAY, LAST_LIKELY_DAY
from candlecalc.workbook.tabs.make import batch
from candlecalc.workbook.tabs.registry import registered

# All in Excel 2016, LibreOffice 7.4 and web spreadsheets; none volatile. A HYPERLINK of ours leads to a cell of the
# workbook itself: no link that stands still can lead to the first row that has something.
ALLOWED = {
    "ABS", "AND", "CHOOSE", "COUNT", "COUNTA", "COUNTIF", "COUNTIFS", "EXACT", "FIND", "HYPERLINK", "IF",
    "IFERROR", "INDEX", "INT", "ISBLANK", "ISERROR", "ISLOGICAL", "ISNUMBER", "ISTEXT", "LEFT", "LEN", "MATCH",
    "MAX", "MID", "MIN", "N", "NA", "NOT", "OR", "PI", "REPT", "ROUND", "ROUNDUP", "ROW", "ROWS", "SUBSTITUTE",
    "SUM", "SUMIFS", "SUMPRODUCT", "TEXT", "TRIM",
}  # fmt: skip
ROUNDING = {"INT", "TRUNC", "CEILING", "FLOOR", "MOD", "ROUNDUP", "ROUNDDOWN"}


@pytest.fixture(scope="module")
def formulas(sheets):
    return [cell for sheet in sheets for row in sheet.iter_rows() for cell in row if cell.data_type == "f"]


@pytest.fixture(scope="module")
def unique(formulas):
    """A cell for each formula as its column has it, whatever the row."""
    return list({(cell.parent.title, anywhere(cell.value, cell.coordinate)): cell for cell in formulas}.values())


# Tabs of people that look at a later one: a price asks for the terms of its place. What is behind the numbers, and
# the master check, stand last, where nobody has to pass them. Start, before all others, says which rows run short.
LOOK_AHEAD = {("Prices", "Places sold")}


def test_04_formulas_look_at_earlier_tabs_and_behind_the_numbers(sheets, unique):  # FAST 2.01-04
    order = sheets.sheetnames
    last = {each.tab.title for each in registered() if each.group == "working"} | {"Checks"}
    ahead = {
        (cell.parent.title, tab)
        for cell in unique
        for tab, _, _ in places(tree(cell.value), cell, sheets.defined_names)
        if order.index(tab) > order.index(cell.parent.title)
    }
    assert {pair for pair in ahead if not {*last, "Start"}.intersection(pair)} == LOOK_AHEAD


def test_04_formulas_of_a_list_look_up_or_to_the_left(sheets, unique):  # FAST 2.01-04
    for cell in unique:
        if cell.parent.title in [tab.title for tab in book.lists(False).values()] and cell.row >= FIRST_ROW:
            for tab, column, row in places(tree(cell.value), cell, sheets.defined_names):
                # A row that must stand alone is counted over its own columns, which are to the left. What is wrong
                # with a row is told beside its name, and found behind the results, in nobody's way; so are a row's own
                # number and whether it counts, which are no results.
                if tab == cell.parent.title and column > cell.column and row >= cell.row:
                    ahead = cell.parent.cell(HEAD_ROW, column).value.partition(":")[0]
                    from_left = cell.parent.cell(HEAD_ROW, cell.column).value in ("What to do", "Ready")
                    assert ahead in ("Row", "Ready", "To mend") or from_left, cell


def test_26_a_column_holds_one_formula(sheets):  # 20P 12; FAST
    for tab in book.lists(False).values():
        for column in sheets[tab.title].iter_cols(min_row=FIRST_ROW):
            held = {anywhere(cell.value, cell.coordinate) for cell in column if cell.data_type == "f"}
            assert len(held) == (column[0].data_type == "f"), column[0]


def criteria(cell):
    """Numbers inside a text that a program would read in its user's own language: ">=0.5"."""
    return re.findall(r'"[<>=]+-?[0-9][^"]*"', cell)


def test_no_text_in_a_formula_or_a_rule_holds_a_number_to_compare_with(sheets, unique):
    rules = [test for sheet in sheets for area in sheet.conditional_formatting for rule in area.rules
             for test in rule.formula]  # fmt: skip
    assert criteria('=COUNTIF(A1,">=0.5")') == ['">=0.5"']
    assert [found for text in [*(cell.value for cell in unique), *rules] for found in criteria(text)] == []


def test_a_rule_of_colours_looks_at_its_own_tab_alone(sheets):  # Excel 2007 refuses another
    rules = [test for sheet in sheets for area in sheet.conditional_formatting for rule in area.rules
             for test in rule.formula]  # fmt: skip
    assert rules
    assert [test for test in rules if "!" in test] == []


def numbers(node):
    return {float(each.text) for each in nodes(node) if each.of == "NUMBER"}


def test_27_numbers_in_formulas_are_declared(file, unique):  # 20P 14; FAST 3.04-01
    fields = [
        *SETTING_FIELDS.values(),
        batch.COUNT,
        *(field for table in tables_of(False).values() for field in table.fields),
    ]
    limits = {abs(limit) for field in fields if field.term for limit in file.season.measures.limits(field.term)}
    functions = {
        float(leaf)
        for each in REGISTRY.values()
        if each.native
        for leaf in re.findall(r"(?<![\w.])\d+(?:\.\d+)?", native.spell(each.native))
    }
    small = set(map(float, range(10)))  # cells that are counted, digits that are rounded to, halves
    time_and_parts = {12.0, 24.0, 60.0, 1440.0, 100.0, 1000.0, A_MOMENT}
    # Nothing known of a limit: all of it, or half of the wax; a name's length; longer than any name.
    others = {0.5, float(NAME_LENGTH), 0.000001, CROWDED}
    others |= {float(day) for day in (FIRST_SERIAL, LAST_SERIAL, FIRST_LIKELY_DAY, LAST_LIKELY_DAY)}
    for cell in unique:
        unknown = numbers(tree(cell.value)) - limits - functions - small - time_and_parts - others
        assert not unknown, f"{cell.parent.title} {cell.coordinate}: {unknown}"


MOST, DEEPEST = 120, 3  # characters; functions inside one another
# Not met, and said here: a name must be one, be there, be of its kind, be missed where another entry asks for it, and
# have no mark in it that a look-up takes for any letters; the
# card finds everything by the chosen row; a vessel's shape is one formula, as declared. A cell of tests is read test by
# test, each as short as any: a cell a test would be two thirds more of a workbook.
LONG = ("To mend", "Checks", "Waits for", "Look at")  # begin the heads of such
A_TEST = re.compile(r"""(?:&|,"",)(?=CHOOSE\(|REPT\(|IFERROR\(REPT\()""")
LONGEST = 8192  # characters that Excel takes
# An entry is reached by its row's number in a range that a cut cannot move: it reads as the one cell it is.
REACHED = re.compile(r"INDEX\(((?:'[^']+'!|\w+!)?)(\$[A-Z]+)\$\d+:\2\$\d+,\$[A-Z]+(\d+)\)")
# ... and the entries of a row, named one by one, as the cells from the first to the last.
ONE_BY_ONE = re.compile(r"COUNTA\((\$[A-Z]+\d+)(?:,\$[A-Z]+\d+)+,(\$[A-Z]+\d+)\)")
WORDS = re.compile(r'"[^"]*"')  # what a maker is told is no step of a calculation
ALONE = re.compile(r"INDEX\((?:\w+!)?(\$[A-Z]+)\$\d+:\1\$\d+,ROW\((?:\w+!)?\$[A-Z]+(\$\d+)\)-ROW\([^)]*\)\+1\)")


def as_read(cell):
    formula = ALONE.sub(r"\1\2", REACHED.sub(r"\1\2\3", cell.value))
    return WORDS.sub('""', ONE_BY_ONE.sub(r"COUNTA(\1:\2)", formula))


def test_28_most_formulas_are_short_and_none_is_long_but_for_those_said_here(unique):  # FAST 3.03
    short = [cell for cell in unique if len(as_read(cell)) <= MOST and depth(tree(as_read(cell))) <= DEEPEST]
    # Three in four: a cut must move nothing, and each row says what is wrong with it.
    assert len(short) / len(unique) > 3 / 4
    for cell in unique:
        head = str(cell.parent.cell(FIRST_ROW - 1, cell.column).value)
        if cell.parent.title not in ("Batch", "Checks"):
            steps = A_TEST.split(as_read(cell)) if head.startswith(LONG) else [as_read(cell)]
            longest = max(map(len, steps))
            assert longest <= (330 if head.startswith(LONG) else 210), f"{cell.parent.title} {cell.coordinate}"
            assert len(cell.value) < LONGEST / 1.5, f"{cell.parent.title} {cell.coordinate}"
            assert depth(tree(as_read(cell))) <= (9 if head.startswith(LONG) else 5), (
                f"{cell.parent.title} {cell.coordinate}"
            )


def test_28_no_list_has_a_choice_within_a_choice(unique):  # FAST 3.03: never nest IF
    for cell in unique:
        if cell.parent.title not in ("Batch", "Checks"):
            within = [n for n in nodes(tree(cell.value)) if n.text == "IF" for part in n.parts for m in nodes(part)
                      if m.text == "IF"]  # fmt: skip
            assert not within, f"{cell.parent.title} {cell.coordinate}: {cell.value}"


def test_29_and_30_formulas_keep_to_plain_functions(unique):  # FAST 4.01-03: no OFFSET, no INDIRECT, none volatile
    used = {node.text for cell in unique for node in nodes(tree(cell.value)) if node.kind == "function"}
    assert used <= ALLOWED
    assert not [cell for cell in unique if "_xl" in cell.value]


def test_31_nothing_asks_for_rounds_of_calculation(sheets):  # FMC: no circular reference; none is found in test_values
    assert not sheets.calculation.iterate


def test_32_no_two_columns_of_a_list_work_out_the_same(sheets):  # 20P 15
    for tab in book.lists(False).values():
        held = [cell.value for cell in sheets[tab.title][FIRST_ROW] if cell.data_type == "f"]
        assert len(set(held)) == len(held), tab.title


def test_33_ranges_are_as_long_as_their_tables(sheets, unique):
    for cell in unique:
        assert not re.search(r"\$?[A-Z]+:\$?[A-Z]+(?![0-9])", cell.value), cell
    for tab, _, row in itertools.chain.from_iterable(
        places(tree(cell.value), cell, sheets.defined_names) for cell in unique
    ):
        # To the empty, locked row under the list at most: its end cannot be cut.
        assert row <= max(sheets[tab].max_row, FIRST_ROW) + 1


def test_34_and_35_every_formula_has_a_stored_value_and_none_is_an_error(file, formulas, held):
    raw = [data for name, data in file.parts.items() if name.startswith("xl/worksheets/sheet")]
    assert sum(data.count(b"<f>") for data in raw) == sum(len(re.findall(rb"</f><v ?>", data)) for data in raw)
    assert len(formulas) == sum(data.count(b"<f>") for data in raw)
    for cell in formulas:
        assert not str(held[cell.parent.title][cell.coordinate].value).startswith("#"), cell


def _unrounded(node):
    """Cells and products that reach a rounding function as they are; one typed cell alone may."""
    if node.kind == "function" and node.text == "ROUND":
        return False
    return (node.of == "RANGE") or any(map(_unrounded, node.parts))


def test_38_only_rounded_numbers_are_cut_to_whole_ones(unique):
    for cell in unique:
        for node in nodes(tree(cell.value)):
            if node.kind == "function" and node.text in ROUNDING:
                typed = node.parts[0].of == "RANGE" or node.parts[0].text in ("INDEX", "N", "SUM")
                assert typed or not _unrounded(node.parts[0]), f"{cell.parent.title} {cell.coordinate}"


def test_38_equal_is_asked_of_words_counts_and_rounded_numbers(unique):
    for cell in unique:
        for node in nodes(tree(cell.value)):
            if node.kind == "operation" and node.text in ("=", "<>") and len(node.parts) == 2:
                told = [kinds(part) for part in node.parts]
                # With a word, a yes or no, a number that is written out or rounded: none is a sum of weights or
                # money. A whole column that is compared with a cell is one of names.
                plain = [each <= {"TEXT"} or each <= {"NUMBER"} and part.of == "NUMBER" or each <= {"LOGICAL"}
                         or part.text in ("ROUND", "INT") or part.of == "RANGE" and ":" in part.text
                         for each, part in zip(told, node.parts, strict=True)]  # fmt: skip
                assert any(plain), cell.value


def _compares_unlike(node):
    """A comparison of a yes or no with a number: FALSE=0 does not hold in Excel, and does elsewhere."""
    if node.kind != "operation" or node.text not in COMPARISONS:
        return False
    left, right = (kinds(part) for part in node.parts)
    return ("LOGICAL" in left and "NUMBER" in right) or ("NUMBER" in left and "LOGICAL" in right)


UNLIKE = {"=ISTEXT(A1)=0": True, "=IFERROR(OR(A1=1,B1=2),FALSE)=0": True, "=1<(A1=2)": True,
          "=ISTEXT(A1)*1=0": False, "=1+(A1=2)>0": False, "=(A1>0)=(B1=2)": False}  # fmt: skip


@pytest.mark.parametrize("formula, unlike", UNLIKE.items())
def test_a_comparison_of_unlike_things_is_seen(formula, unlike):
    assert any(map(_compares_unlike, nodes(tree(formula)))) == unlike


def test_no_formula_compares_a_yes_or_no_with_a_number(sheets, unique):
    every = {cell.value for cell in unique}
    every |= {"=" + test for sheet in sheets for area in sheet.conditional_formatting for rule in area.rules
              for test in rule.formula}  # fmt: skip
    assert not [formula for formula in every if any(map(_compares_unlike, nodes(tree(formula))))]
