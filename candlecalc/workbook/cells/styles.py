"""How a workbook looks: colours, type, number formats. The one place for them."""

from functools import cache

from openpyxl import Workbook
from openpyxl.styles import Alignment, Border, Font, NamedStyle, PatternFill, Protection, Side
from openpyxl.styles.differential import DifferentialStyle
from openpyxl.styles.numbers import NumberFormat

INK, PAPER = "22303A", "FFFFFF"
ENTRY_GROUND, ENTRY_LINE = "FFF4DC", "9A6A12"
HEAD_INK, HEAD_GROUND = "FFFFFF", "3B4A54"
SECTION_GROUND = "E4EAED"
NOTE_INK, LINK_INK = "52606A", "1F4E9C"
GOOD_INK, GOOD_GROUND = "14532D", "E6F4EA"
BAD_INK, BAD_GROUND = "7F1D1D", "FDE7E4"
RULE = "C9D2D7"
SERIES = ("1F5F8B", "B4531A", "2E7D5B", "7A3E8E", "8C6D1F", "C2405B")
FACE = "Calibri"

TAB_COLOURS = {"input": ENTRY_LINE, "working": "9AA7AF", "output": "1F5F8B", "check": "2E7D5B", "control": HEAD_GROUND}

WHOLE_NUMBER, NOT_SHOWN = 190, 191  # numbers of formats of our own in a package; those below 164 are every program's

# Padded on the right by the format: an indent is honoured unevenly.
NUMBERS = {
    "text": "@",
    "note": "@",
    "said": "@",
    "words": "General",
    "before": '@"  "',  # words with what they speak of to their right
    "row": "0_)",
    "count": "#,##0.##########_)",
    "fine_weight": "#,##0.000_)",
    "pieces": "#,##0_)",
    "pieces_strong": "#,##0_)",
    "quantity": "#,##0.00_)",
    "unit_cost": "#,##0.0000_)",
    "percent": "0.0%_)",
    "used_percent": '"used: "0.0%_)',
    "fine_percent": "0.00%_)",
    "volume": "#,##0_)",
    "length": "0.00_)",
    "temperature": "0_)",
    "density": "0.000_)",
    "minutes": "0.0_)",
    "hours": "0.0_)",
    "clock": "[h]:mm_)",
    "factor": "0.0000_)",
    "date": "yyyy-mm-dd",
    "month": "yyyy-mm",
}
# ... by the unit of a term.
BY_UNIT = {
    "g": "weight", "money": "money", "money per unit": "unit_cost", "money per h": "money", "mm": "length",
    "ml": "volume", "C": "temperature", "g/ml": "density", "min": "minutes", "h": "hours",
}  # fmt: skip
WIDTHS = {
    "row": 7,
    "count": 9,
    "percent": 9.5,
    "money": 10,
    "money_strong": 10,
    "weight": 9.5,
    "date": 12,
    "note": 30,
    "volume": 9,
}
LEFT = {"text", "note", "said", "words", "date", "month"}
# What is too long for its cell is shown smaller: never cut, never ####.
SHRINKING = {"entry", "list_entry", "big_entry", "result", "strong_result", "fill", "weigh", "weigh_small"}


def number_formats(money_digits: int, weight_digits: int, length_digits: int) -> dict[str, str]:
    """Number formats, with the currency's coin, the scale's step and the ruler put in."""
    money = _decimals(money_digits)
    return {
        **NUMBERS,
        "count": "General_)",
        "money": money,
        "money_strong": money,
        "weight": _decimals(weight_digits),
        "length": _decimals(length_digits),
    }


def _decimals(digits: int) -> str:
    return "#,##0" + ("." + "0" * digits if digits else "") + "_)"


def _side(colour: str, style: str = "thin") -> Side:
    return Side(style=style, color=colour)


def _box(colour: str) -> Border:
    return Border(*(_side(colour) for _ in range(4)))


def font(size: float = 11, bold: bool = False, colour: str = INK, underline: str | None = None) -> Font:
    return Font(name=FACE, size=size, bold=bold, color=colour, underline=underline)


@cache
def _looks() -> dict[str, dict[str, object]]:
    def fill(colour: str) -> PatternFill:
        return PatternFill("solid", fgColor=colour)

    typed = {"fill": fill(ENTRY_GROUND), "border": _box(ENTRY_LINE), "protection": Protection(locked=False)}
    return {
        "title": {"font": font(16, bold=True)},
        "purpose": {"font": font(colour=NOTE_INK)},
        "section": {"font": font(12, bold=True), "fill": fill(SECTION_GROUND)},
        "head": {"font": font(bold=True, colour=HEAD_INK), "fill": fill(HEAD_GROUND)},
        "mark": {"font": font(colour=NOTE_INK)},
        "note": {"font": font(colour=NOTE_INK)},
        "label": {"font": font()},
        "strong": {"font": font(bold=True)},
        "link": {"font": font(colour=LINK_INK, underline="single")},
        "verdict": {"font": font(bold=True, colour=GOOD_INK), "fill": fill(GOOD_GROUND)},
        "entry": {"font": font(), **typed},
        "list_entry": {"font": font(), "fill": fill(ENTRY_GROUND), "protection": Protection(locked=False)},
        "big_entry": {"font": font(14, bold=True), **typed},
        "result": {"font": font(), "border": Border(bottom=_side(RULE))},
        # Words of any length: cut at the edge, where shown smaller nobody could read them.
        "told": {"font": font(), "border": Border(bottom=_side(RULE))},
        "strong_result": {"font": font(bold=True), "border": Border(bottom=_side(RULE))},
        "fill": {"font": font(22, bold=True)},
        # Lines and boxes of a row that may be blank are drawn by a rule, as far as it says something.
        "weigh": {"font": font(16, bold=True)},
        "weigh_small": {"font": font(12)},
        "write": {"font": font(), "border": _box(INK)},
        "write_where": {"font": font()},
        "write_line": {"font": font(), "border": Border(bottom=_side(INK))},
    }  # fmt: skip


def named_style(book: Workbook, look: str, number: str, formats: dict[str, str], wrap: bool = False) -> str:
    """The name of the style for a look and a number format, added to the workbook."""
    name = f"{look} {number}" + (" wrapped" if wrap else "")
    style = NamedStyle(name, number_format=formats.get(number, "General"))
    for attribute, value in _looks()[look].items():
        setattr(style, attribute, value)
    left = number in LEFT or look in ("title", "purpose", "note", "link", "mark")
    style.alignment = Alignment(
        horizontal="left" if left else "right",
        vertical="center",
        indent=1 if look == "head" or (left and look not in ("title", "purpose")) else 0,
        wrap_text=wrap,
        shrink_to_fit=look in SHRINKING and not wrap,
    )
    book.add_named_style(style)
    return name


@cache
def ruled() -> DifferentialStyle:
    """The lines around an entry, as conditional formatting has them."""
    return DifferentialStyle(border=_box(ENTRY_LINE))


@cache
def ruled_by_hand(box: bool) -> DifferentialStyle:
    """A line under cells of a card, or a box to write in."""
    return DifferentialStyle(border=_box(INK) if box else Border(bottom=_side(INK)))


@cache
def whole_number() -> DifferentialStyle:
    """Pieces, in cells of a card that else hold weights."""
    whole = NumberFormat(numFmtId=WHOLE_NUMBER, formatCode=NUMBERS["pieces"])
    return DifferentialStyle(numFmt=whole, border=Border(bottom=_side(INK)))


@cache
def unseen() -> DifferentialStyle:
    """A number that is there and says nothing."""
    return DifferentialStyle(numFmt=NumberFormat(numFmtId=NOT_SHOWN, formatCode=";;;"))


@cache
def failing() -> DifferentialStyle:
    """The look of a check that does not hold, as conditional formatting has it."""
    return DifferentialStyle(
        font=Font(color=BAD_INK, bold=True), fill=PatternFill(bgColor=BAD_GROUND, fill_type="solid")
    )
