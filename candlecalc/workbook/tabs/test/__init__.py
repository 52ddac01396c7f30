"""Test: wicks, targets, burns, and what they come to."""
