"""The Test results tab: what each test comes to, beside its recipe's other pieces."""

from candlecalc.season.tables.burning import TESTS
from candlecalc.workbook.cells.checks import Check
from candlecalc.workbook.cells.columns import calculated, look
from candlecalc.workbook.cells.references import (
    Carry,
    Expression,
    Same,
    at,
    at_row,
    blank,
    joined,
    step_by_step,
    written,
)
from candlecalc.workbook.cells.table_tab import result_tab
from candlecalc.workbook.tabs.registry import Shown, register
from candlecalc.workbook.tabs.working.burn_workings import BEGUN, KEY, chosen

BURNT = tuple(Same(KEY, key) for key in BEGUN)


def _its(key: str) -> Expression:
    return Same(KEY, key)


def _typed(key: str) -> Expression:
    return Carry("burn_tests", key)


def _now(key: str) -> Expression:
    """The same of the product's present recipe."""
    return at("recipes", key, _its("product_row"))


def _changed(word: str, test: str, now: Expression) -> Expression:
    return written(f'REPT(", {word}",{test})', then=_typed(word), now=now)


WICKS_NOW = written("MAX(1,N({wicks}))", wicks=_now("wicks"))
CHANGED = written(
    'MID({changed},3,99)',
    changed=joined(
        "&",
        [
            *(_changed(word, "{then}<>{now}", _now(word)) for word in ("vessel", "wax")),
            _changed("load", "ROUND({then}-{now},6)<>0", _now("load")),
            _changed("wick", "{then}<>{now}", _now("wick")),
            written('REPT(", number of wicks",{then}<>{now})', then=_its("wicks"), now=WICKS_NOW),
        ],
    ),
)  # fmt: skip
FREE_TRIAL = written("{product}=0", product=_its("product_row"))
NOTHING_BURNS = written("{fill}<={stays}", fill=_its("fill"), stays=_its("stays"))


def _left(function: str, **rate: Expression) -> Expression:
    """Hours of burning at a rate: blank while fill, what stays of it, or the rate is not known."""
    hours = calculated(function, fill=_its("fill"), stays=_its("stays"), **rate)
    waits_for = [blank("ready"), *(blank(given) for given in (*rate.values(), _its("fill"), _its("stays")))]
    return step_by_step([*waits_for, NOTHING_BURNS], hours)


SIGN = _its("sign")

COST = written(
    'IF({typed}<>"",{typed},IF({product}=0,"",{materials}))',
    typed=_typed("cost"),
    product=_its("product_row"),
    materials=at("costing", "materials", _its("product_row")),
)

TAB = result_tab(
    "Test results",
    "output",
    "What each test comes to; no verdict says that a candle may be sold.",
    "test_results",
    TESTS,
    {
        "product": look("Product", written('{it}&""', it=_typed("product")), width=24),
        "wick": look("Wick", written('{it}&""', it=_typed("wick")), width=24),
        "verdict": look("Verdict", _its("verdict"), needs=BURNT, width=25),
        "rate": look("Burn rate, {weight} an hour", _its("rate"), "fine_weight", needs=BURNT),
        "rate_low": look("Burn rate from", _its("rate_low"), "fine_weight", needs=BURNT),
        "rate_high": look("Burn rate to", _its("rate_high"), "fine_weight", needs=BURNT),
        "burnt": look("Burnt so far, hours", at_row("burns", "hours", _its("last")), "hours", needs=BURNT),
        "hours": look("Hours that a fill burns", _left("burn_time", rate=_its("rate")), "hours"),
        "label_hours": look("Hours for the label", _left("label_hours", fastest=_its("rate_high")), "count"),
        "finding": look("How it burnt", _its("finding"), needs=BURNT, width=14),
        "sign": look("Seen first", at_row("signs", "sign", SIGN), needs=(*BURNT, SIGN), width=28),
        "direction": look("Next", at_row("signs", "direction", SIGN), needs=(*BURNT, SIGN), width=16),
        "changed": look("Differs from the recipe in", CHANGED, "note", blank_if=(FREE_TRIAL,), width=22),
        "recipe_verdict": look("Verdict on all pieces made so", chosen(_its("recipe_code")), needs=BURNT, width=25),
        "cost": look("Cost typed, or its materials, {money}", COST, "money"),
        "reasons": look("Why", _its("reasons"), "said", needs=BURNT, width=60),
        "to_do": look("What to try", written('IFERROR({words},"See Burn cycles: a sign there is not on the list")', words=at_row("signs", "to_do", SIGN)), "said", needs=(*BURNT, SIGN), width=40),
        "recipe_reasons": look("Why, of all pieces made so", _its("recipe_reasons"), "said", needs=BURNT, width=45),
        "over": look("Burns longer than your limit", _its("over"), "row", needs=BURNT),
        "gained": look("Heavier at lighting than after the burn before, {weight}", _its("gained"), "weight", needs=BURNT),
    },
    checks=(
        Check("N(gained)<=0.000001", "weights that rise", "it weighs more at lighting than after the burn before; look at Burn cycles", "test"),
        Check("N(over)=0", "burnt longer at a time than your limit?", "a long burn heats the vessel; the limit stands on Burn targets", "test", unlikely=True),
    ),
    paper_to="recipe_reasons",
)  # fmt: skip

SHOWN = (
    "test", "product", "wick", "verdict", "reasons", "rate", "rate_low", "rate_high", "burnt", "hours", "label_hours",
    "finding", "sign", "direction", "changed", "recipe_verdict", "recipe_reasons", "cost",
)  # fmt: skip
register(TAB, __name__, 60, shown=Shown("tests", SHOWN), records=True)
