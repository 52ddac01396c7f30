"""The Pour list tab: what to pour in one evening at one melter, in order, and when each can be poured."""

from candlecalc.season.tables.burning import POUR_DAY
from candlecalc.workbook.cells.columns import look
from candlecalc.workbook.cells.references import Expression, Given, Same, written
from candlecalc.workbook.cells.table_tab import entry_tab, not_ready_there, words_column
from candlecalc.workbook.tabs.registry import register
from candlecalc.workbook.tabs.working.pour_day_steps import KEY as STEPS

KEY = POUR_DAY.key
A_DAY = 1440  # minutes


def _step(key: str) -> Expression:
    return Same(STEPS, key)


def _clock(minutes: Given) -> Expression:
    return written(f"({{minutes}})/{A_DAY}", minutes=minutes)


TIMED = ("ready", _step("heating"), _step("cooling"))
BEGINS = written("{free}-{pots}*{heating}", free=_step("free"), pots=_step("pots"), heating=_step("heating"))
FIRST_POT = written("{begins}+{heating}+{cooling}", begins=BEGINS, heating=_step("heating"), cooling=_step("cooling"))
LAST_POT, LATEST = (
    written("{free}+{cooling}", free=_step(f"free{late}"), cooling=_step(f"cooling{late}")) for late in ("", "_late")
)
# A product without its times leaves the hours after it unknown, and says why.
WHY = written(
    'IF({ready}="","",REPT("Melts timed: type a melt of yours; all times follow from it",{heating}="")'
    '&REPT("Melts timed: type how a pot of this wax cooled, from above oil to below pouring",({heating}<>"")*({cooling}="")))',
    ready="ready",
    heating=_step("heating"),
    cooling=_step("cooling"),
)

TAB = entry_tab(
    POUR_DAY,
    {
        "melt": look("Wax and oil in all, {weight}", _step("melt"), "weight"),
        "pots": look("Pots", _step("pots"), "count"),
        "pot": look("each holding, {weight}", _step("pot"), "weight"),
        "begins": look("Melter on at, h:mm", _clock(BEGINS), "clock", needs=TIMED),
        "first_at": look("First pot poured at, h:mm", _clock(FIRST_POT), "clock", needs=TIMED),
        "each": look("then one pot each, h:mm", _clock(_step("heating")), "clock", needs=TIMED, blank_if=(written("{pots}=1", pots=_step("pots")),)),
        "last_at": look("Last pot poured at, h:mm", _clock(LAST_POT), "clock", needs=TIMED),
        "latest": look("by your slowest melts, h:mm", _clock(LATEST), "clock", needs=TIMED),
    },
    waits={"product": not_ready_there("recipes", "product")},
    also={"why": words_column("Times", WHY)},
)  # fmt: skip

register(TAB, __name__, 40, records=True)
