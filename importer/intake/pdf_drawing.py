"""What is drawn on a PDF page besides text: ruling lines, filled areas and pictures, in the page's own space."""

from __future__ import annotations

import ctypes
from dataclasses import dataclass
from typing import Any

import pypdfium2.raw as pdfium

from importer.words import Box

# A rule is thinner than this (points); a picture or fill larger than that share of the page covers it.
THIN = 2.0
MAX_OBJECTS = 20_000
MAX_DEPTH = 4
MAX_STROKES = 500
WHITE = 240


def is_white(red: int, green: int, blue: int) -> bool:
    """True for a colour that cannot be seen on white paper."""
    return min(red, green, blue) >= WHITE


@dataclass(frozen=True, slots=True)
class Drawing:
    """``rules`` are visible thin lines, ``strokes`` straight ones that slant (x, y to x, y).

    ``dark`` are filled areas that white text can be read on. ``covers`` are pictures and opaque fills with their place
    in the drawing order: what was drawn before them cannot be seen."""

    rules: tuple[Box, ...]
    dark: tuple[Box, ...]
    covers: tuple[tuple[Box, int, bool], ...]
    picture_share: float
    orders: dict[int, int]
    last_cover: int
    strokes: tuple[tuple[float, float, float, float], ...] = ()

    def order_of(self, handle: Any) -> int:
        """Place of a text object in the drawing order (a large number for one inside a form not walked)."""
        return self.orders.get(ctypes.addressof(handle.contents), 1 << 30)

    def hides(self, box: Box, order: int, white: bool) -> bool:
        """True if text in ``box`` drawn at ``order`` cannot be seen: white on white, or painted over."""
        if not white and order >= self.last_cover:
            return False
        x, y = box.centre, box.middle
        if white and not any(d.x0 <= x <= d.x1 and d.top <= y <= d.bottom for d in self.dark):
            return True
        return any(o > order and c.x0 <= x <= c.x1 and c.top <= y <= c.bottom for c, o, _ in self.covers)


class _Collector:
    def __init__(self) -> None:
        self.rules: list[Box] = []
        self.dark: list[Box] = []
        self.covers: list[tuple[Box, int, bool]] = []
        self.orders: dict[int, int] = {}
        self.count = 0
        self.strokes: list[tuple[float, float, float, float]] = []

    def walk(self, handles: list[Any], depth: int, shift: pdfium.FS_MATRIX | None) -> None:
        for handle in handles:
            self.count += 1
            if self.count > MAX_OBJECTS:
                return
            kind = pdfium.FPDFPageObj_GetType(handle)
            self.orders[ctypes.addressof(handle.contents)] = self.count
            if kind == pdfium.FPDF_PAGEOBJ_PATH:
                self.path(handle, shift)
            elif kind == pdfium.FPDF_PAGEOBJ_IMAGE:
                self.covers.append((_moved(_bounds(handle), shift), self.count, True))
            elif kind == pdfium.FPDF_PAGEOBJ_FORM and depth < MAX_DEPTH:
                matrix = pdfium.FS_MATRIX()
                pdfium.FPDFPageObj_GetMatrix(handle, matrix)
                inner = [
                    pdfium.FPDFFormObj_GetObject(handle, i)
                    for i in range(min(pdfium.FPDFFormObj_CountObjects(handle), MAX_OBJECTS))
                ]
                self.walk(inner, depth + 1, _product(matrix, shift))

    def path(self, handle: Any, shift: pdfium.FS_MATRIX | None) -> None:
        mode, stroked = ctypes.c_int(), ctypes.c_int()
        pdfium.FPDFPath_GetDrawMode(handle, mode, stroked)
        filled = mode.value != 0
        box = _moved(_bounds(handle), shift)
        if filled:
            red, green, blue, alpha = _colour(handle, pdfium.FPDFPageObj_GetFillColor)
            if alpha > 40:
                if box.width <= THIN or box.height <= THIN:
                    if not is_white(red, green, blue):
                        self.rules.append(box)
                elif alpha > 250 and box.height > 4 and box.width > 4:
                    if max(red, green, blue) < 190 or red + green + blue < 480:
                        self.dark.append(box)
                    self.covers.append((box, self.count, False))
        if stroked.value:
            red, green, blue, alpha = _colour(handle, pdfium.FPDFPageObj_GetStrokeColor)
            if alpha > 40 and not is_white(red, green, blue):
                self.segments(handle, shift)

    def segments(self, handle: Any, shift: pdfium.FS_MATRIX | None) -> None:
        """Each straight upright or level piece of a stroked path becomes a rule."""
        matrix = pdfium.FS_MATRIX()
        pdfium.FPDFPageObj_GetMatrix(handle, matrix)
        total = _product(matrix, shift)
        x, y = ctypes.c_float(), ctypes.c_float()
        start: tuple[float, float] | None = None
        last: tuple[float, float] | None = None
        for i in range(min(pdfium.FPDFPath_CountSegments(handle), 2000)):
            segment = pdfium.FPDFPath_GetPathSegment(handle, i)
            pdfium.FPDFPathSegment_GetPoint(segment, x, y)
            point = _point(x.value, y.value, total)
            kind = pdfium.FPDFPathSegment_GetType(segment)
            if kind == pdfium.FPDF_SEGMENT_MOVETO:
                start = point
            elif kind == pdfium.FPDF_SEGMENT_LINETO and last is not None:
                self.line(last, point)
            last = point
            if pdfium.FPDFPathSegment_GetClose(segment) and start is not None:
                self.line(point, start)

    def line(self, a: tuple[float, float], b: tuple[float, float]) -> None:
        dx, dy = abs(a[0] - b[0]), abs(a[1] - b[1])
        if min(dx, dy) <= 1.0 and max(dx, dy) > 3:
            self.rules.append(Box(min(a[0], b[0]), min(a[1], b[1]), max(a[0], b[0]), max(a[1], b[1])))
        elif min(dx, dy) > 1.0 and len(self.strokes) < MAX_STROKES:
            self.strokes.append((*a, *b))


def _colour(handle: Any, get: Any) -> tuple[int, int, int, int]:
    r, g, b, alpha = (ctypes.c_uint() for _ in range(4))
    if not get(handle, r, g, b, alpha):
        return 0, 0, 0, 255
    return r.value, g.value, b.value, alpha.value


def _bounds(handle: Any) -> Box:
    left, bottom, right, top = (ctypes.c_float() for _ in range(4))
    if not pdfium.FPDFPageObj_GetBounds(handle, left, bottom, right, top):
        return Box(0, 0, 0, 0)
    return Box(left.value, bottom.value, right.value, top.value)


def _product(inner: pdfium.FS_MATRIX, outer: pdfium.FS_MATRIX | None) -> pdfium.FS_MATRIX:
    if outer is None:
        return inner
    return pdfium.FS_MATRIX(
        inner.a * outer.a + inner.b * outer.c,
        inner.a * outer.b + inner.b * outer.d,
        inner.c * outer.a + inner.d * outer.c,
        inner.c * outer.b + inner.d * outer.d,
        inner.e * outer.a + inner.f * outer.c + outer.e,
        inner.e * outer.b + inner.f * outer.d + outer.f,
    )


def _point(x: float, y: float, m: pdfium.FS_MATRIX) -> tuple[float, float]:
    return m.a * x + m.c * y + m.e, m.b * x + m.d * y + m.f


def _moved(box: Box, shift: pdfium.FS_MATRIX | None) -> Box:
    if shift is None:
        return box
    xs, ys = zip(*(_point(x, y, shift) for x in (box.x0, box.x1) for y in (box.top, box.bottom)), strict=True)
    return Box(min(xs), min(ys), max(xs), max(ys))


def read_drawing(page: Any, area: Box) -> Drawing:
    """Walks the objects of a pdfium page handle. ``area`` is the visible area in page space."""
    collector = _Collector()
    count = min(pdfium.FPDFPage_CountObjects(page), MAX_OBJECTS)
    collector.walk([pdfium.FPDFPage_GetObject(page, i) for i in range(count)], 0, None)
    whole = max(area.width * area.height, 1.0)
    share = max(
        (_overlap(box, area) / whole for box, _, picture in collector.covers if picture),
        default=0.0,
    )
    return Drawing(
        tuple(collector.rules),
        tuple(collector.dark),
        tuple(collector.covers),
        share,
        collector.orders,
        max((order for _, order, _ in collector.covers), default=0),
        tuple(collector.strokes),
    )


def _overlap(a: Box, b: Box) -> float:
    return max(0.0, min(a.x1, b.x1) - max(a.x0, b.x0)) * max(0.0, min(a.bottom, b.bottom) - max(a.top, b.top))
