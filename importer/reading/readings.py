"""What the readers of a scan make of one place on its page."""

from __future__ import annotations

import re
from itertools import pairwise

from rapidfuzz.fuzz import ratio

from importer.printed import Concern
from importer.words import Box, Page, SecondReading

LINE_ALIKE = 80.0  # percent of the characters of a line that two readings of it share
PART = 0.9  # of a place, within which a reading is one of a part of it
# Numbers with their signs: these have to be the same.
_FIGURES = re.compile(r"[<>≤≥±+-]|\d+(?:\.\d+)*")


def readings_at(page: Page, box: Box) -> tuple[SecondReading, ...]:
    """Independent readings of a place on a scan."""
    return _whole(tuple(_part(page, r, box) for r in page.second if r.box.is_place_of(box)), box)


def _whole(readings: tuple[SecondReading, ...], box: Box) -> tuple[SecondReading, ...]:
    """The readings, where those that one reader made of parts of the place ("5", "- 10") are one of all of it."""
    out: list[SecondReading] = []
    for reader in dict.fromkeys(reading.reader for reading in readings):
        own = sorted((r for r in readings if r.reader == reader), key=lambda r: r.box.x0)
        apart = all(a.box.x1 <= b.box.x0 + 1 for a, b in pairwise(own))
        if len(own) > 1 and apart and all(r.box.width < PART * box.width for r in own):
            span = Box(own[0].box.x0, min(r.box.top for r in own), own[-1].box.x1, max(r.box.bottom for r in own))
            text, least = " ".join(r.text for r in own), min(r.confidence for r in own)
            own = [own[0]._replace(text=text, box=span, confidence=least)]
        out += own
    return tuple(out)


def _part(page: Page, reading: SecondReading, box: Box) -> SecondReading:
    """The part of a reading in the box, where it covers more and agrees with all of the page's words there."""
    if reading.box.width <= box.width + box.height:
        return reading
    under = sorted((w for w in page.words if w.box.is_place_of(reading.box)), key=lambda w: w.x0)
    if not _same_line(" ".join(w.text for w in under), reading.text):
        return reading
    inside = " ".join(w.text for w in under if box.x0 - 1 <= (w.x0 + w.x1) / 2 <= box.x1 + 1)
    return reading._replace(text=inside, box=box) if inside else reading


def _same_line(one: str, other: str) -> bool:
    """The same numbers and signs in the same order, and letters that differ by accents and a few misread ones only."""
    one, other = _plain(one), _plain(other)
    alike = one == other or ratio(one, other) >= LINE_ALIKE
    return alike and _FIGURES.findall(one) == _FIGURES.findall(other)


def _plain(text: str) -> str:
    return "".join(text.split()).replace(",", ".")


def unread_beside(page: Page, box: Box) -> tuple[Concern, ...]:
    """A doubt where ink that nobody could read stands in or just left of a value."""
    reach = 1.2 * box.height
    for lost in page.lost:
        down = min(lost.bottom, box.bottom) - max(lost.top, box.top)
        if down > 0.2 * box.height and lost.x1 > box.x0 - reach and lost.x0 < box.x1:
            return (Concern("reading-doubtful", "There is ink beside the figure that could not be read."),)
    return ()
