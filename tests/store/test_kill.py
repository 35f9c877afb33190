"""kill -9 at any moment: run again, it ends as if nothing had happened. Nothing lost, doubled or filed by half."""

from __future__ import annotations

import json
import os
import random
import shutil
import signal
import subprocess
import sys
from pathlib import Path

import pytest

from tests.store.helpers import contents, dump, put
from tests.store.parcels import compound, mail, outlook, zipped
from tests.store.standins import READS, sheet

ROOT = Path(__file__).parents[2]
pytestmark = pytest.mark.skipif(sys.platform == "win32", reason="there is no kill -9")

RUN = """
import sys
from pathlib import Path
from importer.commands import bulk, inbox
command, folder, store, reads = sys.argv[1], Path(sys.argv[2]), Path(sys.argv[3]), sys.argv[4]
print("loaded", flush=True)
if command == "inbox":
    sys.exit(inbox.inbox(inbox.Request(folder, store, settle=0.02, workers=2, reads=reads)))
sys.exit(bulk.bulk(bulk.Request(folder, store, workers=2, reads=reads)))
"""


def fill(folder: Path, seed: int) -> None:
    """Sheets, the same again, reissued ones, doubtful ones, emails, archives, and what cannot be read."""
    chance = random.Random(seed)
    pool = [
        sheet(f"B{n}", moisture=4.0 + n / 10, state=chance.choice(["accepted", "accepted", "review"])) for n in range(9)
    ]
    pool += [sheet(f"B{n}", moisture=5.0 + n / 10) for n in range(3)]
    for number in range(10):
        put(folder, f"{chance.choice('abc')}/{number}.pdf", chance.choice(pool))
    for number in range(3):
        files = [(f"cert {n}.pdf", chance.choice(pool)) for n in range(3)]
        put(folder, f"m{number}.eml", bytes(mail(*files, forwards=mail(("f.pdf", chance.choice(pool))))))
    put(folder, "o.msg", compound(outlook(("o.pdf", chance.choice(pool)), ("o2.pdf", chance.choice(pool)))))
    put(folder, "none.eml", bytes(mail()))
    put(folder, "notes.txt", b"call the lab")
    put(folder, "z.zip", zipped(*((f"{n}/z.pdf", chance.choice(pool)) for n in range(4))))
    for path in folder.rglob("*"):
        os.utime(path, (1_700_000_000 + len(path.name), 1_700_000_000))


def start(command: str, folder: Path, store: Path, temporary: Path) -> subprocess.Popen[bytes]:
    return subprocess.Popen(
        [sys.executable, "-c", RUN, command, str(folder), str(store), READS],
        cwd=ROOT,
        env={**os.environ, "TMPDIR": str(temporary)},
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
    )


def outcome(base: Path, folder: Path, store: Path) -> str:
    told = {"store": dump(store), "filed": contents(store), "folder": contents(folder)}
    return json.dumps(told, sort_keys=True, ensure_ascii=False, default=repr, indent=1).replace(str(base), "BASE")


def kills_until_done(command: str, base: Path, chance: random.Random, most: int) -> int:
    """Kills run after run; the last one may end by itself. Returns how many were killed."""
    killed = 0
    while True:
        process = start(command, base / "in", base / "store", base / "tmp")
        assert process.stdout is not None
        assert process.stdout.readline() == b"loaded\n"
        if killed < most:
            try:
                process.wait(chance.uniform(0.0, 1.0 if command == "inbox" else 0.5))
            except subprocess.TimeoutExpired:
                process.send_signal(signal.SIGKILL)
                process.communicate()
                killed += 1
                continue
        _, err = process.communicate(timeout=60)
        assert process.returncode in (0, 1), err.decode()
        assert b"Traceback" not in err
        return killed


@pytest.mark.timeout(1800)
@pytest.mark.parametrize("command", ["inbox", "bulk"])
@pytest.mark.parametrize("kills", [3, pytest.param(120, marks=pytest.mark.slow)])
def test_an_interrupted_run_ends_like_an_undisturbed_one(tmp_path: Path, command: str, kills: int) -> None:
    chance = random.Random(f"{command} {kills}")
    killed, seed = 0, 0
    while killed < kills:
        seed += 1
        outcomes = []
        template = tmp_path / f"template{seed}"
        fill(template, seed)
        for name in ("undisturbed", "killed"):
            base = tmp_path / f"{name}{seed}"
            shutil.copytree(template, base / "in")
            for part in ("store", "tmp"):
                (base / part).mkdir()
            sheets = set(contents(base / "in").values())
            killed += kills_until_done(command, base, chance, 0 if name == "undisturbed" else min(kills, 12))
            outcomes.append(outcome(base, base / "in", base / "store"))
            if command == "inbox":
                assert contents(base / "in") == {}
                assert sheets <= set(contents(base / "store").values())
        assert outcomes[0] == outcomes[1]
    print(f"{killed} kills of {command} in {seed} rounds")
