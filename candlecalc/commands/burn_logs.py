"""Logs of burns as files: read as what a function of burning takes, and what was read is said."""

from collections.abc import Mapping, Sequence
from pathlib import Path
from typing import Any

from candlecalc.calc.burn import burn_rate
from candlecalc.commands.counted import counted
from candlecalc.commands.sheets import called, text_of
from candlecalc.declaration.declared import REGISTRY, Function, Term
from candlecalc.faces.asked import burn_log
from candlecalc.faces.asked.question import CallError
from candlecalc.faces.asked.typed import typed

# What a log can give: a log of one test, or the rates of several.
OF_ONE, OF_SEVERAL = ({"hours", "weights"}, {"seen"}), {"rates"}
TEST = "test="


def takes_log(formula: Function) -> bool:
    """Whether a log of burns has something for the function."""
    taken = set(formula.arguments)
    return any(wanted <= taken for wanted in (*OF_ONE, OF_SEVERAL)) and "heights" not in taken


def taking() -> list[str]:
    """The functions that take one."""
    return [name for name, formula in REGISTRY.items() if takes_log(formula) and not formula.instead]


def read(formula: Function, words: Sequence[str], files: Sequence[Path]) -> tuple[list[str], dict[str, Any], list[str]]:
    """The words without the test that is meant, what its log gives, and what was read, in lines."""
    if len(files) > 1:
        raise CallError(f"{formula.name} takes one log of burns; a log may hold several tests")
    rest = [word for word in words if not word.lower().startswith(TEST)]
    named = [word[len(TEST) :].strip() for word in words if word.lower().startswith(TEST)]
    try:
        tests = burn_log.read(text_of(files[0]))
    except ValueError as problem:
        raise ValueError(f"{called(files[0])}: {problem}") from None
    if "rates" in formula.arguments and "weights" not in formula.arguments and not named:
        rates = {name: _rate(called(files[0]), name, log) for name, log in tests.items()}
        return rest, {"rates": list(rates.values())}, [f"{called(files[0])}: {counted(len(rates), 'test')} read", ""]
    name, log = _one(tests, named, formula)
    arguments = formula.arguments
    found = {
        key: _as_typed(arguments[key].term, value) for key, value in burn_log.given(log).items() if key in arguments
    }
    of = f" of {name}" if name else ""
    said = f"{called(files[0])}: {counted(len(log.weights), 'weighing')}{of} read"
    return rest, found, [f"{said}; weights without a unit are in g" if log.bare else said, ""]


def _as_typed(term: Term, value: Any) -> Any:
    """What a log has of a term, read once as what is typed is: in the unit that it is written in."""
    if not term.is_number:
        return value
    return [typed(term, each) if isinstance(each, str) else each for each in value] if term.many else typed(term, value)


def _rate(path: str, name: str, log: burn_log.Burns) -> float:
    try:
        return float(REGISTRY[burn_rate.__name__].call(hours=log.hours, weights=log.weights))
    except ValueError as problem:
        raise ValueError(f"{path}, {name or 'the log'}: {problem}") from None


def _one(tests: Mapping[str, burn_log.Burns], named: Sequence[str], formula: Function) -> tuple[str, burn_log.Burns]:
    """The test that is meant: the one named, or the only one."""
    names = {name.casefold(): name for name in tests}
    if named and named[0].casefold() in names:
        name = names[named[0].casefold()]
        return name, tests[name]
    if named or len(tests) > 1:
        said = f'there is no test "{named[0]}" in it' if named else f"it holds {counted(len(tests), 'test')}"
        raise CallError(f"{said}: give {formula.name} one of them, such as test={next(iter(tests))}")
    return next(iter(tests.items()))
