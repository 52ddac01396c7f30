"""What a script editor and a sheet show of a function: its comment, in the form that both read."""

import textwrap
from collections.abc import Iterable

from candlecalc.declaration.declared import Function, Term
from candlecalc.faces.addins import wizard

WIDTH = 116


def comment(formula: Function) -> str:
    """The comment over a declared function."""
    tags = [(f"@param {{{kind(argument.term)}}} {_name(formula, name)}", wizard.help_of(argument))
            for name, argument in formula.arguments.items()]  # fmt: skip
    several = "Array" if formula.fields or formula.result.many else kind(formula.result)
    return block([wizard.about(formula), f"Source: {formula.source}"], tags, f"@return {{{several}}}")


def _name(formula: Function, name: str) -> str:
    return f"[{name}]" if formula.arguments[name].optional else name


def block(paragraphs: Iterable[str], tags: Iterable[tuple[str, str]], gives: str) -> str:
    """A comment of paragraphs, then a tag for each argument."""
    lines = [line for text in paragraphs for line in wrapped(text, "")]
    lines += [line for tag, text in tags for line in wrapped(f"{tag} {text}", "  ")]
    return "\n".join(["/**", *(f" * {line}" for line in [*lines, gives, "@customfunction"]), " */"])


def kind(term: Term) -> str:
    if term.many:
        return "Array"
    if term.unit == "date":
        return "Date"
    return "number" if term.counts else "string"


def wrapped(text: str, indent: str) -> list[str]:
    # Nothing in it may end the comment, nor begin a tag.
    text = text.replace("*/", "* /").replace(" @", " at ")
    return textwrap.wrap(text, WIDTH, subsequent_indent=indent, break_long_words=False, break_on_hyphens=False)
