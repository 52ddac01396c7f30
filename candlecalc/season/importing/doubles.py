"""Lines of a file that a season has already: by their document, or by place, order and line."""

from collections import Counter
from collections.abc import Callable, Hashable, Iterable, Mapping, Sequence

from candlecalc.season.importing.rows import Taken
from candlecalc.season.season import Row

Known = tuple[Hashable, ...]


def parted(kind: str, taken: Sequence[Taken], held: Sequence[Row]) -> tuple[list[Taken], list[Taken]]:
    """The lines that are new, and those that are there already."""
    there = _there(kind, taken, held)
    return [each for each in taken if each.line not in there], [each for each in taken if each.line in there]


def alike(kind: str, taken: Iterable[Taken], held: Iterable[Row]) -> list[Taken]:
    """Lines without a number that are like a row that is there: they may be the same, or another like it."""
    known = {_all_of(row) for row in held}
    return [each for each in taken if not name_of(kind, each.row) and _all_of(each.row) in known]


def name_of(kind: str, row: Row) -> str:
    """What a line is known by, in words; an empty text where by nothing."""
    if kind == "purchases":
        return f"document {row['document']}" if row["document"] else ""
    if kind == "sales":
        line = f", line {row['order_line']:g}" if row["order_line"] else ""
        return f"order {row['order']}{line} of {row['place']}" if row["order"] else ""
    return f"package {row['package']} of batch {row['batch']}" if kind == "weighings" and row["package"] else ""


def _there(kind: str, taken: Sequence[Taken], held: Sequence[Row]) -> set[int]:
    if kind == "purchases":
        suppliers: dict[str, list[object]] = {}
        for row in held:
            suppliers.setdefault(_text(row["document"]), []).append(row["supplier"])
        return {each.line for each in taken if _has_document(each.row, suppliers)}
    if kind == "sales":
        return _sales_there(taken, held)
    if kind == "weighings":
        return _met(taken, {_package(row) for row in held}, _package)
    return set()


def _has_document(row: Row, suppliers: Mapping[str, Sequence[object]]) -> bool:
    """Whether a document is there: numbers of two suppliers may be the same, where both are named."""
    there = suppliers.get(_text(row["document"]), []) if row["document"] else []
    return any(_same_or_blank(row["supplier"], other) for other in there)


def _sales_there(taken: Sequence[Taken], held: Sequence[Row]) -> set[int]:
    """By place, order and line; where there or here lines have no number, the nth of a product is the same."""
    numbered = {_order_line(row) for row in held}
    there = _met([each for each in taken if each.row["order_line"]], numbered, _order_line)
    without_number = Counter(_product(row) for row in held if row["order"] and not row["order_line"])
    with_number = Counter(_product(row) for row in held if row["order"] and row["order_line"])
    nth: Counter[Known] = Counter()
    for each in taken:
        if not each.row["order"] or each.line in there:
            continue
        product = _product(each.row)
        nth[product] += 1
        others = without_number[product] + (0 if each.row["order_line"] else with_number[product])
        if nth[product] <= others:
            there.add(each.line)
    return there


def _met(taken: Sequence[Taken], known: set[Known], key: Callable[[Row], Known]) -> set[int]:
    """Lines whose key is known, or stands in the file before."""
    known = set(known)
    there = set()
    for each in taken:
        this = key(each.row)
        if this and this in known:
            there.add(each.line)
        known.add(this)
    return there


def _order_line(row: Row) -> Known:
    if not row["order"] or not row["order_line"]:
        return ()
    return (*_order(row), row["order_line"])


def _product(row: Row) -> Known:
    return (*_order(row), _text(row["product"]))


def _order(row: Row) -> Known:
    """A refund stands in the same order as its sale, and may come in parts."""
    kind = row["kind"]
    return (_text(row["place"]), _text(row["order"]), kind, row["date"] if kind else None)


def _package(row: Row) -> Known:
    return (_text(row["batch"]), _text(row["product"]), _text(row["package"])) if row["package"] else ()


def _all_of(row: Row) -> Known:
    return tuple(_text(value) if isinstance(value, str) else value for value in row.values())


def _same_or_blank(one: object, other: object) -> bool:
    return not one or not other or _text(one) == _text(other)


def _text(value: object) -> str:
    return str(value or "").casefold()
