"""Buy and stock: what was bought, and what it cost."""
