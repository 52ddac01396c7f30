"""The page of functions: every declaration is on it, with where it works."""

import pytest

from candlecalc.declaration.declared import REGISTRY, find
from candlecalc.faces.described.markdown import faces_of, page

PAGE = page()


@pytest.mark.parametrize("name", sorted(name for name, formula in REGISTRY.items() if not formula.instead))
def test_every_function_is_on_the_page_with_its_arguments_source_and_example(name):
    entry = PAGE.partition(f"\n### {name}\n")[2].partition("\n### ")[0]
    declared = find(name)
    assert all(f"\n| {argument} |" in entry for argument in declared.arguments)
    assert f"- source: {declared.source}\n" in entry
    assert ">>> " in entry


def test_where_a_function_works_follows_from_its_native_form():
    assert faces_of(find("oil_for_wax"))[0].endswith("as a formula to paste, as a named LAMBDA")
    assert faces_of(find("split_charge"))[1] == (
        "not as a formula to paste or as a named LAMBDA: its answer is several cells"
    )
