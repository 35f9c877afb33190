"""The words around the figures of a sheet: header captions, column heads, titles and notes, batch numbers.

Everything is data under mappings/headers, mappings/columns and mappings/statements.toml; this module gathers what the
other stages use.
"""

from importer.vocabulary.batch_code import looks_like_batch
from importer.vocabulary.column_heads import ROLES, column_role, column_roles, sides_of
from importer.vocabulary.header_captions import header_caption
from importer.vocabulary.statements import (
    Title,
    basis_of_some,
    basis_statement,
    beside_title,
    document_title,
    family_statement,
    is_harmless_footnote,
    mash_statement,
)

__all__ = [
    "ROLES",
    "Title",
    "basis_of_some",
    "basis_statement",
    "beside_title",
    "column_role",
    "column_roles",
    "document_title",
    "family_statement",
    "header_caption",
    "is_harmless_footnote",
    "looks_like_batch",
    "mash_statement",
    "sides_of",
]
