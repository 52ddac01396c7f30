"""Our own files that a face takes along to where nothing of ours is installed."""

import ast
import re
from collections.abc import Iterable
from pathlib import Path

from candlecalc import __version__

OURS = "candlecalc"
ROOT = Path(__file__).resolve().parent.parent.parent
IMPORT = re.compile(rf"^(\s*(?:from|import)\s+){OURS}\b", re.MULTILINE)


def carried(start: str, package: str = OURS) -> dict[str, str]:
    """The texts of a file and of all that it imports, by their place in a package of this name."""
    texts = {"__init__.py": f'"""A part of candlecalc, taken along."""\n\n__version__ = "{__version__}"\n'}
    waiting = {start, *_packages(start)}
    while waiting:
        name = waiting.pop()
        text = (ROOT / name).read_text(encoding="utf-8")
        waiting |= set(_imported(text)) - set(texts) - {name}
        texts[name] = IMPORT.sub(rf"\g<1>{package}", text)
    return {**texts, **_tables()}


def _imported(text: str) -> Iterable[str]:
    """The files of our own that a module imports, those of the packages they lie in among them."""
    for node in ast.walk(ast.parse(text)):
        if isinstance(node, ast.Import):
            named = [alias.name for alias in node.names]
        elif isinstance(node, ast.ImportFrom):
            named = [f"{node.module}.{alias.name}" for alias in node.names] + [str(node.module)]
        else:
            continue
        for name in named:
            first, *inside = name.split(".")
            while first == OURS and inside:
                yield from _file(inside)
                inside = inside[:-1]


def _packages(start: str) -> Iterable[str]:
    """The files of the packages that a file lies in, but for ours, which is made new."""
    return [f"{folder.as_posix()}/__init__.py" for folder in Path(start).parents if folder.name]


def _file(inside: list[str]) -> Iterable[str]:
    path = "/".join(inside)
    return [name for name in (f"{path}.py", f"{path}/__init__.py") if (ROOT / name).is_file()]


def _tables() -> dict[str, str]:
    folder = ROOT / "tables"
    return {f"tables/{path.name}": path.read_text(encoding="utf-8") for path in sorted(folder.glob("*.csv"))}
