"""Price: from cost to a price in each place, and what is left of it."""

import math

from candlecalc.calc.sources import ALGEBRA, BREAK_EVEN, MARKUP, PRACTICE
from candlecalc.calc.terms import (
    Candles,
    Collector,
    Cost,
    Costs,
    Digits,
    Discount,
    Ending,
    Fee,
    FeeBasis,
    LowestPrice,
    Margin,
    Markup,
    Mix,
    Money,
    PerOrder,
    Price,
    Prices,
    PriceStep,
    RealMargin,
    RealMarkup,
    ShelfPrice,
    SignedMoney,
    Stated,
    Tax,
    TaxedPrice,
    Times,
)
from candlecalc.calc.terms.selling import (
    AllFees,
    FeeAnItem,
    FirstDiscount,
    FixedAnOrder,
    FixedCosts,
    FixedSums,
    Lots,
    MaterialsAlone,
    OrderFee,
    OrderPacking,
    PlaceCost,
    PostageCharged,
    PostagePaid,
    PriceLeft,
    ProfitBesides,
    ProfitOnOne,
    RetailPrice,
    SecondDiscount,
    SmallestFee,
    SmallestOrderFee,
    ThirdDiscount,
    ToRound,
    VariableCost,
    WholesalePrice,
)
from candlecalc.declaration.declared import formula
from candlecalc.quantities.rounding import round_half_away

ABOVE_COST = {"price > cost": "the price must be above what each one costs"}


@formula(
    native="markup/(1+markup)",
    source=MARKUP,
    words="markup to margin, convert markup",
)
def margin_from_markup(markup: Markup) -> Margin:
    """Margin on the price that a markup on cost comes to: 100 % markup is 50 % margin.

    >>> margin_from_markup(markup=1)
    0.5
    """
    return markup / (1 + markup)


@formula(
    native="margin/(1-margin)",
    source=MARKUP,
    words="margin to markup, convert margin",
)
def markup_from_margin(margin: Margin) -> RealMarkup:
    """Markup on cost that a margin on the price comes to.

    >>> markup_from_margin(margin=0.5)
    1.0
    """
    return margin / (1 - margin)


@formula(
    native="cost*(1+markup)",
    source=MARKUP,
    words="how much to charge, cost plus, keystone, double the cost, times two, markup price, pricing formula, "
    "retail price",
)
def price_from_markup(cost: Cost, markup: Markup) -> Price:
    """Price before tax from a markup on cost.

    >>> price_from_markup(cost=750, markup=0.45)
    1087.5
    """
    return cost * (1 + markup)


@formula(native="fee+postage+packing-charged", source=ALGEBRA, part=True)
def order_cost(
    fee: OrderFee = 0.0, postage: PostagePaid = 0.0, packing: OrderPacking = 0.0, charged: PostageCharged = 0.0
) -> SignedMoney:
    """What an order costs the maker besides its candles, less the postage the buyer pays.

    >>> order_cost(fee=0.25, postage=5.5, packing=1, charged=4)
    2.75
    """
    return fee + postage + packing - charged


@formula(native="least/per_order", source=ALGEBRA, part=True)
def least_each(least: SmallestOrderFee, per_order: PerOrder) -> Money:
    """Minimum order fee divided by the candles in the order.

    >>> least_each(least=3, per_order=2)
    1.5
    """
    return least / per_order


@formula(native="cost*times", source=ALGEBRA, part=True)
def fixed_for_season(cost: PlaceCost, times: Times) -> Money:
    """What a place costs over the season, from its cost a day or a month.

    >>> fixed_for_season(cost=45, times=6)
    270.0
    """
    return cost * times


@formula(native="item+order/per_order", source=ALGEBRA, part=True)
def fixed_each(item: FeeAnItem, order: FixedAnOrder, per_order: PerOrder) -> SignedMoney:
    """Fixed fees per candle: those of every item, plus those of an order divided by its candles.

    `order` is the order's fee, packing and postage less the postage the buyer pays.

    >>> fixed_each(item=0.2, order=4.5, per_order=3)
    1.7
    """
    return item + order / per_order


@formula(native='rate*(collector<>"nobody")', source=PRACTICE, part=True)
def tax_charged(rate: Tax, collector: Collector) -> Tax:
    """The tax rate that a buyer is charged: the rate, or nothing where nobody collects tax.

    >>> tax_charged(rate=0.2, collector="nobody")
    0.0
    """
    return rate * (collector != "nobody")


TAKEN = 'fee*(1+tax*(basis="gross"))'  # what the place takes, as a share of the price before tax
POSTAGE = "what the buyer pays for postage must not be more than the cost"


@formula(
    native=f"MAX((cost+fixed)/(1-margin-{TAKEN}),(cost+fixed+least)/(1-margin))",
    requires={f"margin+{TAKEN} < 1": "margin and fee together must stay below 1", "cost+fixed >= 0": POSTAGE},
    source=ALGEBRA,
    words="how much should I charge, what to charge, retail price, selling price, price with fees, marketplace "
    "price, consignment, raise my price, price increase, price, pricing",
)
def price_for_margin(
    cost: Cost,
    margin: Margin,
    fee: Fee = 0.0,
    fixed: FixedSums = 0.0,
    tax: Tax = 0.0,
    basis: FeeBasis = "net",
    least: SmallestFee = 0.0,
) -> Price:
    """Price before tax that leaves a wanted margin after the place has taken its fees.

    The fee is a share of the price before tax ("net") or of what the buyer pays
    with tax ("gross"); `least` is the smallest fee a candle is charged.

    >>> price_for_margin(cost=6, margin=0.5, fee=0.1, fixed=0.45)
    16.125
    """
    taken = fee * (1 + tax * (basis == "gross"))
    return max((cost + fixed) / (1 - margin - taken), (cost + fixed + least) / (1 - margin))


@formula(
    native=f"MAX((materials+fixed)/(1-{TAKEN}),materials+fixed+least)",
    requires={f"{TAKEN} < 1": "the fee must leave something of the price", "materials+fixed >= 0": POSTAGE},
    source=ALGEBRA,
    words="minimum price, floor price, how low can I go, below which I lose money, sale price floor, black friday",
)
def lowest_price(
    materials: MaterialsAlone,
    fee: Fee = 0.0,
    fixed: FixedSums = 0.0,
    tax: Tax = 0.0,
    basis: FeeBasis = "net",
    least: SmallestFee = 0.0,
) -> LowestPrice:
    """Lowest price before tax that still covers the materials and the place's fees.

    Below it you lose money on every sale, even with unpaid time.

    >>> lowest_price(materials=4.5, fee=0.1)
    5.0
    """
    taken = fee * (1 + tax * (basis == "gross"))
    return max((materials + fixed) / (1 - taken), materials + fixed + least)


@formula(
    native=f"MAX(price*{TAKEN},least)",
    source=ALGEBRA,
    words="marketplace fees, online shop fees, card fees, credit card fee, payment processing, transaction fee, "
    "selling fees, listing fee, commission",
)
def fee_at(price: Price, fee: Fee, tax: Tax = 0.0, basis: FeeBasis = "net", least: SmallestFee = 0.0) -> Money:
    """What the place takes from a price: its percentage, or its smallest fee if more.

    >>> fee_at(price=20, fee=0.1, tax=0.2, basis="gross")
    2.4
    """
    return max(price * fee * (1 + tax * (basis == "gross")), least)


@formula(
    native="price-cost-fees",
    source=ALGEBRA,
    words="profit per candle, net profit, what do I keep, what is left after fees, contribution margin, profit "
    "after fees, earnings per sale, contribution, am I making money",
)
def profit_at(price: Price, cost: Cost, fees: AllFees = 0.0) -> SignedMoney:
    """Profit on a candle at a price before tax, after its cost and all the place's fees.

    >>> profit_at(price=16.5, cost=6, fees=2)
    8.5
    """
    return price - cost - fees


@formula(
    native="profit/price",
    requires={"price > 0": "price must be more than 0"},
    source=MARKUP,
    words="gross margin, profit margin, profit percentage",
)
def margin_at(profit: ProfitOnOne, price: Price) -> RealMargin:
    """Profit divided by the price before tax.

    >>> margin_at(profit=8, price=16)
    0.5
    """
    return profit / price


@formula(
    native="price*(1+tax)",
    source=MARKUP,
    words="tax inclusive price, add sales tax, add VAT, price including tax, price with tax",
)
def add_tax(price: Price, tax: Tax) -> TaxedPrice:
    """Price with tax from the price before tax.

    >>> add_tax(price=100, tax=0.2)
    120.0
    """
    return price * (1 + tax)


@formula(
    native="price/(1+tax)",
    source=MARKUP,
    words="price incl VAT backwards, take VAT off, VAT off a price, remove tax, remove VAT, price without tax, "
    "sales tax included, net price, tax exclusive price, back out tax",
)
def take_out_tax(price: TaxedPrice, tax: Tax) -> Price:
    """Price before tax from a price with tax in it.

    >>> take_out_tax(price=120, tax=0.2)
    100.0
    """
    return price / (1 + tax)


@formula(
    native="price*tax",
    source=MARKUP,
    words="how much sales tax, VAT on a price, tax due",
)
def tax_on(price: Price, tax: Tax) -> Money:
    """The tax that comes on a price before tax.

    >>> tax_on(price=100, tax=0.2)
    20.0
    """
    return price * tax


@formula(
    native="price*tax/(1+tax)",
    source=MARKUP,
    words="sales tax included, how much of the price is tax, VAT in a price, tax portion",
)
def tax_in_price(price: TaxedPrice, tax: Tax) -> Money:
    """The tax included in a price.

    >>> tax_in_price(price=120, tax=0.2)
    20.0
    """
    return price * tax / (1 + tax)


@formula(
    native="price*(1-first)*(1-second)*(1-third)",
    source=MARKUP,
    words="percent off, twenty percent off, sale price, coupon code, voucher, promo, black friday, markdown, "
    "discount code, quantity discount",
)
def after_discounts(
    price: ShelfPrice, first: FirstDiscount, second: SecondDiscount = 0.0, third: ThirdDiscount = 0.0
) -> ShelfPrice:
    """Price after discounts in a row: each is taken off what the one before left.

    >>> round(after_discounts(price=100, first=0.2, second=0.1, third=0.1), 2)
    64.8
    """
    return price * (1 - first) * (1 - second) * (1 - third)


@formula(
    native="retail*(1-discount)",
    source=MARKUP,
    words="price for shops, wholesale discount, trade price, price to stockists, trade discount",
)
def wholesale_price(retail: RetailPrice, discount: Discount) -> WholesalePrice:
    """Wholesale price that a shop pays you, from the retail price and the shop's discount on it.

    The other way round: `retail_from_wholesale`.

    >>> wholesale_price(retail=24, discount=0.5)
    12.0
    """
    return retail * (1 - discount)


@formula(
    native='shelf*(1-discount)/(1+tax*(stated="with tax"))',
    source=MARKUP,
    words="what do I get, shop takes a share, consignment, commission, net of discount",
)
def price_received(shelf: ShelfPrice, discount: Discount, tax: Tax, stated: Stated) -> Price:
    """What a stated price leaves you before tax: less the discount, and less any tax included.

    >>> price_received(shelf=24, discount=0.5, tax=0.2, stated="with tax")
    10.0
    """
    return shelf * (1 - discount) / (1 + tax * (stated == "with tax"))


@formula(
    native='price*(1+tax*(stated="with tax"))/(1-discount)',
    source=MARKUP,
    words="list price, price to print, price on the shelf, consignment price",
)
def price_to_state(price: Price, discount: Discount, tax: Tax, stated: Stated) -> ShelfPrice:
    """Price to state so that a wanted price before tax is received: the inverse of `price_received`.

    >>> price_to_state(price=10, discount=0.5, tax=0.2, stated="with tax")
    24.0
    """
    return price * (1 + tax * (stated == "with tax")) / (1 - discount)


@formula(
    native="ROUND(MAX(0,0-INT(ROUND((ending-price)/step,6)))*step+ending,6)",
    requires={"ending < step": "the ending must be below the step"},
    source=PRACTICE,
    words="price ending, round price up, charm price, psychological price, 99 cents, neat price, 19.95",
)
def round_up_price(price: ShelfPrice, step: PriceStep, ending: Ending = 0.0) -> ShelfPrice:
    """The next price up that the maker uses: a whole number of steps, plus the ending.

    With step 1 and ending 0.95, 17.20 becomes 17.95 and 17.96 becomes 18.95.

    >>> round_up_price(price=17.2, step=1, ending=0.95)
    17.95
    """
    steps = max(0, -math.floor(round_half_away((ending - price) / step, 6)))
    return round_half_away(steps * step + ending, 6)


@formula(
    native="ROUND(amount,digits)",
    source="half away from zero: sales tax rules of US Streamlined states, HMRC",
    words="round to cents, rounding",
)
def round_money(amount: ToRound, digits: Digits = 2) -> SignedMoney:
    """An amount rounded to the currency's smallest coin, half away from zero.

    >>> round_money(amount=1.005)
    1.01
    """
    return round_half_away(amount, int(digits))


@formula(
    native="0-INT(0-ROUND((fixed+profit)/(price-cost),6))",
    requires=ABOVE_COST,
    source=BREAK_EVEN,
    words="how many to sell, break even at a market, cover the stall fee, stall fee, booth fee, table fee, "
    "market booth, target profit, sales goal, pay myself a salary, how many candles to make a "
    "living, fixed costs, make up for a discount",
    notes={"": "no fixed costs may be in cost, or they are counted twice"},
)
def break_even_units(fixed: FixedCosts, price: PriceLeft, cost: VariableCost, profit: ProfitBesides = 0.0) -> Candles:
    """Candles to sell to cover fixed costs, and a wanted profit if given: rounded up to whole ones.

    `price` is the price less fees; `cost` is the cost of each extra candle sold.

    >>> break_even_units(fixed=18000, price=100, cost=20)
    225.0
    """
    return -math.floor(-round_half_away((fixed + profit) / (price - cost), 6))


@formula(
    native="(fixed+profit)*price/(price-cost)",
    requires=ABOVE_COST,
    source=BREAK_EVEN,
    words="sales goal, annual sales goal, revenue needed, turnover, salary, make a living, target profit, fixed "
    "costs, income goal",
    notes={"": "no fixed costs may be in cost, or they are counted twice"},
)
def break_even_sales(fixed: FixedCosts, price: PriceLeft, cost: VariableCost, profit: ProfitBesides = 0.0) -> Money:
    """Sales in money that cover fixed costs, and a wanted profit if given.

    >>> break_even_sales(fixed=18000, price=100, cost=20)
    22500.0
    """
    return (fixed + profit) * price / (price - cost)


@formula(
    native="fixed/(SUMPRODUCT(mix,prices)-SUMPRODUCT(mix,costs))",
    source=BREAK_EVEN,
    words="sales mix, several products, product mix",
)
def break_even_mix(fixed: FixedCosts, mix: Mix, prices: Prices, costs: Costs) -> Lots:
    """Lots of a mix of products to sell to cover fixed costs.

    A lot holds `mix` of each product: for 3 of one to 1 of another, 10 lots are
    30 and 10. Round up each product's number.

    >>> break_even_mix(fixed=220000, mix=[3, 1], prices=[10, 9], costs=[4, 5])
    10000.0
    """
    left = math.fsum(n * (price - cost) for n, price, cost in zip(mix, prices, costs))
    if left <= 0:
        raise ValueError("break_even_mix: the mix sells at or below its cost; no number of lots covers fixed costs.")
    return fixed / left
