"""The tables that ``onebasis batch`` and ``onebasis compare`` print."""

from __future__ import annotations

import textwrap
from collections.abc import Sequence

from importer.deciding.results import AgainstLimit, Batch, Comparison, Difference, Effect, Named, Residue, Row
from importer.output.terminal import Style, clean, columns, fit, pad, wrap
from importer.telling.words import LEGEND, number, shown_text, sign, who

_INDENT = "  "
_MOST_FOR_NAME = 30
_LEAST_FOR_NAME = 24
_STANDING = {"within": "within", "outside": "outside", "not-said": "?"}


def comparison_table(comparison: Comparison, style: Style | None = None) -> str:
    """Analyses side by side; each is held against the first."""
    style = style or Style()
    lines = [style("Compared", "bold")]
    for letter, named in zip(_letters(len(comparison.analyses)), comparison.analyses, strict=True):
        lines += wrap(f"{letter}  {who(named)} · {_origin(named)}", style.width - 2, _INDENT)
    lines += ["", *_rows(comparison.rows, _letters(len(comparison.analyses)), comparison.basis, style)]
    lines += _residues(comparison.residues, style)
    lines += _foot(comparison.rows, comparison.notice, style)
    return _text(lines)


def batch_table(batch: Batch, style: Style | None = None) -> str:
    """What a batch means, for a brewer to read."""
    style = style or Style()
    lines = [style(who(batch.analysis), "bold")]
    lines += wrap(_origin(batch.analysis), style.width - 2, _INDENT)
    if batch.against:
        lines += wrap(f"held against the {' and the '.join(batch.against)}", style.width - 2, _INDENT)
    else:
        lines += [_INDENT + "there is no earlier batch of this malt and supplier to hold it against"]
    if batch.harvest:
        lines += [_INDENT + style(clean(batch.harvest), "cyan")]
    lines += ["", *_rows(batch.rows, ("this batch", *batch.against), batch.basis, style)]
    lines += _agreed(batch, style)
    lines += _effects(batch.effects, style)
    lines += _residues(batch.residues, style)
    lines += _foot(batch.rows, batch.notice, style)
    return _text(lines)


def _text(lines: Sequence[str]) -> str:
    return "\n".join(line.rstrip() for line in lines) + "\n"


def _letters(count: int) -> tuple[str, ...]:
    return tuple(chr(ord("A") + number) if number < 26 else str(number + 1) for number in range(count))


def _origin(named: Named) -> str:
    parts = [
        clean(named.supplier),
        f"crop {clean(named.crop_year)}" if named.crop_year else "",
        named.day,
        f"{named.method_family} methods",
        clean(named.file),
    ]
    return " · ".join(part for part in parts if part)


def _rows(rows: Sequence[Row], heads: Sequence[str], basis: str, style: Style) -> list[str]:
    """A line a parameter; under it what is more than scatter, in words."""
    table = [
        [
            row.title + (f" ({row.ground})" if row.ground else ""),
            *(
                f"{shown_text(cell, row.parameter)} {sign(found) or ' '}"
                for cell, found in zip(row.cells, row.differences, strict=True)
            ),
        ]
        for row in rows
    ]
    heading = [f"on {basis}", *(f"{clean(head)}  " for head in heads)]
    name, *cells_wide = [max(columns(line[n]) for line in [heading, *table]) for n in range(len(heading))]
    left = style.width - len(_INDENT) - sum(width + 2 for width in cells_wide)
    widths = [min(name, max(_LEAST_FOR_NAME, left)), *cells_wide]
    lines = [style(_line(heading, widths), "dim")]
    for row, cells in zip(rows, table, strict=True):
        shown, *rest = _name_lines(cells[0], widths[0])
        text = "\n".join([_line([shown, *cells[1:]], widths), *(_INDENT * 2 + part for part in rest)])
        told = [found for found in row.differences if found is not None and found.verdict == "different"]
        lines.append(style(text, "yellow") if told else text)
        for head, found in zip(heads, row.differences, strict=True):
            against = (
                f"{head} against {heads[row.reference]}" if row.reference or len(heads[0]) == 1 else f"against {head}"
            )
            lines += [style(part, "dim") for part in _remark(against, found, style)]
    return lines


def _name_lines(name: str, width: int) -> list[str]:
    """A name that is too long goes on in the next line: cut off, two methods of one figure would look alike."""
    return textwrap.wrap(name, width) or [""]


def _line(cells: Sequence[str], widths: Sequence[int]) -> str:
    first, *others = cells
    name, *rest = widths
    shown = [pad(other, width, right=True) for other, width in zip(others, rest, strict=True)]
    return _INDENT + "  ".join([pad(fit(first, name), name), *shown])


def _remark(head: str, found: Difference | None, style: Style) -> list[str]:
    if found is None or found.verdict in ("equal", "within-scatter"):
        return []
    if found.verdict == "not-said" and found.difference is not None and not found.compared_on and not found.source:
        return []  # the sign and the legend say it: no precision is known
    on = f" ({found.compared_on})" if found.compared_on else ""
    return wrap(f"{clean(head)}: {clean(found.words)}{on}", style.width - 2, _INDENT * 3)


def _agreed(batch: Batch, style: Style) -> list[str]:
    if not batch.agreed:
        return []
    lines = ["", _INDENT + style("What was agreed", "bold") + f"  {clean(batch.agreed_from)}"]
    name = min(_MOST_FOR_NAME, max(columns(one.title) for one in batch.agreed))
    for one in batch.agreed:
        value = f"{number(one.value, one.parameter)} {one.unit}" if one.value is not None else "–"
        text = f"{_INDENT}{pad(fit(one.title, name), name)}  {pad(value, 14, right=True)}  {one.agreed}  {_word(one)}"
        lines.append(style(text, "yellow") if one.standing == "outside" else text)
        if one.standing != "within":
            lines += [style(part, "dim") for part in wrap(clean(one.words), style.width - 2, _INDENT * 3)]
    return lines


def _word(one: AgainstLimit) -> str:
    return _STANDING[one.standing]


def _effects(effects: Sequence[Effect], style: Style) -> list[str]:
    if not effects:
        return []
    lines = ["", _INDENT + style("What it does", "bold")]
    for effect in effects:
        mark = "caution: " if effect.kind == "caution" else ""
        told = wrap(f"{effect.subject}: {mark}{clean(effect.words)}", style.width - 2, _INDENT)
        lines += [style(part, "yellow") for part in told] if effect.kind == "caution" else told
        behind = [f"= {effect.formula}" if effect.formula else "", effect.validity, effect.source]
        text = " · ".join(part for part in behind if part)
        lines += [style(part, "dim") for part in wrap(text, style.width - 2, _INDENT * 3)] if text else []
    return lines


def _residues(residues: Sequence[Residue], style: Style) -> list[str]:
    if not residues:
        return []
    lines = ["", _INDENT + style("Residues and contaminants, as printed; not judged", "bold")]
    for one in residues:
        cells = [shown_text(cell, one.parameter) for cell in one.cells]
        lines.append(f"{_INDENT}{pad(fit(one.title, _MOST_FOR_NAME), _MOST_FOR_NAME)}  {'   '.join(cells)}")
    return lines


def _foot(rows: Sequence[Row], notice: str, style: Style) -> list[str]:
    lines: list[str] = [""]
    if any(found for row in rows for found in row.differences):
        lines += [style(part, "dim") for part in wrap(LEGEND, style.width - 2, _INDENT)]
    cells = [cell for row in rows for cell in row.cells if cell]
    if any(cell.estimated for cell in cells):
        text = "~ an estimate: it rests on a correlation between methods; ± is its spread."
        lines += [style(part, "dim") for part in wrap(text, style.width - 2, _INDENT)]
    if any(row.ground for row in rows):
        text = "A method in brackets: the figure stays on it and is only set against figures of that method."
        lines += [style(part, "dim") for part in wrap(text, style.width - 2, _INDENT)]
    if notice:
        lines += [style(part, "dim") for part in wrap(notice, style.width - 2, _INDENT)]
    return lines
