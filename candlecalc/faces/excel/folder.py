"""Excel through xlwings: the folder of what it takes, with a text on how to install it."""

from pathlib import Path

from candlecalc import __version__
from candlecalc.faces.addins.carrying import OURS, carried
from candlecalc.faces.excel import vba
from candlecalc.files import THERE_ALREADY, write_folder

HERE = Path(__file__).parent
MODULE = HERE / "module.py"
# The part for xlwings' Python inside Excel, which calls a folder of this name its user's own.
PERSONAL = "personal"


def parts() -> dict[str, str]:
    """The files of the folder by their places; the same each time."""
    inside = carried("faces/excel/functions.py")
    return {
        "INSTALL.txt": (HERE / "install.txt").read_text(encoding="ascii").replace("VERSION", __version__),
        "candles.bas": vba.module(),
        f"{PERSONAL}/candles.py": MODULE.read_text(encoding="utf-8"),
        **{f"{PERSONAL}/{OURS}/{name}": text for name, text in sorted(inside.items())},
    }


def write(folder: Path, force: bool = False) -> None:
    """Write the folder; a ValueError names a file that is there already."""
    # Excel reads VBA text, and an older Notepad any text, with the line ends of Windows only.
    files = {
        folder / name: text.replace("\n", "\n" if name.endswith(".py") else "\r\n").encode()
        for name, text in parts().items()
    }
    there = [path for path in files if path.exists()]
    if there and not force:
        raise ValueError(f"{there[0]} {THERE_ALREADY}")
    write_folder(files, force=force)
