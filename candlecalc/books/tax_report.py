"""Tax by rate, area and place: charged on sales, and to claim back on what was bought."""

import datetime
from collections.abc import Iterable
from typing import NamedTuple

from candlecalc.books.events import tax_code
from candlecalc.books.journal import as_number, coins_in
from candlecalc.books.reading import Reading
from candlecalc.books.sheets import Column, Sheet, read_csv
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
    return _added([pair for read in reads for of in (_sold, _claimed) for pair in of(read, first, last)])


Keyed = list[tuple[tuple[str, str, float, str, str, str], list[int]]]


def _added(keyed: Keyed) -> list[TaxLine]:
    """One line for each key; those at nothing left out."""
    found: dict[tuple[str, str, float, str, str, str], list[int]] = {}
    for key, amounts in keyed:
        found[key] = [one + more for one, more in zip(found.get(key, [0] * 4), amounts, strict=True)]
    return [TaxLine(*key, *amounts) for key, amounts in sorted(found.items()) if any(amounts)]


def with_late(lines: Iterable[TaxLine], before: Iterable[TaxLine], again: Iterable[TaxLine]) -> list[TaxLine]:
    """Lines of a time with what came late for an earlier one: what that comes to now, less what was handed over."""
    signed = [(1, lines), (1, again), (-1, before)]
    return _added([(line[:6], [sign * coins for coins in line[6:]]) for sign, each in signed for line in each])


def tax_lines_in(data: bytes, digits: int) -> list[TaxLine]:
    """The lines of a tax.csv."""
    found = []
    for row in read_csv(data):
        gross, exempt, taxable, tax = (coins_in(row[key], digits) for key in ("gross", "exempt", "taxable", "tax"))
        key = (row["what"], row["area"], float(row["rate"]), row["place"], row["paid_by"], row["tax_code"])
        found.append(TaxLine(*key, gross, exempt, taxable, tax))
    return found


def _sold(read: Reading, first: Day, last: Day) -> Keyed:
    found: Keyed = []
    for at in read.lines("sold", "what"):
        net, tax, fee, comes_in = (read.coins("sold", key, at) for key in ("net", "tax", "fee", "comes_in"))
        market = read.whole("sold", "what", at) == FROM_MARKETS
        typed = {} if market else read.row("sales", read.whole("sold", "source", at)).typed
        day = read.value("sold", "counts", at)
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
