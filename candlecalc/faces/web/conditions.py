"""What functions ask of their arguments together, as JavaScript."""

import json

import candlecalc.declaration.native as language
from candlecalc.declaration.declared import Function, asked
from candlecalc.faces.web.counterparts import noted, safe
from candlecalc.faces.web.spelling import spelled


class Conditions:
    """Conditions of some functions, each under its own text: what holds, the words where it does not, and of what."""

    def __init__(self) -> None:
        self.known: dict[str, str] = {}

    def name(self, formula: Function, condition: str) -> str:
        tree = asked(condition)
        names = language.names(tree)
        told = ", ".join(map(json.dumps, [formula.requires[condition], *names]))
        text = f"[({', '.join(map(safe, names))}) => {spelled(formula, tree)}, {told}]"
        return noted(self.known, text, condition, "{} ({})")
