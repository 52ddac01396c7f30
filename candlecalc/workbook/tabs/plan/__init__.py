"""Tabs for what is to come: what is wanted, what to make for it by when, and what to buy."""
