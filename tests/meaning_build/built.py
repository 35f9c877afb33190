"""Builds an analysis from printed rows, without a sheet."""

from __future__ import annotations

from importer.meaning.build import Options, build_analysis
from importer.meaning.resolve import resolve
from importer.models import Analysis, Figure, Source
from importer.printed import PrintedAnalysis, PrintedFigure, PrintedHeader
from importer.reading.numbers import decide_convention
from importer.words import Box, Page

BOX = Box(10.04, 20.06, 30.111, 40.999)
SOURCE = Source(file="sheet.pdf", sha256="0" * 64, pages=(1,), reading="text")


def row(label: str, value: str, unit: str | None = "%", **more: object) -> PrintedFigure:
    """One printed row; ``more`` are further fields of a printed figure."""
    return PrintedFigure(label, value, unit, 1, BOX, **more)  # type: ignore[arg-type]


def built(
    *rows: PrintedFigure,
    batch: str | None = "A-114",
    sure: bool = True,
    malt: str | None = None,
    supplier: str | None = None,
    notes: tuple[str, ...] = ("Methods: EBC",),
    specification: bool = False,
    page: Page | None = None,
    options: Options | None = None,
) -> Analysis:
    """The analysis of these rows as one batch on a page of text."""
    header = [PrintedHeader("batch", "Batch", batch, 1, BOX, sure=sure)] if batch else []
    header += [PrintedHeader("malt", "Malt", malt, 1, BOX)] if malt else []
    header += [PrintedHeader("supplier", "Supplier", supplier, 1, BOX)] if supplier else []
    printed = PrintedAnalysis((1,), tuple(header), rows, notes=notes, is_specification=specification)
    convention = decide_convention([figure.value for figure in rows])
    pages = {1: page or Page(1, 595, 842, (), "text")}
    resolved = resolve(printed, convention)
    return build_analysis(printed, resolved, pages, SOURCE, "id-1", convention, options or Options())


def only(analysis: Analysis, parameter: str) -> Figure:
    """The one figure of a parameter."""
    (figure,) = [figure for figure in analysis.figures if figure.parameter == parameter]
    return figure
