"""Header entries outside of tables: a caption, and its entry to the right or below."""

from __future__ import annotations

import re
from collections.abc import Sequence

from importer.layout.lines import Cell, Line, make_cell
from importer.layout.terms import Terms
from importer.printed import PrintedHeader
from importer.reading.above import entry_above, entry_before, is_told
from importer.reading.entry_kinds import COMPANIES, DATES, NUMBERED, fits_entry
from importer.reading.events import Event, Place
from importer.reading.pieces import Piece
from importer.reading.rows import clean_label
from importer.reading.under import BELOW, below
from importer.vocabulary.captions import document_title, family_statement, looks_like_batch
from importer.vocabulary.malt_names import is_malt_name, names_brewer, names_malt, names_maltster, names_one_malt

SENTENCE_WORDS = 11
_YEAR = re.compile(r"(?:19|20)\d\d(?:/(?:\d\d)?\d\d)?")
_DASHES = ("–", "—", "-", "·", "|")
# "24-0815 – residues and contaminants"
_WORDS_BEHIND_DASH = re.compile(r"(?<=\w)\s+[–—-]\s+[^\d]*[^\W\d_]{3}[^\d]*$")
# Names of companies and malts have fewer words than this; longer texts are sentences.
LONGEST_NAME = 9
# A caption that may mean something else is one where its number is all that follows it, in so many words.
WHOLE_ENTRY = 4


def header_event(
    key: str,
    caption: str,
    pieces: Sequence[Piece],
    at: int,
    line: Line,
    number: int,
    lines: Sequence[Line],
    used: frozenset[int],
    terms: Terms,
) -> tuple[Event | None, int]:
    """The entry of a caption: the text to its right, or below it in a block of captions above their entries."""
    piece = pieces[at]
    right, step = _beside(pieces, at, terms)
    under = over = None
    if right is None and number - 1 not in used:
        over = entry_above(piece.cell, line, number, lines, terms) or entry_before(
            piece.cell, line, number, lines, terms
        )
    if over is None and (right is None or not piece.colon):
        under = below(piece.cell, line, number, lines, used, terms)
    if under is not None and _is_within(number, used):
        # Between the rows of a table words stand below words without being their entries.
        under = None
    value = over or (right if right is not None else under)
    if right is not None and under is not None:
        stacked = _is_stacked(line, number, lines, terms)
        if fits_entry(key, right.text) is False or (stacked and fits_entry(key, under.text) is not False):
            value, step = under, 1
    if value is None or key == "ignore":
        return None, step
    text = value.text.strip()
    if key == "variety" and not terms.is_sure_caption(caption) and names_one_malt(text):
        key = "malt"  # "Sorte", "Grain" before the name of a malt
    if key == "malt" and not names_malt(text) and _names_batch_only(value, terms):
        return None, step
    if key in NUMBERED:
        text = _WORDS_BEHIND_DASH.sub("", _up_to_next(text, terms))
    elif key in ("malt", *COMPANIES):
        text = _without_family(_name_alone(key, text), terms)
    fits = fits_entry(key, text)
    # "Extra pale malt" names a malt and sounds like a label.
    other = fits is None and (_is_other(text, terms) or (key != "malt" and terms.is_label(text)))
    # "Grain", "Modification", "Nitrogen" side by side are headings of results.
    if key == "variety" and not (piece.colon or terms.is_sure_caption(caption)) and len(line.cells) > 2:
        other = other or (all(map(terms.is_telling, text.split())) and not terms.is_unit(text))
    if not text.strip(" -–—_.") or fits is False or other:
        return None, step
    several = (
        _has_rival(key, pieces, at + step)
        or (key == "malt" and terms.is_label(text) and not names_malt(text))
        or (value is over and not is_told(key, text))
        or (value is right and not piece.colon and _heads_values(value, number, lines, terms))
        or _is_of_other(key, caption, pieces, at, terms)
        or (value is under and _goes_on_below(key, value, number, lines, used, terms))
        or (value is under and _stands_below(number, lines, terms))
        or (value is under and _reaches_over(value, piece.cell, line))
        # Any word could be a variety: below a doubtful caption ("Grain") it may as well be the next heading.
        or (value is under and key == "variety" and len(line.cells) == 1 and not terms.is_sure_caption(caption))
    )
    sure = terms.is_sure_caption(f"{caption}:" if piece.colon else caption) and not several
    box, confidence = value.box, value.confidence
    entry = PrintedHeader(key, caption, text, line.page, box, sure=sure, confidence=confidence, several=several)
    return Event(Place(line.page, line.box.middle, piece.cell.box.x0), header=entry), step


def _heads_values(value: Cell, number: int, lines: Sequence[Line], terms: Terms) -> bool:
    """True where the next line is a row with a value below an entry: both may be heads ("Contract  24-0815")."""
    if number + 1 >= len(lines) or not terms.is_label(lines[number + 1].cells[0].text):
        return False
    first, *rest = lines[number + 1].cells
    close = first.box.top - value.box.bottom < BELOW * lines[number + 1].em
    below_it = (cell for cell in rest if min(cell.box.x1, value.box.x1) > max(cell.box.x0, value.box.x0))
    return close and len(rest) > 1 and any(terms.is_value(cell.text) for cell in below_it)


def _names_batch_only(value: Cell, terms: Terms) -> bool:
    """True for a subject that is a batch and no malt ("Analysis of lot 24-0815")."""
    inside = caption_inside(Piece(value.text, value, False), terms)
    return inside is not None and inside[0] == "batch"


def _name_alone(key: str, text: str) -> str:
    """The name of a malt or a company without what a comma parts from it ("in bulk, 500 t", an address)."""
    words = text.split()
    last = max((at for at, word in enumerate(words) if looks_like_batch(word)), default=-1)
    if key == "malt" and last > 0 and names_one_malt(" ".join(words[last + 1 :])):
        return " ".join(words[last + 1 :])
    name, comma, rest = text.partition(", ")
    if not comma or not any(c.isdigit() for c in rest) or looks_like_batch(text):
        return text
    whole = names_one_malt(name) if key == "malt" else names_brewer(name) or names_maltster(name)
    return name if whole else text


def _without_family(text: str, terms: Terms) -> str:
    """A name without the method family behind it ("Pale malt EBC"), which may be the unit of a colour in it
    ("Caramel malt 150 EBC")."""
    name, _, last = text.rpartition(" ")
    family = " " in name and all(role.startswith("family:") for role in terms.roles(last) or ("",))
    return name.rstrip(" ,;") if family and not any(c.isdigit() for c in name.split()[-1]) else text


def _is_within(number: int, used: frozenset[int]) -> bool:
    """True for a line between those that a table has taken."""
    near = range(1, 3)
    return any(number - n in used for n in near) and any(number + n in used for n in near)


def _is_of_other(key: str, caption: str, pieces: Sequence[Piece], at: int, terms: Terms) -> bool:
    """True where the words right before a caption make it one of something else ("Barley batch no.", "Last lot")."""
    before = pieces[at - 1] if at else None
    if before is None or before.colon or key not in NUMBERED:
        return False
    if pieces[at].cell.box.x0 - before.cell.box.x1 > before.cell.box.height:
        return False
    whole = f"{before.text} {caption}"
    return terms.is_other_matter(whole) or "previous" in terms.roles(whole)


def _has_rival(key: str, pieces: Sequence[Piece], at: int) -> bool:
    """True where what follows an entry could be its entry as well: the same of several batches."""
    following = pieces[at] if at < len(pieces) else None
    return following is not None and not following.colon and fits_entry(key, following.text) is True


def _reaches_over(value: Cell, caption: Cell, line: Line) -> bool:
    """True where an entry reaches below the next caption: it may hold the entry of that one, too."""
    return any(value.box.x0 < other.box.x0 < value.box.x1 for other in line.cells if other.box.x0 > caption.box.x0)


def _goes_on_below(
    key: str, value: Cell, number: int, lines: Sequence[Line], used: frozenset[int], terms: Terms
) -> bool:
    """True where another such entry stands below the first: the captions head a table of several batches."""
    first = value.words[0]
    near = range(number + 1, min(number + 3, len(lines)))
    row = next((i for i in near if any(first in cell.words for cell in lines[i].cells)), None)
    if row is None or len(lines[row].cells) < 2:
        return False
    again = below(value, lines[row], row, lines, used, terms)
    return again is not None and fits_entry(key, again.text) is True


def _stands_below(number: int, lines: Sequence[Line], terms: Terms) -> bool:
    """True for captions under a line of entries that has no captions above it: they may be those of that line."""
    at = number
    while at > 0 and _is_row_above(lines[at - 1], lines[at], terms):
        if at > 1 and _is_row_above(lines[at - 2], lines[at - 1], terms, captions=True):
            at -= 2
            continue
        return True
    return False


def _is_row_above(upper: Line, line: Line, terms: Terms, captions: bool = False) -> bool:
    """True for a line close above another with as many cells, each over one of its cells: captions, or none."""
    if len(upper.cells) < 2 or len(upper.cells) != len(line.cells):
        return False
    if line.box.top - upper.box.bottom > BELOW * line.em:
        return False
    pairs = zip(upper.cells, line.cells, strict=True)
    over = all(abs(above.box.x0 - cell.box.x0) < 0.6 * line.em for above, cell in pairs)
    named = sum(_is_caption(cell, terms) or ":" in cell.text for cell in upper.cells)
    return over and (2 * named >= len(upper.cells) if captions else not named)


def _beside(pieces: Sequence[Piece], at: int, terms: Terms) -> tuple[Cell | None, int]:
    """The text to the right of a caption, and how many pieces caption and text are."""
    following = pieces[at + 1] if at + 1 < len(pieces) else None
    if following is None or following.colon:
        return None, 1
    if (
        not pieces[at].colon
        and terms.caption(clean_label(following.text)) is not None
        and not is_malt_name(following.text)
    ):
        return None, 1
    value, step = following.cell, 2
    # The entry may itself have been parted by a wide space.
    while at + step < len(pieces) and _continues(pieces[at + step], value, terms):
        value = make_cell([*value.words, *pieces[at + step].cell.words])
        step += 1
    return value, step


def _continues(piece: Piece, value: Cell, terms: Terms) -> bool:
    if piece.colon or terms.caption(clean_label(piece.text)) or terms.is_label(piece.text):
        return False
    if _opens_entry(piece.text.split(), terms):
        return False
    if looks_like_batch(piece.text) and looks_like_batch(value.text):
        return False
    height = max(value.box.height, 1.0)
    return piece.cell.box.x0 - value.box.x1 < 1.0 * height


def _opens_entry(words: Sequence[str], terms: Terms) -> bool:
    """True for words that begin with a caption, which an entry follows ("Crop 2025")."""
    return any(
        terms.is_sure_caption(" ".join(words[:n])) and any(c.isdigit() for c in " ".join(words[n:]))
        for n in range(1, min(len(words), 4))
    )


def _up_to_next(text: str, terms: Terms) -> str:
    """A number without an entry that follows it in the same words ("S6101 Crop 2025")."""
    words = text.split()
    end = next((i for i in range(1, len(words) - 1) if _opens_entry(words[i:], terms)), len(words))
    return " ".join(words[:end])


def _is_stacked(line: Line, number: int, lines: Sequence[Line], terms: Terms) -> bool:
    """True for a line of captions whose entries stand in the line below: a cell each, beginning at the same places.

    In a block of captions and entries side by side the same holds of any two lines; there a caption stands below a
    caption. So a second known caption on the line, or on one of the other lines of the block, has to speak for it.
    """
    if number + 1 >= len(lines) or not _is_above(line, lines[number + 1]):
        return False
    named = [cell.box.x0 for cell in line.cells if _is_caption(cell, terms)]
    below_them = [cell.box.x0 for cell in lines[number + 1].cells if _is_caption(cell, terms)]
    if any(abs(a - b) < 1.5 * line.em for a in named for b in below_them):
        return False
    if len(named) > 1:
        return True
    for other in (number - 2, number + 2, number - 4, number + 4):
        if 0 <= other < len(lines) - 1 and _is_above(lines[other], lines[other + 1]):
            first, *rest = lines[other].cells
            if _is_caption(first, terms) and any(_is_caption(cell, terms) for cell in rest):
                # Captions below captions: each has its entry at its side.
                return not _is_caption(lines[other + 1].cells[0], terms)
    return False


def _is_caption(cell: Cell, terms: Terms) -> bool:
    return terms.caption(clean_label(cell.text)) is not None


def _is_above(line: Line, under: Line) -> bool:
    """True where something in the lower line begins where each cell of the upper one does."""
    if len(line.cells) < 2 or len(under.cells) > len(line.cells):
        return False
    starts = [word.x0 for cell in under.cells for word in cell.words]
    return all(any(abs(cell.box.x0 - x0) < 1.5 * line.em for x0 in starts) for cell in line.cells)


def _is_other(text: str, terms: Terms) -> bool:
    """True for a text that is no entry: a result, a sentence, a title, a head, a method."""
    return (
        terms.is_value(text)
        or terms.is_unit(text)
        or len(text.split()) > LONGEST_NAME
        or bool(terms.roles(text))
        or document_title(text) is not None
        or (len(text.split()) > 1 and family_statement(text) is not None)
    )


def _is_code(text: str) -> bool:
    """True for a number that may have a few capitals before it ("ZA 25/507"), and for no words with one among them."""
    words = text.split()
    return (
        any(c.isdigit() for c in text)
        and all(any(c.isdigit() for c in word) or (len(word) <= 3 and word == word.upper()) for word in words)
        and not words[0].startswith("(")
    )


def _takes_letter(caption: Sequence[str]) -> bool:
    """True for "Lot D" before "2501": the letter belongs to the number."""
    return len(caption) > 1 and len(caption[-1]) == 1 and caption[-1].isalpha()


def _says_it(key: str, value: str) -> bool:
    """True for a value that leaves no doubt of its kind: a date, or a name with a word of its trade."""
    named = {"customer": names_brewer, "supplier": names_maltster, "malt": names_one_malt}
    return value[:1].isupper() and named[key](value) if key in named else key in DATES and bool(fits_entry(key, value))


def entries_inside(piece: Piece, terms: Terms) -> list[tuple[str, str, str]]:
    """What a run of words names of the batch: keys, captions, and entries."""
    inner, crop = caption_inside(piece, terms), _crop_inside(piece.text, terms)
    entries = [] if inner is None else [inner]
    if crop is not None and (inner is None or inner[0] != "crop_year"):
        entries.append(("crop_year", *crop))
    return entries


def _crop_inside(text: str, terms: Terms) -> tuple[str, str] | None:
    """The caption and the year of a harvest behind a comma or in brackets, where a malt or a batch is named with it
    ("Pilsner malt, crop 2024")."""
    words = text.split()
    for at in range(2, len(words)):
        caption, year = words[at - 1].strip("(,"), words[at].rstrip(".,;)")
        apart = words[at - 2].endswith((",", ";")) or words[at - 1].startswith("(") or words[at - 2] in _DASHES
        if apart and _YEAR.fullmatch(year) and terms.caption(caption) == "crop_year":
            before = " ".join(words[: at - 1])
            if names_malt(before) or any(looks_like_batch(word.strip(",;()")) for word in words[: at - 1]):
                return caption, year
    return None


def caption_inside(piece: Piece, terms: Terms) -> tuple[str, str, str] | None:
    """A caption and its value in one run of words without a colon ("Batch 24-0815")."""
    words = piece.text.split()
    if not 2 <= len(words) <= SENTENCE_WORDS:
        return None
    for start in range(len(words) - 1):
        for cut in range(min(len(words) - 1, start + 4), start, -1):
            caption, value = " ".join(words[start:cut]), words[cut].strip(",;.()")
            if _takes_letter(words[start:cut]):
                continue
            known = terms.is_sure_caption(caption) or (start and document_title(" ".join(words[:start])) is not None)
            if known and terms.caption(caption) == "batch" and looks_like_batch(value):
                return "batch", caption, value
    for cut in range(min(len(words) - 1, 4), 0, -1):
        caption, value = " ".join(words[:cut]), " ".join(words[cut:])
        key = terms.caption(caption)
        if key == "batch" and len(words) <= WHOLE_ENTRY and looks_like_batch(value) and not _takes_letter(words[:cut]):
            return key, caption, value
        if key is not None and len(words) <= LONGEST_NAME and terms.is_sure_caption(caption) and _says_it(key, value):
            return key, caption, value
        if (
            len(words) <= 6
            and key in ("certificate", "crop_year", "order")
            and fits_entry(key, value) is not False
            and (key == "crop_year" or _is_code(value))
        ):
            return key, caption, value
    return None
