"""The wick to test next on Wick summary is the one that `next_wick` names, for its reasons, over every branch."""

import random

import books
import burn_logs
import pytest
from engine import Held

import candlecalc

WICKS = [("wick 3", "cotton", 2.0), ("wick 12", "cotton", 1.0), ("wick 21", "flat", 1.0), ("wick 30", "cotton", 3.0),
         ("wick 39", "cotton", 3.0), ("wick 48", "cotton", 5.0)]  # fmt: skip
RATES = {"too cool": 2.0, "within targets": 4.0, "too hot": 6.0}
PICKED, NAMED, WHY = (("Wick summary", cell) for cell in ("A3", "A26", "B26"))
PRODUCTS = 36
AGAINST_ALL_SENSE = {  # by product: places by size, and how they burnt
    5: [(0, "within targets"), (2, "too cool")],
    17: [(3, "too cool"), (1, "too hot")],
    29: [(1, "too cool"), (1, "too hot")],
}


def season():
    """Products that differ in their load alone, each with tests of its own recipe: some of one wick, some of many."""
    chance, made = random.Random(5), burn_logs.metric()  # noqa: S311
    recipe = next(row for _, row in made.rows("recipes") if row["kind"] == "made")
    materials = [row for _, row in made.rows("materials")]
    cotton = next(row for row in materials if row["kind"] == "wick")
    materials += [cotton | {"material": name} for name, *_ in WICKS if name != cotton["material"]]
    recipes, tests, burns = [], [], []
    for number in range(PRODUCTS):
        load, product = round(0.03 + number * 0.001, 3), f"Product {number}"
        wick = "wick 21" if number % 12 == 11 else "wick 57" if number == 0 else cotton["material"]
        recipes.append(recipe | {"product": product, "load": load, "wick": wick, "wicks": 1.0})
        shared = {key: recipe[key] for key in ("vessel", "wax")} | {"date": burn_logs.FIRST, "load": load}
        for name, finding in _findings(chance, number):
            test = f"T{len(tests)}"
            tests.append(shared | {"test": test, "wick": name, "wicks": None, "other_burning": 0.0, "lit_again": "no",
                                   "vessel_after": "whole", "afterglow": 2.0 if finding else None})  # fmt: skip
            burns.append({"test": test, "date": burn_logs.FIRST, "hours": 4.0, "before": 400.0, "flame": 30.0,
                          "after": 400.0 - 4 * RATES[finding or "within targets"]})  # fmt: skip
    materials.append(cotton | {"material": "wick 57"})
    wicks = [dict(zip(("wick", "kind", "size"), wick, strict=True)) for wick in WICKS]
    wicks.append({"wick": "wick 57", "kind": "braid", "size": 1.0})
    aims = [{"vessel": recipe["vessel"], "rate_low": 3.0, "rate_high": 5.0}]
    return burn_logs.put(made, materials=materials, recipes=recipes, sets=[], prices=[], wicks=wicks,
                         burn_targets=aims, burn_tests=tests, burn_cycles=burns)  # fmt: skip


def _findings(chance, number):
    """(wick, how it burnt) of the tests of a product: by size as one would expect, or against all sense."""
    cotton = [name for name, kind, _ in sorted(WICKS, key=lambda wick: wick[2]) if kind == "cotton"]
    if number % 6 == 0:
        return []
    if number % 6 == 1:  # one wick that suits, burnt once or more
        return [(chance.choice(cotton), "within targets")] * chance.randrange(1, 5)
    if number % 6 == 2:  # all too cool, or all too hot, up to one
        finding = chance.choice(["too cool", "too hot"])
        here = chance.randrange(1, 6)
        return [(name, finding) for name in (cotton[:here] if finding == "too cool" else cotton[-here:])]
    found = [(chance.choice(cotton), chance.choice([*RATES, None])) for _ in range(chance.randrange(1, 6))]
    if number % 6 == 3:  # in order of size
        order = sorted((finding or "within targets" for _, finding in found), key=list(RATES).index)
        return list(zip(sorted((name for name, _ in found), key=cotton.index), order, strict=True))
    if number % 6 == 4:  # cool below, hot above, neighbours or far apart
        low, high = sorted(chance.sample(range(len(cotton)), 2))
        return [(cotton[low], "too cool"), (cotton[high], "too hot")]
    if number in AGAINST_ALL_SENSE:
        return [(cotton[place], finding) for place, finding in AGAINST_ALL_SENSE[number]]
    return found


def advised(made, product):
    """What the function says: it is given each wick that is there, and each test of the recipe."""
    recipe = next(row for _, row in made.rows("recipes") if row["product"] == product)
    listed = [(row["wick"], row["kind"], row["size"], None, None, None, None) for _, row in made.rows("wicks")]
    of_wick = {name: (kind, size) for name, kind, size, *_ in listed}
    tested = [
        (test["wick"], *of_wick[test["wick"]], test["wax"], test["load"], test["vessel"], _finding(made, test))
        for _, test in made.rows("burn_tests")
    ]
    kind = of_wick[recipe["wick"]][0]
    return candlecalc.next_wick(
        recipe["wax"], recipe["load"], recipe["vessel"], kind, *zip(*listed, *tested, strict=True)
    )


def _finding(made, test):
    if test["afterglow"] is None:
        return None
    rate = burn_logs.of_test(made, test)["rate"]
    return next(finding for finding, at in RATES.items() if at == pytest.approx(rate))


@pytest.fixture(scope="module")
def made(tmp_path_factory):
    return books.Book(season(), tmp_path_factory.mktemp("next wick") / "wicks.xlsx")


@pytest.fixture(scope="module")
def products(made):
    return {row["product"]: advised(made.season, row["product"]) for _, row in made.rows("recipes")}


def test_the_products_ask_for_every_branch(products):
    parts = ("none tested", "contradict each other", " and wick", "of other sizes contradict", "burn another",
             "see the verdict on its recipe", "lies beyond", "lies between", "was too cool", "was too hot")  # fmt: skip
    reasons = [told.reasons for told in products.values()]
    assert [part for part in parts if not any(part in told for told in reasons)] == []
    assert any(told.startswith("wick") and told.endswith("was too cool") for told in reasons)
    assert any("was too cool and" in told and "lies" not in told for told in reasons)


def test_the_tab_names_the_wick_that_the_function_names(made, products):
    held, found = Held(made.path), []
    for product, told in products.items():
        cells = held.cells(held.changed({PICKED: product}), (NAMED, WHY))
        if (cells[NAMED], cells[WHY]) != (told.wick or "", told.reasons):
            found.append((product, cells, told))
    assert found == []


def test_so_does_the_office(made, products, office):
    every = office.edited_each(made.path, [{PICKED: product} for product in products], tabs=("Wick summary",))
    found = [
        (product, values.get(NAMED, ""), values[WHY], told)
        for (product, told), values in zip(products.items(), every, strict=True)
        if (values.get(NAMED, ""), values[WHY]) != (told.wick or "", told.reasons)
    ]
    assert found == []
