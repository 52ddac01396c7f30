"""Who moves when one entry is changed: for every field that is typed, in a maker's words.

A line names the columns of the entry's own row and what follows for those that use it; `shop.py` says what
that is. A field that feeds no number has an empty line.
"""

from shop import EXTRAS, MATERIALS, PIECES, POTS, WEIGHED, WORK, Shop, cells, maybe

from candlecalc.season.tables.once import SETTING_FIELDS

STEPS = ("melt_high", "heat_to", "ceiling", "add_at", "pour_at", "cure_days")  # what the card says of the wax
CARD = " ".join(
    [*STEPS, POTS, "row load recipe enough melt fill fill_words flash"]
    + [f"{part}.{letter}" for part in WEIGHED for letter in "ABCDEFGHLM"]
    + [f"step_{nth}" for nth in range(1, 10)]
    + [f"degree_{nth}" for nth in range(2, 8)]
    + [f"caution_{nth}" for nth in range(1, 7)]
    + [f"head_{letter}" for letter in "ABCDEFGHIJ"]
    + [f"words_{letter}{nth}" for letter in "ADGI" for nth in range(3)]
    + ["packed", "tag", "panel", "panel_wide", "panel_by", "panel_high", "words_H2", "do_B", "do_I", "do_J"]
    + [f"{part}.{letter}" for part in (*PIECES, *EXTRAS) for letter in "ABCDELM"]
    + [f"{kind}.{letter}" for kind in ("materials", "making", "full", *WORK) for letter in "BC"]
)
LISTS = " ".join(
    f"materials_{kind}?" for kind in ("wax", "fragrance_oil", "dye", "wick", "vessel", "lid", "label", "packaging")
)

# --- each sentence of a line takes the shop and the entry, and tells cells ---------------------------


def own(columns):
    """The entry's own row."""
    return lambda shop, entry: cells(entry.table, entry.row, columns)


def below(columns):
    """The rows after it in its table."""
    return lambda shop, entry: [
        cell for row in range(entry.row + 1, len(shop.tables[entry.table])) for cell in cells(entry.table, row, columns)
    ]


def on(tab, columns):
    """The same row of a tab that goes with the table."""
    return lambda shop, entry: cells(tab, entry.row, columns)


def alone(tab, columns):
    """Cells that stand alone: on Settings, on the card, a list of names."""
    return lambda shop, entry: cells(tab, 0, columns)


def users(effect, *given):
    """Every candle that takes the material, by the part it is there."""
    return lambda shop, entry: [
        cell for product, part in shop.users(shop.name(entry)) for cell in effect(shop, product, part, *given)
    ]


def poured(effect, *given):
    """Every candle poured into the vessel."""
    return lambda shop, entry: [
        cell
        for line in shop.lines("recipes", "vessel", shop.name(entry))
        for cell in effect(shop, shop.tables["recipes"][line]["product"], *given)
    ]


def product(effect, *given):
    """The product of the entry's row."""
    return lambda shop, entry: effect(shop, shop.name(entry), *given)


def every_product(effect, *given):
    return lambda shop, entry: [cell for name in shop.recipes for cell in effect(shop, name, *given)]


def every_price(columns):
    return lambda shop, entry: [
        cell for line in range(len(shop.tables["prices"])) for cell in cells("prices", line, columns)
    ]


def sold_there(effect):
    """Every line of Prices at the place."""
    return lambda shop, entry: [
        cell for line in shop.lines("prices", "place", shop.name(entry)) for cell in effect(shop, line)
    ]


def terms(columns, prices=""):
    """What the place's lines show of it on Selling, and on Prices."""
    return sold_there(lambda shop, line: cells("selling", line, columns) + cells("prices", line, prices))


def perhaps(*sentences):
    """All of it may move and need not."""
    return lambda shop, entry: maybe(cell for each in sentences for cell in each(shop, entry))


def least(sentence):
    """Of several limits or flash points the least counts: it may stay."""
    return lambda shop, entry: [
        (*cell[:3], cell[3] and cell[1] not in ("highest", "wax_takes", "flash")) for cell in sentence(shop, entry)
    ]


# --- what is not said by a row alone -----------------------------------------------------------------


def named(part, row):
    """The recipe names another material for a part."""
    told = [product(effect, part) for effect in (Shop.price, Shop.on_hand, Shop.denser)]
    told += [product(Shop.card_of, [part], "E?")] if part in PIECES else []
    told += [perhaps(product(Shop.filled))] if part.startswith("wax") else []
    told += [least(product(effect, part)) for effect in (Shop.limit, Shop.certificate, Shop.flash)]
    return [
        on("workings", f"{row} usual_wax? usual_oil? usual?"),
        product(Shop.card_of, [part], "A L"),
        product(Shop.step, part, *STEPS),
        *told,
    ]


BY_WAY = "measured? density? density_second? least? blend? by_volume? scaled? as_weighed? other_wax? "
BY_WAY += "fill_wax? fill_wax_row? fill_density?"


def other_vessel(shop, entry):
    """The vessel is bought as another material."""
    for line in shop.lines("recipes", "vessel", shop.name(entry)):
        name = shop.tables["recipes"][line]["product"]
        yield from cells("workings", line, "bought bought_row")
        yield from shop.price(name, "vessel") + shop.on_hand(name, "vessel") + shop.card_of(name, ["vessel"], "A L")


def poured_elsewhere(shop, entry):
    """The recipe names another vessel, which may be bought as nothing."""
    name = shop.name(entry)
    yield from cells("workings", entry.row, f"vessel_row volume headspace bought bought_row use? pool? {BY_WAY}")
    yield from shop.filled(name) + shop.card(name, "fill_words? panel? panel_wide? panel_by? panel_high?")
    yield from shop.price(name, "vessel") + maybe(shop.card_of(name, ["vessel"], "A B C D E L M"))
    yield from cells("amounts", entry.row, "vessel?")


def stands_in(shop, entry):
    """The card says of pieces that run short what may be taken instead."""
    for name, part in shop.users(shop.tables["materials"][entry.row]["stands_in_for"]):
        yield from shop.card_of(name, [part], "" if part in WEIGHED else "E")


def registered(shop, entry):
    """Said beside a place: a maker who collects tax must be registered."""
    for row, place in enumerate(shop.tables["places"]):
        yield from cells("places", row, "warnings" if place["collector"] == "maker" else "")


def rate_of_tax(shop, entry):
    """The rate counts where somebody collects it."""
    for row, place in enumerate(shop.tables["places"]):
        if place["collector"] != "nobody":
            yield from cells("places", row, "tax")
            for line in shop.lines("prices", "place", place["place"]):
                yield from shop.tax(line)


def scale_step(shop, entry):
    """All that the card weighs is shown to the scale's step."""
    there = [part for part in WEIGHED if part in shop.parts[shop.shown]]
    return shop.card_of(shop.shown, there, "B C D E? F? G? H") + shop.card(
        shop.shown, "load? load_fewer?" if there else ""
    )


def largest_pot(shop, entry):
    """How what is melted is shared among pots."""
    there = shop.weighed(shop.shown)
    told = shop.card(shop.shown, f"pots in_pot {POTS}" if there else "")
    return maybe(told[2:]) + told[:2] + shop.card_of(shop.shown, there, "B? C? D E F? G? H?")


def stated_otherwise(shop, line):
    """Whether the tax is in the stated price matters where there is one."""
    if not shop.taxed(line):
        return []
    told = cells("selling", line, "to_state lowest_stated") + cells("prices", line, "target_price lowest")
    return told + shop.received(line) + (hidden(shop, line, shop.taken(line)) if shop.place(line)["fee"] else [])


def kept_by_basis(shop, line):
    """A share of the price with tax is more, where there are a share and a tax."""
    return hidden(shop, line, shop.kept(line)) if shop.taxed(line) and shop.place(line)["fee"] else []


def hidden(shop, line, told):
    """The least fee of a place may hide what its share comes to."""
    return maybe(told) if shop.place(line)["least_fee"] else told


def per_order(shop, entry):
    """What an order costs, and its least fee, come to less a candle."""
    place = shop.tables["places"][entry.row]
    order = any(place[key] for key in ("fee_order", "postage_paid", "postage_charged", "packing_order"))
    yield from cells("places", entry.row, " ".join(["fixed"] * order + ["least"] * bool(place["least_fee"])))
    for line in shop.lines("prices", "place", place["place"]):
        yield from shop.fixed(line) if order else []
        yield from cells("selling", line, "least") + maybe(shop.kept(line)) if place["least_fee"] else []


def cost_of_place(shop, entry):
    """The place's own cost is a sum and how often it is paid."""
    place = shop.tables["places"][entry.row]
    if place["fixed_cost"] and place["fixed_times"]:
        yield from cells("places", entry.row, "season_fixed")
        for line in shop.lines("prices", "place", place["place"]):
            yield from cells("selling", line, "season_fixed") + cells("prices", line, "must_sell")


def in_its_set(shop, entry):
    """A line brings into the cost of its set what its candle costs."""
    row = shop.tables["sets"][entry.row]
    spends = shop.spends(row["product"])
    return cells("sets", entry.row, " ".join([*spends, "brought"])) + shop.full_cost(row["set"], spends)


def other_candle(shop, entry):
    row = shop.tables["sets"][entry.row]
    kinds = [*MATERIALS, *WORK]
    yield from maybe(cells("sets", entry.row, " ".join([*kinds, "brought"])) + shop.full_cost(row["set"], kinds))
    yield from in_its_set(shop, entry)


def line_on_card(letter):
    """The card counts the candles of a set that it shows."""

    def told(shop, entry):
        name = shop.tables["sets"][entry.row]["set"]
        return shop.card_of(name, [f"candle_{1 + shop.lines('sets', 'set', name).index(entry.row)}"], letter)

    return told


def other_set(shop, entry):
    """A candle leaves one set and comes into another: the lines of both are counted anew."""
    spends = shop.spends(shop.tables["sets"][entry.row]["product"])
    yield from cells("sets", entry.row, "set_row")
    for name, recipe in shop.recipes.items():
        if recipe["kind"] == "set":
            yield from cells("workings", shop.row[name], "in_set") + shop.full_cost(name, spends)
            yield from maybe(shop.card_of(name, [f"candle_{nth}" for nth in range(1, 7)], "A B L M"))


def other_product(shop, entry):
    """The line sells another candle."""
    yield from shop.dearer(entry.row, materials=True)
    row = shop.row[shop.tables["prices"][entry.row]["product"]]
    yield from cells("workings", row, "priced")
    yield from maybe(cell for each in shop.row.values() for cell in cells("workings", each, "priced"))


def other_place(shop, entry):
    """The line sells in another place: all its terms may differ."""
    yield from cells("selling", entry.row, "fee? fee_basis? fixed? least? tax? discount? stated? margin? season_fixed?")
    yield from maybe(shop.fixed(entry.row) + shop.kept(entry.row) + shop.stated(entry.row))
    yield from cells("prices", entry.row, "tax? target?")


def more_pieces(shop, entry):
    """More of everything; what setting up costs is spread over more, the rest of a piece stays as it is."""
    name, recipe = shop.shown, shop.recipes[shop.shown]
    parts = shop.weighed(name)
    yield from shop.card(name, "makes" + " melt pots" * bool(parts)) + maybe(shop.card(name, POTS))
    counted = [part for part in shop.parts[name] if part not in WEIGHED]
    yield from shop.card_of(name, parts, "B C D? E? F? G? H") + shop.card_of(name, counted, "B D")
    lines = shop.lines("sets", "set", name)
    yield from shop.card_of(name, [f"candle_{nth}" for nth in range(1, 1 + len(lines))], "B")
    candles = [shop.tables["sets"][line]["product"] for line in lines]
    work = {kind for each in (name, *candles) for kind in shop.work(each)}
    yield from shop.card_of(name, ["materials", "making", "full", *work], "C")
    yield from shop.card_of(name, [*shop.work(name), "making", "full"] if recipe["setup"] else [], "B")


def measured(shop, entry):
    """Measures count in the way that the vessel is measured; the other ways stay blank."""
    row = shop.tables["vessels"][entry.row]
    by_fill = row["measured"] == "fill"
    yield from [] if by_fill else cells("vessels", entry.row, f"by_{row['measured']} volume")
    for line in shop.lines("recipes", "vessel", row["vessel"]):
        name = shop.tables["recipes"][line]["product"]
        yield from shop.filled(name) if by_fill else shop.holds(name)


def measured_otherwise(shop, entry):
    """The fill is known in another way, and what that rests on comes into use."""
    yield from measured(shop, entry)
    yield from maybe(cells("vessels", entry.row, "by_water by_round by_box volume"))
    for line in shop.lines("recipes", "vessel", shop.name(entry)):
        yield from cells("workings", line, f"measured volume? headspace? {BY_WAY}")
        yield from shop.card(shop.tables["recipes"][line]["product"], "fill_words?")


def weighed_in(shop, entry):
    """The wax that a vessel's fill was weighed with has another density."""
    for vessel in shop.lines("vessels", "fill_wax", shop.name(entry)):
        for line in shop.lines("recipes", "vessel", shop.tables["vessels"][vessel]["vessel"]):
            yield from cells("workings", line, "fill_density")


def weighed_with_another(shop, name):
    """The vessel's fill was weighed with another wax."""
    told = "fill_wax fill_wax_row fill_density" + " other_wax" * shop.as_weighed(name)
    yield from cells("workings", shop.row[name], told)
    yield from shop.filled(name) + shop.card(name, "fill_words")


def goes_with(shop, entry):
    """What goes with a product brings its cost."""
    row = shop.tables["extras"][entry.row]
    return cells("extras", entry.row, "cost") + shop.goes_with(row["product"])


def extra_on_card(letters):
    """The card counts what goes with the product that it shows."""

    def told(shop, entry):
        row = shop.tables["extras"][entry.row]
        nth = shop.extras(row["product"]).index(row)
        return shop.card_of(row["product"], [EXTRAS[nth]], letters)

    return told


def goes_with_another(shop, entry):
    """An extra part leaves one product and goes with another: the lines of both are counted anew."""
    yield from shop.goes_with(shop.tables["extras"][entry.row]["product"])
    for name in shop.recipes:
        yield from maybe(shop.goes_with(name) + shop.card_of(name, EXTRAS, "A B C D E L M"))


def poured_on(shop, entry):
    """A candle cures from the day it is poured."""
    return shop.step(shop.shown, "wax_first" if "wax_first" in shop.parts[shop.shown] else "", "cure_days")


def of_order(columns=""):
    """A sum that a sale costs at the place."""
    return [own(f"{columns} fixed"), sold_there(Shop.fixed)]


def of_oil(nth):
    shares = f"share_{nth} shares blend_supplier load_supplier load_certified? highest?"
    return [on("workings", shares), product(Shop.oil_share, f"oil_{nth}")]


def of_time(kind):
    return [alone("settings", f"{kind}_an_hour"), every_product(Shop.rate, kind)]


ORDINALS = ("first", "second", "third")
TABLE = {
    "settings": {
        "maker": [], "place": [], "season": [], "first_day": [], "last_day": [],
        "registered": [alone("settings", "registered_yes"), registered],
        "tax_rate": [rate_of_tax],
        "paid_rate": [every_product(Shop.rate, "paid")],
        "own_rate": [every_product(Shop.rate, "own")],
        "production_overhead": of_time("overhead"),
        "running_costs": of_time("running"),
        "season_hours": of_time("overhead") + of_time("running"),
        "waste": [every_product(Shop.weighed_out)],
        "price_step": [every_price("target_price")],
        "price_ending": [every_price("target_price")],
        "scale_step": [scale_step],
        "largest_pot": [largest_pot],
    },
    "what_if": {"materials_rise": [every_product(lambda shop, name: cells("costing", shop.row[name], "risen"))]},
    "materials": {
        "kind": [own("of_kind"), below("of_kind?"), alone("lists", LISTS)],
        "supplier": [],
        "pack_size": [own("size unit_cost"), users(Shop.price)],
        "pack_unit": [own("factor size unit_cost stock"), users(Shop.price), users(Shop.on_hand)],
        "pack_price": [own("unit_cost"), users(Shop.price)],
        "shipping": [own("unit_cost"), users(Shop.price)],
        "tax": [own("unit_cost"), users(Shop.price)],
        "on_hand": [own("stock"), users(Shop.on_hand)],
        "stands_in_for": [stands_in],
        "density": [users(Shop.denser), weighed_in],
        "melt_low": [],
        **{key: [users(Shop.step, key)] for key in STEPS},
        "usual_load": [users(Shop.usual)],
        "highest_load": [own("load_limit share_limit"), users(Shop.limit)],
        "basis": [own("load_limit share_limit"), least(users(Shop.limit))],
        "certified_limit": [own("candle_limit"), users(Shop.certificate)],
        "flash_point": [own("flash"), users(Shop.flash)],
        "priced_on": [],
    },
    "vessels": {
        "use": [poured(lambda shop, name: cells("workings", shop.row[name], "use"))],
        "bought_as": [other_vessel],
        "measured": [measured_otherwise],
        "water": [measured],
        "water_temperature": [measured],
        "top": [measured],
        "bottom": [measured],
        "height": [measured],
        "base": [measured],
        "headspace": [poured(lambda shop, name: cells("workings", shop.row[name], "headspace")), poured(Shop.filled)],
        "diameter": [poured(lambda shop, name: cells("workings", shop.row[name], "pool"))],
        "panel_width": [poured(Shop.card, "panel_wide")],
        "panel_height": [poured(Shop.card, "panel_high")],
        "fill": [measured],
        "fill_wax": [poured(weighed_with_another)],
    },
    "recipes": {
        "tag": [product(Shop.card, "tag")],
        "kind": [own("of_kind"), below("of_kind?"), on("workings", "kind"), alone("lists", "recipes_made recipes_set")],
        "vessel": [poured_elsewhere],
        "wax": named("wax_first", "wax_row"),
        "wax_second": named("wax_second", "wax_second_row"),
        "share_wax": [product(Shop.wax_share)],
        "load": [product(Shop.load)],
        **{f"oil_{nth}": named(f"oil_{nth}", f"oil_{nth}_row") for nth in ORDINALS},
        **{f"share_{nth}": of_oil(nth) for nth in ORDINALS},
        "wick": named("wick", "wick_row"),
        "wicks": [on("workings", "wicks"), product(Shop.more_wicks)],
        "dye": named("dye", "dye_row"),
        "dye_share": [on("workings", "share_dye"), product(Shop.dye_share)],
        "lid": named("lid", "lid_row"),
        "label": named("label", "label_row"),
        "packing": named("packing", "packing_row"),
        "minutes": [product(Shop.timed)],
        "setup": [product(Shop.set_up)],
        "usual_batch": [product(Shop.timed, False)],  # the card works with the batch it is told of
        "paid_share": [product(Shop.paid_share)],
    },
    "extras": {
        "product": [own("row key"), below("key?"), goes_with_another],
        "material": [own("material_row kind? unit_cost"), goes_with, extra_on_card("A L C? D? E?")],
        "count": [goes_with, extra_on_card("B D M")],
    },
    "sets": {
        "set": [own("key"), below("key?"), other_set],
        "product": [own("row"), other_candle, line_on_card("A L")],
        "count": [in_its_set, line_on_card("B M")],
    },
    "places": {
        "kind": [],
        "fee": [terms("fee"), sold_there(Shop.kept)],
        "fee_basis": [terms("fee_basis"), sold_there(kept_by_basis)],
        "fee_item": of_order(),
        "fee_order": of_order("order_cost"),
        "least_fee": [own("least"), terms("least"), sold_there(Shop.kept)],
        "per_order": [per_order],
        "postage_paid": of_order("order_cost"),
        "postage_charged": of_order("order_cost"),
        "packing_order": of_order("order_cost"),
        "fixed_cost": [cost_of_place],
        "fixed_times": [cost_of_place],
        "discount": [terms("discount"), sold_there(Shop.stated)],
        "stated": [own("stated_used"), terms("stated"), sold_there(stated_otherwise)],
        "collector": [own("tax"), sold_there(Shop.tax)],
        "margin": [terms("margin target_net to_state", "target target_price")],
        "rules": [],
    },
    "prices": {
        "product": [on("selling", "product product_row"), other_product],
        "place": [on("selling", "place place_row"), other_place],
        "price": [lambda shop, entry: shop.sold_for(entry.row)],
    },
    "batch": {
        "product": [alone("batch", "row"), perhaps(alone("batch", CARD))],
        "count": [more_pieces],
        "date": [poured_on],
    },
}  # fmt: skip


def expected(shop, entry):
    """The cells that must move when an entry is changed, and those that may."""
    line = TABLE[entry.table].get(entry.key)
    assert line is not None, f"{entry.table}, {entry.key}: say here who moves when it is changed"
    told = [cell for sentence in line for cell in sentence(shop, entry)]
    # What is typed once has the value in use beside it, unless it is words that no formula asks for.
    if entry.table in ("settings", "what_if") and not SETTING_FIELDS[entry.key].any_text:
        told += cells(entry.table, 0, entry.key)
    must = {cell[:3] for cell in told if cell[3]}
    return must, {cell[:3] for cell in told} - must
