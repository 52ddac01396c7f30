"""The names of a workbook, changed in its XML as text: what is not ours stays byte for byte.

Expat says where each element stands; what is put in goes between those places, with the prefix that the
file gives its own elements.
"""

import codecs
import re
from bisect import insort
from collections.abc import Iterable
from dataclasses import dataclass, field
from typing import NamedTuple
from xml.parsers import expat
from xml.sax.saxutils import escape, quoteattr

from candlecalc.faces.lambdas.names import Named, is_ours
from candlecalc.faces.lambdas.package import MOST_ELEMENTS, MOST_XML, RefusedError

# The standard's main namespace, and that of its strict variant.
MAIN = ("http://schemas.openxmlformats.org/spreadsheetml/2006/main", "http://purl.oclc.org/ooxml/spreadsheetml/main")
# The standard's order: names come after these, and before everything else.
BEFORE_NAMES = ("sheets", "functionGroups", "externalReferences")
DECLARED = re.compile(rb"""<\?xml[^>]*\sencoding\s*=\s*["']([A-Za-z0-9._-]+)["']""")
START_TAG = re.compile(rb"""<(?:"[^"]*"|'[^']*'|[^<>"'])*>""")
TAG_NAME = re.compile(rb"<[^\s/>]+")
AFTER_ALL = "~"  # comes after every name
FULL_CALCULATION = re.compile(rb"""\sfullCalcOnLoad\s*=\s*("[^"]*"|'[^']*')""")


@dataclass
class Element:
    """An element of the workbook's XML: where it stands, its attributes, the text in it."""

    name: str
    start: int
    attributes: dict[str, str]
    end: int = 0
    inner_end: int = 0  # where its end tag starts; for `<a/>` the same as `start`
    text: list[str] = field(default_factory=list)

    @property
    def content(self) -> str:
        return "".join(self.text).strip()


class Edit(NamedTuple):
    """A place in the text and what stands there instead; sorted as they follow each other in the text."""

    start: int
    end: int
    order: str
    text: bytes


class WorkbookXml:
    """The workbook part: its names, and edits to them."""

    def __init__(self, data: bytes) -> None:
        if len(data) > MOST_XML or data.count(b"<") > MOST_ELEMENTS:
            raise RefusedError("its workbook part is larger than any such part should be: it has very many names")
        self._encoding = _encoding(data)
        try:
            self._text = data.decode(self._encoding).encode("utf-8")
        except (UnicodeDecodeError, LookupError):
            raise RefusedError("it is damaged: the workbook part is not in the encoding it says") from None
        self._data = data
        self._edits: list[Edit] = []
        self._prefix, self._children, self.names = _scanned(self._text)

    def put(self, wanted: Iterable[Named]) -> tuple[int, int]:
        """Put names in, in the place of ours that are there; how many are new, and how many changed."""
        ours = {named.name.lower(): named for named in sorted(wanted, key=lambda named: named.name.lower())}
        changed = 0
        there = set()
        for element in self.names:
            named = ours.get(element.attributes.get("name", "").lower())
            if named and is_ours(element.content, element.attributes.get("comment", ""), named):
                changed += self._replace(element, named)
                there |= {named.name.lower()} if "localSheetId" not in element.attributes else set()
        new = [named for key, named in ours.items() if key not in there]
        self._insert(new)
        return len(new), changed

    def calculate_on_load(self) -> None:
        """Ask the program that opens the workbook to calculate every cell."""
        settings = next((element for element in self._children if element.name == "calcPr"), None)
        if settings is None:
            before = (*BEFORE_NAMES, "definedNames")
            at = max(element.end for element in self._children if element.name in before)
            self._edit(at, at, f'<{self._prefix}calcPr fullCalcOnLoad="1"/>'.encode(), AFTER_ALL)
        elif settings.attributes.get("fullCalcOnLoad") not in ("1", "true"):
            tag = _start_tag(self._text, settings)
            found = FULL_CALCULATION.search(tag)
            start, end = found.span() if found else (_name_end(tag), _name_end(tag))
            self._edit(settings.start + start, settings.start + end, b' fullCalcOnLoad="1"')

    def written(self) -> bytes:
        """The part with its edits; without any, the very bytes that were read."""
        if not self._edits:
            return self._data
        text = self._text
        for edit in reversed(self._edits):
            text = text[: edit.start] + edit.text + text[edit.end :]
        _scanned(text)  # it reads as XML still
        return text.decode("utf-8").encode(self._encoding)

    def _replace(self, element: Element, named: Named) -> bool:
        scope = element.attributes.get("localSheetId", "")
        if element.content == named.definition and element.attributes.get("comment") == named.comment:
            return False
        self._edit(element.start, element.end, self._element(named, scope))
        return True

    def _insert(self, new: list[Named]) -> None:
        parents = [element for element in self._children if element.name == "definedNames"]
        if parents and parents[0].inner_end > parents[0].start:
            for named in new:
                at = self._place(named, parents[0].inner_end)
                self._edit(at, at, self._element(named), named.name.lower())
        elif new:
            tag = f"{self._prefix}definedNames"
            inside = b"".join(self._element(named) for named in new)
            places = [element.end for element in self._children if element.name in BEFORE_NAMES]
            start, end = (parents[0].start, parents[0].end) if parents else (max(places), max(places))
            self._edit(start, end, f"<{tag}>".encode() + inside + f"</{tag}>".encode())

    def _place(self, named: Named, last: int) -> int:
        """Before the first name that comes after it in the order files keep: by letters, in any case."""
        key = named.name.lower()
        return next((element.start for element in self.names if _key(element) > key), last)

    def _element(self, named: Named, scope: str = "") -> bytes:
        tag = f"{self._prefix}definedName"
        sheet = f' localSheetId="{scope}"' if scope else ""
        hidden = ' hidden="1"' if named.hidden else ""
        start = f'<{tag} name="{named.name}" comment={quoteattr(named.comment)}{sheet}{hidden}>'
        return f"{start}{escape(named.definition)}</{tag}>".encode("ascii", "xmlcharrefreplace")

    def _edit(self, start: int, end: int, text: bytes, order: str = "") -> None:
        insort(self._edits, Edit(start, end, order, text))


def _key(element: Element) -> str:
    return element.attributes.get("name", "").lower().removeprefix("_xlnm.")


def _start_tag(text: bytes, element: Element) -> bytes:
    found = START_TAG.match(text, element.start)
    return found[0] if found else b""


def _name_end(tag: bytes) -> int:
    found = TAG_NAME.match(tag)
    return found.end() if found else 0


def _encoding(data: bytes) -> str:
    if data.startswith((codecs.BOM_UTF16_LE, codecs.BOM_UTF16_BE)):
        return "utf-16-le" if data.startswith(codecs.BOM_UTF16_LE) else "utf-16-be"
    declared = DECLARED.match(data.removeprefix(codecs.BOM_UTF8))
    return declared[1].decode() if declared else "utf-8"


def _scanned(text: bytes) -> tuple[str, list[Element], list[Element]]:
    """The prefix of the workbook's own elements, its children, and its names."""
    scanner = _Scanner(text)
    try:
        scanner.parser.Parse(text, True)
    except expat.ExpatError as problem:
        raise RefusedError(f"it is damaged: the workbook part is no XML ({problem})") from None
    children = [element for depth, element in scanner.found if depth == 1]
    if not any(element.name == "sheets" for element in children):
        raise RefusedError("it is damaged: the workbook part has no sheets")
    return scanner.prefix, children, [element for depth, element in scanner.found if element.name == "definedName"]


class _Scanner:
    """Where elements of the main namespace stand, two levels down."""

    def __init__(self, text: bytes) -> None:
        # The text is handed over in UTF-8, whatever it says of itself.
        self.parser = parser = expat.ParserCreate("utf-8", " ")
        parser.namespace_prefixes = True
        parser.StartDoctypeDeclHandler = self._refuse
        parser.StartElementHandler, parser.EndElementHandler = self._start, self._end
        parser.CharacterDataHandler = self._characters
        self.text, self.prefix = text, ""
        self.found: list[tuple[int, Element]] = []
        self.open: list[Element] = []

    def _refuse(self, *_: object) -> None:
        raise RefusedError("the workbook part holds a document type, which no workbook needs")

    def _start(self, full: str, attributes: dict[str, str]) -> None:
        namespace, local, prefix = (*full.split(" "), "", "")[:3] if " " in full else ("", full, "")
        if not self.open:
            if (namespace, local) not in [(each, "workbook") for each in MAIN]:
                raise RefusedError("it is damaged: the workbook part holds no workbook")
            self.prefix = f"{prefix}:" if prefix else ""
        name = local if namespace in MAIN else ""
        element = Element(name, self.parser.CurrentByteIndex, attributes)
        if len(self.open) == 1 or (len(self.open) == 2 and self.open[1].name == "definedNames"):
            self.found.append((len(self.open), element))
        self.open.append(element)

    def _end(self, _: str) -> None:
        element = self.open.pop()
        tag = _start_tag(self.text, element)
        if tag.endswith(b"/>"):
            element.inner_end, element.end = element.start, element.start + len(tag)
        else:
            element.inner_end = self.parser.CurrentByteIndex
            element.end = self.text.index(b">", element.inner_end) + 1

    def _characters(self, text: str) -> None:
        if self.open:
            self.open[-1].text.append(text)
