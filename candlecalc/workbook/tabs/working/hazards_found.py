"""The Hazards found tab: what the oil sheets bring to each recipe, as it stood when the workbook was made."""

from candlecalc.season.hazards import found
from candlecalc.season.tables.set_up import RECIPES
from candlecalc.workbook.cells.values_tab import value, values_tab
from candlecalc.workbook.tabs.registry import register

# What is found, by key: its head on both tabs, and how wide its words are.
WORDS = {
    "classes": ("Classes", 40),
    "signal": ("Signal word", 10),
    "pictograms": ("Pictograms", 14),
    "statements": ("Statements", 16),
    "names": ("Names to print", 50),
    "precautions": ("Precautions to choose from", 45),
    "duties": ("Duties", 55),
    "small": ("Up to 125 ml", 55),
    "unconfirmed": ("Unconfirmed: check against", 60),
    "not_counted": ("Not counted", 36),
    "then": ("Classes above that load", 40),
}
KEEPS_TO = "Classes hold up to, of wax"

TAB = values_tab(
    "Hazards found",
    "What the oil sheets brought to each recipe when this workbook was made, by the rules of the EU.",
    "hazards_found",
    RECIPES,
    {
        "state": value("Written for", width=60),
        "keeps_to": value(KEEPS_TO, "percent"),
        **{key: value(head, "note", width) for key, (head, width) in WORDS.items()},
    },
    found,
)
register(TAB, __name__, 54, records=True)
