"""The candle functions as Excel finds them: every one in this module, by its name in a cell."""

from candlecalc.faces.excel.functions import decorated

globals().update(decorated(__name__))
