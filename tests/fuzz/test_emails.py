"""Emails by chance: whatever the parts are called and however they are nested, each comes out once, byte for byte."""

from __future__ import annotations

from email.message import EmailMessage

from hypothesis import given, settings
from hypothesis import strategies as st

from importer.intake.parcel import unpack
from importer.store.names import safe_file
from tests.store.parcels import mail

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
