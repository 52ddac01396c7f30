"""What is typed once: the settings, and what a workbook is made for."""

from candlecalc.calc import terms
from candlecalc.season.fields import Field, Table, term_of
from candlecalc.season.tables.books import ACCRUAL, CASH
from candlecalc.season.tables.taken import MONEY, POT, RATE, STATED, YES_NO, entry

# How stock is valued.
FIFO, AVERAGE = "fifo", "average"
WAYS_OF_VALUING = {FIFO: "first in, first out", AVERAGE: "at the moving average"}

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
        Field("season_hours", "Hours at the bench, a season", "hours of making that the two sums above are spread over", entry(terms.Activity, 1, 20e3), required=True),
        Field("waste", "Waste, of what is weighed out", "wax and oil left in pots and jugs", term_of(terms.Waste), required=True),
        Field("price_step", "Price step, {money}", "the step between the prices you use", entry(terms.PriceStep, high=1e5), required=True),
        Field("price_ending", "Price ending, {money}", "what your prices end in: 0.95 for 17.95; below the step", entry(terms.Ending, high=1e5), required=True),
        Field("scale_step", "Scale step, {weight}", "the smallest step your scale shows", term_of(terms.Step), required=True),
        Field("largest_pot", "Largest pot, {weight}", "wax and oil that your largest pot holds with room to stir", POT, required=True),
        Field("as_of", "As of", "the day for which stock and recipes are shown; the latest day in your records if left out", date=True),
        Field("books", "Books are kept", f"{ACCRUAL}: sales and bills count on their day; {CASH}: once they are paid; {ACCRUAL} if left out", choices=(ACCRUAL, CASH)),
        Field("year_from", "Financial year from", "the first day of your financial year; a hand-over begins with it where it is not told from when", date=True),
        Field("closed_to", "Books closed to", "the last day that your bookkeeper has closed: what you type for a day before that is handed over as a later entry", date=True),
        Field("spread_tests", "Tests in full cost", "yes: what tests cost, by the year's records, is spread over the candles made", choices=YES_NO),
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
        Field(
            "stock",
            "Stock is valued",
            "; ".join(f"{way}: {words}" for way, words in WAYS_OF_VALUING.items()),
            choices=tuple(WAYS_OF_VALUING),
        ),
    ),
    usual_rows=0,
)

# What is typed once, wherever it stands: by its key, in the order of settings.csv.
ONCE = (SETTINGS, WHAT_IF, MADE_FOR)
SETTING_FIELDS: dict[str, Field] = {field.key: field for table in ONCE for field in table.fields}
