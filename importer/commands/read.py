"""The commands ``read`` and ``demo``: files in, table or data out."""

from __future__ import annotations

import sys
from collections.abc import Iterator
from dataclasses import dataclass, replace
from pathlib import Path
from typing import TYPE_CHECKING

from importer.commands.run import IN_REVIEW, NOT_ALL_READ, READ, UsageError, check_target, tell
from importer.guard import GuardedReader, RatioRule
from importer.limits import MAX_SECONDS
from importer.walk import Found, find_files

if TYPE_CHECKING:
    from importer.models import Document, Family, Sheet

STANDARD_OUTPUT = "-"


@dataclass(frozen=True, slots=True)
class Request:
    """One ``read``, as it was asked for. The outputs are file names, ``-`` for standard output, None for none."""

    paths: tuple[Path, ...]
    json: str | None = None
    csv: str | None = None
    wide: str | None = None
    basis: Family = "EBC"
    estimates: bool = True
    ratio_rule: RatioRule = "published"
    strict: bool = False
    include_review: bool = False
    seconds: float = MAX_SECONDS
    parquet: str | None = None

    @property
    def outputs(self) -> dict[str, str]:
        """The outputs asked for, by option."""
        pairs = {"--json": self.json, "--csv": self.csv, "--wide": self.wide, "--parquet": self.parquet}
        return {option: target for option, target in pairs.items() if target is not None}


def demo(
    *,
    json: str | None,
    csv: str | None,
    wide: str | None,
    basis: Family,
    estimates: bool,
    ratio_rule: RatioRule,
    strict: bool,
    include_review: bool,
) -> int:
    """Reads the sheets that ship with the program."""
    from importer.data import demo_folder

    request = Request((), json, csv, wide, basis, estimates, ratio_rule, strict, include_review)
    sheets = sorted(path for path in demo_folder().rglob("*") if path.suffix.lower() not in (".md", ".json"))
    return read(replace(request, paths=tuple(path for path in sheets if path.is_file())))


def read(request: Request) -> int:
    """Reads the sheets, writes the outputs, returns the exit status."""
    check_outputs(request)
    with GuardedReader(request.seconds) as reader:
        reader.start()
        # Loaded now, while the reading process loads what it needs.
        from importer.output.json_out import document

        files = list(find_files(request.paths))
        _keep_sheets_safe(request, files)
        if not files:
            tell("No sheets were found there.")
        sheets = list(_read_all(reader, request, files))
    doc = document(sheets, request.basis)
    write_outputs(request, doc)
    _tell_outcome(request, doc, len(files))
    if request.strict and any(f.state == "review" for a in doc.analyses for f in (*a.figures, *a.derived)):
        return IN_REVIEW
    return NOT_ALL_READ if doc.problems else READ


def _read_all(reader: GuardedReader, request: Request, files: list[Found]) -> Iterator[Sheet]:
    progress = sys.stderr.isatty() and len(files) > 1
    for number, found in enumerate(files, 1):
        if progress:
            tell(f"[{number}/{len(files)}] {found.path}")
        if found.error is not None:
            yield _closed_folder(found)
        else:
            sheet = reader.read(found.path, request.basis, estimates=request.estimates, ratio_rule=request.ratio_rule)
            yield _pointed_to_the_store(sheet, found.path)


def _pointed_to_the_store(sheet: Sheet, path: Path) -> Sheet:
    """An email or a ZIP archive is no dead end: other commands take it as it is."""
    from importer.models import Sheet

    if [problem.code for problem in sheet.problems] != ["unsupported-type"]:
        return sheet
    from importer.intake.parcel import kind_of_parcel

    try:
        kind = kind_of_parcel(path.read_bytes())
    except OSError:
        return sheet
    if kind == "sheet":
        return sheet
    (problem,) = sheet.problems
    what = "an email" if kind == "email" else "a ZIP archive"
    message = f"{problem.file} is {what}. `onebasis inbox` or `onebasis bulk` takes it as it is."
    return Sheet(problems=(problem.model_copy(update={"message": message}),))


def _closed_folder(found: Found) -> Sheet:
    from importer.intake.names import safe_name
    from importer.models import Problem, Sheet

    name = safe_name(found.path)
    message = f"The folder {name} cannot be looked into: {found.error}. Check that it may be read."
    return Sheet(problems=(Problem(file=name, code="damaged", message=message),))


def check_outputs(request: Request) -> None:
    """Refuses what cannot work before any time is spent on reading."""
    from importer.output.csv_out import schema_path
    from importer.output.renderers import RENDERERS

    outputs = request.outputs
    if list(outputs.values()).count(STANDARD_OUTPUT) > 1:
        *first, last = RENDERERS
        raise UsageError(f"Only one of {', '.join(first)} and {last} can go to standard output.")
    taken: dict[Path, str] = {}
    for option, target in outputs.items():
        if target == STANDARD_OUTPUT:
            continue
        if not target:
            raise UsageError(f"{option} needs the name of a file.")
        path = Path(target)
        check_target(option, path)
        for written in (path, schema_path(path)) if RENDERERS[option].with_schema else (path,):
            other = taken.setdefault(written.absolute(), option)
            if other != option:
                raise UsageError(f"{option} and {other} would both write {written}. Give them different names.")


def _keep_sheets_safe(request: Request, files: list[Found]) -> None:
    """An output must never take the place of a sheet that is read."""
    for option, target in request.outputs.items():
        path = Path(target)
        if target == STANDARD_OUTPUT or not path.is_file():
            continue
        if any(found.error is None and path.samefile(found.path) for found in files if found.path.exists()):
            raise UsageError(f"{option}: {target} is one of the sheets to read. Give another name.")


def write_outputs(request: Request, doc: Document, *, table: bool = True) -> None:
    """Every output that was asked for; with ``table`` also that, where nothing else goes to standard output."""
    from importer.output.atomic import write_bytes, write_text
    from importer.output.renderers import RENDERERS

    for option, target in request.outputs.items():
        made = RENDERERS[option].render(doc, request.include_review)
        if target == STANDARD_OUTPUT:
            to_standard_output(made.data)
            continue
        if made.schema is not None:
            from importer.output.csv_out import schema_path

            write_text(schema_path(Path(target)), made.schema)
        write_bytes(Path(target), made.data)
    if table and STANDARD_OUTPUT not in request.outputs.values():
        from importer.output.table_out import to_table

        print(to_table(doc), end="")


def to_standard_output(data: bytes) -> None:
    """Data as it is, past what a terminal would make of line ends."""
    sys.stdout.flush()
    sys.stdout.buffer.write(data)
    sys.stdout.buffer.flush()


def _tell_outcome(request: Request, doc: Document, count: int) -> None:
    """One line on standard error where the data went elsewhere, and each problem."""
    from importer.output.renderers import RENDERERS
    from importer.output.words import counted

    if STANDARD_OUTPUT in request.outputs.values():
        for problem in doc.problems:
            named = "" if problem.file in problem.message else f"{problem.file}: "
            tell(f"{named}{problem.message} [{problem.code}]")
    files: dict[str, str] = {}
    for source in (analysis.source for analysis in doc.analyses):
        first = files.setdefault(source.sha256, source.file)
        if first != source.file:
            tell(f"{source.file} has the same content as {first}: their analyses have the same ids.")
    for option, target in request.outputs.items():
        if target != STANDARD_OUTPUT:
            tell(f"Wrote {RENDERERS[option].kind} of {counted(len(doc.analyses), 'analysis', 'analyses')} to {target}.")
