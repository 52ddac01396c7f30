"""The pages that are written from declarations and checks are those that would be written today."""

import re

import make_pages
import pytest


@pytest.mark.parametrize(("path", "text"), make_pages.PAGES.items(), ids=lambda value: getattr(value, "name", ""))
def test_a_page_is_the_one_made_today(path, text):
    assert path.is_file() and path.read_text(encoding="utf-8") == text(), f"remake it with: {make_pages.COMMAND}"


def test_a_check_is_found_with_the_source_over_it():
    checks, _ = make_pages.checks_of_functions()
    assert any("OpenStax, Chemistry 2e, m68704" in words for words in checks["share_of_total"])
    assert list(checks["oil_for_wax"]) == ["Common practice, no source"]


# What no text of ours calls a candle, a load or a method. A "certified limit" is what a certificate states,
# and a slope or an intercept may be certified by who publishes it. What is unknown is "not harmless".
JUDGEMENTS = re.compile(
    r"\b(safe|approved|compliant|certified(?! limit| slope|:)|suitable|non-?toxic|clean-burning|(?<!not )harmless)\b",
    re.I,
)


@pytest.mark.parametrize("path", [make_pages.HOME / "README.md", *make_pages.PAGES], ids=lambda path: str(path.name))
def test_no_page_passes_judgement(path):
    assert JUDGEMENTS.findall(path.read_text(encoding="utf-8")) == []


def test_a_judgement_is_found():
    assert JUDGEMENTS.findall("A safe load, certified; a certified limit is none.") == ["safe", "certified"]
