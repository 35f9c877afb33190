"""The endpoint: to be read only, on this machine only, right while the store is written, and described."""

from __future__ import annotations

import http.client
import json
import re
import signal
import sqlite3
import subprocess
import sys
import threading
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor
from contextlib import contextmanager
from pathlib import Path
from typing import Any
from urllib.request import urlopen

import pytest
from flask.testing import FlaskClient
from openapi_spec_validator import validate
from werkzeug.serving import make_server

from importer.output.atomic import WriteError
from importer.serving.app import make_app
from importer.serving.openapi import describe
from importer.store.ledger import FILE_NAME, Store
from importer.store.looking_in import Current, ReadOnlyStore, load_analyses
from tests.deciding.conftest import Fill, put
from tests.deciding.factory import analysis, figure


def malt(number: int, day: str = "2025-01-01", **more: Any):  # type: ignore[no-untyped-def]
    return analysis(figure("moisture", 4.0 + number / 100), batch=f"B{number}", day=day, **more)


@pytest.fixture
def client(filled: Fill) -> FlaskClient:
    return make_app(filled(malt(1), malt(2, "2025-02-01"), malt(3, "2025-01-15", malt="Munich Malt"))).test_client()


def get(client: FlaskClient, path: str, status: int = 200) -> Any:
    answer = client.get(path, base_url="http://127.0.0.1:8642")
    assert answer.status_code == status, answer.text
    return answer.get_json()


def test_malts_in_use(client: FlaskClient) -> None:
    found = get(client, "/v1/malts")
    assert [(one["malt"], one["batch"], one["moisture_percent"]) for one in found["malts"]] == [
        ("Munich Malt", "B3", 4.03),
        ("Pale Ale Malt", "B2", 4.02),
    ]
    assert get(client, "/v1/malts?malt=munich")["malts"][0]["batch"] == "B3"
    assert get(client, "/v1/malts?pin=Pale Ale Malt=B1&malt=pale")["malts"][0]["batch"] == "B1"


def test_malts_as_csv(client: FlaskClient) -> None:
    answer = client.get("/v1/malts.csv", base_url="http://localhost:8642")
    assert answer.content_type == "text/csv; charset=utf-8"
    assert answer.text.splitlines()[0].startswith("supplier,malt,batch,")
    assert len(answer.text.splitlines()) == 3


def test_analyses_and_pages_of_them(client: FlaskClient) -> None:
    assert [a["header"]["batch"]["value"] for a in get(client, "/v1/analyses")["analyses"]] == ["B1", "B3", "B2"]
    assert len(get(client, "/v1/analyses?limit=1&offset=1")["analyses"]) == 1
    (one,) = get(client, "/v1/analyses?batch=B2")["analyses"]
    assert get(client, f"/v1/analyses/{one['id']}")["analyses"] == [one]


def test_what_a_batch_means(client: FlaskClient) -> None:
    found = get(client, "/v1/batches/B2")
    assert found["against"] == ["last batch B1"]
    assert found["rows"][0]["differences"][1]["verdict"] == "within-scatter"


def test_batches_side_by_side(client: FlaskClient) -> None:
    found = get(client, "/v1/compare?batch=B1&batch=B2")
    assert [one["batch"] for one in found["analyses"]] == ["B1", "B2"]
    assert "Name from 2 to 20" in get(client, "/v1/compare?batch=B1&batch=B1", 400)["message"]


@pytest.mark.parametrize(
    ("path", "status", "told"),
    [
        ("/v1/compare?batch=B1&batch=B9", 404, "no B9"),
        ("/v1/batches/B9", 404, "no B9"),
        ("/v1/analyses/none", 404, "no none"),
        ("/v1/analyses?limit=-1", 400, "whole number"),
        ("/v1/analyses?offset=²", 400, "whole number"),
        ("/v1/malts?pin=x", 400, "is not like"),
        ("/v1/malts?pin=x=y", 404, "no malt 'x'"),
        ("/v1/nothing", 404, "not found"),
    ],
)
def test_faults_are_told(client: FlaskClient, path: str, status: int, told: str) -> None:
    assert told in get(client, path, status)["message"]


@pytest.mark.parametrize("method", ["post", "put", "patch", "delete"])
@pytest.mark.parametrize("path", ["/v1/malts", "/v1/analyses", "/v1/batches/B1", "/"])
def test_nothing_can_be_written(client: FlaskClient, method: str, path: str) -> None:
    assert client.open(path, method=method.upper(), base_url="http://127.0.0.1", json={}).status_code == 405


@pytest.mark.parametrize("host", ["evil.example", "127.0.0.1.evil.example", "localhost.evil.example:8642", "10.0.0.1"])
def test_another_name_for_this_machine_is_refused(client: FlaskClient, host: str) -> None:
    answer = client.get("/v1/malts", base_url=f"http://{host}")
    assert answer.status_code == 421
    assert "malts" not in answer.text


@pytest.mark.parametrize("host", ["localhost", "localhost:8642", "127.0.0.1:1", "[::1]:8642", "[::1]"])
def test_this_machines_own_names(client: FlaskClient, host: str) -> None:
    assert client.get("/v1/malts", base_url=f"http://{host}").status_code == 200


def test_no_other_page_may_take_the_answers(client: FlaskClient) -> None:
    answer = client.get("/v1/malts", base_url="http://localhost", headers={"Origin": "https://evil.example"})
    assert "Access-Control-Allow-Origin" not in answer.headers
    assert answer.headers["Cross-Origin-Resource-Policy"] == "same-origin"
    assert answer.headers["X-Content-Type-Options"] == "nosniff"


def test_the_description_is_valid_openapi_and_leads_to_answers(client: FlaskClient) -> None:
    """Checked by openapi-spec-validator against OpenAPI 3.1."""
    found = get(client, "/openapi.json")
    validate(found)
    assert found["info"] == describe()["info"]
    for path in found["paths"]:
        real = path.replace("{id}", "x").replace("{batch}", "B1")
        assert client.get(real, base_url="http://localhost").status_code in (200, 400, 404)


def test_answers_follow_the_store(filled: Fill) -> None:
    folder = filled(malt(1))
    client = make_app(folder).test_client()
    assert get(client, "/v1/malts")["malts"][0]["batch"] == "B1"
    filled(malt(2, "2025-02-01"))
    assert get(client, "/v1/malts")["malts"][0]["batch"] == "B2"


def test_a_reissued_certificate_takes_the_place_of_the_earlier_one(filled: Fill) -> None:
    first = analysis(figure("moisture", 4.0), figure("friability", 80), batch="B1", day="2025-01-01")
    folder = filled(first)
    current = Current(folder)
    assert current.get()[1] == (first,)
    again = analysis(figure("moisture", 4.0), figure("friability", 90), batch="B1", day="2025-01-09")
    filled(again)
    assert current.get()[1] == (again,)
    assert load_analyses(folder) == (again,)


def test_an_empty_store_is_an_empty_answer(filled: Fill) -> None:
    client = make_app(filled()).test_client()
    assert get(client, "/v1/malts")["malts"] == []
    assert get(client, "/v1/analyses")["analyses"] == []


def test_a_store_that_is_gone_is_said(filled: Fill) -> None:
    folder = filled(malt(1))
    client = make_app(folder).test_client()
    for path in folder.iterdir():
        path.unlink()
    assert str(folder / FILE_NAME) in get(client, "/v1/malts", 503)["message"]
    with pytest.raises(WriteError):
        load_analyses(folder)


def test_a_reader_cannot_write(filled: Fill) -> None:
    with ReadOnlyStore(filled(malt(1))) as store, pytest.raises(sqlite3.OperationalError, match="readonly"):
        store.connection.execute("DELETE FROM analyses")


@contextmanager
def serving(folder: Path) -> Iterator[int]:
    server = make_server("127.0.0.1", 0, make_app(folder), threaded=True)
    thread = threading.Thread(target=server.serve_forever)
    thread.start()
    try:
        yield server.server_port
    finally:
        server.shutdown()
        thread.join()
        server.server_close()


def test_fifty_readers_while_the_store_is_written(filled: Fill) -> None:
    """Every answer is whole and as new as the store was when it was asked for."""
    folder = filled(malt(0, "2025-01-01"))
    written = [0]

    def ask(number: int) -> list[tuple[int, int]]:
        seen: list[tuple[int, int]] = []
        for _ in range(6):
            before = written[0]
            connection = http.client.HTTPConnection("127.0.0.1", port, timeout=60)
            connection.request("GET", "/v1/malts")
            answer = connection.getresponse()
            body = json.loads(answer.read())
            connection.close()
            assert answer.status == 200
            seen.append((before, int(body["malts"][0]["batch"].removeprefix("B"))))
        return seen

    def write() -> None:
        with Store(folder) as store:
            for number in range(1, 60):
                put(store, malt(number, f"2025-{1 + number // 28:02d}-{1 + number % 28:02d}"))
                written[0] = number

    with serving(folder) as port, ThreadPoolExecutor(51) as pool:
        writer = pool.submit(write)
        answers = list(pool.map(ask, range(50)))
        writer.result()
    assert all(before <= shown for seen in answers for before, shown in seen)
    assert written[0] == 59


def test_the_command_answers_and_says_where(filled: Fill) -> None:
    command = [sys.executable, "-m", "importer", "serve", "--store", str(filled(malt(1))), "--port"]
    with subprocess.Popen([*command, "0"], stderr=subprocess.PIPE, text=True) as server:
        try:
            assert server.stderr is not None
            told = server.stderr.readline()
            (port,) = re.findall(r"http://127\.0\.0\.1:(\d+)/v1/malts,", told)
            with urlopen(f"http://127.0.0.1:{port}/v1/malts", timeout=30) as answer:
                assert json.load(answer)["malts"][0]["batch"] == "B1"
            second = subprocess.run([*command, port], capture_output=True, text=True, timeout=60)
            assert second.returncode == 2
            assert f"Port {port} cannot be used" in second.stderr
            server.send_signal(signal.SIGINT)
            assert server.wait(30) == 0
            assert server.stderr.read() == "Ended.\n"
        finally:
            server.kill()
