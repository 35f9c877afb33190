"""Wide CSV: one row an analysis, one column a parameter, and never two methods in one column."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from importer.models import Analysis, Document, Family, Figure, Mash
from importer.output.cells import Cell, Column, joined, safe_text, table_schema, to_text
from importer.output.csv_out import ANALYSIS_COLUMNS, analysis_cells
from importer.output.table_line import plain
from importer.output.units import unit_suffix
from importer.output.words import row_words
from importer.vocabulary.parameters import Parameter, parameters

REVIEW = Column("review", "string", "Parameters in doubt, separated by spaces; their cells are empty")
UNRECOGNISED = Column(
    "unrecognised", "string", "Rows with a result that no parameter was found for, as printed: label: value unit; ..."
)

_OWN_MASH: dict[Family, Mash] = {"EBC": "congress", "ASBC": "congress", "IoB": "isothermal-65"}


@dataclass(frozen=True, slots=True)
class _Place:
    """A parameter's column: its unit, and the method where the figure stands on another one than the basis."""

    parameter: str
    unit: str
    method: str = ""

    @property
    def name(self) -> str:
        return "_".join(part for part in (self.parameter, unit_suffix(self.unit), self.method) if part)


def to_wide(doc: Document, *, include_review: bool = False) -> tuple[str, str]:
    """The wide CSV and its Table Schema. With ``include_review`` figures in review are filled in as well."""
    known = parameters()
    rows = [_fill(analysis, doc.basis, known, include_review) for analysis in doc.analyses]
    places = _places(doc, known)
    columns = [
        *ANALYSIS_COLUMNS,
        REVIEW,
        UNRECOGNISED,
        *(_column(place, known, [cells.get(place) for cells, _ in rows]) for place in places),
    ]
    lines = [
        [
            *analysis_cells(analysis, doc.basis),
            joined(review),
            safe_text("; ".join(row_words(row) for row in analysis.unrecognised)),
            *(cells.get(place) for place in places),
        ]
        for analysis, (cells, review) in zip(doc.analyses, rows, strict=True)
    ]
    schema = table_schema(columns, f"Malt analyses on the {doc.basis} basis, one row an analysis", "analysis_id")
    return to_text(columns, lines), schema


def _places(doc: Document, known: dict[str, Parameter]) -> list[_Place]:
    """Every parameter on the basis, in the order of the dictionary, each followed by what else there is of it."""
    others: dict[str, list[_Place]] = {}
    for analysis in doc.analyses:
        for figure in (*analysis.figures, *analysis.derived):
            place = _place(figure, analysis, doc.basis, known)
            extra = others.setdefault(place.parameter, [])
            if place not in extra:
                extra.append(place)
    places: list[_Place] = []
    for name in [*known, *(name for name in others if name not in known)]:
        own = [_Place(name, _unit_of(known[name], doc.basis))] if name in known else []
        more = sorted((p for p in others.get(name, ()) if p not in own), key=lambda p: (p.unit, p.method))
        places += own + more
    return places


def _unit_of(parameter: Parameter, basis: Family) -> str:
    return "text" if parameter.kind == "text" else parameter.units[basis]


def _place(figure: Figure, analysis: Analysis, basis: Family, known: dict[str, Parameter]) -> _Place:
    """Where a figure stands. One that is not on the basis, or not in its unit, gets a column of its own."""
    parameter = known.get(figure.parameter)
    own = _unit_of(parameter, basis) if parameter else ""
    unit = own if figure.unit is None else figure.unit
    if figure.family == basis and "not-convertible" not in figure.flags:
        return _Place(figure.parameter, unit)
    # A mash that is not the family's own makes another method of it: the two must not share a column.
    mash = analysis.mash if figure.family == analysis.method_family else None
    foreign_mash = mash is not None and mash != _OWN_MASH[figure.family]
    method = f"{figure.family}_{mash}" if foreign_mash else figure.family
    return _Place(figure.parameter, unit, method.lower().replace("-", "_"))


def _fill(
    analysis: Analysis, basis: Family, known: dict[str, Parameter], include_review: bool
) -> tuple[dict[_Place, Cell], list[str]]:
    """The cells of one analysis by place, and the names of what is in doubt.

    A printed figure goes before a derived one. Two different figures for one place are in doubt, both of them.
    """
    cells: dict[_Place, Cell] = {}
    review: list[str] = []
    batch = analysis.header.get("batch")
    if analysis.kind == "batch" and (batch is None or batch.state == "review"):
        review.append("batch")
    taken: set[_Place] = set()
    for figures in (analysis.figures, analysis.derived):
        found: dict[_Place, list[Figure]] = {}
        for figure in figures:
            found.setdefault(_place(figure, analysis, basis, known), []).append(figure)
        for place, same in found.items():
            if place in taken:
                continue
            values = {_value(figure) for figure in same}
            doubtful = len(values) > 1 or any(figure.state == "review" for figure in same)
            if doubtful and place.parameter not in review:
                review.append(place.parameter)
            if not doubtful or (include_review and len(values) == 1):
                cells[place] = _value(same[0])
        taken.update(found)
    return cells, review


def _value(figure: Figure) -> Cell:
    """What stands in the cell: a number where it is one, else a bound, a range or a text as it reads."""
    if figure.range is not None:
        low, high = figure.range
        return f"{plain(low)} – {plain(high)}"
    if figure.value is not None:
        return f"{figure.bound}{figure.value!r}" if figure.bound in ("<", ">") else figure.value
    return safe_text(figure.text)


def _column(place: _Place, known: dict[str, Parameter], values: Iterable[Cell]) -> Column:
    numbers = all(isinstance(value, (int, float)) for value in values if value not in (None, ""))
    parameter = known.get(place.parameter)
    is_text = place.unit == "text"
    title = parameter.title if parameter else place.parameter
    told = f"{title}, {place.unit}" + (", on a method of its own: not comparable" if place.method else "")
    return Column(place.name, "number" if numbers and not is_text else "string", told)
