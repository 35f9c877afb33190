"""The straight line from a file to analyses on one method basis; each stage is called once, in order."""

from __future__ import annotations

import os
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from importer.errors import NoFiguresFound, SheetError
from importer.intake.names import safe_name
from importer.intake.source import Source as File
from importer.intake.source import open_source
from importer.kept import Kept, KeptSheet, to_json
from importer.meaning.build import Built, Options, build, build_analysis
from importer.meaning.resolve import resolve
from importer.meaning.said import NOTHING, Statements
from importer.meaning.terms import SheetTerms
from importer.models import Analysis, Family, Problem, Sheet, Source
from importer.printed import PrintedAnalysis
from importer.reading.numbers import decide_convention
from importer.reading.sheet import read_analyses
from importer.words import Page

if TYPE_CHECKING:
    from PIL import Image

    from importer.meaning.relations import RatioRule


# A page with fewer words has nothing to lie about; of a document that gave nothing only so many pages are looked at.
FEW_WORDS = 12
PAGES_BY_EYE = 3


def read_sheet(
    path: str | os.PathLike[str],
    basis: Family = "EBC",
    *,
    estimates: bool = True,
    ratio_rule: RatioRule = "published",
) -> Sheet:
    """Reads one file. Figures are converted to ``basis``; with ``estimates`` off none rests on a correlation.

    ``ratio_rule`` chooses how a nitrogen ratio crosses between mashes: "published" (× 1.125) or "plus-five" (the
    trade's five points). A file that cannot be read gives a sheet with a problem; nothing is raised for bad files.
    Raises OwnFileError where the brewer's own words (ONEBASIS_MAPPINGS) cannot be used.
    """
    return _read(path, Options(basis, estimates, ratio_rule), keep=False)


def read_and_keep(
    path: str | os.PathLike[str],
    basis: Family = "EBC",
    *,
    estimates: bool = True,
    ratio_rule: RatioRule = "published",
) -> KeptSheet:
    """The same with the printed stage, so that corrections can be laid over it later (``rebuild``)."""
    return _read(path, Options(basis, estimates, ratio_rule), keep=True)


def _read(path: str | os.PathLike[str], options: Options, *, keep: bool) -> KeptSheet:
    try:
        file = open_source(path)
        pages, problems = _pages(file)
        found = analyse(pages, file, options, keep=keep)
        if not found.analyses and _may_lie(file, pages):
            found = analyse(_pages_by_eye(file), file, options, keep=keep)
        if not found.analyses and not problems:
            raise NoFiguresFound(
                f"{file.name} holds no analysis figures that could be found. If it is a malt analysis, please check "
                "that the right file was sent."
            )
    except SheetError as error:
        return KeptSheet(problems=(_problem(safe_name(path), error),))
    return KeptSheet(analyses=found.analyses, problems=tuple(problems), printed=found.printed)


def rebuild(kept: Kept, number: int, analysis: Analysis, options: Options, statements: Statements = NOTHING) -> Built:
    """The analysis once more from its printed stage, with what a person said of it. ``number`` counts from 1.

    ``analysis`` lends its id and its source. Nothing of the document is read.
    """
    part = kept.parts[number - 1]
    resolved = resolve(part, kept.convention, statements)
    return build(part, resolved, kept.by_number, analysis.source, analysis.id, kept.convention, options, statements)


def _problem(name: str, error: SheetError) -> Problem:
    text = str(error)
    return Problem(file=name, code=error.code, message=text if name in text else f"{name}: {text}")


def _pages(file: File) -> tuple[list[Page], list[Problem]]:
    """All pages that can be read, with a problem for each that cannot. Raises if none can."""
    pages: list[Page] = []
    problems: list[Problem] = []
    iterator = iter(_open(file))
    while True:
        try:
            page = next(iterator, None)
        except SheetError as error:
            if not pages:
                raise
            problems.append(_problem(file.name, error))
            break
        if page is None:
            return pages, problems
        pages.append(page)
    return pages, problems


def _may_lie(file: File, pages: Sequence[Page]) -> bool:
    """True for text without a single figure in it: its letters may not be those that the page shows."""
    return file.kind == "pdf" and any(page.reading == "text" and len(page.words) >= FEW_WORDS for page in pages)


def _pages_by_eye(file: File) -> list[Page]:
    """The first pages read as pictures; none where that cannot be done here."""
    from importer.intake.pdf import read_pdf
    from importer.intake.picture import read_picture

    try:
        return list(read_pdf(file.data, file.name, read_picture, by_eye=True, most=PAGES_BY_EYE))
    except SheetError:
        return []


def _open(file: File) -> Iterable[Page]:
    if file.kind == "pdf":
        from importer.intake.pdf import read_pdf

        return read_pdf(file.data, file.name, _read_scanned)
    if file.kind == "picture":
        from importer.intake.picture import open_pictures, read_picture

        return (read_picture(image, number, dpi) for number, image, dpi in open_pictures(file.data, file.name))
    from importer.intake.table_file import read_table_file

    return read_table_file(file)


def _read_scanned(image: Image.Image, number: int, dpi: float | None) -> Page:
    """A page without text. What reads pictures takes long to load, and most PDFs have none to read."""
    from importer.intake.picture import read_picture

    return read_picture(image, number, dpi)


@dataclass(frozen=True, slots=True)
class _Found:
    """The analyses of a document and, where it was asked for, their printed stage as JSON."""

    analyses: tuple[Analysis, ...]
    printed: str


def analyse(pages: Sequence[Page], file: File, options: Options, *, keep: bool = False) -> _Found:
    """Analyses of the pages of one document."""
    printed = [p for p in read_analyses(pages, SheetTerms()) if p.figures]
    convention = decide_convention(_number_texts(printed))
    by_number = {page.number: page for page in pages}
    analyses: list[Analysis] = []
    parts: list[PrintedAnalysis] = []
    for part in printed:
        resolved = resolve(part, convention)
        if not resolved.figures:
            continue
        source = Source(file=file.name, sha256=file.sha256, pages=part.pages, reading=_reading(part, by_number))
        identity = f"{file.sha256[:16]}-{len(analyses) + 1}"
        analyses.append(build_analysis(part, resolved, by_number, source, identity, convention, options))
        parts.append(part)
    return _Found(tuple(analyses), to_json(parts, by_number, convention) if keep and parts else "")


def _reading(part: PrintedAnalysis, pages: dict[int, Page]) -> str:
    kinds = {pages[number].reading for number in part.pages if number in pages}
    return "ocr" if "ocr" in kinds else next(iter(kinds), "text")


def _number_texts(parts: Sequence[PrintedAnalysis]) -> list[str]:
    return [
        text
        for part in parts
        for figure in part.figures
        for text in (figure.value, figure.low, figure.high, figure.spec)
        if text
    ]
