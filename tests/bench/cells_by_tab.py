"""The table of formula cells by tab that stands in DEVELOPERS.md, counted anew.

python tests/bench/cells_by_tab.py
"""

import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parent.parent))

from cells import KEPT_BACK, ROWS, counted

from candlecalc.workbook.size import MOST_CELLS


def main() -> None:
    found = {name: counted(rows_of) for name, rows_of in ROWS.items()}
    tabs = sorted(found["largest"], key=lambda title: -found["largest"][title])
    lines = [(title, found["usual"][title], found["largest"][title]) for title in tabs]
    lines.append(("all there is", *(sum(each.values()) for each in found.values())))
    lines.append(("kept back", KEPT_BACK, KEPT_BACK))
    whole = [sum(line[at] for line in lines if line[0] != "all there is") for at in (1, 2)]
    lines += [("all", *whole), ("the most a workbook takes", MOST_CELLS, MOST_CELLS)]
    print("| tab | usual | largest |\n|---|---|---|")
    for title, usual, largest in lines:
        print(f"| {title} | {usual:,} | {largest:,} |")


if __name__ == "__main__":
    main()
