"""Text as it stands on sheets, in one form: cleaned of what extraction and typesetting did to it, and cut into tokens.

A cleaned text keeps its case, since "As" and "as", "MC" and "m.c." are different things; the folded form of a token
has no case and no accents. The same functions serve the words of the mappings and the text of the sheets.
"""

from __future__ import annotations

import re
import unicodedata
from functools import lru_cache
from typing import Literal, NamedTuple

LONGEST = 240
"""Characters of a text that are looked at; no label is longer, and a page of prose taken for one costs nothing."""

LOST = "\x00"
"""Stands inside a word for a letter that extraction lost ("W?rze")."""

TokenKind = Literal["word", "number", "sign", "break"]


class Token(NamedTuple):
    """One word, number or sign. ``raw`` keeps the case, ``text`` is folded; ``dotted`` marks "m.c." for "mc"."""

    text: str
    raw: str
    kind: TokenKind
    dotted: bool = False
    glued: bool = False


_GREEK = {
    **dict.fromkeys("βϐΒ𝛽", "beta"),
    **dict.fromkeys("αᾀάἀἁΑɑ⍺∝𝛼", "alpha"),
    **dict.fromkeys("γɣ", "gamma"),
    **dict.fromkeys("δΔ", "delta"),
}
_SIGNS = (
    ("º˚ᵒ⁰∘", "°"),
    ("№", "no "),
    ("µμ", "u"),
    ("’‘`´ʼ", "'"),
    ("“”„", '"'),
    ("‐‑‒−－", "-"),
    ("—―÷~∼", "–"),
    ("⩽≦", "≤"),
    ("⩾≧", "≥"),
    ("﹤⟨‹＜", "<"),
    ("﹥⟩›＞", ">"),
    ("⁄∕／", "/"),
    ("½", "1/2"),
    ("¼", "1/4"),
    ("¾", "3/4"),
    ("×✕", " x "),
    ("»«·•●▪■◦‣➢✓†‡§¶…⁾⁽。\x09_", " "),
    ("★☆", "*"),
    ("¨ˇ¸\xad™®©", ""),
    ("，、", ","),
    ("：", ":"),
    ("；", ";"),
    ("（【", "("),
    ("）】", ")"),
    ("［", "["),
    ("］", "]"),
    ("％", "%"),
    ("℃", "°C"),
    ("℉", "°F"),
    ("¹²³⁴⁵⁶⁷⁸⁹ᵃᵇ", "\x01"),
    ("�", "?"),
    ("\x0d\x0b\x0c\u2028\u2029", "\x0a"),
)
_TABLE = str.maketrans({letter: plain for letters, plain in _SIGNS for letter in letters})
_MOJIBAKE = re.compile("[ÂÃÄÅÎ][\u0080-\u00bf\u0152-\u2122]")
_SPECIAL = str.maketrans(
    {"ł": "l", "ø": "o", "đ": "d", "ð": "d", "ı": "i", "ħ": "h", "ŀ": "l", "þ": "th", "œ": "oe", "æ": "ae", "ß": "ss"}
    | {"’": "'"}
)
_SHARP_S = re.compile(r"(?<![^\W\d_])[ßẞ](?=$|[^\w]|[^\W\d_])")
_NUMBER_SIGN = re.compile(r"(?<![^\W\d_])[Nn]\.?\s?[º°](?!\s?[CF]\b)")
_LINE_END = re.compile(r"\r\n|[\r\x0b\x0c]")
_CID = re.compile(r"\(cid:\d{1,6}\)")
_HYPHENATED = re.compile(r"(?<=[^\W\d_]{2})-\s*\n\s*(?=[^\W\d_]{2})")
_LETTERSPACED = re.compile(r"(?<!\S)(?:[^\W\d_] ){4,}[^\W\d_](?!\S)")
# "T.N.", "m. c."; "T.N. d.m." are two.
_DOTTED = re.compile(
    r"(?<![^\W\d_])(?:(?:[^\W\d_]\.){1,4}[^\W\d_]\.?|(?:[^\W\d_]\.\s){1,4}[^\W\d_](?!\.[^\W\d_])\.?)(?![^\W\d_])"
)
# A dash between two letters joins them: "F–C".
_JOINED = re.compile(r"(?<![^\W\d_])([^\W\d_])–([^\W\d_])(?![^\W\d_])")
_THOUSAND = re.compile(r"(?<![\d.,])1[.,' ]000(?![\d.,])")
_FOOTNOTE = re.compile(
    r"(?<=[^\W\d_]{3})(?:\s?Footnote\s?\d*)|(?<=[^\W\d_]{4})[1-9](?=$|[\s,;:(])"
    r"|(?<=[^\W\d_]{2})\s?[1-9]\)(?!\w)"
)
_LEADERS = re.compile(r"\.{2,}|(?:\s\.){2,}|_{2,}")
_NUMBERING = re.compile(
    r"^[\s\-–*.o]*(?:\(?\d{1,2}(?:\.\d{1,2}){0,3}[.)]\s*(?=[^\W\d_(])"
    r"|\d{1,2}\s+(?!(?:[cf]|mm|ml|deg|in|g)\b)(?=[^\W\d_]{3})"
    r"|\(?[a-z]\)\s*(?=[^\W\d_])|\(?[ivx]{1,4}[.)]\s+(?=[^\W\d_]{3}))",
    re.IGNORECASE,
)
_TOKEN = re.compile(
    r"(?P<n>\d+(?:[.,]\d+)*)|(?P<c>[\u3040-\u30ff\u3400-\u4dbf\u4e00-\u9fff\uf900-\ufaff\uac00-\ud7af])"
    rf"|(?P<w>(?:[^\W\d_\u3040-\u9fff\uac00-\ud7af{LOST}]|{LOST})+(?:'(?=[^\W\d_]))?)|(?P<s>[<>≤≥=+/|()\[\]{{}};:%°&–\n])"
)  # fmt: skip
_INVISIBLE = re.compile(
    "[\u0002-\u0008\u000e-\u001f\u007f-\u009f\u200b-\u200f\u202a-\u202e\u2060-\u2069\ufeff\ufe00-\ufe0f]"
)


def repair(text: str) -> str:
    """Undoes UTF-8 that was read as a Western 8-bit encoding ("WÃ¼rze"); returns other text unchanged."""
    if not _MOJIBAKE.search(text):
        return text
    for encoding in ("cp1252", "latin-1"):
        try:
            return text.encode(encoding).decode("utf-8")
        except UnicodeError:
            continue
    return text


def clean(text: str, *, numbered: bool = True) -> str:
    """The text without typesetting: one space between words, no bullets, footnote marks, leaders or numbering.

    ``numbered`` False keeps a number at the start, which is then part of the wording ("1. Sorte").

    Greek letters are written out, ß and ẞ are either "ss" or beta, a lost letter inside a word is ``LOST``, line breaks
    stay as such. Case and accents stay.
    """
    text = text[:LONGEST]
    if not text.isascii():
        text = _clean_unicode(text)
    if "\n" in text or "\r" in text or "\x0b" in text or "\x0c" in text:
        text = _HYPHENATED.sub("", _LINE_END.sub("\n", text))
    text = _INVISIBLE.sub("", text)
    if "(cid:" in text:
        text = _CID.sub("?", text)
    if "?" in text:
        text = re.sub(r"(?<=[^\W\d_])\?{1,2}(?=[^\W\d_])", LOST, text).replace("?", " ")
    text = text.replace("\t", " ").replace("_", " ").replace("'", "'")
    if ".." in text or ". ." in text:
        text = _LEADERS.sub(" ", text)
    text = _FOOTNOTE.sub(_drop_footnote, text.replace("*", " "))
    if numbered:
        text = _NUMBERING.sub("", text, count=1)
    if _LETTERSPACED.search(text):
        text = _LETTERSPACED.sub(lambda found: found.group().replace(" ", ""), text)
    return _THOUSAND.sub("1000", text).strip(" -–.:;,*#").replace("\x01", " ")


def _drop_footnote(found: re.Match[str]) -> str:
    """Drops "1)" behind a word unless its bracket belongs to the word: "(SO2)"."""
    before = found.string[: found.start()]
    bracketed = found.group().endswith(")") and before.count("(") > before.count(")")
    return found.group() if bracketed else " "


def typeset(text: str) -> str:
    """A wording of the mappings as ``clean`` would leave it, but with its numbers: "10 % solution", "n x 6.25"."""
    text = text[:LONGEST]
    return (text if text.isascii() else _clean_unicode(text)).strip()


def _clean_unicode(text: str) -> str:
    text = _NUMBER_SIGN.sub("no ", unicodedata.normalize("NFC", repair(text)))
    for letter, name in _GREEK.items():
        if letter in text:
            text = text.replace(letter, f" {name} ")
    text = _SHARP_S.sub(" beta ", text).replace("ẞ", "ß").translate(_TABLE)
    text = _JOINED.sub(r"\1-\2", text)
    text = re.sub("(?<=[^\\W\\d_])\x01+", "", text).replace("\x01", " ")
    text = "".join(c for c in text if c == "°" or unicodedata.category(c) not in ("So", "Co", "Cs", "Cn"))
    return unicodedata.normalize("NFKC", text)


@lru_cache(maxsize=8192)
def fold(word: str) -> str:
    """A word without case and accents. The letter ß becomes "ss", ø "o", æ "ae", ł "l"."""
    if word.isascii():
        return word.lower()
    decomposed = unicodedata.normalize("NFKD", word.casefold().translate(_SPECIAL))
    return "".join(letter for letter in decomposed if not unicodedata.combining(letter)).translate(_SPECIAL)


@lru_cache(maxsize=8192)
def bare(text: str) -> str:
    """The letters and digits of a text alone, without case: what is left of it however it is set."""
    return re.sub(r"\W+", "", text).casefold()


def has_digit(text: str) -> bool:
    """True for a text with a digit in it, of whatever script."""
    return any(map(str.isdigit, text))


def tokens(cleaned: str) -> list[Token]:
    """Cuts a cleaned text into tokens. Chinese characters are tokens of their own; hyphens, stops and commas go.

    Decimal commas in numbers become points, closing zeros go ("2,50" is "2.5").
    """
    found: list[Token] = []
    dotted: dict[int, str] = {}
    if "." in cleaned:
        cleaned, dotted = _join_dotted(cleaned)
    end = -1
    for match in _TOKEN.finditer(cleaned):
        raw, kind = match.group(), match.lastgroup
        glued = match.start() == end
        end = match.end()
        if kind == "w":
            found.append(Token(fold(raw.rstrip("'")), raw, "word", match.start() in dotted, glued))
        elif kind == "c":
            found.append(Token(raw, raw, "word", False, glued))
        elif kind == "n":
            found.append(Token(plain_number(raw), raw, "number", False, glued))
        else:
            found.append(Token(raw, raw, "break" if raw in "/|\n;" else "sign", False, glued))
    return found


def _join_dotted(cleaned: str) -> tuple[str, dict[int, str]]:
    """Joins "F.A.N." to "FAN" and tells where the joined words start."""
    starts: dict[int, str] = {}
    parts: list[str] = []
    position = length = 0
    for match in _DOTTED.finditer(cleaned):
        joined = match.group().replace(".", "").replace(" ", "")
        before = cleaned[position : match.start()]
        parts += [before, joined]
        length += len(before)
        starts[length] = match.group()
        length += len(joined)
        position = match.end()
    parts.append(cleaned[position:])
    return "".join(parts), starts


def plain_number(raw: str) -> str:
    """A number token in its plainest form: decimal point, no closing zeros."""
    text = raw.replace(",", ".")
    if text.count(".") == 1:
        text = text.rstrip("0").rstrip(".") or "0"
    return text
