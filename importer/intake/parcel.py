"""What came in one file: a sheet, or an email or archive with sheets, emails and archives in it.

Everything that is opened here comes from strangers: depth, number and size of what is unpacked are bounded, and what
goes beyond becomes a problem of the email or archive it was in.
"""

from __future__ import annotations

import hashlib
from collections.abc import Iterator
from dataclasses import dataclass, field, replace
from typing import TYPE_CHECKING, Literal

from importer.limits import MAX_PARCEL_BYTES, MAX_PARCEL_DEPTH, MAX_PARCEL_ITEMS, MIB

if TYPE_CHECKING:
    from importer.models import ProblemCode

COMPOUND_FILE = b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1"
ItemKind = Literal["sheet", "email", "archive"]


@dataclass(frozen=True, slots=True)
class Letter:
    """Where an email came from: ``sent`` is ISO 8601 in UTC, None where the email does not say."""

    sender: str | None
    subject: str | None
    sent: str | None


@dataclass(frozen=True, slots=True)
class Part:
    """One thing in an email or archive, not looked into yet.

    ``letter`` is set for what was in a forwarded email. ``inline`` is true for pictures that belong to the text, such
    as logos in signatures.
    """

    name: str
    data: bytes = field(repr=False)
    inline: bool = False
    letter: Letter | None = None


@dataclass(frozen=True, slots=True)
class Trouble:
    """Why an email or archive could not be opened, or not wholly."""

    code: ProblemCode
    message: str


@dataclass(frozen=True, slots=True)
class Opened:
    """What an email or archive turned out to hold."""

    parts: tuple[Part, ...]
    letter: Letter | None = None
    trouble: Trouble | None = None


@dataclass(frozen=True, slots=True)
class Item:
    """A sheet, email or archive by its content, with what is in it. ``letter`` is the email that it came with."""

    name: str
    data: bytes = field(repr=False)
    sha256: str
    kind: ItemKind
    letter: Letter | None = None
    inline: bool = False
    items: tuple[Item, ...] = ()
    trouble: Trouble | None = None

    def walk(self) -> Iterator[Item]:
        """This one and everything in it, from the outside in."""
        yield self
        for item in self.items:
            yield from item.walk()

    def sheets(self) -> Iterator[Item]:
        """Everything in it that is to be read."""
        return (item for item in self.walk() if item.kind == "sheet")


class _Budget:
    """How much may still be unpacked from one file."""

    def __init__(self) -> None:
        self.bytes = MAX_PARCEL_BYTES
        self.items = MAX_PARCEL_ITEMS

    def take(self, size: int) -> bool:
        self.bytes -= size
        self.items -= 1
        return self.bytes >= 0 and self.items >= 0


def unpack(data: bytes, name: str) -> Item:
    """A file as a tree of items. Nothing is raised for bad files."""
    return _item(Part(name, data), None, 0, _Budget())


def _item(part: Part, letter: Letter | None, depth: int, budget: _Budget) -> Item:
    kind = kind_of_parcel(part.data)
    letter = part.letter or letter
    item = Item(part.name, part.data, hashlib.sha256(part.data).hexdigest(), kind, letter, part.inline)
    if kind == "sheet":
        return item
    if depth >= MAX_PARCEL_DEPTH:
        message = f"{part.name} is packed {depth} times over. Unpack it first."
        return replace(item, trouble=Trouble("too-large", message))
    opened = _open(kind, part, budget)
    letter = opened.letter or letter
    items: list[Item] = []
    trouble = opened.trouble
    for inner in opened.parts:
        if not budget.take(len(inner.data)):
            trouble = Trouble("too-large", _too_much(part.name))
            break
        items.append(_item(inner, letter, depth + 1, budget))
    if not items and trouble is None:
        what = "attachment" if kind == "email" else "file"
        trouble = Trouble("no-figures-found", f"{part.name} holds no {what}. Check that the right one was sent.")
    return replace(item, letter=letter, items=tuple(items), trouble=trouble)


def _too_much(name: str) -> str:
    return (
        f"{name} holds more than {MAX_PARCEL_ITEMS} files or {MAX_PARCEL_BYTES // MIB} MB once unpacked. "
        "Unpack it first, and take what is wanted."
    )


def kind_of_parcel(data: bytes) -> ItemKind:
    """Whether something is opened further, told from its content."""
    from importer.intake import archive, mail

    if mail.is_mail(data) or _is_outlook(data):
        return "email"
    return "archive" if archive.is_archive(data) else "sheet"


def _is_outlook(data: bytes) -> bool:
    if not data.startswith(COMPOUND_FILE):
        return False
    from importer.intake.outlook import is_outlook

    return is_outlook(data)


def _open(kind: ItemKind, part: Part, budget: _Budget) -> Opened:
    from importer.intake import archive, mail

    try:
        if kind == "archive":
            return archive.open_archive(part.data, part.name, budget.bytes, budget.items)
        if part.data.startswith(COMPOUND_FILE):
            from importer.intake import outlook

            return outlook.open_outlook(part.data, part.name)
        return mail.open_mail(part.data, part.name)
    except (Exception, RecursionError) as error:  # libraries answer damaged files in many ways
        what = "email" if kind == "email" else "archive"
        message = f"{part.name} is damaged and cannot be opened as {what} ({type(error).__name__}). Have it sent again."
        return Opened((), trouble=Trouble("damaged", message))
