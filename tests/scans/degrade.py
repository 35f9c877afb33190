"""What happens to a page between the printer and the reader: scanners, cameras, faxes, copiers.

Every class takes the master page at 300 dpi (any mode) and a seed, and gives the degraded picture with the
resolution that its file would state (None: none). All are drawn with numpy and Pillow from the seed alone.
"""

from __future__ import annotations

import io
from collections.abc import Callable
from typing import NamedTuple

import numpy as np
from PIL import Image, ImageDraw, ImageFilter, ImageFont

MASTER_DPI = 300.0


class Degraded(NamedTuple):
    """``dpi`` is across and down."""

    image: Image.Image
    dpi: tuple[float, float] | None


def _at(image: Image.Image, dpi: float, down: float | None = None) -> Image.Image:
    size = (round(image.width * dpi / MASTER_DPI), round(image.height * (down or dpi) / MASTER_DPI))
    return image.resize(size, Image.Resampling.LANCZOS if dpi >= 150 else Image.Resampling.BOX)


def _jpeg(image: Image.Image, quality: int) -> Image.Image:
    stored = io.BytesIO()
    image.save(stored, "JPEG", quality=quality)
    return Image.open(stored).copy()


def _noisy(image: Image.Image, sd: float, random: np.random.Generator) -> Image.Image:
    levels = np.asarray(image, dtype=np.float32) + random.normal(0.0, sd, (image.height, image.width)).astype(
        np.float32
    )
    return Image.fromarray(np.clip(levels, 0, 255).astype(np.uint8))


def clean300(image: Image.Image, seed: int) -> Degraded:
    return Degraded(image, (300, 300))


def dpi200(image: Image.Image, seed: int) -> Degraded:
    return Degraded(_at(image, 200), (200, 200))


def dpi150(image: Image.Image, seed: int) -> Degraded:
    return Degraded(_at(image, 150), (150, 150))


def dpi100(image: Image.Image, seed: int) -> Degraded:
    return Degraded(_at(image, 100), (100, 100))


def dpi600(image: Image.Image, seed: int) -> Degraded:
    large = image.resize((image.width * 2, image.height * 2), Image.Resampling.BICUBIC)
    return Degraded(large.point(lambda level: 255 if level > 128 else 0).convert("1"), (600, 600))


def skew(image: Image.Image, seed: int) -> Degraded:
    random = np.random.default_rng(seed)
    angle = float(random.uniform(1, 4)) * float(random.choice((-1, 1)))
    return Degraded(image.rotate(angle, Image.Resampling.BICUBIC, fillcolor=255), (300, 300))


def jpeg30(image: Image.Image, seed: int) -> Degraded:
    return Degraded(_jpeg(_at(image, 200), 30), (200, 200))


def noiseblur(image: Image.Image, seed: int) -> Degraded:
    random = np.random.default_rng(seed)
    return Degraded(_noisy(_at(image, 200).filter(ImageFilter.GaussianBlur(1.1)), 16, random), (200, 200))


def lowcon(image: Image.Image, seed: int) -> Degraded:
    random = np.random.default_rng(seed)
    pale = _at(image, 200).point(lambda level: 165 + level * 45 // 255)
    return Degraded(_noisy(pale, 3, random), (200, 200))


def shaded(image: Image.Image, seed: int) -> Degraded:
    """A scan of a bound page: dark towards the fold, which stands at the left."""
    page = np.asarray(_at(image, 200), dtype=np.float32)
    across = np.linspace(0, 1, page.shape[1], dtype=np.float32)
    return Degraded(Image.fromarray((page * (1 - 0.65 * np.exp(-across * 9))).astype(np.uint8)), (200, 200))


def _photo(
    image: Image.Image, seed: int, dpi: tuple[float, float], tilt: float, margin: float, blur: float, quality: int
) -> Degraded:
    """A photograph of the page on a dark desk; a negative ``margin`` leaves the page's edges out of the frame."""
    random = np.random.default_rng(seed)
    scale = float(random.uniform(*dpi)) / MASTER_DPI
    width, height = image.width * scale, image.height * scale
    pad = margin * width
    frame = np.array([[0, 0], [width, 0], [width, height], [0, height]]) + pad
    corners = frame + random.uniform(-tilt, tilt, (4, 2)) * width
    matrix = _from_corners(corners, [[0, 0], [image.width, 0], [image.width, image.height], [0, image.height]])
    size = (round(width + 2 * pad), round(height + 2 * pad))
    desk = 60 + 8 * np.sin(np.arange(size[0]) / 7.0)[None, :] + random.normal(0, 3, (size[1], size[0]))
    soft = image.convert("L").filter(ImageFilter.GaussianBlur(0.35 / scale))
    coefficients = tuple((matrix / matrix[2, 2]).reshape(9)[:8])
    page = soft.transform(size, Image.Transform.PERSPECTIVE, coefficients, Image.Resampling.BICUBIC)
    sheet = Image.new("L", image.size, 255).transform(size, Image.Transform.PERSPECTIVE, coefficients)
    inside = np.asarray(sheet, dtype=np.float32) / 255
    levels = np.asarray(page, dtype=np.float32) * 0.86 * inside + desk.astype(np.float32) * (1 - inside)
    levels = levels * _light(size, random)
    photo = Image.fromarray(np.clip(levels, 0, 255).astype(np.uint8))
    if blur:
        photo = photo.filter(ImageFilter.GaussianBlur(blur))
        photo = Image.fromarray(
            ((np.asarray(photo, np.uint16) + np.roll(np.asarray(photo, np.uint16), 2, axis=1)) // 2).astype(np.uint8)
        )
    return Degraded(_jpeg(_noisy(photo, 3, random), quality), (72, 72))


def _light(size: tuple[int, int], random: np.random.Generator) -> np.ndarray:
    """Uneven light and the soft shadow of a hand."""
    x, y = np.meshgrid(np.linspace(0, 1, size[0]), np.linspace(0, 1, size[1]))
    slope = random.uniform(-0.25, 0.25, 2)
    light = 1 + slope[0] * (x - 0.5) + slope[1] * (y - 0.5)
    centre = random.uniform(0.1, 0.9, 2)
    shadow = np.exp(-((((x - centre[0]) / 0.3) ** 2 + ((y - centre[1]) / 0.25) ** 2) ** 2))
    return np.asarray(np.clip(light, 0.6, 1.12) * (1 - 0.4 * shadow), dtype=np.float32)


def _from_corners(source: np.ndarray, target: list[list[float]]) -> np.ndarray:
    rows = []
    for (x, y), (u, v) in zip(source, target, strict=True):
        rows += [[x, y, 1, 0, 0, 0, -u * x, -u * y], [0, 0, 0, x, y, 1, -v * x, -v * y]]
    return np.append(np.linalg.solve(np.array(rows), np.array(target, dtype=float).reshape(8)), 1.0).reshape(3, 3)


def phone(image: Image.Image, seed: int) -> Degraded:
    return _photo(image, seed, (190, 215), 0.035, 0.08, 0.0, 75)


def phone_fill(image: Image.Image, seed: int) -> Degraded:
    return _photo(image, seed, (190, 215), 0.012, -0.035, 0.0, 75)


def phone_hard(image: Image.Image, seed: int) -> Degraded:
    return _photo(image, seed, (150, 170), 0.06, 0.12, 1.1, 50)


def faxfine(image: Image.Image, seed: int) -> Degraded:
    return Degraded(_at(image, 204, 196).point(lambda level: 255 if level > 140 else 0).convert("1"), (204, 196))


def fax(image: Image.Image, seed: int) -> Degraded:
    return Degraded(_at(image, 204, 98).point(lambda level: 255 if level > 140 else 0).convert("1"), (204, 98))


def photocopy(image: Image.Image, seed: int) -> Degraded:
    """A copy of a copy: thinned or thickened, peppered."""
    random = np.random.default_rng(seed)
    page = image
    for level in (165, 140):
        page = _noisy(page.filter(ImageFilter.GaussianBlur(1.6)), 14, random).point(
            lambda v, at=level: 255 if v > at else 0
        )
    levels = np.asarray(page.convert("L")).copy()
    levels[random.random(levels.shape) < 0.0015] = 0
    levels[random.random(levels.shape) < 0.004] = 255
    return Degraded(_at(Image.fromarray(levels), 200), (200, 200))


def _turned(quarter: Image.Transpose) -> Callable[[Image.Image, int], Degraded]:
    def turned(image: Image.Image, seed: int) -> Degraded:
        return Degraded(_at(image, 200).transpose(quarter), (200, 200))

    return turned


def stamp(image: Image.Image, seed: int) -> Degraded:
    """A blue round stamp across part of the page."""
    random = np.random.default_rng(seed)
    page = image.convert("RGB")
    ink = Image.new("L", (700, 700), 0)
    pen = ImageDraw.Draw(ink)
    for inset in (10, 90):
        pen.ellipse((inset, inset, 690 - inset, 690 - inset), outline=255, width=12)
    pen.text((350, 330), "RECEIVED", font=ImageFont.load_default(90), fill=255, anchor="mm")
    ink = ink.rotate(float(random.uniform(-30, 30))).point(lambda level: level * 3 // 5)
    left, down = max(201, page.width - 900), max(201, page.height // 2)
    place = (int(random.integers(200, left)), int(random.integers(min(600, down - 1), down)))
    page.paste((30, 40, 160), place, ink)
    return Degraded(_at(page, 200), (200, 200))


def penticks(image: Image.Image, seed: int) -> Degraded:
    """Ticks of a pen down the right part of the page."""
    random = np.random.default_rng(seed)
    page = image.convert("RGB")
    pen = ImageDraw.Draw(page)
    for y in range(700, page.height // 2, 210):
        x, y = int(page.width * 0.55 + random.integers(-40, 40)), y + int(random.integers(-20, 20))
        pen.line((x, y, x + 18, y + 26, x + 70, y - 40), fill=(40, 50, 150), width=6, joint="curve")
    return Degraded(_at(page, 200), (200, 200))


def showthrough(image: Image.Image, seed: int) -> Degraded:
    """The print of the other side, mirrored and pale."""
    page = np.asarray(image.convert("L"), dtype=np.float32)
    back = np.asarray(
        image.convert("L").transpose(Image.Transpose.FLIP_LEFT_RIGHT).filter(ImageFilter.GaussianBlur(4)),
        dtype=np.float32,
    )
    back = np.roll(back, 37, axis=0)
    mixed = np.minimum(page, 255 - (255 - back) * 0.16) * (250 / 255)
    return Degraded(_at(Image.fromarray(mixed.astype(np.uint8)), 200), (200, 200))


CLASSES: dict[str, Callable[[Image.Image, int], Degraded]] = {
    "clean300": clean300, "dpi600": dpi600, "dpi200": dpi200, "dpi150": dpi150, "dpi100": dpi100, "skew": skew,
    "jpeg30": jpeg30, "noiseblur": noiseblur, "lowcon": lowcon, "shaded": shaded, "phone": phone,
    "phone_fill": phone_fill, "phone_hard": phone_hard, "faxfine": faxfine, "fax": fax, "photocopy": photocopy,
    "rot90": _turned(Image.Transpose.ROTATE_90), "rot180": _turned(Image.Transpose.ROTATE_180),
    "rot270": _turned(Image.Transpose.ROTATE_270), "stamp": stamp, "penticks": penticks, "showthrough": showthrough,
}  # fmt: skip
# On these the figures are to be had; on the others it is enough that nothing wrong is taken for right.
HARD = ("phone_hard", "fax", "photocopy")


def degrade(image: Image.Image, name: str, seed: int) -> Degraded:
    """The page as it arrives by way of ``name``."""
    return CLASSES[name](image.convert("L"), seed)


def stored(degraded: Degraded, form: str = "TIFF") -> bytes:
    """The degraded page as a file with its resolution."""
    out = io.BytesIO()
    degraded.image.save(out, form, **({"dpi": degraded.dpi} if degraded.dpi else {}))
    return out.getvalue()
