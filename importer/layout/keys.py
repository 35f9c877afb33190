"""Marks in place of names ("(1)", "EF") and the key on the same page that says what each stands for."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import replace

from importer.layout.lines import Cell, Line
from importer.layout.terms import Terms

# "(3) Viscosity (mPa·s)", "EF = Extract, fine", "c: Colour".
_ENTRY = re.compile(r"^(?P<mark>\(?\w{1,4}\)?)\s*(?:[=:.)–—-]\s*|\s)(?P<name>\S.*)$")
# "Viscosity (mPa·s) (C)": the mark behind the name.
_BEHIND = re.compile(r"^(?P<name>\S.*?)\s*[(\[](?P<mark>\w{1,2})[)\]]$")
# "Wort: A = Kolbach index; B = pH": the title of the table that a key is of.
_TITLED = re.compile(r"^(?P<title>[^\W\d_][^:=;]{2,40}):\s+(?=\(?\w{1,4}\)?\s*[=–—-]\s*\S)")
FEWEST = 3
# So many of the marks stand in one line, as heads, or below each other, as names of rows.
MOST = 0.7
Key = dict[str, str]


def spelled_out(lines: Sequence[Line], terms: Terms, before: Key | None = None) -> tuple[list[Line], Key]:
    """The lines with names in place of their marks, and without the lines of keys; the last key that was used.

    A page may have several keys, each with the marks above it, down from the key before. ``before`` is the key of the
    page before, which goes on where the page has none.
    """
    keys = _keys(lines, terms)
    names: dict[tuple[int, int], str] = {}
    of_keys: set[int] = set()
    last: Key = {}
    start = 0
    titles = {title for _, _, title in keys if title}
    for number, (key, of_key, title) in enumerate(keys):
        end = min(keys[number + 1][1]) if number + 1 < len(keys) else len(lines)
        if title:
            places = {place for part in _titled(lines, title, titles) for place in _places(lines, key, part)}
        else:
            places = _places(lines, key, range(start, min(of_key)))
        # What stands below a key is its own where it has nothing above, or where no key follows.
        if not title and (not places or end == len(lines)):
            places |= _places(lines, key, range(max(of_key) + 1, end))
        if places:
            names |= {place: key[_mark(_cell(lines, place))] for place in places}
            of_keys |= of_key
            last = key
        start = max(of_key) + 1
    if not keys and before:
        names = {place: before[_mark(_cell(lines, place))] for place in _places(lines, before, range(len(lines)))}
        last = before
    named = [
        replace(
            line,
            cells=tuple(
                replace(cell, text=names[i, n]) if (i, n) in names else cell for n, cell in enumerate(line.cells)
            ),
        )
        for i, line in enumerate(lines)
        if i not in of_keys
    ]
    return named, last


def _cell(lines: Sequence[Line], place: tuple[int, int]) -> Cell:
    return lines[place[0]].cells[place[1]]


def _mark(cell: Cell) -> str:
    return cell.text.strip("():. ")


def _titled(lines: Sequence[Line], title: str, titles: set[str]) -> list[range]:
    """The lines under each heading that names the table of a key, up to the next such heading."""
    heads = [(i, text) for i, line in enumerate(lines) if (text := _plain(line.text)) in titles]
    ends = [*(i for i, _ in heads[1:]), len(lines)][: len(heads)]
    return [range(i + 1, end) for (i, text), end in zip(heads, ends, strict=True) if text == title]


def _plain(title: str) -> str:
    return title.strip(" :").casefold()


def _keys(lines: Sequence[Line], terms: Terms) -> list[tuple[Key, set[int], str]]:
    """The keys of a page, each with its lines and the title of its table ("" for none): lines below each other that
    are nothing but entries of a key."""
    found: list[tuple[Key, set[int], str]] = []
    run: list[tuple[int, Key]] = []
    title = ""
    for i, line in enumerate([*lines, None]):
        own = _title(line) if line is not None else ""
        entries = _entries(line) if line is not None else {}
        if entries and not own and not any(mark in others for mark in entries for _, others in run):
            run.append((i, entries))
            continue
        key = {mark: name for _, others in run for mark, name in others.items()}
        known = sum(_is_name(name, terms) for name in key.values())
        if known >= FEWEST and 2 * known >= len(key):
            found.append((key, {number for number, _ in run}, title))
        run, title = ([(i, entries)] if entries else []), own
    return found


def _title(line: Line) -> str:
    """The title of the table that a line of a key begins with ("Wort: A = ..."); "" where it has none."""
    match = _TITLED.match(line.text)
    return _plain(match["title"]) if match else ""


def _entries(line: Line) -> dict[str, str]:
    """The entries of a line; empty where it holds anything else."""
    text = _TITLED.sub("", line.cells[0].text)
    parts = [part.strip() for cell in (text, *(c.text for c in line.cells[1:])) for part in cell.split(";")]
    found = [match for part in parts if (match := _ENTRY.match(part) or _BEHIND.match(part))]
    key = {match["mark"].strip("()"): match["name"] for match in found}
    return key if len(key) == len(parts) else {}


def _is_name(text: str, terms: Terms) -> bool:
    """True for the name of a parameter, with a unit behind it or not; a value is none."""
    plain = re.sub(r"\s*[(\[][^()\[\]]*[)\]]\s*$", "", text)
    return not terms.is_value(text) and (terms.is_label(text) or terms.is_label(plain))


def _places(lines: Sequence[Line], key: Mapping[str, str], among: range) -> set[tuple[int, int]]:
    """The cells, by line and number, that are marks: most of the key in one line, or below each other."""
    marks: list[tuple[int, int, Cell]] = [
        (i, n, cell) for i in among for n, cell in enumerate(lines[i].cells) if _mark(cell) in key
    ]
    rows: dict[int, list[tuple[int, int, Cell]]] = {}
    columns: dict[int, list[tuple[int, int, Cell]]] = {}
    for mark in marks:
        rows.setdefault(mark[0], []).append(mark)
        if not _mark(mark[2]).isdigit():
            columns.setdefault(round(mark[2].box.x0 / 3), []).append(mark)
    for groups in (rows, columns):
        found = _without_figures([group for group in groups.values() if _is_whole(group, key)])
        # Numbers right above the marks count something else.
        found = [group for group in found if groups is columns or not any(o[0][0] == group[0][0] + 1 for o in found)]
        if found:
            return {(i, n) for group in found for i, n, _ in group}
    return set()


def _without_figures(groups: list[list[tuple[int, int, Cell]]]) -> list[list[tuple[int, int, Cell]]]:
    """The groups without rows of results that equal the marks: bare numbers beside bracketed marks, or in another
    order than the first ones."""
    bare = [group for group in groups if all(cell.text.strip().isdigit() for _, _, cell in group)]
    if len(bare) < len(groups):
        return [group for group in groups if group not in bare]
    first = [_mark(cell) for _, _, cell in groups[0]] if groups else []
    return [group for group in groups if [_mark(cell) for _, _, cell in group] == first]


def _is_whole(group: Sequence[tuple[int, int, Cell]], key: Mapping[str, str]) -> bool:
    marks = [_mark(cell) for _, _, cell in group]
    return len(marks) == len(set(marks)) and len(marks) >= max(FEWEST, MOST * len(key))
