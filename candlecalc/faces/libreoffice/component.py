"""The functions as LibreOffice Calc calls them; carried in the add-in, where it runs in the suite's own Python.

Standard library only, Python 3.9. Calc hands over a number as a float (an empty cell too, as 0), text as it
is, a range as a tuple of rows, an argument left out as None. Every answer is rows of cells: one of a single
cell serves as a plain value everywhere.
"""

import struct
from itertools import repeat
from typing import Any, Callable, Dict, List, Sequence, Tuple

from candlecalc.declaration.declared import REGISTRY, Argument, Function
from candlecalc.faces.addins.cells import Refused, answer, named, why

Rows = Tuple[Tuple[Any, ...], ...]
NOT_AVAILABLE = 32767  # the number that Calc keeps #N/A under
# Calc reads an error out of a NaN that carries its number.
REFUSED: float = struct.unpack("<d", struct.pack("<Q", 0x7FF8000000000000 | NOT_AVAILABLE))[0]


def methods() -> Dict[str, Callable[..., Any]]:
    """Every function by its name in Calc's own spelling (oilForWax), as a method of the component."""
    found: Dict[str, Callable[..., Any]] = {spelled(name): _method(formula) for name, formula in REGISTRY.items()}
    return {**found, "why": _why}


def spelled(name: str) -> str:
    """A name as the type library takes it, without underscores.

    >>> spelled("oil_for_wax")
    'oilForWax'
    """
    first, *rest = name.split("_")
    return first + "".join(word.capitalize() for word in rest)


def _method(formula: Function) -> Callable[..., Rows]:
    def slowly(*given: Any) -> Rows:
        block = answer(formula, _seen(formula, given))
        return tuple([tuple([REFUSED if cell.__class__ is Refused else cell for cell in row]) for row in block])

    # Nearly all calls are of single values that make a number.
    quickly: Callable[..., Any] = formula.checked_or(slowly) if _plain(formula) else slowly

    def method(_: Any, *given: Any) -> Rows:
        result = quickly(*given)
        return result if result.__class__ is tuple else ((float(result),),)

    return method


def _plain(formula: Function) -> bool:
    """Whether a number comes out of numbers and choices: no list, text, date or blank."""
    terms = [argument.term for argument in formula.arguments.values()]
    numbers = formula.result.is_number and not (formula.result.blank or formula.result.many or formula.fields)
    return numbers and not any(term.many or term.text or term.blank or term.unit == "date" for term in terms)


def _why(_: Any, name: Any, given: Tuple[Any, ...]) -> str:
    formula = named(str(name))
    return why(str(name), *(_seen(formula, given) if formula else given))


def _seen(formula: Function, given: Sequence[Any]) -> List[Any]:
    """The arguments, an empty cell told from zero where zero cannot be meant."""
    wanted = [*formula.arguments.values(), *repeat(None, len(given))]
    return [
        "" if argument and value == 0 and _empty_at_nothing(argument) else value
        for argument, value in zip(wanted, given)
    ]


def _empty_at_nothing(argument: Argument) -> bool:
    term = argument.term
    return not term.is_number or (term.blank and not term.takes(0))
