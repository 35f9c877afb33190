"""How long the review desk takes for a step: with 200 figures waiting, in a store of 20,000 analyses.

    .venv/bin/python benchmarks/desk.py [--analyses 20000] [--store FOLDER]

Server work is the time that the desk itself takes for a request, without network and browser. Loads over HTTP are
given as ratios to a static file from the same server in the same run.
"""

from __future__ import annotations

import argparse
import hashlib
import re
import statistics
import sys
import tempfile
import threading
import time
import urllib.request
from collections.abc import Callable
from pathlib import Path
from typing import TypeVar

sys.path.insert(0, str(Path(__file__).resolve().parents[1]))

from waitress.server import create_server

from importer.desk.app import create_app
from importer.desk.guarding import Gate
from importer.intake.parcel import Item
from importer.kept import KeptSheet
from importer.models import Analysis
from importer.pipeline import read_and_keep
from importer.store.ledger import FILE_NAME, Delivery, Store
from importer.store.schema import transaction
from tests.desk.sheets import SOUND, changed, draw

T = TypeVar("T")
OWN = {"Origin": "http://localhost", "Sec-Fetch-Site": "same-origin"}
SUPPLIERS, MALTS = 10, 5
ROUNDS = 40


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--analyses", type=int, default=20_000)
    parser.add_argument("--waiting", type=int, default=200, help="figures that wait; each sheet in doubt has one")
    parser.add_argument("--store", type=Path, help="keep the store there, or use the one that is there")
    asked = parser.parse_args()
    with tempfile.TemporaryDirectory() as scratch:
        folder = asked.store or Path(scratch, "store")
        if not (folder / FILE_NAME).is_file():
            fill(folder, Path(scratch), asked.analyses, asked.waiting)
        with Store(folder):  # one connection stays open, as it does while the desk is served
            measure(folder)


def fill(folder: Path, scratch: Path, analyses: int, waiting: int) -> None:
    """A store of sound sheets, and of sheets with one figure in doubt each."""
    folder.mkdir(parents=True, exist_ok=True)
    sound = read_and_keep(draw(scratch / "sound.pdf", SOUND))
    doubtful = [
        read_and_keep(draw(scratch / f"{n}.pdf", rows))
        for n, rows in enumerate((changed("Colour", "5.2", unit=""), changed("Friability", "18")))
    ]
    began = time.perf_counter()
    with Store(folder, durable=False) as store, transaction(store.connection):
        for number in range(analyses):
            sheet = doubtful[number % 2] if number < waiting else sound
            put(store, sheet, number)
    print(f"{analyses} analyses stored in {time.perf_counter() - began:.0f} s")


def put(store: Store, sheet: KeptSheet, number: int) -> None:
    """One sheet under another content, supplier, malt, batch and day."""
    data = f"content {number}".encode()
    item = Item(name=f"sheet-{number}.pdf", data=data, sha256=hashlib.sha256(data).hexdigest(), kind="sheet")
    delivery = Delivery(Path(f"/nowhere/{item.name}"), len(item.data), 0, "bulk", item)
    (analysis,) = sheet.analyses
    texts = {"supplier": f"Malting {number % SUPPLIERS}", "malt": f"Pale Ale Malt {number // SUPPLIERS % MALTS}"}
    texts |= {"batch": f"N-{100_000 + number}", "analysed_on": f"20{10 + number % 15}-{1 + number % 12:02}-11"}
    header = {k: f.model_copy(update={"value": texts.get(k, f.value)}) for k, f in analysis.header.items()}
    made: Analysis = analysis.model_copy(
        update={
            "id": f"{item.sha256[:16]}-1",
            "source": analysis.source.model_copy(update={"file": item.name, "sha256": item.sha256}),
            "header": header,
        }
    )
    store.record(delivery, {item.sha256: sheet.model_copy(update={"analyses": (made,)})})


def measure(folder: Path) -> None:
    """Requests to the desk itself, then over HTTP."""
    gate = Gate()
    app = create_app(folder, gate)
    client = app.test_client()
    client.get(f"/?token={gate.token}")
    client.post("/who", data={"name": "Anna Holt"}, headers=OWN)
    page = client.get("/").get_data(as_text=True)
    print(re.sub(r"<[^>]+>", "", page.partition('<p class="lead">')[2].partition("<a")[0]).strip())
    first = re.search(r'href="(/sheet/[^"]+)"', page)
    assert first
    step = str(client.get(first[1]).headers["Location"])
    client.get(step)
    report("server work: the list", timed(lambda: client.get("/"), ROUNDS))
    report("server work: show a figure", timed(lambda: client.get(step), ROUNDS))
    shown, saved, address = Times(), Times(), step
    for _ in range(ROUNDS):
        text = shown.of(lambda: client.get(address).get_data(as_text=True))  # noqa: B023
        revision = re.search(r'name="revision" value="(\d+)"', text)
        assert revision
        form = {"revision": revision[1], "action": "accept"}
        answer = saved.of(lambda: client.post(address, data=form, headers=OWN))  # noqa: B023
        assert answer.status_code == 303
        address = answer.headers["Location"].partition("?")[0]
        if address == "/":
            break
        app.extensions["follower"].done()
    report("server work: accept, save, find the next", saved)
    report("server work: show the next", shown)
    report("server work of a whole step", saved.plus(shown))
    over_http(app, client.get_cookie(gate.cookie).value, gate.cookie, address if address != "/" else step)


def over_http(app: object, value: str, cookie: str, step: str) -> None:
    """Loads from the server that users get, each beside a static file."""
    server = create_server(app, host="127.0.0.1", port=0, threads=6, ident=None)
    threading.Thread(target=server.run, daemon=True).start()
    home = f"http://127.0.0.1:{server.effective_port}"

    def load(address: str) -> Callable[[], bytes]:
        asked = urllib.request.Request(home + address, headers={"Cookie": f"{cookie}={value}; onebasis-reviewer=Anna"})
        return lambda: urllib.request.urlopen(asked, timeout=60).read()

    static = timed(load("/static/desk.css"), ROUNDS)
    report("HTTP: a static file", static)
    for name, address in (("the list", "/"), ("a figure", step)):
        taken = timed(load(address), ROUNDS)
        report(f"HTTP: {name}", taken)
        print(f"    {statistics.median(taken.clock) / statistics.median(static.clock):.1f} × a static file")


class Times:
    """What actions took: by the clock, and of the processor's time (which a busy machine does not blur)."""

    def __init__(self) -> None:
        self.clock: list[float] = []
        self.processor: list[float] = []

    def of(self, action: Callable[[], T]) -> T:
        """Does it and notes what it took."""
        clock, processor = time.perf_counter(), time.thread_time()
        result = action()
        self.clock.append(time.perf_counter() - clock)
        self.processor.append(time.thread_time() - processor)
        return result

    def plus(self, other: Times) -> Times:
        """Both, one after the other."""
        both = Times()
        both.clock = [a + b for a, b in zip(self.clock, other.clock, strict=True)]
        both.processor = [a + b for a, b in zip(self.processor, other.processor, strict=True)]
        return both


def timed(action: Callable[[], object], rounds: int) -> Times:
    taken = Times()
    action()
    for _ in range(rounds):
        taken.of(action)
    return taken


def report(name: str, taken: Times) -> None:
    worst = sorted(taken.clock)[max(0, round(0.95 * len(taken.clock)) - 1)]
    clock, processor = statistics.median(taken.clock), statistics.median(taken.processor)
    own = "" if name.startswith("HTTP") else f" (processor {1000 * processor:.1f})"  # the server is another thread
    print(f"{name}: median {1000 * clock:.1f} ms{own}, 95 % within {1000 * worst:.1f} ms")


if __name__ == "__main__":
    main()
