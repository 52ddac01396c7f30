"""Sell: prices, and the places where candles are sold."""
