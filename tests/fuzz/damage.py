"""Files after some accidents, and what is made of them."""

from __future__ import annotations

import tempfile
from pathlib import Path

from hypothesis import strategies as st

from importer import read_sheet
from importer.models import Sheet

changes = st.lists(
    st.tuples(
        st.sampled_from(("flip", "cut", "copy", "drop", "insert")),
        st.floats(0, 1),
        st.integers(1, 200),
        st.binary(max_size=8),
    ),
    min_size=1,
    max_size=6,
)


def altered(data: bytes, how: list[tuple[str, float, int, bytes]]) -> bytes:
    """Bytes of a file after some accidents."""
    out = bytearray(data)
    for kind, share, count, noise in how:
        at = int(share * len(out))
        if kind == "flip":
            for i in range(at, min(at + count, len(out)), 7):
                out[i] ^= 1 << (count % 8)
        elif kind == "cut":
            del out[max(at, 20) :]
        elif kind == "copy":
            out[at:at] = out[at : at + count]
        elif kind == "drop":
            del out[at : at + count]
        else:
            out[at:at] = noise
    return bytes(out)


def read_bytes(data: bytes, suffix: str) -> Sheet:
    """What is read of a file of these bytes that is called sheet and ends in ``suffix``."""
    with tempfile.TemporaryDirectory() as folder:
        file = Path(folder, f"sheet{suffix}")
        file.write_bytes(data)
        return read_sheet(file)
