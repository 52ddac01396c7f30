"""What a recipe pours of oils and dyes, and the lines of their data sheets as the maker typed them."""

from collections.abc import Iterable
from typing import Any, NamedTuple

from candlecalc.season.season import Row, Season

OILS = (("oil_first", "share_first"), ("oil_second", "share_second"), ("oil_third", "share_third"))
COLUMNS = ("substance", "concentration", "classes", "specifics")


class Poured(NamedTuple):
    """An oil or a dye of a recipe, and how much of it goes into the wax."""

    material: str
    load: float  # of wax
    dye: bool = False


def poured(recipe: Row) -> list[Poured]:
    """The oils and the dye of a recipe. Of a single oil no share need be typed."""
    load = _number(recipe["load"])
    shares = {share: _number(recipe[share]) for _, share in OILS}
    if recipe["share_first"] is None:
        shares["share_first"] = 1.0
    oils = [Poured(str(recipe[oil]), load * shares[share]) for oil, share in OILS if recipe[oil]]
    dye = [Poured(str(recipe["dye"]), _number(recipe["dye_share"]), dye=True)] if recipe["dye"] else []
    return oils + dye


def sheets(season: Season) -> dict[str, list[Row]]:
    """The lines of each oil's and dye's data sheet, by its name as names are compared."""
    found: dict[str, list[Row]] = {}
    for _, row in season.rows("oil_sheets"):
        if row["material"] and row["substance"] and row["concentration"] and row["classes"]:
            found.setdefault(str(row["material"]).casefold(), []).append(row)
    return found


class Asked(NamedTuple):
    """Oils and the lines of their sheets, as the hazard functions are asked; and those that have no line."""

    columns: dict[str, Any]
    loads: list[float]
    dyes: list[bool]
    names: list[str]
    without_sheet: list[str]


def asked(parts: Iterable[Poured], typed: dict[str, list[Row]]) -> Asked:
    """What the functions are asked of a recipe's oils and dyes."""
    parts = list(parts)
    columns: dict[str, list[Any]] = {"substances": [], "concentrations": [], "classes": [], "specifics": [], "oils": []}
    dilutions: list[float | None] = []
    for number, part in enumerate(parts, start=1):
        lines = typed.get(part.material.casefold(), [])
        for line in lines:
            words = [None if line[key] is None else str(line[key]) for key in COLUMNS]
            for column, value in zip(columns.values(), [*words, float(number)], strict=True):
                column.append(value)
        dilutions.append(next((_number(line["sample"]) for line in lines if line["sample"]), None))
    lacking = [part.material for part in parts if part.material.casefold() not in typed]
    given = {**columns, "dilutions": dilutions}
    return Asked(
        given, [each.load for each in parts], [each.dye for each in parts], [p.material for p in parts], lacking
    )


def of_sheet(lines: Iterable[Row], key: str) -> Any:
    """What is typed once, on any of a sheet's lines."""
    return next((line[key] for line in lines if line[key] is not None), None)


def _number(value: Any) -> float:
    # What is no number is told where it is typed.
    return float(value) if isinstance(value, (int, float)) else 0.0
