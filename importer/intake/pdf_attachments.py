"""Files that lie inside a PDF, in its list of attachments or behind a pin on a page. They are named, not read."""

from __future__ import annotations

import ctypes
from collections.abc import Iterable, Iterator
from pathlib import PurePath
from typing import Any

import pypdfium2 as pdfium2
import pypdfium2.raw as pdfium_c

from importer.intake.kind import SUPPORTED_NAMES
from importer.intake.names import safe_name

_MAY_HOLD_SHEETS = (*SUPPORTED_NAMES, ".eml", ".msg", ".zip")
_MOST_LOOKED_AT = 1000
_MOST_NAMED = 5


def told_of(names: Iterable[str], name: str) -> str | None:
    """What to say of the files in a PDF that may be sheets; None where there are none."""
    found = list(dict.fromkeys(each for each in names if _may_hold_sheets(each)))
    if not found:
        return None
    more = f" and {len(found) - _MOST_NAMED} more" if len(found) > _MOST_NAMED else ""
    named = ", ".join(found[:_MOST_NAMED]) + more
    return (
        f"{name} carries more files inside it, which were not read: {named}. Open it in a PDF program, save them from "
        "there, and have each read on its own."
    )


def _may_hold_sheets(name: str) -> bool:
    """By the ending; a name without one tells nothing."""
    return name.lower().endswith(_MAY_HOLD_SHEETS) or not PurePath(name).suffix


def names_in_list(document: Any) -> Iterator[str]:
    """The names of files in the list of an open document."""
    for index in range(min(document.count_attachments(), _MOST_LOOKED_AT)):
        try:
            yield safe_name(document.get_attachment(index).get_name())
        except (pdfium2.PdfiumError, UnicodeError):
            continue


def names_on_page(page: Any) -> Iterator[str]:
    """The names of files behind pins on an open page."""
    for index in range(min(pdfium_c.FPDFPage_GetAnnotCount(page), _MOST_LOOKED_AT)):
        annotation = pdfium_c.FPDFPage_GetAnnot(page, index)
        if not annotation:
            continue
        try:
            if pdfium_c.FPDFAnnot_GetSubtype(annotation) == pdfium_c.FPDF_ANNOT_FILEATTACHMENT:
                attachment = pdfium_c.FPDFAnnot_GetFileAttachment(annotation)
                if attachment:
                    yield safe_name(_name(attachment))
        finally:
            pdfium_c.FPDFPage_CloseAnnot(annotation)


def _name(attachment: Any) -> str:
    size = pdfium_c.FPDFAttachment_GetName(attachment, None, 0)
    buffer = ctypes.create_string_buffer(size)
    pdfium_c.FPDFAttachment_GetName(attachment, ctypes.cast(buffer, ctypes.POINTER(ctypes.c_ushort)), size)
    return buffer.raw[: size - 2].decode("utf-16-le", "replace")
