"""Write down what the library stockpyl answers, for the published checks to compare ours with. Run by hand:

    python -m venv FOLDER && FOLDER/bin/pip install ".[reference]" && FOLDER/bin/python tests/make_answers.py

An environment of its own: the library brings a start-up hook that would slow every Python process of the tests.
The same version of it writes the same file. What is asked is drawn, with the ends of each range among it.
"""

import json
import math
import random
from importlib.metadata import version
from pathlib import Path

ANSWERS = Path(__file__).parent / "published" / "stockpyl.json"
COMMAND = "python tests/make_answers.py"
EACH = 100
AMOUNT = (1, 10_000)


def main():
    chance = random.Random("answers")  # noqa: S311
    told = {
        "library": f"stockpyl {version('stockpyl')}",
        "made": f"by {COMMAND}: {EACH} draws for each function; the ends of each range are drawn often",
        **{each.__name__: each(chance) for each in (order_quantity, price_breaks, normal_season, buyers, lot_sizes)},
    }
    parts = [f'"{name}": {_lines(value)}' for name, value in told.items()]
    ANSWERS.write_text("{" + ",\n".join(parts) + "}\n", encoding="utf-8")


def answers(name):
    """What was asked and answered, a dictionary a case."""
    return json.loads(ANSWERS.read_text(encoding="utf-8"))[name]


def _lines(value):
    """A text as it is; a list with a line for each case."""
    return json.dumps(value) if isinstance(value, str) else "[\n" + ",\n".join(map(json.dumps, value)) + "]"


def order_quantity(chance):
    from stockpyl.eoq import economic_order_quantity

    def case():
        demand, ordering, holding = drawn(chance, *AMOUNT), drawn(chance, *AMOUNT), drawn(chance, 0.01, 100)
        quantity, cost = economic_order_quantity(fixed_cost=ordering, holding_cost=holding, demand_rate=demand)
        return {"demand": demand, "ordering": ordering, "holding": holding, "quantity": quantity, "cost": cost}

    return [case() for _ in range(EACH)]


def price_breaks(chance):
    from stockpyl.eoq import economic_order_quantity_with_all_units_discounts

    def case():
        demand, ordering, share = drawn(chance, *AMOUNT), drawn(chance, *AMOUNT), drawn(chance, 0.01, 1)
        many = chance.randint(1, 5)
        breaks = [0, *sorted(chance.sample(range(1, 5001), many))]
        prices = sorted(chance.sample(range(10, 901), many + 1), reverse=True)
        _, _, cost = economic_order_quantity_with_all_units_discounts(ordering, share, demand, breaks, prices)
        asked = {"demand": demand, "ordering": ordering, "share": share, "breaks": breaks, "prices": prices}
        return {**asked, "cost": cost}

    return [case() for _ in range(EACH)]


def normal_season(chance):
    """One season: `stock` and `profit` at the best, `wasted` at another stock over a demand that is known."""
    from stockpyl.newsvendor import newsvendor_normal_cost, newsvendor_normal_explicit

    def case():
        margin, loss, leftover = drawn(chance, 0.1, 100), drawn(chance, 0.1, 100), drawn(chance, 0, 50)
        demand, spread, other = drawn(chance, 0.1, 1000), drawn(chance, 0.1, 300), drawn(chance, 0, 2000)
        price, cost = leftover + loss + margin, leftover + loss
        stock, profit = newsvendor_normal_explicit(price, cost, leftover, demand, spread)
        wasted = newsvendor_normal_cost(other, loss, margin, demand, spread)
        asked = {"margin": margin, "loss": loss, "leftover": leftover, "demand": demand, "spread": spread}
        return {**asked, "stock": float(stock), "profit": float(profit), "other": other, "wasted": float(wasted)}

    return [case() for _ in range(EACH)]


def buyers(chance):
    """Single buyers, where one too many costs 1 and one too few 4: what each stock costs, from none to many."""
    from stockpyl.newsvendor import newsvendor_poisson_cost

    return [
        {"demand": demand, "costs": [float(newsvendor_poisson_cost(stock, 1, 4, demand)) for stock in range(most)]}
        for demand, most in ((0.5, 5), (6, 20), (50, 100))
    ]


def lot_sizes(chance):
    from stockpyl.wagner_whitin import wagner_whitin

    def case():
        sales = [chance.randint(1, 500) for _ in range(chance.randint(1, 52))]
        setup, keeping = chance.randint(1, 2000), chance.randint(1, 20) / 10
        _, cost, _, _ = wagner_whitin(len(sales), keeping, setup, sales)
        return {"sales": sales, "setup": setup, "keeping": keeping, "cost": float(cost)}

    return [case() for _ in range(EACH)]


def drawn(chance, low, high):
    """A number of a range, often an end, and as often small as large; as a maker types it, in four digits."""
    near = chance.random()
    if near < 0.1:
        return low
    if near > 0.9:
        return high
    number = (
        chance.uniform(low, high) if near < 0.5 else math.exp(chance.uniform(math.log(low or 0.001), math.log(high)))
    )
    return min(high, max(low, float(f"{number:.4g}")))


if __name__ == "__main__":
    main()
