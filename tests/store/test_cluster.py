"""Reading on a real Dask cluster on this machine: a scheduler and two workers, each a process of its own."""

from __future__ import annotations

import contextlib
import json
import os
import subprocess
import sys
import time
from collections.abc import Iterator
from pathlib import Path

import pytest

from tests.store.helpers import dump, put
from tests.store.parcels import mail, zipped
from tests.store.standins import READS, sheet

pytest.importorskip("distributed")
ROOT = Path(__file__).parents[2]
BULK = """
import sys
from pathlib import Path
from importer.commands.bulk import Request, bulk
from importer.commands.run import UsageError
try:
    print(bulk(Request(Path(sys.argv[1]), Path(sys.argv[2]), reads=sys.argv[3], scheduler=sys.argv[4] or None)))
except UsageError as error:
    print(error)
"""


@pytest.fixture(scope="module")
def scheduler(tmp_path_factory: pytest.TempPathFactory) -> Iterator[str]:
    folder = tmp_path_factory.mktemp("dask")
    told = folder / "scheduler.json"
    # The workers run elsewhere: what they read must have travelled.
    options = {"cwd": folder, "env": {**os.environ, "PYTHONPATH": str(ROOT)}, "stdout": subprocess.DEVNULL}
    file = ["--scheduler-file", str(told), "--no-dashboard"]
    commands = [
        ["scheduler", *file, "--port", "0", "--host", "127.0.0.1"],
        ["worker", *file, "--nthreads", "1"],
        ["worker", *file, "--nthreads", "1"],
    ]
    with contextlib.ExitStack() as stack:
        for what, *arguments in commands:
            command = [sys.executable, "-m", f"distributed.cli.dask_{what}", *arguments]
            process = subprocess.Popen(command, stderr=subprocess.DEVNULL, **options)  # type: ignore[call-overload]
            stack.callback(process.wait, 20)
            stack.callback(process.terminate)
        end = time.monotonic() + 40
        while not told.exists() or not told.read_text():
            assert time.monotonic() < end
            time.sleep(0.1)
        time.sleep(3)
        yield json.loads(told.read_text())["address"]


def bulk(folder: Path, store: Path, address: str) -> str:
    done = subprocess.run(
        [sys.executable, "-c", BULK, folder, store, READS, address],
        cwd=ROOT, capture_output=True, text=True, timeout=90, check=True,
    )  # fmt: skip
    return done.stdout


def test_a_cluster_gives_the_same_store(scheduler: str, tmp_path: Path) -> None:
    folder = tmp_path / "tree"
    for number in range(10):
        put(folder, f"{number}.pdf", sheet(f"B{number % 7}", moisture=4 + number / 10))
    put(folder, "crash.pdf", sheet("C"))
    put(folder, "m.eml", bytes(mail(("a.pdf", sheet("E")), ("z.zip", zipped(("z.pdf", sheet("Z")))))))
    assert "12 accepted, 0 review, 1 failed" in bulk(folder, tmp_path / "cluster", scheduler)
    bulk(folder, tmp_path / "here", "")
    assert dump(tmp_path / "cluster") == dump(tmp_path / "here")


def test_no_scheduler_there(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    from importer.store import cluster

    put(tmp_path / "tree", "a.pdf", sheet())
    monkeypatch.setattr(cluster, "_PATIENCE", "1s")
    with pytest.raises(cluster.ClusterError, match="no Dask scheduler"), cluster.cluster_readers("tcp://127.0.0.1:9"):
        pass
