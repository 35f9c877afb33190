"""The table that ``onebasis read`` prints: what a brewer wants to see of each malt, and every doubt in words."""

from __future__ import annotations

from collections.abc import Iterable

from importer.models import Analysis, Document, Problem
from importer.output.table_line import Line, to_line
from importer.output.terminal import Style, clean, columns, fit, pad, wrap
from importer.output.words import CAUTION, FROM_WORDS, MASH_WORDS, counted, entry_doubt, row_words
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
_MOST_FOR_NAME = 40
_LEAST_FOR_NAME = 16
_MOST_FOR_PRINTED = 22
_MOST_FOR_LIMITS = 18


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
    printed = [to_line(figure, analysis, doc.basis) for figure in analysis.figures]
    derived = [to_line(figure, analysis, doc.basis) for figure in analysis.derived]
    everything = [*printed, *derived]
    widths = _widths(everything, doc, style.width)
    lines = _head(analysis, style)
    if everything:
        heads = Line("parameter", "as printed", f"on {doc.basis}", "limits" if widths[3] else "", "state")
        lines.append(style(_cells(heads, widths), "dim"))
    for line in printed:
        lines += _figure(line, widths, style)
    if derived:
        lines += ["", _INDENT + style("Computed from the figures above, not printed on the sheet", "dim")]
        for line in derived:
            lines += _figure(line, widths, style)
    lines += _unrecognised(analysis, style)
    lines += _checks(analysis, style)
    lines += _foot(analysis, everything, style)
    return lines


def _head(analysis: Analysis, style: Style) -> list[str]:
    header = {key: clean(field.value) for key, field in analysis.header.items()}
    unsure = {key for key, field in analysis.header.items() if field.state == "review"}
    name = (header.get("malt") or "Malt without a name") + ("?" if "malt" in unsure else "")
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
    place = f"{clean(analysis.source.file)}, page{'s' if len(analysis.source.pages) > 1 else ''}\u00a0{pages}"
    how = {"text": "", "ocr": " · read from a picture", "spreadsheet": " · spreadsheet"}[analysis.source.reading]
    return [*lines, *(style(line, "dim") for line in wrap(f"{family} · {place}{how}", style.width - 2, _INDENT)), ""]


def _widths(lines: list[Line], doc: Document, width: int) -> tuple[int, int, int, int]:
    """Widths of name, printed, value and limits; names give way first on a narrow terminal."""

    def widest(texts: Iterable[str], head: str, most: int) -> int:
        return min(most, max((columns(text) for text in (*texts, head)), default=0))

    printed = widest((line.printed for line in lines), "as printed", _MOST_FOR_PRINTED)
    value = max(columns(text) for text in (*(line.value for line in lines), f"on {doc.basis}"))
    has_limits = any(line.limits for line in lines)
    limits = widest((line.limits for line in lines), "limits", _MOST_FOR_LIMITS) if has_limits else 0
    name = widest((line.name for line in lines), "parameter", _MOST_FOR_NAME)
    left = width - (len(_INDENT) + printed + value + limits + len("accepted") + (8 if has_limits else 6))
    if left < _LEAST_FOR_NAME:
        printed = max(len("as printed"), printed - (_LEAST_FOR_NAME - left))
    return max(_LEAST_FOR_NAME, min(name, left)), printed, value, limits


def _cells(line: Line, widths: tuple[int, int, int, int]) -> str:
    name, printed, value, limits = widths
    cells = [
        pad(fit(line.name, name), name),
        pad(fit(line.printed, printed), printed, right=True),
        pad(line.value, value, right=True),  # never cut: half a number is another number
        *([pad(fit(line.limits, limits), limits)] if limits else []),
        line.state,
    ]
    return _INDENT + "  ".join(cells)


def _figure(line: Line, widths: tuple[int, int, int, int], style: Style) -> list[str]:
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
        lines += wrap(f"{clean(row_words(row))} (page {row.page})", style.width - 2, _INDENT * 2)
    return lines


def _checks(analysis: Analysis, style: Style) -> list[str]:
    """Checks that do not hold, unless a figure above tells of it already."""
    told = " ".join(reason for figure in (*analysis.figures, *analysis.derived) for reason in figure.reasons)
    failed = [check for check in analysis.checks if not check.holds and check.detail not in told]
    if not failed:
        return []
    lines = ["", _INDENT + style("Checks that do not hold", "yellow")]
    for check in failed:
        lines += wrap(f"{clean(check.check)}: {clean(check.detail)}", style.width - 2, _INDENT * 2)
    return lines


def _foot(analysis: Analysis, lines: list[Line], style: Style) -> list[str]:
    figures = (*analysis.figures, *analysis.derived)
    notes = list(dict.fromkeys(line.apart for line in lines if line.apart))
    # One reason is enough for figures of one method: the longer text is the one that names the mashes.
    notes = [max((n for n in notes if n.split(")")[0] == mark), key=len) for mark in _marks(notes)]
    if any(figure.estimated for figure in figures):
        notes.append("~ an estimate: it rests on a correlation between methods; ± is its spread where that is known.")
    unsure = {key: field for key, field in analysis.header.items() if key != "batch" and field.state == "review"}
    reasons = {key: entry_doubt(key, field, analysis.source.reading) for key, field in unsure.items()}
    for reason in dict.fromkeys(reasons.values()):
        names = ", ".join(key.replace("_", " ") for key, why in reasons.items() if why == reason)
        notes.append(f"? in the head, {names}: {reason}.")
    known = parameters()
    if any(f.parameter in known and known[f.parameter].food_safety for f in figures):
        notes.append(CAUTION)
    told = [part for note in notes for part in wrap(note, style.width - 2, _INDENT)]
    return ["", *(style(line, "dim") for line in told)] if told else []


def _marks(notes: list[str]) -> list[str]:
    return list(dict.fromkeys(note.split(")")[0] for note in notes))


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
        counted(len(doc.analyses), "analysis", "analyses"),
        f"{counted(len(figures), 'figure', 'figures')}, {review} to review" if figures else "",
        f"{counted(rows, 'row', 'rows')} not recognised" if rows else "",
        counted(len(doc.problems), "problem", "problems") if doc.problems else "",
    ]
    return wrap("; ".join(part for part in parts if part) + ".", style.width, "")
