"""Finds the data that ships with the program: in the installed package or in a checkout."""

from __future__ import annotations

from functools import cache
from pathlib import Path

from importer.errors import DataError


def _find(installed: str, checkout: str, marker: str) -> Path:
    here = Path(__file__).resolve().parent
    candidates = (here / installed, here.parent / checkout)
    for folder in candidates:
        if (folder / marker).is_file():
            return folder
    places = " nor ".join(str(folder) for folder in candidates)
    raise DataError(f"{marker} is neither in {places}; install onebasis again")


@cache
def mappings_folder() -> Path:
    """The folder of the shipped mappings."""
    return _find("_mappings", "mappings", "parameters.toml")


@cache
def demo_folder() -> Path:
    """The folder of the demo sheets."""
    return _find("_demo", "fixtures/demo", "SCENARIO.md")
