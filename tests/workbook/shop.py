"""A candle maker's shop: what uses what in a season, and what follows when something moves. No formula is read.

What follows is told in cells: a tab, a column of it, a row, and whether it must move. A column named with "?"
may and need not.
"""

from dataclasses import dataclass
from functools import cache

# Column of Recipes -> the part of the candle that it names.
WAXES = {"wax": "wax_first", "wax_second": "wax_second"}
OILS = ("oil_first", "oil_second", "oil_third")
PIECES = ("vessel", "lid", "wick", "label", "packing")
EXTRAS = tuple(f"extra_{nth}" for nth in range(1, 5))
NAMED = {**WAXES, **{part: part for part in (*OILS, "dye", "lid", "wick", "label", "packing")}}
WEIGHED = (*WAXES.values(), *OILS, "dye")
# The kind of cost that a part goes into.
COST = {
    **dict.fromkeys(WAXES.values(), "wax"),
    **dict.fromkeys(OILS, "oils"),
    **dict.fromkeys(("dye", *PIECES, *EXTRAS), "other"),
}
MATERIALS, WORK, NOT_IN_MAKING = ("wax", "oils", "other"), ("paid", "overhead", "own", "running"), ("own", "running")


# On the card of a set its own parts come first, and its candles stand where else is weighed.
OF_A_SET = dict(zip(("label", "packing", *EXTRAS), (*PIECES, *EXTRAS), strict=False))
OF_A_SET |= {f"candle_{nth}": part for nth, part in enumerate(WEIGHED, start=1)}
# How a batch is shared among pots.
POTS = "pots in_pot fuller_pots fewer_pots candles candles_fewer shown_fewer load load_fewer head_D head_F head_G "
POTS += "words_D1 words_G1 words_I1"


@dataclass(frozen=True)
class Entry:
    """A cell that is typed: its table, its row there and the field."""

    table: str
    row: int
    key: str


def cells(tab, row, columns):
    """(tab, column, row, whether it must move) for the columns that a line names."""
    return [(tab, column.rstrip("?"), row, not column.endswith("?")) for column in columns.split()]


def maybe(told):
    """The same cells, none of which must."""
    return [(*cell[:3], False) for cell in told]


class Shop:
    """A season as its maker knows it, with a product on the bench card."""

    def __init__(self, season, shown):
        self.tables = {key: [row for _, row in season.rows(key)] for key in season.tables}
        self.settings, self.shown = season.settings, shown
        self.recipes = {row["product"]: row for row in self.tables["recipes"]}
        self.materials = {row["material"]: row for row in self.tables["materials"]}
        self.places = {row["place"]: row for row in self.tables["places"]}
        self.row = {product: number for number, product in enumerate(self.recipes)}
        self.parts = {product: self._parts(recipe) for product, recipe in self.recipes.items()}

    def _parts(self, recipe):
        """{part: material} of a product."""
        vessels = {row["vessel"]: row["bought_as"] for row in self.tables["vessels"]}
        named = {part: recipe[column] for column, part in NAMED.items()} | {"vessel": vessels.get(recipe["vessel"])}
        named |= dict(zip(EXTRAS, (row["material"] for row in self.extras(recipe["product"])), strict=False))
        return {part: material for part, material in named.items() if material}

    def extras(self, product):
        """What goes with a product besides what its recipe names."""
        return [row for row in self.tables["extras"] if row["product"] == product]

    def name(self, entry):
        """The name in the first column of an entry's row."""
        return next(iter(self.typed(entry).values()))

    def typed(self, entry):
        """All that is typed in an entry's row."""
        return self.tables[entry.table][entry.row]

    @cache  # noqa: B019  a few shops a run
    def lines(self, table, key, value):
        return [number for number, row in enumerate(self.tables[table]) if row[key] == value]

    def users(self, material):
        """(product, part) wherever a recipe takes a material."""
        return [
            (each, part) for each, parts in self.parts.items() for part, named in parts.items() if named == material
        ]

    def poured(self, vessel):
        """The candles poured into a vessel."""
        return [self.tables["recipes"][line]["product"] for line in self.lines("recipes", "vessel", vessel)]

    def weighed_in(self, wax):
        """The candles poured into vessels whose fill was weighed in a wax."""
        vessels = self.lines("vessels", "fill_wax", wax)
        return [product for row in vessels for product in self.poured(self.tables["vessels"][row]["vessel"])]

    def candles(self, name):
        """The candles of a set; none where it is none."""
        return [self.tables["sets"][line]["product"] for line in self.lines("sets", "set", name)]

    def sets_with(self, product):
        return [self.tables["sets"][line]["set"] for line in self.lines("sets", "product", product)]

    def weighed(self, product):
        """The weighed parts of a product that weigh anything."""
        recipe, load = self.recipes[product], self.recipes[product]["load"]
        share = {
            "wax_first": recipe["share_wax"] != 1, "wax_second": recipe["share_wax"],
            "oil_first": load and recipe["share_first"] != 0, "oil_second": load and recipe["share_second"],
            "oil_third": load and recipe["share_third"], "dye": recipe["dye_share"],
        }  # fmt: skip
        return [part for part in WEIGHED if part in self.parts[product] and share[part]]

    def work(self, product):
        """The kinds of cost that working time brings."""
        paid = self.recipes[product]["paid_share"] or 0
        return ["overhead", "running"] + ["paid"] * (paid > 0) + ["own"] * (paid < 1)

    def spends(self, product):
        """The kinds of cost that one piece has of its own."""
        there = [*self.weighed(product), *(part for part in self.parts[product] if part not in WEIGHED)]
        return [*{COST[part] for part in there}, *self.work(product)]

    # --- the bench card: it is told of the product that it shows -----------------------------------

    def card(self, product, columns):
        return cells("batch", 0, columns) if product == self.shown else []

    def card_of(self, product, parts, letters):
        lines = [OF_A_SET.get(part, part) if self.recipes[product]["kind"] == "set" else part for part in parts]
        return self.card(product, " ".join(f"{line}.{letter}" for line in lines for letter in letters.split()))

    def pots(self, product, mixed, jugs):
        """Parts whose share of a pot moves, and parts at which a jug then reads another weight."""
        return self.card_of(product, mixed, "D E? F? G?") + self.card_of(product, jugs, "E G?")

    # --- money -------------------------------------------------------------------------------------

    def price(self, product, part):
        """A unit of a part costs more."""
        if part in EXTRAS:
            row = self.extras(product)[EXTRAS.index(part)]
            return cells("extras", self.tables["extras"].index(row), "unit_cost cost") + self.goes_with(product)
        return cells("parts", self.row[product], part) + self.cost(product, [COST[part]])

    def goes_with(self, product):
        """What goes with a product costs more."""
        return cells("parts", self.row[product], "extra") + self.cost(product, ["other"], named=False)

    def cost(self, product, kinds, card=True, named=True):
        """Kinds of a piece's own cost move: on its lines of Sets, in its full cost and in that of its sets."""
        beside = ["named"] * (named and "other" in kinds) + ["by_hours"] * ("running" in kinds)
        told = cells("parts", self.row[product], " ".join([*kinds, *beside]))
        for line in self.lines("sets", "product", product):
            told += cells("sets", line, " ".join([*kinds, "brought"] if kinds else []))
        for name in (product, *self.sets_with(product)):
            told += self.full_cost(name, kinds, card or name != product)
        return told

    def full_cost(self, product, kinds, card=True):
        materials = ["materials"] * any(kind in MATERIALS for kind in kinds)
        making = ["making"] * any(kind not in NOT_IN_MAKING for kind in kinds)
        work = ["work"] * any(kind in ("paid", "overhead") for kind in kinds)
        told = cells("costing", self.row[product], " ".join([*kinds, *materials, *making, *work, "full risen"]))
        if card:
            told += self.card_of(
                product, [*materials, *(kind for kind in kinds if kind in WORK), *making, "full"], "B C"
            )
        for line in self.lines("prices", "product", product):
            told += self.dearer(line, bool(materials))
        return told

    # --- what goes into a candle -------------------------------------------------------------------

    def denser(self, product, part):
        """A wax weighs more; a second wax that there is not goes by the first."""
        alone = part == "wax_first" and "wax_second" not in self.parts[product]
        if part not in WAXES.values():
            return []
        own = "density" if part == "wax_first" else "density_second"
        told = f"{own} blend least?" + " density_second least" * alone
        return cells("workings", self.row[product], told) + ([] if self.as_weighed(product) else self.filled(product))

    def as_weighed(self, product):
        """Whether its fill was weighed with its own wax, and no other density tells."""
        recipe, vessel = self.recipes[product], self.vessel(product)
        return vessel["measured"] == "fill" and vessel["fill_wax"] == recipe["wax"] and not recipe["share_wax"]

    def vessel(self, product):
        return next((row for row in self.tables["vessels"] if row["vessel"] == self.recipes[product]["vessel"]), None)

    def holds(self, product):
        """Its vessel holds more; of one whose fill was weighed the volume is not asked."""
        weighed = self.vessel(product)["measured"] == "fill"
        return cells("workings", self.row[product], "" if weighed else "volume") + self.filled(product)

    def filled(self, product):
        """What one vessel takes moves; a fill that was weighed, where it is scaled to another wax."""
        way = "by_volume"
        if self.vessel(product)["measured"] == "fill":
            way = "as_weighed scaled? other_wax?" if self.as_weighed(product) else "scaled as_weighed? other_wax?"
        told = cells("workings", self.row[product], f"fill {way}") + self.card(product, "fill fill_words?")
        return told + self.weighed_out(product)

    def weighed_out(self, product):
        """What is weighed out for one vessel moves, in the same shares."""
        parts = self.weighed(product)
        if not parts:
            return []
        oil = " oil" * bool(self.recipes[product]["load"])
        told = cells("workings", self.row[product], f"weigh wax{oil}") + self.weights(product, parts)
        return told + self.melt(product)

    def weights(self, product, parts):
        """The weights of parts move."""
        told = cells("amounts", self.row[product], " ".join(parts)) + self.cost(
            product, [*{COST[part]: 0 for part in parts}]
        )
        told += self.card_of(product, parts, "B C D? E? F? G? H M")
        return told + self.card(product, "enough" * any(part in WAXES.values() for part in parts))

    def melt(self, product):
        """There is more of it in all, so another number of pots, each about as full; their parts are rounded anew."""
        told = (
            cells("amounts", self.row[product], "melt") + self.card(product, "melt") + maybe(self.card(product, POTS))
        )
        return told + self.card_of(product, self.weighed(product), "B? C? D? E? F? G? H?")

    def wax_share(self, product):
        """More of the second wax and less of the first: another density too."""
        told = cells("workings", self.row[product], "share_wax blend") + self.filled(product)
        return told + self.pots(product, WAXES.values(), ["wax_first"])

    def load(self, product):
        """More of what fills the vessel is oil and less is wax; where no oil is named, there is less in all."""
        parts = self.weighed(product)
        told = cells("workings", self.row[product], "load wax oil") + self.weights(product, parts)
        told += self.card(product, "recipe")
        if not set(OILS) & set(parts):
            return told + self.melt(product)
        return told + self.card(product, "load load_fewer?") + self.pots(product, parts, self.short_of_full(product))

    def oil_share(self, product, part):
        """More of one oil, and so more in all; the certificates of the blend count where there are any."""
        told = self.weights(product, [part]) + self.melt(product) + self.card(product, "load load_fewer?")
        oils = [self.materials[named] for part, named in self.parts[product].items() if part in OILS]
        certified = any(oil["certified_limit"] for oil in oils)
        return told + cells("workings", self.row[product], "blend_certified" if certified else "")

    def short_of_full(self, product):
        """The parts at which a jug is not yet, or no longer, filled with just the wax and the oil."""
        parts = self.weighed(product)
        last = [part for part in parts if part != "dye"][-1]
        return [part for part in parts if part != last]

    def dye_share(self, product):
        return self.weights(product, ["dye"]) + self.pots(product, ["dye"], ["dye"])

    def more_wicks(self, product):
        told = cells("amounts", self.row[product], "wick") + self.cost(product, ["other"])
        return told + self.card_of(product, ["wick"], "B D M")

    # --- time --------------------------------------------------------------------------------------

    def timed(self, product, card=True):
        """The working time of one piece moves."""
        minutes = [f"{each}_minutes" for each in ("paid", "own") if each in self.work(product)]
        told = cells("parts", self.row[product], " ".join(["minutes", *minutes]))
        if "own" in self.work(product):
            told += self.own_time_in_sets(product)
        return told + self.cost(product, self.work(product), card)

    def set_up(self, product):
        """The time to set up moves."""
        work = self.work(product)
        minutes = [f"setup_{each}_minutes" for each in ("paid", "own") if each in work]
        told = cells("parts", self.row[product], " ".join([*minutes, *(f"setup_{each}" for each in work)]))
        return told + self.timed(product)

    def paid_share(self, product):
        """Another part of the time is paid."""
        words = "paid own paid_minutes own_minutes"
        told = cells("parts", self.row[product], " ".join(f"{word} setup_{word}" for word in words.split()))
        return told + self.own_time_in_sets(product) + self.cost(product, ["paid", "own"])

    def own_time_in_sets(self, product):
        return [cell for line in self.lines("sets", "product", product) for cell in cells("sets", line, "own_minutes")]

    def rate(self, product, kind):
        """What an hour of a kind of work costs moves."""
        if kind not in self.work(product):
            return []
        return cells("parts", self.row[product], f"setup_{kind}") + self.cost(product, [kind])

    # --- what a data sheet says --------------------------------------------------------------------

    def limit(self, product, part, kind="supplier"):
        """The highest load of a wax or an oil moves."""
        told = ""
        if part in OILS:
            told = f"{kind}_{part.removeprefix('oil_')} blend_{kind} load_{kind} highest"
        elif part == "wax_first":
            told = "load_wax wax_takes highest" + " load_wax_second" * ("wax_second" not in self.parts[product])
        elif part == "wax_second":
            told = "load_wax_second wax_takes highest"
        return cells("workings", self.row[product], told)

    def usual(self, product, part):
        """The load to start from: of the one oil, where there is one and it has one; else of the wax."""
        alone = "oil_second" not in self.parts[product]
        told = {"wax_first": "usual_wax usual?", "oil_first": "usual_oil usual" + "?" * (not alone)}
        return cells("workings", self.row[product], told.get(part, ""))

    def certificate(self, product, part):
        return self.limit(product, part, "certified") if part in OILS else []

    def flash(self, product, part):
        """The lowest flash point of its oils stands on the card."""
        if part not in OILS:
            return []
        told = cells("workings", self.row[product], f"flash_{part.removeprefix('oil_')} flash")
        return told + self.card(product, "flash")

    def step(self, product, part, *keys):
        """The card says it of the wax; of the first where there are two."""
        there = part == "wax_first" and part in self.parts[product]
        return self.card(product, " ".join(keys) if there else "")

    def cures(self, product, part):
        """The days to cure by a wax; of two waxes the longer counts, and stands on the card."""
        alone = " cure_second" * ("wax_second" not in self.parts[product])
        told = {"wax_first": f"cure_first cure{alone}", "wax_second": "cure_second cure"}.get(part, "")
        return cells("workings", self.row[product], told) + self.card(product, "cure_days" if told else "")

    # --- stock -------------------------------------------------------------------------------------

    def on_hand(self, product, part):
        """What is there, and how much is missing."""
        told = self.card_of(product, [part], "H" if part in WEIGHED else "C D")
        told += self.card(product, "enough" if part in WAXES.values() else "")
        return told + (self.instead(product, part) if part not in WEIGHED else [])

    def instead(self, product, part):
        """What may be taken instead of what is missing, where something may."""
        other = self.lines("materials", "stands_in_for", self.parts[product][part])
        return self.card_of(product, [part], "E?" if other else "")

    # --- a line of Prices --------------------------------------------------------------------------

    def place(self, line):
        return self.places[self.tables["prices"][line]["place"]]

    def taxed(self, line):
        return self.place(line)["collector"] != "nobody"

    def with_tax(self, line):
        return (self.place(line)["stated"] or self.settings["shelf_prices"]) == "with tax"

    def earned(self, line, columns):
        """What is left of a sale moves, with the number that must be sold where the place has a cost of its own."""
        place = self.place(line)
        there = place["fixed_cost"] and place["fixed_times"]
        return cells("prices", line, f"{columns} profit margin must_sell" + "?" * (not there))

    def dearer(self, line, materials):
        """The candle's full cost moves, or that of its materials too."""
        told = cells("selling", line, "full target_net to_state cost_and_fees") + self.earned(line, "full target_price")
        if materials:
            told += cells("selling", line, "materials lowest_net lowest_stated") + cells("prices", line, "lowest")
        return told

    def fixed(self, line):
        """The fixed sums of a sale move."""
        told = cells("selling", line, "fixed fees target_net to_state lowest_net lowest_stated cost_and_fees")
        return told + self.earned(line, "target_price lowest fees")

    def asked(self, line):
        """What must be asked moves, as it is before tax and as it is stated."""
        told = cells("selling", line, "target_net to_state lowest_net lowest_stated")
        return told + cells("prices", line, "target_price lowest")

    def kept(self, line):
        """The share that the place keeps moves."""
        return self.asked(line) + self.taken(line)

    def taken(self, line):
        """What the place takes of the own price moves."""
        return cells("selling", line, "fee_taken fees cost_and_fees") + self.earned(line, "fees")

    def received(self, line):
        """What the own price leaves before tax moves."""
        told = cells("selling", line, "received") + self.earned(line, "received")
        return told + cells("prices", line, "tax" if self.taxed(line) else "")

    def sold_for(self, line):
        """... and the fee with it that is a share of it."""
        return self.received(line) + (self.taken(line) if self.place(line)["fee"] else [])

    def stated(self, line):
        """What a stated price leaves moves."""
        told = cells("selling", line, "to_state lowest_stated") + cells("prices", line, "target_price lowest")
        return told + self.sold_for(line)

    def tax(self, line):
        """The tax that a buyer is charged moves.

        A share of what the buyer hands over stays as it is where the tax is in the stated price.
        """
        place = self.place(line)
        gross = bool(place["fee"]) and place["fee_basis"] == "gross"
        told = cells("selling", line, "tax") + cells("prices", line, "tax")
        if self.with_tax(line):
            told += cells("selling", line, "to_state lowest_stated") + cells("prices", line, "target_price lowest")
            told += self.received(line)
        told += self.asked(line) if gross else []
        return told + (self.taken(line) if place["fee"] and gross != self.with_tax(line) else [])
