"""What is typed wrong gives words and no number, in its row and wherever the row is used, and nowhere else."""

import math

import books
import pytest
from libreoffice import Error

from candlecalc.declaration.declared import LARGEST
from candlecalc.season.season import frame
from candlecalc.season.tables import TABLES
from candlecalc.workbook.book import TABLE_TABS
from candlecalc.workbook.cells.layout import OWN_ROW
from candlecalc.workbook.cells.words import code
from candlecalc.workbook.tabs.make.costing import RISE_LINE

NA, BLANK = "=NA()", "a blank that may be"
# Rows that are copied, each copy with one fault in one cell.
COPIED = {
    "materials": ("Soft plant wax for jars", "Smoked plum oil", "Plum dye flakes"),
    "vessels": ("Clear jar", "Smoke tumbler"),
    "recipes": ("Orange and clove tumbler", "Two tins in a box"),
    "places": ("Online craft marketplace",),
}
# Tabs whose rows follow the rows of a table.
FOLLOWING = {"recipes": ("workings", "amounts", "parts", "costing"), "prices": ("selling",)}
# Faults in rows that others use.
USED = [
    ("materials", "Soft plant wax for jars", "pack_price", "much"),
    ("materials", "Soft plant wax for jars", "density", 87.0),
    ("materials", "Clove and bay oil", "material", None),
    ("materials", "Steel lid, jar", "kind", "a word"),
    ("materials", "Smoke tumbler, tapered", "pack_size", 0.0),
    ("materials", "Wooden crate with wool", "shipping", "=NA()"),
    ("vessels", "Smoke tumbler", "headspace", 12.0),
    ("vessels", "Travel tin", "fill", 0.1),
    ("vessels", "Square glass", "fill_wax", None),
    ("vessels", "Clear jar", "water", None),
    ("vessels", "Smoke tumbler", "vessel", "Another"),
    ("recipes", "Bitter orange tin", "load", 6.0),
    ("recipes", "Bitter orange tin", "oil_first", "Bitter orange oils"),
    ("recipes", "Slate rain jar", "minutes", "=NA()"),
    ("recipes", "Fig melt bar", "usual_batch", 0.0),
    ("recipes", "Long nights crate", "paid_share", 50.0),
]
USED_PLACES = [("Own web shop", "fee", 3.1), ("Own web shop", "per_order", None), ("Own web shop", "margin", "=NA()")]


def faults(field, row, measures):
    """What a cell must not take."""
    if field.term:
        low, high = measures.limits(field.term)
        yield "a word"
        yield from [low if field.term.low_excluded else low - 1] if low > -LARGEST else []
        yield from [high + 1] if high < LARGEST else []
        yield from [math.floor(max(low, 0)) + 1.5] if field.term.whole else []
    elif field.choices or field.names_from:
        yield from ("a word", 5.0)
        if field.names_from == "materials" and field.kind not in ("", "wax"):
            yield "Soft plant wax for jars"  # there, but of another kind
    elif field.name:
        yield from ("n" * 33, "Jar*", 7.0)
    yield NA
    if field.needed(row):
        yield None


def copies(demo, table):
    """(copied entries, field, fault) for every column: a wrong word or number, an error, and a blank."""
    for name in COPIED[table]:
        row = dict(demo.rows(table))[demo.row(table, name)]
        for field in TABLES[table].fields:
            every = list(faults(field, row, demo.season.measures))
            wrong = [fault for fault in every if fault not in (NA, None)]
            yield from ((row, field, fault) for fault in {repr(one): one for one in (wrong[:1] + wrong[-1:])}.values())
            yield from ((row, field, fault) for fault in (NA, None) if fault in every and name == COPIED[table][0])
            if not field.needed(row):
                yield row, field, BLANK


# Counted or looked up, whether or not the row is right: a line half typed must not leave its product too cheap.
BY_ITSELF = {*(("sets", key) for key in ("set_row", "key", "product_row")),
             *(("extras", key) for key in ("row", "key", "first", "nth"))}  # fmt: skip


def results(demo, values, table, row):
    """What the row, and the rows that follow it on other tabs, show beside the entries."""
    found = {}
    for tab in (table, *FOLLOWING.get(table, ())):
        for key in TABLE_TABS[tab].columns:
            if key != OWN_ROW and (tab, key) not in BY_ITSELF and (tab not in TABLES or key not in TABLES[tab].by_key):
                found[tab, key] = values.get(demo.cell(tab, key, row), "")
    return found


def titles(demo, *tables):
    """The tabs of some lists, and the one with the master check: to read all of a workbook takes most of the time."""
    return {demo.named("master_check")[0], *(demo.plan.layouts[table].title for table in tables)}


def says(demo, table, field, codes):
    """Whether a cell of tests says that something is wrong with an entry."""
    return code(demo.plan, table, field.key) in codes


def told_of(demo, values, table, field, row):
    """Whether its row says that an entry is wrong: where anything is, it is told beside the row's name."""
    told = says(demo, table, field, values.get(demo.cell(table, TABLE_TABS[table].tested_in[field.key], row), ""))
    assert not told or values[demo.cell(table, "status", row)]
    return told


@pytest.fixture(scope="module")
def tried(demo, office, tmp_path_factory):
    """[(field, fault, what the row shows)] by table: copies of good rows with a fault each, in one workbook."""
    season, copied = books.demo(), {}
    season.tables["prices"], season.tables["sets"] = season.tables["prices"][:0], season.tables["sets"][:0]
    for table in COPIED:
        own = [row for _, row in demo.rows(table)] if table in ("materials", "vessels") else []
        copied[table] = list(enumerate(copies(demo, table), start=len(own)))
        season.tables[table] = frame([*own, *(_copy(table, *each) for each in copied[table])], TABLES[table])
    bad = books.Book(season, tmp_path_factory.mktemp("bad") / "bad.xlsx", stored=False)
    errors = {
        bad.cell(table, field.key, place): NA
        for table, rows in copied.items()
        for place, (_, field, fault) in rows
        if fault == NA
    }
    values = bad.edited_each(office, [errors])[0]
    assert values[bad.named("master_check")] != "Numbers agree"
    return {
        table: [(field, fault, results(bad, values, table, place)) for place, (_, field, fault) in rows]
        for table, rows in copied.items()
    }


def _copy(table, place, given):
    row, field, fault = given
    value = {NA: row[field.key], BLANK: None}.get(fault, fault)
    return row | {TABLES[table].fields[0].key: f"Copy {place}"} | {field.key: value}


@pytest.mark.parametrize("table", COPIED)
def test_every_column_refuses_what_it_must_not_take(demo, tried, table):
    for field, fault, shown in tried[table]:
        where = f"{field.key}: {fault}"
        if fault == BLANK:
            assert (shown[table, "mend"], shown[table, "ready"]) == ("", 1.0), where
            continue
        assert says(demo, table, field, shown[table, TABLE_TABS[table].tested_in[field.key]]), where
        assert shown[table, "status"], where
        if field.not_in_cost:  # no cost rests on it
            assert shown[table, "ready"] == 1.0, where
            continue
        assert shown[table, "ready"] != 1.0, where
        assert [key for key, value in shown.items() if isinstance(value, float)] == [], where
    assert {field.key for field, fault, _ in tried[table] if fault != BLANK} == set(TABLES[table].keys)


def test_a_bad_row_takes_the_number_from_what_uses_it_and_from_nothing_else(demo, values, office):
    edits = [{demo.cell(table, key, name): fault} for table, name, key, fault in USED]
    tabs = titles(demo, *COPIED, *FOLLOWING["recipes"], "prices", *FOLLOWING["prices"])
    for (table, name, key, fault), after in zip(USED, demo.edited_each(office, edits, tabs), strict=True):
        where = f"{name}, {key}: {fault}"
        users = books.users(demo, table, name)
        assert users, where
        _assert_mended(demo, after, table, name, key, where, fault)
        for _, row in demo.rows("recipes"):
            cell = demo.cell("costing", "full", row["product"])
            if row["product"] in users:
                assert not isinstance(after[cell], float), where
            else:
                assert after[cell] == values[cell], where
        for place, row in demo.rows("prices"):
            before, now = (results(demo, one, "prices", place) for one in (values, after))
            if row["product"] in users:
                assert not isinstance(now["prices", "profit"], float), where
            else:
                assert now == before, where


def _assert_mended(demo, after, table, name, key, where, fault):
    # A name that is another good name is missed where it is looked for, not in its own row.
    if fault != "Another":
        assert told_of(demo, after, table, TABLES[table][key], name), where
        assert after[demo.cell(table, "ready", name)] != 1.0, where
    assert after[demo.named("master_check")] != "Numbers agree", where


# A limit that is not what it takes must not count as none; no cost rests on it.
LIMITS = {
    "highest_load": (6.0, ("supplier_second", "highest")),
    "basis": ("of all", ("supplier_second", "highest")),
    "certified_limit": (-1, ("certified_second", "highest")),
}


@pytest.mark.parametrize("key", LIMITS)
def test_a_bad_limit_takes_the_highest_load_and_no_cost(demo, values, office, key):
    oil, product = "Clove and bay oil", "Orange and clove tumbler"
    fault, limits = LIMITS[key]
    after = office.edited(demo.path, {demo.cell("materials", key, oil): fault})
    assert told_of(demo, after, "materials", TABLES["materials"][key], oil)
    assert after[demo.named("master_check")] == "1 to fix"
    for limit in limits:
        assert isinstance(after[demo.cell("workings", limit, product)], Error)
    full = demo.cell("costing", "full", product)
    assert after[full] == values[full]


def test_a_bad_place_takes_the_number_from_its_prices_alone(demo, values, office):
    edits = [{demo.cell("places", key, name): fault} for name, key, fault in USED_PLACES]
    answers = demo.edited_each(office, edits, titles(demo, "places", "prices", *FOLLOWING["prices"]))
    for (name, key, fault), after in zip(USED_PLACES, answers, strict=True):
        where = f"{name}, {key}: {fault}"
        _assert_mended(demo, after, "places", name, key, where, fault)
        for place, row in demo.rows("prices"):
            before, now = (results(demo, one, "prices", place) for one in (values, after))
            if row["place"] == name:
                assert not isinstance(now["prices", "profit"], float), where
            else:
                assert now == before, where


@pytest.mark.parametrize(
    "table, name",
    [("prices", "Smoked plum jar @ Own web shop"), ("sets", "Two tins in a box"), ("extras", "Fig melt bar")],
)
def test_lines_that_join_two_tabs_refuse_what_they_must_not_take(demo, values, office, table, name):
    place = demo.row(table, name)
    row = dict(demo.rows(table))[place]
    todo = [(field, fault) for field in TABLES[table].fields for fault in faults(field, row, demo.season.measures)]
    edits = [{demo.cell(table, field.key, place): fault} for field, fault in todo]
    answers = demo.edited_each(office, edits, titles(demo, table, *FOLLOWING.get(table, ())))
    for (field, fault), after in zip(todo, answers, strict=True):
        shown, where = results(demo, after, table, place), f"{field.key}: {fault}"
        assert says(demo, table, field, shown[table, TABLE_TABS[table].tested_in[field.key]]), where
        assert shown[table, "ready"] != 1.0, where
        assert [key for key, value in shown.items() if isinstance(value, float)] == [], where
        assert after[demo.named("master_check")] != "Numbers agree", where
        others = [other for other, _ in demo.rows(table) if other != place]
        assert [results(demo, after, table, other) for other in others] == [
            results(demo, values, table, other) for other in others
        ], where


@pytest.mark.parametrize("rise", ["much", -1, 50, None, NA])
def test_a_bad_rise_takes_its_answers_alone(demo, values, office, rise):
    after = office.edited(demo.path, {("Costing", RISE_LINE.entry): rise})
    words = after["Costing", RISE_LINE.mend]
    assert words == "Takes a percentage, -90 % to 200 %"
    for _, row in demo.rows("recipes"):
        assert isinstance(after[demo.cell("costing", "risen", row["product"])], Error)
        full = demo.cell("costing", "full", row["product"])
        assert after[full] == values[full]
    assert values["Costing", RISE_LINE.mend] == ""


@pytest.mark.parametrize("name", ["Two tins in a bax", "Fig melt bar", NA])
def test_a_line_of_no_set_takes_the_number_from_every_set_since_it_may_be_any_ones(demo, values, office, name):
    line = demo.cell("sets", "set", demo.row("sets", "Two tins in a box"))
    batch = {demo.named("batch_product"): "Long nights crate"}
    whole, after = demo.edited_each(office, [batch, {line: name} | batch])
    for _, row in demo.rows("recipes"):
        for tab in ("costing", "selling"):
            cell = demo.cell(tab, "full", row["product"])
            if row["kind"] == "set":
                assert isinstance(after[cell], Error), row["product"]
                assert after[demo.cell(tab, "product", row["product"])] == row["product"]
            elif row["product"] != name:  # a candle that has a line on Sets is none
                assert after[cell] == values[cell], row["product"]
    assert isinstance(whole[demo.named("batch_makes")], float)
    assert isinstance(after[demo.named("batch_makes")], Error)
    assert after[demo.named("master_check")] != "Numbers agree"


@pytest.mark.parametrize(
    "key, fault", [("count", "two"), ("count", None), ("material", "Nobody's cord"), ("count", NA)]
)
def test_a_bad_extra_part_takes_the_number_from_its_product_and_its_sets_alone(demo, values, office, key, fault):
    bar = "Fig melt bar"  # in the crate, too
    after = office.edited(demo.path, {demo.cell("extras", key, bar): fault, demo.named("batch_product"): bar})
    for _, row in demo.rows("recipes"):
        cell = demo.cell("costing", "full", row["product"])
        if row["product"] in (bar, "Long nights crate"):
            assert isinstance(after[cell], Error), row["product"]
        else:
            assert after[cell] == values[cell], row["product"]
    assert after[demo.cell("costing", "status", bar)] == "Recipes: Extra parts: see its lines there"
    assert isinstance(after[demo.named("batch_makes")], Error)
    assert after[demo.named("master_check")] != "Numbers agree"


def test_an_extra_part_of_no_product_takes_every_number_since_it_may_be_any_ones(demo, office):
    line = demo.cell("extras", "product", "Fig melt bar")
    for after in demo.edited_each(office, [{line: "Fig melt bars"}, {line: NA}]):
        costs = [after[demo.cell("costing", "full", row["product"])] for _, row in demo.rows("recipes")]
        assert all(isinstance(cost, Error) for cost in costs)


def test_a_wax_without_its_density_takes_the_number_from_what_goes_by_volume_alone(demo, values, office):
    wax = "Soft plant wax for jars"
    after = office.edited(demo.path, {demo.cell("materials", "density", wax): None})
    by_volume = "A wax has no density, and its vessel goes by water or size: "
    by_volume += "type it on Materials, or weigh a fill in this wax: see Vessels"
    ways = {row["vessel"]: row["measured"] for _, row in demo.rows("vessels")}
    for _, row in demo.rows("recipes"):
        name, cell = row["product"], demo.cell("costing", "full", row["product"])
        if row["wax"] == wax and ways[row["vessel"]] != "fill":
            assert isinstance(after[cell], Error), name
            assert after[demo.cell("recipes", "status", name)] == by_volume
            assert after[demo.cell("costing", "status", name)] == f"Recipes: {by_volume}"
        elif row["wax"] == wax and not row["wax_second"]:
            assert after[cell] == values[cell], name  # weighed with the wax that is in it
    square = "Fir square, two wicks"
    assert after[demo.cell("workings", "fill", square)] == 13.1  # as weighed, where it was scaled
    words = "Fill weighed with another wax, and a density missing: "
    words += "type both densities on Materials, or weigh a fill in this wax"
    assert after[demo.cell("recipes", "status", square)] == words


def test_a_bad_line_of_a_set_takes_the_number_from_the_set(demo, office):
    line, total = demo.row("sets", "Two tins in a box"), demo.cell("costing", "full", "Two tins in a box")
    wrong = {"product": ("Nobody's candle", "=NA()"), "count": ("two", 0.0, 1.5, "=NA()")}
    edits = [{demo.cell("sets", key, line): fault} for key, each in wrong.items() for fault in each]
    for after in demo.edited_each(office, edits, titles(demo, "costing")):
        assert isinstance(after[total], Error)
