"""Tax by rate, area and place: charged on sales, and to claim back on what was bought."""

import datetime
from collections.abc import Iterable
from typing import NamedTuple

from candlecalc.books.events import tax_code
from candlecalc.books.journal import as_number
from candlecalc.books.reading import Reading
from candlecalc.books.sheets import Column, Sheet
from candlecalc.workbook.tabs.sell.sold import FROM_MARKETS

Day = datetime.date
CHARGED, CLAIMED = "on sales", "to claim back"
MAKER, PLACE, NOBODY = "maker", "place", "nobody"


class TaxLine(NamedTuple):
    """What sales of one rate, area and place come to, in coins."""

    what: str
    area: str
    rate: float
    place: str
    paid_by: str
    tax_code: str
    gross: int
    exempt: int
    taxable: int
    tax: int


def tax_lines(reads: Iterable[Reading], first: Day, last: Day) -> list[TaxLine]:
    """Lines of Sold by the day they count on, and purchases and expenses with tax to claim back."""
    found: dict[tuple[str, str, float, str, str, str], list[int]] = {}
    for read in reads:
        for key, amounts in [*_sold(read, first, last), *_claimed(read, first, last)]:
            found[key] = [one + more for one, more in zip(found.get(key, [0] * 4), amounts, strict=True)]
    return [TaxLine(*key, *amounts) for key, amounts in sorted(found.items()) if any(amounts)]


Keyed = list[tuple[tuple[str, str, float, str, str, str], list[int]]]


def _sold(read: Reading, first: Day, last: Day) -> Keyed:
    found: Keyed = []
    for at in read.lines("sold", "what"):
        net, tax, fee, comes_in = (read.coins("sold", key, at) for key in ("net", "tax", "fee", "comes_in"))
        market = read.whole("sold", "what", at) == FROM_MARKETS
        typed = {} if market else read.row("sales", read.whole("sold", "source", at)).typed
        day = read.value("sold", "date", at) if market or not read.by_cash else typed["paid_on"]
        if not (isinstance(day, datetime.date) and first <= day <= last) or not read.whole("sold", "sign", at):
            continue
        area, rate = str(typed.get("area") or ""), read.number("sold", "rate", at)
        by = NOBODY if not tax else PLACE if comes_in + fee == net else MAKER
        key = (CHARGED, area, rate, str(read.value("sold", "place", at)), by, tax_code(read, at, area))
        found.append((key, [net + tax, 0 if rate else net, net if rate else 0, tax]))
    return found


def _claimed(read: Reading, first: Day, last: Day) -> Keyed:
    found: Keyed = []
    for table, key in (("purchases", "claimed"), ("expenses", "tax")):
        for line in read.rows(table):
            day, tax = line.day("paid_on" if read.by_cash else "date"), read.typed_coins(line, key)
            if tax and day and first <= day <= last:
                found.append(((CLAIMED, "", 0.0, line.tab, MAKER, CLAIMED), [0, 0, 0, tax]))
    return found


def tax_sheet(lines: Iterable[TaxLine], digits: int) -> Sheet:
    rows = [[*line[:6], *(as_number(coins, digits) for coins in line[6:])] for line in lines]
    columns = (
        Column("what", constraints={"required": True}, says=f"{CHARGED}, or {CLAIMED}"),
        Column("area", says="as typed on Sales; blank where one rate holds everywhere"),
        Column("rate", "number", says="0.2 for 20 %"),
        Column("place"),
        Column("paid_by", says="who pays it over: maker, place, or nobody"),
        Column("tax_code", says="as in the journal"),
        Column("gross", "number", says="with tax"),
        Column("exempt", "number", says="before tax, where no tax is due"),
        Column("taxable", "number", says="before tax, where tax is due"),
        Column("tax", "number"),
    )
    return Sheet("tax", "Tax by rate, area, place, and who pays it over.", columns, rows)
