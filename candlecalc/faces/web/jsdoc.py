"""What a script editor and a sheet show of a function: its comment, in the form that both read."""

import textwrap
from collections.abc import Iterable

from candlecalc.declaration.declared import Argument, Function, Term
from candlecalc.faces.addins import wizard
from candlecalc.faces.web.counterparts import safe

WIDTH = 116


def comment(formula: Function, source: int) -> str:
    """The comment over a declared function, with the number of its source in the list of sources."""
    paragraphs = [f"{formula.summary} Gives {formula.gives}. Source {source}"]
    return block(paragraphs, [(f"@param {_tag(each)}", wizard.help_of(each)) for each in formula.arguments.values()])


def _tag(argument: Argument) -> str:
    name = f"[{safe(argument.name)}]" if argument.optional else safe(argument.name)
    return f"{{{kind(argument.term)}}} {name}" if kind(argument.term) else name


def block(paragraphs: Iterable[str], tags: Iterable[tuple[str, str]]) -> str:
    """A comment of paragraphs, then a tag for each argument."""
    lines = [line for text in paragraphs for line in wrapped(text, "")]
    lines += [line for tag, text in tags for line in wrapped(f"{tag} {text}".strip(), "  ")]
    return "\n".join(["/**", *(f" * {line}" for line in [*lines, "@customfunction"]), " */"])


def kind(term: Term) -> str:
    """What is given, where it is no number."""
    if term.many:
        return "Array"
    if term.unit == "date":
        return "Date"
    return "" if term.is_number else "string"


def wrapped(text: str, indent: str) -> list[str]:
    # Nothing in it may end the comment, nor begin a tag.
    text = text.replace("*/", "* /").replace(" @", " at ")
    return textwrap.wrap(text, WIDTH, subsequent_indent=indent, break_long_words=False, break_on_hyphens=False)
