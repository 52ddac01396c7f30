"""The texts of ours that a label may carry: by the code or topic that a maker types, with how each was read."""

import re
from collections.abc import Sequence

import candlecalc.tables as tables
from candlecalc.season.season import Row


def ours() -> list[Row]:
    """Every statement of the tables once."""
    hazard = [_row(row["code"], row["text"], row["status"]) for row in tables.rows("hazard_statements")]
    fire = [_row(row["statement"], f"{row['statement']}.", row["status"]) for row in tables.rows("fire_statements")]
    others = [_row(in_language(row["code"], row["language"]), row["text"], row["status"]) for row in _others()]
    return list({row["code"]: row for row in [*hazard, *fire, *others]}.values())


def in_language(code: str, language: str) -> str:
    """What a statement goes by in another language than English: its code, and the language's letters."""
    return f"{code} {language}"


def words_in(language: str, code: str) -> str | None:
    """The words that the law has for a code in another language; None where they are not here."""
    found = (row for row in _others() if (row["language"], row["code"].casefold()) == (language, code.casefold()))
    return next((row["text"] for row in found), None)


# The statement that holds names of substances: in English with them, in another language with a gap where they stand.
ALLERGENS = "EUH208"
_NAMED, _GAP = re.compile(r"Contains (.*)\. May produce"), re.compile("<[^>]*>")


def names_of_allergens(words: str) -> list[str]:
    """The substances that the statement on allergens names in English."""
    found = _NAMED.match(words)
    return found[1].split(", ") if found else []


def with_names(words: str, names: Sequence[str]) -> str:
    """The statement in another language with the substances in its gap."""
    return _GAP.sub(lambda _: ", ".join(names), words)


def _others() -> list[dict[str, str]]:
    return tables.rows("hazard_statements_other")


def _row(code: str, text: str, status: str) -> Row:
    return {"code": code, "text": text, "how_read": status}
