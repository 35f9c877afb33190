"""Units on sheets: recognising them, and taking them off the end of values and labels."""

from __future__ import annotations

import re
from collections.abc import Iterator
from functools import lru_cache

from importer.vocabulary.result_words import plain_word, result_words
from importer.vocabulary.unit_alike import parse_alike
from importer.vocabulary.unit_keys import unit_key
from importer.vocabulary.unit_names import Unit, parse_plain, parse_unit, parse_units, unit_table

__all__ = ["Unit", "parse_unit", "parse_units", "split_label", "split_unit", "split_value"]

LONGEST = 240
"""Characters: longer texts are prose and are left alone."""
_NUMBERS_TRIED, _TOKENS_TRIED = 6, 7

Split = tuple[str, Unit | None]


def split_unit(text: str) -> Split:
    """Takes a unit off a value ("4.2 % dry") or a label ("Extract (% dry)"); the text comes back untouched without one.
    A text that is nothing but a unit gives an empty text and the unit."""
    return _split_unit(text)


@lru_cache(maxsize=8192)
def _split_unit(text: str) -> Split:
    if not text or len(text) > LONGEST or text.isspace():
        return text, None
    if len(text) <= 80 and not text[0].isdigit() and _may_be_unit(text):
        whole = parse_unit(text)
        if whole is not None and whole.label != "never":
            return "", whole
    rest, unit = split_value(text)
    return (rest, unit) if unit else split_label(text)


def _may_be_unit(text: str) -> bool:
    """A quick no for texts of several plain words."""
    if _HINT.search(text):
        return True
    words = text.split()
    return len(words) == 1 or unit_key(words[0]) in unit_table().first_words


# Values ---------------------------------------------------------------------------------------------------------------

_NUMBER = re.compile(r"\d+(?:[.,]\d+)*")
_WORDS = re.compile(r"[^\W\d_]+")
_MARKS = re.compile(r"\s*(?:[*†‡#§¹²³⁴⁵⁶⁷⁸⁹!↑↓]+|\([a-z0-9*]\)|\b[a-e]\))\s*$")
# A sign before the number belongs to it ("% −0.3", "% - 0.3"), but for a stroke between words ("EBC - 3.5", "EBC-3.5").
_LEADING = re.compile(
    r"\s*([^\W\d_°º][^\d<>=~≈±:−]{0,18}?|%[^\d<>=~≈±:,;−]{0,18}?|[°º]\s?[^\d<>=~≈±:−]{1,12}?)\s*[:=]?\s*"
    r"(?=(?:[<>≤≥~≈±−]|(?<=[\s%])[-–](?=\d)|(?<=%)[-–]|(?<=%\s)[-–])?\s*\d)"
)


@lru_cache(maxsize=8192)
def split_value(text: str) -> Split:
    """Takes the unit off a value: "≥180 mg/100g", "80%~85%", "10-15 min", "4.5 % max", "pH 5.85".

    A limit word behind the unit stays with the number ("300 °L min" is "300 min" in °L), and so does a footnote mark.
    """
    numbers = list(_NUMBER.finditer(text))[:_NUMBERS_TRIED] if len(text) <= LONGEST else []
    if not numbers:
        return text, None
    if not _all_words_allowed(text[: numbers[0].start()]):
        return _leading_unit(text)
    for number in numbers:
        left = text[: number.end()]
        found = _unit_with_tail(text[number.end() :])
        if found:
            if not _all_words_allowed(_without_units(left)):
                return text, None
            unit, tail = found
            if tail.startswith(")") and _LONE_IN_BRACKET.search(left):
                return text, None
            return _without_units(left, unit).strip() + tail, unit
    return _unit_at_first(text, numbers)


def _unit_at_first(text: str, numbers: list[re.Match[str]]) -> Split:
    """ "4.5% - 5.0": the unit at the first number only."""
    if len(numbers) > 1 and not text[numbers[-1].end() :].strip():
        gap = text[numbers[0].end() : numbers[1].start()]
        shorter = _gap_without_unit(gap, None)
        unit = parse_unit(gap[: len(gap) - len(shorter)])
        if unit and shorter.strip() and _all_words_allowed(shorter + text[numbers[1].end() :]):
            return text[: numbers[0].end()] + shorter + text[numbers[1].start() :], unit
    return _leading_unit(text)


# "1.55 (8.6 %)": the sign belongs to the strength in the bracket, not to the figure.
_LONE_IN_BRACKET = re.compile(r"\(\s*\d+(?:[.,]\d+)?$")


def _all_words_allowed(text: str) -> bool:
    """True where a text has no words but those that may stand beside a number."""
    allowed = result_words().allowed
    return all(plain_word(word) in allowed for word in _WORDS.findall(text))


def _unit_with_tail(rest: str) -> tuple[Unit, str] | None:
    """The unit at the start of what follows a number, and what of it stays with the number (limit word, mark)."""
    rest = rest.strip()
    if rest[:1] in ("[", "(") and rest[-1] in "])":
        rest = rest[1:-1].strip()
    if not rest or len(rest) > 64:
        return None
    mark = _MARKS.search(rest)
    if mark and mark.start() and (inner := _unit_with_tail(rest[: mark.start()])):
        return inner[0], inner[1] + mark[0].rstrip()
    if rest[-1] in ")]" and rest.count("(") < rest.count(")"):
        inner = _unit_with_tail(rest[:-1])
        return (inner[0], inner[1] + rest[-1]) if inner else None
    unit = parse_unit(rest)
    return (unit, "") if unit else _limit_beside(rest)


def _limit_beside(rest: str) -> tuple[Unit, str] | None:
    after = result_words().after
    words = rest.split()
    for count in range(1, min(4, len(words))):
        tail, head = " ".join(words[-count:]), " ".join(words[:-count])
        if plain_word(tail) in after:
            unit = parse_unit(head.rstrip(","))
            if unit:
                return unit, f" {tail}"
        tail, head = " ".join(words[:count]), " ".join(words[count:])
        if plain_word(tail) in after:
            unit = parse_unit(head)
            if unit:
                return unit, f" {tail}"
    return None


_BETWEEN = re.compile(r"\s*(?:[-–—−÷~∼/;±<>≤≥(]|\.\.|$|(?:to|bis|à|a|and|und|et|do|tot|max\.?|min\.?)\b)")


def _without_units(left: str, unit: Unit | None = None) -> str:
    """Removes the unit behind earlier numbers of the same value ("80%~85" becomes "80~85")."""
    pieces: list[str] = []
    end = 0
    for number in list(_NUMBER.finditer(left))[:_NUMBERS_TRIED]:
        gap = left[end : number.start()]
        pieces.append(_gap_without_unit(gap, unit) if end and gap else gap)
        pieces.append(number[0])
        end = number.end()
    return "".join(pieces) + left[end:]


def _gap_without_unit(gap: str, unit: Unit | None) -> str:
    """A text between two numbers without the unit at its start."""
    for match in _BETWEEN.finditer(gap):
        named = parse_unit(gap[: match.start()]) if gap[: match.start()].strip() else None
        if named and (unit is None or named.code == unit.code):
            return gap[match.start() :]
    return gap


def _leading_unit(text: str) -> Split:
    """ "pH 5.85", "EBC: 3.5", "% 4.3": units before the number; of those that are words as well only some may."""
    match = _LEADING.match(text)
    unit = parse_unit(match[1]) if match else None
    first = unit is not None and (unit.is_plain or unit_table().entries[unit.code].before)
    if match and first and _all_words_allowed(text[match.end() :]):
        return text[match.end() :].strip(), unit
    return text, None


# Labels ---------------------------------------------------------------------------------------------------------------

_OPEN = {")": "(", "]": "[", "}": "{", "）": "（", "】": "【"}
_TRAILING = re.compile(r"[\s,;:–—/|=-]+$|[\s.…·_]{2,}$|\s*\.{2,}\s*$")
_LEADER = re.compile(r"(?:\s?[._…]){3,}")
_SEPARATOR = re.compile(r"\s*[,;:|]\s*|\s+[-–—]\s+|\s*/\s*|\s*[-–—]\s*(?=%)")
_FOOTNOTE = re.compile(r"[*†‡¹²³:\s]+$")
_PERCENT_FIRST = re.compile(r"\s*%\s*[-:]?\s*(?=[^\W\d_(])")
_DECIMAL_BEFORE = re.compile(r"(?:\d[.,]\d+|[<>≤≥±]\s*\d+)$")
# Strengths of worts in whole numbers; "VZ 45 %" and "Hartong 20 %" are temperatures with the unit behind.
_STRENGTH_BEFORE = re.compile(r"(?<![\d.,])(?:[89]|1[0-8])$")
_FACTOR_BEFORE = re.compile(r"[x×*·]\s*\d[.,]\d+\)?$", re.IGNORECASE)
_NUMBER_BEFORE = re.compile(r"\d$")
# "Extrait MG % MS": capitals before the sign are an abbreviation of the label and no weight ("mg %").
_CAPITALS = re.compile(r"(?:[A-Z]\.?){1,2}\s?%")


@lru_cache(maxsize=8192)
def split_label(text: str) -> Split:
    """Takes the unit off a label: "Moisture (%)", "Extract, % dry", "% Friability", "FAN mg/l", "Extrakt in % TrS".

    A size or strength with its number ("0.7 mm", "8.6 %", "45 °C") is part of the label and stays.
    """
    if len(text) > LONGEST or not text.strip() or not _may_hold_unit(text):
        return text, None
    body = _LEADER.sub(" ", text) if "..." in text or "…" in text or "__" in text else text
    for method in (_bracketed, _last_words, _after_separator, _percent_first, _sign_inside):
        found = method(body)
        if found:
            return found
    return _before_limit(body) or (text, None)


_HINT = re.compile(r"[%‰°º˚/(\[{（【,;:|₂²³⁻]|\s[-–—]")


def _may_hold_unit(text: str) -> bool:
    """A quick no for the many labels of plain words."""
    if _HINT.search(text):
        return True
    first_words = unit_table().first_words
    return any(unit_key(word) in first_words for word in text.split()[1:])


def _tidy(label: str) -> str:
    """A label without separators and prepositions left over at its end."""
    label = _TRAILING.sub("", label.strip())
    words = label.rsplit(None, 1)
    while len(words) == 2 and words[1].casefold() in unit_table().prepositions:
        label = _TRAILING.sub("", words[0])
        words = label.rsplit(None, 1)
    return label


def _without_preposition(text: str) -> str:
    words = text.split(None, 1)
    while len(words) == 2 and words[0].casefold() in unit_table().prepositions:
        text = words[1]
        words = text.split(None, 1)
    return text.strip()


def _brackets(text: str) -> Iterator[tuple[int, int]]:
    """Outermost bracket pairs, last first, as positions of both brackets."""
    closing: list[tuple[int, str]] = []
    for place in range(len(text) - 1, -1, -1):
        mark = text[place]
        if mark in _OPEN:
            closing.append((place, mark))
        elif closing and mark == _OPEN[closing[-1][1]]:
            end, _ = closing.pop()
            if not closing:
                yield place, end


def _bracketed(text: str) -> Split | None:
    """A unit in brackets, at the end or (where it can mean nothing else) inside the label."""
    for start, end in _brackets(text):
        inner = _without_preposition(text[start + 1 : end])
        unit = parse_unit(inner)
        left, right = text[:start], text[end + 1 :]
        last = not _FOOTNOTE.sub("", right)
        if unit and unit.label != "never" and left.strip() and (last or not (unit.doubtful or unit.damaged)):
            if last:
                return _before_family(left, text[start : end + 1], unit)
            outer = _unit_around(left, right, unit)
            return outer or (f"{left.rstrip()} {right.strip()}".strip(), unit)
        within = _after_separator(inner) if not unit else None
        if within and within[1] and not within[1].doubtful and left.strip():
            return f"{left}{text[start]}{within[0]}{text[end]}{right}", within[1]
    return None


def _before_family(left: str, bracket: str, unit: Unit) -> Split:
    """ "Colour °L/SRM (ASBC)": a family name in brackets behind a unit is no unit itself."""
    if unit.doubtful and unit.family:
        rest, inner = split_label(left)
        if inner and not inner.doubtful:
            return f"{rest} {bracket}", inner
    return _tidy(left), unit


def _unit_around(left: str, right: str, unit: Unit) -> Split | None:
    """ "FAN (mg/l) dry": words of the moisture basis behind the bracket belong to the unit."""
    whole = parse_unit(f"{unit.text} {right.strip()}")
    if whole and whole.code == unit.code:
        return _tidy(left), whole
    return None


def _after_separator(text: str) -> Split | None:
    """A unit after a comma, dash or stroke: the longest tail that is a unit."""
    for match in _SEPARATOR.finditer(text):
        left, tail = text[: match.start()], _FOOTNOTE.sub("", _without_preposition(text[match.end() :]))
        if not left.strip() or not tail or len(tail) > 80:
            continue
        addition = _BRACKET_BEHIND.match(tail)
        unit = None if _CAPITALS.match(tail) else parse_plain(tail) or parse_alike(tail)
        if unit is None and addition:
            unit, left = parse_plain(addition[1]), f"{left} {addition[2]}"
        if unit is None or unit.label == "never":
            continue
        if "/" in match[0] and _ends_with_unit(text[: match.start()]):
            return None
        if match[0] == "/" and unit.label == "bracket" and text[match.start() - 1] < "\u0250":
            continue
        if unit.doubtful and plain_word(tail) in result_words().after:
            # "Friability, %, min": a limit, where there is a unit before it already.
            rest, inner = split_label(left)
            if inner:
                return f"{rest} {tail}", inner
        return _tidy(left), unit
    return None


_BRACKET_BEHIND = re.compile(r"([^()]+?)\s*(\([^()]*\))$")
_LIMIT_SIGN = re.compile(r"\s*[<>≤≥]=?\s*$")


def _before_limit(text: str) -> Split | None:
    """ "Moisture, %, max", "水分含量/% ≤": a limit behind the unit stays with the label."""
    sign = _LIMIT_SIGN.search(text)
    if sign and sign.start():
        rest, unit = split_label(text[: sign.start()])
        return (f"{rest} {sign[0].strip()}", unit) if unit else None
    words = _FOOTNOTE.sub("", text).split()
    limits = result_words()
    for count in range(min(3, len(words) - 1), 0, -1):
        tail = " ".join(words[-count:])
        if plain_word(tail) in limits.after or plain_word(tail) in limits.before:
            rest, unit = split_label(" ".join(words[:-count]).rstrip(" ,;"))
            return (f"{rest} {tail}", unit) if unit else None
    return None


def _ends_with_unit(left: str) -> bool:
    """True where the text before a stroke is, or ends in, a unit: "IoB / WK", "DP WK / °L"."""
    words = left.replace("/", " ").split()
    return bool(words) and (parse_unit(words[-1]) is not None or parse_unit(left) is not None)


def _last_words(text: str) -> Split | None:
    """A unit as the last words of a label."""
    body = _FOOTNOTE.sub("", text)
    starts = [match.start() for match in re.finditer(r"\S+", body)][-_TOKENS_TRIED:]
    for start in starts:
        if not start:
            continue
        unit = _bare_unit(body[:start], body[start:])
        if unit:
            return _tidy(body[:start]), unit
    return None


def _bare_unit(left: str, tail: str) -> Unit | None:
    if not (tail[-1].isalnum() or tail[-1] in "%°.)‰⁻¹²") or len(tail) > 64:
        return None
    unit = None if _CAPITALS.match(tail) else parse_plain(tail)
    if unit is None or unit.label != "word":
        return None
    entry = unit_table().entries[unit.code]
    before = left.rstrip()
    if entry.case and not _stands_out(before, tail):
        return None
    if tail.count(")") > tail.count("(") and before.count("(") > before.count(")"):
        # "Viscosity (8.6 °P)": a strength in brackets, with its number.
        return None
    if before.endswith("/") and _ends_with_unit(before[:-1]):
        return None
    if unit.code in ("%", "°P"):
        # "Viscosity 8.6 %" names a strength; "VZ 45 %", "N x 6.25 %" and "> 2.5 mm %" are labels with the unit behind.
        is_strength = _DECIMAL_BEFORE.search(before) or _STRENGTH_BEFORE.search(before)
        return None if is_strength and not _FACTOR_BEFORE.search(before) else unit
    return None if _NUMBER_BEFORE.search(before) and unit_key(tail)[:1] not in "mldew°" else unit


def _stands_out(before: str, tail: str) -> bool:
    """True for a unit in capitals at the very end of a label that is not all in capitals.

    "alpha-Amylase DU" has one, "Couleur du moût", "COULEUR DU MOÛT" and "TEMPS DU" have none.
    """
    alone = unit_key(tail) in unit_table().spelled
    return alone and not tail.islower() and not before.isupper()


def _percent_first(text: str) -> Split | None:
    """ "% Moisture": the sign before the label."""
    match = _PERCENT_FIRST.match(text)
    if not match:
        return None
    return text[match.end() :].strip(), parse_unit("%")


_SIGN_INSIDE = re.compile(r"(?<=[^\W\d_)])(?:,?\s*%|,?\s+[^\W\d_]{1,3}°/\w{2,3})(?=\s|$|\))")


def _sign_inside(text: str) -> Split | None:
    """ "Moisture% max", "Extract L°/kg dry fine": the sign, and the basis behind it, between words of the label."""
    match = _SIGN_INSIDE.search(text)
    if not match:
        return None
    left, words = text[: match.start()], text[match.end() :].split()
    for count in range(min(4, len(words)), -1, -1):
        unit = parse_unit(" ".join([match[0].strip(" ,"), *words[:count]]))
        if unit:
            return _tidy(" ".join([left, *words[count:]])), unit
    return None
