"""The tabs of a workbook: each registers itself, and says where it stands, how it is written and what it checks."""

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass
from functools import cache
from importlib import import_module
from pkgutil import walk_packages
from typing import NamedTuple

from candlecalc.workbook import tabs
from candlecalc.workbook.cells.checks import WorkbookCheck
from candlecalc.workbook.cells.layout import Layout, Plan
from candlecalc.workbook.cells.table_tab import Tab, TableTab
from candlecalc.workbook.writing.draft import Draft
from candlecalc.workbook.writing.writer import write_table


@dataclass(frozen=True)
class Group:
    """Tabs that belong to one step of the work; a folder here."""

    title: str
    purpose: str


# In the order of the work.
GROUPS = {
    "": Group("Start", ""),
    "set_up": Group(
        "Set up", "what holds for the season, what you buy, what you pour into, and how each candle is made"
    ),
    "make": Group("Make", "what each candle costs, and the bench card"),
    "test": Group("Test", "what you burn before you sell it: each burn, and what the tests come to"),
    "stock": Group("Buy and stock", "what you bought, and what it cost"),
    "sell": Group("Sell", "your prices, and the places where you sell"),
    "plan": Group("Plan", "what to make for what is to come, by when, and what to buy for it"),
    "label": Group("Label", "what goes on the jar: data sheets, what they bring, texts and papers"),
    "books": Group("Books", "what else was paid and owed, and what your bookkeeper is handed"),
    "look": Group("Look", "whether numbers agree, and what was done to this workbook"),
    "working": Group("Behind the numbers", "steps on the way; nothing to type here"),
}


class Shown(NamedTuple):
    """What `candlecalc show BOOK WORD` gives of a list: its columns, by their keys."""

    word: str
    columns: tuple[str, ...]


class Room(NamedTuple):
    """Of a tab whose lines follow from logs: the name that counts them, and the log whose rows make room for more."""

    lines: str
    log: str


MORE_ROWS = "candlecalc new NEW.xlsx --from THIS.xlsx"


def more_rows(plan: Plan, room: Room) -> str:
    """What to type in a terminal so that twice as many lines have room."""
    return f"{MORE_ROWS} --rows {room.log}={2 * plan.layouts[room.log].rows}"


@dataclass(frozen=True)
class Registered:
    """A tab as the workbook knows it."""

    tab: Tab
    group: str
    order: int
    write: Callable[[Draft], object]
    checks: Callable[[Plan], Iterable[WorkbookCheck]]
    layout: Callable[[Mapping[str, int]], Layout] | None
    shown: Shown | None
    room: Room | None
    records: bool


REGISTRY: dict[str, Registered] = {}


def _no_checks(plan: Plan) -> Iterable[WorkbookCheck]:
    return ()


def register(
    tab: Tab,
    module: str,
    order: int,
    *,
    write: Callable[[Draft], object] | None = None,
    checks: Callable[[Plan], Iterable[WorkbookCheck]] = _no_checks,
    layout: Callable[[Mapping[str, int]], Layout] | None = None,
    shown: Shown | None = None,
    room: Room | None = None,
    records: bool = False,
) -> Tab:
    """Make a tab part of the workbooks.

    `module` is the file's `__name__`: its folder is the tab's group. `order` counts within the group. A list is
    written as lists are where `write` is not given. `layout` says, of a tab that is no list of ours, where its columns
    stand, by the rows of each table. `shown` is what `candlecalc show` gives of it, `room` what says how
    full it is. `records` says that it is part of those workbooks only that keep the year's records.
    """
    group = module.removeprefix(tabs.__name__).strip(".").rpartition(".")[0].partition(".")[0]
    if tab.title in REGISTRY:
        raise ValueError(f"two tabs are called {tab.title}")
    if not write:
        if not isinstance(tab, TableTab):
            raise TypeError(f"{tab.title} is no list: say how it is written")
        write = _as_a_list(tab)
    REGISTRY[tab.title] = Registered(tab, group, order, write, checks, layout, shown, room, records)
    return tab


def _as_a_list(tab: TableTab) -> Callable[[Draft], object]:
    return lambda draft: write_table(draft, tab)


def registered(records: bool = True) -> list[Registered]:
    """The tabs of a workbook, in its order: for costs and prices alone, or with the year's records."""
    return [each for each in _in_order() if records or not each.records]


@cache
def _in_order() -> list[Registered]:
    for module in walk_packages(tabs.__path__, f"{tabs.__name__}."):
        import_module(module.name)
    groups = list(GROUPS)
    return sorted(REGISTRY.values(), key=lambda each: (groups.index(each.group), each.order))
