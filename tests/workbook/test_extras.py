"""What goes with a product besides what its recipe names: on the card, and where a product's parts are listed."""

import books
import pytest

from candlecalc.season.season import frame
from candlecalc.season.tables import TABLES
from candlecalc.workbook.book import TABLE_TABS
from candlecalc.workbook.tabs.make import batch
from candlecalc.workbook.tabs.working.made_of import PARTS

JAR = "Fig and cedar jar"


def side_by_side(tab, keys):
    columns = list(TABLE_TABS[tab].columns)
    first = columns.index(keys[0])
    return columns[first : first + len(keys)]


def test_a_recipe_can_be_read_across_by_a_parts_number():
    assert side_by_side("workings", list(PARTS.values())) == list(PARTS.values())
    assert side_by_side("amounts", list(PARTS)) == list(PARTS)
    assert side_by_side("parts", list(PARTS)) == list(PARTS)


@pytest.fixture(scope="module")
def many(tmp_path_factory):
    """The demo with six extra parts to one jar."""
    season = books.demo()
    pieces = [row["material"] for _, row in season.rows("materials") if row["kind"] in ("packaging", "lid")][:6]
    rows = [{"product": JAR, "material": name, "count": 1.0 + nth} for nth, name in enumerate(pieces)]
    season.tables["extras"] = frame(rows, TABLES["extras"])
    return books.Book(season, tmp_path_factory.mktemp("extras") / "many.xlsx"), rows


def test_the_card_says_how_many_lines_it_has_no_room_for(many, office):
    book, rows = many
    after = office.edited(book.path, {book.named("batch_product"): JAR, book.named("batch_count"): 10})
    first = batch.COUNTING + 6
    shown = [(after["Batch", f"A{row}"], after["Batch", f"B{row}"]) for row in range(first, first + batch.EXTRA_LINES)]
    assert shown == [(row["material"], 10 * row["count"]) for row in rows[: batch.EXTRA_LINES]]
    assert after["Batch", f"A{first + batch.EXTRA_LINES}"] == "and 2 more: see Extra parts"


def test_what_of_an_extra_part_is_on_hand_and_short_stands_on_the_card(demo, values, office):
    product, cord = "Winter hearth tumbler", "Waxed cord, one yard"
    after = office.edited(demo.path, {demo.named("batch_product"): product, demo.named("batch_count"): 100})
    row = next(row for row in range(batch.COUNTING, batch.DO) if after.get(("Batch", f"A{row}")) == cord)
    # 0.4 of a yard each, and 37 yards on hand: extras.csv, materials.csv.
    assert [after["Batch", f"{letter}{row}"] for letter in "BCD"] == pytest.approx([40, 37, 3])
