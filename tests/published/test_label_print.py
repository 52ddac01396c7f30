"""Labels drawn at true size against the heights, sides and areas that rules print: rendered, then measured."""

import math

import printed
import pytest

from candlecalc.labels import draw, pictograms
from candlecalc.labels.shapes import OVER

FINE = 1200  # dots an inch: a dot is 0.02 mm, 1 % of the least height
HALF_A_DOT = 25.4 / FINE / 2

# Least heights of figures in mm: Directive 76/211/EEC, Annex I, 3.1, by a summary of USDA Foreign Agricultural Service
# (2, 3, 4, 6); 16 CFR 500.21(b), 1/16, 1/8 and 3/16 of an inch, the first two by a page on the parallel FDA rule, the
# last from memory.
HEIGHTS = [2.0, 3.0, 4.0, 6.0, 25.4 / 16, 25.4 / 8, 3 * 25.4 / 16]


@pytest.mark.parametrize("height", HEIGHTS)
def test_flat_figures_are_as_high_as_asked_and_no_figure_is_lower(height, tmp_path):
    paper = printed.paper(width=120.0, height=40.0, rows=1, columns=1)
    pdf = draw.sheet(printed.label(printed.text("net weight", "0 1 2 3 4 5 6 7 8 9 N", height)), paper)
    found = printed.heights(printed.dark(printed.dots(pdf, tmp_path, 7.2, 12.9, 120, 40, FINE)), FINE)
    assert len(found) == 11
    assert min(found) >= height - HALF_A_DOT
    flat = [found[1], found[7], found[10]]
    assert height <= min(flat) and max(flat) <= 1.02 * height + HALF_A_DOT


# Height of a small x on a hazard label, in mm: Regulation (EU) 2024/2865, from two sources that tell of it. Texts on a
# large label grow, so the least is asked of one that they just fit.
@pytest.mark.parametrize("height", [1.2, 1.4, 1.8, 2.0])
@pytest.mark.parametrize("stretch", [draw.NORMAL, draw.CONDENSED])
def test_a_small_x_is_at_least_as_high_as_asked(height, stretch, tmp_path, monkeypatch):
    way = {"stretch": stretch, "side": 0.0, "beside": False, "name": 1.2}
    monkeypatch.setattr(draw, "fit", lambda *_: draw.Fitted(way, 1.0))
    paper = printed.paper(width=60.0, height=20.0, rows=1, columns=1)
    pdf = draw.sheet(printed.label(printed.text("hazard", "x z x", height, "H317")), paper)
    found = printed.heights(printed.dark(printed.dots(pdf, tmp_path, 7.2, 12.9, 60, 20, FINE)), FINE)
    assert len(found) == 3
    assert height - HALF_A_DOT <= min(found) and max(found) <= 1.02 * height + HALF_A_DOT


# CLP Annex I, Table 1.3: package in ml, label in mm, side in mm; a fifteenth of the label, 1.2.1.3, worked here:
# 52 x 74 / 15 = 256.53 mm2, 105 x 148 / 15 = 1036 mm2, which is more than the table's 16 and 32.
SIDES = [
    (400.0, 52.0, 74.0, math.sqrt(256.5333333), "16 x 16, and a fifteenth is more"),
    (3_000.0, 74.0, 52.0, math.sqrt(256.5333333), "the same up to 3 l, the label lying"),
    (3_001.0, 74.0, 105.0, 23.0, "23 x 23; a fifteenth is 22.76"),
    (60_000.0, 105.0, 148.0, math.sqrt(1036.0), "32 x 32, and a fifteenth is more"),
    (600_000.0, 148.0, 210.0, 46.0, "46 x 46; a fifteenth is 45.52"),
]


@pytest.mark.parametrize("holds, wide, high, side, where", SIDES)
def test_the_side_is_the_larger_of_the_table_and_a_fifteenth_of_its_label(holds, wide, high, side, where):
    paper = printed.paper(width=wide, height=high)
    assert pictograms.least_sides(holds, paper) == [pytest.approx(side, abs=1e-6)], where


def test_on_a_label_under_the_table_the_side_may_shrink_to_a_square_centimetre():
    # CLP Annex I, Table 1.3 (up to 3 l): "if possible at least 16 x 16", "not below 10 x 10"; 1.2.1.3: at least 1 cm2.
    assert pictograms.least_sides(100, printed.paper(width=30, height=30))[-1] == 10.0
    # 50 x 50 / 15 = 166.67 mm2, worked here.
    assert pictograms.least_sides(100, printed.paper(width=50, height=50))[-1] == pytest.approx(12.90994, abs=1e-5)


def test_over_three_litres_a_smaller_label_is_refused():
    # CLP Annex I, Table 1.3: over 3 l "at least" 74 x 105, without "if possible".
    with pytest.raises(ValueError, match=r"takes a hazard label of at least 74 x 105 mm; a sheet of 24 is smaller"):
        pictograms.least_sides(3500, printed.paper())


# CLP Annex I, 1.2.1: the side is the red square's, which stands on a point, and its area at least 1 cm2.
@pytest.mark.parametrize("code", ["GHS07", *pictograms.SYMBOLS])
def test_the_red_square_has_the_side_and_the_area_asked(code, tmp_path):
    paper = printed.paper(width=80.0, height=60.0, rows=1, columns=1)
    label = printed.label(printed.text("pictogram", "a symbol", 0.0, code), kind="warning")
    picture = printed.dots(draw.sheet(label, paper), tmp_path, 7.2, 12.9, 80, 60)
    frame = printed.red(picture)
    rows = frame.any(axis=1).nonzero()[0]
    dot = 25.4 / printed.DPI
    high = (rows[-1] - rows[0] + 1) * dot
    # Each row of the square reaches from its first red dot to its last.
    area = sum(spans[-1][1] - spans[0][0] for spans in map(printed.spans, frame[rows])) * dot**2
    asked = 52 * 74 / 15
    assert asked <= area <= 1.03 * asked
    # Its points end in a dot that is half red at most.
    assert high / math.sqrt(2) == pytest.approx(math.sqrt(asked * OVER), abs=0.08)
