"""The review desk without a browser: what waits as a list or as CSV, and the filled-in CSV taken back."""

from __future__ import annotations

import contextlib
import csv
import io
from collections.abc import Iterator
from dataclasses import dataclass, field
from pathlib import Path

from importer.commands.review_said import corrected, stands_as_said
from importer.commands.run import NOT_ALL_READ, READ, UsageError, tell
from importer.desk import queue
from importer.models import HEADER_KEYS, Analysis
from importer.output.atomic import write_text
from importer.output.cells import safe_text
from importer.output.terminal import clean
from importer.output.words import entry_doubt, spoken
from importer.store import learned, rows, settling
from importer.store.catching_up import load_anyway
from importer.store.corrections import Case, RefusedError, StaleError
from importer.store.filing import file_settled
from importer.store.learned import Lesson
from importer.store.ledger import Store
from importer.store.places import place_of, told_of, waiting_rows
from importer.store.schema import StoreError

COLUMNS = (
    *("sheet", "revision", "row", "file", "page", "supplier", "malt", "batch"),
    *("label", "printed", "printed_unit", "parameter", "reading", "why"),
    *("say", "value", "unit", "is_parameter", "family", "basis"),
)
SAYS = ("accept", "correct", "not a figure", "column")
_STALE = (
    "Somebody else has changed this sheet since the list was written, or an earlier --take of it has. Nothing was "
    "saved over that: write the list anew with --write, or settle it in `onebasis review`."
)
_MOST_BYTES = 20_000_000
_MOST_SHEETS = 50
_WAITING = f"SELECT id FROM analyses WHERE {queue.WAITING} ORDER BY dated DESC, id DESC"
_UNKNOWN = (
    "SELECT json FROM analyses WHERE asked_rows > 0 AND superseded_by IS NULL ORDER BY dated DESC, id DESC LIMIT ?"
)


@dataclass(frozen=True, slots=True)
class _Entry:
    """One thing that waits: a row by its number, or an entry of the head by its key."""

    row: str
    label: str
    printed: str
    unit: str
    parameter: str
    reading: str
    why: tuple[str, ...]
    page: int | None = None


def show(store: Store) -> int:
    """Prints what waits, sheet by sheet."""
    heads = 0
    for case in _cases(store):
        analysis = case.built.analysis
        entries = list(_entries(case))
        if not entries:
            continue
        print(clean(f"{_name(analysis)}  ({analysis.source.file}, {case.id})"))
        for entry in entries:
            heads += entry.row.startswith("head:")
            printed = entry.printed if entry.row.startswith("head:") else f"“{entry.label}” {entry.printed}"
            told = f", printed {printed}" if printed else ""
            print(clean(f"  {entry.parameter}: {entry.reading or 'nothing'}{told}"))
            for why in entry.why:
                print(clean(f"      {why}"))
    _show_unknown(store)
    print(_count(store, heads))
    return READ


def _count(store: Store, heads: int) -> str:
    """How much waits: figures and sheets as the desk counts them, and the entries of heads."""
    waiting = queue.count(store.connection)
    sheets = waiting.sheets - waiting.heads
    parts = [f"{_many(waiting.figures, 'figure')} on {_many(sheets, 'sheet')}"] if waiting.figures else []
    parts += [f"{heads} {'entry' if heads == 1 else 'entries'} of heads"] if heads else []
    return f"To settle: {' and '.join(parts)}." if parts else "Nothing waits."


def _many(count: int, what: str) -> str:
    return f"{count} {what}{'' if count == 1 else 's'}"


def _show_unknown(store: Store) -> None:
    """The rows that no parameter was found for. They stand in no column, and nobody else would tell of them."""
    found = [Analysis.model_validate_json(text) for (text,) in store.connection.execute(_UNKNOWN, (_MOST_SHEETS,))]
    if not found:
        return
    print("Rows without a parameter; say what they are in `onebasis review`, if you need them:")
    for analysis in found:
        count = _many(len(analysis.unrecognised), "row")
        print(clean(f"  {_name(analysis)} ({analysis.source.file}), {count}: {rows.unrecognised_words(analysis)}"))
    more = queue.number_of(store.connection, "unknown") - len(found)
    if more > 0:
        print(f"  and {_many(more, 'sheet')} more")


def write(store: Store, path: Path) -> int:
    """Writes what waits as CSV, to be filled in: the last six columns are the person's. Raises WriteError."""
    out = io.StringIO(newline="")
    writer = csv.writer(out, lineterminator="\r\n")
    writer.writerow(COLUMNS)
    count = 0
    for case in _cases(store):
        header = case.built.analysis.header
        known = [header[key].value if key in header else "" for key in ("supplier", "malt", "batch")]
        for entry in _entries(case):
            count += 1
            first = [case.id, str(case.revision), entry.row]
            texts = [case.as_read.source.file, str(entry.page or ""), *known, entry.label, entry.printed, entry.unit]
            texts += [entry.parameter, entry.reading, "; ".join(entry.why)]
            writer.writerow([*first, *(safe_text(text) for text in texts), *[""] * 6])
    write_text(path, out.getvalue())
    tell(
        f"Wrote {_many(count, 'line')} to settle to {path}. Fill in the column `say`: {', '.join(SAYS)}. "
        f"Then: onebasis review --take {path}"
    )
    return READ


@dataclass(slots=True)
class _Outcome:
    """What became of the lines of a filled-in file; rows are named by sheet and number."""

    taken: int = 0
    already: int = 0
    refused: int = 0
    said: set[tuple[str, str]] = field(default_factory=set)
    along: set[tuple[str, str]] = field(default_factory=set)
    missed: list[tuple[int, tuple[str, str]]] = field(default_factory=list)


def take(store: Store, path: Path, person: str) -> int:
    """Takes a filled-in CSV back. What cannot be taken is told with its line; everything else is saved."""
    outcome = _Outcome()
    revisions: dict[str, tuple[int, int]] = {}
    lessons: list[tuple[str | None, tuple[Lesson, ...]]] = []
    for line, row in _rows_of(path):
        if not row["say"].strip():
            continue
        identity, about = row["sheet"].strip(), (row["sheet"].strip(), row["row"].strip())
        try:
            case = load_anyway(store, identity)
            if stands_as_said(case, row, person):
                outcome.already += 1
                continue
            asked, now_at = revisions.get(identity, (_number(row["revision"]), _number(row["revision"])))
            if _number(row["revision"]) != asked:
                raise RefusedError("two lines of this sheet name different revisions.")
            saved = _say(store, settling.with_revision(case, now_at), row, person)
        except (RefusedError, StaleError, StoreError) as error:
            outcome.refused += 1
            outcome.missed.append((line, about))
            tell(f"{path.name}, line {line}: {_STALE if isinstance(error, StaleError) else error}")
            continue
        lessons.append((learned.supplier_key(saved.case.built.analysis), saved.lessons))
        revisions[identity] = (asked, saved.case.revision)
        outcome.taken += 1
        outcome.said.add(about)
        settled = set(waiting_rows(case.built)) - set(waiting_rows(saved.case.built))
        outcome.along |= {(identity, str(number)) for number in settled}
    for key, taught in lessons:  # last, so that no line of the file is about a sheet that has changed meanwhile
        if key is not None and taught:
            settling.follow(store, key, taught)
    with contextlib.suppress(StoreError):  # `inbox` is at work, and files them itself
        file_settled(store)
    _tell_outcome(outcome, path)
    return NOT_ALL_READ if outcome.refused else READ


def _tell_outcome(outcome: _Outcome, path: Path) -> None:
    """The counts, and what a word about one row settled of others: nobody has looked at those by themselves."""
    for line, about in outcome.missed:
        if about in outcome.along:
            tell(
                f"{path.name}, line {line}: its figure was settled by another line all the same, as it was read. If "
                "that is wrong, correct it in `onebasis review`, All sheets."
            )
    already = f" {outcome.already} already taken." if outcome.already else ""
    along = len(outcome.along - outcome.said)
    more = f" {_many(along, 'more figure')} settled by what was said of the same table." if along else ""
    tell(f"{outcome.taken} taken, {outcome.refused} not taken.{already}{more}")


def _say(store: Store, case: Case, row: dict[str, str], person: str) -> settling.Saved:
    say = " ".join(row["say"].casefold().split())
    if say not in SAYS:
        raise RefusedError(f"“{row['say']}” is none of: {', '.join(SAYS)}.")
    target = row["row"].strip()
    if target.startswith("head:"):
        key = target.removeprefix("head:")
        entry = case.built.analysis.header.get(key)
        text = row["value"] if say == "correct" else ("" if say == "not a figure" or entry is None else entry.value)
        return settling.say_header(store, case, person, {key: text})
    number = _number(target)
    if not 0 <= number < len(case.part.figures):
        raise RefusedError(f"there is no row {target} on this sheet.")
    if say == "accept":
        return settling.accept(store, case, number, person)
    if say == "column":
        return settling.say_column(store, case, number, person)
    if say == "not a figure":
        return settling.reject(store, case, number, person)
    said = corrected(row)
    if not any(text.strip() for text in said.values()):
        raise RefusedError("it says correct, but not to what.")
    return settling.change(store, case, number, person, said)


def _number(text: str) -> int:
    try:
        return int(text)
    except ValueError:
        raise RefusedError(f"“{text}” is no number: leave the first columns as they were written.") from None


def _rows_of(path: Path) -> Iterator[tuple[int, dict[str, str]]]:
    """The rows with their line numbers. Raises UsageError for a file that is not what `--write` makes."""
    try:
        if not path.is_file():
            raise UsageError(f"{path}: there is no such file.")
        if path.stat().st_size > _MOST_BYTES:
            raise UsageError(f"{path} is too large for a list of corrections.")
        text = path.read_text(encoding="utf-8-sig")
    except OSError as error:
        raise UsageError(f"{path} cannot be read: {error.strerror or error}.") from None
    except UnicodeDecodeError:
        raise UsageError(f"{path} is not UTF-8 text. Save it as CSV UTF-8.") from None
    head = text.partition("\n")[0]
    reader = csv.DictReader(io.StringIO(text, newline=""), delimiter=";" if head.count(";") > head.count(",") else ",")
    missing = set(COLUMNS) - set(reader.fieldnames or ())
    if missing:
        raise UsageError(f"{path} lacks the columns {', '.join(sorted(missing))}. Take a file that --write made.")
    try:
        for row in reader:
            yield reader.line_num, {name: str(row.get(name) or "") for name in COLUMNS}
    except csv.Error as error:
        raise UsageError(f"{path}: {error}.") from None


def _cases(store: Store) -> Iterator[Case]:
    for (identity,) in store.connection.execute(_WAITING).fetchall():
        try:
            yield load_anyway(store, identity)
        except StoreError as error:
            tell(str(error))


def _entries(case: Case) -> Iterator[_Entry]:
    analysis = case.built.analysis
    for key in HEADER_KEYS:
        found = analysis.header.get(key)
        if found is not None and found.state == "review":
            why = entry_doubt(key, found, analysis.source.reading)
            yield _Entry(f"head:{key}", spoken(key), found.text, "", spoken(key), found.value, (why,), found.page)
        elif found is None and key == "batch" and analysis.kind == "batch":
            yield _Entry("head:batch", key, "", "", key, "", ("no batch number was found",))
    for row in waiting_rows(case.built):
        place, printed = place_of(case.built, row), case.part.figures[row]
        if place.figure is None:
            continue
        reasons = tuple(dict.fromkeys(doubt.reason for doubt in place.open_doubts if doubt.reason))
        unit, name = printed.unit or "", rows.title_of(place.figure.parameter)
        told = told_of(place).removeprefix(name).strip()
        yield _Entry(str(row), printed.label, printed.value, unit, name, told, reasons, printed.page)


def _name(analysis: Analysis) -> str:
    header = analysis.header
    return " · ".join(header[key].value for key in ("supplier", "malt", "batch") if key in header) or "Unknown sheet"
