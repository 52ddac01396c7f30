"""The page of all functions, made from their declarations."""

from collections.abc import Iterator
from itertools import groupby

from candlecalc.declaration import native
from candlecalc.declaration.declared import Function
from candlecalc.faces.described import reference

# Where a function can be used, in the maker's words; the first two need a native form.
IN_CELLS = ["as a formula to paste", "as a named LAMBDA"]
EVERYWHERE = ["in Python", "at the terminal", "in LibreOffice Calc (add-in)", "in Excel for Windows (add-in)"]
INTRODUCTION = (
    "Numbers are in the unit stated. In Python, at the terminal and in the add-ins text with a unit is taken as well "
    '("12 oz", "2 7/8 in", "180 F", "8%", "$4.50", "2 weeks"); in pasted formulas and named LAMBDAs it is not. What is '
    "out of range is an error, #N/A in a cell."
    ' An answer is in the unit beside **gives**, whatever unit was typed: CANDLE_CONVERT(answer, "g", "oz") puts it in '
    "another in a cell, and to=oz at the terminal."
)


def faces_of(formula: Function) -> list[str]:
    """Where a function works, and why not elsewhere."""
    if formula.native:
        return [f"works {', '.join(EVERYWHERE + IN_CELLS)}"]
    return [f"works {', '.join(EVERYWHERE)}", f"not {' or '.join(IN_CELLS)}: {formula.no_native}"]


def page() -> str:
    """Every function by subject, in Markdown."""
    subjects = [(reference.title(group[0]), group) for group in _groups()]
    lines = ["# The functions", "", INTRODUCTION, ""]
    lines += [
        f"- {title.rstrip('.')}: {', '.join(f'[{one.name}](#{one.name})' for one in group)}"
        for title, group in subjects
    ]
    for title, group in subjects:
        lines += ["", f"## {title.rstrip('.')}", ""]
        for formula in group:
            lines += _entry(formula)
    return "\n".join(lines).rstrip() + "\n"


def _groups() -> Iterator[list[Function]]:
    for _, group in groupby(reference.every(), key=lambda formula: formula.subject):
        yield list(group)


def _entry(formula: Function) -> Iterator[str]:
    purpose, example = reference.told(formula)
    yield from [f"### {formula.name}", "", purpose, ""]
    yield from ["| | unit and range | |", "|---|---|---|"]
    for argument in formula.arguments.values():
        yield _row(argument.name, reference.span(argument.term) + reference.default_words(argument), argument.term.help)
    yield _row("**gives**", formula.gives, formula.result.help)
    for name, term in formula.fields.items():
        yield _row(f"**{name}**", reference.span(term), term.help)
    yield ""
    if formula.part:
        yield "- a part: tabs and other functions need it"
    for words in formula.requires.values():
        yield f"- refused with the words: {words}"
    for words in formula.notes.values():
        yield f"- note: {words}"
    if formula.native:
        yield f"- cell formula: `={native.spell(formula.native)}`"
    for words in faces_of(formula):
        yield f"- {words}"
    yield from [f"- source: {formula.source}", "", "```python", *example, "```", ""]


def _row(name: str, span: str, help_text: str) -> str:
    return f"| {name} | {span} | {help_text} |".replace("\n", " ")
