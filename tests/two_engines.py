"""Two spreadsheet engines that calculate a book of the tests: every formula anew, the embedded one's and LibreOffice's.

ENGINES["LibreOffice"](book)        {("Forms", "B4"): 40.0, ...} of an openpyxl book
"""

import io
import tempfile
from pathlib import Path

import formualizer
import libreoffice


def by_formualizer(book):
    data = io.BytesIO()
    book.save(data)
    return libreoffice.stored(io.BytesIO(formualizer.recalculate_xlsx_bytes(data.getvalue())["bytes"]))


def by_libreoffice(book, office=None):
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder, "book.xlsx")
        book.save(path)
        return (office or libreoffice.shared()).recalculated(path)


ENGINES = {"formualizer": by_formualizer, "LibreOffice": by_libreoffice}
