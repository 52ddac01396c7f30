"""The functions as names in a copy of a maker's own workbook. Only the workbook part is changed."""

import re
from collections.abc import Iterator, Mapping
from html import unescape
from pathlib import Path
from typing import NamedTuple

from candlecalc.faces.addins.wizard import PREFIX
from candlecalc.faces.lambdas import macros
from candlecalc.faces.lambdas.names import Named, every, is_ours
from candlecalc.faces.lambdas.names_in_book import WorkbookXml
from candlecalc.faces.lambdas.package import MACROS, MOST_BYTES, TABLE, Package, RefusedError
from candlecalc.files import write_whole

CALLED = re.compile(rb"\b" + PREFIX.encode() + rb"[A-Z_]+\(", re.IGNORECASE)
DEFINED = re.compile(r"\bdef\s+(\w+)")
STORES = ("customxml/", "xl/webextensions/")  # where add-ins keep what they store in a workbook, Python code too
MOST_STORED = 10_000_000  # bytes of it that are looked through

Ours = Mapping[str, Named]  # by name in small letters


class Added(NamedTuple):
    """The workbook with the names in it, and what was done."""

    data: bytes
    new: int
    changed: int
    macros: bool  # whether there were macros to look through


def add(mine: Path, out: Path, *, force: bool = False) -> list[str]:
    """Write a copy of a workbook with the functions in it; the lines to tell. The original stays as it is."""
    try:
        result = added(_read(mine))
    except RefusedError as problem:
        raise ValueError(f"{mine}: {problem}") from None
    write_whole(out, result.data, force=force)
    return _told(out, result)


def added(data: bytes) -> Added:
    """The workbook with our names put in, those of an earlier time replaced; a RefusedError says why not."""
    package = Package(data)
    workbook = WorkbookXml(package.read(package.workbook))
    ours = {named.name.lower(): named for named in every()}
    clashes = [*_names(workbook, ours), *_tables(package, ours), *_macros(package, ours), *_python(package, ours)]
    if clashes:
        raise RefusedError(f"it has names of its own that ours would clash with: {', '.join(clashes)}")
    new, changed = workbook.put(ours.values())
    # Values stored before a name meant anything, or meant what it does now, are stale.
    if (new or changed) and _is_called(package):
        workbook.calculate_on_load()
    return Added(package.with_workbook(workbook.written()), new, changed, bool(package.of_kind(MACROS)))


def _read(path: Path) -> bytes:
    if path.exists() and not path.is_file():
        raise RefusedError("it is a pipe or a device, no file")
    if path.stat().st_size > MOST_BYTES:
        raise RefusedError(f"it is over {MOST_BYTES // 1_000_000} MB")
    return path.read_bytes()


def _told(out: Path, result: Added) -> list[str]:
    done = [f"{result.new} functions added"] * bool(result.new) + [f"{result.changed} brought up to date"] * bool(
        result.changed
    )
    lines = [f"{out}: {', '.join(done) or 'the functions are there already'}"]
    if result.macros:
        lines.append(
            "Its macros are kept; none of their functions, as far as they can be read, has one of these names."
        )
    return [*lines, f"Type ={PREFIX} in a cell to see them. They need Microsoft 365 or Excel 2024."]


def _names(workbook: WorkbookXml, ours: Ours) -> Iterator[str]:
    for element in workbook.names:
        named = ours.get(element.attributes.get("name", "").lower())
        if named and not is_ours(element.content, element.attributes.get("comment", ""), named):
            where = " of one tab" if "localSheetId" in element.attributes else ""
            yield f"the name {element.attributes['name']}{where}"


def _tables(package: Package, ours: Ours) -> Iterator[str]:
    # A workbook's tables and names must all be called differently.
    for part in package.of_kind(TABLE):
        name = package.xml(part).get("displayName", "")
        if name.lower() in ours:
            yield f"the table {name}"


def _macros(package: Package, ours: Ours) -> Iterator[str]:
    declared = {name for part in package.of_kind(MACROS) for name in macros.declared(package.read(part))}
    return (f"the macro function {ours[name].name}" for name in sorted(declared & set(ours)))


def _python(package: Package, ours: Ours) -> Iterator[str]:
    parts = [name for name in package.names() if name.lower().startswith(STORES)]
    if sum(map(package.size, parts)) > MOST_STORED:
        raise RefusedError(f"what add-ins have stored in it is over {MOST_STORED // 1_000_000} MB")
    texts = (package.read(part).decode("utf-8", "replace") for part in parts)
    # Code may stand in an attribute, and there once more escaped.
    defined = {name.lower() for text in texts for name in DEFINED.findall(unescape(unescape(text)))}
    return (f"the Python function {ours[name].name}" for name in sorted(defined & set(ours)))


def _is_called(package: Package) -> bool:
    sheets = (name for name in package.names() if package.kind(name).endswith("sheet+xml"))
    return any(CALLED.search(package.read(name)) for name in sheets)
