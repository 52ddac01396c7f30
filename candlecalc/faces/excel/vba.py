"""The VBA text between Excel's cells and the Python functions, to be imported into a workbook by hand.

Each function follows what xlwings writes itself but for two places: an error is an error value and no
text, and texts that stand for errors in an answer become error values.
"""

import re
from collections.abc import Iterable, Iterator
from itertools import groupby

from candlecalc import __version__
from candlecalc.declaration.declared import Function
from candlecalc.faces.addins import wizard
from candlecalc.faces.described.reference import callable_names

FUNCTIONS = "candlecalc.faces.excel.module"  # the Python module that Excel asks
# xlwings cannot hand over an error value, so a text that no answer can be stands for it.
REFUSED = "#N/A"
ERRORS = {
    REFUSED: "xlErrNA",
    "#DIV/0!": "xlErrDiv0",
    "#NAME?": "xlErrName",
    "#NULL!": "xlErrNull",
    "#NUM!": "xlErrNum",
    "#REF!": "xlErrRef",
    "#VALUE!": "xlErrValue",
}
# Words that VBA keeps for itself ([MS-VBAL] 3.3.5.2).
KEPT = """
abs addressof and any array as attribute boolean byref byte byval call case cbool cbyte ccur cdate cdbl cdec cdecl
cint circle clng clnglng clngptr close const csng cstr currency cvar cverr date debug decimal declare defbool defbyte
defcur defdate defdbl defdec defint deflng deflnglng deflngptr defobj defsng defstr defvar dim do doevents double each
else elseif empty end endif enum eqv erase event exit explicit false fix for friend function get global gosub goto if
imp implements in input inputb int integer is lbound len lenb let like lineinput lock long longlong longptr loop lset
me mod new next not nothing null on open option optional or paramarray preserve print private pset ptrsafe public put
raiseevent redim rem resume return rset scale seek select set sgn shared single spc static stop string sub tab then to
true type typeof ubound unlock until variant wend while with withevents write xor
"""
# What a function's own text uses: an argument of such a name would hide it.
USED = "application range thisworkbook xlpy xlerrna err failed candlecells"
TAKEN = frozenset((KEPT + USED).split())

HEAD = f"""\
Attribute VB_Name = "CandleFunctions"
' The candle functions: each asks Python through xlwings. Made by candlecalc {__version__}.
' How to put this into a workbook is in INSTALL.txt.
Option Explicit
"""
# As xlwings writes it, but for CandleCells and CVErr.
FUNCTION = """\
Function {name}({signature})
    If TypeOf Application.Caller Is Range Then On Error GoTo failed
    {name} = CandleCells(XLPy.CallUDF("{module}", "{name}", Array({given}), ThisWorkbook, Application.Caller))
    Exit Function
failed:
    {name} = CVErr(xlErrNA)
End Function
"""
# As xlwings writes it: in words, also where Python cannot be reached.
EXPLAINED = """\
Function {name}({signature})
    If TypeOf Application.Caller Is Range Then On Error GoTo failed
    {name} = XLPy.CallUDF("{module}", "{name}", Array({given}), ThisWorkbook, Application.Caller)
    Exit Function
failed:
    {name} = Err.Description
End Function
"""
# An answer is one value, a row (one dimension) or rows (two).
CELLS = """\
' An answer with error values in place of the texts that stand for them.
Private Function CandleCells(ByVal answer)
    Dim wide As Long, r As Long, c As Long
    If Not IsArray(answer) Then
        CandleCells = CandleCell(answer)
        Exit Function
    End If
    wide = -1
    On Error Resume Next
    wide = UBound(answer, 2)
    On Error GoTo 0
    For r = LBound(answer) To UBound(answer)
        If wide = -1 Then
            answer(r) = CandleCell(answer(r))
        Else
            For c = LBound(answer, 2) To wide
                answer(r, c) = CandleCell(answer(r, c))
            Next c
        End If
    Next r
    CandleCells = answer
End Function

Private Function CandleCell(value)
    CandleCell = value
    If VarType(value) <> vbString Then Exit Function
    Select Case value
{cases}
    End Select
End Function
"""
HELP = """\
' Run this once: it puts the help into Insert Function.
Sub CandleHelp()
{calls}
    MsgBox "The help is in place: Formulas, Insert Function, category {category}."
End Sub

Private Sub CandleTell(name, category, about, arguments)
    Application.MacroOptions Macro:="'" & Replace(ThisWorkbook.Name, "'", "''") & "'!" & name, _
        Description:=about, Category:=category, ArgumentDescriptions:=arguments
End Sub
"""


def parameters(formula: Function) -> list[str]:
    """The names of a function's arguments in VBA."""
    return [f"{name}_" if name in TAKEN else name for name in formula.arguments]


def module() -> str:
    """The whole text."""
    return "\n".join([HEAD, *map(_function, callable_names()), _why(), _cells(), *_help()])


def _function(formula: Function) -> str:
    optional = [argument.optional for argument in formula.arguments.values()]
    return _filled(FUNCTION, wizard.name(formula), parameters(formula), optional)


def _why() -> str:
    name, *values = wizard.why_arguments()
    return _filled(EXPLAINED, wizard.WHY, [name, *values], [False] + [True] * len(values))


def _filled(text: str, name: str, names: list[str], optional: list[bool]) -> str:
    signature = ", ".join(f"Optional {one}" if may else one for one, may in zip(names, optional, strict=True))
    return text.format(name=name, signature=signature, given=", ".join(names), module=FUNCTIONS)


def _cells() -> str:
    cases = [f'        Case "{text}": CandleCell = CVErr({name})' for text, name in ERRORS.items()]
    return CELLS.format(cases="\n".join(cases))


def _help() -> Iterator[str]:
    # A procedure a subject: VBA refuses one over 64 kB.
    subjects = {
        subject: list(group) for subject, group in groupby(callable_names(), key=lambda formula: formula.subject)
    }
    names = [f"CandleHelp{subject.title()}" for subject in subjects]
    why = _told(wizard.WHY, wizard.CATEGORY, wizard.WHY_ABOUT, wizard.why_arguments().values())
    yield HELP.format(calls="\n".join([*(f"    {name}" for name in names), why]), category=wizard.CATEGORY)
    for name, group in zip(names, subjects.values(), strict=True):
        yield "\n".join([f"Private Sub {name}()", *map(_told_of, group), "End Sub\n"])


def _told_of(formula: Function) -> str:
    helps = map(wizard.help_of, formula.arguments.values())
    return _told(wizard.name(formula), wizard.category(formula), wizard.about(formula), helps)


def _told(name: str, category: str, about: str, helps: Iterable[str]) -> str:
    given = ", _\n        ".join(map(_quoted, helps))
    return (
        f"    CandleTell {_quoted(name)}, {_quoted(category)}, _\n        {_quoted(about)}, _\n        Array({given})"
    )


def _quoted(text: str) -> str:
    quoted = '"{}"'.format(text.replace('"', '""'))
    # The file is read in the machine's own code page, so other characters are given by their numbers.
    return re.sub(r"[^\x00-\x7f]", lambda found: f'" & ChrW({ord(found[0])}) & "', quoted)
