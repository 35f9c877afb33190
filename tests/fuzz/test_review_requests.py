"""Requests to the review desk by chance: whatever is sent, the answer is a page or a redirect, never a fault of the
program, the store stays whole, and what was read stays as it was read."""

from __future__ import annotations

import hashlib
import json
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from urllib.parse import quote

import pytest

pytest.importorskip("flask", reason="the desk is not installed")

from flask.testing import FlaskClient
from hypothesis import given, settings
from hypothesis import strategies as st
from werkzeug.test import TestResponse

from importer.desk.app import create_app
from importer.desk.guarding import Gate
from importer.models import HEADER_KEYS
from importer.store.ledger import Store
from tests.desk.conftest import OWN
from tests.desk.sheets import SOUND, changed, draw, take_in, two_columns
from tests.fuzz.json_values import values

ODD = ("Zorblax index", "3.7", "%")


@dataclass(frozen=True)
class Place:
    """A desk, somebody at it, the sheets in its store, and what was read of them."""

    folder: Path
    client: FlaskClient
    sheets: tuple[str, ...]
    read: str

    def revision(self, sheet: str) -> str:
        with Store(self.folder) as store:
            row = store.connection.execute("SELECT change FROM analyses WHERE id = ?", (sheet,)).fetchone()
        return str(row[0]) if row else "0"


def _read(folder: Path) -> str:
    """The printed stages of the store, as one fingerprint."""
    with Store(folder) as store:
        found = store.connection.execute("SELECT sha256, printed FROM readings ORDER BY sha256").fetchall()
    return hashlib.sha256(repr(found).encode()).hexdigest()


DESKS: list[Place] = []
"""The desk that the tests of this module ask, while it is open."""


@contextmanager
def prepared(scratch: Path) -> Iterator[None]:
    """A desk over three sheets; what the store holds is looked at when it closes."""
    folder = take_in(
        scratch / "store",
        draw(scratch / "a.pdf", (*changed("Moisture", "45"), ODD)),
        two_columns(scratch / "b.pdf", batch="N-1042"),
        draw(scratch / "c.pdf", SOUND, batch="?", method=""),
    )
    gate = Gate()
    app = create_app(folder, gate)
    client = app.test_client()
    client.get(f"/?token={gate.token}")
    client.post("/who", data={"name": "Anna Holt"}, headers=OWN)
    with Store(folder) as store:
        sheets = tuple(str(row[0]) for row in store.connection.execute("SELECT id FROM analyses ORDER BY id"))
    DESKS.append(Place(folder, client, sheets, _read(folder)))
    yield
    DESKS.pop()
    app.extensions["follower"].done()
    with Store(folder) as store:
        assert store.connection.execute("PRAGMA integrity_check").fetchone() == ("ok",)
        assert store.connection.execute("PRAGMA foreign_key_check").fetchall() == []


@pytest.fixture(scope="module", autouse=True)
def _desk(tmp_path_factory: pytest.TempPathFactory) -> Iterator[None]:
    with prepared(tmp_path_factory.mktemp("requests")):
        yield


NO_NUMBERS = ("", " ", "\x00", "\r\n", "\ufeff", "nan", "inf", "1e400", "9" * 25, "9" * 5000, "x" * 70_000, "½", "٤٫٥")
NUMBERS = ("0", "-1", "4,5", "4.5", "< 1", "80 - 82", "1.234.567,89", "\u202e4.5", "2024-11-30", "2024-13-45", "#1")
WORDS = ("%", "EBC", "°L", "<script>", "'; DROP TABLE analyses; --", "../../etc", "[]", "{}", "null", "true", "none")
anything = st.one_of(st.text(max_size=40), st.sampled_from((*NO_NUMBERS, *NUMBERS, *WORDS)))
said = st.sampled_from(("accept", "change", "reject", "column", "set-aside", "header", "read", "add", "withdraw"))
known = {
    "action": st.one_of(said, anything),
    "revision": st.one_of(st.just("now"), anything),
    "parameter": st.one_of(st.sampled_from(("moisture", "colour", "clarity", "arsenic", "nitrogen_ratio")), anything),
    "family": st.one_of(st.sampled_from(("EBC", "IoB", "ASBC")), anything),
    "basis": st.one_of(st.sampled_from(("dry", "as-is")), anything),
    "page": st.one_of(st.sampled_from(("1", "2")), anything),
    **dict.fromkeys(("x0", "top", "x1", "bottom"), st.one_of(st.integers(-10, 900).map(str), anything)),
}
plain = ("value", "unit", "label", "why", "name", "to", "means", "before", "kind", "was-value", "was-unit")
names = st.one_of(
    st.sampled_from((*known, *plain, *(f"h-{key}" for key in HEADER_KEYS))), st.text(min_size=1, max_size=12)
)
forms = st.lists(names.flatmap(lambda name: st.tuples(st.just(name), known.get(name, anything))), max_size=9)
rows = st.one_of(st.integers(0, 12).map(str), st.sampled_from(("head", "missing", "-1", "٣", "1e3", "9" * 30, "x")))
sheets = st.one_of(st.integers(0, 2), st.sampled_from(("nothing", "a'b", "%00", "é", "0" * 300)))
numbers = st.one_of(st.integers(0, 6).map(str), st.sampled_from(("9" * 18, "9" * 19, "9" * 5000, "٣", "-1", "x")))


def _where(place: Place, kind: str, sheet: int | str, row: str, number: str) -> str:
    one = place.sheets[sheet] if isinstance(sheet, int) else sheet
    return {
        "step": f"/sheet/{one}/{quote(row)}",
        "sheet": f"/sheet/{one}",
        "batch": f"/batch/{one}",
        "page": f"/page/{one}/{number}.png",
        "undo": f"/undo/{quote(number)}",
        "learned": f"/learned/{number}",
        "words": f"/learned/{number}/words",
        "list": "/",
        "sheets": "/sheets",
        "all learned": "/learned",
        "who": "/who",
    }[kind]


def _is_told(answer: TestResponse) -> None:
    """A page that says what it is, a redirect within the desk, or a picture."""
    assert answer.status_code == 200 or answer.status_code == 303 or 400 <= answer.status_code < 500, answer.status
    if answer.status_code == 303:
        assert answer.headers["Location"].startswith("/")
        assert not answer.headers["Location"].startswith("//")
    elif answer.headers["Content-Type"] != "image/png":
        page = answer.get_data(as_text=True)
        assert "<h1>" in page
        assert "Traceback" not in page


@settings(deadline=None, max_examples=100)
@given(st.sampled_from(("step", "step", "step", "undo", "learned", "words", "who")), sheets, rows, numbers, forms)
def test_any_form_is_answered(kind: str, sheet: int | str, row: str, number: str, form: list[tuple[str, str]]) -> None:
    place = DESKS[-1]
    address = _where(place, kind, sheet, row, number)
    now = place.revision(place.sheets[sheet] if isinstance(sheet, int) else sheet)
    data: dict[str, list[str]] = {}
    for name, text in form:
        data.setdefault(name, []).append(now if (name, text) == ("revision", "now") else text)
    body = "&".join(f"{quote(name)}={quote(text)}" for name, texts in data.items() for text in texts)
    _is_told(place.client.post(address, data=body, content_type="application/x-www-form-urlencoded", headers=OWN))
    if kind == "who":
        place.client.post("/who", data={"name": "Anna Holt"}, headers=OWN)
    assert _read(place.folder) == place.read


HEAD_OF_PART = b'--x\r\nContent-Disposition: form-data; name="value"\r\n\r\n'
bodies = st.one_of(
    st.binary(max_size=200),
    values.map(lambda value: json.dumps(value).encode()),
    st.binary(max_size=60).map(lambda data: HEAD_OF_PART + data + b"\r\n--x--\r\n"),
)
types = st.sampled_from(
    (
        "application/json",
        "application/x-www-form-urlencoded",
        "application/x-www-form-urlencoded; charset=utf-16",
        "multipart/form-data; boundary=x",
        "multipart/form-data",
        "text/plain",
        "",
    )
)


@settings(deadline=None, max_examples=60)
@given(st.sampled_from(("step", "undo", "learned", "words", "who")), sheets, rows, numbers, bodies, types)
def test_any_body_is_answered(
    kind: str, sheet: int | str, row: str, number: str, body: bytes, content_type: str
) -> None:
    place = DESKS[-1]
    address = _where(place, kind, sheet, row, number)
    _is_told(place.client.post(address, data=body, content_type=content_type, headers=OWN))
    assert _read(place.folder) == place.read


@settings(deadline=None, max_examples=60)
@given(
    st.sampled_from(("step", "sheet", "batch", "words", "list", "sheets", "all learned", "who", "page")),
    sheets,
    rows,
    numbers,
    forms,
)
def test_any_address_is_answered(
    kind: str, sheet: int | str, row: str, number: str, form: list[tuple[str, str]]
) -> None:
    place = DESKS[-1]
    query = "&".join(f"{quote(name)}={quote(text[:2000])}" for name, text in form)
    if kind == "page" and isinstance(sheet, int):
        number = "9" * 5  # no picture is drawn here
    _is_told(place.client.get(f"{_where(place, kind, sheet, row, number)}?{query}"))
