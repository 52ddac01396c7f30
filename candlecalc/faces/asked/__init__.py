"""A function asked for in words, and its answer in words."""
