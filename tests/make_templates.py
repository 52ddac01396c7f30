"""Make the workbooks that stand ready in the folder `workbooks`. Run by hand, after anything in them changed:

    python tests/make_templates.py              the workbooks and the demo's CSV files
    python tests/make_templates.py --pictures   pictures of the demo's tabs too, through LibreOffice and poppler

Each file is written whole or not at all.
"""

# ruff: noqa: S603, S607  the programs started here are our own choice

import datetime
import io
import re
import subprocess
import sys
import tempfile
import zipfile
from collections.abc import Mapping
from pathlib import Path

from candlecalc.faces.lambdas import functions_book
from candlecalc.season import folder, presets
from candlecalc.season.room import fresh
from candlecalc.season.season import empty
from candlecalc.workbook import book
from candlecalc.workbook.tabs.registry import registered

HOME = Path(__file__).parents[1] / "workbooks"
COMMAND = "python tests/make_templates.py"
DEMO_DATE, BLANK_DATE = datetime.date(2027, 8, 2), datetime.date(2027, 1, 1)
DOTS_PER_INCH = 72
CHART_PICTURE = "costing-chart.png"


def main(arguments: list[str]) -> int:
    if arguments not in ([], ["--pictures"]):
        print(__doc__, file=sys.stderr)
        return 2
    files = templates()
    if arguments:
        files |= pictures(files["demo.xlsx"], files["year-demo.xlsx"])
    _write(files)
    missing = {f"pictures/{name}" for name in pictured()} - set(files) if arguments else set()
    for name in sorted(missing):
        print(f"No page shows {name}: it was not made.", file=sys.stderr)
    return 1 if missing else 0


def templates() -> dict[str, bytes]:
    """Every file but the pictures, by its path in the folder."""
    made = {"demo.xlsx": book.made(folder.read(folder.DEMO), DEMO_DATE), "functions.xlsx": functions_book.made()}
    year = folder.read(folder.DEMO, records=True).with_records()
    made["year-demo.xlsx"] = book.made(year, DEMO_DATE, rows_of=fresh(year, book.USUAL_ROWS))
    for region in presets.REGIONS:
        blank = empty(presets.blank_settings(region, BLANK_DATE))
        made[f"blank-{region}.xlsx"] = book.made(blank, BLANK_DATE)
        made[f"year-{region}.xlsx"] = book.made(blank.with_records(), BLANK_DATE)
    return made | {f"demo/{path.name}": path.read_bytes() for path in sorted(folder.DEMO.glob("*.csv"))}


def parts(workbook: bytes) -> dict[str, bytes]:
    """What a workbook holds, unpacked: packed bytes differ from one zlib to another."""
    with zipfile.ZipFile(io.BytesIO(workbook)) as opened:
        return {name: opened.read(name) for name in opened.namelist()}


def pictures(demo: bytes, year: bytes) -> dict[str, bytes]:
    """The first page of each tab, and the page with the chart, as far as there are such pages."""
    import libreoffice

    found = {}
    with tempfile.TemporaryDirectory() as work:
        for name, data, tabs in (("demo", demo, book.order(False)), ("year", year, _of_records())):
            path = Path(work, f"{name}.xlsx")
            path.write_bytes(data)
            pdf = libreoffice.shared().pdf(path)
            pages = _page_texts(pdf)
            shown = {_picture_name(tab): _page(pages, f"{tab}, page 1") for tab in tabs}
            shown |= {CHART_PICTURE: _page(pages, _chart_title(demo))} if data is demo else {}
            found |= {f"pictures/{name}": _picture(pdf, page) for name, page in shown.items() if page}
    return found


def _of_records() -> list[str]:
    """The tabs of the year's records that people look at."""
    return [each.tab.title for each in registered() if each.records and each.tab.kind != "working"]


def pictured() -> list[str]:
    """The pictures there are, by name."""
    return [*map(_picture_name, [*book.order(False), *_of_records()]), CHART_PICTURE]


def _picture_name(tab: str) -> str:
    return f"{tab.lower().replace(' ', '-')}.png"


def _page_texts(pdf: Path) -> list[str]:
    told = subprocess.run(["pdftotext", "-layout", str(pdf), "-"], check=True, capture_output=True, text=True)
    return [" ".join(text.split()) for text in told.stdout.split("\f")[:-1]]


def _page(texts: list[str], words: str) -> int:
    """The number of the first page that holds the words, or 0."""
    # A tab's words are its foot, at the end of the page; another tab may well mention them.
    foot = words.endswith(", page 1")
    for number, text in enumerate(texts, start=1):
        if text.endswith(words) if foot else words in text:
            return number
    return 0


def _chart_title(workbook: bytes) -> str:
    title = re.search(rb"<c?:?title>.*?<a:t>(.*?)</a:t>", parts(workbook)["xl/charts/chart1.xml"], re.DOTALL)
    assert title, "the chart has no title"
    return title[1].decode()


def _picture(pdf: Path, page: int) -> bytes:
    only = ["-f", str(page), "-l", str(page), "-singlefile"]
    command = ["pdftoppm", "-png", "-r", str(DOTS_PER_INCH), *only, str(pdf)]
    return subprocess.run(command, check=True, capture_output=True).stdout


def _write(files: Mapping[str, bytes]) -> None:
    for name, data in files.items():
        path = HOME / name
        path.parent.mkdir(parents=True, exist_ok=True)
        beside = path.with_name(f".{path.name}.part")
        try:
            beside.write_bytes(data)
            beside.replace(path)
        finally:
            beside.unlink(missing_ok=True)
        print(f"{path.relative_to(HOME.parent)}  {len(data) / 1000:.0f} kB")


if __name__ == "__main__":
    raise SystemExit(main(sys.argv[1:]))
