"""How well pictures of pages are read: figures on which both readers agree, right and wrong, for each kind of picture.

    python benchmarks/scans_reading.py [--seeds 100-111] [--classes phone,fax] [--details FILE]

Tables are invented and drawn in whatever faces are installed. A figure counts as *agreed* where the main reading and
a second reading of the same place have the same value and sign of bound; agreed and wrong must be next to none.
"""

from __future__ import annotations

import argparse
import json
import re
import sys
import time
from collections import Counter
from pathlib import Path

import numpy as np

sys.path.insert(0, str(Path(__file__).resolve().parent.parent))

from importer.intake.picture import open_pictures, read_picture
from importer.words import Page
from tests.scans import degrade, tables

NUMBER = r"-?(?:0|[1-9]\d*|0[.,]\d+|[1-9]\d*[.,]\d+)"
FIGURE = re.compile(rf"(<|>|≤|≥|max\.?|min\.?)?\s*({NUMBER})(?:\s*[-–]\s*({NUMBER}))?")


def value(text: str) -> tuple[str, float, float | None] | None:
    """Bound, value and upper end of a printed result, or None for what is no figure."""
    text = text.strip().replace("−", "-").replace("—", "-")
    found = FIGURE.fullmatch(text)
    if not found:
        return None
    low, high = (float(end.replace(",", ".")) if end else None for end in found.group(2, 3))
    return (found.group(1) or "").rstrip("."), low or 0.0, high


def fitted(drawn: tables.Drawn, page: Page) -> np.ndarray | None:
    """The affine map from the drawn page (pixels) to the read one (points), from words that occur once on both."""
    known: Counter[str] = Counter()
    where: dict[str, tuple[float, float]] = {}
    for cell in drawn.cells:
        if " " not in cell.text and len(cell.text) >= 4:
            known[cell.text] += 1
            where[cell.text] = ((cell.box[0] + cell.box[2]) / 2, (cell.box[1] + cell.box[3]) / 2)
    read = Counter(word.text for word in page.words)
    found = [
        (where[w.text], (w.box.centre, w.box.middle)) for w in page.words if known[w.text] == 1 and read[w.text] == 1
    ]
    if len(found) < 4:
        return None
    source = np.array([[*a, 1.0] for a, _ in found])
    target = np.array([b for _, b in found])
    keep = np.ones(len(source), dtype=bool)
    for _ in range(4):
        map_, *_ = np.linalg.lstsq(source[keep], target[keep], rcond=None)
        off = np.hypot(*(source @ map_ - target).T)
        keep = off <= max(3.0, 2.5 * float(np.median(off)))
        if keep.sum() < 4:
            return None
    return np.asarray(map_)


def score(drawn: tables.Drawn, page: Page) -> list[dict[str, str]]:
    """What became of every printed result."""
    map_ = fitted(drawn, page)
    rows = []
    for cell in drawn.cells:
        if not cell.is_value:
            continue
        main, second, flagged = "", [], False
        if map_ is not None:
            x0, top = np.array([cell.box[0] - 10, cell.box[1] - 6, 1.0]) @ map_
            x1, bottom = np.array([cell.box[2] + 10, cell.box[3] + 6, 1.0]) @ map_
            main = " ".join(
                w.text
                for w in sorted(page.words, key=lambda w: w.x0)
                if x0 <= w.box.centre <= x1 and top <= w.box.middle <= bottom
            )
            second = [
                r.text
                for r in sorted(page.second, key=lambda r: r.box.x0)
                if min(r.box.x1, x1) - max(r.box.x0, x0) > 0.5 * min(r.box.width, x1 - x0)
                and top <= r.box.middle <= bottom
            ]
            flagged = any(min(b.x1, x1) > max(b.x0, x0) and top <= b.middle <= bottom for b in page.lost)
        found = kind(cell.text, main, second)
        if flagged and found in ("agreed", "AGREED-WRONG"):
            found = {"agreed": "right-held", "AGREED-WRONG": "wrong-held"}[found]
        rows.append({"truth": cell.text, "main": main, "second": " ".join(second), "kind": found})
    return rows


def kind(truth: str, main: str, second: list[str]) -> str:
    printed, first = value(truth), value(main)
    others = [value(" ".join(second))]
    if printed is None:
        return "text" if first is None or first not in others else "AGREED-WRONG"
    if first is not None and first in others:
        return "agreed" if first == printed else "AGREED-WRONG"
    if first == printed:
        return "main-right"
    if printed in others:
        return "second-right"
    return "nothing" if not main and not any(second) else "neither"


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--seeds", default="100-105")
    parser.add_argument("--classes", default=",".join(degrade.CLASSES))
    parser.add_argument("--details", default="")
    options = parser.parse_args()
    first, last = map(int, options.seeds.split("-"))
    details: list[str] = []
    total: Counter[str] = Counter()
    print(f"{'class':12} figures  agreed  WRONG  held(right wrong)  main  second  neither  nothing  doubted  s/page")
    for name in options.classes.split(","):
        counts: Counter[str] = Counter()
        doubted = 0
        for seed in range(first, last + 1):
            drawn = tables.draw(seed)
            data = degrade.stored(degrade.degrade(drawn.image, name, seed))
            began = time.perf_counter()
            for picture in open_pictures(data, f"{name}.tif"):
                page = read_picture(picture.image, picture.number, picture.dpi)
            counts["ms"] += round(1000 * (time.perf_counter() - began))
            doubted += page.doubt is not None
            for row in score(drawn, page):
                key = row["kind"] if page.doubt is None else "doubted-" + row["kind"]
                counts[key] += 1
                details.append(json.dumps({"class": name, "seed": seed, "doubt": bool(page.doubt), **row}) + "\n")
        if options.details:
            Path(options.details).write_text("".join(details), encoding="utf-8")
        pages = last - first + 1
        figures = sum(n for k, n in counts.items() if k not in ("ms", "text"))
        total.update(counts)
        print(
            f"{name:12} {figures:7} {100 * counts['agreed'] / max(1, figures):6.1f}% {counts['AGREED-WRONG']:5} "
            f"{counts['right-held']:10} {counts['wrong-held']:6} "
            f"{counts['main-right']:6} {counts['second-right']:6} {counts['neither']:7} {counts['nothing']:8} "
            f"{doubted:5}/{pages} {counts['ms'] / 1000 / pages:7.2f}",
            flush=True,
        )
    print(dict(total))


if __name__ == "__main__":
    main()
