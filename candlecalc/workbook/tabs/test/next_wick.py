"""The wick to test next, as `next_wick` names it: its branches in cells, each resting on those before it.

A wick's place is its rank by size in its kind, from 1; no such wick is 0 on the low side, one past the last on the
high. tests/workbook/test_next_wick.py compares name and reasons with the function over every branch.
"""

from candlecalc.calc.wick import PIECES
from candlecalc.workbook.cells.references import Expression, Given, Named, Results, at_row, joined, quoted, written
from candlecalc.workbook.tabs.working.wick_steps import KEY, KIND

PLACES, COOL, HOT, WITHIN, ONLY = (Results(KEY, key) for key in ("place", "cool", "hot", "within", "only_within"))
STEPS = ("many", "low", "high", "within", "open", "pieces", "branch", "place")
MANY, LOW, HIGH, SOME_WITHIN, OPEN, FOUND, BRANCH, PLACE = (Named(f"next_{step}") for step in STEPS)

# The branches, in the order in which `next_wick` asks.
NO_WICK, NONE_TESTED, CONTRADICT, CONTRADICTED, AGAIN, NOTHING_BETWEEN, BETWEEN, ENOUGH = range(1, 9)
NAMED = (CONTRADICT, CONTRADICTED, AGAIN, BETWEEN)  # those that name a wick


def _largest(test: str, **inside: Given) -> Expression:
    """The largest place of the wicks of which a test holds; 0 where it holds of none."""
    return written(f"SUMPRODUCT(LARGE({{places}}*({test}),1))", places=PLACES, **inside)


def _smallest(test: str, **inside: Given) -> Expression:
    """The smallest, one past the last where it holds of none."""
    turned = "({many}+1-{places})*({places}>0)"
    return written(f"{{many}}+1-SUMPRODUCT(LARGE({turned}*({test}),1))", many=MANY, places=PLACES, **inside)


OPEN_TO = "({only}>{low})*({only}<{high})"
SIDES: dict[str, Given] = {"only": ONLY, "low": LOW, "high": HIGH}


def steps() -> dict[str, Expression]:
    """What each step holds, by its name."""
    gap = written("({high}-{low}-1)", high=HIGH, low=LOW)
    branch = written(
        f"IF({{many}}=0,{NO_WICK},IF(({{low}}=0)*({{high}}>{{many}})*({{within}}=0),{NONE_TESTED},"
        f"IF({{low}}>={{high}},{CONTRADICT},IF({{within}}>0,IF({{open}}=0,{CONTRADICTED},"
        f"IF({{pieces}}<{PIECES},{AGAIN},{ENOUGH})),IF({{gap}}=0,{NOTHING_BETWEEN},{BETWEEN})))))",
        many=MANY,
        low=LOW,
        high=HIGH,
        within=SOME_WITHIN,
        open=OPEN,
        pieces=FOUND,
        gap=gap,
    )
    # The middle where both sides are known; else the neighbour of the one that is.
    middle = written(
        "{low}+1+IF({high}>{many},0,IF({low}=0,{gap}-1,INT({gap}/2)))", low=LOW, high=HIGH, many=MANY, gap=gap
    )
    # Of those open to it the one with most pieces, the smallest of equal ones.
    most = _smallest(f"{OPEN_TO}*({{within}}={{pieces}})", **SIDES, within=WITHIN, pieces=FOUND)
    place = written(
        "CHOOSE({branch},0,0,{high},{contradicted},{most},0,{middle},{most})",
        branch=BRANCH,
        high=HIGH,
        contradicted=_smallest("{only}>0", only=ONLY),
        most=most,
        middle=middle,
    )
    held = (
        written("MAX({places})", places=PLACES),
        _largest("{cool}>0", cool=COOL),
        _smallest("{hot}>0", hot=HOT),
        written("MAX({only})", only=ONLY),
        written(f"SUMPRODUCT({OPEN_TO}*1)", **SIDES),
        written(f"SUMPRODUCT(LARGE({OPEN_TO}*{{within}},1))", **SIDES, within=WITHIN),
        branch,
        place,
    )
    return dict(zip(STEPS, held, strict=True))


def called(place: Given) -> Expression:
    """The wick at a place."""
    return at_row(KEY, "wick", written("MATCH({place},{places},0)", place=place, places=PLACES))


IS_NAMED = joined("+", [written(f"({{branch}}={branch})", branch=BRANCH) for branch in NAMED])


def reasons() -> Expression:
    """Why, in the words of the function."""
    low, high = called(LOW), called(HIGH)
    cool = written('IF({at}>0,{name}&" was too cool","")', at=LOW, name=low)
    hot = written('IF({at}<={many},{name}&" was too hot","")', at=HIGH, many=MANY, name=high)
    both = written(
        '{cool}&REPT(" and ",({low}>0)*({high}<={many}))&{hot}', cool=cool, hot=hot, low=LOW, high=HIGH, many=MANY
    )
    again = written('IF({low}>{high}," and "&{name},"")', low=LOW, high=HIGH, name=low)
    where = written('IF(({low}=0)+({high}>{many})>0,"beyond","between")', low=LOW, high=HIGH, many=MANY)
    none_tested = quoted("none tested in this wax, load and vessel: begin where the wick's supplier advises")
    told = (
        written('"no wick of the kind "&{kind}&" is listed"', kind=KIND),
        written(none_tested),
        written('"the tests contradict each other: test "&{high}&{again}&" again"', high=high, again=again),
        written('"the tests of other sizes contradict those of "&{name}&": test it again"', name=called(PLACE)),
        written(f'"within targets in "&{{pieces}}&" of at least {PIECES} pieces: burn another"', pieces=FOUND),
        written(
            '{both}&", and no "&{kind}&" of yours lies "&{where}&": another kind, wax or load is a new recipe"',
            both=both,
            kind=KIND,
            where=where,
        ),
        both,
        written(
            '{name}&" was within targets in "&{pieces}&" pieces: go on with it, and see the verdict on its recipe"',
            name=called(PLACE),
            pieces=FOUND,
        ),
    )
    return written("CHOOSE({branch},{told})", branch=BRANCH, told=joined(",", told))
