"""Published tables as data files. The lines at the head of each say what it is, its source and what was altered.

Standard library only, Python 3.9: the Calc add-in carries these files too.
"""

import csv
from functools import cache
from pathlib import Path
from typing import Dict, List


@cache
def rows(name: str) -> List[Dict[str, str]]:
    """The rows of a table by its name: a dictionary of head to cell, all as text; lines after # are left out."""
    text = (Path(__file__).parent / f"{name}.csv").read_text(encoding="utf-8")
    return list(csv.DictReader(line for line in text.splitlines() if line and not line.startswith("#")))
