"""Holds what was read beside the truth of a misleading sheet."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass, field

from importer.models import Analysis, Figure, Sheet
from tests.adversarial.case import Batch, Case, Right


@dataclass(slots=True)
class Verdict:
    """``wrong``: accepted and not so. ``lost``: printed and nowhere to be found. ``mute``: in review without a reason.

    ``needless``: in review although the sheet settles it. ``reasons`` are all that a reader gets to see.
    """

    wrong: list[str] = field(default_factory=list)
    lost: list[str] = field(default_factory=list)
    mute: list[str] = field(default_factory=list)
    needless: list[str] = field(default_factory=list)
    reasons: list[str] = field(default_factory=list)
    accepted: int = 0


def judge(case: Case, sheet: Sheet) -> Verdict:
    verdict = Verdict()
    kept = [form(text) for analysis in sheet.analyses for text in _kept(analysis) for form in (_dashes, _plain)]
    pairs = _paired(list(case.truth), list(sheet.analyses))
    for batch, analysis in pairs:
        _header(batch, analysis, verdict)
        for figure in analysis.figures:
            _figure(batch, figure, verdict)
        for figure in analysis.derived:
            _derived(analysis, figure, verdict)
        if batch is not None:
            _needless(batch, analysis, verdict)
    for batch in case.truth:
        printed = [*(right.printed for right in batch.right.values()), *batch.shown]
        verdict.lost += [text for text in printed if not _is_kept(text, kept)]
    return verdict


def _plain(text: str) -> str:
    return re.sub(r"\s+", "", _dashes(text))


def _dashes(text: str) -> str:
    return text.replace("−", "-").replace("–", "-").casefold()


def _kept(analysis: Analysis) -> Iterator[str]:
    """Every result of an analysis as a reader finds it, accepted or not."""
    for figure in analysis.figures:
        if figure.printed:
            yield figure.printed.value
        yield from (other.printed.value for other in figure.also_printed)
        yield from figure.reasons
    for row in analysis.unrecognised:
        yield row.value


def _is_kept(text: str, kept: list[str]) -> bool:
    exact = re.compile(rf"(?<![\d.,]){re.escape(_plain(text))}(?![\d]|[.,]\d)")
    return any(exact.search(value) for value in kept)


def _paired(truths: list[Batch], read: list[Analysis]) -> list[tuple[Batch | None, Analysis]]:
    """Each analysis with its batch: by number where both have one, else the batch that it shares most values with."""
    pairs: list[tuple[Batch | None, Analysis]] = []
    for analysis in read:
        entry = analysis.header.get("batch")
        same = [b for b in truths if entry and b.number and _plain(b.number) == _plain(entry.value)]
        best = same or [b for b in truths if b.kind == analysis.kind] or truths
        pairs.append((max(best, key=lambda b: _shared(b, analysis)) if best else None, analysis))
    return pairs


def _shared(batch: Batch, analysis: Analysis) -> int:
    return sum(
        figure.printed is not None
        and figure.parameter in batch.right
        and _plain(figure.printed.value) == _plain(batch.right[figure.parameter].printed)
        for figure in analysis.figures
    )


def _header(batch: Batch | None, analysis: Analysis, verdict: Verdict) -> None:
    if batch is not None and batch.head is not None:
        verdict.wrong += _wrong_entries(batch.head, analysis)
    entry = analysis.header.get("batch")
    if entry is None or entry.state != "accepted":
        return
    if batch is None or batch.number is None or _plain(entry.value) != _plain(batch.number):
        verdict.wrong.append(f"batch number {entry.value!r} instead of {batch.number if batch else None!r}")
    if batch is not None and batch.kind != analysis.kind:
        verdict.wrong.append(f"a {batch.kind} taken for a {analysis.kind}")


def _wrong_entries(head: dict[str, tuple[str, ...]], analysis: Analysis) -> list[str]:
    """Entries accepted and not so; malt and supplier also where the sheet names none."""
    wrong: list[str] = []
    for key in sorted({"malt", "supplier", *head}):
        entry = analysis.header.get(key)
        right = head.get(key, ())
        if entry is not None and entry.state == "accepted" and _plain(entry.value) not in map(_plain, right):
            wrong.append(f"{key} {entry.value!r} instead of {' or '.join(right) or 'none'!r}")
    return wrong


def _figure(batch: Batch | None, figure: Figure, verdict: Verdict) -> None:
    printed = figure.printed
    shown = f"{figure.parameter} {printed.value if printed else ''!r} ({printed.label if printed else ''!r})"
    if figure.state == "review":
        verdict.reasons += [f"{shown}: {reason}" for reason in figure.reasons]
        if not figure.reasons:
            verdict.mute.append(f"{shown}: {', '.join(figure.flags)}")
        return
    verdict.accepted += 1
    right = batch.right.get(figure.parameter) if batch else None
    problem = _problem(right, figure)
    if problem:
        verdict.wrong.append(f"{shown}: {problem}")


def _problem(right: Right | None, figure: Figure) -> str:
    if right is None:
        return "the sheet gives no such result for this batch"
    if figure.bound != right.bound:
        return f"bound {figure.bound} instead of {right.bound}"
    if right.range is not None and figure.range != right.range:
        return f"range {figure.range} instead of {right.range}"
    if right.value is None:
        return ""
    if figure.value is None or abs(figure.value - right.value) > right.tolerance + 1e-9:
        return f"{figure.value} {figure.unit} instead of {right.value}"
    return "" if figure.family == right.family else f"family {figure.family} instead of {right.family}"


def _derived(analysis: Analysis, figure: Figure, verdict: Verdict) -> None:
    """What is computed is no surer than what it is computed from."""
    states = {f.parameter: f.state for f in (*analysis.figures, *analysis.derived)}
    if figure.state == "accepted" and any(states.get(name) == "review" for name in figure.from_):
        verdict.wrong.append(f"{figure.parameter} computed from figures in review and accepted")


def _needless(batch: Batch, analysis: Analysis, verdict: Verdict) -> None:
    accepted = {figure.parameter for figure in analysis.figures if figure.state == "accepted"}
    verdict.needless += sorted(batch.right.keys() - batch.doubtful - accepted)
