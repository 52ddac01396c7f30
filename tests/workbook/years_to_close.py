"""Random years with sales in them that can be closed, and the seasons after them."""

import datetime
import random
from collections import defaultdict
from dataclasses import replace
from types import SimpleNamespace

import books
from year_seasons import year
from year_workbook import season_of, type_in, without_sets

from candlecalc.season.season import Season, Tables
from candlecalc.workbook import book
from candlecalc.workbook.next_season.carried import Closed, season_after
from candlecalc.workbook.next_season.closing import FIRST_PLACE, stopped_by
from candlecalc.workbook.reading.spots import TODAYS
from candlecalc.workbook.reports.report import Calculated

FIRST, LAST, NEXT = datetime.date(2026, 1, 1), datetime.date(2026, 12, 31), datetime.date(2027, 1, 1)
A_YEAR = datetime.timedelta(days=365)
STALL, SHOP, OTHER_SHOP, WEB = "Stall", "Corner shop", "Bridge shop", "Web shop"
PLACES = [
    {"place": STALL, "kind": "own stall", "collector": "nobody", "rules": "gb", "per_order": 1.0, "margin": 0.2},
    {"place": SHOP, "kind": "consignment shop", "fee": 0.3, "fee_basis": "gross", "collector": "nobody",
     "rules": "gb", "per_order": 1.0, "margin": 0.2},
    {"place": OTHER_SHOP, "kind": "consignment shop", "fee": 0.4, "fee_basis": "net", "collector": "nobody",
     "rules": "gb", "per_order": 1.0, "margin": 0.2},
    {"place": WEB, "kind": "marketplace", "fee": 0.065, "fee_basis": "gross", "fee_item": 0.2, "collector": "place",
     "rules": "gb", "per_order": 2.0, "margin": 0.2, "stated": "before tax"},
]  # fmt: skip


def closable(seed, method, *, counts=True):
    """A year that can be closed: of everything there is enough, and every count is taken over."""
    made = without_sets(year(seed, method))
    season = season_of(made if counts else replace(made, counts=()))
    season.settings |= {"first_day": FIRST, "last_day": LAST, "as_of": None}
    type_in(season, "places", PLACES)
    season.tables["counts"]["kept"] = "yes"
    _sell(season, random.Random(seed))  # noqa: S311  nobody is to be kept from guessing it
    _fill_up(season)
    return season


def calculated(season):
    return Calculated(season, book.drafted(season, books.DATED, rows_of=books.few(season)))


def after(closed_book, first_day=NEXT):
    """The season after a calculated one, and what became of each table."""
    assert [str(each) for each in stopped_by(closed_book, TODAYS, first_day)] == []
    return season_after(Closed(closed_book, first_day), "the next", first_day + A_YEAR)


def copy(season):
    tables = {key: [row for _, row in season.rows(key)] for key in season.tables}
    return Season(dict(season.settings), Tables(tables))


def _sell(season, dice):
    """Sales of every kind: some paid, some not; at shops no more comes back or is sold than went there."""
    products = sorted({row["product"] for _, row in season.rows("recipes")})
    days = sorted(FIRST + datetime.timedelta(days=dice.randint(20, 340)) for _ in range(30))
    batches = defaultdict(list)
    for _, row in season.rows("pours"):
        batches[row["product"]].append(row["batch"])
    there, lines, cards = defaultdict(int), [], {}
    for number, day in enumerate(days, start=1):
        product, pieces = dice.choice(products), dice.randint(1, 6)
        price = dice.randint(800, 2600) / 100
        line = {"date": day, "product": product, "pieces": float(pieces), "price": price, "order": f"A-{number // 2}"}
        line |= {"paid_on": day} if dice.random() < 0.6 else {}
        kind = dice.choice(["", "", "", "out", "out", "sold there", "back", "refund", "returned", "deposit", "gift"])
        if kind in ("out", "sold there", "back"):
            at = (dice.choice([SHOP, OTHER_SHOP]), product)
            if kind == "out":
                batch = dice.choice(batches[product]) if batches[product] and dice.random() < 0.4 else None
                lines.append(line | {"place": at[0], "kind": kind, "batch": batch, "price": None, "paid_on": None})
                there[at] += pieces
            elif there[at]:
                taken = min(pieces, there[at])
                there[at] -= taken
                lines.append(line | {"place": at[0], "kind": kind, "pieces": float(taken)})
        elif kind in ("deposit", "gift"):
            _hold(dice, lines, cards, line, kind, number)
        else:
            became = {"became": dice.choice(["back in stock", "thrown away"])} if kind == "returned" else {}
            payout = {"payout": f"P-{number // 5}"} if not kind and dice.random() < 0.3 else {}
            lines.append(line | {"place": dice.choice([STALL, WEB]), "kind": kind or None} | became | payout)
    type_in(season, "sales", lines)
    market = days[len(days) // 2]
    type_in(season, "market_days", [{"date": market, "place": STALL, "fee": 25.0}])
    taken = {"date": market, "along": 5.0, "back": 2.0, "broken": 1.0, "price": 11.5}
    along = [taken | {"product": product} for product in products[:2]]
    type_in(season, "market_lines", along)
    late = {"date": FIRST, "kind": "sale", "who": "a shop of last year", "sum": 41.3, "document": "L-1"}
    type_in(season, "still_open", [late, late | {"document": "L-2", "paid_on": market}])


def _hold(dice, lines, cards, line, kind, number):
    """Money held for a buyer, or some of it used: no more than was held."""
    sold, spent = ("deposit", "deposit used") if kind == "deposit" else ("gift card sold", "gift card spent")
    bare = line | {"product": None, "pieces": None, "place": WEB}
    open_ones = [card for card in cards if card[0] == kind and cards[card] > 0]
    if open_ones and dice.random() < 0.6:
        card = dice.choice(open_ones)
        cents = dice.randint(1, cards[card])
        cards[card] -= cents
        lines.append(bare | {"kind": spent, "price": cents / 100, "order": card[1], "place": STALL})
    else:
        card = (kind, f"G-{number}")
        cards[card] = dice.randint(500, 5000)
        lines.append(bare | {"kind": sold, "price": cards[card] / 100, "order": card[1]})


def _fill_up(season):
    """What there was too little of on some day was there from the beginning; what was counted too high is not counted.

    A count that is taken over holds from then on, whatever there was before.
    """
    found = calculated(season)
    lacks = {"materials": _lacking(found, "materials", "card"), "recipes": _lacking(found, "recipes", "out_card")}
    counts = [row for _, row in season.rows("counts")]
    kept = [
        row for row in counts if row["material"] not in lacks["materials"] and row["product"] not in lacks["recipes"]
    ]
    if kept != counts:
        type_in(season, "counts", kept)
        _fill_up(season)
        return
    opening = {"date": FIRST, "kind": "opening"}
    bought, poured = ([row for _, row in season.rows(key)] for key in ("purchases", "pours"))
    for place, row in season.rows("materials"):
        name, size = row["material"], found.value("materials", "size", place)
        if name in lacks["materials"] or not found.value("stock", "bought", place):
            packs = round((10 + lacks["materials"].get(name, 0)) / size, 3) + 0.001
            bought.append({"material": name, "packs": packs, "price": 48.17} | opening)
    taken_there = defaultdict(float)
    for _, row in season.rows("sales"):
        taken_there[row["product"]] += (row["kind"] == "out") * (row["pieces"] or 0)
    for number, name in enumerate(things(found, "candles"), start=900):
        lack = lacks["recipes"].get(name, 0) + taken_there[name]
        if lack:
            poured.append({"batch": float(number), "product": name, "good": 4 + lack, "cost": 31.07} | opening)
    type_in(season, "purchases", bought)
    type_in(season, "pours", poured)


def _lacking(found, named, went):
    """{name: how much more had gone than had come} at its most, of each thing that was short on some day."""
    names = dict(found.season.rows(named))
    key, short = {"materials": "material", "recipes": "product"}[named], {}
    for row in range(found.room(went)):
        thing, came, gone = (found.value(went, column, row) for column in ("thing", "came", "gone"))
        if isinstance(thing, (int, float)) and gone > came:
            name = names[int(thing) - FIRST_PLACE][key]
            short[name] = max(short.get(name, 0), gone - came)
    return short


# --- what tabs show -----------------------------------------------------------------------------


def things(found, tab):
    """{name: (left, value)} of each material, or each product with a row of its own."""
    named, key = ("materials", "material") if tab == "stock" else ("recipes", "product")
    rows = {}
    for place, row in found.season.rows(named):
        rows.setdefault(row[key], tuple(found.value(tab, each, place) for each in ("left", "value")))
    return rows


def lots(found):
    """{(material, lot): what is left of it} of every lot that is not used up."""
    left = defaultdict(float)
    for row in range(found.room("lots")):
        amount = found.value("lots", "left", row)
        if isinstance(amount, (int, float)) and amount > 1e-6:
            line = dict(found.season.rows("purchases"))[int(found.value("lots", "line", row)) - FIRST_PLACE]
            left[line["material"], line["lot"]] += amount
    return dict(left)


def batches(found):
    """{batch: its columns} of every row of the Batch log."""
    return {
        row["batch"]: SimpleNamespace(**row, ready_on=found.value("pours", "ready_on", place))
        for place, row in found.season.rows("pours")
    }
