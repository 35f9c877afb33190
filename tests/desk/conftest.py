"""A desk over a store of drawn sheets, asked without a browser."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import pytest
from flask.testing import FlaskClient

from importer.desk.app import create_app
from importer.desk.guarding import Gate
from importer.store.corrections import Case, load
from importer.store.ledger import Store

OWN = {"Origin": "http://localhost", "Sec-Fetch-Site": "same-origin"}


@dataclass(frozen=True)
class Desk:
    """A desk and somebody at it, who has opened it with its token and said a name."""

    folder: Path
    client: FlaskClient
    gate: Gate
    app: Any

    def text(self, address: str, status: int = 200) -> str:
        answer = self.client.get(address)
        assert answer.status_code == status, answer.get_data(as_text=True)
        return str(answer.get_data(as_text=True))

    def say(self, address: str, status: int = 303, **form: str) -> Any:
        answer = self.client.post(address, data=form, headers=OWN)
        assert answer.status_code == status, answer.get_data(as_text=True)
        return answer

    def revision(self, address: str) -> str:
        found = re.search(r'name="revision" value="(\d+)"', self.text(address))
        assert found
        return found[1]

    def done(self) -> None:
        """Waits for what goes on behind the back of whoever works at the desk."""
        self.app.extensions["follower"].done()


@pytest.fixture
def open_desk() -> Callable[[Path], Desk]:
    def opened(folder: Path, name: str = "Anna Holt") -> Desk:
        gate = Gate()
        app = create_app(folder, gate)
        client = app.test_client()
        assert client.get(f"/?token={gate.token}").status_code == 303
        assert client.post("/who", data={"name": name}, headers=OWN).status_code == 303
        return Desk(folder, client, gate, app)

    return opened


@pytest.fixture
def case_in() -> Iterator[Callable[[Path, str], tuple[Store, Case]]]:
    """The analysis of a batch, with its store."""
    stores: list[Store] = []

    def found(folder: Path, batch: str = "N-1041") -> tuple[Store, Case]:
        store = Store(folder)
        stores.append(store)
        (identity,) = store.connection.execute("SELECT id FROM analyses WHERE batch = ?", (batch,)).fetchone()
        return store, load(store, identity)

    yield found
    for store in stores:
        store.close()
