"""Why a file cannot be read as a workbook, in a maker's words: what it seems to be, and what to do."""

import zipfile
from pathlib import Path

OLD_OFFICE = bytes.fromhex("d0cf11e0a1b11ae1")  # how an .xls begins, and an .xlsx that has a password
ZIPPED = b"PK"
DAMAGED = "it is damaged: open it in a spreadsheet and save it as .xlsx"
READ = (".xlsx", ".xlsm")


def why_not(path: Path) -> str:
    """What seems to be wrong with a file that no workbook could be read from."""
    with path.open("rb") as file:
        start = file.read(len(OLD_OFFICE))
    if not start:
        return "it is empty"
    if start == OLD_OFFICE:
        return "it is an old .xls, or has a password: save it as .xlsx, without a password"
    if not start.startswith(ZIPPED):
        return _of_another_kind(path)
    if not zipfile.is_zipfile(path):
        return "it is cut short: copy or download it once more"
    return _of_package(path)


def _of_another_kind(path: Path) -> str:
    if path.suffix.lower() == ".csv":
        return "it is a CSV file: give the folder that holds the season's files"
    return "it is a file of another kind; a workbook is an .xlsx"


def _of_package(path: Path) -> str:
    try:
        with zipfile.ZipFile(path) as package:
            names = package.namelist()
    except (zipfile.BadZipFile, ValueError, OSError):
        return DAMAGED
    if "content.xml" in names:
        return "it is an .ods, or the like: save it as .xlsx"
    if "xl/workbook.bin" in names:
        return "it is an .xlsb: save it as .xlsx"
    if "xl/workbook.xml" not in names:
        return "it is a package of another kind; a workbook is an .xlsx"
    if path.suffix.lower() not in READ:
        return "name it with .xlsx at the end"
    return DAMAGED
