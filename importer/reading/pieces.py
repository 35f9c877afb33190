"""Lines outside of tables, cut at colons: captions, and what stands beside them."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise
from statistics import median

from importer.layout.lines import Cell, Line, make_cell
from importer.layout.terms import Terms
from importer.reading.fractions import Entry, fractions_in
from importer.vocabulary.malt_names import fold, name_words
from importer.words import Word

MAX_CAPTION_WORDS = 6
# Lines of one text stand closer than this (em).
WRAPPED = 0.6
# A space this many times the usual one parts a caption from the entry before it.
WIDER = 1.4
_COLONS = (":", "：")
# A colon or an equals sign set apart from its caption; a stroke between two entries.
_SIGNS = (*_COLONS, "=", "|")
_DASHES = ("-", "–", "—")
# Letters and signs with which a unit ends that no stop shortens ("mg/l", "%").
_UNIT_ENDS = ("%", "l", "L", "g")
_PARTING = (";", "/", "·", "•", "|", "–", "—")


@dataclass(frozen=True, slots=True)
class Piece:
    """A part of a line: a caption that ended with a colon (or stands alone), or plain text."""

    text: str
    cell: Cell
    colon: bool


def pieces_of(line: Line, terms: Terms) -> list[list[Piece]]:
    """Cuts the cells of a line at colons; the caption before a colon is parted from the words before it.

    One list a line, or one an entry where marks part the entries of a running text.
    """
    if fractions := fractions_in([word for cell in line.cells for word in cell.words], terms):
        return [_pair(entry, terms) for entry in fractions]
    if len(line.cells) == 1 and not _is_listed_value(line.cells[0], terms):
        sentences = _sentences(line.cells[0], terms)
        if len(sentences) > 1 or _is_list(line.cells[0]):
            return [_cut(cell, terms) for sentence in sentences for cell in _entries_of(sentence)]
    pieces: list[Piece] = []
    for number, cell in enumerate(line.cells):
        if _is_dash_before_name(line.cells, number, terms):
            continue
        if cell.text in _SIGNS and pieces:
            pieces[-1] = Piece(pieces[-1].text, pieces[-1].cell, cell.text != "|")
            continue
        if cell.text.startswith(_COLONS) and pieces and not pieces[-1].colon:
            # The colons of a block stand below each other, before the entries (": 24-0815").
            pieces[-1] = Piece(pieces[-1].text, pieces[-1].cell, True)
        pieces += _cut(_without_colon(cell), terms)
    return [pieces]


def _pair(entry: Entry, terms: Terms) -> list[Piece]:
    """The name and the value of one fraction."""
    cells = [make_cell(words) for words in entry]
    return [Piece(cell.text, cell, colon=n == 0 and terms.is_label(cell.text)) for n, cell in enumerate(cells)]


def _is_listed_value(cell: Cell, terms: Terms) -> bool:
    """True for one caption with several values ("Sieving (> 2.8 / < 2.2 mm): 85.1 / 1.2 %")."""
    colons = [i for i, word in enumerate(cell.words) if word.text.endswith(_COLONS)]
    return len(colons) == 1 and terms.is_value(" ".join(word.text for word in cell.words[colons[0] + 1 :]))


def _is_dash_before_name(cells: Sequence[Cell], at: int, terms: Terms) -> bool:
    """True for the dash of "92.9 % – Held on 2.5 mm"."""
    if not 0 < at < len(cells) - 1 or cells[at].text not in _DASHES:
        return False
    before, behind = cells[at - 1].text, cells[at + 1].text
    return terms.is_value(before) and not terms.is_label(before) and terms.is_label(behind)


def _is_list(cell: Cell) -> bool:
    """True for a running text of several entries; for two, each must have its colon."""
    marks = sum(_parts(word) for word in cell.words)
    return marks > 1 or (marks == 1 and sum(word.text.endswith(_COLONS) for word in cell.words) > 1)


def _sentences(cell: Cell, terms: Terms) -> list[Cell]:
    """The entries that each end in a full stop ("Malt: Pale ale malt. Lot 24-0815. Crop 2024."), without the stops."""
    starts = _run_of_captions(cell.words, terms) or _run_of_commas(cell.words, terms)
    if starts:
        return [make_cell(cell.words[a:b]) for a, b in pairwise((*starts, len(cell.words)))]
    runs: list[list[Word]] = [[]]
    for at, word in enumerate(cell.words):
        ends = word.text.endswith(".") and bool(runs[-1]) and _opens_entry(cell.words[at + 1 :], terms)
        runs[-1].append(word._replace(text=word.text[:-1]) if ends and len(word.text) > 1 else word)
        if ends:
            runs.append([])
    if len(runs) == 1:
        return [cell]
    last = runs[-1][-1]
    if last.text.endswith(".") and len(last.text) > 1:
        runs[-1][-1] = last._replace(text=last.text[:-1])
    return [make_cell(run) for run in runs]


def _run_of_captions(words: Sequence[Word], terms: Terms) -> list[int]:
    """Where the entries begin in a line of captions without colons ("Lot 24-0815 Malt Pale ale malt Packed 3.2.2025");
    empty where two of them with a number of their own are not enough to tell."""
    if any(word.text.endswith(_COLONS) or word.text in _PARTING for word in words):
        return []
    numbered: list[int] = []
    for at in range(len(words)):
        if _opens_entry(words[at:], terms) and (not numbered or words[at].text[0].isupper()):
            beyond = not numbered or any(c.isdigit() for word in words[numbered[-1] + 1 : at] for c in word.text)
            # "Pilsner malt packed 3.2.2025": the shortest caption of a number leaves the name before it whole.
            numbered = [*numbered, at] if beyond else [*numbered[:-1], at]
    if len(numbered) < 2 or numbered[0]:
        return []
    named = [
        at
        for at in range(1, len(words) - 1)
        if terms.is_sure_caption(words[at].text)
        and words[at + 1].text[0].isupper()
        and at + 1 not in numbered
        and any(c.isdigit() for c in words[at - 1].text)
    ]
    return sorted({*numbered, *named})


def _run_of_commas(words: Sequence[Word], terms: Terms) -> list[int]:
    """Where the parts begin in a line of them with commas between ("Pilsner malt, lot 24-0815, crop 2024"), two of
    which open with a caption and its number; empty for any other line."""
    if any(word.text.endswith(_COLONS) or word.text in _PARTING for word in words):
        return []
    starts = [0, *(at + 1 for at, word in enumerate(words[:-1]) if word.text.endswith(","))]
    parts = [words[a:b] for a, b in pairwise((*starts, len(words)))]
    opened = sum(_opens_entry(part, terms) for part in parts)
    named = sum(len(part) == 2 and terms.caption(part[0].text) not in (None, "ignore") for part in parts)
    return starts if opened and max(opened, named) > 1 else []


def _opens_entry(words: Sequence[Word], terms: Terms) -> bool:
    """True for words that begin with a sure caption and its colon, or with one and a number of its own."""
    if not words or not words[0].text[:1].isalnum():  # "Lot no. / silo:" is one caption
        return False
    for count in range(1, min(len(words), 4)):
        caption = " ".join(word.text for word in words[:count])
        named = words[count - 1].text.endswith(_COLONS) or any(c.isdigit() for c in words[count].text)
        if named and terms.is_sure_caption(caption) and not any(c.isdigit() for c in caption):
            return True
    return False


def _entries_of(cell: Cell) -> list[Cell]:
    return _entries(cell) if _is_list(cell) else [cell]


def _entries(cell: Cell) -> list[Cell]:
    """The entries of a running text, without the marks between them."""
    runs: list[list[Word]] = [[]]
    for word in cell.words:
        if word.text == "/" and runs[-1] and not _holds_entry(runs[-1]):
            # Two names of one entry: "Lot no. / silo: 24-0815".
            runs[-1].append(word)
            continue
        if word.text not in _PARTING:
            runs[-1].append(word)
        if _parts(word):
            runs.append([])
    return [make_cell(run) for run in runs if run]


def _holds_entry(words: Sequence[Word]) -> bool:
    """True for words with a caption and its colon, or with a value, among them."""
    return any(word.text.endswith((*_COLONS, "=")) or any(c.isdigit() for c in word.text) for word in words)


def running_lines(lines: Sequence[Line], first: int, used: frozenset[int], terms: Terms) -> int:
    """How many lines from ``first`` on are one running text of entries ("Moisture: 4.5 %; Colour: 3.2 EBC; ...")."""
    if first in used or not _is_running(lines[first], terms):
        return 0
    count = 1
    right = max(line.box.x1 for line in lines)
    while first + count < len(lines) and first + count not in used:
        line, above = lines[first + count], lines[first + count - 1]
        open_ended = above.text.endswith(_COLONS) or _is_wrapped(line, above, right)
        if not _runs_on(line) and not (len(line.cells) == 1 and open_ended):
            break
        count += 1
    return count


def _is_wrapped(line: Line, above: Line, right: float) -> bool:
    """True for the rest of an entry that the line above had no room for, at the edge ``right`` of the text."""
    close = line.box.top - above.box.bottom < WRAPPED * line.em and abs(line.em - above.em) < 0.1
    flush = abs(line.box.x0 - above.box.x0) < 0.1 * line.em
    word = line.cells[0].words[0]
    return close and flush and above.box.x1 + word.x1 - word.x0 > right and not any(c.isdigit() for c in line.text)


def _is_running(line: Line, terms: Terms) -> bool:
    if len(line.cells) != 1:
        return False
    words = line.cells[0].words
    if sum(_parts(word) for word in words) < 2:
        return False
    if sum(word.text.endswith((*_COLONS, "=")) for word in words) > 1:
        return True
    start = 0
    for i, word in enumerate(words):
        if _parts(word):
            start = i + 1
        elif word.text[0].isdigit() and i > start:
            name = " ".join(other.text for other in words[start:i])
            if terms.is_label(name):
                return True
    return False


def _runs_on(line: Line) -> bool:
    return len(line.cells) == 1 and any(_parts(word) for word in line.cells[0].words)


def joined(lines: Sequence[Line]) -> Line:
    """Lines of running text as one."""
    if len(lines) == 1:
        return lines[0]
    cell = make_cell([word for line in lines for word in line.cells[0].words])
    return Line((cell,), cell.box, lines[0].em, lines[0].page)


def _parts(word: Word) -> bool:
    """True for a mark that parts one entry of a running text from the next, or a word that ends in one."""
    return word.text in _PARTING or word.text.endswith(";")


def _without_colon(cell: Cell) -> Cell:
    first = cell.words[0]
    if not first.text.startswith(_COLONS):
        return cell
    if len(first.text) == 1:
        return make_cell(cell.words[1:], cell.after_leader) if len(cell.words) > 1 else cell
    step = (first.x1 - first.x0) / len(first.text)
    return make_cell([first._replace(text=first.text[1:], x0=first.x0 + step), *cell.words[1:]], cell.after_leader)


def _cut(cell: Cell, terms: Terms) -> list[Piece]:
    pieces: list[Piece] = []
    run: list[int] = []
    for i, word in enumerate(cell.words):
        if not run and word.text in _COLONS and pieces and pieces[-1].colon:
            continue
        run.append(i)
        if (word.text.endswith(_COLONS) and len(word.text) > 1) or word.text in (*_COLONS, "="):
            end = _value_ends(cell, run, terms)
            if end:
                pieces.append(_piece(cell, run[:end], colon=False))
                run = run[end + 1 :]
            stop = _sentence_ends(cell, run, terms)
            if stop:
                pieces.append(_without_stop(_piece(cell, run[:stop], colon=False)))
                run = run[stop:]
            before = pieces[-1] if pieces and pieces[-1].colon else None
            caption = _caption_tail(cell, _behind_number(cell, run, terms) if before else run, terms)
            if before is not None and terms.caption(before.text) == "malt":
                caption = _without_malt(cell, run, caption, terms)
            rest = run[: len(run) - len(caption)]
            if rest:
                pieces.append(_without_stop(_piece(cell, rest, colon=False)))
            pieces.append(_piece(cell, caption, colon=True))
            run = []
    if run:
        pieces.append(_piece(cell, run, colon=False))
    return pieces


def _without_malt(cell: Cell, run: Sequence[int], caption: list[int], terms: Terms) -> list[int]:
    """The caption without the word for malt with which the name of a malt before it ends ("Pale Malt / Batch:")."""
    first, rest = cell.words[caption[0]].text, caption[1:]
    shorter = " ".join(cell.words[i].text for i in rest).rstrip(":：= ")
    named = len(caption) < len(run) and fold(first) in name_words().stems
    return rest if named and rest and terms.caption(shorter) is not None else caption


def _without_stop(piece: Piece) -> Piece:
    """A unit at the end of a sentence without the full stop ("148 mg/l. Enzymes:")."""
    *before, last = piece.cell.words
    if not before or not last.text.endswith(".") or last.text[-2:-1] not in _UNIT_ENDS:
        return piece
    cell = make_cell([*before, last._replace(text=last.text[:-1])], piece.cell.after_leader)
    return Piece(cell.text, cell, piece.colon)


def _behind_number(cell: Cell, run: Sequence[int], terms: Terms) -> list[int]:
    """The words behind a number that answers the caption before it, where they are a caption ("PH 3318 Type:")."""
    last = max((n for n, i in enumerate(run) if any(c.isdigit() for c in cell.words[i].text)), default=-1)
    rest = list(run[last + 1 :])
    text = " ".join(cell.words[i].text for i in rest).rstrip(":：= ")
    return rest if rest and terms.caption(text) is not None else list(run)


def _value_ends(cell: Cell, run: Sequence[int], terms: Terms) -> int:
    """Where in a run a value ends that a mark parts from the next caption ("81.6 % / Colour:"); 0 for nowhere."""
    for end in range(len(run) - 2, 0, -1):
        if cell.words[run[end]].text in _PARTING:
            tails = (" ".join(cell.words[i].text for i in run[max(0, end - n) : end]) for n in (1, 2, 3))
            if any(tail[:1].isdigit() and terms.is_value(tail) for tail in tails):
                return end
    return 0


def _sentence_ends(cell: Cell, run: Sequence[int], terms: Terms) -> int:
    """Where in a run a value ends with its sentence, before a caption ("148 mg/l. / Enzymes:"); 0 for nowhere."""
    for end in range(len(run) - 1, 1, -1):
        unit = cell.words[run[end - 1]].text
        stopped = unit.endswith(".") and unit[-2:-1] in _UNIT_ENDS and terms.is_unit(unit.rstrip("."))
        if stopped and cell.words[run[end - 2]].text[:1].isdigit():
            return end
    return 0


def _piece(cell: Cell, indices: Sequence[int], colon: bool) -> Piece:
    part = make_cell([cell.words[i] for i in indices], cell.after_leader and indices[0] == 0)
    if len(indices) == len(cell.words):
        part = Cell(cell.text, part.box, part.words, part.after_leader)
    text = part.text.rstrip(":：= ") if colon else part.text.rstrip(";,")
    return Piece(text.strip(), part, colon)


def _caption_tail(cell: Cell, run: Sequence[int], terms: Terms) -> list[int]:
    """The longest run of words before a colon that is a known caption or label; all of them where none is known."""
    if run[0] == 0 and cell.words and len(run) <= MAX_CAPTION_WORDS:
        whole = " ".join(cell.words[i].text for i in run).rstrip(":：= ")
        if terms.caption(whole) or terms.is_label(whole):
            return list(run)
    tails = [run[start:] for start in range(max(0, len(run) - MAX_CAPTION_WORDS), len(run))]
    known = [tail for tail in tails if _is_known(" ".join(cell.words[i].text for i in tail).rstrip(":：= "), terms)]
    # "Pilsner malt, packed:" names the caption behind the comma.
    part = [
        tail
        for tail in known
        if tail[0] > 0
        and cell.words[tail[0] - 1].text.endswith(",")
        # "Extract (HWE, 0.7 mm) as is:" is one name.
        and sum(cell.words[i].text.count("(") - cell.words[i].text.count(")") for i in tail) == 0
    ]
    if part:
        return list(part[-1])
    # Words before a caption are no part of it because it would be understood with them, too; a wide space parts them.
    apart = [tail for tail in known if tail[0] > 0 and _space_before(cell, tail[0]) > WIDER * _usual_space(cell)]
    return list((apart or known or [run])[0])


def _is_known(text: str, terms: Terms) -> bool:
    return terms.caption(text) is not None or terms.is_label(text)


def _space_before(cell: Cell, at: int) -> float:
    return cell.words[at].x0 - cell.words[at - 1].x1


def _usual_space(cell: Cell) -> float:
    return median(_space_before(cell, at) for at in range(1, len(cell.words)))
