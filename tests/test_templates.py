"""The workbooks and CSV files that stand ready are those that the library makes today."""

import make_templates
import pytest
from make_templates import COMMAND, HOME, parts

from candlecalc.season import folder, presets

REMAKE = f"remake it with: {COMMAND}"


@pytest.fixture(scope="module")
def fresh():
    return make_templates.templates()


KINDS = [f"{kind}-{region}.xlsx" for kind in ("blank", "year") for region in presets.REGIONS]


@pytest.mark.parametrize("name", ["demo.xlsx", "year-demo.xlsx", "functions.xlsx", *KINDS])
def test_a_workbook_is_the_one_made_today(fresh, name):
    path = HOME / name
    assert path.is_file(), f"workbooks/{name} is missing; {REMAKE}"
    there, now = parts(path.read_bytes()), parts(fresh[name])
    differ = sorted(part for part in there.keys() | now.keys() if there.get(part) != now.get(part))
    assert not differ, f"workbooks/{name} differs from one made today in {', '.join(differ)}; {REMAKE}"


def test_the_demo_files_are_the_demo():
    there = {path.name: path.read_bytes() for path in (HOME / "demo").glob("*")}
    now = {path.name: path.read_bytes() for path in folder.DEMO.glob("*.csv")}
    differ = sorted(name for name in there.keys() | now.keys() if there.get(name) != now.get(name))
    assert not differ, f"workbooks/demo differs from the demo in {', '.join(differ)}; {REMAKE}"


def test_every_tab_has_its_picture_and_none_is_heavy():
    there = {path.name: path.stat().st_size for path in (HOME / "pictures").iterdir()}
    assert set(there) == set(make_templates.pictured()), f"{REMAKE} --pictures"
    assert max(there.values()) < 160_000
    assert sum(there.values()) < 80_000 * len(there)


def test_no_workbook_stands_there_that_nothing_makes(fresh):
    there = {path.relative_to(HOME).as_posix() for path in HOME.rglob("*.xlsx")}
    assert there <= set(fresh), f"nothing makes {', '.join(sorted(there - set(fresh)))}: remove it"
