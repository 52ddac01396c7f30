"""The add-in for LibreOffice Calc: one .oxt file, made from the declarations alone.

It carries every module that its component imports, under a package name of its own, so that it clashes
with no candlecalc that is installed beside it, and with no other version of itself.
"""

from collections.abc import Mapping
from xml.sax.saxutils import escape, quoteattr

from candlecalc import __version__
from candlecalc.declaration.declared import Function
from candlecalc.faces.addins import wizard
from candlecalc.faces.addins.carrying import OURS, carried
from candlecalc.faces.described import reference
from candlecalc.faces.libreoffice.component import spelled
from candlecalc.files import zipped

SERVICE = "CANDLE"  # files hold CANDLE.OILFORWAX; what is typed and shown is CANDLE_OIL_FOR_WAX
IDENTIFIER = "candlecalc.calc"
OLDEST_OFFICE = "7.4"
CARRIED = f"{OURS}_{__version__.replace('.', '_')}_in_calc"
MODULE, INTERFACE = CARRIED.replace("_", ""), "XFunctions"
START = "faces/libreoffice/component.py"


def addin() -> bytes:
    """The add-in as the bytes of its .oxt file; the same each time."""
    parts = {
        "META-INF/manifest.xml": MANIFEST,
        "description.xml": DESCRIPTION.format(identifier=IDENTIFIER, version=__version__, office=OLDEST_OFFICE),
        "about.txt": ABOUT,
        "functions.idl": _types(),
        "CalcAddIns.xcu": _help(),
        "component.py": COMPONENT.format(carried=CARRIED, module=MODULE, interface=INTERFACE, service=SERVICE),
        **{f"pythonpath/{CARRIED}/{name}": text for name, text in sorted(carried(START, CARRIED).items())},
    }
    return zipped({name: text.encode() for name, text in parts.items()})


# What the suite is told of each function


def _types() -> str:
    """The methods as the suite's type library has them: anything in, rows of cells out."""
    lines = [f"module {MODULE} {{ interface {INTERFACE} : com::sun::star::uno::XInterface {{"]
    for formula in reference.callable_names():
        given = ", ".join(f"[in] any {_internal(name)}" for name in formula.arguments)
        lines.append(f"  sequence< sequence<any> > {spelled(formula.name)}({given});")
    lines += [f"  any why([in] any {_internal('name')}, [in] sequence<any> {_internal('values')});", "}; };"]
    return "\n".join(lines) + "\n"


def _internal(name: str) -> str:
    # No argument may be a word of the type language: "step" is none, "in" and "out" are.
    return "given" + spelled(f"_{name}")


def _help() -> str:
    """Names and help for functions and arguments, as the function wizard shows them."""
    functions = [
        _function(formula.name, wizard.name(formula), purpose(formula), _arguments(formula))
        for formula in reference.callable_names()
    ]
    functions.append(_function("why", wizard.WHY, f"Candles: {wizard.WHY_ABOUT}", WHY_ARGUMENTS))
    return HELP.format(service=SERVICE, functions="".join(functions))


def purpose(formula: Function) -> str:
    """What the wizard says of a function: its subject first, as the suite knows no subject of ours."""
    words = f"{wizard.category(formula)}, {formula.subject.replace('_', ' ')}: {wizard.about(formula)}"
    if formula.result.many or formula.fields:
        return f"{words} Enter it as an array formula (Ctrl+Shift+Enter)."
    return f"{words} Give the cell a date format." if formula.result.unit == "date" else words


def _arguments(formula: Function) -> dict[str, str]:
    return {name: wizard.help_of(argument) for name, argument in formula.arguments.items()}


def _function(name: str, shown: str, words: str, arguments: Mapping[str, str]) -> str:
    told = "".join(
        f"<node oor:name={quoteattr(_internal(argument))} oor:op='replace'>"
        f"{_prop('DisplayName', argument)}{_prop('Description', text)}</node>\n"
        for argument, text in arguments.items()
    )
    return (
        f"<node oor:name={quoteattr(spelled(name))} oor:op='replace'>\n"
        f"{_prop('DisplayName', shown)}{_prop('CompatibilityName', shown)}{_prop('Description', words)}\n"
        f"<prop oor:name='Category'><value>Add-In</value></prop>\n"
        f"<node oor:name='Parameters'>\n{told}</node></node>\n"
    )


def _prop(name: str, text: str) -> str:
    return f"<prop oor:name='{name}'><value xml:lang='en-US'>{escape(text)}</value></prop>"


WHY_ARGUMENTS = {"name": wizard.why_arguments()["name"], "values": "what the function was given, in the same order"}
ABOUT = """\
Functions for people who make scented container candles: fragrance, wax, vessels, costs and prices.

Type =CANDLE_OIL_FOR_WAX(B4;8%), or find the functions in the function wizard under Add-in.
A cell that shows #N/A has no answer: CANDLE_WHY says why.

These functions do sums. Suppliers' data sheets and certificates, local rules and codes, your own burn
tests and licensed practice decide what may be done. Hot wax burns skin, and wax that overheats catches
fire: never leave it, never put water on it, keep a lid and a fire blanket within reach.
"""
DESCRIPTION = """\
<?xml version="1.0" encoding="UTF-8"?>
<description xmlns="http://openoffice.org/extensions/description/2006"
 xmlns:d="http://openoffice.org/extensions/description/2006"
 xmlns:lo="http://libreoffice.org/extensions/description/2011" xmlns:xlink="http://www.w3.org/1999/xlink">
<identifier value="{identifier}"/>
<version value="{version}"/>
<display-name><name lang="en">Candle functions</name></display-name>
<extension-description><src lang="en" xlink:href="about.txt"/></extension-description>
<dependencies><lo:LibreOffice-minimal-version value="{office}" d:name="LibreOffice {office}"/></dependencies>
</description>
"""
MANIFEST = """\
<?xml version="1.0" encoding="UTF-8"?>
<manifest:manifest xmlns:manifest="http://openoffice.org/2001/manifest">
<manifest:file-entry manifest:full-path="functions.idl"
 manifest:media-type="application/vnd.sun.star.uno-typelibrary;type=RDB"/>
<manifest:file-entry manifest:full-path="component.py"
 manifest:media-type="application/vnd.sun.star.uno-component;type=Python"/>
<manifest:file-entry manifest:full-path="CalcAddIns.xcu"
 manifest:media-type="application/vnd.sun.star.configuration-data"/>
</manifest:manifest>
"""
HELP = """\
<?xml version="1.0" encoding="UTF-8"?>
<oor:component-data xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema"
 oor:name="CalcAddIns" oor:package="org.openoffice.Office">
<node oor:name="AddInInfo"><node oor:name="{service}" oor:op="replace"><node oor:name="AddInFunctions">
{functions}</node></node></node>
</oor:component-data>
"""
COMPONENT = '''\
"""Candle functions for LibreOffice Calc: what the suite loads. All else lies in pythonpath beside it."""

import sys

if sys.version_info < (3, 9):
    raise ImportError("Candle functions need an office with Python 3.9 or later; this is " + sys.version.split()[0])

import uno
import unohelper
from {carried}.faces.libreoffice.component import methods

try:
    kinds = (unohelper.Base, uno.getClass("{module}.{interface}"))
except Exception:  # installing for all users loads this before the types are known
    kinds = (unohelper.Base,)


def begin(self, context):
    pass


functions = type("Functions", kinds, dict(methods(), __init__=begin))
g_ImplementationHelper = unohelper.ImplementationHelper()
g_ImplementationHelper.addImplementation(functions, "{service}", ("{service}",))
'''
