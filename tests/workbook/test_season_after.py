"""The season after opens with what the one before closes with: the laws that no closing may break.

`python tests/bench/close_years.py 200` tries as many years as it is asked for.
"""

import pytest
from closing_laws import LAWS, Closing
from years_to_close import closable

YEARS = [(11, "fifo"), (12, "average")]


@pytest.fixture(scope="module", params=YEARS, ids=lambda param: f"year {param[0]}, {param[1]}")
def closing(request):
    return Closing(closable(*request.param))


@pytest.mark.parametrize("law", LAWS, ids=lambda law: law.__name__)
def test_of_a_year_and_the_seasons_after_it(closing, law):
    assert law(closing) == []
