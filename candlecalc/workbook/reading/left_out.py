"""What a maker has put into a workbook besides entries: it is not carried over into a new one, so it is listed."""

import posixpath
import re
import zipfile
from collections import Counter
from collections.abc import Iterator
from pathlib import Path

from defusedxml.ElementTree import fromstring
from openpyxl import Workbook
from openpyxl.styles.colors import Color
from openpyxl.utils import get_column_letter
from openpyxl.worksheet._read_only import ReadOnlyWorksheet

from candlecalc.season.tables import TABLES
from candlecalc.workbook import book
from candlecalc.workbook.cells import styles
from candlecalc.workbook.cells.table_tab import TableTab
from candlecalc.workbook.reading.heads import Shown, found_heads, heads_of, plain_head
from candlecalc.workbook.reading.opening import Rows, rows_of, workbook
from candlecalc.workbook.reading.version import Origin
from candlecalc.workbook.tabs.look import season
from candlecalc.workbook.tabs.make import costing
from candlecalc.workbook.tabs.plan import weeks_ahead
from candlecalc.workbook.tabs.test import sheet as test_sheet
from candlecalc.workbook.writing.validation import NOT_TAKEN

COMMENTS = "/comments"
# Looked for in the text of a tab: reading a tab as elements takes seconds, and each of these stands in one tag.
RULE = re.compile(rb"""<(?:\w+:)?dataValidation\s(?:[^>"']|"[^"]*"|'[^']*')*>""")
OUR_RULE = re.compile(rf"""\berrorTitle=["']{NOT_TAKEN}["']""".encode())
STYLE_OF_CELL = re.compile(rb"""<(?:\w+:)?c\s[^>]*?\bs=["']([0-9]+)""")
# Pictures, and charts but for as many as we write on each of these tabs.
PICTURE, CHART = re.compile(r"xl/media/."), re.compile(r"xl/charts/chart\d*\.xml")
CHARTS_OF = {costing.TAB.title: 1, test_sheet.TAB.title: 1, season.TAB.title: 2, weeks_ahead.TAB.title: 1}
# No colour at all, as each program writes it: black on white.
PLAIN = {"000000", styles.PAPER}
OUR_COLOURS = {
    value for value in vars(styles).values() if isinstance(value, str) and re.fullmatch("[0-9A-F]{6}", value)
}
AUTOMATIC = 64  # from this number on an indexed colour is the program's own


def not_carried(path: Path, origin: Origin, shown: Shown) -> list[str]:
    """What of a maker's own is in a workbook, a line each."""
    with workbook(path) as theirs:
        own_tabs = [title for title in theirs.sheetnames if title not in {*book.TABS, *origin.gone.tabs}]
        ours = [title for title in theirs.sheetnames if title not in own_tabs]
        found = [f"the tab {title}" for title in own_tabs]
        for title in ours:
            found += [f"{title}: {words}" for words in _on_tab(path, theirs[title], origin, shown)]
    return [*found, *_pictures(path, sum(CHARTS_OF.get(title, 0) for title in ours))]


def _on_tab(path: Path, sheet: ReadOnlyWorksheet, origin: Origin, shown: Shown) -> Iterator[str]:
    tab = book.TABS.get(sheet.title)
    if isinstance(tab, TableTab):
        rows, _ = rows_of(path, sheet)
        known = [*_heads(tab, shown), *(shown(head) for head in origin.gone.heads.get(tab.title, ()))]
        yield from (f"the column {name}" for name in _own_columns(rows, known))
    part = sheet._worksheet_path
    with zipfile.ZipFile(path) as package:
        yield from _counted(_comments(package, part), "comment", "comments")
        text = package.read(part)
    yield from _counted(
        _rules(text), "rule of your own for what may be typed", "rules of your own for what may be typed"
    )
    yield from _counted(
        _coloured(text, sheet.parent), "cell with colours of your own", "cells with colours of your own"
    )


def _counted(number: int, one: str, many: str) -> Iterator[str]:
    if number:
        yield f"{number} {one if number == 1 else many}"


def _heads(tab: TableTab, shown: Shown) -> list[str]:
    """Every head that a list has, or had."""
    fields = TABLES[tab.key].fields if tab.key in TABLES else ()
    return [
        *(shown(column.head) for column in tab.columns.values()),
        *(head for each in fields for head in heads_of(each, shown)),
    ]


def _own_columns(rows: Rows, known: list[str]) -> Iterator[str]:
    """Columns that hold something under no head of ours, by their heads, or by their letters."""
    heads = found_heads(rows, known)
    if heads is None:
        return
    ours = {at for head, at in heads.columns.items() if head in {plain_head(each) for each in known}}
    below = rows[heads.row - 1 :]
    for number in range(1, max(map(len, below)) + 1):
        if number not in ours and any(row[number - 1] is not None for row in below if number <= len(row)):
            head = heads.texts[number - 1] if number <= len(heads.texts) else None
            yield get_column_letter(number) if head is None else " ".join(str(head).split())


def _comments(package: zipfile.ZipFile, part: str) -> int:
    folder, name = posixpath.split(part)
    relations = f"{folder}/_rels/{name}.rels"
    if relations not in package.namelist():
        return 0
    targets = [
        posixpath.normpath(posixpath.join("/", folder, each.get("Target", ""))).lstrip("/")
        for each in fromstring(package.read(relations), forbid_dtd=True)
        if each.get("Type", "").endswith(COMMENTS)
    ]
    parts = [fromstring(package.read(each), forbid_dtd=True) for each in targets if each in package.namelist()]
    return sum(1 for each in parts for element in each.iter() if element.tag.endswith("}comment"))


def _rules(text: bytes) -> int:
    """Rules for what may be typed whose message has not the title that ours have."""
    return sum(not OUR_RULE.search(rule[0]) for rule in RULE.finditer(text))


def _coloured(text: bytes, theirs: Workbook) -> int:
    styles_of_cells = Counter(map(int, STYLE_OF_CELL.findall(text)))
    return sum(number for style, number in styles_of_cells.items() if _has_own_colours(theirs, style))


def _has_own_colours(theirs: Workbook, style: int) -> bool:
    if not 0 < style < len(theirs._cell_styles):
        return False
    look = theirs._cell_styles[style]
    font, fill = theirs._fonts[look.fontId], theirs._fills[look.fillId]
    return _is_own(font.color) or (bool(fill.fill_type) and _is_own(fill.fgColor))


def _is_own(colour: Color | None) -> bool:
    """Whether a colour is none of those that our workbooks have."""
    if colour is None or (colour.type == "theme" and colour.theme in (0, 1)):
        return False
    if colour.type == "rgb":
        return str(colour.rgb)[-6:].upper() not in OUR_COLOURS | PLAIN
    return bool(colour.type == "theme" or colour.indexed < AUTOMATIC)


def _pictures(path: Path, our_charts: int) -> Iterator[str]:
    with zipfile.ZipFile(path) as package:
        names = package.namelist()
    pictures = sum(1 for name in names if PICTURE.match(name))
    charts = sum(1 for name in names if CHART.fullmatch(name))
    yield from _counted(pictures + max(charts - our_charts, 0), "picture or chart", "pictures and charts")
