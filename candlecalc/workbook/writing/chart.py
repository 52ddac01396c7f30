"""Charts: what each candle's full cost is made of, and how a test burns down."""

from collections.abc import Sequence
from typing import Any

from openpyxl.chart import BarChart, LineChart, Reference, ScatterChart, Series
from openpyxl.chart.axis import ChartLines
from openpyxl.chart.marker import Marker
from openpyxl.chart.shapes import GraphicalProperties
from openpyxl.chart.text import RichText
from openpyxl.drawing.colors import ColorChoice
from openpyxl.drawing.fill import PatternFillProperties
from openpyxl.drawing.line import LineProperties
from openpyxl.drawing.text import CharacterProperties, Paragraph, ParagraphProperties, RichTextProperties
from openpyxl.utils import column_index_from_string, get_column_letter
from openpyxl.worksheet.worksheet import Worksheet

from candlecalc.workbook.cells.layout import FIRST_ROW, HEAD_ROW, Layout
from candlecalc.workbook.cells.styles import PAPER, SERIES
from candlecalc.workbook.writing.draft import Draft
from candlecalc.workbook.writing.printed import widths

# Every second part is hatched, so that colour alone does not tell one from the next.
HATCHES = ("", "wdUpDiag", "", "wdDnDiag", "", "wdUpDiag")
MOST_BARS, FEWEST_BARS = 12, 3
CHART_COLUMNS = 14
GAP = 2
ROWS_BESIDE = 24  # as long as the chart is high, and no longer than a page


def bars(products: int) -> int:
    """How many products the chart has room for: those there are; in a blank workbook, as many as may be typed."""
    return max(FEWEST_BARS, min(products or MOST_BARS, MOST_BARS))


def add(draft: Draft, sheet: Worksheet, layout: Layout, named: str, last: str, parts: Sequence[str]) -> None:
    """Put the chart right of the list, on the second page; its text for who cannot see it.

    `named` is the column of names, `last` the last that has numbers, `parts` are those of what each bar adds up.
    """
    chart, shown = BarChart(), bars(len(draft.season.names("recipes")))
    last_bar = FIRST_ROW + shown - 1
    chart.type, chart.grouping, chart.overlap, chart.gapWidth = "bar", "stacked", 100, 60
    chart.title = f"What the full cost is made of, {draft.season.currency}: first {shown} products"
    chart.title.overlay = False
    for key, colour, hatch in zip(parts, SERIES, HATCHES, strict=True):
        chart.append(_series(sheet, layout, key, last_bar, colour, hatch))
    first = column_index_from_string(layout.letters[named])
    names = Reference(sheet, min_col=first, min_row=FIRST_ROW, max_row=last_bar)
    chart.set_categories(names)
    _axes(chart, draft.season.currency)
    chart.legend.position = "b"
    chart.legend.txPr = chart.y_axis.txPr = _as_large_as_cells()
    chart.width, chart.height = 20, 15
    beside = len(layout.letters) + 2
    sheet.add_chart(chart, f"{get_column_letter(beside)}{FIRST_ROW}")
    _print_beside(sheet, first, column_index_from_string(layout.letters[last]), beside)
    draft.chart_texts.append(
        f"Stacked bars of the first {shown} products on Costing: wax, oils, vessel and other parts, "
        "paid work and overhead, own time, running costs; each bar ends at the full cost."
    )


def _print_beside(sheet: Worksheet, names: int, last: int, beside: int) -> None:
    """Give the chart a second page, with the columns of words between. One outside the print area is not printed.

    `names` is the column of names, `last` the last that the chart shows, `beside` the first under the chart.
    """
    last_row = int(sheet.print_area.rpartition("$")[2])
    end = get_column_letter(beside + CHART_COLUMNS - 1)
    sheet.print_area = f"{get_column_letter(names)}1:{end}{max(last_row, FIRST_ROW + ROWS_BESIDE)}"
    sheet.page_setup.fitToWidth = 2
    # Breaks between pages are not kept where pages are fitted: columns as wide as the list's keep it on its own.
    sheet.column_dimensions[get_column_letter(beside - 1)].width = GAP
    room = sum(widths(sheet, last - names, names)) - sum(widths(sheet, beside - 1 - last, last))
    for number in range(beside, beside + CHART_COLUMNS):
        sheet.column_dimensions[get_column_letter(number)].width = room / CHART_COLUMNS


def _series(sheet: Worksheet, layout: Layout, key: str, last_bar: int, colour: str, hatch: str) -> Series:
    column = column_index_from_string(layout.letters[key])
    values = Reference(sheet, min_col=column, min_row=HEAD_ROW, max_row=last_bar)
    series = Series(values, title_from_data=True)
    series.graphicalProperties = hatched(colour, hatch)
    return series


def hatched(colour: str, hatch: str) -> GraphicalProperties:
    """A bar's ground: its colour, with white lines across it where a hatch is named."""
    if hatch:
        lines = PatternFillProperties(prst=hatch, fgClr=ColorChoice(srgbClr=PAPER), bgClr=ColorChoice(srgbClr=colour))
        ground = GraphicalProperties(pattFill=lines)
    else:
        ground = GraphicalProperties(solidFill=colour)
    ground.line.solidFill = PAPER
    return ground


def light_grid() -> ChartLines:
    """Lines of a grid that do not stand before the bars."""
    return ChartLines(spPr=GraphicalProperties(ln=LineProperties(solidFill="D9DEE1")))


def _axes(chart: BarChart, currency: str) -> None:
    chart.y_axis.majorGridlines, chart.y_axis.number_format = light_grid(), "0.00"
    chart.y_axis.title = f"{currency} a piece"
    chart.x_axis.title = "Product"
    chart.x_axis.scaling.orientation, chart.y_axis.crosses = "maxMin", "max"
    chart.x_axis.delete = chart.y_axis.delete = False
    chart.x_axis.txPr = _as_large_as_cells()
    for axis in (chart.x_axis, chart.y_axis):
        strong_title(axis)


def over_hours(
    draft: Draft,
    sheet: Worksheet,
    anchor: str,
    columns: Sequence[str],
    rows: tuple[int, int],
    titles: tuple[str, str],
) -> None:
    """Two measures against hours, each on its own side: from columns of hours, of the one, and of the other."""
    hours, *measures = (column_index_from_string(letter) for letter in columns)
    first, last = rows
    at_hours = Reference(sheet, min_col=hours, min_row=first, max_row=last)
    left, right = ScatterChart(), ScatterChart()
    for chart, column, title, colour, mark in zip(
        (left, right), measures, titles, SERIES, ("circle", "diamond"), strict=False
    ):
        values = Reference(sheet, min_col=column, min_row=first, max_row=last)
        series = Series(values, at_hours, title=title)
        series.graphicalProperties = GraphicalProperties(ln=LineProperties(solidFill=colour, w=22000))
        series.marker = Marker(symbol=mark, size=7, spPr=GraphicalProperties(solidFill=colour))
        series.smooth = False
        chart.scatterStyle = "lineMarker"
        chart.append(series)
        chart.y_axis.title, chart.y_axis.number_format, chart.y_axis.delete = title, "0.0", False
    left.y_axis.majorGridlines, right.y_axis.majorGridlines = light_grid(), None
    left.x_axis.number_format, left.x_axis.delete = "0", False  # its title would stand over the chart too
    left.x_axis.majorGridlines, left.x_axis.scaling.min = None, 0
    right.y_axis.axId, right.y_axis.crosses = 200, "max"
    right.y_axis.scaling.min = 0
    for axis in (left.y_axis, right.y_axis):
        strong_title(axis)
        axis.txPr = _as_large_as_cells()
    left.x_axis.txPr = _as_large_as_cells()
    _titled(left, "Weight and melt pool over the hours burnt")
    left.width, left.height = 27.5, 9
    left += right
    sheet.add_chart(left, anchor)
    draft.chart_texts.append(
        "Two lines over the hours that the picked test burnt: what it weighs, which falls, and its melt pool."
    )


def over_weeks(draft: Draft, sheet: Worksheet, anchor: str, columns: Sequence[str], rows: tuple[int, int]) -> None:
    """What is wanted in each week as bars, and what is left at its end as a line: from columns of weeks, of both."""
    weeks, wanted, left = (column_index_from_string(letter) for letter in columns)
    first, last = rows
    bars, line = BarChart(), LineChart()
    for part, column, title in ((bars, wanted, "wanted in the week"), (line, left, "left at its end")):
        values = Reference(sheet, min_col=column, min_row=first, max_row=last)
        part.append(Series(values, title=title))
        part.set_categories(Reference(sheet, min_col=weeks, min_row=first, max_row=last))
    bars.series[0].graphicalProperties = GraphicalProperties(solidFill=SERIES[1])
    line.series[0].graphicalProperties = GraphicalProperties(ln=LineProperties(solidFill=SERIES[0], w=28000))
    line.series[0].marker = Marker(symbol="circle", size=5, spPr=GraphicalProperties(solidFill=SERIES[0]))
    line.series[0].smooth = False
    bars.gapWidth = 60
    bars.y_axis.majorGridlines, bars.y_axis.title, bars.y_axis.number_format = light_grid(), "Candles", "0"
    bars.x_axis.number_format, bars.x_axis.tickLblPos = "mm-dd", "low"
    bars.x_axis.title = "Week from (month-day)"
    for axis in (bars.x_axis, bars.y_axis):
        axis.delete = False
        axis.txPr = _as_large_as_cells()
        strong_title(axis)
    # Upright: days of half a year do not stand side by side.
    bars.x_axis.txPr.bodyPr = RichTextProperties(rot=-5400000, vert="horz")
    _titled(bars, "Stock against what is wanted, by week")
    bars.width, bars.height = 14.4, 9.4
    bars += line
    sheet.add_chart(bars, anchor)
    draft.chart_texts.append(
        "Bars of what is wanted of the picked candle in each week, and a line of what is left at its end: "
        "below nothing where there is too little."
    )


def _titled(chart: BarChart | ScatterChart, title: str) -> None:
    """The title over it, and what its colours mean under it."""
    chart.title = title
    chart.title.overlay = False
    chart.legend.position = "b"
    chart.legend.txPr = _as_large_as_cells()


def strong_title(of: Any) -> None:
    """The title of an axis or a chart, in the size of cells."""
    of.title.tx.rich.p[0].pPr = ParagraphProperties(defRPr=CharacterProperties(sz=1100, b=True))


def _as_large_as_cells() -> RichText:
    look = CharacterProperties(sz=1100)
    return RichText(p=[Paragraph(pPr=ParagraphProperties(defRPr=look), endParaRPr=look)])
