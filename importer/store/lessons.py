"""What can be learned from a person's word: of a label, its unit and moisture basis, of a form, and of its columns."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from importer.meaning.build import Built
from importer.printed import NO_HEAD, PrintedFigure
from importer.reading.numbers import Convention, Number, read_number, same_number
from importer.store import learned
from importer.store.corrections import Case
from importer.store.learned import ASK, NO_PARAMETER, RESULTS, Lesson
from importer.store.places import Place, place_of
from importer.vocabulary.units import split_unit

_SIGNS: tuple[Convention, ...] = (".", ",")


def of_row(case: Case, before: Place, after: Place, told: Mapping[str, str]) -> list[Lesson]:
    """From a row that was read; from one whose label is empty, nothing of its label."""
    printed = case.part.figures[before.row]
    figure = after.recognised
    if figure is None or not printed.label.strip() or _is_added(case, before.row):
        return []
    doubted = {doubt.flag for doubt in before.doubts}
    key, words = learned.wording_key(printed), learned.wording(printed)
    lessons: list[Lesson] = []
    unsure = before.recognised is not None and before.recognised.match.state == "doubtful"
    if "parameter" in told or (unsure and "label-doubtful" in doubted):
        lessons.append(Lesson("label", key, words, figure.parameter))
    if not (printed.unit or printed.column_unit) and figure.unit and ("unit" in told or "unit-assumed" in doubted):
        lessons.append(Lesson("unit", key, words, figure.unit))
    if figure.basis and ("basis" in told or "moisture-basis-assumed" in doubted):
        lessons.append(Lesson("basis", key, words, figure.basis))
    return lessons


def of_no_figure(case: Case, place: Place) -> list[Lesson]:
    """From a row without a parameter of which a person says that it is none: it is not asked again."""
    printed = case.part.figures[place.row]
    if place.figure is not None or not printed.label.strip() or _is_added(case, place.row):
        return []
    return [Lesson("label", learned.wording_key(printed), learned.wording(printed), NO_PARAMETER)]


def of_family(case: Case, family: str) -> list[Lesson]:
    """From the method family of a sheet."""
    captions = list(dict.fromkeys(entry.caption.strip(" :") for entry in case.part.header if entry.caption.strip()))
    words = f"the form with {', '.join(captions[:4])}" if captions else "the form without captions"
    return [Lesson("family", learned.layout_key(case.part), words, family)]


def _is_added(case: Case, row: int) -> bool:
    return any(record.row == row and "added" in record.value for record in case.records)


# ---------------------------------------------------------------------------------------------- columns


def column_of(figure: PrintedFigure) -> str:
    """The table of a row of which it is not sure which column holds the results; "" where that is sure."""
    return next((concern.column for concern in figure.doubts if concern.column), "")


def of_column(case: Case, column: str, means: str = RESULTS) -> list[Lesson]:
    """That the results of a table stand in the column that they were taken from, or that this has to be asked.

    Of a column without a head nothing is learned: the next sheet could not tell that it is the same one.
    """
    if f"[{NO_HEAD}]" in column:
        return []
    heads, _, _ = column.partition("\n")
    return [Lesson("column", learned.column_key(case.part, column), heads, means)]


def of_settled_column(case: Case, row: int, value: str | None, after: Built) -> list[Lesson]:
    """From a column whose figures a person has settled one by one: with the last of them, that it holds the results.

    A figure that was corrected to another value of its row says the opposite, and one whose row holds the same value
    elsewhere says nothing.
    """
    column = column_of(case.part.figures[row])
    if not column:
        return []
    if value is not None and _is_elsewhere(case.part.figures[row], value, "."):
        return of_column(case, column, ASK) if column in case.statements.columns_learned else []
    if column in case.statements.columns | case.statements.columns_learned:
        return []
    rows = [number for number, figure in enumerate(case.part.figures) if column_of(figure) == column]
    said = {number: _said_value(case, number) for number in rows}
    if value is not None:
        said[row] = value
    places = [place_of(after, number) for number in rows if number != row]
    if any("label-doubtful" in {doubt.flag for doubt in place.open_doubts} for place in places):
        return []
    figures = [(case.part.figures[number], said[number]) for number in rows]
    if any(text is not None and _is_elsewhere(figure, text, ".") for figure, text in figures):
        return []
    if any(figure.rivals for figure, _ in figures) and not any(_tells_apart(case, f) for f, _ in figures):
        return []
    return of_column(case, column)


def _said_value(case: Case, row: int) -> str | None:
    said = case.statements.rows.get(row)
    return said.value if said is not None else None


def _tells_apart(case: Case, figure: PrintedFigure) -> bool:
    return bool(figure.rivals) and not _is_elsewhere(figure, figure.value, case.kept.convention)


def _is_elsewhere(figure: PrintedFigure, value: str, sign: Convention) -> bool:
    """True where another column of the row holds this very number."""
    own = read_number(value, sign)
    return own is not None and any(same_number(own, number) for number in _numbers(figure.rivals))


def _numbers(texts: tuple[str, ...]) -> Iterator[Number]:
    for text in texts:
        for sign in _SIGNS:
            number = read_number(text, sign) or read_number(split_unit(text)[0], sign)
            if number is not None:
                yield number
