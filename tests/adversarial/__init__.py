"""Sheets that are made to mislead, and what a reader who thinks would take from each."""
