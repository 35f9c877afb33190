"""What a document is, told from its content. The name of a file plays a part only for plain text."""

from __future__ import annotations

import io
import zipfile
from typing import Literal

from importer.errors import Damaged, PasswordProtected, UnsupportedType
from importer.intake.delimited import looks_delimited
from importer.intake.encoding import decode
from importer.intake.web import is_web_table

Kind = Literal["pdf", "picture", "spreadsheet"]

SUPPORTED = "PDF, PNG, JPEG, TIFF, WebP, BMP, GIF, HEIC, XLSX, XLS, ODS, CSV and HTML tables"

# Readers look for the header of a PDF within its first 1024 bytes (ISO 32000-1, Annex H, implementation note 13).
PDF_HEADER_WITHIN = 1024
_ZIP = b"PK\x03\x04"
_EMPTY_ZIP = b"PK\x05\x06"
_OLE = b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1"
_BIFF = (b"\x09\x08\x10\x00\x00\x06\x05\x00", b"\x09\x04\x06\x00", b"\x09\x02\x06\x00", b"\x09\x00\x04\x00")
_PICTURES = (
    b"\x89PNG\r\n",
    b"\xff\xd8\xff",
    b"II*\x00",
    b"MM\x00*",
    b"II+\x00",
    b"MM\x00+",
    b"BM",
    b"GIF87a",
    b"GIF89a",
)
# Brands of the ISO base media file format that hold HEIF still pictures (ISO/IEC 23008-12), and AVIF.
_HEIF_BRANDS = (b"heic", b"heix", b"hevc", b"heim", b"heis", b"hevm", b"hevs", b"mif1", b"msf1", b"avif")

_ODS = "application/vnd.oasis.opendocument.spreadsheet"
_SHEET_NAMES = (".csv", ".tsv", ".tab")
SUPPORTED_NAMES = (
    *_SHEET_NAMES,
    *(".pdf", ".png", ".jpg", ".jpeg", ".tif", ".tiff", ".webp", ".bmp", ".gif", ".heic", ".heif"),
    *(".xlsx", ".xlsm", ".xls", ".ods"),
)

# How other documents begin, and what to do with each.
_OTHERS: tuple[tuple[bytes, str], ...] = (
    (b"%!PS", "a PostScript file; save it as PDF"),
    (b"{\\rtf", "an RTF document; save it as PDF"),
    (b"{", "a JSON file"),
    (b"<", "a web page or an XML file; print it to a PDF"),
    (b"7z\xbc\xaf\x27\x1c", "a packed archive; unpack it first"),
    (b"Rar!", "a packed archive; unpack it first"),
    (b"\x1f\x8b", "a packed archive; unpack it first"),
)
# How lines of an email begin, and hardly those of anything else.
MAIL_FIELDS = (
    b"from:",
    b"received:",
    b"return-path:",
    b"delivered-to:",
    b"mime-version:",
    b"message-id:",
    b"subject:",
)


def kind_of(data: bytes, name: str) -> Kind:
    """The kind of a document. Raises UnsupportedType, PasswordProtected or Damaged with what to do about it."""
    if _is_picture(data):
        return "picture"
    if data.startswith((_ZIP, _EMPTY_ZIP)):
        return _packed(data, name)
    if data.startswith(_OLE):
        return _compound(data, name)
    if data.startswith(_BIFF):
        return "spreadsheet"
    if b"%PDF-" in data[:PDF_HEADER_WITHIN]:
        return "pdf"
    return _text(data, name)


def _is_picture(data: bytes) -> bool:
    if data.startswith(b"BM"):
        # Two letters are little to go by: the header's own length has to be one that bitmaps have.
        return len(data) > 18 and data[14] in (12, 40, 52, 56, 64, 108, 124) and data[15:18] == b"\0\0\0"
    if data.startswith(_PICTURES):
        return True
    if data[:4] == b"RIFF" and data[8:12] == b"WEBP":
        return True
    return data[4:8] == b"ftyp" and data[8:12] in _HEIF_BRANDS


def _packed(data: bytes, name: str) -> Kind:
    """Office documents are ZIP archives; which one, its parts tell."""
    try:
        with zipfile.ZipFile(io.BytesIO(data)) as archive:
            names = set(archive.namelist())
            mimetype = archive.read("mimetype")[:200].decode("ascii", "replace") if "mimetype" in names else ""
            manifest = archive.read("META-INF/manifest.xml")[:1_000_000] if "META-INF/manifest.xml" in names else b""
    except (zipfile.BadZipFile, RuntimeError, NotImplementedError, EOFError, OSError, KeyError, ValueError):
        raise Damaged(
            f"{name} is damaged: it was cut off or altered on its way. Ask the sender to send it again."
        ) from None
    if "xl/workbook.xml" in names:
        return "spreadsheet"
    if mimetype.startswith(_ODS):
        if b"encryption-data" in manifest:
            raise _locked(name)
        return "spreadsheet"
    if "xl/workbook.bin" in names:
        raise _unsupported(name, "a binary Excel workbook (XLSB); save it as XLSX")
    if "word/document.xml" in names or mimetype.startswith("application/vnd.oasis.opendocument.text"):
        raise _unsupported(name, "a text document; save it as PDF")
    if "ppt/presentation.xml" in names or mimetype.startswith("application/vnd.oasis.opendocument"):
        raise _unsupported(name, "a presentation or a drawing; save it as PDF")
    raise _unsupported(name, "a packed archive; unpack it first")


def _compound(data: bytes, name: str) -> Kind:
    """Old Office documents and locked new ones share a container whose entries are named in UTF-16."""

    def has(entry: str) -> bool:
        return entry.encode("utf-16-le") in data

    if has("EncryptedPackage"):
        raise _locked(name)
    if has("Workbook"):
        return "spreadsheet"
    if has("WordDocument"):
        raise _unsupported(name, "an old Word document; save it as PDF")
    if has("__properties_version1.0"):
        raise _unsupported(name, "an e-mail; save its attachment and read that")
    if has("Book"):
        return "spreadsheet"
    raise _unsupported(name, "an old Office document; save it as PDF")


def _text(data: bytes, name: str) -> Kind:
    if is_web_table(data):
        return "spreadsheet"
    start = data[:512].lstrip(b"\xef\xbb\xbf \t\r\n")
    for beginning, what in _OTHERS:
        if start.startswith(beginning):
            raise _unsupported(name, what)
    lines = [line.lower() for line in data[:4096].splitlines()]
    if sum(line.startswith(MAIL_FIELDS) for line in lines) >= 2:
        raise _unsupported(name, "an e-mail; save its attachment and read that")
    text = decode(data)
    if text is not None and (name.lower().endswith(_SHEET_NAMES) or looks_delimited(text)):
        return "spreadsheet"
    if name.lower().endswith(SUPPORTED_NAMES):
        kind = name.rpartition(".")[2].upper()
        raise Damaged(f"{name} is damaged: there is no {kind} in it. Ask the sender to send it again.")
    raise _unsupported(name, "plain text without columns" if text is not None else "")


def _locked(name: str) -> PasswordProtected:
    return PasswordProtected(
        f"{name} is locked with a password. Ask the sender for an open copy, or save one without it."
    )


def _unsupported(name: str, what: str = "") -> UnsupportedType:
    told = f"{name} is {what}." if what else f"{name} is of a type that is not read."
    return UnsupportedType(f"{told} Sheets can be {SUPPORTED}.")
