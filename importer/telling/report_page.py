"""The report as one page of HTML that needs nothing else: no script, no font, no picture from elsewhere."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from html import escape
from itertools import groupby

from importer.deciding.ground import day_of, header
from importer.deciding.report import LEAST_POINTS, Complaint, MaltReport, Report, Series, is_residue
from importer.models import Analysis
from importer.output.terminal import clean
from importer.output.words import CAUTION, as_printed, counted
from importer.store.rows import title_of
from importer.telling.svg import trend
from importer.telling.words import number

Evidence = Callable[[Complaint], str | None]

STYLE = """
:root { color-scheme: light; }
body { font: 15px/1.45 system-ui, "Segoe UI", "Liberation Sans", Arial, sans-serif; color: #111; background: #fff;
  max-width: 62rem; margin: 2rem auto; padding: 0 1.25rem; }
h1 { font-size: 1.7rem; margin: 0 0 .2rem; } h2 { font-size: 1.25rem; margin: 2.4rem 0 .6rem; }
h3 { font-size: 1.05rem; margin: 1.6rem 0 .4rem; } p { margin: .4rem 0; }
.quiet { color: #444; font-size: .88em; } .whole { white-space: nowrap; }
table { border-collapse: collapse; width: 100%; margin: .6rem 0; font-variant-numeric: tabular-nums; }
th, td { text-align: left; padding: .28rem .7rem .28rem 0; border-bottom: 1px solid #bbb; vertical-align: top; }
th { font-weight: 600; border-bottom: 1.5px solid #111; } td.n, th.n { text-align: right; }
.plots { display: grid; grid-template-columns: repeat(auto-fill, minmax(25rem, 1fr)); gap: 1rem 1.6rem; }
figure { margin: 0; break-inside: avoid; } figcaption { font-weight: 600; font-size: .92rem; }
figcaption span { font-weight: 400; color: #444; }
svg { width: 100%; height: auto; display: block; }
svg text { font: 10.5px system-ui, "Liberation Sans", Arial, sans-serif; fill: #222; }
svg .told { font-weight: 600; paint-order: stroke; stroke: #fff; stroke-width: 3px; }
.grid { stroke: #ddd; stroke-width: .7; } .axis { stroke: #333; stroke-width: .9; }
.band { fill: #e3e3e3; } .line { fill: none; stroke: #999; stroke-width: .9; }
.limit { stroke: #111; stroke-width: 1.3; stroke-dasharray: 7 4; }
.harvest { stroke: #333; stroke-width: 1; stroke-dasharray: 1.5 3; }
.point { fill: #111; } .estimate { fill: #fff; stroke: #111; stroke-width: 1.2; } .spread { stroke: #777; }
.out { fill: #fff; stroke: #111; stroke-width: 1.6; } .cross { stroke: #111; stroke-width: 2; }
.complaint { border-left: 4px solid #111; padding: .1rem 0 .3rem .9rem; margin: 1rem 0; break-inside: avoid; }
.complaint img { display: block; max-width: 100%; box-sizing: border-box; border: 1px solid #999;
  margin: .5rem 0 .1rem; }
.key { display: flex; flex-wrap: wrap; gap: .3rem 1.4rem; font-size: .88rem; margin: .4rem 0 0; padding: 0;
  list-style: none; }
.key svg { width: 2rem; height: .95rem; display: inline-block; vertical-align: -.15rem; }
section.letter > p { break-after: avoid; break-inside: avoid; }
@page { size: A4; margin: 16mm 14mm; }
@media print { body { margin: 0; max-width: none; padding: 0; font-size: 10.5pt; }
  .plots { grid-template-columns: 1fr 1fr; gap: .7rem 1rem; } h2, h3 { break-after: avoid; }
  .band { fill: #e3e3e3; print-color-adjust: exact; -webkit-print-color-adjust: exact; } }
"""
_MOST_NAMED = 20
_KEY = (
    ('<circle class="point" cx="20" cy="9" r="3"/>', "a batch"),
    ('<circle class="estimate" cx="20" cy="9" r="3"/>', "an estimate"),
    (
        '<circle class="out" cx="20" cy="9" r="6"/><line class="cross" x1="17" y1="6" x2="23" y2="12"/>'
        '<line class="cross" x1="17" y1="12" x2="23" y2="6"/>',
        "outside what was agreed",
    ),
    ('<line class="limit" x1="2" y1="9" x2="38" y2="9"/>', "agreed limit"),
    ('<line class="harvest" x1="20" y1="0" x2="20" y2="18"/>', "another harvest begins"),
    (
        '<rect class="band" x="2" y="2" width="36" height="14"/>',
        "where 19 of 20 results of an unchanged malt lie by the laboratory's own scatter",
    ),
)


def report_page(report: Report, evidence: Evidence = lambda _: None) -> str:
    """The report as one page of HTML that needs nothing else.

    ``evidence`` is asked for each figure that was outside of what was agreed, and gives the address of an inline
    picture of it on its sheet, or None.
    """
    title = f"Malt report: {_safe(report.scope)}"
    parts = [
        "<!doctype html>",
        '<html lang="en"><head><meta charset="utf-8">',
        '<meta http-equiv="Content-Security-Policy" '
        "content=\"default-src 'none'; style-src 'unsafe-inline'; img-src data:\">",
        '<meta name="viewport" content="width=device-width, initial-scale=1">',
        f"<title>{title}</title><style>{STYLE}</style></head><body>",
        f"<h1>{title}</h1>",
        *_summary(report),
        *_complaints(report, evidence),
        *_missing(report),
        *_trends(report),
        *_not_said(report),
        *_residues(report),
    ]
    return "\n".join([*parts, "</body></html>", ""])


def _safe(text: str) -> str:
    """Text that came from a sheet or a file, harmless in HTML."""
    return escape(clean(text))


def _summary(report: Report) -> Iterator[str]:
    days = [day for malt in report.malts for a in malt.batches if (day := report.days[a.id])]
    span = f", {min(days)} to {max(days)}" if days else ""
    batches, malts = counted(report.batches, "batch", "batches"), counted(len(report.malts), "malt", "malts")
    yield f"<p>{batches} of {malts}{span}.</p>"
    if report.undated:
        many = counted(len(report.undated), "batch", "batches")
        names = ", ".join(f"{header(a, 'malt')} {header(a, 'batch')}".strip() for a in report.undated[:_MOST_NAMED])
        more = " and others" if len(report.undated) > _MOST_NAMED else ""
        yield f"<p>{many} without a date on the sheet, in no year and in no plot: {_safe(names)}{more}.</p>"
    yield '<table><thead><tr><th>Supplier</th><th>Malt</th><th class="n">Batches</th><th>Crop</th>'
    yield '<th class="n">Outside what was agreed</th><th class="n">Without a certificate</th></tr></thead><tbody>'
    for malt in report.malts:
        crops = " → ".join(dict.fromkeys(c for a in malt.batches if (c := header(a, "crop_year"))))
        outside = str(len({one.analysis.id for one in malt.complaints})) if malt.agreed else "nothing agreed"
        missing = sum(one.malt == malt.malt and one.supplier == malt.supplier for one in report.missing)
        yield f"<tr><td>{_safe(malt.supplier)}</td><td>{_safe(malt.malt)}</td>"
        yield f'<td class="n">{len(malt.batches)}</td><td class="whole">{_safe(crops)}</td><td class="n">{outside}</td>'
        yield f'<td class="n">{missing if report.deliveries else "–"}</td></tr>'
    yield "</tbody></table>"


# ---------------------------------------------------------------- outside what was agreed


def _complaints(report: Report, evidence: Evidence) -> Iterator[str]:
    yield "<h2>Outside what was agreed</h2>"
    if not any(malt.agreed for malt in report.malts):
        yield "<p>No limits were given to hold the batches against.</p>"
        return
    if not report.complaints:
        yield "<p>Every figure that could be judged lies within what was agreed.</p>"
        return
    ordered = sorted(report.complaints, key=lambda one: header(one.analysis, "supplier"))
    for supplier, found in groupby(ordered, key=lambda one: header(one.analysis, "supplier")):
        yield f'<section class="letter"><h3>To {_safe(supplier or "the supplier")}</h3>'
        yield "<p>We hold the figures of your certificates against the limits that we agreed with you. "
        yield "These lie outside. Please check them against your records, and tell us how you wish to proceed.</p>"
        for one in found:
            yield from _complaint(one, evidence)
        yield "</section>"


def _complaint(one: Complaint, evidence: Evidence) -> Iterator[str]:
    analysis, found = one.analysis, one.found
    names = {name: _safe(header(analysis, name)) for name in ("malt", "batch", "certificate", "crop_year", "quantity")}
    facts = [
        f"certificate {names['certificate']}" if names["certificate"] else "",
        f"crop {names['crop_year']}" if names["crop_year"] else "",
        names["quantity"],
        f"dated {_safe(day_of(analysis))}" if day_of(analysis) else "",
    ]
    value = f"{number(found.value, found.parameter)} {found.unit}" if found.value is not None else "see the certificate"
    words = found.words[:1].upper() + found.words[1:]
    settle = " Another analysis could settle it." if found.within_scatter else ""
    yield '<div class="complaint">'
    yield f"<p><strong>{names['malt']}, batch {names['batch'] or 'without a number'}</strong> "
    yield f'<span class="quiet">{" · ".join(fact for fact in facts if fact)}</span></p>'
    yield f"<p>{_safe(found.title)}: <strong>{_safe(value)}</strong>; agreed: <strong>{_safe(found.agreed)}</strong>. "
    yield f"{_safe(words)}.{settle}</p>"
    figure = one.figure
    if figure is not None and figure.printed is not None:
        printed = figure.printed
        told = f"“{printed.label}  {printed.value} {printed.unit or ''}”".replace("  ", " ")
        place = f"page {printed.page} of {analysis.source.file}"
        yield f'<p class="quiet">On your certificate: {_safe(told)}, {_safe(place)}</p>'
        picture = evidence(one)
        if picture is not None:
            yield f'<img src="{escape(picture)}" alt="The row as it stands on the certificate">'
    yield "</div>"


def _missing(report: Report) -> Iterator[str]:
    if not report.deliveries:
        return
    yield "<h2>Delivered without a certificate</h2>"
    if not report.missing:
        yield f"<p>Each of {counted(report.deliveries, 'delivery', 'deliveries')} has its certificate.</p>"
        return
    yield "<table><thead><tr><th>Day</th><th>Supplier</th><th>Malt</th><th>Batch</th></tr></thead><tbody>"
    for one in report.missing:
        cells = (one.day, one.supplier, one.malt, one.batch)
        yield f"<tr>{''.join(f'<td>{_safe(cell)}</td>' for cell in cells)}</tr>"
    yield "</tbody></table>"


def _residues(report: Report) -> Iterator[str]:
    """Residues and contaminants as the sheets print them, with the usual caution and no verdict."""
    if not report.residues:
        return
    yield f'<h2>Residues and contaminants</h2><p class="quiet">{_safe(CAUTION)}</p>'
    yield "<table><thead><tr><th>Malt</th><th>Batch</th><th>Day</th><th>Figure</th><th>As printed</th></tr></thead>"
    yield "<tbody>"
    for malt in report.malts:
        for analysis in malt.batches:
            for figure in analysis.figures:
                if figure.printed is None or not is_residue(figure):
                    continue
                doubt = "" if figure.state == "accepted" else " (in review)"
                printed = as_printed(figure.printed, figure) + doubt
                day = report.days[analysis.id]
                cells = (malt.malt, header(analysis, "batch"), day, title_of(figure.parameter), printed)
                yield f"<tr>{''.join(f'<td>{_safe(cell)}</td>' for cell in cells)}</tr>"
    yield "</tbody></table>"


# ---------------------------------------------------------------- trends


def _trends(report: Report) -> Iterator[str]:
    yield "<h2>Trends</h2>"
    items = (f'<li><svg viewBox="0 0 40 18" aria-hidden="true">{shape}</svg> {text}</li>' for shape, text in _KEY)
    yield f'<ul class="key">{"".join(items)}</ul>'
    for malt in report.malts:
        yield f'<h3>{_safe(malt.malt)} <span class="quiet">{_safe(malt.supplier)}</span></h3>'
        if malt.series:
            yield f'<div class="plots">{"".join(_plots(malt))}</div>'
        else:
            yield f"<p>No plot: no figure is accepted on {LEAST_POINTS} dated batches or more.</p>"
        named = ", ".join(_batch_and_day(a, report.days[a.id]) for a in malt.batches if report.days[a.id])
        yield f'<p class="quiet">Batches, from left to right: {_safe(named or "none with a date")}.</p>'
    sources = dict.fromkeys(series.source for malt in report.malts for series in malt.series if series.source)
    if sources:
        yield f'<p class="quiet">Precision: {_safe("; ".join(_parts(sources)))}.</p>'


def _batch_and_day(analysis: Analysis, day: str) -> str:
    return f"{header(analysis, 'batch') or 'without a number'} ({day})"


def _parts(sources: Iterable[str]) -> Sequence[str]:
    return list(dict.fromkeys(part for source in sources for part in source.split("; ")))


def _plots(malt: MaltReport) -> Iterator[str]:
    for series in malt.series:
        yield f"<figure><figcaption>{_caption(series)}</figcaption>{trend(series, malt.harvests)}</figure>"


def _caption(series: Series) -> str:
    on = f" on {series.ground}" if series.ground else ""
    return f"{_safe(series.title)} <span>{_safe(series.unit + on)}</span>"


def _not_said(report: Report) -> Iterator[str]:
    """What could not be judged: once a malt and limit, with how many batches."""
    lines: dict[tuple[str, str, str, str], int] = {}
    for malt in report.malts:
        for _, one in malt.not_said:
            place = (malt.malt, one.title, one.agreed, one.words)
            lines[place] = lines.get(place, 0) + 1
    if not lines:
        return
    yield "<h2>What could not be judged</h2><table><thead><tr><th>Malt</th><th>Figure</th><th>Agreed</th>"
    yield '<th>Why</th><th class="n">Batches</th></tr></thead><tbody>'
    for cells, count in lines.items():
        yield f'<tr>{"".join(f"<td>{_safe(cell)}</td>" for cell in cells)}<td class="n">{count}</td></tr>'
    yield "</tbody></table>"
