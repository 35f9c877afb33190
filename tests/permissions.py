"""Whether this process is bound by file permissions: the administrator's is not, and neither is any on Windows."""

from __future__ import annotations

import os
import tempfile
from pathlib import Path

import pytest


def _count() -> bool:
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder, "closed")
        path.touch()
        path.chmod(0)
        return not os.access(path, os.R_OK)


needs_permissions = pytest.mark.skipif(not _count(), reason="needs a user whose permissions count")
