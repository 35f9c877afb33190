"""Years in labels and headings: figures of another harvest than the one that the sheet is about."""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence

from importer.layout.terms import Terms
from importer.printed import Concern, PrintedFigure, PrintedHeader
from importer.reading.dates import parse_crop_year, parse_date
from importer.reading.entry_kinds import DATES

# "2023", "2023/24"; the year of a standard stands behind a colon or a hyphen ("EN 12345:2017").
_YEAR = re.compile(r"(?<![\d.,:\-–])((?:19|20)\d\d)(?:\s?/\s?((?:19|20)?\d\d))?(?![\d.,/\-–]\d|\d)")
CROP = "crop_year"
# Words of a caption of the harvest ("crop year").
LONGEST_CAPTION = 3


def of_other_years(
    figures: Sequence[PrintedFigure], headers: Sequence[PrintedHeader], terms: Terms
) -> dict[int, Concern]:
    """Doubts by the place of the figure, where its label, or a heading below the first figures, names another year."""
    first = {*figures[0].section, *figures[0].heading} if figures else set()
    above = [entry for entry in headers if figures and not _is_below(entry, figures[0])]
    crops = _years(parse_crop_year(entry.text) or "" for entry in above if entry.key == CROP)
    dates = (parse_date(entry.text) for entry in headers if entry.key in DATES)
    others = {date[0][:4] for date in dates if date is not None} | crops
    found: dict[int, Concern] = {}
    for at, figure in enumerate(figures):
        texts = [text for text in dict.fromkeys((*figure.section, *figure.heading)) if text not in first]
        if (heading := next((t for t in texts if _is_other(t, crops, others, terms)), None)) is not None:
            found[at] = Concern("label-doubtful", f"It stands under the heading “{heading}”.")
        elif _years((figure.label,)) - (crops or others):
            found[at] = Concern("label-doubtful", f"“{figure.label}” names a year that may not be that of the batch.")
    return found


def heads_harvest(heading: str, terms: Terms) -> bool:
    """True for "Crop 2023" and nothing else: of another harvest than that of the sheet, or of the same."""
    words = [word for word in heading.split() if not any(map(str.isdigit, word))]
    return len(words) < len(heading.split()) and terms.caption(" ".join(words).strip(" .:")) == CROP


def is_year(text: str) -> bool:
    """True for a year or the two of a season ("2023/24") and nothing else."""
    return _YEAR.fullmatch(text.strip()) is not None


def names_harvest(text: str, terms: Terms) -> bool:
    """True for words with the year of a harvest and its caption among them ("from crop 2023")."""
    return bool(_years((text,))) and _names_crop(text, terms)


def _is_below(entry: PrintedHeader, figure: PrintedFigure) -> bool:
    return (entry.page, entry.box.top) > (figure.page, figure.box.bottom)


def _is_other(heading: str, crops: set[str], others: set[str], terms: Terms) -> bool:
    named = _years((heading,))
    if not named:
        return False
    if _names_crop(heading, terms):
        return not named <= crops
    return bool(others) and not named & others


def _names_crop(heading: str, terms: Terms) -> bool:
    words = [word.strip(".,;:()") for word in heading.split() if not any(map(str.isdigit, word))]
    spans = (words[a : a + n] for n in range(1, LONGEST_CAPTION + 1) for a in range(len(words) - n + 1))
    return any(terms.caption(" ".join(span)) == CROP for span in spans)


def _years(texts: Iterable[str]) -> set[str]:
    found: set[str] = set()
    for text in texts:
        for year, second in _YEAR.findall(text):
            found |= {year, *((year[: 4 - len(second)] + second,) if second else ())}
    return found
