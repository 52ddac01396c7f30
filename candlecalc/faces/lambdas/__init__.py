"""LAMBDA names, which need nothing installed."""
