"""A maker's own workbook as a package of parts: looked at before anything is read, copied with one part changed.

The package is the one of the Office Open XML standard (ECMA-376 part 2): parts in a zip, their kinds in
`[Content_Types].xml`, and the way to the workbook part in `_rels/.rels`.
"""

import io
import posixpath
import zipfile
from xml.etree.ElementTree import Element

from defusedxml.ElementTree import fromstring

MOST_PARTS, MOST_BYTES, MOST_XML = 20_000, 100_000_000, 10_000_000
MOST_ELEMENTS = 100_000  # of the workbook part, names and tabs for the most part
OLE_MAGIC = bytes.fromhex("d0cf11e0a1b11ae1")  # the container of the old formats, and of encrypted workbooks
TYPES, RELATIONS = "[Content_Types].xml", "_rels/.rels"
# The end of a relationship's type is the same in the transitional and the strict variant of the standard.
MAIN, SIGNATURE = "/officeDocument", "/digital-signature/origin"
WORKBOOKS = tuple(
    f"application/vnd.{kind}.main+xml"
    for kind in (
        "openxmlformats-officedocument.spreadsheetml.sheet",
        "openxmlformats-officedocument.spreadsheetml.template",
        "ms-excel.sheet.macroEnabled",
        "ms-excel.template.macroEnabled",
        "ms-excel.addin.macroEnabled",
    )
)
TABLE = "application/vnd.openxmlformats-officedocument.spreadsheetml.table+xml"
MACROS = "application/vnd.ms-office.vbaProject"


class RefusedError(ValueError):
    """The workbook cannot be changed; the message says why."""


class Package:
    """The parts of a workbook file; a RefusedError says why it is none, or none that may be changed."""

    def __init__(self, data: bytes) -> None:
        self._zip = _opened(data)
        self._entries = self._zip.infolist()
        self._by_name = {entry.filename.lower(): entry for entry in self._entries}
        _refuse_giants(self._entries, self._by_name)
        self._kinds = self._read_kinds()
        self.workbook = self._find_workbook()

    def read(self, name: str) -> bytes:
        """The bytes of a part, by its name in any case."""
        entry = self._by_name.get(name.lower().lstrip("/"))
        if entry is None:
            raise RefusedError(f"it is damaged: it has no part {name}")
        return self._bytes(entry)

    def size(self, name: str) -> int:
        """The bytes of a part, as its entry says."""
        return self._by_name[name.lower()].file_size

    def names(self) -> list[str]:
        return [entry.filename for entry in self._entries]

    def of_kind(self, kind: str) -> list[str]:
        """The parts of a content type."""
        return [name for name in self.names() if self.kind(name) == kind]

    def kind(self, name: str) -> str:
        default = self._kinds.get(posixpath.splitext(name)[1].lower(), "")
        return self._kinds.get("/" + name.lower(), default)

    def xml(self, name: str) -> Element:
        """A part of XML, read without entities or a document type."""
        return _xml(name, self.read(name))

    def with_workbook(self, changed: bytes) -> bytes:
        """The same package with its workbook part changed: every other part, its order and its date stay."""
        out = io.BytesIO()
        with zipfile.ZipFile(out, "w") as target:
            target.comment = self._zip.comment
            for entry in self._entries:
                data = changed if entry.filename == self.workbook else self._bytes(entry)
                target.writestr(_alike(entry), data)
        return out.getvalue()

    def _bytes(self, entry: zipfile.ZipInfo) -> bytes:
        try:
            return self._zip.read(entry)
        except (zipfile.BadZipFile, EOFError, OSError, ValueError) as problem:
            raise RefusedError(f"it is damaged: {entry.filename} cannot be unpacked ({problem})") from None
        except (NotImplementedError, RuntimeError):
            raise RefusedError(f"{entry.filename} is packed in a way that cannot be read here") from None

    def _read_kinds(self) -> dict[str, str]:
        """Content types by part ("/xl/workbook.xml"), or by the ending of a name (".xml")."""
        if TYPES.lower() not in self._by_name:
            open_document = "mimetype" in self._by_name
            raise RefusedError(
                "it is an OpenDocument file; LAMBDA names are for .xlsx and .xlsm: in LibreOffice use the add-in"
                if open_document
                else "it is a zip file, but no workbook"
            )
        kinds: dict[str, str] = {}
        for child in self.xml(TYPES):
            part, ending = child.get("PartName"), child.get("Extension")
            if part or ending:
                kinds[part.lower() if part else f".{ending}".lower()] = child.get("ContentType", "")
        return kinds

    def _find_workbook(self) -> str:
        relations = list(self.xml(RELATIONS))
        if any(relation.get("Type", "").endswith(SIGNATURE) for relation in relations):
            raise RefusedError("it carries a digital signature, which any change breaks; save a copy without it first")
        targets = [each.get("Target", "") for each in relations if each.get("Type", "").endswith(MAIN)]
        if len(targets) != 1:
            raise RefusedError("it is damaged: nothing in it says where the workbook is")
        name = posixpath.normpath("/" + targets[0]).lstrip("/")
        kind = self.kind(name)
        if "sheet.binary" in kind:
            raise RefusedError("it is a binary workbook (.xlsb): save it as .xlsx or .xlsm first")
        if kind not in WORKBOOKS:
            raise RefusedError("it is an Office file, but no workbook")
        return self._by_name[name.lower()].filename if name.lower() in self._by_name else self._missing(name)

    def _missing(self, name: str) -> str:
        raise RefusedError(f"it is damaged: it has no part {name}")


def _opened(data: bytes) -> zipfile.ZipFile:
    if data.startswith(OLE_MAGIC):
        if "EncryptedPackage".encode("utf-16-le") in data:
            raise RefusedError("it is encrypted; take the password off first (File, Info, Protect Workbook)")
        raise RefusedError("it is in the old format (.xls); save it as .xlsx first")
    try:
        return zipfile.ZipFile(io.BytesIO(data))
    except (zipfile.BadZipFile, OSError, ValueError):
        raise RefusedError("it is no workbook (.xlsx or .xlsm)") from None


def _refuse_giants(entries: list[zipfile.ZipInfo], by_name: dict[str, zipfile.ZipInfo]) -> None:
    if any(entry.flag_bits & 1 for entry in entries):
        raise RefusedError("its parts are encrypted")
    if len(entries) > MOST_PARTS or sum(entry.file_size for entry in entries) > MOST_BYTES:
        raise RefusedError(f"unpacked it is over {MOST_BYTES // 1_000_000} MB, or over {MOST_PARTS} parts")
    if len(by_name) < len(entries):
        raise RefusedError("it is damaged: two of its parts have one name")


def _xml(name: str, data: bytes) -> Element:
    if len(data) > MOST_XML:
        raise RefusedError(f"{name} is larger than any such part should be")
    try:
        root: Element = fromstring(data, forbid_dtd=True)
    except Exception:  # noqa: BLE001  whatever a broken file makes the reader do, it is this file's fault
        raise RefusedError(f"it is damaged: {name} is no plain XML") from None
    return root


def _alike(entry: zipfile.ZipInfo) -> zipfile.ZipInfo:
    alike = zipfile.ZipInfo(entry.filename, entry.date_time)
    alike.compress_type, alike.external_attr = entry.compress_type, entry.external_attr
    alike.create_system, alike.comment = entry.create_system, entry.comment
    return alike
