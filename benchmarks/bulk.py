"""What bulk import costs: rate, scaling with workers, memory, an unchanged rerun, and a store that grows.

    python benchmarks/bulk.py [--sheets 300] [--scans 0] [--stored 20000]

Sheets are invented and drawn by the test generator; scans are pictures of them. Each number is the ratio to a plain
baseline of the same run where there is one: two workers to one, the last files to the first.
"""

from __future__ import annotations

import argparse
import contextlib
import hashlib
import io
import os
import statistics
import sys
import tempfile
import threading
import time
from collections.abc import Callable
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parent.parent))

import pypdfium2

from importer.commands import bulk
from importer.intake.parcel import unpack
from importer.models import Sheet
from importer.pipeline import read_sheet
from importer.store.ledger import Delivery, Store
from tests.sheets.make import make_sheet

MIB = 1024 * 1024


def draw(folder: Path, sheets: int, scans: int) -> None:
    """Fills a folder with sheets and pictures of sheets, each another one."""
    for kind, count in (("sheet", sheets), ("scan", scans)):  # scans among the sheets: memory must compare alike
        for number in range(count):
            path = folder / f"{number % 12:02}" / f"{kind} {number:05}"
            path.parent.mkdir(parents=True, exist_ok=True)
            if kind == "sheet":
                path.with_suffix(".pdf").write_bytes(make_sheet(number).pdf_bytes)
                continue
            page = pypdfium2.PdfDocument(make_sheet(100_000 + number).pdf_bytes)[0]
            page.render(scale=200 / 72, grayscale=True).to_pil().save(path.with_suffix(".png"))


class Memory:
    """Memory of this process and of the largest reading process, sampled as the import goes."""

    def __init__(self) -> None:
        self.own: list[int] = []
        self.worker: list[int] = []
        self._stop = threading.Event()
        self._thread = threading.Thread(target=self._sample, daemon=True)

    def __enter__(self) -> Memory:
        self._thread.start()
        return self

    def __exit__(self, *_: object) -> None:
        self._stop.set()
        self._thread.join()

    def _sample(self) -> None:
        while not self._stop.wait(0.25):
            self.own.append(_held(os.getpid()))
            # Each thread has the children that it started: the first ones are the main one's, later ones the readers'.
            held = 0
            for children in Path(f"/proc/{os.getpid()}/task").glob("*/children"):
                with contextlib.suppress(OSError):
                    held = max(held, *map(_held, map(int, children.read_text().split())), 0)
            self.worker.append(held)

    def told(self) -> str:
        """The median of the first tenth against that of the last tenth."""
        parts = []
        for name, samples in (("parent", self.own[4:]), ("largest worker", [held for held in self.worker if held][4:])):
            tenth = max(1, len(samples) // 10)
            first, last = statistics.median(samples[:tenth]), statistics.median(samples[-tenth:])
            parts.append(f"{name} {first / MIB:.0f} → {last / MIB:.0f} MB ({last / first:.2f}×)")
        return ", ".join(parts)


def _held(pid: int) -> int:
    with contextlib.suppress(OSError, ValueError, IndexError):
        return int(Path(f"/proc/{pid}/statm").read_text().split()[1]) * os.sysconf("SC_PAGE_SIZE")
    return 0


def _children() -> float:
    """Processor time of the reading processes that have ended, in seconds."""
    times = os.times()
    return times.children_user + times.children_system


def timed(call: Callable[[], object]) -> float:
    """Wall time of a call, its output swallowed."""
    began = time.perf_counter()
    with contextlib.redirect_stdout(io.StringIO()), contextlib.redirect_stderr(io.StringIO()):
        call()
    return time.perf_counter() - began


def growth(folder: Path, stored: int) -> None:
    """The processor time that storing one sheet takes while the store grows."""
    pdf = make_sheet(7).pdf_bytes
    path = folder / "one.pdf"
    path.write_bytes(pdf)
    (pattern, *_) = read_sheet(path).analyses
    times: list[float] = []
    with Store(folder, durable=False) as store:
        for number in range(stored):
            data = number.to_bytes(8, "big")
            sha256 = hashlib.sha256(data).hexdigest()
            header = {
                **pattern.header,
                "batch": next(iter(pattern.header.values())).model_copy(
                    update={"value": f"B{number // 2}", "state": "accepted"}
                ),
            }
            analysis = pattern.model_copy(
                update={
                    "id": f"{sha256[:16]}-1",
                    "header": header,
                    "source": pattern.source.model_copy(update={"sha256": sha256}),
                }
            )
            delivery = Delivery(folder / f"{number}.pdf", 8, number, "bulk", unpack(data, f"{number}.pdf"))
            began = time.process_time()  # of the processor: what else the machine does must not count
            store.record(delivery, {sha256: Sheet(analyses=(analysis,))})
            times.append(time.process_time() - began)
        size = store.path.stat().st_size / MIB
    first, last = statistics.median(times[:200]), statistics.median(times[-200:])
    print(
        f"storing: {first * 1000:.2f} ms a sheet among the first 200, {last * 1000:.2f} ms at {stored} "
        f"({last / first:.2f}×); {size:.0f} MB"
    )


def main() -> None:
    """Runs everything."""
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--sheets", type=int, default=300)
    parser.add_argument("--scans", type=int, default=0)
    parser.add_argument("--stored", type=int, default=20_000)
    options = parser.parse_args()
    with tempfile.TemporaryDirectory() as name:
        base = Path(name)
        tree = base / "tree"
        draw(tree, options.sheets, options.scans)
        count = options.sheets + options.scans
        seconds: dict[int, float] = {}
        for workers in (1, 2):
            request = bulk.Request(tree, base / f"store{workers}", workers=workers)
            own, reading = time.process_time(), _children()
            with Memory() as memory:
                seconds[workers] = timed(lambda request=request: bulk.bulk(request))  # type: ignore[misc]
            print(f"{workers} worker(s): {count / seconds[workers]:.1f} files a second; {memory.told()}")
            own, reading = time.process_time() - own, _children() - reading
            print(
                f"  processor time a file: parent {own / count * 1000:.1f} ms, reading {reading / count * 1000:.1f} ms"
            )
        print(f"two workers to one: {seconds[1] / seconds[2]:.2f}×")
        again = timed(lambda: bulk.bulk(bulk.Request(tree, base / "store2")))
        print(f"unchanged rerun: {count / again:.0f} files a second")
        (base / "growth").mkdir()
        growth(base / "growth", options.stored)


if __name__ == "__main__":
    main()
