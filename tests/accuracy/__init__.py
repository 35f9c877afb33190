"""Measures how well sheets are read: ``python -m tests.accuracy``."""
