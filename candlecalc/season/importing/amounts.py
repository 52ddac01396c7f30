"""What a line comes to, exactly: pieces and money of sales and purchases, or what was counted or weighed."""

from collections.abc import Iterable, Mapping
from decimal import Decimal

from candlecalc.season.importing.signs import SIGNED, exact, goes_back
from candlecalc.season.tables.imports import LINE_PRICE
from candlecalc.season.tables.stock import OPENING

Amounts = tuple[Decimal, ...]
MONEY = "Money"
# The heads of the sums, by what a file is read as.
HEADS = {
    "purchases": ("Packs", MONEY),
    "sales": ("Pieces", MONEY),
    "counts": ("Counted",),
    "weighings": ("Net weight",),
}
ADDED = {"purchases": ("charges", "tax"), "sales": ("postage",)}


def amounts_of(kind: str, values: Mapping[str, object]) -> Amounts:
    """The amounts of a line, as a file or a row of ours has them; what goes back to a buyer counts against the rest."""
    if kind == "counts":
        return (exact(values, "counted"),)
    if kind == "weighings":
        return (exact(values, "net"),)
    if kind == "purchases":
        return exact(values, "packs"), _money(kind, values, exact(values, "packs"))
    if goes_back(values):
        unsigned = {**values, **{key: abs(exact(values, key)) for key in SIGNED if key in values}}
        return -exact(unsigned, "pieces"), -_money(kind, unsigned, exact(unsigned, "pieces"))
    return exact(values, "pieces"), _money(kind, values, exact(values, "pieces"))


def _money(kind: str, values: Mapping[str, object], count: Decimal) -> Decimal:
    # Money alone may go back, without a candle; and the price of opening stock is that of all of it.
    alone = not count or values.get("kind") == OPENING
    whole = exact(values, LINE_PRICE) if LINE_PRICE in values else exact(values, "price") * (1 if alone else count)
    return whole - exact(values, "discount") + sum(exact(values, key) for key in ADDED[kind])


def added(amounts: Iterable[Amounts], kind: str) -> Amounts:
    """The sums of amounts."""
    columns = [*zip(*amounts, strict=True)]
    return tuple(sum(column, Decimal(0)) for column in columns) if columns else (Decimal(0),) * len(HEADS[kind])
