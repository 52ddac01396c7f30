"""Labels straight from a workbook: from a data sheet to what is printed, and the check sheet to sign."""

# ruff: noqa: S603, S607  the programs started here are our own choice

import csv
import datetime
import re
import subprocess
import sys
from pathlib import Path

import pypdf
import pytest
from click.testing import CliRunner

sys.path.insert(0, str(Path(__file__).parent / "workbook"))
import books
import burn_logs
import oils
from libreoffice import stored

import candlecalc
import candlecalc.tables as tables
from candlecalc.commands.cli import main
from candlecalc.season import folder

TIN, DAY = "Pear and honey tin", datetime.date(2027, 9, 1)
PAPER = {"paper": "Large", "sheet": "a4", "shape": "rectangle", "rows": 3.0, "columns": 2.0, "outline": "yes"}
PAPER |= {"width": 3.9, "height": 3.66, "left": 0.2, "top": 0.35, "gap_across": 0.1}
MAKER = {"part": "line", "label": "warning", "code": "maker", "text": "Pell and Osgood Candle Room"}
SHEET = """3.2 Mixtures
Linalool 78-70-6 201-134-4 10 - 20 % Skin Sens. 1B, H317; Eye Irrit. 2, H319
Geraniol 106-24-1 1 - 5 % Skin Sens. 1 H317
"""


pytestmark = pytest.mark.usefixtures("made_once")


@pytest.fixture(scope="module", autouse=True)
def few_usual_rows():
    """Formulas that would stay blank cost time alone."""
    with pytest.MonkeyPatch.context() as patch:
        for key, rows in books.few(oils.season()).items():
            patch.setitem(books.book.USUAL_ROWS, key, rows)
        yield


def season(tmp_path, sheets=oils.SHEETS, labels=(MAKER,), papers=(PAPER,)):
    """The folder of a season: as good as its workbook, and made at once."""
    folder.write(oils.season(sheets, labels=list(labels), papers=list(papers)), tmp_path / "season")
    return tmp_path / "season"


def workbook(tmp_path, sheets=oils.SHEETS):
    path = tmp_path / "year.xlsx"
    books.Book(oils.season(sheets, labels=[MAKER], papers=[PAPER]), path)
    return path


def run(*words):
    return CliRunner().invoke(main, list(map(str, words)))


def labels(book, out, *words):
    done = run("labels", book, out, "--product", TIN, *words)
    assert done.exit_code == 0, done.stderr
    return done.output


def words_of(pdf):
    run = subprocess.run(["pdftotext", "-raw", pdf, "-"], capture_output=True, check=True, text=True)
    return " ".join(run.stdout.split())


def test_a_sheet_that_is_imported_stands_on_the_label(tmp_path):
    book, sheet, out = workbook(tmp_path), tmp_path / "sheet.txt", tmp_path / "new.xlsx"
    sheet.write_text(SHEET, encoding="utf-8")
    before = book.read_bytes()
    done = run("import", book, sheet, out, "--as", "oil-sheet", "--material", oils.PEAR.upper(), "--version", "5")
    told = " ".join(done.output.split())
    assert "Section 14, which the carrier asks about, is yours to type on Oil sheets" in told
    assert done.exit_code == 0 and "2 substances read" in told and f"3 lines of {oils.PEAR} that stood there" in told
    assert book.read_bytes() == before
    labels(out, tmp_path / "out.pdf", "--label", "warning", "--rules", "eu")
    assert "Contains Linalool, Geraniol." in words_of(tmp_path / "out.pdf")


def test_a_sheet_typed_by_hand_is_as_good(tmp_path):
    book = workbook(tmp_path, sheets=[])
    for letter, value in zip("BCDE", (oils.PEAR, "Linalool 78-70-6", "10-20 %", "Skin Sens. 1B H317"), strict=True):
        blank, typed = (
            rf'<c r="{letter}4"( s="\d+")[^>]*/>',
            rf'<c r="{letter}4"\1 t="inlineStr"><is><t>{value}</t></is></c>',
        )
        book = books.rewritten(book, tmp_path / f"typed {letter}.xlsx", "Oil sheets", blank, typed)
    made = run("new", tmp_path / "new.xlsx", "--from", book)
    assert made.exit_code == 0, made.output
    shown = run("show", tmp_path / "new.xlsx", "hazards", "--product", TIN, "--csv").stdout
    assert next(csv.DictReader(shown.splitlines()))["Classes"] == "Skin Sens. 1"
    labels(book, tmp_path / "out.pdf", "--label", "warning", "--rules", "eu")
    assert "May cause an allergic skin reaction." in words_of(tmp_path / "out.pdf")


def confirmed(texts):
    return [{**text, "confirmed_on": books.DATED, "against": "the text of the rule"} for text in texts]


FRONT = [{"part": "name", "product": TIN, "text": TIN}, {"part": "net weight", "product": TIN, "code": "110 g"}]


def test_proof_goes_once_each_text_is_confirmed(tmp_path):
    words = {"text": "NET WT 3.88 OZ (110 g)"}  # 110 g over 28.3495, down to two decimals: 16 CFR 500.19
    for texts, proof in ((FRONT, True), (confirmed([FRONT[0], FRONT[1] | words]), False)):
        said = labels(season(tmp_path, labels=texts), tmp_path / "front.pdf", "--force")
        assert ("PROOF stands across it" in said) == proof == ("PROOF" in words_of(tmp_path / "front.pdf"))
        assert "NET WT 3.88 OZ (110 g)" in words_of(tmp_path / "front.pdf")


def test_a_net_weight_over_the_recipes_fill_is_refused(tmp_path):
    texts = [FRONT[0], FRONT[1] | {"code": "8 oz"}]
    done = run("labels", season(tmp_path, labels=texts), tmp_path / "front.pdf", "--product", TIN)
    assert done.exit_code == 1 and "is 8 oz, more than the 115 g of its recipe's fill" in done.stderr
    assert not (tmp_path / "front.pdf").exists()


@pytest.mark.parametrize(
    "sheets, told",
    [
        ([], f"no data sheet typed for {oils.PEAR}"),
        ([(oils.PEAR, "Citral 5392-40-5", "3-5 %", "Zonk. 5", None)], "not read: Zonk. 5"),
    ],
)
def test_what_is_not_counted_keeps_proof_across_the_warning(tmp_path, sheets, told):
    said = labels(season(tmp_path, sheets), tmp_path / "out.pdf", "--label", "warning", "--rules", "eu")
    assert f"PROOF stands across it, as this is not counted: {told}" in said
    assert "PROOF" in words_of(tmp_path / "out.pdf")


def test_a_batchs_number_stands_on_the_base_in_place_of_the_one_typed(tmp_path):
    line = {"part": "line", "label": "base", "code": "batch", "text": "Batch 1"}
    labels(season(tmp_path, labels=[line]), tmp_path / "base.pdf", "--label", "base", "--batch", "27-031")
    assert "Batch 27-031" in words_of(tmp_path / "base.pdf") and "Batch 1 " not in words_of(tmp_path / "base.pdf")


def test_a_paper_in_inches_is_printed_in_inches(tmp_path):
    assert "Large" in labels(season(tmp_path), tmp_path / "out.pdf", "--force")
    wide = season(tmp_path, papers=[PAPER | {"width": 4.5}])
    done = run("labels", wide, tmp_path / "wide.pdf", "--product", TIN)
    assert "Large: its labels reach 236.22 mm, 26.22 mm wider than a4 paper" in done.stderr  # 0.2 + 9 + 0.1 in


def test_a_season_folder_gives_the_same_label_as_its_workbook(tmp_path):
    for source, out in ((workbook(tmp_path), "a.pdf"), (season(tmp_path), "b.pdf")):
        labels(source, tmp_path / out, "--label", "warning", "--rules", "eu")
    assert (tmp_path / "a.pdf").read_bytes() == (tmp_path / "b.pdf").read_bytes()


WRONG = [
    (("--product", "Fog"), '"Fog" is no candle on Recipes; there are Orange and clove tumbler, '),
    (("--paper", "Fog"), '"Fog" is not in Papers; there are Large'),
]  # fmt: skip


@pytest.mark.parametrize("words, said", WRONG)
def test_a_name_that_is_not_there_is_told_with_those_that_are(tmp_path, words, said):
    done = run("labels", season(tmp_path), tmp_path / "out.pdf", *words)
    assert done.exit_code == 1 and said in done.stderr


def test_a_workbook_without_records_says_how_to_get_the_tabs(tmp_path):
    books.Book(books.small(), tmp_path / "costs.xlsx")
    done = run("labels", tmp_path / "costs.xlsx", tmp_path / "out.pdf")
    assert done.exit_code == 1 and "has no tabs for labels; make it anew with candlecalc new" in done.stderr


def check_sheet(tmp_path, rules, texts):
    labels(season(tmp_path, labels=texts), tmp_path / "check.pdf", "--check-sheet", "--rules", rules)
    return words_of(tmp_path / "check.pdf")


EVERY = {
    "us": ["identity", "maker", "address"],
    "eu": ["maker", "address", "electronic", "batch", "importer", "phone", "UFI"],
    "gb": ["maker", "address", "batch", "importer", "phone"],
}


@pytest.mark.parametrize("rules", EVERY)
def test_a_check_sheet_names_what_each_region_asks_for_and_the_label_lacks(tmp_path, rules):
    # US: 15 U.S.C. 1453(a)(1). EU: Regulation (EU) 2023/988, Art. 9, in part by summaries. GB: from memory.
    # Telephone and UFI go with the hazard elements of the tin: CLP Art. 17 (from memory), Art. 45 (second-hand); that
    # Great Britain's law has no UFI is from memory.
    texts = [{"part": "line", "label": "base", "code": code, "text": f"Our {code}"} for code in EVERY[rules]]
    assert "MISSING" not in check_sheet(tmp_path, rules, texts)
    (tmp_path / "check.pdf").unlink()
    told = check_sheet(tmp_path, rules, texts[1:])
    assert told.count("MISSING") == 1 and f"Our {EVERY[rules][0]}" not in told


def test_a_maker_at_home_lacks_no_importer(tmp_path):
    # Regulation (EU) 2023/988, Art. 16 (from memory): where the maker is outside the EU.
    made = oils.season(labels=[MAKER])
    made.settings["region"] = "eu"
    folder.write(made, tmp_path / "season")
    labels(tmp_path / "season", tmp_path / "check.pdf", "--check-sheet", "--rules", "eu")
    told = words_of(tmp_path / "check.pdf")
    assert re.search(r"Art. 11 and( if outside)? 16 \(from memory\)( if outside)?", told) and "if outside" in told


def test_a_check_sheet_is_a_page_to_sign(tmp_path):
    lines = [{"part": "line", "label": "base", "code": f"own {at}", "text": f"Line {at}"} for at in range(12)]
    assert check_sheet(tmp_path, "gb", lines).count("Signed") == 1
    assert len(pypdf.PdfReader(tmp_path / "check.pdf").pages) == 1


def test_what_is_confirmed_says_when_and_against_what(tmp_path):
    text = {"part": "hazard", "code": "H317", "confirmed_on": datetime.date(2027, 7, 5), "against": "the sheet"}
    told = check_sheet(tmp_path, "eu", [MAKER, text])
    assert "CLP Annex III; checked 2027-07-05 against the sheet confirmed" in told


def test_a_check_sheet_has_the_flash_point_section_14_and_the_data_sheet_for_the_carrier(tmp_path):
    told = check_sheet(tmp_path, "eu", [MAKER])
    assert "to confirm with the carrier, for the candle and for the oil" in told
    of_oil = "Pear and honey oil: flash point 192 °F; section 14 is not typed on Oil sheets"
    assert f"{of_oil}; data sheet version 4, of 2027-03-01" in told


def test_the_demo_with_records_has_sheets_that_say_that_they_are_invented_and_labels_to_print(tmp_path):
    demo = folder.read(folder.DEMO, records=True).with_records()
    folder.write(demo, tmp_path / "demo")
    sheets = [row for _, row in demo.rows("oil_sheets")]
    once = [row for row in sheets if row["version"]]
    assert all("invented" in row["version"] and "invented" in row["transport"] for row in once)
    assert {row["material"] for row in once} == {row["material"] for row in sheets}
    for rules in ("us", "eu"):
        said = labels(tmp_path / "demo", tmp_path / f"{rules}.pdf", "--label", "warning", "--rules", rules)
        assert "not counted" not in said
    assert "H317" not in words_of(tmp_path / "us.pdf")
    assert "May cause an allergic skin reaction." in words_of(tmp_path / "eu.pdf")


def weighed(tmp_path, rules, grams, size, *words):
    """What a check sheet says of the weights of a batch, of a candle that declares 110 g."""
    lines = [
        {"batch": "B2", "product": TIN, "net": each / 28.349523125, "package": f"no. {at}"}
        for at, each in enumerate(grams, 1)
    ]
    lines[0]["size"] = size
    lines.insert(0, {"batch": "B1", "product": TIN, "net": 2.0, "size": 1.0})
    folder.write(oils.season(labels=[FRONT[1]], weights=lines), tmp_path / "season")
    labels(tmp_path / "season", tmp_path / "check.pdf", "--check-sheet", "--rules", rules, *words)
    return words_of(tmp_path / "check.pdf")


# Directive 76/211/EEC, Annex I, 2.4: of 110 g 4.5 % may be missing, 4.95 g, up to 5.0: GOV.UK, Packaged goods.
def test_the_weights_of_the_last_batch_are_tested_and_short_packages_named(tmp_path):
    told = weighed(tmp_path, "eu", [111, 112, 104.9, 113], 4.0)
    assert "weights of batch B2, 4 weighed of 4, declared 110 g: 1 are under 105 g, more than the 0 allowed" in told
    assert "package no. 3 is 104.90 g, under 105 g" in told and "package no. 1 " not in told


def test_another_batch_is_tested_where_it_is_named_and_too_few_weights_get_no_verdict(tmp_path):
    assert "weights of batch B1, 1 weighed of 1, declared 110 g: the average is 56.70 g" in weighed(
        tmp_path, "gb", [111], 4.0, "--batch", "b1"
    )
    (tmp_path / "check.pdf").unlink()
    assert "weights of batch B2: 1 weighed; a batch of 4 asks for 4" in weighed(tmp_path, "gb", [111], 4.0)


def test_a_us_batch_has_the_verdict_of_its_own_test(tmp_path):
    # NIST Handbook 133 (2026), 2.3.7.2: an average of zero or more passes.
    told = weighed(tmp_path, "us", [111, 112], 4.0)
    assert "weights of batch B2, 2 weighed, declared 110.00 g: the average is not under the declared weight" in told


# The words of DEVELOPERS.md, Rules.
JUDGED = r"\b(safe|safely|approved|complian\w*|certified|suitable|non-?toxic|harmless)\b"
OF_CHECK_SHEETS = ("label_notes", "label_particulars", "label_askers", "fire_statements", "hazard_statements")


def test_no_word_judges_a_candle(tmp_path):
    told = check_sheet(tmp_path, "eu", [MAKER])
    printed = [words for table in OF_CHECK_SHEETS for row in tables.rows(table) for words in row.values()]
    assert re.findall(JUDGED, " ".join([told, *printed]), re.I) == []


def test_a_check_sheet_says_for_whom_it_is_and_what_was_found(tmp_path):
    told = check_sheet(tmp_path, "eu", [MAKER])
    assert "Pell and Osgood" in told
    assert "classes found: Skin Sens. 1; Aquatic Chronic 3" in told  # worked out in workbook/test_label_tabs.py


def test_great_britains_rules_beyond_the_eus_stand_with_how_each_was_read(tmp_path):
    # GOV.UK, Packaged goods: the minimum system. SI 2006/659, reg. 2: the e mark.
    told = check_sheet(tmp_path, "gb", [MAKER])
    assert "at least what it states, the minimum system: GOV.UK, Packaged goods (read in the text)" in told
    assert "its letter is 3 mm high or more: SI 2006/659, reg. 2 (read in the text)" in told
    assert "it was not read: GB CLP (from memory)" in told


def test_hazard_elements_name_the_law_that_was_read_and_the_one_that_was_not(tmp_path):
    told = check_sheet(tmp_path, "gb", [MAKER])
    assert "May cause an allergic skin reaction. EU CLP Annex III; GB CLP was not read" in told
    assert "ask Great Britain's poison centre what it is to be told" in told and "print the UFI" not in told


# --- the batch on the base ------------------------------------------------------------------------


OTHER = "Bitter orange tin"
POURS = [
    {"date": DAY + datetime.timedelta(days=days), "batch": number, "product": product, "good": good}
    for days, number, product, good in [
        (9, 12.0, TIN, 20.0), (2, 15.0, TIN, 20.0), (12, 16.0, OTHER, 9.0), (14, 17.0, TIN, 0.0),
    ]
]  # fmt: skip


def base(tmp_path, *words, typed="Batch 1"):
    """What the base of the tin says: it was poured twice, and once with none that is good."""
    line = {"part": "line", "label": "base", "code": "batch", "text": typed}
    folder.write(oils.season(labels=[line], papers=[PAPER], pours=POURS), tmp_path / "season")
    done = run("labels", tmp_path / "season", tmp_path / "base.pdf", "--product", TIN, "--label", "base", *words)
    return done, words_of(tmp_path / "base.pdf") if done.exit_code == 0 else ""


def test_the_latest_batch_that_has_a_good_one_is_the_one_meant(tmp_path):
    done, told = base(tmp_path)
    assert "Batch 12, poured 2027-09-10" in told and "Batch 1 " not in told
    assert "Batch 12, poured 2027-09-10, the latest on Batch log" in done.output


def test_a_batch_that_is_named_stands_with_its_day(tmp_path):
    assert "Batch 15, poured 2027-09-03" in base(tmp_path, "--batch", 15)[1]


def test_a_batch_of_another_candle_is_refused(tmp_path):
    done, _ = base(tmp_path, "--batch", 16)
    assert done.exit_code == 1 and f"batch 16 is of {OTHER} on Batch log, not of {TIN}" in done.stderr


def test_a_batch_that_is_not_on_the_log_is_told(tmp_path):
    done, told = base(tmp_path, "--batch", "27-031")
    assert "Batch 27-031" in told and "batch 27-031 is not on Batch log" in done.output


# --- hours of burning, by the test that they come from --------------------------------------------


def burnt(**test):
    """A test of the tin, 6 oz filled: 4 hours a burn take 0.40, 0.42 and 0.41 oz."""
    made = oils.season(labels=[], papers=[PAPER])
    recipe = next(row for _, row in made.rows("recipes") if row["product"] == TIN)
    of_it = {key: recipe[key] for key in ("product", "vessel", "wax", "load", "wick")}
    weights = ((8.0, 7.6), (7.6, 7.18), (7.18, 6.77))
    burns = [{"test": "T1", "date": DAY, "hours": 4.0, "before": before, "after": after} for before, after in weights]
    tests = [{**of_it, "test": "T1", "date": DAY, "fill": 4.0, **test}]
    return burn_logs.put(made, burn_tests=tests, burn_cycles=burns)


def with_hours(tmp_path, made, **text):
    row = {"product": TIN, "part": "burn hours", "code": "T1", **text}
    folder.write(burn_logs.put(made, labels=[row]), tmp_path / "season")
    done = run("labels", tmp_path / "season", tmp_path / "base.pdf", "--product", TIN, "--label", "base", "--force")
    return done, words_of(tmp_path / "base.pdf") if done.exit_code == 0 else ""


def hours_of(made):
    """Hours for the label by Python, from the log alone; the functions are checked in tests/published/test_burn.py."""
    vessel = next(row for _, row in made.rows("vessels") if row["vessel"] == "Travel tin")
    wax = next(row for _, row in made.rows("materials") if row["material"] == "Soft plant wax for jars")
    stays = candlecalc.wax_that_stays(diameter=vessel["diameter"] * 25.4, density=wax["density"])
    grams = [weight * 28.349523125 for weight in (8.0, 7.6, 7.18, 6.77)]
    return candlecalc.burn_time_from_log([0, 4, 8, 12], grams, 4.0 * 28.349523125, stays).label


def test_burn_hours_stand_as_tested_with_the_tests_number(tmp_path):
    made = burnt()
    told = f"Burns for about {hours_of(made):.0f} hours, as tested (T1)."
    done, printed = with_hours(tmp_path, made)
    assert told in printed and f'burn hours, "{told}"' in " ".join(done.output.split())


def test_burn_hours_are_confirmed_with_their_words_until_the_recipe_changes(tmp_path):
    made = burnt()
    words = f"Burns for about {hours_of(made):.0f} hours, as tested (T1)."
    typed = {"text": words, "confirmed_on": books.DATED, "against": "our burns"}
    assert "burn hours" not in with_hours(tmp_path, made, **typed)[0].output
    done, _ = with_hours(tmp_path, burnt(load=0.06), **typed)
    assert "burn hours: of the recipe changed since test T1: load" in done.output


@pytest.mark.parametrize("test, said", [
    ({"lit_again": "yes"}, "it was stopped; see Test results"),
    ({"product": OTHER}, f"it is a test of {OTHER}, not of {TIN}"),
    ({"product": None}, f"it is a test of a free trial, not of {TIN}"),
    ({"test": "T2"}, "there is no such test on Burn tests"),
])  # fmt: skip
def test_hours_of_no_test_of_this_candle_are_refused(tmp_path, test, said):
    made = burnt(**test)
    if "test" in test:
        made = burn_logs.put(made, burn_cycles=[])
    done, _ = with_hours(tmp_path, made)
    assert done.exit_code == 1 and said in " ".join(done.stderr.split())


def test_label_texts_shows_the_same_words(tmp_path):
    made = burnt()
    row = {"product": TIN, "part": "burn hours", "code": "T1"}
    book = books.Book(burn_logs.put(made, labels=[row]), tmp_path / "year.xlsx")
    told = f"Burns for about {hours_of(made):.0f} hours, as tested (T1)."
    assert stored(book.path)[book.cell("labels", "shown", 0)] == told


# --- statements in another language: the law's own words, none of ours ----------------------------


def german(code, **more):
    return {"part": "hazard", "code": code, "language": "de", **more}


def warning(tmp_path, *texts):
    made = season(tmp_path, labels=[MAKER, *texts])
    return run("labels", made, tmp_path / "out.pdf", "--product", TIN, "--label", "warning", "--rules", "eu", "--force")


def test_a_statement_stands_in_the_words_of_the_law_in_its_language(tmp_path):
    done = warning(tmp_path, german("H317"), german("P102"), german("H412", language="fr"))
    assert done.exit_code == 0, done.stderr
    # CLP Annexes III and IV, German and French, by the data set named in hazard_statements_other.csv.
    told = words_of(tmp_path / "out.pdf")
    assert "Kann allergische Hautreaktionen verursachen." in told and "May cause an allergic" not in told
    assert "Darf nicht in die Hände von Kindern gelangen." in told
    assert "Nocif pour les organismes aquatiques, entraîne des effets néfastes à long terme." in told


@pytest.mark.parametrize("text, said", [
    (german("Warning"), 'signal word "Warning": there are no words of ours in German, and nothing is translated here'),
    (german("H317", language="el"), "there are no words of ours in Greek, and nothing is translated here; type your"),
    ({**german("Keep away from children and pets"), "part": "fire"}, "there are no words of ours in German"),
    (german("P302+P352"), "what its wording leaves open is yours to fill in"),
])  # fmt: skip
def test_what_is_not_there_in_a_language_is_to_be_typed_and_never_translated(tmp_path, text, said):
    done = warning(tmp_path, text)
    assert done.exit_code == 1 and said in " ".join(done.stderr.split())


def test_statements_in_two_languages_stand_each_with_those_of_its_own(tmp_path):
    # For a country of two languages; that those of one language stand together is CLP Art. 32(3), from memory.
    texts = [german(code, language=language) for language in ("fr", "de") for code in ("H317", "H412", "P102")]
    assert warning(tmp_path, *texts).exit_code == 0
    told = words_of(tmp_path / "out.pdf")
    # By the data set named in hazard_statements_other.csv.
    german_words = (
        "Kann allergische Hautreaktionen verursachen. Schädlich für Wasserorganismen, mit langfristiger Wirkung."
    )
    assert f"{german_words} Darf nicht in die Hände von Kindern gelangen. Peut provoquer une allergie cutanée." in told
    twice = warning(tmp_path, german("H317"), german("H317"))
    assert twice.exit_code == 1 and "hazard h317 in de of every product stands there twice" in twice.stderr


# CLP Annex II, 2.8, in four languages, by the data set named in hazard_statements_other.csv.
@pytest.mark.parametrize("language, words", [
    ("de", "Enthält Linalool. Kann allergische Reaktionen hervorrufen."),
    ("es", "Contiene Linalool. Puede provocar una reacción alérgica."),
    ("nl", "Bevat Linalool. Kan een allergische reactie veroorzaken."),
    ("pl", "Zawiera Linalool. Może powodować wystąpienie reakcji alergicznej."),
])  # fmt: skip
def test_a_statement_on_allergens_has_their_names_in_its_language(language, words, tmp_path):
    little = [(oils.PEAR, "Linalool 78-70-6", "2-5 %", "Skin Sens. 1B H317", None)]
    made = season(tmp_path, little, labels=[MAKER, german("EUH208", language=language)])
    labels(made, tmp_path / "out.pdf", "--label", "warning", "--rules", "eu")
    assert words in words_of(tmp_path / "out.pdf")


# Words of judgement in the languages that statements are printed in, from memory.
JUDGING = {
    "de": "sicher unbedenklich geprüft zugelassen konform zertifiziert ungiftig geeignet",
    "fr": "sûr sûre sécuritaire approuvé conforme certifié inoffensif convient",
    "es": "seguro segura aprobado conforme certificado inofensivo apto",
    "it": "sicuro sicura approvato conforme certificato innocuo idoneo",
    "nl": "veilig goedgekeurd conform gecertificeerd onschadelijk geschikt",
    "pl": "bezpieczny bezpieczna zatwierdzony zgodny certyfikowany nieszkodliwy nadaje",
}


def test_no_statement_of_ours_judges_a_candle_in_any_language():
    printed = tables.rows("hazard_statements_other")
    assert {row["language"] for row in printed} == JUDGING.keys()
    for row in printed:
        assert not set(re.findall(r"\w+", row["text"].casefold())) & set(JUDGING[row["language"]].split()), row


def test_each_statement_in_another_language_is_one_of_those_in_english_and_stands_there_once():
    printed = [(row["language"], row["code"]) for row in tables.rows("hazard_statements_other")]
    assert len(printed) == len(set(printed))
    assert {code for _, code in printed} <= {row["code"] for row in tables.rows("hazard_statements")}


def test_label_texts_shows_a_statement_in_its_language_and_nothing_where_there_is_none(tmp_path):
    texts = [german("H317"), german("Warning"), german("H317", language="en")]
    book = books.Book(oils.season(labels=texts), tmp_path / "year.xlsx")
    found = [stored(book.path).get(book.cell("labels", "shown", row), "") for row in range(3)]
    assert found == ["Kann allergische Hautreaktionen verursachen.", "", "May cause an allergic skin reaction."]
