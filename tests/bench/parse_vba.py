"""Read the whole VBA text with a parser of the language (antlr4-vba, after [MS-VBAL]): by hand, about a minute.

pip install antlr4-vba; python tests/bench/parse_vba.py
"""

import sys

from antlr4 import CommonTokenStream, InputStream
from antlr4.error.ErrorListener import ErrorListener
from antlr4_vba.vbaLexer import vbaLexer
from antlr4_vba.vbaParser import vbaParser

from candlecalc.faces.excel import vba


class Errors(ErrorListener):
    def __init__(self):
        self.found = []

    def syntaxError(self, recognizer, symbol, line, column, message, error):  # noqa: N802  antlr's name
        self.found.append(f"{line}, {column}: {message}")


def errors(text):
    listener = Errors()
    lexer = vbaLexer(InputStream(text.replace("\n", "\r\n")))
    parser = vbaParser(CommonTokenStream(lexer))
    for part in (lexer, parser):
        part.removeErrorListeners()
        part.addErrorListener(listener)
    parser.startRule()
    return listener.found


if __name__ == "__main__":
    found = errors(vba.module())
    # The parser must be able to find one: a word that VBA keeps, as an argument.
    if not errors(vba.module().replace("(each_,", "(each,")):
        found.append("the parser finds nothing")
    print("\n".join(found) or "no error")
    sys.exit(bool(found))
