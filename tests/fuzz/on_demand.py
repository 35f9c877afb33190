"""The tests of input by chance, for as long as is asked, by a fuzzer that looks for ways through the program.

    python -m tests.fuzz.on_demand TARGET [--seconds 300] [--only WORD]

The tests are the same that run, bounded, with all others: hypothesis makes their values of the bytes that the fuzzer
(atheris) tries, and the fuzzer keeps the bytes that led through new lines of ``importer``, in ``.hypothesis/ways``, for
the next run too. What fails ends the run and is kept in ``.hypothesis`` as well: the next ordinary run of that test
repeats it and makes it small.
"""

from __future__ import annotations

import argparse
import importlib
import os
import sys
import tempfile
import warnings
from collections.abc import Callable
from contextlib import ExitStack
from pathlib import Path

from hypothesis.errors import HypothesisWarning

TARGETS: dict[str, tuple[str, ...]] = {
    "numbers": (
        "fuzz.test_numbers",
        "lexical.test_number_properties",
        "lexical.test_unit_splitting",
        "lexical.test_dates",
    ),
    "labels": ("fuzz.test_labels", "lexical.test_column_heads", "lexical.test_header_captions"),
    "rows": ("fuzz.test_row_grouping",),
    "pdf": ("fuzz.test_pdf_intake",),
    "emails": ("fuzz.test_emails", "store.test_parcels"),
    "spreadsheets": ("fuzz.test_spreadsheets", "intake_source.test_table_file", "intake_source.test_delimited"),
    "requests": ("fuzz.test_review_requests", "fuzz.test_answers"),
}
WAYS = Path(".hypothesis") / "ways"
LONGEST, SLOWEST = 4096, 120  # bytes of one input; seconds from which it is taken for endless
NEEDED = "This needs atheris, which is no part of the project's own set-up: pip install atheris (Linux and macOS)."


def named(target: str, only: str, open_things: ExitStack) -> dict[str, Callable[..., None]]:
    """The tests of a target that hypothesis makes values for, by name; those whose name holds ``only``.

    A module that has to open something first has a function ``prepared``, which is given a folder.
    """
    found: dict[str, Callable[..., None]] = {}
    for name in TARGETS[target]:
        module = importlib.import_module(f"tests.{name}")
        if hasattr(module, "prepared"):
            folder = tempfile.TemporaryDirectory(prefix="onebasis-", ignore_cleanup_errors=True)
            open_things.enter_context(module.prepared(Path(open_things.enter_context(folder))))
        for test_name, test in vars(module).items():
            if test_name.startswith("test_") and hasattr(test, "hypothesis") and only in test_name:
                found[test_name] = test
    return found


def main() -> None:
    """Runs one target until its time is over or something fails."""
    parser = argparse.ArgumentParser(prog="python -m tests.fuzz.on_demand", description=__doc__.partition("\n")[0])
    parser.add_argument("target", choices=sorted(TARGETS))
    parser.add_argument("--seconds", type=int, default=300, help="how long; 300 if nothing is said")
    parser.add_argument("--only", default="", metavar="WORD", help="only tests with this in their name")
    asked = parser.parse_args()
    try:
        import atheris
    except ImportError:
        sys.exit(NEEDED)
    with ExitStack() as open_things:
        with atheris.instrument_imports(include=["importer"]):
            tests = named(asked.target, asked.only, open_things)
        if not tests:
            sys.exit(f"No test of {asked.target} has “{asked.only}” in its name.")
        print("\n".join(tests), file=sys.stderr)
        warnings.simplefilter("error")
        warnings.filterwarnings("ignore", category=HypothesisWarning)
        entries = [test.hypothesis.fuzz_one_input for test in tests.values()]  # type: ignore[attr-defined]

        def one(data: bytes) -> None:
            if data:
                entries[data[0] % len(entries)](data[1:])

        atheris.Setup([sys.argv[0], *_options(asked.seconds, WAYS / asked.target, len(tests))], one)
        atheris.Fuzz()


def _options(seconds: int, ways: Path, tests: int) -> list[str]:
    """What the fuzzer is told. It is given something to begin with: of a few bytes no value can be made."""
    ways.mkdir(parents=True, exist_ok=True)
    for number in range(8 * tests):
        (ways / f"begin-{number}").write_bytes(bytes([number % tests]) + os.urandom(LONGEST // 2))
    limits = (f"-max_total_time={seconds}", f"-max_len={LONGEST}", f"-timeout={SLOWEST}", "-rss_limit_mb=4096")
    return [*limits, "-len_control=0", f"-artifact_prefix={ways.parent}/", str(ways)]


if __name__ == "__main__":
    main()
