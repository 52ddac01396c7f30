"""Products, materials and places as a file names them, and as the season does."""

from collections.abc import Iterator, Mapping

from candlecalc.season.importing.faults import Fault
from candlecalc.season.importing.layout import Layout
from candlecalc.season.season import Season, without_blanks
from candlecalc.season.tables import TABLES
from candlecalc.season.tables.imports import THING

EITHER = {"material": "materials", "product": "recipes"}  # what one column of names may hold, and where they stand


class Names:
    """The names of a season that columns of a layout take."""

    def __init__(self, season: Season, layout: Layout) -> None:
        self._fields = [field for field in layout.fields.values() if field.names_from]
        tables = {(field.names_from, field.kind) for field in self._fields} | {(table, "") for table in EITHER.values()}
        self._known = {
            (table, kind): {without_blanks(name).casefold(): name for name in season.names(table, kind)}
            for table, kind in tables
        }

    def put_in(self, values: dict[str, object]) -> Iterator[tuple[str, Fault]]:
        """Put our names in place of theirs, and give each that is not known, by its column's key."""
        for field in self._fields:
            if field.key in values:
                name, known = str(values.pop(field.key)), self._known[field.names_from, field.kind]
                if name.casefold() in known:
                    values[field.key] = known[name.casefold()]
                else:
                    kind = f" of kind {field.kind}" if field.kind else ""
                    yield field.key, _unknown(name, f"{TABLES[field.names_from].title}{kind}", known)
        if THING in values:
            yield from self._put_in_either(values, str(values[THING]))

    def _put_in_either(self, values: dict[str, object], name: str) -> Iterator[tuple[str, Fault]]:
        found = {key: self._known[table, ""].get(name.casefold()) for key, table in EITHER.items()}
        there = {key: ours for key, ours in found.items() if ours}
        if len(there) == 1:
            values |= there
        elif there:
            yield THING, Fault("", f'"{name}" is on Materials and on Recipes: read in materials and candles apart')
        else:
            every = {key: name for table in EITHER.values() for key, name in self._known[table, ""].items()}
            yield THING, _unknown(name, "Materials or Recipes", every)


def _unknown(name: str, where: str, known: Mapping[str, str]) -> Fault:
    return Fault("", f'"{name}" is not on {where}', name, tuple(known.values()))
