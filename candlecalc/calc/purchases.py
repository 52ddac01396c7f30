"""What was bought: its cost with freight, duty and tax."""

from typing import Annotated

from candlecalc.calc.sources import LANDED_COST
from candlecalc.calc.terms import Money
from candlecalc.declaration.declared import formula

Returned = Annotated[Money, "discount, and what the supplier gave back"]
Freight = Annotated[Money, "the line's share of freight and duty"]
TaxKept = Annotated[Money, "tax that you cannot claim back"]


@formula(
    native="price-returned+shipping+tax",
    requires={"returned <= price": "no more can be taken off than the price"},
    source=LANDED_COST,
    words="landed cost, freight, shipping on an order, import duty, what a delivery cost, true cost of a purchase",
)
def landed_cost(price: Money, returned: Returned = 0.0, shipping: Freight = 0.0, tax: TaxKept = 0.0) -> Money:
    """Cost of a line of a purchase with its share of freight and duty, and the tax you cannot claim back.

    `split_charge` shares a document's freight out over its lines.

    >>> landed_cost(price=120, returned=6, shipping=14.5)
    128.5
    """
    return price - returned + shipping + tax
