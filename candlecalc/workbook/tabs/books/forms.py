"""Forms on Books: what small businesses are asked for where the maker is, line by line."""

from collections.abc import Mapping

from candlecalc.season import chart, forms
from candlecalc.workbook.cells.references import Expression, Named, in_coins, joined, written
from candlecalc.workbook.tabs.books.by_month import BY_CASH, by_method
from candlecalc.workbook.tabs.books.sums import TILL, known
from candlecalc.workbook.tabs.books.tax import LABEL, LETTERS, page_section
from candlecalc.workbook.tabs.books.trial import OTHER, ROW_OF, TABS, balance, of_kind, of_sums
from candlecalc.workbook.writing.page import Page, cell

AMOUNT = LETTERS[-1]
Lines = Mapping[str, tuple[str, Expression]]


def write(page: Page, row: int) -> int:
    """The forms of the maker's region; the row after them."""
    region = str(page.draft.season.settings["region"])
    return {"us": _american, "gb": _british, "eu": _european}[region](page, row)


def _american(page: Page, row: int) -> int:
    row = _form(page, row, forms.SCHEDULE_C, _schedule_c(), blank_if=written("{cash}=1", cash=Named(BY_CASH)))
    page.put(f"{LABEL}{row}", forms.SCHEDULE_C_NOTE, "note")
    page.put(
        f"{LABEL}{row + 1}", "By the cash method they are left blank: materials count once they are paid for.", "note"
    )
    return row + 2


def _british(page: Page, row: int) -> int:
    row = _form(page, row, forms.VAT_RETURN, _vat_return())
    return _form(page, row + 1, forms.SELF_ASSESSMENT, _self_assessment())


def _european(page: Page, row: int) -> int:
    due, back = of_sums("{due}"), TAX_BACK
    amounts = {
        "taxable": written("{all}-{none}", all=of_sums("{net}"), none=_untaxed()),
        "exempt": _untaxed(),
        "due": due,
        "back": back,
        "pay": written("{due}-({back})", due=due, back=back),
    }
    lines = {words: ("", amounts[key]) for key, words in forms.VAT_EU_LINES.items()}
    row = _form(page, row, forms.VAT_EU, lines)
    return _form(page, row + 1, forms.SMALL_ENTERPRISE, {forms.ANNUAL_TURNOVER: ("", of_sums("{net}"))})


def _untaxed() -> Expression:
    return known("sold", "net", ("rate", written("0")), ("counts", TILL))


TAX_BACK = by_method(of_sums("{claimed}+{spent_tax}"), of_sums("{claimed_paid}+{spent_tax}"))


def _form(page: Page, row: int, name: str, lines: Lines, blank_if: Expression | None = None) -> int:
    page_section(page, row, name, ())
    for at, (number, (says, value)) in enumerate(lines.items(), start=row + 1):
        page.put(f"{LABEL}{at}", f"{number}  {says}".strip())
        page.shows(f"{AMOUNT}{at}", in_coins(value), "result", "money", blank_if=[blank_if] if blank_if else [])
    return row + len(lines) + 1


def _schedule_c() -> Lines:
    opening = of_sums("{opened}+{opened_good}")
    bought = of_sums("{landed}-{opened}-{own_use}-{samples}-{given}")
    labour, workshop = (_spent(*of) for of in ((chart.PAID_HELP, "{help}"), (chart.OVERHEAD, "{overhead}")))
    available = joined("+", [opening, bought, labour, workshop])
    closing = balance(*chart.STOCKS)
    amounts = {
        "35": opening,
        "36": bought,
        "37": labour,
        "38": written("0"),
        "39": workshop,
        "40": available,
        "41": closing,
        "42": written("{available}-({closing})", available=available, closing=closing),
    }
    return {line: (says, amounts[line]) for line, says in forms.SCHEDULE_C_LINES.items()}


def _spent(account: str, charged: str) -> Expression:
    """What was spent for batches, whether or not they were charged with it."""
    tabs, other = (cell(f"${letter}${ROW_OF[account]}") for letter in (TABS, OTHER))
    return written("{tabs}+{other}+{charged}", tabs=tabs, other=other, charged=of_sums(charged))


def _vat_return() -> Lines:
    due = of_sums("{due}")
    costs = "+{spent}-{spent_tax}+{stands}+{travel}"
    amounts = {
        "1": due,
        "3": due,
        "4": TAX_BACK,
        "5": written("{due}-({back})", due=due, back=TAX_BACK),
        "6": of_sums("{net}"),
        "7": by_method(of_sums("{landed}-{opened}" + costs), of_sums("{landed_paid}" + costs)),
    }
    return {line: (says, amounts[line]) for line, says in forms.VAT_RETURN_LINES.items()}


def _self_assessment() -> Lines:
    income, costs = written("-({all})", all=of_kind(chart.INCOME)), of_kind(chart.COST)
    boxes = {**_boxes(forms.INCOME_BOXES, income, "-"), **_boxes(forms.COST_BOXES, costs, "")}
    last, says = forms.COSTS_IN_ALL
    profit = written("{income}-({costs})", income=income, costs=costs)
    return {**boxes, last: (says, costs), forms.NET_PROFIT[0]: (forms.NET_PROFIT[1], profit)}


def _boxes(boxes: Mapping[str, forms.Box], whole: Expression, sign: str) -> Lines:
    """Boxes by their accounts; the one without any has what is left of the whole."""
    found = {
        box: (says, written(f"{sign}({{sum}})", sum=balance(*names))) for box, (says, names) in boxes.items() if names
    }
    rest = written("{whole}-{others}", whole=whole, others=joined("-", [value for _, value in found.values()]))
    return {box: found.get(box, (says, rest)) for box, (says, _) in boxes.items()}
