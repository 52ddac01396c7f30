"""A season's records as the reference has them: the other way round than year_workbook.season_of."""

import datetime
from fractions import Fraction

from year_records import Change, Count, Line, Material, Move, Pour, Purchase, Rates, Recipe, Set, Year
from year_selling import MarketDay, MarketLine, Place, Price, Sale, Selling, TaxRate

# Exact by definition: 1 lb is 453.59237 g, and 16 oz.
GRAMS = {"g": 1, "kg": 1000, "oz": Fraction(45359237, 1600000), "lb": Fraction(45359237, 100000)}
DATED = ("purchases", "pours", "moves", "counts", "sales", "market_days")


def exact(number):
    """A number as it was typed."""
    return None if number is None else Fraction(f"{number:.15g}")


def coins(amount):
    return round(exact(amount or 0) * 100)


def year_of(season):
    """The year; what goes into a piece is left for `Typed.as_poured`. Stock is first in first out.

    A set that is packed goes on holding its candles: it is made of its box and label.
    """
    logs = {key: [row for _, row in season.rows(key)] for key in season.tables}
    settings = season.settings
    hours = exact(settings["season_hours"])
    packs = {row["material"]: _pack(row, settings["weight_unit"]) for row in logs["materials"]}
    return Year(
        method="fifo",
        as_of=max(row["date"] for key in DATED for row in logs[key]),
        waste=exact(settings["waste"]),
        season_hours=hours,
        # A pack is in the maker's unit already.
        materials=tuple(
            Material(
                row["material"],
                row["kind"],
                packs[row["material"]],
                "g",
                int(row["cure_days"] or 0),
                _point(row, packs),
            )
            for row in logs["materials"]
        ),
        recipes=tuple(
            Recipe(row["product"], (), exact(row["minutes"]), exact(row["setup"]), exact(row["paid_share"] or 0))
            for row in logs["recipes"]
        ),
        rates=(
            Rates(coins(settings["paid_rate"]), coins(settings["production_overhead"])),
            *(
                Rates(coins(row["paid_rate"]), round(exact(row["overhead"]) * hours * 100), row["date"])
                for row in logs["rates"]
            ),
        ),
        purchases=tuple(_purchase(row, packs) for row in logs["purchases"]),
        pours=tuple(_pour(row) for row in logs["pours"]),
        changes=tuple(
            Change(_number(row["batch"]), row["material"], row["other"] or "", exact(row["amount"]), row["lot"] or "")
            for row in logs["instead"]
        ),
        moves=tuple(
            Move(row["date"], row["kind"], row["material"] or row["product"], exact(row["amount"]), row["lot"] or "")
            for row in logs["moves"]
        ),
        counts=tuple(
            Count(
                row["date"],
                row["material"] or row["product"],
                exact(row["counted"]),
                row["by"] or "",
                row["kept"] == "yes",
            )
            for row in logs["counts"]
        ),
        sets=tuple(
            Set(name, tuple(Line(row["product"], exact(row["count"])) for row in logs["sets"] if row["set"] == name))
            for name in dict.fromkeys(row["set"] for row in logs["sets"])
        ),
        selling=selling_of(season),
    )


def selling_of(season):
    """What a season's tables have of places, prices and sales."""
    logs = {key: [row for _, row in season.rows(key)] for key in season.tables}
    return Selling(
        places=tuple(map(_place, logs["places"])),
        prices=tuple(
            Price(row["product"], row["place"], coins(row["price"]), row["holds_from"]) for row in logs["prices"]
        ),
        tax_rate=exact(season.settings["tax_rate"] or 0),
        stated=season.settings["shelf_prices"],
        tax_rates=tuple(TaxRate(row["date"], exact(row["rate"]), row["area"] or "") for row in logs["tax_rates"]),
        sales=tuple(map(_sale, logs["sales"])),
        market_days=tuple(map(_market_day, logs["market_days"])),
        market_lines=tuple(map(_market_line, logs["market_lines"])),
    )


def _place(row):
    return Place(
        row["place"],
        row["kind"],
        row["collector"],
        exact(row["fee"] or 0),
        row["fee_basis"] or "net",
        *(coins(row[key]) for key in ("fee_item", "fee_order", "least_fee")),
        row["cards_alone"] == "yes",
        *(coins(row[key]) for key in ("postage_paid", "packing_order")),
        exact(row["discount"] or 0),
        row["stated"] or "",
        row["holds_from"],
    )


def _sale(row):
    return Sale(
        day=row["date"],
        place=row["place"],
        product=row["product"] or "",
        pieces=_whole(row["pieces"]),
        kind=row["kind"] or "",
        price=None if row["price"] is None else coins(row["price"]),
        discount=coins(row["discount"]),
        order=row["order"] or "",
        postage=coins(row["postage"]),
        fee=None if row["fee"] is None else coins(row["fee"]),
        tax_rate=exact(row["tax_rate"]),
        area=row["area"] or "",
        batch="" if row["batch"] is None else _number(row["batch"]),
        became=row["became"] or "",
        paid_on=row["paid_on"],
    )


def _market_day(row):
    return MarketDay(row["date"], row["place"], None if row["card"] is None else coins(row["card"]))


def _market_line(row):
    counted = (_whole(row[key]) for key in ("along", "back", "sold", "given", "broken"))
    price = None if row["price"] is None else coins(row["price"])
    return MarketLine(row["date"], row["product"], *counted, price, row["place"] or "")


def _whole(number):
    return None if number is None else int(number)


def _pack(material, unit):
    size = exact(material["pack_size"])
    return size if material["pack_unit"] == "each" else size * GRAMS[material["pack_unit"]] / GRAMS[unit]


def _number(batch):
    return f"{batch:.0f}"


def _point(row, packs):
    """The amount below which a material is ordered again, which is typed in the unit of its pack."""
    point = row["reorder_at"]
    return None if point is None else packs[row["material"]] * exact(point) / exact(row["pack_size"])


def _purchase(row, packs):
    opening = row["kind"] == "opening"
    return Purchase(
        day=row["date"],
        material=row["material"],
        kind="opening" if opening else "bought",
        packs=Fraction(0) if opening else exact(row["packs"]),
        price=Fraction(0) if opening else exact(row["price"]) * 100,
        discount=coins(row["discount"]),
        charges=coins(row["charges"]),
        tax=coins(row["tax"]),
        document=row["document"] or "",
        supplier=row["supplier"] or "",
        lot=row["lot"] or "",
        use_by=row["expiry"],
        opened_on=row["opened"],
        amount=exact(row["packs"]) * packs[row["material"]] if opening else Fraction(0),
        value=coins(row["price"]) if opening else 0,
    )


def _pour(row):
    opening = row["kind"] == "opening"
    day: datetime.date = row["date"]
    return Pour(
        day=day,
        batch=_number(row["batch"]),
        product=row["product"],
        good=int(row["good"]),
        kind="opening" if opening else "poured",
        planned=None if row["planned"] is None else int(row["planned"]),
        seconds=int(row["seconds"] or 0),
        scrapped=int(row["scrapped"] or 0),
        tests=int(row["tests"] or 0),
        hours=exact(row["hours"]),
        poured_on=day if opening else None,
        value=coins(row["cost"]) if opening else 0,
    )
