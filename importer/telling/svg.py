"""Plots as SVG, for black and white print: shapes and dashes tell things apart, never colour."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date
from html import escape

from importer.deciding.report import Point, Series
from importer.output.table_line import plain, rounded
from importer.output.terminal import clean
from importer.vocabulary.parameters import parameters

WIDTH, HEIGHT = 460, 190
_LEFT, _RIGHT, _TOP, _BOTTOM = 46, 12, 14, 26
_LEAST_TICKS = 3
_HALF_LABEL = 16
_MARGIN = 0.1


@dataclass(frozen=True, slots=True)
class _Scale:
    low: float
    high: float
    start: float
    end: float

    def __call__(self, value: float) -> float:
        share = (value - self.low) / (self.high - self.low) if self.high > self.low else 0.5
        return round(self.start + share * (self.end - self.start), 1)


def trend(series: Series, harvests: Sequence[tuple[str, str]]) -> str:
    """The trend of one figure: results, agreed limits, the band of the method's own scatter, and new harvests."""
    days = [_number(point.day) for point in series.points]
    x = _Scale(min(days) - 5, max(days) + 5, _LEFT, WIDTH - _RIGHT)
    y = _Scale(*_extent(series), HEIGHT - _BOTTOM, _TOP)
    parts = [
        f'<svg viewBox="0 0 {WIDTH} {HEIGHT}" role="img" aria-label="{escape(_told(series))}">',
        *_bands(series, x, y),
        *_axes(x, y),
        *_limits(series, y),
        *_harvests(harvests, x),
        *_line(series.points, x, y),
        *(mark for point in series.points for mark in _mark(point, x, y)),
        "</svg>",
    ]
    return "\n".join(parts)


def _number(text: str) -> float:
    """A day, month or year (ISO 8601) as a number of days."""
    parts = [int(part) for part in text.split("-")]
    year, month, day = [*parts, 1, 1][:3]
    return float(date(year, month, day).toordinal())


def _told(series: Series) -> str:
    outside = sum(point.outside for point in series.points)
    return clean(f"{series.title}: {len(series.points)} batches, {outside} outside what was agreed")


def _extent(series: Series) -> tuple[float, float]:
    values = [end for point in series.points for end in _ends(point)]
    values += [end for end in (series.low, series.high) if end is not None]
    values += [end for band in series.bands for end in (band.low, band.high)]
    low, high = min(values), max(values)
    room = (high - low) * _MARGIN or abs(high) * _MARGIN or 1.0
    return low - room, high + room


def _ends(point: Point) -> tuple[float, float]:
    spread = point.spread or 0.0
    return point.value - spread, point.value + spread


def nice_ticks(low: float, high: float) -> list[float]:
    """Round numbers between two ends: as few as there can be from three on."""
    size = 10 ** math.floor(math.log10(high - low))
    found: list[float] = []
    for step in (size, size / 2, size / 5, size / 10):
        first, last = math.ceil(low / step - 1e-9), math.floor(high / step + 1e-9)
        found = [round(number * step, 10) for number in range(first, last + 1)]
        if len(found) >= _LEAST_TICKS:
            break
    return found


def _axes(x: _Scale, y: _Scale) -> Iterator[str]:
    for value in nice_ticks(y.low, y.high):
        at = y(value)
        yield f'<line class="grid" x1="{_LEFT}" y1="{at}" x2="{WIDTH - _RIGHT}" y2="{at}"/>'
        yield f'<text class="tick" x="{_LEFT - 5}" y="{at + 3.5}" text-anchor="end">{_written(value)}</text>'
    floor = HEIGHT - _BOTTOM
    yield f'<line class="axis" x1="{_LEFT}" y1="{floor}" x2="{WIDTH - _RIGHT}" y2="{floor}"/>'
    for at, text in _months(x):
        yield f'<line class="axis" x1="{x(at)}" y1="{floor}" x2="{x(at)}" y2="{floor + 4}"/>'
        yield f'<text class="tick" x="{x(at)}" y="{floor + 15}" text-anchor="middle">{text}</text>'


def _written(value: float) -> str:
    return plain(value).replace("-", "−")


def _months(x: _Scale) -> Iterator[tuple[float, str]]:
    """First days of months within the axis, not more than fit; a January carries its year."""
    first, last = date.fromordinal(int(x.low)), date.fromordinal(int(x.high))
    count = (last.year - first.year) * 12 + last.month - first.month
    step = next((s for s in (1, 2, 3, 6, 12) if count / s <= 8), 24)
    for number in range(first.year * 12 + first.month - 1, last.year * 12 + last.month):
        month = number % 12 + 1
        day = date(number // 12, month, 1)
        inside = x(day.toordinal()) < WIDTH - _RIGHT - _HALF_LABEL
        if (
            inside
            and (month - 1) % step == 0
            and x.low <= day.toordinal() <= x.high
            and (step <= 12 or day.year % 2 == 0)
        ):
            yield float(day.toordinal()), f"{day:%Y-%m}"


def _bands(series: Series, x: _Scale, y: _Scale) -> Iterator[str]:
    for band in series.bands:
        left, right = x(_number(band.first_day) - 3), x(_number(band.last_day) + 3)
        top, bottom = y(band.high), y(band.low)
        yield f'<rect class="band" x="{left}" y="{top}" width="{right - left:.1f}" height="{bottom - top:.1f}"/>'


def _limits(series: Series, y: _Scale) -> Iterator[str]:
    for value, word in ((series.low, "min"), (series.high, "max")):
        if value is not None:
            at = y(value)
            yield f'<line class="limit" x1="{_LEFT}" y1="{at}" x2="{WIDTH - _RIGHT}" y2="{at}"/>'
            text = f"{word} {_written(float(rounded(value, parameters()[series.parameter].decimals)))}"
            yield f'<text class="told" x="{WIDTH - _RIGHT - 2}" y="{at - 3.5:.1f}" text-anchor="end">{text}</text>'


def _harvests(harvests: Sequence[tuple[str, str]], x: _Scale) -> Iterator[str]:
    for day, crop in harvests:
        at = x(_number(day) - 4)
        if _LEFT <= at <= WIDTH - _RIGHT:
            yield f'<line class="harvest" x1="{at}" y1="{_TOP}" x2="{at}" y2="{HEIGHT - _BOTTOM}"/>'
            yield f'<text class="told" x="{at + 3}" y="{_TOP - 3}">crop {escape(clean(crop))}</text>'


def _line(points: Sequence[Point], x: _Scale, y: _Scale) -> Iterator[str]:
    path = " ".join(f"{x(_number(point.day))},{y(point.value)}" for point in points)
    yield f'<polyline class="line" points="{path}"/>'


def _mark(point: Point, x: _Scale, y: _Scale) -> Iterator[str]:
    """A full circle; hollow for an estimate; a cross in a ring with the batch beside it for what is outside."""
    at, height = x(_number(point.day)), y(point.value)
    title = f"<title>{escape(clean(f'{point.batch}, {point.day}: {plain(point.value)}'))}</title>"
    if point.spread:
        low, high = _ends(point)
        yield f'<line class="spread" x1="{at}" y1="{y(low)}" x2="{at}" y2="{y(high)}"/>'
    if not point.outside:
        kind = "estimate" if point.estimated else "point"
        yield f'<circle class="{kind}" cx="{at}" cy="{height}" r="2.6">{title}</circle>'
        return
    yield f'<circle class="out" cx="{at}" cy="{height}" r="6">{title}</circle>'
    for turn in (1, -1):
        yield (
            f'<line class="cross" x1="{at - 3.2:.1f}" y1="{height - turn * 3.2:.1f}" '
            f'x2="{at + 3.2:.1f}" y2="{height + turn * 3.2:.1f}"/>'
        )
    anchor, beside = ("end", at - 9) if at > WIDTH - 90 else ("start", at + 9)
    name = escape(clean(point.batch))
    yield f'<text class="told" x="{beside:.1f}" y="{height + 3.5:.1f}" text-anchor="{anchor}">{name}</text>'
