"""candlecalc: the arithmetic of making and selling scented container candles.

Every function is reached here: `candlecalc.oil_for_wax(500, 0.08)`. `help(candlecalc.oil_for_wax)` says what
it takes; `candlecalc.answer_in("oz", candlecalc.oil_for_wax, "10 oz", 0.08)` answers in another unit.
"""

# mypy: disable-error-code="overload-overlap"
# pyright: reportOverlappingOverload=false
# Made from the declarations by: python tests/make_pages.py

from collections.abc import Callable as _Callable, Sequence as _Sequence
from datetime import date as _date
from decimal import Decimal as _Decimal
from typing import Any as _Any, Literal as _Literal, Protocol as _Protocol
from typing import TypeAlias as _TypeAlias, overload as _overload

import numpy as _np
import numpy.typing as _npt
import pandas as _pd

from candlecalc.calc.books import EntryLine as _EntryLine
from candlecalc.calc.books import EntrySum as _EntrySum
from candlecalc.calc.books import ScheduleLines as _ScheduleLines
from candlecalc.calc.books import TrialLine as _TrialLine
from candlecalc.calc.burn import CandlesBetween as _CandlesBetween
from candlecalc.calc.burn import RateBetween as _RateBetween
from candlecalc.calc.burn_signs import SignRead as _SignRead
from candlecalc.calc.burn_time import LeftBetween as _LeftBetween
from candlecalc.calc.burn_time import TimeBetween as _TimeBetween
from candlecalc.calc.cooling import CoolingForecast as _CoolingForecast
from candlecalc.calc.datasheet.findings import HazardFound as _HazardFound
from candlecalc.calc.datasheet.label import LabelLine as _LabelLine
from candlecalc.calc.fragrance import OnScale as _OnScale
from candlecalc.calc.hazard import LineRead as _LineRead
from candlecalc.calc.label import FigureHeight as _FigureHeight
from candlecalc.calc.label import FireStatement as _FireStatement
from candlecalc.calc.label import NetStatement as _NetStatement
from candlecalc.calc.measure import BatchTest as _BatchTest
from candlecalc.calc.measure import LotTest as _LotTest
from candlecalc.calc.measure import Variation as _Variation
from candlecalc.calc.plan import BreakChoice as _BreakChoice
from candlecalc.calc.pool import PoolForecast as _PoolForecast
from candlecalc.calc.requirements import Order as _Order
from candlecalc.calc.schedule import PlanLine as _PlanLine
from candlecalc.calc.stock import LotLeft as _LotLeft
from candlecalc.calc.stock import StockValue as _StockValue
from candlecalc.calc.stocktake import LotToUse as _LotToUse
from candlecalc.calc.wick import Advised as _Advised
from candlecalc.calc.wick import Judged as _Judged
from candlecalc.declaration.declared import Function as _Formula

__all__ = [
    "add_tax",
    "after_discounts",
    "answer_in",
    "average_cost",
    "average_tare",
    "batch_test",
    "before_waste",
    "best_break",
    "billable_weight",
    "binding_weight",
    "blend_density",
    "box_volume",
    "break_even_mix",
    "break_even_sales",
    "break_even_units",
    "bundle_margin",
    "burn_heat",
    "burn_rate",
    "burn_rate_between",
    "burn_rate_high",
    "burn_rate_low",
    "burn_time",
    "burn_time_from_log",
    "burn_verdict",
    "buying_cost",
    "candles_a_pot",
    "change_before_reclassifying",
    "coin_digits",
    "consignment_due",
    "convert",
    "cooling_constant",
    "cooling_forecast",
    "cooling_temperature",
    "cooling_time",
    "cost_at_batch",
    "cost_each",
    "cost_of_all",
    "cost_of_goods_made",
    "cost_of_goods_schedule",
    "cost_of_goods_sold",
    "cost_of_paying_late",
    "cost_per_burn_hour",
    "cost_with_rise",
    "count_difference",
    "count_difference_cost",
    "cylinder_volume",
    "days_covered",
    "days_in_stock",
    "dye_for_wax",
    "dye_pieces",
    "early_discount",
    "early_payment",
    "economic_order_quantity",
    "enough_for",
    "entries_out_of_balance",
    "equal_pot",
    "evenings_needed",
    "expected_season_profit",
    "fair_split",
    "fastest_candle",
    "fee_at",
    "figure_height_metric",
    "figure_height_us",
    "fill_in_another_wax",
    "fill_to_depth",
    "fill_weight",
    "find",
    "fire_statements",
    "first_wax",
    "fixed_each",
    "fixed_for_season",
    "flame_height",
    "flame_height_high",
    "follow_demand",
    "full_cost",
    "full_pots",
    "grams_to_declare",
    "gross_weight",
    "hazard_cautions",
    "hazard_lines",
    "hazard_of_candle",
    "hazard_of_mixture",
    "heat_for_wax",
    "heat_to_melt",
    "heat_to_warm",
    "heater_efficiency",
    "highest_load",
    "highest_load_decided_by",
    "highest_of_total",
    "highest_on_wax",
    "hourly_earnings",
    "hours_left",
    "hours_left_between",
    "hours_left_high",
    "hours_left_low",
    "in_unit",
    "issue_costs",
    "label_hours",
    "label_of_candle",
    "label_of_classes",
    "labour_cost",
    "landed_cost",
    "last_pot",
    "least_each",
    "least_figures_metric",
    "least_figures_us",
    "level_or_follow",
    "level_rate",
    "limit_of_blend",
    "liquid_density",
    "load_after_rounding",
    "load_at_limit",
    "load_from_share",
    "load_measured",
    "load_on_scale",
    "load_reaching_limit",
    "load_swing",
    "lot_sizes",
    "lot_test_us",
    "lots_cost",
    "lots_left",
    "lots_to_use",
    "lower_of_cost",
    "lowest_price",
    "m_factor",
    "make_for_good",
    "making_cost",
    "margin_at",
    "margin_from_markup",
    "markup_from_margin",
    "material_cost",
    "materials_used",
    "maximum_allowable_variation",
    "mean_factor",
    "melt_cautions",
    "melt_time",
    "minimum_order",
    "minutes_each",
    "mixed_density",
    "mixed_latent_heat",
    "mixed_specific_heat",
    "net_realisable_value",
    "net_requirements",
    "net_weight_metric",
    "net_weight_us",
    "never_under",
    "next_wick",
    "oil_for_fill",
    "oil_for_wax",
    "oil_part",
    "oil_parts",
    "oil_to_raise_load",
    "order_cost",
    "ordering_cost",
    "ounces_to_declare",
    "overhead_cost",
    "overhead_rate",
    "overhead_uncharged",
    "own_minutes",
    "packages_to_weigh",
    "packs_at_breaks",
    "packs_to_buy",
    "paid_minutes",
    "panel_area",
    "parts_cost",
    "per_carton",
    "period_entries",
    "pieces_for",
    "pieces_from_mould",
    "plan_cost",
    "pool_forecast",
    "pool_growth",
    "pool_time",
    "pots_for_candles",
    "pots_needed",
    "pots_with_one_fewer",
    "pour_by",
    "pour_by_own_days",
    "price_at_breaks",
    "price_for_margin",
    "price_from_markup",
    "price_received",
    "price_to_match",
    "price_to_state",
    "prism_volume",
    "profit_at",
    "rate_of_one_burn",
    "rates_of_candles",
    "ready_on",
    "recipe_verdict",
    "reorder_point",
    "retail_from_wholesale",
    "round_money",
    "round_up_price",
    "safety_stock",
    "season_profit",
    "season_profit_of_records",
    "season_quantity",
    "season_stock",
    "season_stock_of_records",
    "second_wax",
    "setting_shrinkage",
    "share_of_total",
    "shelf_days_left",
    "short_by",
    "short_under",
    "split_charge",
    "stall_per_hour",
    "stall_result",
    "stock_from_count",
    "stock_from_log",
    "stock_from_lots",
    "stock_left",
    "stock_turns",
    "substance_in_candle",
    "take_out_tax",
    "tapered_volume",
    "tax_by_line",
    "tax_by_order",
    "tax_charged",
    "tax_in_price",
    "tax_on",
    "temperature_after_oil",
    "temperature_before_oil",
    "testing_cost_each",
    "to_make",
    "to_scale_step",
    "tolerable_negative_error",
    "top_up_pour",
    "trial_balance",
    "unit_cost",
    "use_by",
    "use_by_months",
    "usual_pool_time",
    "vessels_filled",
    "volume_from_water",
    "volume_to_weight",
    "wax_for_fill",
    "wax_for_oil",
    "wax_parts",
    "wax_that_stays",
    "wax_to_lower_load",
    "weigh_for_pot",
    "weigh_out",
    "weighing_error_allowed",
    "weight_in_pots",
    "wholesale_price",
    "wick_signs",
    "write_down",
    "yield_of",
]

__version__: str

class _Measured(_Protocol):
    """A number with its unit, as a Quantity of pint is."""

    @property
    def magnitude(self) -> _Any: ...
    @property
    def units(self) -> _Any: ...
    def to(self, other: _Any, /) -> _Any: ...

_Value: _TypeAlias = float | str | _Decimal | _Measured
_Day: _TypeAlias = _date | str | float
_Array: _TypeAlias = _Sequence[float | str | _Decimal | _Measured] | _npt.NDArray[_Any]
_Days: _TypeAlias = _Sequence[_date | str | float] | _npt.NDArray[_Any]
_Words: _TypeAlias = list[str] | _npt.NDArray[_Any]
_Column: _TypeAlias = _pd.Series[_Any]
_Cells: _TypeAlias = _Sequence[_Any] | _npt.NDArray[_Any] | _pd.Series[_Any]

def answer_in(unit: str, function: _Callable[..., _Any] | str, /, *given: _Any, **named: _Any) -> _Any:
    """What a function answers, in the unit asked for; a ValueError where its answer has no such unit.

    Of an answer with several fields, those that the unit measures are in it. Nothing is rounded.

    >>> round(answer_in("oz", "oil_for_wax", wax="10 oz", load=0.07), 6)
    0.7
    """

def find(function: _Callable[..., _Any] | str) -> _Formula:
    """The declaration of a function, by the function or its name: arguments, units, ranges, source.

    A ValueError names the nearest where there is none of that name.

    >>> find("oil_for_wax").arguments["load"].term.range
    '0 to 0.5 of wax weight'
    """

@_overload
def add_tax(price: _Value, tax: _Value) -> float:
    """Price with tax from the price before tax.

    >>> add_tax(price=100, tax=0.2)
    120.0

    Parameters
    ----------
    price : 0 or more
        price before tax
    tax : 0 to 1 of the price before tax
        rate of sales tax or VAT

    Returns
    -------
    0 or more
        price with tax in it

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    markup, discount and sales tax: OpenStax, Contemporary Mathematics 6.2
    """
@_overload
def add_tax(price: _Value | _Array, tax: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def add_tax(price: _Value | _Array | _Column, tax: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def after_discounts(price: _Value, first: _Value, second: _Value = 0.0, third: _Value = 0.0) -> float:
    """Price after discounts in a row: each is taken off what the one before left.

    >>> round(after_discounts(price=100, first=0.2, second=0.1, third=0.1), 2)
    64.8

    Parameters
    ----------
    price : 0 or more
        price as the place states it, with tax in it or not
    first : 0 to 0.99 of the price
        the first discount, off the price
    second : 0 to 0.99 of the price; 0.0 if left out
        the second, off what the first left
    third : 0 to 0.99 of the price; 0.0 if left out
        the third, off what the second left

    Returns
    -------
    0 or more
        price as the place states it, with tax in it or not

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    markup, discount and sales tax: OpenStax, Contemporary Mathematics 6.2
    """
@_overload
def after_discounts(price: _Value | _Array, first: _Value | _Array, second: _Value | _Array = 0.0, third: _Value | _Array = 0.0) -> _npt.NDArray[_np.float64]: ...
@_overload
def after_discounts(price: _Value | _Array | _Column, first: _Value | _Array | _Column, second: _Value | _Array | _Column = 0.0, third: _Value | _Array | _Column = 0.0) -> _pd.Series[float]: ...
def average_cost(bought: _Cells, costs: _Cells) -> float:
    """Average cost of one unit over all lots: the periodic average. Not rounded: round what you work out from it.

    >>> average_cost(bought=[30, 50], costs=[2, 2.4])
    2.25

    Parameters
    ----------
    bought : list, each 0 or more
        how much of each lot: what was there at the start first, then each receipt
    costs : list, each 0 or more money per unit
        cost of one unit of each lot

    Returns
    -------
    0 or more money per unit
        cost of one unit of the material: a piece, or a unit of weight

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: something must have been bought.

    References
    ----------
    FIFO, average and LIFO, periodic and perpetual: OpenStax, Financial Accounting 10.1 to 10.3
    """
def average_tare(tares: _Cells) -> float:
    """Average weight of what is not sold by weight: vessel, lid, wick and label together.

    Weigh two; where they differ, three more.

    >>> average_tare(tares=[212, 214, 213])
    213.0

    Parameters
    ----------
    tares : list, each 0 or more g
        weights of empty vessels with all that belongs to them

    Returns
    -------
    0 or more g
        vessel, lid, wick, label: all that is not sold by weight

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    NIST Handbook 133 (2026), 2.3.5 and 2.3.6
    """
def batch_test(net: _Value, weighings: _Cells, batch: _Value) -> _BatchTest:
    """The two tests of a batch in the EU and GB, on net weights: its average, and its short packages.

    Weigh as many as `packages_to_weigh` says, taken at random, and type them in that
    order: of a batch from 100 on the average is that of the first 30, from 501 on of the
    first 50, as the schedule has it. A batch that fails is not to be sold under this weight.

    >>> batch_test(net=180, weighings=[181, 179.5, 180.5, 182], batch=4).verdict
    'both tests are met'

    Parameters
    ----------
    net : 5 to 25000 g
        net weight to declare: wax and oil, no vessel, lid or wick tab
    weighings : list, each 0 or more g
        net weight of each package weighed
    batch : whole numbers 1 to 1000000
        how many packages the batch has

    Returns
    -------
    a row of verdict, mean, mean_needed, short, short_allowed, far_short
        What the weighings of a batch say, with the figures they say it by.
    verdict : text
        what the weighings say
    mean : 0 or more g
        average net weight of those that the plan averages
    mean_needed : 0 or more g
        the least that their average net weight may be
    short : whole numbers 0 to 1000000
        how many packages are short
    short_allowed : whole numbers 0 to 1000000
        how many packages are short
    far_short : whole numbers 0 to 1000000
        how many packages are short

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    Notes
    -----
    - in an inspection the inspector's own sample decides.

    References
    ----------
    UK SI 2006/659, Schedule 2, 3 and 4; Directive 76/211/EEC, Annex II
    """
@_overload
def before_waste(amount: _Value, waste: _Value) -> float:
    """What to weigh out so that a wanted amount is left after waste.

    Waste is a share of what you weigh: for 96 g at 4 % waste, weigh 100 g.

    >>> before_waste(amount=96, waste=0.04)
    100.0

    Parameters
    ----------
    amount : 0 or more g
        what is wanted after waste, in any unit; the answer is in the same unit
    waste : 0 to 0.5 of what is weighed out
        share lost in pots, jugs, wicks dipped and spills

    Returns
    -------
    0 or more g
        a weight, in any unit; the answer is in the same unit

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    common practice, no source
    """
@_overload
def before_waste(amount: _Value | _Array, waste: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def before_waste(amount: _Value | _Array | _Column, waste: _Value | _Array | _Column) -> _pd.Series[float]: ...
def best_break(demand: _Value, ordering: _Value, holding_share: _Value, breaks: _Cells, prices: _Cells) -> _BreakChoice:
    """The order quantity that costs least in all, where the price falls for larger orders.

    A price holds for all that is bought at that quantity, not only for what is
    above the break. Where two quantities cost the same the smaller one is named.

    >>> best_break(demand=800, ordering=60, holding_share=0.3, breaks=[1, 50, 200], prices=[53, 51.5, 48])
    BreakChoice(quantity=200.0, price=48.0, cost=40080.0)

    Parameters
    ----------
    demand : 0 or more
        how much is used or sold over the time planned for: a year, a season
    ordering : 0 or more
        what an order costs whatever its size: delivery, handling, the time it takes
    holding_share : more than 0, at most 1 of the price
        cost to keep a unit for the whole of that time, as a share of its price
    breaks : list, each 0 or more
        smallest quantity that each price holds from, rising; 0 or 1 for the first
    prices : list, each more than 0 money per unit
        price of one unit from each of these quantities up, on all that is bought

    Returns
    -------
    a row of quantity, price, cost
        The quantity that costs least in all, its price, and that cost.
    quantity : 0 or more
        how much to order at a time, in the unit that demand is in
    price : 0 or more money per unit
        price of one unit at that quantity
    cost : 0 or more
        an amount of money

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: demand must be more than 0.

    References
    ----------
    order quantity with a price on all units: the library stockpyl, after Snyder and Shen, chapter 3
    """
@_overload
def billable_weight(weight: _Value, length: _Value, width: _Value, height: _Value, divisor: _Value, per: _Literal["in3 per lb", "cm3 per kg"], step: _Value = 0.0) -> float:
    """Weight that a carrier charges for: what the parcel weighs, or its size over the carrier's divisor if more.

    The carrier's rules give the divisor and how to round sizes and weights: round the
    sides that way before you type them.

    >>> billable_weight(weight=900, length=300, width=250, height=200, divisor=5000, per="cm3 per kg", step=1000)
    3000.0

    Parameters
    ----------
    weight : more than 0, at most 1000000 g
        what the packed parcel weighs
    length : 10 to 5000 mm
        length of the packed parcel, outside
    width : 10 to 5000 mm
        width of the packed parcel, outside
    height : 10 to 5000 mm
        height of the packed parcel, outside
    divisor : 50 to 10000
        the carrier's divisor for dimensional weight, by its own rules
    per : "in3 per lb" or "cm3 per kg"
        what the divisor is in: cubic inches to a pound or cubic centimetres to a kilogram
    step : 0 to 100000 g; 0.0 if left out
        the carrier charges in whole steps of this, such as 1 lb; 0 for no steps

    Returns
    -------
    0 or more g
        the weight that postage is charged for

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    dimensional weight: carriers' published rules; IATA's 6000 cubic centimetres a kilogram, second-hand
    """
@_overload
def billable_weight(weight: _Value | _Array, length: _Value | _Array, width: _Value | _Array, height: _Value | _Array, divisor: _Value | _Array, per: _Literal["in3 per lb", "cm3 per kg"] | _Words, step: _Value | _Array = 0.0) -> _npt.NDArray[_np.float64]: ...
@_overload
def billable_weight(weight: _Value | _Array | _Column, length: _Value | _Array | _Column, width: _Value | _Array | _Column, height: _Value | _Array | _Column, divisor: _Value | _Array | _Column, per: _Literal["in3 per lb", "cm3 per kg"] | _Words | _Column, step: _Value | _Array | _Column = 0.0) -> _pd.Series[float]: ...
@_overload
def binding_weight(ounces: _Value, grams: _Value) -> float:
    """Grams that a label with both declarations is held to: the larger of the two.

    >>> binding_weight(ounces=16, grams=454)
    454.0

    Parameters
    ----------
    ounces : 0 to 1000
        the declaration in ounces: 16 for 1 lb
    grams : 0 to 25000 g
        the declaration in grams

    Returns
    -------
    0 to 25000 g
        the declaration in grams

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    NIST Handbook 133 (2026), 2.3.3; factor of 16 CFR 500.19(a)
    """
@_overload
def binding_weight(ounces: _Value | _Array, grams: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def binding_weight(ounces: _Value | _Array | _Column, grams: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def blend_density(first: _Value, second: _Value, share: _Value) -> float:
    """Density of two waxes mixed by weight; `share` is the second wax's.

    Volumes are taken to add up, as they do for waxes within a percent or so.

    >>> round(blend_density(first=0.9, second=0.8, share=0.5), 4)
    0.8471

    Parameters
    ----------
    first : 0.5 to 1.5 g/ml
        weight of a millilitre of the first wax, at the temperature it is filled
    second : 0.5 to 1.5 g/ml
        weight of a millilitre of the second wax, at the temperature it is filled
    share : 0 to 1 of the blend
        share of one oil, or of one wax, in a blend

    Returns
    -------
    0.5 to 1.5 g/ml
        weight of a millilitre of the wax, at the temperature it is filled

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    mass balance of a mixture; OpenStax, Intermediate Algebra 2e, mixture applications
    """
@_overload
def blend_density(first: _Value | _Array, second: _Value | _Array, share: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def blend_density(first: _Value | _Array | _Column, second: _Value | _Array | _Column, share: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def box_volume(length: _Value, width: _Value, height: _Value, base: _Value = 0.0) -> float:
    """Volume of a square or oblong vessel with upright sides, from inside measures.

    A floor that is not flat is taken as a round cap as wide as the narrower side.

    >>> box_volume(length=70, width=70, height=80)
    392.0

    Parameters
    ----------
    length : 10 to 2000 mm
        length of the vessel inside
    width : 10 to 2000 mm
        width of the vessel inside
    height : 10 to 2000 mm
        how deep the vessel is inside, up to the brim or the mark
    base : -200 to 200 mm; 0.0 if left out
        how high the floor is pushed up at its middle; minus where it bulges down

    Returns
    -------
    0 or more ml
        a volume inside a vessel

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: the floor cannot rise above the fill.

    References
    ----------
    elementary geometry; OpenStax, Prealgebra 2e (cylinder) and Calculus (solids cut across)
    """
@_overload
def box_volume(length: _Value | _Array, width: _Value | _Array, height: _Value | _Array, base: _Value | _Array = 0.0) -> _npt.NDArray[_np.float64]: ...
@_overload
def box_volume(length: _Value | _Array | _Column, width: _Value | _Array | _Column, height: _Value | _Array | _Column, base: _Value | _Array | _Column = 0.0) -> _pd.Series[float]: ...
@_overload
def break_even_mix(fixed: _Value, mix: _Cells, prices: _Cells, costs: _Cells) -> float:
    """Lots of a mix of products to sell to cover fixed costs.

    A lot holds `mix` of each product: for 3 of one to 1 of another, 10 lots are
    30 and 10. Round up each product's number.

    >>> break_even_mix(fixed=220000, mix=[3, 1], prices=[10, 9], costs=[4, 5])
    10000.0

    Parameters
    ----------
    fixed : 0 or more
        fixed costs to cover: those that come whatever is sold
    mix : list, each 0 or more
        how many of each product sell together
    prices : list, each 0 or more
        price of each product, before tax
    costs : list, each 0 or more
        what one more of each product costs

    Returns
    -------
    0 or more
        lots of the mix to sell

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    cost, volume and profit: OpenStax, Managerial Accounting, chapter 3
    """
@_overload
def break_even_mix(fixed: _Value | _Array, mix: _Cells, prices: _Cells, costs: _Cells) -> _npt.NDArray[_np.float64]: ...
@_overload
def break_even_mix(fixed: _Value | _Array | _Column, mix: _Cells, prices: _Cells, costs: _Cells) -> _pd.Series[float]: ...
@_overload
def break_even_sales(fixed: _Value, price: _Value, cost: _Value, profit: _Value = 0.0) -> float:
    """Sales in money that cover fixed costs, and a wanted profit if given.

    >>> break_even_sales(fixed=18000, price=100, cost=20)
    22500.0

    Parameters
    ----------
    fixed : 0 or more
        fixed costs to cover: those that come whatever is sold
    price : 0 or more
        price before tax, less the place's fees on it
    cost : 0 or more
        cost of each extra candle sold, without fixed costs
    profit : 0 or more; 0.0 if left out
        profit wanted besides

    Returns
    -------
    0 or more
        an amount of money

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: the price must be above what each one costs.

    Notes
    -----
    - no fixed costs may be in cost, or they are counted twice.

    References
    ----------
    cost, volume and profit: OpenStax, Managerial Accounting, chapter 3
    """
@_overload
def break_even_sales(fixed: _Value | _Array, price: _Value | _Array, cost: _Value | _Array, profit: _Value | _Array = 0.0) -> _npt.NDArray[_np.float64]: ...
@_overload
def break_even_sales(fixed: _Value | _Array | _Column, price: _Value | _Array | _Column, cost: _Value | _Array | _Column, profit: _Value | _Array | _Column = 0.0) -> _pd.Series[float]: ...
@_overload
def break_even_units(fixed: _Value, price: _Value, cost: _Value, profit: _Value = 0.0) -> float:
    """Candles to sell to cover fixed costs, and a wanted profit if given: rounded up to whole ones.

    `price` is the price less fees; `cost` is the cost of each extra candle sold.

    >>> break_even_units(fixed=18000, price=100, cost=20)
    225.0

    Parameters
    ----------
    fixed : 0 or more
        fixed costs to cover: those that come whatever is sold
    price : 0 or more
        price before tax, less the place's fees on it
    cost : 0 or more
        cost of each extra candle sold, without fixed costs
    profit : 0 or more; 0.0 if left out
        profit wanted besides

    Returns
    -------
    whole numbers 0 to 1000000
        how many candles

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: the price must be above what each one costs.

    Notes
    -----
    - no fixed costs may be in cost, or they are counted twice.

    References
    ----------
    cost, volume and profit: OpenStax, Managerial Accounting, chapter 3
    """
@_overload
def break_even_units(fixed: _Value | _Array, price: _Value | _Array, cost: _Value | _Array, profit: _Value | _Array = 0.0) -> _npt.NDArray[_np.float64]: ...
@_overload
def break_even_units(fixed: _Value | _Array | _Column, price: _Value | _Array | _Column, cost: _Value | _Array | _Column, profit: _Value | _Array | _Column = 0.0) -> _pd.Series[float]: ...
buffer_stock = safety_stock
@_overload
def bundle_margin(price: _Value, costs: _Cells, packing: _Value = 0.0, fees: _Value = 0.0) -> float:
    """Margin that a bundle leaves of its price: a gift set, a box of three, a candle with matches.

    >>> bundle_margin(price=40, costs=[6, 6, 5], packing=3)
    0.5

    Parameters
    ----------
    price : more than 0
        price of the whole bundle, before tax
    costs : list, each 0 or more
        cost of each thing in the bundle; list a candle twice if it is in twice
    packing : 0 or more; 0.0 if left out
        box, filling and ribbon of the bundle
    fees : 0 or more; 0.0 if left out
        what the place keeps of the price of the bundle

    Returns
    -------
    any amount of the price
        profit as a share of the price before tax; minus for a loss

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    markup, discount and sales tax: OpenStax, Contemporary Mathematics 6.2
    """
@_overload
def bundle_margin(price: _Value | _Array, costs: _Cells, packing: _Value | _Array = 0.0, fees: _Value | _Array = 0.0) -> _npt.NDArray[_np.float64]: ...
@_overload
def bundle_margin(price: _Value | _Array | _Column, costs: _Cells, packing: _Value | _Array | _Column = 0.0, fees: _Value | _Array | _Column = 0.0) -> _pd.Series[float]: ...
@_overload
def burn_heat(rate: _Value, heat: _Value = 43.5) -> float:
    """Heat that a candle gives to the room: some 12 W for each gram of paraffin an hour.

    Vegetable waxes give about 37 MJ/kg, some 10 W. It says nothing of how high the flame is.

    >>> round(burn_heat(rate=6), 1)
    72.5

    Parameters
    ----------
    rate : more than 0, at most 1000000 g/h
        wax burnt in an hour
    heat : more than 0, at most 60 MJ/kg; 43.5 if left out
        heat that a kilogram of it gives as it burns (lower heating value)

    Returns
    -------
    0 or more W
        heat that the flame gives to the room

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    lower heating values worked from heats of formation in a reference library: paraffin 43.5, stearic acid 36.9; put in your data sheet's
    """
@_overload
def burn_heat(rate: _Value | _Array, heat: _Value | _Array = 43.5) -> _npt.NDArray[_np.float64]: ...
@_overload
def burn_heat(rate: _Value | _Array | _Column, heat: _Value | _Array | _Column = 43.5) -> _pd.Series[float]: ...
def burn_rate(hours: _Cells, weights: _Cells) -> float:
    """Rate of burning from a log of weighings: the slope of the straight line through them.

    Weigh at lighting and at putting out, jar and all; a log may go over several
    burns. `burn_rate_between` says how sure it is.

    >>> round(burn_rate(hours=[0, 4, 8, 12], weights=[612, 596, 581, 563]), 3)
    4.05

    Parameters
    ----------
    hours : list, each 0 to 10000 h
        hours burnt up to each weighing, all burns of this candle counted together
    weights : list, each 0 to 100000 g
        what the candle weighed then, jar and all

    Returns
    -------
    more than 0, at most 1000000 g/h
        wax burnt in an hour

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: two weighings at different hours, at least, are wanted.
        With the words: the weights must fall as the hours grow.

    References
    ----------
    straight line by least squares, interval of its slope: NIST StRD (Norris), ISO/TS 28037 by its examples
    """
def burn_rate_between(hours: _Cells, weights: _Cells, confidence: _Value = 0.95) -> _RateBetween:
    """Rate of burning from a log of weighings, with its interval and a word on the log.

    The interval is this candle's; candles of one recipe differ, and
    `rates_of_candles` puts several together.

    >>> burn_rate_between(hours=[0, 4], weights=[612, 596]).note
    'two weighings give a rate without an interval: weigh more often'

    Parameters
    ----------
    hours : list, each 0 to 10000 h
        hours burnt up to each weighing, all burns of this candle counted together
    weights : list, each 0 to 100000 g
        what the candle weighed then, jar and all
    confidence : 0.5 to 0.999 of the time; 0.95 if left out
        how often such an interval is to be right

    Returns
    -------
    a row of rate, low, high, note
        A rate of burning, the interval it lies in, and what to know about it.
    rate : more than 0, at most 1000000 g/h
        wax burnt in an hour
    low : any amount g/h or blank
        an end of the interval; blank where there is none
    high : any amount g/h or blank
        an end of the interval; blank where there is none
    note : text
        what to know about it

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: two weighings at different hours, at least, are wanted.
        With the words: the weights must fall as the hours grow.

    References
    ----------
    straight line by least squares, interval of its slope: NIST StRD (Norris), ISO/TS 28037 by its examples
    """
@_overload
def burn_rate_high(hours: _Cells, weights: _Cells, confidence: _Value = 0.95) -> float:
    """High end of the interval that the rate of burning of this candle lies in.

    >>> round(burn_rate_high(hours=[0, 4, 8, 12], weights=[612, 596, 581, 563]), 3)
    4.506

    Parameters
    ----------
    hours : list, each 0 to 10000 h
        hours burnt up to each weighing, all burns of this candle counted together
    weights : list, each 0 to 100000 g
        what the candle weighed then, jar and all
    confidence : 0.5 to 0.999 of the time; 0.95 if left out
        how often such an interval is to be right

    Returns
    -------
    any amount g/h
        an end of the interval that the rate lies in; below 0 the log is too rough

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: two weighings at different hours, at least, are wanted.
        With the words: the weights must fall as the hours grow.
        With the words: an interval takes three weighings at least.

    References
    ----------
    straight line by least squares, interval of its slope: NIST StRD (Norris), ISO/TS 28037 by its examples
    """
@_overload
def burn_rate_high(hours: _Cells, weights: _Cells, confidence: _Value | _Array = 0.95) -> _npt.NDArray[_np.float64]: ...
@_overload
def burn_rate_high(hours: _Cells, weights: _Cells, confidence: _Value | _Array | _Column = 0.95) -> _pd.Series[float]: ...
@_overload
def burn_rate_low(hours: _Cells, weights: _Cells, confidence: _Value = 0.95) -> float:
    """Low end of the interval that the rate of burning of this candle lies in.

    >>> round(burn_rate_low(hours=[0, 4, 8, 12], weights=[612, 596, 581, 563]), 3)
    3.594

    Parameters
    ----------
    hours : list, each 0 to 10000 h
        hours burnt up to each weighing, all burns of this candle counted together
    weights : list, each 0 to 100000 g
        what the candle weighed then, jar and all
    confidence : 0.5 to 0.999 of the time; 0.95 if left out
        how often such an interval is to be right

    Returns
    -------
    any amount g/h
        an end of the interval that the rate lies in; below 0 the log is too rough

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: two weighings at different hours, at least, are wanted.
        With the words: the weights must fall as the hours grow.
        With the words: an interval takes three weighings at least.

    References
    ----------
    straight line by least squares, interval of its slope: NIST StRD (Norris), ISO/TS 28037 by its examples
    """
@_overload
def burn_rate_low(hours: _Cells, weights: _Cells, confidence: _Value | _Array = 0.95) -> _npt.NDArray[_np.float64]: ...
@_overload
def burn_rate_low(hours: _Cells, weights: _Cells, confidence: _Value | _Array | _Column = 0.95) -> _pd.Series[float]: ...
@_overload
def burn_time(fill: _Value, rate: _Value, stays: _Value = 0.0) -> float:
    """Hours that a fill burns at a rate; `stays` is the wax left when burning has to stop.

    >>> burn_time(fill=220, rate=4, stays=52)
    42.0

    Parameters
    ----------
    fill : 0 or more g
        wax and oil together, as poured into a vessel or a batch
    rate : 1 to 500 g/h
        wax burnt in an hour
    stays : 0 or more g; 0.0 if left out
        wax that stays in the vessel when burning stops

    Returns
    -------
    0 to 1000000 h
        hours of burning

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: more wax cannot stay than was poured.

    References
    ----------
    algebra from the definitions
    """
@_overload
def burn_time(fill: _Value | _Array, rate: _Value | _Array, stays: _Value | _Array = 0.0) -> _npt.NDArray[_np.float64]: ...
@_overload
def burn_time(fill: _Value | _Array | _Column, rate: _Value | _Array | _Column, stays: _Value | _Array | _Column = 0.0) -> _pd.Series[float]: ...
def burn_time_from_log(hours: _Cells, weights: _Cells, fill: _Value, stays: _Value = 0.0, confidence: _Value = 0.95) -> _TimeBetween:
    """How long a candle burns, from a log of weighings: hours, their interval, and whole hours for a label.

    The label's hours are the low end, rounded down; with two weighings there
    are none.

    >>> burn_time_from_log(hours=[0, 4, 8, 12], weights=[612, 596, 581, 563], fill=220, stays=52).label
    37.0

    Parameters
    ----------
    hours : list, each 0 to 10000 h
        hours burnt up to each weighing, all burns of this candle counted together
    weights : list, each 0 to 100000 g
        what the candle weighed then, jar and all
    fill : 0 or more g
        wax and oil together, as poured into a vessel or a batch
    stays : 0 or more g; 0.0 if left out
        wax that stays in the vessel when burning stops
    confidence : 0.5 to 0.999 of the time; 0.95 if left out
        how often such an interval is to be right

    Returns
    -------
    a row of hours, low, high, label, note
        Hours of burning, the interval they lie in, the whole hours for a label, and what to know.
    hours : 0 or more h
        hours that the fill burns
    low : 0 or more h or blank
        an end of the interval; blank where there is none
    high : 0 or more h or blank
        an end of the interval; blank where there is none
    label : whole numbers 0 or more h or blank
        hours for a label; blank where the log is too short
    note : text
        what to know about it

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: two weighings at different hours, at least, are wanted.
        With the words: the weights must fall as the hours grow.
        With the words: more wax cannot stay than was poured.

    References
    ----------
    straight line by least squares, interval of its slope: NIST StRD (Norris), ISO/TS 28037 by its examples
    """
def burn_verdict(flame: _Value | None = None, other_burning: _Value | None = None, vessel: _Literal["whole", "cracked", "broken", "leaking"] | None = None, afterglow: _Value | None = None, lit_again: _Literal["no", "yes"] | None = None, targets: _Cells | None = None, measured: _Cells | None = None, lowest: _Cells | None = None, highest: _Cells | None = None, tallest: _Value = 75.0, seen: _Cells | None = None) -> _Judged:
    """What one test burn comes to, against stop conditions and the maker's own targets, with every reason.

    One stop condition is enough. A missing observation does not count as good: the test
    is then not judged. What was `seen` stops it too, where `wick_signs` calls it a stop. Stay with a test burn from
    lighting to cold.

    >>> burn_verdict(flame=82, other_burning=0, vessel="whole", afterglow=12, lit_again="no",
    ...              targets=["burn rate"], measured=[4.1], lowest=[3], highest=[5]).verdict
    'stop: do not sell or burn'

    Parameters
    ----------
    flame : 4 to 500 mm or blank; None if left out
        the tallest flame seen in the test; blank if not looked at
    other_burning : 0 or more s or blank; None if left out
        secondary ignition: the longest time that anything but the wick burnt; 0 for never; blank if not looked at
    vessel : "whole" or "cracked" or "broken" or "leaking" or blank; None if left out
        how the vessel came through; blank if not looked at
    afterglow : 0 or more s or blank; None if left out
        the longest glow or smoke after putting out; blank if not looked at
    lit_again : "no" or "yes" or blank; None if left out
        whether it lit again by itself after putting out; blank if not looked at
    targets : list, each text or blank; None if left out
        what the maker's own targets are for, such as burn rate or hours to the wall
    measured : list, each any amount or blank; None if left out
        what the test showed for each target; blank if not measured
    lowest : list, each any amount or blank; None if left out
        the lowest that meets each target; blank for no lowest
    highest : list, each any amount or blank; None if left out
        the highest that meets each target; blank for no highest
    tallest : 10 to 76.2 mm; 75.0 if left out
        tallest flame that is not a stop: 75 mm or 3 in; tea light 30 mm
    seen : list, each text or blank; None if left out
        what was seen, in the words of wick_signs; blank for nothing

    Returns
    -------
    a row of verdict, reasons
        What a test or a recipe comes to, and why.
    verdict : "stop: do not sell or burn" or "not judged" or "misses the maker's targets" or "meets the maker's targets"
        what the test comes to
    reasons : text
        why, in words

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    EN 15493 by trade and test-house summaries, unconfirmed: check against the standard; a maker's log is no conformity test
    """
@_overload
def buying_cost(quantity: _Value, demand: _Value, ordering: _Value, holding_share: _Value, price: _Value) -> float:
    """Total cost of goods, ordering and keeping if you buy this much at a time at this price.

    >>> buying_cost(quantity=200, demand=800, ordering=60, holding_share=0.3, price=48)
    40080.0

    Parameters
    ----------
    quantity : more than 0
        how much is ordered at a time, in the unit that demand is in
    demand : 0 or more
        how much is used or sold over the time planned for: a year, a season
    ordering : 0 or more
        what an order costs whatever its size: delivery, handling, the time it takes
    holding_share : more than 0, at most 1 of the price
        cost to keep a unit for the whole of that time, as a share of its price
    price : 0 or more money per unit
        price of one unit at that quantity

    Returns
    -------
    0 or more
        an amount of money

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    order quantity with a price on all units: the library stockpyl, after Snyder and Shen, chapter 3
    """
@_overload
def buying_cost(quantity: _Value | _Array, demand: _Value | _Array, ordering: _Value | _Array, holding_share: _Value | _Array, price: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def buying_cost(quantity: _Value | _Array | _Column, demand: _Value | _Array | _Column, ordering: _Value | _Array | _Column, holding_share: _Value | _Array | _Column, price: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def candles_a_pot(count: _Value, pots: _Value) -> float:
    """Candles that a pot is for, where a batch is shared evenly over pots in whole candles.

    Where it does not come out even, some pots are for one candle fewer:
    `pots_with_one_fewer` says how many.

    >>> candles_a_pot(count=50, pots=8)
    7.0

    Parameters
    ----------
    count : whole numbers 0 to 1000000
        how many candles to make
    pots : whole numbers 0 to 1000000
        how many pots

    Returns
    -------
    whole numbers 0 to 1000000
        how many candles

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: pots must be more than 0.

    References
    ----------
    common practice, no source
    """
@_overload
def candles_a_pot(count: _Value | _Array, pots: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def candles_a_pot(count: _Value | _Array | _Column, pots: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def celsius(fahrenheit: _Value) -> float:
    """A temperature in degrees Celsius, from one in Fahrenheit.

    For how far two temperatures are apart use `celsius_difference`: 18 F is 8 C
    below zero, and 18 F more is 10 C more.

    >>> celsius(fahrenheit=185)
    85.0

    Parameters
    ----------
    fahrenheit : -459.67 to 2000000 F
        a temperature in degrees Fahrenheit

    Returns
    -------
    -273.15 to 1000000 C
        a temperature in degrees Celsius

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    NIST SP 811 (2008), appendix B.8
    """
@_overload
def celsius(fahrenheit: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def celsius(fahrenheit: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def celsius_difference(difference: _Value) -> float:
    """How many degrees Celsius a rise, a fall or a margin in Fahrenheit is; not a temperature.

    >>> celsius_difference(difference=18)
    10.0

    Parameters
    ----------
    difference : -2000000 to 2000000 F difference
        how far two temperatures are apart, in degrees Fahrenheit

    Returns
    -------
    -1000000 to 1000000 C difference
        how far two temperatures are apart, in degrees Celsius

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    NIST SP 811 (2008), appendix B.8
    """
@_overload
def celsius_difference(difference: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def celsius_difference(difference: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def change_before_reclassifying(share: _Value) -> float:
    """How far a substance's share may change before the candle must be classified again.

    A change of its share, up or down: 0.3 is 30 % more or less of what it was. Applies
    where nothing else in the recipe changes.

    >>> change_before_reclassifying(share=0.008)
    0.3

    Parameters
    ----------
    share : 0 to 1 of the finished candle
        share of the finished candle

    Returns
    -------
    0 to 1 of the share it had
        change of a substance's share, up or down

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    Regulation (EC) No 1272/2008 (CLP), Annex I: limits as consolidated 2026-05-01, read in a transcription that quotes its tables; wording of 2025-09-01; Table 1.2
    """
@_overload
def change_before_reclassifying(share: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def change_before_reclassifying(share: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def coin_digits(currency: str) -> float:
    """Decimals of a currency's smallest unit: 2 for cents, 0 for yen. For `split_charge` and `round_money`.

    >>> coin_digits(currency="JPY")
    0.0

    Parameters
    ----------
    currency : text
        the currency's three letters, such as USD, GBP, EUR

    Returns
    -------
    whole numbers 0 to 4
        decimals of the currency's smallest coin

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    ISO 4217, minor units of currencies, second-hand
    """
@_overload
def coin_digits(currency: str | _Words) -> _npt.NDArray[_np.float64]: ...
@_overload
def coin_digits(currency: str | _Words | _Column) -> _pd.Series[float]: ...
@_overload
def consignment_due(count: _Value, price: _Value, share: _Value, paid: _Value = 0.0) -> float:
    """What a shop owes you that sells your candles on consignment: the price of what it sold, less its commission.

    >>> consignment_due(count=12, price=24, share=0.25)
    216.0

    Parameters
    ----------
    count : whole numbers 0 to 1000000
        how many the shop has sold since it last paid
    price : 0 or more
        price of one in the shop, before tax
    share : 0 to 0.99 of the price
        commission that the shop keeps
    paid : 0 or more; 0.0 if left out
        what the shop has paid on them already

    Returns
    -------
    any amount
        what the shop owes; minus where it has paid too much

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    ordinary commission on what is sold: accountingformanagement.org, consignment, by its example
    """
@_overload
def consignment_due(count: _Value | _Array, price: _Value | _Array, share: _Value | _Array, paid: _Value | _Array = 0.0) -> _npt.NDArray[_np.float64]: ...
@_overload
def consignment_due(count: _Value | _Array | _Column, price: _Value | _Array | _Column, share: _Value | _Array | _Column, paid: _Value | _Array | _Column = 0.0) -> _pd.Series[float]: ...
@_overload
def convert(value: _Value, unit: str, to: str) -> float:
    """A value in another unit of its kind, by exact factors: weights, volumes, lengths, temperatures, times.

    A spreadsheet's own CONVERT may be off in the seventh digit. C and F are
    temperatures on the scale, and "C difference" and "F difference" how far two
    are apart: 18 F is 8 C below zero, and 18 F more is 10 C more.

    >>> convert(value=12, unit="oz", to="g")
    340.1942775

    Parameters
    ----------
    value : any amount
        a value in the first unit
    unit : text
        a unit as you write it: g, kg, oz, lb, ml, fl oz (the US one), imp fl oz, mm, in, C, F, F difference, min, h
    to : text
        the unit wanted, written the same way

    Returns
    -------
    any amount
        the same in the second unit

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    units are defined by exact factors (international yard and pound agreement of 1959; US customary gallon)
    """
@_overload
def convert(value: _Value | _Array, unit: str | _Words, to: str | _Words) -> _npt.NDArray[_np.float64]: ...
@_overload
def convert(value: _Value | _Array | _Column, unit: str | _Words | _Column, to: str | _Words | _Column) -> _pd.Series[float]: ...
@_overload
def cooling_constant(first: _Value, second: _Value, minutes: _Value, room: _Value, melting: _Value) -> float:
    """How quickly a stirred pot of melted wax cools, from two readings.

    It compares pots, lids and rooms; it says nothing of a poured candle.

    >>> round(cooling_constant(first=80, second=70, minutes=20, room=20, melting=55), 5)
    0.00912

    Parameters
    ----------
    first : 0 to 160 C
        first reading of the stirred pot
    second : 0 to 160 C
        second reading of the stirred pot
    minutes : more than 0, at most 100000 min
        minutes from the first reading to the second
    room : -20 to 45 C
        temperature of the room
    melting : -50 to 160 C
        temperature at which the last of the wax is melted: the upper end of its melting range

    Returns
    -------
    more than 0 per min
        share of the gap to room temperature lost each minute, compounding

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: the first reading must be the warmer one.
        With the words: both readings must be above the room.
        With the words: both readings must lie above the melting range: wax that sets gives up heat of its own.

    References
    ----------
    Newton's law of cooling: OpenStax, Calculus volume 2, exponential growth and decay
    """
@_overload
def cooling_constant(first: _Value | _Array, second: _Value | _Array, minutes: _Value | _Array, room: _Value | _Array, melting: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def cooling_constant(first: _Value | _Array | _Column, second: _Value | _Array | _Column, minutes: _Value | _Array | _Column, room: _Value | _Array | _Column, melting: _Value | _Array | _Column) -> _pd.Series[float]: ...
def cooling_forecast(first: _Value, second: _Value, minutes: _Value, room: _Value, melting: _Value, temperature: _Value, reading: _Value = 0.5) -> _CoolingForecast:
    """When a stirred pot will have cooled to a temperature still to come, in minutes after the first reading.

    Expected by Newton's law. The soonest and the latest assume each reading is off by its most, the worst way;
    the latest also assumes still air, where the pot loses heat more slowly as it cools. A lid put on, a draught or a
    hot plate under it upsets all of that: read the pot again on the way.

    >>> round(cooling_forecast(first=80, second=70, minutes=20, room=20, melting=55, temperature=65).latest, 1)
    36.0

    Parameters
    ----------
    first : 0 to 160 C
        first reading of the stirred pot
    second : 0 to 160 C
        second reading of the stirred pot
    minutes : more than 0, at most 100000 min
        minutes from the first reading to the second
    room : -20 to 45 C
        temperature of the room
    melting : -50 to 160 C
        temperature at which the last of the wax is melted: the upper end of its melting range
    temperature : 0 to 160 C
        a cooler temperature, still to come
    reading : 0 to 10 C difference; 0.5 if left out
        how far each reading may be off; 0.5 for a thermometer that shows whole degrees

    Returns
    -------
    a row of expected, soonest, latest, note
        When a pot will be at a cooler temperature: as expected, at the soonest, at the latest, and what to know.
    expected : 0 or more min
        minutes after the first reading
    soonest : 0 or more min
        minutes after the first reading
    latest : 0 or more min or blank
        minutes after the first reading; blank where it cannot be told
    note : text
        what to know about it

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: the first reading must be the warmer one.
        With the words: both readings must be above the room.
        With the words: both readings must lie above the melting range: wax that sets gives up heat of its own.
        With the words: the temperature must not be above the second reading: for that use cooling_time.
        With the words: below the melting range no time can be told: wax that sets gives up heat of its own.
        With the words: a pot does not come down to the room's own temperature.

    References
    ----------
    Newton's law of cooling: OpenStax, Calculus volume 2, exponential growth and decay; loss to still air as the 5/4 power of how much warmer it is: O'Sullivan, American Journal of Physics 58 (1990), page 956, from memory
    """
@_overload
def cooling_temperature(first: _Value, second: _Value, minutes: _Value, room: _Value, melting: _Value, after: _Value) -> float:
    """Temperature of a stirred pot at a time between two readings.

    >>> round(cooling_temperature(first=80, second=70, minutes=20, room=20, melting=55, after=10), 1)
    74.8

    Parameters
    ----------
    first : 0 to 160 C
        first reading of the stirred pot
    second : 0 to 160 C
        second reading of the stirred pot
    minutes : more than 0, at most 100000 min
        minutes from the first reading to the second
    room : -20 to 45 C
        temperature of the room
    melting : -50 to 160 C
        temperature at which the last of the wax is melted: the upper end of its melting range
    after : 0 to 100000 min
        minutes after the first reading

    Returns
    -------
    0 to 160 C
        a temperature between the two readings

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: the first reading must be the warmer one.
        With the words: both readings must be above the room.
        With the words: both readings must lie above the melting range: wax that sets gives up heat of its own.
        With the words: it holds between the two readings only: the time is after the second.

    References
    ----------
    Newton's law of cooling: OpenStax, Calculus volume 2, exponential growth and decay
    """
@_overload
def cooling_temperature(first: _Value | _Array, second: _Value | _Array, minutes: _Value | _Array, room: _Value | _Array, melting: _Value | _Array, after: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def cooling_temperature(first: _Value | _Array | _Column, second: _Value | _Array | _Column, minutes: _Value | _Array | _Column, room: _Value | _Array | _Column, melting: _Value | _Array | _Column, after: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def cooling_time(first: _Value, second: _Value, minutes: _Value, room: _Value, melting: _Value, temperature: _Value) -> float:
    """Minutes after the first reading at which a stirred pot came down to a temperature between the two.

    For a cooler temperature that is still to come use `cooling_forecast`.

    >>> round(cooling_time(first=80, second=70, minutes=20, room=20, melting=55, temperature=75), 1)
    9.5

    Parameters
    ----------
    first : 0 to 160 C
        first reading of the stirred pot
    second : 0 to 160 C
        second reading of the stirred pot
    minutes : more than 0, at most 100000 min
        minutes from the first reading to the second
    room : -20 to 45 C
        temperature of the room
    melting : -50 to 160 C
        temperature at which the last of the wax is melted: the upper end of its melting range
    temperature : 0 to 160 C
        a temperature between the two readings

    Returns
    -------
    0 or more min
        minutes after the first reading

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: the first reading must be the warmer one.
        With the words: both readings must be above the room.
        With the words: both readings must lie above the melting range: wax that sets gives up heat of its own.
        With the words: it holds between the two readings only: the temperature is above the first.
        With the words: it holds between two readings: for a cooler one to come use cooling_forecast.

    References
    ----------
    Newton's law of cooling: OpenStax, Calculus volume 2, exponential growth and decay
    """
@_overload
def cooling_time(first: _Value | _Array, second: _Value | _Array, minutes: _Value | _Array, room: _Value | _Array, melting: _Value | _Array, temperature: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def cooling_time(first: _Value | _Array | _Column, second: _Value | _Array | _Column, minutes: _Value | _Array | _Column, room: _Value | _Array | _Column, melting: _Value | _Array | _Column, temperature: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def cost_at_batch(cost: _Value, setup: _Value, usual: _Value, batch: _Value) -> float:
    """Cost per candle at another batch size, its set-up divided over the new one.

    `setup` is what setting up once costs.

    >>> cost_at_batch(cost=5, setup=12, usual=12, batch=24)
    4.5

    Parameters
    ----------
    cost : 0 or more
        what the candle costs in the usual batch
    setup : 0 or more
        what setting up once costs
    usual : whole numbers 1 to 1000000
        how many candles are usually made together
    batch : whole numbers 1 to 1000000
        how many candles are made together

    Returns
    -------
    0 or more
        what the candle costs

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    algebra from the definitions
    """
@_overload
def cost_at_batch(cost: _Value | _Array, setup: _Value | _Array, usual: _Value | _Array, batch: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def cost_at_batch(cost: _Value | _Array | _Column, setup: _Value | _Array | _Column, usual: _Value | _Array | _Column, batch: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def cost_each(cost: _Value, batch: _Value) -> float:
    """Cost of one candle out of a batch.

    >>> cost_each(cost=931, batch=7)
    133.0

    Parameters
    ----------
    cost : 0 or more
        what the whole batch costs
    batch : whole numbers 1 to 1000000
        how many candles are made together

    Returns
    -------
    0 or more
        what the candle costs

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    algebra from the definitions
    """
@_overload
def cost_each(cost: _Value | _Array, batch: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def cost_each(cost: _Value | _Array | _Column, batch: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def cost_of_all(cost: _Value, count: _Value) -> float:
    """Cost of so many candles alike.

    >>> cost_of_all(cost=4.5, count=24)
    108.0

    Parameters
    ----------
    cost : 0 or more
        what one of them costs
    count : whole numbers 0 to 1000000
        how many, a whole number

    Returns
    -------
    0 or more
        what the candle costs

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    algebra from the definitions
    """
@_overload
def cost_of_all(cost: _Value | _Array, count: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def cost_of_all(cost: _Value | _Array | _Column, count: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def cost_of_goods_made(materials: _Value, labour: _Value, overhead: _Value, opening: _Value = 0.0, closing: _Value = 0.0) -> float:
    """Making cost of the candles finished in a period; opening and closing are work in hand, half-made.

    >>> cost_of_goods_made(materials=15000, labour=25000, overhead=23000, opening=75000, closing=43000)
    95000.0

    Parameters
    ----------
    materials : 0 or more
        materials used in the period
    labour : 0 or more
        paid labour of making; nothing for the maker's own time
    overhead : 0 or more
        overhead of making
    opening : 0 or more; 0.0 if left out
        stock at the start of the period, at making cost
    closing : 0 or more; 0.0 if left out
        stock at the end of the period, at making cost

    Returns
    -------
    0 or more
        cost of goods made

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: closing work in hand cannot be more than went in.

    References
    ----------
    schedules of cost of goods: OpenStax, Managerial Accounting 2.1 and 4.3
    """
@_overload
def cost_of_goods_made(materials: _Value | _Array, labour: _Value | _Array, overhead: _Value | _Array, opening: _Value | _Array = 0.0, closing: _Value | _Array = 0.0) -> _npt.NDArray[_np.float64]: ...
@_overload
def cost_of_goods_made(materials: _Value | _Array | _Column, labour: _Value | _Array | _Column, overhead: _Value | _Array | _Column, opening: _Value | _Array | _Column = 0.0, closing: _Value | _Array | _Column = 0.0) -> _pd.Series[float]: ...
def cost_of_goods_schedule(opening: _Value, bought: _Value, closing: _Value, labour: _Value = 0.0, supplies: _Value = 0.0, other: _Value = 0.0, withdrawn: _Value = 0.0) -> _ScheduleLines:
    """Cost of goods sold as a US sole owner's Schedule C asks for it, lines 35 to 42.

    Stock is materials, work in hand and finished candles together. Check the
    lines against the form and instructions of the year.

    >>> cost_of_goods_schedule(opening=67000, bought=610000, closing=77200, withdrawn=1780).line_42
    598020.0

    Parameters
    ----------
    opening : 0 or more
        stock at the start of the period, at making cost
    bought : 0 or more
        bought in the period, less returns and discounts, freight in with it
    closing : 0 or more
        stock at the end of the period, at making cost
    labour : 0 or more; 0.0 if left out
        paid labour of making; nothing for the maker's own time
    supplies : 0 or more; 0.0 if left out
        supplies used in making that are not in stock
    other : 0 or more; 0.0 if left out
        other costs of making
    withdrawn : 0 or more; 0.0 if left out
        cost of what was taken for the maker's own use

    Returns
    -------
    a row of line_35, line_36, line_37, line_38, line_39, line_40, line_41, line_42
        Lines 35 to 42 of Schedule C, Part III.
    line_35 : 0 or more
        stock at the start of the period, at making cost
    line_36 : 0 or more
        bought in the period, less returns and discounts, freight in with it
    line_37 : 0 or more
        paid labour of making; nothing for the maker's own time
    line_38 : 0 or more
        supplies used in making that are not in stock
    line_39 : 0 or more
        other costs of making
    line_40 : 0 or more
        the sum of the lines above it
    line_41 : 0 or more
        stock at the end of the period, at making cost
    line_42 : 0 or more
        cost of goods, over the period

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: no more can be taken for own use than was bought.
        With the words: closing stock cannot be more than there was.

    Notes
    -----
    - small US businesses may account for stock otherwise: see the form's instructions.

    References
    ----------
    IRS Form 1040 Schedule C, Part III, by Publication 334 (editions of 2013 to 2019)
    """
@_overload
def cost_of_goods_sold(opening: _Value, made: _Value, closing: _Value) -> float:
    """Making cost of the candles sold in a period, from finished stock before, made, and left.

    >>> cost_of_goods_sold(opening=65000, made=95000, closing=58000)
    102000.0

    Parameters
    ----------
    opening : 0 or more
        stock at the start of the period, at making cost
    made : 0 or more
        cost of goods made
    closing : 0 or more
        stock at the end of the period, at making cost

    Returns
    -------
    0 or more
        cost of goods, over the period

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: closing stock cannot be more than there was.

    References
    ----------
    schedules of cost of goods: OpenStax, Managerial Accounting 2.1 and 4.3
    """
@_overload
def cost_of_goods_sold(opening: _Value | _Array, made: _Value | _Array, closing: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def cost_of_goods_sold(opening: _Value | _Array | _Column, made: _Value | _Array | _Column, closing: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def cost_of_paying_late(discount: _Value, early: _Value, due: _Value, year: _Value = 360) -> float:
    """What passing over an early-payment discount costs, as a simple rate a year.

    >>> round(cost_of_paying_late(discount=0.02, early=10, due=30), 4)
    0.3673

    Parameters
    ----------
    discount : 0 to 0.5 of the invoice
        discount for paying early
    early : whole numbers 0 to 365 days
        days in which the discount is given
    due : whole numbers 0 to 365 days
        days after which the whole is due
    year : whole numbers 360 to 366 days; 360 if left out
        days that a year is counted as

    Returns
    -------
    0 or more of the amount a year
        what it costs, as a share a year

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: the discount must end before the whole is due.

    References
    ----------
    OpenStax, Financial Accounting 6.3; Principles of Finance 19.2
    """
@_overload
def cost_of_paying_late(discount: _Value | _Array, early: _Value | _Array, due: _Value | _Array, year: _Value | _Array = 360) -> _npt.NDArray[_np.float64]: ...
@_overload
def cost_of_paying_late(discount: _Value | _Array | _Column, early: _Value | _Array | _Column, due: _Value | _Array | _Column, year: _Value | _Array | _Column = 360) -> _pd.Series[float]: ...
@_overload
def cost_per_burn_hour(cost: _Value, hours: _Value) -> float:
    """What an hour of burning costs.

    >>> cost_per_burn_hour(cost=8.4, hours=42)
    0.2

    Parameters
    ----------
    cost : 0 or more
        what the candle costs
    hours : more than 0, at most 1000000 h
        hours of burning

    Returns
    -------
    0 or more money per h
        what an hour of burning costs

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    algebra from the definitions
    """
@_overload
def cost_per_burn_hour(cost: _Value | _Array, hours: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def cost_per_burn_hour(cost: _Value | _Array | _Column, hours: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def cost_with_rise(cost: _Value, materials: _Value, rise: _Value) -> float:
    """A cost after the price of the materials in it rises (or falls, with a minus) by a share.

    >>> cost_with_rise(cost=8, materials=5, rise=0.1)
    8.5

    Parameters
    ----------
    cost : 0 or more
        what it costs today
    materials : 0 or more
        what the materials in that cost
    rise : -0.9 to 2 of today's cost
        how far prices rise; minus for a fall

    Returns
    -------
    0 or more
        what the candle costs

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    algebra from the definitions
    """
@_overload
def cost_with_rise(cost: _Value | _Array, materials: _Value | _Array, rise: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def cost_with_rise(cost: _Value | _Array | _Column, materials: _Value | _Array | _Column, rise: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def count_difference(counted: _Value, booked: _Value) -> float:
    """How much a count finds above the books; minus where it finds less.

    >>> count_difference(counted=46, booked=48)
    -2.0

    Parameters
    ----------
    counted : 0 or more
        how much the count finds
    booked : 0 or more
        how much the books or the log say there is

    Returns
    -------
    any amount
        more than the books say; minus for less

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    adjusting to a count: OpenStax, Financial Accounting 6.3
    """
@_overload
def count_difference(counted: _Value | _Array, booked: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def count_difference(counted: _Value | _Array | _Column, booked: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def count_difference_cost(counted: _Value, booked: _Value, cost: _Value) -> float:
    """What the difference of a count is worth at cost; a minus is a loss to be booked.

    >>> count_difference_cost(counted=46, booked=48, cost=6)
    -12.0

    Parameters
    ----------
    counted : 0 or more
        how much the count finds
    booked : 0 or more
        how much the books or the log say there is
    cost : 0 or more money per unit
        cost of one unit of the material: a piece, or a unit of weight

    Returns
    -------
    any amount
        an amount of money; minus for a credit or a loss

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    adjusting to a count: OpenStax, Financial Accounting 6.3
    """
@_overload
def count_difference_cost(counted: _Value | _Array, booked: _Value | _Array, cost: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def count_difference_cost(counted: _Value | _Array | _Column, booked: _Value | _Array | _Column, cost: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def cylinder_volume(diameter: _Value, height: _Value, base: _Value = 0.0) -> float:
    """Volume of a straight round vessel, from inside measures.

    Real glass has rounded corners and a thick floor: where you can, weigh the
    water it holds and use `volume_from_water`.

    >>> round(cylinder_volume(diameter=80, height=90), 1)
    452.4

    Parameters
    ----------
    diameter : 10 to 2000 mm
        how far the vessel is across inside
    height : 10 to 2000 mm
        how deep the vessel is inside, up to the brim or the mark
    base : -200 to 200 mm; 0.0 if left out
        how high the floor is pushed up at its middle; minus where it bulges down

    Returns
    -------
    0 or more ml
        a volume inside a vessel

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: the floor cannot rise above the fill.

    References
    ----------
    elementary geometry; OpenStax, Prealgebra 2e (cylinder) and Calculus (solids cut across)
    """
@_overload
def cylinder_volume(diameter: _Value | _Array, height: _Value | _Array, base: _Value | _Array = 0.0) -> _npt.NDArray[_np.float64]: ...
@_overload
def cylinder_volume(diameter: _Value | _Array | _Column, height: _Value | _Array | _Column, base: _Value | _Array | _Column = 0.0) -> _pd.Series[float]: ...
@_overload
def days_covered(on_hand: _Value, a_day: _Value) -> float:
    """How many days your stock lasts, from how much goes in a day.

    >>> days_covered(on_hand=48, a_day=3)
    16.0

    Parameters
    ----------
    on_hand : 0 or more
        how much is on hand
    a_day : more than 0
        how much is used or sold in a day

    Returns
    -------
    0 or more days
        how many days the stock lasts

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    algebra from the definitions
    """
@_overload
def days_covered(on_hand: _Value | _Array, a_day: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def days_covered(on_hand: _Value | _Array | _Column, a_day: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def days_in_stock(goods: _Value, opening: _Value, closing: _Value, days: _Value = 365.0) -> float:
    """How many days goods stay in stock on average, from what was sold or used over so many days.

    >>> days_in_stock(goods=3650, opening=700, closing=500)
    60.0

    Parameters
    ----------
    goods : 0 or more
        cost of the goods sold or used over the time
    opening : 0 or more
        what stock was worth at the start, at cost
    closing : 0 or more
        what stock was worth at the end, at cost
    days : more than 0, at most 3660 days; 365.0 if left out
        how many days the time has

    Returns
    -------
    0 or more days
        how many days the stock lasts

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: goods must be more than 0.

    References
    ----------
    inventory turnover and days: OpenStax, Financial Accounting 10.5
    """
@_overload
def days_in_stock(goods: _Value | _Array, opening: _Value | _Array, closing: _Value | _Array, days: _Value | _Array = 365.0) -> _npt.NDArray[_np.float64]: ...
@_overload
def days_in_stock(goods: _Value | _Array | _Column, opening: _Value | _Array | _Column, closing: _Value | _Array | _Column, days: _Value | _Array | _Column = 365.0) -> _pd.Series[float]: ...
@_overload
def dye_for_wax(wax: _Value, share: _Value) -> float:
    """Dye to weigh out for a weight of wax.

    >>> dye_for_wax(wax=1000, share=0.0005)
    0.5

    Parameters
    ----------
    wax : 0 or more g
        wax in the melt, before any oil
    share : 0 to 0.1 of wax weight
        dye as a share of wax weight

    Returns
    -------
    0 or more g
        dye to weigh out

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    common practice, no source
    """
@_overload
def dye_for_wax(wax: _Value | _Array, share: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def dye_for_wax(wax: _Value | _Array | _Column, share: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def dye_pieces(wax: _Value, coloured: _Value, cuts: _Value = 1.0) -> float:
    """Pieces of dye (blocks, chips) for a melt, by how much wax one piece colours, to the nearest half or quarter.

    >>> dye_pieces(wax=1000, coloured=450, cuts=4)
    2.25

    Parameters
    ----------
    wax : 0 or more g
        wax in the melt, before any oil
    coloured : more than 0 g
        wax that one piece of dye colours as wanted, by its supplier or your own tests
    cuts : whole numbers 1 to 16; 1.0 if left out
        parts that a piece is cut into: 1 for whole ones, 2 for halves, 4 for quarters

    Returns
    -------
    0 or more
        pieces of dye

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    common practice, no source
    """
@_overload
def dye_pieces(wax: _Value | _Array, coloured: _Value | _Array, cuts: _Value | _Array = 1.0) -> _npt.NDArray[_np.float64]: ...
@_overload
def dye_pieces(wax: _Value | _Array | _Column, coloured: _Value | _Array | _Column, cuts: _Value | _Array | _Column = 1.0) -> _pd.Series[float]: ...
@_overload
def early_discount(invoice: _Value, discount: _Value, returned: _Value = 0.0) -> float:
    """Discount for paying an invoice early, on what is left of it after returns.

    >>> early_discount(invoice=12000, discount=0.02, returned=1000)
    220.0

    Parameters
    ----------
    invoice : 0 or more
        amount of the invoice
    discount : 0 to 0.5 of the invoice
        discount for paying early
    returned : 0 or more; 0.0 if left out
        taken back or allowed off before it is paid

    Returns
    -------
    0 or more
        an amount of money

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: no more can be returned than was invoiced.

    References
    ----------
    OpenStax, Financial Accounting 6.3; Principles of Finance 19.2
    """
@_overload
def early_discount(invoice: _Value | _Array, discount: _Value | _Array, returned: _Value | _Array = 0.0) -> _npt.NDArray[_np.float64]: ...
@_overload
def early_discount(invoice: _Value | _Array | _Column, discount: _Value | _Array | _Column, returned: _Value | _Array | _Column = 0.0) -> _pd.Series[float]: ...
@_overload
def early_payment(invoice: _Value, discount: _Value, returned: _Value = 0.0) -> float:
    """What to pay in the days of the discount.

    >>> early_payment(invoice=12000, discount=0.02, returned=1000)
    10780.0

    Parameters
    ----------
    invoice : 0 or more
        amount of the invoice
    discount : 0 to 0.5 of the invoice
        discount for paying early
    returned : 0 or more; 0.0 if left out
        taken back or allowed off before it is paid

    Returns
    -------
    0 or more
        an amount of money

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: no more can be returned than was invoiced.

    References
    ----------
    OpenStax, Financial Accounting 6.3; Principles of Finance 19.2
    """
@_overload
def early_payment(invoice: _Value | _Array, discount: _Value | _Array, returned: _Value | _Array = 0.0) -> _npt.NDArray[_np.float64]: ...
@_overload
def early_payment(invoice: _Value | _Array | _Column, discount: _Value | _Array | _Column, returned: _Value | _Array | _Column = 0.0) -> _pd.Series[float]: ...
@_overload
def economic_order_quantity(demand: _Value, ordering: _Value, holding: _Value) -> float:
    """How much to order at a time so that ordering and keeping cost least together.

    It assumes steady demand and the same price for any quantity; with price breaks use
    `best_break`. The cost is flat around it, so a whole number
    of packs near it costs hardly more: `ordering_cost` says how much.

    >>> economic_order_quantity(demand=900, ordering=12, holding=0.6)
    189.73665961010275

    Parameters
    ----------
    demand : 0 or more
        how much is used or sold over the time planned for: a year, a season
    ordering : 0 or more
        what an order costs whatever its size: delivery, handling, the time it takes
    holding : more than 0 money per unit
        cost to keep one unit for the whole of that time: money tied up, room, losses

    Returns
    -------
    0 or more
        how much to order at a time, in the unit that demand is in

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    economic order quantity: the library stockpyl, after Snyder and Shen, example 3.1
    """
@_overload
def economic_order_quantity(demand: _Value | _Array, ordering: _Value | _Array, holding: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def economic_order_quantity(demand: _Value | _Array | _Column, ordering: _Value | _Array | _Column, holding: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def enough_for(available: _Value, each: _Value) -> float:
    """How many candles you can make from what is on hand, at one weight for each.

    >>> enough_for(available=2000, each=160)
    12.0

    Parameters
    ----------
    available : 0 or more g
        what is on hand, in any unit, the same for all
    each : 0 or more g
        what goes into one candle, in any unit, the same for all

    Returns
    -------
    whole numbers 0 to 1000000
        how many candles

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: each must be more than 0.

    References
    ----------
    common practice, no source
    """
@_overload
def enough_for(available: _Value | _Array, each: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def enough_for(available: _Value | _Array | _Column, each: _Value | _Array | _Column) -> _pd.Series[float]: ...
def entries_out_of_balance(entries: _Cells, debits: _Cells | None, credits: _Cells | None) -> list[_EntrySum]:
    """Entries whose debits and credits differ, and by how much; none where every one balances.

    A difference that divides by 9 is often two digits swapped; half of one is
    often an amount on the wrong side.

    >>> entries_out_of_balance(entries=["1", "1", "2", "2"], debits=[90, None, 54, None], credits=[None, 90, None, 45])
    [EntrySum(entry='2', debits=54.0, credits=45.0, over=9.0)]

    Parameters
    ----------
    entries : list, each text
        number or date of the entry that each line is of
    debits : list, each 0 or more or blank
        debit of each line; blank where it is a credit
    credits : list, each 0 or more or blank
        credit of each line; blank where it is a debit

    Returns
    -------
    list, each a row of entry, debits, credits, over
        An entry whose two sides differ.
    entry : text
        number or date of the entry
    debits : 0 or more
        an amount of money
    credits : 0 or more
        an amount of money
    over : any amount
        an amount of money; minus for a credit or a loss

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    double entry: OpenStax, Financial Accounting, chapters 3 and 6; Managerial Accounting 4.7
    """
@_overload
def equal_pot(melt: _Value, pots: _Value) -> float:
    """What each pot holds where a melt is shared out evenly, so that every pot can be stirred and weighed alike.

    `pots_needed` says how many pots a melt takes.

    >>> equal_pot(melt=7040, pots=3)
    2346.6666666666665

    Parameters
    ----------
    melt : 0 or more g
        a weight, in any unit; the answer is in the same unit
    pots : whole numbers 0 to 1000000
        how many pots

    Returns
    -------
    0 or more g
        a weight, in any unit; the answer is in the same unit

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: pots must be more than 0.

    References
    ----------
    common practice, no source
    """
@_overload
def equal_pot(melt: _Value | _Array, pots: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def equal_pot(melt: _Value | _Array | _Column, pots: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def evenings_needed(pots: _Value, an_evening: _Value) -> float:
    """Evenings to pour this many pots.

    >>> evenings_needed(pots=7, an_evening=3)
    3.0

    Parameters
    ----------
    pots : whole numbers 0 to 1000000
        how many pots are to be poured
    an_evening : whole numbers 1 to 10000
        how many pots can be poured in an evening

    Returns
    -------
    whole numbers 0 to 1000000
        how many evenings

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    common practice, no source
    """
@_overload
def evenings_needed(pots: _Value | _Array, an_evening: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def evenings_needed(pots: _Value | _Array | _Column, an_evening: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def expected_season_profit(stock: _Value, price: _Value, cost: _Value, leftover: _Value, kind: _Literal["normal", "Poisson", "records"], demand: _Value | None = None, spread: _Value | None = None, records: _Cells | None = None) -> float:
    """Profit to expect from so many made for one season, what is left over sold off or thrown away.

    An average over many such seasons; one of them can bring much more or less.

    >>> expected_season_profit(stock=62, price=24, cost=9, leftover=5, kind="records", records=[40, 55, 48, 70, 62])
    766.6

    Parameters
    ----------
    stock : 0 or more
        how many to have when the season starts
    price : 0 or more
        what one brings while the season lasts, after fees
    cost : 0 or more
        what one costs to make
    leftover : any amount
        what one still brings after the season; minus if it costs money to be rid of
    kind : "normal" or "Poisson" or "records"
        how the number wanted varies: normal around a mean, Poisson as buyers come one by one, or as your own records
    demand : 0 or more or blank; None if left out
        average number wanted in the season; for normal and Poisson
    spread : more than 0 or blank; None if left out
        standard deviation of how many people want, from season to season; for normal
    records : list, each 0 or more or blank; None if left out
        how many people wanted in each season like it, for records; one that sold out says too little

    Returns
    -------
    any amount
        an amount of money; minus for a credit or a loss

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    one-season stock (newsvendor): the library stockpyl, after Snyder and Shen, examples 4.1 to 4.7
    """
@_overload
def expected_season_profit(stock: _Value | _Array, price: _Value | _Array, cost: _Value | _Array, leftover: _Value | _Array, kind: _Literal["normal", "Poisson", "records"] | _Words, demand: _Value | _Array | None = None, spread: _Value | _Array | None = None, records: _Cells | None = None) -> _npt.NDArray[_np.float64]: ...
@_overload
def expected_season_profit(stock: _Value | _Array | _Column, price: _Value | _Array | _Column, cost: _Value | _Array | _Column, leftover: _Value | _Array | _Column, kind: _Literal["normal", "Poisson", "records"] | _Words | _Column, demand: _Value | _Array | _Column | None = None, spread: _Value | _Array | _Column | None = None, records: _Cells | None = None) -> _pd.Series[float]: ...
@_overload
def fahrenheit(celsius: _Value) -> float:
    """A temperature in degrees Fahrenheit, from one in Celsius.

    For how far two temperatures are apart use `fahrenheit_difference`.

    >>> fahrenheit(celsius=85)
    185.0

    Parameters
    ----------
    celsius : -273.15 to 1000000 C
        a temperature in degrees Celsius

    Returns
    -------
    -459.67 to 2000000 F
        a temperature in degrees Fahrenheit

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    NIST SP 811 (2008), appendix B.8
    """
@_overload
def fahrenheit(celsius: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def fahrenheit(celsius: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def fahrenheit_difference(difference: _Value) -> float:
    """How many degrees Fahrenheit a rise, a fall or a margin in Celsius is; not a temperature.

    >>> fahrenheit_difference(difference=10)
    18.0

    Parameters
    ----------
    difference : -1000000 to 1000000 C difference
        how far two temperatures are apart, in degrees Celsius

    Returns
    -------
    -2000000 to 2000000 F difference
        how far two temperatures are apart, in degrees Fahrenheit

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    NIST SP 811 (2008), appendix B.8
    """
@_overload
def fahrenheit_difference(difference: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def fahrenheit_difference(difference: _Value | _Array | _Column) -> _pd.Series[float]: ...
def fair_split(available: _Value, wants: _Cells, step: _Value = 1.0, sharing: _Literal["in proportion", "evenly"] = 'in proportion') -> list[float]:
    """Share out what there is too little of: oil for several products, candles for several shops.

    In proportion to what each one wants, or evenly: the same for all, but no
    one more than it wants. All is handed out in whole steps, the parts add up to
    what is there, and a step left over goes to the larger fraction, or to the
    earlier line. Where there is enough, each gets what it wants.

    >>> fair_split(available=10, wants=[8, 6, 2])
    [5.0, 4.0, 1.0]

    Parameters
    ----------
    available : 0 or more
        how much there is to share out
    wants : list, each 0 or more
        how much each one wants, in the same unit
    step : more than 0; 1.0 if left out
        the smallest amount that is handed out: 1 for pieces, 50 for steps of 50 g
    sharing : "in proportion" or "evenly"; 'in proportion' if left out
        how the charge is shared: in proportion to the amounts, or evenly

    Returns
    -------
    list, each 0 or more
        how much each one gets, in the order of the list

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    largest remainder (OpenStax, Contemporary Mathematics 11.4); even shares up to what each wants: algebra
    """
@_overload
def fastest_candle(rates: _Cells, confidence: _Value = 0.95) -> float:
    """How fast the next candle of a recipe may burn, from the rates of those tested.

    The figure for a label: the buyer burns one more candle, not the mean of yours.

    >>> round(fastest_candle(rates=[4.0, 4.3, 3.9, 4.2]), 3)
    4.75

    Parameters
    ----------
    rates : list, each more than 0, at most 1000000 g/h
        rate of burning of each candle of one recipe
    confidence : 0.5 to 0.999 of the time; 0.95 if left out
        how often such an interval is to be right

    Returns
    -------
    more than 0, at most 1000000 g/h
        the fastest it may burn: the high end of the rate's interval

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: the rates of two candles at least are wanted.

    References
    ----------
    interval of a mean: OpenStax, Introductory Statistics 2e, confidence intervals; of one more, from memory
    """
@_overload
def fastest_candle(rates: _Cells, confidence: _Value | _Array = 0.95) -> _npt.NDArray[_np.float64]: ...
@_overload
def fastest_candle(rates: _Cells, confidence: _Value | _Array | _Column = 0.95) -> _pd.Series[float]: ...
@_overload
def fee_at(price: _Value, fee: _Value, tax: _Value = 0.0, basis: _Literal["net", "gross"] = 'net', least: _Value = 0.0) -> float:
    """What the place takes from a price: its percentage, or its smallest fee if more.

    >>> fee_at(price=20, fee=0.1, tax=0.2, basis="gross")
    2.4

    Parameters
    ----------
    price : 0 or more
        price before tax
    fee : 0 to 0.95 of the price
        what the place keeps of the price
    tax : 0 to 1 of the price before tax; 0.0 if left out
        rate of sales tax or VAT
    basis : "net" or "gross"; 'net' if left out
        what the fee is a share of: the price before tax (net) or with tax (gross)
    least : 0 or more; 0.0 if left out
        the smallest fee that a candle is charged

    Returns
    -------
    0 or more
        an amount of money

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    algebra from the definitions
    """
@_overload
def fee_at(price: _Value | _Array, fee: _Value | _Array, tax: _Value | _Array = 0.0, basis: _Literal["net", "gross"] | _Words = 'net', least: _Value | _Array = 0.0) -> _npt.NDArray[_np.float64]: ...
@_overload
def fee_at(price: _Value | _Array | _Column, fee: _Value | _Array | _Column, tax: _Value | _Array | _Column = 0.0, basis: _Literal["net", "gross"] | _Words | _Column = 'net', least: _Value | _Array | _Column = 0.0) -> _pd.Series[float]: ...
def figure_height_metric(net: _Value) -> _FigureHeight:
    """Least height of the figures of a declared weight in the EU and GB, by the weight.

    >>> figure_height_metric(net=180).height
    3.0

    Parameters
    ----------
    net : 5 to 25000 g
        net weight to declare: wax and oil, no vessel, lid or wick tab

    Returns
    -------
    a row of height, note
        A least height, and what it rests on.
    height : 0 or more mm
        least height of the figures
    note : text
        what it rests on, and what to check

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    Directive 76/211/EEC by a summary of USDA Foreign Agricultural Service
    """
def figure_height_us(area: _Value) -> _FigureHeight:
    """Least height of the figures of a net weight on a US label, by the area of the panel it stands on.

    >>> figure_height_us(area=90)
    FigureHeight(height=3.175, note='unconfirmed: check against 16 CFR 500.21(b)')

    Parameters
    ----------
    area : 15 to 1000000 cm2
        area of the side that is shown to the buyer

    Returns
    -------
    a row of height, note
        A least height, and what it rests on.
    height : 0 or more mm
        least height of the figures
    note : text
        what it rests on, and what to check

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    16 CFR 500.21(b), by a page on the parallel FDA rule
    """
@_overload
def fill_in_another_wax(fill: _Value, measured: _Value, density: _Value) -> float:
    """Weight of wax and oil to the same mark in another wax, from a fill that was weighed.

    A heavier wax weighs more in the same room. Take both densities at one
    temperature, set or melted alike.

    >>> fill_in_another_wax(fill=216, measured=0.9, density=0.875)
    210.0

    Parameters
    ----------
    fill : 0 or more g
        wax and oil together as they were weighed in the vessel
    measured : 0.5 to 1.5 g/ml
        weight of a millilitre of the wax that the fill was weighed with
    density : 0.5 to 1.5 g/ml
        weight of a millilitre of the other wax, at the same temperature

    Returns
    -------
    0 or more g
        wax and oil together, as poured into a vessel or a batch

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    density is mass over volume: OpenStax, Chemistry 2e, measurements
    """
@_overload
def fill_in_another_wax(fill: _Value | _Array, measured: _Value | _Array, density: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def fill_in_another_wax(fill: _Value | _Array | _Column, measured: _Value | _Array | _Column, density: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def fill_to_depth(diameter: _Value, depth: _Value, density: _Value, base: _Value = 0.0) -> float:
    """Weight of wax and oil to a given depth in a straight round vessel.

    Use the density at the temperature you measure the depth at: set wax stands
    lower than the hot pour.

    >>> round(fill_to_depth(diameter=80, depth=60, density=0.9), 1)
    271.4

    Parameters
    ----------
    diameter : 10 to 2000 mm
        how far the vessel is across inside
    depth : 5 to 500 mm
        how deep the wax is to stand above the floor
    density : 0.5 to 1.5 g/ml
        weight of a millilitre of the wax, at the temperature it is filled
    base : -200 to 200 mm; 0.0 if left out
        how high the floor is pushed up at its middle; minus where it bulges down

    Returns
    -------
    0 or more g
        wax and oil together, as poured into a vessel or a batch

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: the floor cannot rise above the wax.

    References
    ----------
    elementary geometry; OpenStax, Prealgebra 2e (cylinder) and Calculus (solids cut across)
    """
@_overload
def fill_to_depth(diameter: _Value | _Array, depth: _Value | _Array, density: _Value | _Array, base: _Value | _Array = 0.0) -> _npt.NDArray[_np.float64]: ...
@_overload
def fill_to_depth(diameter: _Value | _Array | _Column, depth: _Value | _Array | _Column, density: _Value | _Array | _Column, base: _Value | _Array | _Column = 0.0) -> _pd.Series[float]: ...
@_overload
def fill_weight(volume: _Value, headspace: _Value, density: _Value) -> float:
    """Weight of wax and oil that fills a vessel up to its headspace.

    Use the density at the temperature you fill to the mark: hot wax is lighter
    than set wax, and a fill measured cold weighs more. A fill you have weighed
    yourself beats this figure.

    >>> fill_weight(volume=300, headspace=0.2, density=0.9)
    216.0

    Parameters
    ----------
    volume : 10 to 1000000 ml
        what the vessel holds to the brim
    headspace : 0 to 0.9 of the brimful volume
        share of the vessel left empty above the wax
    density : 0.5 to 1.5 g/ml
        weight of a millilitre of the wax, at the temperature it is filled

    Returns
    -------
    0 or more g
        wax and oil together, as poured into a vessel or a batch

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    algebra from the definitions
    """
@_overload
def fill_weight(volume: _Value | _Array, headspace: _Value | _Array, density: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def fill_weight(volume: _Value | _Array | _Column, headspace: _Value | _Array | _Column, density: _Value | _Array | _Column) -> _pd.Series[float]: ...
def fire_statements(region: _Literal["US", "EU", "GB"]) -> list[_FireStatement]:
    """Fire-safety statements for the label of a container candle: those of the standard first, then optional ones.

    The standards are voluntary. Wording, signs and sizes are theirs: have yours
    beside you when the label is made. The US warning stands on the unit of sale,
    where the buyer sees it. A hazard label is a duty of its own.

    >>> fire_statements(region="US")[1].statement
    'Burn within sight'

    Parameters
    ----------
    region : "US" or "EU" or "GB"
        where its buyers live

    Returns
    -------
    list, each a row of standing, statement, note
        A fire-safety statement, whether the standard requires it, and what to check.
    standing : text
        required by the standard, required for some types of candle, or optional
    statement : text
        what it says, in our words
    note : text
        what it rests on, and what to check

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    ASTM F2058 (US); EN 15494:2019 (EU, GB), both by reports of others
    """
@_overload
def first_wax(wax: _Value, share: _Value = 0.0) -> float:
    """The first of two waxes in a blend; `share` is the second wax's.

    >>> first_wax(wax=1000, share=0.25)
    750.0

    Parameters
    ----------
    wax : 0 or more g
        wax in the melt, before any oil
    share : 0 to 1 of the blend; 0.0 if left out
        share of one oil, or of one wax, in a blend

    Returns
    -------
    0 or more g
        wax in the melt, before any oil

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    common practice, no source
    """
@_overload
def first_wax(wax: _Value | _Array, share: _Value | _Array = 0.0) -> _npt.NDArray[_np.float64]: ...
@_overload
def first_wax(wax: _Value | _Array | _Column, share: _Value | _Array | _Column = 0.0) -> _pd.Series[float]: ...
@_overload
def fixed_each(item: _Value, order: _Value, per_order: _Value) -> float:
    """Fixed fees per candle: those of every item, plus those of an order divided by its candles.

    `order` is the order's fee, packing and postage less the postage the buyer pays.

    >>> fixed_each(item=0.2, order=4.5, per_order=3)
    1.7

    Parameters
    ----------
    item : 0 or more
        fixed fee of every item
    order : any amount
        an order's fee, packing and postage, less the postage that the buyer pays
    per_order : 1 to 1000000
        how many candles an order holds on average

    Returns
    -------
    any amount
        an amount of money; minus for a credit or a loss

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    algebra from the definitions
    """
@_overload
def fixed_each(item: _Value | _Array, order: _Value | _Array, per_order: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def fixed_each(item: _Value | _Array | _Column, order: _Value | _Array | _Column, per_order: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def fixed_for_season(cost: _Value, times: _Value) -> float:
    """What a place costs over the season, from its cost a day or a month.

    >>> fixed_for_season(cost=45, times=6)
    270.0

    Parameters
    ----------
    cost : 0 or more
        what the place costs a day or a month
    times : 0 to 1000000
        how many days or months of it there are

    Returns
    -------
    0 or more
        an amount of money

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    algebra from the definitions
    """
@_overload
def fixed_for_season(cost: _Value | _Array, times: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def fixed_for_season(cost: _Value | _Array | _Column, times: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def flame_height(rate: _Value, rates: _Cells, heights: _Cells) -> float:
    """Height of the flame to expect at a rate of burning, from the maker's own readings.

    A candle's flame grows in step with the wax it burns. Take readings of one
    wax, load and kind of wick; formulas for the flames of large fires do not hold.

    >>> round(flame_height(rate=5, rates=[3.2, 4.1, 4.6], heights=[27, 33, 38]), 1)
    41.1

    Parameters
    ----------
    rate : more than 0, at most 1000000 g/h
        wax burnt in an hour
    rates : list, each more than 0, at most 1000000 g/h
        rate of burning of each candle of one recipe
    heights : list, each 4 to 300 mm
        how high the flame was at each of these rates

    Returns
    -------
    0 or more mm
        height of the flame

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: readings at two rates at least are wanted.

    References
    ----------
    line through the origin: NIST StRD (NoInt1); a candle's flame grows with its fuel: Sunderland et al., Proceedings of the Combustion Institute 33 (2011) 2489, second-hand
    """
@_overload
def flame_height(rate: _Value | _Array, rates: _Cells, heights: _Cells) -> _npt.NDArray[_np.float64]: ...
@_overload
def flame_height(rate: _Value | _Array | _Column, rates: _Cells, heights: _Cells) -> _pd.Series[float]: ...
@_overload
def flame_height_high(rate: _Value, rates: _Cells, heights: _Cells, confidence: _Value = 0.95) -> float:
    """How tall the flame may get at a rate of burning, as far as the maker's own readings can tell.

    >>> round(flame_height_high(rate=5, rates=[3.2, 4.1, 4.6], heights=[27, 33, 38]), 1)
    44.9

    Parameters
    ----------
    rate : more than 0, at most 1000000 g/h
        wax burnt in an hour
    rates : list, each more than 0, at most 1000000 g/h
        rate of burning of each candle of one recipe
    heights : list, each 4 to 300 mm
        how high the flame was at each of these rates
    confidence : 0.5 to 0.999 of the time; 0.95 if left out
        how often such an interval is to be right

    Returns
    -------
    0 or more mm
        height of the flame

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: readings at two rates at least are wanted.

    References
    ----------
    line through the origin: NIST StRD (NoInt1); a candle's flame grows with its fuel: Sunderland et al., Proceedings of the Combustion Institute 33 (2011) 2489, second-hand
    """
@_overload
def flame_height_high(rate: _Value | _Array, rates: _Cells, heights: _Cells, confidence: _Value | _Array = 0.95) -> _npt.NDArray[_np.float64]: ...
@_overload
def flame_height_high(rate: _Value | _Array | _Column, rates: _Cells, heights: _Cells, confidence: _Value | _Array | _Column = 0.95) -> _pd.Series[float]: ...
def follow_demand(sales: _Cells, keep: _Cells, opening: _Value = 0.0) -> list[float]:
    """How much to make in each week or month to follow what is wanted, and leave so much at the end of each.

    >>> follow_demand(sales=[100, 150, 250], keep=[30, 50, 0], opening=20)
    [110.0, 170.0, 200.0]

    Parameters
    ----------
    sales : list, each 0 or more
        how much is wanted in each week or month, in order
    keep : list, each 0 or more
        how much is to be left at the end of each, in order
    opening : 0 or more; 0.0 if left out
        how much is there at the start

    Returns
    -------
    list, each 0 or more
        how much in each week or month, in order

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    production and materials budgets: OpenStax, Managerial Accounting 7.2
    """
@_overload
def full_cost(making: _Value, own_time: _Value, running: _Value) -> float:
    """Full cost of a batch or a candle: making cost, the maker's own time, costs of running.

    >>> full_cost(making=4.25, own_time=1.5, running=0.5)
    6.25

    Parameters
    ----------
    making : 0 or more
        making cost: materials, paid help, production overhead
    own_time : 0 or more
        your own time at your hourly rate
    running : 0 or more
        its part of the costs of running: insurance, website, phone

    Returns
    -------
    0 or more
        what the candle costs

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    common practice, no source
    """
@_overload
def full_cost(making: _Value | _Array, own_time: _Value | _Array, running: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def full_cost(making: _Value | _Array | _Column, own_time: _Value | _Array | _Column, running: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def full_pots(melt: _Value, pot: _Value) -> float:
    """Full pots in a melt, by the most that one pot holds.

    >>> full_pots(melt=7040, pot=3200)
    2.0

    Parameters
    ----------
    melt : 0 or more g
        the whole melt, wax and oil, in any unit, the same for all
    pot : 0 or more g
        the most that a pot holds, in any unit, the same for all

    Returns
    -------
    whole numbers 0 to 1000000
        how many pots

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: the pot must hold more than 0.

    References
    ----------
    common practice, no source
    """
@_overload
def full_pots(melt: _Value | _Array, pot: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def full_pots(melt: _Value | _Array | _Column, pot: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def grams_to_declare(net: _Value) -> float:
    """Grams of a metric declaration: down to three digits. `net_weight_metric` writes it out.

    >>> grams_to_declare(net=226.8)
    226.0

    Parameters
    ----------
    net : 5 to 25000 g
        net weight to declare: wax and oil, no vessel, lid or wick tab

    Returns
    -------
    0 to 25000
        grams to declare, rounded down

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    rounded down, three digits: 16 CFR 500.19(b); Directive 76/211/EEC, Annex I, 1.1
    """
@_overload
def grams_to_declare(net: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def grams_to_declare(net: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def gross_weight(net: _Value, tare: _Value) -> float:
    """What a whole package must weigh to hold its declared net weight.

    >>> gross_weight(net=907, tare=14)
    921.0

    Parameters
    ----------
    net : 5 to 25000 g
        net weight to declare: wax and oil, no vessel, lid or wick tab
    tare : 0 or more g
        vessel, lid, wick, label: all that is not sold by weight

    Returns
    -------
    0 or more g
        weight of the whole package

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    NIST Handbook 133 (2026), 2.3.5 and 2.3.6
    """
@_overload
def gross_weight(net: _Value | _Array, tare: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def gross_weight(net: _Value | _Array | _Column, tare: _Value | _Array | _Column) -> _pd.Series[float]: ...
def hazard_cautions(region: _Literal["EU", "GB", "US"] = 'EU') -> list[str]:
    """What to bear in mind with hazard classes and labels from this library.

    >>> hazard_cautions(region="GB")[-1]
    'Great Britain: the GB list may differ: confirm.'

    Parameters
    ----------
    region : "EU" or "GB" or "US"; 'EU' if left out
        where the candle is sold: the rules are those of the EU

    Returns
    -------
    list, each text
        what to bear in mind

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    drawn up from the cautions of the sources named in hazard_of_candle; common practice
    """
def hazard_lines(substances: _Cells | None, concentrations: _Cells | None, classes: _Cells | None, specifics: _Cells | None = None) -> list[_LineRead]:
    """Each line of a data sheet's section 3 as it is read here, with what was not read.

    Look these over before asking for the classes: what is not read is not counted.
    The upper end of a range is used. A bare number above 1 is read as %; up to 1 it may be a share, so it is refused.

    >>> hazard_lines(substances=["citral"], concentrations=["1-5"], classes=["Skin Sens. 1B H317"])[0].classes
    'Skin Sens. 1B'

    Parameters
    ----------
    substances : list, each text or blank
        each substance in section 3 of the data sheet, one a line: its CAS number, its name, or both
    concentrations : list, each text or blank
        the concentration of each as printed: "1-5", ">= 1 - < 5 %", "<= 2,5"; its upper end is used
    classes : list, each text or blank
        the classes of each as printed: "Skin Sens. 1B H317; Aquatic Chronic 2 H411"
    specifics : list, each text or blank; None if left out
        specific limits, M-factors and toxicity estimates of each as printed: "Skin Sens. 1B: C >= 0.5 %; M = 10; ATE (oral) = 500 mg/kg"; "ATE unknown" or "aquatic toxicity unknown" where the sheet says so

    Returns
    -------
    list, each a row of substance, upper, classes, specifics, unread, note
        A line of the data sheet as it was read.
    substance : text
        the substance as typed
    upper : 0 to 1 of the oil or blank
        the upper end of its concentration
    classes : text or blank
        what was read of it
    specifics : text or blank
        what was read of it
    unread : text or blank
        what was not read, and so is not counted
    note : text or blank
        what to know about it

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    how data sheets print section 3: Regulation (EU) 2020/878, 3.2; common practice, no source
    """
def hazard_of_candle(substances: _Cells | None, concentrations: _Cells | None, classes: _Cells | None, loads: _Cells | None, specifics: _Cells | None = None, oils: _Cells | None = None, dilutions: _Cells | None = None, viscosity: str | None = None, route: _Literal["additive", "stricter"] = 'additive', region: _Literal["EU", "GB", "US"] = 'EU', uncertainty: _Value = 0.0) -> list[_HazardFound]:
    """Classes of a candle from the lines of its oils' and dyes' data sheets and their loads on wax.

    Oils that hold the same substance are added up by its CAS number or name; with several
    oils, lines without a CAS number are named, as another name would hide them. It is a
    calculation from what is typed, no substitute for the supplier's data sheet for the
    oil in wax, for tests, or for a competent person. For the label use `label_of_candle`.

    >>> hazard_of_candle(substances=["citral"], concentrations=["9 %"], classes=["H317"], loads=[0.1])[0].found
    'Skin Sens. 1'

    Parameters
    ----------
    substances : list, each text or blank
        each substance in section 3 of the data sheet, one a line: its CAS number, its name, or both
    concentrations : list, each text or blank
        the concentration of each as printed: "1-5", ">= 1 - < 5 %", "<= 2,5"; its upper end is used
    classes : list, each text or blank
        the classes of each as printed: "Skin Sens. 1B H317; Aquatic Chronic 2 H411"
    loads : list, each 0 to 0.5 of wax weight or blank
        load of each oil and dye in the candle, in the order of their numbers
    specifics : list, each text or blank; None if left out
        specific limits, M-factors and toxicity estimates of each as printed: "Skin Sens. 1B: C >= 0.5 %; M = 10; ATE (oral) = 500 mg/kg"; "ATE unknown" or "aquatic toxicity unknown" where the sheet says so
    oils : list, each whole numbers 1 to 50 or blank; None if left out
        number of the oil or dye whose sheet the line is from, in the order of the loads; blank is 1
    dilutions : list, each more than 0, at most 1 of the sample or blank; None if left out
        share of each oil in the sample that its sheet describes; 1 or blank where it describes the neat oil
    viscosity : text or blank; None if left out
        kinematic viscosity at 40 C in mm2/s, or "solid" where it is solid then
    route : "additive" or "stricter"; 'additive' if left out
        how skin and eye are judged: added up, or also by the limits for aldehydes, phenols, acids, bases and surfactants, which do not add up; a matter for expert judgement
    region : "EU" or "GB" or "US"; 'EU' if left out
        where the candle is sold: the rules are those of the EU
    uncertainty : 0 to 0.9 of the load; 0.0 if left out
        how far the scale may put the load off, as a share of the load: load_swing over load

    Returns
    -------
    list, each a row of found, code, statement, amount, limit, why, status
        A class with its statement, the sum and the limit it comes from, and what is unconfirmed.
    found : text
        the class, or what else is to be said
    code : text or blank
        code of the hazard statement
    statement : text or blank
        wording of the statement, fixed by law
    amount : 0 or more or blank
        what was found: in % of the mixture, or an acute toxicity estimate
    limit : 0 or more or blank
        the limit it is held against, in the same
    why : text or blank
        the sum and its limit, with the substances
    status : text or blank
        by which text, and what is unconfirmed

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    Regulation (EC) No 1272/2008 (CLP), Annex I: limits as consolidated 2026-05-01, read in a transcription that quotes its tables; wording of 2025-09-01
    """
def hazard_of_mixture(substances: _Cells | None, concentrations: _Cells | None, classes: _Cells | None, specifics: _Cells | None = None, viscosity: str | None = None, route: _Literal["additive", "stricter"] = 'additive', region: _Literal["EU", "GB", "US"] = 'EU') -> list[_HazardFound]:
    """Classes of what a data sheet describes, the neat oil or a diluted sample: compare with its section 2.

    Where they differ, a line was misread, a limit is missing, or the supplier knows more.
    For the candle use `hazard_of_candle`. Flammability is for a test to decide.

    >>> hazard_of_mixture(substances=["citral"], concentrations=["5 %"], classes=["Skin Sens. 1B H317"])[0].found
    'Skin Sens. 1'

    Parameters
    ----------
    substances : list, each text or blank
        each substance in section 3 of the data sheet, one a line: its CAS number, its name, or both
    concentrations : list, each text or blank
        the concentration of each as printed: "1-5", ">= 1 - < 5 %", "<= 2,5"; its upper end is used
    classes : list, each text or blank
        the classes of each as printed: "Skin Sens. 1B H317; Aquatic Chronic 2 H411"
    specifics : list, each text or blank; None if left out
        specific limits, M-factors and toxicity estimates of each as printed: "Skin Sens. 1B: C >= 0.5 %; M = 10; ATE (oral) = 500 mg/kg"; "ATE unknown" or "aquatic toxicity unknown" where the sheet says so
    viscosity : text or blank; None if left out
        kinematic viscosity at 40 C in mm2/s, or "solid" where it is solid then
    route : "additive" or "stricter"; 'additive' if left out
        how skin and eye are judged: added up, or also by the limits for aldehydes, phenols, acids, bases and surfactants, which do not add up; a matter for expert judgement
    region : "EU" or "GB" or "US"; 'EU' if left out
        where the candle is sold: the rules are those of the EU

    Returns
    -------
    list, each a row of found, code, statement, amount, limit, why, status
        A class with its statement, the sum and the limit it comes from, and what is unconfirmed.
    found : text
        the class, or what else is to be said
    code : text or blank
        code of the hazard statement
    statement : text or blank
        wording of the statement, fixed by law
    amount : 0 or more or blank
        what was found: in % of the mixture, or an acute toxicity estimate
    limit : 0 or more or blank
        the limit it is held against, in the same
    why : text or blank
        the sum and its limit, with the substances
    status : text or blank
        by which text, and what is unconfirmed

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    Regulation (EC) No 1272/2008 (CLP), Annex I: limits as consolidated 2026-05-01, read in a transcription that quotes its tables; wording of 2025-09-01
    """
@_overload
def heat_for_wax(wax: _Value, start: _Value, end: _Value, melting: _Value, latent_heat: _Value = 190.0, solid: _Value = 2.1, liquid: _Value = 2.2) -> float:
    """Heat to warm set wax, melt it and bring it to a temperature.

    Most of it goes into the melting, and texts give 150 to 220 kJ/kg for that:
    take the figure off your wax's data sheet where it has one.

    >>> heat_for_wax(wax=1000, start=20, end=80, melting=55)
    318.5

    Parameters
    ----------
    wax : 0 or more g
        wax in the melt, before any oil
    start : -50 to 160 C
        temperature before it is heated
    end : -50 to 160 C
        temperature it is brought to
    melting : -50 to 160 C
        temperature at which the last of the wax is melted: the upper end of its melting range
    latent_heat : 0 to 1000 kJ/kg; 190.0 if left out
        heat that melts a kilogram of it once it is warm enough
    solid : more than 0, at most 10 kJ/(kg C); 2.1 if left out
        heat that warms a kilogram of set wax by one degree C
    liquid : more than 0, at most 10 kJ/(kg C); 2.2 if left out
        heat that warms a kilogram of melted wax by one degree C

    Returns
    -------
    0 or more kJ
        heat that has to get into it

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: wax that starts above its melting range is melted already: use heat_to_warm.
        With the words: the end must not be below the melting range.

    References
    ----------
    heat to warm and to melt: OpenStax, College Physics 2e, temperature change and heat capacity, phase change; defaults for paraffin second-hand: 2.1 set, 2.2 melted, 190 (150 to 220) to melt: put in your data sheet's
    """
@_overload
def heat_for_wax(wax: _Value | _Array, start: _Value | _Array, end: _Value | _Array, melting: _Value | _Array, latent_heat: _Value | _Array = 190.0, solid: _Value | _Array = 2.1, liquid: _Value | _Array = 2.2) -> _npt.NDArray[_np.float64]: ...
@_overload
def heat_for_wax(wax: _Value | _Array | _Column, start: _Value | _Array | _Column, end: _Value | _Array | _Column, melting: _Value | _Array | _Column, latent_heat: _Value | _Array | _Column = 190.0, solid: _Value | _Array | _Column = 2.1, liquid: _Value | _Array | _Column = 2.2) -> _pd.Series[float]: ...
@_overload
def heat_to_melt(weight: _Value, latent_heat: _Value = 190.0) -> float:
    """Heat that goes into melting alone, with the wax no warmer for it.

    >>> heat_to_melt(weight=1000, latent_heat=190)
    190.0

    Parameters
    ----------
    weight : 0 or more g
        weight of what is heated: a wax, a pot, the water of a bath
    latent_heat : 0 to 1000 kJ/kg; 190.0 if left out
        heat that melts a kilogram of it once it is warm enough

    Returns
    -------
    0 or more kJ
        heat that has to get into it

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    heat to warm and to melt: OpenStax, College Physics 2e, temperature change and heat capacity, phase change; defaults for paraffin second-hand: 2.1 set, 2.2 melted, 190 (150 to 220) to melt: put in your data sheet's
    """
@_overload
def heat_to_melt(weight: _Value | _Array, latent_heat: _Value | _Array = 190.0) -> _npt.NDArray[_np.float64]: ...
@_overload
def heat_to_melt(weight: _Value | _Array | _Column, latent_heat: _Value | _Array | _Column = 190.0) -> _pd.Series[float]: ...
@_overload
def heat_to_warm(weight: _Value, start: _Value, end: _Value, specific_heat: _Value) -> float:
    """Heat to warm something that does not melt on the way: a pot, a water bath, wax already melted.

    A kilogram of water takes 4.19 kJ for each degree C, aluminium 0.90.

    >>> heat_to_warm(weight=2000, start=20, end=70, specific_heat=4.2)
    420.0

    Parameters
    ----------
    weight : 0 or more g
        weight of what is heated: a wax, a pot, the water of a bath
    start : -50 to 160 C
        temperature before it is heated
    end : -50 to 160 C
        temperature it is brought to
    specific_heat : more than 0, at most 10 kJ/(kg C)
        heat that warms a kilogram of it by one degree C

    Returns
    -------
    0 or more kJ
        heat that has to get into it

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: the end must not be colder than the start.

    References
    ----------
    heat to warm and to melt: OpenStax, College Physics 2e, temperature change and heat capacity, phase change; defaults for paraffin second-hand: 2.1 set, 2.2 melted, 190 (150 to 220) to melt: put in your data sheet's
    """
@_overload
def heat_to_warm(weight: _Value | _Array, start: _Value | _Array, end: _Value | _Array, specific_heat: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def heat_to_warm(weight: _Value | _Array | _Column, start: _Value | _Array | _Column, end: _Value | _Array | _Column, specific_heat: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def heater_efficiency(heat: _Value, power: _Value, minutes: _Value) -> float:
    """Share of a heater's power that got into the wax, from one melt with a clock.

    >>> heater_efficiency(heat=360, power=1000, minutes=12)
    0.5

    Parameters
    ----------
    heat : 0 or more kJ
        heat that has to get into it
    power : 10 to 100000 W
        power of the heater, as its plate states it
    minutes : more than 0, at most 1000000 min
        how long the heater was on

    Returns
    -------
    more than 0, at most 1 of the heater's power
        share of the power that gets into the wax

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    power times time: OpenStax, College Physics 2e, phase change; Cengel, heat transfer, example 1-2, second-hand
    """
@_overload
def heater_efficiency(heat: _Value | _Array, power: _Value | _Array, minutes: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def heater_efficiency(heat: _Value | _Array | _Column, power: _Value | _Array | _Column, minutes: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def highest_load(wax: _Value, oil: _Value, limit: _Value, wax_basis: _Literal["of wax", "of total"] = 'of wax', oil_basis: _Literal["of wax", "of total"] = 'of wax') -> float:
    """Highest load on wax: the lowest of those stated for the wax, for the oil and in the oil's certificate.

    It uses only what you typed: burn tests, the law and the data sheets may put the
    load lower. `highest_load_decided_by` says which of the three
    decides. For a blend of oils take `limit_of_blend` first.

    >>> round(highest_load(wax=0.1, oil=0.12, limit=0.05), 4)
    0.0526

    Parameters
    ----------
    wax : 0 to 0.5 of the stated basis
        the highest load that the wax's supplier states
    oil : 0 to 0.5 of the stated basis
        the highest load that the oil's supplier states
    limit : more than 0, at most 1 of the finished candle
        highest share of this oil in the finished candle by its certificate; 1 where it sets none
    wax_basis : "of wax" or "of total"; 'of wax' if left out
        what the wax supplier's highest load is a share of
    oil_basis : "of wax" or "of total"; 'of wax' if left out
        what the oil supplier's highest load is a share of

    Returns
    -------
    0 to 0.5 of wax weight
        the highest fragrance load: oil as a share of wax weight

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    common practice, no source
    """
@_overload
def highest_load(wax: _Value | _Array, oil: _Value | _Array, limit: _Value | _Array, wax_basis: _Literal["of wax", "of total"] | _Words = 'of wax', oil_basis: _Literal["of wax", "of total"] | _Words = 'of wax') -> _npt.NDArray[_np.float64]: ...
@_overload
def highest_load(wax: _Value | _Array | _Column, oil: _Value | _Array | _Column, limit: _Value | _Array | _Column, wax_basis: _Literal["of wax", "of total"] | _Words | _Column = 'of wax', oil_basis: _Literal["of wax", "of total"] | _Words | _Column = 'of wax') -> _pd.Series[float]: ...
@_overload
def highest_load_decided_by(wax: _Value, oil: _Value, limit: _Value, wax_basis: _Literal["of wax", "of total"] = 'of wax', oil_basis: _Literal["of wax", "of total"] = 'of wax') -> str:
    """Which limit decides the highest load: the wax's supplier, the oil's supplier or the certificate.

    >>> highest_load_decided_by(wax=0.1, oil=0.12, limit=0.05)
    'the certificate'

    Parameters
    ----------
    wax : 0 to 0.5 of the stated basis
        the highest load that the wax's supplier states
    oil : 0 to 0.5 of the stated basis
        the highest load that the oil's supplier states
    limit : more than 0, at most 1 of the finished candle
        highest share of this oil in the finished candle by its certificate; 1 where it sets none
    wax_basis : "of wax" or "of total"; 'of wax' if left out
        what the wax supplier's highest load is a share of
    oil_basis : "of wax" or "of total"; 'of wax' if left out
        what the oil supplier's highest load is a share of

    Returns
    -------
    text
        whose limit is the lowest, all of them where they are alike

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    common practice, no source
    """
@_overload
def highest_load_decided_by(wax: _Value | _Array, oil: _Value | _Array, limit: _Value | _Array, wax_basis: _Literal["of wax", "of total"] | _Words = 'of wax', oil_basis: _Literal["of wax", "of total"] | _Words = 'of wax') -> _npt.NDArray[_Any]: ...
@_overload
def highest_load_decided_by(wax: _Value | _Array | _Column, oil: _Value | _Array | _Column, limit: _Value | _Array | _Column, wax_basis: _Literal["of wax", "of total"] | _Words | _Column = 'of wax', oil_basis: _Literal["of wax", "of total"] | _Words | _Column = 'of wax') -> _pd.Series[str]: ...
@_overload
def highest_of_total(highest: _Value, basis: _Literal["of wax", "of total"] = 'of wax') -> float:
    """The supplier's highest load as a share of the finished candle, whichever way it was stated.

    >>> highest_of_total(highest=0.25, basis="of wax")
    0.2

    Parameters
    ----------
    highest : 0 to 0.5 of the stated basis
        the supplier's highest load for this oil or wax
    basis : "of wax" or "of total"; 'of wax' if left out
        what the supplier's highest load is a share of

    Returns
    -------
    0 to 1 of the finished candle
        the highest share of the finished candle

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    percent by mass: OpenStax, Chemistry 2e, section on other units for solution concentrations
    """
@_overload
def highest_of_total(highest: _Value | _Array, basis: _Literal["of wax", "of total"] | _Words = 'of wax') -> _npt.NDArray[_np.float64]: ...
@_overload
def highest_of_total(highest: _Value | _Array | _Column, basis: _Literal["of wax", "of total"] | _Words | _Column = 'of wax') -> _pd.Series[float]: ...
@_overload
def highest_on_wax(highest: _Value, basis: _Literal["of wax", "of total"] = 'of wax') -> float:
    """The supplier's highest load as a load on wax, whichever way it was stated.

    >>> highest_on_wax(highest=0.2, basis="of total")
    0.25

    Parameters
    ----------
    highest : 0 to 0.5 of the stated basis
        the supplier's highest load for this oil or wax
    basis : "of wax" or "of total"; 'of wax' if left out
        what the supplier's highest load is a share of

    Returns
    -------
    0 to 0.5 of wax weight
        the highest fragrance load: oil as a share of wax weight

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    percent by mass: OpenStax, Chemistry 2e, section on other units for solution concentrations
    """
@_overload
def highest_on_wax(highest: _Value | _Array, basis: _Literal["of wax", "of total"] | _Words = 'of wax') -> _npt.NDArray[_np.float64]: ...
@_overload
def highest_on_wax(highest: _Value | _Array | _Column, basis: _Literal["of wax", "of total"] | _Words | _Column = 'of wax') -> _pd.Series[float]: ...
@_overload
def hourly_earnings(price: _Value, cost: _Value, minutes: _Value) -> float:
    """What is left for each hour of your own work on a candle at a price.

    The cost has no own time in it: what is left is what that time earns. Hold it
    against the hourly rate that your prices ask for.

    >>> hourly_earnings(price=18, cost=6, minutes=24)
    30.0

    Parameters
    ----------
    price : 0 or more
        price before tax, less the place's fees on it
    cost : 0 or more
        what the candle costs, without the maker's own time
    minutes : more than 0, at most 1000000 min
        the maker's own working time on it

    Returns
    -------
    any amount money per h
        left for each hour of work; minus for a loss

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    contribution margin per hour of labour: Accounting for Managers (Saylor), 6.5
    """
@_overload
def hourly_earnings(price: _Value | _Array, cost: _Value | _Array, minutes: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def hourly_earnings(price: _Value | _Array | _Column, cost: _Value | _Array | _Column, minutes: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def hours_left(hours: _Cells, weights: _Cells, end: _Value) -> float:
    """Hours left after the last weighing until the candle is down to its stopping weight.

    The line is extended past the log: how far off it may be grows with every hour
    beyond, as `hours_left_between` shows.

    >>> round(hours_left(hours=[0, 4, 8, 12], weights=[612, 596, 581, 563], end=444), 1)
    29.6

    Parameters
    ----------
    hours : list, each 0 to 10000 h
        hours burnt up to each weighing, all burns of this candle counted together
    weights : list, each 0 to 100000 g
        what the candle weighed then, jar and all
    end : 0 or more g
        what it weighs when burning has to stop: the jar, the wick and the wax that stays

    Returns
    -------
    0 to 1000000 h
        hours of burning

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: two weighings at different hours, at least, are wanted.
        With the words: the weights must fall as the hours grow.

    References
    ----------
    straight line by least squares, interval of its slope: NIST StRD (Norris), ISO/TS 28037 by its examples
    """
@_overload
def hours_left(hours: _Cells, weights: _Cells, end: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def hours_left(hours: _Cells, weights: _Cells, end: _Value | _Array | _Column) -> _pd.Series[float]: ...
def hours_left_between(hours: _Cells, weights: _Cells, end: _Value, confidence: _Value = 0.95) -> _LeftBetween:
    """Hours left after the last weighing, with an interval that allows for extending the line.

    >>> hours_left_between(hours=[0, 4, 8, 12], weights=[612, 596, 581, 563], end=444).note
    '95 % interval, 4 weighings of one candle; drawn on further than the log is long: weigh on'

    Parameters
    ----------
    hours : list, each 0 to 10000 h
        hours burnt up to each weighing, all burns of this candle counted together
    weights : list, each 0 to 100000 g
        what the candle weighed then, jar and all
    end : 0 or more g
        what it weighs when burning has to stop: the jar, the wick and the wax that stays
    confidence : 0.5 to 0.999 of the time; 0.95 if left out
        how often such an interval is to be right

    Returns
    -------
    a row of left, low, high, note
        Hours left, the interval they lie in, and what to know about it.
    left : 0 to 1000000 h
        hours of burning
    low : any amount h or blank
        an end of the interval; below 0 it is past; blank where there is none
    high : any amount h or blank
        an end of the interval; below 0 it is past; blank where there is none
    note : text
        what to know about it

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: two weighings at different hours, at least, are wanted.
        With the words: the weights must fall as the hours grow.

    References
    ----------
    exact (Fieller) interval of a calibration line: Graybill and Iyer, Regression Analysis, 6, second-hand
    """
@_overload
def hours_left_high(hours: _Cells, weights: _Cells, end: _Value, confidence: _Value = 0.95) -> float:
    """The most hours that may be left, as far as the log can tell.

    >>> round(hours_left_high(hours=[0, 4, 8, 12], weights=[612, 596, 581, 563], end=444), 1)
    34.2

    Parameters
    ----------
    hours : list, each 0 to 10000 h
        hours burnt up to each weighing, all burns of this candle counted together
    weights : list, each 0 to 100000 g
        what the candle weighed then, jar and all
    end : 0 or more g
        what it weighs when burning has to stop: the jar, the wick and the wax that stays
    confidence : 0.5 to 0.999 of the time; 0.95 if left out
        how often such an interval is to be right

    Returns
    -------
    any amount h
        an end of the interval that the hours left lie in; below 0 it is past

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: two weighings at different hours, at least, are wanted.
        With the words: the weights must fall as the hours grow.
        With the words: an interval takes three weighings at least.

    References
    ----------
    exact (Fieller) interval of a calibration line: Graybill and Iyer, Regression Analysis, 6, second-hand
    """
@_overload
def hours_left_high(hours: _Cells, weights: _Cells, end: _Value | _Array, confidence: _Value | _Array = 0.95) -> _npt.NDArray[_np.float64]: ...
@_overload
def hours_left_high(hours: _Cells, weights: _Cells, end: _Value | _Array | _Column, confidence: _Value | _Array | _Column = 0.95) -> _pd.Series[float]: ...
@_overload
def hours_left_low(hours: _Cells, weights: _Cells, end: _Value, confidence: _Value = 0.95) -> float:
    """The fewest hours that may be left, as far as the log can tell; below 0 the end may be reached already.

    >>> round(hours_left_low(hours=[0, 4, 8, 12], weights=[612, 596, 581, 563], end=444), 1)
    25.8

    Parameters
    ----------
    hours : list, each 0 to 10000 h
        hours burnt up to each weighing, all burns of this candle counted together
    weights : list, each 0 to 100000 g
        what the candle weighed then, jar and all
    end : 0 or more g
        what it weighs when burning has to stop: the jar, the wick and the wax that stays
    confidence : 0.5 to 0.999 of the time; 0.95 if left out
        how often such an interval is to be right

    Returns
    -------
    any amount h
        an end of the interval that the hours left lie in; below 0 it is past

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: two weighings at different hours, at least, are wanted.
        With the words: the weights must fall as the hours grow.
        With the words: an interval takes three weighings at least.

    References
    ----------
    exact (Fieller) interval of a calibration line: Graybill and Iyer, Regression Analysis, 6, second-hand
    """
@_overload
def hours_left_low(hours: _Cells, weights: _Cells, end: _Value | _Array, confidence: _Value | _Array = 0.95) -> _npt.NDArray[_np.float64]: ...
@_overload
def hours_left_low(hours: _Cells, weights: _Cells, end: _Value | _Array | _Column, confidence: _Value | _Array | _Column = 0.95) -> _pd.Series[float]: ...
@_overload
def in_unit(size: _Value, factor: _Value) -> float:
    """A quantity in another unit, by how many of that unit make one.

    >>> in_unit(size=2, factor=16)
    32.0

    Parameters
    ----------
    size : 0 or more
        how much of the material, in the unit it is priced by
    factor : more than 0
        how many of the other unit make one of this

    Returns
    -------
    0 or more
        how much of the material, in the unit it is priced by

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    algebra from the definitions
    """
@_overload
def in_unit(size: _Value | _Array, factor: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def in_unit(size: _Value | _Array | _Column, factor: _Value | _Array | _Column) -> _pd.Series[float]: ...
def issue_costs(moves: _Cells, costs: _Cells | None, method: _Literal["FIFO", "moving average", "LIFO"] = 'FIFO') -> list[float]:
    """What each issue cost, line by line beside the log: the cost of goods of each sale or batch.

    LIFO is for comparison only.

    >>> issue_costs(moves=[30, -20, 40, -35], costs=[2, "", 2.5, ""])
    [0.0, 40.0, 0.0, 82.5]

    Parameters
    ----------
    moves : list, each any amount
        what came in, with a minus what went out, in the order it happened
    costs : list, each 0 or more money per unit or blank
        cost of one unit of what came in; blank where it went out
    method : "FIFO" or "moving average" or "LIFO"; 'FIFO' if left out
        FIFO: the oldest goes first; moving average: one rate, new after each receipt; LIFO: to compare only

    Returns
    -------
    list, each 0 or more
        cost of what went out, in its line; 0 for a receipt

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    FIFO, average and LIFO, periodic and perpetual: OpenStax, Financial Accounting 10.1 to 10.3
    """
@_overload
def label_hours(fill: _Value, fastest: _Value, stays: _Value = 0.0) -> float:
    """Hours of burning for a label: at the fastest rate, rounded down to whole hours.

    Take `fastest_candle`, or the high end of one candle's rate; the mean rate
    promises too much to half of the buyers.

    >>> label_hours(fill=220, fastest=4.75, stays=52)
    35.0

    Parameters
    ----------
    fill : 0 or more g
        wax and oil together, as poured into a vessel or a batch
    fastest : 1 to 500 g/h
        the fastest it may burn: the high end of the rate's interval
    stays : 0 or more g; 0.0 if left out
        wax that stays in the vessel when burning stops

    Returns
    -------
    whole numbers 0 to 1000000 h
        whole hours for a label, rounded down

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: more wax cannot stay than was poured.

    References
    ----------
    algebra from the definitions
    """
@_overload
def label_hours(fill: _Value | _Array, fastest: _Value | _Array, stays: _Value | _Array = 0.0) -> _npt.NDArray[_np.float64]: ...
@_overload
def label_hours(fill: _Value | _Array | _Column, fastest: _Value | _Array | _Column, stays: _Value | _Array | _Column = 0.0) -> _pd.Series[float]: ...
def label_of_candle(substances: _Cells | None, concentrations: _Cells | None, classes: _Cells | None, loads: _Cells | None, specifics: _Cells | None = None, oils: _Cells | None = None, dilutions: _Cells | None = None, viscosity: str | None = None, route: _Literal["additive", "stricter"] = 'additive', region: _Literal["EU", "GB", "US"] = 'EU', uncertainty: _Value = 0.0, holds: _Value | None = None, buyer: _Literal["public", "trade"] = 'public') -> list[_LabelLine]:
    """Label of a candle from its oils' data sheets: signal word, pictograms, statements, names, duties, cautions.

    What is found of the classes stands first, as `hazard_of_candle` gives it. Rows that say
    unconfirmed rest on what was not read in its text. Fire warnings are a duty of their own.

    >>> label_of_candle(substances=["citral"], concentrations=["9 %"], classes=["H317"], loads=[0.2])[0].text
    'Skin Sens. 1'

    Parameters
    ----------
    substances : list, each text or blank
        each substance in section 3 of the data sheet, one a line: its CAS number, its name, or both
    concentrations : list, each text or blank
        the concentration of each as printed: "1-5", ">= 1 - < 5 %", "<= 2,5"; its upper end is used
    classes : list, each text or blank
        the classes of each as printed: "Skin Sens. 1B H317; Aquatic Chronic 2 H411"
    loads : list, each 0 to 0.5 of wax weight or blank
        load of each oil and dye in the candle, in the order of their numbers
    specifics : list, each text or blank; None if left out
        specific limits, M-factors and toxicity estimates of each as printed: "Skin Sens. 1B: C >= 0.5 %; M = 10; ATE (oral) = 500 mg/kg"; "ATE unknown" or "aquatic toxicity unknown" where the sheet says so
    oils : list, each whole numbers 1 to 50 or blank; None if left out
        number of the oil or dye whose sheet the line is from, in the order of the loads; blank is 1
    dilutions : list, each more than 0, at most 1 of the sample or blank; None if left out
        share of each oil in the sample that its sheet describes; 1 or blank where it describes the neat oil
    viscosity : text or blank; None if left out
        kinematic viscosity at 40 C in mm2/s, or "solid" where it is solid then
    route : "additive" or "stricter"; 'additive' if left out
        how skin and eye are judged: added up, or also by the limits for aldehydes, phenols, acids, bases and surfactants, which do not add up; a matter for expert judgement
    region : "EU" or "GB" or "US"; 'EU' if left out
        where the candle is sold: the rules are those of the EU
    uncertainty : 0 to 0.9 of the load; 0.0 if left out
        how far the scale may put the load off, as a share of the load: load_swing over load
    holds : more than 0 ml or blank; None if left out
        what the package holds: the weight of the candle over its density
    buyer : "public" or "trade"; 'public' if left out
        who buys it: anybody, or trade alone

    Returns
    -------
    list, each a row of element, code, text, why, status
        An element of the label, or a duty: what to print or do, why, and what is unconfirmed.
    element : text
        what of the label it is
    code : text or blank
        code of the hazard statement
    text : text or blank
        what to put on the label, or to do
    why : text or blank
        the sum and its limit, with the substances
    status : text or blank
        by which text, and what is unconfirmed

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    Regulation (EC) No 1272/2008 (CLP), Annex I: limits as consolidated 2026-05-01, read in a transcription that quotes its tables; wording of 2025-09-01; ECHA Guidance on Labelling and Packaging v4.2, 7.3, in a transcription; each row says which
    """
def label_of_classes(classes: _Cells | None, names: _Cells | None = None, allergens: _Cells | None = None, region: _Literal["EU", "GB", "US"] = 'EU', holds: _Value | None = None, buyer: _Literal["public", "trade"] = 'public') -> list[_LabelLine]:
    """Label elements for the classes that the supplier states for the oil in wax at the load poured.

    The supplier's own label elements go before it. To find the classes use `hazard_of_candle`.

    >>> label_of_classes(classes=["Skin Sens. 1 H317"], names=["citral"])[1].text
    'Warning'

    Parameters
    ----------
    classes : list, each text or blank
        the classes of each as printed: "Skin Sens. 1B H317; Aquatic Chronic 2 H411"
    names : list, each text or blank; None if left out
        the substances behind the classes, as the label is to name them
    allergens : list, each text or blank; None if left out
        sensitising substances named by EUH208 on the sheet
    region : "EU" or "GB" or "US"; 'EU' if left out
        where the candle is sold: the rules are those of the EU
    holds : more than 0 ml or blank; None if left out
        what the package holds: the weight of the candle over its density
    buyer : "public" or "trade"; 'public' if left out
        who buys it: anybody, or trade alone

    Returns
    -------
    list, each a row of element, code, text, why, status
        An element of the label, or a duty: what to print or do, why, and what is unconfirmed.
    element : text
        what of the label it is
    code : text or blank
        code of the hazard statement
    text : text or blank
        what to put on the label, or to do
    why : text or blank
        the sum and its limit, with the substances
    status : text or blank
        by which text, and what is unconfirmed

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    Regulation (EC) No 1272/2008 (CLP), Annex I: limits as consolidated 2026-05-01, read in a transcription that quotes its tables; wording of 2025-09-01; ECHA Guidance on Labelling and Packaging v4.2, 7.3, in a transcription; each row says which
    """
@_overload
def labour_cost(minutes: _Value, rate: _Value, people: _Value = 1.0) -> float:
    """Cost of working time at an hourly rate: paid help or the maker's own.

    >>> labour_cost(minutes=90, rate=16, people=2)
    48.0

    Parameters
    ----------
    minutes : 0 to 1000000 min
        working time
    rate : 0 or more money per h
        money for an hour of work
    people : 0 to 1000; 1.0 if left out
        how many people work at it

    Returns
    -------
    0 or more
        an amount of money

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    job cost: OpenStax, Managerial Accounting, chapter 4
    """
@_overload
def labour_cost(minutes: _Value | _Array, rate: _Value | _Array, people: _Value | _Array = 1.0) -> _npt.NDArray[_np.float64]: ...
@_overload
def labour_cost(minutes: _Value | _Array | _Column, rate: _Value | _Array | _Column, people: _Value | _Array | _Column = 1.0) -> _pd.Series[float]: ...
@_overload
def landed_cost(price: _Value, returned: _Value = 0.0, shipping: _Value = 0.0, tax: _Value = 0.0) -> float:
    """Cost of a line of a purchase with its share of freight and duty, and the tax you cannot claim back.

    `split_charge` shares a document's freight out over its lines.

    >>> landed_cost(price=120, returned=6, shipping=14.5)
    128.5

    Parameters
    ----------
    price : 0 or more
        an amount of money
    returned : 0 or more; 0.0 if left out
        discount, and what the supplier gave back
    shipping : 0 or more; 0.0 if left out
        the line's share of freight and duty
    tax : 0 or more; 0.0 if left out
        tax that you cannot claim back

    Returns
    -------
    0 or more
        an amount of money

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: no more can be taken off than the price.

    References
    ----------
    cost of purchase, freight and tax not recovered in it: IAS 2, from summaries; OpenStax, Financial Accounting 6
    """
@_overload
def landed_cost(price: _Value | _Array, returned: _Value | _Array = 0.0, shipping: _Value | _Array = 0.0, tax: _Value | _Array = 0.0) -> _npt.NDArray[_np.float64]: ...
@_overload
def landed_cost(price: _Value | _Array | _Column, returned: _Value | _Array | _Column = 0.0, shipping: _Value | _Array | _Column = 0.0, tax: _Value | _Array | _Column = 0.0) -> _pd.Series[float]: ...
@_overload
def last_pot(melt: _Value, pots: _Value, pot: _Value) -> float:
    """What is left for the last pot after the full ones; nothing where they take it all.

    >>> last_pot(melt=7040, pots=2, pot=3200)
    640.0

    Parameters
    ----------
    melt : 0 or more g
        the whole melt, wax and oil, in any unit, the same for all
    pots : whole numbers 0 to 1000000
        how many pots are full
    pot : 0 or more g
        the most that a pot holds, in any unit, the same for all

    Returns
    -------
    0 or more g
        a weight, in any unit; the answer is in the same unit

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    common practice, no source
    """
@_overload
def last_pot(melt: _Value | _Array, pots: _Value | _Array, pot: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def last_pot(melt: _Value | _Array | _Column, pots: _Value | _Array | _Column, pot: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def least_each(least: _Value, per_order: _Value) -> float:
    """Minimum order fee divided by the candles in the order.

    >>> least_each(least=3, per_order=2)
    1.5

    Parameters
    ----------
    least : 0 or more
        the smallest fee that an order is charged
    per_order : 1 to 1000000
        how many candles an order holds on average

    Returns
    -------
    0 or more
        an amount of money

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    algebra from the definitions
    """
@_overload
def least_each(least: _Value | _Array, per_order: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def least_each(least: _Value | _Array | _Column, per_order: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def least_figures_metric(net: _Value) -> float:
    """Least height of the figures of a declared weight in the EU and GB, as a number: see `figure_height_metric`.

    >>> least_figures_metric(net=180)
    3.0

    Parameters
    ----------
    net : 5 to 25000 g
        net weight to declare: wax and oil, no vessel, lid or wick tab

    Returns
    -------
    0 or more mm
        least height of the figures

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    Directive 76/211/EEC by a summary of USDA Foreign Agricultural Service
    """
@_overload
def least_figures_metric(net: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def least_figures_metric(net: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def least_figures_us(size: _Value) -> float:
    """Least height of the figures of a US net weight, as a number: see `figure_height_us`.

    >>> least_figures_us(size=90)
    3.175

    Parameters
    ----------
    size : 15 to 1000000 cm2
        area of the side that is shown to the buyer

    Returns
    -------
    0 or more mm
        least height of the figures

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    16 CFR 500.21(b), by a page on the parallel FDA rule
    """
@_overload
def least_figures_us(size: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def least_figures_us(size: _Value | _Array | _Column) -> _pd.Series[float]: ...
def level_or_follow(sales: _Cells, making: _Value, keeping: _Value = 0.0, raising: _Value = 0.0, lowering: _Value = 0.0, usual: _Value | None = None, opening: _Value = 0.0) -> list[_PlanLine]:
    """Build ahead at a level rate, or follow what is wanted? Both plans with what they cost.

    >>> level_or_follow(sales=[80, 50, 120, 150], making=2, keeping=0.5, raising=0.1, lowering=0.5)[1]
    PlanLine(plan='follow demand', most_made=150.0, most_kept=0.0, cost=825.0)

    Parameters
    ----------
    sales : list, each 0 or more
        how much is wanted in each week or month, in order
    making : 0 or more money per unit
        what making one costs
    keeping : 0 or more money per unit; 0.0 if left out
        what keeping one from a week or month to the next costs
    raising : 0 or more money per unit; 0.0 if left out
        what it costs to make one more than in the week or month before, such as finding help
    lowering : 0 or more money per unit; 0.0 if left out
        what it costs to make one fewer than in the week or month before
    usual : 0 or more or blank; None if left out
        how much was made in the one before the first; blank if starting costs nothing
    opening : 0 or more; 0.0 if left out
        how much is there at the start

    Returns
    -------
    list, each a row of plan, most_made, most_kept, cost
        A plan, the most it makes and keeps at a time, and what it costs.
    plan : "level" or "follow demand"
        the same amount all the time, or as much as is wanted each time
    most_made : 0 or more
        how much of the material, in the unit it is priced by
    most_kept : 0 or more
        how much of the material, in the unit it is priced by
    cost : 0 or more
        an amount of money

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    level and chase plans: a textbook exercise with its answers, second-hand (homeworkhost 454395)
    """
@_overload
def level_rate(sales: _Cells, opening: _Value = 0.0, closing: _Value = 0.0) -> float:
    """The smallest equal amount to make each week or month that never runs short and leaves enough at the end.

    >>> level_rate(sales=[80, 50, 120, 150])
    100.0

    Parameters
    ----------
    sales : list, each 0 or more
        how much is wanted in each week or month, in order
    opening : 0 or more; 0.0 if left out
        how much is there at the start
    closing : 0 or more; 0.0 if left out
        how much is to be left at the end

    Returns
    -------
    0 or more
        how much to make in each week or month

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    level and chase plans: a textbook exercise with its answers, second-hand (homeworkhost 454395)
    """
@_overload
def level_rate(sales: _Cells, opening: _Value | _Array = 0.0, closing: _Value | _Array = 0.0) -> _npt.NDArray[_np.float64]: ...
@_overload
def level_rate(sales: _Cells, opening: _Value | _Array | _Column = 0.0, closing: _Value | _Array | _Column = 0.0) -> _pd.Series[float]: ...
def limit_of_blend(shares: _Cells, limits: _Cells) -> float:
    """Highest share of a blend of oils in the finished candle, by each oil's certified limit.

    This holds even where two oils share a restricted material; the lowest limit divided
    by share does not. The shares must add up to 1.

    >>> round(limit_of_blend(shares=[0.7, 0.3], limits=[0.2, 0.05]), 4)
    0.1053

    Parameters
    ----------
    shares : list, each 0 to 1 of the blend
        share of each oil in the blend; together 1
    limits : list, each more than 0, at most 1 of the finished candle
        highest share of each oil in the finished candle by its certificate; 1 where it sets none

    Returns
    -------
    more than 0, at most 1 of the finished candle
        highest share of this oil in the finished candle by its certificate; 1 where it sets none

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: the shares must add up to 1.

    References
    ----------
    derived: a material's share in an oil is at most its own limit over that oil's certified limit
    """
@_overload
def liquid_density(density: _Value, measured: _Value, temperature: _Value, expansion: _Value = 0.00085) -> float:
    """Density of melted wax at another temperature than the one it was measured at.

    Poured 15 C hotter, the same mark holds 1.3 % less. Both temperatures must
    lie above the melting range: setting changes the density far more.

    >>> round(liquid_density(density=0.86, measured=70, temperature=85), 4)
    0.8492

    Parameters
    ----------
    density : 0.5 to 1.5 g/ml
        weight of a millilitre of the wax, at the temperature it is filled
    measured : -50 to 160 C
        temperature at which its density was measured
    temperature : -50 to 160 C
        temperature at which its density is wanted
    expansion : 0 to 0.002 per C; 0.00085 if left out
        how much a melted wax swells for each degree C, as a share of its volume

    Returns
    -------
    0.5 to 1.5 g/ml
        weight of a millilitre of the wax, at the temperature it is filled

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    thermal expansion: OpenStax, College Physics 2e, thermal expansion of solids and liquids; 0.00085 per C for melted wax worked from alkanes in a reference library
    """
@_overload
def liquid_density(density: _Value | _Array, measured: _Value | _Array, temperature: _Value | _Array, expansion: _Value | _Array = 0.00085) -> _npt.NDArray[_np.float64]: ...
@_overload
def liquid_density(density: _Value | _Array | _Column, measured: _Value | _Array | _Column, temperature: _Value | _Array | _Column, expansion: _Value | _Array | _Column = 0.00085) -> _pd.Series[float]: ...
@_overload
def load_after_rounding(wax: _Value, load: _Value, step: _Value) -> float:
    """Load that a pot gets when wax and oil are weighed to the scale's step.

    >>> load_after_rounding(wax=100, load=0.065, step=1)
    0.07

    Parameters
    ----------
    wax : 0 or more g
        wax in the melt, before any oil
    load : 0 to 0.5 of wax weight
        fragrance load: oil as a share of wax weight (8% is 0.08)
    step : more than 0, at most 100 g
        the smallest step the scale shows

    Returns
    -------
    0 to 0.5 of wax weight
        fragrance load: oil as a share of wax weight (8% is 0.08)

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: the wax must weigh at least one step of the scale.

    References
    ----------
    common practice, no source
    """
@_overload
def load_after_rounding(wax: _Value | _Array, load: _Value | _Array, step: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def load_after_rounding(wax: _Value | _Array | _Column, load: _Value | _Array | _Column, step: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def load_at_limit(limit: _Value) -> float:
    """Load on wax at which a certified limit in the finished candle is reached, counted up to 0.5.

    One limit of several, not a go-ahead: where a certificate sets none (100 %) it says
    nothing, and 0.5 is only where this stops counting. What the
    suppliers of wax and oil state may be lower: `highest_load` takes all three.

    >>> load_at_limit(limit=0.2)
    0.25

    Parameters
    ----------
    limit : more than 0, at most 1 of the finished candle
        highest share of this oil in the finished candle by its certificate; 1 where it sets none

    Returns
    -------
    0 to 0.5 of wax weight
        the highest fragrance load: oil as a share of wax weight

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    derived: a material's share in an oil is at most its own limit over that oil's certified limit
    """
@_overload
def load_at_limit(limit: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def load_at_limit(limit: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def load_from_share(share: _Value) -> float:
    """Load on wax that a share of the finished candle comes to.

    >>> load_from_share(share=0.2)
    0.25

    Parameters
    ----------
    share : 0 to 0.333333 of total weight
        fragrance oil as a share of wax and oil together

    Returns
    -------
    0 to 0.5 of wax weight
        fragrance load: oil as a share of wax weight (8% is 0.08)

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    percent by mass: OpenStax, Chemistry 2e, section on other units for solution concentrations
    """
@_overload
def load_from_share(share: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def load_from_share(share: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def load_measured(wax: _Value, oil: _Value) -> float:
    """Load that a pot of wax really got, from the two weighings.

    >>> load_measured(wax=200, oil=16)
    0.08

    Parameters
    ----------
    wax : 0 or more g
        wax in the melt, before any oil
    oil : 0 or more g
        fragrance oil to weigh out

    Returns
    -------
    0 to 0.5 of wax weight
        fragrance load: oil as a share of wax weight (8% is 0.08)

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: wax must be more than 0.

    References
    ----------
    common practice, no source
    """
@_overload
def load_measured(wax: _Value | _Array, oil: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def load_measured(wax: _Value | _Array | _Column, oil: _Value | _Array | _Column) -> _pd.Series[float]: ...
def load_on_scale(wax: _Value, load: _Value, step: _Value) -> _OnScale:
    """Load that a pot gets on a scale of this step: the load it shows, and the range of the true one.

    A scale in whole grams is coarse for a small pot: 16 g of oil in 200 g of wax
    can be anything from 7.7 % to 8.3 %.

    >>> round(load_on_scale(wax=200, load=0.08, step=1).highest, 4)
    0.0827

    Parameters
    ----------
    wax : 0 or more g
        wax in the melt, before any oil
    load : 0 to 0.5 of wax weight
        fragrance load: oil as a share of wax weight (8% is 0.08)
    step : more than 0, at most 100 g
        the smallest step the scale shows

    Returns
    -------
    a row of wax, oil, load, lowest, highest
        What to weigh out on a scale of this step, and the load you get.
    wax : 0 or more g
        wax in the melt, before any oil
    oil : 0 or more g
        fragrance oil to weigh out
    load : 0 to 0.5 of wax weight
        fragrance load: oil as a share of wax weight (8% is 0.08)
    lowest : 0 or more of wax weight
        an end of what the load can be, both readings half a step off
    highest : 0 or more of wax weight
        an end of what the load can be, both readings half a step off

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: the wax must weigh more than one step of the scale.

    References
    ----------
    to the nearest step: common practice, no source; limit of error of half a step for each reading; GUM, from memory
    """
@_overload
def load_reaching_limit(concentration: _Value, limit: _Value) -> float:
    """Load on wax at which a substance reaches a limit in the candle: to stay below it, pour less.

    At the limit itself the class is reached. It is one substance against one limit, 1 %
    for most skin sensitisers; sums and names on the label come earlier (`hazard_of_candle`).

    >>> round(load_reaching_limit(concentration=0.1, limit=0.01), 6)
    0.111111

    Parameters
    ----------
    concentration : 0 to 1 of the oil
        share of the substance in the oil, the upper end of its range
    limit : more than 0, at most 1 of the finished candle
        share from which the substance counts

    Returns
    -------
    0 to 0.5 of wax weight
        the load at which the limit is reached: stay below it

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: even at a load of 50 % this substance stays below the limit.

    References
    ----------
    percent by mass: OpenStax, Chemistry 2e, section on other units for solution concentrations
    """
@_overload
def load_reaching_limit(concentration: _Value | _Array, limit: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def load_reaching_limit(concentration: _Value | _Array | _Column, limit: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def load_swing(wax: _Value, oil: _Value, step: _Value) -> float:
    """How far the scale's step can move the load: both readings half a step off, the worst way.

    A scale in whole grams is coarse for a small pot: 16 g of oil in 200 g of wax
    can be anything from 7.7 % to 8.3 %.

    >>> round(load_swing(wax=200, oil=16, step=1), 4)
    0.0027

    Parameters
    ----------
    wax : 0 or more g
        wax in the melt, before any oil
    oil : 0 or more g
        fragrance oil to weigh out
    step : more than 0, at most 100 g
        the smallest step the scale shows

    Returns
    -------
    0 or more of wax weight
        how far the load may lie either side of what was worked out

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: the wax must weigh more than one step of the scale.

    References
    ----------
    limit of error of half a step for each reading; GUM, from memory
    """
@_overload
def load_swing(wax: _Value | _Array, oil: _Value | _Array, step: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def load_swing(wax: _Value | _Array | _Column, oil: _Value | _Array | _Column, step: _Value | _Array | _Column) -> _pd.Series[float]: ...
def lot_sizes(sales: _Cells, setup: _Value, keeping: _Value, opening: _Value = 0.0) -> list[float]:
    """How much to make in each week or month so that batches and keeping cost least over the season.

    The answer is exact, no rule of thumb: no other plan costs less. It assumes a batch
    can be any size. Where two plans cost the same, the one with the earlier batches is
    given.

    >>> lot_sizes(sales=[90, 120, 80, 70], setup=500, keeping=2)
    [210.0, 0.0, 150.0, 0.0]

    Parameters
    ----------
    sales : list, each 0 or more
        how much is wanted in each week or month, in order
    setup : 0 or more
        what a batch costs whatever its size: setting up, cleaning, an evening taken
    keeping : 0 or more money per unit
        what keeping one from a week or month to the next costs
    opening : 0 or more; 0.0 if left out
        how much is there at the start

    Returns
    -------
    list, each 0 or more
        how much in each week or month, in order

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    Wagner and Whitin's lot sizes: the library stockpyl, after Snyder and Shen, example 3.9
    """
def lot_test_us(net: _Value, weighings: _Cells) -> _LotTest:
    """The two requirements of a US lot on the net weights of its sample: its average, and each package by itself.

    Zero or more on average meets the first with no table. What rests on a table that
    stands here from memory, the limit of a minus and most variations of a single
    package, gets no verdict.

    >>> lot_test_us(net=227, weighings=[190, 240, 260]).beyond
    1.0

    Parameters
    ----------
    net : 5 to 25000 g
        net weight to declare: wax and oil, no vessel, lid or wick tab
    weighings : list, each 0 or more g
        net weight of each package weighed

    Returns
    -------
    a row of verdict, average_error, spread, error_limit, note, variation, beyond
        What the weighings of a US lot say, with the figures they say it by.
    verdict : text
        what the weighings say
    average_error : any amount g
        average net weight less the declared one
    spread : 0 or more g
        sample standard deviation of the weighings
    error_limit : 0 or more g
        how far under the declared weight
    note : text
        what it rests on, and what to check
    variation : 0 or more g
        how far under the declared weight
    beyond : whole numbers 0 to 1000000
        how many packages are short

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    NIST Handbook 133 (2026), 2.2 and 2.3; its tables 2-1 and 2-5 from memory
    """
@_overload
def lots_cost(sales: _Cells, made: _Cells, setup: _Value, keeping: _Value, opening: _Value = 0.0) -> float:
    """What batches and keeping cost over a season: each time something is made, and what is left after each.

    >>> lots_cost(sales=[90, 120, 80, 70], made=[210, 0, 150, 0], setup=500, keeping=2)
    1380.0

    Parameters
    ----------
    sales : list, each 0 or more
        how much is wanted in each week or month, in order
    made : list, each 0 or more
        how much is made in each week or month, in order
    setup : 0 or more
        what a batch costs whatever its size: setting up, cleaning, an evening taken
    keeping : 0 or more money per unit
        what keeping one from a week or month to the next costs
    opening : 0 or more; 0.0 if left out
        how much is there at the start

    Returns
    -------
    0 or more
        an amount of money

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    Wagner and Whitin's lot sizes: the library stockpyl, after Snyder and Shen, example 3.9
    """
@_overload
def lots_cost(sales: _Cells, made: _Cells, setup: _Value | _Array, keeping: _Value | _Array, opening: _Value | _Array = 0.0) -> _npt.NDArray[_np.float64]: ...
@_overload
def lots_cost(sales: _Cells, made: _Cells, setup: _Value | _Array | _Column, keeping: _Value | _Array | _Column, opening: _Value | _Array | _Column = 0.0) -> _pd.Series[float]: ...
def lots_left(moves: _Cells, costs: _Cells | None) -> list[_LotLeft]:
    """The lots that make up what is left, where the oldest goes first: the proof of a closing value.

    A log of which nothing is left has no answer.

    >>> lots_left(moves=[30, -20, 40], costs=[2, "", 2.5])
    [LotLeft(line=1.0, left=10.0, worth=20.0), LotLeft(line=3.0, left=40.0, worth=100.0)]

    Parameters
    ----------
    moves : list, each any amount
        what came in, with a minus what went out, in the order it happened
    costs : list, each 0 or more money per unit or blank
        cost of one unit of what came in; blank where it went out

    Returns
    -------
    list, each a row of line, left, worth
        A lot of which something is left: its line in the log, how much, and what that is worth.
    line : whole numbers 1 or more
        line of the log in which the lot came in, counted from 1
    left : 0 or more
        how much of the material, in the unit it is priced by
    worth : 0 or more
        what the stock on hand is worth at cost

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    FIFO, average and LIFO, periodic and perpetual: OpenStax, Financial Accounting 10.1 to 10.3
    """
def lots_to_use(lots: _Cells, amounts: _Cells, dates: _Cells, needed: _Value, as_of: _Day) -> list[_LotToUse]:
    """Which lots to use for what is needed: the one with the earliest date first.

    A lot past its day is left alone. Where the others do not hold enough, it is
    refused with what they hold.

    >>> lots_to_use(lots=["A7"], amounts=[900], dates=["2026-11-30"], needed=250, as_of="2026-09-01")[0].take
    250.0

    Parameters
    ----------
    lots : list, each text
        name or number of each lot
    amounts : list, each 0 or more
        how much is left of each lot
    dates : list, each a date such as "2026-03-14"
        the last day on which to use each lot
    needed : more than 0
        how much is needed now
    as_of : a date such as "2026-03-14"
        the day it is counted from: today, or the day of use

    Returns
    -------
    list, each a row of lot, take, use_by, days_left
        A lot, how much to take of it, the last day on which to use it, and the days until then.
    lot : text
        name or number of the lot
    take : 0 or more
        how much of the material, in the unit it is priced by
    use_by : a date such as "2026-03-14"
        the last day on which to use the lot
    days_left : any amount days
        days that the lot still keeps; minus where it is past

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    common practice, no source
    """
def lower_of_cost(amounts: _Cells, costs: _Cells, worth: _Cells) -> float:
    """What stock is carried at: the lower of cost and net realisable value, item by item.

    Item by item, so that a gain on one does not hide the loss on another.

    >>> lower_of_cost(amounts=[10, 12], costs=[9, 6], worth=[8, 7])
    152.0

    Parameters
    ----------
    amounts : list, each 0 or more
        how much there is of each item
    costs : list, each 0 or more money per unit
        what one of each item cost
    worth : list, each 0 or more money per unit
        what one of each item brings after the costs to finish and to sell it

    Returns
    -------
    0 or more
        what the stock on hand is worth at cost

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    lower of cost and net realisable value: IAS 2, from summaries; OpenStax, Financial Accounting 10.1
    """
@_overload
def lowest_price(materials: _Value, fee: _Value = 0.0, fixed: _Value = 0.0, tax: _Value = 0.0, basis: _Literal["net", "gross"] = 'net', least: _Value = 0.0) -> float:
    """Lowest price before tax that still covers the materials and the place's fees.

    Below it you lose money on every sale, even with unpaid time.

    >>> lowest_price(materials=4.5, fee=0.1)
    5.0

    Parameters
    ----------
    materials : 0 or more
        what the materials in it cost, without any work
    fee : 0 to 0.95 of the price; 0.0 if left out
        what the place keeps of the price
    fixed : any amount; 0.0 if left out
        what a sale costs in fixed sums, not shares: fees, packing, postage; minus if the buyer pays more
    tax : 0 to 1 of the price before tax; 0.0 if left out
        rate of sales tax or VAT
    basis : "net" or "gross"; 'net' if left out
        what the fee is a share of: the price before tax (net) or with tax (gross)
    least : 0 or more; 0.0 if left out
        the smallest fee that a candle is charged

    Returns
    -------
    0 or more
        the lowest price before tax

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: the fee must leave something of the price.
        With the words: what the buyer pays for postage must not be more than the cost.

    References
    ----------
    algebra from the definitions
    """
@_overload
def lowest_price(materials: _Value | _Array, fee: _Value | _Array = 0.0, fixed: _Value | _Array = 0.0, tax: _Value | _Array = 0.0, basis: _Literal["net", "gross"] | _Words = 'net', least: _Value | _Array = 0.0) -> _npt.NDArray[_np.float64]: ...
@_overload
def lowest_price(materials: _Value | _Array | _Column, fee: _Value | _Array | _Column = 0.0, fixed: _Value | _Array | _Column = 0.0, tax: _Value | _Array | _Column = 0.0, basis: _Literal["net", "gross"] | _Words | _Column = 'net', least: _Value | _Array | _Column = 0.0) -> _pd.Series[float]: ...
@_overload
def m_factor(toxicity: _Value, test: _Literal["acute", "chronic", "chronic, degradable"]) -> float:
    """M-factor of a substance from its toxicity to water life, where section 3 gives none.

    The supplier's own M-factor, or one fixed by law, goes before it.

    >>> m_factor(toxicity=0.05, test="acute")
    10.0

    Parameters
    ----------
    toxicity : more than 0, at most 1 mg/l
        the lowest LC50, EC50 or NOEC in section 12 of the data sheet
    test : "acute" or "chronic" or "chronic, degradable"
        which test: acute (LC50, EC50), chronic (NOEC), or chronic of a rapidly degradable substance

    Returns
    -------
    1 or more
        M-factor: what its share is multiplied by

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: there is an M-factor only up to 1 mg/l (acute), 0.1 (chronic) or 0.01 (chronic, degradable).

    References
    ----------
    Regulation (EC) No 1272/2008 (CLP), Annex I: limits as consolidated 2026-05-01, read in a transcription that quotes its tables; wording of 2025-09-01; Table 4.1.3
    """
@_overload
def m_factor(toxicity: _Value | _Array, test: _Literal["acute", "chronic", "chronic, degradable"] | _Words) -> _npt.NDArray[_np.float64]: ...
@_overload
def m_factor(toxicity: _Value | _Array | _Column, test: _Literal["acute", "chronic", "chronic, degradable"] | _Words | _Column) -> _pd.Series[float]: ...
@_overload
def make_for_good(good: _Value, share: _Value) -> float:
    """How many to make so that enough come out good: the number wanted over the yield, rounded up.

    >>> make_for_good(good=48, share=0.95)
    51.0

    Parameters
    ----------
    good : whole numbers 0 to 1000000
        how many good ones are wanted
    share : more than 0, at most 1 of what is made
        share that comes out good enough to sell

    Returns
    -------
    whole numbers 0 to 1000000
        how many candles

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    common practice, no source
    """
@_overload
def make_for_good(good: _Value | _Array, share: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def make_for_good(good: _Value | _Array | _Column, share: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def making_cost(materials: _Value, labour: _Value, overhead: _Value) -> float:
    """Making cost of a batch or a candle: materials, paid labour, production overhead.

    What stock and cost of goods are valued at. The maker's own time is not in
    it: prices need `full_cost`.

    >>> making_cost(materials=700, labour=66, overhead=165)
    931.0

    Parameters
    ----------
    materials : 0 or more
        what the materials cost, waste with them
    labour : 0 or more
        what paid help costs; nothing for your own time
    overhead : 0 or more
        its part of production overhead

    Returns
    -------
    0 or more
        what the candle costs

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    job cost: OpenStax, Managerial Accounting, chapter 4
    """
@_overload
def making_cost(materials: _Value | _Array, labour: _Value | _Array, overhead: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def making_cost(materials: _Value | _Array | _Column, labour: _Value | _Array | _Column, overhead: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def margin_at(profit: _Value, price: _Value) -> float:
    """Profit divided by the price before tax.

    >>> margin_at(profit=8, price=16)
    0.5

    Parameters
    ----------
    profit : any amount
        profit on one; minus for a loss
    price : 0 or more
        price before tax

    Returns
    -------
    any amount of the price
        profit as a share of the price before tax; minus for a loss

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: price must be more than 0.

    References
    ----------
    markup, discount and sales tax: OpenStax, Contemporary Mathematics 6.2
    """
@_overload
def margin_at(profit: _Value | _Array, price: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def margin_at(profit: _Value | _Array | _Column, price: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def margin_from_markup(markup: _Value) -> float:
    """Margin on the price that a markup on cost comes to: 100 % markup is 50 % margin.

    >>> margin_from_markup(markup=1)
    0.5

    Parameters
    ----------
    markup : 0 to 10 of cost
        what is added to the cost, as a share of the cost

    Returns
    -------
    0 to 0.99 of the price
        profit as a share of the price before tax

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    markup, discount and sales tax: OpenStax, Contemporary Mathematics 6.2
    """
@_overload
def margin_from_markup(markup: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def margin_from_markup(markup: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def markup_from_margin(margin: _Value) -> float:
    """Markup on cost that a margin on the price comes to.

    >>> markup_from_margin(margin=0.5)
    1.0

    Parameters
    ----------
    margin : 0 to 0.99 of the price
        profit as a share of the price before tax

    Returns
    -------
    0 to 1000 of cost
        what is added to the cost, as a share of the cost

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    markup, discount and sales tax: OpenStax, Contemporary Mathematics 6.2
    """
@_overload
def markup_from_margin(margin: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def markup_from_margin(margin: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def material_cost(amount: _Value, cost: _Value) -> float:
    """Cost of an amount of material at its unit cost.

    >>> material_cost(amount=40, cost=0.05)
    2.0

    Parameters
    ----------
    amount : 0 or more
        how much of the material, in the unit it is priced by
    cost : 0 or more money per unit
        cost of one unit of the material: a piece, or a unit of weight

    Returns
    -------
    0 or more
        an amount of money

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    job cost: OpenStax, Managerial Accounting, chapter 4
    """
@_overload
def material_cost(amount: _Value | _Array, cost: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def material_cost(amount: _Value | _Array | _Column, cost: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def materials_used(opening: _Value, bought: _Value, closing: _Value) -> float:
    """Materials used in a period, from what was there, what was bought and what is left.

    >>> materials_used(opening=2500, bought=10500, closing=11600)
    1400.0

    Parameters
    ----------
    opening : 0 or more
        stock at the start of the period, at making cost
    bought : 0 or more
        bought in the period, less returns and discounts, freight in with it
    closing : 0 or more
        stock at the end of the period, at making cost

    Returns
    -------
    0 or more
        materials used in the period

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: closing stock cannot be more than there was.

    References
    ----------
    schedules of cost of goods: OpenStax, Managerial Accounting 2.1 and 4.3
    """
@_overload
def materials_used(opening: _Value | _Array, bought: _Value | _Array, closing: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def materials_used(opening: _Value | _Array | _Column, bought: _Value | _Array | _Column, closing: _Value | _Array | _Column) -> _pd.Series[float]: ...
def maximum_allowable_variation(net: _Value) -> _Variation:
    """How far under its declared weight a single package may be in the US, and the coarsest scale step for it.

    Most rows of the handbook's table stand here from memory, and say so.

    >>> maximum_allowable_variation(net=113).coarsest_step
    1.2

    Parameters
    ----------
    net : 5 to 25000 g
        net weight to declare: wax and oil, no vessel, lid or wick tab

    Returns
    -------
    a row of variation, coarsest_step, note
        A US variation with the coarsest step of a scale for it, and what it rests on.
    variation : 0 or more g
        how far under the declared weight
    coarsest_step : 0 or more g
        the smallest step the scale shows
    note : text
        what it rests on, and what to check

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    NIST Handbook 133 (2026), 2.2 and 2.3; its tables 2-1 and 2-5 from memory
    """
@_overload
def mean_factor(count: _Value) -> float:
    """How many standard deviations the mean of a sample may lie under the declared weight (EU and GB test).

    >>> round(mean_factor(count=30), 3)
    0.503

    Parameters
    ----------
    count : whole numbers 1 to 1000
        how many packages were weighed

    Returns
    -------
    0 or more
        how many standard deviations the mean may lie under the declared weight

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: one weighing has no spread.

    References
    ----------
    UK SI 2006/659, Schedule 2, 3 and 4; Directive 76/211/EEC, Annex II
    """
@_overload
def mean_factor(count: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def mean_factor(count: _Value | _Array | _Column) -> _pd.Series[float]: ...
def melt_cautions(temperature: _Value, ceiling: _Value | None = None, wax_flash: _Value | None = None, oil_flash: _Value | None = None, near: _Value = 20.0) -> list[str]:
    """What to mind at the temperature of a melt, a line each.

    A flash point is where vapour over the neat oil or wax catches from a flame
    in a test. Do not work up to it; it is also not where scent is lost.

    >>> melt_cautions(temperature=90, ceiling=85, wax_flash=204, oil_flash=93)[0]
    "above the wax supplier's stated ceiling of 85 C (185 F): let it cool"

    Parameters
    ----------
    temperature : -50 to 160 C
        a temperature
    ceiling : -50 to 160 C or blank; None if left out
        highest temperature that the supplier states for the wax; blank where none is known
    wax_flash : -50 to 350 C or blank; None if left out
        flash point of the wax by its data sheet; blank where none is known
    oil_flash : -50 to 180 C or blank; None if left out
        flash point of the neat oil by its safety data sheet; blank where none is known
    near : 0 to 100 C difference; 20.0 if left out
        how near a flash point is warned of

    Returns
    -------
    list, each text
        what to mind, a line each

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    flash point as the NIST glossary of fire terms defines it; how near is common practice, no source
    """
@_overload
def melt_time(heat: _Value, power: _Value, efficiency: _Value) -> float:
    """Minutes that a heater takes to put an amount of heat into the pot.

    Find your own heater's efficiency from one melt, with `heater_efficiency`.
    Wax heats from the wall inwards: stay with it, and stir.

    >>> melt_time(heat=360, power=1000, efficiency=0.5)
    12.0

    Parameters
    ----------
    heat : 0 or more kJ
        heat that has to get into it
    power : 10 to 100000 W
        power of the heater, as its plate states it
    efficiency : more than 0, at most 1 of the heater's power
        share of the power that gets into the wax

    Returns
    -------
    0 or more min
        how long the heater is on

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    power times time: OpenStax, College Physics 2e, phase change; Cengel, heat transfer, example 1-2, second-hand
    """
@_overload
def melt_time(heat: _Value | _Array, power: _Value | _Array, efficiency: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def melt_time(heat: _Value | _Array | _Column, power: _Value | _Array | _Column, efficiency: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def minimum_order(order: _Value, price: _Value, cost: _Value, profit: _Value = 0.0, carton: _Value = 1.0) -> float:
    """The smallest order that pays for itself, in candles: whole cases.

    >>> minimum_order(order=30, price=12, cost=7, profit=20, carton=6)
    12.0

    Parameters
    ----------
    order : 0 or more
        what an order costs whatever its size: the time it takes, a box, freight that you pay
    price : 0 or more
        wholesale price: what the shop pays the maker
    cost : 0 or more
        what each candle costs that goes into the order
    profit : 0 or more; 0.0 if left out
        profit that the order is to leave
    carton : whole numbers 1 to 1000; 1.0 if left out
        candles are sold in cases of so many; 1 for singly

    Returns
    -------
    whole numbers 0 to 1000000
        how many candles

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: the price must be above what each one costs.

    References
    ----------
    cost, volume and profit: OpenStax, Managerial Accounting, chapter 3
    """
@_overload
def minimum_order(order: _Value | _Array, price: _Value | _Array, cost: _Value | _Array, profit: _Value | _Array = 0.0, carton: _Value | _Array = 1.0) -> _npt.NDArray[_np.float64]: ...
@_overload
def minimum_order(order: _Value | _Array | _Column, price: _Value | _Array | _Column, cost: _Value | _Array | _Column, profit: _Value | _Array | _Column = 0.0, carton: _Value | _Array | _Column = 1.0) -> _pd.Series[float]: ...
@_overload
def minutes_each(each: _Value, setup: _Value, batch: _Value) -> float:
    """Working minutes a candle, with its share of the time to set up and clean.

    >>> minutes_each(each=4, setup=60, batch=24)
    6.5

    Parameters
    ----------
    each : 0 to 1000000 min
        working time for one candle
    setup : 0 to 1000000 min
        working time to set up and clean, once a batch
    batch : whole numbers 1 to 1000000
        how many candles are made together

    Returns
    -------
    0 to 1000000 min
        working time

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    common practice, no source
    """
@_overload
def minutes_each(each: _Value | _Array, setup: _Value | _Array, batch: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def minutes_each(each: _Value | _Array | _Column, setup: _Value | _Array | _Column, batch: _Value | _Array | _Column) -> _pd.Series[float]: ...
def mixed_density(shares: _Cells, densities: _Cells) -> float:
    """Density of several waxes and additives mixed by weight; the shares must add up to 1.

    Volumes are taken to add up, as they do for waxes within a percent or so.
    The mean of the densities by weight comes out too high.

    >>> round(mixed_density(shares=[0.7, 0.3], densities=[0.9, 0.96]), 4)
    0.9172

    Parameters
    ----------
    shares : list, each 0 to 1 of the blend
        share of each wax or additive in the blend; together 1
    densities : list, each 0.5 to 1.5 g/ml
        density of each, all at one temperature

    Returns
    -------
    0.5 to 1.5 g/ml
        weight of a millilitre of the wax, at the temperature it is filled

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: the shares must add up to 1.

    References
    ----------
    mass balance of a mixture; OpenStax, Intermediate Algebra 2e, mixture applications
    """
def mixed_latent_heat(shares: _Cells, heats: _Cells) -> float:
    """Heat that melts a kilogram of a blend, from each wax's own.

    A blend melts over a range, and waxes that dissolve in each other take up a
    little more or less than this; a figure measured on the blend beats it.

    >>> mixed_latent_heat(shares=[0.75, 0.25], heats=[190, 210])
    195.0

    Parameters
    ----------
    shares : list, each 0 to 1 of the blend
        share of each wax or additive in the blend; together 1
    heats : list, each 0 to 1000 kJ/kg
        latent heat of each

    Returns
    -------
    0 to 1000 kJ/kg
        heat that melts a kilogram of it once it is warm enough

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: the shares must add up to 1.

    References
    ----------
    heat lost is heat gained: OpenStax, College Physics 2e, heat capacity; melted wax 2.2 second-hand, oil taken to warm as wax does, no source
    """
def mixed_specific_heat(shares: _Cells, heats: _Cells) -> float:
    """Specific heat of several waxes and additives mixed by weight, all set or all melted.

    >>> round(mixed_specific_heat(shares=[0.75, 0.25], heats=[2.2, 2.0]), 4)
    2.15

    Parameters
    ----------
    shares : list, each 0 to 1 of the blend
        share of each wax or additive in the blend; together 1
    heats : list, each more than 0, at most 10 kJ/(kg C)
        specific heat of each, all set or all melted

    Returns
    -------
    more than 0, at most 10 kJ/(kg C)
        heat that warms a kilogram of it by one degree C

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: the shares must add up to 1.

    References
    ----------
    heat lost is heat gained: OpenStax, College Physics 2e, heat capacity; melted wax 2.2 second-hand, oil taken to warm as wax does, no source
    """
net_realisable = net_realisable_value
@_overload
def net_realisable_value(price: _Value, finishing: _Value = 0.0, selling: _Value = 0.0) -> float:
    """What one brings after what it still costs to finish and to sell it; nothing where that is a loss.

    >>> net_realisable_value(price=12, finishing=1.5, selling=2)
    8.5

    Parameters
    ----------
    price : 0 or more
        what one is expected to sell for
    finishing : 0 or more; 0.0 if left out
        what it still costs to finish one
    selling : 0 or more; 0.0 if left out
        what it costs to sell one: fees, packing, postage paid by the maker

    Returns
    -------
    0 or more money per unit
        what one brings after the costs to finish and to sell it

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    lower of cost and net realisable value: IAS 2, from summaries; OpenStax, Financial Accounting 10.1
    """
@_overload
def net_realisable_value(price: _Value | _Array, finishing: _Value | _Array = 0.0, selling: _Value | _Array = 0.0) -> _npt.NDArray[_np.float64]: ...
@_overload
def net_realisable_value(price: _Value | _Array | _Column, finishing: _Value | _Array | _Column = 0.0, selling: _Value | _Array | _Column = 0.0) -> _pd.Series[float]: ...
def net_requirements(items: _Cells | None, on_hand: _Cells | None, packs: _Cells | None, leads: _Cells | None, products: _Cells | None, parts: _Cells | None, amounts: _Cells | None, wanted: _Cells | None, weeks: _Cells | None, quantities: _Cells | None, coming: _Cells | None = None, coming_weeks: _Cells | None = None, coming_amounts: _Cells | None = None) -> list[_Order]:
    """What to order and start, and when: what is wanted less what is there, through every recipe level.

    Four tables, each a few columns of one length: items (what is on hand, the
    pack, the weeks it takes), recipe lines (product, part, amount in one), what
    is wanted by which week, and what is on its way. A part is needed in the
    week in which its product is started. An order that would have had to
    start before week 1 is given all the same, with a note.

    >>> net_requirements(items=["pair", "wax"], on_hand=[10, 1000], packs=["", 5000], leads=[2, 1],
    ...     products=["pair"], parts=["wax"], amounts=[400], wanted=["pair"], weeks=[6], quantities=[40])[1][:4]
    ('wax', 3.0, 4.0, 15000.0)

    Parameters
    ----------
    items : list, each text or blank
        every product and material, once each: table of items, first column
    on_hand : list, each 0 or more or blank
        how much of each item is on hand
    packs : list, each more than 0 or blank
        what each item is bought or made in; blank for any amount
    leads : list, each whole numbers 0 to 520 or blank
        weeks from ordering or starting to having each item; blank for none
    products : list, each text or blank
        what is made: table of recipe lines, first column
    parts : list, each text or blank
        a material, or a product made before, that goes into it
    amounts : list, each more than 0 or blank
        how much of the part goes into one of the product
    wanted : list, each text or blank
        what is wanted: table of what is to be ready, first column
    weeks : list, each whole numbers 1 to 520 or blank
        the week by which it is wanted, counted from 1
    quantities : list, each 0 or more or blank
        how much of it is wanted then
    coming : list, each text or blank; None if left out
        what is on its way: table of deliveries, first column
    coming_weeks : list, each whole numbers 1 to 520 or blank; None if left out
        the week in which it comes, counted from 1
    coming_amounts : list, each 0 or more or blank; None if left out
        how much of it comes then

    Returns
    -------
    list, each a row of item, start, ready, amount, note
        What to order or start, in which week, by when it is needed, and how much.
    item : text
        product or material
    start : any amount
        the week in which to order or start it
    ready : any amount
        the week by which it must be there
    amount : 0 or more
        how much of the material, in the unit it is priced by
    note : text or blank
        what to know about it

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    material requirements planning: Chase and Jacobs, 14th edition, second-hand; answers of an exercise
    """
@_overload
def net_weight_metric(net: _Value) -> str:
    """Net weight in metric units as a label may state it, rounded down to three digits, never up.

    >>> net_weight_metric(net=226.8)
    '226 g'

    Parameters
    ----------
    net : 5 to 25000 g
        net weight to declare: wax and oil, no vessel, lid or wick tab

    Returns
    -------
    text
        the declaration as it may be printed

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    rounded down, three digits: 16 CFR 500.19(b); Directive 76/211/EEC, Annex I, 1.1
    """
@_overload
def net_weight_metric(net: _Value | _Array) -> _npt.NDArray[_Any]: ...
@_overload
def net_weight_metric(net: _Value | _Array | _Column) -> _pd.Series[str]: ...
def net_weight_us(net: _Value, decimals: _Value = 2) -> _NetStatement:
    """Net weight statement for a US label: pounds and ounces with grams beside them, both rounded down.

    `net` is the least that every candle is filled with. Neither figure says
    more than there is: 340 g are 11.99 oz, and 12 oz take 340.2 g. The larger
    of the two is the one that binds.

    >>> net_weight_us(net=227)
    NetStatement(statement='Net Wt 8 oz (227 g)', note='unconfirmed: check against 16 CFR 500.9 and 500.17')

    Parameters
    ----------
    net : 5 to 25000 g
        net weight to declare: wax and oil, no vessel, lid or wick tab
    decimals : whole numbers 0 to 2; 2 if left out
        decimals of the ounces at most; the rest is left off, so that the label never says too much

    Returns
    -------
    a row of statement, note
        A net weight as it may be printed, and what to check.
    statement : text
        the declaration as it may be printed
    note : text
        what it rests on, and what to check

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    15 U.S.C. 1453(a)(3); 16 CFR 500.19; under a pound in ounces: 16 CFR 500.9, from memory; down, never up: a NIST fact sheet, second-hand; two decimals: American Samoa, Admin. Code 27.0632
    """
@_overload
def never_under(net: _Value) -> float:
    """Least net weight of any candle with the e mark.

    >>> never_under(net=180)
    163.8

    Parameters
    ----------
    net : 5 to 25000 g
        net weight to declare: wax and oil, no vessel, lid or wick tab

    Returns
    -------
    0 to 25000 g
        net weight that a package holds or may hold

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    Council Directive 76/211/EEC, Annex I, 2.4; rounding: GOV.UK, Packaged goods
    """
@_overload
def never_under(net: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def never_under(net: _Value | _Array | _Column) -> _pd.Series[float]: ...
def next_wick(wax: str, load: _Value, vessel: str, kind: str, wicks: _Cells, kinds: _Cells, sizes: _Cells, tested_waxes: _Cells | None, tested_loads: _Cells | None, tested_vessels: _Cells | None, findings: _Cells | None) -> _Advised:
    """Which of the maker's own wicks to test next in a recipe, by the maker's own tests of that recipe.

    One row a test; a wick not tested yet is a row without its test. Tests in
    another wax, load or vessel, or of another kind of wick, say nothing here.
    It names a wick to test, never one to sell.

    >>> next_wick(wax="soy", load=0.08, vessel="tumbler", kind="cotton", wicks=["small", "large", "middle"],
    ...           kinds=["cotton", "cotton", "cotton"], sizes=[1, 3, 2], tested_waxes=["soy", "soy"],
    ...           tested_loads=[0.08, 0.08], tested_vessels=["tumbler", "tumbler"],
    ...           findings=["too cool", "too hot"]).wick
    'middle'

    Parameters
    ----------
    wax : text
        the wax of the recipe
    load : 0 to 0.5 of wax weight
        fragrance load: oil as a share of wax weight (8% is 0.08)
    vessel : text
        the vessel of the recipe
    kind : text
        the kind of wick to stay within
    wicks : list, each text
        each wick the maker has or has tested, by the maker's name for it
    kinds : list, each text
        the kind of each wick: wicks of a kind differ in size alone
    sizes : list, each 0 or more
        size of each wick within its kind, in any order of size the maker keeps
    tested_waxes : list, each text or blank
        the wax it was tested in; blank for a wick not tested yet
    tested_loads : list, each 0 to 0.5 of wax weight or blank
        the load it was tested at; blank for a wick not tested yet
    tested_vessels : list, each text or blank
        the vessel it was tested in; blank for a wick not tested yet
    findings : list, each "too cool" or "within targets" or "too hot" or blank
        how it burnt against the maker's own targets; blank if not tested

    Returns
    -------
    a row of wick, reasons
        The wick to test next, if the tests name one, and why.
    wick : text or blank
        the wick to test next; blank where the tests name none
    reasons : text
        why, in words

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    common practice, no source: one thing is changed at a time, and a single piece proves nothing
    """
@_overload
def oil_for_fill(fill: _Value, load: _Value) -> float:
    """Fragrance oil in a finished fill of wax and oil together.

    >>> oil_for_fill(fill=540, load=0.08)
    40.0

    Parameters
    ----------
    fill : 0 or more g
        wax and oil together, as poured into a vessel or a batch
    load : 0 to 0.5 of wax weight
        fragrance load: oil as a share of wax weight (8% is 0.08)

    Returns
    -------
    0 or more g
        fragrance oil to weigh out

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    percent by mass: OpenStax, Chemistry 2e, section on other units for solution concentrations
    """
@_overload
def oil_for_fill(fill: _Value | _Array, load: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def oil_for_fill(fill: _Value | _Array | _Column, load: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def oil_for_wax(wax: _Value, load: _Value) -> float:
    """Fragrance oil to weigh out for a weight of wax.

    Load is on wax, so the pour is heavier than the wax that went in: 500 g at
    8 % pours 540 g. For oil out of a finished fill use `oil_for_fill`.

    >>> oil_for_wax(wax=500, load=0.08)
    40.0

    Parameters
    ----------
    wax : 0 or more g
        wax in the melt, before any oil
    load : 0 to 0.5 of wax weight
        fragrance load: oil as a share of wax weight (8% is 0.08)

    Returns
    -------
    0 or more g
        fragrance oil to weigh out

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    common practice, no source
    """
@_overload
def oil_for_wax(wax: _Value | _Array, load: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def oil_for_wax(wax: _Value | _Array | _Column, load: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def oil_part(oil: _Value, share: _Value) -> float:
    """One oil out of a blend, by its share of the blend.

    >>> oil_part(oil=40, share=0.75)
    30.0

    Parameters
    ----------
    oil : 0 or more g
        fragrance oil to weigh out
    share : 0 to 1 of the blend
        share of one oil, or of one wax, in a blend

    Returns
    -------
    0 or more g
        fragrance oil to weigh out

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    common practice, no source
    """
@_overload
def oil_part(oil: _Value | _Array, share: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def oil_part(oil: _Value | _Array | _Column, share: _Value | _Array | _Column) -> _pd.Series[float]: ...
def oil_parts(oil: _Value, shares: _Cells) -> list[float]:
    """Weight of each oil in a blend, from shares that must add up to 1.

    >>> oil_parts(oil=40, shares=[0.5, 0.25, 0.25])
    [20.0, 10.0, 10.0]

    Parameters
    ----------
    oil : 0 or more g
        fragrance oil to weigh out
    shares : list, each 0 to 1 of the blend
        share of each oil in the blend; together 1

    Returns
    -------
    list, each 0 or more g
        each oil to weigh out, in the order of the shares

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: the shares must add up to 1.

    References
    ----------
    common practice, no source
    """
@_overload
def oil_to_raise_load(scented: _Value, load: _Value, wanted: _Value) -> float:
    """Oil to add to wax that is already scented, to bring it up to a higher load.

    >>> round(oil_to_raise_load(scented=540, load=0.08, wanted=0.1), 6)
    10.0

    Parameters
    ----------
    scented : 0 or more g
        wax and oil together, as poured into a vessel or a batch
    load : 0 to 0.5 of wax weight
        load that it has now: oil as a share of wax weight (8% is 0.08)
    wanted : 0 to 0.5 of wax weight
        load wanted: oil as a share of wax weight (8% is 0.08)

    Returns
    -------
    0 or more g
        fragrance oil to weigh out

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: the wanted load must not be below the load it has; to lower it use wax_to_lower_load.

    References
    ----------
    mass balance of a mixture; OpenStax, Intermediate Algebra 2e, mixture applications
    """
@_overload
def oil_to_raise_load(scented: _Value | _Array, load: _Value | _Array, wanted: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def oil_to_raise_load(scented: _Value | _Array | _Column, load: _Value | _Array | _Column, wanted: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def order_cost(fee: _Value = 0.0, postage: _Value = 0.0, packing: _Value = 0.0, charged: _Value = 0.0) -> float:
    """What an order costs the maker besides its candles, less the postage the buyer pays.

    >>> order_cost(fee=0.25, postage=5.5, packing=1, charged=4)
    2.75

    Parameters
    ----------
    fee : 0 or more; 0.0 if left out
        the place's fee for an order
    postage : 0 or more; 0.0 if left out
        postage that you pay for an order
    packing : 0 or more; 0.0 if left out
        box and packing of an order
    charged : 0 or more; 0.0 if left out
        postage that the buyer pays you

    Returns
    -------
    any amount
        an amount of money; minus for a credit or a loss

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    algebra from the definitions
    """
@_overload
def order_cost(fee: _Value | _Array = 0.0, postage: _Value | _Array = 0.0, packing: _Value | _Array = 0.0, charged: _Value | _Array = 0.0) -> _npt.NDArray[_np.float64]: ...
@_overload
def order_cost(fee: _Value | _Array | _Column = 0.0, postage: _Value | _Array | _Column = 0.0, packing: _Value | _Array | _Column = 0.0, charged: _Value | _Array | _Column = 0.0) -> _pd.Series[float]: ...
order_quantity = economic_order_quantity
@_overload
def ordering_cost(quantity: _Value, demand: _Value, ordering: _Value, holding: _Value) -> float:
    """What ordering and keeping cost over the time planned for, where so much is ordered at a time.

    What the goods themselves cost is not in it.

    >>> ordering_cost(quantity=200, demand=900, ordering=12, holding=0.6)
    114.0

    Parameters
    ----------
    quantity : more than 0
        how much is ordered at a time, in the unit that demand is in
    demand : 0 or more
        how much is used or sold over the time planned for: a year, a season
    ordering : 0 or more
        what an order costs whatever its size: delivery, handling, the time it takes
    holding : more than 0 money per unit
        cost to keep one unit for the whole of that time: money tied up, room, losses

    Returns
    -------
    0 or more
        an amount of money

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    economic order quantity: the library stockpyl, after Snyder and Shen, example 3.1
    """
@_overload
def ordering_cost(quantity: _Value | _Array, demand: _Value | _Array, ordering: _Value | _Array, holding: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def ordering_cost(quantity: _Value | _Array | _Column, demand: _Value | _Array | _Column, ordering: _Value | _Array | _Column, holding: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def ounces_to_declare(net: _Value) -> float:
    """Ounces of a US declaration, all in ounces: down to two decimals. `net_weight_us` writes it out.

    >>> ounces_to_declare(net=227)
    8.0

    Parameters
    ----------
    net : 5 to 25000 g
        net weight to declare: wax and oil, no vessel, lid or wick tab

    Returns
    -------
    0 to 1000
        ounces to declare, rounded down

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    15 U.S.C. 1453(a)(3); 16 CFR 500.19; under a pound in ounces: 16 CFR 500.9, from memory; down, never up: a NIST fact sheet, second-hand; two decimals: American Samoa, Admin. Code 27.0632
    """
@_overload
def ounces_to_declare(net: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def ounces_to_declare(net: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def overhead_cost(minutes: _Value, rate: _Value) -> float:
    """Overhead on working time, at a rate per hour.

    >>> overhead_cost(minutes=90, rate=2.5)
    3.75

    Parameters
    ----------
    minutes : 0 to 1000000 min
        working time
    rate : 0 or more money per h
        money for an hour of work

    Returns
    -------
    0 or more
        an amount of money

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    predetermined overhead rate: OpenStax, Managerial Accounting 4.4
    """
@_overload
def overhead_cost(minutes: _Value | _Array, rate: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def overhead_cost(minutes: _Value | _Array | _Column, rate: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def overhead_rate(overhead: _Value, activity: _Value) -> float:
    """Overhead for each hour of work, from a budget for the season and the hours it is spread over.

    >>> overhead_rate(overhead=600, activity=240)
    2.5

    Parameters
    ----------
    overhead : 0 or more
        budget for overhead over the time
    activity : more than 0, at most 1000000 h
        hours of work over the same time

    Returns
    -------
    0 or more money per h
        money for an hour of work

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    predetermined overhead rate: OpenStax, Managerial Accounting 4.4
    """
@_overload
def overhead_rate(overhead: _Value | _Array, activity: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def overhead_rate(overhead: _Value | _Array | _Column, activity: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def overhead_uncharged(actual: _Value, charged: _Value) -> float:
    """Overhead that was paid and not charged to candles by its rate; minus where more was charged.

    It is added to cost of goods sold when the period is closed.

    >>> overhead_uncharged(actual=256500, charged=250000)
    6500.0

    Parameters
    ----------
    actual : 0 or more
        overhead of making that was paid
    charged : 0 or more
        overhead that was charged to candles by its rate

    Returns
    -------
    any amount
        overhead that was not charged to candles; minus where too much was

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    job cost: OpenStax, Managerial Accounting, chapter 4
    """
@_overload
def overhead_uncharged(actual: _Value | _Array, charged: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def overhead_uncharged(actual: _Value | _Array | _Column, charged: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def own_minutes(minutes: _Value, share: _Value) -> float:
    """Working minutes of the maker's own, where `share` of the time is paid help.

    >>> own_minutes(minutes=10, share=0.25)
    7.5

    Parameters
    ----------
    minutes : 0 to 1000000 min
        working time
    share : 0 to 1 of the time
        share of the working time that is paid help

    Returns
    -------
    0 to 1000000 min
        working time

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    algebra from the definitions
    """
@_overload
def own_minutes(minutes: _Value | _Array, share: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def own_minutes(minutes: _Value | _Array | _Column, share: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def packages_to_weigh(batch: _Value) -> float:
    """How many packages of a batch the EU and GB test weighs without opening them; all of a small batch.

    >>> packages_to_weigh(batch=400)
    50.0

    Parameters
    ----------
    batch : whole numbers 1 to 1000000
        how many packages the batch has

    Returns
    -------
    whole numbers 1 to 1000000
        how many packages to weigh

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    UK SI 2006/659, Schedule 2, 3 and 4; Directive 76/211/EEC, Annex II
    """
@_overload
def packages_to_weigh(batch: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def packages_to_weigh(batch: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def packs_at_breaks(packs: _Value, price: _Value, first: _Value, first_price: _Value, second: _Value, second_price: _Value) -> float:
    """How many packs to buy once where larger orders are cheaper: what costs least, and no fewer than are needed.

    A price holds for all packs of the order. Where two numbers cost the same, the
    smaller one is given. Where there is only one break, give it twice.

    >>> packs_at_breaks(packs=9, price=10, first=10, first_price=8, second=25, second_price=7.5)
    10.0

    Parameters
    ----------
    packs : whole numbers 0 to 1000000
        whole packs that are needed at least
    price : 0 or more
        price of a pack
    first : whole numbers 0 to 1000000
        the first break
    first_price : 0 or more
        from the first break on
    second : whole numbers 0 to 1000000
        the second break
    second_price : 0 or more
        from the second break on

    Returns
    -------
    whole numbers 0 to 1000000
        how many packs

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: a larger order must not be dearer by the pack.
        With the words: a still larger order must not be dearer by the pack.
        With the words: the second break must not come before the first.

    References
    ----------
    algebra from the definitions
    """
@_overload
def packs_at_breaks(packs: _Value | _Array, price: _Value | _Array, first: _Value | _Array, first_price: _Value | _Array, second: _Value | _Array, second_price: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def packs_at_breaks(packs: _Value | _Array | _Column, price: _Value | _Array | _Column, first: _Value | _Array | _Column, first_price: _Value | _Array | _Column, second: _Value | _Array | _Column, second_price: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def packs_to_buy(needed: _Value, pack: _Value, on_hand: _Value = 0.0) -> float:
    """Whole packs to buy for what is needed and not on hand.

    >>> packs_to_buy(needed=7300, pack=2500, on_hand=1000)
    3.0

    Parameters
    ----------
    needed : 0 or more
        how much is needed
    pack : more than 0
        how much a pack holds, in the same unit
    on_hand : 0 or more; 0.0 if left out
        how much is on hand

    Returns
    -------
    whole numbers 0 to 1000000
        how many packs

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    common practice, no source
    """
@_overload
def packs_to_buy(needed: _Value | _Array, pack: _Value | _Array, on_hand: _Value | _Array = 0.0) -> _npt.NDArray[_np.float64]: ...
@_overload
def packs_to_buy(needed: _Value | _Array | _Column, pack: _Value | _Array | _Column, on_hand: _Value | _Array | _Column = 0.0) -> _pd.Series[float]: ...
@_overload
def paid_minutes(minutes: _Value, share: _Value) -> float:
    """Working minutes that are paid help, by their share of the time.

    >>> paid_minutes(minutes=10, share=0.25)
    2.5

    Parameters
    ----------
    minutes : 0 to 1000000 min
        working time
    share : 0 to 1 of the time
        share of the working time that is paid help

    Returns
    -------
    0 to 1000000 min
        working time

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    algebra from the definitions
    """
@_overload
def paid_minutes(minutes: _Value | _Array, share: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def paid_minutes(minutes: _Value | _Array | _Column, share: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def panel_area(height: _Value, around: _Value, shape: _Literal["flat", "round", "round lid"] = 'round') -> float:
    """Area of the principal display panel: the whole of a flat side, two fifths of the side of a round package.

    Lids, bottoms, shoulders and necks are left out, unless the buyer looks at the
    lid first: then all of it is the panel, a round one by how far it is across both ways.

    >>> panel_area(height=90, around=250)
    90.0

    Parameters
    ----------
    height : 10 to 2000 mm
        height of the side that is shown; of a lid how far it is across
    around : 15 to 5000 mm
        width of a flat side; of a round package all the way around; of a lid how far it is across the other way
    shape : "flat" or "round" or "round lid"; 'round' if left out
        a flat side or lid of the package, the side of a round one, or a round lid that the buyer sees first

    Returns
    -------
    0 to 1000000 cm2
        area of the side that is shown to the buyer

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    16 CFR 500.21(a)
    """
@_overload
def panel_area(height: _Value | _Array, around: _Value | _Array, shape: _Literal["flat", "round", "round lid"] | _Words = 'round') -> _npt.NDArray[_np.float64]: ...
@_overload
def panel_area(height: _Value | _Array | _Column, around: _Value | _Array | _Column, shape: _Literal["flat", "round", "round lid"] | _Words | _Column = 'round') -> _pd.Series[float]: ...
def parts_cost(amounts: _Cells, costs: _Cells) -> float:
    """Cost of several parts: how much of each, at its unit cost.

    >>> parts_cost(amounts=[200, 16, 1], costs=[0.01, 0.05, 1.25])
    4.05

    Parameters
    ----------
    amounts : list, each 0 or more
        how much of each part, in the unit its cost is per
    costs : list, each 0 or more money per unit
        cost of one unit of each part

    Returns
    -------
    0 or more
        an amount of money

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    job cost: OpenStax, Managerial Accounting, chapter 4
    """
@_overload
def per_carton(carton_length: _Value, carton_width: _Value, carton_height: _Value, length: _Value, width: _Value, height: _Value) -> float:
    """Packed candles that a carton takes, all upright and all turned the same way.

    It says nothing of how many layers glass can bear, nor of what the carton may
    weigh.

    >>> per_carton(carton_length=310, carton_width=220, carton_height=130, length=100, width=100, height=120)
    6.0

    Parameters
    ----------
    carton_length : 10 to 5000 mm
        length of the carton, inside
    carton_width : 10 to 5000 mm
        width of the carton, inside
    carton_height : 10 to 5000 mm
        height of the carton, inside
    length : 10 to 5000 mm
        length of one packed candle, wrapping with it
    width : 10 to 5000 mm
        width of one packed candle, wrapping with it
    height : 10 to 5000 mm
        height of one packed candle as it stands

    Returns
    -------
    whole numbers 0 to 1000000
        how many candles

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    common practice, no source
    """
@_overload
def per_carton(carton_length: _Value | _Array, carton_width: _Value | _Array, carton_height: _Value | _Array, length: _Value | _Array, width: _Value | _Array, height: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def per_carton(carton_length: _Value | _Array | _Column, carton_width: _Value | _Array | _Column, carton_height: _Value | _Array | _Column, length: _Value | _Array | _Column, width: _Value | _Array | _Column, height: _Value | _Array | _Column) -> _pd.Series[float]: ...
def period_entries(bought: _Value, used: _Value, labour: _Value, overhead: _Value, made: _Value, sold: _Value, sales: _Value, tax: _Value = 0.0, fees: _Value = 0.0, short: _Value = 0.0) -> list[_EntryLine]:
    """Balanced journal entries for a period's figures, from materials bought to candles sold.

    All is taken as paid in the period; a bookkeeper puts what is owed in
    place of cash. Overhead is what was paid and charged to candles alike.

    >>> period_entries(bought=0, used=0, labour=0, overhead=0, made=0, sold=0, sales=300, fees=15)[1].account
    'selling fees'

    Parameters
    ----------
    bought : 0 or more
        bought in the period, less returns and discounts, freight in with it
    used : 0 or more
        materials used in the period
    labour : 0 or more
        paid labour of making; nothing for the maker's own time
    overhead : 0 or more
        overhead of making
    made : 0 or more
        cost of goods made
    sold : 0 or more
        cost of goods, over the period
    sales : 0 or more
        sales of the period, before tax
    tax : 0 or more; 0.0 if left out
        sales tax or VAT charged on them, owed to the tax office
    fees : 0 or more; 0.0 if left out
        fees that places and card companies kept back
    short : 0 or more; 0.0 if left out
        cost of what the count found missing

    Returns
    -------
    list, each a row of event, account, debit, credit
        A line of an entry: what happened, the account, and the amount on one side.
    event : text
        what happened
    account : text
        the account
    debit : 0 or more or blank
        amount on the debit side
    credit : 0 or more or blank
        amount on the credit side

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    double entry: OpenStax, Financial Accounting, chapters 3 and 6; Managerial Accounting 4.7
    """
@_overload
def pieces_for(each: _Value, count: _Value) -> float:
    """Pieces to count out for a batch.

    >>> pieces_for(each=2, count=24)
    48.0

    Parameters
    ----------
    each : whole numbers 0 to 1000000
        pieces that one candle takes
    count : whole numbers 0 to 1000000
        how many candles to make

    Returns
    -------
    whole numbers 0 to 1000000
        how many pieces

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    algebra from the definitions
    """
@_overload
def pieces_for(each: _Value | _Array, count: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def pieces_for(each: _Value | _Array | _Column, count: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def pieces_from_mould(wax: _Value, load: _Value, cavity: _Value, density: _Value) -> float:
    """Whole pieces, such as wax melts, from one melt: wax and oil divided by what one mould cavity holds.

    A cavity that you have weighed filled beats this figure.

    >>> pieces_from_mould(wax=1000, load=0.08, cavity=15, density=0.9)
    80.0

    Parameters
    ----------
    wax : 0 or more g
        wax in the melt, before any oil
    load : 0 to 0.5 of wax weight
        fragrance load: oil as a share of wax weight (8% is 0.08)
    cavity : more than 0, at most 10000 ml
        what one cavity of the mould holds
    density : 0.5 to 1.5 g/ml
        weight of a millilitre of the wax, at the temperature it is filled

    Returns
    -------
    whole numbers 0 to 1000000
        how many pieces

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    common practice, no source
    """
@_overload
def pieces_from_mould(wax: _Value | _Array, load: _Value | _Array, cavity: _Value | _Array, density: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def pieces_from_mould(wax: _Value | _Array | _Column, load: _Value | _Array | _Column, cavity: _Value | _Array | _Column, density: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def plan_cost(sales: _Cells, made: _Cells, making: _Value, keeping: _Value = 0.0, raising: _Value = 0.0, lowering: _Value = 0.0, usual: _Value | None = None, opening: _Value = 0.0) -> float:
    """What a plan costs: making, keeping what is left over, and making more or fewer than the time before.

    >>> plan_cost(sales=[80, 50, 120, 150], made=[100, 100, 100, 100], making=2, keeping=0.5)
    870.0

    Parameters
    ----------
    sales : list, each 0 or more
        how much is wanted in each week or month, in order
    made : list, each 0 or more
        how much is made in each week or month, in order
    making : 0 or more money per unit
        what making one costs
    keeping : 0 or more money per unit; 0.0 if left out
        what keeping one from a week or month to the next costs
    raising : 0 or more money per unit; 0.0 if left out
        what it costs to make one more than in the week or month before, such as finding help
    lowering : 0 or more money per unit; 0.0 if left out
        what it costs to make one fewer than in the week or month before
    usual : 0 or more or blank; None if left out
        how much was made in the one before the first; blank if starting costs nothing
    opening : 0 or more; 0.0 if left out
        how much is there at the start

    Returns
    -------
    0 or more
        an amount of money

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    level and chase plans: a textbook exercise with its answers, second-hand (homeworkhost 454395)
    """
@_overload
def plan_cost(sales: _Cells, made: _Cells, making: _Value | _Array, keeping: _Value | _Array = 0.0, raising: _Value | _Array = 0.0, lowering: _Value | _Array = 0.0, usual: _Value | _Array | None = None, opening: _Value | _Array = 0.0) -> _npt.NDArray[_np.float64]: ...
@_overload
def plan_cost(sales: _Cells, made: _Cells, making: _Value | _Array | _Column, keeping: _Value | _Array | _Column = 0.0, raising: _Value | _Array | _Column = 0.0, lowering: _Value | _Array | _Column = 0.0, usual: _Value | _Array | _Column | None = None, opening: _Value | _Array | _Column = 0.0) -> _pd.Series[float]: ...
def pool_forecast(hours: _Cells, widths: _Cells, diameter: _Value) -> _PoolForecast:
    """How the melt pool grows and when it reaches the wall, with the usual expectation beside it.

    >>> round(pool_forecast(hours=[0.5, 1, 1.5, 2], widths=[28, 41, 52, 61], diameter=75).usual, 1)
    3.0

    Parameters
    ----------
    hours : list, each 0 to 1000 h
        hours since lighting, at each reading
    widths : list, each 0 to 1000 mm
        how wide the melt pool was then, up to the wall
    diameter : 10 to 2000 mm
        how far the vessel is across inside

    Returns
    -------
    a row of growth, reaches, usual, note
        A melt pool on its way to the wall, what is usual beside it, and what to know.
    growth : more than 0 mm/h
        how much wider the melt pool gets in an hour
    reaches : 0 or more h
        hours from lighting until the melt pool reaches the wall
    usual : 0 or more h
        hours from lighting until the melt pool reaches the wall
    note : text
        what to know about it

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: two readings at different hours, at least, are wanted.
        With the words: the pool must grow as the hours do: leave out readings taken once it had reached the wall.
        With the words: the pool cannot be wider than the vessel.

    References
    ----------
    straight line by least squares, interval of its slope: NIST StRD (Norris), ISO/TS 28037 by its examples; an hour for each inch: common practice, no source
    """
def pool_growth(hours: _Cells, widths: _Cells) -> float:
    """How much wider the melt pool gets in an hour, from readings of one burn on its way to the wall.

    >>> round(pool_growth(hours=[0.5, 1, 1.5, 2], widths=[28, 41, 52, 61]), 1)
    22.0

    Parameters
    ----------
    hours : list, each 0 to 1000 h
        hours since lighting, at each reading
    widths : list, each 0 to 1000 mm
        how wide the melt pool was then, up to the wall

    Returns
    -------
    more than 0 mm/h
        how much wider the melt pool gets in an hour

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: two readings at different hours, at least, are wanted.
        With the words: the pool must grow as the hours do: leave out readings taken once it had reached the wall.

    References
    ----------
    straight line by least squares, interval of its slope: NIST StRD (Norris), ISO/TS 28037 by its examples
    """
@_overload
def pool_time(hours: _Cells, widths: _Cells, diameter: _Value) -> float:
    """Hours from lighting until the melt pool reaches the wall, on the straight line through the readings.

    Pools grow more slowly towards the wall: a reading near it tells more than a long
    line.

    >>> round(pool_time(hours=[0.5, 1, 1.5, 2], widths=[28, 41, 52, 61], diameter=75), 1)
    2.6

    Parameters
    ----------
    hours : list, each 0 to 1000 h
        hours since lighting, at each reading
    widths : list, each 0 to 1000 mm
        how wide the melt pool was then, up to the wall
    diameter : 10 to 2000 mm
        how far the vessel is across inside

    Returns
    -------
    0 or more h
        hours from lighting until the melt pool reaches the wall

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: two readings at different hours, at least, are wanted.
        With the words: the pool must grow as the hours do: leave out readings taken once it had reached the wall.
        With the words: the pool cannot be wider than the vessel.

    References
    ----------
    straight line by least squares, interval of its slope: NIST StRD (Norris), ISO/TS 28037 by its examples
    """
@_overload
def pool_time(hours: _Cells, widths: _Cells, diameter: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def pool_time(hours: _Cells, widths: _Cells, diameter: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def pots_for_candles(count: _Value, each: _Value, pot: _Value) -> float:
    """Pots to melt for a batch where no candle is filled from two of them.

    Each pot is for whole candles, so it may take more pots than the wax alone
    would: three candles to a pot that has room for three and a half.

    >>> pots_for_candles(count=24, each=220, pot=800)
    8.0

    Parameters
    ----------
    count : whole numbers 0 to 1000000
        how many candles to make
    each : 0 or more g
        what goes into one candle, in any unit, the same for all
    pot : 0 or more g
        the most that a pot holds, in any unit, the same for all

    Returns
    -------
    whole numbers 0 to 1000000
        how many pots

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: each must be more than 0.
        With the words: the pot must hold one candle at least.
        With the words: no pot holds more than 100,000 candles.

    References
    ----------
    common practice, no source
    """
@_overload
def pots_for_candles(count: _Value | _Array, each: _Value | _Array, pot: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def pots_for_candles(count: _Value | _Array | _Column, each: _Value | _Array | _Column, pot: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def pots_needed(melt: _Value, pot: _Value) -> float:
    """How many pots a melt fills, from the most a pot holds; the last may not be full.

    >>> pots_needed(melt=7040, pot=3200)
    3.0

    Parameters
    ----------
    melt : 0 or more g
        the whole melt, wax and oil, in any unit, the same for all
    pot : 0 or more g
        the most that a pot holds, in any unit, the same for all

    Returns
    -------
    whole numbers 0 to 1000000
        how many pots

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: the pot must hold more than 0.

    References
    ----------
    common practice, no source
    """
@_overload
def pots_needed(melt: _Value | _Array, pot: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def pots_needed(melt: _Value | _Array | _Column, pot: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def pots_with_one_fewer(count: _Value, pots: _Value) -> float:
    """Pots that are for one candle fewer than `candles_a_pot` says; none where the batch comes out even.

    >>> pots_with_one_fewer(count=50, pots=8)
    6.0

    Parameters
    ----------
    count : whole numbers 0 to 1000000
        how many candles to make
    pots : whole numbers 0 to 1000000
        how many pots

    Returns
    -------
    whole numbers 0 to 1000000
        how many pots

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: pots must be more than 0.

    References
    ----------
    algebra from the definitions
    """
@_overload
def pots_with_one_fewer(count: _Value | _Array, pots: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def pots_with_one_fewer(count: _Value | _Array | _Column, pots: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def pour_by(sale: _Day, cure: _Value, evenings: _Value = 1.0, finishing: _Value = 0.0) -> _date:
    """The last day to start pouring for a market or an order, working Monday to Friday.

    Back from the day of sale: the working days to label and pack, all before
    it; then the days of cure, weekends too; then the evenings of pouring. The
    last pour is on the last working day that leaves its cure. Saturdays and
    Sundays are left out: if you pour then too, or are away on some days, use
    `pour_by_own_days`.

    >>> pour_by(sale="2026-12-05", cure=14, evenings=3, finishing=2).isoformat()
    '2026-11-17'

    Parameters
    ----------
    sale : a date such as "2026-03-14"
        the day it is to be sold or sent
    cure : whole numbers 0 to 365 days
        days that candles rest between pouring and finishing
    evenings : whole numbers 1 to 365; 1.0 if left out
        working days or evenings that the pouring takes
    finishing : whole numbers 0 to 365 days; 0.0 if left out
        working days to label, pack and carry before that day

    Returns
    -------
    a date such as "2026-03-14"
        the last day on which pouring can start

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    Notes
    -----
    - counted Monday to Friday; for Saturdays, Sundays or days off use pour_by_own_days.

    References
    ----------
    days of the calendar
    """
@_overload
def pour_by(sale: _Day | _Days, cure: _Value | _Array, evenings: _Value | _Array = 1.0, finishing: _Value | _Array = 0.0) -> _npt.NDArray[_np.datetime64]: ...
@_overload
def pour_by(sale: _Day | _Days | _Column, cure: _Value | _Array | _Column, evenings: _Value | _Array | _Column = 1.0, finishing: _Value | _Array | _Column = 0.0) -> _pd.Series[_pd.Timestamp]: ...
@_overload
def pour_by_own_days(sale: _Day, cure: _Value, working: str, evenings: _Value = 1.0, finishing: _Value = 0.0, closed: _Cells | None = None) -> _date:
    """The last day to start pouring for a market or an order, on the days that you work.

    Counted as in `pour_by`, with your own week and the days that you are away.

    >>> pour_by_own_days(sale="2026-12-05", cure=14, working="Tue Thu Sat", evenings=3).isoformat()
    '2026-11-17'

    Parameters
    ----------
    sale : a date such as "2026-03-14"
        the day it is to be sold or sent
    cure : whole numbers 0 to 365 days
        days that candles rest between pouring and finishing
    working : text
        the days you work: "Mon-Fri", "Tue Thu Sat", "weekends", "every day"
    evenings : whole numbers 1 to 365; 1.0 if left out
        working days or evenings that the pouring takes
    finishing : whole numbers 0 to 365 days; 0.0 if left out
        working days to label, pack and carry before that day
    closed : list, each a date such as "2026-03-14" or blank; None if left out
        days on which you do not work all the same

    Returns
    -------
    a date such as "2026-03-14"
        the last day on which pouring can start

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    days of the calendar
    """
@_overload
def pour_by_own_days(sale: _Day | _Days, cure: _Value | _Array, working: str | _Words, evenings: _Value | _Array = 1.0, finishing: _Value | _Array = 0.0, closed: _Cells | None = None) -> _npt.NDArray[_np.datetime64]: ...
@_overload
def pour_by_own_days(sale: _Day | _Days | _Column, cure: _Value | _Array | _Column, working: str | _Words | _Column, evenings: _Value | _Array | _Column = 1.0, finishing: _Value | _Array | _Column = 0.0, closed: _Cells | None = None) -> _pd.Series[_pd.Timestamp]: ...
@_overload
def price_at_breaks(packs: _Value, price: _Value, first: _Value, first_price: _Value, second: _Value, second_price: _Value) -> float:
    """The price of each pack in an order of so many, where larger orders are cheaper.

    >>> price_at_breaks(packs=10, price=10, first=10, first_price=8, second=25, second_price=7.5)
    8.0

    Parameters
    ----------
    packs : whole numbers 0 to 1000000
        whole packs that are needed at least
    price : 0 or more
        price of a pack
    first : whole numbers 0 to 1000000
        the first break
    first_price : 0 or more
        from the first break on
    second : whole numbers 0 to 1000000
        the second break
    second_price : 0 or more
        from the second break on

    Returns
    -------
    0 or more
        price of a pack

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: a larger order must not be dearer by the pack.
        With the words: a still larger order must not be dearer by the pack.
        With the words: the second break must not come before the first.

    References
    ----------
    algebra from the definitions
    """
@_overload
def price_at_breaks(packs: _Value | _Array, price: _Value | _Array, first: _Value | _Array, first_price: _Value | _Array, second: _Value | _Array, second_price: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def price_at_breaks(packs: _Value | _Array | _Column, price: _Value | _Array | _Column, first: _Value | _Array | _Column, first_price: _Value | _Array | _Column, second: _Value | _Array | _Column, second_price: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def price_for_margin(cost: _Value, margin: _Value, fee: _Value = 0.0, fixed: _Value = 0.0, tax: _Value = 0.0, basis: _Literal["net", "gross"] = 'net', least: _Value = 0.0) -> float:
    """Price before tax that leaves a wanted margin after the place has taken its fees.

    The fee is a share of the price before tax ("net") or of what the buyer pays
    with tax ("gross"); `least` is the smallest fee a candle is charged.

    >>> price_for_margin(cost=6, margin=0.5, fee=0.1, fixed=0.45)
    16.125

    Parameters
    ----------
    cost : 0 or more
        what the candle costs
    margin : 0 to 0.99 of the price
        profit as a share of the price before tax
    fee : 0 to 0.95 of the price; 0.0 if left out
        what the place keeps of the price
    fixed : any amount; 0.0 if left out
        what a sale costs in fixed sums, not shares: fees, packing, postage; minus if the buyer pays more
    tax : 0 to 1 of the price before tax; 0.0 if left out
        rate of sales tax or VAT
    basis : "net" or "gross"; 'net' if left out
        what the fee is a share of: the price before tax (net) or with tax (gross)
    least : 0 or more; 0.0 if left out
        the smallest fee that a candle is charged

    Returns
    -------
    0 or more
        price before tax

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: margin and fee together must stay below 1.
        With the words: what the buyer pays for postage must not be more than the cost.

    References
    ----------
    algebra from the definitions
    """
@_overload
def price_for_margin(cost: _Value | _Array, margin: _Value | _Array, fee: _Value | _Array = 0.0, fixed: _Value | _Array = 0.0, tax: _Value | _Array = 0.0, basis: _Literal["net", "gross"] | _Words = 'net', least: _Value | _Array = 0.0) -> _npt.NDArray[_np.float64]: ...
@_overload
def price_for_margin(cost: _Value | _Array | _Column, margin: _Value | _Array | _Column, fee: _Value | _Array | _Column = 0.0, fixed: _Value | _Array | _Column = 0.0, tax: _Value | _Array | _Column = 0.0, basis: _Literal["net", "gross"] | _Words | _Column = 'net', least: _Value | _Array | _Column = 0.0) -> _pd.Series[float]: ...
@_overload
def price_from_markup(cost: _Value, markup: _Value) -> float:
    """Price before tax from a markup on cost.

    >>> price_from_markup(cost=750, markup=0.45)
    1087.5

    Parameters
    ----------
    cost : 0 or more
        what the candle costs
    markup : 0 to 10 of cost
        what is added to the cost, as a share of the cost

    Returns
    -------
    0 or more
        price before tax

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    markup, discount and sales tax: OpenStax, Contemporary Mathematics 6.2
    """
@_overload
def price_from_markup(cost: _Value | _Array, markup: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def price_from_markup(cost: _Value | _Array | _Column, markup: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def price_received(shelf: _Value, discount: _Value, tax: _Value, stated: _Literal["with tax", "before tax"]) -> float:
    """What a stated price leaves you before tax: less the discount, and less any tax included.

    >>> price_received(shelf=24, discount=0.5, tax=0.2, stated="with tax")
    10.0

    Parameters
    ----------
    shelf : 0 or more
        price as the place states it, with tax in it or not
    discount : 0 to 0.99 of the price
        what is taken off the price
    tax : 0 to 1 of the price before tax
        rate of sales tax or VAT
    stated : "with tax" or "before tax"
        whether the place states its prices with tax in them

    Returns
    -------
    0 or more
        price before tax

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    markup, discount and sales tax: OpenStax, Contemporary Mathematics 6.2
    """
@_overload
def price_received(shelf: _Value | _Array, discount: _Value | _Array, tax: _Value | _Array, stated: _Literal["with tax", "before tax"] | _Words) -> _npt.NDArray[_np.float64]: ...
@_overload
def price_received(shelf: _Value | _Array | _Column, discount: _Value | _Array | _Column, tax: _Value | _Array | _Column, stated: _Literal["with tax", "before tax"] | _Words | _Column) -> _pd.Series[float]: ...
@_overload
def price_to_match(price: _Value, weight: _Value, own: _Value) -> float:
    """Price at which yours costs as much for its weight as another candle does.

    It says nothing of what yours costs to make: see `lowest_price`.

    >>> price_to_match(price=20, weight=200, own=250)
    25.0

    Parameters
    ----------
    price : 0 or more
        price of the other candle
    weight : more than 0, at most 25000 g
        net weight of the other candle
    own : more than 0, at most 25000 g
        net weight of yours

    Returns
    -------
    0 or more
        price of yours, with tax in it if the other's has

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    algebra from the definitions
    """
@_overload
def price_to_match(price: _Value | _Array, weight: _Value | _Array, own: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def price_to_match(price: _Value | _Array | _Column, weight: _Value | _Array | _Column, own: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def price_to_state(price: _Value, discount: _Value, tax: _Value, stated: _Literal["with tax", "before tax"]) -> float:
    """Price to state so that a wanted price before tax is received: the inverse of `price_received`.

    >>> price_to_state(price=10, discount=0.5, tax=0.2, stated="with tax")
    24.0

    Parameters
    ----------
    price : 0 or more
        price before tax
    discount : 0 to 0.99 of the price
        what is taken off the price
    tax : 0 to 1 of the price before tax
        rate of sales tax or VAT
    stated : "with tax" or "before tax"
        whether the place states its prices with tax in them

    Returns
    -------
    0 or more
        price as the place states it, with tax in it or not

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    markup, discount and sales tax: OpenStax, Contemporary Mathematics 6.2
    """
@_overload
def price_to_state(price: _Value | _Array, discount: _Value | _Array, tax: _Value | _Array, stated: _Literal["with tax", "before tax"] | _Words) -> _npt.NDArray[_np.float64]: ...
@_overload
def price_to_state(price: _Value | _Array | _Column, discount: _Value | _Array | _Column, tax: _Value | _Array | _Column, stated: _Literal["with tax", "before tax"] | _Words | _Column) -> _pd.Series[float]: ...
@_overload
def prism_volume(sides: _Value, side: _Value, height: _Value, base: _Value = 0.0) -> float:
    """Volume of an upright vessel of equal sides: six for a hexagon jar.

    A floor that is not flat is taken as a round cap that touches every side.

    >>> round(prism_volume(sides=6, side=35, height=80), 1)
    254.6

    Parameters
    ----------
    sides : whole numbers 3 to 100
        how many equal sides the vessel has
    side : 5 to 2000 mm
        inside length of one of its sides
    height : 10 to 2000 mm
        how deep the vessel is inside, up to the brim or the mark
    base : -200 to 200 mm; 0.0 if left out
        how high the floor is pushed up at its middle; minus where it bulges down

    Returns
    -------
    0 or more ml
        a volume inside a vessel

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: the floor cannot rise above the fill.

    References
    ----------
    elementary geometry; OpenStax, Prealgebra 2e (cylinder) and Calculus (solids cut across)
    """
@_overload
def prism_volume(sides: _Value | _Array, side: _Value | _Array, height: _Value | _Array, base: _Value | _Array = 0.0) -> _npt.NDArray[_np.float64]: ...
@_overload
def prism_volume(sides: _Value | _Array | _Column, side: _Value | _Array | _Column, height: _Value | _Array | _Column, base: _Value | _Array | _Column = 0.0) -> _pd.Series[float]: ...
@_overload
def profit_at(price: _Value, cost: _Value, fees: _Value = 0.0) -> float:
    """Profit on a candle at a price before tax, after its cost and all the place's fees.

    >>> profit_at(price=16.5, cost=6, fees=2)
    8.5

    Parameters
    ----------
    price : 0 or more
        price before tax
    cost : 0 or more
        what the candle costs
    fees : any amount; 0.0 if left out
        all that the place takes of this price and this sale

    Returns
    -------
    any amount
        an amount of money; minus for a credit or a loss

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    algebra from the definitions
    """
@_overload
def profit_at(price: _Value | _Array, cost: _Value | _Array, fees: _Value | _Array = 0.0) -> _npt.NDArray[_np.float64]: ...
@_overload
def profit_at(price: _Value | _Array | _Column, cost: _Value | _Array | _Column, fees: _Value | _Array | _Column = 0.0) -> _pd.Series[float]: ...
@_overload
def rate_of_one_burn(before: _Value, after: _Value, hours: _Value) -> float:
    """Rate of burning from one pair of weighings; it comes without an interval.

    Two weighings cannot say how far the rate may be off: weigh more often and
    use `burn_rate_between`.

    >>> rate_of_one_burn(before=612, after=596, hours=4)
    4.0

    Parameters
    ----------
    before : 0 or more g
        what the candle weighed before the burn, jar and all
    after : 0 or more g
        what it weighed after the burn, jar and all
    hours : more than 0, at most 1000000 h
        hours of burning

    Returns
    -------
    more than 0, at most 1000000 g/h
        wax burnt in an hour

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: it must weigh less after the burn than before.

    References
    ----------
    algebra from the definitions
    """
@_overload
def rate_of_one_burn(before: _Value | _Array, after: _Value | _Array, hours: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def rate_of_one_burn(before: _Value | _Array | _Column, after: _Value | _Array | _Column, hours: _Value | _Array | _Column) -> _pd.Series[float]: ...
def rates_of_candles(rates: _Cells, confidence: _Value = 0.95) -> _CandlesBetween:
    """The mean rate of burning of several candles of one recipe, its interval, and that of the next candle.

    >>> rates_of_candles(rates=[4.0, 4.3]).note
    '95 % intervals, 2 candles: test at least three'

    Parameters
    ----------
    rates : list, each more than 0, at most 1000000 g/h
        rate of burning of each candle of one recipe
    confidence : 0.5 to 0.999 of the time; 0.95 if left out
        how often such an interval is to be right

    Returns
    -------
    a row of mean, low, high, next_low, next_high, note
        The mean rate of several candles, and where the mean and the next candle lie.
    mean : more than 0, at most 1000000 g/h
        wax burnt in an hour
    low : any amount g/h
        an end of the interval that the rate lies in; below 0 the log is too rough
    high : any amount g/h
        an end of the interval that the rate lies in; below 0 the log is too rough
    next_low : any amount g/h
        an end of the interval that the rate lies in; below 0 the log is too rough
    next_high : any amount g/h
        an end of the interval that the rate lies in; below 0 the log is too rough
    note : text
        what to know about it

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: the rates of two candles at least are wanted.

    References
    ----------
    interval of a mean: OpenStax, Introductory Statistics 2e, confidence intervals; of one more, from memory
    """
@_overload
def ready_on(poured: _Day, cure: _Value) -> _date:
    """The day on which candles have cured: ready to label, to test or to sell.

    How long a wax and an oil need is your supplier's advice and your own tests.

    >>> ready_on(poured="2026-11-17", cure=14).isoformat()
    '2026-12-01'

    Parameters
    ----------
    poured : a date such as "2026-03-14"
        the day on which they were poured
    cure : whole numbers 0 to 365 days
        days that candles rest between pouring and finishing

    Returns
    -------
    a date such as "2026-03-14"
        the day on which they have cured

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    days of the calendar
    """
@_overload
def ready_on(poured: _Day | _Days, cure: _Value | _Array) -> _npt.NDArray[_np.datetime64]: ...
@_overload
def ready_on(poured: _Day | _Days | _Column, cure: _Value | _Array | _Column) -> _pd.Series[_pd.Timestamp]: ...
def recipe_verdict(verdicts: _Cells) -> _Judged:
    """What the test burns of one recipe come to together: at least three pieces judged, none of them a stop.

    >>> recipe_verdict(verdicts=["meets the maker's targets", "meets the maker's targets"]).reasons
    '2 pieces judged; at least 3 are wanted'

    Parameters
    ----------
    verdicts : list, each "stop: do not sell or burn" or "not judged" or "misses the maker's targets" or "meets the maker's targets"
        the verdict on each piece burnt of one recipe

    Returns
    -------
    a row of verdict, reasons
        What a test or a recipe comes to, and why.
    verdict : "stop: do not sell or burn" or "not judged" or "misses the maker's targets" or "meets the maker's targets"
        what the test comes to
    reasons : text
        why, in words

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    common practice, no source: one thing is changed at a time, and a single piece proves nothing
    """
@_overload
def reorder_point(demand: _Value, lead_time: _Value, risk: _Value, spread: _Value = 0.0, lead_spread: _Value = 0.0) -> float:
    """Order again when this much is left: what is used until the order comes, and the buffer.

    Count what is already on order as if it were there. Demand and the time an
    order takes are in one unit of time.

    >>> round(reorder_point(demand=40, lead_time=2, risk=0.05, spread=6), 2)
    93.96

    Parameters
    ----------
    demand : 0 or more
        how much is used or sold in a day or a week on average
    lead_time : 0 to 10000
        days or weeks from ordering to having it, in the unit of demand
    risk : more than 0, at most 0.5 of the orders
        share of orders during which running out is accepted
    spread : 0 or more; 0.0 if left out
        standard deviation of what is used or sold in a day or a week; 0 if it is steady
    lead_spread : 0 or more; 0.0 if left out
        standard deviation of the days or weeks that an order takes; 0 if they are always the same

    Returns
    -------
    0 or more
        how much to have, in the unit that demand is in

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    reorder point with demand and lead time normal: Stevenson, Operations Management, 14th edition, chapter 12
    """
@_overload
def reorder_point(demand: _Value | _Array, lead_time: _Value | _Array, risk: _Value | _Array, spread: _Value | _Array = 0.0, lead_spread: _Value | _Array = 0.0) -> _npt.NDArray[_np.float64]: ...
@_overload
def reorder_point(demand: _Value | _Array | _Column, lead_time: _Value | _Array | _Column, risk: _Value | _Array | _Column, spread: _Value | _Array | _Column = 0.0, lead_spread: _Value | _Array | _Column = 0.0) -> _pd.Series[float]: ...
@_overload
def retail_from_wholesale(wholesale: _Value, share: _Value) -> float:
    """Retail price at which a shop keeps its share, from the wholesale price that you charge it.

    A shop that keeps half sells at twice the wholesale price (keystone).

    >>> retail_from_wholesale(wholesale=12, share=0.5)
    24.0

    Parameters
    ----------
    wholesale : 0 or more
        wholesale price: what the shop pays the maker
    share : 0 to 0.99 of the price
        what the shop keeps of the retail price

    Returns
    -------
    0 or more
        retail price: what the buyer in the shop pays, with tax in it or not

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    markup, discount and sales tax: OpenStax, Contemporary Mathematics 6.2
    """
@_overload
def retail_from_wholesale(wholesale: _Value | _Array, share: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def retail_from_wholesale(wholesale: _Value | _Array | _Column, share: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def round_money(amount: _Value, digits: _Value = 2) -> float:
    """An amount rounded to the currency's smallest coin, half away from zero.

    >>> round_money(amount=1.005)
    1.01

    Parameters
    ----------
    amount : any amount
        the amount to round
    digits : whole numbers 0 to 4; 2 if left out
        decimals of the currency's smallest coin

    Returns
    -------
    any amount
        an amount of money; minus for a credit or a loss

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    half away from zero: sales tax rules of US Streamlined states, HMRC
    """
@_overload
def round_money(amount: _Value | _Array, digits: _Value | _Array = 2) -> _npt.NDArray[_np.float64]: ...
@_overload
def round_money(amount: _Value | _Array | _Column, digits: _Value | _Array | _Column = 2) -> _pd.Series[float]: ...
@_overload
def round_up_price(price: _Value, step: _Value, ending: _Value = 0.0) -> float:
    """The next price up that the maker uses: a whole number of steps, plus the ending.

    With step 1 and ending 0.95, 17.20 becomes 17.95 and 17.96 becomes 18.95.

    >>> round_up_price(price=17.2, step=1, ending=0.95)
    17.95

    Parameters
    ----------
    price : 0 or more
        price as the place states it, with tax in it or not
    step : more than 0
        the step between the prices the maker uses
    ending : 0 or more; 0.0 if left out
        what prices end in, below the step: 0.95 for 17.95

    Returns
    -------
    0 or more
        price as the place states it, with tax in it or not

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: the ending must be below the step.

    References
    ----------
    common practice, no source
    """
@_overload
def round_up_price(price: _Value | _Array, step: _Value | _Array, ending: _Value | _Array = 0.0) -> _npt.NDArray[_np.float64]: ...
@_overload
def round_up_price(price: _Value | _Array | _Column, step: _Value | _Array | _Column, ending: _Value | _Array | _Column = 0.0) -> _pd.Series[float]: ...
@_overload
def safety_stock(demand: _Value, lead_time: _Value, risk: _Value, spread: _Value = 0.0, lead_spread: _Value = 0.0) -> float:
    """Extra stock to keep for uneven demand and late deliveries while you wait for an order.

    Demand and the time an order takes are in one unit of time: both in days, or
    both in weeks. It assumes that both follow a normal distribution.

    >>> round(safety_stock(demand=40, lead_time=2, risk=0.05, spread=6), 2)
    13.96

    Parameters
    ----------
    demand : 0 or more
        how much is used or sold in a day or a week on average
    lead_time : 0 to 10000
        days or weeks from ordering to having it, in the unit of demand
    risk : more than 0, at most 0.5 of the orders
        share of orders during which running out is accepted
    spread : 0 or more; 0.0 if left out
        standard deviation of what is used or sold in a day or a week; 0 if it is steady
    lead_spread : 0 or more; 0.0 if left out
        standard deviation of the days or weeks that an order takes; 0 if they are always the same

    Returns
    -------
    0 or more
        how much to have, in the unit that demand is in

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    reorder point with demand and lead time normal: Stevenson, Operations Management, 14th edition, chapter 12
    """
@_overload
def safety_stock(demand: _Value | _Array, lead_time: _Value | _Array, risk: _Value | _Array, spread: _Value | _Array = 0.0, lead_spread: _Value | _Array = 0.0) -> _npt.NDArray[_np.float64]: ...
@_overload
def safety_stock(demand: _Value | _Array | _Column, lead_time: _Value | _Array | _Column, risk: _Value | _Array | _Column, spread: _Value | _Array | _Column = 0.0, lead_spread: _Value | _Array | _Column = 0.0) -> _pd.Series[float]: ...
@_overload
def season_profit(stock: _Value, price: _Value, cost: _Value, leftover: _Value, demand: _Value, spread: _Value) -> float:
    """Profit to expect from so many made for one season, where demand varies as a normal distribution does.

    An average over many such seasons; one of them can bring much more or less.

    >>> round(season_profit(stock=72, price=24, cost=9, leftover=5, demand=60, spread=15), 2)
    817.74

    Parameters
    ----------
    stock : 0 or more
        how many to have when the season starts
    price : 0 or more
        what one brings while the season lasts, after fees
    cost : 0 or more
        what one costs to make
    leftover : any amount
        what one still brings after the season; minus if it costs money to be rid of
    demand : 0 or more
        average number wanted in the season
    spread : more than 0
        standard deviation of the number wanted, from season to season

    Returns
    -------
    any amount
        an amount of money; minus for a credit or a loss

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    one-season stock (newsvendor): the library stockpyl, after Snyder and Shen, examples 4.1 to 4.7
    """
@_overload
def season_profit(stock: _Value | _Array, price: _Value | _Array, cost: _Value | _Array, leftover: _Value | _Array, demand: _Value | _Array, spread: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def season_profit(stock: _Value | _Array | _Column, price: _Value | _Array | _Column, cost: _Value | _Array | _Column, leftover: _Value | _Array | _Column, demand: _Value | _Array | _Column, spread: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def season_profit_of_records(stock: _Value, price: _Value, cost: _Value, leftover: _Value, sales: _Cells) -> float:
    """Expected profit from making this many for one season: the average over the seasons on record.

    >>> season_profit_of_records(stock=62, price=24, cost=9, leftover=5, sales=[40, 55, 48, 70, 62])
    766.6

    Parameters
    ----------
    stock : 0 or more
        how many to have when the season starts
    price : 0 or more
        what one brings while the season lasts, after fees
    cost : 0 or more
        what one costs to make
    leftover : any amount
        what one still brings after the season; minus if it costs money to be rid of
    sales : list, each 0 or more
        number wanted in each season like it; a season that sold out shows less than was wanted

    Returns
    -------
    any amount
        an amount of money; minus for a credit or a loss

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    one-season stock (newsvendor): the library stockpyl, after Snyder and Shen, examples 4.1 to 4.7
    """
@_overload
def season_profit_of_records(stock: _Value | _Array, price: _Value | _Array, cost: _Value | _Array, leftover: _Value | _Array, sales: _Cells) -> _npt.NDArray[_np.float64]: ...
@_overload
def season_profit_of_records(stock: _Value | _Array | _Column, price: _Value | _Array | _Column, cost: _Value | _Array | _Column, leftover: _Value | _Array | _Column, sales: _Cells) -> _pd.Series[float]: ...
@_overload
def season_profit_poisson(stock: _Value, price: _Value, cost: _Value, leftover: _Value, demand: _Value) -> float:
    """Profit to expect from so many made for one season, where buyers come by themselves (Poisson).

    >>> round(season_profit_poisson(stock=15, price=24, cost=9, leftover=5, demand=12), 2)
    160.36

    Parameters
    ----------
    stock : whole numbers 0 to 100000
        how many to have when the season starts
    price : 0 or more
        what one brings while the season lasts, after fees
    cost : 0 or more
        what one costs to make
    leftover : any amount
        what one still brings after the season; minus if it costs money to be rid of
    demand : 0 to 700
        how many people will want in the season, on average; from 700 up use the normal one

    Returns
    -------
    any amount
        an amount of money; minus for a credit or a loss

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    one-season stock (newsvendor): the library stockpyl, after Snyder and Shen, examples 4.1 to 4.7
    """
@_overload
def season_profit_poisson(stock: _Value | _Array, price: _Value | _Array, cost: _Value | _Array, leftover: _Value | _Array, demand: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def season_profit_poisson(stock: _Value | _Array | _Column, price: _Value | _Array | _Column, cost: _Value | _Array | _Column, leftover: _Value | _Array | _Column, demand: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def season_quantity(price: _Value, cost: _Value, leftover: _Value, kind: _Literal["normal", "Poisson", "records"], demand: _Value | None = None, spread: _Value | None = None, records: _Cells | None = None) -> float:
    """How many to make for one season of what will not sell after it.

    It stops where one more would lose as much unsold as it would earn if sold. Take
    "Poisson" for small numbers, such as a dozen at a market, and "records" where there
    are seasons to go by: it names one of them. Round up what comes out for "normal".

    >>> season_quantity(price=24, cost=9, leftover=5, kind="Poisson", demand=12)
    15.0

    Parameters
    ----------
    price : 0 or more
        what one brings while the season lasts, after fees
    cost : 0 or more
        what one costs to make
    leftover : any amount
        what one still brings after the season; minus if it costs money to be rid of
    kind : "normal" or "Poisson" or "records"
        how the number wanted varies: normal around a mean, Poisson as buyers come one by one, or as your own records
    demand : 0 or more or blank; None if left out
        average number wanted in the season; for normal and Poisson
    spread : more than 0 or blank; None if left out
        standard deviation of how many people want, from season to season; for normal
    records : list, each 0 or more or blank; None if left out
        how many people wanted in each season like it, for records; one that sold out says too little

    Returns
    -------
    0 or more
        how many to have when the season starts

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: the price must be above what one costs, or none should be made.
        With the words: a leftover must bring less than it cost.

    References
    ----------
    one-season stock (newsvendor): the library stockpyl, after Snyder and Shen, examples 4.1 to 4.7
    """
@_overload
def season_quantity(price: _Value | _Array, cost: _Value | _Array, leftover: _Value | _Array, kind: _Literal["normal", "Poisson", "records"] | _Words, demand: _Value | _Array | None = None, spread: _Value | _Array | None = None, records: _Cells | None = None) -> _npt.NDArray[_np.float64]: ...
@_overload
def season_quantity(price: _Value | _Array | _Column, cost: _Value | _Array | _Column, leftover: _Value | _Array | _Column, kind: _Literal["normal", "Poisson", "records"] | _Words | _Column, demand: _Value | _Array | _Column | None = None, spread: _Value | _Array | _Column | None = None, records: _Cells | None = None) -> _pd.Series[float]: ...
@_overload
def season_stock(price: _Value, cost: _Value, leftover: _Value, demand: _Value, spread: _Value) -> float:
    """How many to make for one season, where demand varies as a normal distribution does.

    It stops where one more would lose as much, left over, as it would earn, sold.
    `season_quantity` takes other kinds of demand.

    >>> round(season_stock(price=24, cost=9, leftover=5, demand=60, spread=15), 2)
    72.07

    Parameters
    ----------
    price : 0 or more
        what one brings while the season lasts, after fees
    cost : 0 or more
        what one costs to make
    leftover : any amount
        what one still brings after the season; minus if it costs money to be rid of
    demand : 0 or more
        average number wanted in the season
    spread : more than 0
        standard deviation of the number wanted, from season to season

    Returns
    -------
    0 or more
        how many to have when the season starts

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: the price must be above what one costs, or none should be made.
        With the words: a leftover must bring less than it cost.

    References
    ----------
    one-season stock (newsvendor): the library stockpyl, after Snyder and Shen, examples 4.1 to 4.7
    """
@_overload
def season_stock(price: _Value | _Array, cost: _Value | _Array, leftover: _Value | _Array, demand: _Value | _Array, spread: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def season_stock(price: _Value | _Array | _Column, cost: _Value | _Array | _Column, leftover: _Value | _Array | _Column, demand: _Value | _Array | _Column, spread: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def season_stock_of_records(price: _Value, cost: _Value, leftover: _Value, sales: _Cells) -> float:
    """How many to make for one season, by what people wanted in seasons like it.

    It gives the smallest record that is enough in enough seasons. Where
    more would bring the same profit, the smaller number is named.

    >>> season_stock_of_records(price=24, cost=9, leftover=5, sales=[40, 55, 48, 70, 62])
    62.0

    Parameters
    ----------
    price : 0 or more
        what one brings while the season lasts, after fees
    cost : 0 or more
        what one costs to make
    leftover : any amount
        what one still brings after the season; minus if it costs money to be rid of
    sales : list, each 0 or more
        number wanted in each season like it; a season that sold out shows less than was wanted

    Returns
    -------
    0 or more
        how many to have when the season starts

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: the price must be above what one costs, or none should be made.
        With the words: a leftover must bring less than it cost.

    References
    ----------
    one-season stock (newsvendor): the library stockpyl, after Snyder and Shen, examples 4.1 to 4.7
    """
@_overload
def season_stock_of_records(price: _Value | _Array, cost: _Value | _Array, leftover: _Value | _Array, sales: _Cells) -> _npt.NDArray[_np.float64]: ...
@_overload
def season_stock_of_records(price: _Value | _Array | _Column, cost: _Value | _Array | _Column, leftover: _Value | _Array | _Column, sales: _Cells) -> _pd.Series[float]: ...
@_overload
def season_stock_poisson(price: _Value, cost: _Value, leftover: _Value, demand: _Value) -> float:
    """How many to make for one season, where buyers come by themselves, one by one (Poisson).

    For small numbers, such as a dozen at a market. It needs no record of the
    spread: how much demand varies follows from how many come.

    >>> season_stock_poisson(price=24, cost=9, leftover=5, demand=12)
    15.0

    Parameters
    ----------
    price : 0 or more
        what one brings while the season lasts, after fees
    cost : 0 or more
        what one costs to make
    leftover : any amount
        what one still brings after the season; minus if it costs money to be rid of
    demand : 0 to 700
        how many people will want in the season, on average; from 700 up use the normal one

    Returns
    -------
    whole numbers 0 to 1000000
        how many candles

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: the price must be above what one costs, or none should be made.
        With the words: a leftover must bring less than it cost.

    References
    ----------
    one-season stock (newsvendor): the library stockpyl, after Snyder and Shen, examples 4.1 to 4.7
    """
@_overload
def season_stock_poisson(price: _Value | _Array, cost: _Value | _Array, leftover: _Value | _Array, demand: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def season_stock_poisson(price: _Value | _Array | _Column, cost: _Value | _Array | _Column, leftover: _Value | _Array | _Column, demand: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def second_wax(wax: _Value, share: _Value) -> float:
    """The second of two waxes in a blend, by its share.

    >>> second_wax(wax=1000, share=0.25)
    250.0

    Parameters
    ----------
    wax : 0 or more g
        wax in the melt, before any oil
    share : 0 to 1 of the blend
        share of one oil, or of one wax, in a blend

    Returns
    -------
    0 or more g
        wax in the melt, before any oil

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    common practice, no source
    """
@_overload
def second_wax(wax: _Value | _Array, share: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def second_wax(wax: _Value | _Array | _Column, share: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def setting_shrinkage(hot: _Value, cold: _Value) -> float:
    """How much a wax shrinks from the pour until it has set and cooled, from two densities.

    >>> round(setting_shrinkage(hot=0.8, cold=0.9), 4)
    0.1111

    Parameters
    ----------
    hot : 0.5 to 1.5 g/ml
        density of the melted wax as it is poured
    cold : 0.5 to 1.5 g/ml
        density of the wax once it has set and cooled

    Returns
    -------
    0 to 0.5 of the volume poured
        how much the wax draws together as it sets

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: set wax cannot be lighter than melted wax.

    References
    ----------
    derived from the two densities; wax draws together by 5 to 15 %, second-hand, texts disagree
    """
@_overload
def setting_shrinkage(hot: _Value | _Array, cold: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def setting_shrinkage(hot: _Value | _Array | _Column, cold: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def share_of_total(load: _Value) -> float:
    """Share of the finished candle that a load on wax comes to.

    The two are easily mixed up: 10 % of the wax is 9.09 % of the candle.

    >>> round(share_of_total(load=0.1), 4)
    0.0909

    Parameters
    ----------
    load : 0 to 0.5 of wax weight
        fragrance load: oil as a share of wax weight (8% is 0.08)

    Returns
    -------
    0 to 0.333333 of total weight
        fragrance oil as a share of wax and oil together

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    percent by mass: OpenStax, Chemistry 2e, section on other units for solution concentrations
    """
@_overload
def share_of_total(load: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def share_of_total(load: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def shelf_days_left(made: _Day, shelf_life: _Value, as_of: _Day) -> float:
    """Days that a lot still keeps; minus where it is past.

    >>> shelf_days_left(made="2026-03-14", shelf_life=365, as_of="2027-03-01")
    13.0

    Parameters
    ----------
    made : a date such as "2026-03-14"
        the day the lot was made, or came in
    shelf_life : whole numbers 0 to 36500 days
        how long it keeps, by the supplier's data sheet or the maker's own tests
    as_of : a date such as "2026-03-14"
        the day it is counted from: today, or the day of use

    Returns
    -------
    any amount days
        days that the lot still keeps; minus where it is past

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    days of the calendar
    """
@_overload
def shelf_days_left(made: _Day | _Days, shelf_life: _Value | _Array, as_of: _Day | _Days) -> _npt.NDArray[_np.float64]: ...
@_overload
def shelf_days_left(made: _Day | _Days | _Column, shelf_life: _Value | _Array | _Column, as_of: _Day | _Days | _Column) -> _pd.Series[float]: ...
@_overload
def short_by(needed: _Value, on_hand: _Value) -> float:
    """How much is missing; nothing where there is enough.

    >>> short_by(needed=24, on_hand=20)
    4.0

    Parameters
    ----------
    needed : 0 or more
        how much is needed
    on_hand : 0 or more
        how much is on hand

    Returns
    -------
    0 or more
        how much of the material, in the unit it is priced by

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    algebra from the definitions
    """
@_overload
def short_by(needed: _Value | _Array, on_hand: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def short_by(needed: _Value | _Array | _Column, on_hand: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def short_under(net: _Value) -> float:
    """Content under which a candle counts as short in the reference test of the EU and GB.

    >>> short_under(net=180)
    171.9

    Parameters
    ----------
    net : 5 to 25000 g
        net weight to declare: wax and oil, no vessel, lid or wick tab

    Returns
    -------
    0 to 25000 g
        net weight that a package holds or may hold

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    Council Directive 76/211/EEC, Annex I, 2.4; rounding: GOV.UK, Packaged goods
    """
@_overload
def short_under(net: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def short_under(net: _Value | _Array | _Column) -> _pd.Series[float]: ...
def split_charge(charge: _Value, amounts: _Cells, sharing: _Literal["in proportion", "evenly"] = 'in proportion', digits: _Value = 2) -> list[float]:
    """Split a charge such as shipping over the lines of an order, to the cent.

    Give each line's value, weight or quantity; the parts always add up to the
    charge. Cents left over go to the largest fractions, the earlier line first
    where they tie; a line of nothing gets nothing.

    >>> split_charge(charge=10, amounts=[120, 75.5, 48.25])
    [4.92, 3.1, 1.98]

    Parameters
    ----------
    charge : any amount
        the charge to split, such as shipping; minus for a credit
    amounts : list, each 0 or more
        each line's value, weight or quantity
    sharing : "in proportion" or "evenly"; 'in proportion' if left out
        how the charge is shared: in proportion to the amounts, or evenly
    digits : whole numbers 0 to 4; 2 if left out
        decimals of the currency's smallest coin

    Returns
    -------
    list, each any amount
        an amount for each line, in its order

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    largest remainder (Hamilton): OpenStax, Contemporary Mathematics 11.4
    """
@_overload
def stall_per_hour(takings: _Value, goods: _Value, costs: _Value, hours: _Value, fees: _Value = 0.0) -> float:
    """What a day at a market or a fair leaves for each hour that it takes.

    Leave your own making time out of the candles' cost if the hours are to pay
    for making as well; else it is paid twice.

    >>> stall_per_hour(takings=640, goods=210, costs=85, hours=10, fees=16)
    32.9

    Parameters
    ----------
    takings : 0 or more
        what was taken for candles, before tax
    goods : 0 or more
        what the candles sold cost, all of them
    costs : 0 or more
        what the day costs whatever is sold: stall, travel, parking, meals
    hours : more than 0, at most 1000 h
        hours that the day takes: packing, travel, setting up, selling
    fees : 0 or more; 0.0 if left out
        what card companies and the organiser keep of the takings

    Returns
    -------
    any amount money per h
        left for each hour of work; minus for a loss

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    algebra from the definitions
    """
@_overload
def stall_per_hour(takings: _Value | _Array, goods: _Value | _Array, costs: _Value | _Array, hours: _Value | _Array, fees: _Value | _Array = 0.0) -> _npt.NDArray[_np.float64]: ...
@_overload
def stall_per_hour(takings: _Value | _Array | _Column, goods: _Value | _Array | _Column, costs: _Value | _Array | _Column, hours: _Value | _Array | _Column, fees: _Value | _Array | _Column = 0.0) -> _pd.Series[float]: ...
@_overload
def stall_result(takings: _Value, goods: _Value, costs: _Value, fees: _Value = 0.0) -> float:
    """What a day at a market or a fair leaves: takings less candles, the day's own costs and fees; minus for a loss.

    >>> stall_result(takings=640, goods=210, costs=85, fees=16)
    329.0

    Parameters
    ----------
    takings : 0 or more
        what was taken for candles, before tax
    goods : 0 or more
        what the candles sold cost, all of them
    costs : 0 or more
        what the day costs whatever is sold: stall, travel, parking, meals
    fees : 0 or more; 0.0 if left out
        what card companies and the organiser keep of the takings

    Returns
    -------
    any amount
        an amount of money; minus for a credit or a loss

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    algebra from the definitions
    """
@_overload
def stall_result(takings: _Value | _Array, goods: _Value | _Array, costs: _Value | _Array, fees: _Value | _Array = 0.0) -> _npt.NDArray[_np.float64]: ...
@_overload
def stall_result(takings: _Value | _Array | _Column, goods: _Value | _Array | _Column, costs: _Value | _Array | _Column, fees: _Value | _Array | _Column = 0.0) -> _pd.Series[float]: ...
def stock_from_count(bought: _Cells, costs: _Cells, left: _Value, method: _Literal["FIFO", "periodic average", "LIFO"] = 'FIFO') -> _StockValue:
    """Cost of what went out, value of what is left, from the lots bought and a count at the end.

    For a small maker's year: no issue need be written down. By FIFO it comes to
    what a log would say. LIFO is for comparison only: IAS 2 does not allow it,
    and US tax allows it only where the books use it too.

    >>> stock_from_count(bought=[30, 40], costs=[2, 2.5], left=15)
    StockValue(used=122.5, left=15.0, worth=37.5)

    Parameters
    ----------
    bought : list, each 0 or more
        how much of each lot: what was there at the start first, then each receipt
    costs : list, each 0 or more money per unit
        cost of one unit of each lot
    left : 0 or more
        how much is left by the count
    method : "FIFO" or "periodic average" or "LIFO"; 'FIFO' if left out
        FIFO: the newest is left; periodic average: one rate for the whole time; LIFO: to compare only

    Returns
    -------
    a row of used, left, worth
        What the goods that went out cost, how much is left, and what that is worth.
    used : 0 or more
        what the goods that went out cost
    left : 0 or more
        how much of the material, in the unit it is priced by
    worth : 0 or more
        what the stock on hand is worth at cost

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    FIFO, average and LIFO, periodic and perpetual: OpenStax, Financial Accounting 10.1 to 10.3
    """
def stock_from_log(moves: _Cells, costs: _Cells | None, method: _Literal["FIFO", "moving average", "LIFO"] = 'FIFO') -> _StockValue:
    """Cost of what went out, value of what is left, from a log of receipts and issues.

    The first line is what was there at the start, with its cost. An average is
    not rounded on its way. LIFO is for comparison only: IAS 2 does not allow
    it, and US tax allows it only where the books use it too. Where there is no
    log of issues, count and use `stock_from_count`.

    >>> stock_from_log(moves=[30, -20, 40, -35], costs=[2, "", 2.5, ""])
    StockValue(used=122.5, left=15.0, worth=37.5)

    Parameters
    ----------
    moves : list, each any amount
        what came in, with a minus what went out, in the order it happened
    costs : list, each 0 or more money per unit or blank
        cost of one unit of what came in; blank where it went out
    method : "FIFO" or "moving average" or "LIFO"; 'FIFO' if left out
        FIFO: the oldest goes first; moving average: one rate, new after each receipt; LIFO: to compare only

    Returns
    -------
    a row of used, left, worth
        What the goods that went out cost, how much is left, and what that is worth.
    used : 0 or more
        what the goods that went out cost
    left : 0 or more
        how much of the material, in the unit it is priced by
    worth : 0 or more
        what the stock on hand is worth at cost

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    FIFO, average and LIFO, periodic and perpetual: OpenStax, Financial Accounting 10.1 to 10.3
    """
def stock_from_lots(bought: _Cells, costs: _Cells, taken: _Cells) -> _StockValue:
    """Cost of what went out, value of what is left, if you wrote down which lot each came from.

    For comparison only, as candles of a kind are alike: IAS 2 keeps it for goods
    that cannot stand in for each other.

    >>> stock_from_lots(bought=[30, 40], costs=[2, 2.5], taken=[12, 20])
    StockValue(used=74.0, left=38.0, worth=86.0)

    Parameters
    ----------
    bought : list, each 0 or more
        how much of each lot: what was there at the start first, then each receipt
    costs : list, each 0 or more money per unit
        cost of one unit of each lot
    taken : list, each 0 or more
        how much was taken out of each lot

    Returns
    -------
    a row of used, left, worth
        What the goods that went out cost, how much is left, and what that is worth.
    used : 0 or more
        what the goods that went out cost
    left : 0 or more
        how much of the material, in the unit it is priced by
    worth : 0 or more
        what the stock on hand is worth at cost

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    specific identification: OpenStax, Financial Accounting 10.2
    """
def stock_left(sales: _Cells, made: _Cells, opening: _Value = 0.0) -> list[float]:
    """How much is left at the end of each week or month, from what is made and sold in it.

    A plan that would be short is refused with its place.

    >>> stock_left(sales=[80, 50, 120, 150], made=[100, 100, 100, 100])
    [20.0, 70.0, 50.0, 0.0]

    Parameters
    ----------
    sales : list, each 0 or more
        how much is wanted in each week or month, in order
    made : list, each 0 or more
        how much is made in each week or month, in order
    opening : 0 or more; 0.0 if left out
        how much is there at the start

    Returns
    -------
    list, each 0 or more
        how much in each week or month, in order

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    algebra from the definitions
    """
@_overload
def stock_turns(goods: _Value, opening: _Value, closing: _Value) -> float:
    """How often the average stock was sold or used over the time, all at cost.

    >>> stock_turns(goods=3600, opening=700, closing=500)
    6.0

    Parameters
    ----------
    goods : 0 or more
        cost of the goods sold or used over the time
    opening : 0 or more
        what stock was worth at the start, at cost
    closing : 0 or more
        what stock was worth at the end, at cost

    Returns
    -------
    0 or more times
        how often the average stock was sold or used over the time

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: there must have been stock at the start or the end.

    References
    ----------
    inventory turnover and days: OpenStax, Financial Accounting 10.5
    """
@_overload
def stock_turns(goods: _Value | _Array, opening: _Value | _Array, closing: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def stock_turns(goods: _Value | _Array | _Column, opening: _Value | _Array | _Column, closing: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def substance_in_candle(concentration: _Value, load: _Value) -> float:
    """Share of the finished candle that a substance in the oil comes to.

    >>> round(substance_in_candle(concentration=0.1, load=0.08), 6)
    0.007407

    Parameters
    ----------
    concentration : 0 to 1 of the oil
        share of the substance in the oil, the upper end of its range
    load : 0 to 0.5 of wax weight
        fragrance load: oil as a share of wax weight (8% is 0.08)

    Returns
    -------
    0 to 1 of the finished candle
        share of the finished candle

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    percent by mass: OpenStax, Chemistry 2e, section on other units for solution concentrations
    """
@_overload
def substance_in_candle(concentration: _Value | _Array, load: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def substance_in_candle(concentration: _Value | _Array | _Column, load: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def take_out_tax(price: _Value, tax: _Value) -> float:
    """Price before tax from a price with tax in it.

    >>> take_out_tax(price=120, tax=0.2)
    100.0

    Parameters
    ----------
    price : 0 or more
        price with tax in it
    tax : 0 to 1 of the price before tax
        rate of sales tax or VAT

    Returns
    -------
    0 or more
        price before tax

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    markup, discount and sales tax: OpenStax, Contemporary Mathematics 6.2
    """
@_overload
def take_out_tax(price: _Value | _Array, tax: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def take_out_tax(price: _Value | _Array | _Column, tax: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def tapered_volume(top: _Value, bottom: _Value, height: _Value, base: _Value = 0.0) -> float:
    """Volume of a round vessel that widens or narrows evenly, from inside diameters.

    With `top` and `bottom` alike this is `cylinder_volume`.

    >>> round(tapered_volume(top=90, bottom=70, height=100), 1)
    505.3

    Parameters
    ----------
    top : 10 to 2000 mm
        how far it is across inside at the top
    bottom : 10 to 2000 mm
        how far it is across inside at the bottom
    height : 10 to 2000 mm
        how deep the vessel is inside, up to the brim or the mark
    base : -200 to 200 mm; 0.0 if left out
        how high the floor is pushed up at its middle; minus where it bulges down

    Returns
    -------
    0 or more ml
        a volume inside a vessel

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: the floor cannot rise above the fill.

    References
    ----------
    elementary geometry; OpenStax, Prealgebra 2e (cylinder) and Calculus (solids cut across)
    """
@_overload
def tapered_volume(top: _Value | _Array, bottom: _Value | _Array, height: _Value | _Array, base: _Value | _Array = 0.0) -> _npt.NDArray[_np.float64]: ...
@_overload
def tapered_volume(top: _Value | _Array | _Column, bottom: _Value | _Array | _Column, height: _Value | _Array | _Column, base: _Value | _Array | _Column = 0.0) -> _pd.Series[float]: ...
def tax_by_line(amounts: _Cells, tax: _Value, stated: _Literal["with tax", "before tax"] = 'before tax', digits: _Value = 2) -> list[float]:
    """Sales tax or VAT of each line of an order, each rounded to the coin, half up.

    For a seller who rounds by the item. The total can differ by cents from
    `tax_by_order`: use one of them throughout.

    >>> tax_by_line(amounts=[38, 80], tax=0.06)
    [2.28, 4.8]

    Parameters
    ----------
    amounts : list, each 0 or more
        the amount of each line, all at one rate of tax
    tax : 0 to 1 of the price before tax
        rate of sales tax or VAT
    stated : "with tax" or "before tax"; 'before tax' if left out
        whether the place states its prices with tax in them
    digits : whole numbers 0 to 4; 2 if left out
        decimals of the currency's smallest coin

    Returns
    -------
    list, each 0 or more
        the tax of each line, rounded

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    Streamlined Sales and Use Tax Agreement 324 (US); HMRC VATREC12010 to 12030 (UK); CJEU C-484/06 (EU), headline only: check against the tax office's own page
    """
@_overload
def tax_by_order(amounts: _Cells, tax: _Value, stated: _Literal["with tax", "before tax"] = 'before tax', digits: _Value = 2, rounding: _Literal["nearest", "down"] = 'nearest') -> float:
    """Sales tax or VAT of an order at one rate, worked out on its total and rounded once.

    >>> tax_by_order(amounts=[428.99], tax=0.0825)
    35.39

    Parameters
    ----------
    amounts : list, each 0 or more
        the amount of each line, all at one rate of tax
    tax : 0 to 1 of the price before tax
        rate of sales tax or VAT
    stated : "with tax" or "before tax"; 'before tax' if left out
        whether the place states its prices with tax in them
    digits : whole numbers 0 to 4; 2 if left out
        decimals of the currency's smallest coin
    rounding : "nearest" or "down"; 'nearest' if left out
        to the nearest coin, half up; or down, where the tax office allows it on the total of an invoice

    Returns
    -------
    0 or more
        an amount of money

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    Streamlined Sales and Use Tax Agreement 324 (US); HMRC VATREC12010 to 12030 (UK); CJEU C-484/06 (EU), headline only: check against the tax office's own page
    """
@_overload
def tax_by_order(amounts: _Cells, tax: _Value | _Array, stated: _Literal["with tax", "before tax"] | _Words = 'before tax', digits: _Value | _Array = 2, rounding: _Literal["nearest", "down"] | _Words = 'nearest') -> _npt.NDArray[_np.float64]: ...
@_overload
def tax_by_order(amounts: _Cells, tax: _Value | _Array | _Column, stated: _Literal["with tax", "before tax"] | _Words | _Column = 'before tax', digits: _Value | _Array | _Column = 2, rounding: _Literal["nearest", "down"] | _Words | _Column = 'nearest') -> _pd.Series[float]: ...
@_overload
def tax_charged(rate: _Value, collector: _Literal["maker", "place", "nobody"]) -> float:
    """The tax rate that a buyer is charged: the rate, or nothing where nobody collects tax.

    >>> tax_charged(rate=0.2, collector="nobody")
    0.0

    Parameters
    ----------
    rate : 0 to 1 of the price before tax
        rate of sales tax or VAT
    collector : "maker" or "place" or "nobody"
        who charges the buyer sales tax or VAT and pays it over

    Returns
    -------
    0 to 1 of the price before tax
        rate of sales tax or VAT

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    common practice, no source
    """
@_overload
def tax_charged(rate: _Value | _Array, collector: _Literal["maker", "place", "nobody"] | _Words) -> _npt.NDArray[_np.float64]: ...
@_overload
def tax_charged(rate: _Value | _Array | _Column, collector: _Literal["maker", "place", "nobody"] | _Words | _Column) -> _pd.Series[float]: ...
@_overload
def tax_in_price(price: _Value, tax: _Value) -> float:
    """The tax included in a price.

    >>> tax_in_price(price=120, tax=0.2)
    20.0

    Parameters
    ----------
    price : 0 or more
        price with tax in it
    tax : 0 to 1 of the price before tax
        rate of sales tax or VAT

    Returns
    -------
    0 or more
        an amount of money

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    markup, discount and sales tax: OpenStax, Contemporary Mathematics 6.2
    """
@_overload
def tax_in_price(price: _Value | _Array, tax: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def tax_in_price(price: _Value | _Array | _Column, tax: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def tax_on(price: _Value, tax: _Value) -> float:
    """The tax that comes on a price before tax.

    >>> tax_on(price=100, tax=0.2)
    20.0

    Parameters
    ----------
    price : 0 or more
        price before tax
    tax : 0 to 1 of the price before tax
        rate of sales tax or VAT

    Returns
    -------
    0 or more
        an amount of money

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    markup, discount and sales tax: OpenStax, Contemporary Mathematics 6.2
    """
@_overload
def tax_on(price: _Value | _Array, tax: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def tax_on(price: _Value | _Array | _Column, tax: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def temperature_after_oil(wax: _Value, oil: _Value, hot: _Value, room: _Value, melting: _Value, liquid: _Value = 2.2, oil_heat: _Value = 2.2) -> float:
    """Temperature once oil has gone into melted wax, before the pot loses any heat.

    Refused where wax would begin to set: then it gives up heat of its own, and
    this sum no longer holds.

    >>> round(temperature_after_oil(wax=1000, oil=80, hot=80, room=20, melting=55), 1)
    75.6

    Parameters
    ----------
    wax : 0 or more g
        wax in the melt, before any oil
    oil : 0 or more g
        fragrance oil to weigh out
    hot : -50 to 160 C
        temperature of the melted wax before the oil goes in
    room : -50 to 100 C
        temperature of the oil before it goes in
    melting : -50 to 160 C
        temperature at which the last of the wax is melted: the upper end of its melting range
    liquid : more than 0, at most 10 kJ/(kg C); 2.2 if left out
        heat that warms a kilogram of melted wax by one degree C
    oil_heat : more than 0, at most 10 kJ/(kg C); 2.2 if left out
        heat that warms a kilogram of oil by one degree C

    Returns
    -------
    -50 to 160 C
        temperature of wax and oil together

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: wax must be more than 0.
        With the words: the wax would begin to set: warm it more, or warm the oil.

    References
    ----------
    heat lost is heat gained: OpenStax, College Physics 2e, heat capacity; melted wax 2.2 second-hand, oil taken to warm as wax does, no source
    """
@_overload
def temperature_after_oil(wax: _Value | _Array, oil: _Value | _Array, hot: _Value | _Array, room: _Value | _Array, melting: _Value | _Array, liquid: _Value | _Array = 2.2, oil_heat: _Value | _Array = 2.2) -> _npt.NDArray[_np.float64]: ...
@_overload
def temperature_after_oil(wax: _Value | _Array | _Column, oil: _Value | _Array | _Column, hot: _Value | _Array | _Column, room: _Value | _Array | _Column, melting: _Value | _Array | _Column, liquid: _Value | _Array | _Column = 2.2, oil_heat: _Value | _Array | _Column = 2.2) -> _pd.Series[float]: ...
@_overload
def temperature_before_oil(wax: _Value, oil: _Value, wanted: _Value, room: _Value, melting: _Value, liquid: _Value = 2.2, oil_heat: _Value = 2.2) -> float:
    """Temperature to bring the wax to, so that it is as warm as wanted once the oil is in.

    >>> round(temperature_before_oil(wax=1000, oil=80, wanted=75, room=20, melting=55), 1)
    79.4

    Parameters
    ----------
    wax : 0 or more g
        wax in the melt, before any oil
    oil : 0 or more g
        fragrance oil to weigh out
    wanted : -50 to 160 C
        temperature of wax and oil together
    room : -50 to 100 C
        temperature of the oil before it goes in
    melting : -50 to 160 C
        temperature at which the last of the wax is melted: the upper end of its melting range
    liquid : more than 0, at most 10 kJ/(kg C); 2.2 if left out
        heat that warms a kilogram of melted wax by one degree C
    oil_heat : more than 0, at most 10 kJ/(kg C); 2.2 if left out
        heat that warms a kilogram of oil by one degree C

    Returns
    -------
    -50 to 160 C
        temperature of the melted wax before the oil goes in

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: wax must be more than 0.
        With the words: the wax would begin to set: warm it more, or warm the oil.

    References
    ----------
    heat lost is heat gained: OpenStax, College Physics 2e, heat capacity; melted wax 2.2 second-hand, oil taken to warm as wax does, no source
    """
@_overload
def temperature_before_oil(wax: _Value | _Array, oil: _Value | _Array, wanted: _Value | _Array, room: _Value | _Array, melting: _Value | _Array, liquid: _Value | _Array = 2.2, oil_heat: _Value | _Array = 2.2) -> _npt.NDArray[_np.float64]: ...
@_overload
def temperature_before_oil(wax: _Value | _Array | _Column, oil: _Value | _Array | _Column, wanted: _Value | _Array | _Column, room: _Value | _Array | _Column, melting: _Value | _Array | _Column, liquid: _Value | _Array | _Column = 2.2, oil_heat: _Value | _Array | _Column = 2.2) -> _pd.Series[float]: ...
@_overload
def testing_cost_each(tests: _Value, cost: _Value, count: _Value) -> float:
    """What testing a recipe adds to each candle that is made of it.

    >>> testing_cost_each(tests=9, cost=5, count=150)
    0.3

    Parameters
    ----------
    tests : whole numbers 0 to 10000
        how many test candles the recipe takes
    cost : 0 or more
        what one test candle costs: materials, and the time to make and burn it
    count : whole numbers 1 to 1000000
        how many candles share that cost

    Returns
    -------
    0 or more
        an amount of money

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    algebra from the definitions
    """
@_overload
def testing_cost_each(tests: _Value | _Array, cost: _Value | _Array, count: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def testing_cost_each(tests: _Value | _Array | _Column, cost: _Value | _Array | _Column, count: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def to_make(sales: _Value, closing: _Value, opening: _Value) -> float:
    """How much to make or buy for a month: what goes out, plus what is to be left, less what you have.

    For a material `sales` is what the month's candles use of it.

    >>> to_make(sales=1500, closing=750, opening=450)
    1800.0

    Parameters
    ----------
    sales : 0 or more
        how much is used or sold over the time planned for: a year, a season
    closing : 0 or more
        how much is to be left at the end
    opening : 0 or more
        how much is there at the start

    Returns
    -------
    0 or more
        how much of the material, in the unit it is priced by

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    production and materials budgets: OpenStax, Managerial Accounting 7.2
    """
@_overload
def to_make(sales: _Value | _Array, closing: _Value | _Array, opening: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def to_make(sales: _Value | _Array | _Column, closing: _Value | _Array | _Column, opening: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def to_scale_step(weight: _Value, step: _Value) -> float:
    """A weight as the scale can show it: the nearest whole number of steps.

    >>> to_scale_step(weight=41.27, step=0.5)
    41.5

    Parameters
    ----------
    weight : 0 or more g
        a weight, in any unit; the answer is in the same unit
    step : 0 or more g
        the smallest step the scale shows, in any unit, the same for all

    Returns
    -------
    0 or more g
        a weight, in any unit; the answer is in the same unit

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: step must be more than 0.

    References
    ----------
    common practice, no source
    """
@_overload
def to_scale_step(weight: _Value | _Array, step: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def to_scale_step(weight: _Value | _Array | _Column, step: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def tolerable_negative_error(net: _Value) -> float:
    """How far under its declared weight a single candle may be in the EU and GB, by the average system.

    The average of a batch may not be under the declared weight at all.

    >>> tolerable_negative_error(net=180)
    8.1

    Parameters
    ----------
    net : 5 to 25000 g
        net weight to declare: wax and oil, no vessel, lid or wick tab

    Returns
    -------
    0 or more g
        how far under the declared weight

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    Council Directive 76/211/EEC, Annex I, 2.4; rounding: GOV.UK, Packaged goods
    """
@_overload
def tolerable_negative_error(net: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def tolerable_negative_error(net: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def top_up_pour(fill: _Value, shrinkage: _Value = 0.1) -> float:
    """Scented wax to keep back for a second pour that brings a vessel up to its first level again.

    This is the most it can need: a gap at the glass or an even drop in level needs no
    filling. A tenth is a guess until you have weighed your own.

    >>> top_up_pour(fill=220, shrinkage=0.08)
    17.6

    Parameters
    ----------
    fill : 0 or more g
        wax and oil together, as poured into a vessel or a batch
    shrinkage : 0 to 0.5 of the volume poured; 0.1 if left out
        how much the wax draws together as it sets

    Returns
    -------
    0 or more g
        scented wax for a second pour, as hot as the first

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    derived from the two densities; wax draws together by 5 to 15 %, second-hand, texts disagree
    """
@_overload
def top_up_pour(fill: _Value | _Array, shrinkage: _Value | _Array = 0.1) -> _npt.NDArray[_np.float64]: ...
@_overload
def top_up_pour(fill: _Value | _Array | _Column, shrinkage: _Value | _Array | _Column = 0.1) -> _pd.Series[float]: ...
def trial_balance(accounts: _Cells, debits: _Cells | None, credits: _Cells | None) -> list[_TrialLine]:
    """Balance of every account of a journal, in the order met, on the side it falls; the last line is the total.

    Refused where the two sides differ: see `entries_out_of_balance`.

    >>> trial_balance(accounts=["cash", "sales", "cash"], debits=[540, None, None], credits=[None, 500, 40])[0].debit
    500.0

    Parameters
    ----------
    accounts : list, each text
        the account of each line
    debits : list, each 0 or more or blank
        debit of each line; blank where it is a credit
    credits : list, each 0 or more or blank
        credit of each line; blank where it is a debit

    Returns
    -------
    list, each a row of account, debit, credit
        An account with its balance on one side.
    account : text
        the account
    debit : 0 or more or blank
        amount on the debit side
    credit : 0 or more or blank
        amount on the credit side

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    double entry: OpenStax, Financial Accounting, chapters 3 and 6; Managerial Accounting 4.7
    """
@_overload
def unit_cost(price: _Value, size: _Value, shipping: _Value = 0.0, tax: _Value = 0.0) -> float:
    """Cost of one unit out of a pack, with its share of shipping and the tax you cannot claim back.

    Use the price you would pay today, even for stock bought earlier.

    >>> unit_cost(price=18, size=450, shipping=4.5)
    0.05

    Parameters
    ----------
    price : 0 or more
        price of the pack
    size : more than 0
        what the pack holds: a weight, or how many pieces
    shipping : 0 or more; 0.0 if left out
        what shipping the pack cost, its part of the order's
    tax : 0 or more; 0.0 if left out
        tax on the pack that you cannot claim back

    Returns
    -------
    0 or more money per unit
        cost of one unit of the material: a piece, or a unit of weight

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    cost of purchase, freight and tax not recovered in it: IAS 2, from summaries; OpenStax, Financial Accounting 6
    """
@_overload
def unit_cost(price: _Value | _Array, size: _Value | _Array, shipping: _Value | _Array = 0.0, tax: _Value | _Array = 0.0) -> _npt.NDArray[_np.float64]: ...
@_overload
def unit_cost(price: _Value | _Array | _Column, size: _Value | _Array | _Column, shipping: _Value | _Array | _Column = 0.0, tax: _Value | _Array | _Column = 0.0) -> _pd.Series[float]: ...
@_overload
def use_by(made: _Day, shelf_life: _Value) -> _date:
    """The last day on which to use a lot, from the day it was made and how long it keeps.

    >>> use_by(made="2026-03-14", shelf_life=365).isoformat()
    '2027-03-14'

    Parameters
    ----------
    made : a date such as "2026-03-14"
        the day the lot was made, or came in
    shelf_life : whole numbers 0 to 36500 days
        how long it keeps, by the supplier's data sheet or the maker's own tests

    Returns
    -------
    a date such as "2026-03-14"
        the last day on which to use the lot

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    days of the calendar
    """
@_overload
def use_by(made: _Day | _Days, shelf_life: _Value | _Array) -> _npt.NDArray[_np.datetime64]: ...
@_overload
def use_by(made: _Day | _Days | _Column, shelf_life: _Value | _Array | _Column) -> _pd.Series[_pd.Timestamp]: ...
@_overload
def use_by_months(made: _Day, months: _Value) -> _date:
    """The last day on which to use a lot that keeps so many months: the same day of the month, or its last.

    >>> use_by_months(made="2026-08-31", months=18).isoformat()
    '2028-02-29'

    Parameters
    ----------
    made : a date such as "2026-03-14"
        the day the lot was made, or came in
    months : whole numbers 0 to 600 months
        how many months it keeps, by the supplier's data sheet or the maker's own tests

    Returns
    -------
    a date such as "2026-03-14"
        the last day on which to use the lot

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    months of the calendar, as EDATE counts them: ISO/IEC 26300 (OpenFormula), from memory
    """
@_overload
def use_by_months(made: _Day | _Days, months: _Value | _Array) -> _npt.NDArray[_np.datetime64]: ...
@_overload
def use_by_months(made: _Day | _Days | _Column, months: _Value | _Array | _Column) -> _pd.Series[_pd.Timestamp]: ...
@_overload
def usual_pool_time(diameter: _Value) -> float:
    """Hours that makers usually expect the melt pool to take to the wall: one for each inch across.

    A habit of the trade that nobody seems to have measured; from four inches up
    it runs past the four hours that a candle is usually burnt at a time.

    >>> round(usual_pool_time(diameter=76.2), 6)
    3.0

    Parameters
    ----------
    diameter : 10 to 2000 mm
        how far the vessel is across inside

    Returns
    -------
    0 or more h
        hours from lighting until the melt pool reaches the wall

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    Notes
    -----
    - past the four hours usual for one burn.

    References
    ----------
    common practice, no source
    """
@_overload
def usual_pool_time(diameter: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def usual_pool_time(diameter: _Value | _Array | _Column) -> _pd.Series[float]: ...
variation_us = maximum_allowable_variation
@_overload
def vessels_filled(wax: _Value, fill: _Value, load: _Value = 0.0) -> float:
    """Vessels that a weight of wax fills, once its oil is in.

    >>> vessels_filled(wax=5000, fill=216, load=0.08)
    25.0

    Parameters
    ----------
    wax : 0 or more g
        wax in the melt, before any oil
    fill : 0 or more g
        wax and oil together, as poured into a vessel or a batch
    load : 0 to 0.5 of wax weight; 0.0 if left out
        fragrance load: oil as a share of wax weight (8% is 0.08)

    Returns
    -------
    whole numbers 0 to 1000000
        how many vessels

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: fill must be more than 0.

    References
    ----------
    common practice, no source
    """
@_overload
def vessels_filled(wax: _Value | _Array, fill: _Value | _Array, load: _Value | _Array = 0.0) -> _npt.NDArray[_np.float64]: ...
@_overload
def vessels_filled(wax: _Value | _Array | _Column, fill: _Value | _Array | _Column, load: _Value | _Array | _Column = 0.0) -> _pd.Series[float]: ...
@_overload
def volume_from_water(water: _Value, temperature: _Value = 20.0) -> float:
    """Volume of a vessel from the water that fills it to the brim, as the scale shows it.

    The best measure of real glass: it takes the floor, the corners and the
    neck as they are. Dry the vessel and set the scale to zero with it on.

    >>> round(volume_from_water(water=250, temperature=20), 2)
    250.71

    Parameters
    ----------
    water : 10 or more g
        the water the vessel holds to the brim, as weighed on a scale in air
    temperature : 0 to 40 C; 20.0 if left out
        temperature of the water

    Returns
    -------
    0 or more ml
        a volume inside a vessel

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    water's density: Tanaka et al., Metrologia 38 (2001) 301, from memory, checked against IAPWS-95; weighing in air: the buoyancy correction of the conventional mass (air 0.0012, weights 8.0 g/ml), from memory
    """
@_overload
def volume_from_water(water: _Value | _Array, temperature: _Value | _Array = 20.0) -> _npt.NDArray[_np.float64]: ...
@_overload
def volume_from_water(water: _Value | _Array | _Column, temperature: _Value | _Array | _Column = 20.0) -> _pd.Series[float]: ...
@_overload
def volume_to_weight(volume: _Value, density: _Value) -> float:
    """Weight of a volume of anything that pours, by its density: oil by the fluid ounce, melted wax by the cup.

    A fluid ounce is a volume and an ounce a weight: only of water are they nearly
    the same.

    >>> round(volume_to_weight(volume=100, density=0.98), 6)
    98.0

    Parameters
    ----------
    volume : 0 to 1000000 ml
        how much of it, by volume
    density : 0.5 to 2 g/ml
        weight of a millilitre of it, from its data sheet (relative density)

    Returns
    -------
    0 or more g
        what to weigh for it

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    density is mass over volume: OpenStax, Chemistry 2e, measurements
    """
@_overload
def volume_to_weight(volume: _Value | _Array, density: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def volume_to_weight(volume: _Value | _Array | _Column, density: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def wax_for_fill(fill: _Value, load: _Value) -> float:
    """Wax in a finished fill of wax and oil together.

    >>> wax_for_fill(fill=250, load=0.25)
    200.0

    Parameters
    ----------
    fill : 0 or more g
        wax and oil together, as poured into a vessel or a batch
    load : 0 to 0.5 of wax weight
        fragrance load: oil as a share of wax weight (8% is 0.08)

    Returns
    -------
    0 or more g
        wax in the melt, before any oil

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    percent by mass: OpenStax, Chemistry 2e, section on other units for solution concentrations
    """
@_overload
def wax_for_fill(fill: _Value | _Array, load: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def wax_for_fill(fill: _Value | _Array | _Column, load: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def wax_for_oil(oil: _Value, load: _Value) -> float:
    """Wax that a weight of oil is enough for, to use a bottle up.

    >>> wax_for_oil(oil=40, load=0.08)
    500.0

    Parameters
    ----------
    oil : 0 or more g
        fragrance oil to weigh out
    load : 0 to 0.5 of wax weight
        fragrance load: oil as a share of wax weight (8% is 0.08)

    Returns
    -------
    0 or more g
        wax in the melt, before any oil

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: load must be more than 0.

    References
    ----------
    common practice, no source
    """
@_overload
def wax_for_oil(oil: _Value | _Array, load: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def wax_for_oil(oil: _Value | _Array | _Column, load: _Value | _Array | _Column) -> _pd.Series[float]: ...
def wax_parts(wax: _Value, shares: _Cells) -> list[float]:
    """Every wax and additive of a blend, from the shares; the shares must add up to 1.

    >>> wax_parts(wax=1000, shares=[0.7, 0.25, 0.05])
    [700.0, 250.0, 50.0]

    Parameters
    ----------
    wax : 0 or more g
        wax in the melt, before any oil
    shares : list, each 0 to 1 of the blend
        share of each wax or additive in the blend; together 1

    Returns
    -------
    list, each 0 or more g
        each wax or additive to weigh out, in the order of the shares

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: the shares must add up to 1.

    References
    ----------
    common practice, no source
    """
@_overload
def wax_that_stays(diameter: _Value, density: _Value, depth: _Value = 13.0) -> float:
    """Wax that stays in a round vessel when burning has to stop, by the depth that is left.

    Fire departments say to stop at half an inch (13 mm) in a container. For
    another shape take a volume function and `fill_weight`.

    >>> round(wax_that_stays(diameter=75, density=0.9), 1)
    51.7

    Parameters
    ----------
    diameter : 10 to 2000 mm
        an inside length of the vessel
    density : 0.5 to 1.5 g/ml
        weight of a millilitre of the wax, at the temperature it is filled
    depth : 0 to 500 mm; 13.0 if left out
        depth of wax at which burning stops

    Returns
    -------
    0 or more g
        wax that stays in the vessel when burning stops

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    elementary geometry; OpenStax, Prealgebra 2e (cylinder) and Calculus (solids cut across); the depth: common practice, no source
    """
@_overload
def wax_that_stays(diameter: _Value | _Array, density: _Value | _Array, depth: _Value | _Array = 13.0) -> _npt.NDArray[_np.float64]: ...
@_overload
def wax_that_stays(diameter: _Value | _Array | _Column, density: _Value | _Array | _Column, depth: _Value | _Array | _Column = 13.0) -> _pd.Series[float]: ...
@_overload
def wax_to_lower_load(scented: _Value, load: _Value, wanted: _Value) -> float:
    """Plain wax to add to wax that is already scented, to bring it down to a lower load.

    >>> round(wax_to_lower_load(scented=550, load=0.1, wanted=0.08), 6)
    125.0

    Parameters
    ----------
    scented : 0 or more g
        wax and oil together, as poured into a vessel or a batch
    load : 0 to 0.5 of wax weight
        load that it has now: oil as a share of wax weight (8% is 0.08)
    wanted : 0 to 0.5 of wax weight
        load wanted: oil as a share of wax weight (8% is 0.08)

    Returns
    -------
    0 or more g
        wax in the melt, before any oil

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: the wanted load must be more than 0.
        With the words: the wanted load must not be above the load it has; to raise it use oil_to_raise_load.

    References
    ----------
    mass balance of a mixture; OpenStax, Intermediate Algebra 2e, mixture applications
    """
@_overload
def wax_to_lower_load(scented: _Value | _Array, load: _Value | _Array, wanted: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def wax_to_lower_load(scented: _Value | _Array | _Column, load: _Value | _Array | _Column, wanted: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def weigh_for_pot(each: _Value, pot: _Value, melt: _Value, step: _Value) -> float:
    """How much of one part goes into a pot, to the scale's step: a candle needs `each` out of `melt`.

    >>> weigh_for_pot(each=16, pot=2160, melt=216, step=1)
    160.0

    Parameters
    ----------
    each : 0 or more g
        what one candle takes of this part, in any unit, the same for all
    pot : 0 or more g
        what is melted in this pot, in any unit, the same for all
    melt : 0 or more g
        what one candle takes in all, in any unit, the same for all
    step : 0 or more g
        the smallest step the scale shows, in any unit, the same for all

    Returns
    -------
    0 or more g
        a weight, in any unit; the answer is in the same unit

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: step must be more than 0.
        With the words: melt must be more than 0.

    References
    ----------
    common practice, no source
    """
@_overload
def weigh_for_pot(each: _Value | _Array, pot: _Value | _Array, melt: _Value | _Array, step: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def weigh_for_pot(each: _Value | _Array | _Column, pot: _Value | _Array | _Column, melt: _Value | _Array | _Column, step: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def weigh_out(each: _Value, count: _Value, step: _Value) -> float:
    """What to weigh out for a batch, to the scale's step.

    >>> weigh_out(each=15.52, count=24, step=0.5)
    372.5

    Parameters
    ----------
    each : 0 or more g
        what goes into one candle, in any unit, the same for all
    count : whole numbers 0 to 1000000
        how many candles to make
    step : 0 or more g
        the smallest step the scale shows, in any unit, the same for all

    Returns
    -------
    0 or more g
        a weight, in any unit; the answer is in the same unit

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: step must be more than 0.

    References
    ----------
    common practice, no source
    """
@_overload
def weigh_out(each: _Value | _Array, count: _Value | _Array, step: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def weigh_out(each: _Value | _Array | _Column, count: _Value | _Array | _Column, step: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def weighing_error_allowed(net: _Value) -> float:
    """Error that the weighing of a package may have at most, in the EU and GB: a fifth of the tolerable one.

    >>> round(weighing_error_allowed(net=180), 6)
    1.62

    Parameters
    ----------
    net : 5 to 25000 g
        net weight to declare: wax and oil, no vessel, lid or wick tab

    Returns
    -------
    0 or more g
        error that weighing may have

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    SR (NI) 2011/331, Schedule 2, 1.3; WELMEC Guide 6.9
    """
@_overload
def weighing_error_allowed(net: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def weighing_error_allowed(net: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def weight_in_pots(weight: _Value, pots: _Value) -> float:
    """What is weighed out in all, where each pot takes the same weight, to the scale's step.

    >>> weight_in_pots(weight=2173, pots=3)
    6519.0

    Parameters
    ----------
    weight : 0 or more g
        a weight, in any unit; the answer is in the same unit
    pots : whole numbers 0 to 1000000
        how many pots

    Returns
    -------
    0 or more g
        a weight, in any unit; the answer is in the same unit

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    algebra from the definitions
    """
@_overload
def weight_in_pots(weight: _Value | _Array, pots: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def weight_in_pots(weight: _Value | _Array | _Column, pots: _Value | _Array | _Column) -> _pd.Series[float]: ...
@_overload
def wholesale_price(retail: _Value, discount: _Value) -> float:
    """Wholesale price that a shop pays you, from the retail price and the shop's discount on it.

    The other way round: `retail_from_wholesale`.

    >>> wholesale_price(retail=24, discount=0.5)
    12.0

    Parameters
    ----------
    retail : 0 or more
        retail price: what the buyer in the shop pays, with tax in it or not
    discount : 0 to 0.99 of the price
        what is taken off the price

    Returns
    -------
    0 or more
        wholesale price: what the shop pays the maker

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    markup, discount and sales tax: OpenStax, Contemporary Mathematics 6.2
    """
@_overload
def wholesale_price(retail: _Value | _Array, discount: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def wholesale_price(retail: _Value | _Array | _Column, discount: _Value | _Array | _Column) -> _pd.Series[float]: ...
def wick_signs(seen: _Cells) -> list[_SignRead]:
    """What was seen on a burn, and which way to go next: stop conditions first, then smaller, then larger.

    Change one thing at a time and burn at least three pieces of each. Where signs
    point both ways, a kind of wick or the wax may be wrong rather than the size.
    Never leave a test burning alone, and keep a lid at hand.

    >>> wick_signs(seen=["tunneling", "flame over 75 mm"])[0].direction
    'stop'

    Parameters
    ----------
    seen : list, each text
        what was seen, such as soot, mushrooming, tunneling or drowning

    Returns
    -------
    list, each a row of sign, direction, what_to_do
        A sign, which way the next test goes, and what to do.
    sign : text
        what was seen
    direction : "stop" or "a smaller wick" or "a larger wick" or "look at something else first"
        which way the next test goes
    what_to_do : text
        what to do, and what else it may be

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    common practice, no source; what stops a burn: EN 15493 by trade and test-house summaries, unconfirmed
    """
def write_down(amounts: _Cells, costs: _Cells, worth: _Cells) -> float:
    """What is written off stock at the lower of cost and net realisable value: an expense of the period.

    >>> write_down(amounts=[10, 12], costs=[9, 6], worth=[8, 7])
    10.0

    Parameters
    ----------
    amounts : list, each 0 or more
        how much there is of each item
    costs : list, each 0 or more money per unit
        what one of each item cost
    worth : list, each 0 or more money per unit
        what one of each item brings after the costs to finish and to sell it

    Returns
    -------
    0 or more
        what the stock on hand is worth at cost

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.

    References
    ----------
    lower of cost and net realisable value: IAS 2, from summaries; OpenStax, Financial Accounting 10.1
    """
@_overload
def yield_of(good: _Value, made: _Value) -> float:
    """Yield of a batch: the share that came out good enough to sell.

    >>> yield_of(good=23, made=25)
    0.92

    Parameters
    ----------
    good : whole numbers 0 to 1000000
        how many came out good
    made : whole numbers 0 to 1000000
        how many were made

    Returns
    -------
    0 to 1 of what was made
        share that came out good enough to sell

    Raises
    ------
    ValueError
        Where an argument or the result is out of its range.
        With the words: there cannot be more good ones than were made.
        With the words: made must be more than 0.

    References
    ----------
    common practice, no source
    """
@_overload
def yield_of(good: _Value | _Array, made: _Value | _Array) -> _npt.NDArray[_np.float64]: ...
@_overload
def yield_of(good: _Value | _Array | _Column, made: _Value | _Array | _Column) -> _pd.Series[float]: ...
