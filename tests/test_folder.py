"""A season as a folder of CSV files, however a spreadsheet wrote them."""

import csv
import re

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


@pytest.mark.parametrize("mark", [";", "\t"], ids=["semicolons", "tabs"])
@pytest.mark.parametrize("start", ["", "\ufeff"], ids=["plain", "with a byte order mark"])
def test_cells_may_be_parted_by_semicolons_with_decimal_commas(demo, there, mark, start):
    for path in there.glob("*.csv"):
        rows = list(csv.reader(path.read_text(encoding="utf-8").splitlines()))
        with path.open("w", newline="", encoding="utf-8") as file:
            file.write(start)
            csv.writer(file, delimiter=mark, lineterminator="\r\n").writerows(
                [re.sub(r"^(-?\d+)\.(\d+)$", r"\1,\2", cell) for cell in row] for row in rows
            )
    assert "61,5" in (there / "materials.csv").read_text(encoding="utf-8")
    alike(folder.read(there), demo)


@pytest.mark.parametrize("given, words", [
    (b"S\0ft", ", line 2: a character that no workbook holds; save it as CSV in UTF-8"),
    (b"S\x1bft", ", line 2: a character that no workbook holds; save it as CSV in UTF-8"),
    (b"S\xf6ft", ": save it as CSV in UTF-8"),
    (b'"Soft' + b"t" * 200_000, ": a cell has no end; look for a lone quotation mark"),
], ids=["a zero byte", "a control character", "another encoding", "no closing mark"])  # fmt: skip
def test_a_file_that_no_workbook_can_hold_is_refused_in_words(there, given, words):
    path = there / "materials.csv"
    path.write_bytes(path.read_bytes().replace(b"Soft", given, 1))
    with pytest.raises(UnreadableError) as refused:
        folder.read(there)
    assert str(refused.value) == f"{path}{words}"


def test_a_setting_stands_there_once(there):
    change(there / "settings.csv", "scale_step,", "scale_step,3\nscale_step,")
    with pytest.raises(UnreadableError, match=re.escape("settings.csv: scale_step stands there twice; take one line")):
        folder.read(there)


def test_an_optional_column_that_is_absent_reads_as_blank(demo, there):
    lines = list(csv.reader((there / "materials.csv").read_text(encoding="utf-8").splitlines()))
    for line in lines:
        del line[6]  # shipping
    with (there / "materials.csv").open("w", newline="", encoding="utf-8") as file:
        csv.writer(file).writerows(lines)
    demo.tables["materials"]["shipping"] = None
    alike(folder.read(there), demo)
