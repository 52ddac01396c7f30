"""A season as a folder of CSV files, however a spreadsheet wrote them."""

import csv
import re

import pytest

from candlecalc.season import folder
from candlecalc.season.folder import UnreadableError
from candlecalc.season.season import problems
from candlecalc.season.tables import TABLES


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


# Lines that say more than their head has columns for


def line_of(path, starts):
    """The number of the line that starts so, counted from 1."""
    return next(n for n, line in enumerate(path.read_text().splitlines(), start=1) if line.startswith(starts))


def refused(there):
    with pytest.raises(UnreadableError) as problem:
        folder.read(there)
    return str(problem.value)


def test_a_decimal_comma_that_parts_a_cell_is_no_price(there):
    change(there / "materials.csv", ",61.5,", ",61,5,")
    row = line_of(there / "materials.csv", "Soft plant wax")
    said = refused(there)
    assert said.startswith(f"{there / 'materials.csv'}, line {row}: one cell more than the first line has columns for")
    assert '"61,5"' in said and "write 61.5" in said


def test_a_decimal_comma_in_a_setting_is_no_tax_of_nothing(there):
    change(there / "settings.csv", "waste,0.02", "waste,0,02")
    row = line_of(there / "settings.csv", "waste")
    assert refused(there) == (
        f"{there / 'settings.csv'}, line {row}: one cell more than the first line has columns for, at "
        'its end "02"; a decimal comma may have parted "0,02": write 0.02'
    )


def test_cells_too_many_are_told_by_what_is_in_them(there):
    change(there / "places.csv", "\n", ",,\n")  # as some programs end every line
    folder.read(there)
    path = there / "vessels.csv"
    path.write_text(path.read_text().rstrip("\n") + ",,look again\n")
    assert refused(there).endswith(
        '2 cells more than the first line has columns for, at its end "look again"; take out what is too many'
    )


def test_a_head_stands_there_once(there):
    change(there / "recipes.csv", "usual_batch,", "usual_batch,load,")
    assert refused(there) == f"{there / 'recipes.csv'}: load stands in the first line twice; take one column out"


def test_a_column_that_is_not_known_is_named(there):
    path = there / "prices.csv"
    head, *rows = path.read_text().splitlines()
    path.write_text("\n".join([f"{head},colour", *(f"{row},red" for row in rows)]) + "\n")
    assert refused(there) == f"{path}: colour is no column of it; known are product, place, price, holds_from"


def test_a_head_without_a_name_over_nothing_is_passed_over(demo, there):
    path = there / "prices.csv"
    path.write_text("".join(f"{line},,\n" for line in path.read_text().splitlines()))
    alike(folder.read(there), demo)


@pytest.mark.parametrize("typed, either", [("1.000", "1 or 1000"), ("1.234", "1.2340 or 1234")])
def test_a_point_that_may_part_thousands_is_doubted_where_commas_part_decimals(there, typed, either):
    change(there / "materials.csv", ",61.5,", f",{typed},")
    assert problems(folder.read(there)) == []  # here a point can only part decimals
    for path in there.glob("*.csv"):
        rows = list(csv.reader(path.read_text(encoding="utf-8").splitlines()))
        with path.open("w", newline="", encoding="utf-8") as file:
            csv.writer(file, delimiter=";", lineterminator="\n").writerows(rows)
    season = folder.read(there)
    (found,) = season.doubts
    assert problems(season) == []
    assert (found.tab, found.column) == ("Materials", "on_hand")
    assert found.words == f'"{typed}" may be two numbers where commas part decimals: write {either}'
    assert season.compacted().doubts == (found,)


LINES = 200_000


def many(there, row):
    """A table of so many lines alike."""
    path = there / "materials.csv"
    path.write_text("\n".join([path.read_text().splitlines()[0], *[row] * LINES]) + "\n")
    return path


def test_a_file_of_many_lines_is_told_by_its_first_faults_and_a_count(there):
    path = many(there, "x," * len(TABLES["materials"].fields) + "06")
    said = refused(there)
    assert said.startswith(f"{path}, line 2: one cell more")
    assert f"{path}, line 3: " in said and f"{path}, line 5: " not in said
    assert said.endswith("and 199997 lines more like these")


def test_a_table_of_more_lines_than_any_workbook_has_room_for_says_how_many(there):
    path = many(there, "x" + "," * (len(TABLES["materials"].fields) - 1))
    assert refused(there) == (
        f"{path}, line 20002: 200000 lines, where at most 20000 are read; this is the first beyond"
    )


def test_records_are_read_where_they_are_asked_for_and_a_file_that_is_not_there_holds_nothing(there):
    (there / "purchases.csv").write_text(
        "date,material,packs,price\n2027-08-05,Soft plant wax for jars,1,92\n", encoding="utf-8"
    )
    assert "purchases" not in folder.read(there).tables
    read = folder.read(there, records=True)
    assert [row["packs"] for _, row in read.rows("purchases")] == [1.0]
    (there / "purchases.csv").unlink()
    assert list(folder.read(there, records=True).rows("purchases")) == []
