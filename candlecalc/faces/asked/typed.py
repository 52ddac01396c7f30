"""A value as it was typed, read once: what is asked of it later, it brings along."""

import re
from collections.abc import Sequence
from contextlib import suppress
from typing import Any, NamedTuple

from candlecalc.declaration.declared import Argument, Term
from candlecalc.quantities import numerals, units

PER_UNIT = re.compile(r"(?P<amount>.*[^\s/])\s*(?:/|\b(?:per|an?)\b)\s*(?P<unit>[^\s/0-9][^/0-9]*)", re.IGNORECASE)
COST = "money per unit"


class Currency(NamedTuple):
    """What stands beside amounts of money, and on which side; nothing where none was typed."""

    mark: str = ""
    before: bool = True

    def beside(self, amount: str) -> str:
        """An amount as its currency is written: $4.50, GBP 4.50, 4.50 EUR, -$2.00."""
        if not self.mark:
            return amount
        if not self.before:
            return f"{amount} {self.mark}"
        sign, size = ("-", amount[1:]) if amount.startswith("-") else ("", amount)
        return f"{sign}{self.mark}{' ' * self.mark.isalpha()}{size}"


class Typed(str):
    """The text, which messages show, with what it was read as."""

    reading: units.Reading | None = None  # in the unit of its argument; None where it is no such value
    # Of goods, and of what they cost: the amount as written, and the unit that it is in, or per.
    amount: units.Reading | None = None
    unit: str = ""
    currency: Currency = Currency()


def typed(term: Term, text: str) -> Typed:
    """One value of a term, read; where that cannot be done, reading it as an argument says why."""
    found = Typed(text)
    if term.unit == COST:
        _read_cost(found)
    elif term.goods:
        with suppress(ValueError):
            found.amount = units.written(text)
            found.unit = found.amount.unit
    if not found.unit and term.is_number:
        with suppress(ValueError):
            found.reading = units.read(text, term.unit)
    if term.unit.startswith("money") and term.unit != COST:
        found.currency = Currency(*numerals.currency(text))
    return found


def _read_cost(found: Typed) -> None:
    """A cost as it stands before the unit that it is per: "$12" of "$12/lb"."""
    match = PER_UNIT.fullmatch(found.strip())
    amount = match["amount"] if match else str(found)
    # "0.80/cup" is in no pesos.
    found.currency = Currency(*numerals.currency(amount))
    with suppress(ValueError):
        found.unit = units.named(match["unit"]) if match else ""
        found.amount = units.read(amount, COST) if found.unit else None


def read_argument(argument: Argument, text: Any) -> Any:
    """A text as the declaration takes it: a list cut into its parts."""
    term = argument.term
    if not term.many:
        return typed(term, text)
    if term.text or term.unit == "date":  # commas are their own
        return text if term.own_semicolons else [part.strip() for piece in text for part in piece.split(";")]
    return [_in_list(typed(term, part)) for piece in text for part in _parts(argument.name, piece)]


def _in_list(cell: Typed) -> Any:
    """At the terminal all is text: a bare number in a list is one."""
    return cell.reading.value if cell.reading and not cell.reading.unit else cell


def _parts(name: str, text: str) -> Sequence[str]:
    if ";" in text:
        return [part.strip() for part in text.split(";")]
    # "1,5" may be one and a half or two numbers; where points are in use it can only be two.
    unclear = re.search(r"[0-9],[0-9]", text) and "." not in text
    if unclear:
        raise ValueError(f'{name} is "{text}"; put semicolons between its values: "{text.replace(",", "; ")}"')
    return [part.strip() for part in text.split(",")]
