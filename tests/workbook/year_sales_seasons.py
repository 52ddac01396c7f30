"""Sales for the small random years: of every kind, at places that keep and state things differently.

A gift set of the year holds its candles until it leaves (`Year.sets`). In some years none is packed, in some as many as
are sold or more, in others fewer; it is sold before and after it was packed.
"""

import random
from collections.abc import Callable, Sequence
from dataclasses import replace
from datetime import timedelta
from fractions import Fraction

import year_seasons
from year_records import Count, Line, Material, Purchase, Recipe, Set, Year
from year_selling import Day as Date
from year_selling import MarketDay, MarketLine, Place, Price, Sale, Selling, TaxRate

AREAS = ("", "", "North", "South", "Isles")  # of these only some have a rate of their own
SET = "Gift set"
BOX = Material("Gift box", "packaging", Fraction(20), "each")
LABEL = Material("Set label", "label", Fraction(50), "each")
RIBBON = Material("Ribbon", "other", Fraction(10), "each")


def year(seed: int, method: str = "fifo") -> Year:
    """A year of year_seasons with 40 to 70 lines of Sales, market days, and counts of what is left then."""
    dice = random.Random(f"sales {seed}")  # noqa: S311  nobody is to be kept from guessing it
    made = held_in_sets(replace(year_seasons.year(seed, method), counts=()))
    made = _with_parts(random.Random(f"sets {seed}"), made) if made.sets else made  # noqa: S311
    made = replace(made, selling=_selling(dice, made))
    return replace(made, counts=_counts(dice, made))


def _counts(dice: random.Random, made: Year) -> tuple[Count, ...]:
    """Counts, but none taken over of sets: what they held would be loose candles again, and the tab asks about it."""
    sets = {each.name for each in made.sets}
    return tuple(
        replace(count, is_move=False) if count.thing in sets else count for count in year_seasons.counts(dice, made)
    )


def held_in_sets(made: Year) -> Year:
    """The same with each set made of its box alone; opening candles cure from the day of their row."""
    products = {recipe.product for recipe in made.recipes}
    sets = {recipe.product: tuple(line for line in recipe.lines if line.thing in products) for recipe in made.recipes}
    boxes = tuple(
        replace(recipe, lines=tuple(line for line in recipe.lines if line.thing not in products))
        for recipe in made.recipes
    )
    materials = {line.thing for recipe in boxes for line in recipe.lines} | {each.name for each in made.materials}
    return replace(
        made,
        recipes=boxes,
        sets=tuple(Set(name, lines) for name, lines in sets.items() if lines),
        pours=tuple(replace(each, poured_on=each.day if each.kind == "opening" else None) for each in made.pours),
        changes=tuple(change for change in made.changes if change.material in materials and change.weighed != 0),
    )


# What sets are made of, and how many are packed


def _with_parts(dice: random.Random, made: Year) -> Year:
    """The same with a box for the set, and now and then a label or a ribbon."""
    parts = [BOX, *(part for part in (LABEL, RIBBON) if _now_and_then(dice, 0.5))]
    there = {each.name for each in made.materials}
    made = replace(
        made,
        materials=made.materials + tuple(part for part in parts if part.name not in there),
        recipes=tuple(
            each
            for recipe in made.recipes
            for each in (_rows_of_the_set(dice, recipe, parts) if recipe.product == SET else [recipe])
        ),
        purchases=made.purchases + tuple(line for part in parts for line in _bought(dice, part)),
    )
    return _packed(dice, made)


def _rows_of_the_set(dice: random.Random, recipe: Recipe, parts: Sequence[Material]) -> list[Recipe]:
    """Its recipe; now and then it has its label from a day on, or only before."""
    each = {RIBBON.name: dice.choice([Fraction(1), Fraction(2), Fraction(2, 5), Fraction(3, 4)])}
    lines = tuple(Line(part.name, each.get(part.name, Fraction(1))) for part in parts)
    if LABEL not in parts or _now_and_then(dice, 0.4):
        return [replace(recipe, lines=lines)]
    before, after = dice.sample([lines, tuple(line for line in lines if line.thing != LABEL.name)], 2)
    return [replace(recipe, lines=before), replace(recipe, lines=after, since=_a_day(dice))]


def _bought(dice: random.Random, part: Material) -> list[Purchase]:
    """Some of a part; now and then none, so that it has no cost."""
    times = 0 if _now_and_then(dice, 0.1) else dice.randint(1, 3)
    return [
        Purchase(_a_day(dice), part.name, packs=Fraction(dice.randint(1, 2)), price=Fraction(dice.randint(400, 2000)))
        for _ in range(times)
    ]


def _packed(dice: random.Random, made: Year) -> Year:
    """None of the sets packed, many, or some."""
    how = dice.choice(["none", "some", "some", "many"])
    pours = [
        replace(pour, good=12 * pour.good) if how == "many" and pour.product == SET else pour
        for pour in made.pours
        if how != "none" or pour.product != SET
    ]
    batches = {pour.batch for pour in pours}
    changes = tuple(change for change in made.changes if change.batch in batches)
    return replace(made, pours=tuple(pours), changes=changes)


def _selling(dice: random.Random, made: Year) -> Selling:
    products = sorted({recipe.product for recipe in made.recipes})
    selling = Selling(
        places=_places(dice),
        tax_rate=_percent(dice, "0 6 20 7.25"),
        stated=dice.choice(["with tax", "before tax"]),
        tax_rates=_tax_rates(dice),
    )
    selling = replace(selling, prices=_prices(dice, products, selling.places))
    days = tuple(
        MarketDay(_a_day(dice), "Stall", dice.choice([None, 0, dice.randint(1, 20_000)]))
        for _ in range(dice.randint(3, 5))
    )
    days = tuple({each.day: each for each in days}.values())
    if _now_and_then(dice, 0.7):
        days += (MarketDay(days[0].day, "Fair"),)  # two on one day
    return replace(
        selling,
        sales=_sales(dice, selling, products),
        market_days=days,
        market_lines=_market_lines(dice, selling, days, products),
    )


def _a_day(dice: random.Random) -> Date:
    return year_seasons.FIRST + timedelta(days=7 * dice.randint(1, 51))


def _now_and_then(dice: random.Random, share: float) -> bool:
    return dice.random() < share


def _percent(dice: random.Random, choices: str) -> Fraction:
    return Fraction(dice.choice(choices.split())) / 100


# Places, prices and tax


def _places(dice: random.Random) -> tuple[Place, ...]:
    stated = ["", "with tax", "before tax"]
    first = [
        Place(
            "Stall",
            "own stall",
            "maker",
            _percent(dice, "0 2.7 1.75"),
            "gross",
            stated=dice.choice(stated),
            cards_alone=True,
        ),
        Place("Fair", "own stall", dice.choice(["maker", "nobody"]), stated="with tax"),
        Place(
            *("Web shop", "own web shop", "maker", _percent(dice, "2.9 3.1"), "gross"),
            fee_order=dice.choice([0, 28, 30]),
            postage=dice.choice([0, 940]),
            packing=dice.choice([0, 115]),
            discount=_percent(dice, "0 5"),
            stated=dice.choice(stated),
        ),
        Place(
            *("Craft marketplace", "marketplace", "place", _percent(dice, "6.5 8.5"), dice.choice(["net", "gross"])),
            fee_item=dice.choice([0, 16, 20]),
            fee_order=dice.choice([0, 24]),
            least_fee=dice.choice([0, 150, 200, 400]),
            stated=dice.choice(stated),
        ),
        Place("Village store", "wholesale shop", "nobody", discount=_percent(dice, "40 50 33.5")),
        Place(
            *("Gallery", "consignment shop", dice.choice(["place", "maker"]), _percent(dice, "35 40")),
            least_fee=dice.choice([0, 300]),
            stated=dice.choice(stated),
        ),
    ]
    changed = [
        replace(
            each,
            fee=each.fee + Fraction(1, 100),
            fee_item=each.fee_item + 5,
            discount=_percent(dice, "0 10"),
            collector=dice.choice([each.collector, "maker", "place", "nobody"]),
            stated=dice.choice(stated),
            since=_a_day(dice),
        )
        for each in dice.sample(first, 3)
    ]
    return tuple(dice.sample(first + changed, len(first) + len(changed)))


def _prices(dice: random.Random, products: Sequence[str], places: Sequence[Place]) -> tuple[Price, ...]:
    names = sorted({each.name for each in places})
    asked = [(product, place) for product in products for place in names if _now_and_then(dice, 0.85)]
    found = [Price(product, place, 25 * dice.randint(20, 120)) for product, place in asked]
    found += [replace(each, price=each.price + 95, since=_a_day(dice)) for each in dice.sample(found, len(found) // 4)]
    if _now_and_then(dice, 0.5):
        found[0] = replace(found[0], since=_a_day(dice))  # none before that
    found = list({(each.product, each.place, each.since): each for each in found}.values())
    return tuple(dice.sample(found, len(found)))


def _tax_rates(dice: random.Random) -> tuple[TaxRate, ...]:
    found = [
        TaxRate(_a_day(dice), _percent(dice, "0 4 6 8.875 19"), area)
        for area in ("", "", "North", "North", "South")
        if _now_and_then(dice, 0.7)
    ]
    found = list({(each.since, each.area): each for each in found}.values())
    return tuple(dice.sample(found, len(found)))


# Sales


def _sales(dice: random.Random, selling: Selling, products: Sequence[str]) -> tuple[Sale, ...]:
    days = sorted(_a_day(dice) for _ in range(dice.randint(22, 34)))
    groups = [
        [_with_a_price(dice, selling, line) for line in _kind(dice)(dice, day, number, products)]
        for number, day in enumerate(days, start=1)
    ]
    return tuple(year_seasons.typed_late(dice, groups, 0.15))


def _kind(dice: random.Random) -> Callable[..., list[Sale]]:
    kinds = (_order, _one_sale, _refund, _returned, _consigned, _held)
    return dice.choices(kinds, [9, 5, 3, 3, 6, 3])[0]


def _pieces(dice: random.Random) -> int:
    return dice.choice([1, 1, 1, 2, 3, 6])


def _paid(dice: random.Random, day: Date) -> Date | None:
    return day + timedelta(days=dice.randint(0, 30)) if _now_and_then(dice, 0.7) else None


def _one_sale(dice: random.Random, day: Date, _number: int, products: Sequence[str]) -> list[Sale]:
    place = dice.choice(["Stall", "Fair", "Web shop", "Craft marketplace", "Village store", "Gallery"])
    line = Sale(day, place, dice.choice(products), _pieces(dice), paid_on=_paid(dice, day))
    return [_otherwise(dice, line)]


def _order(dice: random.Random, day: Date, number: int, products: Sequence[str]) -> list[Sale]:
    """An order of several lines, some with a fee that the place wrote down, some given back later."""
    place, paid, area = dice.choice(["Web shop", "Craft marketplace"]), _paid(dice, day), dice.choice(AREAS)
    order = f"order {number // 2}"  # now and then of two days, and of two places
    lines = [
        _otherwise(dice, Sale(day, place, dice.choice(products), _pieces(dice), order=order, paid_on=paid, area=area))
        for _ in range(dice.randint(1, 4))
    ]
    lines[0] = replace(lines[0], postage=dice.choice([0, 495, 700]))
    if _now_and_then(dice, 0.25):
        back = replace(dice.choice(lines), kind="refund", postage=0, discount=0, fee=dice.choice([None, None, 40]))
        lines.append(replace(back, pieces=1))
    return lines


def _otherwise(dice: random.Random, line: Sale) -> Sale:
    """A line with what is now and then typed in it."""
    often = {"discount": 125, "tax_rate": _percent(dice, "0 5 6.25"), "fee": dice.randint(0, 300)}
    typed = {key: value for key, value in often.items() if _now_and_then(dice, 0.12)}
    typed |= {"price": 5 * dice.randint(60, 500)} if _now_and_then(dice, 0.15) else {}
    return replace(line, area=line.area or dice.choice(AREAS), **typed)


def _refund(dice: random.Random, day: Date, _number: int, products: Sequence[str]) -> list[Sale]:
    line = Sale(day, dice.choice(["Web shop", "Craft marketplace", "Stall"]), kind="refund", paid_on=_paid(dice, day))
    if _now_and_then(dice, 0.5):
        return [replace(line, price=dice.choice([350, 700, 1234]), area=dice.choice(AREAS))]
    return [_otherwise(dice, replace(line, product=dice.choice(products), pieces=dice.randint(1, 2)))]


def _returned(dice: random.Random, day: Date, _number: int, products: Sequence[str]) -> list[Sale]:
    became = dice.choice(["back in stock", "thrown away"])
    place = dice.choice(["Web shop", "Craft marketplace", "Village store"])
    line = Sale(day, place, dice.choice(products), dice.randint(1, 2), "returned", became=became)
    return [replace(_otherwise(dice, line), paid_on=_paid(dice, day))]


def _consigned(dice: random.Random, day: Date, number: int, products: Sequence[str]) -> list[Sale]:
    """What went out to a shop, and some of it that was sold there or came back."""
    product, out = dice.choice(products), dice.randint(2, 8)
    sold, back = dice.randint(0, out), dice.choice([0, 0, 1])
    later = day + timedelta(days=7)
    lines = [Sale(day, "Gallery", product, out, "out")]
    if sold:
        statement = dice.choice(["", f"statement {number}"])
        there = Sale(later, "Gallery", product, sold, "sold there", order=statement, paid_on=_paid(dice, later))
        lines.append(_otherwise(dice, there))
    if back and sold < out:
        lines.append(Sale(later, "Gallery", product, back, "back"))
    return lines


def _held(dice: random.Random, day: Date, number: int, _products: Sequence[str]) -> list[Sale]:
    came, went = dice.choice([("deposit", "deposit used"), ("gift card sold", "gift card spent")])
    amount, place = 500 * dice.randint(2, 20), dice.choice(["Web shop", "Stall"])
    lines = [Sale(day, place, kind=came, price=amount, order=f"held {number}", paid_on=_paid(dice, day))]
    if _now_and_then(dice, 0.6):
        later = day + timedelta(days=14)
        lines.append(Sale(later, place, kind=went, price=amount // 2, paid_on=_paid(dice, later)))
    return lines


def _with_a_price(dice: random.Random, selling: Selling, line: Sale) -> Sale:
    """A line of a product that has no price there on its day has one typed."""
    held = [each for each in selling.prices if (each.product, each.place) == (line.product, line.place)]
    in_force = [each for each in held if each.since is None or each.since <= line.day]
    if line.price is not None or in_force or line.kind in ("out", "back"):
        return line
    return replace(line, price=5 * dice.randint(60, 500))


# Markets


def _market_lines(
    dice: random.Random, selling: Selling, days: Sequence[MarketDay], products: Sequence[str]
) -> tuple[MarketLine, ...]:
    """Counted as it was sold, or along and back; in the second market of a day the place is typed."""
    seen, found = set(), []
    for day in days:
        second = day.day in seen
        seen.add(day.day)
        for product in dice.sample(products, dice.randint(2, len(products))):
            line = MarketLine(day.day, product, **_counted(dice))
            price = 25 * dice.randint(20, 120) if _now_and_then(dice, 0.2) else None
            price = _with_a_price(dice, selling, Sale(day.day, day.place, product, price=price)).price
            found.append(replace(line, price=price, place=day.place if second or _now_and_then(dice, 0.2) else ""))
    return tuple(dice.sample(found, len(found)))


def _counted(dice: random.Random) -> dict[str, int | None]:
    given, broken = dice.choice([None, None, 1]), dice.choice([None, None, None, 2])
    if _now_and_then(dice, 0.4):
        return {"sold": dice.randint(0, 5), "given": given, "broken": broken}
    sold, back = dice.randint(0, 5), dice.choice([None, 0, 1, 4])
    along = sold + (back or 0) + (given or 0) + (broken or 0)
    return {"along": along, "back": back, "given": given, "broken": broken}
