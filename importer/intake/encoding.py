"""The encoding of plain text, which no file states: told by its mark, its form, or the alphabet it makes sense in."""

from __future__ import annotations

import codecs

_MARKS: tuple[tuple[bytes, str], ...] = (
    (codecs.BOM_UTF8, "utf-8-sig"),
    (codecs.BOM_UTF32_LE, "utf-32"),
    (codecs.BOM_UTF32_BE, "utf-32"),
    (codecs.BOM_UTF16_LE, "utf-16"),
    (codecs.BOM_UTF16_BE, "utf-16"),
)
# One-byte encodings in use on office machines; where two fit equally well the earlier is taken.
_ONE_BYTE = ("cp1252", "cp1250", "cp1251", "cp1253", "cp1254", "cp850", "cp852", "mac_roman")
# The letters beside ASCII of languages that sheets are written in. A decoding is right where one of them has all.
_ALPHABETS = tuple(
    frozenset(letters + letters.upper())
    for letters in (
        "äöüß",  # German
        "àâæçéèêëîïôœùûüÿ",  # French
        "áéíóúñü¿¡ªº",  # Spanish
        "àèéìíòóùú",  # Italian
        "ãáàâçéêíóôõúüªº",  # Portuguese
        "ëïéèêóöüáí",  # Dutch
        "æøåéèêóòâôäöü",  # Danish, Norwegian
        "åäöéàü",  # Swedish, Finnish
        "áčďéěíňóřšťúůýžľĺŕäô",  # Czech, Slovak
        "ąćęłńóśźż",  # Polish
        "áéíóöőúüű",  # Hungarian
        "ăâîșțşţ",  # Romanian
        "čćđšž",  # Croatian, Slovene
        "çğıöşüİâî",  # Turkish
        "абвгдежзийклмнопрстуфхцчшщъыьэюяёіїєґў",  # Russian, Ukrainian, Bulgarian, Belarusian
        "αβγδεζηθικλμνξοπρστυφχψωςάέήίόύώϊϋΐΰ",  # Greek
    )
)
_SIGNS = frozenset("°µμ²³·±–—’‘“”„‚…×÷§½¼¾≤≥≈«»•€£®™©βα\u00a0")
_LOOKED_AT = 100_000


def decode(data: bytes) -> str | None:
    """The text of a file, or None where the bytes are not text."""
    for mark, encoding in _MARKS:
        if data.startswith(mark):
            return _strict(data, encoding)
    if b"\x00" in data:
        odd, even = data[1::2].count(0), data[0::2].count(0)
        half = len(data) // 2
        if odd > 0.4 * half and even < 0.1 * half:
            return _strict(data, "utf-16-le")
        if even > 0.4 * half and odd < 0.1 * half:
            return _strict(data, "utf-16-be")
        return None
    text = _strict(data, "utf-8")
    if text is not None:
        return text
    candidates = [text for encoding in _ONE_BYTE if (text := _strict(data, encoding)) is not None]
    return min(candidates, key=_strangeness, default=None)


def _strict(data: bytes, encoding: str) -> str | None:
    try:
        text = data.decode(encoding)
    except UnicodeError:
        return None
    controls = any(ord(c) < 32 and c not in "\t\r\n\f\v" for c in text[:_LOOKED_AT])
    return None if controls else text


def _strangeness(text: str) -> float:
    """How many characters make no sense: outside every one alphabet, or in places where none such stands."""
    text = text[:_LOOKED_AT]
    letters: dict[str, int] = {}
    strange = 0.0
    for i, c in enumerate(text):
        if ord(c) < 128:
            continue
        before, after = text[i - 1 : i] or " ", text[i + 1 : i + 2] or " "
        if c in _SIGNS:
            # Within a word a sign is a misread letter.
            if c not in "αβμ" and before.isalpha() and (after.isalpha() or c in "°µ“”„‚"):
                strange += 0.5
            continue
        letters[c] = letters.get(c, 0) + 1
        if c.isupper() and before.islower():
            strange += 0.5
        elif ord(c) >= 0x370 and any(part.isascii() and part.isalpha() for part in (before, after)):
            strange += 0.5  # Greek or Cyrillic and Latin in one word
    outside = min(sum(n for c, n in letters.items() if c not in alphabet) for alphabet in _ALPHABETS)
    return outside + strange
