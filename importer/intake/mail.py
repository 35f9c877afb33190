"""Emails as mail programs save them (RFC 5322, .eml): attachments, forwarded emails inside, and who sent it when."""

from __future__ import annotations

import contextlib
import email
import email.header
import email.utils
from collections.abc import Iterator
from datetime import UTC
from email.errors import MessageError
from email.message import Message

from importer.intake.encoding import decode
from importer.intake.kind import MAIL_FIELDS
from importer.intake.letter_text import page_of_text
from importer.intake.names import safe_name
from importer.intake.parcel import Letter, Opened, Part
from importer.limits import MAX_LETTER_BYTES

# With those that stand on other papers as well.
_FIELDS = (*MAIL_FIELDS, b"date:", b"to:", b"content-type:", b"x-")
_LOOK_AT = 16_384
# Long header fields make parsers slow; nothing that is wanted is longer.
_LONGEST_FIELD = 2_000
# Parts that are the letter itself or belong to it; what is left may be a sheet.
_NO_SHEETS = frozenset(
    {
        "text/plain",
        "text/html",
        "text/calendar",
        "text/x-amp-html",
        "text/vcard",
        "text/x-vcard",
        "text/rfc822-headers",
        "message/delivery-status",
        "message/disposition-notification",
        "application/pkcs7-signature",
        "application/x-pkcs7-signature",
        "application/pgp-signature",
        "application/ics",
    }
)
_ENDINGS = {
    "application/pdf": ".pdf",
    "image/png": ".png",
    "image/jpeg": ".jpg",
    "image/tiff": ".tif",
    "image/gif": ".gif",
    "image/heic": ".heic",
    "text/csv": ".csv",
    "application/vnd.ms-excel": ".xls",
    "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet": ".xlsx",
    "application/vnd.oasis.opendocument.spreadsheet": ".ods",
    "application/zip": ".zip",
}


def is_mail(data: bytes) -> bool:
    """True for text that begins with the fields of an email's head."""
    start = data[:_LOOK_AT].lstrip(b"\xef\xbb\xbf \t\r\n")
    if start.startswith(b"From "):
        start = start.partition(b"\n")[2]
    known = odd = 0
    for line in start.splitlines():
        if not line.strip():
            break
        if line.startswith((b" ", b"\t")):
            continue
        name, colon, _ = line.partition(b":")
        if not colon or not name.strip() or b" " in name.strip() or not name.isascii():
            odd += 1
            continue
        known += line.lower().startswith(_FIELDS)
    return known >= 2 and known > odd


def open_mail(data: bytes, name: str) -> Opened:
    """The attachments of an email and of the emails forwarded in it; its text where nothing is attached."""
    del name
    message = email.message_from_bytes(data)
    parts, letter = tuple(_parts(message, None)), _letter(message)
    if all(part.inline for part in parts) and (page := _text_of(message)) is not None:
        parts = (*parts, Part(safe_name(f"{letter.subject or 'email'}.html"), page))
    return Opened(parts, letter)


def _text_of(message: Message) -> bytes | None:
    """What may be a sheet in the text of an email, its HTML before its plain form."""
    texts = [part for part in message.walk() if part.get_content_type() in ("text/html", "text/plain")]
    for part in sorted(texts, key=lambda part: part.get_content_type()):
        content = part.get_payload(decode=True)
        if not isinstance(content, bytes) or len(content) > MAX_LETTER_BYTES:
            continue
        page = page_of_text(_decoded_text(content, part), is_html=part.get_content_type() == "text/html")
        if page is not None:
            return page
    return None


def _decoded_text(content: bytes, part: Message) -> str:
    with contextlib.suppress(LookupError, UnicodeError):
        return content.decode(part.get_content_charset() or "utf-8")
    return decode(content) or content.decode("latin-1")


def _parts(message: Message, letter: Letter | None) -> Iterator[Part]:
    kind = message.get_content_type()
    if kind == "message/rfc822":
        inner = message.get_payload()
        for forwarded in inner if isinstance(inner, list) else ():
            if isinstance(forwarded, Message):
                yield from _parts(forwarded, _letter(forwarded))
        return
    if message.is_multipart():
        for part in message.get_payload():
            if isinstance(part, Message):
                yield from _parts(part, letter)
        return
    yield from _leaf(message, kind, letter)


def _leaf(message: Message, kind: str, letter: Letter | None) -> Iterator[Part]:
    named = _file_name(message)
    attached = message.get_content_disposition() == "attachment"
    if kind in _NO_SHEETS and not (named and attached and kind in ("text/plain", "text/html")):
        return
    content = message.get_payload(decode=True)
    if not isinstance(content, bytes) or not content:
        return
    inline = kind.startswith("image/") and not attached and (message["Content-ID"] is not None or not named)
    yield Part(safe_name(named or f"attachment{_ENDINGS.get(kind, '')}"), content, inline, letter)


def _file_name(message: Message) -> str | None:
    try:
        found = message.get_filename()
    except (MessageError, LookupError, ValueError, TypeError):
        return None
    return _decoded(found) if found else None


def _letter(message: Message) -> Letter:
    return Letter(_field(message, "From"), _field(message, "Subject"), _sent(message))


def _field(message: Message, name: str) -> str | None:
    value = message[name]
    return None if value is None else _decoded(str(value)) or None


def _decoded(text: str) -> str:
    """A field with its encoded words (RFC 2047) read; what cannot be read stays as it is."""
    text = " ".join(text[:_LONGEST_FIELD].split())
    with contextlib.suppress(MessageError, LookupError, ValueError, UnicodeError):
        text = str(email.header.make_header(email.header.decode_header(text)))
    raw = text.encode("utf-8", "surrogateescape").decode("utf-8", "replace")
    return "".join(c if c.isprintable() else " " for c in raw).strip()


def _sent(message: Message) -> str | None:
    value = message["Date"]
    if value is None:
        return None
    try:
        sent = email.utils.parsedate_to_datetime(str(value)[:_LONGEST_FIELD])
        return (sent if sent.tzinfo else sent.replace(tzinfo=UTC)).astimezone(UTC).isoformat(timespec="seconds")
    except (ValueError, TypeError, OverflowError, IndexError):
        return None
