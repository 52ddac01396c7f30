"""The functions as a terminal shows them: those found, all by subject, one in full."""

import re
import textwrap
from collections.abc import Iterable, Iterator
from itertools import groupby

from candlecalc.declaration import native
from candlecalc.declaration.declared import Function
from candlecalc.faces.asked.finding import find, search
from candlecalc.faces.described.reference import asked, default_words, every, span, title, told

WIDTH = 79  # a full line of 80 wraps in some terminals
NAME_WIDTH = 12  # a longer name stands on a line of its own


def found(words: str) -> list[str]:
    """The functions that best answer to a maker's words, best first."""
    return _table(find(words)[:8])


def nearest(words: str) -> str:
    """Where to go on from words that nothing answers to: the functions that are nearest, or the list of all."""
    near = "; ".join(f"{formula.name} ({formula.summary.rstrip('.')})" for formula in search(words).nearest)
    return f"nearest: {near}" if near else "candlecalc functions lists them all by subject"


def listing(whole: bool = False) -> list[str]:
    """The functions by subject, with what each is for; the parts that tabs need as well, if the whole is wanted."""
    lines: list[str] = []
    for _, formulas in groupby(every() if whole else asked(), key=lambda formula: formula.subject):
        group = list(formulas)
        lines += [*textwrap.wrap(title(group[0]), WIDTH), *_table(group), ""]
    lines.append("More on one of them: candlecalc functions NAME")
    return (
        lines if whole else [*lines, f"{len(every()) - len(asked())} more, which tabs need: candlecalc functions --all"]
    )


def page(formula: Function) -> list[str]:
    """All there is to know about one function."""
    purpose, example = told(formula)
    lines = [formula.name, "", *_of_earlier(formula)]
    for paragraph in purpose.split("\n\n"):
        lines += [*textwrap.wrap(paragraph, WIDTH, break_on_hyphens=False), ""]
    for argument in formula.arguments.values():
        lines += _entry(argument.name, span(argument.term) + default_words(argument), argument.term.help)
    lines += ["", *_entry("result", formula.gives, formula.result.help)]
    lines += [line for name, term in formula.fields.items() for line in _entry(name, span(term), term.help)] + [""]
    form = _broken(native.spell(formula.native)) if formula.native else _wrapped(formula.no_native)
    lines += _heading("formula", form)
    for words in formula.requires.values():
        lines += _heading("refused", _wrapped(words))
    for words in formula.notes.values():
        lines += _heading("note", _wrapped(words))
    lines += _heading("source", _wrapped(formula.source))
    return [*lines, "", *(f"    {part}" for line in example for part in _wrapped_example(line))]


def _of_earlier(formula: Function) -> list[str]:
    return [f"An earlier name; now: {formula.instead}", ""] if formula.instead else []


def _table(formulas: list[Function]) -> list[str]:
    column = max((len(formula.name) for formula in formulas), default=0)
    lines: list[str] = []
    for formula in formulas:
        first, *rest = textwrap.wrap(formula.summary, WIDTH - column - 4) or [""]
        lines += [f"  {formula.name:{column}}  {first}".rstrip(), *(" " * (column + 4) + line for line in rest)]
    return lines


def _entry(name: str, span: str, help_text: str) -> list[str]:
    return _heading(name, [*_wrapped(help_text), *_wrapped(span)])


def _heading(name: str, lines: Iterable[str]) -> list[str]:
    rows = [""] * (len(name) > NAME_WIDTH) + list(lines) or [""]
    return [f"  {name if not row else '':{NAME_WIDTH}} {text}".rstrip() for row, text in enumerate(rows)]


def _wrapped(text: str) -> list[str]:
    return textwrap.wrap(text, WIDTH - 15)


def _wrapped_example(line: str) -> list[str]:
    return textwrap.wrap(line, WIDTH - 4, subsequent_indent="... ", break_on_hyphens=False)


def _broken(form: str) -> Iterator[str]:
    """A cell formula broken after its signs, as it has no spaces to break at."""
    line = ""
    for piece in re.findall(r'"[^"]*"|[^-+*/,"]+[-+*/,]?|[-+*/,]', form):
        if line and len(line + piece) > WIDTH - 15:
            yield line
            line = ""
        line += piece
    yield line
