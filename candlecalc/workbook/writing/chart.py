"""The chart on Costing: what each candle's full cost is made of."""

from collections.abc import Sequence

from openpyxl.chart import BarChart, Reference, Series
from openpyxl.chart.axis import ChartLines
from openpyxl.chart.shapes import GraphicalProperties
from openpyxl.chart.text import RichText
from openpyxl.drawing.colors import ColorChoice
from openpyxl.drawing.fill import PatternFillProperties
from openpyxl.drawing.line import LineProperties
from openpyxl.drawing.text import CharacterProperties, Paragraph, ParagraphProperties
from openpyxl.utils import column_index_from_string, get_column_letter
from openpyxl.worksheet.worksheet import Worksheet

from candlecalc.workbook.cells.layout import FIRST_ROW, HEAD_ROW, Layout
from candlecalc.workbook.cells.styles import PAPER, SERIES
from candlecalc.workbook.writing.draft import Draft
from candlecalc.workbook.writing.printed import widths

# Every second part is hatched, so that colour alone does not tell one from the next.
HATCHES = ("", "wdUpDiag", "", "wdDnDiag", "", "wdUpDiag")
MOST_BARS = 12
LAST_BAR = FIRST_ROW + MOST_BARS - 1  # however many products there are now: others are typed later
CHART_COLUMNS = 14
GAP = 2
ROWS_BESIDE = 28  # as long as the chart is high, and no longer than a page


def add(draft: Draft, sheet: Worksheet, layout: Layout, parts: Sequence[str]) -> None:
    """Put the chart right of the list, on the second page; its text for who cannot see it."""
    chart = BarChart()
    chart.type, chart.grouping, chart.overlap, chart.gapWidth = "bar", "stacked", 100, 60
    chart.title = f"What the full cost is made of, {draft.season.currency}: first {MOST_BARS} products"
    chart.title.overlay = False
    for key, colour, hatch in zip(parts, SERIES, HATCHES, strict=True):
        chart.append(_series(sheet, layout, key, colour, hatch))
    names = Reference(sheet, min_col=1, min_row=FIRST_ROW, max_row=LAST_BAR)
    chart.set_categories(names)
    _axes(chart, draft.season.currency)
    chart.legend.position = "b"
    chart.legend.txPr = chart.y_axis.txPr = _as_large_as_cells()
    chart.width, chart.height = 22, 16
    first = len(layout.letters) + 2
    sheet.add_chart(chart, f"{get_column_letter(first)}{FIRST_ROW}")
    _print_beside(sheet, len(layout.letters), first)
    draft.chart_texts.append(
        f"Stacked bars of the first {MOST_BARS} products on Costing: wax, oils, vessel and other parts, "
        "paid work and overhead, own time, running costs; each bar ends at the full cost."
    )


def _print_beside(sheet: Worksheet, last: int, first: int) -> None:
    """Give the chart a second page. One outside the print area is not printed."""
    last_row = sheet.print_area.rpartition("$")[2]
    sheet.print_area = f"A1:{get_column_letter(first + CHART_COLUMNS - 1)}{max(int(last_row), FIRST_ROW + ROWS_BESIDE)}"
    sheet.page_setup.fitToWidth = 2
    # Breaks between pages are not kept where pages are fitted: columns as wide as the list's keep it on its own.
    # The list's last column, why there is no cost, goes with the chart.
    _, *listed, why = widths(sheet, last)
    sheet.column_dimensions[get_column_letter(first - 1)].width = GAP
    for number in range(first, first + CHART_COLUMNS):
        sheet.column_dimensions[get_column_letter(number)].width = (sum(listed) - why - GAP) / CHART_COLUMNS


def _series(sheet: Worksheet, layout: Layout, key: str, colour: str, hatch: str) -> Series:
    column = column_index_from_string(layout.letters[key])
    values = Reference(sheet, min_col=column, min_row=HEAD_ROW, max_row=LAST_BAR)
    series = Series(values, title_from_data=True)
    if hatch:
        hatched = PatternFillProperties(prst=hatch, fgClr=ColorChoice(srgbClr=PAPER), bgClr=ColorChoice(srgbClr=colour))
        series.graphicalProperties = GraphicalProperties(pattFill=hatched)
    else:
        series.graphicalProperties = GraphicalProperties(solidFill=colour)
    series.graphicalProperties.line.solidFill = PAPER
    return series


def _axes(chart: BarChart, currency: str) -> None:
    light = ChartLines(spPr=GraphicalProperties(ln=LineProperties(solidFill="D9DEE1")))
    chart.y_axis.majorGridlines, chart.y_axis.title, chart.y_axis.number_format = light, f"{currency} a piece", "0.00"
    chart.x_axis.title = "Product"
    chart.x_axis.scaling.orientation, chart.y_axis.crosses = "maxMin", "max"
    chart.x_axis.delete = chart.y_axis.delete = False
    chart.x_axis.txPr = _as_large_as_cells()
    for axis in (chart.x_axis, chart.y_axis):
        axis.title.tx.rich.p[0].pPr = ParagraphProperties(defRPr=CharacterProperties(sz=1100, b=True))


def _as_large_as_cells() -> RichText:
    look = CharacterProperties(sz=1100)
    return RichText(p=[Paragraph(pPr=ParagraphProperties(defRPr=look), endParaRPr=look)])
