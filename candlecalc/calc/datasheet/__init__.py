"""Section 3 of a data sheet: read as it is printed, added up by substance, and held against the limits of the law."""
