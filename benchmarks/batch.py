"""`batch` and `compare` in a large store, against reading the whole of it for the same answer.

    .venv/bin/python benchmarks/batch.py [--analyses 5000] [--store FOLDER]

The store is that of benchmarks/desk.py: 50 malts of 10 suppliers, a hundred batches of each where there are 5,000.
Times are of the processor, within one process.
"""

from __future__ import annotations

import argparse
import contextlib
import io
import statistics
import sys
import tempfile
import time
from collections.abc import Callable
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[1]))

from benchmarks.desk import fill
from importer import batch_meaning, compare, load_analyses
from importer.commands import deciding
from importer.store.ledger import FILE_NAME

ROUNDS = 7


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--analyses", type=int, default=5_000)
    parser.add_argument("--store", type=Path, help="keep the store there, or use the one that is there")
    asked = parser.parse_args()
    with tempfile.TemporaryDirectory() as scratch:
        folder = asked.store or Path(scratch, "store")
        if not (folder / FILE_NAME).is_file():
            fill(folder, Path(scratch), asked.analyses, 0)
        measure(folder, asked.analyses)


def measure(folder: Path, count: int) -> None:
    """Each command beside the same from everything that is stored."""
    names = [f"N-{100_000 + number}" for number in (count - 1, count - 51)]

    def whole(number: int) -> list[object]:
        analyses = load_analyses(folder)
        chosen = [a for a in analyses if a.header["batch"].value in names[:number]]
        return [batch_meaning(chosen[0], analyses) if number == 1 else compare(chosen)]

    for number, command in ((1, deciding.batch), (2, deciding.compare)):
        request = deciding.Request(tuple(names[:number]), folder, as_json=True)
        own = median(lambda: command(request))  # noqa: B023
        everything = median(lambda: whole(number))  # noqa: B023
        print(
            f"{command.__name__}: {1000 * own:.0f} ms; from the whole store {1000 * everything:.0f} ms, "
            f"{everything / own:.1f} times as long"
        )


def median(action: Callable[[], object]) -> float:
    """Seconds of processor time, after a first time that loads the mappings."""
    taken: list[float] = []
    for _ in range(ROUNDS + 1):
        began = time.process_time()
        with contextlib.redirect_stdout(io.StringIO()):
            action()
        taken.append(time.process_time() - began)
    return statistics.median(taken[1:])


if __name__ == "__main__":
    main()
