"""The Tested products tab: for each product whether its present recipe was tested, and what the tests come to."""

from candlecalc.calc.wick import PIECES
from candlecalc.season.tables.set_up import RECIPES
from candlecalc.workbook.cells.checks import Check
from candlecalc.workbook.cells.columns import look
from candlecalc.workbook.cells.layout import OWN_ROW
from candlecalc.workbook.cells.references import (
    Carry,
    Expression,
    Results,
    Same,
    Whole,
    at,
    blank,
    joined,
    row_in,
    step_by_step,
    written,
)
from candlecalc.workbook.cells.table_tab import result_tab
from candlecalc.workbook.tabs.registry import register
from candlecalc.workbook.tabs.working.burn_workings import KEY, chosen


def _row(table: str, key: str) -> Expression:
    return row_in(table, Carry("recipes", key), ready=False)


# As Burn workings has it of a test: the rows of what makes a recipe.
SAME = joined(
    '&"/"&',
    [
        OWN_ROW,
        _row("vessels", "vessel"),
        _row("materials", "wax"),
        _row("materials", "wick"),
        written("MAX(1,N({wicks}))", wicks=Carry("recipes", "wicks")),
        written("ROUND({load}*1000000,0)", load=Carry("recipes", "load")),
    ],
)
TEST = written('IF({same}="","",IFERROR(MATCH({same},{tested},0),""))', same="same", tested=Whole(KEY, "same"))


def _known(value: Expression) -> Expression:
    """A value of the tests of the present recipe; blank where it was not tested, or not burnt yet."""
    return step_by_step([blank("ready"), blank("test_row"), blank(at(KEY, "code", "test_row"))], value)


# Asked once tests are kept at all, of what has a wick and a price.
UNTESTED = written(
    '({same}<>"")*({test}="")*({priced}>0)*(COUNT({tests})>0)',
    same="same",
    test="test_row",
    priced="priced",
    tests=Results(KEY, "code"),
)
STOPPED = written('({stopped}<>"")*(N({stopped})>0)*({priced}>0)', stopped="stopped_pieces", priced="priced")
FEW = written(
    f'({{pieces}}<>"")*(N({{judged}})<{PIECES})*({{priced}}>0)*({{stopped}}=0)',
    pieces="pieces",
    judged="judged",
    priced="priced",
    stopped="stopped",
)
MEND = "burn at least three pieces of it as it is made now, or leave it, if that is meant"

TAB = result_tab(
    "Tested products",
    "output",
    "Whether the present recipe of each product was tested, and what its pieces come to.",
    "tested",
    RECIPES,
    {
        "same": look("Recipe, by rows", SAME, needs=("ready", Carry("recipes", "wick")), width=20),
        "test_row": look("First test of it, row", TEST, "row"),
        "pieces": look("Pieces burnt", _known(at(KEY, "pieces", "test_row")), "row"),
        "judged": look("Pieces judged", _known(at(KEY, "judged_pieces", "test_row")), "row"),
        "stopped_pieces": look("Pieces stopped", _known(at(KEY, "stopped_pieces", "test_row")), "row"),
        "verdict": look("Verdict on the recipe", _known(chosen(at(KEY, "recipe_code", "test_row"))), width=25),
        "reasons": look("Why", _known(at(KEY, "recipe_reasons", "test_row")), "said", width=45),
        "priced": look("Prices typed for it", Same("workings", "priced"), "row"),
        "untested": look("Priced and not tested", UNTESTED, "row"),
        "stopped": look("Priced and stopped in a test", STOPPED, "row"),
        "few": look("Priced and tested too little", FEW, "row"),
    },
    checks=(
        Check("stopped=0", "priced, and a test of its present recipe was stopped?", "do not sell or burn it as it is made now; see Test results", "product", unlikely=True),
        Check("untested=0", "priced, and its present recipe not tested?", MEND, "product", unlikely=True),
        Check("few=0", "priced, and its present recipe judged on fewer than three pieces?", MEND, "product", unlikely=True),
    ),
    paper_to="reasons",
)  # fmt: skip

register(TAB, __name__, 70, records=True)
