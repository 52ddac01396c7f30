"""Requirements: what to order and start, in which week, for all that is wanted, through every recipe level."""

from collections import defaultdict
from typing import Any, DefaultDict, Dict, List, NamedTuple

from candlecalc.calc.plan import packs_to_buy
from candlecalc.calc.sources import NET_REQUIREMENTS
from candlecalc.calc.terms import Quantity
from candlecalc.calc.terms.plan import (
    Coming,
    ComingAmounts,
    ComingWeeks,
    ItemLeads,
    ItemName,
    ItemPacks,
    Items,
    ItemsOnHand,
    Note,
    Products,
    ReadyWeek,
    RecipeAmounts,
    RecipeParts,
    StartWeek,
    Wanted,
    WantedAmounts,
    WantedWeeks,
)
from candlecalc.declaration.declared import formula
from candlecalc.quantities.rounding import round_half_away

LATE = "late: before week 1"

ByWeek = Dict[float, float]


class Order(NamedTuple):
    """What to order or start, in which week, by when it is needed, and how much."""

    item: ItemName
    start: StartWeek
    ready: ReadyWeek
    amount: Quantity
    note: Note


class Item(NamedTuple):
    name: str
    on_hand: float
    pack: float  # 0 for any amount
    lead: float


class Part(NamedTuple):
    name: str
    amount: float


@formula(
    source=NET_REQUIREMENTS,
    words="shopping list, material requirements, MRP, what do I need to buy, what am I short of, materials for "
    "the season, wax for the season, materials for all orders, plan purchases",
)
def net_requirements(
    items: Items,
    on_hand: ItemsOnHand,
    packs: ItemPacks,
    leads: ItemLeads,
    products: Products,
    parts: RecipeParts,
    amounts: RecipeAmounts,
    wanted: Wanted,
    weeks: WantedWeeks,
    quantities: WantedAmounts,
    coming: Coming = None,
    coming_weeks: ComingWeeks = None,
    coming_amounts: ComingAmounts = None,
) -> List[Order]:
    """What to order and start, and when: what is wanted less what is there, through every recipe level.

    Four tables, each a few columns of one length: items (what is on hand, the
    pack, the weeks it takes), recipe lines (product, part, amount in one), what
    is wanted by which week, and what is on its way. A part is needed in the
    week in which its product is started. An order that would have had to
    start before week 1 is given all the same, with a note.

    >>> net_requirements(items=["pair", "wax"], on_hand=[10, 1000], packs=["", 5000], leads=[2, 1],
    ...     products=["pair"], parts=["wax"], amounts=[400], wanted=["pair"], weeks=[6], quantities=[40])[1][:4]
    ('wax', 3.0, 4.0, 15000.0)
    """
    known = _items(items, on_hand, packs, leads)
    recipes = _recipes(known, products, parts, amounts)
    gross = _by_week("wanted", known, wanted, weeks, quantities)
    due = _by_week("coming", known, coming, coming_weeks, coming_amounts)
    orders: List[Order] = []
    for name in _products_first(known, recipes):
        for order in _orders(known[name], gross[name], due[name]):
            orders.append(order)
            for part in recipes[name]:
                gross[part.name][order.start] += order.amount * part.amount
    return orders


def _orders(item: Item, gross: ByWeek, due: ByWeek) -> List[Order]:
    """What one item needs, from its own demand by week."""
    orders, there = [], item.on_hand
    for week in sorted({*gross, *due}):
        there = round_half_away(there + due.get(week, 0.0) - gross.get(week, 0.0), 9)
        if there < 0:
            amount = packs_to_buy(-there, item.pack) * item.pack if item.pack else -there
            start = week - item.lead
            orders.append(Order(item.name, start, week, amount, LATE if start < 1 else None))
            there = round_half_away(there + amount, 9)
    return orders


def _products_first(known: Dict[str, Item], recipes: Dict[str, List[Part]]) -> List[str]:
    """Every item after all the products that it goes into."""
    users = dict.fromkeys(known, 0)
    for lines in recipes.values():
        for part in lines:
            users[part.name] += 1
    order = [name for name in known if not users[name]]
    for name in order:  # it grows as it is gone through
        for part in recipes[name]:
            users[part.name] -= 1
            if not users[part.name]:
                order.append(part.name)
    if len(order) < len(known):
        circle = _circle([name for name in known if name not in order], recipes)
        raise ValueError(f"net_requirements: {', '.join(known[name].name for name in circle)} go round in a circle.")
    return order


def _circle(stuck: List[str], recipes: Dict[str, List[Part]]) -> List[str]:
    """Items that go into each other, out of those that all go into another of them."""
    goes_into = {part.name: product for product in stuck for part in recipes[product]}
    path = [stuck[0]]
    while path[-1] not in path[:-1]:
        path.append(goes_into[path[-1]])
    return path[path.index(path[-1]) + 1 :]


def _items(items: Items, on_hand: ItemsOnHand, packs: ItemPacks, leads: ItemLeads) -> Dict[str, Item]:
    known: Dict[str, Item] = {}
    for place, (name, there, pack, lead) in enumerate(zip(items, on_hand, packs, leads), start=1):
        if name is None and not (there is pack is lead is None):
            raise ValueError(f"net_requirements: items is blank at place {place}.")
        if name is not None:
            if _key(name) in known:
                raise ValueError(f'net_requirements: items at place {place} names "{name}" again.')
            known[_key(name)] = Item(name, there or 0.0, pack or 0.0, lead or 0.0)
    return known


def _recipes(
    known: Dict[str, Item], products: Products, parts: RecipeParts, amounts: RecipeAmounts
) -> Dict[str, List[Part]]:
    recipes: Dict[str, List[Part]] = {name: [] for name in known}
    for place, (product, part, amount) in _lines("products", products, parts, amounts):
        lines = recipes[_known("products", place, known, product)]
        lines.append(Part(_known("parts", place, known, part), amount))
    return recipes


def _by_week(table: str, known: Dict[str, Item], names: Any, weeks: Any, amounts: Any) -> Dict[str, ByWeek]:
    by_week: Dict[str, DefaultDict[float, float]] = {name: defaultdict(float) for name in known}
    for place, (name, week, amount) in _lines(table, names, weeks, amounts):
        by_week[_known(table, place, known, name)][week] += amount
    return dict(by_week)


def _lines(table: str, *columns: Any) -> List[Any]:
    """The lines of a table with their places; a line filled in by half is refused."""
    lines = list(enumerate(zip(*(column or () for column in columns)), start=1))
    for place, line in lines:
        if None in line and any(cell is not None for cell in line):
            raise ValueError(f"net_requirements: the line of {table} at place {place} is filled in by half.")
    return [(place, line) for place, line in lines if None not in line]


def _known(table: str, place: int, known: Dict[str, Item], name: str) -> str:
    if _key(name) not in known:
        raise ValueError(f'net_requirements: {table} at place {place} is "{name}", which is not among the items.')
    return _key(name)


def _key(name: str) -> str:
    # As spreadsheets compare words.
    return name.strip().lower()
