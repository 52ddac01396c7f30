"""The Burn workings tab: what the burns of a test come to, step by step.

`burn_verdict` and `recipe_verdict` branch over a log, so no one cell can hold them: their conditions stand here in
their order, each in a column, in the words of the functions. tests/workbook/test_burning.py compares all of it.
"""

from candlecalc.calc.burn_time import wax_that_stays
from candlecalc.calc.pool import LONGEST_BURN
from candlecalc.calc.terms.burn import FINDINGS, VERDICTS
from candlecalc.calc.wick import LONGEST_GLOW, LONGEST_OTHER, PIECES, UNCONFIRMED, burn_verdict
from candlecalc.declaration.declared import find
from candlecalc.declaration.native import number
from candlecalc.season.tables.burning import TESTS
from candlecalc.workbook.cells.columns import Column, calculated, look, result
from candlecalc.workbook.cells.layout import OWN_ROW
from candlecalc.workbook.cells.references import (
    KEY_THING,
    Carry,
    Expression,
    Given,
    Named,
    Own,
    Results,
    Whole,
    at,
    at_row,
    blank,
    braced,
    joined,
    line_of,
    quoted,
    row_in,
    step_by_step,
    written,
)
from candlecalc.workbook.cells.table_tab import result_tab
from candlecalc.workbook.tabs.registry import register
from candlecalc.workbook.tabs.test.signs import STOPS

KEY, LOG = "burn_workings", "burns"
BEGUN = ("last",)
A_MILLIMETRE = Named("length_mm")
DEFAULTS = {name: argument.default for name, argument in find(burn_verdict.__name__).arguments.items()}
STOPPED_AT = number(DEFAULTS["tallest"])
STOP_DEPTH = number(find(wax_that_stays.__name__).arguments["depth"].default)


# --- the burns of a test, which stand together in Burns in order --------------------------------


def block(key: str, last: str = "") -> Expression:
    """The burns of a test, in one column or in two side by side."""
    return written("{first}:{last}", first=at_row(LOG, key, "first"), last=at_row(LOG, last or key, "last"))


def _lines(up_to: str) -> Expression:
    # An error among the numbers is one here too: a burn that is left out must not go unseen.
    return written(
        f'SUM({{numbers}})*0+COUNTIF({{numbers}},"<"&({{row}}+{up_to})*{{key}})',
        numbers=Results(LOG, "number"),
        row=OWN_ROW,
        key=KEY_THING,
    )


FIRST = written("{lines}+1", lines=_lines("0"))
LAST = written('IF({lines}<{first},"",{lines})', lines=_lines("1"), first="first")
HOURS, WEIGHTS, SIGNS = block("start_hours", "hours"), block("start_weight", "weight"), block("sign", "sign_too")


def _most(key: str) -> Expression:
    return written('IF(SUM({all})*0+COUNT({all})=0,"",MAX({all}))', all=block(key))


# --- what is aimed at, by the vessel ------------------------------------------------------------

HAS_TARGETS = written("MATCH({vessel},{vessels},0)", vessel=Carry("burn_tests", "vessel"), vessels=Whole("burn_targets", "vessel"))  # fmt: skip
TARGET = written('IF(ISERROR({row}),"",{row}*{ready})', row=HAS_TARGETS, ready=at("burn_targets", "ready", HAS_TARGETS))


def _aim(head: str, key: str, shown: str) -> Column:
    there = at("burn_targets", key, "target")
    return look(head, step_by_step([blank("target"), blank(there)], there), shown)


def _or_usual(head: str, key: str, usual: str, shown: str) -> Column:
    """A limit in millimetres, and the usual one where none is typed."""
    there = at("burn_targets", key, "target")
    typed = written('IF({there}="",{usual},{there}*{mm})', there=there, usual=written(usual), mm=A_MILLIMETRE)
    return look(head, written(f'IF({{target}}="",{usual},{{typed}})', target="target", typed=typed), shown)


LONGEST = written(
    'IF({target}="",{usual},IF({typed}="",{usual},{typed}))',
    target="target",
    typed=at("burn_targets", "longest", "target"),
    usual=written(number(LONGEST_BURN)),
)
# Compared: what is typed is not taken into an array as a number, since its head is none.
OVER = written(
    "SUMPRODUCT(({tests}={test})*({hours}>{limit}))",
    tests=Whole("burn_cycles", "test"),
    test=Carry("burn_tests", "test"),
    hours=Whole("burn_cycles", "hours"),
    limit="longest",
)

# What it weighs after its last burn beyond what the burns left of it: between burns it may lose, to a trimmed wick or
# wax taken out, and gains nothing.
GAINED = written(
    "ROUND({weighed}-{left},6)",
    weighed=at("burn_cycles", "after", line_of(at_row(LOG, "number", "last"))),
    left=at_row(LOG, "weight", "last"),
)


# --- the verdict --------------------------------------------------------------------------------


def six_digits(given: Given) -> Expression:
    """A number as the functions tell it: to six digits."""
    return written("ROUND({it},5-INT(LOG10(ABS({it})+({it}=0))))", it=given)


def said(words: str, test: Given, *numbers: Given) -> Expression:
    """Words after a semicolon where a test holds; each `#` in them stands for a number."""
    parts: list[Given] = []
    for place, piece in enumerate(f"; {words}".split("#")):
        parts += [six_digits(numbers[place - 1])] if place else []
        parts += [written(braced(quoted(piece)))] if piece else []
    return written("REPT({words},{test})", words=joined("&", parts), test=test)


def _number(key: str) -> Expression:
    """An own result as a number where it is blank."""
    return written("N({cell})", cell=key)


IN_MM = written("N({flame})*{mm}", flame="flame", mm=A_MILLIMETRE)
OTHER, GLOW, AFTER, AGAIN = (Carry("burn_tests", key) for key in ("other_burning", "afterglow", "vessel_after", "lit_again"))  # fmt: skip
STOP_AFTER = joined(
    "&",
    [
        said(f"more than the wick burnt for # s, over {LONGEST_OTHER:g}", written(f"{{it}}>{LONGEST_OTHER:g}", it=OTHER), OTHER),
        written('REPT("; vessel "&{it},({it}<>"")*({it}<>"whole"))', it=AFTER),
        said(f"glow or smoke for # s, over {LONGEST_GLOW:g}", written(f"{{it}}>{LONGEST_GLOW:g}", it=GLOW), GLOW),
        said("lit again by itself", written('{it}="yes"', it=AGAIN)),
    ],
)  # fmt: skip


def _stop_seen(place: int) -> Expression:
    """That a sign which stops a burn was seen, by its place on Signs."""
    return said(f"seen: {STOPS[place - 1]}", written(f"COUNTIF({{signs}},{place})>0", signs=SIGNS))


LOOKED_AT = (("flame", "flame"), ("other burning", OTHER), ("vessel", AFTER), ("afterglow", GLOW), ("lit again", AGAIN))
MISSING = joined("&", [said(f"{name} not looked at", blank(given)) for name, given in LOOKED_AT])

# What is aimed at, as the reasons call it: its measure, and the columns of its lowest and highest.
AIMS = {
    "burn rate": ("rate", "rate_low_aim", "rate_high_aim"),
    "flame height": ("flame", "flame_low_aim", "flame_high_aim"),
    "melt pool": ("pool", "pool_low_aim", ""),
    "vessel temperature": ("hot", "", "hot_high_aim"),
}


def _not_measured(name: str, measured: str, limits: tuple[str, ...]) -> Expression:
    typed = joined(",", [limit for limit in limits if limit])
    return said(f"{name} not measured", written('(COUNT({limits})>0)*({it}="")', limits=typed, it=measured))


UNMEASURED = written(
    'IF({aims}=0,"; no target of your own typed",{unmeasured})',
    aims="aims",
    unmeasured=joined("&", [_not_measured(name, measured, limits) for name, (measured, *limits) in AIMS.items()]),  # type: ignore[arg-type]
)


def _beyond(measured: str, limit: str, sign: str) -> Expression:
    return written(f'({{limit}}<>"")*({{it}}<>"")*({{it}}{sign}{{limit}})', limit=limit, it=measured)


def _misses(name: str) -> Expression:
    measured, low, high = AIMS[name]
    found = [("below", low, "<"), ("above", high, ">")]
    return joined(
        "&",
        [
            said(f"{name} #, {word} #", _beyond(measured, limit, sign), _number(measured), _number(limit))
            for word, limit, sign in found
            if limit
        ],
    )


def _how_many(sign: str, at_end: int) -> Expression:
    sides = [(aim[0], aim[at_end]) for aim in AIMS.values() if aim[at_end]]
    return joined("+", [_beyond(measured, limit, sign) for measured, limit in sides])


def chosen(code: Given) -> Expression:
    """A verdict in words, by its number."""
    return written(f"CHOOSE({{code}},{','.join(map(quoted, VERDICTS))})", code=code)


CODE = written('IF({stops}<>"",1,IF({missing}<>"",2,IF({misses}<>"",3,4)))', stops="stops", missing="missing", misses="misses")  # fmt: skip
REASONS = written(
    f"CHOOSE({{code}},MID({{stops}}&{quoted('; ' + UNCONFIRMED)},3,999),MID({{missing}}&{{misses}},3,999),"
    f"MID({{misses}},3,999),{quoted(f'no stop condition seen ({UNCONFIRMED}); every target typed is met')})",
    code="code",
    stops="stops",
    missing="missing",
    misses="misses",
)
TOO_COOL, WITHIN, TOO_HOT = map(quoted, FINDINGS)
FINDING = written(
    f'IF(({{stops}}<>"")+{{above}}>0,IF({{below}}>0,"",{TOO_HOT}),'
    f'IF({{below}}>0,{TOO_COOL},IF({{code}}=4,{WITHIN},"")))',
    stops="stops",
    above="above",
    below="below",
    code="code",
)

# --- the recipe that was tested -----------------------------------------------------------------

PRODUCT = Carry("burn_tests", "product")
LOAD = written("ROUND({load},6)", load=Carry("burn_tests", "load"))
WICKS = written("MAX(1,N({wicks}))", wicks=Carry("burn_tests", "wicks"))
# The load in millionths: text of a number with decimals is written in each country's way.
MILLIONTHS = written("ROUND({load}*1000000,0)", load="load")
SAME = ("product_row", "vessel_row", "wax_row", "wick_row", "wicks", MILLIONTHS)


def _of_recipe(code: str = "") -> Expression:
    """How many pieces of the recipe were burnt, or came to one verdict."""
    given = written(code or '">="&1')
    return written(
        "COUNTIFS({recipes},{own},{codes},{code})",
        recipes=Whole(KEY, "recipe"),
        own="recipe",
        codes=Whole(KEY, "code"),
        code=given,
    )


RECIPE_CODE = written(
    f"IF({{stops}}>0,1,IF({{judged}}<{PIECES},2,IF({{missed}}>0,3,4)))",
    stops="stopped_pieces",
    judged="judged_pieces",
    missed="missed_pieces",
)
LEFT_OUT = written(
    'REPT("; "&({all}-{judged})&" not judged, left out",{all}>{judged})', all="pieces", judged="judged_pieces"
)
RECIPE_REASONS = written(
    'CHOOSE({code},"a stop condition in "&{stops}&" of "&{all}&" pieces: one is enough",'
    f'{{judged}}&" pieces judged; at least {PIECES} are wanted",'
    '{missed}&" of "&{judged}&" pieces miss a target"&{left_out},"all "&{judged}&" pieces meet the targets"&{left_out})',
    code="recipe_code",
    stops="stopped_pieces",
    all="pieces",
    judged="judged_pieces",
    missed="missed_pieces",
    left_out=LEFT_OUT,
)

FILL = written(
    'IF({typed}<>"",{typed},IF({product}=0,"",{own}))',
    typed=Carry("burn_tests", "fill"),
    product="product_row",
    own=at("workings", "fill", "product_row"),
)
ACROSS, DENSITY = at("vessels", "diameter", "vessel_row"), at("materials", "density", "wax_row")
STAYS = calculated(
    wax_that_stays.__name__,
    diameter=ACROSS,
    density=DENSITY,
    depth=written("{depth}/{mm}", depth="depth", mm=A_MILLIMETRE),
)
TWO_BURNS = written("{last}={first}", last="last", first="first")

TAB = result_tab(
    "Burn workings",
    "working",
    "What the burns of each test come to, step by step.",
    KEY,
    TESTS,
    {
        "first": look("First line in Burns in order", FIRST, "row"),
        "last": look("Last line there", LAST, "row"),
        "rate": result("Burn rate, {weight} an hour", "burn_rate", hours=HOURS, weights=WEIGHTS, needs=BEGUN, format="fine_weight"),
        "rate_low": result("Burn rate, low end, {weight} an hour", "burn_rate_low", hours=HOURS, weights=WEIGHTS, needs=BEGUN, blank_if=(TWO_BURNS,), format="fine_weight"),
        "rate_high": result("Burn rate, high end, {weight} an hour", "burn_rate_high", hours=HOURS, weights=WEIGHTS, needs=BEGUN, blank_if=(TWO_BURNS,), format="fine_weight"),
        "flame": look("Tallest flame, {length}", _most("flame"), "length", needs=BEGUN),
        "pool": look("Widest pool, {length}", _most("pool"), "length", needs=BEGUN),
        "hot": look("Hottest vessel, {temperature}", _most("hot"), "temperature", needs=BEGUN),
        "sign": look("First sign, place", written('IF(SUM({signs})=0,"",MIN({signs}))', signs=SIGNS), "row", needs=BEGUN),
        "target": look("Row on Burn targets", TARGET, "row"),
        "rate_low_aim": _aim("Rate from, {weight} an hour", "rate_low", "fine_weight"),
        "rate_high_aim": _aim("Rate to, {weight} an hour", "rate_high", "fine_weight"),
        "flame_low_aim": _aim("Flame from, {length}", "flame_low", "length"),
        "flame_high_aim": _aim("Flame to, {length}", "flame_high", "length"),
        "pool_low_aim": _aim("Pool from, {length}", "pool_low", "length"),
        "hot_high_aim": _aim("Vessel to, {temperature}", "hot_high", "temperature"),
        "tallest": _or_usual("Stop: flame over, mm", "tallest", STOPPED_AT, "count"),
        "depth": _or_usual("Stop: wax left, mm", "depth", STOP_DEPTH, "count"),
        "longest": look("Longest burn, hours", LONGEST, "hours"),
        "over": look("Burns longer than that", OVER, "row", needs=BEGUN),
        "gained": look("Heavier at lighting than after, {weight}", GAINED, "fine_weight", needs=BEGUN),
        "stop_flame": look("Stop: flame", said("flame # mm, over #", written("{it}>{most}", it=IN_MM, most="tallest"), IN_MM, "tallest"), needs=BEGUN),
        "stop_after": look("Stop: afterwards", STOP_AFTER, needs=BEGUN),
        **{f"stop_seen_{place}": look(f"Stop: {sign}", _stop_seen(place), needs=BEGUN) for place, sign in enumerate(STOPS, start=1)},
        "stops": look("Stops", joined("&", ["stop_flame", "stop_after", *(f"stop_seen_{place}" for place in range(1, len(STOPS) + 1))]), needs=BEGUN),
        "aims": look("Aims typed", written("COUNT({aims})", aims=Own("rate_low_aim", "hot_high_aim")), "row", needs=BEGUN),
        "looked": look("Not looked at", MISSING, needs=BEGUN),
        "unmeasured": look("Not measured", UNMEASURED, needs=BEGUN),
        "missing": look("What is missing", joined("&", ["looked", "unmeasured"]), needs=BEGUN),
        **{f"misses_{measured}": look(f"Misses: {name}", _misses(name), needs=BEGUN) for name, (measured, *_) in AIMS.items()},
        "misses": look("Targets missed", joined("&", [f"misses_{measured}" for measured, *_ in AIMS.values()]), needs=BEGUN),
        "code": look("Verdict, place", CODE, "row", needs=BEGUN),
        "verdict": look("Verdict", chosen("code"), needs=BEGUN),
        "reasons": look("Why", REASONS, needs=BEGUN),
        "above": look("Targets passed", _how_many(">", 2), "row", needs=BEGUN),
        "below": look("Targets not reached", _how_many("<", 1), "row", needs=BEGUN),
        "finding": look("How it burnt", FINDING, needs=BEGUN),
        "product_row": look("Product, row", written('IF({product}="",0,{row})', product=PRODUCT, row=row_in("recipes", PRODUCT, ready=False)), "row"),
        "vessel_row": look("Vessel, row", row_in("vessels", Carry("burn_tests", "vessel"), ready=False), "row"),
        "wax_row": look("Wax, row", row_in("materials", Carry("burn_tests", "wax"), ready=False), "row"),
        "wick_row": look("Wick, row", row_in("materials", Carry("burn_tests", "wick"), ready=False), "row"),
        "wicks": look("Wicks, each", WICKS, "count"),
        "load": look("Load, of wax", LOAD, "percent"),
        "same": look("What makes a recipe", joined('&"/"&', SAME)),
        "recipe": look("First test of the recipe, row", written("MATCH({same},{all},0)", same="same", all=Whole(KEY, "same")), "row"),
        "pieces": look("Pieces of the recipe", _of_recipe(), "row", needs=BEGUN),
        "stopped_pieces": look("Pieces stopped", _of_recipe("1"), "row", needs=BEGUN),
        "judged_pieces": look("Pieces judged", written("{all}-{not_judged}", all="pieces", not_judged=_of_recipe("2")), "row", needs=BEGUN),
        "missed_pieces": look("Pieces that miss", _of_recipe("3"), "row", needs=BEGUN),
        "recipe_code": look("Verdict on the recipe, place", RECIPE_CODE, "row", needs=BEGUN),
        "recipe_reasons": look("Why, of the recipe", RECIPE_REASONS, needs=BEGUN),
        "fill": look("Fill, {weight}", FILL, "weight"),
        "stays": look("Wax that stays, {weight}", step_by_step([blank("ready"), blank(ACROSS), blank(DENSITY)], STAYS), "weight"),
    },
)  # fmt: skip

register(TAB, __name__, 48, records=True)
