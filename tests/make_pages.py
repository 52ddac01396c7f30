"""Make the pages that are written from the declarations and from the published checks. Run by hand:

    python tests/make_pages.py

`workbooks/functions.md` says what each function is, `workbooks/functions.js` has them for web spreadsheets, and
`tests/published/README.md` says what checks them. The types of the functions are in `candlecalc/__init__.pyi`, and
their names in `candlecalc/__init__.py`.
"""

import contextlib
import importlib.util
import inspect
import itertools
import re
import sys
from pathlib import Path
from unittest import mock

import face

import candlecalc.calc  # noqa: F401  fills the registry
from candlecalc import tables
from candlecalc.faces.described import markdown as page
from candlecalc.faces.described import reference, stub
from candlecalc.faces.web import script_file as script

HOME = Path(__file__).parents[1]
COMMAND = "python tests/make_pages.py"
PUBLISHED = Path(__file__).parent / "published"
# What a source's words say of its standing; the first that is found holds.
STANDINGS = ["common practice", "no source", "from memory", "second-hand", "derived"]
INTRODUCTION = f"""# What checks each function

Made by `{COMMAND}` from the tests in this folder, each of which runs on every face that has the function.
A check is against a source outside the project, unless its line says *common practice*, *from memory* or *derived*.
Laws (inverse functions, conservation, monotone answers) are in `tests/test_<subject>.py` besides.
"""


def main() -> int:
    for path, text in PAGES.items():
        path.write_text(text(), encoding="utf-8")
    return 0


def checks_page() -> str:
    checks, rests_on = checks_of_functions()
    lines = [INTRODUCTION]
    for subject, group in itertools.groupby(reference.every(), key=lambda formula: formula.subject):
        lines += [f"## {subject.replace('_', ' ').capitalize()}", ""]
        for formula in group:
            found = checks.get(formula.name, {})
            lines += [f"- **{formula.name}**" + ("" if found else ": no published check")]
            lines += [f"  - {words} ({', '.join(sorted(where))})" for words, where in found.items()]
            lines += [f"  - rests on table {name}: {standing(name)}" for name in sorted(rests_on.get(formula.name, ()))]
        lines.append("")
    names = sorted(formula.name for formula in reference.every())
    bare = [name for name in names if not any(is_published(words) for words in checks.get(name, {}))]
    lines += ["## With only common practice, derivation or laws behind them", "", ", ".join(bare) or "None.", ""]
    return "\n".join(lines)


def checks_of_functions() -> tuple[dict[str, dict[str, set[str]]], dict[str, set[str]]]:
    """For each function the sources that check it with the files they stand in, and the tables it reads."""
    checks: dict[str, dict[str, set[str]]] = {}
    rests_on: dict[str, set[str]] = {}
    for path in sorted(PUBLISHED.glob("test_*.py")):
        for test, words in tests_of(path):
            for given in parameters(test):
                for call in face.recorded(test, given):
                    checks.setdefault(call.name, {}).setdefault(words, set()).add(path.name)
                    rests_on.setdefault(call.name, set()).update(tables_read(call))
    return checks, rests_on


def tests_of(path: Path):
    """Each test over faces in a file, with the source that stands over it or first in it."""
    spec = importlib.util.spec_from_file_location(f"published.{path.stem}", path)
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    lines, above = path.read_text(encoding="utf-8").splitlines(), ""
    tests = [test for name, test in vars(module).items() if name.startswith("test_") and inspect.isfunction(test)]
    end = 0
    for test in sorted(tests, key=lambda test: inspect.getsourcelines(test)[1]):
        body, start = inspect.getsourcelines(test)
        above = comment(lines[end : start - 1]) or above
        end = start - 1 + len(body)
        if "face" in inspect.signature(test).parameters:
            yield test, comment(line.strip() for line in body) or above or "no source named"


def comment(lines) -> str:
    """The first comment of some lines, as one line."""
    said = itertools.takewhile(
        lambda line: line.startswith("# "), itertools.dropwhile(lambda line: not line.startswith("# "), lines)
    )
    return " ".join(line.removeprefix("# ") for line in said).rstrip(".:")


def parameters(test):
    """Every set of parameters that a test runs with, but the face."""
    marks = [mark for mark in getattr(test, "pytestmark", []) if mark.name == "parametrize"]
    rows = []
    for mark in marks:
        names = re.split(r"\s*,\s*", mark.args[0]) if isinstance(mark.args[0], str) else list(mark.args[0])
        values = [getattr(value, "values", value) if not isinstance(value, dict) else value for value in mark.args[1]]
        rows.append([dict(zip(names, [value] if len(names) == 1 else value, strict=True)) for value in values])
    for combination in itertools.product(*rows):
        yield {name: value for row in combination for name, value in row.items()}


def tables_read(call: face.Call) -> set[str]:
    """The tables that a call reads, found by making it once more."""
    given = {name: cell for name, cell in zip(call.formula.arguments, call.cells, strict=True) if cell is not None}
    read: set[str] = set()
    with mock.patch.object(tables, "rows", noting(read)), contextlib.suppress(ValueError):
        call.formula.call(**given)
    return read


def noting(read: set[str]):
    rows = tables.rows

    def noted(name):
        read.add(name)
        return rows(name)

    return noted


def standing(name: str) -> str:
    """How far the rows of a table were read in their text, by its status columns."""
    said = []
    for head in [head for head in tables.rows(name)[0] if head.startswith("status")] or [""]:
        found = [row.get(head, "not stated") for row in tables.rows(name)]
        of = head.removeprefix("status").replace("_", " ")
        said += [f"{found.count(status)} rows{of} {status}" for status in dict.fromkeys(found)]
    return ", ".join(said)


def is_published(words: str) -> bool:
    return not any(standing in words.lower() for standing in STANDINGS) and words != "no source named"


def names_in_place() -> str:
    """The package's first file with the public names as they are today."""
    text = PACKAGE.read_text(encoding="utf-8")
    for start, names in {"__all__ = ": stub.names(), "_EARLIER: list[str] = ": stub.earlier()}.items():
        text = re.sub(rf"(?<=^{re.escape(start)})\[[^]]*\]", stub.listed(names), text, count=1, flags=re.MULTILINE)
    return text


PACKAGE = HOME / "candlecalc" / "__init__.py"
# What makes the text of each page, by where it stands.
PAGES = {
    HOME / "workbooks" / "functions.md": page.page,
    HOME / "workbooks" / "functions.js": script.script,
    PUBLISHED / "README.md": checks_page,
    PACKAGE: names_in_place,
    PACKAGE.with_suffix(".pyi"): stub.text,
}


if __name__ == "__main__":
    sys.exit(main())
