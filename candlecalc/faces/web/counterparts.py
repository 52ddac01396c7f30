"""What stands in the script for what Python has: names, calls, methods, signs, constants; and why nothing does."""

import ast
import itertools
import json
import math
import re
import statistics as standard
from collections.abc import Mapping, Sequence
from datetime import date, timedelta
from typing import Any

from candlecalc import tables
from candlecalc.quantities import days, rounding, statistics

RESERVED = frozenset(["case", "default", "delete", "do", "function", "new", "switch", "this", "typeof", "var", "void"])
# Functions of Python, and of our own that the script has already, by what stands for a call of them.
CALLS: dict[Any, str] = {
    abs: "Math.abs({0})",
    all: "all_({0})",
    any: "any_({0})",
    bool: "isTrue_({0})",
    dict: "new Map({0})",
    dict.fromkeys: "new Map(items_({0}).map((each) => [each, {1}]))",
    divmod: "divided_({0}, {1})",
    enumerate: "numbered_({0}, {start})",
    float: "Number({0})",
    frozenset: "new Set({0})",
    int: "Math.trunc({0})",
    len: "length_({0})",
    list: "[...items_({0})]",
    range: "range_({*})",
    round: "rounded_({0}, {1})",
    set: "new Set({0})",
    str: "String({0})",
    sum: "total_({0})",
    tuple: "[...items_({0})]",
    zip: "inRows_({*})",
    itertools.product: "combined_({0}, {repeat})",
    math.ceil: "Math.ceil({0})",
    math.copysign: "({1} < 0 ? -Math.abs({0}) : Math.abs({0}))",
    math.exp: "exp_({0})",
    math.floor: "Math.floor({0})",
    math.fsum: "sum_({0})",
    math.log: "ln_({0})",
    math.pow: "power_({0}, {1})",
    math.sqrt: "root_({0})",
    rounding.round_half_away: "round_({0}, {1})",
    standard.stdev: "deviation_({0})",
    statistics.normal_quantile: "normalQuantile_({0})",
    statistics.t_quantile: "tQuantile_(2 * (1 - {0}), {1})",
    timedelta: "{days}",  # days are counted in numbers
}
# Of these, what gives a list.
LISTS = frozenset([enumerate, itertools.product, list, range, sorted, tuple, zip, tables.rows])
USUAL = {"start": "0", "1": "0"}
METHODS = {
    "append": "{self}.push({0})",
    "days": "{self}",
    "endswith": "{self}.endsWith({0})",
    "extend": "{self}.push(...{0})",
    "get": "got_({self}, {*})",
    "items": "[...{self}]",
    "join": "{0}.join({self})",
    "keys": "[...{self}.keys()]",
    "lower": "{self}.toLowerCase()",
    "index": "{self}.indexOf({0})",
    "replace": "{self}.split({0}).join({1})",
    "setdefault": "keptIn_({self}, {0}, {1})",
    "split": "parted_({self}, {*})",
    "startswith": "{self}.startsWith({0})",
    "strip": "{self}.trim()",
    "upper": "{self}.toUpperCase()",
    "values": "[...{self}.values()]",
    "weekday": "(({self} + 5) % 7)",
}
BETWEEN = {ast.Eq: "===", ast.NotEq: "!==", ast.Lt: "<", ast.LtE: "<=", ast.Gt: ">", ast.GtE: ">="}
SIGNS = {ast.Add: "+", ast.Sub: "-", ast.Mult: "*"}
OTHERWISE = "its steps have no counterpart in the script"
# Why something cannot be put over, by the names in its Python.
REASONS = {"Decimal": "it counts in exact decimals", "deque": "it counts in exact decimals"}
REASONS |= dict.fromkeys(["named", "printed_name", "REGISTERED"], "it reads the wording of data sheets")


class UnsayableError(ValueError):
    """What has no counterpart in the script; its words say what the function does, for a maker."""


def literal(value: Any) -> str:
    if isinstance(value, timedelta):
        return json.dumps(value.days)
    if isinstance(value, date):
        return json.dumps(days.serial(value))
    if isinstance(value, float) and math.isinf(value):
        return "Infinity"
    if isinstance(value, (tuple, list)):
        return f"[{', '.join(map(literal, value))}]"
    if isinstance(value, (set, frozenset)):
        return f"new Set([{', '.join(sorted(map(literal, value)))}])"
    if isinstance(value, dict):
        return f"new Map([{', '.join(f'[{literal(key)}, {literal(each)}]' for key, each in value.items())}])"
    if value is None or isinstance(value, (bool, int, float, str)):
        return json.dumps(value, ensure_ascii=False)
    raise UnsayableError(OTHERWISE)


def safe(name: str) -> str:
    return f"{name}_" if name in RESERVED else name


def noted(known: dict[str, Any], what: Any, name: str, numbered: str) -> str:
    """The name of something among what is known, where it is put; with a number where another has that name."""
    count, free = 1, name
    while known.setdefault(free, what) != what:
        count += 1
        free = numbered.format(name, count)
    return free


def filled(form: str, given: Sequence[str], named: Mapping[str, str]) -> str:
    """A counterpart with what was given in its places."""
    known = {**USUAL, **{str(place): text for place, text in enumerate(given)}, **named, "*": ", ".join(given)}
    return re.sub(r"\{([a-z0-9*]+)\}", lambda place: known[place.group(1)], form)


def reason(node: ast.AST) -> str:
    words = {each.id for each in ast.walk(node) if isinstance(each, ast.Name)}
    return next((REASONS[word] for word in sorted(words) if word in REASONS), OTHERWISE)


def hashable(value: Any) -> bool:
    return value is not None and value.__class__.__hash__ is not None
