"""A file is read once, whole or not at all, and known by its content."""

from __future__ import annotations

import contextlib
import hashlib
import io
import os
import sys
import zipfile
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st
from PIL import Image

from importer.errors import Damaged, EmptyFile, PasswordProtected, SheetError, TooLarge, UnsupportedType
from importer.intake import source
from importer.intake.kind import kind_of
from importer.intake.names import safe_name
from importer.intake.source import open_source
from tests.permissions import needs_permissions

PDF = b"%PDF-1.7\n%\xe2\xe3\xcf\xd3\n1 0 obj\n"


def picture(kind: str) -> bytes:
    out = io.BytesIO()
    Image.new("RGB", (4, 4), "white").save(out, kind)
    return out.getvalue()


def archive(**parts: bytes) -> bytes:
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w") as file:
        for name, data in parts.items():
            file.writestr(name.replace("__", "/").replace("_x_", "."), data)
    return out.getvalue()


@pytest.mark.parametrize("kind", ["PNG", "JPEG", "TIFF", "BMP", "GIF", "WEBP"])
def test_pictures_as_a_general_library_writes_them(kind: str) -> None:
    assert kind_of(picture(kind), "x") == "picture"


@pytest.mark.parametrize("before", [b"", b"\xef\xbb\xbf", b"\r\n\r\n", b"HTTP/1.1 200 OK\r\n\r\n", b"x" * 1000])
def test_a_pdf_may_be_preceded_by_junk(before: bytes) -> None:
    assert kind_of(before + PDF, "x") == "pdf"


def test_a_header_beyond_the_first_kilobyte_is_no_pdf() -> None:
    with pytest.raises(UnsupportedType):
        kind_of(b"\x01" * 1100 + PDF, "x")


@pytest.mark.parametrize("name", ["x.pdf", "X.PDF", "x.png", "x.xlsx", "x.jpeg"])
def test_a_name_that_promises_what_is_not_there(name: str) -> None:
    with pytest.raises(Damaged, match="there is no"):
        kind_of(b"\x01\x02\x03" * 100, name)
    with pytest.raises(Damaged, match="there is no"):
        kind_of(b"not what it says", name)


def test_the_name_does_not_decide() -> None:
    assert kind_of(PDF, "scan.png") == "pdf"
    assert kind_of(picture("PNG"), "sheet.pdf") == "picture"
    assert kind_of(b"Parameter;Value;Unit\nMoisture;4,2;%\nColour;3,5;EBC\npH;5,9;\n", "sheet.pdf") == "spreadsheet"


def test_csv_is_known_by_its_columns_or_its_name() -> None:
    assert kind_of(b"Moisture,4.2\nColour,3.5\nExtract,81.2\n", "x") == "spreadsheet"
    assert kind_of(b"Moisture\t4,2\nColour\t3,5\nExtract\t81,2\n", "x") == "spreadsheet"
    assert kind_of(b"Moisture 4.2\n", "x.csv") == "spreadsheet"
    assert kind_of("Moisture;4,2\nColour;3,5\nExtract;81,2\n".encode("utf-16"), "x") == "spreadsheet"


@pytest.mark.parametrize(
    "text",
    [
        b"Dear brewer, please find the sheet attached.\nBest regards,\nthe maltster\n",
        b"# Notes\n\nSome words; and others.\n- one\n- two\n",
        b"hello",
    ],
)
def test_prose_is_not_read(text: bytes) -> None:
    with pytest.raises(UnsupportedType, match="PDF, PNG"):
        kind_of(text, "notes.txt")


@pytest.mark.parametrize(
    ("data", "words"),
    [
        (archive(word__document_x_xml=b""), "text document"),
        (archive(ppt__presentation_x_xml=b""), "presentation"),
        (archive(xl__workbook_x_bin=b""), "save it as XLSX"),
        (archive(mimetype=b"application/vnd.oasis.opendocument.graphics"), "a drawing; save it as PDF"),
        (b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1" + bytes(512), "old Office document"),
        (archive(a_x_pdf=PDF), "packed archive"),
        (b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1" + "WordDocument".encode("utf-16-le"), "old Word document"),
        (b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1" + "__properties_version1.0".encode("utf-16-le"), "e-mail"),
        (b"From: a\r\nTo: b\r\nSubject: c\r\nMIME-Version: 1.0\r\n\r\nbody", "e-mail"),
        (b"<!DOCTYPE html><html></html>", "web page"),
        (b'{"a": 1}', "JSON"),
        (b"%!PS-Adobe-3.0", "PostScript"),
        (b"{\\rtf1 }", "RTF"),
        (b"\x1f\x8b\x08", "packed archive"),
        (bytes(range(256)) * 4, "not read"),
    ],
)
def test_other_documents_are_named_with_a_way_out(data: bytes, words: str) -> None:
    with pytest.raises(UnsupportedType, match=words):
        kind_of(data, "x")


def test_locked_workbooks() -> None:
    locked = b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1" + b"\0" * 100 + "EncryptedPackage".encode("utf-16-le")
    with pytest.raises(PasswordProtected, match="open copy"):
        kind_of(locked, "x.xlsx")
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w") as file:
        file.writestr("mimetype", "application/vnd.oasis.opendocument.spreadsheet")
        file.writestr("META-INF/manifest.xml", "<manifest:encryption-data/>")
    with pytest.raises(PasswordProtected):
        kind_of(out.getvalue(), "x.ods")


def test_a_cut_off_archive_is_damaged() -> None:
    with pytest.raises(Damaged):
        kind_of(archive(xl__workbook_x_xml=b"x" * 1000)[:200], "x.xlsx")


@given(st.binary(max_size=300))
def test_any_bytes_have_a_kind_or_a_reason(data: bytes) -> None:
    for start in (b"", b"PK\x03\x04", b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1", b"BM", b"RIFF"):
        with contextlib.suppress(SheetError):
            assert kind_of(start + data, "x") in ("pdf", "picture", "spreadsheet")


def test_a_source_holds_bytes_hash_and_time(tmp_path: Path) -> None:
    path = tmp_path / "sheet.pdf"
    path.write_bytes(PDF)
    os.utime(path, (1_700_000_000, 1_700_000_000))
    opened = open_source(path)
    assert opened.name == "sheet.pdf"
    assert opened.sha256 == hashlib.sha256(PDF).hexdigest()
    assert opened.data == PDF
    assert opened.kind == "pdf"
    assert opened.modified.isoformat() == "2023-11-14T22:13:20+00:00"
    assert open_source(str(path)) == opened


@pytest.mark.parametrize("data", [b"", b"\x00" * 5000, b" \r\n\n"])
def test_empty_files(tmp_path: Path, data: bytes) -> None:
    (tmp_path / "x.pdf").write_bytes(data)
    with pytest.raises(EmptyFile, match=r"x\.pdf is empty"):
        open_source(tmp_path / "x.pdf")


def test_a_file_above_the_cap(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(source, "MAX_BYTES", 2 * 1024 * 1024)
    (tmp_path / "x.pdf").write_bytes(PDF + b"x" * 2 * 1024 * 1024)
    with pytest.raises(TooLarge, match="larger than 2 MB"):
        open_source(tmp_path / "x.pdf")


def test_what_is_not_there_or_no_file(tmp_path: Path) -> None:
    with pytest.raises(Damaged, match="cannot be opened: No such file"):
        open_source(tmp_path / "missing.pdf")
    with pytest.raises(UnsupportedType, match="is a folder"):
        open_source(tmp_path)


@pytest.mark.skipif(sys.platform == "win32", reason="pipes and links")
def test_pipes_and_devices_do_not_block(tmp_path: Path) -> None:
    os.mkfifo(tmp_path / "pipe.pdf")
    with pytest.raises(UnsupportedType, match="pipe or a device"):
        open_source(tmp_path / "pipe.pdf")
    with pytest.raises(UnsupportedType, match="pipe or a device"):
        open_source("/dev/zero")


@pytest.mark.skipif(sys.platform == "win32", reason="links")
def test_links(tmp_path: Path) -> None:
    (tmp_path / "sheet.pdf").write_bytes(PDF)
    (tmp_path / "link.pdf").symlink_to(tmp_path / "sheet.pdf")
    (tmp_path / "device.pdf").symlink_to("/dev/zero")
    assert open_source(tmp_path / "link.pdf").name == "link.pdf"
    with pytest.raises(UnsupportedType, match="is a link"):
        open_source(tmp_path / "link.pdf", follow_links=False)
    with pytest.raises(UnsupportedType, match="pipe or a device"):
        open_source(tmp_path / "device.pdf")


@needs_permissions
def test_a_file_without_permission(tmp_path: Path) -> None:
    (tmp_path / "x.pdf").write_bytes(PDF)
    (tmp_path / "x.pdf").chmod(0)
    with pytest.raises(Damaged, match="may be read"):
        open_source(tmp_path / "x.pdf")


@pytest.mark.parametrize(
    ("name", "shown"),
    [
        ("sheet.pdf", "sheet.pdf"),
        ("Prüfbericht Größe.pdf", "Prüfbericht Größe.pdf"),
        ("a\nb\x1b[31m.pdf", "a\ufffdb\ufffd[31m.pdf"),
        ("fdp\u202egnp", "fdp\ufffdgnp"),
        ("folder/inner/x.pdf", "x.pdf"),
        ("n" * 300, "n" * 199 + "…"),
    ],
)
def test_names_are_safe(name: str, shown: str) -> None:
    assert safe_name(name) == shown


@pytest.mark.skipif(sys.platform == "win32", reason="names are bytes on POSIX only")
def test_a_name_that_is_not_utf8() -> None:
    name = safe_name(os.fsdecode(b"malt-\xe4.pdf"))
    assert name == "malt-\ufffd.pdf"
    name.encode("utf-8")
