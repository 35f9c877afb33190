"""Marks in place of names ("(1)", "EF") and the key on the same page that says what each stands for."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import replace

from importer.layout.lines import Cell, Line
from importer.layout.terms import Terms

# "(3) Viscosity (mPa·s)", "EF = Extract, fine", "c: Colour".
_ENTRY = re.compile(r"^(?P<mark>\(?\w{1,4}\)?)\s*(?:[=:.)–—-]\s*|\s)(?P<name>\S.*)$")
FEWEST = 3
# So many of the marks stand in one line, as heads, or below each other, as names of rows.
MOST = 0.7


def spelled_out(lines: Sequence[Line], terms: Terms) -> list[Line]:
    """The lines with names in place of their marks, and without the lines of the key; the same lines without a key."""
    key, of_key = _key(lines, terms)
    places = _places(lines, key, of_key) if len(key) >= FEWEST else set()
    if not places:
        return list(lines)
    return [
        replace(line, cells=tuple(_named(cell, key) if (i, n) in places else cell for n, cell in enumerate(line.cells)))
        for i, line in enumerate(lines)
        if i not in of_key
    ]


def _key(lines: Sequence[Line], terms: Terms) -> tuple[dict[str, str], set[int]]:
    """The names by mark, and the lines that hold them: lines below each other that are nothing but such entries."""
    run: list[tuple[int, dict[str, str]]] = []
    for i, line in enumerate([*lines, None]):
        entries = _entries(line) if line is not None else {}
        if entries and not any(mark in found for mark in entries for _, found in run):
            run.append((i, entries))
            continue
        key = {mark: name for _, found in run for mark, name in found.items()}
        known = sum(_is_name(name, terms) for name in key.values())
        if known >= FEWEST and 2 * known >= len(key):
            return key, {number for number, _ in run}
        run = [(i, entries)] if entries else []
    return {}, set()


def _entries(line: Line) -> dict[str, str]:
    """The entries of a line; empty where it holds anything else."""
    parts = [part.strip() for cell in line.cells for part in cell.text.split(";")]
    found = [match for part in parts if (match := _ENTRY.match(part))]
    key = {match["mark"].strip("()"): match["name"] for match in found}
    return key if len(key) == len(parts) else {}


def _is_name(text: str, terms: Terms) -> bool:
    """True for the name of a parameter, with a unit behind it or not; a value is none."""
    plain = re.sub(r"\s*[(\[][^()\[\]]*[)\]]\s*$", "", text)
    return not terms.is_value(text) and (terms.is_label(text) or terms.is_label(plain))


def _places(lines: Sequence[Line], key: Mapping[str, str], of_key: set[int]) -> set[tuple[int, int]]:
    """The cells, by line and number, that are marks: most of the key in one line, or below each other."""
    marks: list[tuple[int, int, Cell]] = [
        (i, n, cell)
        for i, line in enumerate(lines)
        if i not in of_key
        for n, cell in enumerate(line.cells)
        if cell.text.strip("():. ") in key
    ]
    rows: dict[int, list[tuple[int, int, Cell]]] = {}
    columns: dict[int, list[tuple[int, int, Cell]]] = {}
    for mark in marks:
        rows.setdefault(mark[0], []).append(mark)
        if not mark[2].text.strip("():. ").isdigit():
            columns.setdefault(round(mark[2].box.x0 / 3), []).append(mark)
    for group in (*rows.values(), *columns.values()):
        found = [cell.text.strip("():. ") for _, _, cell in group]
        if len(found) == len(set(found)) and len(found) >= max(FEWEST, MOST * len(key)):
            return {(i, n) for i, n, _ in group}
    return set()


def _named(cell: Cell, key: Mapping[str, str]) -> Cell:
    return replace(cell, text=key[cell.text.strip("():. ")])
