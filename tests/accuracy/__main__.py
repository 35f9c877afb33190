"""Makes sheets, reads them and reports: ``python -m tests.accuracy [--kept | --exam | --unseen | --sealed] ...``."""

from __future__ import annotations

import argparse
import json
import sys
import tempfile
import time
from collections.abc import Callable, Iterator, Sequence
from pathlib import Path

from importer.models import Sheet
from tests.accuracy.compare import Comparison, compare
from tests.accuracy.report import summary, tally, wrong_lines
from tests.accuracy.scanned import as_picture, classes
from tests.sheets import kinds, make_sheet
from tests.sheets.exam_make import exam_kinds, make_exam
from tests.sheets.sealed_make import make_sealed, sealed_kinds
from tests.sheets.unseen_make import make_unseen, unseen_kinds

Reader = Callable[[Path], Sheet]


def run(
    read: Reader, count: int, seed: int, kept: bool, layout: str | None = None, language: str | None = None,
    family: str | None = None, exam: bool = False, unseen: bool = False, sealed: bool = False,
    scans: Sequence[str] = (),
) -> Iterator[Comparison]:  # fmt: skip
    """Makes ``count`` sheets, the layout kinds in turn, and compares the reading of each with its truth.

    With ``scans`` each sheet is a picture of one of these kinds, in turn.
    """
    names = sealed_kinds() if sealed else unseen_kinds() if unseen else exam_kinds() if exam else kinds(kept)
    names = [layout] if layout else names
    apart = make_sealed if sealed else make_unseen if unseen else make_exam if exam else None
    with tempfile.TemporaryDirectory() as folder:
        for i in range(count):
            chosen = (seed + i, names[i % len(names)], language, family)
            made = apart(*chosen) if apart else make_sheet(*chosen, kept=kept)
            scan = scans[i % len(scans)] if scans else ""
            path = Path(folder) / f"sheet-{seed + i}.{'tif' if scan else 'pdf'}"
            path.write_bytes(as_picture(made.pdf_bytes, scan, seed + i) if scan else made.pdf_bytes)
            found = compare(made.truth, read(path))
            found.scan = scan
            yield found
            path.unlink()


def _arguments(argv: list[str] | None) -> argparse.Namespace:
    parser = argparse.ArgumentParser("python -m tests.accuracy", description="Measures how well made sheets are read.")
    parser.add_argument(
        "--kept", action="store_true", help="use layouts once kept aside; the words of their heads have been seen"
    )
    parser.add_argument(
        "--exam", action="store_true", help="use a harder set; all of its layouts have been opened by now"
    )
    parser.add_argument("--unseen", action="store_true", help="use sheets that nobody who works on the reading opens")
    parser.add_argument(
        "--sealed", action="store_true", help="use the exam's sheets, of which only counts are looked at"
    )
    parser.add_argument("--reveal", action="store_true", help="with a set that is kept aside: show what was wrong, too")
    parser.add_argument("--count", type=int, default=200, help="how many sheets (200)")
    parser.add_argument("--seed", type=int, default=1, help="number of the first sheet (1)")
    parser.add_argument("--layout", help="one layout kind only")
    parser.add_argument("--language", help="one language only")
    parser.add_argument("--family", help="EBC, IoB, ASBC or iso65 only")
    parser.add_argument("--scans", type=classes, default=[], help="read pictures of them: phone,fax,… or all")
    parser.add_argument("--show-wrong", action="store_true", help="list every wrong figure")
    parser.add_argument("--show-all", action="store_true", help="list missed figures and needless reviews, too")
    parser.add_argument("--out", type=Path, help="write the counts as JSON")
    return parser.parse_args(argv)


def main(argv: list[str] | None = None) -> int:
    """Exit status 1 if anything wrong was accepted, 2 if there is nothing to measure."""
    options = _arguments(argv)
    try:
        from importer import read_sheet
    except ImportError as error:
        print(f"there is no reader yet: {error}", file=sys.stderr)
        return 2
    start = time.process_time()
    chosen = (options.layout, options.language, options.family)
    sets = (options.exam, options.unseen, options.sealed)
    found = list(run(read_sheet, options.count, options.seed, options.kept, *chosen, *sets, options.scans))
    spent = time.process_time() - start
    blind = (options.kept or any(sets)) and not options.reveal
    groups = tally(found)
    by = ("layout",) if blind else ("layout", "language", "family")
    print(summary(groups, (*by, "scan") if options.scans else by))
    print(f"{1000 * spent / max(len(found), 1):.0f} ms of processor time a sheet, making included")
    if blind and (options.show_wrong or options.show_all):
        print("what was wrong on sheets that are kept aside is shown with --reveal only")
    elif options.show_wrong or options.show_all:
        print("\n".join(wrong_lines(found, options.show_all)))
    if options.out:
        data = {g: {name: c.rates() for name, c in counts.items()} for g, counts in groups.items()}
        options.out.write_text(json.dumps(data, indent=1, ensure_ascii=False), encoding="utf-8")
    return 1 if groups["all"]["all"].accepted_wrong else 0


if __name__ == "__main__":
    sys.exit(main())
