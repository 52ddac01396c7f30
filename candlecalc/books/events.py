"""What the rows of a workbook say happened, each as debits and credits.

By accrual a sale or a bill counts on its day, and stock stands at cost. By the cash method it counts on the day its
money moves: materials are a cost once they are paid for, and stock is not booked.
"""

import datetime
from collections.abc import Iterator

from candlecalc.books.journal import OPENING, Event, Part
from candlecalc.books.reading import Reading, Typed, place_of
from candlecalc.season import chart
from candlecalc.season.season import Row
from candlecalc.season.tables.books import CATEGORIES, OPENING_BALANCE, OWED_AT_THE_END
from candlecalc.season.tables.carried import OWED_BY_MAKER, OWED_TO_MAKER
from candlecalc.season.tables.sales import HELD_FOR_BUYERS
from candlecalc.workbook.cells.layout import FIRST_ROW
from candlecalc.workbook.tabs.sell.sold import FROM_MARKETS
from candlecalc.workbook.tabs.stock import used
from candlecalc.workbook.tabs.working import candles_out

Day = datetime.date
# What is taken out of stock without a sale, and where its cost goes; else to the cost of candles sold.
TAKEN_OUT = {"own use": chart.TAKEN, "test": chart.SAMPLES, "sample": chart.SAMPLES, "gift": chart.SAMPLES}
PURCHASE = OWED_BY_MAKER[0]  # the others are held for buyers


def events_of(read: Reading) -> Iterator[Event]:
    """All that a workbook's tabs hold, in the order of the tabs."""
    by_cash = read.by_cash
    accounts = chart.chart_of(read.season)
    yield from _still_open(read, accounts, by_cash)
    yield from _purchases(read, accounts, by_cash)
    if not by_cash:
        yield from _used(read)
        yield from _batches(read)
    yield from _sold(read, accounts, by_cash)
    if not by_cash:
        yield from _candles_out(read)
    yield from _market_days(read, accounts)
    yield from _expenses(read, accounts, by_cash)
    yield from _other_entries(read, accounts, by_cash)


def _month(day: Day) -> str:
    return f"{day:%Y-%m}"


def _purse(accounts: dict[str, chart.Account], name: object) -> str:
    """The account of a purse: its own where Accounts has one of that name."""
    own = accounts.get(str(name or "").casefold())
    return own.name if own and own.money else chart.CASH_AND_BANK


def _on(line: Typed) -> Day:
    day = line.day()
    if day is None:
        raise ValueError("a row has no date; candlecalc check says which")
    return day


def _words(*parts: object) -> str:
    return ", ".join(str(part) for part in parts if part)


def _both(debit: str, credit: str, coins: int) -> tuple[Part, ...]:
    return Part(debit, coins), Part(credit, -coins)


def _still_open(read: Reading, accounts: dict[str, chart.Account], by_cash: bool) -> Iterator[Event]:
    """What was open when the season began, and what became of it."""
    for line in read.rows("still_open"):
        row, coins = line.typed, read.typed_coins(line, "sum")
        who, what = str(row["who"]), _words(f"open {row['kind']} of {row['date']}", row["document"])
        mine = row["kind"] in OWED_TO_MAKER
        account = chart.OWED_TO_YOU if mine else chart.OWED if row["kind"] == PURCHASE else chart.HELD
        if not by_cash or account == chart.HELD:
            parts = _both(account, chart.CAPITAL, coins if mine else -coins)
            yield _opening(read, "still open from before", parts, line.tab, line.row)
        paid = line.day("paid_on")
        # What is held for a buyer is used up by a line of Sales.
        if paid and account != chart.HELD:
            purse = _purse(accounts, row["paid_from"])
            against = account if not by_cash else chart.SALES if mine else chart.BOUGHT
            parts = _both(purse, against, coins if mine else -coins)
            yield Event(
                paid, f"SETTLED {paid} {who} {row['document'] or line.row}", who, what, parts, line.tab, line.row
            )


def _opening(read: Reading, memo: str, parts: tuple[Part, ...], tab: str, row: int) -> Event:
    day = read.first_day
    return Event(day, f"{OPENING}{day}", "Opening balances", memo, parts, tab, row, opening=True)


def _purchases(read: Reading, accounts: dict[str, chart.Account], by_cash: bool) -> Iterator[Event]:
    for line in read.rows("purchases"):
        row, landed = line.typed, read.coins("purchases", "landed", line.at)
        if row["kind"]:
            if not by_cash:
                parts = _both(chart.MATERIALS, chart.CAPITAL, landed)
                yield _opening(read, "materials there at the start, at cost", parts, line.tab, line.row)
            continue
        back = read.typed_coins(line, "claimed")
        who, paid = str(row["supplier"] or "Supplier not named"), line.day("paid_on")
        bill = f"{who} {row['document'] or f'row {line.row}'}"
        bought, claimed = Part(chart.BOUGHT if by_cash else chart.MATERIALS, landed), _claimed(back)
        if not by_cash:
            parts = (bought, *claimed, Part(chart.OWED, -landed - back))
            memo = _words("materials bought", row["document"])
            yield Event(_on(line), f"BILL {row['date']} {bill}", who, memo, parts, line.tab, line.row)
        if paid:
            purse = _purse(accounts, row["paid_from"])
            against: tuple[Part, ...] = (bought, *claimed) if by_cash else (Part(chart.OWED, landed + back),)
            memo = _words("bill paid", row["document"], row["paid_from"])
            reference = f"PAID {paid} {bill} {purse}"
            yield Event(paid, reference, who, memo, (*against, Part(purse, -landed - back)), line.tab, line.row)


def _claimed(coins: int) -> tuple[Part, ...]:
    return (Part(chart.TAX_BACK, coins, "to claim back"),) if coins else ()


def _used(read: Reading) -> Iterator[Event]:
    """Materials that batches took, or sets that were packed as they left; taken out; or missing when counted."""
    for at in read.lines("used", "what"):
        what, coins = read.whole("used", "what", at), read.coins("used", "cost", at)
        number, tab, row = read.whole("used", "source", at), "Used", FIRST_ROW + at
        if what == used.FROM_SETS:
            day = read.value("unpacked", "date", place_of(number))
            parts, memo = _both(chart.CANDLES, chart.MATERIALS, coins), "materials of sets packed as they left"
            yield Event(day, f"PACKED {_month(day)}", "Candles", memo, parts, tab, row)
            continue
        log = {used.FROM_POURS: "pours", used.FROM_MOVES: "moves", used.FROM_COUNTS: "counts"}[what]
        source = read.row(log, number)
        day = _on(source)
        if what == used.FROM_POURS:
            parts = _both(chart.WORK, chart.MATERIALS, coins)
            yield Event(day, f"USED {_month(day)}", "Batches", "materials used by batches", parts, tab, row)
        else:
            yield _gone(source, coins, chart.MATERIALS, tab, row)


def _gone(source: Typed, coins: int, stock: str, tab: str, row: int) -> Event:
    """What left stock otherwise: taken out, or missing when counted."""
    day, counted = _on(source), source.tab == "Counts"
    kind = "missing when counted" if counted else str(source.typed["kind"])
    account = chart.COST_SOLD if counted else TAKEN_OUT.get(kind, chart.COST_SOLD)
    name = f"{'COUNTED' if counted else 'TAKEN OUT'} {_month(day)}"
    of = "materials" if stock == chart.MATERIALS else "candles"
    return Event(day, f"{name} {of}", source.tab, f"{of}: {kind}", _both(account, stock, coins), tab, row)


def _batches(read: Reading) -> Iterator[Event]:
    """Work and overhead that batches are charged with, and the candles that came of them."""
    for line in read.rows("pours"):
        making, value = read.coins("pours", "making", line.at), read.coins("pours", "value", line.at)
        if line.typed["kind"]:
            parts = _both(chart.CANDLES, chart.CAPITAL, value)
            yield _opening(read, "candles there at the start, at cost", parts, line.tab, line.row)
            continue
        day = _on(line)
        month = _month(day)
        for key, account, memo in (
            ("paid", chart.PAID_HELP, "paid work charged to batches"),
            ("overhead", chart.OVERHEAD, "production overhead charged to batches"),
        ):
            parts = _both(chart.WORK, account, read.coins("pours", key, line.at))
            yield Event(day, f"CHARGED {month}", "Batches", memo, parts, line.tab, line.row)
        parts = (Part(chart.CANDLES, value), Part(chart.WORK, -making), Part(chart.COST_SOLD, making - value))
        memo = "batches made" if value == making else "a batch of which none was good"
        yield Event(day, f"MADE {month}", "Batches", memo, parts, line.tab, line.row)


def _sold(read: Reading, accounts: dict[str, chart.Account], by_cash: bool) -> Iterator[Event]:
    """What each line of Sales and Market lines brought; what is held for buyers is no sale yet."""
    for at in read.lines("sold", "what"):
        net, fee, comes_in = (read.coins("sold", key, at) for key in ("net", "fee", "comes_in"))
        day, place, row = read.value("sold", "date", at), str(read.value("sold", "place", at)), FIRST_ROW + at
        market = read.whole("sold", "what", at) == FROM_MARKETS
        typed: Row = {}
        paid, purse = read.value("sold", "paid", at), chart.CASH_AND_BANK
        if not market:
            typed = read.row("sales", read.whole("sold", "source", at)).typed
            purse = _purse(accounts, typed["paid_into"])
        held = typed.get("kind") in HELD_FOR_BUYERS
        code = tax_code(read, at, str(typed.get("area") or ""))
        sale = (Part(chart.SALES, -net, code), Part(chart.TAX_DUE, net - comes_in - fee, code))
        parts = (Part(chart.FEES, fee), *((Part(chart.HELD, -comes_in - fee),) if held else sale))
        memo = str(typed["kind"]) if held else "sales at a market" if market else "sales"
        reference = f"MARKET {day} {place}" if market else f"SALES {_month(day)} {place}"
        if market or by_cash:
            if paid:
                reference = reference if market else f"SALES PAID {_month(paid)} {place}"
                yield Event(paid, reference, place, memo, (Part(purse, comes_in), *parts), "Sold", row)
            continue
        yield Event(day, reference, place, memo, (Part(chart.OWED_TO_YOU, comes_in), *parts), "Sold", row)
        if paid:
            payout = typed["payout"]
            name = f"PAYOUT {place} {payout}" if payout else f"PAID IN {_month(paid)} {place} {purse}"
            parts = _both(purse, chart.OWED_TO_YOU, comes_in)
            yield Event(paid, name, place, _words("paid", payout), parts, "Sold", row)


def tax_code(read: Reading, at: int, area: str) -> str:
    """The rate that a line of Sold was taxed by, with its area, and who pays the tax over where that is the place."""
    rate = read.number("sold", "rate", at)
    tax, comes_in, net, fee = (read.coins("sold", key, at) for key in ("tax", "comes_in", "net", "fee"))
    by = "by place" if tax and comes_in + fee == net else ""
    return " ".join(filter(None, (f"{round(rate * 100, 6):g}%", area, by)))


def _candles_out(read: Reading) -> Iterator[Event]:
    """What candles cost that were sold, given away, taken out, or missing when counted."""
    for at in read.lines("out", "what"):
        what, number = read.whole("out", "what", at), read.whole("out", "source", at)
        coins, row = read.coins("out", "cost", at), FIRST_ROW + at
        if what == candles_out.FROM_SOLD:
            yield _cost_of_sold(read, at, place_of(number), coins, row)
        else:
            log = "moves" if what == candles_out.FROM_MOVES else "counts"
            yield _gone(read.row(log, number), coins, chart.CANDLES, "Candles out", row)


def _cost_of_sold(read: Reading, at: int, sold: int, coins: int, row: int) -> Event:
    """The lines of what was sold come first; below them those of what was given away and broke at the stall."""
    day, size, away = (read.value("sold", key, sold) for key in ("date", "size", "away"))
    if read.whole("out", "nth", at) < size * (away != 0):
        name, memo, account = f"COST {_month(day)}", "candles sold, at cost", chart.COST_SOLD
    else:
        line = read.row("market_lines", read.whole("sold", "source", sold))
        account = chart.SAMPLES if line.typed["given"] and not line.typed["broken"] else chart.COST_SOLD
        name, memo = f"GIVEN OR BROKEN {_month(day)}", "candles given away or broken at a market"
    return Event(day, name, "Candles", memo, _both(account, chart.CANDLES, coins), "Candles out", row)


def _market_days(read: Reading, accounts: dict[str, chart.Account]) -> Iterator[Event]:
    """What a day at a market cost, paid on the day."""
    for line in read.rows("market_days"):
        day, place = _on(line), str(line.typed["place"])
        for key, account in (("fee", chart.STANDS), ("travel", chart.TRAVEL)):
            parts = _both(account, chart.CASH_AND_BANK, read.typed_coins(line, key))
            memo = f"market of {day}: {'stand' if key == 'fee' else 'travel'}"
            yield Event(day, f"MARKET COSTS {day} {place}", place, memo, parts, line.tab, line.row)


def _expenses(read: Reading, accounts: dict[str, chart.Account], by_cash: bool) -> Iterator[Event]:
    for line in read.rows("expenses"):
        row, amount, tax = line.typed, read.typed_coins(line, "amount"), read.typed_coins(line, "tax")
        who, paid = str(row["payee"]), line.day("paid_on")
        bill = f"{who} {row['document'] or f'row {line.row}'}"
        costs = (Part(CATEGORIES[str(row["category"])], amount - tax), *_claimed(tax))
        memo = _words(row["category"], row["document"])
        if not by_cash:
            parts = (*costs, Part(chart.OWED, -amount))
            yield Event(_on(line), f"EXPENSE {row['date']} {bill}", who, memo, parts, line.tab, line.row)
        if paid:
            purse = _purse(accounts, row["paid_from"])
            against = costs if by_cash else (Part(chart.OWED, amount),)
            reference = f"EXPENSE PAID {paid} {bill} {purse}"
            memo = _words(memo, row["paid_from"])
            yield Event(paid, reference, who, memo, (*against, Part(purse, -amount)), line.tab, line.row)


def _other_entries(read: Reading, accounts: dict[str, chart.Account], by_cash: bool) -> Iterator[Event]:
    for line in read.rows("entries"):
        row, kind = line.typed, line.typed["kind"]
        if by_cash and kind == OWED_AT_THE_END:
            continue
        names = [str(row[key]) for key in ("debit", "credit")]
        unknown = [name for name in names if name.casefold() not in accounts]
        if unknown:
            raise ValueError(
                f"{read.name}, tab {line.tab}, row {line.row}: {unknown[0]} is on neither Chart nor Accounts"
            )
        debit, credit = (accounts[name.casefold()].name for name in names)
        stock = [name for name in (debit, credit) if name in chart.STOCKS and not by_cash]
        if stock:
            raise ValueError(
                f"{read.name}, tab {line.tab}, row {line.row}: {stock[0]} is worked out from what was bought, made and "
                "sold; book what is written down on an asset account of your own"
            )
        parts, text = _both(debit, credit, read.typed_coins(line, "amount")), str(row["text"])
        if kind == OPENING_BALANCE:
            yield _opening(read, text, parts, line.tab, line.row)
        else:
            reference = f"ENTRY {row['date']} row {line.row}"
            yield Event(_on(line), reference, str(kind).capitalize(), text, parts, line.tab, line.row)
