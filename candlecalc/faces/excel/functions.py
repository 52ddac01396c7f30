"""The functions as xlwings takes them: one for each declaration, and CANDLE_WHY.

The same for Excel on Windows, where xlwings' server calls them for VBA, and for xlwings' Python inside
Excel. xlwings is imported here and nowhere else.
"""

from collections.abc import Callable, Iterable
from inspect import Parameter, Signature
from typing import Any

from xlwings import arg, func
from xlwings.conversion import Converter, Options, ReadValueFromRangeStage

from candlecalc.declaration.declared import REGISTRY, Function
from candlecalc.faces.addins import wizard
from candlecalc.faces.addins.cells import Refused, answer, why
from candlecalc.faces.excel import vba

# Over COM an error is this whole number with the error's own number in its lower half. Cells hold no
# other whole numbers: a 5 arrives as 5.0.
ERROR = 0x800A0000 - 2**32
NOTHING = [[""]]  # an answer of no rows: an array without cells would be an error


class Fault:
    """An error that came in with an argument: no term takes it, and a message shows it as it stood."""

    def __init__(self, text: str) -> None:
        self.text = text

    def __repr__(self) -> str:
        return self.text


class Cells(Converter):
    """An argument as `cells.answer` takes it: a cell as a value, a range as rows of values."""

    @classmethod
    def base_reader(cls, options: Any, base_type: Any = None) -> Any:
        pipeline = super().base_reader(Options(options).override(ndim=2, err_to_str=True), base_type)
        return pipeline.insert_stage(_read_value2, replace=ReadValueFromRangeStage)

    @staticmethod
    def read_value(rows: list[list[Any]], options: Any) -> Any:
        rows = [[_cell(value) for value in row] for row in rows]
        return rows[0][0] if len(rows) == 1 == len(rows[0]) else rows


def decorated(module: str) -> dict[str, Callable[..., Any]]:
    """Every function by its name in a cell, for the module of this name."""
    functions = [_function(formula) for formula in REGISTRY.values()] + [_explained()]
    for function in functions:
        function.__module__ = module
    return {function.__name__: function for function in functions}


def _function(formula: Function) -> Callable[..., Any]:
    def function(*given: Any) -> list[list[Any]]:
        return _shown(_with_faults(formula, given, answer(formula, given))) or NOTHING

    parameters = [
        _parameter(name, argument.optional)
        for name, argument in zip(vba.parameters(formula), formula.arguments.values(), strict=True)
    ]
    helps = map(wizard.help_of, formula.arguments.values())
    described = _described(function, wizard.name(formula), wizard.about(formula), parameters, helps)
    return func(category=wizard.category(formula))(described)


def _explained() -> Callable[..., Any]:
    def function(name: Any, *given: Any) -> str:
        while given and given[-1] is None:
            given = given[:-1]
        return why(str(name), *given)

    helps = wizard.why_arguments()
    parameters = [_parameter(name, left_out=place > 0) for place, name in enumerate(helps)]
    described = _described(function, wizard.WHY, wizard.WHY_ABOUT, parameters, helps.values())
    return func(category=wizard.CATEGORY)(described)


def _parameter(name: str, left_out: bool) -> Parameter:
    # None is the sign of an argument left out: its own default is filled in later.
    return Parameter(name, Parameter.POSITIONAL_OR_KEYWORD, default=None if left_out else Parameter.empty)


def _described(
    function: Callable[..., Any], name: str, about: str, parameters: list[Parameter], helps: Iterable[str]
) -> Callable[..., Any]:
    """The function with all that xlwings reads of it: name, docstring, signature, and the help of arguments."""
    function.__name__ = function.__qualname__ = name
    function.__doc__ = about
    function.__signature__ = Signature(parameters)  # type: ignore[attr-defined]
    for parameter, text in zip(parameters, helps, strict=True):
        function = arg(parameter.name, Cells, doc=text)(function)
    return function


def _read_value2(context: Any) -> None:
    if context.range is not None:
        cells = context.range.api
        # Value would round a cell formatted as money to four decimals, and make a date of a day's number.
        # Of a range in several pieces both give the first piece alone.
        context.value = cells.Value2 if cells.Areas.Count == 1 else "#VALUE!"


def _cell(value: Any) -> Any:
    if isinstance(value, str) and value in vba.ERRORS:
        return Fault(value)
    if isinstance(value, int) and 0 <= value - ERROR < 2**16:
        return Fault(vba.REFUSED)  # an error of a later Excel, such as #SPILL!
    return value


def _with_faults(formula: Function, given: tuple[Any, ...], rows: list[list[Any]]) -> list[list[Any]]:
    """The answer, with an error that came in where one value is wanted in place of our own."""
    for argument, value in zip(formula.arguments.values(), given, strict=False):
        if isinstance(value, Fault):
            return [[value.text for _ in row] for row in rows]
        if isinstance(value, list) and not argument.term.many and _shape(rows) == _shape(value):
            rows = [
                [cell.text if isinstance(cell, Fault) else shown for shown, cell in zip(*pair, strict=True)]
                for pair in zip(rows, value, strict=True)
            ]
    return rows


def _shape(rows: list[list[Any]]) -> tuple[int, int]:
    return len(rows), len(rows[0])


def _shown(rows: list[list[Any]]) -> list[list[Any]]:
    return [[vba.REFUSED if isinstance(cell, Refused) else cell for cell in row] for row in rows]
