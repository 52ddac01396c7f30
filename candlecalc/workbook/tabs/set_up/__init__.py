"""Set up: what holds for the season, what is bought, poured into and made."""
