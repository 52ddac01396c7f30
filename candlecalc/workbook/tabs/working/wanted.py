"""What is still wanted of a thing line by line, and what must be made for it: for sets on Demand, for candles on Plan lines.

A line's number sorts by thing, day and row, and is 0 where there is no line. What is needed up to a line is what is
wanted up to it and its buffer, less what there is by then. What a line makes is by how much that is more than up to
any line before: nothing is made twice, and what one line has too many serves the next.
"""

from candlecalc.workbook.cells.references import KEY_THING, Expression, Given, Results, at, written


def wanted_by(table: str, pieces: str, thing: Given) -> Expression:
    """The pieces of all lines of a thing up to this one."""
    return written(
        "SUMPRODUCT(({numbers}>={thing}*{key})*({numbers}<={number})*{pieces})",
        numbers=Results(table, "number"),
        thing=thing,
        key=KEY_THING,
        number="number",
        pieces=Results(table, pieces),
    )


def to_make(table: str, thing: Given) -> Expression:
    """What this line makes."""
    through, before = (
        written(
            f"SUMPRODUCT(LARGE(({{numbers}}>={{thing}}*{{key}})*({{numbers}}{less}{{number}})*{{need}},1))",
            numbers=Results(table, "number"),
            thing=thing,
            key=KEY_THING,
            number="number",
            need=Results(table, "need"),
        )
        for less in ("<=", "<")
    )
    return written("ROUND({through}-{before},6)", through=through, before=before)


def at_home(thing: Given) -> Expression:
    """What there is of a thing, cured or not, besides what is in packed sets and at shops."""
    return written("({loose}-{there})", loose=at("candles", "loose", thing), there=at("candles", "there", thing))
