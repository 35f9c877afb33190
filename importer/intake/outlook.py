"""Emails as Outlook saves them (.msg): MAPI properties in a compound file.

The format is [MS-OXMSG]; property numbers are those of [MS-OXPROPS]. The compound file itself is read by olefile.
"""

from __future__ import annotations

import io
import struct
from collections.abc import Iterator
from datetime import UTC, datetime, timedelta

import olefile

from importer.intake.encoding import decode
from importer.intake.letter_text import page_of_text
from importer.intake.mail import is_mail, open_mail
from importer.intake.names import safe_name
from importer.intake.parcel import COMPOUND_FILE, Letter, Opened, Part, Trouble
from importer.limits import MAX_LETTER_BYTES, MAX_PARCEL_DEPTH, MAX_PARCEL_ITEMS

_WORKBOOK = "Workbook".encode("utf-16-le")
_PROPERTIES = "__properties_version1.0"
_ATTACHMENT = "__attach_version1.0_"
_FORWARDED = "__substg1.0_3701000D"

SUBJECT, SENDER_NAME, SENDER_ADDRESS, SENDER_SMTP, HEADERS = 0x0037, 0x0C1A, 0x0C1F, 0x5D01, 0x007D
SUBMITTED, DELIVERED = 0x0039, 0x0E06
TEXT, HTML = 0x1000, 0x1013
CONTENT, SHORT_NAME, LONG_NAME, SHOWN_NAME, CONTENT_ID, HIDDEN = 0x3701, 0x3704, 0x3707, 0x3001, 0x3712, 0x7FFE

_EPOCH = datetime(1601, 1, 1, tzinfo=UTC)
Storage = tuple[str, ...]


def is_outlook(data: bytes) -> bool:
    """True for an email in a compound file."""
    if not data.startswith(COMPOUND_FILE) or _PROPERTIES.encode("utf-16-le") not in data:
        return False
    try:
        with olefile.OleFileIO(io.BytesIO(data)) as ole:
            return bool(ole.exists(_PROPERTIES))
    except Exception:
        return _WORKBOOK not in data  # a damaged one: opening it tells so


def open_outlook(data: bytes, name: str) -> Opened:
    """The attachments of an email and of the emails forwarded in it; its text where nothing is attached."""
    with olefile.OleFileIO(io.BytesIO(data)) as ole:
        message = _Message(ole, (), data)
        parts: list[Part] = []
        for part in message.parts(None, 0):
            parts.append(part)
            if len(parts) > MAX_PARCEL_ITEMS:
                trouble = Trouble("too-large", f"{name} holds more than {MAX_PARCEL_ITEMS} attachments.")
                return Opened((), message.letter(), trouble)
        letter = message.letter()
        if all(part.inline for part in parts) and (page := message.page()) is not None:
            parts.append(Part(safe_name(f"{letter.subject or 'email'}.html"), page))
        return Opened(tuple(parts), letter)


class _Message:
    """A message at a place in the compound file: the file itself, or one attached to another."""

    def __init__(self, ole: olefile.OleFileIO, place: Storage, data: bytes) -> None:
        self._ole = ole
        self._place = place
        self._data = data
        # At the top 32 bytes of counts come first, in an attached message 24 ([MS-OXMSG] 2.4.1).
        self._fixed = self._fixed_of(place, 24 if place else 32)

    def letter(self) -> Letter:
        """Who sent it, about what, and when."""
        text = {number: self._text(self._place, number) for number in (SUBJECT, SENDER_NAME, HEADERS)}
        address = self._text(self._place, SENDER_SMTP) or self._text(self._place, SENDER_ADDRESS)
        headers = (text[HEADERS] or "").strip().encode("utf-8", "replace")
        if is_mail(headers):
            told = open_mail(headers, "").letter or Letter(None, None, None)
        else:
            told = Letter(None, None, None)
        sender = text[SENDER_NAME]
        if address and "@" in address and address != sender:
            sender = f"{sender} <{address}>" if sender else address
        return Letter(sender or told.sender, text[SUBJECT] or told.subject, self._sent() or told.sent)

    def page(self) -> bytes | None:
        """What may be a sheet in its text, the HTML before the plain one."""
        marked = self._stream(self._place, f"__substg1.0_{HTML:04X}0102") or b""
        plain = self._stream(self._place, f"__substg1.0_{TEXT:04X}001F") or b""
        if len(marked) > MAX_LETTER_BYTES or len(plain) > MAX_LETTER_BYTES:
            return None
        found = page_of_text(decode(marked) or "", is_html=True)
        return found or page_of_text(plain.decode("utf-16-le", "replace"), is_html=False)

    def parts(self, letter: Letter | None, depth: int) -> Iterator[Part]:
        """The attachments, in order."""
        for storage in self._attachments():
            if self._ole.exists([*storage, _FORWARDED]):
                if depth < MAX_PARCEL_DEPTH:
                    inner = _Message(self._ole, (*storage, _FORWARDED), self._data)
                    yield from inner.parts(inner.letter(), depth + 1)
                continue
            content = self._stream(storage, f"__substg1.0_{CONTENT:04X}0102")
            if not content:
                continue
            names = (self._text(storage, number) for number in (LONG_NAME, SHORT_NAME, SHOWN_NAME))
            name = next((found for found in names if found), "attachment")
            fixed = self._fixed_of(storage, 8)
            hidden = bool(fixed.get(HIDDEN, 0) & 1)
            picture = content.startswith((b"\x89PNG", b"\xff\xd8\xff", b"GIF8", b"BM"))
            inline = picture and (hidden or self._text(storage, CONTENT_ID) is not None)
            yield Part(safe_name(name), content, inline, letter)

    def _attachments(self) -> list[Storage]:
        depth = len(self._place)
        found = {
            tuple(entry[: depth + 1])
            for entry in self._ole.listdir(streams=True, storages=True)
            if tuple(entry[:depth]) == self._place and len(entry) > depth and entry[depth].startswith(_ATTACHMENT)
        }
        return sorted(found)

    def _sent(self) -> str | None:
        for number in (SUBMITTED, DELIVERED):
            ticks = self._fixed.get(number)
            if ticks:
                try:
                    moment = _EPOCH + timedelta(microseconds=ticks // 10)
                except OverflowError:
                    continue
                return moment.isoformat(timespec="seconds")
        return None

    def _text(self, place: Storage, number: int) -> str | None:
        """A text property, as UTF-16 or in the sender's 8-bit character set (of which ASCII is safe to read)."""
        raw = self._stream(place, f"__substg1.0_{number:04X}001F")
        if raw is not None:
            text = raw.decode("utf-16-le", "replace")
        else:
            raw = self._stream(place, f"__substg1.0_{number:04X}001E")
            if raw is None:
                return None
            text = raw.decode("cp1252", "replace")
        if number != HEADERS:
            text = "".join(c if c.isprintable() else " " for c in text[:2_000])
        return text.rstrip("\0").strip() or None

    def _stream(self, place: Storage, name: str) -> bytes | None:
        path = [*place, name]
        if not self._ole.exists(path) or self._ole.get_type(path) != olefile.STGTY_STREAM:
            return None
        with self._ole.openstream(path) as stream:
            return bytes(stream.read())

    def _fixed_of(self, place: Storage, head: int) -> dict[int, int]:
        """Numbers, times and switches: entries of 16 bytes each, tag, flags and value ([MS-OXMSG] 2.4.2)."""
        raw = self._stream(place, _PROPERTIES) or b""
        entries = (raw[at : at + 16] for at in range(head, len(raw) - 15, 16))
        return {tag >> 16: value for tag, _, value in (struct.unpack("<IIQ", entry) for entry in entries)}
