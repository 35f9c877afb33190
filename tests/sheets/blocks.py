"""Parts of a page around the results: letterhead, title, header entries in many forms, footers."""

from __future__ import annotations

from collections.abc import Callable
from random import Random

from tests.sheets.content import Content
from tests.sheets.draw import Pen
from tests.sheets.headers import ADDRESSES, FOOTERS, Entry
from tests.sheets.truth import TruthHeader

HeaderForm = Callable[[Pen, Content, list[Entry]], None]

PHONES = ("Tel. +99 1632 960417", "Phone: 0999 41 27 305", "Tel: (0999) 55 02 18", "T +99 20 794 60 11")
DISCLAIMERS = {
    "en": (
        "The results refer only to the sample tested. Retained samples are kept for 12 months.",
        "Store cool and dry, below 20 °C and 60 % relative humidity. Shelf life 18 months.",
        "Accredited to ISO/IEC 17025, no. L-1178. Not to be reproduced except in full.",
        "Uncertainty of measurement available on request (k = 2, 95 %).",
    ),
    "de": (
        "Die Ergebnisse beziehen sich nur auf die untersuchte Probe. Rückstellmuster: 12 Monate.",
        "Kühl und trocken lagern, unter 20 °C und 60 % rel. Feuchte. Haltbarkeit 18 Monate.",
        "Akkreditiert nach ISO/IEC 17025, Nr. PL-1178. Auszugsweise Vervielfältigung nicht gestattet.",
    ),
    "fr": ("Les résultats ne concernent que l'échantillon analysé. Conservation : 18 mois à moins de 20 °C.",),
    "nl": ("De resultaten gelden alleen voor het onderzochte monster. Houdbaarheid 18 maanden onder 20 °C.",),
    "es": ("Los resultados se refieren solo a la muestra analizada. Conservar 18 meses a menos de 20 °C.",),
    "cs": ("Výsledky se týkají pouze zkoušeného vzorku. Skladujte 18 měsíců při teplotě do 20 °C.",),
    "da": ("Resultaterne gælder kun den undersøgte prøve. Holdbar 18 måneder under 20 °C.",),
    "it": ("I risultati si riferiscono solo al campione analizzato. Conservare 18 mesi sotto 20 °C.",),
    "sk": ("Výsledky sa týkajú len skúšanej vzorky. Skladujte 18 mesiacov pri teplote do 20 °C.",),
    "pl": ("Wyniki dotyczą wyłącznie badanej próbki. Przechowywać 18 miesięcy poniżej 20 °C.",),
    "pt": ("Os resultados referem-se apenas à amostra analisada. Conservar 18 meses abaixo de 20 °C.",),
}
SIGNED = {
    "en": "Laboratory manager", "de": "Laborleitung", "fr": "Responsable du laboratoire", "nl": "Hoofd laboratorium",
    "es": "Responsable de laboratorio", "cs": "Vedoucí laboratoře", "da": "Laboratorieleder",
    "it": "Responsabile del laboratorio", "sk": "Vedúci laboratória", "pl": "Kierownik laboratorium",
    "pt": "Responsável do laboratório",
}  # fmt: skip


def letterhead(pen: Pen, content: Content, full: bool = False) -> None:
    """The supplier's name as a logo-like line, address and phone. Gives the supplier without a caption."""
    rng, look = content.rng, pen.look
    supplier = content.maker.supplier
    printed = supplier.upper() if rng.random() < 0.3 else supplier
    align = rng.choice(("left", "left", "center", "right"))
    x = {"left": pen.left, "center": pen.width / 2, "right": pen.right}[align]
    pen.text(x, pen.y, printed, size=look.size * 1.7, bold=True, align=align)  # type: ignore[arg-type]
    pen.y += look.size * 2.3
    if full or rng.random() < 0.6:
        lines = [*ADDRESSES[content.words.language], rng.choice(PHONES)]
        content.not_figures.extend(lines)
        if rng.random() < 0.5:
            pen.text(x, pen.y, "  ·  ".join(lines), size=look.size * 0.8, align=align, grey=0.3)  # type: ignore[arg-type]
            pen.y += look.size * 1.3
        else:
            for line in lines:
                pen.text(x, pen.y, line, size=look.size * 0.8, align=align, grey=0.3)  # type: ignore[arg-type]
                pen.y += look.size
    if rng.random() < 0.5:
        pen.y += 3
        pen.line(pen.left, pen.y, pen.right, pen.y, 1.2)
    pen.y += look.size
    for analysis in content.analyses:
        analysis.header.setdefault("supplier", TruthHeader(supplier, supplier, "either", required=False))


def title(pen: Pen, content: Content, text: str | None = None) -> None:
    """The document's title, and the line that names the methods."""
    rng, look = content.rng, pen.look
    words = text or content.title
    if rng.random() < 0.25:
        words = words.upper()
    centred = rng.random() < 0.4
    pen.text(pen.width / 2 if centred else pen.left, pen.y, words, size=look.size * 1.45, bold=True,
             align="center" if centred else "left")  # fmt: skip
    pen.y += look.size * 2.4


def method_lines(pen: Pen, content: Content) -> None:
    """The sentences that name the method family and the moisture basis."""
    for text in (content.family_line, content.note_line):
        if text:
            for line in pen.wrap(text, pen.right - pen.left):
                pen.text(pen.left, pen.y, line)
                pen.y += pen.look.size * 1.4
    pen.y += pen.look.size * 0.4


def closing(pen: Pen, content: Content, full: bool = False) -> None:
    """Disclaimers and a signature below the results."""
    rng, look = content.rng, pen.look
    pen.y += look.size
    small = look.size * 0.8
    lines = list(DISCLAIMERS[content.words.language])
    rng.shuffle(lines)
    for text in lines[: len(lines) if full else rng.randint(0, 2)]:
        for line in pen.wrap(text, pen.right - pen.left, small):
            if pen.y < pen.bottom:
                pen.text(pen.left, pen.y, line, size=small, grey=0.25)
                pen.y += small * 1.3
        content.not_figures.append(text)
    if (full or rng.random() < 0.4) and pen.y + 40 < pen.bottom:
        pen.y += 22
        pen.line(pen.left, pen.y, pen.left + 130, pen.y)
        pen.y += 3
        pen.text(pen.left, pen.y, SIGNED[content.words.language], size=small)
        pen.y += small * 1.4


def footers(pen: Pen, content: Content, pages: int = 1) -> None:
    """Puts form number, page number and register number at the foot of every page."""
    rng = content.rng
    n, r = rng.randint(11, 98), rng.randint(1, 9)
    kinds = [k for k in range(3) if rng.random() < 0.6]
    texts = FOOTERS[content.words.language]

    def write(pen_: Pen) -> None:
        places = [(pen_.left, "left"), (pen_.width / 2, "center"), (pen_.right, "right")]
        for kind in kinds:
            x, align = places[kind]
            text = texts[kind if kind != 2 else 2].format(n=n, r=r, p=pen_.page, q=max(pages, pen_.page))
            pen_.text(x, pen_.height - 24, text, size=6.5, align=align, grey=0.3)  # type: ignore[arg-type]

    content.not_figures.extend(texts[k].format(n=n, r=r, p=1, q=pages) for k in kinds)
    pen.before_show = write


def _colon(rng: Random) -> str:
    return rng.choice((":", ":", ": ", " :", ""))


def header_lines(pen: Pen, content: Content, entries: list[Entry]) -> None:
    """One ``Caption: text`` a line, the texts under one another or directly behind the caption."""
    rng, look = content.rng, pen.look
    colon = rng.choice((":", ":", " :"))
    aligned = rng.random() < 0.7
    column = max(pen.size_of(e.caption + colon, bold=True) for e in entries) + 10
    bold = rng.random() < 0.4
    for e in entries:
        width = pen.text(pen.left, pen.y, e.caption + colon, bold=bold)
        pen.text(pen.left + (column if aligned else width + 4), pen.y, e.text)
        pen.y += look.size * 1.45
    pen.y += look.size * 0.8


def header_pairs(pen: Pen, content: Content, entries: list[Entry]) -> None:
    """A grid of two pairs a row, ruled or not."""
    rng, look = content.rng, pen.look
    ruled = rng.random() < 0.5
    colon = rng.choice(("", ":", ":"))
    half = (pen.right - pen.left) / 2
    caption = max(pen.size_of(e.caption + colon, bold=True) for e in entries) + 8
    if caption + max(pen.size_of(e.text) for e in entries) + 6 > half:  # too wide for two pairs a row
        header_lines(pen, content, entries)
        return
    height = look.size * 1.3 + 2 * look.pad
    for i in range(0, len(entries), 2):
        for k, e in enumerate(entries[i : i + 2]):
            x = pen.left + k * half
            if ruled:
                pen.box(x, pen.y, x + caption, pen.y + height)
                pen.box(x + caption, pen.y, x + half, pen.y + height)
            pen.text(x + 3, pen.y + look.pad + 1, e.caption + colon, bold=look.head_bold)
            pen.text(x + caption + 3, pen.y + look.pad + 1, e.text)
        pen.y += height
    pen.y += look.size


def header_inline(pen: Pen, content: Content, entries: list[Entry]) -> None:
    """Several ``Caption: text`` in one line, parted by gaps."""
    rng, look = content.rng, pen.look
    gap = rng.choice((18.0, 26.0, 34.0))
    x = pen.left
    for e in entries:
        text = f"{e.caption}: {e.text}"
        width = pen.size_of(text)
        if x > pen.left and x + width > pen.right:
            x, pen.y = pen.left, pen.y + look.size * 1.5
        pen.text(x, pen.y, text)
        x += width + gap
    pen.y += look.size * 2.2


def header_over(pen: Pen, content: Content, entries: list[Entry]) -> None:
    """A table of captions over their texts."""
    look = pen.look
    many = 4 if len(entries) > 5 else len(entries)
    for i in range(0, len(entries), many):
        part = entries[i : i + many]
        width = (pen.right - pen.left) / len(part)
        height = look.size * 1.3 + 2 * look.pad
        for k, e in enumerate(part):
            x = pen.left + k * width
            size = look.size
            while size > 5 and max(pen.size_of(e.caption, size, True), pen.size_of(e.text, size)) > width - 6:
                size -= 0.5
            pen.text(x + 3, pen.y + look.pad, e.caption, size=size, bold=True)
            pen.text(x + 3, pen.y + height + look.pad, e.text, size=size)
            if look.rules in ("grid", "frame"):
                pen.box(x, pen.y, x + width, pen.y + height)
                pen.box(x, pen.y + height, x + width, pen.y + 2 * height)
        pen.y += 2 * height + look.size * 0.6
    pen.y += look.size * 0.6


def header_corner(pen: Pen, content: Content, entries: list[Entry]) -> None:
    """Entries in the right corner of the page, beside nothing."""
    look = pen.look
    caption = max(pen.size_of(e.caption + ":") for e in entries) + 8
    text = max(pen.size_of(e.text) for e in entries)
    x = max(pen.left, pen.right - caption - text)
    for e in entries:
        pen.text(x, pen.y, e.caption + ":")
        pen.text(x + caption, pen.y, e.text)
        pen.y += look.size * 1.4
    pen.y += look.size


HEADER_FORMS: tuple[HeaderForm, ...] = (
    header_lines, header_lines, header_pairs, header_pairs, header_inline, header_over, header_corner,
)  # fmt: skip


def top(pen: Pen, content: Content, form: HeaderForm | None = None, entries: list[Entry] | None = None) -> None:
    """Letterhead (often), title, header entries and method lines: the upper part of an ordinary sheet."""
    rng = content.rng
    if rng.random() < 0.75:
        letterhead(pen, content)
    title(pen, content)
    found = entries if entries is not None else [*content.shared, *content.own[0]]
    if found:
        if entries is None and rng.random() < 0.5:
            rng.shuffle(found)
        (form or rng.choice(HEADER_FORMS))(pen, content, found)
    method_lines(pen, content)
