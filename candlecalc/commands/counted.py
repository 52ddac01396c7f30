"""How many of a thing, in words."""


def counted(number: float, thing: str) -> str:
    """`1 piece`, `12 pieces`."""
    return f"{number:g} {thing}{'' if number == 1 else 's'}"
