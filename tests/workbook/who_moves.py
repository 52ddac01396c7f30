"""Who moves when one entry is changed: for every field that is typed, in a maker's words.

A line names the columns of the entry's own row and what follows for those that use it; `shop.py` says what
that is. A field that feeds no number has an empty line.
"""

from shop import EXTRAS, MATERIALS, PIECES, POTS, WEIGHED, WORK, Shop, cells, maybe

from candlecalc.season.tables.once import SETTING_FIELDS

STEPS = ("melt_high", "heat_to", "ceiling", "add_at", "pour_at")  # what the card says of the wax
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


def lines_after(columns):
    """The lines after it of the same set or product, which count one fewer."""

    def told(shop, entry):
        key, name = next(iter(shop.typed(entry).items()))
        after = [row for row in shop.lines(entry.table, key, name) if row > entry.row]
        return [cell for row in after for cell in cells(entry.table, row, columns)]

    return told


def on(tab, columns):
    """The same row of a tab that goes with the table."""
    return lambda shop, entry: cells(tab, entry.row, columns)


def alone(tab, columns):
    """Cells that stand alone: on Settings, on the card, a list of names; "*?" is any of them."""
    return lambda shop, entry: cells(tab, 0, columns)


def each(found):
    """What follows for each of those that are found: `users(Shop.price)` is the price of every user."""
    return lambda effect, *given: (
        lambda shop, entry: [
            cell
            for one in found(shop, entry)
            for cell in effect(shop, *(one if isinstance(one, tuple) else (one,)), *given)
        ]
    )


users = each(lambda shop, entry: shop.users(shop.name(entry)))  # candles that take the material, with its part there
users_of_other = each(lambda shop, entry: shop.users(shop.typed(entry)["stands_in_for"]))
poured = each(lambda shop, entry: shop.poured(shop.name(entry)))  # candles poured into the vessel
weighed_in = each(lambda shop, entry: shop.weighed_in(shop.name(entry)))  # candles whose fill was weighed in the wax
product = each(lambda shop, entry: [shop.name(entry)])  # the one of the entry's row
on_the_card = each(lambda shop, entry: [shop.shown])
every_product = each(lambda shop, entry: shop.recipes)
sold_there = each(lambda shop, entry: shop.lines("prices", "place", shop.name(entry)))  # lines of Prices at the place
every_price = each(lambda shop, entry: range(len(shop.tables["prices"])))
every_place = each(lambda shop, entry: range(len(shop.tables["places"])))


def on_row_of(shop, row, tab, columns):
    return cells(tab, row, columns)


def terms(columns, prices=""):
    """What the place's lines show of it on Selling, and on Prices."""
    return sold_there(lambda shop, line: cells("selling", line, columns) + cells("prices", line, prices))


def where(keys, *sentences):
    """They follow where the row has one of these entries."""
    return lambda shop, entry: [
        cell
        for sentence in sentences
        if any(shop.typed(entry)[key] for key in keys.split())
        for cell in sentence(shop, entry)
    ]


def perhaps(sentence):
    """All of it may move and need not."""
    return lambda shop, entry: maybe(sentence(shop, entry))


def one_of_several(sentence):
    """Of several limits or flash points the least counts, and of two cures the longer: it may stay."""
    of_several = ("highest", "wax_takes", "flash", "cure", "cure_days")
    return lambda shop, entry: [(*cell[:3], cell[3] and cell[1] not in of_several) for cell in sentence(shop, entry)]


# --- what is not said by a row alone -----------------------------------------------------------------


def named(part, row):
    """The recipe names another material for a part."""
    told = [product(effect, part) for effect in (Shop.price, Shop.on_hand, Shop.denser)]
    told += [product(Shop.card_of, [part], "E?")] if part in PIECES else []
    told += [perhaps(product(Shop.filled))] if part.startswith("wax") else []
    told += [one_of_several(product(effect, part)) for effect in (Shop.limit, Shop.certificate, Shop.flash, Shop.cures)]
    return [
        on("workings", f"{row} usual_wax? usual_oil? usual?"),
        product(Shop.card_of, [part], "A L"),
        product(Shop.step, part, *STEPS),
        *told,
    ]


# What a fill may go by.
BY_WAY = "measured? density? density_second? least? blend? by_volume? scaled? as_weighed? other_wax? "
BY_WAY += "fill_wax? fill_wax_row? fill_density?"


def bought_otherwise(shop, name):
    """Its vessel is bought as another material."""
    told = cells("workings", shop.row[name], "bought bought_row") + shop.card_of(name, ["vessel"], "A L")
    return told + shop.price(name, "vessel") + shop.on_hand(name, "vessel")


def poured_elsewhere(shop, name):
    """The recipe names another vessel, which may be bought as nothing."""
    told = cells("workings", shop.row[name], f"vessel_row volume headspace bought bought_row use? pool? {BY_WAY}")
    told += cells("amounts", shop.row[name], "vessel?") + maybe(shop.card_of(name, ["vessel"], "A B C D E L M"))
    return (
        told
        + shop.filled(name)
        + shop.card(name, "fill_words? panel? panel_wide? panel_by? panel_high?")
        + shop.price(name, "vessel")
    )


def measured_otherwise(shop, name):
    """The fill is known in another way, and what that rests on comes into use."""
    told = cells("workings", shop.row[name], f"measured volume? headspace? {BY_WAY}")
    return told + shop.card(name, "fill_words?")


def weighed_with_another(shop, name):
    """Its vessel's fill was weighed with another wax."""
    told = "fill_wax fill_wax_row fill_density" + " other_wax" * shop.as_weighed(name)
    return cells("workings", shop.row[name], told) + shop.filled(name) + shop.card(name, "fill_words")


def less_full(shop, name):
    return cells("workings", shop.row[name], "headspace") + shop.filled(name)


def short(shop, name, part):
    """The card says of pieces that run short what may be taken instead."""
    return shop.card_of(name, [part], "" if part in WEIGHED else "E")


def of_collector(shop, row, columns, *collectors):
    """What a place says where one of these pays the tax."""
    return cells("places", row, columns if shop.tables["places"][row]["collector"] in collectors else "")


def taxed_otherwise(shop, line):
    """The rate counts where somebody collects it."""
    return shop.tax(line) if shop.taxed(line) else []


def scaled(shop, name):
    """All that the card weighs is shown to the scale's step."""
    there = [part for part in WEIGHED if part in shop.parts[name]]
    return shop.card_of(name, there, "B C D E? F? G? H") + shop.card(name, "load? load_fewer?" if there else "")


def shared_among_pots(shop, name):
    """How what is melted is shared among pots."""
    there = shop.weighed(name)
    told = [*shop.card(name, "pots in_pot"), *maybe(shop.card(name, POTS))] if there else []
    return told + shop.card_of(name, there, "B? C? D E F? G? H?")


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


def fee_on_postage(shop, row):
    """What an order costs there moves with the fee on the postage that its buyer pays, where there is one.

    What is left of the least fee moves too, where there is one.
    """
    place = shop.tables["places"][row]
    if not (place["fee"] and place["postage_charged"]):
        return []
    told = cells(
        "places", row, "on_postage order_fees order_cost fixed" + " least_left least" * bool(place["least_fee"])
    )
    for line, priced in enumerate(shop.tables["prices"]):
        if priced["place"] == place["place"]:
            told += cells("selling", line, "fixed") + hidden(shop, line, shop.fixed(line))
            told += cells("selling", line, "least") + maybe(shop.kept(line)) if place["least_fee"] else []
    return told


def on_own_postage(shop, entry):
    return fee_on_postage(shop, entry.row)


def on_postage_with_tax(shop, row):
    """The same where the fee is of what is paid with tax, and tax is paid."""
    place = shop.tables["places"][row]
    return fee_on_postage(shop, row) if place["fee_basis"] == "gross" and place["collector"] != "nobody" else []


def on_own_postage_taxed(shop, entry):
    return fee_on_postage(shop, entry.row) if shop.typed(entry)["collector"] != "nobody" else []


def cost_of_place(shop, entry):
    """The place's own cost is a sum and how often it is paid."""
    place = shop.typed(entry)
    there = place["fixed_cost"] and place["fixed_times"]
    return [*own("season_fixed")(shop, entry), *terms("season_fixed", "must_sell")(shop, entry)] if there else []


def in_its_set(shop, entry):
    """A line brings into the cost of its set what its candle costs."""
    row = shop.typed(entry)
    spends = shop.spends(row["product"])
    minutes = ["own_minutes"] * ("own" in spends)
    return cells("sets", entry.row, " ".join([*spends, "brought", *minutes])) + shop.full_cost(row["set"], spends)


def other_candle(shop, entry):
    kinds = [*MATERIALS, *WORK]
    told = cells("sets", entry.row, " ".join([*kinds, "brought", "own_minutes"]))
    told += shop.full_cost(shop.typed(entry)["set"], kinds)
    return maybe(told) + in_its_set(shop, entry)


def line_on_card(letters):
    """The card counts the candles of a set that it shows."""

    def told(shop, entry):
        name = shop.typed(entry)["set"]
        nth = 1 + shop.lines("sets", "set", name).index(entry.row)
        return shop.card_of(name, [f"candle_{nth}"], letters)

    return told


def other_set(shop, entry):
    """A candle leaves one set and comes into another: the lines of both are counted anew."""
    spends = shop.spends(shop.typed(entry)["product"])
    yield from cells("sets", entry.row, "set_row")
    for name, recipe in shop.recipes.items():
        if recipe["kind"] == "set":
            yield from cells("workings", shop.row[name], "in_set") + shop.full_cost(name, spends)
            yield from maybe(shop.card_of(name, [f"candle_{nth}" for nth in range(1, 7)], "A B L M"))


def extra_on_card(letters):
    """The card counts what goes with the product that it shows."""

    def told(shop, entry):
        row = shop.typed(entry)
        nth = shop.extras(row["product"]).index(row)
        return shop.card_of(row["product"], [EXTRAS[nth]], letters)

    return told


def other_product(shop, entry):
    """The line sells another candle."""
    priced = [cells("workings", row, "priced") for row in shop.row.values()]
    told = shop.dearer(entry.row, materials=True) + priced[shop.row[shop.typed(entry)["product"]]]
    return told + maybe(sum(priced, []))


def other_place(shop, entry):
    """The line sells in another place: all its terms may differ."""
    told = cells("selling", entry.row, "fee fee_basis fixed least tax discount stated margin season_fixed")
    told += cells("prices", entry.row, "tax target")
    return maybe(told + shop.fixed(entry.row) + shop.kept(entry.row) + shop.stated(entry.row))


def more_pieces(shop, name):
    """More of everything; what setting up costs is spread over more, the rest of a piece stays as it is."""
    parts, candles = shop.weighed(name), shop.candles(name)
    yield from shop.card(name, "makes" + " melt pots" * bool(parts)) + maybe(shop.card(name, POTS))
    yield from shop.card_of(name, parts, "B C D? E? F? G? H")
    yield from shop.card_of(name, [part for part in shop.parts[name] if part not in WEIGHED], "B D")
    yield from shop.card_of(name, [f"candle_{nth}" for nth, _ in enumerate(candles, start=1)], "B")
    work = {kind for one in (name, *candles) for kind in shop.work(one)}
    yield from shop.card_of(name, ["materials", "making", "full", *work], "C")
    yield from shop.card_of(name, [*shop.work(name), "making", "full"] if shop.recipes[name]["setup"] else [], "B")


def its_way(shop, entry):
    """Measures count in the way that the vessel is measured; the other ways stay blank, and a weighed fill has none."""
    way = shop.typed(entry)["measured"]
    return [] if way == "fill" else cells("vessels", entry.row, f"by_{way} volume")


def of_order(columns=""):
    """A sum that a sale costs at the place."""
    return [own(f"{columns} fixed"), sold_there(Shop.fixed)]


def of_oil(nth):
    shares = f"share_{nth} shares blend_supplier load_supplier load_certified? highest?"
    return [on("workings", shares), product(Shop.oil_share, f"oil_{nth}")]


def of_time(kind):
    return [alone("settings", f"{kind}_an_hour"), every_product(Shop.rate, kind)]


MEASURED = [its_way, poured(Shop.holds)]
GOES_WITH = [own("cost"), product(Shop.goes_with)]
ORDINALS = ("first", "second", "third")
TABLE = {
    "settings": {
        "maker": [], "place": [], "season": [], "first_day": [], "last_day": [],
        "registered": [alone("settings", "registered_yes"), every_place(of_collector, "warnings", "maker")],
        "tax_rate": [
            every_place(of_collector, "tax", "maker", "place"),
            every_place(on_postage_with_tax),
            every_price(taxed_otherwise),
        ],
        "paid_rate": [every_product(Shop.rate, "paid")],
        "own_rate": [every_product(Shop.rate, "own")],
        "production_overhead": of_time("overhead"),
        "running_costs": of_time("running"),
        "season_hours": of_time("overhead") + of_time("running"),
        "waste": [every_product(Shop.weighed_out)],
        "price_step": [every_price(on_row_of, "prices", "target_price")],
        "price_ending": [every_price(on_row_of, "prices", "target_price")],
        "scale_step": [on_the_card(scaled)],
        "largest_pot": [on_the_card(shared_among_pots)],
        "as_of": [],  # of recipes with a later row, and of stock where there are records
        "books": [],  # of the hand-over alone, as the two below
        "year_from": [],
        "closed_to": [],
        "spread_tests": [],  # what tests cost is in the records
    },
    "what_if": {"materials_rise": [every_product(lambda shop, name: cells("costing", shop.row[name], "risen"))]},
    "materials": {
        "kind": [own("of_kind"), below("of_kind?"), alone("lists", LISTS)],
        "supplier": [],
        "pack_size": [own("size typed_cost unit_cost"), users(Shop.price)],
        "pack_unit": [own("factor size typed_cost unit_cost stock reorder?"), users(Shop.price), users(Shop.on_hand)],
        "pack_price": [own("typed_cost unit_cost"), users(Shop.price)],
        "shipping": [own("typed_cost unit_cost"), users(Shop.price)],
        "tax": [own("typed_cost unit_cost"), users(Shop.price)],
        "on_hand": [own("stock"), users(Shop.on_hand)],
        "stands_in_for": [users_of_other(short)],
        "density": [
            users(Shop.denser),
            weighed_in(lambda shop, name: cells("workings", shop.row[name], "fill_density")),
        ],
        "melt_low": [],
        **{key: [users(Shop.step, key)] for key in STEPS},
        "cure_days": [users(Shop.cures)],
        "usual_load": [users(Shop.usual)],
        "highest_load": [own("load_limit share_limit"), users(Shop.limit)],
        "basis": [own("load_limit share_limit"), one_of_several(users(Shop.limit))],
        "certified_limit": [own("candle_limit"), users(Shop.certificate)],
        "flash_point": [own("flash"), users(Shop.flash)],
        "priced_on": [],
        "reorder_at": [own("least reorder")],
        "price_from": [],  # what was paid is in the records
    },
    "vessels": {
        "use": [poured(lambda shop, name: cells("workings", shop.row[name], "use"))],
        "bought_as": [poured(bought_otherwise)],
        "measured": [own("by_water? by_round? by_box? volume?"), *MEASURED, poured(measured_otherwise)],
        "water": MEASURED,
        "water_temperature": MEASURED,
        "top": MEASURED,
        "bottom": MEASURED,
        "height": MEASURED,
        "base": MEASURED,
        "headspace": [poured(less_full)],
        "diameter": [poured(lambda shop, name: cells("workings", shop.row[name], "pool"))],
        "panel_width": [poured(Shop.card, "panel_wide")],
        "panel_height": [poured(Shop.card, "panel_high")],
        "fill": MEASURED,
        "fill_wax": [poured(weighed_with_another)],
    },
    "recipes": {
        "tag": [product(Shop.card, "tag")],
        "kind": [own("of_kind"), below("of_kind?"), on("workings", "kind"), alone("lists", "recipes_made recipes_set")],
        "vessel": [product(poured_elsewhere)],
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
        "holds_from": [],  # nothing while it is past and the product has no other row
    },
    "extras": {
        "product": [
            own("row first key nth?"),
            lines_after("key nth"),
            below("key? nth?"),
            product(Shop.goes_with),
            perhaps(every_product(Shop.goes_with)),
            perhaps(every_product(Shop.card_of, EXTRAS, "A B C D E L M")),
        ],
        "material": [own("material_row kind? unit_cost"), *GOES_WITH, extra_on_card("A L C? D? E?")],
        "count": [*GOES_WITH, extra_on_card("B D M")],
    },
    "sets": {
        "set": [own("key"), lines_after("key"), below("key?"), other_set],
        "product": [own("row product_row"), other_candle, line_on_card("A L")],
        "count": [in_its_set, line_on_card("B M")],
    },
    "places": {
        "kind": [],
        "fee": [terms("fee"), sold_there(Shop.kept), on_own_postage],
        "fee_basis": [terms("fee_basis"), sold_there(kept_by_basis), on_own_postage_taxed],
        "fee_item": of_order(),
        "fee_order": of_order("order_fees order_cost"),
        "least_fee": [own("least_left least"), terms("least"), sold_there(Shop.kept)],
        "per_order": [
            where("fee_order postage_paid postage_charged packing_order", *of_order()),
            where("least_fee", own("least"), terms("least"), perhaps(sold_there(Shop.kept))),
        ],
        "postage_paid": of_order("order_cost"),
        "postage_charged": [*of_order("order_cost"), on_own_postage],
        "packing_order": of_order("order_cost"),
        "fixed_cost": [cost_of_place],
        "fixed_times": [cost_of_place],
        "discount": [terms("discount"), sold_there(Shop.stated)],
        "stated": [own("stated_used"), terms("stated"), sold_there(stated_otherwise)],
        "collector": [own("tax"), sold_there(Shop.tax), lambda shop, entry: on_postage_with_tax(shop, entry.row)],
        "margin": [terms("margin target_net to_state", "target target_price")],
        "rules": [],
        "holds_from": [],  # nothing while it is past and the place has no other row
        "cards_alone": [],  # of market days, in the year's records
    },
    "prices": {
        "product": [on("selling", "product product_row"), other_product],
        "place": [on("selling", "place place_row"), other_place],
        "price": [lambda shop, entry: shop.sold_for(entry.row)],
        "holds_from": [],  # the same
    },
    "batch": {
        "product": [alone("batch", "row"), alone("batch", "*?")],
        "count": [on_the_card(more_pieces)],
        "date": [on_the_card(Shop.step, "wax_first", "cure_days")],
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
