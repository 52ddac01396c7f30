"""Labels and papers from a season: its recipes, its oil sheets, its label texts and the papers it describes."""

from collections.abc import Iterable, Mapping, Sequence
from typing import Any, NamedTuple

from candlecalc.labels.folder import Called, Held, Row, Tested, paper_of, said_twice
from candlecalc.quantities import units
from candlecalc.season.oils import asked, of_sheet, poured, sheets
from candlecalc.season.season import Season, problems
from candlecalc.season.tables.labels import LABELS, OIL_SHEETS, PAPERS, WEIGHTS
from candlecalc.season.tables.set_up import RECIPES

CALLED = Called("Papers", "Recipes", "Label texts", "Oil sheets", "Vessels")
RULES = ("us", "gb", "eu")
NET_WEIGHT = "net weight"
OF_LABELS = (OIL_SHEETS.title, PAPERS.title, LABELS.title, WEIGHTS.title)


class Poured(NamedTuple):
    """What the workbook makes of a product's vessel and wax: in g, ml and mm; None where nothing is known."""

    fill: float | None
    holds: float | None
    panel_width: float | None
    panel_height: float | None


class Worked(NamedTuple):
    """What a workbook makes of a season: each product as poured, and each test burn by its number in small letters."""

    poured: Mapping[str, Poured]
    tests: Mapping[str, Tested]


def read(season: Season, worked: Worked, product: str = "", rules: str = "") -> Held:
    """What a season gives for the labels of a product, else of the first, by the rules asked for or sold under.

    A ValueError names every entry for labels that is wrong.
    """
    recipes = [row for _, row in season.rows("recipes") if row["kind"] == "made" and row["product"]]
    names = [str(row["product"]) for row in recipes]
    asked_for = [name for name in names if not product or name.casefold() == product.casefold()][:1]
    if product and not asked_for:
        raise ValueError(f'"{product}" is no candle on {CALLED.products}; there are {", ".join(names)}')
    labels = [dict(row) for _, row in season.rows("labels")]
    wrong = _wrong(season, asked_for) or said_twice(labels, CALLED.labels)
    if wrong:
        raise ValueError("; ".join(wrong))
    products = [_product(season, name, worked.poured, labels, rules) for name in asked_for]
    papers = [paper_of(_in_millimetres(season, row)) for _, row in season.rows("papers")]
    # Its code has told what is declared: the words are worked out.
    told = [{**row, "code": None} if row["part"] == NET_WEIGHT else row for row in labels]
    return Held(papers, products, told, list(_oils(season, recipes)), CALLED, worked.tests)


def _wrong(season: Season, products: Sequence[str]) -> list[str]:
    """What is wrong with the entries for labels, and with the recipe of what is to be labelled."""
    lines = {place for place, row in season.rows("recipes") if row["product"] in products}
    return [
        f"{problem.tab}, line {problem.row + 1}, {problem.column}: {problem.words}"
        for problem in problems(season)
        if problem.tab in OF_LABELS or (problem.tab == RECIPES.title and problem.row in lines)
    ]


def sold_under(season: Season, product: str) -> list[str]:
    """The sets of rules of the places where a product has a price; where it has none, those of the workbook."""
    of_place = {str(row["place"]).casefold(): row["rules"] for _, row in season.rows("places")}
    found = {
        of_place.get(str(row["place"]).casefold())
        for _, row in season.rows("prices")
        if str(row["product"]).casefold() == product.casefold()
    }
    return [rules for rules in RULES if rules in found] or [str(season.settings["region"])]


def _product(season: Season, name: str, poured_of: Mapping[str, Poured], labels: Sequence[Row], rules: str) -> Row:
    made = poured_of[name]
    sold = sold_under(season, name)
    own = str(season.settings["region"])
    return {
        "product": name,
        "rules": rules or (own if own in sold else sold[0]),
        "net": _declared(name, made.fill, labels),
        "panel_shape": "flat",
        "panel_height": made.panel_height,
        "panel_around": made.panel_width,
        "holds": made.holds,
    }


def _declared(name: str, fill: float | None, labels: Iterable[Row]) -> float | None:
    """The weight to declare: what the maker typed as code of the net weight, else the recipe's own fill."""
    own = [row for row in labels if row["part"] == NET_WEIGHT and row["code"]]
    for row in own:
        if str(row["product"]).casefold() == name.casefold():
            try:
                declared: float = units.read(str(row["code"]), "g").value
            except ValueError as problem:
                raise ValueError(f"{CALLED.labels}: the code of the net weight of {name} {problem}") from None
            if fill is not None and declared > fill + 0.5:
                raise ValueError(
                    f"{CALLED.labels}: the net weight of {name} is {row['code']}, more than the {fill:.0f} g of its "
                    "recipe's fill"
                )
            return declared
    return fill


def _oils(season: Season, recipes: Iterable[Row]) -> Iterable[Row]:
    """Each line of the sheets of a product's oils and dyes, with how much of the oil is in it."""
    typed = sheets(season)
    for recipe in recipes:
        for part in poured(recipe):
            lines = typed.get(part.material.casefold(), [])
            sample = asked([part], typed).columns["dilutions"][0]
            for line in lines:
                told = {key: line[key] for key in ("substance", "concentration", "classes", "specifics")}
                yield {"product": recipe["product"], "oil": part.material, "load": part.load, "sample": sample, **told}
            if not lines:
                blank = dict.fromkeys(("substance", "concentration", "classes", "specifics", "sample"))
                yield {"product": recipe["product"], "oil": part.material, "load": part.load, **blank}


def _recipe(season: Season, product: str) -> Row:
    return next(row for _, row in season.rows("recipes") if str(row["product"]).casefold() == product.casefold())


def of_oils(season: Season, product: str) -> list[str]:
    """What to ask the carrier about, of each oil and dye: no class of our own; and by which data sheet it is told.

    An inspector asks for the sheet by its version and its date.
    """
    of_oil = {str(row["material"]).casefold(): row for _, row in season.rows("materials")}
    typed, degree = sheets(season), f"\u00b0{season.measures.temperature_unit}"
    told = []
    for part in poured(_recipe(season, product)):
        lines = typed.get(part.material.casefold(), [])
        flash = of_oil.get(part.material.casefold(), {}).get("flash_point")
        point = f"flash point {flash:g} {degree}" if isinstance(flash, float) else "no flash point on Materials"
        section = of_sheet(lines, "transport")
        says = f'section 14 says "{section}"' if section else "section 14 is not typed on Oil sheets"
        version, day = (of_sheet(lines, key) for key in ("version", "sheet_date"))
        dated = [f"version {version}" if version else "no version typed", f"of {day}" if day else "no date typed"]
        told.append(
            f"{part.material}: {point}; {says}; data sheet {', '.join(dated) if lines else 'not on Oil sheets'}"
        )
    return told


def _in_millimetres(season: Season, row: Mapping[str, Any]) -> Row:
    measures = season.measures
    lengths = {field.key for field in PAPERS.fields if field.term and field.term.unit == "mm"}
    return {
        key: measures.to_calc(value, "mm") if key in lengths and value is not None else value
        for key, value in row.items()
    }
