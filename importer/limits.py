"""Every cap of the program in one place. What is beyond one becomes a problem, never a crash or an endless wait."""

from __future__ import annotations

MIB = 1024 * 1024

MAX_BYTES = 100 * MIB
"""Size of one file. A 30-page colour scan at 300 dpi stays under a third of it."""

MAX_PAGES = 200
"""Pages of one document, frames of one picture, or sheets of one workbook."""

MAX_PIXELS = 120_000_000
"""Pixels of one picture or rendered page: A3 at 600 dpi is 70 million."""

MAX_WORDS_PER_PAGE = 20_000
"""Words on one page. A dense A4 page has about 1,500."""

MAX_UNPACKED_BYTES = 100 * MIB
"""What the text parts of a packed spreadsheet may come to once unpacked."""

MAX_CELLS = 200_000
"""Filled cells of one spreadsheet table."""

MAX_SECONDS = 300.0
"""Time for one file. Optical reading takes 1 to 5 seconds a page."""

MAX_MEMORY = 4096 * MIB
"""Address space of the process that reads a file."""

FILES_PER_WORKER = 200
"""A reading process is replaced after so many files, so that nothing a file leaves behind can add up."""

WORKER_GROWTH = 600 * MIB
"""A reading process is replaced once it holds so much memory after a file."""

MAX_NAME = 200
"""Characters of a file name that are shown or written."""

MAX_PARCEL_DEPTH = 4
"""How deep emails and archives may lie in each other: an archive in a forwarded email in an email is three."""

MAX_PARCEL_ITEMS = 1000
"""Files that one email or archive may hold, those further inside counted."""

MAX_LETTER_BYTES = MIB
"""The text of an email; longer ones are not looked into."""

MAX_PARCEL_BYTES = 300 * MIB
"""What all of them may come to once unpacked."""
