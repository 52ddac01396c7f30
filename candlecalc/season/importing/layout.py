"""A layout as the maker described it on Imports: for each of our columns where it comes from, and what words mean."""

from collections.abc import Mapping
from dataclasses import dataclass
from dataclasses import field as of_each
from functools import cached_property
from typing import NamedTuple

from candlecalc.season.fields import Field
from candlecalc.season.season import Problem, Season, without_blanks
from candlecalc.season.tables.imports import BESIDE, DATES, DECIMALS, IMPORTS, INTO, READ_AS


class Cell(NamedTuple):
    """A text for a column of ours: of the file, or as the maker typed it on Imports."""

    text: str
    ours: bool

    def says(self, word: str) -> bool:
        """Whether the maker says so on Imports."""
        return self.ours and self.text.casefold() == word


@dataclass
class Rule:
    """Where a column of ours comes from: a column of theirs, what its words mean, and how it is written."""

    column: str = ""  # their head, as it was typed
    words: dict[str, str] = of_each(default_factory=dict)  # what a word of theirs is here; "" is a blank cell
    written: set[str] = of_each(default_factory=set)


@dataclass
class Layout:
    """The rules of one layout, by the keys of our columns."""

    kind: str
    name: str
    rules: dict[str, Rule]
    problems: list[Problem]

    @cached_property
    def fields(self) -> dict[str, Field]:
        """All of our columns that a file of this kind may have."""
        return {each.key: each for each in (*READ_AS[self.kind].fields, *BESIDE[self.kind])}

    def way(self, key: str) -> str:
        """How dates or numbers of a column are written, as its rule says, else any other of the layout's."""
        ways = DATES if self.fields[key].date else DECIMALS
        own = [way for way in ways if way in self.written(key)]
        any_of = [way for rule in self.rules.values() for way in ways if way in rule.written]
        return (own or any_of or [""])[0]

    def written(self, key: str) -> set[str]:
        """What Imports says of how a column is written."""
        return self.rules[key].written if key in self.rules else set()

    def heads(self, key: str) -> set[str]:
        """The heads that a column of theirs may have to go into ours: as Imports says, else our own."""
        if key in self.rules:
            return {self.rules[key].column.casefold()}
        table = READ_AS[self.kind]
        return {key, table.label(table[key]).casefold()} if key in table.by_key else set()

    def cell(self, key: str, text: str) -> Cell:
        """A cell of theirs, or what its word is here."""
        words = self.rules[key].words if key in self.rules else {}
        return Cell(words[text.casefold()], True) if text.casefold() in words else Cell(text, False)

    @property
    def named_heads(self) -> list[str]:
        """The heads of theirs that Imports names."""
        return [rule.column for rule in self.rules.values() if rule.column]


class UnknownLayoutError(ValueError):
    """The call names no layout, where Imports describes several, or one that is not there."""


def layout_of(season: Season, kind: str, name: str) -> Layout:
    """The layout of that name, or the only one of its kind; one without rules where none is described."""
    rows = [(place, row) for place, row in season.rows(IMPORTS.key) if _kind(str(row["into"] or "")) == kind]
    names = {_called(row["layout"]): str(row["layout"] or "") for _, row in rows}
    wanted = without_blanks(name).casefold()
    if (name and wanted not in names) or (not name and len(names) > 1):
        there = ", ".join(each or "one without a name" for each in names.values()) or "none"
        asked = f'there is no layout "{name}"' if name else "there are several layouts; say which with --layout"
        raise UnknownLayoutError(f"Imports, for {kind}: {asked}: {there}")
    found = Layout(kind, next(iter(names.values()), "") if not name else names[wanted], {}, [])
    for place, row in rows:
        if not name or _called(row["layout"]) == wanted:
            _add(found, place, row)
    # A line that goes into nothing of ours may be meant for any layout.
    found.problems += [
        Problem(IMPORTS.title, place, "into", f'"{row["into"]}" is no column of ours: choose from the list')
        for place, row in season.rows(IMPORTS.key)
        if not _kind(str(row["into"] or "")) and _called(row["layout"]) in ("", _called(found.name))
    ]
    return found


def _called(name: object) -> str:
    return without_blanks(str(name or "")).casefold()


def _kind(into: str) -> str:
    found = INTO.get(without_blanks(into).casefold())
    return found.kind if found else ""


def _add(layout: Layout, place: int, row: Mapping[str, object]) -> None:
    """Put a line of Imports into the layout, or what is wrong with it to its problems."""
    key = INTO[without_blanks(str(row["into"])).casefold()].field.key
    rule = layout.rules.setdefault(key, Rule())
    column, word, here, written = (
        without_blanks(str(row[name] or "")) for name in ("column", "word", "here", "written")
    )
    if column and rule.column and column.casefold() != rule.column.casefold():
        words = f'{row["into"]} comes from "{rule.column}" already: clear one of the two'
        layout.problems.append(Problem(IMPORTS.title, place, "column", words))
    rule.column = rule.column or column
    if word.casefold() in rule.words and (word or here):
        words = f'"{word or "a blank"}" has a line already: clear one of the two'
        layout.problems.append(Problem(IMPORTS.title, place, "word", words))
    if word or here or not column:
        rule.words.setdefault(word.casefold(), here)
    if written:
        rule.written.add(written.casefold())
