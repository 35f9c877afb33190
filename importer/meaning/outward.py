"""Rows as the outward models show them: where they stand on the sheet, and what was printed there."""

from __future__ import annotations

from collections.abc import Mapping

from importer.meaning.recognised import Recognised
from importer.models import AlsoPrinted, Bound, BoxList, Printed, Unrecognised
from importer.printed import PrintedFigure
from importer.words import Box

BOUNDS: Mapping[str, Bound] = {"<": "<", ">": ">", "range": "range", "max": "<", "min": ">"}


def also_printed(figure: Recognised) -> AlsoPrinted:
    """A further printing of a figure, under another family or unit."""
    number = figure.number
    ends = (number.low, number.high) if number.low is not None and number.high is not None else None
    return AlsoPrinted(
        family=figure.family,
        value=number.value,
        unit=figure.unit,
        bound=BOUNDS.get(number.bound or ""),
        range=ends if number.bound == "range" else None,
        printed=to_printed(figure.printed),
    )


def box_list(box: Box) -> BoxList:
    """A place as JSON shows it: points, to one decimal."""
    return round(box.x0, 1), round(box.top, 1), round(box.x1, 1), round(box.bottom, 1)


def to_printed(figure: PrintedFigure) -> Printed:
    """The figure as it stands on the sheet. A single cell of limits is kept where its halves are not printed apart."""
    return Printed(
        label=figure.label,
        value=figure.value,
        unit=figure.unit,
        method=figure.method,
        low=figure.low,
        high=figure.high or (figure.spec if not figure.low else ""),
        page=figure.page,
        box=box_list(figure.box),
        confidence=round(figure.confidence, 3),
    )


def unrecognised(figure: PrintedFigure) -> list[Unrecognised]:
    """A row of no parameter, once for each value that could be its result."""
    label = " / ".join((*figure.section, figure.label)) if figure.section else figure.label
    value = figure.value or " ".join(text for text in (figure.low, figure.high, figure.spec) if text)
    box = box_list(figure.box)
    return [
        Unrecognised(label=label, value=text, unit=figure.unit, page=figure.page, box=box)
        for text in (value, *figure.rivals)
    ]
