"""Every way in which a file cannot be read.

SheetError                  code, message with the remedy
├── PasswordProtected       password-protected
├── Damaged                 damaged
├── UnsupportedType         unsupported-type
├── NoTextAndNoOcr          no-text-and-no-ocr
├── NoFiguresFound          no-figures-found
├── TooLarge                too-large
├── TookTooLong             took-too-long
└── EmptyFile               empty

DataError                   a file under mappings/ is wrong: says which file and which entry
└── OwnFileError            a file that the brewer wrote is; wrong usage, and no fault of the installation
"""

from __future__ import annotations

import os
from typing import ClassVar

from importer.models import ProblemCode


class SheetError(Exception):
    """A sheet that cannot be read; ``code`` is the contract's problem code, the message says what to do."""

    code: ClassVar[ProblemCode] = "damaged"


class PasswordProtected(SheetError):
    code = "password-protected"


class Damaged(SheetError):
    code = "damaged"


class UnsupportedType(SheetError):
    code = "unsupported-type"


class NoTextAndNoOcr(SheetError):
    code = "no-text-and-no-ocr"


class NoFiguresFound(SheetError):
    code = "no-figures-found"


class TooLarge(SheetError):
    code = "too-large"


class TookTooLong(SheetError):
    code = "took-too-long"


class EmptyFile(SheetError):
    code = "empty"


class DataError(Exception):
    """A data file under mappings/ that cannot be used."""


class OwnFileError(DataError):
    """A file of the brewer's own that cannot be used; the message says where and what would be right."""


def no_room(error: OSError) -> str:
    """What is said where temporary files cannot be written: no file is to blame."""
    return (
        f"The folder for temporary files ({os.environ.get('TMPDIR') or 'usually /tmp'}) cannot be written to: "
        f"{error.strerror or error}. Make room there, or name another in TMPDIR; then run again."
    )
