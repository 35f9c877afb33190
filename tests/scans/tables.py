"""Invented tables of figures, drawn with known boxes: what the reading of pictures is tried on."""

from __future__ import annotations

import subprocess
from dataclasses import dataclass
from functools import cache
from itertools import pairwise
from pathlib import Path
from random import Random

from PIL import Image, ImageDraw, ImageFont

DPI = 300
A4 = (2480, 3508)
LABELS = tuple(
    """Moisture; Extract fine grind, dry; Extract coarse grind; Fine coarse difference; Colour; Boiled colour;
    Total nitrogen; Total protein, dry; Soluble nitrogen; Soluble protein; Kolbach index; Free amino nitrogen;
    Friability; Homogeneity; Whole grains; Diastatic power; Alpha amylase; Beta glucan; Viscosity 8.6 %;
    Saccharification time; Turbidity; Wort pH; Final attenuation; Relative extract 45; Sieve > 2.8 mm;
    Sieve 2.5 - 2.8 mm; Sieve < 2.2 mm; Thousand corn weight; Hectolitre weight; Foreign matter; Nitrosamine;
    Deoxynivalenol; Gluten; Screenings; Chill haze; Acrospire length""".replace("\n", " ").split("; ")
)
LABELS = tuple(" ".join(label.split()) for label in LABELS)
UNITS = ("%", "% dry", "L°/kg", "EBC", "mg/l", "mg/100 g", "WK", "mPa·s", "min", "g", "kg/hl", "°L", "µg/kg", "pH", "")
STYLES = ("grid", "heavy", "lines", "zebra", "plain", "boxes")
# Common text faces of Debian's packages; those that are not installed are passed over.
FACES = tuple(
    """DejaVuSans DejaVuSerif DejaVuSansCondensed DejaVuSansMono LiberationSans-Regular LiberationSerif-Regular
    LiberationMono-Regular LiberationSansNarrow-Regular Carlito-Regular Caladea-Regular OpenSans-Regular Roboto-Regular
    Lato-Regular Lato-Light FreeSans FreeSerif FreeMono NotoSans-Regular NotoSerif-Regular FiraCode-Regular
    Cantarell-Regular Roboto-Condensed Roboto-Light OpenSans-Light Arimo-Regular Tinos-Regular Cousine-Regular
    C059-Roman P052-Roman NimbusSans-Regular URWGothic-Book""".split()  # noqa: SIM905
)


@dataclass(frozen=True)
class Cell:
    """A printed cell: its text, its box in pixels of the drawn page, and whether it stands in a column of results."""

    text: str
    box: tuple[float, float, float, float]
    is_value: bool
    row: int


@dataclass(frozen=True)
class Drawn:
    image: Image.Image
    cells: tuple[Cell, ...]
    face: str
    style: str
    size: float


@cache
def installed_faces() -> dict[str, str]:
    """Font files by stem, of those named in FACES."""
    listed = subprocess.run(["fc-list", "--format", "%{file}\n"], capture_output=True, text=True, check=False).stdout
    found = {Path(line).stem: line for line in sorted(listed.splitlines())}
    return {face: found[face] for face in FACES if face in found}


def value(random: Random, comma: bool) -> str:
    """A printed result such as 4.2, 81.34, < 0.5, 1.4-2.1 or -0.3."""
    decimals = random.choice((0, 1, 1, 1, 2, 2, 3))
    number = random.choice(
        (random.uniform(0, 2), random.uniform(2, 12), random.uniform(12, 100), random.uniform(100, 420))
    )
    text = f"{number:.{decimals if number < 100 else min(decimals, 1)}f}"
    kind = random.random()
    if kind < 0.06:
        text = random.choice(("<", "< ", "> ", "≤ ", "max. ")) + text
    elif kind < 0.10:
        text = f"{text}{random.choice(('-', ' - '))}{number * 1.2 + 1:.{decimals}f}"
    elif kind < 0.12:
        text = f"-{text}"
    elif kind < 0.14:
        text = random.choice(("n.d.", "-", ""))
    return text.replace(".", ",") if comma and text[:1] not in ("m", "n") else text


def draw(
    seed: int,
    faces: tuple[str, ...] | None = None,
    rows: int | None = None,
    style: str | None = None,
    columns: int | None = None,
) -> Drawn:
    """A page at 300 dpi with a head and one table, everything about it drawn from the seed."""
    random = Random(seed)
    known = installed_faces()
    face = random.choice(faces or tuple(known))
    size = random.choice((8.0, 8.5, 9.0, 10.0, 11.0))
    style = style or random.choice(STYLES)
    comma = random.random() < 0.4
    font = ImageFont.truetype(known[face], round(size * DPI / 72))
    image = Image.new("L", A4, 255)
    pen = ImageDraw.Draw(image)
    cells: list[Cell] = []
    count = rows or random.randint(14, 30)
    values = columns or random.choice((1, 2, 3, 3, 4))
    pitch = round(size * DPI / 72 * random.choice((1.45, 1.7, 2.1)))
    left, right = 170, A4[0] - random.choice((170, 300, 700) if values < 3 else (170, 200))
    label_width, unit_width = 760, 240
    room = right - left - label_width - unit_width
    values = max(1, min(values, int(room / (9.5 * size * DPI / 72))))  # the longest results must fit, in wide faces too
    step = room / values
    edges = [left, left + label_width, left + label_width + unit_width]
    edges += [round(edges[2] + step * (i + 1)) for i in range(values)]

    def put(text: str, x: float, y: float, is_value: bool, row: int, anchor: str = "la") -> None:
        if not text:
            return
        pen.text((x, y), text, font=font, fill=0, anchor=anchor)
        box = pen.textbbox((x, y), text, font=font, anchor=anchor)
        cells.append(Cell(text, (box[0], box[1], box[2], box[3]), is_value, row))

    y = random.randint(150, 300)
    for caption, entry in (
        ("Certificate of analysis", ""),
        ("Batch No.", f"{random.randint(10000, 99999)}"),
        ("Date", f"{random.randint(10, 28)}.0{random.randint(1, 9)}.2024"),
        ("Variety", "Example barley"),
    ):
        put(caption, left, y, False, -1)
        put(entry, left + 600, y, False, -1)
        y += round(1.3 * pitch)
    y += pitch
    aligned = random.choice(("ra", "ma", "la"))
    for row in range(count):
        if y + 2 * pitch > A4[1] - 100:
            break
        if style == "zebra" and row % 2:
            pen.rectangle((left, y, edges[-1], y + pitch), fill=200 + seed % 41)
        if style in ("grid", "heavy"):
            for a, b in pairwise(edges):
                pen.rectangle((a, y, b, y + pitch), outline=0, width=6 if style == "heavy" else 2)
        elif style == "lines":
            pen.line((left, y + pitch, edges[-1], y + pitch), fill=0, width=2)
        elif style == "boxes":
            for a, b in pairwise(edges[2:]):
                pen.rectangle((a + 14, y + 5, b - 14, y + pitch - 5), outline=0, width=3)
        base = y + round((pitch - size * DPI / 72) / 2) - 2
        put(LABELS[(seed + row) % len(LABELS)], left + 18, base, False, row)
        put(random.choice(UNITS), edges[1] + 18, base, False, row)
        for a, b in pairwise(edges[2:]):
            text = value(random, comma)
            x = {"ra": b - 40.0, "ma": (a + b) / 2.0, "la": a + 40.0}[aligned]
            put(text, x, base, True, row, aligned)
        y += pitch
    return Drawn(image, tuple(cells), face, style, size)
