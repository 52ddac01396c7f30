"""The tables of a hand-over: each with its columns said once, for the CSV file and for the description beside it."""

import csv
import hashlib
import io
import json
from collections.abc import Iterable, Mapping, Sequence
from typing import Any, NamedTuple

from candlecalc.season.folder import FORMULA_MARKS

ENCODING = "utf-8-sig"  # by the mark at its beginning every spreadsheet knows its letters


class Column(NamedTuple):
    name: str
    type: str = "string"
    constraints: Mapping[str, Any] = {}
    says: str = ""


class Sheet(NamedTuple):
    """A table: its name, what it holds, its columns and rows."""

    name: str
    says: str
    columns: tuple[Column, ...]
    rows: Sequence[Sequence[object]]
    key: tuple[str, ...] = ()
    refers: tuple[str, str] = ("", "")  # a column of its own, and the sheet where it stands under the same name

    @property
    def path(self) -> str:
        return f"{self.name}.csv"

    def csv(self) -> bytes:
        out = io.StringIO(newline="")
        writer = csv.writer(out, lineterminator="\r\n")
        writer.writerow([column.name for column in self.columns])
        writer.writerows([protected(value) for value in row] for row in self.rows)
        return out.getvalue().encode(ENCODING)


def protected(value: object) -> str:
    """A cell as it stands in the file: a text that a spreadsheet would run has an apostrophe before it."""
    if value is None:
        return ""
    text = str(value)
    return f"'{text}" if isinstance(value, str) and text.lstrip("'").startswith(FORMULA_MARKS) else text


def plain(text: str) -> str:
    """The text of a cell as it was before it was protected."""
    return text[1:] if text.startswith("'") and text.lstrip("'").startswith(FORMULA_MARKS) else text


def read_csv(data: bytes) -> list[dict[str, str]]:
    """The rows of a file of ours, by the heads of its columns."""
    rows = csv.DictReader(io.StringIO(data.decode(ENCODING), newline=""))
    return [{head: plain(text or "") for head, text in row.items()} for row in rows]


def described(
    name: str, title: str, sheets: Iterable[Sheet], written: Mapping[str, bytes], facts: Mapping[str, Any]
) -> bytes:
    """The description of the tables, as Data Package says it (specs.frictionlessdata.io)."""
    package = {
        "name": name,
        "title": title,
        **facts,
        "resources": [_resource(sheet, written[sheet.path]) for sheet in sheets],
    }
    return (json.dumps(package, ensure_ascii=False, indent=1) + "\n").encode()


def _resource(sheet: Sheet, data: bytes) -> dict[str, Any]:
    schema: dict[str, Any] = {"fields": [_field(column) for column in sheet.columns]}
    if sheet.key:
        schema["primaryKey"] = list(sheet.key)
    column, other = sheet.refers
    if column:
        schema["foreignKeys"] = [{"fields": column, "reference": {"resource": other, "fields": column}}]
    return {
        "name": sheet.name, "path": sheet.path, "description": sheet.says, "format": "csv", "encoding": ENCODING,
        "bytes": len(data), "hash": f"sha256:{hashlib.sha256(data).hexdigest()}", "schema": schema,
    }  # fmt: skip


def _field(column: Column) -> dict[str, Any]:
    said = {"description": column.says} if column.says else {}
    held = {"constraints": dict(column.constraints)} if column.constraints else {}
    return {"name": column.name, "type": column.type, **said, **held}
