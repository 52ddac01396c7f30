"""A year of the reference typed into a season workbook, and the figures that its tabs show."""

import functools
from dataclasses import replace
from datetime import date, timedelta
from fractions import Fraction

import books
import typed_in
from openpyxl.utils import get_column_letter
from year_cards import PARTS
from year_figures import ERROR, Figure, differences, figures
from year_records import WEIGHED, Line, Year
from year_sold import sold

from candlecalc.season.season import Season
from candlecalc.season.tables import TABLES
from candlecalc.workbook.cells.layout import FIRST_ROW
from candlecalc.workbook.tabs.working.recipe_lines import OF_EXTRAS

DAY_0 = date(1899, 12, 30)
SOLD = (("Sales", "sales"), ("Market lines", "market_lines"))
OUT = {1: ("Moves", "moves"), 3: ("Counts", "counts")}
SUMS = (("By place", "by_place", "place"), ("By product", "by_product", "product"), ("Months", "months", "month"))
SUM_TABS = {tab for tab, _, _ in SUMS}
LOGS = ("purchases", "pours", "moves", "counts", "sales", "market_lines")
GRAMS = {"each": 1, "g": 1, "kg": 1000}


def without_sets(year: Year) -> Year:
    """The same with no set in it: in the workbook a packed set goes on holding its candles, see test_sets.py.

    Opening candles cure from the day of their row.
    """
    candles = {recipe.product for recipe in year.recipes} | {each.name for each in year.materials}
    sets = {recipe.product for recipe in year.recipes if any(line.thing in candles - {m.name for m in year.materials} for line in recipe.lines)}  # fmt: skip
    pours = [replace(pour, poured_on=pour.day if pour.kind == "opening" else None) for pour in year.pours if pour.product not in sets]  # fmt: skip
    batches = {pour.batch for pour in pours}
    return replace(
        year,
        recipes=tuple(recipe for recipe in year.recipes if recipe.product not in sets),
        pours=tuple(pours),
        changes=tuple(change for change in year.changes if change.batch in batches),
        moves=tuple(move for move in year.moves if move.thing not in sets),
        counts=tuple(count for count in year.counts if count.thing not in sets),
    )


def season_of(year: Year) -> Season:
    """What a maker types for a year: grams, one vessel for each jar, a recipe's parts as shares."""
    made = books.small().with_records()
    first, rest = year.rates[0], year.rates[1:]
    made.settings |= {
        "weight_unit": "g",
        "temperature_unit": "C",
        "largest_pot": 5000.0,
        "stock": year.method,
        "as_of": year.as_of,
        "first_day": date(2026, 1, 1),
        "last_day": date(2026, 12, 31),
        "waste": float(year.waste),
        "season_hours": float(year.season_hours),
        "paid_rate": first.paid_rate / 100,
        "production_overhead": first.overhead / 100,
    }
    kinds = {each.name: each.kind for each in year.materials}
    packs = {each.name: each.pack for each in year.materials}
    tables = {key: [] for key in TABLES}
    for each in year.materials:
        point = None if each.reorder_point is None else float(each.reorder_point / GRAMS[each.pack_unit])
        tables["materials"].append({
            "material": each.name, "kind": each.kind, "pack_size": float(each.pack_size), "pack_unit": each.pack_unit,
            "pack_price": 1.0, "density": 0.9 if each.kind == "wax" else None, "cure_days": float(each.cure_days) if each.cure_days else None,
            "reorder_at": point,
        })  # fmt: skip
        if each.kind == "vessel":
            tables["vessels"].append({
                "vessel": each.name, "use": "stays", "bought_as": each.name, "measured": "water", "water": 200.0,
                "water_temperature": 20.0, "headspace": 0.1,
            })  # fmt: skip
    sets = {each.name for each in year.sets}
    tables["recipes"] = [_recipe(recipe, kinds, recipe.product in sets) for recipe in year.recipes]
    extras = {
        (recipe.product, line.thing): line.each
        for recipe in year.recipes
        for line in recipe.lines
        if kinds.get(line.thing) == "other"
    }
    tables["extras"] = [
        {"product": product, "material": thing, "count": float(each)} for (product, thing), each in extras.items()
    ]
    tables["sets"] = [
        {"set": each.name, "product": line.thing, "count": float(line.each)}
        for each in year.sets
        for line in each.holds
    ]
    made.settings |= {"tax_rate": float(year.selling.tax_rate), "shelf_prices": year.selling.stated}
    tables |= typed_sales(year.selling)
    tables["rates"] = [
        {"date": each.since, "paid_rate": each.paid_rate / 100, "overhead": float(Fraction(each.overhead, 100) / year.season_hours)}
        for each in rest
    ]  # fmt: skip
    for line in year.purchases:
        opening = line.kind == "opening"
        tables["purchases"].append({
            "date": line.day, "material": line.material, "kind": "opening" if opening else None,
            "packs": float(line.amount / packs[line.material]) if opening else float(line.packs),
            "price": line.value / 100 if opening else float(line.price / 100),
            "discount": line.discount / 100 or None, "charges": line.charges / 100 or None, "tax": line.tax / 100 or None,
            "document": line.document or None, "supplier": line.supplier or None, "lot": line.lot or None,
            "expiry": line.use_by, "opened": line.opened_on,
        })  # fmt: skip
    for number, pour in enumerate(year.pours, start=1):
        opening = pour.kind == "opening"
        tables["pours"].append({
            "date": pour.day, "batch": float(number), "product": pour.product, "good": float(pour.good),
            "planned": None if pour.planned is None else float(pour.planned), "seconds": float(pour.seconds) or None,
            "scrapped": float(pour.scrapped) or None, "tests": float(pour.tests) or None,
            "hours": None if pour.hours is None else float(pour.hours),
            "kind": "opening" if opening else None, "cost": pour.value / 100 if opening else None,
        })  # fmt: skip
    numbers = _batch_numbers(year)
    for change in year.changes:
        tables["instead"].append({
            "batch": float(numbers[change.batch]), "material": change.material, "other": change.instead or None,
            "amount": None if change.weighed is None else float(change.weighed), "lot": change.lot or None,
        })  # fmt: skip
    for move in year.moves:
        of = "material" if move.thing in kinds else "product"
        tables["moves"].append({"date": move.day, "kind": move.kind, of: move.thing, "amount": float(move.amount)})
    for count in year.counts:
        of = "material" if count.thing in kinds else "product"
        tables["counts"].append({
            "date": count.day, of: count.thing, "counted": float(count.counted), "by": count.by,
            "kept": "yes" if count.is_move else None,
        })  # fmt: skip
    for key, rows in tables.items():
        type_in(made, key, rows)
    return made


def typed_sales(selling):
    """The tables of sales, places and prices, in the order of their rows."""
    return {
        "places": [
            _money(each, "fee_item", "fee_order", "least_fee") | {
                "postage_paid": each.postage / 100, "packing_order": each.packing / 100,
                "cards_alone": "yes" if each.cards_alone else None,
                "place": each.name, "kind": each.kind, "collector": each.collector, "fee": float(each.fee),
                "fee_basis": each.basis, "discount": float(each.discount), "stated": each.stated or None,
                "holds_from": each.since, "per_order": 2.0, "margin": 0.1, "rules": "us",
            }
            for each in selling.places
        ],
        "prices": [
            _money(each, "price") | {"product": each.product, "place": each.place, "holds_from": each.since}
            for each in selling.prices
        ],
        "tax_rates": [
            {"date": each.since, "rate": float(each.rate), "area": each.area or None} for each in selling.tax_rates
        ],
        "sales": [
            _money(each, "price", "fee", "discount", "postage") | {
                "date": each.day, "place": each.place, "product": each.product or None, "pieces": _number(each.pieces),
                "kind": each.kind or None, "order": each.order or None, "tax_rate": _number(each.tax_rate),
                "area": each.area or None, "became": each.became or None, "paid_on": each.paid_on,
            }
            for each in selling.sales
        ],
        "market_days": [_money(each, "card") | {"date": each.day, "place": each.place} for each in selling.market_days],
        "market_lines": [
            _money(each, "price") | {"date": each.day, "product": each.product, "place": each.place or None}
            | {key: _number(getattr(each, key)) for key in ("along", "back", "sold", "given", "broken")}
            for each in selling.market_lines
        ],
    }  # fmt: skip


def _money(row, *keys):
    return {key: None if getattr(row, key) is None else getattr(row, key) / 100 for key in keys}


def _number(value):
    return None if value is None else float(value)


def type_in(season, key, rows):
    """Put rows into a table of a season in place of what it has."""
    season.tables[key] = list(rows)


def in_memory(season):
    """Where everything stands in a season's workbook, and its values by tab and cell, without a file."""
    made = typed_in.worked_out(season)
    cells = {
        (tab, f"{get_column_letter(column)}{row}"): value
        for tab, rows in made.values.items()
        for row, found in enumerate(rows, start=1)
        for column, value in enumerate(found, start=1)
    }
    return made.plan, cells


def _batch_numbers(year: Year) -> dict[str, int]:
    return {pour.batch: number for number, pour in enumerate(year.pours, start=1)}


def _recipe(recipe, kinds, is_set):
    """A recipe as it is typed: the first wax and its share of oil, and what else a piece has. A set has its box."""
    of = {kind: [line for line in recipe.lines if kinds[line.thing] == kind] for kind in set(kinds.values())}
    if is_set:
        row = {
            "product": recipe.product, "kind": "set", "minutes": float(recipe.minutes), "setup": float(recipe.setup),
            "usual_batch": 12.0, "paid_share": float(recipe.paid_share), "holds_from": recipe.since,
        }  # fmt: skip
        return row | {
            column: of[kind][0].thing for column, kind in (("packing", "packaging"), ("label", "label")) if of.get(kind)
        }
    waxes, oils, dyes = (of.get(kind, []) for kind in WEIGHED)
    wax, oil = (sum(line.each for line in lines) for lines in (waxes, oils))
    row = {
        "product": recipe.product, "kind": "made", "vessel": of["vessel"][0].thing, "wax": waxes[0].thing,
        "load": float(oil / wax), "minutes": float(recipe.minutes), "setup": float(recipe.setup), "usual_batch": 12.0,
        "paid_share": float(recipe.paid_share), "holds_from": recipe.since,
        "wick": of["wick"][0].thing, "wicks": float(of["wick"][0].each),
    }  # fmt: skip
    if len(waxes) > 1:
        row |= {"wax_second": waxes[1].thing, "share_wax": float(waxes[1].each / wax)}
    for part, line in zip(("first", "second", "third"), oils, strict=False):
        row |= {f"oil_{part}": line.thing, f"share_{part}": float(line.each / oil)}
    if dyes:
        row |= {"dye": dyes[0].thing, "dye_share": float(dyes[0].each / wax)}
    if of.get("packaging"):
        row |= {"packing": of["packaging"][0].thing}
    return row


class Typed:
    """A year's workbook as it was calculated: its tabs by column, and what of the reference it answers."""

    def __init__(self, year, plan, values):
        """`values` are those of the cells by tab and cell."""
        self.year, self.plan, self.values = year, plan, values

    def cell(self, table, key, row):
        """A value by its place in the list, the head being 1; None where it is blank."""
        place = self.plan.layouts[table]
        value = self.values.get((place.title, f"{place.letters[key]}{FIRST_ROW + row - 2}"))
        if isinstance(value, str) and value.startswith("#"):
            return ERROR
        return None if value == "" else value

    def rows(self, table, *keys):
        """Each row of a list in which the first of the columns is not blank: its place, and those values."""
        for row in range(2, self.plan.layouts[table].rows + 2):
            found = [self.cell(table, key, row) for key in keys]
            if found[0] is not None:
                yield row, found

    def nth(self, log, row):
        """Which of the lines of a log stands in a row: there may be free rows between them."""
        return self._filled[log].index(int(row)) + 1

    @functools.cached_property
    def _filled(self):
        return {log: [row for row, _ in self.rows(log, "date")] for log in LOGS}

    def as_poured(self):
        """The year with what one piece takes as the workbook has it, so that each jar need not be measured to fit."""
        names = [each.name for each in self.year.materials]
        weighed = {each.name for each in self.year.materials if each.kind in WEIGHED}
        lines = {}
        for _, (recipe, material, amount) in self.rows("lines", "recipe", "material", "amount"):
            if material is not None:
                name = names[int(material) - 2]
                left = 1 - self.year.waste if name in weighed else 1
                for at in self._recipes_of(int(recipe)):
                    lines.setdefault(at, []).append(Line(name, Fraction(amount) * left))
        recipes = tuple(replace(each, lines=tuple(lines.get(at, ()))) for at, each in enumerate(self.year.recipes))
        return replace(self.year, recipes=recipes)

    def _recipes_of(self, number):
        """The recipe of a line of Recipe lines, or all of a product where it is an extra part."""
        if number <= OF_EXTRAS:
            return [number - 2]
        product = self.year.recipes[number - OF_EXTRAS - 2].product
        return [at for at, recipe in enumerate(self.year.recipes) if recipe.product == product]

    def figures(self):
        """What the tabs show, as the reference calls it."""
        found = {}
        parts = (
            self._purchases,
            self._batches,
            self._used,
            self._unpacked,
            self._counts,
            self._stock,
            self._candles,
            self._sold,
            self._sums,
            self._lots,
        )
        for part in parts:
            for tab, row, heads in part():
                found |= {Figure(tab, row, head.replace("_", " ")): value for head, value in heads.items()}
        return found

    def _purchases(self):
        for row, (landed, amount, cost) in self.rows("purchases", "landed", "amount", "unit_cost"):
            share = self.cell("freight", "share", row)
            yield "Purchases", self.nth("purchases", row), {"amount": amount, "share_of_charges": share, "landed_cost": landed, "unit_cost": cost}  # fmt: skip

    def _batches(self):
        keys = ("making", "ready_on", "pieces", "work", "materials", "paid", "overhead", "kind")
        for row, (making, ready, pieces, work, materials, paid, overhead, kind) in self.rows("pours", *keys):
            yield "Batch log", self.nth("pours", row), {"making_cost": making, "ready_on": _day(ready)}
            if not kind:
                hours = work / 60 if isinstance(work, (int, float)) else work
                yield "Batch log", self.nth("pours", row), {"pieces": pieces, "hours": hours, "materials": materials, "labour": paid, "overhead": overhead}  # fmt: skip

    def _used(self):
        names = [each.name for each in self.year.materials]
        batches = [pour.batch for pour in self.year.pours]
        keys = ("what", "source", "part", "thing", "amount", "cost")
        for _, (what, source, part, thing, amount, cost) in self.rows("used", *keys):
            if what == 1:
                planned = names[int(self.cell("lines", "material", int(part) + 1)) - 2]
                heads = {"thing": names[int(thing) - 2], "amount": amount, "cost": cost}
                yield "Used", (batches[self.nth("pours", source) - 1], planned), heads
            elif what == 2:
                yield "Moves", self.nth("moves", source), {"cost": cost}
            elif what == 3:
                line = self._taken_out[self.cell("unpacked", "number", int(source))]
                yield PARTS, (*line, names[int(thing) - 2]), {"amount": amount, "cost": cost}
            else:
                yield "Counts", self.nth("counts", source), {"cost": cost}
        taken_out = {}
        for _, (what, source, cost) in self.rows("out", "what", "source", "cost"):
            if what in OUT:  # what is sold has its cost on the list Sold
                taken_out.setdefault((*OUT[what], source), []).append(cost)
        for (tab, log, source), costs in taken_out.items():
            yield tab, self.nth(log, source), {"cost": _sum(*costs)}

    def _unpacked(self):
        """How many sets of each line nobody had packed; none of those that are not on the list of these."""
        found = {number: pieces for _, (number, pieces) in self.rows("unpacked", "number", "pieces")}
        sets = {each.name for each in self.year.sets}
        for _, (number, thing) in self.rows("out_card", "number", "thing"):
            if number in self._taken_out and self.cell("recipes", "product", int(thing)) in sets:
                yield *self._taken_out[number], {"unpacked": found.get(number, 0)}

    @functools.cached_property
    def _taken_out(self):
        """The lines of logs, by tab and row, that took candles or sets out; by their number on Candles out.

        Neither counts nor the candles in sets. A market line is there for what it sold, if anything, then for what it
        lost.
        """
        logs = dict(zip((row for row, _ in self.rows("sold", "date")), self._lines_sold, strict=True))
        by_number, seen = {}, set()
        for _, (number, what, source, set_line) in self.rows("out", "number", "what", "source", "set_line"):
            if set_line:
                continue
            if what == 1:
                by_number[number] = "Moves", self.nth("moves", source)
            elif what == 2:
                log, line = logs[int(source)]
                if log == "Market lines":
                    sells = self.year.selling.market_lines[line - 1].pieces and line not in seen
                    log = log if sells else "Given"
                    seen.add(line)
                by_number[number] = log, line
        return by_number

    @functools.cached_property
    def _lines_sold(self):
        """The lines of Sales, then those of Market lines, in the order of the joined list."""
        return [(log, row) for log, key in SOLD for row in range(1, len(self._filled[key]) + 1)]

    def _counts(self):
        for row, (difference,) in self.rows("counts", "difference"):
            yield "Counts", self.nth("counts", row), {"difference": difference}

    def _stock(self):
        counted = {count.thing for count in self.year.counts}
        keys = ("material", "bought", "paid", "used", "taken", "corrected", "left", "value", "spent", "unit_cost", "average", "short", "reorder", "counted", "difference")  # fmt: skip
        for _, found in self.rows("stock", *keys):
            row = dict(zip(keys, found, strict=True))
            heads = {
                "bought": row["bought"], "value_bought": row["paid"], "used": row["used"], "moved": _sum(row["taken"], row["corrected"]),
                "left": row["left"], "value": row["value"], "spent": row["spent"], "last_landed": _known(row["unit_cost"]), "average": _known(row["average"]),
                "short_on_a_day": row["short"] > 0, "short_at_the_end": row["left"] < 0, "below_reorder": row["left"] < (row["reorder"] or 0) and bool(row["reorder"]),
            }  # fmt: skip
            if row["material"] in counted:
                heads |= {"counted": row["counted"], "difference": row["difference"]}
            yield "Stock", row["material"], heads

    def _candles(self):
        counted = {count.thing for count in self.year.counts}
        keys = ("first", "product", "made", "gone", "left", "there", "in_sets", "ready_now", "curing", "spent", "value", "counted", "difference")  # fmt: skip
        for _, found in self.rows("candles", *keys):
            row = dict(zip(keys, found, strict=True))
            heads = {
                "made": row["made"], "moved": row["gone"], "left": row["left"], "at_shops": row["there"] or 0, "in_sets": row["in_sets"] or 0,
                "ready": row["ready_now"], "curing": row["curing"],
                "spent": row["spent"], "value": row["value"],
            }  # fmt: skip
            if row["product"] in counted:
                heads |= {"counted": row["counted"], "difference": row["difference"]}
            yield "Candles", row["product"], heads

    def _sold(self):
        """The joined list."""
        keys = (
            "date",
            "place_row",
            "thing",
            "pieces",
            "gross",
            "tax",
            "net",
            "fee",
            "sent",
            "comes_in",
            "cost",
            "rate",
        )
        for (log, line), (_, found) in zip(self._lines_sold, self.rows("sold", *keys), strict=True):
            day, place, thing, *money = found
            name = self.cell("recipes", "product", int(thing)) if isinstance(thing, (int, float)) and thing else ""
            heads = dict(zip(keys[3:], (0 if each is None else each for each in money), strict=True))
            yield log, line, {"day": _day(day), "place": place - 1 if place else place, "product": name} | heads

    def _sums(self):
        for tab, table, by in SUMS:
            for _, (pieces, name, *money) in self.rows(table, "pieces", by, "net", "tax", "fees", "sent", "cost"):
                row = _day(name) if by == "month" else name
                yield (
                    tab,
                    row,
                    {"pieces": pieces} | dict(zip(("net", "tax", "fee", "sent", "cost"), money, strict=True)),
                )
        yield "Sold", "all of it", {"owed": _sum(*(owed or 0 for _, (_, owed) in self.rows("sold", "date", "owed")))}
        keys = ("out", "back", "sold", "there", "comes_in", "owed")
        for _, (place, product, *found) in self.rows("at_shops", "place", "product", *keys):
            yield "At shops", f"{product} at {place}", dict(zip(keys, found, strict=True))

    def _lots(self):
        for _, (line, left) in self.rows("lots", "line", "left"):
            yield "Lots", self.nth("purchases", line), {"left": left}


def _known(cost):
    """The cost of what was never bought is blank, where the reference has none."""
    return ERROR if cost is None else cost


def _sum(*parts):
    return ERROR if ERROR in parts else sum(parts)


def _day(value):
    return value if value in (None, ERROR) else DAY_0 + timedelta(days=int(value))


def compared(worked, found):
    """What tabs and reference both have, but for candles of which a batch has no cost, as a material was never bought.

    The reference has no cost for any of them; the tabs have one for those that left before that batch is touched.
    """
    expected = figures(worked)
    year = worked.year
    unknown = {pour.product for pour, batch in zip(year.pours, worked.made, strict=True) if batch.cost is None}
    unknown |= {each.name for each in year.sets if unknown & {line.thing for line in each.holds}}
    logs = {"Moves": year.moves, "Counts": year.counts}
    logs_of_sales = {"Sales": year.selling.sales, "Market lines": year.selling.market_lines}
    no_sums = bool(unknown) or any(line.cost is None for line in sold(worked))  # one is an error in every sum

    def left_out(figure):
        if figure.tab in logs_of_sales:
            return figure.head == "cost" and logs_of_sales[figure.tab][figure.row - 1].product in unknown
        if figure.tab in SUM_TABS:
            return figure.head == "cost" and no_sums
        log = logs.get(figure.tab)
        return (log[figure.row - 1].thing if log else figure.row) in unknown

    both = [figure for figure in expected if figure in found and not left_out(figure)]
    return differences({figure: expected[figure] for figure in both}, {figure: found[figure] for figure in both}), len(
        both
    )
