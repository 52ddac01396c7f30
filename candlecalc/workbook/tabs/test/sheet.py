"""The Test sheet tab: a page for the bench, for one test; what is logged already stands in it, with its chart."""

from collections.abc import Sequence

from candlecalc.season.fields import Field
from candlecalc.season.season import Season
from candlecalc.workbook.cells.references import Expression, Given, Named, Written, at, at_row, blank, line_of, written
from candlecalc.workbook.cells.table_tab import Tab
from candlecalc.workbook.tabs.registry import register
from candlecalc.workbook.tabs.test.pick import PICK, picked
from candlecalc.workbook.tabs.test.signs import STOPS
from candlecalc.workbook.tabs.working.burn_workings import KEY
from candlecalc.workbook.writing import chart
from candlecalc.workbook.writing.draft import Draft
from candlecalc.workbook.writing.page import Page, cell
from candlecalc.workbook.writing.printed import paper

TAB = Tab("Test sheet", "output", "A page for the bench, for one test, with what is logged.")
TEST = Field("test", "Test", "a test from Burn tests", names_from="burn_tests")
ROW = Named("sheet_test")
UNPICKED = written("N({row})=0", row=ROW)
WIDTHS = (24, 12, 10, 10, 10, 9.5, 9.5, 9.5, 25, 25)

# Rows: what the candle is, its burns, what is looked at once it is out, cautions, the chart.
FACTS, FACT_LINES = PICK + 3, 5
BURNS, LINES = FACTS + FACT_LINES + 1, 12
AFTER, AFTER_LINES = BURNS + LINES + 1, 5
CAUTION = AFTER + AFTER_LINES + 1
CAUTIONS = (
    "Never leave a burning test alone. Burn it on a plate that cannot burn, 30 cm (12 in) or more from all that can, out of",
    "draughts, away from children and animals; a lid and a fire blanket within reach. No water on burning wax.",
    "Put it out at once when the flame or the vessel is over the limits above, or at any of these:",
    "; ".join(STOPS) + ".",
    "Do not move it until it is cold. Data sheets, standards and local fire code decide; no test here says it may be sold.",
)  # fmt: skip
CHART, CHART_LINES = CAUTION + len(CAUTIONS) + 1, 18
CHARTED = {"L": ("hours", "hours"), "M": ("weight", "weight, {weight}"), "N": ("pool", "melt pool, {length}")}


def write(draft: Draft) -> None:
    page = Page(draft, TAB, draft.tab(TAB, portrait=True, master="I1"), "ABCDEFGHIJ")
    page.widths(WIDTHS)
    picked(page, TEST, _latest(draft.season), "sheet_test")
    _facts(page)
    _burns(page)
    _afterwards(page)
    page.lines(CAUTION, CAUTIONS)
    _chart(page)
    page.sheet.print_area = f"A1:J{CHART + CHART_LINES}"
    paper(page.sheet, str(draft.season.settings["paper"]), portrait=True, tall=1)


def _latest(season: Season) -> str | None:
    names = season.names("burn_tests")
    return names[-1] if names else None


def _typed(key: str) -> Expression:
    return at("burn_tests", key, ROW)


def _worked(key: str) -> Expression:
    return at(KEY, key, ROW)


def _shows(page: Page, place: str, value: Expression, look: str, number: str = "text") -> None:
    page.shows(place, value, look, number, blank_if=[UNPICKED, blank(value)])


FACTS_LEFT = (("Product", "product"), ("Vessel", "vessel"), ("Wax", "wax"), ("Wick", "wick"), ("Batch", "batch"))
AIMS = (
    ("Burn rate, {weight} an hour", "rate_low_aim", "rate_high_aim", "fine_weight"),
    ("Flame, {length}", "flame_low_aim", "flame_high_aim", "length"),
    ("Melt pool, {length} across", "pool_low_aim", "", "length"),
    ("Vessel, {temperature}", "", "hot_high_aim", "temperature"),
    ("Stop: flame over, mm", "", "tallest", "count"),
)


def _facts(page: Page) -> None:
    """What the candle is, and what it is to come to."""
    for row, (words, key) in enumerate(FACTS_LEFT, start=FACTS):
        page.put(f"A{row}", words)
        _shows(page, f"B{row}", _typed(key), "strong")
    facts = (
        ("Load, of wax", _typed("load"), "percent"),
        ("Wicks, each", _worked("wicks"), "count"),
        ("Lit on", _typed("date"), "date"),
        ("Longest burn, h", _worked("longest"), "hours"),
    )
    for row, (words, value, number) in enumerate(facts, start=FACTS):
        page.put(f"D{row}", words, "label", "row")
        _shows(page, f"E{row}", value, "result", number)
    for row, (words, low, high, number) in enumerate(AIMS, start=FACTS):
        page.put(f"H{row}", words, "label", "row")
        for letter, key in (("I", low), ("J", high)):
            if key:
                _shows(page, f"{letter}{row}", _worked(key), "result", number)
    for letter, words in (("H", "Your targets"), ("I", "from"), ("J", "to")):
        page.put(f"{letter}{FACTS - 1}", words, "label", "row")


HEADS = ("Date", "burnt, hours", "hours to date", "before, {weight}", "after, {weight}", "pool, {length}", "flame, {length}", "vessel, {temperature}", "Seen", "Also seen")  # fmt: skip
BURN = {"A": ("date", "date"), "B": ("hours", "count"), "D": ("before", "weight"), "E": ("after", "weight"),
        "F": ("pool", "length"), "G": ("flame", "length"), "H": ("hot", "temperature"), "I": ("seen", "text"),
        "J": ("seen_too", "text")}  # fmt: skip


def _line(step: int) -> tuple[Expression, Expression]:
    """Where a burn stands in Burns in order, and the test that it was not burnt yet."""
    place = written(f"({{first}}+{step})", first=_worked("first"))
    return place, written("N({last})<{place}", last=_worked("last"), place=place)


def _burns(page: Page) -> None:
    """A line for each burn: as it was logged, or a box to write in."""
    page.section(BURNS, HEADS, "AIJ", tall=True)
    for step in range(LINES):
        row, (place, beyond) = BURNS + 1 + step, _line(step)
        for letter, (key, number) in BURN.items():
            value = at("burn_cycles", key, line_of(at_row("burns", "number", place)))
            page.shows(f"{letter}{row}", value, "write", number, blank_if=[UNPICKED, beyond, blank(value)])
        hours = at_row("burns", "hours", place)
        page.shows(f"C{row}", hours, "write", "count", blank_if=[UNPICKED, beyond])
        page.height(row, 22)
    more = written(
        f'REPT("and "&({{last}}-{{first}}-{LINES - 1})&" burns more: see Burn cycles",N({{last}})>{{first}}+{LINES - 1})',
        first=_worked("first"),
        last=_worked("last"),
    )
    page.shows(f"C{PICK + 1}", more, "note", blank_if=[UNPICKED, blank(_worked("last"))])


AFTERWARDS = (
    ("Other burning, seconds", "other_burning", "count"),
    ("Glow or smoke, seconds", "afterglow", "count"),
    ("Vessel after", "vessel_after", "text"),
    ("Lit again by itself", "lit_again", "text"),
)


def _afterwards(page: Page) -> None:
    page.section(AFTER, ["Once it is out", "", "", "", "What it comes to", "", "", "", "from", "to"], "AE")
    for row, (words, key, number) in enumerate(AFTERWARDS, start=AFTER + 1):
        page.put(f"A{row}", words)
        _shows(page, f"B{row}", _typed(key), "write", number)
        page.height(row, 22)
    page.put(f"E{AFTER + 1}", "Verdict")
    _shows(page, f"G{AFTER + 1}", _worked("verdict"), "strong")
    page.put(f"E{AFTER + 2}", "Burn rate, {weight} an hour")
    for letter, key in (("H", "rate"), ("I", "rate_low"), ("J", "rate_high")):
        _shows(page, f"{letter}{AFTER + 2}", _worked(key), "strong_result", "fine_weight")
    # As many reasons as there are stand whole under each other.
    page.sheet.merge_cells(f"E{AFTER + 3}:J{AFTER + AFTER_LINES - 1}")
    reasons = _worked("reasons")
    page.shows(f"E{AFTER + 3}", reasons, "note", blank_if=[UNPICKED, blank(reasons)], wrap=True)


def _chart(page: Page) -> None:
    """Weight and pool against hours. What a test has not burnt yet is drawn as its last point once more."""
    none = written("N({last})=0", last=_worked("last"))
    start, pool = at_row("burns", "start_weight", _worked("first")), at_row("burns", "pool", _worked("first"))
    begins = {"hours": Written("0"), "weight": start, "pool": written("N({pool})", pool=pool)}
    page.put(f"L{BURNS - 1}", "What the chart shows", "note")
    for letter, (key, head) in CHARTED.items():
        page.put(f"{letter}{BURNS}", head, "note", "row")
        page.sheet.column_dimensions[letter].width = 12
        page.shows(f"{letter}{BURNS + 1}", _or_nought([UNPICKED, none], begins[key]), "note", "count")
        for step in range(LINES):
            row, (place, beyond) = BURNS + 2 + step, _line(step)
            again, value = cell(f"{letter}{row - 1}"), at_row("burns", key, place)
            drawn = _or_else([beyond, blank(value)], again, value)
            page.shows(f"{letter}{row}", _or_nought([UNPICKED, none], drawn), "note", "count")
    measures = page.draft.plan.measures
    titles = f"Weight, {measures.weight_unit}", f"Melt pool, {measures.length_unit} across"
    chart.over_hours(page.draft, page.sheet, f"A{CHART}", list(CHARTED), (BURNS + 1, BURNS + 1 + LINES), titles)


def _or_else(tests: Sequence[Given], otherwise: Expression, value: Expression) -> Expression:
    for test in reversed(tests):
        value = written("IF({test},{otherwise},{value})", test=test, otherwise=otherwise, value=value)
    return value


def _or_nought(tests: Sequence[Given], value: Expression) -> Expression:
    """A value, and 0 while a test holds: a chart draws a text as nobody means it."""
    return _or_else(tests, Written("0"), value)


register(TAB, __name__, 55, write=write, records=True)
