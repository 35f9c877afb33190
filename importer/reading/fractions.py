"""Several sieves in one running line: "Sieving: > 2.8 mm 85.1 %, 2.5-2.8 mm 9.0 %, < 2.2 mm 1.2 %"."""

from __future__ import annotations

from collections.abc import Sequence

from importer.layout.lines import make_cell
from importer.layout.terms import Terms
from importer.reading.values import split_value
from importer.words import Word

FEWEST = 2
MM = "mm"
_SIGNS = (":", "=", "–", "-")
Entry = tuple[Sequence[Word], Sequence[Word]]
"""A name and its value in the order in which they stand, and whichever of them comes first."""


def fractions_in(words: Sequence[Word], terms: Terms) -> list[Entry]:
    """The name and the value of each fraction of a line; none where the line holds anything else but a heading."""
    if sum(map(_has_digit, words)) < 2 * FEWEST - 1 or sum(map(_parts, words)) < FEWEST - 1:
        return []
    return _listed(words, terms) or _in_two_lists(words, terms)


def _has_digit(word: Word) -> bool:
    return any(map(str.isdigit, word.text))


def _listed(words: Sequence[Word], terms: Terms) -> list[Entry]:
    """Each name with its value."""
    parts: list[list[Word]] = [[]]
    for word in words:
        text = word.text.rstrip(",;") if word.text != "/" else ""
        if text:
            parts[-1].append(word._replace(text=text))
        if _parts(word):
            parts.append([])
    parts = [part for part in parts if part]
    # A name and a value have a number each.
    if len(parts) < FEWEST or any(sum(map(_has_digit, part)) < 2 for part in parts):
        return []
    entries = [_entry(part, terms) for part in (_without_heading(parts[0], terms), *parts[1:])]
    found = [entry for entry in entries if entry is not None]
    return found if len(found) == len(entries) else []


def _in_two_lists(words: Sequence[Word], terms: Terms) -> list[Entry]:
    """All names and then all values: "Sieving (> 2.8 / 2.5-2.8 / < 2.2 mm): 85.1 / 9.0 / 1.2 %"."""
    colon = next((i for i, word in enumerate(words) if word.text.endswith(":")), len(words))
    unit = [words[-1]] if not _has_digit(words[-1]) and terms.is_unit(words[-1].text) else []
    values = _by_strokes(words[colon + 1 : len(words) - len(unit)])
    if len(values) < FEWEST or not all(_is_result(value, terms) for value in values):
        return []
    start = next((i for i in range(1, colon + 1) if terms.is_sieving(_text(words[:i]))), 0)
    bare = [word._replace(text=word.text.strip("():,")) for word in words[start : colon + 1]]
    names = [_with_unit(name, terms) for name in _by_strokes([word for word in bare if word.text])]
    if len(names) != len(values) or not all(_is_size(name, terms) for name in names):
        return []
    return [(name, [*value, *unit]) for name, value in zip(names, values, strict=True)]


def _by_strokes(words: Sequence[Word]) -> list[list[Word]]:
    """Words parted at strokes, which may stand close to them."""
    parts: list[list[Word]] = [[]]
    for word in words:
        for n, text in enumerate(word.text.split("/")):
            if n:
                parts.append([])
            if text:
                parts[-1].append(word._replace(text=text))
    return [part for part in parts if part]


def _parts(word: Word) -> bool:
    return word.text.endswith((",", ";", "/")) or "/" in word.text


def _without_heading(part: Sequence[Word], terms: Terms) -> Sequence[Word]:
    places = sorted(range(1, len(part)), key=lambda at: not part[at - 1].text.endswith(":"))
    for at in places:
        if terms.is_sieving(_text(part[:at])) and _entry(part[at:], terms) is not None:
            return part[at:]
    return part


def _entry(part: Sequence[Word], terms: Terms) -> Entry | None:
    """A size and its value, or the other way round, with or without a sign between."""
    cuts = [(_bare(part[:cut]), _bare(part[cut:])) for cut in range(1, len(part))]
    cuts = [(left, right) for left, right in cuts if left and right and not terms.is_unit(right[0].text)]
    for left, right in reversed(cuts):
        if _is_size(left, terms) and _is_result(right, terms):
            return _with_unit(left, terms), right
    for left, right in cuts:
        if _is_result(left, terms) and _is_size(right, terms):
            return left, _with_unit(right, terms)
    return None


def _bare(words: Sequence[Word]) -> list[Word]:
    """Words without the signs at their ends that part names from values."""
    kept = list(words)
    while kept and kept[0].text in _SIGNS:
        kept.pop(0)
    while kept and not (plain := kept[-1].text.rstrip(":=–-")):
        kept.pop()
    return [*kept[:-1], kept[-1]._replace(text=plain)] if kept else []


def _with_unit(size: Sequence[Word], terms: Terms) -> Sequence[Word]:
    *before, last = size
    return size if terms.is_label(_text(size)) else [*before, last._replace(text=f"{last.text} {MM}")]


def _is_size(words: Sequence[Word], terms: Terms) -> bool:
    text = _text(words)
    return any(map(str.isdigit, text)) and (terms.is_label(text) or terms.is_label(f"{text} {MM}"))


def _is_result(words: Sequence[Word], terms: Terms) -> bool:
    text = _text(words)
    unit = split_value(text)[1]
    return text[0].isdigit() and terms.is_value(text) and not terms.is_label(text) and _is_plain(unit, terms)


def _is_plain(unit: str | None, terms: Terms) -> bool:
    return unit is None or terms.is_unit(unit)


def _text(words: Sequence[Word]) -> str:
    return make_cell(words).text
