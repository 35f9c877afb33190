"""Emails and archives: what is in them, from whom, and what becomes of harmful ones."""

from __future__ import annotations

import io
import random
import stat
import zipfile

import olefile
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from importer.intake import archive, parcel
from importer.intake.parcel import unpack
from tests.store.parcels import compound, mail, outlook, zipped
from tests.store.standins import sheet


def names(data: bytes, name: str = "it") -> list[tuple[str, str]]:
    return [(item.name, item.kind) for item in unpack(data, name).walk()]


def test_a_sheet_is_a_sheet() -> None:
    item = unpack(b"%PDF-1.7 and so on", "a.pdf")
    assert (item.kind, item.items, item.letter, item.trouble) == ("sheet", (), None, None)


def test_attachments_and_who_sent_them() -> None:
    data = bytes(mail(("Zeugnis Ä.pdf", sheet()), ("b.csv", b"a;b\n1;2\n")))
    item = unpack(data, "saved.eml")
    assert names(data) == [("it", "email"), ("Zeugnis Ä.pdf", "sheet"), ("b.csv", "sheet")]
    assert [inner.data for inner in item.items] == [sheet(), b"a;b\n1;2\n"]
    for letter in (item.letter, item.items[0].letter):
        assert letter is not None
        assert letter.sender == "Käthe Muster <lab@example.org>"
        assert letter.subject == "Prüfzeugnis 24/0417"
        assert letter.sent == "2024-11-18T09:00:00+00:00"


def test_a_forwarded_email_keeps_its_own_sender() -> None:
    inner = mail(("cert.pdf", sheet()), sender="lab@example.org", subject="Certificate")
    outer = mail(("other.pdf", sheet("B")), sender="office@example.org", subject="Fwd: Certificate", forwards=inner)
    found = {item.name: item.letter.sender for item in unpack(bytes(outer), "f.eml").sheets() if item.letter}
    assert found == {"other.pdf": "office@example.org", "cert.pdf": "lab@example.org"}


def test_an_email_saved_and_attached_as_a_file() -> None:
    inner = bytes(mail(("cert.pdf", sheet()), sender="lab@example.org"))
    data = bytes(mail(("message.eml", inner), sender="office@example.org"))
    assert names(data) == [("it", "email"), ("message.eml", "email"), ("cert.pdf", "sheet")]
    (found,) = unpack(data, "it").sheets()
    assert found.letter is not None
    assert found.letter.sender == "lab@example.org"


def test_an_archive_in_an_email_in_an_archive() -> None:
    letter = bytes(mail(("x.zip", zipped(("deep/cert.pdf", sheet())))))
    assert names(zipped(("letter.eml", letter))) == [
        ("it", "archive"), ("letter.eml", "email"), ("x.zip", "archive"), ("cert.pdf", "sheet"),
    ]  # fmt: skip


def test_logos_are_known_as_part_of_the_text() -> None:
    message = mail(("cert.pdf", sheet()))
    message.get_body().add_related(b"\x89PNG\r\n\x1a\nlogo", "image", "png", cid="<logo@example.org>")  # type: ignore[union-attr]
    found = {item.name: item.inline for item in unpack(bytes(message), "m.eml").sheets()}
    assert found == {"attachment.png": True, "cert.pdf": False}


def test_outlook_files_are_what_olefile_takes_them_for() -> None:
    """The writer of test files against an independent reader of compound files."""
    data = compound(outlook(("cert.pdf", b"x" * 5000)))
    with olefile.OleFileIO(io.BytesIO(data), raise_defects=olefile.DEFECT_INCORRECT) as ole:
        assert ole.exists("__properties_version1.0")
        assert ole.openstream(["__attach_version1.0_#00000000", "__substg1.0_37010102"]).read() == b"x" * 5000


def test_outlook_emails() -> None:
    inner = outlook(("inner.pdf", sheet("B")), sender="Lab", address="lab2@example.org")
    data = compound(outlook(("cert.pdf", sheet()), ("big.pdf", b"y" * 9000), forwards=inner))
    item = unpack(data, "m.msg")
    assert names(data) == [("it", "email"), ("cert.pdf", "sheet"), ("big.pdf", "sheet"), ("inner.pdf", "sheet")]
    assert item.letter is not None
    assert item.letter.sender == "Käthe Muster <lab@example.org>"
    assert item.letter.subject == "Prüfzeugnis"
    # 133764012000000000 / 10^7 - 11644473600 (seconds from 1601 to 1970) = 1731927600
    assert item.letter.sent == "2024-11-18T11:00:00+00:00"
    assert item.items[2].letter is not None
    assert item.items[2].letter.sender == "Lab <lab2@example.org>"
    assert [inner.data for inner in item.items] == [sheet(), b"y" * 9000, sheet("B")]


@pytest.mark.parametrize(
    "name", ["../../etc/passwd", "..\\..\\x.pdf", "/etc/x.pdf", "C:\\x.pdf", "a\nb.pdf", "\x1b[2J.pdf"]
)
def test_names_are_never_paths(name: str) -> None:
    for data in (zipped((name, sheet())), bytes(mail((name.replace("\n", " "), sheet())))):
        (item,) = unpack(data, "it").sheets()
        assert "/" not in item.name
        assert item.name.isprintable()


def test_folders_links_and_litter_in_archives_are_passed_over() -> None:
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w") as packed:
        link = zipfile.ZipInfo("link.pdf")
        link.external_attr = (stat.S_IFLNK | 0o777) << 16
        packed.writestr(link, "/etc/passwd")
        packed.writestr("folder/", b"")
        for name in ("__MACOSX/._a.pdf", ".hidden", "Thumbs.db", "a.pdf"):
            packed.writestr(name, sheet())
    assert names(out.getvalue()) == [("it", "archive"), ("a.pdf", "sheet")]


def test_office_documents_are_no_archives() -> None:
    assert not archive.is_archive(zipped(("[Content_Types].xml", b"<x/>"), ("xl/workbook.xml", b"<x/>")))
    assert not archive.is_archive(zipped(("mimetype", b"application/vnd.oasis.opendocument.spreadsheet")))
    assert not archive.is_archive(b"PK\x03\x04 and then noise")


def test_bombs(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(parcel, "MAX_PARCEL_BYTES", 1_000_000)
    item = unpack(zipped(("good.pdf", sheet()), ("bomb.pdf", bytes(50_000_000))), "bomb.zip")
    assert item.trouble is not None
    assert item.trouble.code == "too-large"
    assert [inner.name for inner in item.items] == ["good.pdf"]


def test_a_bomb_that_lies_about_its_size(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(parcel, "MAX_PARCEL_BYTES", 1_000_000)
    data = bytearray(zipped(("bomb.pdf", bytes(5_000_000))))
    for at in (data.find(b"PK\x03\x04") + 22, data.find(b"PK\x01\x02") + 24):
        data[at : at + 4] = (10).to_bytes(4, "little")
    item = unpack(bytes(data), "bomb.zip")
    assert item.trouble is not None
    assert sum(len(inner.data) for inner in item.items) <= 1_000_000


def test_too_many_and_too_deep(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(parcel, "MAX_PARCEL_ITEMS", 10)
    many = unpack(zipped(*((f"{n}.pdf", sheet(str(n))) for n in range(30))), "many.zip")
    assert many.trouble is not None
    assert many.trouble.code == "too-large"
    assert len(many.items) == 10
    deep = sheet()
    for number in range(8):
        deep = zipped((f"{number}.zip", deep))
    troubles = [item.trouble for item in unpack(deep, "deep.zip").walk() if item.trouble]
    assert [trouble.code for trouble in troubles] == ["too-large"]


def test_locked_archives_say_so() -> None:
    data = bytearray(zipped(("a.pdf", sheet())))
    for at in (data.find(b"PK\x03\x04") + 6, data.find(b"PK\x01\x02") + 8):
        data[at] |= 1
    trouble = unpack(bytes(data), "locked.zip").trouble
    assert trouble is not None
    assert trouble.code == "password-protected"


def test_emails_and_archives_without_anything() -> None:
    for data in (bytes(mail()), zipped(), compound(outlook())):
        trouble = unpack(data, "x").trouble
        assert trouble is not None
        assert trouble.code == "no-figures-found"


def test_multiparts_within_each_other_without_end() -> None:
    nested = b"".join(b"Content-Type: multipart/mixed; boundary=b%d\r\n\r\n--b%d\r\n" % (n, n) for n in range(3000))
    item = unpack(b"From: a@b\r\nSubject: x\r\nMIME-Version: 1.0\r\n" + nested + b"\r\nend", "deep.eml")
    assert item.trouble is not None


def _originals() -> list[bytes]:
    inner = mail(("cert.pdf", sheet()))
    return [
        bytes(mail(("a.pdf", sheet()), ("b.zip", zipped(("c.pdf", sheet("C")))), forwards=inner)),
        zipped(("a.pdf", sheet()), ("m.eml", bytes(inner))),
        compound(outlook(("a.pdf", sheet()), ("b.bin", bytes(6000)), forwards=outlook(("c.pdf", sheet("C"))))),
    ]


@settings(max_examples=150, deadline=None)
@given(st.sampled_from(range(3)), st.integers(0, 2**32), st.integers(1, 30))
def test_altered_parcels_end_as_items_or_trouble(which: int, seed: int, changes: int) -> None:
    chance = random.Random(seed)
    data = bytearray(_originals()[which])
    for _ in range(changes):
        data[chance.randrange(len(data))] = chance.randrange(256)
    if chance.random() < 0.3:
        del data[chance.randrange(len(data)) :]
    for item in unpack(bytes(data), "x").walk():
        assert item.kind == "sheet" or item.items or item.trouble
        assert item.name.isprintable()
        letter = item.letter
        assert letter is None or all(text is None or text.isprintable() for text in (letter.sender, letter.subject))
