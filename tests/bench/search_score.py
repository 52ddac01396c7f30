"""How often a maker's phrase finds what answers it among the first three: python tests/bench/search_score.py [--kept]

Two thirds of tests/phrases.csv were worked with; the third kept aside is scored with --kept.
"""

import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parent.parent))

from phrases import aside, first_three, right, worked_with


def main() -> None:
    phrases = aside() if "--kept" in sys.argv else worked_with()
    wrong = [phrase for phrase in phrases if not right(phrase)]
    for phrase in wrong:
        print(f"{phrase.said:32} {' '.join(phrase.answers) or 'none':60} {' '.join(first_three(phrase)) or 'none'}")
    for name, chosen in {
        "with an answer": [phrase for phrase in phrases if phrase.answers],
        "without": [phrase for phrase in phrases if not phrase.answers],
        "all": phrases,
    }.items():
        hits = sum(map(right, chosen))
        print(f"{name}: {hits} of {len(chosen)}, {hits / len(chosen):.1%}")


if __name__ == "__main__":
    main()
