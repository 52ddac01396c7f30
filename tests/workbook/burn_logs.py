"""Seasons with test burns, and what Python's functions say of them: the reference for the tabs."""

import datetime
import random

import books

import candlecalc
from candlecalc.calc.burn_signs import MEANING

FIRST = datetime.date(2027, 9, 1)
STOPS = [sign for sign, (direction, _) in MEANING.items() if direction == "stop"]
HARMLESS = [sign for sign in MEANING if sign not in STOPS]


def put(season, **tables):
    for key, given in tables.items():
        season.tables[key] = list(given)
    return season


def metric():
    """A season in grams, millimetres and degrees Celsius, with vessels whose pool is known."""
    season = books.full(products=6, prices=3).with_records()
    vessels = [row | {"diameter": 70.0} for _, row in season.rows("vessels")][:5]
    used = {value for key in ("recipes", "vessels") for _, row in season.rows(key) for value in row.values()}
    materials = [row for _, row in season.rows("materials") if row["material"] in used]
    return put(season, vessels=vessels, materials=materials)


def burnt(seed, tests=40):
    """A season whose tests come to every verdict: some looked at closely, some not, some of one recipe."""
    chance, season = random.Random(seed), metric()  # noqa: S311
    products = [row for _, row in season.rows("recipes") if row["kind"] == "made"]
    names = {row["vessel"] for _, row in season.rows("vessels")}
    made = [row for row in products if row["vessel"] in names]
    targets, typed, burns = _targets(chance, sorted(names)), [], []
    for number in range(tests):
        recipe = chance.choice(made)
        careful = chance.random() < 0.75
        looked = _always(chance) if careful else _at_times(chance)
        test = {"test": f"T{number}", "date": FIRST, "product": chance.choice([recipe["product"]] * 4 + [None]),
                "load": chance.choice([recipe["load"]] * 4 + [0.05]),
                **{key: recipe[key] for key in ("vessel", "wax", "wick", "wicks")},
                "other_burning": looked(0.0, 0.0, 0.0, 3.0), "afterglow": looked(0.0, 4.5, 12.0),
                "vessel_after": looked("whole"), "lit_again": looked("no"),
                "fill": chance.choice([None, 190.0])}  # fmt: skip
        if chance.random() < 0.25:
            test |= chance.choice([{"other_burning": 12.5}, {"afterglow": 31.0}, {"vessel_after": "cracked"},
                                   {"vessel_after": "leaking", "afterglow": 60.0}, {"lit_again": "yes"}])  # fmt: skip
        typed.append(test)
        burns += _burns(chance, test["test"], looked)
    chance.shuffle(burns)
    return put(season, burn_targets=targets, burn_tests=typed, burn_cycles=burns)


def _always(chance):
    return lambda *values: chance.choice(values)


def _at_times(chance):
    return lambda *values: chance.choice([None, *values])


def _targets(chance, vessels):
    """Aims of every kind: both ends, one, none; one vessel is without a line."""
    targets = [
        {
            "vessel": vessel,
            "rate_low": chance.choice([None, 3.01, 3.507]),  # no rate of these logs comes to them
            "rate_high": chance.choice([None, 5.003, 6.008]),
            "flame_low": chance.choice([None, 15.0]),
            "flame_high": chance.choice([None, 45.0]),
            "pool_low": chance.choice([None, 50.0]),
            "hot_high": chance.choice([None, 60.0]),
            "tallest": chance.choice([None, 50.0]),
            "depth": chance.choice([None, 10.0]),
        }
        for vessel in vessels[1:]
    ]
    targets[0] |= dict.fromkeys(("rate_low", "rate_high", "flame_low", "flame_high", "pool_low", "hot_high"))
    return targets


def _burns(chance, test, looked):
    """Up to five burns of a test, none of some tests."""
    weight, found = round(chance.uniform(300, 500), 1), []
    rate = chance.uniform(2.5, 6.5)
    for day in range(chance.randrange(6)):
        hours = chance.choice([2.0, 3.5, 4.0])
        after = round(weight - hours * rate * chance.uniform(0.9, 1.1), 1)
        sign = chance.choice([*[None] * 14, *HARMLESS, chance.choice(STOPS)])
        found.append({"test": test, "date": FIRST + datetime.timedelta(days=day), "hours": hours, "before": weight,
                      "after": after, "pool": looked(45.0, 60.0, 70.0), "flame": looked(18.0, 30.5, 44.0, 48.0),
                      "hot": looked(48.0, 55.0, 62.0), "seen": sign,
                      "seen_too": chance.choice([None] * 9 + [chance.choice(list(MEANING))])})  # fmt: skip
        weight = round(after - chance.choice([0.0, 0.0, 0.1]), 1)
    if found and chance.random() < 0.1:
        found[0]["flame"] = 82.5
    if chance.random() < 0.15:
        found = [burn | {"pool": None, "hot": None} for burn in found]
    return found


def most(values):
    known = [value for value in values if value is not None]
    return max(known) if known else None


def of_test(season, test):
    """What the functions say of a test: its log, verdict and signs; None where nothing was burnt."""
    measures = season.measures
    burns = [row for _, row in season.rows("burn_cycles") if row["test"] == test["test"]]
    burns.sort(key=lambda row: row["date"])
    if not burns:
        return None
    hours, weights = [0.0], [burns[0]["before"]]
    for burn in burns:
        hours.append(hours[-1] + burn["hours"])
        weights.append(weights[-1] - (burn["before"] - burn["after"]))
    aims = next((row for _, row in season.rows("burn_targets") if row["vessel"] == test["vessel"]), {})
    rate = candlecalc.burn_rate(hours, weights)
    flame, pool, hot = (most(burn[key] for burn in burns) for key in ("flame", "pool", "hot"))
    seen = [burn[key] for burn in burns for key in ("seen", "seen_too")]
    verdict = candlecalc.burn_verdict(
        flame=None if flame is None else flame * measures.length_mm,
        other_burning=test["other_burning"],
        vessel=test["vessel_after"],
        afterglow=test["afterglow"],
        lit_again=test["lit_again"],
        targets=["burn rate", "flame height", "melt pool", "vessel temperature"],
        measured=[rate, flame, pool, hot],
        lowest=[aims.get("rate_low"), aims.get("flame_low"), aims.get("pool_low"), None],
        highest=[aims.get("rate_high"), aims.get("flame_high"), None, aims.get("hot_high")],
        **({"tallest": aims["tallest"] * measures.length_mm} if aims.get("tallest") else {}),
        seen=seen,
    )
    signs = candlecalc.wick_signs([sign for sign in seen if sign]) if any(seen) else []
    return {"hours": hours, "weights": weights, "rate": rate, "verdict": verdict, "aims": aims, "signs": signs}


def recipe_of(test):
    return (
        test["product"],
        test["vessel"],
        test["wax"],
        round(test["load"], 6),
        test["wick"],
        max(1, test["wicks"] or 0),
    )
