"""The commands. What they do is imported when they run, so that help comes at once."""

import os
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from threading import Timer
from typing import TYPE_CHECKING, Any

import click

from candlecalc import __version__

if TYPE_CHECKING:
    from candlecalc.commands.make import Answer

DATA_WRONG = 1  # what is asked for is done as far as it goes, and the data has problems
# What `show` takes: a batch, and the words that tabs register themselves with.
SHOWN_WORDS = [
    *("costs", "prices", "batch"),
    *("purchases", "lots", "pours", "used", "stock", "candles", "trace"),
    *("sales", "markets", "consignment", "complaints"),
    *("plan", "buy", "orders"),
    *("tests", "sheets", "hazards", "labels"),
    *("season", "places", "months"),
    *("books", "tax"),
]
STOPPED = 130  # what a shell says of a program that was stopped from the keyboard


MOMENT = 2.0  # seconds; what takes longer says what it is at
QUIET = click.option("--quiet", is_flag=True, help="Do not say what it is at where that takes a while.")


class Problem(click.ClickException):
    """Something is wrong with the data: exit code 1. A wrong call is click's UsageError, exit code 2."""


class Commands(click.Group):
    """A group whose errors are one line, whatever raised them."""

    def main(self, *given: Any, **named: Any) -> Any:
        _speak_utf8()
        try:
            code = super().main(*given, **{**named, "standalone_mode": False})
        except click.ClickException as problem:
            _complain(problem.format_message())
            code = problem.exit_code
        except BrokenPipeError:  # who reads has read enough
            os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
            code = 1
        except FileExistsError as problem:  # it appeared while we worked; a wrong call all the same
            _complain(f"{problem.filename} {problem.strerror}")
            code = click.UsageError.exit_code
        except OSError as problem:
            _complain(": ".join(str(part) for part in (problem.filename, problem.strerror) if part))
            code = 1
        except (click.Abort, KeyboardInterrupt):
            _complain("stopped")
            code = STOPPED
        sys.exit(code if isinstance(code, int) else 0)


@click.group(cls=Commands, invoke_without_command=True, context_settings={"help_option_names": ["-h", "--help"]})
@click.version_option(__version__, message="%(prog)s %(version)s", prog_name="candlecalc")
@click.pass_context
def main(context: click.Context) -> None:
    """The arithmetic of making and selling scented container candles.

    With no command it asks what you want to do.
    """
    if context.invoked_subcommand is None:
        if sys.stdin.isatty():
            _menu(context)
        else:
            click.echo(context.get_help())


@main.command()
@click.argument("out", type=click.Path(dir_okay=False, path_type=Path))
@click.option("--demo", is_flag=True, help="Fill it with an invented maker's season.")
@click.option(
    "--from", "source", type=click.Path(exists=True, path_type=Path), help="A folder of CSV files, or a workbook."
)
@click.option(
    "--after",
    type=click.Path(exists=True, path_type=Path),
    help="A workbook with the year's records: the new one is of the season after, and opens with what it closes with.",
)
@click.option("--season", "name", metavar="NAME", help="What to call the season.")
@click.option(
    "--first-day",
    type=click.DateTime(["%Y-%m-%d"]),
    help="With --after: the first day of the new season; else the day after the last of the one before.",
)
@click.option(
    "--last-day", type=click.DateTime(["%Y-%m-%d"]), help="With --after: its last day; else it is as long as that."
)
@click.option("--region", type=click.Choice(["us", "gb", "eu"]), help="Currency, units and paper of a blank one.")
@click.option("--date", type=click.DateTime(["%Y-%m-%d"]), help="The date it carries.")
@click.option(
    "--records",
    is_flag=True,
    help="With tabs for the year's records: what you buy and what it cost, and what goes on labels.",
)
@click.option(
    "--stock",
    type=click.Choice(["fifo", "average"]),
    help="With --records: value stock first in first out (as where nothing is said), or at its moving average.",
)
@click.option(
    "--rows",
    "rows",
    metavar="TAB=N",
    multiple=True,
    help="How many rows a tab has, such as purchases=800; else as many spare as filled, and the usual at least.",
)
@click.option("--force", is_flag=True, help="Write over a file that is there.")
@QUIET
def new(
    out: Path,
    demo: bool,
    source: Path | None,
    after: Path | None,
    name: str | None,
    first_day: Any,
    last_day: Any,
    region: str | None,
    date: Any,
    records: bool,
    stock: str | None,
    rows: tuple[str, ...],
    force: bool,
    quiet: bool,
) -> None:
    """Make a season workbook: blank, from your own data, the season after, or the demo."""
    if sum(map(bool, (demo, source, after))) > 1:
        raise click.UsageError("--demo, --from and --after do not go together")
    if after and (records or stock or region):
        raise click.UsageError("--after takes records, stock and region as they are in the workbook before")
    if after and not name:
        raise click.UsageError("--after needs --season: what to call the new season")
    if (first_day or last_day) and not after:
        raise click.UsageError("--first-day and --last-day go with --after; else they stand on Settings")
    if region and (demo or source):
        raise click.UsageError("--region is for a blank workbook; data has its own on Settings")
    if name and not name.isprintable():
        raise click.UsageError("--season takes letters, digits and marks in one line")
    _new_file(out, ".xlsx", force)
    from candlecalc.commands import make
    from candlecalc.season.fields import FIRST_DAY, LAST_DAY
    from candlecalc.season.folder import DEMO
    from candlecalc.season.room import asked_for

    try:
        asked = asked_for(rows)
    except ValueError as problem:
        raise click.UsageError(f"--rows: {problem}") from None
    if date and not FIRST_DAY <= date.date() <= LAST_DAY:
        raise click.UsageError(f"--date takes a day from {FIRST_DAY} to {LAST_DAY}")
    day, first, last = (each.date() if each else None for each in (date, first_day, last_day))
    with _told(), _at_work(f"making {out}", quiet):
        if after:
            from candlecalc.commands import following

            _answer(following.new(out, after, name or "", first, last, day, rows=asked, force=force))
            return
        made = make.new(
            out,
            DEMO if demo else source,
            name,
            region or "us",
            day,
            records=records,
            stock=stock or "",
            rows=asked,
            force=force,
        )
    _answer(made)


@main.command()
@click.argument("book", type=click.Path(exists=True, path_type=Path))
@click.option(
    "--against",
    type=click.Path(exists=True, path_type=Path),
    help="The workbook of the season before: does this one open with what that closes with?",
)
@QUIET
def check(book: Path, against: Path | None, quiet: bool) -> None:
    """Say everything that is wrong in a workbook or a folder, a line each.

    Of a folder that was handed over: whether its journals hold and agree.
    """
    from candlecalc.commands import following, handover, make

    with _told(), _at_work(f"calculating {book}", quiet):
        if against:
            checked = following.check(book, against)
        else:
            checked = handover.checked(book) if book.is_dir() and handover.is_handed_over(book) else make.check(book)
    _answer(checked)


@main.command()
@click.argument("book", type=click.Path(exists=True, path_type=Path))
@click.argument("what", type=click.Choice(SHOWN_WORDS))
@click.option("--product", metavar="NAME", default="", help="One product; of a batch, else the one on Batch.")
@click.option(
    "--make", "count", type=click.IntRange(1, 100_000), help="How many, for batch; else as many as Batch says, or 12."
)
@click.option("--batch", type=int, metavar="NUMBER", help="Of trace: the batch whose lots you look for.")
@click.option("--lot", metavar="LOT", default="", help="Of trace: the supplier's lot whose batches you look for.")
@click.option("--material", metavar="NAME", default="", help="Of trace: the material, where several have that lot.")
@click.option("--csv", "as_csv", is_flag=True, help="Write it as CSV.")
@click.option("--json", "as_json", is_flag=True, help="Write it as JSON, for another program.")
@QUIET
def show(
    book: Path,
    what: str,
    product: str,
    count: int | None,
    batch: int | None,
    lot: str,
    material: str,
    as_csv: bool,
    as_json: bool,
    quiet: bool,
) -> None:
    """Show the costs, the prices or a batch of a workbook or a folder.

    Of a workbook with the year's records: its purchases and what is left of
    their lots; pours, what they used, stock, candles; sales, markets, what is
    at shops (consignment), complaints; what was sold by product (season), by
    place and by month; its oil sheets, the hazards that they bring, and what
    labels declare; trace, every lot in a batch (--batch) or every batch of a
    lot (--lot); books, each month's sales, costs and money; and tax, by rate,
    area and who pays it over.
    """
    if (what == "trace") != (batch is not None or bool(lot)) or (batch is not None and lot):
        raise click.UsageError("trace takes either --batch or --lot, and nothing else does")
    if as_csv and as_json:
        raise click.UsageError("--csv and --json do not go together")
    from candlecalc.commands import make

    with _told(), _at_work(f"calculating {book}", quiet):
        if what == "trace":
            shown = make.trace(book, batch, lot, material)
        elif what in ("books", "tax"):
            from candlecalc.commands import handover

            shown = handover.books_of(book, what)
        else:
            shown = make.show(book, what, product, count)
    if as_csv or as_json:
        click.echo(make.as_csv(shown.records) if as_csv else make.as_json(shown.records) + "\n", nl=False)
    else:
        _print([*filter(None, [shown.heading]), *make.as_table(shown.records, shown.formats)])
    # A file of records holds nothing else, so what they are of is told beside them.
    beside = [shown.heading, *shown.beside] if as_csv or as_json else shown.beside
    for line in filter(None, beside):
        click.echo(line, err=True)
    if shown.wrong:
        sys.exit(DATA_WRONG)


# A value may begin with a minus, so what looks like an unknown option is taken as a value.
@main.command(context_settings={"ignore_unknown_options": True})
@click.argument("name", required=False)
@click.argument("values", nargs=-1, type=click.UNPROCESSED, metavar="[ARGUMENT=VALUE]...")
@click.option(
    "--file",
    "files",
    multiple=True,
    type=click.Path(exists=True, dir_okay=False, allow_dash=True, path_type=Path),
    help="Section 3 of a data sheet, as CSV or copied text, once for each oil; or a log of burns as CSV. "
    "- for what is pasted.",
)
def ask(name: str | None, values: tuple[str, ...], files: tuple[Path, ...]) -> None:
    """Ask one question and get the answer.

    NAME is a function; give its arguments by name or in their order, in any
    unit of their kind ("10 oz", "5 lb 4 oz", "180 F", "7%", "1 oz/lb"). A
    list takes semicolons between its values. to=oz gives the answer in that
    unit. Without NAME you are led to one.
    """
    from candlecalc.commands import asking

    with _told():
        if name:
            _print(asking.ask(name, values, files))
        elif sys.stdin.isatty():
            from candlecalc.commands.menu import answered

            _print(answered())
        else:
            raise click.UsageError("name a function; candlecalc functions lists them")


@main.command(context_settings={"ignore_unknown_options": True})
@click.argument("name")
@click.argument("values", nargs=-1, type=click.UNPROCESSED, metavar="[ARGUMENT=CELL]...")
@click.option("--bare", is_flag=True, help="Without the tests that give #N/A for what is out of range.")
def formula(name: str, values: tuple[str, ...], bare: bool) -> None:
    """Write a function as a formula to paste into your own sheet.

    Give each argument a cell (wax=B4), a range for a list (prices=B4:B12), a
    name of your own, or a value. Numbers in the cells are in the unit that
    `candlecalc functions NAME` states.
    """
    from candlecalc.faces.asked.pasting import pasted
    from candlecalc.faces.asked.question import function

    with _told():
        click.echo(pasted(function(name), values, bare))


@main.command()
@click.argument("name", required=False)
@click.option("--find", "words", metavar="WORDS", help="Find by what you would call it.")
@click.option("--all", "whole", is_flag=True, help="List also the parts that tabs and other functions need.")
@click.option("--json", "as_json", is_flag=True, help="Write it as JSON, for another program.")
@click.option("--markdown", is_flag=True, help="Write the page of all functions.")
@click.option(
    "--workbook",
    type=click.Path(dir_okay=False, path_type=Path),
    metavar="OUT.xlsx",
    help="Make the workbook of functions, for Microsoft 365 and Excel 2024.",
)
@click.option("--force", is_flag=True, help="With --workbook: write over a file that is there.")
def functions(
    name: str | None,
    words: str | None,
    whole: bool,
    as_json: bool,
    markdown: bool,
    workbook: Path | None,
    force: bool,
) -> None:
    """List the functions, or tell all about one.

    NAME tells what one is for, what it takes, its cell formula, its source
    and an example.
    """
    from candlecalc.faces.asked.finding import find
    from candlecalc.faces.asked.question import function
    from candlecalc.faces.described import data, reference, terminal

    if bool(name) + bool(words) + markdown + bool(workbook) > 1:
        raise click.UsageError("give a NAME, --find, --markdown or --workbook, one of them")
    if workbook:
        _functions_workbook(workbook, force)
        return
    if markdown:
        from candlecalc.faces.described.markdown import page

        click.echo(page(), nl=False)
        return
    with _told():
        chosen = [function(name)] if name else find(words) if words else reference.every()
        if not chosen:
            raise Problem(f'no function answers to "{words}"; {terminal.nearest(words or "")}')
        if as_json:
            click.echo(data.as_json(chosen))
        else:
            _print(terminal.page(chosen[0]) if name else terminal.found(words) if words else terminal.listing(whole))


@main.command("add-functions")
@click.argument("mine", type=click.Path(exists=True, dir_okay=False, path_type=Path))
@click.argument("out", type=click.Path(dir_okay=False, path_type=Path))
@click.option("--force", is_flag=True, help="Write over a file that is there.")
def add_functions(mine: Path, out: Path, force: bool) -> None:
    """Put the functions into a copy of your own workbook.

    OUT is MINE with names such as CANDLE_OIL_FOR_WAX in it, for Microsoft 365
    and Excel 2024; all else in it stays as it is. MINE is never changed.
    """
    if out.exists() and out.samefile(mine):
        raise click.UsageError(f"{out} is your workbook itself; name another file, so that it stays as it is")
    _new_file(out, mine.suffix.lower(), force)
    from candlecalc.faces.lambdas import add_functions as adding

    with _told():
        _print(adding.add(mine, out, force=force))


@main.command("import")
@click.argument("book", type=click.Path(exists=True, path_type=Path))
@click.argument("file", type=click.Path(exists=True, dir_okay=False, allow_dash=True, path_type=Path))
@click.argument("out", type=click.Path(dir_okay=False, path_type=Path))
@click.option(
    "--as",
    "kind",
    type=click.Choice(["purchases", "sales", "counts", "weighings", "oil-sheet"]),
    required=True,
    help="What the file is.",
)
@click.option("--layout", metavar="NAME", default="", help="Which layout of the tab Imports, where there are several.")
@click.option("--material", metavar="NAME", default="", help="Of an oil-sheet: the oil or dye that it is of.")
@click.option("--sheet-date", "of", type=click.DateTime(["%Y-%m-%d"]), help="Of an oil-sheet: the date on it.")
@click.option("--version", metavar="NO", default="", help="Of an oil-sheet: the version on it.")
@click.option("--force", is_flag=True, help="Write over a file that is there.")
@QUIET
def import_(
    book: Path,
    file: Path,
    out: Path,
    kind: str,
    layout: str,
    material: str,
    of: Any,
    version: str,
    force: bool,
    quiet: bool,
) -> None:
    """Read a file into a new workbook: purchases, sales, counts, weighings.

    OUT is BOOK with the lines of FILE, or nothing is written; BOOK stays as it
    is. FILE is CSV from a shop, a till, a bank card reader or a scale; which of
    its columns is which stands on the tab Imports of BOOK. Lines that are there
    already, and those outside the season, are left out and counted.

    Or an oil-sheet: section 3 of a data sheet, as CSV or copied text (- for
    what is pasted), in place of the lines of the same oil on Oil sheets.
    """
    sheet = kind == "oil-sheet"
    _new_file(out, ".xlsx", force)
    if file.suffix.lower() == ".xlsx":
        raise click.UsageError(f"{file} is a workbook: name yours first, then the file to read, then the new workbook")
    if out.exists() and out.samefile(book):
        raise click.UsageError(f"{out} is your workbook itself; name another file, so that it stays as it is")
    if sheet and not material:
        raise click.UsageError("an oil-sheet needs --material: the oil or dye that it is of")
    if not sheet and (material or of or version):
        raise click.UsageError("--material, --sheet-date and --version are of an oil-sheet")
    if not sheet and str(file) == "-":
        raise click.UsageError("what is pasted can be an oil-sheet alone; name a file")
    if sheet and layout:
        raise click.UsageError("an oil-sheet has no --layout")
    from candlecalc.commands import importing

    with _told(), _at_work(f"reading {file}", quiet):
        imported = (
            importing.oil_sheet(file, book, out, material, of.date() if of else None, version, force=force)
            if sheet
            else importing.lines(kind, file, book, out, layout, force=force)
        )
    _answer(imported)


@main.command()
@click.argument("paths", nargs=-1, required=True, type=click.Path(path_type=Path), metavar="[SOURCE] OUT.pdf")
@click.option("--demo", is_flag=True, help="From an invented maker's folder, in place of SOURCE.")
@click.option("--product", metavar="NAME", default="", help="Whose labels; else the first product's.")
@click.option("--label", "kind", type=click.Choice(["front", "warning", "base"]), default="front", show_default=True)
@click.option("--rules", type=click.Choice(["us", "gb", "eu"]), help="By whose rules, where a product has several.")
@click.option("--batch", metavar="NO", default="", help="The batch's number, for the base; else the latest poured.")
@click.option("--paper", metavar="NAME", default="", help="On which paper; else the first described.")
@click.option("--skip", type=click.IntRange(min=0), default=0, help="Labels of the sheet that are used already.")
@click.option("--calibrate", is_flag=True, help="Make the page that shows how your printer is off.")
@click.option("--check-sheet", is_flag=True, help="A page a product of all that its labels state and lack, to sign.")
@click.option("--force", is_flag=True, help="Write over a file that is there.")
def labels(
    paths: tuple[Path, ...],
    demo: bool,
    product: str,
    kind: str,
    rules: str | None,
    batch: str,
    paper: str,
    skip: int,
    calibrate: bool,
    check_sheet: bool,
    force: bool,
) -> None:
    """Print labels at true size: a sheet of one label as a PDF.

    SOURCE is a workbook with the year's records, its season as a folder, or a
    folder of papers.csv, products.csv, labels.csv and oils.csv. PROOF stands
    across a label until every text on it is confirmed.
    """
    *sources, out = paths
    if len(sources) != (0 if demo else 1):
        raise click.UsageError("give --demo and OUT.pdf" if demo else "give SOURCE and OUT.pdf, or --demo and OUT.pdf")
    _new_file(out, ".pdf", force)
    with _told():
        try:
            from candlecalc.commands import labels as printing
        except ModuleNotFoundError as problem:
            raise Problem(f"labels need {problem.name}: pip install 'candlecalc[labels]'") from None
        from candlecalc.labels.folder import DEMO

        source = DEMO if demo else sources[0]
        wanted = printing.Wanted(product, kind, paper, skip, batch, rules or "")
        if check_sheet:
            _answer(printing.checked(source, out, wanted, force=force))
        else:
            _answer(printing.made(source, out, wanted, calibrate=calibrate, force=force))


A_DAY = click.DateTime(["%Y-%m-%d"])


@main.command()
@click.argument("paths", nargs=-1, required=True, type=click.Path(path_type=Path), metavar="BOOK... FOLDER")
@click.option(
    "--from", "first", type=A_DAY, help="The first day that is handed over; else the financial year's, by Settings."
)
@click.option("--to", "last", type=A_DAY, required=True, help="The last day; stock is that of its evening.")
@click.option(
    "--compare",
    type=click.Path(exists=True, file_okay=False, path_type=Path),
    help="A folder handed over earlier: what was closed stays as it is there, and what changed is said.",
)
@click.option(
    "--without-costs", is_flag=True, help="For a shop or an insurer: what is in stock and what labels say, alone."
)
@QUIET
def handover(
    paths: tuple[Path, ...], first: Any, last: Any, compare: Path | None, without_costs: bool, quiet: bool
) -> None:
    """Hand a year over to a bookkeeper: a folder of files that agree to the cent.

    BOOKs are workbooks with the year's records, or their folders; several make
    one year. FOLDER is new. In it are the journal, stock, tax, what is open, and
    every tab with its values alone; candlecalc check FOLDER looks at it again.
    """
    *books, folder = paths
    if not books:
        raise click.UsageError("give BOOK and FOLDER: the workbook, then a new folder")
    if without_costs and (first or compare):
        raise click.UsageError("--without-costs is of one day: it takes --to alone")
    for each in books:
        if not each.exists():
            raise click.UsageError(f"{each}: it is not there")
    if not folder.absolute().parent.is_dir():
        raise click.UsageError(f"{folder.parent} is no folder")
    from candlecalc.commands import handover as handing

    with _told(), _at_work(f"calculating {', '.join(map(str, books))}", quiet):
        begins, ends = first.date() if first else None, last.date()
        told = list(handing.write(books, folder, begins, ends, compare, without_costs=without_costs))
    _print(told)


@main.group()
def addin() -> None:
    """Make an add-in for the program you have: the functions in your own sheets."""


@addin.command()
@click.argument("folder", type=click.Path(file_okay=False, path_type=Path))
@click.option("--force", is_flag=True, help="Write over files that are there.")
def excel(folder: Path, force: bool) -> None:
    """Make what Excel takes: a folder, with a text on how to install it.

    For Excel on Windows with Python, and for Excel on macOS and the web.
    """
    from candlecalc.faces.excel import folder as face

    with _told():
        face.write(folder, force)
    _print([f"{folder}: read INSTALL.txt"])


@addin.command()
@click.argument("out", type=click.Path(dir_okay=False, path_type=Path))
@click.option("--force", is_flag=True, help="Write over a file that is there.")
def calc(out: Path, force: bool) -> None:
    """Make the add-in for LibreOffice Calc: one .oxt file, to install by a double click."""
    _new_file(out, ".oxt", force)
    from candlecalc.faces.libreoffice import extension as calc_addin
    from candlecalc.files import write_whole

    write_whole(out, calc_addin.addin(), force=force)
    _print([f"{out}: open it with LibreOffice, or: unopkg add {out}"])


@addin.command()
@click.argument("out", type=click.Path(dir_okay=False, path_type=Path))
@click.option("--force", is_flag=True, help="Write over a file that is there.")
def web(out: Path, force: bool) -> None:
    """Make the script for a web spreadsheet: one file to paste into its script editor.

    Name it .js; or .mjs for a module that a program of your own imports.
    """
    _new_file(out, ".mjs" if out.suffix.lower() == ".mjs" else ".js", force)
    from candlecalc.faces.web import script_file as script
    from candlecalc.files import write_whole

    write_whole(out, script.script(module=out.suffix.lower() == ".mjs").encode(), force=force)
    opened = "open it with Notepad or TextEdit, not by a double click; its first lines say how to put it into a sheet"
    _print([f"{out}: {opened}", *script.told_of_left_out()])


def _functions_workbook(out: Path, force: bool) -> None:
    _new_file(out, ".xlsx", force)
    from candlecalc.faces.lambdas import functions_book
    from candlecalc.files import write_whole

    write_whole(out, functions_book.made(), force=force)
    _print([f"{out}: the functions, an example beside each; read Start"])


def _new_file(out: Path, suffix: str, force: bool) -> None:
    if out.suffix.lower() != suffix:
        raise click.UsageError(f"{out}: name it with {suffix} at the end")
    if out.exists() and not force:
        from candlecalc.files import THERE_ALREADY

        raise click.UsageError(f"{out} {THERE_ALREADY}")
    if not out.parent.is_dir():
        raise click.UsageError(f"{out.parent} is no folder")


def _menu(context: click.Context) -> None:
    from candlecalc.commands import menu

    name, *given = menu.words(lambda path: _new_file(path, ".xlsx", force=False))
    command = main.commands[name]
    with command.make_context(name, given, parent=context) as inner:
        command.invoke(inner)


def _answer(answer: "Answer") -> None:
    _print(answer.lines)
    if answer.wrong:
        sys.exit(DATA_WRONG)


def _print(lines: list[str]) -> None:
    click.echo("\n".join(lines))


@contextmanager
def _told() -> Iterator[None]:
    """What is wrong, said by the library as a ValueError, in the terminal's way."""
    from candlecalc.faces.asked.question import CallError

    try:
        yield
    except CallError as problem:
        raise click.UsageError(str(problem)) from None
    except ValueError as problem:
        raise Problem(str(problem)) from None


@contextmanager
def _at_work(doing: str, quiet: bool) -> Iterator[None]:
    """Who waits at a terminal is told what for."""
    said = Timer(MOMENT, _complain, [f"{doing} ..."])
    if _is_watched() and not quiet:
        said.start()
    try:
        yield
    finally:
        said.cancel()


def _is_watched() -> bool:
    return sys.stderr.isatty()


def _complain(message: str) -> None:
    click.echo(f"candlecalc: {' '.join(message.split())}", err=True)


def _speak_utf8() -> None:
    # A pipe on Windows speaks an old code page, which has no inch or degree sign of every kind. What came in as bytes
    # that are no text, such as a file's name, is shown by their numbers.
    for stream in (sys.stdout, sys.stderr):
        if hasattr(stream, "reconfigure"):
            stream.reconfigure(encoding="utf-8", errors="backslashreplace")
