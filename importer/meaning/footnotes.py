"""What the signs behind labels and figures point to: the footnotes of a sheet."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping, Sequence

from importer.meaning.recognised import Doubt
from importer.models import Family
from importer.printed import PrintedFigure
from importer.vocabulary.captions import basis_statement, column_roles, family_statement, is_harmless_footnote
from importer.vocabulary.statements import names_another_sample

_SIGN = r"\*{1,4}|\(\*{1,4}\)|[†‡§#]|[¹²³⁴⁵⁶⁷⁸⁹]|\(?[1-9]\)|\(?[a-e]\)"
_BEHIND = re.compile(rf"(?<=\S)\s*(?P<sign>{_SIGN})\s*$")
_AHEAD = re.compile(rf"(?:^|(?<=\s))(?P<sign>{_SIGN})\s*[:=]?\s*(?=\S)")
_PLAIN = str.maketrans("¹²³⁴⁵⁶⁷⁸⁹", "123456789", "()")


def footnotes(notes: Iterable[str], figures: Iterable[PrintedFigure]) -> dict[str, str]:
    """The text of each footnote that some row points to, by its sign."""
    used = {sign for figure in figures for text in _marked_texts(figure) for sign in _sign_behind(text)}
    found: dict[str, str] = {}
    for note in notes if used else ():
        for sign, text in _split(note):
            if sign in used:
                found.setdefault(sign, text)
    return found


def without_footnotes(notes: Iterable[str], known: Mapping[str, str]) -> tuple[str, ...]:
    """The notes that speak of the sheet as a whole, not of marked rows only."""
    return tuple(note for note in notes if not any(sign in known for sign, _ in _split(note)))


def footnotes_of(figure: PrintedFigure, known: Mapping[str, str]) -> list[str]:
    """The footnotes that a row points to."""
    signs = [sign for text in _marked_texts(figure) for sign in _sign_behind(text)]
    return [known[sign] for sign in dict.fromkeys(signs) if sign in known]


def footnote_doubts(figure: PrintedFigure, known: Mapping[str, str], family: Family) -> list[Doubt]:
    """Doubt where a footnote of the result itself says something that is not understood."""
    texts = [known[sign] for sign in _sign_behind(figure.value) if sign in known]
    others = [t for t in footnotes_of(figure, known) if t not in texts and _is_of_another(t)]
    return [
        Doubt("reading-doubtful", f"A footnote belongs to it: “{t}”.")
        for t in (*(t for t in texts if not _understood(t, family)), *others)
    ]


def _is_of_another(text: str) -> bool:
    return names_another_sample(text) or bool({"typical", "previous"} & set(column_roles(text)))


def _understood(text: str, family: Family) -> bool:
    return basis_statement(text) is not None or family_statement(text) == family or is_harmless_footnote(text)


def _marked_texts(figure: PrintedFigure) -> Sequence[str]:
    return figure.label, figure.value, figure.unit or ""


def signs_behind(figure: PrintedFigure) -> set[str]:
    """The marks behind label, value and unit of a row."""
    return {sign for text in _marked_texts(figure) for sign in _sign_behind(text)}


def _sign_behind(text: str) -> list[str]:
    found = _BEHIND.search(text)
    return [found["sign"].translate(_PLAIN)] if found else []


def _split(note: str) -> list[tuple[str, str]]:
    """Signs and texts of a line that begins with a sign: "* as is   ** dry" is two."""
    signs = list(_AHEAD.finditer(note.strip()))
    if not signs or signs[0].start() > 0:
        return []
    ends = [*(sign.start() for sign in signs[1:]), len(note.strip())]
    return [
        (sign["sign"].translate(_PLAIN), note.strip()[sign.end() : end].strip().rstrip(".;"))
        for sign, end in zip(signs, ends, strict=True)
    ]
