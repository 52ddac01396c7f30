"""A season as a folder of CSV files, however a spreadsheet wrote them."""

import pytest

from candlecalc.season import folder
from candlecalc.season.folder import UnreadableError
from candlecalc.season.season import problems


@pytest.fixture
def demo():
    return folder.read(folder.DEMO)


@pytest.fixture
def there(demo, tmp_path):
    folder.write(demo, tmp_path)
    return tmp_path


def change(path, old, new):
    text = path.read_text(encoding="utf-8")
    assert old in text
    path.write_text(text.replace(old, new), encoding="utf-8")


def alike(season, other):
    assert season.settings == other.settings
    for key, table in season.tables.items():
        assert table.equals(other.tables[key]), key


@pytest.mark.parametrize("file, old, new", [
    ("recipes.csv", ",made,", ",Made,"), ("materials.csv", ",wax,", ",WAX,"), ("materials.csv", ",lb,", ",LB,"),
    ("settings.csv", "registered,yes", "registered,Yes"), ("settings.csv", "weight_unit,oz", "weight_unit,Oz"),
    ("settings.csv", "region,us", "region,US"),
])  # fmt: skip
def test_a_choice_is_known_however_it_is_written(demo, there, file, old, new):
    change(there / file, old, new)
    alike(folder.read(there), demo)


@pytest.mark.parametrize("old, new, words", [
    ("weight_unit,oz\n", "", "Weights in takes oz or g"),
    ("weight_unit,oz", "weight_unit,stone", "Weights in takes oz or g"),
    ("paper,Letter", "paper,Legal", "Paper takes Letter or A4"),
    ("currency,USD", "currency,", "Currency takes the currency's three letters"),
])  # fmt: skip
def test_settings_that_do_not_say_what_a_workbook_is_made_for_are_refused(there, old, new, words):
    change(there / "settings.csv", old, new)
    with pytest.raises(UnreadableError, match=f"settings.csv: it does not say what the workbook is made for: {words}$"):
        folder.read(there)


def test_a_number_beyond_all_numbers_is_a_problem(there):
    change(there / "materials.csv", ",16.2,", f",{'9' * 400},")
    assert [problem.column for problem in problems(folder.read(there))] == ["shipping"]
