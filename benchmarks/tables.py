"""onebasis beside general-purpose readers of PDF words and tables: processor time, and figures found right.

    python benchmarks/tables.py [--sheets 60] [--seed 500] [--rounds 5] [--only TEXT]

The sheets are the demo and drawn sheets of every layout in turn, all with text and with known figures; every reader
reads the same ones in the same run, in turn. Extractors that are not installed are skipped with a message; no part of
the program needs them: ``pip install camelot-py img2table`` in an environment that has the program's ``[dev]``.

"At first" is the first reading of a sheet: onebasis remembers labels, and is faster on those that it has met. A process
that is warm has read sheets of other words before.

Extractors know no malt parameters, so what counts as found is generous to them: some row of a table holds all words of
the printed label (without the number of the row) and a cell that starts with the printed value; or some column holds a
cell with the label and a cell that starts with the value. The same rule is applied to what onebasis gives out; a second
table tells what of that is right in parameter, unit and value on the basis, and accepted.
"""

from __future__ import annotations

import argparse
import io
import re
import resource
import statistics
import sys
import tempfile
import time
import warnings
from collections import Counter
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from importlib import import_module
from itertools import zip_longest
from pathlib import Path
from typing import Any

import pdfplumber
import pypdfium2
from pydantic import TypeAdapter

sys.path.insert(0, str(Path(__file__).resolve().parent.parent))

from importer import Sheet, read_sheet
from tests.accuracy.compare import compare, same_value
from tests.sheets import Truth, TruthFigure, kinds, make_sheet

ROOT = Path(__file__).resolve().parent.parent
Table = list[list[str]]
PLAIN = "pdfplumber, words"
OWN = "onebasis, the whole way"
ENOUGH_SECONDS = 0.2  # of one reader on one sheet; a slow one is not repeated
WARMING = 3
VERDICTS = {"right": "accepted and right", "review": "in review", "missed": "lost", "wrong": "accepted and wrong"}
NUMBERING = re.compile(r"^\s*\d+[.)]\s+")  # of a row, no part of its label


@dataclass(slots=True)
class Reader:
    """One way of reading a PDF; ``read`` gives its tables, or None where there are only words."""

    name: str
    read: Callable[[Path], list[Table] | None]
    package: str = ""
    first: list[float] = field(default_factory=list)
    median: list[float] = field(default_factory=list)
    failed: int = 0
    found: Counter[str] = field(default_factory=Counter)


@dataclass(frozen=True, slots=True)
class Drawn:
    """One sheet on disk with what it says. ``kind`` is ``demo`` or ``drawn``."""

    path: Path
    truth: Truth
    kind: str


def words(path: Path) -> None:
    with pdfplumber.open(io.BytesIO(path.read_bytes())) as document:
        for page in document.pages:
            page.extract_words()


def tables_by_lines(path: Path) -> list[Table]:
    return _plumbed(path, {})


def tables_by_text(path: Path) -> list[Table]:
    return _plumbed(path, {"vertical_strategy": "text", "horizontal_strategy": "text"})


def _plumbed(path: Path, settings: dict[str, Any]) -> list[Table]:
    with pdfplumber.open(io.BytesIO(path.read_bytes())) as document:
        found = [table for page in document.pages for table in page.extract_tables(settings)]
    return [[[cell or "" for cell in row] for row in table] for table in found]


def boxes(path: Path) -> None:
    """Every text box of PDFium with its text, nothing made of them."""
    document = pypdfium2.PdfDocument(path.read_bytes())
    try:
        for page in document:
            text = page.get_textpage()
            for number in range(text.count_rects()):
                text.get_text_bounded(*text.get_rect(number))
    finally:
        document.close()


def camelot(flavor: str) -> Callable[[Path], list[Table]]:
    def read(path: Path) -> list[Table]:
        found = import_module("camelot").read_pdf(str(path), pages="all", flavor=flavor)
        return [[[str(cell) for cell in row] for row in table.df.values.tolist()] for table in found]

    return read


def img2table(borderless: bool) -> Callable[[Path], list[Table]]:
    def read(path: Path) -> list[Table]:
        document = import_module("img2table.document").PDF(str(path))
        pages = document.extract_tables(implicit_rows=borderless, borderless_tables=borderless)
        return [
            [[cell.value or "" for cell in row] for row in table.content.values()]
            for tables in pages.values()
            for table in tables
        ]

    return read


def whole_way(path: Path) -> list[Table]:
    return as_tables(read_sheet(path))


def as_tables(sheet: Sheet) -> list[Table]:
    """All that was kept of a sheet, as rows of label and value."""
    rows: Table = []
    for analysis in sheet.analyses:
        rows.extend([row.label, row.value] for row in analysis.unrecognised)
        for figure in analysis.figures:
            printed = [figure.printed, *(beside.printed for beside in figure.also_printed)]
            rows.extend([entry.label, entry.value] for entry in printed if entry)
    return [[row] for row in rows]  # each row a table, so that no column is made of them


def readers(only: str) -> list[Reader]:
    """Those that are installed and hold ``only`` in their name, and the plain one; says which are not installed."""
    wanted = [
        Reader(PLAIN, words),
        Reader(OWN, whole_way),
        Reader("pypdfium2, raw text boxes", boxes),
        Reader("pdfplumber, tables by lines", tables_by_lines),
        Reader("pdfplumber, tables by text", tables_by_text),
        *(
            Reader(f"camelot, {flavor}", camelot(flavor), "camelot")
            for flavor in ("auto", "lattice", "stream", "network", "hybrid")
        ),
        Reader("img2table, with lines", img2table(borderless=False), "img2table"),
        Reader("img2table, also without lines", img2table(borderless=True), "img2table"),
    ]
    wanted = [reader for reader in wanted if only in reader.name or reader.name == PLAIN]
    missing = {reader.package for reader in wanted if reader.package and not _installed(reader.package)}
    return [reader for reader in wanted if reader.package not in missing]


def _installed(package: str) -> bool:
    try:
        import_module(package)
    except ImportError as error:
        print(f"{package} is left out: {error}. To include it: pip install camelot-py img2table")
        return False
    return True


def sheets(folder: Path, count: int, seed: int) -> Iterator[Drawn]:
    """The demo's PDFs with text, then drawn ones."""
    answers = TypeAdapter(Truth)
    for path in sorted((ROOT / "fixtures" / "demo").glob("*.pdf")):
        answer = (ROOT / "fixtures" / "truth" / f"{path.stem}.json").read_bytes()
        if b'"reading": "text"' in answer:
            yield Drawn(path, answers.validate_json(answer), "demo")
    for number in range(count):
        yield draw(folder, seed + number, number)


def draw(folder: Path, seed: int, number: int) -> Drawn:
    names = kinds()
    made = make_sheet(seed, names[number % len(names)])
    path = folder / f"{seed}.pdf"
    path.write_bytes(made.pdf_bytes)
    return Drawn(path, made.truth, "drawn")


def figures(truth: Truth) -> list[TruthFigure]:
    """Printed results; limits without a result and the same result in a second unit are not asked for."""
    return [figure for analysis in truth.analyses for figure in analysis.figures if figure.value and not figure.also]


def tokens(text: str) -> set[str]:
    return set(re.findall(r"\w+", text.casefold()))


def found_in(figure: TruthFigure, tables: list[Table]) -> bool:
    """Whether label and value stand in one row, or under each other, in some table."""
    label = tokens(NUMBERING.sub("", figure.label))
    for table in tables:
        for row in table:
            if label <= tokens(" ".join(row)) and any(same_value(cell, figure.value) for cell in row):
                return True
        for column in zip_longest(*table, fillvalue=""):
            if any(label <= tokens(cell) for cell in column) and any(same_value(c, figure.value) for c in column):
                return True
    return False


def used() -> float:
    """Processor seconds of this process, all its threads, and the children it has waited for."""
    parts = (resource.getrusage(who) for who in (resource.RUSAGE_SELF, resource.RUSAGE_CHILDREN))
    return sum(part.ru_utime + part.ru_stime for part in parts)


def measure(reader: Reader, sheet: Drawn, rounds: int) -> None:
    """Times a reader on a sheet and counts what it found there."""
    taken: list[float] = []
    tables: list[Table] | None = []
    while len(taken) < rounds and sum(taken) < ENOUGH_SECONDS:
        began = used()
        try:
            tables = reader.read(sheet.path)
        except Exception as error:
            reader.failed += 1
            print(f"{reader.name} failed on {sheet.path.name}: {type(error).__name__}: {error}", file=sys.stderr)
            break
        finally:
            taken.append(used() - began)
    reader.first.append(1000 * taken[0])
    reader.median.append(1000 * statistics.median(taken))
    if tables is not None:
        reader.found[sheet.kind] += sum(found_in(figure, tables) for figure in figures(sheet.truth))


def judged(sheet: Drawn) -> Counter[str]:
    """What became of each printed result: right, review, wrong, missed."""
    outcomes = compare(sheet.truth, read_sheet(sheet.path)).outcomes
    counts = Counter(o.verdict for o in outcomes if o.printed and not o.phantom)
    return counts + Counter(wrong=sum(o.phantom and o.verdict == "wrong" for o in outcomes))


def report(all_readers: list[Reader], asked: Counter[str]) -> None:
    """The table of readers."""
    plain = next(reader for reader in all_readers if reader.name == PLAIN)
    heads = [f"found, {kind} ({asked[kind]})" for kind in asked]
    print(
        f"\n{'reader':32} {'ms a sheet':>10} {'at first':>9} {'to words':>9} {'at first':>9} "
        + " ".join(f"{h:>20}" for h in heads)
    )
    for reader in all_readers:
        ratio = statistics.median(a / b for a, b in zip(reader.median, plain.median, strict=True))
        first = statistics.median(a / b for a, b in zip(reader.first, plain.first, strict=True))
        shares = [
            f"{reader.found[k]} = {100 * reader.found[k] / n:.1f} %" if reader.found else "–" for k, n in asked.items()
        ]
        told = " ".join(f"{share:>20}" for share in shares)
        failures = f"  failed on {reader.failed}" if reader.failed else ""
        means = f"{statistics.mean(reader.median):10.1f} {statistics.mean(reader.first):9.1f}"
        print(f"{reader.name:32} {means} {ratio:8.2f}× {first:8.2f}× {told}{failures}")


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__.partition("\n")[0])
    parser.add_argument("--sheets", type=int, default=60, help="drawn sheets, every layout in turn (60)")
    parser.add_argument("--seed", type=int, default=500, help="of the first drawn sheet (500)")
    parser.add_argument("--rounds", type=int, default=5, help="readings of a sheet of which the median counts (5)")
    parser.add_argument("--only", default="", metavar="TEXT", help="only readers with this in their name, and words")
    options = parser.parse_args()
    warnings.simplefilter("ignore")  # extractors warn of pages without tables
    all_readers = readers(options.only)
    asked: Counter[str] = Counter()
    verdicts: dict[str, Counter[str]] = {}
    began = time.perf_counter()
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        for number in range(WARMING):
            path = draw(folder, options.seed - 1 - number, 11 * number).path
            for reader in all_readers:
                reader.read(path)
        for sheet in sheets(folder, options.sheets, options.seed):
            asked[sheet.kind] += len(figures(sheet.truth))
            for reader in all_readers:
                measure(reader, sheet, options.rounds)
            verdicts[sheet.kind] = verdicts.get(sheet.kind, Counter()) + judged(sheet)
    print(f"{len(all_readers[0].first)} sheets, {sum(asked.values())} printed results, "
          f"{time.perf_counter() - began:.0f} s by the clock")  # fmt: skip
    report(all_readers, asked)
    print(f"\n{OWN}, held against all that is known of each result:")
    for kind, counts in verdicts.items():
        total = asked[kind]
        told = [
            f"{counts[verdict]} {text} ({100 * counts[verdict] / total:.1f} %)" for verdict, text in VERDICTS.items()
        ]
        print(f"  {kind}: of {total}, {', '.join(told)}")


if __name__ == "__main__":
    main()
