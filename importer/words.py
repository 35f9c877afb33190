"""Positioned words: what every way of reading a document delivers, and all that later stages see of it.

Coordinates are points (1/72 inch) from the top left corner of the upright page.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Literal, NamedTuple

ReadingKind = Literal["text", "ocr", "spreadsheet"]


class Box(NamedTuple):
    """A rectangle on a page: left, top, right, bottom in points."""

    x0: float
    top: float
    x1: float
    bottom: float

    @property
    def width(self) -> float:
        return self.x1 - self.x0

    @property
    def height(self) -> float:
        return self.bottom - self.top

    @property
    def middle(self) -> float:
        """Vertical centre."""
        return (self.top + self.bottom) / 2

    @property
    def centre(self) -> float:
        """Horizontal centre."""
        return (self.x0 + self.x1) / 2

    def is_place_of(self, other: Box) -> bool:
        """True where two boxes share most of the width and of the height of the smaller one: two readings of one."""
        across = min(self.x1, other.x1) - max(self.x0, other.x0)
        down = min(self.bottom, other.bottom) - max(self.top, other.top)
        return across > 0.5 * min(self.width, other.width) and down > 0.4 * min(self.height, other.height)

    def union(self, other: Box) -> Box:
        """The least box around both."""
        return Box(
            min(self.x0, other.x0),
            min(self.top, other.top),
            max(self.x1, other.x1),
            max(self.bottom, other.bottom),
        )


class Word(NamedTuple):
    """One word as printed, with where it stands.

    ``confidence`` is 1.0 for a text layer and 0..1 for an optical reading. ``size`` is the font size in points
    (0 where unknown). ``bold`` is None where the reader cannot tell.
    """

    text: str
    x0: float
    top: float
    x1: float
    bottom: float
    confidence: float = 1.0
    size: float = 0.0
    bold: bool | None = None

    @property
    def box(self) -> Box:
        return Box(self.x0, self.top, self.x1, self.bottom)


class SecondReading(NamedTuple):
    """What an independent reader saw in one place of a scanned page, to be compared with the main reading."""

    text: str
    box: Box
    reader: str
    confidence: float = 0.0


class Marred(NamedTuple):
    """The place of a word that is crossed out or lies on another, and one plain sentence that says so."""

    box: Box
    reason: str


@dataclass(frozen=True, slots=True)
class Page:
    """One upright page of words.

    ``rules`` are thin drawn lines (borders of tables), each as a degenerate box. ``second`` holds independent
    readings of a scan. ``doubt`` is None for a page that can be trusted; otherwise one plain sentence that says why
    every figure of the page has to be looked at by a person. ``lost`` lists places with ink that no reader could
    turn into text. ``hidden`` are words that are in the file but cannot be seen on the page, or lie
    aslant over it as a watermark does. ``marred`` are visible words that cannot be taken as
    they stand.
    """

    number: int
    width: float
    height: float
    words: tuple[Word, ...]
    reading: ReadingKind
    rules: tuple[Box, ...] = ()
    second: tuple[SecondReading, ...] = ()
    doubt: str | None = None
    lost: tuple[Box, ...] = ()
    hidden: tuple[Word, ...] = field(default=(), repr=False)
    marred: tuple[Marred, ...] = ()
