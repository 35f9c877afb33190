"""Nobody but whoever opened the desk gets in, no other page makes it do anything, no sheet's text becomes markup."""

from __future__ import annotations

from collections.abc import Callable
from html.parser import HTMLParser
from pathlib import Path

import pytest
from flask.testing import FlaskClient

from importer.desk.app import create_app
from importer.desk.guarding import Gate
from importer.store.ledger import Store
from tests.desk.conftest import OWN, Desk
from tests.desk.sheets import changed, draw, take_in

HOSTILE = '"><script>alert(1)</script><img src=x onerror=alert(2)>'


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    return take_in(tmp_path / "store", draw(tmp_path / "sheet.pdf", changed("Moisture", "45")))


@pytest.fixture
def desk(folder: Path, open_desk: Callable[..., Desk]) -> Desk:
    return open_desk(folder)


def identity(folder: Path) -> str:
    with Store(folder) as store:
        return str(store.connection.execute("SELECT id FROM analyses").fetchone()[0])


def status(client: FlaskClient, address: str, host: str) -> int:
    with client.get(address, headers={"Host": host}) as answer:
        return answer.status_code


def corrections(folder: Path) -> int:
    with Store(folder) as store:
        return int(store.connection.execute("SELECT COUNT(*) FROM corrections").fetchone()[0])


@pytest.mark.parametrize("host", ["evil.example", "evil.example:80", "127.0.0.1.evil.example", "169.254.1.1", ""])
def test_a_foreign_name_gets_no_answer(desk: Desk, host: str) -> None:
    for address in ("/", "/static/desk.js"):
        assert status(desk.client, address, host) == 400


@pytest.mark.parametrize("host", ["localhost:8080", "127.0.0.1", "127.0.0.1:5", "[::1]:99"])
def test_its_own_names_do(desk: Desk, host: str) -> None:
    assert status(desk.client, "/static/desk.js", host) == 200


def test_a_desk_that_listens_everywhere_answers_to_addresses_but_not_to_names(folder: Path) -> None:
    client = create_app(folder, Gate(), ("0.0.0.0",)).test_client()
    assert status(client, "/static/desk.js", "192.168.1.20:99") == 200
    assert status(client, "/static/desk.js", "evil.example") == 400


def test_without_the_token_nothing_is_shown_or_done(folder: Path) -> None:
    gate = Gate()
    client = create_app(folder, gate).test_client()
    sheet = identity(folder)
    for address in ("/", f"/sheet/{sheet}/0", f"/batch/{sheet}", f"/page/{sheet}/1.png", "/learned", "/?token=wrong"):
        answer = client.get(address)
        assert answer.status_code == 403, address
        assert "Nordtal" not in answer.get_data(as_text=True)
    client.set_cookie(gate.cookie, "guessed")
    assert client.post(f"/sheet/{sheet}/0", data={"action": "accept"}, headers=OWN).status_code == 403
    assert corrections(folder) == 0


def test_the_token_works_once_and_becomes_a_strict_cookie(folder: Path) -> None:
    gate = Gate()
    app = create_app(folder, gate)
    token = gate.token
    first = app.test_client().get(f"/?token={token}")
    assert (first.status_code, first.headers["Location"]) == (303, "/")
    cookie = first.headers["Set-Cookie"]
    assert "HttpOnly" in cookie
    assert "SameSite=Strict" in cookie
    assert token not in cookie
    assert app.test_client().get(f"/?token={token}").status_code == 403


@pytest.mark.parametrize(
    "headers",
    [
        {},
        {"Origin": "https://evil.example"},
        {"Origin": "null"},
        {"Origin": "http://localhost:81"},
        {"Sec-Fetch-Site": "cross-site"},
        {"Sec-Fetch-Site": "same-site", "Origin": "http://localhost"},
        {"Sec-Fetch-Site": "none", "Origin": "http://localhost"},
        {"Sec-Fetch-Site": "same-origin", "Origin": "https://evil.example"},
    ],
)
def test_a_post_from_another_page_does_nothing(desk: Desk, headers: dict[str, str]) -> None:
    address = f"/sheet/{identity(desk.folder)}/0"
    form = {"action": "change", "value": "4.5", "revision": desk.revision(address)}
    for where in (address, "/undo/1", "/who", "/learned/1"):
        assert desk.client.post(where, data=form, headers=headers).status_code == 403
    assert corrections(desk.folder) == 0


def test_a_get_changes_nothing(desk: Desk) -> None:
    sheet = identity(desk.folder)
    for address in ("/", f"/sheet/{sheet}", f"/sheet/{sheet}/0?action=accept", f"/batch/{sheet}", "/learned"):
        desk.client.get(address)
    assert desk.client.get("/undo/1").status_code == 405
    assert desk.client.put(f"/sheet/{sheet}/0", headers=OWN).status_code == 405
    assert corrections(desk.folder) == 0


def test_every_answer_carries_the_strict_policy(desk: Desk) -> None:
    for address in ("/", "/static/desk.css", "/nowhere", f"/sheet/{identity(desk.folder)}/0"):
        with desk.client.get(address) as answer:
            headers = answer.headers
        policy = headers["Content-Security-Policy"]
        assert policy.startswith("default-src 'none'")
        assert "unsafe" not in policy
        assert "*" not in policy
        assert "frame-ancestors 'none'" in policy
        assert headers["X-Content-Type-Options"] == "nosniff"
    assert desk.client.get("/").headers["Cache-Control"] == "no-store"


class _Markup(HTMLParser):
    """Collects what a browser would run or fetch."""

    def __init__(self) -> None:
        super().__init__()
        self.found: list[tuple[str, dict[str, str | None]]] = []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.found.append((tag, dict(attrs)))


def hostile_store(tmp_path: Path) -> Path:
    rows = (*changed("Friability", "88", rename=HOSTILE), ("Colour x" + HOSTILE[:30], "45", "EBC"))
    hostile = draw(tmp_path / "a'b<i>.pdf", rows, batch="N-1041", supplier=HOSTILE[:40], malt="Pale <b>Ale</b> Malt")
    return take_in(tmp_path / "store", hostile)


def test_text_of_a_sheet_never_becomes_markup(tmp_path: Path, open_desk: Callable[..., Desk]) -> None:
    folder = hostile_store(tmp_path)
    desk = open_desk(folder, name="<script>name</script>")
    sheet = identity(folder)
    with Store(folder) as store:
        rows = len(store.connection.execute("SELECT 1 FROM figures WHERE NOT derived").fetchall())
    addresses = ["/", f"/batch/{sheet}", f"/sheet/{sheet}/head", "/sheets", f"/sheet/{sheet}/missing"]
    seen = ""
    for address in [*addresses, *(f"/sheet/{sheet}/{row}" for row in range(rows))]:
        text = desk.text(address)
        seen += text
        page = _Markup()
        page.feed(text)
        scripts = [attributes for tag, attributes in page.found if tag == "script"]
        assert [script.get("src") for script in scripts] == ["/static/desk.js"]
        assert not [tag for tag, _ in page.found if tag in ("b", "img", "i", "iframe", "object", "style", "base")]
        for _, attributes in page.found:
            assert not [name for name in attributes if name.startswith("on") or name == "style"]
            for name in ("src", "href", "action"):
                target = attributes.get(name) or "/"
                assert target.startswith(("/", "#", "?")), target
                assert not target.startswith("//")
    assert "&lt;script&gt;" in seen


@pytest.mark.parametrize("to", ["https://evil.example", "//evil.example", "/\\evil.example", "javascript:alert(1)"])
def test_nobody_is_sent_elsewhere(desk: Desk, to: str) -> None:
    assert desk.say("/who", name="Anna", to=to).headers["Location"] == "/"


@pytest.mark.parametrize(
    "address",
    [
        "/sheet/nothing/0",
        "/batch/..%2f..%2fetc",
        "/page/nothing/1.png",
        "/undo/99",
        "/static/../app.py",
        "/learned/7/words",
    ],
)
def test_what_is_not_there_is_told_plainly(desk: Desk, address: str) -> None:
    answer = desk.client.post(address, headers=OWN) if "undo" in address else desk.client.get(address)
    assert answer.status_code == 404
    assert "Traceback" not in answer.get_data(as_text=True)


@pytest.mark.parametrize("what", ["99", "-1", "999999999", "x", "0x1"])
def test_rows_that_are_not_there(desk: Desk, what: str) -> None:
    assert desk.client.get(f"/sheet/{identity(desk.folder)}/{what}").status_code == 404


def test_a_flood_is_refused(desk: Desk) -> None:
    address = f"/sheet/{identity(desk.folder)}/0"
    assert desk.client.post(address, data={"value": "4" * 200_000}, headers=OWN).status_code == 413
    assert corrections(desk.folder) == 0


def test_a_fault_of_the_program_shows_no_traceback(desk: Desk, monkeypatch: pytest.MonkeyPatch) -> None:
    from importer.desk import queue

    monkeypatch.delenv("ONEBASIS_DEBUG", raising=False)
    monkeypatch.setattr(queue, "count", lambda _: 1 / 0)
    text = desk.text("/", 500)
    assert "a fault of the program (ZeroDivisionError)" in text
    assert "Traceback" not in text
