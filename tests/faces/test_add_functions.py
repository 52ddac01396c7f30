"""Our names in a maker's own workbook: nothing else in it changes, and what cannot be done is refused in words.

The workbooks are those of `foreign.py`: none was written by this project's code.
"""

import io
import os
import re
import zipfile

import foreign
import openpyxl
import pytest
from click.testing import CliRunner
from foreign import SAVED_BY_EXCEL, SAVED_ELSEWHERE

from candlecalc.commands.cli import main
from candlecalc.faces.lambdas import add_functions, macros, package
from candlecalc.faces.lambdas import names as lambdas
from candlecalc.faces.lambdas.add_functions import added
from candlecalc.faces.lambdas.names import Named
from candlecalc.faces.lambdas.names_in_book import WorkbookXml
from candlecalc.faces.lambdas.package import Package, RefusedError

MADE = {
    "charts, a chart sheet, comments, a picture, a table": foreign.with_everything,
    "macros": foreign.with_macros,
    "LAMBDA names": foreign.with_lambdas,
    "a frame of numbers": foreign.by_pandas,
    "a pivot table, by LibreOffice": foreign.with_a_pivot,
    "the strict variant": lambda: foreign.strict(foreign.fetched(*SAVED_BY_EXCEL["a chart, names of one tab"][:2])),
}
FETCHED = SAVED_BY_EXCEL | SAVED_ELSEWHERE
every_workbook = pytest.mark.parametrize("kind", [*MADE, *FETCHED])
NO_NAMES = re.compile(rb"<(\w+:)?definedNames(\s*/>|></(\w+:)?definedNames>)")
OURS = re.compile(rb"<(\w+:)?definedName name=\"CANDLE_[^>]*>[^<]*</(\w+:)?definedName>")


@pytest.fixture
def original(kind, request, tmp_path):
    if kind in FETCHED:
        return foreign.fetched(*FETCHED[kind][:2])
    if MADE[kind] is foreign.with_a_pivot:
        return foreign.with_a_pivot(request.getfixturevalue("office"), tmp_path)
    return MADE[kind]()


def parts(workbook):
    with zipfile.ZipFile(io.BytesIO(workbook)) as opened:
        return {name: opened.read(name) for name in opened.namelist()}


@every_workbook
def test_every_part_but_the_workbook_stays_byte_for_byte(kind, original):
    before, after = parts(original), parts(added(original).data)
    assert list(after) == list(before)
    changed = [name for name in before if before[name] != after[name]]
    assert changed == [Package(original).workbook]


@every_workbook
def test_in_the_workbook_part_our_names_are_all_that_is_new(kind, original):
    name = Package(original).workbook
    before, after = parts(original)[name], parts(added(original).data)[name]
    assert len(OURS.findall(after)) == len(lambdas.every())
    # A workbook without names has got a place for them.
    assert NO_NAMES.sub(b"", OURS.sub(b"", after)) == NO_NAMES.sub(b"", before)


@every_workbook
def test_adding_again_changes_nothing(kind, original):
    once = added(original)
    again = added(once.data)
    assert (once.new, once.changed) == (len(lambdas.every()), 0)
    assert (again.new, again.changed) == (0, 0)
    assert parts(again.data) == parts(once.data)


@every_workbook
def test_names_stand_in_their_place_among_the_others(kind, original):
    there = [_key(element) for element in _names(original)]
    now = [_key(element) for element in _names(added(original).data)]
    ours = [named.name.lower() for named in lambdas.every()]
    assert [name for name in now if name not in ours] == there
    assert [name for name in now if name in ours] == sorted(ours)
    if there == sorted(there):
        assert now == sorted(now)


def _names(workbook):
    opened = Package(workbook)
    return WorkbookXml(opened.read(opened.workbook)).names


def _key(element):
    return element.attributes["name"].lower().removeprefix("_xlnm.")


@every_workbook
def test_the_result_opens_with_its_own_values_in_other_programs(kind, original, office, tmp_path):
    suffix = ".xlsm" if "macro" in kind or ".xlsm" in kind else ".xlsx"
    (tmp_path / f"mine{suffix}").write_bytes(original)
    (tmp_path / f"out{suffix}").write_bytes(added(original).data)
    assert office.recalculated(tmp_path / f"out{suffix}") == office.recalculated(tmp_path / f"mine{suffix}")
    if kind == "the strict variant":
        return  # openpyxl reads no workbook of the strict variant
    book = openpyxl.load_workbook(tmp_path / f"out{suffix}", keep_vba=suffix == ".xlsm")
    for named in lambdas.every():
        assert book.defined_names[named.name].attr_text == named.definition
        assert book.defined_names[named.name].comment == named.comment


def test_the_workbooks_hold_what_they_are_here_for(office, tmp_path):
    everything = parts(foreign.with_everything())
    for wanted in ("charts/chart1", "chartsheets/sheet1", "comments1", "media/image1", "tables/table1"):
        assert any(f"xl/{wanted}" in name for name in everything), wanted
    pivot = parts(foreign.with_a_pivot(office, tmp_path))
    assert any(name.startswith("xl/pivotTables/") for name in pivot)
    assert "xl/vbaProject.bin" in parts(foreign.with_macros())
    assert b"_xlfn.LAMBDA" in parts(foreign.with_lambdas())["xl/workbook.xml"]


@pytest.mark.parametrize("kind", SAVED_BY_EXCEL)
def test_excel_saved_those_that_are_said_to_be_its(kind):
    workbook = parts(foreign.fetched(*SAVED_BY_EXCEL[kind][:2]))
    assert b"Microsoft" in workbook["docProps/app.xml"]
    assert b"Excel</" in workbook["docProps/app.xml"]


# The workbook part, in every form it may have


def xml_of(
    inner, root="workbook", head=b"", space=' xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"'
):
    return head + f"<{root}{space}>{inner}</{root}>".encode()


NAMED = Named("CANDLE_B", "_xlfn.LAMBDA(_xlpm.x,_xlpm.x&1)", "twice <two> (candlecalc 0.1.0)")
PUT = (
    '<definedName name="CANDLE_B" comment="twice &lt;two&gt; (candlecalc 0.1.0)">'
    "_xlfn.LAMBDA(_xlpm.x,_xlpm.x&amp;1)</definedName>"
)
FORMS = [  # inside the workbook element, the same with our name put in
    ("<sheets/>", f"<sheets/><definedNames>{PUT}</definedNames>"),
    ("<sheets><sheet/></sheets ><calcPr/>", f"<sheets><sheet/></sheets ><definedNames>{PUT}</definedNames><calcPr/>"),
    ("<sheets/><definedNames/>", f"<sheets/><definedNames>{PUT}</definedNames>"),
    ("<sheets/><definedNames></definedNames>", f"<sheets/><definedNames>{PUT}</definedNames>"),
    (
        "<sheets/><externalReferences><x/></externalReferences>\n<oleSize/>",
        f"<sheets/><externalReferences><x/></externalReferences><definedNames>{PUT}</definedNames>\n<oleSize/>",
    ),
    (
        "<sheets/><definedNames>\n<definedName name='a'>1>0</definedName>\n<definedName name='d'/></definedNames>",
        "<sheets/><definedNames>\n<definedName name='a'>1>0</definedName>\n"
        f"{PUT}<definedName name='d'/></definedNames>",
    ),
    (
        '<sheets a="> />"/><definedNames><definedName name="_xlnm.Print_Area">1</definedName></definedNames>',
        f'<sheets a="> />"/><definedNames>{PUT}<definedName name="_xlnm.Print_Area">1</definedName></definedNames>',
    ),
    (
        "<sheets/><definedNames><definedName name='candle_b' comment='b (candlecalc 0.0.9)'>1</definedName>"
        "</definedNames>",
        f"<sheets/><definedNames>{PUT}</definedNames>",
    ),
]


@pytest.mark.parametrize("before, after", FORMS)
def test_a_name_is_put_in_and_nothing_else_touched(before, after):
    workbook = WorkbookXml(xml_of(before))
    workbook.put([NAMED])
    assert workbook.written().decode() == xml_of(after).decode()


@pytest.mark.parametrize("encoding", ["utf-8", "utf-8-sig", "utf-16", "iso-8859-1"])
def test_any_encoding_is_kept(encoding):
    head = f'<?xml version="1.0" encoding="{encoding.removesuffix("-sig")}"?>'
    text = head + xml_of('<!-- caf\u00e9 --><sheets><sheet name="caf\u00e9"/></sheets>').decode()
    workbook = WorkbookXml(text.encode(encoding))
    workbook.put([NAMED])
    assert workbook.written().decode(encoding) == text.replace(
        "</sheets>", f"</sheets><definedNames>{PUT}</definedNames>"
    )


def test_elements_with_a_prefix_get_names_with_the_same():
    space = ' xmlns:s="http://purl.oclc.org/ooxml/spreadsheetml/main"'
    workbook = WorkbookXml(xml_of("<s:sheets/>", "s:workbook", space=space))
    workbook.put([NAMED])
    put = PUT.replace("definedName ", "s:definedName ").replace("/definedName", "/s:definedName")
    wanted = xml_of(f"<s:sheets/><s:definedNames>{put}</s:definedNames>", "s:workbook", space=space)
    assert workbook.written() == wanted


CALCULATION = [
    ('<sheets/><calcPr calcId="191029"/>', '<calcPr fullCalcOnLoad="1" calcId="191029"/>'),
    ('<sheets/><calcPr fullCalcOnLoad="0" iterate="1"/>', '<calcPr fullCalcOnLoad="1" iterate="1"/>'),
    ("<sheets/><calcPr fullCalcOnLoad='1'/>", "<calcPr fullCalcOnLoad='1'/>"),
    ("<sheets/><oleSize/>", '</definedNames><calcPr fullCalcOnLoad="1"/><oleSize/>'),
]


@pytest.mark.parametrize("inner, wanted", CALCULATION)
def test_a_workbook_that_calls_the_functions_already_is_calculated_when_it_opens(inner, wanted):
    workbook = WorkbookXml(xml_of(inner))
    workbook.put([NAMED])
    workbook.calculate_on_load()
    assert wanted in workbook.written().decode()


def test_values_are_asked_for_anew_only_where_cells_call_the_functions():
    def fill(formula):
        return foreign.by_xlsxwriter(lambda book: book.add_worksheet().write_formula("A1", formula))

    asked = {
        formula: b'fullCalcOnLoad="1"' in parts(added(_without_flag(fill(formula))).data)["xl/workbook.xml"]
        for formula in ("=candle_oil_for_wax(500,8%)", "=SUM(1,2)", '="CANDLE_OIL"')
    }
    assert list(asked.values()) == [True, False, False]


def _without_flag(workbook):
    return changed_part(workbook, "xl/workbook.xml", lambda data: data.replace(b' fullCalcOnLoad="1"', b""))


def changed_part(workbook, name, change):
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w") as target:
        for part, data in parts(workbook).items():
            target.writestr(part, change(data) if part == name else data)
    return out.getvalue()


# Ours of an earlier time


def test_names_of_an_earlier_version_are_replaced_and_the_makers_own_stay():
    old = changed_part(
        added(foreign.with_lambdas()).data,
        "xl/workbook.xml",
        lambda data: data.replace(b"(candlecalc ", b"(candlecalc 0.0.").replace(b"_xlpm.wax*_xlpm.load", b"_xlpm.wax"),
    )
    new = added(old)
    assert (new.new, new.changed) == (0, len(lambdas.every()))
    name = "xl/workbook.xml"
    assert parts(new.data)[name] == parts(added(foreign.with_lambdas()).data)[name]


def test_names_that_another_program_saved_without_their_comment_are_known_by_what_they_stand_for():
    saved = changed_part(
        added(foreign.with_lambdas()).data,
        "xl/workbook.xml",
        lambda data: re.sub(rb' comment="[^"]*"', b"", data).replace(b"_xlfn.LAMBDA", b"_xlfn.lambda"),
    )
    again = added(saved)
    assert again.changed == len(lambdas.every())


# Clashes


def with_name(text):
    return changed_part(
        foreign.by_pandas(), "xl/workbook.xml", lambda data: data.replace(b"<definedNames/>", b"").replace(
            b"<calcPr", f"<definedNames>{text}</definedNames><calcPr".encode()
        )
    )  # fmt: skip


CLASHES = [
    (
        lambda: with_name('<definedName name="CANDLE_OIL_FOR_WAX">Melts!$A$1</definedName>'),
        "the name CANDLE_OIL_FOR_WAX",
    ),
    (lambda: with_name('<definedName name="Candle_Oil_For_Wax">1</definedName>'), "the name Candle_Oil_For_Wax"),
    (
        lambda: with_name('<definedName name="CANDLE_COST_EACH" localSheetId="0">2</definedName>'),
        "the name CANDLE_COST_EACH of one tab",
    ),
    (
        lambda: changed_part(
            foreign.with_everything(), "xl/tables/table1.xml", lambda data: data.replace(b'"Sold"', b'"CANDLE_add_tax"')
        ),
        "the table CANDLE_add_tax",
    ),
    (
        lambda: with_part("xl/webextensions/webextension1.xml", b'<p value="def&amp;#32;candle_add_tax(a):"/>'),
        "the Python function CANDLE_ADD_TAX",
    ),
    (
        lambda: with_part("customXml/item1.xml", b"<c>\nasync def candle_add_tax (a): 1</c>"),
        "the Python function CANDLE_ADD_TAX",
    ),
]


def with_part(name, data, workbook=None):
    out = io.BytesIO(workbook or foreign.by_pandas())
    with zipfile.ZipFile(out, "a") as target:
        target.writestr(name, data)
    return out.getvalue()


@pytest.mark.parametrize("workbook, said", CLASHES)
def test_a_clash_is_refused_by_name(workbook, said):
    with pytest.raises(RefusedError, match=f"clash with: {said}$"):
        added(workbook())


def test_a_function_of_the_makers_macros_is_a_clash(monkeypatch):
    workbook = foreign.with_macros()
    assert macros.declared(parts(workbook)["xl/vbaProject.bin"]) == {"say_hello"}
    monkeypatch.setattr(add_functions, "every", lambda: [NAMED._replace(name="SAY_HELLO")])
    with pytest.raises(RefusedError, match="the macro function SAY_HELLO"):
        added(workbook)


def test_the_functions_in_macros_are_read():
    project = parts(foreign.fetched(*SAVED_BY_EXCEL["macros, a defined name"][:2]))["xl/vbaProject.bin"]
    assert macros.declared(project) == {"shared_formula"}
    assert macros.declared(project[:2000]) == set()
    assert macros.declared(b"") == macros.declared(b"no macros" * 100) == set()


# [MS-OVBA] 3.2.2 and 3.2.3: the specification's own examples of compressed text.
NORMAL = bytes.fromhex(
    "01 2F B0 00 23 61 61 61 62 63 64 65 82 66 00 70 61 67 68 69 6A 01 38 08 61 6B 6C 00 30 6D 6E 6F 70 06 71 02 70"
    "04 10 72 73 74 75 76 10 77 78 79 7A 00 3C"
)
LONGEST = bytes.fromhex("01 03 B0 02 61 45 00")


def test_macros_are_unpacked_as_their_specification_shows():
    assert macros.unpacked(NORMAL) == b"#aaabcdefaaaaghijaaaaaklaaamnopqaaaaaaaaaaaarstuvwxyzaaa"
    assert macros.unpacked(LONGEST) == b"a" * 73


# What cannot be done


def ole(*names):
    """The first bytes of a compound file, with names of streams as its directory holds them."""
    return package.OLE_MAGIC + bytes(504) + b"".join(name.encode("utf-16-le") for name in names)


def without(name):
    return lambda: repacked({part: data for part, data in parts(foreign.by_pandas()).items() if part != name})


def repacked(wanted):
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w") as target:
        for part, data in wanted.items():
            target.writestr(part, data)
    return out.getvalue()


def altered(name, old, new):
    return lambda: changed_part(foreign.by_pandas(), name, lambda data: data.replace(old, new))


SIGNED = (
    b"<Relationship Id='s' Target='s' "
    b"Type='http://schemas.openxmlformats.org/package/2006/relationships/digital-signature/origin'/></Relationships>"
)
ENTITIES = b'<!DOCTYPE w [<!ENTITY a "aaaa"><!ENTITY b "&a;&a;&a;&a;">]><workbook '
REFUSED = [
    ("encrypted, by its look", lambda: ole("Root Entry", "EncryptedPackage"), "it is encrypted"),
    ("an old workbook", lambda: ole("Root Entry", "Workbook"), "it is in the old format (.xls)"),
    ("no zip", lambda: b"Wax,Oil\n500,40\n", "it is no workbook"),
    ("empty", lambda: b"", "it is no workbook"),
    ("cut short", lambda: foreign.by_pandas()[:-400], "it is no workbook"),
    ("a zip of something", lambda: repacked({"a.txt": b"a"}), "no workbook"),
    ("OpenDocument", lambda: repacked({"mimetype": b"application/vnd.oasis"}), "it is an OpenDocument file"),
    ("a document", altered("[Content_Types].xml", b"spreadsheetml.sheet.main", b"word.main"), "but no workbook"),
    (
        "a binary workbook",
        altered(
            "[Content_Types].xml",
            b"openxmlformats-officedocument.spreadsheetml.sheet.main+xml",
            b"ms-excel.sheet.binary.macroEnabled.main",
        ),
        "a binary workbook (.xlsb)",
    ),
    ("signed", altered("_rels/.rels", b"</Relationships>", SIGNED), "it carries a digital signature"),
    ("no way in", altered("_rels/.rels", b"/officeDocument", b"/other"), "nothing in it says where the workbook is"),
    ("no workbook part", without("xl/workbook.xml"), "it has no part xl/workbook.xml"),
    ("no relationships", without("_rels/.rels"), "it has no part _rels/.rels"),
    ("two of one name", lambda: with_part("XL/workbook.xml", b""), "two of its parts have one name"),
    ("a document type", altered("xl/workbook.xml", b"<workbook ", ENTITIES), "holds a document type"),
    ("entities elsewhere", altered("_rels/.rels", b"<Relationships", b"<!DOCTYPE r><Relationships"), "no plain XML"),
    ("broken XML", altered("xl/workbook.xml", b"</sheets>", b""), "the workbook part is no XML"),
    ("another XML", altered("xl/workbook.xml", b"spreadsheetml", b"wordml"), "the workbook part holds no workbook"),
]  # fmt: skip


@pytest.mark.parametrize("workbook, said", [case[1:] for case in REFUSED], ids=[case[0] for case in REFUSED])
def test_what_cannot_be_changed_is_refused_with_a_reason(workbook, said):
    with pytest.raises(RefusedError, match=re.escape(said)):
        added(workbook())


def test_an_encrypted_workbook_is_refused():
    with pytest.raises(RefusedError, match="it is encrypted"):
        added(foreign.fetched(*foreign.ENCRYPTED))


def test_giants_are_refused_before_they_are_unpacked(monkeypatch):
    monkeypatch.setattr(package, "MOST_BYTES", 1_000_000)
    bomb = repacked({**parts(foreign.by_pandas()), "xl/media/zeros": bytes(1_000_001)})
    with pytest.raises(RefusedError, match="unpacked it is over 1 MB"):
        added(bomb)


def test_a_part_that_is_damaged_is_refused_whatever_part_it_is():
    whole = repacked({**parts(foreign.by_pandas()), "xl/media/image1.png": b"picture" * 100})
    broken = whole.replace(b"picture" * 100, b"picturf" * 100)
    with pytest.raises(RefusedError, match=re.escape("it is damaged: xl/media/image1.png cannot be unpacked")):
        added(broken)


# The command


def run(*words):
    return CliRunner().invoke(main, ["add-functions", *map(str, words)])


@pytest.fixture
def mine(tmp_path):
    path = tmp_path / "mine.xlsx"
    path.write_bytes(foreign.by_pandas())
    return path


def test_a_copy_is_written_and_the_original_stays(mine, tmp_path):
    before = (mine.read_bytes(), mine.stat().st_mtime_ns)
    told = run(mine, tmp_path / "out.xlsx")
    assert told.exit_code == 0
    assert told.output.splitlines()[0] == f"{tmp_path / 'out.xlsx'}: {len(lambdas.every())} functions added"
    assert (tmp_path / "out.xlsx").read_bytes() == added(before[0]).data
    assert (mine.read_bytes(), mine.stat().st_mtime_ns) == before
    assert sorted(path.name for path in tmp_path.iterdir()) == ["mine.xlsx", "out.xlsx"]


def test_the_same_workbook_gives_the_same_bytes():
    workbook = foreign.by_pandas()
    assert added(workbook).data == added(workbook).data


def test_a_file_that_is_there_is_written_over_only_by_force(mine, tmp_path):
    out = tmp_path / "out.xlsx"
    out.write_text("my notes")
    assert run(mine, out).exit_code == 2
    assert out.read_text() == "my notes"
    assert run(mine, out, "--force").exit_code == 0
    assert out.read_bytes() == added(mine.read_bytes()).data


def test_the_original_is_never_the_target_whatever_it_is_called(mine, tmp_path):
    before = mine.read_bytes()
    (tmp_path / "link.xlsx").symlink_to(mine)
    os.link(mine, tmp_path / "twin.xlsx")
    for name in ("mine.xlsx", "link.xlsx", "twin.xlsx"):
        told = run(mine, tmp_path / name, "--force")
        assert (told.exit_code, "is your workbook itself" in told.stderr) == (2, True)
    assert mine.read_bytes() == before


WRONG_CALLS = [
    (["missing.xlsx", "out.xlsx"], 2, "does not exist"),
    (["mine.xlsx", "out.xlsm"], 2, "name it with .xlsx at the end"),
    (["mine.xlsx", "nowhere/out.xlsx"], 2, "is no folder"),
    (["mine.xlsx", "locked.xlsx", "--force"], 1, "locked.xlsx: it is read-only"),
    (["notes.xlsx", "out.xlsx"], 1, "notes.xlsx: it is no workbook"),
]


@pytest.mark.parametrize("words, code, said", WRONG_CALLS)
def test_what_is_wrong_is_said_in_one_line_and_nothing_written(mine, tmp_path, monkeypatch, words, code, said):
    monkeypatch.chdir(tmp_path)
    (tmp_path / "notes.xlsx").write_text("500 g of wax")
    (tmp_path / "locked.xlsx").write_text("keep")
    (tmp_path / "locked.xlsx").chmod(0o444)
    before = {path.name: path.read_bytes() for path in tmp_path.iterdir()}
    told = run(*words)
    assert (told.exit_code, told.stdout) == (code, "")
    assert said in told.stderr
    assert told.stderr.count("\n") == 1
    assert {path.name: path.read_bytes() for path in tmp_path.iterdir()} == before


def test_macros_are_said_to_be_looked_through(tmp_path):
    (tmp_path / "mine.xlsm").write_bytes(foreign.with_macros())
    assert "Its macros are kept" in run(tmp_path / "mine.xlsm", tmp_path / "out.xlsm").output
