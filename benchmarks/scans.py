"""What reading a scanned page costs: processor time as a ratio to one bare Tesseract pass, and peak memory.

    python benchmarks/scans.py [--pages 6] [--values 2] [--rounds 3]

Both are measured in the same run on the same 300 dpi pages: ``tesseract page.png - --psm 6 tsv`` with one thread is
1.0. Of each page and part the least of all rounds counts, since other work on the machine only ever adds. The limit
that the program promises is 2.0.
"""

from __future__ import annotations

import argparse
import math
import os
import resource
import subprocess
import sys
import tempfile
from pathlib import Path

import numpy as np

sys.path.insert(0, str(Path(__file__).resolve().parent.parent))

from importer.intake import scan, second
from importer.intake.cellwise import read_cells
from importer.intake.picture import read_picture
from importer.intake.prepare.page import prepare
from tests.scans import tables

LIMIT = 2.0


def used() -> float:
    """Processor seconds of this process and of the children it has waited for."""
    parts = (resource.getrusage(who) for who in (resource.RUSAGE_SELF, resource.RUSAGE_CHILDREN))
    return sum(part.ru_utime + part.ru_stime for part in parts)


def main() -> int:
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--pages", type=int, default=6)
    parser.add_argument("--values", type=int, default=2, help="columns of results a page")
    parser.add_argument("--rounds", type=int, default=3)
    options = parser.parse_args()
    os.environ["OMP_THREAD_LIMIT"] = "1"
    pages = [tables.draw(700 + index, rows=24, columns=options.values) for index in range(options.pages)]
    read_picture(pages[0].image, 1, 300)  # loads what is loaded once
    least: dict[tuple[str, int], float] = {}

    def timed(name: str, page: int, work: object) -> object:
        before = used()
        result = work()  # type: ignore[operator]
        least[name, page] = min(least.get((name, page), math.inf), used() - before)
        return result

    with tempfile.TemporaryDirectory() as folder:
        for index, page in [pair for _ in range(options.rounds) for pair in enumerate(pages)]:
            path = Path(folder) / f"{index}.png"
            page.image.save(path, dpi=(300, 300))
            bare = ["tesseract", str(path), "-", "--psm", "6", "tsv"]
            timed("bare tesseract", index, lambda bare=bare: subprocess.run(bare, capture_output=True, check=True))
            grey = np.asarray(page.image)
            prepared = timed("preparing", index, lambda grey=grey: prepare(grey, 300, second.upside_down))
            words = timed("main reader", index, lambda p=prepared: scan.read_words(p))
            timed("cell by cell", index, lambda p=prepared, w=words: read_cells(p, w))
            timed("read_picture", index, lambda image=page.image: read_picture(image, 1, 300))
    spent: dict[str, float] = {}
    for (name, _), seconds in least.items():
        spent[name] = spent.get(name, 0.0) + seconds
    base = spent["bare tesseract"]
    figures = sum(cell.is_value for page in pages for cell in page.cells) / len(pages)
    print(f"{len(pages)} pages at 300 dpi, {figures:.0f} results each")
    for name, seconds in spent.items():
        print(f"{name:16} {seconds / len(pages):6.2f} s a page   {seconds / base:5.2f} x")
    for who, name in ((resource.RUSAGE_SELF, "this process"), (resource.RUSAGE_CHILDREN, "tesseract")):
        print(f"peak memory of {name:13} {resource.getrusage(who).ru_maxrss / 1024:6.0f} MiB")
    ratio = spent["read_picture"] / base
    print(f"ratio {ratio:.2f} (limit {LIMIT})")
    return 0 if ratio <= LIMIT else 1


if __name__ == "__main__":
    raise SystemExit(main())
