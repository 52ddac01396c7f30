"""Small plans, and the least that each can come to, found by trying all ways."""

import datetime
import itertools
import random
from dataclasses import dataclass

from plan_books import maker

FIRST = datetime.date(2028, 1, 3)
EVENINGS = 8  # as many as are tried


def cheapest(packs, price, first, first_price, second, second_price):
    """What the cheapest order of so many packs or more costs, tried one by one."""

    def each(count):
        return second_price if count >= second else first_price if count >= first else price

    return min(count * each(count) for count in range(packs, max(packs, second) + 3))


@dataclass(frozen=True)
class Case:
    """Pots of each line with the evening on which it must be poured at the latest, and how many an evening takes."""

    lines: tuple[tuple[int, int], ...]  # (last evening from 0, pots)
    takes: tuple[int, ...]

    def season(self):
        """No cure and no finishing: needed on a day, poured by it. A pot is for ten candles."""
        demand = [
            {
                "day": FIRST + datetime.timedelta(last),
                "product": f"Candle {nth}",
                "pieces": 10.0 * pots,
                "finishing": 0.0,
            }
            for nth, (last, pots) in enumerate(self.lines)
        ]
        evenings = [
            {"date": FIRST + datetime.timedelta(nth), "pots": float(takes)} for nth, takes in enumerate(self.takes)
        ]
        names = [f"Candle {nth}" for nth in range(len(self.lines))]
        return maker(FIRST, candles=names, demand=demand, evenings=evenings)

    def slots(self):
        """The evening of each pot that can be poured."""
        return [evening for evening, takes in enumerate(self.takes) for _ in range(takes)]

    def early(self, rows):
        """How many days early all pots together are by the plan's rows; nothing where a pot is late or stands twice."""
        slots, used, whole = self.slots(), set(), 0
        for due, pots, before in rows:
            last = int(due) - (FIRST - datetime.date(1899, 12, 30)).days
            for place in range(int(before), int(before + pots)):
                if place < 0 or place in used or slots[place] > last:
                    return None
                used.add(place)
                whole += last - slots[place]
        return whole


def least_early(case):
    """The fewest days early that any way of putting pots on evenings comes to; nothing where there is none."""
    pots = [last for last, count in case.lines for _ in range(count)]
    found = [
        sum(last - slot for last, slot in zip(pots, chosen, strict=True))
        for places in itertools.combinations(case.slots(), len(pots))
        for chosen in set(itertools.permutations(places))
        if all(slot <= last for last, slot in zip(pots, chosen, strict=True))
    ]
    return min(found, default=None)


def pots_on_evenings(seed):
    """A case of a few lines, most of which evenings have room for."""
    chance = random.Random(seed)  # noqa: S311
    takes = tuple(chance.choice((0, 1, 1, 2)) for _ in range(EVENINGS))
    lines, left = [], 5
    while left and len(lines) < 3:
        pots = chance.randint(1, min(3, left))
        left -= pots
        lines.append((chance.randint(2, EVENINGS - 1), pots))
    return Case(tuple(lines), takes)
