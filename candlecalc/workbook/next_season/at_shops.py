"""What is at shops that pay when they have sold: of each line that went out, what has not come back or been sold."""

from collections import defaultdict
from collections.abc import Iterator
from typing import NamedTuple

from candlecalc.season.season import Row, Season
from candlecalc.season.tables.sales import ON_CONSIGNMENT, SALES

OUT, BACK, SOLD_THERE = ON_CONSIGNMENT


class There(NamedTuple):
    """What is left at a shop of a line of Sales: its place in the log, and how many."""

    line: int
    place: str
    product: str
    pieces: float


Key = tuple[str, str]


def there(season: Season) -> list[There]:
    """What is at shops, by the lines with which it went out."""
    found, _ = _worked_out(season)
    rows = dict(season.rows(SALES.key))
    return [
        There(line, str(rows[line]["place"]), str(rows[line]["product"]), pieces)
        for line, pieces in sorted(found.items())
        if pieces > 0
    ]


def too_many(season: Season) -> Iterator[tuple[int, str]]:
    """Lines that took more from a shop than had gone there, each with words for it."""
    rows = dict(season.rows(SALES.key))
    for line, over in _worked_out(season)[1].items():
        product, place = rows[line]["product"], rows[line]["place"]
        yield (
            line,
            f"{product}: {over:g} more came back from {place} or were sold there than had gone there: "
            "type what went out",
        )


def _worked_out(season: Season) -> tuple[dict[int, float], dict[int, float]]:
    """What is left of each line that went out, and what each line took beyond that.

    A line takes from those of the batch that it names first, and of all others the oldest.
    """
    out: defaultdict[Key, list[tuple[int, Row]]] = defaultdict(list)
    taken: list[tuple[int, Row]] = []
    for line, row in sorted(season.rows(SALES.key), key=lambda each: (str(each[1]["date"]), each[0])):
        if row["kind"] == OUT:
            out[_key(row)].append((line, row))
        elif row["kind"] in (BACK, SOLD_THERE):
            taken.append((line, row))
    left = {line: _pieces(row) for lines in out.values() for line, row in lines}
    over: dict[int, float] = {}
    # Those that name a batch first: what they took is known.
    for line, row in sorted(taken, key=lambda each: each[1]["batch"] is None):
        wanted = _pieces(row)
        named = sorted(out[_key(row)], key=lambda each: row["batch"] is None or each[1]["batch"] != row["batch"])
        for there_line, _ in named:
            takes = min(wanted, left[there_line])
            left[there_line] -= takes
            wanted -= takes
        if wanted > 0:
            over[line] = wanted
    return left, over


def _key(row: Row) -> Key:
    return str(row["place"]).casefold(), str(row["product"]).casefold()


def _pieces(row: Row) -> float:
    return float(str(row["pieces"] or 0))
