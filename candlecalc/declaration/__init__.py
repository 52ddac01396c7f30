"""How a function is declared: its terms, its native form, the ranges around it."""
