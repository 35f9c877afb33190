"""Wordings of malt sheets, one module a language; a third of them is kept aside in tests/sheets/kept_wordings.py."""
