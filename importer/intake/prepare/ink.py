"""Ink on paper: the paper's own level, what is darker, and the connected marks."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

import numpy as np
from PIL import Image, ImageFilter

if TYPE_CHECKING:
    from numpy.typing import NDArray

    Grey = NDArray[np.uint8]
    Mask = NDArray[np.bool_]
    Ints = NDArray[np.int64]

# Level that the paper gets after division by itself: room above it keeps noise symmetric and measurable.
PAPER = 200
# Rows worked on at once: what is in between stays in the processor's cache.
STRIP = 32
BLOCK = 12
# Noise as a share of what ink is darker by: below the first a page has none, above the second it is smoothed.
QUIET, NOISY = 0.2, 0.6
# So many pixels apart; a share of the differences that print has no part in, and, in standard deviations, how great the
# greatest of that share is at least, where white paper is cut off above.
GRAIN_STEP, GRAIN_SHARE, GRAIN_DIFFERENCE = 3, 0.6, 0.55
# The greater side of a speck in pixels, how many may be on a page, how often ink may be asked to be darker for them.
SPECK, MOST_SPECKS, DARKER = 4, 150, 4


def widen(grey: Grey, reach: int, axis: int) -> Grey:
    """Running maximum over 2 x ``reach`` + 1 pixels along an axis, by doubling the window."""
    window = 2 * reach + 1
    pad = [(0, 0), (0, 0)]
    pad[axis] = (reach, reach)
    out = np.pad(grey, pad, mode="edge")
    covered = 1
    while covered < window:
        step = min(covered, window - covered)
        out = np.maximum(_cut(out, 0, -step, axis), _cut(out, step, None, axis))
        covered += step
    return out


def narrow(grey: Grey, reach: int, axis: int) -> Grey:
    """Running minimum; see ``widen``."""
    return ~widen(~grey, reach, axis)


def _cut(grey: Grey, start: int, stop: int | None, axis: int) -> Grey:
    return grey[start:stop] if axis == 0 else grey[:, start:stop]


def thickened(mask: Mask, reach: int) -> Mask:
    """The mask grown by ``reach`` pixels to all sides."""
    return widen(widen(mask.view(np.uint8), reach, 0), reach, 1).view(bool)


def closed(grey: Grey, across: int, down: int) -> Grey:
    """Fill what is dark and holds no block of 2 ``across`` + 1 by 2 ``down`` + 1 pixels with the paper around it."""
    wide = widen(widen(grey, down, 0), across, 1)
    return narrow(narrow(wide, down, 0), across, 1)


def paper_under(grey: Grey, reach: int, shrink: int) -> Grey:
    """The level of the paper under each pixel, worked out on a picture ``shrink`` times smaller.

    The block is wider than high: no stroke of a letter holds it, and the tinted stripe of one row does.
    """
    height, width = grey.shape
    small = block_max(grey, shrink)
    across = max(1, round(reach / shrink))
    paper = closed(small, across, max(1, round(0.35 * across)))
    soft = Image.fromarray(paper).filter(ImageFilter.BoxBlur(1))
    covered = (0, 0, width / shrink, height / shrink)
    return np.asarray(soft.resize((width, height), Image.Resampling.BILINEAR, box=covered))


def block_max(grey: Grey, n: int) -> Grey:
    """The highest level of each n x n block."""
    height, width = grey.shape
    padded = np.pad(grey, ((0, -height % n), (0, -width % n)), mode="edge")
    rows = np.maximum.reduce([padded[i::n] for i in range(n)])
    out: Grey = np.maximum.reduce([rows[:, i::n] for i in range(n)])
    return out


def even_paper(grey: Grey, reach: int, shrink: int) -> Grey:
    """Divide by the paper's own level, so that shadows and tinted stripes become plain paper (``PAPER``).

    The highest level near a pixel is that of the paper only where there is no noise: that is smoothed out first.
    """
    even = _divided(grey, paper_under(grey, reach, shrink))
    return _divided(grey, paper_under(_smooth(grey, 2), reach, shrink)) if _threshold(even)[1] > NOISY else even


def _smooth(grey: Grey, reach: int = 1) -> Grey:
    return np.asarray(Image.fromarray(grey).filter(ImageFilter.BoxBlur(reach)))


def _divided(grey: Grey, paper: Grey) -> Grey:
    # 8-bit fixed point: grey * PAPER / paper without a float picture of the page
    factors = (PAPER * 256 / np.maximum(np.arange(256), 16)).astype(np.uint32)
    even = np.empty_like(grey)
    for start in range(0, grey.shape[0], STRIP):
        strip = slice(start, start + STRIP)
        scaled = factors[paper[strip]]
        scaled *= grey[strip]
        scaled >>= 8
        even[strip] = np.minimum(scaled, 255)
    return even


def levels(grey: Grey, fractions: tuple[float, ...]) -> list[float]:
    """Grey levels below which the given fractions of the pixels lie, from about a quarter million of them."""
    step = max(1, int(np.sqrt(grey.size / 250_000)))
    counts = np.bincount(grey[::step, ::step].ravel(), minlength=256)
    return [float(level) for level in np.searchsorted(np.cumsum(counts), np.array(fractions) * counts.sum())]


def ink_of(even: Grey) -> Mask:
    """Which pixels of an evened page are ink. A noisy page is smoothed first, else it is full of specks.

    Tinted stripes are noisier than white paper, which cuts noise off; where specks outnumber the print for that, ink
    has to be darker.
    """
    level, noise = _threshold(even)
    plain: Mask = even < level
    if noise < QUIET or (noise < NOISY and not _speckled(plain)):
        return plain
    even = _smooth(even)
    level, _ = _threshold(even)
    paper = levels(even, (0.5,))[0]
    for _ in range(DARKER):
        mask = even < level
        if not _speckled(mask):
            return mask
        level = paper - 1.25 * (paper - level)
    return even < level


def _speckled(mask: Mask) -> bool:
    """Whether a page has more specks than letters; of print, only points and the dots of letters are as small."""
    marks = connected(mask)
    specks = int(np.count_nonzero(np.maximum(marks.width, marks.height) <= SPECK))
    return specks > MOST_SPECKS and specks > int(np.count_nonzero(marks.height >= 2 * SPECK))


def _threshold(even: Grey) -> tuple[float, float]:
    """The level below which a pixel is ink, and the noise as a share of what ink is darker by.

    Ink has to differ from the paper by a third of the contrast of print and by four times the noise. The contrast is
    that of the paler print: beside heavy black lines a blurred letter is grey.
    """
    darkest, dim, paper, bright = levels(even, (0.005, 0.3, 0.5, 0.84))
    # one standard deviation by either side: white paper is cut off above, and tinted stripes are dim without grain
    shade = (paper - dim) / 0.52
    noise = 4.0 * max(bright - paper, min(shade, _grain(even)))
    blocks = ~block_max(~even, BLOCK)
    inked = blocks[blocks < paper - max(0.15 * (paper - darkest), 4.0 * max(bright - paper, shade), 8.0)]
    pale = float(np.percentile(inked, 70.0)) if inked.size else darkest
    least = max(0.35 * (paper - pale), 8.0)
    return paper - max(least, noise), noise / least


def _grain(grey: Grey) -> float:
    """The standard deviation of paper, or a little more, from pixels that are too far apart to be blurred together."""
    step = max(1, int(np.sqrt(grey.size / 250_000)))
    one, other = grey[::step, :-GRAIN_STEP:step], grey[::step, GRAIN_STEP::step]
    counts = np.bincount(np.maximum(one, other).ravel() - np.minimum(one, other).ravel(), minlength=256)
    return float(np.searchsorted(np.cumsum(counts), GRAIN_SHARE * counts.sum())) / GRAIN_DIFFERENCE


@dataclass(frozen=True, slots=True)
class Marks:
    """Connected marks of ink: bounding boxes in pixels (right and bottom exclusive) and areas, one entry each."""

    x0: Ints
    top: Ints
    x1: Ints
    bottom: Ints
    area: Ints

    def __len__(self) -> int:
        return len(self.x0)

    @property
    def width(self) -> Ints:
        return self.x1 - self.x0

    @property
    def height(self) -> Ints:
        return self.bottom - self.top

    def take(self, which: Mask | Ints) -> Marks:
        return Marks(self.x0[which], self.top[which], self.x1[which], self.bottom[which], self.area[which])

    def box(self, index: int) -> tuple[int, int, int, int]:
        """Left, top, right, bottom of one mark."""
        return int(self.x0[index]), int(self.top[index]), int(self.x1[index]), int(self.bottom[index])

    def transposed(self) -> Marks:
        """The marks with rows and columns exchanged."""
        return Marks(self.top, self.x0, self.bottom, self.x1, self.area)

    def plus(self, other: Marks) -> Marks:
        return Marks(
            np.concatenate([self.x0, other.x0]),
            np.concatenate([self.top, other.top]),
            np.concatenate([self.x1, other.x1]),
            np.concatenate([self.bottom, other.bottom]),
            np.concatenate([self.area, other.area]),
        )


def runs(mask: Mask) -> tuple[Ints, Ints, Ints]:
    """Horizontal runs of ink: row, first column, column after the last."""
    height, width = mask.shape
    stride = width + 1
    line = np.zeros(height * stride + 1, dtype=bool)  # an empty column between rows, and one pixel before the first
    line[1:].reshape(height, stride)[:, :width] = mask
    edges = np.flatnonzero(line[1:] != line[:-1])
    starts, ends = edges[0::2], edges[1::2]
    row = starts // stride
    return row, starts - row * stride, ends - row * stride


def grouped(mask: Mask) -> tuple[Ints, Ints, Ints, Ints]:
    """The runs of a mask, as ``runs`` gives them, and the number of the connected mark that each belongs to."""
    row, start, end = runs(mask)
    if not len(row):
        return row, start, end, np.zeros(0, dtype=np.int64)
    stride = mask.shape[1] + 2
    low = np.searchsorted(row * stride + end, (row + 1) * stride + start, side="left")
    high = np.searchsorted(row * stride + start, (row + 1) * stride + end, side="right")
    return row, start, end, joined(len(row), *pairs(low, high))


def connected(mask: Mask) -> Marks:
    """The connected marks of a mask, diagonal neighbours included."""
    row, start, end, group = grouped(mask)
    if not len(row):
        empty = np.zeros(0, dtype=np.int64)
        return Marks(empty, empty, empty, empty, empty)
    count = int(group.max()) + 1
    x0 = np.full(count, mask.shape[1], dtype=np.int64)
    top = np.full(count, mask.shape[0], dtype=np.int64)
    x1 = np.zeros(count, dtype=np.int64)
    bottom = np.zeros(count, dtype=np.int64)
    np.minimum.at(x0, group, start)
    np.minimum.at(top, group, row)
    np.maximum.at(x1, group, end)
    np.maximum.at(bottom, group, row + 1)
    area = np.bincount(group, weights=end - start, minlength=count).astype(np.int64)
    return Marks(x0, top, x1, bottom, area)


def pairs(low: Ints, high: Ints) -> tuple[Ints, Ints]:
    """All (i, j) with low[i] <= j < high[i]."""
    counts = np.maximum(high - low, 0)
    first = np.repeat(np.arange(len(low)), counts)
    offsets = np.arange(len(first)) - np.repeat(np.cumsum(counts) - counts, counts)
    return first, np.repeat(low, counts) + offsets


def joined(count: int, first: Ints, second: Ints) -> Ints:
    """Number the groups of ``count`` things that the given pairs connect (from 0, without gaps)."""
    parent = np.arange(count)
    while True:
        a, b = parent[first], parent[second]
        different = a != b
        if not different.any():
            break
        first, second, a, b = first[different], second[different], a[different], b[different]
        np.minimum.at(parent, np.maximum(a, b), np.minimum(a, b))
        while True:
            higher = parent[parent]
            if np.array_equal(higher, parent):
                break
            parent = higher
    _, group = np.unique(parent, return_inverse=True)
    return group
