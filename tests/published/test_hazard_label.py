"""The label by hazard classes, against the articles and tables of Regulation (EC) No 1272/2008 (CLP).

Articles were read in unofficial copies; what a row rests on second-hand or from memory says unconfirmed.
"""

import pytest


def of(lines, element):
    return [line for line in lines if line.element == element]


def codes(lines, element):
    return [line.code for line in of(lines, element)]


# CLP Annex III, wording of 2025-09-01, as printed in the data set mhchem/hpstatements.
WORDINGS = [
    ("Skin Sens. 1 H317", "May cause an allergic skin reaction."),
    ("Eye Irrit. 2 H319", "Causes serious eye irritation."),
    ("Asp. Tox. 1 H304", "May be fatal if swallowed and enters airways."),
    ("STOT SE 3 H336", "May cause drowsiness or dizziness."),
    ("Aquatic Chronic 2 H411", "Toxic to aquatic life with long lasting effects."),
    ("Aquatic Chronic 4 H413", "May cause long lasting harmful effects to aquatic life."),
    ("Repr. 1B H360FD", "May damage fertility. May damage the unborn child."),
]


@pytest.mark.parametrize("typed, wording", WORDINGS)
def test_a_statement_is_worded_as_the_law_has_it(face, typed, wording):
    (line,) = of(face.label_of_classes([typed]), "hazard statement")
    assert line.text == wording
    assert line.code == typed.split()[-1]


# CLP Art. 20(3), and the label elements by class in ECHA's guidance v4.2, section 7.3 (second-hand).
SIGNALS = [
    (["Skin Sens. 1 H317"], "Warning"),
    (["Skin Sens. 1 H317", "Eye Dam. 1 H318"], "Danger"),
    (["Aquatic Chronic 2 H411"], "none"),
    (["Resp. Sens. 1 H334"], "Danger"),
    (["Aquatic Acute 1 H400"], "Warning"),
]


@pytest.mark.parametrize("typed, word", SIGNALS)
def test_danger_stands_alone(face, typed, word):
    (line,) = of(face.label_of_classes(typed), "signal word")
    assert line.text == word
    assert word == "none" or line.status.startswith("unconfirmed: check against")


# CLP Art. 26(1) and (2), read in the Czech and Slovak texts.
PICTOGRAMS = [  # classes, pictograms, those left out, where
    (["Skin Sens. 1 H317", "Skin Irrit. 2 H315", "Eye Dam. 1 H318"], ["GHS05", "GHS07"], [], "07 is kept for H317"),
    (["Skin Irrit. 2 H315", "Eye Dam. 1 H318"], ["GHS05"], ["GHS07"], "05 stands for skin and eye irritation"),
    (["Acute Tox. 3 (oral) H301", "Skin Sens. 1 H317"], ["GHS06"], ["GHS07"], "06: no 07"),
    (["Resp. Sens. 1 H334", "Skin Sens. 1 H317"], ["GHS08"], ["GHS07"], "08 for breathing stands for skin"),
    (["Asp. Tox. 1 H304", "Skin Sens. 1 H317"], ["GHS07", "GHS08"], [], "08 for another reason does not"),
    (["Acute Tox. 4 (oral) H302", "Eye Dam. 1 H318"], ["GHS05", "GHS07"], [], "07 is kept for H302"),
    (["Aquatic Chronic 2 H411", "Aquatic Chronic 3 H412"], ["GHS09"], [], "the most severe of a class"),
    (["Aquatic Chronic 3 H412"], [], [], "none"),
    (["STOT SE 1 H370", "STOT SE 3 H336"], ["GHS08"], ["GHS07"], "Art. 26(2): 08 of the most severe of the class"),
    (["STOT SE 2 H371", "STOT SE 3 H335"], ["GHS08"], ["GHS07"], "the same"),
    (["STOT SE 1 H370", "STOT SE 3 H336", "Skin Sens. 1"], ["GHS07", "GHS08"], [], "07 is kept for another class"),
    (["STOT RE 1 H372", "STOT SE 3 H336"], ["GHS07", "GHS08"], [], "two classes"),
]


@pytest.mark.parametrize("typed, shown, left_out, where", PICTOGRAMS)
def test_a_stronger_pictogram_stands_for_a_milder_one(face, typed, shown, left_out, where):
    lines = face.label_of_classes(typed)
    assert codes(lines, "pictogram") == shown
    assert codes(lines, "pictogram left out") == left_out


def test_a_pictogram_left_out_names_its_article(face):
    # CLP Art. 26(1) by the kind of hazard, 26(2) within one class.
    (one,) = of(face.label_of_classes(["STOT SE 1 H370", "STOT SE 3 H336"]), "pictogram left out")
    (other,) = of(face.label_of_classes(["Skin Irrit. 2 H315", "Eye Dam. 1 H318"]), "pictogram left out")
    assert (one.status, other.status) == ("CLP Art. 26(2)", "CLP Art. 26(1)")


def test_the_committees_examples_have_their_labels(face):
    # UN Sub-Committee, ST/SG/AC.10/C.4/2008/23, annex 2, example 3-1(d): category 3 by vapour, H331, Danger (printed).
    lines = face.label_of_classes(["Acute Tox. 3 (vapour)"])
    assert codes(lines, "hazard statement") == ["H331"]
    assert [line.text for line in of(lines, "signal word")] == ["Danger"]
    # The same, examples 3-2 and 3-3(a), as a sample that holds 20 % oil, poured at 20 %: Skin Corr. 1 (printed).
    lines = face.label_of_candle(["acid"], ["4 %"], ["Skin Corr. 1"], [0.2 / 0.8], dilutions=[0.2], route="stricter")
    assert of(lines, "class")[0].text == "Skin Corr. 1"


def test_statements_that_another_one_makes_unnecessary_may_go(face):
    # CLP Annex I, Table 3.3.5, footnote: H318 beside H314. H400 beside H410: Annex III, second-hand.
    lines = face.label_of_classes(
        ["Skin Corr. 1B H314", "Eye Dam. 1 H318", "Aquatic Acute 1 H400", "Aquatic Chronic 1 H410"]
    )
    assert codes(lines, "hazard statement") == ["H314", "H410"]
    burn, water = of(lines, "hazard statement, may be left out")
    assert (burn.code, burn.status) == ("H318", "H314 stands for it")
    assert water.code == "H400" and "unconfirmed" in water.status


def test_acute_beside_milder_chronic_hazard_to_water_is_not_settled(face):
    # No source was read: both statements are shown, and neither is confirmed.
    lines = of(face.label_of_classes(["Aquatic Acute 1 H400", "Aquatic Chronic 3 H412"]), "hazard statement")
    assert [line.code for line in lines] == ["H400", "H412"]
    assert lines[0].status.startswith("unconfirmed: check against CLP Annex I, 4.1")


def test_an_allergen_below_its_class_is_named_by_euh208(face):
    # CLP Annex II, 2.8: EUH208 where the mixture is not classified as sensitising, else the name alone.
    (line,) = of(face.label_of_classes(["Aquatic Chronic 3 H412"], None, ["linalool", "citral"]), "supplemental")
    assert line.text == "Contains linalool, citral. May produce an allergic reaction."
    lines = face.label_of_classes(["Skin Sens. 1 H317"], ["citral"], ["linalool"])
    assert of(lines, "supplemental") == []
    assert [line.text for line in of(lines, "name")] == ["citral", "linalool"]


def test_a_label_with_euh208_alone_names_the_product_and_who_supplies_it(face):
    # CLP Annex II, 2.8; that product and supplier stand beside it: Art. 25(6), from memory. 0.1 to 1 % of the candle.
    lines = face.label_of_candle(
        ["Linalool (CAS 78-70-6)", "citral, EC 226-394-6"], ["5 %", "4 %"], ["Skin Sens. 1B H317"] * 2, [0.1]
    )
    assert [line.code for line in lines if line.code] == ["EUH208"]
    (line,) = of(lines, "supplemental")
    assert line.text == "Contains Linalool, citral. May produce an allergic reaction."
    assert "Linalool (CAS 78-70-6) 0.454545 %; Skin Sens. is named from 0.1 % on" in line.why
    (duty,) = of(lines, "duty")
    assert duty.text == "supplier's name, address and telephone; the product's name"
    assert duty.status == "unconfirmed: check against CLP Art. 25(6) (from memory)"
    # From the supplier's own statement too, and for EUH210, which stands in the same part of Annex II.
    assert of(face.label_of_classes([], None, ["linalool 78-70-6"]), "duty") == [duty]
    lines = face.label_of_candle(["a"], ["10 %"], ["Eye Irrit. 2"], [0.1 / 0.9], buyer="trade")
    assert [line.text for line in of(lines, "duty")] == [duty.text]


def test_a_label_without_a_statement_has_no_duty(face):
    # CLP Art. 17 and 25(6), from memory.
    assert of(face.label_of_candle(["a"], ["0.1 %"], ["Skin Sens. 1B"], [0.1]), "duty") == []


# CLP Annex II, 2.8, and Art. 18(3): substances are named; their numbers are for the data sheet (common practice).
NAMES = [  # typed, named
    ("linalool 78-70-6", "linalool"),
    ("Linalool, CAS-No. 78-70-6, EC 201-134-4", "Linalool"),
    ("citral (EC: 226-394-6; Index 605-019-00-3)", "citral"),
    ("d-limonene 5989-27-5 01-2119529223-47-XXXX", "d-limonene"),
    ("78-70-6", "<name of 78-70-6>"),
]


@pytest.mark.parametrize("typed, named", NAMES)
def test_a_label_names_substances_without_their_numbers(face, typed, named):
    (line,) = of(face.label_of_classes([], None, [typed]), "supplemental")
    assert line.text == f"Contains {named}. May produce an allergic reaction."
    assert [line.text for line in of(face.label_of_classes(["Skin Sens. 1 H317"], [typed]), "name")] == [named]
    (row,) = [row for row in face.hazard_of_candle([typed], ["5 %"], ["Skin Sens. 1B"], [0.1]) if row.code == "EUH208"]
    assert row.statement == line.text


def test_an_allergen_beside_a_class_is_named_once(face):
    # CLP Annex II, 2.8: the name alone where the mixture is classified as sensitising.
    lines = face.label_of_candle(["a 78-70-6", "b"], ["30 %", "5 %"], ["Skin Sens. 1B"] * 2, [0.1])
    assert [line.text for line in of(lines, "name")] == ["a", "b"]
    assert not [line for line in lines if line.element in ("EUH208", "name on the label")]


def test_names_come_with_some_classes_and_not_with_irritation(face):
    # CLP Art. 18(3)(b), its list second-hand.
    assert [line.text for line in of(face.label_of_classes(["Eye Dam. 1 H318"], ["x"]), "name")] == ["x"]
    assert of(face.label_of_classes(["Skin Irrit. 2 H315", "Aquatic Chronic 1 H410"], ["x"]), "name") == []


# ECHA Guidance on Labelling and Packaging v4.2, section 7.3, second-hand: what the public is offered.
def test_precautions_are_offered_by_how_far_they_are_recommended(face):
    lines = of(face.label_of_classes(["Skin Sens. 1 H317", "Skin Irrit. 2 H315"]), "precaution")
    offered = [line.code for line in lines]
    assert offered[0] == "P280" and "P261" in offered and "P272" not in offered
    assert "P332+P313" not in offered and "P333+P313" in offered  # the one for rash stands for both
    assert lines[0].why == "highly recommended for Skin Irrit. 2, Skin Sens. 1"
    assert all(line.status.startswith("unconfirmed") for line in lines)


# CLP Annex IV, Part 2, to which Art. 22(4) points, by the data set mhchem/hpstatements; Part 1 as amended by Regulation
# (EU) 2019/521 has other words, second-hand (a data set of the acts that amended Annex IV).
TWICE_WORDED = [  # code, words of Part 2, words of Part 1
    ("P103", "Read label before use.", "Read carefully and follow all instructions."),
    (
        "P280",
        "Wear protective gloves/protective clothing/eye protection/face protection.",
        "Wear protective gloves/protective clothing/eye protection/face protection/hearing protection/…",
    ),
]


@pytest.mark.parametrize("code, words, other", TWICE_WORDED)
def test_a_precaution_with_two_wordings_gives_both(face, code, words, other):
    (line,) = [line for line in of(face.label_of_classes(["Skin Sens. 1 H317"]), "precaution") if line.code == code]
    assert line.text == words
    against = f'CLP Annex IV, whose Part 1, amended by Regulation (EU) 2019/521, reads "{other}" (read second-hand)'
    assert f"unconfirmed: check against {against}" in line.status


# CLP Annex I, 1.5.2.1, read in the Czech and German texts: packages that hold no more than 125 ml.
SMALL = [  # class, what it says
    ("Skin Sens. 1 H317", "H317 and its P statements stay at any size"),
    ("Skin Irrit. 2 H315", "H315 and its P statements may be left out; pictogram and signal word stay"),
    ("Aquatic Chronic 2 H411", "H411 and its P statements may be left out; pictogram and signal word stay"),
    ("Aquatic Chronic 3 H412", "P statements of H412 may be left out"),
    ("Acute Tox. 4 (oral) H302", "H302 and its P statements stay at any size"),
    ("Eye Dam. 1 H318", "H318 and its P statements stay at any size"),
]


@pytest.mark.parametrize("typed, words", SMALL)
def test_a_small_package_may_leave_off_some_statements(face, typed, words):
    assert [line.text for line in of(face.label_of_classes([typed], holds=125), "small package")] == [words]
    assert of(face.label_of_classes([typed], holds=125.1), "small package") == []


def test_a_small_package_for_trade_may_leave_off_more(face):
    # The same: harmful if swallowed, only where it is not supplied to the public.
    (line,) = of(face.label_of_classes(["Acute Tox. 4 (oral) H302"], holds=100, buyer="trade"), "small package")
    assert line.text.startswith("H302 and its P statements may be left out")


# CLP Annex I, Table 1.3; the letters: Regulation (EU) 2024/2865, second-hand.
SIZES = [  # ml, label, letters
    (500, "if possible at least 52 x 74 mm", "1.2"),
    (501, "if possible at least 52 x 74 mm", "1.4"),
    (3000, "if possible at least 52 x 74 mm", "1.4"),
    (3001, "at least 74 x 105 mm", "1.8"),
]


@pytest.mark.parametrize("holds, label, letters", SIZES)
def test_the_label_grows_with_the_package(face, holds, label, letters):
    lines = face.label_of_classes(["Skin Sens. 1 H317"], holds=holds)
    assert [line.text for line in of(lines, "size of label")] == [label]
    (height,) = of(lines, "height of letters")
    assert height.text.startswith(letters) and height.status.startswith("unconfirmed")


def test_without_its_size_a_package_is_not_judged(face):
    # CLP Annex I, 1.5.2.1 goes by what the package holds, in ml.
    lines = face.label_of_classes(["Skin Sens. 1 H317"])
    assert of(lines, "package")[0].text.startswith("type what the package holds, in ml")
    with face.refuses("it takes more than 0 ml or blank"):
        face.label_of_classes(["Skin Sens. 1 H317"], holds=-1)


# A table on ECHA's pages: tactile warning and child-resistant closure for goods for the public.
DUTIES = [  # class, duties
    ("Skin Sens. 1 H317", 0),
    ("Eye Dam. 1 H318", 0),
    ("Aquatic Chronic 1 H410", 0),
    ("Acute Tox. 4 (oral) H302", 1),
    ("Carc. 2 H351", 1),
    ("Asp. Tox. 1 H304", 2),
    ("Skin Corr. 1B H314", 2),
    ("Acute Tox. 3 (oral) H301", 2),
]


@pytest.mark.parametrize("typed, count", DUTIES)
def test_some_classes_ask_for_a_mark_to_feel_and_a_closure(face, typed, count):
    duties = [line.text for line in of(face.label_of_classes([typed]), "duty")]
    assert len([text for text in duties if text.startswith(("tactile", "child-resistant"))]) == count


def test_poison_centres_are_notified_of_what_harms_people(face):
    # CLP Art. 45 and Annex VIII, by an authority's page; that water alone does not count is derived.
    assert any("poison centres" in line.text for line in of(face.label_of_classes(["Skin Sens. 1"]), "duty"))
    assert not any("poison centres" in line.text for line in of(face.label_of_classes(["Aquatic Chronic 1"]), "duty"))


def test_what_may_cause_cancer_is_restricted_for_the_public(face):
    # REACH Annex XVII, entries 28 to 30, second-hand.
    restricted = [line for line in of(face.label_of_classes(["Repr. 1B H360"]), "duty") if "public where" in line.text]
    assert restricted[0].status.startswith("unconfirmed: check against REACH")
    assert not [line for line in face.label_of_classes(["Repr. 2 H361"]) if "public where" in (line.text or "")]


# CLP Annex II, 2.10: a data sheet on request, for mixtures without a class that are not for the public.
REQUESTS = [  # class, share of the oil at 10 % of the candle, buyer, whether
    ("Skin Sens. 1B", "1 %", "trade", True),
    ("Skin Sens. 1B", "0.99 %", "trade", False),
    ("Skin Sens. 1B", "1 %", "public", False),
    ("Skin Sens. 1A", "0.1 %", "trade", True),
    ("Repr. 2 H361", "1 %", "trade", True),
    ("Eye Irrit. 2", "10 %", "trade", True),
    ("Eye Irrit. 2", "9.9 %", "trade", False),
]


@pytest.mark.parametrize("typed, share, buyer, asked", REQUESTS)
def test_trade_is_offered_the_data_sheet(face, typed, share, buyer, asked):
    lines = face.label_of_candle(["a"], [share], [typed], [0.1 / 0.9], buyer=buyer)
    assert ("EUH210" in codes(lines, "supplemental")) == asked


def test_a_candle_with_three_classes_has_one_word_and_two_pictograms(face):
    # Derived from Art. 20(3) and 26(1): H318, H315 and H317 give Danger, GHS05, and GHS07 kept for H317.
    lines = face.label_of_candle(
        ["a", "b"], ["40 %", "60 %"], ["Eye Dam. 1; Skin Sens. 1B", "Skin Irrit. 2; Skin Corr. 1B"], [0.1 / 0.9]
    )
    assert {line.code for line in of(lines, "class")} == {"H318", "H314", "H317"}
    lines = face.label_of_candle(
        ["a", "b"], ["40 %", "50 %"], ["Eye Dam. 1; Skin Sens. 1B; Skin Irrit. 2", "Skin Irrit. 2"], [0.5]
    )
    assert {line.code for line in of(lines, "class")} == {"H318", "H315", "H317"}
    assert [line.text for line in of(lines, "signal word")] == ["Danger"]
    assert codes(lines, "pictogram") == ["GHS05", "GHS07"]


def test_elsewhere_the_rules_are_others(face):
    # The scope of CLP; that the GB list may differ was not researched.
    (line,) = face.label_of_classes(["Skin Sens. 1 H317"], region="US")
    assert line.element == "these rules do not apply in the US" and "29 CFR 1910.1200" in line.status
    (row,) = face.hazard_of_candle(["a"], ["5 %"], ["H317"], [0.1], region="US")
    assert row.found == "these rules do not apply in the US"
    (only,) = face.hazard_cautions("US")
    assert only.startswith("these rules do not apply in the US")
    british = face.hazard_of_candle(["a"], ["20 %"], ["Skin Sens. 1B H317"], [0.1], region="GB")
    assert british[0].status.endswith("the GB list may differ: confirm")
    assert face.hazard_cautions("GB")[-1].endswith("the GB list may differ: confirm.")
    assert "EN 15493" in " ".join(face.hazard_cautions())


def test_a_label_without_lines_says_so(face):
    # Common practice, no source.
    assert face.label_of_candle([], [], [], [0.1])[0].element == "no data sheet typed: cannot say"
    assert face.label_of_classes([])[0].element == "no data sheet typed: cannot say"
    assert of(face.label_of_classes(["not classified"]), "class")[0].text == "no class reached from the lines typed"
    with face.refuses("loads is empty"):
        face.label_of_candle(["a"], ["5 %"], ["H317"], [])
