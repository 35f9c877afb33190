"""`serve` under many readers at once, alone and while `bulk` writes: how long an answer takes, p99 against p50.

    .venv/bin/python benchmarks/serve.py --readers 50 --seconds 10

Sheets are those of tests/year. Half of them are in the store before; the other half is written while the readers read.
Each request is a connection of its own, as a spreadsheet makes it.
"""

from __future__ import annotations

import argparse
import http.client
import shutil
import statistics
import subprocess
import sys
import tempfile
import threading
import time
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[1]))

from tests.year.sheets import lay_out

PORT = 8643
PATHS = ("/v1/malts", "/v1/malts.csv", "/v1/analyses?limit=20")


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--readers", type=int, default=50)
    parser.add_argument("--seconds", type=float, default=10.0)
    asked = parser.parse_args()
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        lay_out(folder)
        months = sorted((folder / "sheets").iterdir())
        (folder / "later").mkdir()
        for month in months[len(months) // 2 :]:
            shutil.move(month, folder / "later" / month.name)
        store = folder / "store"
        _run("bulk", str(folder / "sheets"), "--store", str(store))
        server = _start("serve", "--store", str(store), "--port", str(PORT))
        try:
            _wait()
            print(f"alone:            {_measure(asked.readers, asked.seconds)}")
            writer = _start("bulk", str(folder / "later"), "--store", str(store), "--workers", "1")
            print(f"while bulk writes: {_measure(asked.readers, asked.seconds, writer)}")
            writer.wait()
        finally:
            server.terminate()
            server.wait()


def _run(*arguments: str) -> None:
    subprocess.run([sys.executable, "-m", "importer", *arguments], check=True, capture_output=True)


def _start(*arguments: str) -> subprocess.Popen[bytes]:
    return subprocess.Popen([sys.executable, "-m", "importer", *arguments], stderr=subprocess.DEVNULL)


def _wait() -> None:
    for _ in range(100):
        try:
            _ask("/")
        except OSError:
            time.sleep(0.1)
        else:
            return
    raise SystemExit("serve did not start")


def _ask(path: str) -> tuple[int, bytes]:
    connection = http.client.HTTPConnection("127.0.0.1", PORT, timeout=60)
    try:
        connection.request("GET", path)
        answer = connection.getresponse()
        return answer.status, answer.read()
    finally:
        connection.close()


def _measure(readers: int, seconds: float, writer: subprocess.Popen[bytes] | None = None) -> str:
    """All readers ask as fast as they are answered; with a writer, only as long as it writes."""
    times: list[float] = []
    faults: list[str] = []
    end = time.monotonic() + seconds
    start = threading.Barrier(readers)

    def read(number: int) -> None:
        start.wait()
        turn = number
        while time.monotonic() < end and (writer is None or writer.poll() is None):
            begun = time.perf_counter()
            try:
                status, body = _ask(PATHS[turn % len(PATHS)])
                if status != 200 or not body:
                    faults.append(f"status {status}")
            except OSError as error:
                faults.append(str(error))
            times.append(time.perf_counter() - begun)
            turn += 1

    threads = [threading.Thread(target=read, args=(number,)) for number in range(readers)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    cuts = statistics.quantiles(times, n=100)
    p50, p99 = cuts[49], cuts[98]
    told = f"{len(times)} answers, {len(faults)} faults, p50 {p50 * 1000:.0f} ms, p99 {p99 * 1000:.0f} ms"
    return f"{told}, p99 ÷ p50 {p99 / p50:.2f}" + (f"; first fault: {faults[0]}" if faults else "")


if __name__ == "__main__":
    main()
