"""Each number that is typed moves the cost of exactly what uses it."""

import datetime

import books
import engine
import pytest
from wrong_wires import fail_unless_moved

from candlecalc.season.season import frame
from candlecalc.season.tables import TABLES


def moves(demo):
    """(name, changes, products whose full cost must move)."""
    recipes = {row["product"]: row for _, row in demo.rows("recipes")}
    made = {product for product, row in recipes.items() if row["kind"] == "made"}
    everything = set(recipes)
    for _, row in demo.rows("materials"):
        cell = demo.cell("materials", "pack_price", row["material"])
        yield row["material"], {cell: 2 * row["pack_price"]}, books.users(demo, "materials", row["material"])
    for key, users in {
        "production_overhead": everything,
        "running_costs": everything,
        "season_hours": everything,
        "waste": _with_sets(demo, made),
        "paid_rate": _with_sets(demo, {product for product, row in recipes.items() if row["paid_share"]}),
        "own_rate": _with_sets(demo, {product for product, row in recipes.items() if row["paid_share"] != 1}),
        "tax_rate": set(),
        "price_step": set(),
        "scale_step": set(),
        "largest_pot": set(),
    }.items():
        yield key, {books.setting(key): demo.season.settings[key] * 1.5}, users
    for product, key in [("Fig and cedar jar", "load"), ("Bitter orange tin", "minutes"), ("Slate rain jar", "setup"),
                         ("Fig melt bar", "usual_batch"), ("Long nights crate", "paid_share")]:  # fmt: skip
        cell = demo.cell("recipes", key, product)
        yield f"{product}: {key}", {cell: recipes[product][key] / 2}, _with_sets(demo, {product})
    for vessel, key in [("Clear jar", "water"), ("Smoke tumbler", "height"), ("Travel tin", "fill"),
                        ("Bar mould", "headspace")]:  # fmt: skip
        entry = dict(demo.rows("vessels"))[demo.row("vessels", vessel)][key]
        yield f"{vessel}: {key}", {demo.cell("vessels", key, vessel): entry * 1.1}, books.users(demo, "vessels", vessel)
    for material, key, entry in [("Soft plant wax for jars", "shipping", 20.0), ("Clove and bay oil", "tax", 1.0),
                                 ("Clear jar, straight", "pack_size", 20.0),
                                 ("Firm plant wax for melts", "density", 0.9)]:  # fmt: skip
        cell = demo.cell("materials", key, material)
        yield f"{material}: {key}", {cell: entry}, books.users(demo, "materials", material)
    # The bar is in the crate.
    yield "extra parts", {demo.cell("extras", "count", "Fig melt bar"): 2.0}, _with_sets(demo, {"Fig melt bar"})
    yield "candles in a set", {demo.cell("sets", "count", "Long nights crate"): 3.0}, {"Long nights crate"}
    for key in ("fee", "per_order", "margin"):
        yield f"place: {key}", {demo.cell("places", key, "Own web shop"): 0.25 if key != "per_order" else 3.0}, set()


def _with_sets(demo, products):
    return products | {line["set"] for _, line in demo.rows("sets") if line["product"] in products}


def test_each_entry_moves_the_full_cost_of_exactly_its_users(demo, values, office):
    todo = list(moves(demo))
    products = [row["product"] for _, row in demo.rows("recipes")]
    found = office.edited_each(demo.path, [each for _, each, _ in todo], tabs=["Costing"])
    for (name, _, users), after in zip(todo, found, strict=True):
        cells = {product: demo.cell("costing", "full", product) for product in products}
        moved = {product for product, cell in cells.items() if after[cell] != values[cell]}
        fail_unless_moved(f"{name}, in full cost,", moved, users)
        assert all(isinstance(after[cell], float) for cell in cells.values()), name


def test_a_dearer_pack_costs_its_users_what_they_take_of_it(demo, values, office):
    cell = demo.cell("materials", "pack_price", "Soft plant wax for jars")
    after = office.edited(demo.path, {cell: 184.0})  # materials.csv: 92 for 45 lb
    for product in ("Fig and cedar jar", "Winter hearth tumbler", "Plain evening tumbler"):
        ounces = values[demo.cell("amounts", "wax_first", product)]
        full = demo.cell("costing", "full", product)
        assert after[full] - values[full] == pytest.approx(ounces * 92 / (45 * 16))


PLACE_MOVES = {"fee": 0.2, "fee_item": 1.0, "fee_order": 2.0, "least_fee": 9.0, "per_order": 3.0, "postage_paid": 20.0,
               "postage_charged": 1.0, "packing_order": 4.0, "discount": 0.3, "stated": "with tax"}  # fmt: skip


def test_each_term_of_a_place_moves_the_profit_of_exactly_its_lines(demo, office):
    place = "Online craft marketplace"
    edits = [{}, *({demo.cell("places", key, place): value} for key, value in PLACE_MOVES.items())]
    before, *after = demo.edited_each(office, edits, tabs=["Prices"])
    rows = demo.rows("prices")
    for key, now in zip(PLACE_MOVES, after, strict=True):
        cells = {f"{row['product']} at {row['place']}": demo.cell("prices", "profit", line) for line, row in rows}
        moved = {line for line, cell in cells.items() if now[cell] != before[cell]}
        there = {line for line in cells if line.endswith(f" at {place}")}
        fail_unless_moved(f"{place}: {key}, in profit,", moved, there)


def test_of_two_rows_of_a_product_the_one_that_holds_on_the_day_is_sold(tmp_path):
    season, day = books.demo(), datetime.date(2027, 10, 1)
    recipes = [row for _, row in season.rows("recipes")]
    slower = recipes[0] | {"holds_from": day, "minutes": 2 * recipes[0]["minutes"]}
    season.tables["recipes"] = frame([*recipes, slower], TABLES["recipes"])
    book = books.Book(season, tmp_path / "dated.xlsx", stored=False)
    held = engine.Held(book.path)
    line = next(line for line, row in book.rows("prices") if row["product"] == slower["product"])
    in_full = [book.cell("prices", "full", line), *(book.cell("costing", "full", row) for row in (0, len(recipes)))]

    def on(day):
        return [*held.cells(held.changed({books.setting("as_of"): day}), in_full).values()]

    sold, first, _ = on(day - datetime.timedelta(days=1))
    assert sold == first
    sold_then, _, second = on(day)
    assert sold_then == second > sold
