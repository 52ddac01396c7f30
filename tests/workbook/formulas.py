"""Formulas of a workbook as trees: how deep they are, what they compare, where they point."""

import re
from dataclasses import dataclass
from functools import cache

from openpyxl.formula import Tokenizer
from openpyxl.utils import column_index_from_string

# Loosest first, as spreadsheets bind them.
BINDING = (("=", "<>", "<", ">", "<=", ">="), ("&",), ("+", "-"), ("*", "/"), ("^",))
COMPARISONS = BINDING[0]
YES_OR_NO = {"AND", "OR", "NOT", "ISBLANK", "ISERROR", "ISTEXT"}
CHOOSING = {"IF": 1, "IFERROR": 0, "CHOOSE": 1}  # the first argument that may be the answer
REFERENCE = re.compile(r"(?:('[^']+'|[A-Za-z]+)!)?([A-Z]{1,3}\d+)(?::([A-Z]{1,3}\d+))?")


@dataclass(frozen=True)
class Node:
    """A function with its arguments, an operation with its sides, or an operand with its text."""

    kind: str  # function, operation, operand
    text: str
    parts: tuple["Node", ...] = ()
    of: str = ""  # of an operand: NUMBER, TEXT, RANGE, LOGICAL, ERROR


@cache
def tree(formula: str) -> Node:
    reader = _Reader([item for item in Tokenizer(formula).items if item.type != "WHITE-SPACE"])
    whole = reader.expression()
    assert reader.at == len(reader.items), formula
    return whole


class _Reader:
    def __init__(self, items):
        self.items, self.at = items, 0

    def next(self):
        self.at += 1
        return self.items[self.at - 1]

    def is_next(self, kind, *values):
        item = self.items[self.at] if self.at < len(self.items) else None
        return item is not None and item.type == kind and (not values or item.value in values)

    def expression(self, level=0):
        if level == len(BINDING):
            return self.single()
        left = self.expression(level + 1)
        while self.is_next("OPERATOR-INFIX", *BINDING[level]):
            left = Node("operation", self.next().value, (left, self.expression(level + 1)))
        return left

    def single(self):
        item = self.next()
        if item.type == "OPERATOR-PREFIX":
            found = Node("operation", item.value, (self.single(),))
        elif item.type == "OPERAND":
            found = Node("operand", item.value, of=item.subtype)
        elif item.type == "PAREN":
            found = self.expression()
            assert self.next().subtype == "CLOSE"
        else:
            assert (item.type, item.subtype) == ("FUNC", "OPEN"), item.value
            found = self.function(item)
        if self.is_next("FUNC") and self.items[self.at].value.startswith(":"):
            found = Node("operation", ":", (found, self.function(self.next())))
        while self.is_next("OPERATOR-POSTFIX"):
            found = Node("operation", self.next().value, (found,))
        return found

    def function(self, item):
        """A function; the tokenizer leaves what stands before it of a range, as in A1:INDEX(...), in its name."""
        first, _, name = item.value.rstrip("(").rpartition(":")
        found = Node("function", name, self.arguments())
        return Node("operation", ":", (Node("operand", first, of="RANGE"), found)) if first else found

    def arguments(self):
        found = []
        while not (self.is_next("FUNC") and self.items[self.at].subtype == "CLOSE"):
            found.append(self.expression())
            if self.is_next("SEP"):
                self.next()
        self.next()
        return tuple(found)


def nodes(node):
    """A tree's nodes, the whole first."""
    yield node
    for part in node.parts:
        yield from nodes(part)


def depth(node) -> int:
    """How many functions stand inside one another."""
    return max((depth(part) for part in node.parts), default=0) + (node.kind == "function")


def kinds(node) -> set[str]:
    """What a node may give: NUMBER, TEXT, LOGICAL, or RANGE for what stands in a cell."""
    if node.kind == "operand":
        return {node.of}
    if node.kind == "operation":
        return {"LOGICAL" if node.text in COMPARISONS else "TEXT" if node.text == "&" else "NUMBER"}
    if node.text in CHOOSING:
        return set().union(*(kinds(part) for part in node.parts[CHOOSING[node.text] :]))
    return {"LOGICAL"} if node.text in YES_OR_NO else {"RANGE"} if node.text == "INDEX" else {"NUMBER", "TEXT"}


def anywhere(formula: str, cell: str) -> str:
    """The formula as every cell of its column has it: relative references counted from the cell."""
    row, column = int(re.sub(r"\D", "", cell)), column_index_from_string(re.sub(r"\d", "", cell))

    def moved(found):
        letters, number = re.fullmatch(r"(\$?[A-Z]+)(\$?\d+)", found[0]).groups()
        across = letters if letters[0] == "$" else f"C[{column_index_from_string(letters) - column}]"
        down = number if number[0] == "$" else f"R[{int(number) - row}]"
        return f"{across}{down}"

    # Texts in quotes are left alone.
    parts = re.split(r'("[^"]*")', formula)
    return "".join(part if part[:1] == '"' else re.sub(r"\$?\b[A-Z]{1,3}\$?\d+\b(?!\()", moved, part) for part in parts)


def places(node, cell, names):
    """(tab, last column, last row) of every reference in a formula, with the workbook's names looked up."""
    for each in nodes(node):
        if each.of == "RANGE":
            text = names[each.text].attr_text if each.text in names else each.text
            tab, first, last = REFERENCE.fullmatch(text.replace("$", "")).groups()
            letters, row = re.fullmatch(r"([A-Z]+)(\d+)", last or first).groups()
            yield (tab or cell.parent.title).strip("'"), column_index_from_string(letters), int(row)
