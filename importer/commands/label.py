"""The command ``label``: which parameter a printed label is taken for, how sure that is, and its rivals."""

from __future__ import annotations

import json
from collections.abc import Sequence
from typing import TYPE_CHECKING

from importer.commands.run import READ, UsageError
from importer.output.terminal import Style, clean, pad, wrap
from importer.vocabulary.parameters import parameters

if TYPE_CHECKING:
    from importer.meaning.labels import Match
    from importer.models import Family


def label(texts: Sequence[str], unit: str | None, family: Family | None, *, as_json: bool) -> int:
    """Prints what each text is taken for. Raises UsageError for a unit that is not known."""
    from importer.meaning.labels import LabelQuery, recognise
    from importer.vocabulary.units import parse_unit

    if not all(text.strip() for text in texts):
        raise UsageError("A label is empty. Give it as it is printed on the sheet.")
    parsed = None
    if unit is not None:
        parsed = parse_unit(unit)
        if parsed is None:
            raise UsageError(f"{unit!r} is not a unit that onebasis knows.")
    matches = [(text, recognise(LabelQuery(text, unit=parsed, family=family))) for text in texts]
    if as_json:
        print(json.dumps({"labels": [_entry(text, match) for text, match in matches]}, indent=2, ensure_ascii=False))
    else:
        style = Style()
        for text, match in matches:
            print("\n".join(_told(text, match, style)))
    return READ


def _entry(text: str, match: Match) -> dict[str, object]:
    return {
        "text": text,
        "parameter": match.parameter,
        "state": match.state,
        "score": round(match.score, 1),
        "rivals": [{"parameter": name, "score": round(score, 1)} for name, score in match.rivals],
        "basis": match.basis,
        "unit": match.unit.code if match.unit else None,
        "family": match.family,
        "mash": match.mash,
        "limit": match.limit,
        "matrix": match.matrix,
        "why": match.why,
    }


def _told(text: str, match: Match, style: Style) -> list[str]:
    taken = f"{match.parameter} ({_title(match.parameter)})" if match.parameter else "no parameter"
    colour = {"sure": "green", "doubtful": "yellow", "unknown": "red"}[match.state]
    lines = [f"{style(clean(text), 'bold')}: {taken}  {style(match.state, colour)}, score {match.score:.0f}"]
    facts = [
        f"{match.basis} basis" if match.basis else "",
        f"unit {match.unit.code}" if match.unit else "",
        f"{match.family} wording" if match.family else "",
        f"{match.mash} mash" if match.mash else "",
        f"a {match.limit} limit" if match.limit else "",
        f"about {match.matrix}, not malt" if match.matrix != "malt" else "",
        clean(match.why),
    ]
    told = "; ".join(fact for fact in facts if fact)
    if told:
        lines += wrap(told, style.width - 4, "    ")
    for name, score in match.rivals:
        lines.append(f"    {pad('rival', 7)}{name} ({_title(name)}), score {score:.0f}")
    return lines


def _title(name: str) -> str:
    known = parameters().get(name)
    return known.title if known else name
