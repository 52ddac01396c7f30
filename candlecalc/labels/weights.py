"""What the weights of a batch come to by the test of the region where it is sold, in words, with single packages."""

from collections.abc import Iterator, Sequence

from candlecalc.calc.label import binding_weight, grams_to_declare, ounces_to_declare, short_under
from candlecalc.calc.measure import batch_test, lot_test_us, maximum_allowable_variation
from candlecalc.season.season import Row, Season


def weights_said(season: Season, product: str, batch: str, declared: float | None, rules: str) -> list[str]:
    """A line on the test of a batch, and one on each package that is short; of the last batch where none is named."""
    rows = [row for _, row in season.rows("weights") if str(row["product"]).casefold() == product.casefold()]
    number = batch or (str(rows[-1]["batch"]) if rows else "")
    rows = [row for row in rows if str(row["batch"]).casefold() == number.casefold()]
    if not rows or declared is None:
        which = f"no piece of batch {number}" if number else "no piece"
        return [f"weights: {which} was weighed: weigh some, each less its empty vessel, and type them on Weights"]
    grams = [season.measures.to_calc(float(row["net"]), "g") for row in rows if isinstance(row["net"], float)]
    number = str(rows[0]["batch"])
    size = next((row["size"] for row in rows if isinstance(row["size"], float)), None)
    return list(_us(number, rows, grams, declared) if rules == "us" else _metric(number, rows, grams, declared, size))


def _us(batch: str, rows: Sequence[Row], grams: Sequence[float], net: float) -> Iterator[str]:
    declared = binding_weight(ounces_to_declare(net), grams_to_declare(net))
    try:
        test = lot_test_us(declared, grams)
        yield f"weights of batch {batch}, {len(grams)} weighed, declared {declared:.2f} g: {test.verdict}"
    except ValueError as problem:
        yield f"weights of batch {batch}: {_plain(problem)}"
    variation = maximum_allowable_variation(declared)
    yield from _short(rows, grams, declared - variation.variation, f"; {variation.note}")


def _metric(batch: str, rows: Sequence[Row], grams: Sequence[float], net: float, size: float | None) -> Iterator[str]:
    declared = grams_to_declare(net)
    if size is None:
        yield f"weights of batch {batch}: type on Weights how many candles it has, on any of its lines"
    else:
        try:
            test = batch_test(declared, grams, size)
            yield f"weights of batch {batch}, {len(grams)} weighed of {size:g}, declared {declared:g} g: {test.verdict}"
        except ValueError as problem:
            yield f"weights of batch {batch}: {_plain(problem)}"
    yield from _short(rows, grams, short_under(declared), "")


def _short(rows: Sequence[Row], grams: Sequence[float], least: float, note: str) -> Iterator[str]:
    """Each package under a weight, by its mark, else by its place among those weighed."""
    for place, (row, weight) in enumerate(zip(rows, grams, strict=True), start=1):
        if round(weight - least, 6) < 0:
            yield f"weights: package {row['package'] or place} is {weight:.2f} g, under {least:g} g{note}"


def _plain(problem: ValueError) -> str:
    return str(problem).partition(": ")[2].removesuffix(".")
