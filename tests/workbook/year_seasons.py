"""Small random years to try the records with: a seed gives the same year every time.

Every number is one that a spreadsheet holds well: amounts end after three decimals at the most, also when waste is put
on (what is weighed out of wax, oil and dye is a round number, what the recipe says of it is that less the waste), and
minutes make whole hundredths of an hour. In a recipe the oil is a whole percentage of the wax, a second wax a quarter
or a half of it, a second oil half of the oil and the dye half a percent of the wax, so that a recipe can be typed as
shares.
"""

import random
from collections.abc import Iterable, Sequence
from dataclasses import replace
from datetime import date, timedelta
from fractions import Fraction

from year_cards import received_by
from year_records import Change, Count, Line, Material, Move, Pour, Purchase, Rates, Recipe, Year
from year_reference import worked_out

FIRST = date(2026, 1, 1)
SUPPLIERS = ("Hill Wax Works", "Fern Oils", "Bright Glass")
ALWAYS = ("Soy wax", "Cedar oil", "Cotton wick", "Clear jar")
ALSO = ("Coconut wax", "Fig oil", "Red dye", "Gift box", "Wooden wick", "Amber jar")
KINDS = {"wax": "wax", "oil": "fragrance oil", "dye": "dye", "wick": "wick", "jar": "vessel", "box": "packaging"}
PACKS = {  # sizes, unit, cents a pack at the least
    "wax": ((5, 10, 20), "kg", 3000),
    "fragrance oil": ((Fraction(1, 2), 1), "kg", 2500),
    "dye": ((50, 100), "g", 600),
    "wick": ((50, 100), "each", 900),
    "vessel": ((24, 48), "each", 2400),
    "packaging": ((20, 25), "each", 1500),
}


def year(seed: int, method: str = "fifo") -> Year:
    """A year of 4 to 8 materials, 3 to 5 products, 15 to 40 purchases and as many pours."""
    dice = random.Random(seed)  # noqa: S311  nobody is to be kept from guessing it
    waste = dice.choice([Fraction(0), *(Fraction(percent, 100) for percent in (2, 3, 4, 5, 10))])
    materials = _materials(dice)
    recipes = _recipes(dice, materials, waste)
    made = Year(
        method=method,
        as_of=_a_day(dice, 200, 364),
        waste=waste,
        season_hours=Fraction(dice.choice([100, 200, 250, 400, 500])),
        materials=materials,
        recipes=recipes,
        rates=_rates(dice),
        purchases=_purchases(dice, materials),
        pours=_pours(dice, recipes),
    )
    made = replace(made, changes=_changes(dice, made))
    made = replace(made, moves=_moves(dice, made))
    return replace(made, counts=counts(dice, made))


def _a_day(dice: random.Random, earliest: int = 1, latest: int = 364) -> date:
    """A day of the season, one of few: much happens on the same day."""
    return FIRST + timedelta(days=dice.randint(earliest, latest) // 7 * 7)


def _days_from(dice: random.Random, count: int) -> list[date]:
    """Days from which something else holds, in any order."""
    return [FIRST + timedelta(days=7 * week) for week in dice.sample(range(8, 42), count)]


def _now_and_then(dice: random.Random, share: float) -> bool:
    return dice.random() < share


def typed_late(dice: random.Random, rows: Iterable[list], share: float) -> list:
    """Groups of rows by day, but for some that stand at the end."""
    in_time, late = [], []
    for group in rows:
        (late if _now_and_then(dice, share) else in_time).extend(group)
    return in_time + late


# What is set up


def _materials(dice: random.Random) -> tuple[Material, ...]:
    names = [*ALWAYS, *dice.sample(ALSO, dice.randint(0, 4))]
    return tuple(_material(dice, name, KINDS[name.split()[-1]]) for name in names)


def _material(dice: random.Random, name: str, kind: str) -> Material:
    sizes, unit, _ = PACKS[kind]
    cure = dice.choice([3, 7, 14, 21]) if kind == "wax" else 0
    point = Fraction(dice.choice([20, 200, 1000])) if _now_and_then(dice, 0.5) else None
    return Material(name, kind, Fraction(dice.choice(sizes)), unit, cure, point)


def _recipes(dice: random.Random, materials: Sequence[Material], waste: Fraction) -> tuple[Recipe, ...]:
    found = []
    candles = ["Cedar candle", "Fig candle", "Plain candle", "Winter candle"][: dice.randint(3, 4)]
    for product in candles:
        found.append(_candle(dice, product, materials, waste, None))
        found += [_candle(dice, product, materials, waste, day) for day in _days_from(dice, dice.choice([0, 0, 1, 2]))]
    if len(candles) == 3 or _now_and_then(dice, 0.5):
        box = [Line(material.name, Fraction(1)) for material in materials if material.kind == "packaging"]
        lines = (*(Line(candle, Fraction(dice.randint(1, 2))) for candle in dice.sample(candles, 2)), *box)
        found.append(Recipe("Gift set", lines, Fraction(3), Fraction(dice.choice([0, 6])), _share(dice)))
    dice.shuffle(found)
    return tuple(found)


def _candle(
    dice: random.Random, product: str, materials: Sequence[Material], waste: Fraction, since: date | None
) -> Recipe:
    of_kind = {kind: [each.name for each in materials if each.kind == kind] for kind in KINDS.values()}
    wax = Fraction(20 * dice.randint(4, 12))  # weighed out, as the oil and the dye
    oil = wax * dice.choice([5, 6, 8, 10]) / 100
    weighed = [
        *_parted(dice, of_kind["wax"], wax, [Fraction(1, 4), Fraction(1, 2)]),
        *_parted(dice, of_kind["fragrance oil"], oil, [Fraction(1, 2)]),
        *[(name, wax / 200) for name in of_kind["dye"] if _now_and_then(dice, 0.5)],
    ]
    counted = [
        (dice.choice(of_kind["wick"]), Fraction(dice.choice([1, 1, 2]))),
        (dice.choice(of_kind["vessel"]), Fraction(1)),
        *[(name, Fraction(1)) for name in of_kind["packaging"] if _now_and_then(dice, 0.5)],
    ]
    lines = [Line(name, amount * (1 - waste)) for name, amount in weighed] + [Line(*each) for each in counted]
    minutes, setup = 3 * dice.randint(1, 5), 3 * dice.randint(0, 15)
    return Recipe(product, tuple(lines), Fraction(minutes), Fraction(setup), _share(dice), since)


def _parted(
    dice: random.Random, names: Sequence[str], amount: Fraction, parts: Sequence[Fraction]
) -> list[tuple[str, Fraction]]:
    """An amount of one material, or of two."""
    first, *others = dice.sample(names, len(names))
    if not others or _now_and_then(dice, 0.5):
        return [(first, amount)]
    second = amount * dice.choice(parts)
    return [(first, amount - second), (others[0], second)]


def _share(dice: random.Random) -> Fraction:
    return dice.choice([Fraction(0), Fraction(1, 4), Fraction(1, 2), Fraction(1)])


def _rates(dice: random.Random) -> tuple[Rates, ...]:
    days = [None, *_days_from(dice, dice.randint(0, 2))]
    return tuple(Rates(25 * dice.randint(48, 90), 1000 * dice.randint(20, 300), day) for day in days)


# What is bought


def _purchases(dice: random.Random, materials: Sequence[Material]) -> tuple[Purchase, ...]:
    never = dice.choice(materials).name if _now_and_then(dice, 0.1) else ""
    bought = [material for material in materials if material.name != never]
    plenty = dice.choice([1, 2, 4])  # little: much runs short
    rows: list[Purchase] = []
    for _ in range(dice.randint(1, 4)) if _now_and_then(dice, 0.7) else ():
        rows.append(_opening(dice, dice.choice(bought)))
    wanted = dice.randint(max(15, len(rows) + 11), 40)
    days = sorted(_a_day(dice, 1, 330) for _ in range(wanted))
    documents: list[list[Purchase]] = []
    for number, day in enumerate(days, start=1001):
        room = wanted - len(rows) - sum(map(len, documents))
        if room:
            lines = [dice.choice(bought) for _ in range(min(room, dice.randint(1, 4)))]
            documents.append(_document(dice, f"R-{number}", [_bought(dice, day, each, plenty) for each in lines]))
    return tuple(rows + typed_late(dice, documents, 0.15))


def _opening(dice: random.Random, material: Material) -> Purchase:
    amount = Fraction(dice.randint(1, 400), 10) if material.pack_unit != "each" else Fraction(dice.randint(1, 60))
    return Purchase(
        FIRST,
        material.name,
        "opening",
        amount=amount * (100 if material.kind == "wax" else 1),
        value=dice.randint(0, 9000),
        lot=dice.choice(["", f"old {dice.randint(1, 9)}"]),
        use_by=dice.choice([None, FIRST + timedelta(days=dice.randint(30, 700))]),
    )


def _document(dice: random.Random, number: str, lines: Sequence[Purchase]) -> list[Purchase]:
    """A delivery: its freight stands on any one of its lines."""
    supplier, charged = dice.choice(SUPPLIERS), dice.randrange(len(lines))
    charges = dice.randint(1, 4000) if _now_and_then(dice, 0.7) else 0
    number = "" if len(lines) == 1 and _now_and_then(dice, 0.3) else number
    return [
        replace(line, document=number, supplier=supplier, charges=charges if place == charged else 0)
        for place, line in enumerate(lines)
    ]


def _bought(dice: random.Random, day: date, material: Material, plenty: int) -> Purchase:
    _, _, least = PACKS[material.kind]
    packs = Fraction(dice.choice([1, 1, 2, 3]) * plenty)
    if material.pack_unit == "kg" and _now_and_then(dice, 0.1):
        packs = Fraction(1, 2)
    price = Fraction(least + dice.randint(0, least))
    return Purchase(
        day,
        material.name,
        packs=packs,
        price=price,
        discount=dice.randint(1, int(price * packs) // 5) if _now_and_then(dice, 0.25) else 0,
        tax=dice.randint(1, 500) if _now_and_then(dice, 0.2) else 0,
        lot=dice.choice(["", f"{material.name[:2].upper()}{dice.randint(1, 12)}"]),
        use_by=day + timedelta(days=dice.randint(60, 800)) if _now_and_then(dice, 0.3) else None,
        opened_on=day + timedelta(days=dice.randint(0, 40)) if _now_and_then(dice, 0.1) else None,
    )


# What is made


def _pours(dice: random.Random, recipes: Sequence[Recipe]) -> tuple[Pour, ...]:
    products = sorted({recipe.product for recipe in recipes})
    candles = [product for product in products if product != "Gift set"]
    wanted = dice.randint(15, 40)
    rows = []
    for _ in range(dice.randint(0, 3)):
        poured_on = FIRST - timedelta(days=dice.randint(1, 40))
        good, value = dice.randint(1, 20), dice.randint(100, 9000)
        rows.append(Pour(FIRST, "", dice.choice(candles), good, "opening", poured_on=poured_on, value=value))
    days = sorted(_a_day(dice) for _ in range(wanted - len(rows)))
    rows += typed_late(dice, [[_pour(dice, day, dice.choice(products))] for day in days], 0.2)
    return tuple(replace(pour, batch=f"B-{number:03}") for number, pour in enumerate(rows, start=1))


def _pour(dice: random.Random, day: date, product: str) -> Pour:
    if product == "Gift set":
        return Pour(day, "", product, dice.randint(1, 4))
    good = 0 if _now_and_then(dice, 0.05) else dice.randint(4, 24)
    seconds, scrapped, tests = (dice.choice([0, 0, 0, 1, 2]) for _ in range(3))
    scrapped = 12 if not good else scrapped
    return Pour(
        day,
        "",
        product,
        good,
        planned=good + scrapped + dice.randint(0, 3) if _now_and_then(dice, 0.3) else None,
        seconds=seconds,
        scrapped=scrapped,
        tests=tests,
        hours=Fraction(dice.randint(2, 20), 4) if _now_and_then(dice, 0.3) else None,
    )


def _changes(dice: random.Random, made: Year) -> tuple[Change, ...]:
    """What was otherwise in some lines: another of its kind, another amount, a lot that was noted."""
    kinds = {material.name: material.kind for material in made.materials}
    lines = worked_out(made).used
    in_batch = {
        batch: {line.thing for line in lines if line.batch == batch} for batch in {line.batch for line in lines}
    }
    found = []
    for line in dice.sample(lines, min(len(lines), dice.randint(4, 14))):
        if line.thing not in kinds:
            continue
        others = [name for name, kind in kinds.items() if kind == kinds[line.thing]]
        others = [name for name in others if name not in in_batch[line.batch]]
        instead = dice.choice(others) if others and _now_and_then(dice, 0.5) else ""
        lots = [row.lot for row in made.purchases if row.material == (instead or line.thing) and row.lot]
        lot = dice.choice(lots) if lots and _now_and_then(dice, 0.5) else ""
        weighed = _otherwise(dice, line.amount) if _now_and_then(dice, 0.5) or not (instead or lot) else None
        found.append(Change(line.batch, line.planned, instead, weighed, lot))
    return tuple(found)


def _otherwise(dice: random.Random, amount: Fraction) -> Fraction:
    """An amount near another: grams to the tenth, pieces whole."""
    return max(
        Fraction(0), amount + (dice.randint(-5, 9) if amount.denominator == 1 else Fraction(dice.randint(-50, 90), 10))
    )


# What left, and what was counted


def _moves(dice: random.Random, made: Year) -> tuple[Move, ...]:
    weights = {material.name for material in made.materials if material.pack_unit != "each"}
    products = sorted({recipe.product for recipe in made.recipes})
    found = []
    for _ in range(dice.randint(3, 10)):
        day = _a_day(dice)
        if _now_and_then(dice, 0.5):
            product = dice.choice(products)
            batches = [pour.batch for pour in made.pours if pour.product == product and pour.good]
            kind, amount = dice.choice(["test", "sample", "gift", "broken", "own use"]), dice.randint(1, 3)
            amount = 300 if _now_and_then(dice, 0.05) else amount
            found.append(Move(day, kind, product, Fraction(amount), dice.choice(["", *batches])))
        else:
            thing = dice.choice(made.materials).name
            amount = Fraction(dice.randint(1, 40000), 100) if thing in weights else Fraction(dice.randint(1, 12))
            lots = [row.lot for row in made.purchases if row.material == thing and row.lot]
            found.append(
                Move(day, dice.choice(["test", "broken", "sent back"]), thing, amount, dice.choice(["", *lots]))
            )
    return tuple(found)


def counts(dice: random.Random, made: Year) -> tuple[Count, ...]:
    """Counts near what should be there; now and then more, but never more than ever came."""
    cards = worked_out(made).cards
    found = []
    for _ in range(dice.randint(2, 6)):
        card, day = cards[dice.choice(sorted(cards))], _a_day(dice)
        came = received_by(card.receipts, day)
        gone = sum((line.issue.amount for line in card.lines if line.issue.day <= day), Fraction(0))
        off = dice.choice([0, -1, -2, -3, 2])
        counted = max(Fraction(0), min(came, came - gone + off))
        found.append(Count(day, card.thing, counted, dice.choice(["Mo", "Lee"]), _now_and_then(dice, 0.5)))
    return tuple(found)
