"""The declaration: one function, written once, from which every face is derived.

`@formula` takes a plain function whose arguments and result are annotated with terms. It keeps a
`Function` in the registry and gives back the same function with its ranges checked.
"""

import inspect
import re
from dataclasses import dataclass, field, replace
from functools import cache
from importlib import import_module
from typing import (
    Any,
    Callable,
    Dict,
    List,
    Mapping,
    Optional,
    Sequence,
    Tuple,
    TypeVar,
    Union,
    get_args,
    get_origin,
    get_type_hints,
)

import candlecalc.declaration.native as language
from candlecalc.declaration.term import LARGEST, NUMBERS, Argument, Term, is_column, shown

# What a declaration is written and read with; a quantity and its range stand in `candlecalc.declaration.term`.
__all__ = ["CELL_LIKE", "HELP_LENGTH", "LARGEST", "REGISTRY", "Argument", "Function", "Term", "find", "formula"]

HELP_LENGTH = 255  # Excel's function wizard cuts longer help
# Names that a spreadsheet takes for a cell: oil1, r, c.
CELL_LIKE = re.compile(r"[a-z]{1,3}[0-9]+|r|c|r[0-9]+c[0-9]+")

Bare = TypeVar("Bare", bound=Callable[..., Any])


@dataclass(frozen=True, repr=False)
class Function:
    """A declared function: everything that help, workbooks, faces and tests are derived from."""

    name: str
    subject: str
    bare: Callable[..., Any]
    arguments: Dict[str, Argument]
    result: Term
    source: str
    native: Optional[language.Node]
    no_native: str = ""  # why no cell formula says it
    fields: Dict[str, Term] = field(default_factory=dict)  # of a result that is a row, or rows, of several values
    requires: Dict[str, str] = field(default_factory=dict)
    notes: Dict[str, str] = field(default_factory=dict)
    summary: str = ""
    part: bool = False  # what tabs and other functions need, rather than what a maker asks
    words: str = ""  # what people call it, for the search alone
    instead: str = ""  # of an earlier name: the function that stands in its place
    checked: Callable[..., Any] = repr

    def call(self, *given: object, **named: object) -> Any:
        """Read every argument, check them one by one and together, and return the checked result.

        All that is wrong is said in one ValueError. A column in place of a single value gives a column.
        """
        bound = inspect.signature(self.checked).bind(*given, **named)
        if any(is_column(value) and not self.arguments[name].term.many for name, value in bound.arguments.items()):
            # By name: it brings NumPy, which neither the start nor what add-ins take along may need.
            return import_module("..arrays", __package__).call(self, bound.arguments)
        return self.answer(self.read(bound.arguments))

    def read(self, given: Mapping[str, object]) -> Dict[str, Any]:
        """Every argument by its name, read, and checked one by one and together."""
        values: Dict[str, Any] = {}
        problems: List[str] = []
        for argument in self.arguments.values():
            try:
                values[argument.name] = argument.read(given.get(argument.name, argument.default))
            except ValueError as problem:
                problems.append(str(problem))
        if not problems:
            problems = self._together(values)
        if problems:
            raise ValueError(f"{self.name}: {_sentence(problems)}")
        return values

    def answer(self, values: Dict[str, Any]) -> Any:
        """The checked result for values that have been read."""
        result = self._answer(values)
        if self.result.many:
            return [self._kept(row, values) for row in result]
        return self._kept(result, values)

    def _answer(self, values: Dict[str, Any]) -> Any:
        """What the bare function gives; where it has no answer, a ValueError in this function's own name."""
        try:
            return self.bare(**values)
        except ArithmeticError:
            told = ""
        except ValueError as problem:
            name, _, told = str(problem).partition(": ")
            # A function that is called inside refuses in its own name, and a root in none.
            told = told if name in REGISTRY else ""
        raise ValueError(f"{self.name}: {told or f'these values have no answer ({_listed(values)})'}")

    def _kept(self, row: Any, values: Dict[str, Any]) -> Any:
        """A result, or a row of one, in its range: what lies past an end of it by a rounding crumb is the end.

        Every number is a float, however an argument was written.
        """
        for name, term, value in self._values(row):
            kept = value
            if not term.gives(value):
                kept = term.end_at(value) if term.is_number and value is not None else None
                if kept is None:
                    raise ValueError(
                        f"{self.name}: {name} would be {shown(value)}; it must be {term.range} ({_listed(values)})"
                    )
            if kept.__class__ is int:
                kept = float(kept)
            if kept is not value:
                row = row._replace(**{name: kept}) if self.fields else kept
        return row

    def checked_or(self, otherwise: Callable[..., Any]) -> Callable[..., Any]:
        """The bare function behind the quickest check; what does not pass it goes to `otherwise`.

        With `call`, which decides and refuses with every reason, that is the checked function.
        """
        return _guarded(self, [language.parse(condition) for condition in self.requires], otherwise)

    def noted(self, values: Mapping[str, Any]) -> List[str]:
        """What to know beside the answer for values that have been read."""
        return [words for condition, words in self.notes.items() if not condition or _condition(condition)[1](values)]

    def __repr__(self) -> str:
        return f"<{self.name}({', '.join(self.arguments)}): {self.summary}>"

    @property
    def gives(self) -> str:
        """What comes out, in words: its range, or the fields of its row."""
        many = "list, each " if self.result.many else ""
        return many + (f"a row of {', '.join(self.fields)}" if self.fields else self.result.range)

    def rows(self, result: Any) -> List[List[Any]]:
        """A result as rows of values: one value, a list down a column, or a row of fields each."""
        rows = result if self.result.many else [result]
        return [list(row) if self.fields else [row] for row in rows]

    def _values(self, row: Any) -> List[Tuple[str, Term, Any]]:
        if not self.fields:
            return [("the result", self.result, row)]
        return [(name, term, getattr(row, name)) for name, term in self.fields.items()]

    def _together(self, values: Dict[str, Any]) -> List[str]:
        lists = {name: value for name, value in values.items() if self.arguments[name].term.many}
        longest = max(map(len, lists.values()), default=0)
        for name, value in lists.items():
            # Blanks at the end were passed over; where a blank is a value they come back.
            if self.arguments[name].term.blank:
                value += [None] * (longest - len(value))
        lengths = {name: len(value) for name, value in lists.items()}
        if len(set(lengths.values())) > 1:
            return ["lists of one length are wanted: " + ", ".join(f"{name} has {n}" for name, n in lengths.items())]
        unmet = []
        for condition, words in self.requires.items():
            names, holds = _condition(condition)
            if not holds(values):
                unmet.append(f"{words} ({_listed({name: values[name] for name in names})})")
        return unmet


def asked(condition: str) -> language.Node:
    """A condition as it is asked: where sums are compared, a rounding crumb between them is nothing.

    0.7 and 0.1 are no less than 0.8, though a machine adds them up to a hair less.
    """
    tree = language.parse(condition)
    sums = isinstance(tree, language.Operation) and tree.sign in (">=", "<=") and any(map(_adds, language.walk(tree)))
    if not sums or not isinstance(tree, language.Operation) or isinstance(tree.left, language.Call):
        return tree
    difference = language.Call("ROUND", (language.Operation("-", tree.left, tree.right), language.Leaf("9")))
    return language.Operation(tree.sign, difference, language.Leaf("0"))


def _adds(part: language.Node) -> bool:
    return isinstance(part, language.Operation) and part.sign in "+-"


@cache
def _condition(text: str) -> Tuple[List[str], Callable[[Mapping[str, object]], object]]:
    """A condition's names, and the condition itself: read once, asked at many calls."""
    tree = asked(text)
    return language.names(tree), language.compile_python(tree)


REGISTRY: Dict[str, Function] = {}


def formula(
    *,
    source: str,
    native: Optional[str] = None,
    no_native: str = "",
    requires: Optional[Dict[str, str]] = None,
    notes: Optional[Dict[str, str]] = None,
    part: bool = False,
    words: str = "",
    formerly: Sequence[str] = (),
    instead: str = "",
) -> Callable[[Bare], Bare]:
    """Declare a function of the trade.

    Parameters
    ----------
    source : where the formula comes from, or "common practice, no source"
    native : the same in the native language (`candlecalc.declaration.native`), where a spreadsheet can say it
    no_native : why it cannot, where the answer is one value all the same
    requires : what arguments ask of each other, a condition in the native language with its words
    notes : what to know beside an answer, by the condition on which it is told; "" for always
    part : whether tabs and other functions need it rather than a maker; lists begin with the others
    words : what people call it where the declaration says it otherwise, parted by commas: shown nowhere, searched
    formerly : earlier names of this very function; like every earlier name they go on answering and are not listed
    instead : the function to use now, where this whole declaration is kept for those who have its name in a sheet
    """

    def declare(bare: Bare) -> Bare:
        built = _build(bare, source, native, no_native, requires or {}, notes or {})
        declared = _registered(replace(built, part=part, words=words, instead=instead))
        for name in formerly:
            _registered(replace(declared, name=name, instead=declared.name))
        return declared.checked  # type: ignore[return-value]

    return declare


def find(function: Union[str, Callable[..., Any]]) -> Function:
    """The declaration of a function, by the function or its name; a KeyError where there is none."""
    return REGISTRY[function if isinstance(function, str) else function.__name__]


def _build(
    bare: Callable[..., Any],
    source: str,
    native: Optional[str],
    no_native: str,
    requires: Dict[str, str],
    notes: Dict[str, str],
) -> Function:
    hints = get_type_hints(bare, include_extras=True)
    signature = inspect.signature(bare)
    arguments = {
        name: Argument(name, _term(bare, name, hints), parameter.default)
        for name, parameter in signature.parameters.items()
    }
    result, fields = _result(bare, hints)
    if not native and (result.many or fields):
        no_native = no_native or "its answer is several cells"
    tree = language.parse(native) if native else None
    conditions = [language.parse(condition) for condition in [*requires, *filter(None, notes)]]
    _check_declaration(bare, arguments, ([tree] if tree else []) + conditions)
    return Function(
        name=bare.__name__,
        subject=bare.__module__.rpartition(".")[2],
        bare=bare,
        arguments=arguments,
        result=result,
        source=source,
        native=tree,
        no_native=no_native,
        fields=fields,
        requires=requires,
        notes=notes,
        summary=(inspect.getdoc(bare) or "").partition("\n")[0],
    )


def _registered(function: Function) -> Function:
    """The function under its name in the registry, with its checked form."""
    if function.name in REGISTRY:
        raise TypeError(f"{function.name} is declared twice")
    bare = function.bare
    signature = inspect.signature(bare)
    checked = function.checked_or(function.call)
    checked.__name__ = checked.__qualname__ = function.name
    checked.__module__ = bare.__module__
    checked.__doc__ = _documented(function)
    checked.__wrapped__ = bare  # type: ignore[attr-defined]
    checked.__signature__ = signature.replace(  # type: ignore[attr-defined]
        parameters=[p.replace(annotation=inspect.Parameter.empty) for p in signature.parameters.values()],
        return_annotation=inspect.Signature.empty,
    )
    object.__setattr__(function, "checked", checked)
    REGISTRY[function.name] = function
    return function


def _term(bare: Callable[..., Any], name: str, hints: Mapping[str, Any]) -> Term:
    hint = hints.get(name)
    # Before Python 3.11 a default of None wraps the annotation in Optional.
    parts = [part for each in (hint, *get_args(hint)) for part in getattr(each, "__metadata__", ())]
    terms = [part for part in parts if isinstance(part, Term)]
    if not terms:
        raise TypeError(f"{bare.__name__}: {name} is not annotated with a term")
    # Words beside a term are the help of this argument alone.
    own = [part for part in parts if isinstance(part, str)]
    return replace(terms[0], help=own[-1]) if own else terms[0]


def _result(bare: Callable[..., Any], hints: Mapping[str, Any]) -> Tuple[Term, Dict[str, Term]]:
    """The term of a result; of a NamedTuple, or a list of them, the terms of its fields as well."""
    hint = hints.get("return")
    many = get_origin(hint) is list
    row: Any = get_args(hint)[0] if many else hint
    if not hasattr(row, "_fields"):
        return _term(bare, "return", hints), {}
    inside = get_type_hints(row, include_extras=True)
    fields = {name: _term(bare, name, inside) for name in row._fields}
    return Term("", (inspect.getdoc(row) or "").partition("\n")[0], text=True, many=many), fields


def _check_declaration(bare: Callable[..., Any], arguments: Dict[str, Argument], trees: List[language.Node]) -> None:
    for name, argument in arguments.items():
        if CELL_LIKE.fullmatch(name):
            raise TypeError(f"{bare.__name__}: {name} reads like a cell; name it otherwise")
        if argument.optional:
            argument.read(argument.default)
        if len(argument.term.help) > HELP_LENGTH:
            raise TypeError(f"{bare.__name__}: the help of {name} is over {HELP_LENGTH} characters")
    for tree in trees:
        strange = set(language.names(tree)) - set(arguments)
        if strange:
            raise TypeError(f"{bare.__name__}: the native form names {', '.join(sorted(strange))}")


def _guarded(function: Function, conditions: List[language.Node], otherwise: Callable[..., Any]) -> Callable[..., Any]:
    """The function with its ranges in its own body: the quickest check, under its true signature.

    A number of another class (numpy's, a Decimal), a text, or anything out of range goes to
    `otherwise`.
    """
    names = list(function.arguments)
    plain = function.result.is_number or function.result.choices
    if not plain or function.result.many or function.result.blank or not all(map(_quick, function.arguments.values())):
        test, inside = "False", "True"
    else:
        test = " and ".join(_inline(a.name, a.term, f"_{a.name}") for a in function.arguments.values())
        test = " and ".join([test] + [f"({language.python(tree)})" for tree in conditions])
        inside = "True" if function.result.choices else _limits("_result", function.result)
    # A float, though every argument was a whole number.
    result = "_result" if function.result.choices else "_result if _result.__class__ is _float else _float(_result)"
    given = ", ".join(
        f"{name}=_default_{name}" if argument.optional else name for name, argument in function.arguments.items()
    )
    source = f"""
def {function.name}({given}):
    if {test}:
        try:
            _result = _bare({", ".join(names)})
        except (ArithmeticError, ValueError):
            pass
        else:
            if {inside}:
                return {result}
    return _call({", ".join(names)})
"""
    scope: Dict[str, Any] = dict(language.FUNCTIONS)
    scope.update(_bare=function.bare, _call=otherwise, _numbers=NUMBERS, _float=float)
    for name, argument in function.arguments.items():
        scope[f"_default_{name}"] = argument.default
        scope[f"_{name}"] = frozenset(argument.term.choices)
    exec(compile(source, f"<{function.name}>", "exec"), scope)  # noqa: S102
    checked: Callable[..., Any] = scope[function.name]
    return checked


def _quick(argument: Argument) -> bool:
    term = argument.term
    return not (term.many or term.blank or term.text or term.unit == "date")


def _inline(name: str, term: Term, choices: str) -> str:
    if term.choices:
        return f"{name}.__class__ is str and {name} in {choices}"
    # `__class__` rather than isinstance keeps out bool in the same test.
    return f"{name}.__class__ in _numbers and {_limits(name, term)}"


def _limits(name: str, term: Term) -> str:
    sign = "<" if term.low_excluded else "<="
    whole = f" and {name} % 1 == 0" if term.whole else ""
    return f"{term.low!r} {sign} {name} <= {term.high!r}{whole}"


def _documented(function: Function) -> str:
    """The docstring with the sections that the declaration knows."""
    lines = [inspect.getdoc(function.bare) or "", "", "Parameters", "----------"]
    for argument in function.arguments.values():
        default = f"; {argument.default!r} if left out" if argument.optional else ""
        many = "list, each " if argument.term.many else ""
        lines += [f"{argument.name} : {many}{argument.term.range}{default}", f"    {argument.term.help}"]
    lines += ["", "Returns", "-------", function.gives, f"    {function.result.help}"]
    for name, term in function.fields.items():
        lines += [f"{name} : {term.range}", f"    {term.help}"]
    lines += ["", "Raises", "------", "ValueError", "    Where an argument or the result is out of its range."]
    lines += [f"    With the words: {words}." for words in function.requires.values()]
    if function.notes:
        lines += ["", "Notes", "-----", *(f"- {words}." for words in function.notes.values())]
    lines += ["", "References", "----------", function.source]
    return "\n".join(lines)


def _listed(values: Mapping[str, Any]) -> str:
    return ", ".join(f"{name} {shown(value)}" for name, value in values.items())


def _sentence(problems: List[str]) -> str:
    # A question keeps its mark: "Did you mean 8%?"
    text = "; ".join(problem.rstrip(".") for problem in problems)
    return text if text.endswith("?") else text + "."
