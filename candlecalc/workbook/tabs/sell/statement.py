"""The Statement tab: what a shop was given, sold, gave back and still owes, to print and hand over."""

from candlecalc.season.fields import Field
from candlecalc.workbook.cells.references import Expression, Named, Results, at_row
from candlecalc.workbook.cells.table_tab import Tab
from candlecalc.workbook.tabs.registry import register
from candlecalc.workbook.tabs.sell.at_shops import KEY
from candlecalc.workbook.tabs.test.pick import picked
from candlecalc.workbook.tabs.working.recipe_lines import KEY_LINE
from candlecalc.workbook.writing.draft import Draft
from candlecalc.workbook.writing.page import Page, made_of
from candlecalc.workbook.writing.printed import paper

TAB = Tab(
    "Statement", "output", "Pick a shop: what it has of yours, what it sold, and what it owes. Print it for the shop."
)
SHOP = Field("statement_shop", "Shop", "the shop that the statement is for", names_from="places")
PICKED = "statement_row"
HEADS = (
    "Product",
    "Taken there",
    "Sold there",
    "Came back",
    "There now",
    "Sold, {money}",
    "Your share, {money}",
    "Due to us, {money}",
    "Still owed, {money}",
)
KEYS = ("product", "out", "sold", "back", "there", "gross", "fee", "comes_in", "owed")
FORMATS = ("text", *["pieces"] * 4, *["money"] * 4)
WIDTHS = (32, 12, 12, 12, 12, 12, 12, 12, 12)
FIRST_LINE, LINES = 9, 24
BEFORE = "M5"  # outside the page: how many lines of other shops stand above


def write(draft: Draft) -> None:
    page = Page(draft, TAB, draft.tab(TAB, portrait=False, master="L1"), "ABCDEFGHI")
    page.widths(WIDTHS)
    first = next((row["place"] for _, row in draft.season.rows("sales") if row["kind"] == "out"), None)
    picked(page, SHOP, first, PICKED)
    _head(page)
    page.section(FIRST_LINE - 1, HEADS, tall=True)
    for nth in range(1, LINES + 1):
        _line(page, nth)
    row = _sums(page)
    page.sheet.print_area = f"A1:I{row}"
    paper(page.sheet, str(draft.season.settings["paper"]), portrait=False, tall=1)


def _head(page: Page) -> None:
    settings = page.draft.season.settings
    page.put("A5", settings.get("maker") or "", "strong")
    page.put("A6", settings.get("place") or "")
    page.put("G5", "As of", "note")
    page.shows("H5", Named("as_of"), "strong_result", "date")
    page.put(f"L{BEFORE[1:]}", "Lines of other shops above", "note")
    above = made_of(
        'COUNTIF({numbers},"<"&{shop}*{key})', numbers=Results(KEY, "number"), shop=Named(PICKED), key=KEY_LINE
    )
    page.shows(BEFORE, above, "note", "row", blank_if=[made_of("N({shop})=0", shop=Named(PICKED))])


def _line(page: Page, nth: int) -> None:
    row = FIRST_LINE + nth - 1
    place = made_of(f"${BEFORE[0]}${BEFORE[1:]}+{nth}")
    of_shop = at_row(KEY, "place_first", place)
    # Below its last line there is none, or one of the next shop.
    other = made_of("IFERROR({of}<>{shop},TRUE)", of=of_shop, shop=Named(PICKED))
    nothing: list[Expression | str] = [made_of('{before}=""', before=f"${BEFORE[0]}${BEFORE[1:]}"), other]
    for letter, key, number in zip(page.columns, KEYS, FORMATS, strict=True):
        page.shows(f"{letter}{row}", at_row(KEY, key, place), "result", number, blank_if=nothing)


def _sums(page: Page) -> int:
    row = FIRST_LINE + LINES
    page.put(f"A{row}", "In all", "strong")
    for letter, number in zip(page.columns[1:], FORMATS[1:], strict=True):
        cells = f"{letter}{FIRST_LINE}:{letter}{row - 1}"
        page.shows(f"{letter}{row}", made_of(f"SUM({cells})"), "strong_result", number)
    lines = made_of("COUNTIF({places},{shop})", places=Results(KEY, "place_first"), shop=Named(PICKED))
    more = made_of(f'REPT("and "&({{lines}}-{LINES})&" more products: see At shops",{{lines}}>{LINES})', lines=lines)
    page.shows(f"A{row + 1}", more, "note")
    page.put(
        f"A{row + 3}",
        "Due to us is what was sold, less your share and the tax that you pay over. What is there stays ours until it is sold.",
        "note",
    )
    page.put(f"A{row + 5}", "For the shop")
    page.put(f"F{row + 5}", "For us")
    for letter in "BCDGHI":
        page.put(f"{letter}{row + 5}", None, "write_line")
    page.height(row + 5, 28)
    return row + 5


register(TAB, __name__, 74, write=write, records=True)
