"""The Sold tab: what each line of Sales, and below them each of Market lines, brought: tax, fee, cost, and what is left.

Every sum of sales reads this list, so a market typed on either tab gives the same figures.
"""

from collections.abc import Iterable, Mapping

from candlecalc.season.tables.books import CASH
from candlecalc.season.tables.sales import (
    ARE_SALES,
    BACK_IN_STOCK,
    HANDED_OVER,
    MARKET_DAYS,
    MARKET_LINES,
    SALES,
)
from candlecalc.workbook.cells.checks import WorkbookCheck, sums_agree
from candlecalc.workbook.cells.columns import calculated, look
from candlecalc.workbook.cells.layout import OWN_ROW, Plan
from candlecalc.workbook.cells.references import (
    ByPlan,
    Expression,
    Given,
    Named,
    Whole,
    as_text,
    at,
    before_row,
    constant,
    in_coins,
    in_force,
    joined,
    lines_of,
    row_in,
    sum_where,
    while_known,
    worked_out_coins,
    written,
)
from candlecalc.workbook.cells.table_tab import lines_tab
from candlecalc.workbook.tabs.registry import Shown, register
from candlecalc.workbook.tabs.working.prices_by_day import sold_there
from candlecalc.workbook.tabs.working.recipe_lines import KEY_LINE
from candlecalc.workbook.tabs.working.tax_by_day import EVERYWHERE_ELSE, area_of, tax_rate

FROM_SALES, FROM_MARKETS = 1, 2
ROWS_OF_SALES = ByPlan(lambda plan: constant(plan.layouts[SALES.key].rows))
BELOW = written("({row}-1>{sales})", row=OWN_ROW, sales=ROWS_OF_SALES)
SOURCE = written("{row}-{below}*{sales}", row=OWN_ROW, below=BELOW, sales=ROWS_OF_SALES)
THERE = ("what",)


def _of(sales: Given, market: Given) -> Expression:
    """A value by the log that the line is of."""
    return written(f"IF({{what}}={FROM_SALES},{{sales}},{{market}})", what="what", sales=sales, market=market)


def _log(key: str, market: str = "") -> Expression:
    """What the line's row holds: in both logs under one key, or in Market lines under another."""
    return _of(_sales(key), at(MARKET_LINES.key, market or key, "source"))


def _sales(key: str) -> Expression:
    return at(SALES.key, key, "source")


def _one_of(*kinds: str) -> Expression:
    """1 where a line of Sales is of one of these kinds, 0 where not."""
    return joined("+", [written(f'({{kind}}="{kind}")', kind=_sales("kind")) for kind in kinds])


def _signed(more: Iterable[str], less: Iterable[str]) -> Expression:
    return written("({more}-({less}))", more=_one_of(*more), less=_one_of(*less))


def _exact(text: str, **inside: Given) -> Expression:
    """A sum of whole coins, without what decimals leave behind."""
    return in_coins(written(text, **inside))


IS_READY = written(
    "IF({below},{market},{sales})",
    below=BELOW,
    market=at(MARKET_LINES.key, "ready", SOURCE),
    sales=at(SALES.key, "ready", SOURCE),
)
WHAT = written('IF({ready}="","",{ready}*(1+{below}))', ready=IS_READY, below=BELOW)

THING = _of(
    written('IF({product}="",0,{row})', product=_sales("product"), row=_sales("product_row")),
    at(MARKET_LINES.key, "product_row", "source"),
)


def _place(key: str) -> Expression:
    return at("places", key, "place_row")


PIECES = written("SUM({pieces})", pieces=_log("pieces"))
# A line of money alone has no pieces.
COUNTED = written("({pieces}+({thing}=0))", pieces=PIECES, thing="thing")
SIGN = _of(_signed(ARE_SALES, ("refund", "returned")), constant(1))
# A refund is of money: what was sold stays sold.
COUNTS = _of(_signed(ARE_SALES, ("returned",)), constant(1))
RETURNED = written(
    f'({{kind}}="returned")*({{became}}="{BACK_IN_STOCK}")', kind=_sales("kind"), became=_sales("became")
)
AWAY = _of(
    written(
        "({goes}-{returned})*{pieces}*({thing}>0)",
        goes=_one_of(*ARE_SALES),
        returned=RETURNED,
        pieces=PIECES,
        thing="thing",
    ),
    PIECES,
)
AT_SHOPS = _of(
    written("{signed}*{pieces}", signed=_signed(("out",), ("back", "sold there")), pieces=PIECES), constant(0)
)
TYPED_PRICE = _log("price")
USUAL_PRICE = written(
    "{price}*(1-SUM({discount}))",
    price=at("prices", "price", in_force("prices_by_day", sold_there("thing", "place_first"), "date")),
    discount=_place("discount"),
)
PRICE = written('IF({typed}<>"",{typed},IF({sign}=0,0,{usual}))', typed=TYPED_PRICE, sign="sign", usual=USUAL_PRICE)
AREA_RATE = written(
    'IF({collector}="nobody",0,{rate})',
    collector=_place("collector"),
    rate=tax_rate(_of(area_of(_sales("area")), EVERYWHERE_ELSE), "date"),
)
RATE = _of(written('IF({typed}<>"",{typed},{usual})', typed=_sales("tax_rate"), usual=AREA_RATE), AREA_RATE)
WITH_TAX = written('IF({stated}="with tax",1,IF({stated}="before tax",0,NA()))', stated=_place("stated_used"))
BESIDES = written("SUM({postage})-SUM({discount})", postage=_sales("postage"), discount=_sales("discount"))
STATED = worked_out_coins(
    written("{counted}*{price}+{besides}", counted=COUNTED, price="price", besides=_of(BESIDES, constant(0)))
)
BEFORE_TAX = calculated(
    "price_received",
    shelf="stated",
    discount=constant(0),
    tax="rate",
    stated=written('IF({with_tax}=1,"with tax","before tax")', with_tax="with_tax"),
)
TAX = written("{sign}*{tax}", sign="sign", tax=worked_out_coins(calculated("tax_on", price=BEFORE_TAX, tax="rate")))
NET = _exact("{sign}*{stated}-{with_tax}*{tax}", sign="sign", stated="stated", with_tax="with_tax", tax="tax")
# A card firm's fee is of what was paid by card, where a market day says how much that was.
BY_CARD = written(
    'IF({cards}="yes",IF(COUNTIFS({that_day})=0,1,{share}),1)',
    cards=_place("cards_alone"),
    that_day=joined(
        ",", [Whole(MARKET_DAYS.key, "place_first"), "place_first", Whole(MARKET_DAYS.key, "date"), "date"]
    ),
    share=while_known(
        sum_where(MARKET_DAYS.key, "card_share", place_first="place_first", date="date"), MARKET_DAYS.key, "card_share"
    ),
)
# Of what the buyer pays, or of the price before tax; a place that pays money back keeps what is typed alone.
BY_SHARE = written(
    'IF(({sign}=1)*{usual},SUM({share})*{by_card}*IF({basis}="gross",{gross},{net}),0)',
    sign="sign",
    usual=_of(written('({typed}="")', typed=_sales("fee")), constant(1)),
    share=_place("fee"),
    by_card=BY_CARD,
    basis=_place("fee_basis"),
    gross="gross",
    net="net",
)
LEAST = written(
    "MAX(0,SUM({least})-{by_share})",
    least=_place("least_fee"),
    by_share=sum_where("sold", "by_share", order=OWN_ROW),
)
OF_ORDER = written(
    "IF({order}={row},SUM({fee})+{least},0)", order="order", row=OWN_ROW, fee=_place("fee_order"), least=LEAST
)
USUAL_FEE = written(
    "IF({sign}=1,{by_share}+SUM({item})*{counted}+{of_order},0)",
    sign="sign",
    by_share="by_share",
    item=_place("fee_item"),
    counted=COUNTED,
    of_order=OF_ORDER,
)
FEE = worked_out_coins(_of(written('IF({typed}<>"",{typed},{usual})', typed=_sales("fee"), usual=USUAL_FEE), USUAL_FEE))
HELD = written(
    "{signed}*{price}",
    signed=_signed(("deposit", "gift card sold"), ("deposit used", "gift card spent")),
    price="price",
)
COMES_IN = _exact(
    '{gross}-{fee}-{tax}*({collector}="place")+{held}',
    gross="gross",
    fee="fee",
    tax="tax",
    collector=_place("collector"),
    held=_of(HELD, constant(0)),
)
# What an order that was sent cost besides: once an order, as its fee is.
SENT = written(
    'IF({kind}="",IF({order}={row},SUM({postage})+SUM({packing}),0),0)',
    kind=_sales("kind"),
    order="order",
    row=OWN_ROW,
    postage=_place("postage_paid"),
    packing=_place("packing_order"),
)
# What the maker pays over; the rest of the tax the place does.
TAX_DUE = written('{tax}*({collector}<>"place")', tax="tax", collector=_place("collector"))
# The day the money moved; for books by the cash method a line counts on that day, else on its own.
PAID = _of(
    written(
        'IF({paid}<>"",{paid},IF(({handed_over})>0,{date},""))',
        paid=_sales("paid_on"),
        handed_over=_one_of(*HANDED_OVER),
        date="date",
    ),
    written("{date}", date="date"),
)
OWED = written('IF({paid}="",{sum},0)', paid="paid", sum="comes_in")
COUNTS_ON = written(f'IF({{books}}="{CASH}",{{paid}},{{date}})', books=Named("books"), paid="paid", date="date")
# Of what went to a shop, came back, or was sold there.
SHOP_KEY = written("{place}*{key}+{thing}", place="place_first", key=KEY_LINE, thing="thing")
NOT_THERE = written("{there}=0", there="there")
# What a line takes along: a set its candles, and what was given away or broke lines of its own.
SIZE = written("IF({thing}=0,0,1+COUNTIF({sets},{holds}))", thing="thing", sets=Whole("sets", "set_row"), holds="holds")
LINES = written("{size}*(({away}<>0)+({lost}<>0))", size="size", away="away", lost="lost")
COST = written(
    "IF({away}=0,0,{lines})",
    away="away",
    lines=lines_of("out", "cost", written("{moved}+{start}", moved=Named("product_moves"), start="start"), "size"),
)


def _rows(rows_of: Mapping[str, int]) -> int:
    return rows_of[SALES.key] + rows_of[MARKET_LINES.key]


TAB = lines_tab(
    "Sold",
    "output",
    "What each line of Sales and of Market lines brought: tax, fee, what the candles cost, and what is left.",
    "sold",
    SALES,
    {
        "date": look("Date", _log("date"), "date", needs=THERE),
        "place": look("Place", as_text(_place("place")), needs=THERE, width=22),
        "product": look("Product", written('IF({thing}=0,"",{name})', thing="thing", name=at("recipes", "product", "thing")), needs=THERE, width=24),
        "pieces": look("Pieces", written("{counts}*{pieces}*({thing}>0)", counts=COUNTS, pieces=PIECES, thing="thing"), "pieces", needs=THERE),
        "gross": look("With tax, {money}", _exact("{net}+{tax}", net="net", tax="tax"), "money", needs=THERE),
        "tax": look("Tax, {money}", TAX, "money", needs=THERE),
        "net": look("Before tax, {money}", NET, "money_strong", needs=THERE),
        "fee": look("Fee, {money}", FEE, "money", needs=THERE),
        "sent": look("Postage and packing, {money}", in_coins(_of(SENT, constant(0))), "money", needs=THERE),
        "cost": look("Cost of candles, {money}", COST, "money", needs=THERE),
        "left": look("Left over, {money}", _exact("{net}-{fee}-{sent}-{cost}", net="net", fee="fee", sent="sent", cost="cost"), "money_strong", needs=THERE),
        "comes_in": look("Yours to have, {money}", COMES_IN, "money", needs=THERE),
        "owed": look("Still owed, {money}", _of(OWED, constant(0)), "money", needs=THERE),
        "what": look("From: 1 Sales, 2 Market lines", WHAT, "row", needs=(), width=9),
        "source": look("Row there", SOURCE, "row", needs=THERE, width=7),
        "place_first": look("Place's first row", _log("place_first"), "row", needs=THERE, width=8),
        "place_row": look("Place that held, row", in_force("places_by_day", "place_first", "date"), "row", needs=THERE, width=8),
        "thing": look("Product's first row", THING, "row", needs=THERE, width=8),
        "sign": look("Money: in 1, out -1, none 0", SIGN, "row", needs=THERE, width=8),
        "price": look("Price each as stated, {money}", PRICE, "money", needs=THERE),
        "rate": look("Tax rate", RATE, "percent", needs=THERE),
        "with_tax": look("Price is with tax", WITH_TAX, "row", needs=THERE, width=8),
        "stated": look("As stated, {money}", STATED, "money", needs=THERE),
        "order": look("First line of its order", _of(_sales("order_first"), constant(0)), "row", needs=THERE, width=8),
        "by_share": look("Fee by share, {money}", BY_SHARE, "unit_cost", needs=THERE),
        "away": look("Left your stock", AWAY, "pieces", needs=THERE),
        "lost": look("Given away and broken", _of(constant(0), at(MARKET_LINES.key, "lost", "source")), "pieces", needs=THERE),
        "there": look("Gone to a shop", AT_SHOPS, "pieces", needs=THERE),
        "shop_key": look("Shop and product", SHOP_KEY, "row", needs=THERE, blank_if=(NOT_THERE,), width=8),
        "holds": look("Recipe that holds now, row", written("IF({thing}=0,0,{row})", thing="thing", row=row_in("recipes", "product")), "row", needs=THERE, width=8),
        "size": look("Lines on Candles out, each", SIZE, "row", needs=THERE, width=8),
        "lines": look("Lines on Candles out", LINES, "row", needs=THERE, width=8),
        "start": look("Lines on Candles out before", before_row("start", "lines"), "row", needs=(), width=8),
        "tax_due": look("Tax that you pay over, {money}", TAX_DUE, "money", needs=THERE),
        "paid": look("Money moved on", PAID, "date", needs=THERE),
        "counts": look("Counts in the books on", COUNTS_ON, "date", needs=THERE),
    },
    _rows,
    paper_to="owed",
)  # fmt: skip


def checks(plan: Plan) -> Iterable[WorkbookCheck]:
    sold = plan.layouts["sold"]
    yield sums_agree(
        "Sales with tax are sales before tax and tax", TAB.title, sold.sum("gross"), sold.sum("net", "tax")
    )


SHOWN = ("date", "place", "product", "pieces", "gross", "tax", "net", "fee", "sent", "cost", "left")
register(TAB, __name__, 35, checks=checks, shown=Shown("sales", SHOWN), records=True)
