"""What the text above a table says of its figures: headings of other samples."""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence

from importer.layout.lines import Line
from importer.layout.terms import Terms
from importer.printed import Concern, PrintedFigure, PrintedHeader
from importer.reading.entry_kinds import DATES
from importer.reading.years import heads_harvest, names_harvest
from importer.vocabulary.captions import document_title, looks_like_batch
from importer.vocabulary.malt_names import names_one_malt
from importer.vocabulary.result_words import plain_word, result_words
from importer.vocabulary.statements import heads_another_sample, names_another_sample
from importer.vocabulary.text import bare
from importer.vocabulary.units import parse_unit

_LONGEST_END = 4  # words of a limit behind a label
_DIGIT = re.compile(r"\d")

# Lines of a heading stand no farther from each other, and from the table, than this (em).
NEAR = 3.0
MAX_LINES = 4
_AGREED = {"spec", "typical", "previous"}
# Heads of columns that say of a section within a table that its figures are none of the batch.
_NO_RESULTS = _AGREED | {"min", "max", "precision"}
_OF_ONE_BATCH = frozenset({"malt", "batch", "certificate", "quantity", *DATES})
_NUMBERS = ("batch", "order", "certificate")


def heading_above(lines: Sequence[Line], first: int, used: Iterable[int]) -> tuple[str, ...]:
    """The lines of one cell right above line ``first`` that no table has taken, from top to bottom."""
    taken = set(used)
    found: list[str] = []
    below = lines[first]
    for i in range(first - 1, max(-1, first - 1 - MAX_LINES), -1):
        line = lines[i]
        if i in taken or len(line.cells) > 1 or below.box.top - line.box.bottom > NEAR * line.em:
            break
        found.insert(0, line.text)
        below = line
    return tuple(found)


def of_other_kind(heading: Sequence[str], terms: Terms, later: bool) -> Concern | None:
    """A doubt where a heading speaks of something else than the malt of the sheet.

    ``later``: figures came before it, so that a specification is not what the whole sheet is.
    """
    for text in heading:
        agreed = document_title(text) in ("specification", "typical") or bool(_AGREED & set(terms.roles(text)))
        if terms.is_other_matter(text) or (later and agreed):
            return Concern("label-doubtful", f"It stands under the heading “{text}”.")
    return None


def numbers_named(figures: Sequence[PrintedFigure], terms: Terms) -> dict[str, str]:
    """Batch, order and certificate numbers that headings name with their captions, the text of each by its number.

    The title over all of the figures has the number of their own certificate.
    """
    found: dict[str, str] = {}
    over = [{*figure.section, *figure.heading} for figure in figures]
    over_all = set.intersection(*over) if over else set()
    for text in set().union(*over):
        words = text.replace(":", " ").split()
        for at, word in enumerate(words):
            number = word.strip(",;()")
            if not looks_like_batch(number) or at == 0:
                continue
            captions = {terms.caption(" ".join(words[max(0, at - n) : at])) for n in (1, 2, 3)} & set(_NUMBERS)
            own = captions == {"certificate"} and text in over_all and document_title(text) is not None
            if captions and not own:
                found[number] = text
    return found


def of_other_number(figure: PrintedFigure, named: dict[str, str], headers: Sequence[PrintedHeader]) -> Concern | None:
    """A doubt where a heading over a figure names a number that is none of those in the head of its sheet."""
    if not named:
        return None
    known = " ".join(bare(entry.text) for entry in headers)
    for number, text in named.items():
        if text in (*figure.section, *figure.heading) and bare(number) not in known:
            return Concern("label-doubtful", f"It stands under the heading “{text}”.")
    return None


def titles_of_others(figures: Sequence[PrintedFigure], headers: Sequence[PrintedHeader]) -> set[str]:
    """Titles of one page of several that are the number of another batch or the name of another malt than the head
    gives."""
    pages: dict[str, set[int]] = {}
    for figure in figures:
        for text in figure.section:
            pages.setdefault(text, set()).add(figure.page)
    all_pages = {figure.page for figure in figures}
    known = " ".join(bare(entry.text) for entry in headers)
    found: set[str] = set()
    for text, where in pages.items():
        malts = [bare(entry.text) for entry in headers if entry.key == "malt" and entry.page not in where]
        other_malt = bool(malts) and not any(malt in bare(text) or bare(text) in malt for malt in malts)
        other_batch = looks_like_batch(text) and bare(text) not in known
        if where != all_pages and (other_batch or (other_malt and names_one_malt(text))):
            found.add(text)
    return found


def of_other_maltster(figure: PrintedFigure, headers: Sequence[PrintedHeader]) -> Concern | None:
    """A doubt where the page of a figure names another maltster than those before it, and no batch of its own."""
    names = {entry.page: bare(entry.text) for entry in headers if entry.key == "supplier" and entry.sure}
    own = names.get(figure.page)
    if own is None or any(entry.key == "batch" and entry.page == figure.page for entry in headers):
        return None
    others = [name for page, name in names.items() if page < figure.page]
    if not others or any(own in name or name in own for name in others):
        return None
    return Concern("label-doubtful", "Its page names another maltster; it may be of another batch.")


def of_a_limit(figure: PrintedFigure, terms: Terms) -> Concern | None:
    """A doubt where a label ends like a limit ("Moisture max." before 4.5 %) and no head says that results follow."""
    words = figure.label.rstrip(" .:,;()").split()
    if figure.column or not figure.value or (not figure.unit and words and parse_unit(words[-1]) is not None):
        return None  # "Saccharification, min" may name the unit
    limits = result_words().before
    for count in range(min(_LONGEST_END, len(words) - 1), 0, -1):
        end, before = " ".join(words[-count:]), words[-count - 1]
        # "8 min" is a time, and "mass", an Italian limit, is a part of names.
        if limits.get(plain_word(end)) in ("max", "min") and not _DIGIT.search(before) and terms.is_limit(end):
            return Concern("label-doubtful", "Its label ends like the name of a limit: it may be no result.")
    return None


def of_other_samples(figures: Sequence[PrintedFigure], terms: Terms) -> dict[int, Concern]:
    """Doubts by the place of the figure, where its label or a heading below the first figures speaks of another sample.

    Such a heading may have been read as a row: it then holds for the rows of its section that follow.
    """
    first = {*figures[0].section, *figures[0].heading} if figures else set()
    found: dict[int, Concern] = {}
    row: PrintedFigure | None = None
    said = ""
    for at, figure in enumerate(figures):
        whole = " ".join(part for part in (figure.label, figure.unit, figure.value) if part)
        if at and not terms.is_label(figure.label) and is_of_another(whole, terms):
            row, said = figure, whole
            continue
        row = row if row is not None and (row.page, row.section) == (figure.page, figure.section) else None
        texts = [text for text in (*figure.section, *figure.heading) if text not in first]
        text = said if row is not None else next((text for text in texts if is_of_another(text, terms)), None)
        if text is not None:
            found[at] = Concern("label-doubtful", f"It stands under the heading “{text}”.")
        elif names_another_sample(figure.label):
            found[at] = Concern("label-doubtful", f"“{figure.label}” may be of another sample.")
    return found


def is_of_another(heading: str, terms: Terms) -> bool:
    """True for a heading over figures of another sample, harvest or delivery, or over limits and typical values."""
    if heads_harvest(heading, terms):
        return False
    if heads_another_sample(heading) or _AGREED & set(terms.roles(heading)):
        return True
    # "min" may be the unit of the rows below it ("EBC 4.5.1 min.").
    plain = not terms.is_unit(heading) and not any(map(str.isdigit, heading))
    return plain and bool(_NO_RESULTS & set(terms.roles(heading)))


def is_remark_of_another(text: str, terms: Terms) -> bool:
    """True for a remark beside a row that says of what other sample it is."""
    return (
        names_another_sample(text)
        or names_harvest(text, terms)
        or bool({"typical", "previous"} & set(terms.roles(text)))
    )


def under_title(figure: PrintedFigure, titles: set[str]) -> Concern | None:
    """A doubt where a figure stands under one of these titles."""
    text = next((text for text in figure.section if text in titles), None)
    return Concern("label-doubtful", f"It stands under the heading “{text}”.") if text is not None else None


def of_several_batches(headers: Sequence[PrintedHeader]) -> Concern | None:
    """A doubt where two pages name different malts, dates and the like: the batch number may be that of one only."""
    texts: dict[str, dict[int, set[str]]] = {}
    for entry in headers:
        if entry.sure and entry.key in _OF_ONE_BATCH:
            texts.setdefault(entry.key, {}).setdefault(entry.page, set()).add(bare(entry.text))
    apart = [key for key, pages in texts.items() if len(pages) > 1 and not set.intersection(*pages.values())]
    if len(apart) < 2:
        return None
    return Concern("label-doubtful", "The pages differ in what they say of the batch; it may be of another one.")
