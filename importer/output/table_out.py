"""The table that ``onebasis read`` prints: what a brewer wants to see of each malt, and every doubt in words."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from importer.models import Analysis, Document, Figure, Limits, Problem
from importer.output.terminal import Style, clean, columns, fit, pad, wrap
from importer.output.words import CAUTION, FLAG_WORDS, FROM_WORDS, MASH_WORDS, TOLD_ELSEWHERE, offset_words
from importer.vocabulary.parameters import parameters

_INDENT = "  "
_HEADER_LINES = (
    (("supplier", "supplier"), ("crop_year", "crop"), ("variety", "variety")),
    (("certificate", "certificate"), ("order", "order"), ("quantity", "quantity"), ("customer", "customer")),
    (
        ("produced_on", "produced"),
        ("analysed_on", "analysed"),
        ("delivered_on", "delivered"),
        ("best_before", "best before"),
    ),
)
_HEADS = ("parameter", "as printed", "", "limits", "")
_MOST_FOR_NAME = 40
_LEAST_FOR_NAME = 16
_MOST_FOR_PRINTED = 22
_MOST_FOR_VALUE = 30


@dataclass(frozen=True, slots=True)
class _Line:
    """One figure as cells, and what is to be said under it."""

    name: str
    printed: str
    value: str
    limits: str
    state: str
    doubts: tuple[str, ...]
    remarks: tuple[str, ...]


def to_table(doc: Document, style: Style | None = None) -> str:
    """The whole document as text for a terminal or a file."""
    style = style or Style()
    lines: list[str] = []
    for analysis in doc.analyses:
        lines += [*_analysis(analysis, doc, style), ""]
    lines += _problems(doc.problems, style)
    lines += _summary(doc, style)
    return "\n".join(line.rstrip() for line in lines) + "\n"


def _analysis(analysis: Analysis, doc: Document, style: Style) -> list[str]:
    printed = [_line(figure) for figure in analysis.figures]
    derived = [_line(figure) for figure in analysis.derived]
    widths = _widths([*printed, *derived], doc, style.width)
    lines = _head(analysis, style)
    heads = _Line(_HEADS[0], _HEADS[1], f"on {doc.basis}", _HEADS[3], _HEADS[4], (), ())
    if printed or derived:
        lines.append(style(_cells(heads, widths), "dim"))
    for line in printed:
        lines += _figure(line, widths, style)
    if derived:
        lines += ["", _INDENT + style("Computed from the figures above, not printed on the sheet", "dim")]
        for line in derived:
            lines += _figure(line, widths, style)
    lines += _unrecognised(analysis, style)
    lines += _checks(analysis, style)
    lines += _foot(analysis, style)
    return lines


def _head(analysis: Analysis, style: Style) -> list[str]:
    header = {key: clean(field.value) for key, field in analysis.header.items()}
    unsure = {key for key, field in analysis.header.items() if field.state == "review"}
    name = header.get("malt") or "Malt without a name"
    if analysis.kind == "specification":
        what = "specification, not a batch"
    elif "batch" in header:
        what = f"batch {header['batch']}" + (" (not certain)" if "batch" in unsure else "")
    else:
        what = "no batch number found"
    lines = [style(f"{name} · {what}", "bold")]
    for group in _HEADER_LINES:
        shown = [f"{title} {header[key]}{'?' if key in unsure else ''}" for key, title in group if key in header]
        if shown:
            lines += wrap(" · ".join(shown), style.width - 2, _INDENT)
    mash = f", {MASH_WORDS[analysis.mash]}" if analysis.mash else ""
    family = f"{analysis.method_family} methods ({FROM_WORDS[analysis.family_from]}){mash}"
    pages = ", ".join(str(page) for page in analysis.source.pages)
    place = f"{clean(analysis.source.file)}, page{'s' if len(analysis.source.pages) > 1 else ''} {pages}"
    how = {"text": "", "ocr": " · read from a picture", "spreadsheet": " · spreadsheet"}[analysis.source.reading]
    return [*lines, *(style(line, "dim") for line in wrap(f"{family} · {place}{how}", style.width - 2, _INDENT)), ""]


def _line(figure: Figure) -> _Line:
    known = parameters().get(figure.parameter)
    title = known.title if known else figure.parameter.replace("_", " ")
    printed = ""
    if figure.printed is not None:
        printed = clean(" ".join(part for part in (figure.printed.value, figure.printed.unit) if part))
    doubts: list[str] = [clean(reason) for reason in figure.reasons]
    told = [FLAG_WORDS[flag] for flag in figure.flags if flag not in TOLD_ELSEWHERE]
    remarks: list[str] = []
    if figure.state == "review" and not doubts:
        doubts = told or ["Please compare it with the sheet."]
    elif figure.state == "accepted":
        remarks = doubts or told
        doubts = []
    offset = offset_words(figure)
    if offset:
        remarks.append(offset)
    if figure.state == "review" and figure.printed is not None:
        doubts.append(f"printed as “{clean(figure.printed.label)}”, page {figure.printed.page}")
    return _Line(
        title,
        printed,
        _value(figure, known.decimals if known else 2),
        _limits(figure.limits),
        "ok" if figure.state == "accepted" else "review",
        tuple(doubts),
        tuple(remarks),
    )


def _value(figure: Figure, decimals: int) -> str:
    if figure.range is not None:
        low, high = figure.range
        number = f"{_number(low, decimals)} – {_number(high, decimals)}"
    elif figure.value is not None:
        bound = f"{figure.bound} " if figure.bound in ("<", ">") else ""
        number = bound + (_plain(figure.value) if figure.printed and not figure.steps else _number(figure.value, decimals))
    else:
        return fit(clean(figure.text or "–"), _MOST_FOR_VALUE)
    unit = f" {figure.unit}" if figure.unit and figure.unit not in ("pH", "–") else ""
    spread = f" ± {_plain(figure.spread)}" if figure.spread is not None else ""
    estimate = " ~" if figure.estimated else ""
    own = f" ({figure.family})" if "not-convertible" in figure.flags else ""
    return f"{number}{spread}{unit}{estimate}{own}"


def _number(value: float, decimals: int) -> str:
    """A converted value at the parameter's decimals, with more where those would lose a visible part of it."""
    while decimals < 6 and abs(round(value, decimals) - value) > 0.005 * abs(value):
        decimals += 1
    return f"{value:.{decimals}f}"


def _plain(value: float) -> str:
    text = f"{value:.10g}"
    return text if "e" not in text else f"{value:f}"


def _limits(limits: Limits) -> str:
    if limits.low is not None and limits.high is not None:
        return f"{_plain(limits.low)} – {_plain(limits.high)}"
    if limits.low is not None:
        return f"min {_plain(limits.low)}"
    return f"max {_plain(limits.high)}" if limits.high is not None else ""


def _widths(lines: Iterable[_Line], doc: Document, width: int) -> tuple[int, int, int, int]:
    """Widths of name, printed, value and limits; names give way first on a narrow terminal."""
    lines = list(lines)

    def widest(texts: Iterable[str], head: str, most: int) -> int:
        return min(most, max((columns(text) for text in (*texts, head)), default=0))

    printed = widest((line.printed for line in lines), _HEADS[1], _MOST_FOR_PRINTED)
    value = widest((line.value for line in lines), f"on {doc.basis}", _MOST_FOR_VALUE)
    limits = widest((line.limits for line in lines), _HEADS[3], 18)
    name = widest((line.name for line in lines), _HEADS[0], _MOST_FOR_NAME)
    left = width - (len(_INDENT) + printed + value + limits + len("review") + 8)
    if left < _LEAST_FOR_NAME:
        printed = max(len(_HEADS[1]), printed - (_LEAST_FOR_NAME - left))
    return max(_LEAST_FOR_NAME, min(name, left)), printed, value, limits


def _cells(line: _Line, widths: tuple[int, int, int, int]) -> str:
    name, printed, value, limits = widths
    return _INDENT + "  ".join(
        (
            pad(fit(line.name, name), name),
            pad(fit(line.printed, printed), printed, right=True),
            pad(line.value, value, right=True),  # never cut: half a number is another number
            pad(fit(line.limits, limits), limits),
            line.state,
        )
    )


def _figure(line: _Line, widths: tuple[int, int, int, int], style: Style) -> list[str]:
    text = _cells(line, widths)
    if line.state == "review":
        text = style(text, "yellow")
    lines = [text]
    for doubt in line.doubts:
        lines += [style(part, "yellow") for part in wrap(f"? {doubt}", style.width - 2, _INDENT * 3)]
    for remark in line.remarks:
        lines += [style(part, "dim") for part in wrap(remark, style.width - 2, _INDENT * 3)]
    return lines


def _unrecognised(analysis: Analysis, style: Style) -> list[str]:
    if not analysis.unrecognised:
        return []
    lines = ["", _INDENT + style("Rows that no parameter was found for", "yellow")]
    for row in analysis.unrecognised:
        result = " ".join(part for part in (clean(row.value), clean(row.unit or "")) if part)
        lines += wrap(f"{clean(row.label)}: {result} (page {row.page})", style.width - 2, _INDENT * 2)
    return lines


def _checks(analysis: Analysis, style: Style) -> list[str]:
    failed = [check for check in analysis.checks if not check.holds]
    if not failed:
        return []
    lines = ["", _INDENT + style("Checks that do not hold", "yellow")]
    for check in failed:
        lines += wrap(f"{clean(check.check)}: {clean(check.detail)}", style.width - 2, _INDENT * 2)
    return lines


def _foot(analysis: Analysis, style: Style) -> list[str]:
    figures = (*analysis.figures, *analysis.derived)
    lines: list[str] = []
    if any(figure.estimated for figure in figures):
        text = "~ an estimate: it rests on a correlation between methods; ± is its spread where that is known."
        lines += wrap(text, style.width - 2, _INDENT)
    known = parameters()
    if any(f.parameter in known and known[f.parameter].food_safety for f in figures):
        lines += wrap(CAUTION, style.width - 2, _INDENT)
    return ["", *(style(line, "dim") for line in lines)] if lines else []


def _problems(problems: Iterable[Problem], style: Style) -> list[str]:
    lines: list[str] = []
    for problem in problems:
        if not lines:
            lines.append(style("Problems", "bold", "red"))
        lines += wrap(f"{clean(problem.message)} [{problem.code}]", style.width - 2, _INDENT)
    return [*lines, ""] if lines else []


def _summary(doc: Document, style: Style) -> list[str]:
    figures = [figure for analysis in doc.analyses for figure in analysis.figures]
    review = sum(figure.state == "review" for figure in figures)
    rows = sum(len(analysis.unrecognised) for analysis in doc.analyses)
    parts = [
        _count(len(doc.analyses), "analysis", "analyses"),
        f"{_count(len(figures), 'figure', 'figures')}, {review} to review" if figures else "",
        f"{_count(rows, 'row', 'rows')} not recognised" if rows else "",
        _count(len(doc.problems), "problem", "problems") if doc.problems else "",
    ]
    return wrap("; ".join(part for part in parts if part) + ".", style.width, "")


def _count(count: int, one: str, many: str) -> str:
    return f"{count} {one if count == 1 else many}"
