"""Make: what each candle costs, and the bench card of a batch."""
