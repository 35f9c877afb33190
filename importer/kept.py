"""What is kept of a reading so that a person's corrections can be laid over it without reading the document again."""

from __future__ import annotations

import zlib
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from functools import cache
from typing import Literal

from pydantic import TypeAdapter

from importer.models import Analysis, Sheet
from importer.printed import PrintedAnalysis, PrintedHeader
from importer.words import Page, SecondReading

DecimalSign = Literal[".", ","] | None


@dataclass(frozen=True, slots=True)
class Kept:
    """The printed stage of a document: its analyses in order, its pages without their words, its decimal sign."""

    parts: tuple[PrintedAnalysis, ...]
    pages: tuple[Page, ...]
    convention: DecimalSign

    @property
    def by_number(self) -> dict[int, Page]:
        """The pages by their numbers."""
        return {page.number: page for page in self.pages}


class KeptSheet(Sheet):
    """A sheet with its printed stage as JSON ("" where nothing was kept). ``as_read`` are its analyses before anything
    that was learned was laid over them (empty where nothing was), ``passed_rows`` how many rows of each are known to be
    none of the parameters."""

    printed: str = ""
    as_read: tuple[Analysis, ...] = ()
    passed_rows: tuple[int, ...] = ()


@cache
def _adapter() -> TypeAdapter[Kept]:
    return TypeAdapter(Kept)


def to_json(parts: Sequence[PrintedAnalysis], pages: Mapping[int, Page], convention: DecimalSign) -> str:
    """The printed stage of a document, with only those parts of its pages that the meaning of a row depends on."""
    used = sorted({number for part in parts for number in part.pages} | {f.page for p in parts for f in p.figures})
    header = [entry for part in parts for entry in part.header]
    kept = Kept(tuple(parts), tuple(_slim(pages[n], header) for n in used if n in pages), convention)
    return _adapter().dump_json(kept).decode()


def from_json(text: str | bytes) -> Kept:
    """The printed stage again. Raises ValueError for anything else."""
    return _adapter().validate_json(text)


def pack(text: str) -> bytes:
    """As the store keeps it."""
    return zlib.compress(text.encode(), 6)


def unpack(data: bytes) -> Kept:
    """What the store kept."""
    return from_json(zlib.decompress(data))


def _slim(page: Page, header: Sequence[PrintedHeader]) -> Page:
    second = tuple(r for r in page.second if any(e.page == page.number and _touch(r, e) for e in header))
    return replace(page, words=(), rules=(), second=second, lost=(), hidden=())


def _touch(reading: SecondReading, entry: PrintedHeader) -> bool:
    one, other = reading.box, entry.box
    return min(one.x1, other.x1) > max(one.x0, other.x0) and min(one.bottom, other.bottom) > max(one.top, other.top)
