"""Plane projective maps between a picture and the upright page, as 3 x 3 matrices.

Coordinates are continuous: pixel (i, j) covers the square from (i, j) to (i + 1, j + 1).
"""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np
from PIL import Image

if TYPE_CHECKING:
    from numpy.typing import NDArray

    Matrix = NDArray[np.float64]
    Points = NDArray[np.float64]
    Grey = NDArray[np.uint8]


def scaling(x: float, y: float | None = None) -> Matrix:
    """Makes a picture so many times as wide and as high."""
    return np.diag([x, x if y is None else y, 1.0])


def shift(x: float, y: float) -> Matrix:
    """Moves a picture right and down."""
    return np.array([[1.0, 0.0, x], [0.0, 1.0, y], [0.0, 0.0, 1.0]])


def quarter_turns(turns: int, width: float, height: float) -> Matrix:
    """Turn a ``width`` x ``height`` picture clockwise by ``turns`` x 90 degrees, into the positive quadrant."""
    clockwise = np.array([[0.0, -1.0, height], [1.0, 0.0, 0.0], [0.0, 0.0, 1.0]])
    matrix = np.eye(3)
    for _ in range(turns % 4):
        matrix = clockwise @ matrix
        width, height = height, width
        clockwise = np.array([[0.0, -1.0, height], [1.0, 0.0, 0.0], [0.0, 0.0, 1.0]])
    return matrix


def rotation(degrees: float, width: float, height: float) -> tuple[Matrix, float, float]:
    """Turn clockwise by ``degrees`` about the middle; the frame grows to hold every corner.

    Returns the map and the new width and height.
    """
    angle = np.deg2rad(degrees)
    cosine, sine = float(np.cos(angle)), float(np.sin(angle))
    turn = np.array([[cosine, -sine, 0.0], [sine, cosine, 0.0], [0.0, 0.0, 1.0]])
    corners = apply(turn, frame(width, height))
    low, high = corners.min(axis=0), corners.max(axis=0)
    return shift(-float(low[0]), -float(low[1])) @ turn, float(high[0] - low[0]), float(high[1] - low[1])


def frame(width: float, height: float) -> Points:
    """The corners of a picture: top left, top right, bottom right, bottom left."""
    return np.array([[0.0, 0.0], [width, 0.0], [width, height], [0.0, height]])


def from_corners(source: Points, target: Points) -> Matrix:
    """The projective map that takes four points to four others."""
    rows = []
    for (x, y), (u, v) in zip(source, target, strict=True):
        rows.append([x, y, 1, 0, 0, 0, -u * x, -u * y])
        rows.append([0, 0, 0, x, y, 1, -v * x, -v * y])
    solved = np.linalg.solve(np.array(rows, dtype=float), np.asarray(target, dtype=float).reshape(8))
    return np.append(solved, 1.0).reshape(3, 3)


def apply(matrix: Matrix, points: Points) -> Points:
    """Map an n x 2 array of points."""
    homogeneous = np.column_stack([points, np.ones(len(points))]) @ matrix.T
    mapped: Points = homogeneous[:, :2] / homogeneous[:, 2:]
    return mapped


def resample(image: Image.Image, matrix: Matrix, size: tuple[int, int], paper: int = 255) -> Image.Image:
    """Draw ``image`` through ``matrix`` on a sheet of ``size``; what lies outside becomes ``paper``."""
    width, height = size
    upright = abs(matrix[0, 1]) + abs(matrix[1, 0]) < 1e-9 and not np.any(np.abs(matrix[2, :2]) > 1e-12)
    upright = upright and matrix[0, 0] > 0 and matrix[1, 1] > 0
    if upright:
        left, top = -matrix[0, 2] / matrix[0, 0], -matrix[1, 2] / matrix[1, 1]
        box = (left, top, left + width / matrix[0, 0], top + height / matrix[1, 1])
        near = 1.0 / min(matrix[0, 0], matrix[1, 1]) + 1e-6  # sizes are rounded to whole pixels
        if box[0] >= -near and box[1] >= -near and box[2] <= image.width + near and box[3] <= image.height + near:
            fitted = (max(0.0, box[0]), max(0.0, box[1]), min(image.width, box[2]), min(image.height, box[3]))
            return image.resize(size, Image.Resampling.BICUBIC, box=fitted)
    image, matrix = _no_coarser_than(image, matrix)
    inverse = np.linalg.inv(matrix)
    inverse = inverse / inverse[2, 2]
    fill = paper if image.mode == "L" else (paper,) * len(image.getbands())
    return image.transform(
        size, Image.Transform.PERSPECTIVE, tuple(inverse.reshape(9)[:8]), Image.Resampling.BICUBIC, fillcolor=fill
    )


def _no_coarser_than(image: Image.Image, matrix: Matrix) -> tuple[Image.Image, Matrix]:
    """Shrink a much finer picture first: a transform takes single samples and would lose thin strokes."""
    corners = apply(matrix, frame(image.width, image.height))
    drawn = max(float(np.hypot(*(corners[1] - corners[0]))) / image.width, 1e-6)
    if drawn > 0.75:
        return image, matrix
    size = (max(1, round(image.width * drawn)), max(1, round(image.height * drawn)))
    smaller = image.resize(size, Image.Resampling.BOX if drawn < 0.3 else Image.Resampling.BICUBIC)
    return smaller, matrix @ scaling(image.width / size[0], image.height / size[1])
