"""The tabs for labels: oil sheets as they are read, hazards of recipes as they stand, texts with their status.

Classes are those of CLP Annex I, which tests/published/test_hazard.py checks against its printed examples; here it is
whether the right lines and loads reach them, and whether what is written is known to be old once it is.
"""

import re

import books
import oils
import openpyxl
import pytest

from candlecalc.commands import make
from candlecalc.season import hazards
from candlecalc.season.oils import poured
from candlecalc.workbook.tabs.label.oil_sheets import MAKE_IT_NEW

LINALOOL = (oils.PEAR, "Linalool 78-70-6", "1-5 %", "Skin Sens. 1B H317")
TIN, TUMBLER, BOX = "Pear and honey tin", "Orange and clove tumbler", "Two tins in a box"
CHANGED = f"Recipe or sheets changed since: {MAKE_IT_NEW}"


@pytest.fixture(scope="module")
def made(tmp_path_factory):
    return books.Book(oils.season(), tmp_path_factory.mktemp("labels") / "year.xlsx")


def shown(made, values, product, *keys):
    return [values.get(made.cell("hazards", key, made.row("recipes", product)), "") for key in keys]


def test_a_candle_has_the_classes_of_its_oils_at_their_loads(made):
    # At a load of 8 % limonene is 30 % x 0.08 / 1.08, 2.22 % of the candle: from 1 % on Skin Sens. 1B brings its class
    # (CLP Annex I, Table 3.4.5). To water: 10 x 2.22 of Chronic 1 and 1.48 of Chronic 2 are 23.7, under 25 %; ten times
    # as much is over it: Chronic 3 (Table 4.1.2).
    values = made.held
    assert shown(made, values, TIN, "classes", "signal", "pictograms", "statements") == [
        "Skin Sens. 1; Aquatic Chronic 3",
        "Warning",
        "GHS07",
        "H317; H412",
    ]
    assert shown(made, values, TIN, "names") == ["d-Limonene; Hexyl cinnamal; Citral"]


def test_a_candle_under_its_class_has_the_names_that_its_statement_holds():
    # CLP Annex II, 2.8; Annex I, Table 3.4.6: 5 % of Skin Sens. 1B at a load of 8 % is 0.37 %, from 0.1 % on EUH208.
    little = [(oils.PEAR, "Linalool 78-70-6", "2-5 %", "Skin Sens. 1B H317", None)]
    row = next(row for row in hazards.found(oils.season(little)) if oils.PEAR in row["state"])
    assert (row["statements"], row["names"], row["classes"]) == (
        "EUH208",
        "Linalool",
        "no class reached from the lines typed",
    )


def test_a_load_a_step_above_the_last_that_keeps_the_classes_brings_those_that_are_told(made):
    values = made.held
    load, told = shown(made, values, TIN, "keeps_to", "then")
    classes = {}
    for step in (0, 0.001):
        season = oils.season()
        season.tables["recipes"].loc[made.row("recipes", TIN), "load"] = load + step
        classes[step] = next(row["classes"] for row in hazards.found(season) if oils.PEAR in row["state"])
    assert classes == {0: shown(made, values, TIN, "classes")[0], 0.001: told}


def test_no_label_tab_judges_a_candle(made):
    # The words of DEVELOPERS.md, Rules.
    held = openpyxl.load_workbook(made.path, read_only=True)
    tabs = ["Oil sheets", "Hazards", "Label texts", "Papers", "Labels", "Weights", "Hazards found", "Our texts"]
    told = " ".join(str(cell) for tab in tabs for row in held[tab].iter_rows(values_only=True) for cell in row if cell)
    assert re.findall(r"\b(safe|approved|compliant|certified|suitable|non-?toxic|harmless)\b", told, re.I) == []


def test_a_box_of_candles_has_no_hazards_of_its_own(made):
    assert shown(made, made.held, BOX, "classes", "status") == ["", ""]


def test_the_state_in_python_is_the_one_in_cells_in_every_locale(made, office, office_in):
    comma = office_in("de-DE")  # decimals have commas, and lists semicolons
    for values in (made.held, office.recalculated(made.path), comma.recalculated(made.path)):
        assert {shown(made, values, name, "status")[0] for name in (TIN, TUMBLER, BOX)} == {""}
        assert values[made.named("master_check")] == "Numbers agree"
        found = [values[made.cell("poured", "state", made.row("recipes", name))] for name in (TIN, TUMBLER)]
        assert found == [row["state"] for row in hazards.found(made.season)[1::-1]]


def line(made, key, row):
    return made.cell("oil_sheets", key, row)


@pytest.fixture(scope="module")
def changes(made):
    """What a maker may change, by what it is: the cells, and the products whose hazards are then old."""
    recipe = made.row("recipes", TIN)
    return {
        "load": ({made.cell("recipes", "load", recipe): 0.081}, [TIN]),
        "concentration": ({line(made, "concentration", 0): "3-6 %"}, [TIN]),
        "oil of a line": ({line(made, "material", 4): oils.PEAR}, [TIN, TUMBLER]),
        "line taken out": ({line(made, key, 0): None for key in oils.KEYS}, [TIN]),
        "line added": (
            {line(made, key, 6): value for key, value in zip(oils.KEYS, LINALOOL, strict=True)},
            [TIN],
        ),
        "sample": ({line(made, "sample", 2): 0.1}, [TIN]),
        "dye": ({made.cell("recipes", "dye_share", made.row("recipes", TUMBLER)): 0.0004}, [TUMBLER]),
        "price": ({made.cell("materials", "pack_price", 0): 99}, []),
        "name of case": ({made.cell("recipes", "oil_first", recipe): oils.PEAR.upper()}, []),
    }  # fmt: skip


WHAT = ["load", "concentration", "oil of a line", "line taken out", "line added", "sample", "dye", "price"]


def test_what_hazards_rest_on_makes_them_old_and_nothing_else_does(made, office, changes):
    assert [what for what in changes if what != "name of case"] == WHAT
    tabs = {made.plan.layouts["hazards"].title, made.named("master_check")[0]}
    each = office.edited_each(made.path, [cells for cells, _ in changes.values()], times=2, tabs=tabs)
    for (what, (_, old)), values in zip(changes.items(), each, strict=True):
        told = {name for name in (TIN, TUMBLER) if shown(made, values, name, "status") == [CHANGED]}
        assert told == set(old), what
        assert {name for name in old if shown(made, values, name, "classes") != [""]} == set(), what
        assert (values[made.named("master_check")] == "Numbers agree") == (not old), what


def test_lines_that_were_sorted_find_what_was_read_of_them(made, office):
    rows = [row for _, row in made.rows("oil_sheets")]
    last = len(rows) - 1
    turned = {
        line(made, key, row): rows[last - row][key] for row in range(len(rows)) for key in (*oils.KEYS, "specifics")
    }
    values = office.edited(made.path, turned)
    read = [values[line(made, "read", row)] for row in range(len(rows))]
    assert read == [made.held[line(made, "read", last - row)] for row in range(len(rows))]
    assert {values.get(line(made, "status", row), "") for row in range(len(rows))} == {""}


@pytest.mark.parametrize("typed", ["Skin Sens. 1 H317 (note ?*~)", "x" * 300])
def test_a_line_with_wild_cards_or_of_any_length_is_found(typed, tmp_path):
    season = oils.season([(oils.PEAR, "Citral 5392-40-5", "3-5 %", typed, None)])
    made = books.Book(season, tmp_path / "long.xlsx")
    assert made.held[line(made, "place", 0)] == 2


def test_what_is_not_read_of_a_line_is_told_on_its_row_and_by_check(tmp_path):
    made = books.Book(oils.season([(oils.PEAR, "Citral 5392-40-5", "3-5 %", "Zonk. 5", None)]), tmp_path / "odd.xlsx")
    assert made.held[line(made, "status", 0)] == "Not read: Zonk. 5"
    said = make.check(made.path).lines
    assert any("Oil sheets: every line is read: Oil sheets, row 4" in each for each in said)


def test_a_concentration_that_cannot_be_meant_is_told_and_stops_nothing(tmp_path):
    made = books.Book(oils.season([(oils.PEAR, "Citral 5392-40-5", "0.05", "H317", None)]), tmp_path / "share.xlsx")
    values = made.held
    assert values[line(made, "status", 0)].startswith("Not read: ")
    assert shown(made, values, TIN, "status")[0].startswith("Not counted: ")


def test_an_oil_without_a_sheet_is_named(tmp_path):
    made = books.Book(oils.season(oils.SHEETS[3:4]), tmp_path / "lacking.xlsx")
    values = made.held
    told = f"Not counted: no data sheet typed: {oils.CLOVE}; no data sheet typed: {oils.AMBER}"
    assert shown(made, values, TUMBLER, "status") == [told]


def test_check_says_when_what_is_written_is_of_earlier_entries(tmp_path):
    made = books.Book(oils.season(), tmp_path / "old.xlsx")
    assert make.check(made.path).lines == [f"{made.path}: Numbers agree"]
    sheet, cell = line(made, "concentration", 0)
    typed = rf'(<c r="{cell}"[^>]*><is><t>)[^<]*'
    changed = books.rewritten(made.path, tmp_path / "changed.xlsx", sheet, typed, r"\g<1>3-9 %")
    said = make.check(changed).lines
    assert [each for each in said if "written for recipes or sheets that have changed since" in each]


def test_of_one_oil_no_share_need_be_typed():
    recipe = {"load": 0.08, "oil_first": oils.PEAR, "share_first": None, "oil_second": None, "share_second": None,
              "oil_third": None, "share_third": None, "dye": None, "dye_share": None}  # fmt: skip
    assert poured(recipe) == [(oils.PEAR, 0.08, False)]


TEXTS = [
    {"part": "hazard", "code": "H317"},
    {"part": "fire", "code": "Keep away from children", "confirmed_on": books.DATED, "against": "the standard"},
    {"part": "hazard", "code": "H412", "text": "Own words of the maker."},
    {"part": "line", "label": "base", "code": "maker", "text": "Pell and Osgood"},
]


def test_a_text_says_its_words_how_ours_were_read_and_that_proof_stands_until_it_is_confirmed(tmp_path):
    made = books.Book(oils.season(labels=TEXTS), tmp_path / "texts.xlsx")
    values = made.held
    columns = ("shown", "read", "state")
    found = [[values.get(made.cell("labels", key, row), "") for key in columns] for row in range(4)]
    proof = "PROOF stands across the label"
    assert found == [
        ["May cause an allergic skin reaction.", "read in the text", proof],
        ["Keep away from children.", "second-hand", ""],
        ["Own words of the maker.", "read in the text", proof],
        ["Pell and Osgood", "", proof],
    ]


def test_labels_says_under_whose_rules_a_candle_is_sold_what_it_declares_and_how_high(tmp_path, office):
    season = oils.season()
    for row, rules in enumerate(("us", "eu", "gb")):
        season.tables["places"].loc[row, "rules"] = rules
    made = books.Book(season, tmp_path / "sold.xlsx")
    keys = ("us", "gb", "eu", "ounces", "grams", "figures_us", "figures_metric", "hazards")
    for values in (made.held, office.recalculated(made.path)):
        found = [values.get(made.cell("labelled", key, made.row("recipes", TIN)), "") for key in keys]
        # The fill, 4.05 oz and a little, is over 114 g; its panel is 15.6 cm2, under 5 in2: 1/16 in. Up to 200 g metric
        # figures are
        # 3 mm. 16 CFR 500.21(b) and Directive 76/211/EEC, as tests/published/test_label.py has them.
        assert found[:5] == ["yes", "yes", "", 4.05, 114]
        assert found[5:7] == pytest.approx([25.4 / 16, 3]) and found[7] == "H317; H412"
        assert values.get(made.cell("labelled", "panel", made.row("recipes", BOX)), "") == ""


def test_a_text_that_is_not_whole_says_left_of_it_what_is_missing(tmp_path):
    texts = [{"part": "line", "text": "Pell and Osgood"}, {"part": "hazard"}, {**TEXTS[0], "confirmed_on": books.DATED}]
    made = books.Book(oils.season(labels=texts), tmp_path / "texts.xlsx")
    values = made.held
    told = [values.get(made.cell("labels", "status", row), "") for row in range(3)]
    assert told[0] == "Label: choose front or warning or base"
    assert [words.partition(" ")[0] for words in told[1:]] == ["Code:", "Against:"]
