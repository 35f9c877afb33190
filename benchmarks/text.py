"""Processor time from a PDF with text to normalised figures, against pdfplumber's words alone on the same page.

The least of several rounds is taken, as the documentation of ``timeit`` advises: what is above it is other work.

    python benchmarks/text.py [--rounds 15]

Both are warm: one round before counting. The ratio is what counts; below 1 the whole way is cheaper.
"""

from __future__ import annotations

import argparse
import io
import statistics
import sys
import time
from collections.abc import Callable, Sequence
from functools import partial
from pathlib import Path

import pdfplumber

sys.path.insert(0, str(Path(__file__).resolve().parent.parent))

from importer import read_sheet

DEMO = Path(__file__).resolve().parent.parent / "fixtures" / "demo"


def words_alone(data: bytes) -> int:
    with pdfplumber.open(io.BytesIO(data)) as document:
        return sum(len(page.extract_words()) for page in document.pages)


def costs(works: Sequence[Callable[[], object]], rounds: int) -> list[float]:
    """The least processor time of a call of each in milliseconds, taken in turn: other work meets all of them."""
    for work in works:
        work()
    times: list[list[float]] = [[] for _ in works]
    for _ in range(rounds):
        for work, taken in zip(works, times, strict=True):
            began = time.process_time()
            work()
            taken.append(1000 * (time.process_time() - began))
    return [min(taken) for taken in times]


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__.partition("\n")[0])
    parser.add_argument("--rounds", type=int, default=15)
    rounds = parser.parse_args().rounds
    ratios = []
    print(f"{'sheet':44} {'words alone':>12} {'whole way':>12} ratio")
    for path in sorted(DEMO.glob("*.pdf")):
        data = path.read_bytes()
        if not words_alone(data):
            continue  # a scan
        plain, whole = costs((partial(words_alone, data), partial(read_sheet, path)), rounds)
        ratios.append(whole / plain)
        print(f"{path.stem:44} {plain:9.1f} ms {whole:9.1f} ms {ratios[-1]:5.2f}")
    print(f"median ratio {statistics.median(ratios):.2f}, worst {max(ratios):.2f}")


if __name__ == "__main__":
    main()
