"""What the program lets a maker type into a cell, with its prompt."""

from typing import Any

from openpyxl.worksheet.datavalidation import DataValidation
from openpyxl.worksheet.worksheet import Worksheet

from candlecalc.declaration.term import LARGEST
from candlecalc.season.fields import NAME_LENGTH, Field, short
from candlecalc.workbook.cells.entries import FIRST_SERIAL, LAST_SERIAL, allowed
from candlecalc.workbook.writing.draft import Draft

NOT_TAKEN = "Not taken"  # over the message of each rule of ours


def add_validation(draft: Draft, sheet: Worksheet, field: Field, cells: str) -> None:
    """What the spreadsheet lets a maker type, with a prompt that says what is meant."""
    rule = DataValidation(allow_blank=True, showErrorMessage=True, showInputMessage=True, **_rule(draft, field))
    rule.promptTitle = draft.plan.head(short(field.head))[:32]
    rule.prompt = draft.plan.head(field.help)[:255]
    rule.errorTitle = NOT_TAKEN
    rule.error = f"{draft.plan.head(short(field.head))} takes {allowed(draft.plan, field)}."[:255]
    rule.add(cells)
    sheet.add_data_validation(rule)


def _rule(draft: Draft, field: Field) -> dict[str, Any]:
    if field.term:
        low, high = draft.plan.measures.limits(field.term)
        kind = "whole" if field.term.whole else "decimal"
        if field.term.low_excluded and high >= LARGEST:
            return {"type": kind, "operator": "greaterThan", "formula1": f"{low:.15g}"}
        if high >= LARGEST:
            return {"type": kind, "operator": "greaterThanOrEqual", "formula1": f"{max(low, -1e12):.15g}"}
        return {"type": kind, "operator": "between", "formula1": f"{low:.15g}", "formula2": f"{high:.15g}"}
    if field.choices:
        return {"type": "list", "formula1": f'"{",".join(field.choices)}"'}
    if field.names_from:
        return {"type": "list", "formula1": draft.plan.layouts["lists"].results(list_key(field))}
    if field.offers:
        offered = draft.plan.layouts[field.offers]
        return {"type": "list", "formula1": offered.results(next(iter(offered.letters)))}
    if field.date:
        return {"type": "date", "operator": "between", "formula1": FIRST_SERIAL, "formula2": LAST_SERIAL}
    longest = NAME_LENGTH if field.name else field.longest
    return {"type": "textLength", "operator": "lessThanOrEqual", "formula1": str(longest)}


def list_key(field: Field) -> str:
    """The column on Lists that holds the names a field may take."""
    return f"{field.names_from} {field.kind}".strip()
