"""Sheets of labels: where labels stand, what a program reads in them, and what the file asks of a printer."""

import io

import printed
import pypdf
import pytest
from hypothesis import given
from hypothesis import strategies as st

from candlecalc.labels import draw
from candlecalc.labels.positions import correction, places

OF_24 = printed.paper(outline=True)
OF_40 = printed.paper(
    name="a sheet of 40", rows=10, columns=4, width=45.7, height=25.4, left=9.7, top=15.5, gap_across=2.6, gap_down=1.0,
    outline=True,
)  # fmt: skip
NAME = printed.text("name", "Fig")


# How far it is from one label to the next, worked here: 63.5 + 2.55 and 33.9; 45.7 + 2.6 and 25.4 + 1.
STEPS = [(OF_24, 66.05, 33.9, 0), (OF_24, 66.05, 33.9, 10), *((OF_40, 48.3, 26.4, skip) for skip in (0, 10, 39))]


@pytest.mark.parametrize("paper, step_across, step_down, skip", STEPS)
def test_each_label_stands_where_the_paper_has_it(paper, step_across, step_down, skip, tmp_path):
    ink = printed.dark(printed.dots(draw.sheet(printed.label(NAME), paper, skip), tmp_path, dpi=300))
    mm = 300 / 25.4
    edge, near = round(0.7 * mm), 0.1

    def middles(line, start):
        return [start + (first + last) / 2 / mm for first, last in printed.spans(line)]

    for place in range(paper.rows * paper.columns):
        row, column = divmod(place, paper.columns)
        left, top = paper.left + column * step_across, paper.top + row * step_down
        # A line under the label's upper edge crosses its left and its right one, and so the other way.
        x, y = round(left * mm), round(top * mm)
        wide, high = round(paper.width * mm), round(paper.height * mm)
        across = middles(ink[y + edge, x - edge // 2 : x + wide + edge // 2], (x - edge // 2) / mm)
        down = middles(ink[y - edge // 2 : y + high + edge // 2, x + edge], (y - edge // 2) / mm)
        if place < skip:
            assert across == []
        else:
            assert across == pytest.approx([left, left + paper.width], abs=near)
            assert down[0] == pytest.approx(top, abs=near) and down[-1] == pytest.approx(top + paper.height, abs=near)


@given(
    st.floats(5, 35), st.floats(5, 35), st.floats(147, 153), st.floats(196, 204), st.floats(0, 200), st.floats(0, 280)
)
def test_what_a_ruler_read_puts_every_place_right(left, top, across, down, x, y):
    paper = printed.paper(read_left=left, read_top=top, read_across=across, read_down=down)
    told = correction(paper).told((x, y))
    # A printer that puts the cross, told 20, 20, at left, top, and draws rulers of 150 and 200 so long.
    came_out = (left + (told[0] - 20) * across / 150, top + (told[1] - 20) * down / 200)
    assert came_out == pytest.approx((x, y), abs=1e-6)


def test_what_a_ruler_read_also_corrects_the_size(tmp_path):
    paper = printed.paper(rows=1, columns=1, outline=True, read_across=147.0, read_left=19.6)
    ink = printed.dark(printed.dots(draw.sheet(printed.label(NAME), paper), tmp_path, 0, 13, 90, 1))
    (first, _), *_, (_, last) = printed.spans(ink[10])
    assert (last - first) * 25.4 / printed.DPI == pytest.approx(63.5 / 0.98 + 0.1, abs=0.06)


def test_the_rulers_of_the_calibration_page_are_true(tmp_path):
    pdf = draw.calibration(OF_24, "papers.csv")
    mm = printed.DPI / 25.4
    across = printed.dark(printed.dots(pdf, tmp_path, 0, 26, 210, 1))[5]
    down = printed.dark(printed.dots(pdf, tmp_path, 26, 0, 1, 297))[:, 5]
    # The long line and the long mark at its end.
    assert [(a + b) / 2 / mm for a, b in printed.spans(across)] == pytest.approx([20, 170], abs=0.05)
    assert [(a + b) / 2 / mm for a, b in printed.spans(down)] == pytest.approx([20, 220], abs=0.05)


LONG = "1-(1,2,3,4,5,6,7,8-octahydro-2,3,8,8-tetramethyl-2-naphthyl)ethan-1-one"
READ = [
    "Crème brûlée à l'œillet, Ångström, žluťoučký kůň",
    "Ελληνικά αρώματα, Кедр и инжир, đặc biệt",
    'marks: # $ * _ \\ < > & ` " @ {x} [y] 100% //',
]


@pytest.mark.parametrize("words", READ)
def test_words_are_read_back_as_typed(words, tmp_path):
    paper = printed.paper(width=120.0, height=40.0, rows=1, columns=1)
    assert printed.read_back(draw.sheet(printed.label(printed.text("line", words)), paper), tmp_path) == words.split()


def test_a_long_name_breaks_after_its_marks_and_loses_none(tmp_path):
    paper = printed.paper(width=40.0, height=40.0, rows=1, columns=1)
    words = printed.read_back(draw.sheet(printed.label(printed.text("line", LONG)), paper), tmp_path)
    assert len(words) > 1
    assert "".join(words).replace("\u200b", "") == LONG


def test_proof_stands_across_a_label_until_each_text_is_confirmed(tmp_path):
    doubtful = printed.text("line", "Keep", confirmed=False, against="the standard")
    of_one = printed.paper(rows=1, columns=1)
    assert "PROOF" in printed.read_back(draw.sheet(printed.label(NAME, doubtful), of_one), tmp_path)
    assert printed.read_back(draw.sheet(printed.label(NAME), of_one), tmp_path) == ["Fig"]


def test_the_file_asks_for_no_scaling_and_carries_its_fonts():
    made = draw.sheet(printed.label(NAME), OF_24)
    reader = pypdf.PdfReader(io.BytesIO(made))
    assert reader.trailer["/Root"]["/ViewerPreferences"]["/PrintScaling"] == "/None"
    assert reader.trailer["/Root"]["/MarkInfo"]["/Marked"]
    fonts = reader.pages[0]["/Resources"]["/Font"].values()
    descriptors = [font.get_object()["/DescendantFonts"][0].get_object()["/FontDescriptor"] for font in fonts]
    assert descriptors and all("/FontFile2" in each or "/FontFile3" in each for each in descriptors)
    assert [float(side) * 25.4 / 72 for side in reader.pages[0].mediabox[2:]] == pytest.approx([210, 297], abs=0.01)
    assert made == draw.sheet(printed.label(NAME), OF_24)


def test_what_does_not_fit_is_refused_with_the_millimetres():
    many = printed.text("line", "Keep away from things that can catch fire. " * 30)
    said = r"Test candle, front, on a sheet of 24 \(63.5 x 33.9 mm\): the text needs [0-9.]+ mm more height"
    with pytest.raises(draw.DoesNotFitError, match=said):
        draw.fit(printed.label(many), OF_24)
    wide = printed.text("line", "W" * 60)
    with pytest.raises(draw.DoesNotFitError, match=r'"W+" needs [0-9.]+ mm more width'):
        draw.fit(printed.label(wide), OF_24)


def test_the_missing_height_is_what_is_missing():
    label = printed.label(printed.text("line", "Keep away from things that can catch fire. " * 30))
    with pytest.raises(draw.DoesNotFitError) as refused:
        draw.fit(label, OF_24)
    missing = float(str(refused.value).split("needs ")[1].split(" ")[0])
    draw.fit(label, printed.paper(height=33.9 + missing + 0.01))
    with pytest.raises(draw.DoesNotFitError):
        draw.fit(label, printed.paper(height=33.9 + missing - 0.02))


@pytest.mark.parametrize("words, name", [("Fig \U0001f56f", "CANDLE"), ("日", "CJK UNIFIED IDEOGRAPH-65E5")])
def test_a_letter_that_the_font_lacks_is_refused_by_name(words, name):
    with pytest.raises(ValueError, match=f"the font has no .*{name}"):
        draw.fit(printed.label(printed.text("line", words)), OF_24)


@pytest.mark.parametrize(
    "changed, words",
    [
        ({"columns": 4}, r"reach 268.85 mm, 58.85 mm wider than a4 paper"),
        ({"rows": 9}, r"reach 318.00 mm, 21.00 mm higher than a4 paper"),
    ],
)
def test_labels_beyond_the_sheet_are_refused(changed, words):
    with pytest.raises(ValueError, match=words):
        places(printed.paper(**changed))


def test_a_sheet_that_is_used_up_is_refused():
    with pytest.raises(ValueError, match="--skip takes 0 to 23"):
        places(OF_24, 24)


def alternatives(node):
    """What the drawings of a tagged PDF are called, in reading order."""
    node = node.get_object()
    if isinstance(node, list):
        return [words for each in node for words in alternatives(each)]
    if not isinstance(node, dict):
        return []
    return [*([node["/Alt"]] if "/Alt" in node else []), *(alternatives(node["/K"]) if "/K" in node else [])]


def test_a_drawing_is_read_aloud_by_its_words():
    paper = printed.paper(width=80.0, height=60.0, rows=1, columns=1)
    symbols = [printed.text("sign", "", 5.0), printed.text("pictogram", "environment", 0.0, "GHS09")]
    reader = pypdf.PdfReader(io.BytesIO(draw.sheet(printed.label(*symbols, kind="warning"), paper)))
    assert alternatives(reader.trailer["/Root"]["/StructTreeRoot"]) == ["warning sign", "environment"]


def test_a_very_long_name_stands_in_several_lines_within_its_round_label(tmp_path):
    name = "Šípková růže s bílým čajem a medovým plástem z Évory"
    paper = printed.paper(shape="round", width=40.0, height=40.0, rows=1, columns=1)
    pdf = draw.sheet(printed.label(printed.text("name", name), printed.text("net weight", "227 g", 4.0)), paper)
    assert printed.read_back(pdf, tmp_path) == [*name.split(), "227", "g"]
    ink = printed.dark(printed.dots(pdf, tmp_path, 0, 0, 60, 60))
    down, across = (place * 25.4 / printed.DPI for place in ink.nonzero())
    from_middle = ((across - 7.2 - 20) ** 2 + (down - 12.9 - 20) ** 2) ** 0.5
    assert from_middle.max() < 20
