"""Pages of words to printed analyses: every page read into events, and the events shared out to batches."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, field, replace

from importer.layout.beside import part_blocks
from importer.layout.cards import find_cards
from importer.layout.heads import find_heads
from importer.layout.keys import spelled_out
from importer.layout.lines import Line, find_lines
from importer.layout.second_look import look_again
from importer.layout.sizes import with_sizes_named
from importer.layout.tables import Table, find_tables
from importer.layout.terms import Terms
from importer.layout.transposed import find_transposed
from importer.layout.wrapped_entries import with_captions_apart, with_entries_whole
from importer.printed import Concern, PrintedAnalysis, PrintedFigure, PrintedHeader
from importer.reading.aside import beside_events
from importer.reading.batch_rows import batch_row_events, lanes_of
from importer.reading.certificates_beside import with_lanes
from importer.reading.events import Event
from importer.reading.form_boxes import find_forms
from importer.reading.headings_beside import with_headings_beside
from importer.reading.left_over import left_over_events
from importer.reading.legend import batches_by_head
from importer.reading.letterhead import letterhead_events, names_above_batches, page_titles
from importer.reading.limit_cells import with_listed_limits
from importer.reading.limit_rows import with_results_among_limits
from importer.reading.pairs import box_events, card_events, free_events
from importer.reading.parts import Part, parts_of
from importer.reading.rows import BatchColumns, table_events
from importer.reading.surroundings import (
    heading_above,
    numbers_named,
    of_a_limit,
    of_other_kind,
    of_other_maltster,
    of_other_number,
    of_other_samples,
    of_several_batches,
    titles_of_others,
    under_title,
)
from importer.reading.years import of_other_years
from importer.vocabulary.captions import looks_like_batch
from importer.words import Page

SHARED = Concern("label-doubtful", "It is printed once for several batches.")
# Limits and ranges in this share of the rows, and no batch number: the sheet is a specification.
SPECIFICATION_SHARE = 0.6
_LIMIT_VALUE = re.compile(r"[<>≤≥]|\d\s*[-–—÷~]\s*\d|\b(max|min|bis|up to)", re.IGNORECASE)


@dataclass(frozen=True, slots=True)
class _Carried:
    """What a page hands to the next: its last table, which may go on there, and its batch columns."""

    table: Table | None = None
    batches: BatchColumns = field(default_factory=BatchColumns)
    figures: bool = False


def read_analyses(pages: Sequence[Page], terms: Terms) -> list[PrintedAnalysis]:
    """All analyses that are printed on the pages of one document, in reading order."""
    events: list[Event] = []
    notes: dict[int, list[str]] = {}
    carried = _Carried()
    key: dict[str, str] = {}
    for page in pages:
        lines, key = spelled_out(look_again(find_lines(page), page.second, terms), terms, key)
        lines = with_captions_apart(with_entries_whole(with_sizes_named(lines, terms), terms), terms)
        found, carried, taken = _page_events(page, lines, terms, carried)
        events += sorted(found, key=lambda event: event.place)
        notes[page.number] = _notes([line for line in lines if id(line) not in taken], found, terms)
    analyses: list[PrintedAnalysis] = []
    for part in parts_of(events):
        analyses += _analyses(part, notes)
    return [_without_others(analysis, terms) for analysis in analyses]


def _without_others(analysis: PrintedAnalysis, terms: Terms) -> PrintedAnalysis:
    """The analysis with a doubt at each figure that may be of another batch, by a heading or by its page."""
    named = numbers_named(analysis.figures, terms)
    several = of_several_batches(analysis.header)
    other = titles_of_others(analysis.figures, analysis.header)
    samples = of_other_samples(analysis.figures, terms)
    years = of_other_years(analysis.figures, analysis.header, terms)
    figures = []
    for at, figure in enumerate(analysis.figures):
        concern = (
            of_other_number(figure, named, analysis.header)
            or samples.get(at)
            or years.get(at)
            or under_title(figure, other)
            or of_other_maltster(figure, analysis.header)
            or of_a_limit(figure, terms)
            or several
        )
        figures.append(replace(figure, doubts=(*figure.doubts, concern)) if concern is not None else figure)
    return replace(analysis, figures=tuple(figures))


def _notes(lines: Sequence[Line], events: Sequence[Event], terms: Terms) -> list[str]:
    """Lines that say something of the sheet as a whole: all but those that hold or head a figure."""
    rows = [e.figure.box.middle for e in events if e.figure is not None and not e.figure.in_sentence]
    return [
        line.text
        for line in lines
        if not any(line.box.top < y < line.box.bottom for y in rows)
        # A name between the rows of a table is a row of it whose result was left blank.
        and not (rows and min(rows) < line.box.middle < max(rows) and _is_label(line.text, terms))
        # A unit in a cell of its own belongs to a row that was not found.
        and not any(terms.is_unit(cell.text) and not _names_family(cell.text, terms) for cell in line.cells)
        and not (len(line.cells) > 1 and any(_is_label(cell.text, terms) for cell in line.cells))
        # Captions side by side are no sentence: "Sampled on" before "Product" says nothing of a basis.
        and sum(terms.caption(cell.text.rstrip(": ")) is not None for cell in line.cells) < 2
    ]


def _is_label(text: str, terms: Terms) -> bool:
    """True for a label that is not the name of a method family as well ("EBC")."""
    return terms.is_label(text) and not _names_family(text, terms)


def _names_family(text: str, terms: Terms) -> bool:
    return any(role.startswith("family:") for role in terms.roles(text))


def _page_events(
    page: Page, lines: Sequence[Line], terms: Terms, carried: _Carried
) -> tuple[list[Event], _Carried, set[int]]:
    """Everything found on a page, what it hands to the next, and the lines (by identity) that tables have taken."""
    form = find_forms(lines, terms)
    events = box_events(form.rows, page, terms)
    boxes = {id(lines[i]) for i in form.used}
    lines = [line for line in lines if id(line) not in boxes]
    cards = find_cards(lines, terms)
    events += card_events(cards.cards, page, terms)
    boxes |= {id(lines[i]) for i in cards.lines}
    lines = [line for line in lines if id(line) not in boxes]
    used: set[int] = set()
    for transposed in find_transposed(lines, page, terms):
        events += batch_row_events(transposed, page, lines, terms)
        used |= transposed.lines
    rest = [line for i, line in enumerate(lines) if i not in used]
    heads = find_heads(rest, terms)
    parted, blocks = part_blocks(rest, heads, terms)
    if blocks:
        rest, heads = parted, find_heads(parted, terms)
    tables = find_tables(rest, heads, page, terms, carried.table)
    consumed: set[int] = set()
    batches = carried.batches
    titles = page_titles(page, rest, terms)
    figures = carried.figures or bool(form.rows or cards.cards)
    for table in tables:
        found, batches = table_events(table, page, terms, batches, titles, batches_by_head(table, rest))
        if found:
            found = with_results_among_limits(found, terms)
            first = min(table.lines) if table.head_line is None else table.head_line
            events += _under(heading_above(rest, first, consumed), found, terms) if figures else found
            consumed |= table.lines
            figures = True
    events += free_events(rest, frozenset(consumed), page, terms, later=figures)
    for block in blocks:
        events += beside_events(block, tables, rest, page, terms, later=figures)
    free = [line for i, line in enumerate(rest) if i not in consumed]
    events += [*letterhead_events(page, free, events, terms), *names_above_batches(page, free, events, terms)]
    events = with_headings_beside(events, rest, terms)
    events = with_lanes([*events, *left_over_events(lines, events, page, terms, frozenset(used))])
    headed = [table for table in tables if table.headed]
    taken = boxes | {id(line) for i, line in enumerate(rest) if i in consumed} | {id(lines[i]) for i in used}
    return events, _Carried(headed[-1] if headed else carried.table, batches, figures), taken


def _under(heading: tuple[str, ...], events: Sequence[Event], terms: Terms) -> list[Event]:
    """Figures of a later table with the lines above it, and in doubt where those speak of something else."""
    other = of_other_kind(heading, terms, later=True)
    concerns = (other,) if other is not None else ()
    return [
        replace(e, figure=replace(e.figure, heading=heading, doubts=(*e.figure.doubts, *concerns))) if e.figure else e
        for e in events
    ]


def _analyses(part: Part, notes: dict[int, list[str]]) -> list[PrintedAnalysis]:
    lanes = lanes_of([event for event in part.events if event.figure is not None])
    shared = [event for event in part.events if event.lane is None]
    if not lanes:
        return [_analysis(shared, [], notes)]
    own = {lane: [event for event in part.events if event.lane == lane] for lane in lanes}
    named = {lane for lane, events in own.items() if _has_batch_number(events)}
    return [
        _analysis(shared, events if lane in named or not named else [_nameless(e) for e in events], notes, lane=lane)
        for lane, events in own.items()
    ]


def _has_batch_number(events: Sequence[Event]) -> bool:
    batches = [event.header.text for event in events if event.header is not None and event.header.key == "batch"]
    return any(looks_like_batch(text) for text in batches)


def _nameless(event: Event) -> Event:
    """A figure of a column without a batch number among columns that have one: a mean, perhaps, or a limit."""
    if event.figure is None:
        return event
    concern = Concern("label-doubtful", "Its column has no batch number although the columns beside it have one.")
    return replace(event, figure=replace(event.figure, doubts=(*event.figure.doubts, concern)))


def _analysis(
    shared: Sequence[Event], own: Sequence[Event], notes: dict[int, list[str]], lane: str | None = None
) -> PrintedAnalysis:
    common = [event for event in shared if event.figure is not None]
    figures = [event for event in own if event.figure is not None]
    results: list[PrintedFigure] = [
        event.figure for event in figures if event.figure is not None and not event.limits_only
    ]
    for event in common:
        if event.figure is not None and not event.limits_only:
            figure = event.figure
            results.append(replace(figure, doubts=(*figure.doubts, SHARED)) if lane is not None else figure)
    limits: list[PrintedFigure] = [
        event.figure for event in [*figures, *common] if event.figure is not None and event.limits_only
    ]
    # What a column says of its batch counts more than what the sheet says of all.
    said = {event.header.key for event in own if event.header is not None}
    headers = _headers([*own, *[e for e in shared if e.header is None or e.header.key not in said]])
    batch = any(entry.key == "batch" for entry in headers)
    specification = not results and bool(limits)
    if (
        not batch
        and len(results) < len(limits)
        and not any(e.in_table and not e.limits_only for e in [*figures, *common])
    ):
        # A value or two in the lines around a table of limits makes no certificate of it.
        specification, results = True, [*limits, *results]
    if not specification and not batch and results:
        bounded = sum(bool(_LIMIT_VALUE.search(figure.value)) or not figure.value for figure in results)
        specification = bounded >= SPECIFICATION_SHARE * len(results) and len(results) > 2
    results = with_listed_limits(results, limits)
    chosen = results or ([_without_result(figure) for figure in limits] if batch else limits)
    specification = specification and not batch
    pages = sorted({figure.page for figure in chosen} | {entry.page for entry in headers})
    lines = tuple(text for number in pages for text in notes.get(number, []))
    return PrintedAnalysis(
        pages=tuple(pages),
        header=tuple(headers),
        figures=tuple(sorted(chosen, key=lambda f: (f.page, f.box.middle, f.box.x0))),
        notes=lines,
        is_specification=specification,
    )


def _without_result(figure: PrintedFigure) -> PrintedFigure:
    """A row of limits or typical values on the sheet of a batch, where a result was expected."""
    concern = Concern("label-doubtful", "The sheet is of a batch, but only limits or typical values were found for it.")
    return replace(figure, doubts=(*figure.doubts, concern))


def _headers(events: Sequence[Event]) -> list[PrintedHeader]:
    """Header entries, the batch's own first; of two for one key both are kept for the next stage to weigh."""
    return [event.header for event in events if event.header is not None]
