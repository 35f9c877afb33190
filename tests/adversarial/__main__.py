"""Shows what is read from the misleading sheets: ``python -m tests.adversarial [--save FOLDER] [--all] [NAME...]``."""

from __future__ import annotations

import argparse
import tempfile
from pathlib import Path

from importer import read_sheet
from tests.adversarial.collection import SHEETS
from tests.adversarial.paper import draw
from tests.adversarial.verdict import judge


def main() -> None:
    parser = argparse.ArgumentParser(prog="python -m tests.adversarial")
    parser.add_argument("names", nargs="*", help="all sheets if none is named")
    parser.add_argument("--save", type=Path, help="keep the sheets in this folder")
    parser.add_argument("--all", action="store_true", help="the reasons of each review as well")
    options = parser.parse_args()
    folder = options.save or Path(tempfile.mkdtemp())
    folder.mkdir(exist_ok=True)
    totals = dict.fromkeys(("wrong", "lost", "mute", "needless"), 0)
    accepted = 0
    for name in options.names or SHEETS:
        case = SHEETS[name]
        file = folder / f"{name}.{case.form}"
        file.write_bytes(draw(case))
        verdict = judge(case, read_sheet(file))
        accepted += verdict.accepted
        for kind in totals:
            found = getattr(verdict, kind)
            totals[kind] += len(found)
            for text in found:
                print(f"{kind:8} {name}: {text}")
        if options.all:
            for text in verdict.reasons:
                print(f"reason   {name}: {text}")
    print(
        f"{len(options.names or SHEETS)} sheets, {accepted} accepted;", ", ".join(f"{n} {k}" for k, n in totals.items())
    )


if __name__ == "__main__":
    main()
