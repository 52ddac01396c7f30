"""The Season tab: how the season went, on one page to print. Figures and their order, and no advice."""

from collections.abc import Mapping, Sequence
from datetime import date
from typing import NamedTuple

from candlecalc.season.season import Season
from candlecalc.season.tables.carried import LAST_SOLD
from candlecalc.season.tables.stock import POURS
from candlecalc.workbook.cells.references import (
    Expression,
    Named,
    Results,
    Whole,
    Written,
    as_text,
    at_row,
    joined,
    while_known,
    written,
)
from candlecalc.workbook.cells.table_tab import Tab
from candlecalc.workbook.tabs.registry import register
from candlecalc.workbook.tabs.sell import by_place, by_product, months
from candlecalc.workbook.tabs.sell.season_sums import OWN_TIME, nth_by_what_is_left
from candlecalc.workbook.tabs.set_up.settings import as_typed
from candlecalc.workbook.writing import season_charts
from candlecalc.workbook.writing.draft import Draft, band
from candlecalc.workbook.writing.page import Page, Part, cell, made_of, part
from candlecalc.workbook.writing.printed import paper

TAB = Tab("Season", "output", "How the season went: a page to print.")
COLUMNS = "ABCDEFGHIJKLMN"
RIGHT = "GHIJKLMN"  # beside the sums
# Sums in C, F and L are the largest.
WIDTHS = (25, *(9.6 if letter in "CFL" else 8.3 for letter in COLUMNS[1:]))
LINE, HEAD, GAP = 16.0, 46.0, 8.0  # heights, points

# Rows: what it comes to in all, the months, the charts, places, products, what the figures are.
IN_ALL, ALL_LINES = 4, 11
MONTHS, MONTH_LINES = IN_ALL + ALL_LINES + 2, 5
CHARTS, CHART_LINES = MONTHS + MONTH_LINES + 2, 11
PLACES, PLACE_LINES = CHARTS + CHART_LINES + 1, 6
PRODUCTS, PRODUCT_LINES = PLACES + PLACE_LINES + 4, 10
NOTES = PRODUCTS + PRODUCT_LINES + 4
ABOUT = (
    "Left over on candles is sales before tax, less fees, postage and packing of each order as on Places sold, and what the candles cost. Left over is that,",
    "less stand fees and travel as on Market days; a place where no fee is typed there bears its fixed cost on Places sold, if anything was sold there.",
    "Not taken off: running costs and your own pay. Own hours: making time that is not paid help, by today's recipes, of what was sold; of places also",
    "Market days' hours. Last season: as on Sold last season; of a month the same one a year before.",
)  # fmt: skip


class Kind(NamedTuple):
    """What is listed in order of what is left over: places, or products."""

    table: str
    name: str
    head: str
    fees: tuple[str, ...]  # what it cost besides the candles
    heads: tuple[str, str]  # of those, and of what is left over
    whole: Mapping[str, Expression]  # what all that was sold comes to, by letter: some of it may stand on no line


NO_LAST = written("COUNT({ready})=0", ready=Results(LAST_SOLD.key, "ready"))


def _sum(table: str, *keys: str) -> Expression:
    return written("SUM({cells})", cells=joined(",", [Results(table, key) for key in keys]))


SOLD = {"B": _sum("sold", "pieces"), "C": _sum("sold", "net"), "E": _sum("sold", "cost")}
OF_PLACES = Kind(
    by_place.KEY,
    "place",
    "By place",
    ("fees", "sent", "days", "fixed"),
    ("Fees, post, stands", "Left over"),
    {
        **SOLD,
        "D": _sum(by_place.KEY, "fees", "sent", "days", "fixed"),
        "F": _sum(by_place.KEY, "left"),
        "H": _sum(by_place.KEY, "hours"),
    },
)
OF_PRODUCTS = Kind(
    by_product.KEY,
    "product",
    "By product",
    ("fees", "sent"),
    ("Fees, post", "Left over on candles"),
    {
        **SOLD,
        "D": _sum("sold", "fee", "sent"),
        "F": _sum("sold", "left"),
        "H": written("{minutes}/60", minutes=_sum(OWN_TIME, "minutes")),
    },
)
NUMBERS = {"B": "pieces", "C": "money", "D": "money", "E": "money", "F": "money", "H": "hours"}


def write(draft: Draft) -> None:
    page = Page(draft, TAB, draft.tab(TAB, portrait=True, master="L1"), COLUMNS)
    page.widths(WIDTHS)
    page.sheet.merge_cells("L1:N1")
    for row in range(2, NOTES + len(ABOUT)):
        page.height(row, LINE)
    for row in (IN_ALL, MONTHS, CHARTS, PLACES, PRODUCTS, NOTES):
        page.height(row - 1, GAP)
    _head(page)
    _in_all(page)
    _most_and_least(page)
    _stock_and_tests(page)
    _months(page)
    _listed(page, PLACES, PLACE_LINES, OF_PLACES)
    _listed(page, PRODUCTS, PRODUCT_LINES, OF_PRODUCTS)
    _charts(page)
    page.lines(NOTES, ABOUT, "note")
    page.sheet.print_area = f"A1:N{NOTES + len(ABOUT) - 1}"
    paper(page.sheet, str(draft.season.settings["paper"]), portrait=True, tall=1)


def _head(page: Page) -> None:
    for at, key in (("A2", "season"), ("E2", "maker")):
        page.shows(at, as_text(Written(as_typed(key))), "strong", "words")
    for at, words, value in (("I2", "from", "first_day"), ("L2", "to", "last_day")):
        page.put(at, words, "note", "row")
        there = COLUMNS[COLUMNS.index(at[0]) + 1]
        page.shows(f"{there}2", Named(value), "label", "date")
        page.sheet.merge_cells(f"{there}2:{COLUMNS[COLUMNS.index(there) + 1]}2")


def _last(key: str) -> Expression:
    """What was sold last season, in all."""
    ready = Whole(LAST_SOLD.key, "ready")
    return while_known(
        written("SUMIFS({all},{ready},1)", all=Whole(LAST_SOLD.key, key), ready=ready), LAST_SOLD.key, "ready"
    )


def _in_all(page: Page) -> None:
    """The whole season, and last season beside it."""
    page.section(IN_ALL, ("In all", "", "this season", "", "last season"))
    net, left, hours = f"$B${IN_ALL + 2}", f"$B${IN_ALL + 8}", f"$B${IN_ALL + 10}"
    table = OF_PLACES.table
    lines: tuple[tuple[str, Expression, str, str], ...] = (
        ("Pieces sold", _sum(table, "pieces"), "pieces", "pieces"),
        ("Sales before tax, {money}", _sum(table, "net"), "money", "net"),
        ("Tax on them, {money}", _sum(table, "tax"), "money", ""),
        ("Fees, {money}", _sum(table, "fees"), "money", ""),
        ("Postage and packing, {money}", _sum(table, "sent"), "money", ""),
        ("Cost of candles sold, {money}", _sum(table, "cost"), "money", "cost"),
        ("Stands, travel, fixed, {money}", _sum(table, "days", "fixed"), "money", ""),
        ("Left over, {money}", _sum(table, "left"), "money", ""),
        ("Left over, of sales", made_of("{left}/{net}", left=left, net=net), "percent", ""),
        ("Own hours", _sum(table, "hours"), "hours", ""),
        ("Left over an hour, {money}", made_of("{left}/{hours}", left=left, hours=hours), "money", ""),
    )
    for row, (words, value, number, then) in enumerate(lines, start=IN_ALL + 1):
        page.put(f"A{row}", words)
        none = {"percent": [made_of("N({net})=0", net=net)], "hours": []}.get(number, [])
        if words.startswith("Left over an hour"):
            none = [made_of("N({hours})<=0", hours=hours)]
        page.shows(f"B{row}", value, "strong_result" if "Left over," in words else "result", number, blank_if=none)
        page.sheet.merge_cells(f"B{row}:C{row}")
        if then:
            page.shows(f"D{row}", _last(then), "result", number, blank_if=[NO_LAST])
            page.sheet.merge_cells(f"D{row}:E{row}")


def _beside(page: Page, row: int, words: str, name: Expression | None, value: Expression, number: str, none: Sequence[Part]) -> None:  # fmt: skip
    """A line right of the sums: what it is, whose it is, and the figure."""
    page.put(f"G{row}", words)
    if name:
        page.shows(f"J{row}", name, "strong", "words", blank_if=none)
    page.shows(f"M{row}", value, "result", number, blank_if=none)
    page.sheet.merge_cells(f"M{row}:N{row}")


def _most_and_least(page: Page) -> None:
    band(page.draft, page.sheet, IN_ALL, page.draft.plan.head("Left over an hour of own time, {money}"), RIGHT)
    row = IN_ALL + 1
    for kind, words in ((OF_PRODUCTS, "product"), (OF_PLACES, "place")):
        each = Results(kind.table, "per_hour")
        none = [written("COUNT({each})+0*SUM({each})=0", each=each)]
        for most, of in (("most", "MAX"), ("least", "MIN")):
            found = written(f"MATCH({of}({{each}}),{{each}},0)", each=each)
            name = at_row(kind.table, kind.name, found)
            _beside(page, row, f"{most}, {words}", name, written(f"{of}({{each}})", each=each), "money", none)
            row += 1


def _typed(key: str) -> Expression:
    """What was typed in a column of the Batch log; an error while a batch is not right."""
    return while_known(written("SUM({typed})", typed=Whole(POURS.key, key)), POURS.key, "ready")


def _stock_and_tests(page: Page) -> None:
    row = IN_ALL + 5
    band(page.draft, page.sheet, row, "Stock, tests and scrap", RIGHT)
    sold_otherwise = written("{spent}-{sold}", spent=_sum("candles", "spent"), sold=_sum("sold", "cost"))
    lines = (
        ("materials in stock, at cost, {money}", _sum("stock", "value"), "money"),
        ("candles in stock, also at shops, {money}", _sum("candles", "value"), "money"),
        ("candles gone without a sale, {money}", sold_otherwise, "money"),
        ("scrapped; kept as seconds; test pieces", None, ""),
        ("burn tests; what all tests cost, {money}", None, ""),
    )
    for place, (words, value, number) in enumerate(lines, start=row + 1):
        page.put(f"G{place}", words)
        if value:
            _beside(page, place, words, None, value, number, [])
    scrap, tests = row + 4, row + 5
    for letter, key in zip("LMN", ("scrapped", "seconds", "tests"), strict=True):
        page.shows(f"{letter}{scrap}", _typed(key), "result", "pieces")
    page.shows(f"L{tests}", written("COUNT({ready})", ready=Results("test_results", "ready")), "result", "pieces")
    page.shows(f"M{tests}", Named("tests_cost"), "result", "money")
    page.sheet.merge_cells(f"M{tests}:N{tests}")


def _months(page: Page) -> None:
    lines = (
        ("Sales before tax, {money}", "net", "money_strong"),
        ("... same month last season", "then", "money"),
        ("Left over on candles, {money}", "left", "money"),
        ("Pieces sold", "pieces", "pieces"),
        ("Own hours", "hours", "hours"),
    )
    page.section(MONTHS, ["By month"])
    for nth, letter in enumerate(COLUMNS[1:], start=1):
        month = at_row(months.KEY, "month", written(str(nth)))
        none = [written('{month}=""', month=month)]
        # Put together, not shown as a date: a chart takes it for a name, and every language spells it alike.
        named = written('YEAR({month})&"-"&RIGHT("0"&MONTH({month}),2)', month=month)
        page.shows(f"{letter}{MONTHS}", named, "section", "row", blank_if=none)
        for row, (_, key, number) in enumerate(lines, start=MONTHS + 1):
            look = "strong_result" if key == "net" else "result"
            page.shows(f"{letter}{row}", at_row(months.KEY, key, written(str(nth))), look, number, blank_if=none)
    for row, (words, _, _) in enumerate(lines, start=MONTHS + 1):
        page.put(f"A{row}", words)


THEN = {"K": ("Last: pieces", "pieces", "pieces"), "L": ("Last: sales", "net", "money"), "M": ("Last: cost", "cost", "money")}  # fmt: skip
SHARE, AN_HOUR = "G", "I"


def _listed(page: Page, head: int, lines: int, kind: Kind) -> None:
    """The places or products in order of what they left over, then all others, then the whole."""
    fees, left = kind.heads
    heads = {"A": kind.head, "B": "Pieces", "C": "Sales before tax", "D": fees, "E": "Cost of candles", "F": left}
    heads |= {SHARE: "... of sales", "H": "Own hours", AN_HOUR: "... an own hour"}
    heads |= {letter: words for letter, (words, _, _) in THEN.items()}
    page.section(head, [heads.get(letter, "") for letter in COLUMNS], "A", tall=True)
    page.height(head, HEAD)
    for nth in range(1, lines + 1):
        _line(page, head + nth, nth, kind)
    others, whole = head + lines + 1, head + lines + 2
    page.put(f"A{others}", "all others")
    page.put(f"A{whole}", "In all", "strong")
    for letter, summed in kind.whole.items():
        page.shows(f"{letter}{others}", _rest(letter, head, whole), "result", NUMBERS[letter])
        page.shows(f"{letter}{whole}", summed, "result", NUMBERS[letter])
    for letter, (_, key, number) in THEN.items():
        page.shows(f"{letter}{others}", _rest(letter, head, whole), "result", number, blank_if=[NO_LAST])
        page.shows(f"{letter}{whole}", _last(key), "result", number, blank_if=[NO_LAST])
    _ratios(page, others)
    _ratios(page, whole)


def _rest(letter: str, head: int, whole: int) -> Expression:
    """What the whole has that the lines above do not."""
    return Written(f"ROUND({letter}{whole}-SUM({letter}{head + 1}:{letter}{whole - 2}),6)")


def _line(page: Page, row: int, nth: int, kind: Kind) -> None:
    place, fewer = nth_by_what_is_left(kind.table, nth)
    none: list[Expression | str] = [fewer]
    page.shows(f"A{row}", at_row(kind.table, kind.name, place), "strong_result", "words", blank_if=none)
    for letter, keys in _keys(kind).items():
        value = joined("+", [at_row(kind.table, key, place) for key in keys])
        page.shows(f"{letter}{row}", value, "result", NUMBERS[letter], blank_if=none)
    for letter, (_, key, number) in THEN.items():
        page.shows(f"{letter}{row}", _last_of(key, kind, f"$A{row}"), "result", number, blank_if=[*none, NO_LAST])
    _ratios(page, row)


def _keys(kind: Kind) -> dict[str, tuple[str, ...]]:
    return {"B": ("pieces",), "C": ("net",), "D": kind.fees, "E": ("cost",), "F": ("left",), "H": ("hours",)}


def _last_of(key: str, kind: Kind, name: str) -> Expression:
    """What was sold of it last season: compared, not counted by a criterion, which may read a name as something else."""
    return written(
        "SUMPRODUCT(({names}={name})*({ready}=1),{typed})",
        names=Whole(LAST_SOLD.key, kind.name),
        name=cell(name),
        ready=Whole(LAST_SOLD.key, "ready"),
        typed=Whole(LAST_SOLD.key, key),
    )


def _ratios(page: Page, row: int) -> None:
    net, left, hours = (f"${letter}{row}" for letter in ("C", "F", "H"))
    no_sales, no_hours = (made_of('IF({of}="",TRUE,{of}<=0)', of=of) for of in (net, hours))
    page.shows(f"{SHARE}{row}", made_of("{left}/{net}", left=left, net=net), "result", "percent", blank_if=[no_sales])
    page.shows(f"{AN_HOUR}{row}", made_of("{left}/{of}", left=left, of=hours), "result", "money", blank_if=[no_hours])


CHART_NAMES, CHART_SUMS = "P", "Q"  # outside the page


def _charts(page: Page) -> None:
    draft = page.draft
    shown = _months_of(draft.season)
    season_charts.by_month(draft, page.sheet, f"A{CHARTS}", MONTHS, shown)
    bars = season_charts.bars(len(draft.season.names("recipes")))
    page.put(f"{CHART_NAMES}{CHARTS - 1}", "What the chart shows", "note")
    last = CHARTS + bars - 1
    for row in range(CHARTS, last):
        named, left = (f"{letter}{PRODUCTS + 1 + row - CHARTS}" for letter in "AF")
        page.shows(f"{CHART_NAMES}{row}", part(named), "note", "words")
        page.shows(f"{CHART_SUMS}{row}", made_of("SUM({left})", left=left), "note", "money")
    page.put(f"{CHART_NAMES}{last}", "all others", "note")
    whole = f"F{PRODUCTS + PRODUCT_LINES + 2}"
    above = f"{CHART_SUMS}{CHARTS}:{CHART_SUMS}{last - 1}"
    page.shows(f"{CHART_SUMS}{last}", made_of("{whole}-SUM({above})", whole=whole, above=above), "note", "money")
    page.sheet.column_dimensions[CHART_NAMES].width = 26
    season_charts.by_product(draft, page.sheet, f"G{CHARTS}", (CHART_NAMES, CHART_SUMS), (CHARTS, last))


def _months_of(season: Season) -> int:
    """How many months the season runs through."""
    first, last = (season.settings[key] for key in ("first_day", "last_day"))
    if not (isinstance(first, date) and isinstance(last, date)):
        return months.MOST_MONTHS
    months_between = (last.year - first.year) * 12 + last.month - first.month + 1
    return max(1, min(months_between, months.MOST_MONTHS))


register(TAB, __name__, 5, write=write, records=True)
