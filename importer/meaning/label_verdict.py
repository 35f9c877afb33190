"""From the ideas of a label to a verdict: the best parameter, how sure, the rivals, and one sentence of doubt."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field, replace

from importer.meaning.label_choice import Candidate, fitting, is_ordinary, possible, rules, twin, unit_fits, weigh
from importer.meaning.label_words import Part, Wording
from importer.meaning.naming import in_a_sentence, unit_not_in_use
from importer.models import Family
from importer.vocabulary.lexicon import Ideas, concepts
from importer.vocabulary.units import Unit

MINIMUM = "MIN"
RELATING: Ideas = frozenset({"RATIO", "DIFFERENCE", "SLASH", "KOLBACH"})
SURE, DOUBTFUL, GUESS = 100.0, 70.0, 30.0
FUZZY_LETTERS = 8
"""Letters that a label must have before a misread word in it can be certain."""
EXACT_LETTERS = 4
"""Letters of exact words that a short misspelt one needs beside it to count for anything."""
LEAST_SHARE = 0.5
"""Share of the letters of a label that must be explained before it counts as understood at all."""
STANDING_ALONE: Ideas = frozenset({"DRY", "AS_IS", "WORT", "CONGRESS", "ISOTHERMAL_65", "T65", "EBC", "IOB", "ASBC"})
"""Neutral ideas that make a row of its own under a heading that names the figure."""


@dataclass(frozen=True, slots=True)
class Verdict:
    """``settled`` is True where headings above the label have nothing to add; ``relates`` where the figure is a
    quotient or a difference of others."""

    parameter: str | None
    sure: bool
    score: float
    rivals: tuple[tuple[str, float], ...] = ()
    why: str = ""
    as_is: str | None = None
    ideas: Ideas = field(default_factory=frozenset)
    needs: int = 0
    relates: bool = False
    settled: bool = False


NOTHING = Verdict(None, False, 0.0, why="no word of the label is known")


@dataclass(frozen=True, slots=True)
class _Evidence:
    family: Family | None
    unit: Unit | None
    value: float | None


def decide(wording: Wording, family: Family | None, unit: Unit | None, value: float | None) -> Verdict:
    """The verdict on a label by itself."""
    evidence = _Evidence(family, unit, value)
    if not wording.halves:
        return _verdict(wording.whole, evidence)
    return _halves(wording, evidence)


# ---------------------------------------------------------------------------------------------- one part


def _candidates(meanings: Sequence[Ideas], evidence: _Evidence) -> list[Candidate]:
    """One candidate a parameter, best supported first; a candidate without a parameter is a figure that is none."""
    found: dict[str | None, Candidate] = {}
    for ideas in meanings:
        for rule in fitting(ideas, evidence.family):
            candidate = weigh(Candidate(rule.parameter, rule, ideas), evidence.unit, evidence.value)
            known = found.get(candidate.parameter)
            if known is None or candidate.fit > known.fit or (known.rule.doubt and not rule.doubt):
                found[candidate.parameter] = candidate
    return sorted(found.values(), key=lambda c: (-c.fit, bool(c.rule.doubt), not c.rule.default))


def _foreign(meanings: Sequence[Ideas]) -> str:
    """What to tell of a figure that is none of the parameters; "" where no idea says so."""
    known = concepts()
    for ideas in meanings:
        for idea in sorted(ideas):
            if idea in known.foreign:
                return known.foreign[idea]
    return ""


def _verdict(part: Part, evidence: _Evidence) -> Verdict:
    if not part.meanings:
        return NOTHING
    candidates = _candidates(part.meanings, evidence)
    named = [candidate for candidate in candidates if candidate.parameter is not None]
    if not named:
        why = candidates[0].rule.why if candidates else _foreign(part.meanings)
        known_thing = bool(why)
        return Verdict(
            None,
            False,
            0.0,
            why=why or "the words of the label make no parameter",
            ideas=part.meanings[0],
            settled=known_thing,
        )
    best = named[0]
    if part.share < LEAST_SHARE:
        rivals = tuple((c.parameter or "", GUESS) for c in named[:3])
        return Verdict(None, False, 10.0, rivals, "most of the label is not known", ideas=best.ideas)
    if best.rule.doubt and part.unexplained:
        rivals = tuple((c.parameter or "", GUESS) for c in named[:3])
        return Verdict(None, False, 10.0, rivals, _lost(part.unexplained), ideas=best.ideas)
    if _only_guessed(part) and unit_fits(best.parameter or "", evidence.unit) is not True:
        rivals = tuple((c.parameter or "", GUESS) for c in named[:3])
        return Verdict(None, False, 10.0, rivals, "the only word of the label is near a known one", ideas=best.ideas)
    doubts = [_rivalry(named, candidates), *_own_doubts(best, part, evidence)]
    if len(candidates) == len(named) and len(part.meanings) > 1:
        others = [ideas for ideas in part.meanings if not fitting(ideas, evidence.family)]
        foreign = [ideas for ideas in others if _foreign([ideas - best.rule.named])]
        doubts.append(f"it may be another figure: {_foreign(foreign)}" if foreign else "")
    return _finish(best, named[1:], [doubt for doubt in doubts if doubt], part, evidence)


def _only_guessed(part: Part) -> bool:
    """True where nothing but a misspelt word speaks for a figure: short words are too near each other for that."""
    exact = part.explained - part.guessed
    return part.guessed > 0 and exact < EXACT_LETTERS and (part.cost > 1 or part.explained < FUZZY_LETTERS)


def _rivalry(named: list[Candidate], every: list[Candidate]) -> str:
    if len(every) > len(named) and not named[0].backed:
        return "the label may also be a figure that is none of the parameters"
    if len(named) < 2:
        return ""
    best, second = named[0], named[1]
    if best.fit > second.fit and (second.against or best.rule.default):
        return ""
    if best.rule.default and best.fit == second.fit and not best.against:
        return ""
    if second.rule.doubt and not best.rule.doubt and not best.against and best.rule.needs == second.rule.needs:
        # Where values decide between the two, a missing value decides nothing.
        return "" if best.rule.ordinary is None else f"it may be {_title(best)} or {_title(second)}"
    return f"it may be {_title(best)} or {_title(second)}"


def _title(candidate: Candidate) -> str:
    return in_a_sentence(candidate.parameter or "")


def _own_doubts(best: Candidate, part: Part, evidence: _Evidence) -> list[str]:
    name = best.parameter or ""
    of_label = [why for idea, why in rules().doubts_of_labels.items() if idea in best.ideas - best.rule.named]
    doubts = [best.rule.doubt, *_idea_doubts(best.ideas), *of_label]
    if part.unexplained:
        doubts.append(f"“{part.unexplained[0]}” in the label is not known")
    agrees = not best.against and (
        unit_fits(name, evidence.unit) is True or possible(name, evidence.unit, evidence.value) is True
    )
    if "DOUBT" in best.ideas and not best.backed and not best.rule.named & part.measured:
        doubts.append("the wording also means something else")
    if not is_ordinary(best.rule, evidence.value):
        doubts.append(f"{evidence.value:g} would be unusual for {in_a_sentence(name)}")
    if part.cost and not (agrees and part.cost <= 1 and part.explained >= FUZZY_LETTERS):
        doubts.append("a word of the label is misspelt or misread")
    if unit_fits(name, evidence.unit) is False and evidence.unit is not None:
        doubts.append(unit_not_in_use(name, evidence.unit.code))
    elif unit_fits(name, evidence.unit, best.rule) is False and evidence.unit is not None:
        doubts.append(f"the label would not be printed in {evidence.unit.code}")
    return doubts


def _idea_doubts(ideas: Ideas) -> list[str]:
    """What the ideas say against any figure: that of a wort of another strength, say."""
    return [why for idea, why in rules().doubts.items() if idea in ideas]


def _finish(best: Candidate, others: list[Candidate], doubts: list[str], part: Part, evidence: _Evidence) -> Verdict:
    name = best.parameter or ""
    rivals = [(other.parameter or "", 60.0 + 10 * other.fit) for other in others]
    real = twin(name, evidence.unit, evidence.value)
    as_is = best.rule.as_is
    if real is not None:
        other, switch = real
        doubts.append(f"the value is one of {in_a_sentence(other)}, not of {in_a_sentence(name)}")
        rivals = [(p, s) for p, s in rivals if p != other]
        rivals.insert(0, (name if switch else other, 60.0))
        if switch:
            name, as_is = other, None
    score = SURE if not doubts else DOUBTFUL
    score = max(score - 4 * part.cost - 20 * (1 - part.share), 40.0)
    why = doubts[0] if doubts else ""
    return Verdict(
        name,
        not doubts,
        score,
        tuple(rivals[:4]),
        why,
        as_is,
        best.ideas,
        len(best.rule.needs),
        relates=any(need & RELATING for need in best.rule.needs),
        settled=not doubts,
    )


# ---------------------------------------------------------------------------------------------- halves


def _halves(wording: Wording, evidence: _Evidence) -> Verdict:
    """A label of halves with strokes between: translations, alternatives, or one figure over another."""
    speaking = [half for half in wording.halves if _speaks(half)]
    quiet = [
        word
        for half in wording.halves
        if half.explained == 0 or (half.cost and half not in speaking)
        for word in half.unexplained
    ]
    whole = replace(wording.whole, unexplained=tuple(w for w in wording.whole.unexplained if w not in quiet))
    together = _verdict(whole, evidence)
    if not speaking:
        return together
    single = [_verdict(half, evidence) for half in speaking]
    names = {verdict.parameter for verdict in single}
    if len(names) == 1 and None not in names:
        best = max(single, key=lambda v: (v.sure, v.score))
        lost = [word for half in speaking for word in half.unexplained]
        sure = best.sure and not lost
        return replace(best, sure=sure, settled=sure, ideas=best.ideas | together.ideas, why=best.why or _lost(lost))
    whole_new = together.parameter not in names or together.relates or not all(v.sure for v in single)
    if together.parameter is not None and whole_new:
        return _in_order(together, wording)
    told = [verdict for verdict in single if verdict.parameter is not None]
    if not told:
        return together
    return _between(told, single, together, evidence)


def _speaks(half: Part) -> bool:
    """True for a half that names something; a stray word of an unknown language that is near a known one does not."""
    known = concepts()
    named = any((ideas & known.plain) or _foreign([ideas]) for ideas in half.meanings)
    return named and (half.cost == 0 or half.share > LEAST_SHARE)


def _lost(words: Sequence[str]) -> str:
    return f"“{words[0]}” in the label is not known" if words else ""


def _in_order(verdict: Verdict, wording: Wording) -> Verdict:
    """A quotient is certain only where the part stands before the whole."""
    if "SLASH" not in verdict.ideas or verdict.parameter != "nitrogen_ratio":
        return verdict
    first = frozenset().union(*wording.halves[0].meanings) if wording.halves[0].meanings else frozenset()
    if "TOTAL" in first and "SOLUBLE" not in first:
        return replace(verdict, sure=False, settled=False, score=DOUBTFUL, why="the label may name two figures")
    return verdict


def _between(told: list[Verdict], single: list[Verdict], together: Verdict, evidence: _Evidence) -> Verdict:
    """Two halves that mean different figures: unit and value decide, or nobody."""

    def fit(verdict: Verdict) -> int:
        name = verdict.parameter or ""
        said = (unit_fits(name, evidence.unit), possible(name, evidence.unit, evidence.value))
        return sum((1 if word else -1) for word in said if word is not None)

    ranked = sorted(told, key=lambda v: (-fit(v), not v.sure))
    best = ranked[0]
    others = tuple((v.parameter or "", 60.0) for v in ranked[1:] if v.parameter != best.parameter)
    decided = len(others) > 0 and len(told) == len(single) and fit(ranked[1]) < 0 < fit(best)
    decided = decided or (len(others) > 0 and len(told) == len(single) and fit(best) - fit(ranked[1]) >= 2)
    ideas = best.ideas | together.ideas
    if decided and best.sure:
        return replace(best, rivals=others, ideas=ideas)
    return replace(
        best,
        sure=False,
        settled=False,
        score=DOUBTFUL,
        rivals=others,
        ideas=ideas,
        why="the halves of the label name different figures",
    )


# ---------------------------------------------------------------------------------------------- headings


def with_section(
    verdict: Verdict, wording: Wording, section: Wording, family: Family | None, unit: Unit | None, value: float | None
) -> Verdict:
    """The verdict with a heading above the label: a noun for a row without one, doubt where the heading contradicts."""
    evidence = _Evidence(family, unit, value)
    part = wording.whole
    if not section.whole.meanings or not part.meanings:
        return verdict
    heading = section.whole.meanings[:3]
    meanings = tuple(dict.fromkeys(own | above for above in heading for own in part.meanings))
    if verdict.sure:
        told = [why for ideas in heading for why in _idea_doubts(ideas)]
        if told:
            return replace(verdict, sure=False, settled=True, score=DOUBTFUL, why=told[0])
        return _checked(verdict, heading, evidence)
    if verdict.settled:
        return verdict
    known = concepts()
    if not any(ideas & known.plain for ideas in heading):
        return verdict
    joint = _verdict(replace(part, meanings=meanings[:12]), evidence)
    if joint.parameter is None or (verdict.parameter is not None and joint.needs <= verdict.needs):
        return verdict
    own = frozenset().union(*part.meanings)
    if not (own & known.plain or own & STANDING_ALONE):
        return replace(
            joint, sure=False, settled=False, score=DOUBTFUL, why=joint.why or "only the heading names the figure"
        )
    return replace(joint, score=joint.score - 5)


def _checked(verdict: Verdict, heading: Sequence[Ideas], evidence: _Evidence) -> Verdict:
    """A certain label under a heading that makes another figure of it ("Protein" under "Wort") is certain no longer."""
    wort = frozenset({"WORT"}) if any("WORT" in ideas for ideas in heading) else frozenset()
    if not wort or "MALT" in verdict.ideas:
        return verdict
    for rule in fitting(verdict.ideas | wort, evidence.family):
        if rule.parameter is not None and rule.parameter != verdict.parameter and len(rule.needs) > verdict.needs:
            other = rule.parameter
            if possible(other, evidence.unit, evidence.value) is False:
                continue
            why = f"under this heading it may be {in_a_sentence(other)}"
            return replace(verdict, sure=False, settled=True, score=DOUBTFUL, rivals=((other, 60.0),), why=why)
    return verdict
