"""The functions as one script for web spreadsheets whose script editor takes custom functions."""
