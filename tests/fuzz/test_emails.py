"""Emails by chance: whatever the parts are called and however they are nested, each comes out once, byte for byte."""

from __future__ import annotations

from email.message import EmailMessage
from functools import cache

from hypothesis import given, settings
from hypothesis import strategies as st

from importer.intake.parcel import Item, unpack
from importer.store.names import safe_file
from tests.fuzz.damage import altered, changes, read_bytes
from tests.fuzz.tables import cells
from tests.store.parcels import compound, mail, outlook, zipped

file_names = st.text(st.characters(codec="utf-8", exclude_categories=("Cs", "Cc")), min_size=1, max_size=30)
contents = st.binary(max_size=60).map(lambda data: b"%PDF-1.7\n" + data)
attachments = st.lists(st.tuples(file_names, contents), max_size=4)


@settings(deadline=None, max_examples=80)
@given(attachments, file_names)
def test_every_attachment_comes_out_as_it_went_in(parts: list[tuple[str, bytes]], subject: str) -> None:
    item = unpack(bytes(mail(*parts, subject=subject)), "saved.eml")
    assert [inner.data for inner in item.items] == [data for _, data in parts]
    assert all(inner.name and not set(safe_file(inner.name)) & set("/\\\0\n:") for inner in item.items)


@settings(deadline=None, max_examples=40)
@given(st.lists(attachments, min_size=1, max_size=3))
def test_forwarded_emails_lose_nothing(levels: list[list[tuple[str, bytes]]]) -> None:
    message: EmailMessage | None = None
    for parts in levels:
        message = mail(*parts, forwards=message)
    found = unpack(bytes(message or mail()), "saved.eml")
    assert sorted(sheet.data for sheet in found.sheets()) == sorted(data for parts in levels for _, data in parts)


heads = st.sampled_from(
    ("From", "Subject", "Date", "Content-Type", "Content-Transfer-Encoding", "Content-Disposition", "MIME-Version")
)
values = st.one_of(
    st.sampled_from(("multipart/mixed", 'multipart/mixed; boundary="x"', "text/plain; charset=nowhere", "base64",
                     "quoted-printable", "attachment; filename*=utf-8''%ZZ", "=?utf-8?b?!!!?=", "message/rfc822",
                     "attachment; filename=../../x", "Mon, 99 Foo 2024")),
    st.text(st.characters(codec="latin-1", exclude_characters="\r\n"), max_size=40),
)  # fmt: skip


@settings(deadline=None, max_examples=120)
@given(st.lists(st.tuples(heads, values), max_size=8), st.binary(max_size=200))
def test_any_head_and_body_end_as_items_or_trouble(head: list[tuple[str, str]], body: bytes) -> None:
    data = (
        "".join(f"{name}: {value}\r\n" for name, value in head).encode("latin-1") + b"\r\n" + body + b"\r\n--x\r\n\r\nA"
    )
    item = unpack(data, "saved.eml")
    assert item.kind in ("sheet", "email", "archive")
    for inner in item.walk():
        assert inner.trouble is None or inner.trouble.message
        assert not safe_file(inner.name).startswith(".")
        assert "/" not in safe_file(inner.name)


@cache
def _whole(which: str) -> bytes:
    sheet = ("a.csv", b"Parameter;Result;Unit\nMoisture;4.3;%\nFriability;86;%\n")
    inner = mail(sheet)
    return {
        "eml": bytes(mail(sheet, ("b.zip", zipped(sheet)), forwards=inner)),
        "zip": zipped(sheet, ("m.eml", bytes(inner))),
        "msg": compound(outlook(sheet, ("b.bin", bytes(5000)), forwards=outlook(sheet))),
    }[which]


@settings(deadline=None, max_examples=120)
@given(st.sampled_from(("eml", "zip", "msg")), changes)
def test_damaged_emails_and_archives_end_as_items_or_trouble(
    which: str, how: list[tuple[str, float, int, bytes]]
) -> None:
    _is_whole(unpack(altered(_whole(which), how), f"saved.{which}"))


def _is_whole(found: Item) -> None:
    for item in found.walk():
        assert item.kind == "sheet" or item.items or item.trouble
        assert item.name.isprintable()
        assert item.trouble is None or item.trouble.message
        for text in (item.letter.sender, item.letter.subject) if item.letter else ():
            assert text is None or text.isprintable()


tags = st.sampled_from(
    ("table", "tr", "td", "th", "p", "br", "div style='display:none'", "blockquote", "del", "script",
     "td rowspan=99999", "td colspan=-1", "/table", "/tr", "/td", "/div", "/blockquote", "!--", "![CDATA[", "a href='x",
     "&#0", "&#x110000;")
)  # fmt: skip
bodies = st.lists(st.one_of(cells, tags.map(lambda tag: f"<{tag}>")), max_size=30).map("".join)


@settings(deadline=None, max_examples=60)
@given(bodies, st.sampled_from(("html", "plain")))
def test_any_text_of_an_email_is_read_to_its_end(text: str, kind: str) -> None:
    body = text.encode("utf-8", "replace").decode()
    message = mail()
    message.set_content(body, subtype=kind)
    for item in unpack(bytes(message), "saved.eml").sheets():
        sheet = read_bytes(item.data, f".{kind}")
        assert sheet.analyses or sheet.problems
