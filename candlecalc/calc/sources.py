"""Where the formulas come from, each written once."""

PRACTICE = "common practice, no source"
ALGEBRA = "algebra from the definitions"
GEOMETRY = "elementary geometry; OpenStax, Prealgebra 2e (cylinder) and Calculus (solids cut across)"
DENSITY = "density is mass over volume: OpenStax, Chemistry 2e, measurements"
WATER = (
    "water's density: Tanaka et al., Metrologia 38 (2001) 301, from memory, checked against IAPWS-95; "
    "weighing in air: the buoyancy correction of the conventional mass (air 0.0012, weights 8.0 g/ml), from memory"
)
MASS_PERCENT = "percent by mass: OpenStax, Chemistry 2e, section on other units for solution concentrations"
MIXING = "mass balance of a mixture; OpenStax, Intermediate Algebra 2e, mixture applications"
RESOLUTION = "limit of error of half a step for each reading; GUM, from memory"
BLEND_LIMIT = "derived: a material's share in an oil is at most its own limit over that oil's certified limit"
LANDED_COST = (
    "cost of purchase, freight and tax not recovered in it: IAS 2, from summaries; OpenStax, Financial Accounting 6"
)
LARGEST_REMAINDER = "largest remainder (Hamilton): OpenStax, Contemporary Mathematics 11.4"
JOB_COST = "job cost: OpenStax, Managerial Accounting, chapter 4"
OVERHEAD = "predetermined overhead rate: OpenStax, Managerial Accounting 4.4"
BREAK_EVEN = "cost, volume and profit: OpenStax, Managerial Accounting, chapter 3"
MARKUP = "markup, discount and sales tax: OpenStax, Contemporary Mathematics 6.2"
HEAT = (
    "heat to warm and to melt: OpenStax, College Physics 2e, temperature change and heat capacity, phase change; "
    "defaults for paraffin second-hand: 2.1 set, 2.2 melted, 190 (150 to 220) to melt: put in your data sheet's"
)
HEAT_BALANCE = (
    "heat lost is heat gained: OpenStax, College Physics 2e, heat capacity; melted wax 2.2 second-hand, oil taken to "
    "warm as wax does, no source"
)
HEATER = "power times time: OpenStax, College Physics 2e, phase change; Cengel, heat transfer, example 1-2, second-hand"
COOLING = "Newton's law of cooling: OpenStax, Calculus volume 2, exponential growth and decay"
STILL_AIR = (
    "loss to still air as the 5/4 power of how much warmer it is: O'Sullivan, American Journal of Physics 58 (1990), "
    "page 956, from memory"
)
TEMPERATURE = "NIST SP 811 (2008), appendix B.8"
EXPANSION = (
    "thermal expansion: OpenStax, College Physics 2e, thermal expansion of solids and liquids; 0.00085 per C for "
    "melted wax worked from alkanes in a reference library"
)
SETTING = "derived from the two densities; wax draws together by 5 to 15 %, second-hand, texts disagree"
FLASH = "flash point as the NIST glossary of fire terms defines it; how near is common practice, no source"
CLP = (
    "Regulation (EC) No 1272/2008 (CLP), Annex I: limits as consolidated 2026-05-01, read in a transcription that "
    "quotes its tables; wording of 2025-09-01"
)
REGRESSION = "straight line by least squares, interval of its slope: NIST StRD (Norris), ISO/TS 28037 by its examples"
INVERSE = "exact (Fieller) interval of a calibration line: Graybill and Iyer, Regression Analysis, 6, second-hand"
MEAN = "interval of a mean: OpenStax, Introductory Statistics 2e, confidence intervals; of one more, from memory"
BURNING = (
    "lower heating values worked from heats of formation in a reference library: paraffin 43.5, stearic acid 36.9; "
    "put in your data sheet's"
)
ORIGIN = (
    "line through the origin: NIST StRD (NoInt1); a candle's flame grows with its fuel: Sunderland et al., Proceedings "
    "of the Combustion Institute 33 (2011) 2489, second-hand"
)
POOL = f"{REGRESSION}; an hour for each inch: {PRACTICE}"
STOPS = (
    "EN 15493 by trade and test-house summaries, unconfirmed: check against the standard; a maker's log is no "
    "conformity test"
)
WICKS = f"{PRACTICE}: one thing is changed at a time, and a single piece proves nothing"
SIGNS_OF_A_BURN = f"{PRACTICE}; what stops a burn: EN 15493 by trade and test-house summaries, unconfirmed"
ORDER_QUANTITY = "economic order quantity: the library stockpyl, after Snyder and Shen, example 3.1"
PRICE_BREAKS = "order quantity with a price on all units: the library stockpyl, after Snyder and Shen, chapter 3"
REORDER = "reorder point with demand and lead time normal: Stevenson, Operations Management, 14th edition, chapter 12"
ONE_SEASON = "one-season stock (newsvendor): the library stockpyl, after Snyder and Shen, examples 4.1 to 4.7"
PRODUCTION_BUDGET = "production and materials budgets: OpenStax, Managerial Accounting 7.2"
LEVEL_OR_FOLLOW = "level and chase plans: a textbook exercise with its answers, second-hand (homeworkhost 454395)"
LOT_SIZING = "Wagner and Whitin's lot sizes: the library stockpyl, after Snyder and Shen, example 3.9"
NET_REQUIREMENTS = "material requirements planning: Chase and Jacobs, 14th edition, second-hand; answers of an exercise"
EVEN_SHARES = "largest remainder (OpenStax, Contemporary Mathematics 11.4); even shares up to what each wants: algebra"
CONSTRAINT = "contribution margin per hour of labour: Accounting for Managers (Saylor), 6.5"
COMMISSION = "ordinary commission on what is sold: accountingformanagement.org, consignment, by its example"
DIMENSIONAL = "dimensional weight: carriers' published rules; IATA's 6000 cubic centimetres a kilogram, second-hand"
CALENDAR = "days of the calendar"
MONTHS = "months of the calendar, as EDATE counts them: ISO/IEC 26300 (OpenFormula), from memory"
VALUATION = "FIFO, average and LIFO, periodic and perpetual: OpenStax, Financial Accounting 10.1 to 10.3"
LOWER_VALUE = "lower of cost and net realisable value: IAS 2, from summaries; OpenStax, Financial Accounting 10.1"
TURNOVER = "inventory turnover and days: OpenStax, Financial Accounting 10.5"
COUNTING = "adjusting to a count: OpenStax, Financial Accounting 6.3"


def unconfirmed(against: str) -> str:
    """The words for what was not read in its text."""
    return f"unconfirmed: check against {against}"
