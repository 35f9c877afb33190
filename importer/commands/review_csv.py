"""The review desk without a browser: what waits as a list or as CSV, and the filled-in CSV taken back."""

from __future__ import annotations

import contextlib
import csv
import io
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

from importer.commands.review_said import corrected, stands_as_said
from importer.commands.run import NOT_ALL_READ, READ, UsageError, tell
from importer.desk import queue
from importer.models import HEADER_KEYS, Analysis
from importer.output.atomic import write_text
from importer.output.cells import safe_text
from importer.output.terminal import clean
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
    why: str
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
            print(clean(f"  {entry.parameter}: {entry.reading or 'nothing'}, printed “{entry.label}” {entry.printed}"))
            for why in entry.why.split("; "):
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
            texts += [entry.parameter, entry.reading, entry.why]
            writer.writerow([*first, *(safe_text(text) for text in texts), *[""] * 6])
    write_text(path, out.getvalue())
    tell(
        f"Wrote {_many(count, 'line')} to settle to {path}. Fill in the column `say`: {', '.join(SAYS)}. "
        f"Then: review --take {path}"
    )
    return READ


def take(store: Store, path: Path, person: str) -> int:
    """Takes a filled-in CSV back. What cannot be taken is told with its line; everything else is saved."""
    refused = taken = already = 0
    revisions: dict[str, tuple[int, int]] = {}
    lessons: list[tuple[str | None, tuple[Lesson, ...]]] = []
    for line, row in _rows_of(path):
        if not row["say"].strip():
            continue
        identity = row["sheet"].strip()
        try:
            case = load_anyway(store, identity)
            if stands_as_said(case, row, person):
                already += 1
                continue
            asked, now_at = revisions.get(identity, (_number(row["revision"]), _number(row["revision"])))
            if _number(row["revision"]) != asked:
                raise RefusedError("two lines of this sheet name different revisions.")
            saved = _say(store, settling.with_revision(case, now_at), row, person)
            lessons.append((learned.supplier_key(saved.case.built.analysis), saved.lessons))
            revisions[identity] = (asked, saved.case.revision)
            taken += 1
        except (RefusedError, StaleError, StoreError) as error:
            refused += 1
            tell(f"{path.name}, line {line}: {error}")
    for key, taught in lessons:  # last, so that no line of the file is about a sheet that has changed meanwhile
        if key is not None and taught:
            settling.follow(store, key, taught)
    with contextlib.suppress(StoreError):  # `inbox` is at work, and files them itself
        file_settled(store)
    tell(f"{taken} taken, {refused} not taken." + (f" {already} already taken." if already else ""))
    return NOT_ALL_READ if refused else READ


def _say(store: Store, case: Case, row: dict[str, str], person: str) -> settling.Saved:
    say = " ".join(row["say"].casefold().split())
    if say not in SAYS:
        raise RefusedError(f"“{row['say']}” is none of: {', '.join(SAYS)}.")
    target = row["row"].strip()
    if target.startswith("head:"):
        key = target.removeprefix("head:")
        field = case.built.analysis.header.get(key)
        text = row["value"] if say == "correct" else ("" if say == "not a figure" or field is None else field.value)
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
        field = analysis.header.get(key)
        if field is not None and field.state == "review":
            why = "this entry of the head could not be read with certainty"
            yield _Entry(f"head:{key}", _spoken(key), field.text, "", _spoken(key), field.value, why, field.page)
        elif field is None and key == "batch" and analysis.kind == "batch":
            yield _Entry("head:batch", key, "", "", key, "", "no batch number was found")
    for row in waiting_rows(case.built):
        place, printed = place_of(case.built, row), case.part.figures[row]
        if place.figure is None:
            continue
        why = "; ".join(dict.fromkeys(doubt.reason for doubt in place.open_doubts if doubt.reason))
        unit, name = printed.unit or "", rows.title_of(place.figure.parameter)
        told = told_of(place).removeprefix(name).strip()
        yield _Entry(str(row), printed.label, printed.value, unit, name, told, why, printed.page)


def _spoken(key: str) -> str:
    return key.replace("_", " ")


def _name(analysis: Analysis) -> str:
    header = analysis.header
    return " · ".join(header[key].value for key in ("supplier", "malt", "batch") if key in header) or "Unknown sheet"
