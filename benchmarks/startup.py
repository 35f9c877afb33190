"""What a start costs: processor time of commands as a ratio to a typer program that does nothing, and what they load.

    python benchmarks/startup.py [--rounds 15]

Each start is a process of its own; the time is that of the process and of the reading process it starts. Commands take
turns, so that what else the machine does falls on all of them alike.
"""

from __future__ import annotations

import argparse
import json
import os
import resource
import statistics
import subprocess
import sys
import tempfile
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
DEMO = ROOT / "fixtures" / "demo"
_APP = "import typer\napp = typer.Typer(add_completion=False, rich_markup_mode=None)\n"
EMPTY = f"{_APP}@app.command()\ndef main() -> None: ...\napp()"
# typer loads pydantic as soon as it has an option to evaluate; with commands, that is before a command's own help.
GROUP = (
    f"{_APP}@app.callback()\ndef main(version: bool = False) -> None: ...\n@app.command()\ndef go() -> None: ...\napp()"
)
PROGRAM = ("-m", "importer")
BASELINE = "an empty typer program, --help"
# Slow to load, and needed by some commands only.
HEAVY = (
    "PIL", "cv2", "dask", "distributed", "flask", "jinja2", "numpy", "onnxruntime", "openpyxl", "pandas", "pyarrow",
    "pydantic", "pypdfium2", "pytesseract", "rapidfuzz", "rapidocr", "rich", "sqlite3", "waitress", "xlrd",
)  # fmt: skip
# Loads the program as its command does, and tells on standard error which heavy modules are there at the end.
TELLING = (
    "import atexit, json, sys\n"
    f"atexit.register(lambda: print(json.dumps(sorted(set({HEAVY!r}) & set(sys.modules))), file=sys.stderr))\n"
    "from importer.cli import main\nmain()"
)


def commands(store: Path) -> dict[str, tuple[str, ...]]:
    """Arguments of each start, by the name it is shown under. ``store`` is an empty folder."""
    sheet = str(DEMO / "quillbrook-pale-ale-Q4127.pdf")
    return {
        "--help": ("--help",),
        "--version": ("--version",),
        "read --help": ("read", "--help"),
        "review --help": ("review", "--help"),
        "serve --help": ("serve", "--help"),
        "report --help": ("report", "--help"),
        "convert 3.5 SRM --to EBC": ("convert", "3.5", "SRM", "--to", "EBC"),
        "label Kolbach": ("label", "Kolbach"),
        "read, a PDF with text": ("read", sheet),
        "read, a CSV": ("read", str(DEMO / "harzbrunn-caramel.csv")),
        "export, nothing stored": ("export", "--store", str(store)),
    }


def children() -> float:
    """Processor seconds of all processes that have ended."""
    spent = resource.getrusage(resource.RUSAGE_CHILDREN)
    return spent.ru_utime + spent.ru_stime


def start(*arguments: str) -> tuple[float, str]:
    """Processor seconds of one start, and what it said on standard error."""
    before = children()
    environment = {**os.environ, "PYTHONPATH": str(ROOT)}
    done = subprocess.run([sys.executable, *arguments], capture_output=True, text=True, env=environment, check=False)
    return children() - before, done.stderr


def loaded(arguments: tuple[str, ...]) -> list[str]:
    """The heavy modules that the program's own process has loaded when it ends; the reading process is another."""
    told = start("-c", TELLING, *arguments)[1].strip().splitlines()
    return list(json.loads(told[-1]))


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__.partition("\n")[0])
    parser.add_argument("--rounds", type=int, default=15)
    rounds = parser.parse_args().rounds
    with tempfile.TemporaryDirectory() as name:
        asked = commands(Path(name))
        starts = {
            "python that does nothing": ("-c", ""),
            BASELINE: ("-c", EMPTY, "--help"),
            "a typer program with a command, go --help": ("-c", GROUP, "go", "--help"),
            **{f"onebasis {name}": (*PROGRAM, *arguments) for name, arguments in asked.items()},
        }
        taken: dict[str, list[float]] = {name: [] for name in starts}
        for number in range(rounds + 1):
            for name, arguments in starts.items():
                spent, _ = start(*arguments)
                if number:  # the first one of each writes the compiled files
                    taken[name].append(1000 * spent)
        heavy = {f"onebasis {name}": loaded(arguments) for name, arguments in asked.items()}
    baseline = taken[BASELINE]
    print(f"{'start':42} {'ms':>7} {'to empty':>9}  loaded of what is heavy")
    for name, times in taken.items():
        ratio = statistics.median(a / b for a, b in zip(times, baseline, strict=True))
        print(f"{name:42} {statistics.median(times):7.0f} {ratio:8.2f}×  {', '.join(heavy.get(name, []))}")


if __name__ == "__main__":
    main()
