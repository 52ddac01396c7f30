"""How many of a thing, in words."""


def counted(number: float, thing: str, many: str = "") -> str:
    """`1 piece`, `12 pieces`; `many` is for words such as batches."""
    return f"{number:g} {thing if number == 1 else many or f'{thing}s'}"
