"""What else an entry could hold: other values that its field and the rest of its season take."""

import datetime

from candlecalc.season.tables import tables_of
from candlecalc.season.tables.taken import WEIGHED

PAIRS = {
    "extras": ("product", "material"),
    "sets": ("set", "product"),
    "prices": ("product", "place"),
}  # that stand in a table once


def others(field, value, season):
    """A number that is much more and one that is much less; every other choice or name."""
    if field.term:
        return list(_numbers(field.term, value, season.measures))
    if field.date:
        return [value + datetime.timedelta(days=30)]
    if field.choices or field.names_from:
        return [other for other in field.choices or season.names(field.names_from, field.kind) if other != value]
    return [] if field.name else [f"{value} too"]


def _numbers(term, value, measures):
    low, high = measures.limits(term)
    for factors, least in (((5, 1.3), 1), ((1 / 5, 0.7), -1)):
        wanted = [(value or 0.05) * factor for factor in factors]
        if term.whole:
            wanted = [*(float(round(each)) for each in wanted), value + least]
        yield from [each for each in wanted if low < each <= high and each != value][:1]


def fits(shop, entry, other):
    """Whether the rest of the season takes another choice or name there."""
    row = shop.tables[entry.table][entry.row] if entry.table in shop.tables else {}
    test = FITS.get((entry.table, entry.key), _stands_once)
    return test(shop, entry.table, row, {**row, entry.key: other})


def _kind(shop, table, row, new):
    """An unused material may be another, of those that are bought in the same way."""
    same_way = (row["kind"] in WEIGHED) == (new["kind"] in WEIGHED) and (new["kind"] != "wax" or row["density"])
    named = {
        key: [field.key for field in each.fields if field.names_from == "materials"]
        for key, each in tables_of(False).items()
    }
    return same_way and not any(shop.lines(key, column, row["material"]) for key in named for column in named[key])


def _stands_once(shop, table, row, new):
    """A candle stands in a set once, and is sold in a place once."""
    pair = PAIRS.get(table, ())
    rest = [each for each in shop.tables.get(table, ()) if each is not row]
    return not pair or all(any(each[key] != new[key] for key in pair) for each in rest)


FITS = {
    ("materials", "kind"): _kind,
    ("materials", "pack_unit"): lambda shop, table, row, new: "each" not in (row["pack_unit"], new["pack_unit"]),
    ("vessels", "use"): lambda shop, table, row, new: bool(row["bought_as"]),
    ("recipes", "kind"): lambda shop, table, row, new: new["kind"] == "set" and not shop.sets_with(row["product"]),
}
