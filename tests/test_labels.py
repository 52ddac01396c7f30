"""What stands on a label, read from a maker's folder: the functions' texts, the maker's own, and what is confirmed."""

import csv
import re
import shutil
import sys

import printed
import pytest
from click.testing import CliRunner

from candlecalc.commands.cli import main
from candlecalc.labels import draw, folder
from candlecalc.labels.texts import label_of


@pytest.fixture
def mine(tmp_path):
    """A folder of the maker's own: the demo's."""
    return shutil.copytree(folder.DEMO, tmp_path / "mine")


def changed(mine, table, place, **cells):
    """One line of a table typed anew; place -1 adds one."""
    path = mine / f"{table}.csv"
    with path.open(encoding="utf-8", newline="") as file:
        reader = csv.DictReader(file)
        rows, heads = list(reader), reader.fieldnames
    if place < 0:
        rows.append(cells)
    else:
        rows[place] |= cells
    with path.open("w", encoding="utf-8", newline="") as file:
        writer = csv.DictWriter(file, heads, lineterminator="\n")
        writer.writeheader()
        writer.writerows(rows)


def texts(mine, product, kind):
    return label_of(folder.read(mine), product, kind).label.texts


def run(*words):
    return CliRunner().invoke(main, ["labels", *map(str, words)])


JAR, TIN = "Fig and cedar jar", "Pear and honey tin"


# 16 CFR 500.21(b), by a page on the parallel FDA rule: up to 5 in2 1/16 in, up to 25 in2 1/8 in. The panel of a round
# package is 40 % of height by circumference, 16 CFR 500.21(a): 0.4 x 84 x 224 mm is 11.7 in2, 0.4 x 43 x 170 4.5 in2.
@pytest.mark.parametrize("high, around, height", [("84", "224", 25.4 / 8), ("43 mm", "17 cm", 25.4 / 16)])
def test_a_us_net_weight_has_both_systems_and_the_height_of_its_panel(mine, high, around, height):
    changed(mine, "products", 0, panel_height=high, panel_around=around)
    weight = texts(mine, JAR, "front")[-1]
    assert (weight.part, weight.words, weight.height) == ("net weight", "NET WT 8 OZ (227 g)", pytest.approx(height))


# Directive 76/211/EEC, Annex I, 3.1, by a summary of USDA Foreign Agricultural Service: 2, 3, 4 and 6 mm.
@pytest.mark.parametrize(
    "net, words, height", [("50", "50 g", 2), ("120", "120 g", 3), ("2 lb", "907 g", 4), ("1.5 kg", "1.5 kg", 6)]
)
def test_an_eu_net_weight_has_the_height_of_its_row(mine, net, words, height):
    changed(mine, "products", 1, net=net)
    weight = texts(mine, TIN, "front")[-1]
    assert (weight.words, weight.height) == (words, height)


def test_a_us_warning_has_the_sign_with_its_word_and_three_statements(mine):
    # ASTM F2058-07(2021), abstract: safety alert symbol directly followed by WARNING; three topics, second-hand.
    parts = [(text.part, text.words) for text in texts(mine, JAR, "warning")[1:5]]
    assert parts == [
        ("sign", "WARNING"),
        ("fire", "Burn within sight."),
        ("fire", "Keep away from things that catch fire."),
        ("fire", "Keep away from children."),
    ]


def test_a_hazard_label_has_what_the_oils_bring_and_the_precautions_chosen(mine):
    # CLP Annex III: the words of H317 and H412.
    found = {text.code or text.part: text for text in texts(mine, TIN, "warning")}
    assert found["GHS07"].part == "pictogram" and found["Warning"].part == "signal word"
    assert found["H317"].words == "May cause an allergic skin reaction."
    assert found["H412"].words == "Harmful to aquatic life with long lasting effects."
    assert {"P102", "P333+P313", "P501"} <= set(found) and "P280" not in found
    # Regulation (EU) 2024/2865, second-hand: 1.2 mm up to half a litre.
    assert found["H317"].height == 1.2


def test_what_is_left_to_the_maker_is_said(mine):
    beside = label_of(folder.read(mine), TIN, "warning").beside
    assert any(line.startswith("duty: notify poison centres") for line in beside)
    assert any(line.startswith("precautions to choose from, not more than six: P280") for line in beside)


CHECKED = {"confirmed_on": "2027-07-06", "against": "the text of the rule"}


def test_a_text_is_confirmed_by_a_day_and_a_source(mine):
    changed(mine, "labels", -1, product=TIN, part="hazard", code="h317", **CHECKED)
    confirmed = {text.code: text.confirmed for text in texts(mine, TIN, "warning")}
    assert confirmed["H317"] and not confirmed["H412"]


@pytest.mark.parametrize("product", ["Fig and cedar jar", "Pear and honey tin"])
@pytest.mark.parametrize("kind", ["front", "warning", "base"])
def test_each_text_can_be_confirmed_as_the_terminal_calls_it(mine, product, kind):
    typed_as = {"sign": "fire", "signal word": "hazard", "pictogram": "hazard", "names": "hazard"}
    rows = list(csv.DictReader((mine / "labels.csv").read_text(encoding="utf-8").splitlines()))
    for text in label_of(folder.read(mine), product, kind).label.unconfirmed:
        called = {"product": product, "part": typed_as.get(text.part, text.part), "code": text.code}
        at = next((place for place, row in enumerate(rows) if called.items() <= row.items()), -1)
        changed(mine, "labels", at, **called, text=text.words, **CHECKED)
    assert label_of(folder.read(mine), product, kind).label.unconfirmed == []


def test_a_net_weight_is_confirmed_with_its_words_so_that_another_weight_shows(mine):
    changed(mine, "labels", -1, product=JAR, part="net weight", **CHECKED)
    assert not texts(mine, JAR, "front")[-1].confirmed
    changed(mine, "labels", 11, text="NET WT 8 OZ (227 g)")
    assert label_of(folder.read(mine), JAR, "front").label.unconfirmed == []
    changed(mine, "products", 0, net="200")
    with pytest.raises(ValueError, match=r'is "NET WT 7.05 OZ \(200 g\)" by products.csv, not "NET WT 8 OZ \(227 g\)"'):
        texts(mine, JAR, "front")


def test_names_are_confirmed_with_their_words_so_that_another_recipe_shows(mine):
    def names():
        found = label_of(folder.read(mine), TIN, "warning")
        return next(text for text in found.label.texts if text.part == "names"), found.beside

    changed(mine, "labels", -1, product=TIN, part="hazard", code="names", **CHECKED)
    assert not names()[0].confirmed
    changed(mine, "labels", 11, text="Contains Citral, Limonene and Hexyl cinnamal.")
    assert names()[0].confirmed
    changed(mine, "oils", 0, substance="Eugenol")
    text, beside = names()
    assert not text.confirmed and "names: your words lack Eugenol, which the oils bring" in beside


def test_the_makers_own_words_stand_in_place_of_ours(mine):
    own = "Kann allergische Hautreaktionen verursachen."  # CLP Annex III, German
    changed(mine, "labels", -1, product=TIN, part="hazard", code="H317", text=own, language="de")
    found = next(text for text in texts(mine, TIN, "warning") if text.code == "H317")
    assert (found.words, found.language, found.confirmed) == (own, "de", False)


REFUSED = [  # table, line, cells, what is said
    ("papers", 0, {"columns": "0"}, r'papers.csv, line 2, columns: it is "0"; it takes whole numbers 1 to 100'),
    ("papers", 0, {"read_across": "160"}, r'papers.csv, line 2, read_across: it is "160"; it takes 147 to 153'),
    ("papers", 1, {"paper": "small sheet"}, r'papers.csv: "small sheet" stands there twice'),
    ("products", 0, {"panel_height": ""}, r"products.csv, line 2, panel_height: it is missing; type 10 to 2000 mm"),
    ("products", 0, {"rules": "fr"}, r'products.csv, line 2, rules: it is "fr"; it takes us or gb or eu'),
    (
        "labels",
        -1,
        {"product": "Fig jar", "part": "line", "label": "base", "text": "x"},
        r'"Fig jar" is not in products',
    ),
    ("labels", -1, {"part": "fire", "confirmed_on": "2027-07-01"}, r"labels.csv, line 13, against: it is missing"),
    ("labels", -1, {"part": "line", "text": "x"}, r"labels.csv, line 13, label: it is missing; type front or warning"),
    (
        "labels",
        -1,
        {"product": TIN, "part": "hazard", "code": "p102"},
        "hazard p102 of pear and honey tin stands there twi",
    ),
    ("labels", 0, {"confirmed_on": "7/5/27"}, r'line 2, confirmed_on: it is "7/5/27"; it takes a date such as'),
]


@pytest.mark.parametrize("table, place, cells, words", REFUSED)
def test_what_is_typed_wrong_is_named_with_what_is_taken(mine, table, place, cells, words):
    changed(mine, table, place, **cells)
    with pytest.raises(ValueError, match=words):
        folder.read(mine)


def test_every_fault_is_told_at_once(mine):
    changed(mine, "papers", 0, width="2 lb", rows="many")
    with pytest.raises(ValueError, match="rows: it is .*; papers.csv, line 2, width: it is"):
        folder.read(mine)


def test_a_length_may_be_typed_in_inches():
    letter = next(paper for paper in folder.read(folder.DEMO).papers if paper.sheet == "letter")
    assert (letter.width, letter.height, letter.top) == pytest.approx((101.6, 50.8, 12.7))


def test_a_code_that_the_oils_do_not_bring_is_refused(mine):
    changed(mine, "labels", -1, product=TIN, part="hazard", code="H318", confirmed_on="2027-07-06", against="Annex III")
    with pytest.raises(ValueError, match='"H318" is nothing that the oils of Pear and honey tin bring; .*H317'):
        texts(mine, TIN, "warning")


def test_one_oil_has_one_load(mine):
    changed(mine, "oils", 1, load="8%")
    with pytest.raises(ValueError, match=r"Pear and honey oil \(invented\) in .* has the loads 0.07 and 0.08"):
        texts(mine, TIN, "warning")


def test_in_the_us_no_hazard_elements_are_worked_out_and_that_is_said(mine):
    for row in range(3):
        changed(mine, "oils", row, product=JAR)
    found = label_of(folder.read(mine), JAR, "warning")
    assert {text.part for text in found.label.texts} == {"name", "sign", "fire"}
    assert any("these rules do not apply in the US" in line for line in found.beside)


def test_wording_that_leaves_a_gap_is_never_printed(mine):
    changed(mine, "labels", -1, product=TIN, part="hazard", code="P302+P352")
    with pytest.raises(ValueError, match=r"P302\+P352 reads .* yours to fill in"):
        texts(mine, TIN, "warning")


def test_a_sheet_is_made_and_says_what_to_confirm(tmp_path):
    out = tmp_path / "front.pdf"
    result = run("--demo", out)
    assert result.exit_code == 0
    assert f"{out}: 24 front labels, {JAR}, on Small sheet" in result.stdout
    assert '  net weight, "NET WT 8 OZ (227 g)": unconfirmed: check against 16 CFR 500.9' in result.stdout
    assert printed.read_back(out.read_bytes(), tmp_path).count("PROOF") == 24


def test_how_large_letters_and_pictograms_come_out_is_said(tmp_path):
    # 1 % over what is asked, for a printer that shrinks: of 1/8 in, and of a fifteenth of 52 x 74 mm, 16.02 squared.
    front = run("--demo", tmp_path / "front.pdf")
    assert re.search(r"printed: small x [0-9.]+ mm, figures 3.21 mm$", front.stdout, re.M)
    warning = run("--demo", tmp_path / "w.pdf", "--product", TIN, "--label", "warning", "--paper", "Large sheet")
    small = re.search(r"printed: small x ([0-9.]+) mm, pictogram 16.1 mm along its side$", warning.stdout, re.M)
    assert small and float(small[1]) >= 1.21


@pytest.mark.parametrize("product", [JAR, TIN])
@pytest.mark.parametrize("kind", ["front", "warning", "base"])
def test_a_whole_label_is_read_back_word_by_word(tmp_path, product, kind):
    held = folder.read(folder.DEMO)
    label = label_of(held, product, kind).label
    paper = next(paper for paper in held.papers if paper.name == "Large sheet")
    words = printed.read_back(draw.sheet(label, paper, paper.places - 1), tmp_path)
    assert [word for word in words if word != "PROOF"] == [
        word for text in label.texts if text.part != "pictogram" for word in text.words.split()
    ]


def test_a_label_larger_than_its_panel_in_the_us_is_told_as_its_figures_go_by_the_panel(tmp_path, mine):
    # 16 CFR 500.21(a), (b): the area of the panel decides. 4.5 in2 of the jar, 29.2 cm2; a label of 4 x 2 in has 51.6.
    changed(mine, "products", 0, panel_height="43 mm", panel_around="17 cm")
    told = "the label has 51.6 cm2, more than the 29.2 cm2 of its panel on products.csv: measure the panel anew"
    assert told in run(mine, tmp_path / "large.pdf", "--paper", "Plain letter sheet").stdout
    assert "measure the panel anew" not in run(mine, tmp_path / "small.pdf").stdout


def test_what_does_not_fit_names_the_smallest_paper_that_does(tmp_path):
    result = run("--demo", tmp_path / "x.pdf", "--product", TIN, "--label", "warning")
    assert result.exit_code == 1
    assert re.search(
        r"needs [0-9.]+ mm more (height|width); it fits on Plain letter sheet \(101.6 x 50.8 mm\)", result.stderr
    )
    assert not (tmp_path / "x.pdf").exists()


WRONG = [  # words of the call, exit code, what is said
    (["--demo", "{}/x.pdf", "--product", "Pear"], 1, '"Pear" is not in products.csv; there are Fig and cedar jar'),
    (["--demo", "{}/x.pdf", "--paper", "A4"], 1, '"A4" is not in papers.csv; there are Small sheet'),
    (["--demo", "{}/x.pdf", "--skip", "24"], 1, "--skip takes 0 to 23"),
    (["{}/x.pdf"], 2, "give SOURCE and OUT.pdf"),
    (["--demo", "{}/x.png"], 2, "name it with .pdf at the end"),
    (["{}", "{}/x.pdf"], 1, "papers.csv, products.csv, labels.csv is not there"),
]


@pytest.mark.parametrize("words, code, said", WRONG)
def test_a_wrong_call_is_told_in_one_line(tmp_path, words, code, said):
    result = run(*(word.format(tmp_path) for word in words))
    assert result.exit_code == code
    assert said in result.stderr and result.stderr.count("\n") == 1


# Words of judgement about a candle, which no label, message or page of ours may say.
JUDGING = re.compile(
    r"\b(safe|safely|safety|approved|complian\w*|certified|suitable|non-?toxic|harmless|conform\w*)\b", re.I
)


@pytest.mark.parametrize("product", [JAR, TIN])
@pytest.mark.parametrize("kind", ["front", "warning", "base"])
def test_no_word_judges_a_candle(tmp_path, product, kind):
    out = tmp_path / "x.pdf"
    result = run("--demo", out, "--product", product, "--label", kind, "--paper", "Large sheet")
    assert result.exit_code == 0, result.stderr
    assert JUDGING.findall(result.stdout) == []
    assert JUDGING.findall(" ".join(printed.read_back(out.read_bytes(), tmp_path))) == []


def test_without_the_extra_the_command_says_what_to_install(tmp_path, monkeypatch):
    monkeypatch.setitem(sys.modules, "typst", None)
    for name in ("candlecalc.labels.draw", "candlecalc.commands.labels"):
        package, _, module = name.rpartition(".")
        monkeypatch.delitem(sys.modules, name, raising=False)
        monkeypatch.delattr(sys.modules[package], module, raising=False)
    result = run("--demo", tmp_path / "x.pdf")
    assert (result.exit_code, result.stderr) == (1, "candlecalc: labels need typst: pip install 'candlecalc[labels]'\n")
