"""The card of a thing in stock: what came, what went, and what that cost, first in first out or by moving average.

Two lists in order stand side by side: what came, a lot a line (`came_columns`), and what went (`went_columns`). On
both a thing's lines stand together, by day; on one day what came stands before what went. Money is rounded as it
runs: all that went so far is rounded to the coin, and a line costs the difference. So nothing is lost on the way.
"""

from candlecalc.season.tables.once import AVERAGE
from candlecalc.workbook.cells.checks import OVERWRITTEN, WorkbookCheck
from candlecalc.workbook.cells.columns import Column, look
from candlecalc.workbook.cells.layout import Plan
from candlecalc.workbook.cells.references import (
    KEY_DAY,
    Above,
    ByPlan,
    Expression,
    Given,
    Named,
    Results,
    at,
    at_row,
    in_coins,
    in_order,
    line_of,
    thing_of,
    to_date,
    worked_out_coins,
    written,
)

# What a thing counts in the place where a lot begins: more than there can be of anything.
KEY_PLACE = Named("key_place")
HAIR = written("0.00005")  # a lot that is used up to its very end is not the next one
NUMBERED = ("number",)


def by_method(fifo: Expression, average: Expression) -> Expression:
    """What is written where stock is valued first in first out, and where by moving average."""
    return ByPlan(lambda plan: average if plan.stock == AVERAGE else fifo)


def stand_in_order(plan: Plan, key: str) -> WorkbookCheck:
    """No line of a list in order may stand below one with a higher number: formulas look it up by halves."""
    there = plan.layouts[key]
    name = f"{there.title}: lines stand in order"
    if there.rows == 1:
        return WorkbookCheck(name, there.title, "0", OVERWRITTEN)
    column = f"${there.letters['number']}$"
    above, below = (
        f"{there.sheet}!{column}{there.first_row + more}:{column}{there.last_row - 1 + more}" for more in (0, 1)
    )
    return WorkbookCheck(name, there.title, f"SUMPRODUCT(({below}<{above})*1)", OVERWRITTEN)


def last_below(table: str, number: Given) -> Expression:
    """The place of the last line of a list in order whose number is not above this one; 0 where there is none.

    An error in the list is one here too: it must not read as none.
    """
    return written(
        "IF(OR(N({first})=0,{number}<{first}),0,MATCH({number},{numbers},1))",
        first=at_row(table, "number", written("1")),
        number=number,
        numbers=Results(table, "number"),
    )


def of_same_thing(table: str, place: Given, key: str, thing: Given = "thing") -> Expression:
    """A value of a list in order at a place, if that line is of the same thing; else 0."""
    there = written("INDEX({things},{place})={thing}", things=Results(table, "thing"), place=place, thing=thing)
    return written("IF({place}=0,0,IF({there},{value},0))", place=place, there=there, value=at_row(table, key, place))


def end_of_day(number: Given) -> Expression:
    """A line's number as that of the last line there could be of its thing on its day."""
    return written("(INT({number}/{key})+1)*{key}", number=number, key=KEY_DAY)


def begin_of_day(number: Given) -> Expression:
    """... and of the first."""
    return written("INT({number}/{key})*{key}", number=number, key=KEY_DAY)


def same_thing(then: Given, otherwise: Given) -> Expression:
    """One thing where the row above is of the same thing, else another."""
    return written(
        "IF({thing}={above},{then},{otherwise})", thing="thing", above=Above("thing"), then=then, otherwise=otherwise
    )


NOTHING = written("0")


def lines_in_order(log: str, number: str, row: str, thing: str) -> dict[str, Column]:
    """A log's lines by a number of theirs, and what it holds: their rows, and the rows of what they are of.

    `row` and `thing` are the heads of the two.
    """
    return {
        "number": look("Line's number", in_order(log, number), "row", needs=(), width=16),
        "line": look(row, line_of("number"), "row", needs=NUMBERED, width=9),
        "thing": look(thing, thing_of("number"), "row", needs=NUMBERED, width=8),
    }


def came_columns(log: str, went: str, amount: tuple[str, str], value: tuple[str, str]) -> dict[str, Column]:
    """The columns of what came, in order. `amount` and `value` are the log's columns for them, each with its head.

    `log` is the tab whose lines they are, `went` the list in order of what went.
    """
    before = written("ROUND({came}-{amount},9)", came="came", amount="amount")  # what came before this lot
    # What was there when it came, with what else came that day; nothing where more had gone than had come.
    that_day = written(
        "({thing}={above})*({date}={day})", thing="thing", above=Above("thing"), date="date", day=Above("date")
    )
    there = written(
        "IF({that_day}=1,{there}+{amount},MAX(0,{before}-{gone}))",
        that_day=that_day,
        there=Above("there"),
        amount=Above("amount"),
        before=before,
        gone="from",
    )
    all_there = written("({there}+{amount})", there="there", amount="amount")
    averaged = written(
        "IF({all}=0,{rate},({there}*{rate}+{value})/{all})",
        all=all_there,
        there="there",
        rate=Above("rate"),
        value="value",
    )
    single = written("{value}/MAX({amount},({amount}=0)*1)", value="value", amount="amount")
    so_far = written(
        "{spent}+({gone}-{gone_above})*{rate}",
        spent=Above("spent"),
        gone="from",
        gone_above=Above("from"),
        rate=Above("rate"),
    )
    # What came on one day has one price; and what went before anything came has that of the first day.
    by_day = written(
        "IF({date}={day},{above},{gone})",
        date="date",
        day=Above("date"),
        above=Above("from"),
        gone=of_same_thing(went, "went_line", "gone"),
    )
    gone = same_thing(by_day, NOTHING)
    return {
        # LibreOffice works out neighbours that look up one row each in a go. Amounts beside values, which rest on what
        # went of other things, would be a circle to it: what came to date stands between.
        **lines_in_order(log, "number", "Row in its log", "Thing, row"),
        "date": look("Date", at(log, "date", "line"), "date", needs=NUMBERED),
        "amount": look(amount[1], at(log, amount[0], "line"), "quantity", needs=NUMBERED),
        "came": look("Came to date", to_date("amount", "came", "thing"), "quantity", needs=NUMBERED),
        "value": look(value[1], at(log, value[0], "line"), "money", needs=NUMBERED),
        "worth": look("Value to date, {money}", to_date("value", "worth", "thing"), "money", needs=NUMBERED),
        "went_line": look(
            "Last line of what went before",
            by_method(NOTHING, last_below(went, begin_of_day("number"))),
            "row",
            needs=NUMBERED,
            width=9,
        ),
        "from": look("Priced from, of what went", by_method(before, gone), "quantity", needs=NUMBERED),
        "there": look("There before it", by_method(NOTHING, there), "quantity", needs=NUMBERED),
        "rate": look(
            "Cost each, {money}", by_method(single, same_thing(averaged, single)), "unit_cost", needs=NUMBERED
        ),
        "spent": look(
            "Cost of what went before, {money}",
            by_method(written("ROUND({worth}-{value},9)", worth="worth", value="value"), same_thing(so_far, NOTHING)),
            "unit_cost",
            needs=NUMBERED,
        ),
        "place": look(
            "Where it begins, as a number",
            written("{thing}*{key}+{before}", thing="thing", key=KEY_PLACE, before=before),
            "row",
            needs=NUMBERED,
            width=16,
        ),
    }


GONE_BEFORE = same_thing(Above("gone"), NOTHING)


def gone_with_all(log: str) -> Expression:
    """What is gone after a line if all of it came from here."""
    return written("{before}+{amount}", before=GONE_BEFORE, amount=at(log, "amount", line_of("number")))


def went_columns(log: str, came: str, counts: int, after: Expression | None = None) -> dict[str, Column]:
    """The columns of what went, in order. `log` is the tab whose lines they are, `came` the list of what came.

    Lines whose `what` is `counts` hold what was counted: from then on that is there. `after` is what is gone
    after another line, where not all of it comes from here.
    """
    line = line_of("number")
    gone = written(
        "ROUND(IF({what}={counts},{came}-{amount},{after}),9)",
        what=at(log, "what", line),
        counts=written(str(counts)),
        came="came",
        amount=at(log, "amount", line),
        after=after or gone_with_all(log),
    )
    found = Results(came, "place")
    lot = written(
        "MATCH({thing}*{key}+MAX(0,{gone}-{hair}),{places},1)",
        thing="thing",
        key=KEY_PLACE,
        gone="gone",
        hair=HAIR,
        places=found,
    )
    # What went before anything came is at the cost of the first day.
    first = at_row(
        came, "number", written("MATCH({thing}*{key},{places},1)", thing="thing", key=KEY_PLACE, places=found)
    )
    first = written("MATCH({last},{numbers},1)", last=end_of_day(first), numbers=Results(came, "number"))
    by_day = written("IF({came}>0,{day},{first})", came="came", day="by_day", first=first)
    value = written(
        "{spent}+({gone}-{start})*{rate}",
        gone="gone",
        **{name: at_row(came, key, "lot") for name, key in (("spent", "spent"), ("start", "from"), ("rate", "rate"))},
    )
    # A line that took nothing costs nothing, also where nothing ever came.
    so_far = same_thing(Above("spent"), NOTHING)
    spent = written(
        "IF({gone}={before},{so_far},IF({there}={thing},{value},NA()))",
        gone="gone",
        before=GONE_BEFORE,
        so_far=so_far,
        there=at_row(came, "thing", "lot"),
        thing="thing",
        value=worked_out_coins(value),
    )
    cost = in_coins(written("{spent}-{before}", spent="spent", before=so_far))
    return {
        "number": look("Line's number", in_order(log, "number"), "row", needs=(), width=16),
        "thing": look("Thing, row", thing_of("number"), "row", needs=NUMBERED, width=8),
        "by_day": look(
            "Last line of what came by that day", last_below(came, end_of_day("number")), "row", needs=NUMBERED, width=9
        ),
        "came": look("Came by that day", of_same_thing(came, "by_day", "came"), "quantity", needs=NUMBERED),
        "gone": look("Gone to date", gone, "quantity", needs=NUMBERED),
        "lot": look("Priced by the line", by_method(lot, by_day), "row", needs=NUMBERED, width=9),
        "spent": look("Cost to date, {money}", spent, "money", needs=NUMBERED),
        "cost": look("Cost, {money}", cost, "money", needs=NUMBERED),
    }
