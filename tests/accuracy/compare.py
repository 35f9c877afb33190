"""Compares one reading with the truth of its sheet."""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from typing import Literal

from rapidfuzz import fuzz

from importer.models import Analysis, Figure, Sheet, Unrecognised
from importer.vocabulary.units import parse_unit
from tests.sheets.truth import Target, Truth, TruthAnalysis, TruthFigure, TruthRow

Verdict = Literal["right", "review", "missed", "wrong"]


@dataclass(slots=True)
class Outcome:
    """What became of one figure of the truth, or of one figure that the truth does not hold (``parameter`` as read)."""

    verdict: Verdict
    parameter: str
    certainty: str
    printed: str
    reason: str = ""
    flags: tuple[str, ...] = ()
    phantom: bool = False
    on_basis: bool = False
    specification_as_batch: bool = False


@dataclass(slots=True)
class HeaderOutcome:
    verdict: Literal["right", "review", "missed", "wrong"]
    key: str
    expected: str
    found: str
    certainty: str
    accepted: bool = False


@dataclass(slots=True)
class Comparison:
    """All outcomes of one sheet."""

    truth: Truth
    outcomes: list[Outcome] = field(default_factory=list)
    headers: list[HeaderOutcome] = field(default_factory=list)
    analyses_right: bool = False
    kinds_wrong: int = 0
    families_wrong: int = 0
    unrecognised_lost: int = 0
    also_lost: int = 0
    limits_wrong: list[str] = field(default_factory=list)
    problems: tuple[str, ...] = ()
    scan: str = ""
    """The kind of picture it was read from; empty for the PDF itself."""


def plain(text: str) -> str:
    """A printed value without spaces, with one kind of dash and comma, for comparing characters."""
    text = re.sub(r"\s+", "", text).casefold()
    for sign, same in (("–", "-"), ("−", "-"), ("—", "-"), ("≤", "<="), ("≥", ">="), (",", ".")):
        text = text.replace(sign, same)
    return text


def same_value(read: str, truth: str) -> bool:
    """The same printed value; a unit or a footnote sign may still hang on the reading."""
    found, expected = plain(read), plain(truth)
    if not expected:
        return False
    if found == expected:
        return True
    return found.startswith(expected) and not re.match(r"[\d.]", found[len(expected) :])


def compare(truth: Truth, sheet: Sheet) -> Comparison:
    """Compares a whole file."""
    result = Comparison(truth, problems=tuple(f"{p.code}: {p.message}" for p in sheet.problems))
    result.analyses_right = len(truth.analyses) == len(sheet.analyses)
    pairs, spare = _pair(truth.analyses, list(sheet.analyses))
    for expected, read in pairs:
        if read is None:
            lost = [f for f in expected.figures if not f.also]
            result.outcomes.extend(Outcome("missed", f.parameter, f.certainty, f.value, "no analysis") for f in lost)
            continue
        _analysis(expected, read, result)
    for read in spare:
        result.outcomes.extend(_phantom(f, "analysis that is not there") for f in read.figures)
    return result


def _pair(
    expected: list[TruthAnalysis], read: list[Analysis]
) -> tuple[list[tuple[TruthAnalysis, Analysis | None]], list[Analysis]]:
    """Pairs by batch number, the others by the number of shared values, then in order."""
    left = list(read)
    found: dict[int, Analysis] = {}
    for i, truth in enumerate(expected):
        number = truth.header.get("batch")
        for analysis in left:
            entry = analysis.header.get("batch")
            if number and entry and _same_words(entry.value, number.value):
                found[i] = analysis
                left.remove(analysis)
                break
    for i, truth in enumerate(expected):
        if i in found or not left:
            continue
        best = max(left, key=lambda a: _shared(truth, a))
        found[i] = best
        left.remove(best)
    return [(t, found.get(i)) for i, t in enumerate(expected)], left


def _shared(truth: TruthAnalysis, read: Analysis) -> int:
    values = {plain(f.value) for f in truth.figures if f.value}
    return len(values & {plain(f.printed.value) for f in read.figures if f.printed})


def _analysis(truth: TruthAnalysis, read: Analysis, result: Comparison) -> None:
    result.kinds_wrong += truth.kind != read.kind
    result.families_wrong += read.method_family not in truth.families
    left: list[Figure] = list(read.figures)
    strange: list[Unrecognised] = list(read.unrecognised)
    open_: list[TruthFigure] = []
    for figure in (f for f in truth.figures if not f.also):
        match = _same_parameter(figure, left)
        if match is None:
            open_.append(figure)
            continue
        left.remove(match)
        _limits(figure, match, result)
        result.outcomes.append(_judge(figure, match, truth))
    for figure in open_:
        result.outcomes.append(_elsewhere(figure, left, strange, read))
    for figure in (f for f in truth.figures if f.also):
        result.also_lost += not _kept_beside(figure, read, left)
    for row in truth.unrecognised:
        result.unrecognised_lost += not _row_kept(row, left, strange, result)
    result.outcomes.extend(_phantom(f, "not on the sheet") for f in left)
    _headers(truth, read, result)


def _same_parameter(truth: TruthFigure, left: list[Figure]) -> Figure | None:
    found = [f for f in left if f.parameter == truth.parameter and f.printed]
    same = [f for f in found if f.printed and (same_value(f.printed.value, truth.value) or not truth.value)]
    if len(same) > 1:
        return max(same, key=lambda f: fuzz.ratio(f.printed.label if f.printed else "", truth.label))
    return same[0] if same else (found[0] if found else None)


def _judge(truth: TruthFigure, figure: Figure, analysis: TruthAnalysis) -> Outcome:
    problem, on_basis = _problem(truth, figure, analysis.kind == "specification")
    taken = bool(problem) and figure.printed is not None and _is_limit(truth, figure.printed.value)
    if figure.state == "review":
        return Outcome("review", truth.parameter, truth.certainty, truth.value, problem, figure.flags)
    verdict: Verdict = "wrong" if problem else "right"
    outcome = Outcome(verdict, truth.parameter, truth.certainty, truth.value, problem, figure.flags)
    outcome.on_basis, outcome.specification_as_batch = on_basis, taken
    return outcome


def _is_limit(truth: TruthFigure, value: str) -> bool:
    return any(x and same_value(value, x) for x in (truth.low, truth.high))


def _problem(truth: TruthFigure, figure: Figure, specification: bool) -> tuple[str, bool]:
    """What is wrong with a figure of the right parameter, and whether it is the value on the basis."""
    printed = figure.printed
    if printed is None:
        return "no printed value", False
    if specification and not truth.value:
        shown = " ".join((printed.value, printed.low, printed.high))
        missing = [x for x in (truth.low, truth.high) if x and plain(x) not in plain(shown)]
        return (f"limit {missing[0]} read as {shown!r}" if missing else ""), False
    if not same_value(printed.value, truth.value):
        return f"value {truth.value!r} read as {printed.value!r}", False
    if _unit_differs(printed.unit, truth):
        return f"unit {truth.unit_text!r} read as {printed.unit!r}", False
    if truth.text is not None:
        return "", False
    if (truth.bound or None) != (figure.bound or None):
        return f"{truth.bound or 'plain'} value read as {figure.bound or 'plain'}", False
    if truth.range is not None:
        wanted = truth.range
        if figure.range is None or any(abs(a - b) > 1e-6 for a, b in zip(figure.range, wanted, strict=True)):
            return f"range {wanted} read as {figure.range}", True
        return "", False
    if not truth.targets:
        return "", False
    if any(_hits(t, figure) for t in truth.targets):
        return "", False
    expected = " or ".join(f"{t.value:g} {t.unit} {t.family or ''}".strip() for t in truth.targets)
    return f"{truth.value} {truth.unit} became {figure.value} {figure.unit} ({figure.family}), not {expected}", True


def _hits(target: Target, figure: Figure) -> bool:
    if figure.value is None or target.value is None or (figure.unit or "") not in (target.unit, target.unit or "–"):
        return False
    if target.family and figure.family != target.family:
        return False
    if target.estimated and not figure.estimated:
        return False
    if target.unconverted and not ({"not-convertible", "nitrogen-ratio-offset-not-applied"} & set(figure.flags)):
        return False
    return abs(figure.value - target.value) <= target.tolerance + 1e-9 + 1e-6 * abs(target.value)


def _unit_differs(read: str | None, truth: TruthFigure) -> bool:
    """Whether a unit was read that is not the printed one. A reading may hold more or less of it (``% dry``)."""
    if not read or not truth.unit_text.strip("-–"):
        return False
    # On a picture "µ" comes out as "u"; what counts is which unit it was taken for.
    codes = [parsed.code for parsed in (parse_unit(read), parse_unit(truth.unit_text)) if parsed is not None]
    if len(codes) == 2 and codes[0] == codes[1]:
        return False
    found, expected = _unit_plain(read), _unit_plain(truth.unit_text)
    return found not in expected and expected not in found


def _unit_plain(text: str) -> str:
    return re.sub(r"[\s.,()\[\]°º]", "", text).casefold().replace("μ", "µ")


def _elsewhere(truth: TruthFigure, left: list[Figure], strange: list[Unrecognised], read: Analysis) -> Outcome:
    """A figure whose parameter was not found: under another name, unrecognised, or lost."""
    for figure in left:
        printed = figure.printed
        if printed and same_value(printed.value, truth.value) and _same_label(printed.label, truth.label):
            left.remove(figure)
            reason = f"{truth.parameter} taken for {figure.parameter}"
            verdict: Verdict = "review" if figure.state == "review" else "wrong"
            return Outcome(verdict, truth.parameter, truth.certainty, truth.value, reason, figure.flags)
    for row in strange:
        if _same_label(row.label, truth.label) and (not truth.value or same_value(row.value, truth.value)):
            strange.remove(row)
            return Outcome("review", truth.parameter, truth.certainty, truth.value, "unrecognised")
    for figure in read.figures:
        for beside in figure.also_printed:
            printed = beside.printed
            if truth.value and same_value(printed.value, truth.value) and _same_label(printed.label, truth.label):
                reason = f"kept beside {figure.parameter}"
                return Outcome("review", truth.parameter, truth.certainty, truth.value, reason, figure.flags)
    return Outcome("missed", truth.parameter, truth.certainty, truth.value, f"lost: {truth.label}")


def _same_label(read: str, truth: str) -> bool:
    a, b = read.casefold(), truth.casefold()
    return fuzz.partial_ratio(a, b) > 80 or fuzz.token_set_ratio(a, b) > 80


def _kept_beside(truth: TruthFigure, read: Analysis, left: list[Figure]) -> bool:
    for figure in read.figures:
        for beside in figure.also_printed:
            if figure.parameter == truth.parameter and same_value(beside.printed.value, truth.value):
                return True
    for figure in list(left):
        if figure.printed and figure.parameter == truth.parameter and same_value(figure.printed.value, truth.value):
            left.remove(figure)
            return True
    return False


def _row_kept(row: TruthRow, left: list[Figure], strange: list[Unrecognised], result: Comparison) -> bool:
    """A row that is no parameter: kept among the unrecognised, or in review; accepted it is wrong."""
    for found in strange:
        if same_value(found.value, row.value) and _same_label(found.label, row.label):
            strange.remove(found)
            return True
    for figure in left:
        printed = figure.printed
        if printed and same_value(printed.value, row.value) and _same_label(printed.label, row.label):
            left.remove(figure)
            if figure.state == "accepted" and figure.parameter not in row.may_be:
                reason = f"{row.label!r} is no parameter, taken for {figure.parameter}"
                outcome = Outcome("wrong", figure.parameter, "sure", row.value, reason, figure.flags, phantom=True)
                result.outcomes.append(outcome)
            return True
    return False


def _phantom(figure: Figure, reason: str) -> Outcome:
    text = f"{figure.printed.label!r} {figure.printed.value!r}" if figure.printed else figure.parameter
    verdict: Verdict = "wrong" if figure.state == "accepted" else "review"
    return Outcome(verdict, figure.parameter, "sure", text, reason, figure.flags, phantom=True)


def _limits(truth: TruthFigure, figure: Figure, result: Comparison) -> None:
    """Compares limits as numbers, where the figure stands as it was printed."""
    if figure.state != "accepted" or figure.steps or not truth.value:
        return
    for expected, read in ((truth.low, figure.limits.low), (truth.high, figure.limits.high)):
        number = float(plain(expected)) if expected else None
        if read is not None and (number is None or abs(read - number) > 1e-6):
            result.limits_wrong.append(f"{truth.parameter} limit {expected!r} read as {read!r}")


def _same_words(read: str, truth: str) -> bool:
    return re.sub(r"[\s,.;:]+", "", read).casefold() == re.sub(r"[\s,.;:]+", "", truth).casefold()


def _headers(truth: TruthAnalysis, read: Analysis, result: Comparison) -> None:
    for key, expected in truth.header.items():
        entry = read.header.get(key)
        if entry is None:
            if expected.required:
                result.headers.append(HeaderOutcome("missed", key, expected.value, "", expected.certainty))
            continue
        right = _same_words(entry.value, expected.value)
        accepted = entry.state == "accepted"
        if right or not accepted:
            verdict: Literal["right", "review", "missed", "wrong"] = "right" if accepted else "review"
        else:
            verdict = "wrong"
        result.headers.append(HeaderOutcome(verdict, key, expected.value, entry.value, expected.certainty, accepted))
    for key, entry in read.header.items():
        if key not in truth.header and entry.state == "accepted":
            result.headers.append(HeaderOutcome("wrong", key, "", entry.value, "sure", True))
