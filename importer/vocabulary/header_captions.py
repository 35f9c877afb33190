"""Captions of header entries ("Batch no.", "Charge/Los-Nummer") and the entry they stand for."""

from __future__ import annotations

import re
from functools import lru_cache

from importer.vocabulary.caption_words import (
    EXTRA_KEYS,
    NUMBER,
    CaptionTable,
    caption_table,
    caption_words,
    fold,
    form_of,
    join_stroked,
    telling_words,
)
from importer.vocabulary.column_heads import column_roles, listed_role
from importer.vocabulary.misspelt_captions import misspelt_caption
from importer.vocabulary.result_words import plain_word
from importer.vocabulary.unit_names import parse_plain

Found = tuple[str, float]
LONGEST = 80
"""Characters: a longer text is a sentence."""
MOST_WORDS = 9
DOUBTFUL, DOUBTFUL_WITH_COLON, PARTLY, COMPOSED = 60.0, 85.0, 82.0, 92.0
"""Scores of a caption that has other meanings, of the same with a colon behind, of one known half of two, and of one
put together of known words."""

_PARTS = re.compile(
    r"\s*[/|;(){}\[\]]\s*|\s+[-–—]\s+|\n"
    r"|(?<=[\u3040-\u9fff])\s+(?=[A-Za-z])|(?<=[a-z.])\s+(?=[\u3040-\u9fff])"
)


def header_caption(text: str) -> Found | None:
    """The header entry that a caption names, with a score of 0 to 100, or None.

    The entry is one of ``HEADER_KEYS``, "date" (a date of which nothing more is said), or "ignore" (a known caption
    that leads to no entry of ours: telephone, page, vehicle, customer number).
    """
    return _header_caption(text) if text and len(text) <= LONGEST else None


@lru_cache(maxsize=8192)
def _header_caption(text: str) -> Found | None:
    found = _found(text)
    if found is not None and found[0] == "analysed_on":
        issuing = caption_table().issuing
        if any(plain_word(word).startswith(issuing) for word in caption_words(text)):
            return found[0], min(found[1], DOUBTFUL)
    return found


def _found(text: str) -> Found | None:
    body = text.strip().strip("*•▪-–—").strip()
    colon = body.endswith((":", "："))
    body = join_stroked(body.rstrip(":： .…_"))
    words = caption_words(body)
    if not words or len(words) > MOST_WORDS or not any(mark.isalpha() for mark in body):
        return None
    found = _exact(words, colon)
    if found:
        return found
    parts = [part for part in _PARTS.split(body) if part and caption_words(part)]
    if len(parts) > 1:
        if any(len(part) == 1 and part.isalpha() and not _in_brackets(part, body) for part in parts):
            return None
        parts = [parts[0], *(part for part in parts[1:] if not _is_unit(part))]
        return _of_parts(parts, colon) or _composed(words, colon)
    # The head of a column is no unlisted or misspelt caption: "Analysis data", "Analyte", "Resultate".
    if listed_role(body) not in (None, "date"):
        return None
    found = _composed(words, colon)
    if found or (column_roles(body) and not any(mark.isdigit() for mark in body)):
        return found
    return misspelt_caption(words)


def _in_brackets(part: str, text: str) -> bool:
    return f"({part})" in text or f"[{part}]" in text


def _is_unit(part: str) -> bool:
    unit = parse_plain(part)
    return unit is not None and not unit.doubtful


def exact_caption(text: str) -> Found | None:
    """As ``header_caption``, for a caption written without fault."""
    words = caption_words(text.rstrip(":： "))
    return _exact(words, True) if 0 < len(words) <= MOST_WORDS else None


def _exact(words: list[str], colon: bool) -> Found | None:
    table = caption_table()
    form, worded = fold(words, table), " ".join(words)
    doubt = DOUBTFUL_WITH_COLON if colon else DOUBTFUL
    for certain, doubtful, text in (
        (table.worded, table.doubtful_worded, worded),
        (table.keys, table.doubtful, form),
    ):
        if text in doubtful:
            return doubtful[text], doubt
        if text in certain:
            return certain[text], 100.0
    if form.endswith(f" {NUMBER}"):
        stem = form[:-2]
        key = table.keys.get(stem) or table.doubtful.get(stem)
        if key in table.numbered:
            return key, 100.0
        return ("ignore", 90.0) if key else None
    key = table.keys.get(f"{form} {NUMBER}")
    if key == "certificate":
        # "Certificate of analysis" is the title of a sheet as often as a caption, "Test" the head of a column.
        return None if len(words) == 1 or listed_role(worded) else (key, doubt)
    return (key, 95.0) if key and key in table.numbered else None


SURELY = 4
"""Letters: a known part behind an unknown one says nothing where it is shorter, or has other meanings ("pH (moût)")."""


def _of_parts(parts: list[str], colon: bool) -> Found | None:
    """Captions in two languages, or with an addition in brackets; None where the parts name different entries."""
    found: list[Found | None] = []
    for part in parts:
        words = caption_words(part)
        found.append(_exact(words, colon) or _composed(words, colon))
    if found[0] is None:
        found = [
            hit if hit and hit[1] >= COMPOSED and len(part) >= SURELY else None
            for hit, part in zip(found, parts, strict=True)
        ]
    known = [hit for hit in found if hit]
    wanted = {key for key, _ in known if key not in EXTRA_KEYS}
    if len(wanted) > 1:
        certain = {key for key, score in known if key not in EXTRA_KEYS and score >= PARTLY}
        if len(certain) != 1:
            return None
        wanted = certain
    if wanted:
        key = wanted.pop()
        best = max(score for name, score in known if name == key)
        # A first part that is known carries the caption; additions in brackets take little away.
        return key, best if len(known) == len(parts) or (found[0] and best >= COMPOSED) else min(best, PARTLY)
    if known and len(known) == len(parts):
        return ("date" if any(key == "date" for key, _ in known) else "ignore"), min(score for _, score in known)
    return None


# Captions put together of known words -------------------------------------------------------------------------------


def _composed(words: list[str], colon: bool) -> Found | None:
    """A caption that is not listed, but made of words that are: "Date touraillage", "Name of malt supplier"."""
    table = caption_table()
    kept, numbered = telling_words(words, table)
    if len(kept) > 1 or (kept and kept[0].endswith(table.date_endings)):
        found = None if numbered else _of_event(kept, table)
        if found:
            return found, COMPOSED
    bare = [word for word in kept if word not in table.references]
    numbered = numbered or len(bare) < len(kept)
    hits: dict[str, float] = {}
    if bare and len(bare) < len(kept):
        _look_up(hits, bare, numbered, None, table, colon)
    for key, beside in table.beside.items():
        rest = [word for word in bare if word not in beside]
        if rest and len(rest) < len(bare):
            _look_up(hits, rest, numbered, key, table, colon)
    named = {key for key in hits if key != "ignore"} or set(hits)
    if len(named) != 1:
        return None
    key = named.pop()
    return key, hits[key]


def _look_up(
    hits: dict[str, float], kept: list[str], numbered: bool, wanted: str | None, table: CaptionTable, colon: bool
) -> None:
    """Adds the entry of a shortened caption to ``hits`` where it is the wanted one, or any where none is named."""
    stem = form_of(kept, False)
    forms = (f"{stem} {NUMBER}", stem) if numbered else (stem,)
    for form in forms:
        key = table.doubtful.get(form) or table.keys.get(form)
        if key is None or (wanted is not None and key != wanted):
            continue
        if numbered and key not in table.numbered:
            key = "ignore"
        score = COMPOSED
        if form in table.doubtful and not (numbered and key in table.numbered):
            score = DOUBTFUL_WITH_COLON if colon else DOUBTFUL
        hits[key] = max(hits.get(key, 0.0), score)
        return


def _of_event(kept: list[str], table: CaptionTable) -> str | None:
    """What a date is of: a word for a date, and words for what happened that all name one entry."""
    dated = False
    named: list[set[str]] = []
    beside = table.beside.get("date", set())
    for word in kept:
        if word in table.dates:
            dated = True
            continue
        event = table.events.get(word.rstrip("s"))
        if event is None and word.endswith(table.date_endings):
            ending = next(e for e in table.date_endings if word.endswith(e))
            event = table.events.get(word[: len(word) - len(ending)].rstrip("s"))
            dated = dated or event is not None
        if event is not None:
            named.append(event)
        elif word not in beside:
            return None
    if not dated or not named:
        return None
    # A date of something else ("sample received") is none of ours, whatever else the caption says.
    common = {"ignore"} if any(event == {"ignore"} for event in named) else set.intersection(*named)
    return common.pop() if len(common) == 1 else None
