"""What rests on what: the columns that a cell's number goes into, from the formulas' own trees."""

from collections import defaultdict
from collections.abc import Mapping

from candlecalc.season.fields import Field
from candlecalc.workbook.book import TABLE_TABS, lists, order
from candlecalc.workbook.cells.layout import Plan
from candlecalc.workbook.cells.references import Source


def resting_on(plan: Plan, cards: Mapping[str, set[Source]]) -> dict[Source, list[str]]:
    """By column of a list: the other tabs with numbers that rest on it, in the order of the workbook.

    `cards` says what a tab that is no list reads.
    """
    users: dict[Source, set[Source]] = defaultdict(set)
    tabs = lists(plan.records)
    for table, tab in tabs.items():
        for key, column in tab.columns.items():
            if not isinstance(column, Field):
                for source in column.fed_by(plan, plan.layouts[table]):
                    users[source].add((tab.title, key))
    for title, read in cards.items():
        for source in read:
            users[source].add((title, ""))
    found = {}
    for table, tab in tabs.items():
        for key in tab.columns:
            titles = {title for title, _ in _reached((table, key), users)} - {tab.title}
            found[table, key] = [title for title in order(plan.records) if title in titles]
    return found


def _reached(source: Source, users: Mapping[Source, set[Source]]) -> set[Source]:
    """Everything that rests on a column, by its tab's title and its key, step by step."""
    keys = {tab.title: table for table, tab in TABLE_TABS.items()}
    reached: set[Source] = set()
    waiting = [source]
    while waiting:
        for title, key in users.get(waiting.pop(), set()) - reached:
            reached.add((title, key))
            waiting.append((keys.get(title, title), key))
    return reached
