"""The bench card: what it says follows the number made, and it says nothing where it cannot."""

import math

import books
import pytest
from libreoffice import Error

import candlecalc.calc as calc
from candlecalc.workbook.tabs.make import batch
from candlecalc.workbook.tabs.working.made_of import COUNTED, WEIGHED

FINE = 0.0001  # a scale step so fine that rounding does not show
JAR, DYED, BLEND = "Fig and cedar jar", "Smoked plum jar", "Winter hearth tumbler"
SQUARE, BAR, CRATE = "Fir square, two wicks", "Fig melt bar", "Long nights crate"
CARD = ("Batch", "Costing", "Materials")  # the card, and the tabs that its numbers are compared with
PRODUCTS = (JAR, DYED, BLEND, SQUARE, BAR, CRATE)
# What is typed for the product and for the number, and what the card says.
UNUSABLE = {
    "half a piece": (JAR, 2.5, "How many takes a whole number from 1"),
    "none": (JAR, 0, "How many takes a whole number from 1"),
    "fewer than none": (JAR, -12, "How many takes a whole number from 1"),
    "a word": (JAR, "x", "How many takes a whole number from 1"),
    "an error": (JAR, "=NA()", "How many takes a whole number from 1"),
    "too many": (JAR, 100001, "How many takes a whole number from 1"),
    "unknown": ("Nobody's candle", 12, "This product is not on Recipes"),
    "no product": (None, 12, "Pick a product and type how many"),
    "no number": (JAR, None, "Pick a product and type how many"),
    "nothing": (None, None, "Pick a product and type how many"),
}


class Card:
    """What the Batch tab shows."""

    def __init__(self, demo, values):
        self.demo, self.values = demo, values

    def __getitem__(self, cell):
        return self.values.get(("Batch", cell), "")

    def named(self, name):
        return self.values[self.demo.named(name)]

    def column(self, letter, first, count):
        """The filled cells of some rows by the name in their first column."""
        rows = range(first + 1, first + 1 + count)
        return {self[f"A{row}"]: self[f"{letter}{row}"] for row in rows if self[f"A{row}"]}

    def weights(self, letter="B"):
        """What is weighed; of a set nothing is."""
        return {} if self.named("batch_packed") == 1 else self.column(letter, batch.WEIGH, len(WEIGHED))

    def pieces(self, letter="B"):
        return self.column(letter, batch.COUNTING, len(COUNTED) + batch.EXTRA_LINES)

    def candles(self, letter="B"):
        """The candles of a set, which stand where else is weighed."""
        return self.column(letter, batch.WEIGH, batch.CANDLE_LINES) if self.named("batch_packed") == 1 else {}

    def costs(self, letter="B"):
        return self.column(letter, batch.COSTS, 7)

    def numbers(self):
        """Cells from the first line that is worked out to the last."""
        return {
            cell: value
            for (sheet, cell), value in self.values.items()
            if sheet == "Batch" and int(cell[1:]) >= batch.ENOUGH and isinstance(value, float)
        }


def picked(demo, product, count, step=FINE):
    product_cell, count_cell = demo.named("batch_product"), demo.named("batch_count")
    return {product_cell: product, count_cell: count, books.setting("scale_step"): step}


@pytest.fixture(scope="module")
def cards(demo, office):
    """Cards by product and number."""
    usual = {row["product"]: row["usual_batch"] for _, row in demo.rows("recipes")}
    wanted = list(dict.fromkeys((product, count) for product in PRODUCTS for count in (12, 48, usual[product])))
    values = office.edited_each(demo.path, [picked(demo, *each) for each in wanted], tabs=CARD)
    return {each: Card(demo, one) for each, one in zip(wanted, values, strict=True)}


@pytest.fixture(scope="module")
def unusable(demo, office):
    values = office.edited_each(demo.path, [picked(demo, *each[:2]) for each in UNUSABLE.values()], tabs=CARD)
    return {name: Card(demo, one) for name, one in zip(UNUSABLE, values, strict=True)}


@pytest.mark.parametrize("product", PRODUCTS)
def test_four_times_as_many_take_four_times_the_weights_and_pieces(cards, product):
    few, many = cards[product, 12], cards[product, 48]
    assert many.weights() == pytest.approx({name: 4 * weight for name, weight in few.weights().items()}, abs=30 * FINE)
    assert many.pieces() == pytest.approx({name: 4 * count for name, count in few.pieces().items()})
    assert many.candles() == {name: 4 * count for name, count in few.candles().items()}
    if product == CRATE:
        assert many.named("batch_melt") == ""
    else:
        assert many.named("batch_melt") == pytest.approx(4 * few.named("batch_melt"))


@pytest.mark.parametrize("product", PRODUCTS)
def test_the_card_names_every_part_of_the_recipe(demo, cards, product):
    row = dict(demo.rows("recipes"))[demo.row("recipes", product)]
    card = cards[product, 12]
    weighed = [row[key] for key in ("wax", "wax_second", "oil_first", "oil_second", "oil_third", "dye") if row[key]]
    counted = [row[key] for key in ("lid", "wick", "label", "packing") if row[key]]
    bought = {line["vessel"]: line["bought_as"] for _, line in demo.rows("vessels")}
    candles = {line["product"]: line["count"] for _, line in demo.rows("sets") if line["set"] == product}
    extras = {line["material"]: line["count"] for _, line in demo.rows("extras") if line["product"] == product}
    vessel = bought.get(row["vessel"])
    assert list(card.weights()) == weighed
    assert list(card.pieces()) == ([vessel] if vessel else []) + counted + list(extras)
    assert card.candles() == {name: 12 * count for name, count in candles.items()}
    assert all(weight > 0 for weight in card.weights().values())
    each = {row["wick"]: row["wicks"], **extras}
    assert card.pieces() == pytest.approx({name: 12 * each.get(name, 1) for name in card.pieces()})


@pytest.mark.parametrize("product", PRODUCTS)
def test_a_larger_batch_saves_set_up_and_nothing_else(demo, cards, product):
    few, many = cards[product, 12].costs(), cards[product, 48].costs()
    row = dict(demo.rows("recipes"))[demo.row("recipes", product)]
    told = demo.season.settings
    paid = row["paid_share"] or 0
    work = paid * told["paid_rate"] + (1 - paid) * told["own_rate"]
    spread = (told["production_overhead"] + told["running_costs"]) / told["season_hours"]
    setup = row["setup"] / 60 * (work + spread)
    assert many["Materials"] == few["Materials"] > 0
    assert few["Full cost"] - many["Full cost"] == pytest.approx(setup / 12 - setup / 48)
    usual = calc.cost_at_batch(cost=few["Full cost"], setup=setup, usual=12, batch=row["usual_batch"])
    assert cards[product, row["usual_batch"]].costs()["Full cost"] == pytest.approx(usual)


@pytest.mark.parametrize("product", PRODUCTS)
def test_at_the_usual_batch_the_card_and_the_costing_agree(demo, cards, product):
    row = dict(demo.rows("recipes"))[demo.row("recipes", product)]
    card = cards[product, row["usual_batch"]]
    for head, key in {"Materials": "materials", "Making cost": "making", "Full cost": "full"}.items():
        each = card.values[demo.cell("costing", key, product)]
        assert card.costs()[head] == pytest.approx(each)
        assert card.costs("C")[head] == pytest.approx(each * row["usual_batch"], abs=0.025)  # five lines, half a cent


SAYS = {
    "a load above the certified limit": (
        JAR,
        "certified_limit",
        0.05,
        "Look at: Load 8 % is above 5.26 %, the certified limit: lower the load; "
        "the oil's certificate sets this ceiling",
    ),
    "a load that cannot be": (JAR, "load", 8, "Look at: Load: takes a percentage, 0 % to 50 %; type it with its %"),
    "nothing": (JAR, "load", 0.07, ""),
}


@pytest.mark.parametrize("product, key, value, said", SAYS.values(), ids=SAYS)
def test_the_card_says_what_is_to_be_looked_at_in_its_recipe(demo, office, product, key, value, said):
    cell = demo.cell("materials", key, "Fig and cedar oil") if key != "load" else demo.cell("recipes", key, product)
    after = office.edited(demo.path, {**picked(demo, product, 12), cell: value})
    assert after["Batch", f"B{batch.SAID}"] == said


@pytest.mark.parametrize("product", PRODUCTS)
@pytest.mark.parametrize("count", [12, 48])
def test_the_money_of_a_batch_is_in_cents_and_its_lines_add_up(cards, product, count):
    lines = cards[product, count].costs("C")
    assert lines == pytest.approx({head: round(money, 2) for head, money in lines.items()}, abs=1e-9)
    materials, paid, overhead, making, own, running, full = lines.values()
    assert making == pytest.approx(materials + paid + overhead)
    assert full == pytest.approx(making + own + running)
    assert full > making > 0


@pytest.mark.parametrize("product, count", [(JAR, 12), (JAR, 48), (BLEND, 48), (SQUARE, 48), (BAR, 48)])
def test_pots_are_for_whole_candles_and_none_holds_too_much(demo, cards, product, count):
    card = cards[product, count]
    each, largest = card.named("batch_melt") / count, demo.season.settings["largest_pot"]
    most = math.floor(largest / each)
    pots, fewer, candles = (card.named(f"batch_{name}") for name in ("pots", "fewer_pots", "in_pot"))
    assert pots == math.ceil(count / most)
    assert candles <= most
    assert (pots - fewer) * candles + fewer * (candles - 1) == count
    for letter, jug, in_pot in (("D", "E", candles), ("F", "G", candles - 1)):
        if letter == "D" or fewer:
            readings, parts = list(card.weights(jug).values()), list(card.weights(letter).values())
            assert readings[-1] == pytest.approx(in_pot * each, abs=6 * FINE)
            assert readings == pytest.approx([sum(parts[: n + 1]) for n in range(len(parts))])


def test_a_batch_in_pots_weighs_what_it_weighs_by_hand(demo, office):
    # The jar of worked_jar in test_by_hand: 9.65 oz of water at 20 C to the brim, 12 % left empty, wax of 0.87 g/ml.
    fill = 9.65 * 28.349523125 * (1 - 0.0012 / 8) / (0.998207 - 0.0012) * 0.88 * 0.87 / 28.349523125  # 7.41 oz
    each = fill / 0.98  # 2 % is lost: 7.56 oz, so a pot of 100 oz is for 13 candles
    count = 50  # 4 pots: two for 13, two for 12
    wax, oil = ([round(each * n * part / 1.07 / 0.5) * 0.5 for n in (13, 12)] for part in (1, 0.07))
    typed = {**picked(demo, JAR, count, 0.5), books.setting("largest_pot"): 100}
    typed |= {demo.cell("recipes", "load", JAR): 0.07}
    card = Card(demo, office.edited(demo.path, typed))
    assert card[f"B{batch.POTS}"] == pytest.approx(fill, rel=1e-5)
    assert [card[f"{letter}{row}"] for row in (batch.POTS, batch.POTS + 1) for letter in "EH"] == [2, 13, 2, 12]
    assert [card[f"{letter}{batch.WEIGH}"] for letter in "DF"] == ["pot of 13", "pot of 12"]
    for nth, (letter, jug) in enumerate((("D", "E"), ("F", "G"))):
        assert list(card.weights(letter).values()) == [wax[nth], oil[nth]]
        assert list(card.weights(jug).values()) == [wax[nth], wax[nth] + oil[nth]]
        assert card[f"J{batch.POTS + nth}"] == pytest.approx(oil[nth] / wax[nth])
    assert list(card.weights().values()) == [2 * sum(wax), 2 * sum(oil)]


def test_a_candle_that_the_largest_pot_cannot_hold_is_said(demo, office):
    typed = {**picked(demo, SQUARE, 12), books.setting("largest_pot"): 10}
    card = Card(demo, office.edited(demo.path, typed))
    assert card[f"B{batch.SAID}"] == "Look at: One of these takes more than the largest pot on Settings holds"
    assert isinstance(card.named("batch_pots"), Error)


def test_a_set_is_packed_and_not_melted(cards):
    packed, poured = cards[CRATE, 12], cards[JAR, 12]
    assert poured[f"A{batch.DO + 2}"].startswith("Melt the wax")
    assert packed[f"A{batch.DO + 2}"] == "Check labels, cautions, batch nos."
    head = [packed[f"{letter}{row}"] for row in range(batch.POTS, batch.WEIGH) for letter in "ABCDEFGHIJ"]
    assert set(head) == {""}
    assert {packed[f"{letter}{batch.DO + step}"] for step in range(1, batch.STEPS + 1) for letter in "BCD"} == {""}
    assert packed[f"A{batch.WEIGH}"] == "Candles in it"
    assert {packed[f"{letter}{batch.WEIGH}"] for letter in "CDEFGH"} == {""}
    cautions = [[card[f"E{batch.COSTS + line}"] for line in range(1, 7)] for card in (packed, poured)]
    assert "wax" in " ".join(cautions[1]) and "wax" not in " ".join(cautions[0])
    assert "cautions" in " ".join(cautions[0])


def test_the_card_says_what_the_data_sheet_heats_the_wax_to(demo, cards):
    heated = {cards[product, 12][f"B{batch.DO + 3}"] for product in (JAR, BAR)}
    assert heated == {185, 190}  # materials.csv


def test_dye_comes_on_top_of_the_melt(cards):
    card = cards[DYED, 48]
    dye = card.weights()["Plum dye flakes"]
    assert sum(card.weights().values()) - dye == pytest.approx(card.named("batch_melt"), abs=6 * FINE)


@pytest.mark.parametrize("product", (JAR, DYED, SQUARE, CRATE))
def test_short_is_what_is_needed_beyond_what_is_on_hand(demo, cards, product):
    card = cards[product, 48]
    made = {row["product"] for _, row in demo.rows("recipes")}
    lines = [(card.weights(), card.weights("H")), (card.pieces(), card.pieces("D"))]
    for needed, short in lines:
        for name in needed.keys() - made:
            stock = card.values[demo.cell("materials", "stock", name)]
            assert short[name] == pytest.approx(max(0, needed[name] - stock)), name
    assert any(value for _, short in lines for value in short.values())


def test_weights_are_shown_to_the_step_of_the_scale(demo, cards, office):
    coarse = Card(demo, office.edited(demo.path, picked(demo, BLEND, 48, 0.5)))
    for name, weight in cards[BLEND, 48].weights().items():
        pots, candles = coarse.named("batch_pots"), coarse.named("batch_in_pot")
        assert pots * candles == 48
        assert coarse.weights("D")[name] == pytest.approx(round(weight / pots / 0.5) * 0.5)
        assert coarse.weights()[name] == pytest.approx(pots * coarse.weights("D")[name])
        assert coarse.weights("C")[name] == pytest.approx(coarse.weights()[name] * 28.349523125)  # NIST SP 811, B.8


@pytest.mark.parametrize("name", UNUSABLE)
def test_an_unusable_number_or_product_gives_words_and_no_number(unusable, name):
    card = unusable[name]
    assert card[f"B{batch.ENOUGH}"] == UNUSABLE[name][2]
    row_of_product = {card.demo.named("batch_row")[1]: 1.0} if card.named("batch_row") == 1 else {}
    assert card.numbers() == row_of_product


def test_a_blank_card_shows_nothing(unusable):
    card = unusable["nothing"]
    assert card.numbers() == {}
    assert (card.weights(), card.pieces()) == ({}, {})
    assert set(card.costs().values()) | set(card.costs("C").values()) == {""}
    assert [cell for cell, value in card.values.items() if cell[0] == "Batch" and isinstance(value, Error)] == []
