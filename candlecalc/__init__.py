"""candlecalc: the arithmetic of making and selling scented container candles.

`candlecalc.oil_for_wax(500, 0.08)` and every other function of `candlecalc.calc` can be reached here.
"""

from importlib import import_module
from typing import TYPE_CHECKING, Any

__version__ = "0.2.0"

if TYPE_CHECKING:
    from candlecalc.calc import *  # noqa: F403


def __getattr__(name: str) -> Any:
    # Looked up when asked for: importing the package must not load the whole library.
    if name.startswith("_"):
        raise AttributeError(name)
    return getattr(import_module("candlecalc.calc"), name)
