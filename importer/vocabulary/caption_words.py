"""The captions of mappings/headers, and the forms in which captions are compared."""

from __future__ import annotations

import re
import tomllib
from dataclasses import dataclass, field
from functools import cache
from pathlib import Path
from typing import Any

from importer.data import mappings_folder
from importer.errors import DataError
from importer.models import HEADER_KEYS
from importer.vocabulary.result_words import plain_lines, plain_word

EXTRA_KEYS = ("date", "ignore")
NUMBER = "#"
"""Stands for all words for number, code or identity in a comparison form."""


@dataclass(frozen=True, slots=True)
class CaptionTable:
    """Known captions. ``keys`` holds the certain entry by folded form, ``doubtful`` the possible one.

    ``worded`` and ``doubtful_worded`` have the same by all words in their order: "prodotto da" is not "prodotto".
    ``beside`` has, by entry, the words that may be added to its captions; ``events`` the entries by the words that say
    what a date is of; both serve captions that nobody has listed.
    """

    worded: dict[str, str]
    doubtful_worded: dict[str, str]
    keys: dict[str, str]
    doubtful: dict[str, str]
    numbers: frozenset[str]
    endings: tuple[str, ...]
    small: frozenset[str]
    numbered: frozenset[str]
    references: frozenset[str]
    dates: frozenset[str]
    date_endings: tuple[str, ...]
    issuing: tuple[str, ...]
    beside: dict[str, set[str]] = field(default_factory=dict)
    events: dict[str, set[str]] = field(default_factory=dict)


_WORD = re.compile(r"[^\W_]+|[#№]")
# Each begins with a letter, which makes the search through a whole file quick.
_NUMERO = re.compile(r"[nN](?<!\w[nN])\.?\s?[°º]\.?\s?|č(?<!\wč)(?:\.|(?=\s))")
# "Lot(s)", "Sorte/n", "Variety/ies".
_PLURAL = re.compile(r"\((?:s|es|en|n|e|er|ies)\)|(?<=[^\W\d_]{3})/(?:s|n|en|es|ies)(?![^\W_])")
_STROKED = re.compile(r"(?<![^\W_])([^\W\d_])/([^\W\d_])(?![^\W_])")
_DOTTED = re.compile(r"\b[^\W\d_]\.(?:\s?[^\W\d_]\.){0,3}\s?[^\W\d_]\b")


def caption_words(text: str) -> list[str]:
    """The words of a caption for comparison; "P.O." is one word, "n°" and "č." are words for number."""
    return _WORD.findall(plain_word(_prepared(text)))


def _prepared(text: str) -> str:
    if "(" in text or "/" in text:
        text = _PLURAL.sub("", text)
    if not text.isascii():
        text = _NUMERO.sub("no ", text)
    return join_dotted(join_stroked(text))


def join_stroked(text: str) -> str:
    """Makes one word of two letters with a stroke between: "P/O number" becomes "PO number"."""
    return _STROKED.sub(r"\1\2", text) if "/" in text else text


def join_dotted(text: str) -> str:
    """Makes one word of a dotted abbreviation: "P.O. number" becomes "PO number"."""
    return _DOTTED.sub(lambda found: found[0].replace(".", "").replace(" ", ""), text) if "." in text else text


def telling_words(words: list[str], table: CaptionTable) -> tuple[list[str], bool]:
    """The words that count, and whether a word for number stood among the others or at the end of one."""
    kept: list[str] = []
    numbered = False
    for word in words:
        if word in table.numbers:
            numbered = True
            continue
        if word.endswith(table.endings):
            ending = next((e for e in table.endings if word.endswith(e) and len(word) > len(e) + 2), "")
            numbered = numbered or bool(ending)
            word = word[: len(word) - len(ending)]
        if word not in table.small:
            kept.append(word)
    if not kept:
        kept = [word for word in words if word not in table.numbers]
    return kept, numbered


def fold(words: list[str], table: CaptionTable) -> str:
    """The comparison form: number words as one sign at the end, small words dropped, the rest in order of letters."""
    kept, numbered = telling_words(words, table)
    return form_of(kept, numbered)


def form_of(kept: list[str], numbered: bool) -> str:
    """One form of a caption for all orders of its telling words."""
    return " ".join([*sorted(kept), NUMBER] if numbered else sorted(kept))


def _lists(raw: dict[str, Any], where: str) -> list[tuple[str, list[str]]]:
    known = {*HEADER_KEYS, *EXTRA_KEYS}
    for key, captions in raw.items():
        if key not in known:
            raise DataError(f"{where}: there is no header entry {key!r}")
        if not isinstance(captions, list) or not all(isinstance(caption, str) for caption in captions):
            raise DataError(f"{where}: {key} must be a list of captions")
    return list(raw.items())


def _single(words: list[str], where: str) -> list[str]:
    for word in words:
        if len(_WORD.findall(word)) != 1:
            raise DataError(f"{where}: {word!r} must be one word")
    return words


def _add(table: CaptionTable, path: Path) -> None:
    where = f"mappings/headers/{path.name}"
    # The whole file is folded at once, which is much quicker than caption by caption.
    raw = tomllib.loads(plain_lines(_prepared(path.read_text(encoding="utf-8"))))
    for key, words in _lists(raw.pop("beside", {}), f"{where}: [beside]"):
        table.beside.setdefault(key, set()).update(_single(words, where))
    for key, words in _lists(raw.pop("events", {}), f"{where}: [events]"):
        for word in _single(words, where):
            table.events.setdefault(word.rstrip("s"), set()).add(key)
    for key, captions in _lists(raw.pop("doubtful", {}), where):
        for caption in captions:
            words = _WORD.findall(caption)
            table.doubtful.setdefault(fold(words, table), key)
            table.doubtful_worded.setdefault(" ".join(words), key)
    for key, captions in _lists(raw, where):
        for caption in captions:
            words = _WORD.findall(caption)
            kept, numbered = telling_words(words, table)
            # "Analyse du" is a caption, "Analyse" need not be one.
            if numbered or len(kept) != 1 or len(words) == 1:
                _keep(table.keys, table.doubtful, form_of(kept, numbered), key)
            _keep(table.worded, table.doubtful_worded, " ".join(words), key)


def _keep(certain: dict[str, str], doubtful: dict[str, str], form: str, key: str) -> None:
    known = certain.setdefault(form, key)
    if known != key:
        # Two languages, or two uses of one word: kept, but never certain.
        doubtful.setdefault(form, known if known != "ignore" else key)


def _words_of(common: dict[str, Any], name: str) -> frozenset[str]:
    return frozenset(plain_word(word) for word in common[name])


@cache
def caption_table() -> CaptionTable:
    """The captions of mappings/headers. Raises DataError where a file cannot be used."""
    folder = mappings_folder() / "headers"
    try:
        common = tomllib.loads((folder / "common.toml").read_text(encoding="utf-8"))
        table = CaptionTable(
            worded={},
            doubtful_worded={},
            keys={},
            doubtful={},
            numbers=_words_of(common, "number"),
            endings=tuple(sorted(common["number_endings"], key=len, reverse=True)),
            small=_words_of(common, "small"),
            numbered=frozenset(common["numbered"]),
            references=_words_of(common, "references"),
            dates=_words_of(common, "dates"),
            issuing=tuple(common["issuing"]),
            date_endings=tuple(sorted(common["date_endings"], key=len, reverse=True)),
        )
        # English first: where two languages differ over a word, its reading is the likelier one.
        for path in sorted(folder.glob("*.toml"), key=lambda path: (path.stem != "en", path.stem)):
            if path.stem != "common":
                _add(table, path)
    except (KeyError, OSError, tomllib.TOMLDecodeError) as fault:
        raise DataError(f"mappings/headers: {fault}") from fault
    for forms in (table.keys, table.doubtful):
        for form in [form for form in forms if len(form.rstrip(" #")) < 2 and form.isascii()]:
            del forms[form]
    return table
