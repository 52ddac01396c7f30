"""The Wick summary tab: for one product the wicks tested in its wax, load and vessel, best first, and the next one."""

from candlecalc.season.fields import Field
from candlecalc.workbook.cells.columns import calculated
from candlecalc.workbook.cells.references import (
    Expression,
    Given,
    Named,
    Results,
    Whole,
    Written,
    at,
    at_row,
    blank,
    row_in,
    written,
)
from candlecalc.workbook.cells.table_tab import Tab
from candlecalc.workbook.tabs.registry import register
from candlecalc.workbook.tabs.test import next_wick
from candlecalc.workbook.tabs.test.pick import BESIDE, PICK, picked
from candlecalc.workbook.tabs.working.burn_workings import KEY as TESTS
from candlecalc.workbook.tabs.working.wick_steps import KEY as STEPS
from candlecalc.workbook.tabs.working.wick_steps import KIND
from candlecalc.workbook.writing.draft import Draft
from candlecalc.workbook.writing.page import Page, cell
from candlecalc.workbook.writing.printed import paper

TAB = Tab("Wick summary", "output", "For one product the wicks tested in its wax, load and vessel, best first.")
PRODUCT = Field("product", "Product", "a product from Recipes that is made", names_from="recipes", kind="made")
ROW = Named("summary_product")
UNPICKED = written("N({row})=0", row=ROW)
WIDTHS = (34, 12, 9, 9, 10, 10, 11, 10, 10, 15)

FACTS = PICK + 2
WICKS, WICK_LINES = FACTS + 6, 12
NEXT = WICKS + WICK_LINES + 2
PIECES, PIECE_LINES = NEXT + 4, 12
LABEL = PIECES + PIECE_LINES + 2
COSTS = LABEL + 4
TOLD_AT = COSTS + 8
TOLD = (
    "Best first: fewest stopped, then most that meet your targets. No order and no verdict here says that a candle may be",
    "sold. What was stopped in one test is not burnt again as it is. Tests in another wax, load or vessel say nothing here.",
)


def write(draft: Draft) -> None:
    page = Page(draft, TAB, draft.tab(TAB, portrait=True, master="J1"), "ABCDEFGHIJ")
    page.widths(WIDTHS)
    page.sheet.column_dimensions[BESIDE[0]].width = 20
    picked(page, PRODUCT, _first(draft), "summary_product")
    _facts(page)
    _wicks(page)
    _next(page)
    _pieces(page)
    _label(page)
    _costs(page)
    page.lines(TOLD_AT, TOLD, "note")
    page.sheet.print_area = f"A1:J{TOLD_AT + len(TOLD)}"
    paper(page.sheet, str(draft.season.settings["paper"]), portrait=True, tall=1)


def _first(draft: Draft) -> str | None:
    """The first product that was tested, else the first that is made."""
    tested = [str(row["product"]) for _, row in draft.season.rows("burn_tests") if row["product"]]
    return next(iter([*tested, *draft.season.names("recipes", "made")]), None)


def _recipe(key: str) -> Expression:
    return at("recipes", key, ROW)


def _beside(page: Page, row: int, name: str, value: Expression, number: str = "row") -> None:
    """A step that the page rests on, with its name."""
    label, place = (f"{letter}{row}" for letter in BESIDE)
    page.put(label, name.replace("_", " "), "note")
    page.shows(place, value, "note", number, blank_if=[UNPICKED])
    page.name(name, place)


def _facts(page: Page) -> None:
    facts = (("Vessel", "vessel"), ("Wax", "wax"), ("Load, of wax", "load"), ("Wick now", "wick"))
    for row, (words, key) in enumerate(facts, start=FACTS):
        page.put(f"A{row}", words)
        shown = "percent" if key == "load" else "text"
        page.shows(f"B{row}", _recipe(key), "strong", shown, blank_if=[UNPICKED, blank(_recipe(key))])
    wick = written("MATCH({wick},{wicks},0)", wick=_recipe("wick"), wicks=Whole("wicks", "wick"))
    rows = {
        "vessel_row": row_in("vessels", _recipe("vessel"), ready=False),
        "wax_row": row_in("materials", _recipe("wax"), ready=False),
        "load": written("ROUND({load},6)", load=_recipe("load")),
        "wicks": written("MAX(1,N({wicks}))", wicks=_recipe("wicks")),
        "kind": written('IFERROR({kind}&"","")', kind=at("wicks", "kind", wick)),
    }
    for row, (key, value) in enumerate(rows.items(), start=FACTS):
        _beside(page, row, f"summary_{key}", value, "count")


HEADS = ("Wick", "pieces", "meet", "miss", "not judged", "stopped", "rate, {weight} an hour", "flame, {length}", "pool, {length}", "vessel, {temperature}")  # fmt: skip
COLUMNS = {"B": ("tests", "count"), "C": ("met", "count"), "D": ("missed", "count"), "E": ("unjudged", "count"),
           "F": ("stopped", "count"), "G": ("rate", "fine_weight"), "H": ("flame", "length"), "I": ("pool", "length"),
           "J": ("hot_at", "temperature")}  # fmt: skip


def _wicks(page: Page) -> None:
    """The wicks of the recipe side by side, best first; measures are means of the pieces."""
    page.section(WICKS, HEADS, "A", tall=True)
    scores = Results(STEPS, "score")
    for step in range(1, WICK_LINES + 1):
        row = WICKS + step
        place = written(f"MATCH(SMALL({{scores}},{step}),{{scores}},0)", scores=scores)
        beyond: list[Given] = [UNPICKED, written(f"COUNT({{scores}})<{step}", scores=scores)]
        page.shows(f"A{row}", at_row(STEPS, "wick", place), "strong_result", blank_if=beyond)
        for letter, (key, number) in COLUMNS.items():
            value = at_row(STEPS, key, place)
            page.shows(f"{letter}{row}", value, "result", number, blank_if=[*beyond, blank(value)])


def _next(page: Page) -> None:
    page.section(NEXT, ["The wick to test next, of the kind that the recipe has"])
    for row, (step, value) in enumerate(next_wick.steps().items(), start=WICKS + 1):
        _beside(page, row, f"next_{step}", value)
    no_kind = blank(KIND)
    waits: list[Given] = [UNPICKED, no_kind]
    unnamed = written("{named}=0", named=next_wick.IS_NAMED)
    page.shows(f"A{NEXT + 1}", next_wick.called(next_wick.PLACE), "strong_result", blank_if=[*waits, unnamed])
    page.sheet.merge_cells(f"B{NEXT + 1}:J{NEXT + 2}")
    page.shows(f"B{NEXT + 1}", next_wick.reasons(), "note", blank_if=waits, wrap=True)
    words = written('REPT("Type its wick on Wicks, with kind and size",{none})', none=no_kind)
    page.shows(f"A{NEXT + 2}", words, "note", blank_if=[UNPICKED])


PIECE = {"B": ("burn_tests", "date", "date"), "C": (TESTS, "rate", "fine_weight"), "D": (TESTS, "rate_low", "fine_weight"),
         "E": (TESTS, "rate_high", "fine_weight"), "F": ("test_results", "label_hours", "count"),
         "G": (TESTS, "verdict", "text")}  # fmt: skip


def _pieces(page: Page) -> None:
    """The tests of the recipe as it is now, as they stand on Burn tests."""
    page.section(
        PIECES, ("Burnt as it is made now: test", "lit on", "rate", "from", "to", "label, h", "Verdict"), "ABG"
    )
    same = written("({all}={now})", all=Results(TESTS, "same"), now=at("tested", "same", ROW))
    for step in range(1, PIECE_LINES + 1):
        row = PIECES + step
        # The first of the recipe's tests after those above: the smallest row, found as the largest from the end.
        above = Written(f"MAX(${BESIDE[1]}${PIECES}:${BESIDE[1]}{row - 1})")
        later = written("{same}*({rows}>{above})", same=same, rows=Results(TESTS, "own_row"), above=above)
        last = str(page.draft.plan.layouts[TESTS].rows + 2)
        first = written(f"{last}-SUMPRODUCT(LARGE({{later}}*({last}-{{rows}}),1))", later=later, rows=Results(TESTS, "own_row"))  # fmt: skip
        place = cell(f"${BESIDE[1]}{row}")
        page.shows(f"{BESIDE[1]}{row}", first, "note", "row", blank_if=[UNPICKED, written("SUMPRODUCT({it})=0", it=later)])  # fmt: skip
        none: list[Given] = [UNPICKED, blank(place)]
        page.shows(f"A{row}", at("burn_tests", "test", place), "result", blank_if=none)
        for letter, (table, key, number) in PIECE.items():
            value = at(table, key, place)
            look = "strong" if number == "text" else "result"
            page.shows(f"{letter}{row}", value, look, number, blank_if=[*none, blank(value)])


def _label(page: Page) -> None:
    """What all pieces of the recipe come to together."""
    page.section(LABEL - 1, ["All of them together"])
    rates = Written(f"$C${PIECES + 1}:$C${PIECES + PIECE_LINES}")
    few = written("COUNT({rates})<2", rates=rates)
    page.put(f"A{LABEL}", "The next may burn as fast as, {weight} an hour")
    fastest = calculated("fastest_candle", rates=rates)
    page.shows(f"E{LABEL}", fastest, "strong_result", "fine_weight", blank_if=[UNPICKED, few])
    page.put(f"A{LABEL + 1}", "Hours for the label, from that")
    first = cell(f"${BESIDE[1]}${PIECES + 1}")
    fill, stays = at(TESTS, "fill", first), at(TESTS, "stays", first)
    hours = calculated("label_hours", fill=fill, stays=stays, fastest=cell(f"$E${LABEL}"))
    page.shows(f"E{LABEL + 1}", hours, "strong_result", "count", blank_if=[UNPICKED, few, blank(fill), blank(stays)])
    page.put(f"A{LABEL + 2}", "Verdict on the recipe")
    page.shows(f"B{LABEL + 2}", at("tested", "verdict", ROW), "strong", blank_if=[UNPICKED])
    page.shows(f"E{LABEL + 2}", at("tested", "reasons", ROW), "label", blank_if=[UNPICKED])


# No wage for hours of burning: other work goes on in the room. Who counts some of them types a cost on Burn tests.
ALL_TESTS, BEARERS = Named("tests_cost"), Named("tests_bearers")
_NOT_SPREAD, _NO_BEARERS = 'IF({spread}<>"yes",', "IF({bearers}=0,"
EACH = written(
    f"{_NOT_SPREAD}0,{_NO_BEARERS}0,{{each}}))",
    spread=Named("spread_tests"),
    bearers=BEARERS,
    each=calculated("cost_each", cost=ALL_TESTS, batch=BEARERS),
)
TOLD_OF_EACH = written(
    f'{_NOT_SPREAD}"for that type yes on Settings: Tests in full cost",'
    f'{_NO_BEARERS}"there is none yet to bear it","in Running costs; less with each that you make"))',
    spread=Named("spread_tests"),
    bearers=BEARERS,
)
COSTS_OF_TESTS: tuple[tuple[str, Expression, str, str], ...] = (
    ("Test pieces of batches, {money}", written("SUM({all})", all=Results("pours", "tests_cost")), "money", ""),
    ("Candles and materials taken out as test, {money}", written("SUM({all})", all=Results("tests_out", "cost")), "money", ""),
    ("Typed on Burn tests, {money}", written("SUM({all})", all=Results("burn_tests", "typed_cost")), "money", ""),
    ("All tests of this season, {money}", Written(f"SUM($E${COSTS + 1}:$E${COSTS + 3})"), "money", "tests_cost"),
    ("Candles with a wick made this season", written("SUM({all})", all=Results("pours", "bearers")), "pieces", "tests_bearers"),
    ("Of that each has in its full cost, {money}", EACH, "unit_cost", "tests_each"),
)  # fmt: skip


def _costs(page: Page) -> None:
    """What tests have cost, whatever product is picked, and what of it goes into the full cost of a candle."""
    page.section(COSTS, ["What tests have cost this season"])
    for row, (words, value, number, name) in enumerate(COSTS_OF_TESTS, start=COSTS + 1):
        page.put(f"A{row}", words)
        page.shows(f"E{row}", value, "strong_result" if name else "result", number)
        if name:
            page.name(name, f"E{row}")
    for row, words in (
        (COSTS + 1, "of each batch's making cost, by how many were poured"),
        (COSTS + 2, "at what stock says they cost"),
    ):
        page.put(f"F{row}", words, "note")
    page.shows(f"F{COSTS + len(COSTS_OF_TESTS)}", TOLD_OF_EACH, "note")


register(TAB, __name__, 75, write=write, records=True)
