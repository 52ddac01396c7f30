"""What the declarations say of the functions: in which order, what for, by which example, which ranges and defaults."""

import ast
import sys
import textwrap
from typing import Any

import candlecalc.calc  # noqa: F401  fills the registry
from candlecalc.declaration.declared import REGISTRY, Argument, Function, Term
from candlecalc.quantities import units

# The order in which a maker meets the subjects; any other comes after.
SUBJECTS = (
    ["vessel", "fragrance", "wax", "heat", "cooling", "burn", "burn_time", "pool", "wick"]
    + [
        "burn_signs",
        "batch",
        "cost",
        "price",
        "selling",
        "plan",
        "one_season",
        "curing",
        "schedule",
        "requirements",
        "stock",
        "stocktake",
    ]
    + ["label", "measure", "hazard", "hazard_label", "money", "books", "conversion"]
)


def callable_names() -> list[Function]:
    """Every function that answers in a sheet, in the order of their subjects: those of earlier names as well."""
    return sorted(REGISTRY.values(), key=lambda formula: _place(formula.subject))


def every() -> list[Function]:
    """Every function under the name that it has now; in a subject those that a maker asks stand first."""
    today = [formula for formula in REGISTRY.values() if not formula.instead]
    return sorted(today, key=lambda formula: (_place(formula.subject), formula.part))


def asked() -> list[Function]:
    """The functions that a maker asks, without the parts that tabs and other functions need."""
    return [formula for formula in every() if not formula.part]


def _place(subject: str) -> tuple[int, str]:
    return (SUBJECTS.index(subject) if subject in SUBJECTS else len(SUBJECTS), subject)


def told(formula: Function) -> tuple[str, list[str]]:
    """What the docstring tells, and the example at its end."""
    purpose, _, example = (formula.bare.__doc__ or "").partition("\n    >>> ")
    lines = textwrap.dedent("    >>> " + example).strip().splitlines() if example else []
    summary, _, rest = purpose.partition("\n")
    return f"{summary.strip()}\n{textwrap.dedent(rest)}".strip(), lines


def example(formula: Function) -> dict[str, Any]:
    """The arguments of the example, by name; it may go over several lines."""
    first, *more = told(formula)[1]
    lines = [first.removeprefix(">>> "), *(line.removeprefix("... ") for line in more if line.startswith("... "))]
    calls = [node for node in ast.walk(ast.parse("\n".join(lines))) if isinstance(node, ast.Call)]
    call = next(node for node in calls if ast.unparse(node.func) == formula.bare.__name__)
    return {str(keyword.arg): ast.literal_eval(keyword.value) for keyword in call.keywords}


def such_as(formula: Function, argument: Argument) -> str:
    """The value of the function's example as it may be typed: "500 g", "8%", "4; 8"; "" where it has none."""
    value = example(formula).get(argument.name)
    if value is None:
        return ""
    several = value if isinstance(value, list) else [value]
    return "; ".join(_typed(argument.term, each) for each in several)


def _typed(term: Term, value: Any) -> str:
    if value is None:
        return ""
    if not term.is_number or isinstance(value, str):
        return str(value)
    if term.unit.startswith("of "):
        return f"{value * 100:.6g}%"
    # A difference in temperature is typed in degrees.
    unit = term.unit.removesuffix(" difference") if term.unit in units.DIMENSIONS else ""
    return f"{value:.6g} {unit}".rstrip()


def title(formula: Function) -> str:
    return (sys.modules[formula.bare.__module__].__doc__ or formula.subject).partition("\n")[0]


def unit_of_answer(formula: Function) -> str:
    """The unit that an answer's number is in, where it could be another of its kind; nothing elsewhere."""
    term = formula.result
    return term.unit if term.is_number and term.unit in units.DIMENSIONS and not formula.fields else ""


def span(term: Term) -> str:
    return f"list, each {term.range}" if term.many else term.range


def default_of(argument: Argument) -> str | None:
    """What stands for an argument left out, as text."""
    if not argument.optional:
        return None
    if argument.default is None:
        return "blank"
    return argument.default if isinstance(argument.default, str) else f"{argument.default:g}"


def default_words(argument: Argument) -> str:
    return f"; {default_of(argument)} if left out" if argument.optional else ""
