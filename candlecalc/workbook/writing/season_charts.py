"""The two charts of the season's page: sales by month with last season's beside them, and what products left over."""

from openpyxl.chart import BarChart, Reference, Series
from openpyxl.chart.text import RichText
from openpyxl.drawing.text import CharacterProperties, Paragraph, ParagraphProperties
from openpyxl.utils import column_index_from_string
from openpyxl.worksheet.worksheet import Worksheet

from candlecalc.workbook.cells.styles import SERIES
from candlecalc.workbook.writing.chart import hatched, light_grid, strong_title
from candlecalc.workbook.writing.draft import Draft

MOST_BARS = 6
WIDTH, HEIGHT = 13.2, 6.1  # centimetres: two side by side
SIZE = 1000  # hundredths of a point


def bars(products: int) -> int:
    """How many bars show what products left over: as many as there are, the last for all others."""
    return min(products or MOST_BARS, MOST_BARS - 1) + 1


def by_month(draft: Draft, sheet: Worksheet, anchor: str, head: int, months: int) -> None:
    """Two bars a month. `head` is the row of the months' names; sales and last season's stand below it."""
    chart = _bars("col", f"Sales before tax by month, {draft.season.currency}")
    last = 1 + months
    for row, title, colour, hatch in zip(
        (head + 1, head + 2), ("this season", "last season"), SERIES, ("", "wdUpDiag"), strict=False
    ):
        series = Series(Reference(sheet, min_col=2, max_col=last, min_row=row), title=title)
        series.graphicalProperties = hatched(colour, hatch)
        chart.append(series)
    chart.set_categories(Reference(sheet, min_col=2, max_col=last, min_row=head))
    chart.legend.position, chart.legend.txPr = "b", _text()
    sheet.add_chart(chart, anchor)
    draft.chart_texts.append(
        "Two bars for each month of the season: sales before tax, and those of the same month last season."
    )


def by_product(draft: Draft, sheet: Worksheet, anchor: str, columns: tuple[str, str], rows: tuple[int, int]) -> None:
    """A bar for each product that left most over, and one for all others; they add up to what all left over."""
    chart = _bars("bar", f"Left over on candles by product, {draft.season.currency}")
    names, sums = (
        Reference(sheet, min_col=column_index_from_string(letter), min_row=rows[0], max_row=rows[1])
        for letter in columns
    )
    series = Series(sums, title="left over on candles")
    series.graphicalProperties = hatched(SERIES[2], "")
    series.invertIfNegative = False
    chart.append(series)
    chart.set_categories(names)
    chart.legend = None
    chart.x_axis.scaling.orientation, chart.y_axis.crosses = "maxMin", "max"
    chart.x_axis.tickLblPos = "low"  # clear of a bar that goes below nothing
    sheet.add_chart(chart, anchor)
    draft.chart_texts.append(
        "Bars of the products that left most over on candles, most first, and one of all others; "
        "together they are what all products left over."
    )


def _bars(way: str, title: str) -> BarChart:
    chart = BarChart()
    chart.type, chart.grouping, chart.gapWidth = way, "clustered", 60
    chart.title, chart.style = title, None
    chart.title.overlay = False
    strong_title(chart)
    chart.y_axis.majorGridlines, chart.y_axis.number_format = light_grid(), "#,##0"
    chart.x_axis.delete = chart.y_axis.delete = False
    chart.x_axis.txPr = chart.y_axis.txPr = _text()
    chart.width, chart.height = WIDTH, HEIGHT
    return chart


def _text() -> RichText:
    look = CharacterProperties(sz=SIZE)
    return RichText(p=[Paragraph(pPr=ParagraphProperties(defRPr=look), endParaRPr=look)])
