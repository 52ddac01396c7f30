"""Published tables as data files. The lines at the head of each say what it is, its source and what was altered.

Standard library only, Python 3.9: the Calc add-in carries these files too.
"""

import csv
from functools import cache
from pathlib import Path
from typing import Callable, Dict, List


@cache
def rows(name: str) -> List[Dict[str, str]]:
    """The rows of a table by its name: a dictionary of head to cell, all as text; lines after # are left out."""
    text = (Path(__file__).parent / f"{name}.csv").read_text(encoding="utf-8")
    return list(csv.DictReader(line for line in text.splitlines() if line and not line.startswith("#")))


def row_up_to(name: str, amount: float) -> Dict[str, str]:
    """The first row whose `up_to` reaches an amount; a blank `up_to` is all above. A LookupError is beyond the last."""
    for row in rows(name):
        if not row["up_to"] or amount <= float(row["up_to"]):
            return row
    raise LookupError(f"the table here ends at {rows(name)[-1]['up_to']}")


def native_steps(name: str, argument: str, value: Callable[[Dict[str, str]], str]) -> str:
    """The same as a native form: an IF in an IF over the rows, `value` saying what each comes to."""
    *steps, last = rows(name)
    text = value(last)
    for row in reversed(steps):
        text = f"IF({argument}<={row['up_to']},{value(row)},{text})"
    return text
