"""The small text beside a file that is set aside: why, and what to do."""

from __future__ import annotations

from importer.output.terminal import clean
from importer.store import rows
from importer.store.ledger import Taken
from importer.walk import NOTE_ENDING, NOTE_REVIEW, NOTE_UNREADABLE

ENDING = NOTE_ENDING
_MOST = 60


def why_unopened(name: str, reason: str) -> str:
    """Why a file is set aside that was not even opened."""
    return f"{name}\n\n{NOTE_UNREADABLE}\n- {reason}\n"


def why(taken: Taken) -> str:
    """Why a document is set aside, in words for a brewer."""
    item = taken.item
    lines = [item.name]
    letter = item.letter
    if letter is not None:
        lines.append(f"came by email from {letter.sender or 'an unknown sender'}, {letter.sent or 'undated'}")
        lines += [f"subject: {letter.subject}"] if letter.subject else []
    lines.append("")
    lines.append(NOTE_REVIEW if taken.state == "review" else NOTE_UNREADABLE)
    reasons = [f"- {message} [{code}]" for code, message in taken.problems]
    for analysis in taken.analyses:
        header = rows.values(analysis)
        batch = analysis.header.get("batch")
        told = " · ".join(header[name] for name in ("supplier", "malt", "batch") if name in header)
        found = [f"- {told or 'analysis without a name'}"] if analysis.state == "review" else []
        if analysis.state == "review" and analysis.kind == "batch" and (batch is None or batch.state == "review"):
            found.append("    batch: not certain")
        for figure in (*analysis.figures, *analysis.derived):
            if figure.state == "review":
                reason = " ".join(figure.reasons) or ", ".join(figure.flags)
                found.append(f"    {rows.title_of(figure.parameter)}: {rows.told(figure)}. {reason}")
        if analysis.unrecognised:
            found = found or [f"- {told or 'analysis without a name'}"]
            found.append(f"    rows without a parameter: {clean(rows.unrecognised_words(analysis))}")
        reasons += found
    if len(reasons) > _MOST:
        reasons = [*reasons[:_MOST], f"- and {len(reasons) - _MOST} more"]
    return "\n".join([*lines, *reasons, ""])
