"""Labels and papers from a folder of CSV files: papers.csv, products.csv, labels.csv and, where needed, oils.csv."""

import datetime
from collections.abc import Mapping
from pathlib import Path
from typing import Any, NamedTuple

from candlecalc.labels import entries
from candlecalc.labels.shapes import Paper
from candlecalc.quantities.days import read as day_of
from candlecalc.season.fields import Field, Table
from candlecalc.season.folder import FORMULA_MARKS, UnreadableError, lines_of
from candlecalc.season.season import without_blanks
from candlecalc.season.tables.labels import LABELS, PAPERS

DEMO = Path(__file__).parent / "demo"
NEEDED = (PAPERS, entries.PRODUCTS, LABELS)

IN_LANGUAGES = ("fire", "hazard")  # parts that may stand in several languages side by side

Row = dict[str, Any]


class Called(NamedTuple):
    """What a maker calls the place where something is typed: a file, or a tab."""

    papers: str
    products: str
    labels: str
    oils: str
    panels: str


FILES = Called("papers.csv", "products.csv", "labels.csv", "oils.csv", "products.csv")


class Tested(NamedTuple):
    """What a test burn gives for labels: of which product, its hours, what changed since, whether it was stopped."""

    product: str
    hours: float | None
    changed: str
    stopped: bool


class Held(NamedTuple):
    """What labels are made from: each table's rows with every value as its field takes it."""

    papers: list[Paper]
    products: list[Row]
    labels: list[Row]
    oils: list[Row]
    called: Called = FILES
    tests: Mapping[str, Tested] = {}


def read(folder: Path) -> Held:
    """Read a folder. A ValueError names every cell that is wrong, with what it takes."""
    absent = [f"{table.key}.csv" for table in NEEDED if not (folder / f"{table.key}.csv").is_file()]
    if absent:
        raise UnreadableError(f"{folder}: {', '.join(absent)} is not there; candlecalc labels --demo shows a folder")
    faults: list[str] = []
    papers, products, labels = (_rows(folder, table, faults) for table in NEEDED)
    oils = _rows(folder, entries.OILS, faults) if (folder / "oils.csv").is_file() else []
    if not faults:
        faults += _unknown(products, labels, "labels.csv") + _unknown(products, oils, "oils.csv")
        faults += said_twice(labels, FILES.labels)
    if faults:
        raise UnreadableError(f"{folder}: {'; '.join(faults)}")
    return Held([paper_of(row) for row in papers], products, labels, oils)


def _rows(folder: Path, table: Table, faults: list[str]) -> list[Row]:
    """The rows of a table, and what is wrong with them told in `faults` by line and column."""
    found = lines_of(folder / f"{table.key}.csv", table.keys, table)
    rows: list[Row] = []
    for line, cells in enumerate(found.rows, start=2):
        if not any(cells):
            continue
        row: Row = dict.fromkeys(table.keys)
        wrong: dict[str, str] = {}
        for field, text in zip(table.fields, cells, strict=True):
            try:
                row[field.key] = _value(text, field)
            except ValueError as problem:
                wrong[field.key] = f"it {problem}".removesuffix(".")
        for field in table.fields:
            if row[field.key] is None and field.needed(row):
                wrong.setdefault(field.key, f"it is missing; type {field.allowed()}")
        faults += [f"{table.key}.csv, line {line}, {key}: {words}" for key, words in wrong.items()]
        rows.append(row)
    for key in table.unique:
        names = [str(row[key]).casefold() for row in rows]
        twice = [name for name in dict.fromkeys(names) if names.count(name) > 1]
        faults += [f'{table.key}.csv: "{name}" stands there twice' for name in twice]
    return rows


def _value(text: str, field: Field) -> Any:
    """A cell as its field takes it; a ValueError says what it is and what it takes."""
    text = without_blanks(text.removeprefix("'") if text[1:2] in FORMULA_MARKS else text)
    if not text:
        return None
    if field.term:
        return field.term.read(text)
    if field.date:
        day = day_of(text)
        if not isinstance(day, datetime.date):
            raise ValueError(f'is "{text}"; it takes {field.allowed()}')
        return day
    value = field.as_declared(text)
    too_long = len(text) > field.longest
    if (field.choices and value not in field.choices) or too_long:
        raise ValueError(f'is "{text}"; it takes {field.allowed()}')
    return value


def _unknown(products: list[Row], rows: list[Row], where: str) -> list[str]:
    known = {row["product"].casefold() for row in products}
    others = dict.fromkeys(row["product"] for row in rows if row["product"] and row["product"].casefold() not in known)
    return [f'{where}: "{name}" is not in products.csv' for name in others]


def said_twice(labels: list[Row], where: str) -> list[str]:
    """Texts that stand there twice for one product: which of the two is meant, nobody knows.

    Statements may stand in several languages, each once.
    """
    said = [
        " ".join(
            filter(None, [row["part"], row["code"], _spoken(row), f"of {row['product'] or 'every product'}"])
        ).casefold()
        for row in labels
        if row["part"] != "line"
    ]
    return [f"{where}: {each} stands there twice" for each in dict.fromkeys(said) if said.count(each) > 1]


def _spoken(row: Row) -> str:
    several = row["part"] in IN_LANGUAGES and (row["language"] or "en") != "en"
    return f"in {row['language']}" if several else ""


def paper_of(row: Row) -> Paper:
    given = {key: value for key, value in row.items() if value is not None and key not in ("paper", "outline")}
    counts = {"rows": int(row["rows"]), "columns": int(row["columns"])}
    return Paper(**{**given, **counts, "name": row["paper"], "outline": row["outline"] == "yes"})
