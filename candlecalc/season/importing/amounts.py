"""What a line comes to, exactly: pieces and money of sales, packs and money of purchases, what was counted or weighed."""

from collections.abc import Iterable, Mapping
from decimal import Decimal

from candlecalc.season.fields import Value
from candlecalc.season.importing.signs import goes_back
from candlecalc.season.tables.imports import LINE_PRICE
from candlecalc.season.tables.stock import OPENING

Amounts = tuple[Decimal, ...]
# The heads of the sums, by what a file is read as.
HEADS = {
    "purchases": ("Packs", "Money"),
    "sales": ("Pieces", "Money"),
    "counts": ("Counted",),
    "weighings": ("Net weight",),
}
OF_MONEY = "Money"
ADDED = {"purchases": ("charges", "tax"), "sales": ("postage",)}


def amounts_of(kind: str, values: Mapping[str, object]) -> Amounts:
    """The amounts of a line, as a file or a row of ours has them; what goes back to a buyer counts against the rest."""
    if kind in ("counts", "weighings"):
        return (_exact(values, "counted" if kind == "counts" else "net"),)
    count = _exact(values, "packs" if kind == "purchases" else "pieces")
    if kind == "sales" and goes_back({key: _exact(values, key) if _is_number(value) else value for key, value in values.items()}):  # type: ignore[misc]
        given = {key: abs(_exact(values, key)) for key in values if _is_number(values[key])}
        return -abs(count), -_money(kind, given, abs(count))
    return count, _money(kind, values, count)


def _money(kind: str, values: Mapping[str, object], count: Decimal) -> Decimal:
    # Money alone may go back, without a candle; and the price of opening stock is that of all of it.
    count = Decimal(1) if not count or values.get("kind") == OPENING else count
    whole = _exact(values, LINE_PRICE) if values.get(LINE_PRICE) is not None else _exact(values, "price") * count
    return whole - _exact(values, "discount") + sum(_exact(values, key) for key in ADDED[kind])


def added(amounts: Iterable[Amounts], kind: str) -> Amounts:
    """The sums of amounts."""
    columns = [*zip(*amounts, strict=True)]
    return tuple(sum(column, Decimal(0)) for column in columns) if columns else (Decimal(0),) * len(HEADS[kind])


def _is_number(value: object) -> bool:
    return isinstance(value, (Decimal, float))


def _exact(values: Mapping[str, object], key: str) -> Decimal:
    value: object | Value = values.get(key)
    if isinstance(value, Decimal):
        return value
    # Fifteen digits, as a workbook keeps them.
    return Decimal(f"{value:.15g}") if isinstance(value, float) else Decimal(0)
