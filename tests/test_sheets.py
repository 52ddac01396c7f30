"""Data sheets at the terminal: section 3 read from a file or a pasted block, and a label in three parts.

The lines are made up; how they are printed is common practice, no source. CAS numbers are those of the substances.
"""

import contextlib
import textwrap

import pytest
from click.testing import CliRunner

from candlecalc.commands.cli import main
from candlecalc.faces.asked import sheet

BLOCK = """
SECTION 3: Composition/information on ingredients
Linalool   78-70-6   201-134-4   10 \u2013 20 %   Skin Sens. 1B, H317; Eye Irrit. 2, H319
REACH: 01-2119474016-42-0000
d-Limonene
CAS: 5989-27-5  EC: 227-813-5  Index: 601-029-00-7
\u2265 5 \u2013 < 10
Flam. Liq. 3, H226; Skin Sens. 1B, H317;
Aquatic Acute 1, H400 (M = 1)
3,7-dimethylocta-1,6-dien-3-yl acetate   115-95-7   < 2,5 %   Skin Irrit. 2 H315
Musk without a number   1 - 3 %   Aquatic Chronic 1 H410, M = 10
0.1-1 % Cinnamal 104-55-2 Skin Sens. 1A H317: C >= 0.01 %
SECTION 4: First aid measures
4.1 5 % of something
"""
LINES = [
    ("Linalool 78-70-6", "10 - 20 %", "Skin Sens. 1B, H317; Eye Irrit. 2, H319"),
    ("d-Limonene 5989-27-5", ">= 5 - < 10", "Flam. Liq. 3, H226; Skin Sens. 1B, H317; Aquatic Acute 1, H400 (M = 1)"),
    ("3,7-dimethylocta-1,6-dien-3-yl acetate 115-95-7", "< 2,5 %", "Skin Irrit. 2 H315"),
    ("Musk without a number", "1 - 3 %", "Aquatic Chronic 1 H410, M = 10"),
    ("Cinnamal 104-55-2", "0.1-1 %", "Skin Sens. 1A H317: C >= 0.01 %"),
]
HEADS = [
    "Remark",
    "CAS No.",
    "EC No.",
    "Substance",
    "Content, % w/w",
    "Classification (CLP)",
    "Specific limits, M-factors",
]
CELLS = [
    ["a", "78-70-6", "201-134-4", "Linalool", "10-20 %", "Skin Sens. 1B H317", ""],
    ["b", "5989-27-5", "", "d-Limonene", "5 - <10 %", "Skin Sens. 1B H317", "M = 1"],
]


def ask(*words, text=None):
    return CliRunner().invoke(main, ["ask", *map(str, words)], input=text)


def test_a_pasted_block_is_read_substance_by_substance():
    found = sheet.read(BLOCK)
    assert list(zip(found.substances, found.concentrations, found.classes, strict=True)) == LINES


def test_what_is_no_line_of_section_3_is_named():
    assert sheet.read(BLOCK).unread == [
        "SECTION 3: Composition/information on ingredients", "line 13 and all after it: SECTION 4: First aid measures",
    ]  # fmt: skip


def test_another_section_that_is_pasted_along_is_no_part_of_the_last_substance():
    found = sheet.read(BLOCK.replace("SECTION 4: First aid measures", "SECTION 14: Transport"))
    assert found.classes == [classes for _, _, classes in LINES]
    assert found.unread[-1] == "line 13 and all after it: SECTION 14: Transport"


@pytest.mark.parametrize("mark", ["\t", ";", ",", "|"])
def test_a_table_is_read_by_its_heads_in_any_order(mark):
    quoted = [f'"{cell}"' if mark in cell else cell for cell in HEADS]
    text = "\n".join(["Oil: fig", *(mark.join(row) for row in [quoted, *CELLS]), mark * 6, f"Total{mark * 6}"])
    found = sheet.read(text)
    assert found.substances == ["Linalool 78-70-6", "d-Limonene 5989-27-5"]
    assert found.concentrations == ["10-20 %", "5 - <10 %"]
    assert (found.classes, found.specifics) == (["Skin Sens. 1B H317"] * 2, ["", "M = 1"])
    assert found.unread == ["line 1: Oil: fig", "column Remark", "line 6: Total"]


def test_a_row_without_a_substance_goes_on_with_the_one_above():
    found = sheet.read("Name;%;Class;M-factor\nLinalool;10 %;Skin Sens. 1B H317;\n;;Eye Irrit. 2 H319;M = 1")
    assert (found.classes, found.specifics) == (["Skin Sens. 1B H317; Eye Irrit. 2 H319"], ["M = 1"])


@pytest.mark.parametrize("text", ["x" * 200_000, '"' * 1001, "1 % " * 20_000, "\0\n" * 100])
def test_what_is_no_data_sheet_at_all_is_refused_soon(text):
    with contextlib.suppress(ValueError):
        sheet.read(text)


@pytest.mark.parametrize("text", ["Linalool 78-70-6 Skin Sens. 1B H317", "Name,CAS,%,Class\nLinalool,78-70-6,,H317"])
def test_a_substance_without_a_concentration_is_refused_as_the_label_would_lack_it(text):
    with pytest.raises(ValueError, match="Linalool 78-70-6: no concentration is read beside it"):
        sheet.read(text)


def test_a_file_gives_what_the_same_lines_typed_give(tmp_path):
    path = tmp_path / "oil.txt"
    path.write_text(BLOCK, encoding="utf-8")
    columns = ("substances", "concentrations", "classes")
    typed = [f"{column}={cell}" for line in LINES for column, cell in zip(columns, line, strict=True)]
    told = ask("hazard_of_candle", "--file", path, "load=8%")
    assert told.exit_code == 0
    assert "oil.txt: 5 substances read" in " ".join(told.stdout.split())
    assert told.stdout.endswith(ask("hazard_of_candle", *typed, "loads=8%").stdout)


def test_each_file_is_an_oil_with_its_own_load(tmp_path):
    paths = [tmp_path / "one.txt", tmp_path / "two.txt"]
    for path in paths:
        path.write_text("Linalool 78-70-6 10 % Skin Sens. 1B H317")
    told = ask("hazard_of_candle", "--file", paths[0], "--file", paths[1], "loads=5%; 3%").stdout
    assert "0.740741 %" in told  # 10 % of 8 g in 108 g


def test_what_is_pasted_is_read_as_a_file_is():
    told = ask("hazard_lines", "--file", "-", text="Linalool 78-70-6 10 % Skin Sens. 1B H317\n")
    assert "what was pasted: 1 substance read" in told.stdout and "10.0% of the oil" in told.stdout


@pytest.mark.parametrize("words, held, message", [
    (["oil_for_wax", "1", "8%"], b"x", "takes no file. A data sheet is for hazard_lines"),
    (["label_of_candle", "load=8%"], b"%PDF-1.7", "it is no text: copy what is wanted out of it"),
    (["label_of_candle", "load=8%"], b"nothing here", "no line of section 3 is found there"),
    (["label_of_candle", "classes=H317"], b"Linalool 78-70-6 10 % H317", "classes is in the file already"),
])  # fmt: skip
def test_what_is_no_data_sheet_is_refused(tmp_path, words, held, message):
    path = tmp_path / "oil.txt"
    path.write_bytes(held)
    told = ask(*words, "--file", path)
    assert told.exit_code in (1, 2) and message in told.stderr and told.stdout == ""


def test_a_label_comes_in_three_parts_and_says_each_text_to_check_against_once():
    told = ask("label_of_candle", "citral", "9 %", "Skin Sens. 1 H317", "20%").stdout
    heads = [line for line in told.splitlines() if line and line[0] != " "]
    assert heads == ["Print", "Do", "Check"]
    print_part, do_part, check_part = (textwrap.dedent(part) for part in told.split("\n\n"))
    assert "signal word: Warning" in print_part and "H317 May cause an allergic skin reaction." in print_part
    assert "notify poison centres" in do_part
    assert "H317: CLP Annex III" in check_part and "Whoever sells the candle answers" in check_part
    assert told.count("7.3 (read second-hand)") == 1
    assert max(map(len, told.splitlines())) <= 79


def test_a_list_takes_its_name_in_the_singular():
    assert ask("oil_parts", "40", "share=75%", "share=25%").stdout == ask("oil_parts", "40", "75%; 25%").stdout
