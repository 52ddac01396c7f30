"""Workbooks that no maker would send, at any size: each is a season workbook with one thing in it that is too much."""

import io
import os
import random
import re
import zipfile

WORKBOOK, MATERIALS = "xl/workbook.xml", "xl/worksheets/sheet4.xml"
NAME = '<definedName name="own_{0}">Start!$A${0}</definedName>'


def with_parts(workbook, **changes):
    """A copy with some parts made by functions of what they were; those of a new name are made of nothing."""
    out = io.BytesIO()
    with zipfile.ZipFile(io.BytesIO(workbook)) as before, zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as after:
        for name in dict.fromkeys([*before.namelist(), *changes]):
            data = before.read(name) if name in before.namelist() else b""
            after.writestr(name, changes[name](data) if name in changes else data, compresslevel=1)
    return out.getvalue()


def wide_rows(workbook, rows=20_000):
    """A tab of many rows, each with one cell in the last column that there is."""
    far = "".join(f'<row><c r="XFD{row}"><v>{row * 7919 % 1000}</v></c></row>' for row in range(300, 300 + rows))
    return with_parts(workbook, **{MATERIALS: lambda xml: xml.replace(b"</sheetData>", far.encode() + b"</sheetData>")})


def filled_rows(workbook, rows=20_000, columns=160):
    """A tab of many rows that are filled from side to side."""
    numbers = random.Random(1)  # noqa: S311
    some = ["".join(f"<c><v>{digit}</v></c>" for digit in numbers.choices(range(10), k=columns)) for _ in range(300)]
    filled = "".join(f"<row>{numbers.choice(some)}</row>" for _ in range(rows)).encode()
    return with_parts(workbook, **{MATERIALS: lambda xml: xml.replace(b"</sheetData>", filled + b"</sheetData>")})


def custom_part(workbook, size=400_000_000):
    """A large part of a maker's or an add-in's own, that hardly packs."""
    piece = random.Random(1).randbytes(1 << 20).hex().encode()  # noqa: S311
    data = b"<a>" + piece * (size // len(piece) + 1)
    return with_parts(workbook, **{"customXml/item1.xml": lambda _: data[:size] + b"</a>"})


def nested(workbook, size=60_000_000):
    """Elements in elements in the part that names the tabs; the attributes keep it from packing well."""
    depth = size // 35
    numbers = random.Random(1)  # noqa: S311
    opening = "".join(f'<x a="{numbers.getrandbits(64):016x}">' for _ in range(depth))
    inside = f"<extLst>{opening}{'</x>' * depth}</extLst>".encode()
    return with_parts(workbook, **{WORKBOOK: lambda xml: xml.replace(b"</workbook>", inside + b"</workbook>")})


def names(workbook, count=300_000):
    """Very many names."""
    more = "".join(NAME.format(number) for number in range(1, count + 1)).encode()
    return with_parts(workbook, **{WORKBOOK: lambda xml: re.sub(rb"(</definedNames>)", more + rb"\1", xml)})


def strings(workbook, count=1_000_000):
    """A great table of texts, none of them used."""
    table = f'<sst xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main">{"<si/>" * count}</sst>'.encode()
    kind = (
        b'<Override PartName="/xl/sharedStrings.xml" ContentType="application/vnd.openxmlformats-officedocument.'
        b'spreadsheetml.sharedStrings+xml"/></Types>'
    )
    return with_parts(
        workbook,
        **{
            "[Content_Types].xml": lambda xml: xml.replace(b"</Types>", kind),
            "xl/sharedStrings.xml": lambda _: table,
            "xl/media/noise.bin": lambda _: random.Random(2).randbytes(200_000),  # noqa: S311
        },
    )


KINDS = {
    "wide rows": wide_rows,
    "filled rows": filled_rows,
    "a custom part": custom_part,
    "nested XML": nested,
    "names": names,
    "strings": strings,
}


def pipe(path):
    os.mkfifo(path)
    return path


def device(path):
    path.symlink_to("/dev/zero")
    return path


def declaring(workbook, encoding="utf-8", head=""):
    """A tab with a document type, as those have whose text grows without end. This one is harmless by its size."""

    def declared(xml):
        text = re.sub(r"^<\?xml[^>]*\?>", "", xml.decode()).replace("<sheetData>", "<sheetData><row><c>&a;</c></row>")
        kind = '<!DOCTYPE worksheet [<!ENTITY a "wax">]>'
        return f'<?xml version="1.0" encoding="{encoding}"?>{head}{kind}{text}'.encode(encoding)

    return with_parts(workbook, **{MATERIALS: declared})
