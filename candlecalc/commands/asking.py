"""The functions at the terminal: one question asked and answered."""

from collections.abc import Iterable, Mapping, Sequence
from pathlib import Path
from typing import Any

from candlecalc.declaration.declared import REGISTRY, Argument, Function, Term
from candlecalc.faces.asked import goods, label_parts, months, own_units
from candlecalc.faces.asked.question import CallError, arguments, function, unit_wanted
from candlecalc.faces.asked.results import Asked, answered, lines, shown
from candlecalc.faces.asked.typed import Currency, Typed, read_argument
from candlecalc.quantities import units


def ask(name: str, words: Iterable[str], files: Sequence[Path] = ()) -> list[str]:
    """The answer to a question as typed, a line for each number; a ValueError says what is wrong.

    `files` are data sheets of oils, in the order of their loads, or a log of burns.
    """
    formula = function(name)
    rest, wanted = unit_wanted(formula, list(words))
    if not files:
        return answer(formula, arguments(formula, rest), wanted)
    rest, read, told = _from_files(formula, rest, files)
    typed = arguments(formula, rest, read)
    return [*told, *answer(formula, {name: typed[name] for name in typed if name not in read}, wanted, read)]


def _from_files(
    formula: Function, words: list[str], files: Sequence[Path]
) -> tuple[list[str], dict[str, Any], list[str]]:
    """The words that are left, what the files give, and what was read of them, in lines."""
    from candlecalc.commands import burn_logs, sheets

    if sheets.takes_sheet(formula):
        return words, *sheets.columns(formula, files)
    if burn_logs.takes_log(formula):
        return burn_logs.read(formula, words, files)
    taking = [name for name, other in REGISTRY.items() if sheets.takes_sheet(other)]
    raise CallError(
        f"{formula.name} takes no file. A data sheet is for {', '.join(taking)}; "
        f"a log of burns for {', '.join(burn_logs.taking())}"
    )


def answer(
    formula: Function, typed: Mapping[str, Any], wanted: str = "", read: Mapping[str, Any] | None = None
) -> list[str]:
    """The result of a function for arguments as text, as it is shown: a line for each number.

    `wanted` is the unit to show it in, as it is spelled; else it is the one that serves who asked so. What was `read`
    from elsewhere is taken as it is.
    """
    in_days = months.as_days(formula, typed)
    given = {name: read_argument(formula.arguments[name], text) for name, text in in_days.items()} | dict(read or {})
    currency = own_units.currency(formula, given)
    counted = goods.in_one_unit(formula, given)
    values = formula.read(counted.given)
    rows = formula.rows(formula.answer(values))
    asked = Asked("", currency, int(values.get("digits", 2)), counted.unit, _in_pieces(formula, given))
    written = own_units.written(formula, given)
    words = [
        [
            shown(value, term, asked._replace(unit=_unit(term, value, given, wanted, written)))
            for term, value in zip(_terms(formula), row, strict=True)
        ]
        for row in rows
    ]
    if label_parts.is_label(formula):
        return label_parts.lines(words)
    told = _with_costs_said(formula, lines(formula, words), given, counted)
    return [*_with_money_said(formula, told, currency), *_noted(formula, values)]


def _noted(formula: Function, values: Mapping[str, Any]) -> list[str]:
    """What to know beside the answer."""
    return [line for note in formula.noted(values) for line in answered("note", note)]


def checked(argument: Argument, text: str) -> Any:
    """A text for one argument as `answer` takes it; a ValueError says what is wrong with it."""
    given = [text] if argument.term.many else text
    argument.read(read_argument(argument, given))
    return given


def _terms(formula: Function) -> list[Term]:
    return [*formula.fields.values()] or [formula.result]


def _unit(term: Term, value: Any, given: Mapping[str, Any], wanted: str, written: list[own_units.Written]) -> str:
    if term.unit_in:
        return units.named(given[term.unit_in])
    own = wanted and units.in_kind(wanted, term.unit)
    return own or own_units.handy(value, term, own_units.unit_for(term, written))


def _in_pieces(formula: Function, given: Mapping[str, Any]) -> bool:
    """Whether amounts were all typed as whole numbers, as what is counted is."""
    amounts = [value for name, value in given.items() if formula.arguments[name].term.goods]
    cells = [cell for value in amounts for cell in (value if isinstance(value, list) else [value]) if cell != ""]
    numbers = [cell.reading and cell.reading.value if isinstance(cell, Typed) else cell for cell in cells]
    return all(isinstance(number, float) and number.is_integer() for number in numbers)


def _with_costs_said(formula: Function, told: list[str], given: Mapping[str, Any], counted: goods.Goods) -> list[str]:
    """The answer with what a cost that was typed without a unit was taken to be per."""
    if not counted.taken:
        return told
    if not counted.unit:
        return [*told, f"{' and '.join(counted.taken)}: without a unit, per that of the amount beside"]
    per = goods.per(counted.unit)
    if formula.result.unit == "money" and len(counted.taken) == 1 and len(told) == 1:
        return [f"{told[0]} at {given[counted.taken[0]]} {per}"]
    costs = [
        f"{name}: {f'per {units.NAMES[counted.unit]}' if isinstance(given[name], list) else f'{given[name]} {per}'}"
        for name in counted.taken
    ]
    return [*told, *costs]


def _with_money_said(formula: Function, told: list[str], currency: Currency) -> list[str]:
    """The answer with the currency that it is in, where none was typed."""
    if currency.mark or not any(term.unit.startswith("money") for term in _terms(formula)):
        return told
    if len(told) == 1 and not formula.fields:
        return [f"{told[0]} in your currency"]
    return [*told, "amounts of money in your currency"]
