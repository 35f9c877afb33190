"""A made sheet as it arrives on paper: drawn, spoilt by a scanner, a fax or a camera, and put into a picture file."""

from __future__ import annotations

import io

import pypdfium2

from tests.scans import degrade


def as_picture(pdf: bytes, name: str, seed: int) -> bytes:
    """All pages of a PDF in one TIFF, each by way of ``name`` (a class of ``tests.scans.degrade``)."""
    document = pypdfium2.PdfDocument(pdf)
    pages = [
        degrade.degrade(
            document[number].render(scale=degrade.MASTER_DPI / 72, grayscale=True).to_pil(), name, seed + 1000 * number
        )
        for number in range(len(document))
    ]
    first, *others = pages
    out = io.BytesIO()
    first.image.save(
        out,
        "TIFF",
        save_all=True,
        append_images=[page.image for page in others],
        **({"dpi": first.dpi} if first.dpi else {}),
    )
    return out.getvalue()


def classes(text: str) -> list[str]:
    """The kinds of pictures that an option names: commas between, or ``all``."""
    names = list(degrade.CLASSES) if text == "all" else text.split(",")
    unknown = [name for name in names if name not in degrade.CLASSES]
    if unknown:
        raise ValueError(f"no such kind of picture: {', '.join(unknown)}; there are {', '.join(degrade.CLASSES)}")
    return names
