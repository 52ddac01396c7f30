"""Every line of Checks can fail: a fault of its kind turns it, and turns nothing that still holds."""

import datetime

import books
import openpyxl
import pytest

from candlecalc.workbook.cells.layout import FIRST_ROW
from candlecalc.workbook.tabs.look.checks import MEND_FIRST
from candlecalc.workbook.tabs.make import batch
from candlecalc.workbook.tabs.make.costing import RISE_LINE

JAR, PLAIN, BOX, BAR = "Fig and cedar jar", "Plain evening tumbler", "Two tins in a box", "Fig melt bar"
WAX, OIL, NEW = "Soft plant wax for jars", "Fig and cedar oil", "New set"
SUMS = "Wax and oil in parts make up the fills"
SETS_CARRY = "Sets carry what their candles cost"
JUGS = "Batch: the jugs hold what is weighed"
# What a maker may mean is to be looked at, and no more.
LIKELY = ("Materials", "Vessels", "Recipes", "Extra parts", "Places sold", "Prices")
UNLIKELY = {*(f"{tab}: entries are likely" for tab in LIKELY), "Recipes: entries go together"}


def faults(demo, values):
    """Line -> (what is typed, other lines that cannot but turn with it)."""

    def new(table, **entries):
        return {demo.cell(table, key, len(demo.rows(table))): value for key, value in entries.items()}

    def over(table, key, row, by):
        cell = demo.cell(table, key, row)
        return {cell: values[cell] + by}

    new_set = new("recipes", product=NEW, kind="set", minutes=1, setup=1, usual_batch=1)
    priced = new("prices", product=NEW, place="Own web shop", price=99)
    return {
        "Settings are what they take": ({books.setting("maker"): "=NA()"}, ()),
        "The season ends after it begins": ({books.setting("last_day"): datetime.date(2027, 8, 1)}, ()),
        "Materials: every row begun is whole": (new("materials", supplier="Somebody"), ()),
        "Materials: no pack unit at odds with the kind": (
            {demo.cell("materials", "pack_unit", "Work gloves, heat proof"): "kg"},
            (),
        ),
        "Materials: no melting range upside down": ({demo.cell("materials", "melt_high", WAX): 100}, ()),
        "Materials: no temperature above its ceiling": ({demo.cell("materials", "ceiling", WAX): 150}, ()),
        "Materials: no melting range above the ceiling": (
            {demo.cell("materials", "melt_high", WAX): 198, demo.cell("materials", "add_at", WAX): 190,
             demo.cell("materials", "heat_to", WAX): None},
            (),
        ),
        "Materials: entries are likely": ({demo.cell("materials", "on_hand", WAX): 46024}, ()),
        "Vessels: every row begun is whole": (new("vessels", vessel="Bowl"), ()),
        "Vessels: no floor above the brim": (
            new("vessels", vessel="Bowl", use="mould", measured="box", top=3, bottom=3, height=0.5, base=0.6,
                headspace=0),
            (),
        ),
        "Vessels: no melt pool wider than the vessel": ({demo.cell("vessels", "diameter", "Smoke tumbler"): 3.1}, ()),
        "Vessels: entries are likely": ({demo.cell("vessels", "fill", "Clear jar"): 7.4,
                                         demo.cell("vessels", "fill_wax", "Clear jar"): WAX}, ()),
        "Recipes: every row begun is whole": (new("recipes", product="Next"), ()),
        "Recipes: entries are likely": ({demo.cell("recipes", "minutes", PLAIN): 1 / 16}, ()),
        "Extra parts: every row begun is whole": (new("extras", count=2), ()),
        "Extra parts: no wax, oil or dye as an extra part": (new("extras", product=JAR, material=OIL, count=0.001), ()),
        "Extra parts: entries are likely": ({demo.cell("extras", "count", BAR): 1 / 16}, ()),
        "Recipes: entries go together": ({demo.cell("materials", "usual_load", OIL): 0.2}, ()),
        "Recipes: no wax without its density": (
            {demo.cell("materials", "density", "Firm plant wax for melts"): None},
            ("Materials: entries are likely", "Recipes: entries go together", "Parts of the cost make up the full cost",
             SETS_CARRY, SUMS, "Prices are cost, fees and profit"),
        ),
        "Sets: every row begun is whole": (new("sets", count=2), ()),
        "Places sold: every row begun is whole": (new("places", place="Fair"), ()),
        "Places sold: no tax paid by a maker who is not registered": ({books.setting("registered"): "no"}, ()),
        "Places sold: entries are likely": ({demo.cell("places", "fixed_cost", "Own web shop"): 46024}, ()),
        "Prices: every row begun is whole": (new("prices", product=JAR), ()),
        "Prices: no price below full cost": (
            {demo.cell("prices", "price", f"{BAR} @ Saturday market stall"): 0.5},
            ("Prices: no margin under the target",),
        ),
        "Prices: no margin under the target": (
            {demo.cell("prices", "price", f"{JAR} @ Saturday market stall"): 16.5},
            (),
        ),
        "Prices: entries are likely": (
            {demo.cell("prices", "price", f"{JAR} @ Saturday market stall"): 46024},
            (),
        ),
        "Recipes: no load above the wax's highest": ({demo.cell("materials", "highest_load", WAX): 0.07}, ()),
        "Recipes: no load above the oil supplier's highest": ({demo.cell("materials", "highest_load", OIL): 0.05}, ()),
        "Recipes: no load above the certified limit": ({demo.cell("materials", "certified_limit", OIL): 0.05}, ()),
        "Recipes: no oil shares that do not add up to 1": ({demo.cell("recipes", "share_first", JAR): 0.9}, (SUMS,)),
        "Recipes: no part without its share, or share without its part": (
            {demo.cell("recipes", "dye", "Smoked plum jar"): None},
            (),
        ),
        "Recipes: no candle without its wick": ({demo.cell("recipes", "wick", "Fir square, two wicks"): None}, ()),
        "Recipes: no load without an oil, or oil without a load": (
            {demo.cell("recipes", "oil_first", PLAIN): OIL},
            (),
        ),
        "Recipes: no set without its candles": ({**new_set, **priced}, ()),
        "Recipes: no product without a price": ({**new_set, **new("sets", set=NEW, product=BAR, count=1)}, ()),
        "The rise of materials is what it takes": ({("Costing", RISE_LINE.entry): 50}, ()),
        SUMS: (over("amounts", "wax_first", PLAIN, 0.1), ()),
        "Parts of the cost make up the full cost": (over("costing", "full", PLAIN, 0.02), (SETS_CARRY,)),
        SETS_CARRY: (over("costing", "wax", BOX, 0.02), ()),
        "Prices are cost, fees and profit": (over("prices", "profit", f"{BAR} @ Saturday market stall", 0.02), ()),
        "Batch: weights make up the melt": ({("Batch", f"B{batch.WEIGH + 1}"): 1.0}, (JUGS,)),
        JUGS: ({("Batch", f"E{batch.WEIGH + 2}"): 999.0}, ()),
        "Batch: its money is that of its pieces, but for rounding": ({("Batch", f"C{batch.LAST}"): 1.0}, ()),
        "Batch: the largest pot holds one of them at least": (
            {books.setting("largest_pot"): 4}, ("Batch: weights make up the melt", JUGS)
        ),
        "Batch: product and number can be used": ({demo.named("batch_product"): None}, ()),
    }  # fmt: skip


@pytest.fixture(scope="module")
def turned(demo, values, office, tmp_path_factory):
    """(line, {line that turned: its verdict}, lines that should, the master check) for every fault."""
    unlocked = tmp_path_factory.mktemp("unlocked") / "unlocked.xlsx"
    copy = openpyxl.load_workbook(demo.path)
    for sheet in copy.worksheets:
        sheet.protection.disable()  # formulas are typed over
    copy.save(unlocked)
    todo = faults(demo, values)
    edits = [{}, {}, *(typed for typed, _ in todo.values())]
    found = office.edited_each(unlocked, edits, times=2, tabs=["Checks"])[1:]
    assert verdicts(found[0]) == dict.fromkeys(todo, "agrees")
    return [
        (line, _turned(after), {line, *others}, after[demo.named("master_check")])
        for (line, (_, others)), after in zip(todo.items(), found[1:], strict=True)
    ]


def _turned(values):
    """The lines that do not agree."""
    return {line: verdict for line, verdict in verdicts(values).items() if verdict != "agrees"}


def verdicts(values):
    rows = [row for row in range(FIRST_ROW, 200) if ("Checks", f"G{row}") in values]
    return {values["Checks", f"A{row}"]: values["Checks", f"G{row}"] for row in rows}


def test_a_fault_of_its_kind_turns_each_line_alone(turned):
    assert {line: set(lines) for line, lines, _, _ in turned} == {line: wanted for line, _, wanted, _ in turned}


def test_the_master_check_counts_the_lines_that_turned(turned):
    for line, lines, _, master in turned:
        to_fix = list(lines.values()).count("to fix")
        assert (to_fix > 0) == (line not in UNLIKELY)
        assert master == (f"{to_fix} to fix" if to_fix else "1 to look at"), line


# Half of a pair on Recipes: a candle would weigh less of it, and cost less, without a word.
HALVES = [
    (JAR, {"share_wax": 0.2}), (JAR, {"wax_second": WAX}), (JAR, {"share_first": 0.8, "share_second": 0.2}),
    (JAR, {"oil_second": OIL}), (JAR, {"oil_third": OIL}), (JAR, {"share_first": 0.8, "share_third": 0.2}),
    (JAR, {"dye": "Plum dye flakes"}), (JAR, {"dye_share": 0.001}), ("Smoked plum jar", {"dye_share": None}),
]  # fmt: skip


def test_half_of_a_part_and_its_share_is_said_in_its_row(demo, office):
    typed = [{demo.cell("recipes", key, product): value for key, value in half.items()} for product, half in HALVES]
    for (product, half), after in zip(HALVES, demo.edited_each(office, typed), strict=True):
        assert "Part without its share" in after[demo.cell("workings", "warnings", product)], half
        assert after[demo.named("master_check")] != "Numbers agree", half


def test_sums_over_a_row_that_is_to_mend_wait_for_it_and_accuse_nobody(demo, office):
    after = office.edited(demo.path, {demo.cell("recipes", "load", JAR): 8})
    said = verdicts(after)
    assert [line for line, verdict in said.items() if verdict == "to fix"] == ["Recipes: every row begun is whole"]
    assert {said[line] for line in (SUMS, SETS_CARRY, JUGS)} == {"waits"}
    assert set(said.values()) == {"agrees", "to fix", "waits"}
    rows = [row for row in range(FIRST_ROW, 200) if after.get(("Checks", f"G{row}")) == "waits"]
    assert {after["Checks", f"H{row}"] for row in rows} == {MEND_FIRST}
    assert after[demo.named("master_check")] == "1 to fix"
