"""The tables of a season: settings, materials, vessels, recipes, sets, places sold, prices."""

from dataclasses import replace

from candlecalc.calc import terms
from candlecalc.declaration.term import Term
from candlecalc.season.fields import Field, Table, term_of


def _entry(annotated: object, low: float | None = None, high: float | None = None) -> Term:
    """A term as an entry takes it: within what a candle maker can mean, in the units of `calc`.

    A number outside is a slip: another unit, a fraction that became a date, minutes that became a time of day.
    """
    term = annotated if isinstance(annotated, Term) else term_of(annotated)
    return replace(term, low=term.low if low is None else low, high=term.high if high is None else high)


# In any currency: a pack may cost a million where a coin is worth little.
MONEY = _entry(terms.Money, high=1e6)
RATE = _entry(terms.HourlyRate, high=1e6)
PRICE = Term("money", "a price", low_excluded=True, high=1e6)
A_WEIGHT, A_DEGREE = Term("g", "a weight", low_excluded=True), Term("C", "a temperature")
MELTS, POURS = _entry(A_DEGREE, 20, 110), _entry(A_DEGREE, 30, 120)  # wax freezes below, and smokes above
CEILING, FLASH = _entry(A_DEGREE, 40, 250), _entry(A_DEGREE, 20, 300)
WATER, POT = _entry(A_WEIGHT, 10, 20e3), _entry(A_WEIGHT, 100, 200e3)
INSIDE, PANEL, BASE = _entry(terms.Length, 10, 600), _entry(terms.Length, 5, 600), _entry(terms.BaseRise, -50, 50)
MINUTES = _entry(terms.Minutes, high=1440)
A_MOMENT = 0.05  # minutes; 0:05, typed for five, is a 288th of a day to a spreadsheet
STATED = term_of(terms.Stated).choices
CURE_DAYS = Term("", "whole days", high=365.0, whole=True)

WEIGHED = ("wax", "fragrance oil", "dye")
KINDS = (*WEIGHED, "wick", "vessel", "lid", "label", "packaging", "other")
UNITS = ("each", "g", "kg", "oz", "lb")
YES_NO = ("yes", "no")
RULES = ("us", "gb", "eu", "other")

SETTINGS = Table(
    "settings",
    "Settings",
    (
        Field("maker", "Maker", "your name or your firm's, as it stands on sheets and labels", longest=40),
        Field("place", "Place", "where you make candles", longest=40),
        Field("season", "Season", "what you call this season: Spring 2027", required=True, longest=40),
        Field("first_day", "First day", "first day of the season", date=True, required=True),
        Field("last_day", "Last day", "last day of the season", date=True, required=True),
        Field("registered", "Registered for tax", "whether you charge sales tax or VAT yourself", choices=YES_NO, required=True),
        Field("tax_rate", "Tax rate, of the price", "rate of sales tax or VAT where you sell; ask your tax office", term_of(terms.Tax), required=True),
        Field("paid_rate", "Paid help, {money} an hour", "what an hour of paid help costs you, all told", RATE, required=True),
        Field("own_rate", "Own time, {money} an hour", "what an hour of your own time must earn", RATE, required=True),
        Field("production_overhead", "Production overhead, {money} a season", "workshop rent, power, tools: what making costs besides materials and work", MONEY, required=True),
        Field("running_costs", "Running costs, {money} a season", "insurance, phone, web site, travel: what the business costs besides making", MONEY, required=True),
        Field("season_hours", "Hours at the bench, a season", "hours of making that the two sums above are spread over", _entry(terms.Activity, 1, 20e3), required=True),
        Field("waste", "Waste, of what is weighed out", "wax and oil left in pots and jugs", term_of(terms.Waste), required=True),
        Field("price_step", "Price step, {money}", "the step between the prices you use", _entry(terms.PriceStep, high=1e5), required=True),
        Field("price_ending", "Price ending, {money}", "what your prices end in: 0.95 for 17.95; below the step", _entry(terms.Ending, high=1e5), required=True),
        Field("scale_step", "Scale step, {weight}", "the smallest step your scale shows", term_of(terms.Step), required=True),
        Field("largest_pot", "Largest pot, {weight}", "wax and oil that your largest pot holds with room to stir", POT, required=True),
    ),
    usual_rows=0,
    purpose="What holds for the whole season.",
)  # fmt: skip

# A question that Costing answers, asked where the answer stands.
WHAT_IF = Table(
    "what_if",
    "Costing",
    (
        Field(
            "materials_rise",
            "What if materials rise by",
            "the last full cost of each row is with materials this much dearer",
            term_of(terms.Rise),
            required=True,
        ),
    ),
    usual_rows=0,
    optional=True,
)

# What a workbook is made for. It stands on Settings too, but a change takes a new workbook.
MADE_FOR = Table(
    "made_for",
    "Settings",
    (
        Field("region", "Rules and habits of", "us, gb or eu", choices=("us", "gb", "eu"), required=True),
        Field("currency", "Currency", "the currency's three letters", required=True),
        Field("paper", "Paper", "paper that tabs print on", choices=("Letter", "A4"), required=True),
        Field("weight_unit", "Weights in", "ounces or grams", choices=("oz", "g"), required=True),
        Field("temperature_unit", "Temperatures in", "degrees", choices=("F", "C"), required=True),
        Field("length_unit", "Lengths in", "inches or millimetres", choices=("in", "mm"), required=True),
        Field(
            "shelf_prices",
            "Shelf prices usually are",
            "with tax in them, or before tax",
            choices=STATED,
            required=True,
        ),
        Field("records", "Records of the year", "yes where it keeps purchases, batches and stock", choices=YES_NO),
    ),
    usual_rows=0,
)

# What is typed once, wherever it stands: by its key, in the order of settings.csv.
ONCE = (SETTINGS, WHAT_IF, MADE_FOR)
SETTING_FIELDS: dict[str, Field] = {field.key: field for table in ONCE for field in table.fields}

MATERIALS = Table(
    "materials",
    "Materials",
    (
        Field("material", "Material", "one line for each thing you buy", name=True, required=True),
        Field("kind", "Kind", "what it is used as", choices=KINDS, required=True, width=14),
        Field("supplier", "Supplier", "where you buy it", width=30, longest=28),
        Field("pack_size", "Pack size", "how much the pack holds", _entry(terms.PackSize, 0.01, 1e6), required=True),
        Field("pack_unit", "Pack unit", "the unit of the pack size: each for pieces", choices=UNITS, required=True, width=7),
        Field("pack_price", "Pack price, {money}", "price of the pack today, before tax you can claim back", MONEY, required=True),
        Field("shipping", "Shipping, {money}", "the pack's share of the shipping", MONEY),
        Field("tax", "Tax kept, {money}", "tax on the pack that you cannot claim back", MONEY),
        Field("on_hand", "On hand, in pack unit", "how much you have, in the unit of the pack size", Term("", "an amount", high=1e7)),
        Field("stands_in_for", "Stands in for", "the material it can take the place of", names_from="materials", not_in_cost=True),
        Field("density", "Density, g/ml", "wax at the temperature you fill to the mark; from its data sheet, or weigh it", term_of(terms.Density), needed_when=("kind", ("wax",)), missing="wax needs it; see the data sheet, or weigh 100 ml"),
        Field("melt_low", "Melts from, {temperature}", "low end of the wax's melting range", MELTS, not_in_cost=True),
        Field("melt_high", "Melts to, {temperature}", "high end of the wax's melting range", MELTS, not_in_cost=True),
        Field("add_at", "Add oil at, {temperature}", "temperature to add oil at, by the wax's data sheet", POURS, not_in_cost=True),
        Field("pour_at", "Pour at, {temperature}", "temperature to pour at, by the wax's data sheet", POURS, not_in_cost=True),
        Field("ceiling", "Never above, {temperature}", "the wax's highest temperature, by its data sheet", CEILING, not_in_cost=True),
        Field("usual_load", "Usual load, of wax", "the load you start from with this wax or oil", term_of(terms.Load), not_in_cost=True),
        Field("highest_load", "Highest load", "the supplier's highest load for this wax or oil", term_of(terms.Highest), not_in_cost=True),
        Field("basis", "Highest load is", "what the highest load is a share of; of wax if left out", choices=term_of(terms.LoadBasis).choices, width=9, not_in_cost=True),
        Field("certified_limit", "Certified limit, of candle", "highest share of the oil in a candle by its certificate; nothing if it sets none", term_of(terms.Limit), not_in_cost=True),
        Field("flash_point", "Flash point, {temperature}", "of the neat oil, by its data sheet: for storing and shipping it", FLASH, not_in_cost=True),
        Field("cure_days", "Cure, days", "days from pouring to selling, by the wax", CURE_DAYS, not_in_cost=True),
        Field("priced_on", "Price seen on", "the day the supplier asked this price", date=True, not_in_cost=True),
    ),
    usual_rows=200,
    purpose="What you buy, what it costs, and what its data sheet says.",
    unique=("material",),
)  # fmt: skip

VESSELS = Table(
    "vessels",
    "Vessels",
    (
        Field("vessel", "Vessel", "one line for each jar, tin, glass or mould", name=True, required=True),
        Field("use", "Use", "stays with the candle, or a mould that is used again", choices=("stays", "mould"), required=True, width=8),
        Field("bought_as", "Bought as", "its line on Materials; none for a mould", names_from="materials", kind="vessel", needed_when=("use", ("stays",))),
        Field("measured", "Measured by", "by the water it holds, or by its size: round or box", choices=("water", "round", "box"), required=True, width=12),
        Field("water", "Water to the brim, {weight}", "weigh the vessel full of water, less the vessel", WATER, needed_when=("measured", ("water",))),
        Field("water_temperature", "Water at, {temperature}", "temperature of that water", term_of(terms.WaterTemperature), needed_when=("measured", ("water",))),
        Field("top", "Inside top or length, {length}", "round: inside diameter at the top; box: inside length", INSIDE, needed_when=("measured", ("round", "box"))),
        Field("bottom", "Inside bottom or width, {length}", "round: inside diameter at the bottom; box: inside width", INSIDE, needed_when=("measured", ("round", "box"))),
        Field("height", "Inside height, {length}", "from the floor's edge to the brim", INSIDE, needed_when=("measured", ("round", "box"))),
        Field("base", "Floor pushed up, {length}", "how high the floor is pushed up; minus where it bulges down", BASE),
        Field("headspace", "Headspace, of brim volume", "share left empty above the wax", _entry(terms.Headspace, high=0.6), required=True),
        Field("diameter", "Melt pool across, {length}", "inside diameter where the wax stands, for choosing a wick", INSIDE, not_in_cost=True),
        Field("panel_width", "Label panel width, {length}", "flat or round face that a label can cover", PANEL, not_in_cost=True),
        Field("panel_height", "Label panel height, {length}", "height of that face", PANEL, not_in_cost=True),
    ),
    usual_rows=24,
    purpose="What you pour into, how it was measured, and how far it is filled.",
    unique=("vessel",),
)  # fmt: skip

MADE = ("kind", ("made",))
RECIPES = Table(
    "recipes",
    "Recipes",
    (
        Field("product", "Product", "one line for each thing you sell", name=True, required=True),
        Field("tag", "Season tag", "your own word for a range or a season", width=17, longest=16, not_in_cost=True),
        Field("kind", "Made or set", "made: a candle; set: a box of candles, listed on Sets", choices=("made", "set"), required=True, width=8),
        Field("vessel", "Vessel", "what it is poured into", names_from="vessels", needed_when=MADE),
        Field("wax", "Wax", "the wax, or the first of two", names_from="materials", kind="wax", needed_when=MADE),
        Field("wax_second", "Second wax", "a second wax blended in", names_from="materials", kind="wax"),
        Field("share_wax", "Second wax, of wax", "share of the second wax", term_of(terms.Part)),
        Field("load", "Load, of wax", "fragrance oil as a share of wax weight", term_of(terms.Load), needed_when=MADE),
        Field("oil_first", "Oil 1", "the fragrance oil, or the first of up to three", names_from="materials", kind="fragrance oil"),
        Field("share_first", "Oil 1, of oil", "its share of the oil; 1 if left out", term_of(terms.Part)),
        Field("oil_second", "Oil 2", "a second oil", names_from="materials", kind="fragrance oil"),
        Field("share_second", "Oil 2, of oil", "its share of the oil", term_of(terms.Part)),
        Field("oil_third", "Oil 3", "a third oil", names_from="materials", kind="fragrance oil"),
        Field("share_third", "Oil 3, of oil", "its share of the oil", term_of(terms.Part)),
        Field("wick", "Wick", "the wick; none for a wax melt", names_from="materials", kind="wick"),
        Field("wicks", "Wicks, each", "how many wicks a candle has; 1 if left out, 0 for a melt that stays in its vessel", Term("", "how many", high=12.0, whole=True)),
        Field("dye", "Dye", "the dye, if any", names_from="materials", kind="dye"),
        Field("dye_share", "Dye, of wax", term=term_of(terms.DyeShare)),
        Field("lid", "Lid", "the lid, if any", names_from="materials", kind="lid"),
        Field("label", "Label", "the label, if any", names_from="materials", kind="label"),
        Field("packing", "Packing", "box, sleeve or wrap that it is sold in", names_from="materials", kind="packaging"),
        Field("minutes", "Minutes, each", "working minutes for each one, without set-up", MINUTES, smallest=A_MOMENT, required=True),
        Field("setup", "Set-up, minutes", "minutes to set up and clean, once a batch", MINUTES, smallest=A_MOMENT, required=True),
        Field("usual_batch", "Usual batch", "how many you usually make together", _entry(terms.Batch, high=1e4), required=True),
        Field("paid_share", "Paid help, of time", term=term_of(terms.PaidShare)),
    ),
    usual_rows=60,
    purpose="What you sell and how it is made, for one piece.",
    unique=("product",),
)  # fmt: skip

SETS = Table(
    "sets",
    "Sets",
    (
        Field("set", "Set", "the set, as it stands on Recipes", names_from="recipes", kind="set", required=True),
        Field("product", "Candle in it", "a candle that is made", names_from="recipes", kind="made", required=True),
        Field("count", "How many", "how many of it are in the set", Term("", "how many", low=1.0, high=100.0, whole=True), required=True),
    ),
    usual_rows=60,
    purpose="Which candles are in a set: a line for each.",
    unique=("set", "product"),
    optional=True,
)  # fmt: skip

PLACE_KINDS = ("own stall", "own web shop", "marketplace", "wholesale shop", "consignment shop")
PLACES = Table(
    "places",
    "Places sold",
    (
        Field("place", "Place", "one line for each place you sell in", name=True, required=True),
        Field("kind", "Kind", "how you sell there", choices=PLACE_KINDS, required=True, width=16, not_in_cost=True),
        Field("fee", "Fee, of price", "what the place, or the card firm, keeps of the price", term_of(terms.Fee)),
        Field("fee_basis", "Fee is of", "the price before tax (net) or with tax (gross)", choices=term_of(terms.FeeBasis).choices, needed_when=("fee", ()), width=8),
        Field("fee_item", "Fee an item, {money}", "fixed fee for each candle", MONEY),
        Field("fee_order", "Fee an order, {money}", "fixed fee for each order", MONEY),
        Field("least_fee", "Least fee an order, {money}", "the smallest fee by share that an order is charged", MONEY),
        Field("per_order", "Candles an order", term=_entry(terms.PerOrder, high=1e4), required=True),
        Field("postage_paid", "Postage paid, {money}", "postage you pay for an order", MONEY),
        Field("postage_charged", "Postage charged, {money}", "postage the buyer pays you for an order, before tax", MONEY),
        Field("packing_order", "Packing an order, {money}", "carton and filling for an order", MONEY),
        Field("fixed_cost", "Fixed cost, {money}", "stand fee or subscription, a day or a month", MONEY),
        Field("fixed_times", "Days or months", "how many of them in the season", _entry(terms.Times, high=1e4)),
        Field("discount", "Discount", "what a shop, or a usual offer, takes off the stated price", term_of(terms.Discount)),
        Field("stated", "Prices are", "whether prices there are stated with tax in them; as Settings says if left out", choices=STATED, width=11),
        Field("collector", "Tax is paid by", "who charges the buyer tax and pays it over; nobody where none is due", choices=term_of(terms.Collector).choices, required=True, width=9),
        Field("margin", "Target margin, of price", "profit you want, as a share of the price before tax", term_of(terms.Margin), required=True),
        Field("rules", "Buyers' rules", "which rules its buyers live under", choices=RULES, required=True, width=8, not_in_cost=True),
    ),
    usual_rows=12,
    purpose="Where you sell, what each place keeps, and what you want left.",
    unique=("place",),
    optional=True,
)  # fmt: skip

PRICES = Table(
    "prices",
    "Prices",
    (
        Field("product", "Product", "what you sell", names_from="recipes", required=True),
        Field("place", "Place", "where you sell it", names_from="places", required=True),
        Field("price", "Your price, {money}", "the price you ask there, as it is stated there", PRICE, required=True),
    ),
    usual_rows=180,
    purpose="What each candle must fetch in each place, and what your own price leaves.",
    unique=("product", "place"),
    optional=True,
)  # fmt: skip

PACKS = Term("", "how many packs", low=0.0, low_excluded=True, high=1e5)

PURCHASES = Table(
    "purchases",
    "Purchases",
    (
        Field("date", "Date", "the day on the supplier's document", date=True, required=True),
        Field("document", "Document", "the number of the invoice, receipt or delivery note", width=16, longest=32),
        Field("material", "Material", "what was bought: its line on Materials", names_from="materials", required=True),
        Field("packs", "Packs", "how many packs came, in the pack size on Materials", PACKS, required=True),
        Field("price", "Price, {money} a pack", "before tax you can claim back", MONEY, required=True),
        Field("discount", "Discount, {money}", "taken off this line", MONEY),
        Field("charges", "Freight and duty, {money}", "of the whole document: typed once, on any of its lines", MONEY),
        Field("tax", "Tax kept, {money}", "tax on this line that you cannot claim back", MONEY),
        Field("supplier", "Supplier", "who sold it", width=24, longest=28),
        Field("lot", "Supplier's lot", "the number on the pack", width=16, longest=32),
        Field("expiry", "Use by", "the day on the pack", date=True, not_in_cost=True),
    ),
    usual_rows=400,
    purpose="What you bought, a line for each material on a document, and what it cost with freight and duty.",
    optional=True,
    records=True,
)  # fmt: skip

TABLES: dict[str, Table] = {
    table.key: table for table in (MATERIALS, VESSELS, RECIPES, SETS, PLACES, PRICES, PURCHASES)
}


def tables_of(records: bool) -> dict[str, Table]:
    """The tables of a season: for costs and prices alone, or with the year's records."""
    return {key: table for key, table in TABLES.items() if records or not table.records}
