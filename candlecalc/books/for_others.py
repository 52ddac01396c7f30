"""What a shop or an insurer may see: what is in stock and what labels say, and nothing that was paid to anybody."""

import hashlib
from collections.abc import Sequence

from openpyxl import Workbook
from openpyxl.styles import Font

from candlecalc.books.reading import Reading
from candlecalc.books.sheets import Column, Sheet, described
from candlecalc.books.stock_sheet import CANDLE, Day, items
from candlecalc.files import zipped
from candlecalc.workbook.writing import pack

NAME = "candlecalc-stock-list"


def files_for_others(read: Reading, last: Day) -> dict[str, bytes]:
    """The files, made from what may be seen: nothing is taken out of a fuller one."""
    sheets = [_stock(read, last), _labels(read)]
    files = {sheet.path: sheet.csv() for sheet in sheets}
    files["datapackage.json"] = described(NAME, f"Stock and labels on {last}", sheets, files, {"to": str(last)})
    files["stock_and_labels.xlsx"] = _workbook(read, sheets, last)
    hashes = [f"{hashlib.sha256(data).hexdigest()}  {name}" for name, data in files.items()]
    maker = read.season.settings.get("maker") or "the maker"
    head = [f"What {maker} had in stock on {last}, and what the labels say; without costs", "", "SHA-256 of each file"]
    files["summary.txt"] = ("\n".join([*head, *hashes]) + "\n").encode()
    return files


def _stock(read: Reading, last: Day) -> Sheet:
    rows = [
        [item.kind, item.name, item.unit, item.amount, item.at_places if item.kind == CANDLE else None, item.counted_on]
        for item in items(read, last)
    ]
    columns = (
        Column("kind"),
        Column("item"),
        Column("unit"),
        Column("amount", "number"),
        Column("of_them_at_places", "number"),
        Column("counted_on", "date"),
    )
    return Sheet("stock", "What was in stock on the day.", columns, rows, ("kind", "item"))


def _labels(read: Reading) -> Sheet:
    """What the maker has on labels: own lines and those confirmed; never against what."""
    rows = [
        [
            line.typed["product"] or "all",
            line.typed["label"],
            line.typed["part"],
            line.typed["code"],
            line.typed["text"],
        ]
        for line in read.rows("labels")
    ]
    columns = tuple(Column(name) for name in ("product", "label", "part", "code", "text"))
    return Sheet("labels", "What labels say, as typed on Label texts.", columns, rows)


def _workbook(read: Reading, sheets: Sequence[Sheet], last: Day) -> bytes:
    book = Workbook()
    book.remove(book.active)
    for sheet in sheets:
        tab = book.create_sheet(sheet.name.capitalize())
        tab.append([column.name.replace("_", " ") for column in sheet.columns])
        for row in sheet.rows:
            tab.append([None] * len(row))
            for cell, value in zip(tab[tab.max_row], row, strict=True):
                cell.value = value
                if isinstance(value, str):  # a text stays text, whatever it begins with
                    cell.data_type = "s"
        for cell in tab[1]:
            cell.font = Font(bold=True)
            cell_width = max(len(str(each.value or "")) for each in tab[cell.column_letter])
            tab.column_dimensions[cell.column_letter].width = min(60, cell_width + 3)
        tab.freeze_panes = "A2"
        tab.print_title_rows = "1:1"
    return zipped(pack.parts_of(book, last, {}))
