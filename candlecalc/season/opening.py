"""Opening stock: what a costing workbook has on hand, as the first lines of the year's purchases."""

from dataclasses import replace

import candlecalc.calc as calc
from candlecalc.quantities.rounding import round_half_away
from candlecalc.season.season import Row, Season, Tables, problems
from candlecalc.season.tables.set_up import MATERIALS
from candlecalc.season.tables.stock import OPENING, PURCHASES


def on_hand_as_purchases(season: Season, coin_digits: int) -> tuple[Season, list[Row]]:
    """The season with each amount on hand as a line of Purchases, and the materials so taken over, as they stood.

    An amount in a row that is to mend stays where it is: what it is worth cannot be told.
    """
    to_mend = {problem.row for problem in problems(season) if problem.tab == MATERIALS.title}
    rows = dict(season.tables.rows(MATERIALS.key))
    taken = {place: row for place, row in rows.items() if row["on_hand"] and place not in to_mend}
    day = season.settings["first_day"]
    lines = [dict.fromkeys(PURCHASES.keys) | {"date": day} | _line(row, coin_digits) for row in taken.values()]
    tables = {key: [row for _, row in season.tables.rows(key)] for key in season.tables}
    tables[MATERIALS.key] = [row | ({"on_hand": None} if place in taken else {}) for place, row in rows.items()]
    tables[PURCHASES.key] = [*lines, *tables[PURCHASES.key]]
    return replace(season, tables=Tables(tables)), [*taken.values()]


def _line(material: Row, coin_digits: int) -> Row:
    amount, size, price, shipping, tax = (
        float(str(material[key] or 0)) for key in ("on_hand", "pack_size", "pack_price", "shipping", "tax")
    )
    worth = calc.material_cost(amount, calc.unit_cost(price, size, shipping, tax))
    return {
        "material": material["material"],
        "packs": amount / size,
        "price": round_half_away(worth, coin_digits),
        "kind": OPENING,
    }
