"""The trade's arithmetic as plain functions: numbers in fixed units, no file or workbook in sight."""

from candlecalc.calc.batch import *  # noqa: F403
from candlecalc.calc.books import *  # noqa: F403
from candlecalc.calc.burn import *  # noqa: F403
from candlecalc.calc.burn_signs import *  # noqa: F403
from candlecalc.calc.burn_time import *  # noqa: F403
from candlecalc.calc.conversion import *  # noqa: F403
from candlecalc.calc.cooling import *  # noqa: F403
from candlecalc.calc.cost import *  # noqa: F403
from candlecalc.calc.curing import *  # noqa: F403
from candlecalc.calc.fragrance import *  # noqa: F403
from candlecalc.calc.hazard import *  # noqa: F403
from candlecalc.calc.hazard_label import *  # noqa: F403
from candlecalc.calc.heat import *  # noqa: F403
from candlecalc.calc.label import *  # noqa: F403
from candlecalc.calc.measure import *  # noqa: F403
from candlecalc.calc.money import *  # noqa: F403
from candlecalc.calc.one_season import *  # noqa: F403
from candlecalc.calc.plan import *  # noqa: F403
from candlecalc.calc.pool import *  # noqa: F403
from candlecalc.calc.price import *  # noqa: F403
from candlecalc.calc.purchases import *  # noqa: F403
from candlecalc.calc.requirements import *  # noqa: F403
from candlecalc.calc.schedule import *  # noqa: F403
from candlecalc.calc.selling import *  # noqa: F403
from candlecalc.calc.stock import *  # noqa: F403
from candlecalc.calc.stocktake import *  # noqa: F403
from candlecalc.calc.vessel import *  # noqa: F403
from candlecalc.calc.wax import *  # noqa: F403
from candlecalc.calc.wick import *  # noqa: F403
from candlecalc.declaration.declared import REGISTRY

# A name that a function had before is no name in its file.
globals().update({name: formula.checked for name, formula in REGISTRY.items()})

__all__ = sorted(REGISTRY)
