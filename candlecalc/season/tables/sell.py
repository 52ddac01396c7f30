"""Where a maker sells, and at what prices."""

from candlecalc.calc import terms
from candlecalc.season.fields import Field, Table, term_of
from candlecalc.season.tables.taken import MONEY, PRICE, RULES, STATED, YES_NO, entry

PLACE_KINDS = ("own stall", "own web shop", "marketplace", "wholesale shop", "consignment shop")
PLACES = Table(
    "places",
    "Places sold",
    (
        Field("place", "Place", "one line for each place you sell in", name=True, required=True),
        Field("kind", "Kind", "how you sell there; a shop is asked what it keeps", choices=PLACE_KINDS, required=True, width=16, not_in_cost=True),
        Field("fee", "Fee, of price", "what the place, or the card firm, keeps of the price, and of postage charged", term_of(terms.Fee)),
        Field("fee_basis", "Fee is of", "the price before tax (net) or with tax (gross)", choices=term_of(terms.FeeBasis).choices, needed_when=("fee", ()), width=8),
        Field("fee_item", "Fee an item, {money}", "fixed fee for each candle", MONEY),
        Field("fee_order", "Fee an order, {money}", "fixed fee for each order", MONEY),
        Field("least_fee", "Least fee an order, {money}", "the smallest fee by share that an order is charged", MONEY),
        Field("per_order", "Candles an order", term=entry(terms.PerOrder, high=1e4), required=True),
        Field("postage_paid", "Postage paid, {money}", "postage you pay for an order", MONEY),
        Field("postage_charged", "Postage charged, {money}", "postage the buyer pays you for an order, before tax", MONEY),
        Field("packing_order", "Packing an order, {money}", "carton and filling for an order", MONEY),
        Field("fixed_cost", "Fixed cost, {money}", "stand fee or subscription, a day or a month", MONEY),
        Field("fixed_times", "Days or months", "how many of them in the season", entry(terms.Times, high=1e4)),
        Field("discount", "Discount", "what a shop, or a usual offer, takes off the stated price", term_of(terms.Discount)),
        Field("stated", "Prices are", "whether prices there are stated with tax in them; as Settings says if left out", choices=STATED, width=11),
        Field("collector", "Tax is paid by", "who charges the buyer tax and pays it over; nobody where none is due", choices=term_of(terms.Collector).choices, required=True, width=9),
        Field("margin", "Target margin, of price", "profit you want, as a share of the price before tax", term_of(terms.Margin), required=True),
        Field("rules", "Buyers' rules", "which rules its buyers live under: whether prices there are with tax", choices=RULES, required=True, width=8, not_in_cost=True),
        Field("holds_from", "From", "the first day this row holds, where the place has an earlier row", date=True),
        Field("cards_alone", "Fee on cards alone", "yes where the fee is a card firm's: at a market it is then of what Market days say was paid by card", choices=YES_NO, width=9),
    ),
    usual_rows=12,
    purpose="Where you sell, what each place keeps, and what you want left.",
    unique=("place", "holds_from"),
    optional=True,
)  # fmt: skip

PRICES = Table(
    "prices",
    "Prices",
    (
        Field("product", "Product", "what you sell", names_from="recipes", required=True, width=23),
        Field("place", "Place", "where you sell it", names_from="places", required=True, width=23),
        Field("price", "Your price, {money}", "the price you ask there, as it is stated there", PRICE, required=True, width=9),
        Field("holds_from", "From", "the first day this price holds, where there is an earlier one", date=True),
    ),
    usual_rows=180,
    purpose="What each candle must fetch in each place, and what your own price leaves.",
    unique=("product", "place", "holds_from"),
    optional=True,
)  # fmt: skip
