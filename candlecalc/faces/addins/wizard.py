"""What a spreadsheet's function wizard shows of a function: its name, what it is for, help for each argument."""

from candlecalc.declaration.declared import HELP_LENGTH, REGISTRY, Argument, Function
from candlecalc.faces.described import reference

PREFIX = "CANDLE_"
CATEGORY = "Candles"
# A program sorts its wizard by letters, so parts and earlier names have lists of their own behind it.
PARTS, EARLIER = f"{CATEGORY}, parts", f"{CATEGORY}, earlier names"
WHY = PREFIX + "WHY"
CONVERT = PREFIX + "CONVERT"
WHY_ABOUT = "Why a candle function has no answer, in words: its name, then the arguments that it was given."


def name(formula: Function) -> str:
    """The function's name in a cell."""
    return PREFIX + formula.name.upper()


def category(formula: Function) -> str:
    """The list of the wizard that the function stands in."""
    return EARLIER if formula.instead else PARTS if formula.part else CATEGORY


def purpose(formula: Function) -> str:
    """What the function is for; of an earlier one, first which it is now."""
    now = f"Earlier; now {PREFIX}{formula.instead.upper()}. " if formula.instead else ""
    return now + formula.summary


def about(formula: Function) -> str:
    """What the function is for and what it gives, in which unit; a long purpose gives way to these."""
    gives = f" Gives {formula.gives}."
    if reference.unit_of_answer(formula):
        gives += f" Answer in {reference.unit_of_answer(formula)}; {CONVERT} puts it in another unit."
    return _fitted(purpose(formula), HELP_LENGTH - len(_fitted(gives))) + _fitted(gives)


def help_of(argument: Argument) -> str:
    """What an argument is, in which unit and range, and what stands for it where it is left out."""
    return _fitted(f"{argument.term.help}: {reference.span(argument.term)}{reference.default_words(argument)}")


def why_arguments() -> dict[str, str]:
    """The arguments of CANDLE_WHY with their help: a name, then as many as the longest function takes."""
    most = max(len(formula.arguments) for formula in REGISTRY.values())
    values = {f"value{place}": f"argument {place} as the function was given it" for place in range(1, most + 1)}
    return {"name": 'the function, such as "oil_for_wax"', **values}


def _fitted(text: str, length: int = HELP_LENGTH) -> str:
    return text if len(text) <= length else text[: length - 3].rpartition(" ")[0] + "..."
