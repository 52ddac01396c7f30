"""What is asked where the call leaves it open, in the maker's words: what to do, with what, and each value."""

import shlex
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING, Any

import click

if TYPE_CHECKING:
    from candlecalc.declaration.declared import Argument, Function

# The commands that are offered where none is named.
MENU = {
    "new": "Make a workbook",
    "check": "Check a workbook",
    "show": "Show costs, prices or a batch of a workbook",
    "ask": "Ask a question",
}
SHOWN = {"costs": "What each candle costs", "prices": "Prices and what is left of them", "batch": "What a batch takes"}
REGIONS = {"us": "the US", "gb": "Great Britain", "eu": "the euro area"}
FROM_LAST = "From last season's workbook, or from a folder of CSV files"

MOST_OFFERED = 8  # functions found

TakesFile = Callable[[Path], None]  # raises click.UsageError where a new file cannot be made


def words(can_be_made: TakesFile) -> list[str]:
    """The words of a call, asked for one after another."""
    click.echo("What do you want to do?")
    name = list(MENU)[choice(list(MENU.values()))]
    if name == "new":
        return [name, *_what_to_make(), str(_new_name(can_be_made))]
    if name == "ask":
        return [name]
    return [name, str(_there("Which workbook?")), *(_what_to_show() if name == "show" else [])]


def _what_to_show() -> list[str]:
    click.echo("What of it?")
    return [list(SHOWN)[choice(list(SHOWN.values()))]]


def _what_to_make() -> list[str]:
    blank = {region: f"A blank one for {called}: {_measures(region)}" for region, called in REGIONS.items()}
    click.echo("What should be in it?")
    chosen = choice(["A demo: an invented maker's season, to look around in", *blank.values(), FROM_LAST])
    if chosen == 0:
        return ["--demo"]
    if chosen <= len(blank):
        return ["--region", list(blank)[chosen - 1]]
    return ["--from", str(_there("Which workbook or folder?"))]


def _measures(region: str) -> str:
    from candlecalc.season.presets import REGIONS as PRESETS

    preset = PRESETS[region]
    return (
        f"{preset['currency']}, {preset['weight_unit']}, °{preset['temperature_unit']}, {preset['length_unit']}, "
        f"{preset['paper']} paper"
    )


def _there(question: str) -> Path:
    asked: Path = click.prompt(question, type=click.Path(exists=True, path_type=Path), prompt_suffix=" ")
    return asked


def _new_name(can_be_made: TakesFile) -> Path:
    def named(text: str) -> Path:
        path = Path(text)
        path = path if path.suffix else path.with_name(path.name + ".xlsx")
        can_be_made(path)
        return path

    asked: Path = click.prompt("Name of the new file, such as spring.xlsx", value_proc=named)
    return asked


def choice(choices: list[str]) -> int:
    for number, each in enumerate(choices, start=1):
        click.echo(click.wrap_text(each, 79, initial_indent=f"  {number}  ", subsequent_indent=" " * 5))
    chosen: int = click.prompt("Number", type=click.IntRange(1, len(choices)))
    return chosen - 1


def answered() -> list[str]:
    """The answer of a function that is found, and whose values are asked for, one after another."""
    from candlecalc.commands.asking import answer

    formula = _function()
    given = {argument.name: value_for(formula, argument) for argument in formula.arguments.values()}
    given = {name: value for name, value in given.items() if value is not None}
    return [*answer(formula, given), "", f"The same in one line: {_in_one_line(formula, given)}"]


def _function() -> "Function":
    """The function that a question is for, asked until one is chosen: by a few words, or by its subject."""
    while True:
        words = click.prompt('What about? A few words such as "oil for wax", or Enter for a list of subjects', "",
                             show_default=False)  # fmt: skip
        offered = _found(words) if words.strip() else _of_a_subject()
        names = [f"{formula.name}: {formula.summary}" for formula in offered]
        chosen = choice([*names, "None of these"]) if offered else 0
        if chosen < len(offered):
            return offered[chosen]


def _found(words: str) -> "list[Function]":
    from candlecalc.faces.asked.finding import search

    answers, nearest = search(words)
    if not answers:
        click.echo("No function answers to that" + ("; nearest are:" if nearest else ": try other words."))
    return (answers or nearest)[:MOST_OFFERED]


def _of_a_subject() -> "list[Function]":
    from candlecalc.faces.described.reference import asked, title

    subjects = list(dict.fromkeys(formula.subject for formula in asked()))
    titles = {formula.subject: title(formula) for formula in asked()}
    chosen = subjects[choice([titles[subject] for subject in subjects])]
    return [formula for formula in asked() if formula.subject == chosen]


def value_for(formula: "Function", argument: "Argument") -> Any:
    """A value, asked for until it is one that the argument takes; None for one that is left out."""
    from candlecalc.commands.asking import checked
    from candlecalc.faces.asked.question import prompt_for
    from candlecalc.faces.described.reference import default_of, such_as

    left_out = default_of(argument)
    shown = such_as(formula, argument)
    question = prompt_for(argument) + (f', such as "{shown}"' if shown else "")

    def read(text: str) -> Any:
        if argument.optional and text == left_out:
            return None
        try:
            return checked(argument, text)
        except ValueError as problem:
            raise click.BadParameter(str(problem)) from None

    return click.prompt(question, default=left_out, value_proc=read)


def _in_one_line(formula: "Function", given: dict[str, Any]) -> str:
    """The call that asks the same, quoted for the shell it is typed in."""
    words = [f"{name}={'; '.join(value) if isinstance(value, list) else value}" for name, value in given.items()]
    call = ["candlecalc", "ask", formula.name, *words]
    return subprocess.list2cmdline(call) if sys.platform == "win32" else shlex.join(call)
