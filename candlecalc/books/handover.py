"""The folder for a bookkeeper: its files, each checked before any is written."""

import hashlib
from collections.abc import Mapping, Sequence
from typing import NamedTuple

from candlecalc.books import plain_text, values_only
from candlecalc.books.checking import Kept, Rules, problems, untied
from candlecalc.books.compare import (
    Change,
    changes_sheet,
    closed_for,
    days_of,
    earlier_of,
    refuse_unlike,
    with_late_lines,
)
from candlecalc.books.events import events_of
from candlecalc.books.figures import figures, figures_sheet
from candlecalc.books.joining import Span, finished, in_order, joined, journal_of
from candlecalc.books.journal import Journal, balances
from candlecalc.books.ledgers import accounts_sheet, journal_sheet, result, totals, trial_balance_sheet
from candlecalc.books.open_questions import questions, questions_sheet
from candlecalc.books.reading import Reading
from candlecalc.books.sheets import Sheet, described
from candlecalc.books.stock_sheet import items, stock_sheet
from candlecalc.books.tax_report import TaxLine, tax_lines, tax_sheet, with_late
from candlecalc.books.ties import ties
from candlecalc.season import chart
from candlecalc.season.tables.once import WAYS_OF_VALUING
from candlecalc.workbook.book import Drafted

NAME, SUMMARY, PACKAGE = "candlecalc-handover", "summary.txt", "datapackage.json"
JOURNAL, BEANCOUNT = "book.journal", "book.beancount"
Findings = Mapping[str, Sequence[tuple[str, str, str]]]  # by the workbook's name: tab, cell and words


class Handed(NamedTuple):
    """What is handed over: the files by their names, the journal, and what changed since an earlier one."""

    files: dict[str, bytes]
    journal: Journal
    changed: list[Change]


def handed_over(
    given: Sequence[tuple[Reading, Drafted]],
    span: Span,
    findings: Findings,
    earlier: Mapping[str, bytes] | None = None,
) -> Handed:
    """All files of a time. `earlier` are the files of the hand-over to compare with.

    A ValueError says what keeps it from being handed over.
    """
    reads = in_order([read for read, _ in given])
    _refuse_days(reads, span)
    if earlier is None and span.closed_to and span.first <= span.closed_to:
        raise ValueError(
            f"books are closed to {span.closed_to}, and a hand-over from {span.first} reaches behind that: begin "
            "after it, or name the folder that was handed over with --compare"
        )
    journal, tax, changed = _journal(reads, span, earlier)
    _refuse_unsound(journal)
    sheets = _sheets(reads, journal, tax, findings)
    sheets += [changes_sheet(changed, journal.digits)] if earlier is not None else []
    files = {sheet.path: sheet.csv() for sheet in sheets}
    files[JOURNAL] = plain_text.book_journal(journal).encode()
    files[BEANCOUNT] = plain_text.beancount(journal).encode()
    days = {"from": str(span.first), "to": str(span.last), "currency": journal.currency, "decimals": journal.digits}
    files[PACKAGE] = described(NAME, f"Hand-over from {span.first} to {span.last}", sheets, files, days)
    # Last, since it changes the drafts.
    drafts = {read.name: draft for read, draft in given}
    for read in reads:
        files[f"{read.name}-values.xlsx"] = values_only.packed(drafts[read.name])
    files[SUMMARY] = _summary(reads, journal, sheets, files).encode()
    return Handed(files, journal, changed)


def _refuse_days(reads: Sequence[Reading], span: Span) -> None:
    if span.last < span.first:
        raise ValueError(f"{span.last} is before {span.first}")
    begins, ends = reads[0].first_day, reads[-1].last_day
    if span.first < begins or span.last > ends:
        raise ValueError(
            f"{' and '.join(read.name for read in reads)} hold {begins} to {ends}, not {span.first} to {span.last}"
        )


def _journal(
    reads: Sequence[Reading], span: Span, files: Mapping[str, bytes] | None
) -> tuple[Journal, list[TaxLine], list[Change]]:
    """The journal of a time and its tax; and, where there is an earlier hand-over, what is not as it was there."""
    own = [(read, list(events_of(read))) for read in reads]
    for read, events_there in own:
        apart = untied(ties(read, events_there), read.digits)
        if apart:
            raise ValueError(f"{read.name}: {'; '.join(apart)}")
    events, accounts = joined(own)
    by_cash, tax = reads[0].by_cash, tax_lines(reads, span.first, span.last)
    if files is None:
        return finished(journal_of(reads, events, accounts, span), by_cash), tax, []
    refuse_unlike(span, days_of(files), reads[0].first_day, reads[-1].last_day)
    earlier = earlier_of(files, accounts, reads[0].digits)
    closed = closed_for(span)
    journal = journal_of(reads, events, accounts, span._replace(closed_to=closed))
    again = finished(journal_of(reads, events, accounts, Span(earlier.first, earlier.last, closed)), by_cash)
    journal, changed = with_late_lines(journal, earlier, again, closed)
    if span.first > earlier.last:
        tax = with_late(tax, earlier.tax, tax_lines(reads, earlier.first, earlier.last))
    return finished(journal, by_cash), tax, changed


def kept(journal: Journal) -> list[Kept]:
    """The entries as a check takes them."""
    return [
        Kept(
            entry.reference, entry.day, tuple((journal.account(line.account).code, line.coins) for line in entry.lines)
        )
        for entry in journal.entries
    ]


def rules_of(journal: Journal) -> Rules:
    codes = {account.code for account in journal.chart.values()}
    return Rules(codes, journal.first, journal.last, journal.digits)


def _refuse_unsound(journal: Journal) -> None:
    wrong = list(problems(kept(journal), rules_of(journal)))
    if wrong:
        raise ValueError(f"the journal does not hold: {'; '.join(wrong)}")


def _sheets(reads: Sequence[Reading], journal: Journal, tax: Sequence[TaxLine], findings: Findings) -> list[Sheet]:
    # What is in stock stands in the workbook that holds the last day.
    last = next(read for read in reversed(reads) if read.first_day <= journal.last)
    held = items(last, journal.last)
    asked = questions(last, journal, held, findings.get(last.name, ()))
    return [
        journal_sheet(journal),
        accounts_sheet(journal),
        trial_balance_sheet(journal),
        stock_sheet(last, held),
        tax_sheet(tax, journal.digits),
        figures_sheet(figures(journal, tax, str(last.season.settings["region"]), by_cash=last.by_cash), journal.digits),
        questions_sheet(asked, journal.digits),
    ]


WHAT_FILES_ARE = {
    "journal.csv": "every entry, with the tab and the rows that each line is from",
    "accounts.csv": "the accounts, with your own numbers where they were typed",
    "trial_balance.csv": "what each account comes to on the last day",
    "stock.csv": "what was in stock on the last day, counted and valued",
    "tax.csv": "tax by rate, area, place and who pays it over",
    "figures.csv": "what forms ask for",
    "open_questions.csv": "what is open, does not agree or is missing: begin here",
    "changes.csv": "what is not as it was in the earlier hand-over",
    JOURNAL: "the journal as plain text, for hledger and ledger",
    BEANCOUNT: "the same for beancount",
    PACKAGE: "what the columns of the CSV files mean (Data Package)",
}


# What is asked first at the end of a year: by which words, on which side, and which accounts.
ASKED = (
    ("Sales", -1, (chart.SALES,)),
    ("Cost of sold", 1, (chart.COST_SOLD,)),
    ("Stock at cost", 1, chart.STOCKS),
    ("Owed to you", 1, (chart.OWED_TO_YOU,)),
    ("You owe", -1, (chart.OWED, "Wages and bills owed")),
    ("Tax owed", -1, (chart.TAX_DUE,)),
    ("Tax to claim", 1, (chart.TAX_BACK,)),
    ("Held for buyers", -1, (chart.HELD,)),
    ("Taken by owner", 1, (chart.TAKEN,)),
)


def _summary(reads: Sequence[Reading], journal: Journal, sheets: Sequence[Sheet], files: Mapping[str, bytes]) -> str:
    debit, credit = totals(journal)
    found = balances(journal.entries)
    lines = sum(len(entry.lines) for entry in journal.entries)
    debits = sum(line.coins for *_, line in journal.numbered() if line.coins > 0)
    maker = reads[-1].season.settings.get("maker") or "the maker"
    money = lambda coins: f"{journal.money(coins)} {journal.currency}"  # noqa: E731
    questions_asked = next(len(sheet.rows) for sheet in sheets if sheet.name == "open_questions")
    out = [
        f"Hand-over of {maker}, {journal.first} to {journal.last}, by the {reads[-1].method} method",
        f"From {', '.join(read.name for read in reads)}. Stock is valued {WAYS_OF_VALUING[reads[-1].season.stock]}.",
        f"Registered for tax: {reads[-1].season.settings['registered']}. All sums in {journal.currency}.",
        "",
        f"Entries          {len(journal.entries)}, of {lines} lines",
        f"Debits           {money(debits)}, and as much in credits",
        f"Trial balance    {money(debit)} and {money(credit)}",
        f"Profit           {money(result(journal))}",
        *(f"{words:16} {money(sign * sum(found.get(name, 0) for name in names))}" for words, sign, names in ASKED),
        f"Money            {money(sum(coins for name, coins in found.items() if journal.account(name).money))}",
        f"Open questions   {questions_asked}, in open_questions.csv: begin there",
        "",
        "These figures follow from what was typed. Which of them a tax return takes is for a bookkeeper or tax office",
        "to say.",
        "",
        "SHA-256 of each file",
    ]
    for name, data in files.items():
        says = WHAT_FILES_ARE.get(name, "every tab with its values alone")
        out += [f"{hashlib.sha256(data).hexdigest()}  {name}", f"    {says}"]
    return "\n".join(out) + "\n"
