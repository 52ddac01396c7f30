"""What was bought: its cost with all that it took to have it."""

from candlecalc.calc.sources import LANDED_COST
from candlecalc.calc.terms import Money
from candlecalc.declaration.declared import formula


@formula(
    native="price-discount+charges+tax",
    requires={"discount <= price": "the discount cannot be more than the price"},
    source=LANDED_COST,
)
def landed_cost(price: Money, discount: Money = 0.0, charges: Money = 0.0, tax: Money = 0.0) -> Money:
    """Cost of a line of a purchase with its share of freight and duty, and the tax you cannot claim back.

    `split_charge` shares a document's freight out over its lines.

    >>> landed_cost(price=120, discount=6, charges=14.5)
    128.5
    """
    return price - discount + charges + tax
