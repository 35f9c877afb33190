"""What the pages show: plain values for the templates, every text as it is (the templates escape)."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from importer.desk.plot import Plot, plot_of
from importer.desk.repairs import Repair, repairs
from importer.meaning.labels import Match, describe
from importer.meaning.said import NEVER_SETTLED
from importer.models import Analysis, Figure, Flag, Step
from importer.output.words import CAUTION, FLAG_WORDS, FROM_WORDS, MASH_WORDS, STEP_WORDS, offset_words
from importer.printed import PrintedFigure
from importer.store import rows
from importer.store.corrections import Case, Record
from importer.store.ledger import Store
from importer.store.lessons import column_of
from importer.store.places import Place, place_of
from importer.vocabulary.parameters import parameters
from importer.words import Box

HEADER_WORDS = {
    "supplier": "Supplier",
    "malt": "Malt",
    "batch": "Batch",
    "certificate": "Certificate",
    "crop_year": "Crop year",
    "variety": "Variety",
    "produced_on": "Produced on",
    "analysed_on": "Analysed on",
    "delivered_on": "Delivered on",
    "best_before": "Best before",
    "quantity": "Quantity",
    "order": "Order",
    "customer": "Customer",
}
ACTION_WORDS = {
    "confirm": "accepted",
    "change": "corrected",
    "reject": "said to be no figure",
    "withdraw": "taken back",
}
# Around a cell, in points: enough to see its row and its neighbours.
_LEAST_WIDTH, _LEAST_HEIGHT, _MARGIN = 420.0, 270.0, 50.0
_BESIDE = 70.0
_STRIP_WIDTH, _STRIP_HEIGHT = 330.0, 60.0


@dataclass(frozen=True, slots=True)
class Crop:
    """Part of a page with a place marked: picture, size of the page, part shown, and the marked boxes, in points."""

    picture: str
    page: int
    width: float
    height: float
    part: Box
    value: Box | None
    label: Box | None

    @property
    def view(self) -> str:
        """The part as SVG wants it."""
        return f"{self.part.x0:.1f} {self.part.top:.1f} {self.part.width:.1f} {self.part.height:.1f}"

    @property
    def whole(self) -> str:
        """The whole page likewise."""
        return f"0 0 {self.width:.1f} {self.height:.1f}"


@dataclass(frozen=True, slots=True)
class Choice:
    """One parameter to choose."""

    name: str
    title: str


@dataclass(frozen=True, slots=True)
class FigureView:
    """One row to settle. ``place.figure`` is None where no parameter was found for it."""

    place: Place
    title: str
    label: str
    headings: str
    value: str
    unit: str
    said: str
    shown: str
    reasons: tuple[str, ...]
    readings: tuple[str, ...]
    rivals: tuple[Choice, ...]
    column: str
    repairs: tuple[Repair, ...]
    limits: str
    plot: Plot | None
    crop: Crop | None
    can_accept: bool
    needs_care: bool
    family: str
    basis: str
    has_basis: bool
    caution: str

    @property
    def is_named(self) -> bool:
        """True for a row that a parameter was found for."""
        return self.place.figure is not None


def figure_view(store: Store, case: Case, row: int) -> FigureView:
    """All about one row."""
    built = case.built
    place = place_of(built, row)
    printed = case.part.figures[row]
    figure, known = place.figure, place.recognised
    entry = parameters()[figure.parameter] if figure is not None else None
    reasons = [doubt.reason or FLAG_WORDS[doubt.flag] for doubt in place.open_doubts]
    said = [record for record in case.records if record.row == row and not record.withdrawn]
    value = printed.value or " – ".join(text for text in (printed.low, printed.high, printed.spec) if text)
    flags: set[Flag] = {doubt.flag for doubt in place.open_doubts}
    return FigureView(
        place=place,
        title=entry.title if entry else "No parameter found",
        label=printed.label,
        headings=" / ".join(printed.section),
        value=value,
        unit=printed.unit or "",
        said=_said_value(said),
        shown=shown(figure) if figure is not None else "",
        reasons=tuple(dict.fromkeys(reasons)) or _no_reasons(figure),
        readings=tuple(dict.fromkeys(reading.text for reading in printed.second if reading.text.strip())),
        rivals=_rivals(known.match) if known is not None else _guesses(printed),
        column=_open_column(case, printed),
        repairs=tuple(repairs(case, place)),
        limits=limits_of(figure) if figure is not None else "",
        plot=plot_of(store, built.analysis, figure) if figure is not None else None,
        crop=crop_of(case, printed.page, printed.box, printed.label_box, whole_row=bool(printed.rivals)),
        can_accept=figure is not None and not flags & NEVER_SETTLED,
        needs_care="outside-possible" in flags,
        family=known.family if known else built.analysis.method_family,
        basis=(known.basis or "") if known else "",
        has_basis=bool(entry and entry.basis),
        caution=CAUTION if entry is not None and entry.food_safety else "",
    )


def _rivals(match: Match) -> tuple[Choice, ...]:
    """What a label could mean as well."""
    return tuple(Choice(name, parameters()[name].title) for name, _ in match.rivals if name in parameters())


def _guesses(printed: PrintedFigure) -> tuple[Choice, ...]:
    """What the label of a row without a parameter comes nearest to."""
    match = describe(printed.label, printed.unit)
    own = (Choice(match.parameter, parameters()[match.parameter].title),) if match.parameter is not None else ()
    return tuple(dict.fromkeys((*own, *_rivals(match))))


def _open_column(case: Case, printed: PrintedFigure) -> str:
    """The head of the column that a row was read from, where it is not sure that it holds the results; else ""."""
    column = column_of(printed)
    settled = case.statements.columns | case.statements.columns_learned
    return (printed.column or "without a head") if column and column not in settled else ""


def _said_value(records: Sequence[Record]) -> str:
    return next((str(r.value["set"]["value"]) for r in reversed(records) if "value" in r.value.get("set", {})), "")


def _no_reasons(figure: Figure | None) -> tuple[str, ...]:
    if figure is None:
        return ("No parameter was found for this row, so it is kept apart and in no column.",)
    return ()


def shown(figure: Figure) -> str:
    """A figure on the basis, as one reads it."""
    told = rows.told(figure) or "–"
    spread = f" ± {figure.spread:g}" if figure.spread is not None else ""
    return f"{told}{spread}{' (estimate)' if figure.estimated else ''}"


def limits_of(figure: Figure) -> str:
    """Printed limits on the basis, in words."""
    low, high = figure.limits.low, figure.limits.high
    if low is not None and high is not None:
        return f"{low:g} – {high:g}"
    return f"at least {low:g}" if low is not None else (f"at most {high:g}" if high is not None else "")


def crop_of(
    case: Case,
    number: int,
    box: Box | None,
    label: Box | None = None,
    *,
    strip: bool = False,
    whole_row: bool = False,
) -> Crop | None:
    """The part of a page around a box, as wide as the page (``whole_row``), or only a strip of it; the whole page where
    there is no box."""
    page = case.kept.by_number.get(number)
    if page is None or page.width <= 0 or page.height <= 0:
        return None
    if box is None or box.width <= 0:
        return Crop(
            _picture(case, number), number, page.width, page.height, Box(0, 0, page.width, page.height), None, None
        )
    around = box.union(label) if label is not None else box
    if not strip:  # the unit and the limits stand to the right of a result
        around = around._replace(x1=min(page.width, around.x1 + _BESIDE))
    least_width, least_height = (_STRIP_WIDTH, _STRIP_HEIGHT) if strip else (_LEAST_WIDTH, _LEAST_HEIGHT)
    margin = 0.3 * _MARGIN if strip else _MARGIN
    wide = page.width if whole_row else min(page.width, max(least_width, around.width + 2 * margin))
    high = min(page.height, max(least_height, around.height + 2 * margin))
    left = min(max(0.0, around.centre - wide / 2), page.width - wide)
    top = min(max(0.0, around.middle - high / 2), page.height - high)
    part = Box(left, top, left + wide, top + high)
    return Crop(
        _picture(case, number), number, page.width, page.height, part, _wider(box), _wider(label) if label else None
    )


def _picture(case: Case, number: int) -> str:
    return f"/page/{case.id}/{number}.png"


def _wider(box: Box) -> Box:
    return Box(box.x0 - 3, box.top - 3, box.x1 + 3, box.bottom + 3)


def all_parameters() -> list[Choice]:
    """Every parameter, in the order of the file."""
    return [Choice(name, entry.title) for name, entry in parameters().items()]


def units_for(parameter: str | None) -> list[str]:
    """The units in use for a parameter."""
    entry = parameters().get(parameter or "")
    if entry is None:
        return []
    return sorted({code for codes in entry.printed_units.values() for code in codes} | set(entry.units.values()))


# ---------------------------------------------------------------------------------------------- the batch page


@dataclass(frozen=True, slots=True)
class Line:
    """One figure of the batch page. ``row`` is the number of its row, None for one that was computed."""

    title: str
    label: str
    printed: str
    shown: str
    limits: str
    state: str
    notes: tuple[str, ...]
    steps: tuple[str, ...]
    row: int | None
    food_safety: bool


def lines_of(case: Case, analysis: Analysis, groups: Sequence[Sequence[int]]) -> list[Line]:
    """All figures, those computed last."""
    printed = [_line(case, figure, group[0]) for figure, group in zip(analysis.figures, groups, strict=True)]
    return printed + [_line(case, figure, None) for figure in analysis.derived]


def _line(case: Case, figure: Figure, row: int | None) -> Line:
    entry = parameters()[figure.parameter]
    text = ""
    if figure.printed is not None:
        text = " ".join(part for part in (figure.printed.value or figure.printed.high, figure.printed.unit) if part)
    notes = [*figure.reasons]
    said = [record for record in case.records if row is not None and record.row == row and not record.withdrawn]
    notes += [
        f"{ACTION_WORDS[r.action]} by {r.person} on {r.made_at[:10]}: {r.value.get('after') or '–'}" for r in said
    ]
    offset = offset_words(figure)
    notes += [offset] if offset else []
    return Line(
        title=entry.title,
        label=figure.printed.label if figure.printed else f"from {', '.join(_title(name) for name in figure.from_)}",
        printed=text,
        shown=shown(figure),
        limits=limits_of(figure),
        state=figure.state,
        notes=tuple(dict.fromkeys(notes)),
        steps=tuple(_step(step) for step in figure.steps),
        row=row,
        food_safety=entry.food_safety,
    )


def _title(name: str) -> str:
    return parameters()[name].title if name in parameters() else name


def _step(step: Step) -> str:
    came = f"{step.from_.value:g} {step.from_.unit}{_on(step.from_.family)}"
    went = f"{step.to.value:g} {step.to.unit}{_on(step.to.family)}"
    return f"{came} → {went}: {step.formula} ({STEP_WORDS[step.kind]}; {step.source})"


def _on(family: str | None) -> str:
    return f" ({family})" if family else ""


def methods_of(analysis: Analysis) -> str:
    """The method family, how it is known, and the mash, in words."""
    mash = f", {MASH_WORDS[analysis.mash]}" if analysis.mash else ""
    return f"{analysis.method_family} methods ({FROM_WORDS[analysis.family_from]}){mash}"


def told_of_record(value: object) -> str:
    """Before or after of a record, in words; the head of a sheet is said entry by entry."""
    if isinstance(value, dict):
        return "; ".join(f"{HEADER_WORDS.get(key, key)}: {text or '–'}" for key, text in value.items())
    return str(value or "–")


def name_of(analysis: Analysis) -> str:
    """A sheet by malt and batch."""
    header = rows.values(analysis)
    malt = header.get("malt") or "Unknown malt"
    batch = header.get("batch")
    return f"{malt} · batch {batch}" if batch else malt
