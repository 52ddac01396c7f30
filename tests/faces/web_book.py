"""The script for web spreadsheets in a real V8, the engine that their script editors run: cases in, answers out.

    calculate([("oil_for_wax", [500, "8%"]), ...])    [[[40.0]], ...]

A case is a function's name and its arguments as a sheet hands them over: a number, text, TRUE, a `date` as
a Date, "" for an empty cell, a list or tuple for a range, which stands in a column (rows of cells for a block),
None for one left out. An answer is the rows of cells it fills: numbers, texts, days as numbers, "" for nothing,
and `Thrown`, an error whose words the cell shows.
"""

import atexit
import json
import re
from datetime import date
from functools import cache

import libreoffice
from py_mini_racer import MiniRacer

from candlecalc.calc import REGISTRY
from candlecalc.faces.addins import wizard
from candlecalc.faces.web import script_file as script

# Calls every case by its name as a formula would; a day comes back as the number that a cell keeps for it.
ASK = """
function asked(cases) {
  const read = (cell) => cell === null ? undefined
    : Array.isArray(cell) ? cell.map(read)
    : typeof cell === "object" ? new Date(cell.year, cell.month - 1, cell.day)
    : cell;
  const shown = (cell) => Object.prototype.toString.call(cell) === "[object Date]"
    ? { day: Math.round(Date.UTC(cell.getFullYear(), cell.getMonth(), cell.getDate()) / 86400000) + 25569 }
    : typeof cell === "number" && !Number.isFinite(cell) ? { not: String(cell) } : cell;
  return JSON.stringify(JSON.parse(cases).map(([name, cells]) => {
    try {
      const answer = globalThis[name](...cells.map(read));
      const rows = Array.isArray(answer) ? answer : [[answer]];
      return { rows: rows.map((row) => row.map(shown)) };
    } catch (problem) {
      return { thrown: problem instanceof Refused_ ? problem.message : `a fault: ${problem.stack}` };
    }
  }));
}
function inside(work, given) {
  return JSON.stringify(given.map((each) => {
    try {
      return work(...each);
    } catch (problem) {
      return { thrown: problem.message };
    }
  }));
}
"""


class Thrown(libreoffice.Error):
    """An error with the words that the sheet shows for it."""

    words = ""


@cache
def engine():
    """One V8 for the process, with the script in it as it is pasted."""
    made = MiniRacer()
    atexit.register(made.close)  # left to the end of Python, it would wait for a thread that is gone
    made.eval(script.script() + ASK)
    return made


def calculate(cases):
    asked = [[_name(name), [_given(cell) for cell in cells]] for name, cells in cases]
    return [_answer(each) for each in json.loads(engine().eval(f"asked({json.dumps(json.dumps(asked))})"))]


def asked(function, given):
    """What a function inside the script gives for each list of plain arguments; words that it throws as `thrown`."""
    return json.loads(engine().eval(f"inside({function}, {json.dumps(given)})"))


def calculated(calls):
    """The same for the calls of tests over faces; one that is refused for another reason than Python's is no #N/A."""
    answers = calculate(calls)
    for call, rows in zip(calls, answers, strict=True):
        if isinstance(rows[0][0], Thrown) and not _same_reason(call, rows[0][0].words):
            rows[0][0] = libreoffice.Error(f"not Python's reason: {rows[0][0].words}")
    return answers


def takes(call):
    """Whether the script has a function."""
    return call.name in _names()


@cache
def _names():
    return {formula.name for formula in script.functions()}


def _name(name):
    return wizard.WHY if name == wizard.WHY else wizard.name(REGISTRY[name])


def _given(cell):
    if isinstance(cell, list | tuple):
        return [[_given(each) for each in (row if isinstance(row, list | tuple) else [row])] for row in cell] or [[""]]
    return {"year": cell.year, "month": cell.month, "day": cell.day} if isinstance(cell, date) else cell


def _answer(told):
    if "thrown" in told:
        error = Thrown("#N/A")
        error.words = told["thrown"]
        return [[error]]
    return [
        [cell.get("day", cell.get("not")) if isinstance(cell, dict) else cell for cell in row] for row in told["rows"]
    ]


def _same_reason(call, words):
    given = {name: cell for name, cell in zip(call.formula.arguments, call.cells, strict=True) if cell is not None}
    try:
        call.formula.call(**given)
    except TypeError:  # a required argument is left out
        return "is blank; it takes" in words
    except ValueError as problem:
        return _short(words) == _short(str(problem))
    return False


def _short(words):
    """Words without the lists in them, which Python shows in its own way."""
    return re.sub(r"\[.*?(\]|\.\.\.)", "[]", words)
