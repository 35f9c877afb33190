"""Folders full of harm through the real reader: each file ends as figures or as a problem, and nothing else happens."""

from __future__ import annotations

import io
import os
import random
import stat
import sys
import zipfile
from collections.abc import Iterator
from pathlib import Path

import pytest
from PIL import Image, ImageDraw
from reportlab.pdfgen.canvas import Canvas

from importer.commands import bulk, inbox
from importer.store.ledger import Store
from tests.store.helpers import contents, dump, put, rows
from tests.store.parcels import compound, mail, outlook, zipped

ROWS = [("Moisture", "4.2", "%"), ("Extract, fine, dry", "81.2", "%"), ("Colour", "3.5", "EBC")]


def pdf(mark: int = 0) -> bytes:
    out = io.BytesIO()
    canvas = Canvas(out, pageCompression=mark % 2)
    canvas.drawString(60, 760, f"Nordtal Malting, Batch: N-{mark}")
    for number, row in enumerate(ROWS):
        for x, text in zip((60, 300, 400), row, strict=True):
            canvas.drawString(x, 700 - 20 * number, text)
    canvas.save()
    return out.getvalue()


def picture(kind: str = "PNG") -> bytes:
    image = Image.new("L", (240, 60), 255)
    ImageDraw.Draw(image).text((10, 10), "Moisture 4.2 %", fill=0)
    out = io.BytesIO()
    image.save(out, kind)
    return out.getvalue()


def harmful() -> Iterator[tuple[str, bytes]]:
    """Names and contents of what nobody should send."""
    good, noise = pdf(), random.Random(1).randbytes(5000)
    for share in range(5, 100, 10):
        yield f"cut {share}.pdf", good[: len(good) * share // 100]
        yield f"cut {share}.eml", bytes(mail(("a.pdf", good)))[: 4000 * share // 100]
        yield f"cut {share}.zip", zipped(("a.pdf", good))[: 1500 * share // 100]
        yield f"cut {share}.msg", compound(outlook(("a.pdf", good)))[: 9000 * share // 100]
    for name in ("a.pdf", "a.png", "a.eml", "a.msg", "a.zip", "a.xlsx", "a"):
        yield f"empty {name}", b""
        yield f"zeros {name}", bytes(3000)
        yield f"noise {name}", noise
    for head in (
        b"%PDF-1.7\n",
        b"\x89PNG\r\n\x1a\n",
        b"PK\x03\x04",
        b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1",
        b"From: a\nTo: b\n\n",
    ):
        yield f"head {head[:3].hex()}", head + noise
    yield (
        "loop.pdf",
        (
            b"%PDF-1.4\n1 0 obj<</Type/Catalog/Pages 2 0 R>>endobj\n2 0 obj<</Type/Pages/Kids[2 0 R]/Count 1>>endobj\n"
            b"trailer<</Root 1 0 R>>\n%%EOF"
        ),
    )
    yield "bomb.zip", zipped(("good.pdf", good), ("bomb.pdf", bytes(101 * 1024 * 1024)))
    deep = good
    for _ in range(9):
        deep = zipped(("inner.zip", deep))
    yield "deep.zip", deep
    yield "climb.zip", zipped(("../../../climbed.pdf", good), ("/tmp/absolute.pdf", good))
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w") as archive:
        link = zipfile.ZipInfo("link.pdf")
        link.external_attr = (stat.S_IFLNK | 0o777) << 16
        archive.writestr(link, "/etc/passwd")
    yield "links.zip", out.getvalue()
    nested = b"".join(b"Content-Type: multipart/mixed; boundary=b%d\n\n--b%d\n" % (n, n) for n in range(2000))
    yield "nested.eml", b"From: a@b\nSubject: x\nMIME-Version: 1.0\n" + nested
    yield "long.eml", b"From: a@b\nSubject: " + b"=?utf-8?q?" * 200_000 + b"\n\nx"
    yield "many.eml", b"From: a@b\n" + b"Received: x\n" * 50_000 + b"\nx"


def altered(seed: int) -> tuple[str, bytes]:
    """A PDF, picture, email or archive with some bytes changed, cut out or doubled."""
    chance = random.Random(seed)
    name, data = chance.choice(
        [
            ("a.pdf", pdf(seed)),
            ("b.pdf", pdf(seed)),
            ("a.png", picture()),
            ("a.tif", picture("TIFF")),
            ("a.jpg", picture("JPEG")),
            ("a.eml", bytes(mail(("a.pdf", pdf(seed)), ("b.png", picture())))),
            ("a.zip", zipped(("a.pdf", pdf(seed)))),
            ("a.msg", compound(outlook(("a.pdf", pdf(seed))))),
        ]
    )
    changed = bytearray(data)
    for _ in range(chance.choice([1, 3, 10, 40])):
        at = chance.randrange(len(changed))
        what = chance.random()
        if what < 0.8:
            changed[at] = chance.randrange(256)
        elif what < 0.9:
            del changed[at : at + chance.randrange(1, 50)]
        else:
            changed[at:at] = changed[at : at + 50]
    return f"{seed:05}-{name}", bytes(changed)


def check(folder: Path, expected: int) -> object:
    """Every file is in the store, and every document is figures or a problem in words."""
    assert dump(folder)
    with Store(folder) as store:
        assert rows(store, "SELECT COUNT(DISTINCT path) FROM arrivals") == [(expected,)]
        for condition in (
            "state = 'failed' AND NOT EXISTS (SELECT 1 FROM problems p WHERE p.sha256 = d.sha256)",
            "state IN ('accepted', 'review') AND kind = 'sheet'"
            " AND NOT EXISTS (SELECT 1 FROM analyses a WHERE a.sha256 = d.sha256)",
        ):
            assert rows(store, f"SELECT name FROM documents d WHERE {condition}") == []
        assert rows(store, "SELECT message FROM problems WHERE message LIKE '%Traceback%'") == []
        # Faults of the reader cost one document each; they are few, and which ones they were is told.
        faults = [
            message for (message,) in rows(store, "SELECT message FROM problems WHERE message LIKE '%unexpected%'")
        ]
        assert len(faults) <= expected / 1000, faults
        return rows(store, "SELECT state, COUNT(*) FROM documents GROUP BY state"), faults


def test_a_folder_full_of_harm(tmp_path: Path, capfd: pytest.CaptureFixture[str]) -> None:
    folder, store = tmp_path / "inbox", tmp_path / "store"
    count = 0
    for name, data in harmful():
        put(folder, name, data)
        count += 1
    assert count >= 60
    if sys.platform != "win32":
        os.mkfifo(folder / "pipe.pdf")
        (folder / "link.pdf").symlink_to("/etc/passwd")
        put(folder, "two\nlines \x1b[2J.pdf", pdf(77))
        count += 1
    before = set(tmp_path.rglob("*"))
    assert inbox.inbox(inbox.Request(folder, store, settle=0.1, workers=2, seconds=60)) == 1
    written = {path for path in set(tmp_path.rglob("*")) - before if path != store}
    assert all(path.is_relative_to(store) for path in written)
    assert contents(folder) == ({} if sys.platform == "win32" else {"link.pdf": contents(folder)["link.pdf"]})
    check(store, count)
    out, err = capfd.readouterr()
    assert "Traceback" not in out + err
    assert "\x1b" not in out


@pytest.mark.ocr
@pytest.mark.timeout(3000)
@pytest.mark.parametrize("count", [25, pytest.param(5000, marks=pytest.mark.slow)])
def test_altered_files(tmp_path: Path, count: int, capfd: pytest.CaptureFixture[str]) -> None:
    folder = tmp_path / "tree"
    for seed in range(count):
        put(folder, *altered(seed))
    bulk.bulk(bulk.Request(folder, tmp_path / "store", workers=2, seconds=60))
    found = check(tmp_path / "store", count)
    out, err = capfd.readouterr()
    assert "Traceback" not in out + err
    print(found)
