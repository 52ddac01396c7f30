"""The texts of ours that a label may carry: by the code or topic that a maker types, with how each was read."""

import candlecalc.tables as tables
from candlecalc.season.season import Row


def ours() -> list[Row]:
    """Every statement of the tables once."""
    hazard = [_row(row["code"], row["text"], row["status"]) for row in tables.rows("hazard_statements")]
    fire = [_row(row["statement"], f"{row['statement']}.", row["status"]) for row in tables.rows("fire_statements")]
    return list({row["code"]: row for row in [*hazard, *fire]}.values())


def _row(code: str, text: str, status: str) -> Row:
    return {"code": code, "text": text, "how_read": status}
