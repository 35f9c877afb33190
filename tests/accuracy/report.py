"""Counts the outcomes of many sheets and prints them by layout, language and family."""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Iterable
from dataclasses import dataclass, field
from typing import Any

from tests.accuracy.bounds import upper_bound
from tests.accuracy.compare import Comparison


@dataclass(slots=True)
class Count:
    """Counts of one group of sheets. ``figures`` are those of the truth; phantoms are counted apart."""

    sheets: int = 0
    figures: int = 0
    sure: int = 0
    right: int = 0
    sure_right: int = 0
    review: int = 0
    needless: int = 0
    missed: int = 0
    wrong: int = 0
    wrong_on_basis: int = 0
    phantom_wrong: int = 0
    phantom_review: int = 0
    ambiguous: int = 0
    ambiguous_accepted: int = 0
    limits_taken: int = 0
    limits_wrong: int = 0
    unrecognised_lost: int = 0
    also_lost: int = 0
    kinds_wrong: int = 0
    families_wrong: int = 0
    analyses_wrong: int = 0
    header_right: int = 0
    header_review: int = 0
    header_missed: int = 0
    header_wrong: int = 0
    header_ambiguous_accepted: int = 0
    batch_wrong: int = 0
    flags: Counter[str] = field(default_factory=Counter)

    def add(self, c: Comparison) -> None:
        self.sheets += 1
        for o in c.outcomes:
            if o.phantom:
                self.phantom_wrong += o.verdict == "wrong"
                self.phantom_review += o.verdict == "review"
                continue
            self.figures += 1
            accepted = o.verdict in ("right", "wrong")
            self.right += o.verdict == "right"
            self.review += o.verdict == "review"
            self.missed += o.verdict == "missed"
            self.wrong += o.verdict == "wrong"
            self.wrong_on_basis += o.verdict == "wrong" and o.on_basis
            self.limits_taken += o.specification_as_batch
            self.ambiguous += o.certainty == "ambiguous"
            self.ambiguous_accepted += o.certainty == "ambiguous" and accepted
            if o.certainty == "sure":
                self.sure += 1
                self.sure_right += o.verdict == "right"
                self.needless += o.verdict == "review"
            if o.verdict == "review":
                self.flags.update(o.flags or (o.reason.split(" ")[0] or "none",))
        self.limits_wrong += len(c.limits_wrong)
        self.unrecognised_lost += c.unrecognised_lost
        self.also_lost += c.also_lost
        self.kinds_wrong += c.kinds_wrong
        self.families_wrong += c.families_wrong
        self.analyses_wrong += not c.analyses_right
        for h in c.headers:
            self.header_right += h.verdict == "right"
            self.header_review += h.verdict == "review"
            self.header_missed += h.verdict == "missed"
            self.header_wrong += h.verdict == "wrong"
            self.header_ambiguous_accepted += h.certainty == "ambiguous" and h.accepted
            self.batch_wrong += h.verdict == "wrong" and h.key == "batch"

    @property
    def accepted_wrong(self) -> int:
        return self.wrong + self.phantom_wrong

    @property
    def accepted(self) -> int:
        return self.right + self.accepted_wrong

    def rates(self) -> dict[str, Any]:
        sure, figures = max(self.sure, 1), max(self.figures, 1)
        return {
            "sheets": self.sheets,
            "figures": self.figures,
            "accepted_right": self.right / figures,
            "sure_accepted_right": self.sure_right / sure,
            "review": self.review / figures,
            "missed": self.missed / figures,
            "accepted_wrong": self.accepted_wrong,
            "accepted_wrong_upper_95": upper_bound(self.accepted_wrong, self.accepted),
        }


_HEADS = (("", -26), ("sheets", 7), ("figures", 8), ("right%", 8), ("sure%", 8), ("review%", 8), ("missed%", 8))
_HEAD = "".join(f"{t:<26}" if w < 0 else f"{t:>{w}}" for t, w in _HEADS) + " wrong phant"


def _line(name: str, c: Count) -> str:
    n = max(c.figures, 1)
    return (
        f"{name:26}{c.sheets:7d}{c.figures:8d}{100 * c.right / n:8.2f}{100 * c.sure_right / max(c.sure, 1):8.2f}"
        f"{100 * c.review / n:8.2f}{100 * c.missed / n:8.2f}{c.wrong:6d}{c.phantom_wrong:6d}"
    )


def tally(comparisons: Iterable[Comparison]) -> dict[str, dict[str, Count]]:
    """Counts by ``all``, ``layout``, ``language``, ``family`` and ``scan`` (the kind of picture)."""
    kinds = ("all", "layout", "language", "family", "scan")
    groups: dict[str, dict[str, Count]] = {kind: defaultdict(Count) for kind in kinds}
    for c in comparisons:
        truth = c.truth
        names = dict(zip(kinds, ("all", truth.layout, truth.language, truth.family, c.scan), strict=True))
        for group, name in names.items():
            groups[group][name].add(c)
    return groups


def summary(groups: dict[str, dict[str, Count]], by: tuple[str, ...]) -> str:
    """The report as text. ``right%`` is of all figures, ``sure%`` of those that a good reader need not ask about."""
    total = groups["all"]["all"]
    lines = [_HEAD, _line("all sheets", total)]
    for group in by:
        lines += ["", f"by {group}"]
        lines += [_line(f"  {name}", c) for name, c in sorted(groups[group].items())]
    bound = upper_bound(total.accepted_wrong, total.accepted)
    lines += [
        "",
        f"accepted wrong         {total.accepted_wrong} of {total.accepted} accepted "
        f"(at most {100 * bound:.3f} %, one-sided 95 %); on the basis {total.wrong_on_basis}, not on the sheet "
        f"{total.phantom_wrong}, a limit taken for the result {total.limits_taken}",
        f"review                 {total.review}, of these needless {total.needless} of {total.sure} sure ones; "
        f"not on the sheet {total.phantom_review}",
        f"ambiguous accepted     {total.ambiguous_accepted} of {total.ambiguous}",
        f"missed                 {total.missed}; rows of no parameter lost {total.unrecognised_lost}; "
        f"second columns lost {total.also_lost}; limits wrong {total.limits_wrong}",
        f"analyses               count wrong on {total.analyses_wrong} of {total.sheets} sheets, "
        f"kind wrong {total.kinds_wrong}, family wrong {total.families_wrong}",
        f"header                 right {total.header_right}, review {total.header_review}, "
        f"missed {total.header_missed}, wrong {total.header_wrong} (batch {total.batch_wrong}), "
        f"ambiguous accepted {total.header_ambiguous_accepted}",
        "flags in review        " + (", ".join(f"{k} {v}" for k, v in total.flags.most_common()) or "none"),
    ]
    return "\n".join(lines)


def wrong_lines(comparisons: Iterable[Comparison], every: bool = False) -> list[str]:
    """One line for each wrong figure and header entry; ``every`` adds missed ones and needless reviews."""
    lines = []
    for c in comparisons:
        where = f"{c.truth.layout}/{c.truth.language}/{c.truth.family} seed {c.truth.seed} {c.scan}".rstrip()
        lines += [f"PROBLEM {where}: {p}" for p in c.problems]
        if not c.analyses_right:
            lines.append(f"COUNT   {where}: number of analyses is wrong")
        for o in c.outcomes:
            if o.verdict == "wrong":
                lines.append(f"WRONG   {where}: {o.parameter} {o.printed}: {o.reason}")
            elif o.certainty == "ambiguous" and o.verdict == "right":
                lines.append(f"UNSURE  {where}: {o.parameter} {o.printed} was accepted")
            elif every and o.verdict == "missed":
                lines.append(f"MISSED  {where}: {o.parameter} {o.printed}: {o.reason}")
            elif every and o.verdict == "review" and o.certainty == "sure":
                lines.append(f"ASKED   {where}: {o.parameter} {o.printed}: {o.reason} {' '.join(o.flags)}")
        lines += [f"LIMIT   {where}: {text}" for text in c.limits_wrong if every]
        for h in c.headers:
            if h.verdict == "wrong" or (every and h.verdict == "missed"):
                lines.append(f"HEADER  {where}: {h.key} {h.expected!r} read as {h.found!r}")
            elif h.certainty == "ambiguous" and h.accepted:
                lines.append(f"UNSURE  {where}: {h.key} {h.expected!r} was accepted")
    return lines
