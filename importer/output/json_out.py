"""The JSON document, and the schema it follows."""

from __future__ import annotations

import json
from collections.abc import Iterable
from typing import Any

from importer.models import Document, Family, Sheet


def document(sheets: Iterable[Sheet], basis: Family) -> Document:
    """All sheets of a run as one document, in the order they were read."""
    sheets = tuple(sheets)
    return Document(
        basis=basis,
        analyses=tuple(analysis for sheet in sheets for analysis in sheet.analyses),
        problems=tuple(problem for sheet in sheets for problem in sheet.problems),
    )


def to_json(doc: Document) -> str:
    """The document as JSON text; the same document gives the same text."""
    return doc.model_dump_json(by_alias=True, indent=2) + "\n"


def json_schema() -> dict[str, Any]:
    """The JSON Schema (2020-12) of the document, generated from the models."""
    schema = Document.model_json_schema(by_alias=True, mode="serialization")
    return {
        "$schema": "https://json-schema.org/draft/2020-12/schema",
        "$id": "urn:onebasis:1",
        **schema,
    }


def json_schema_text() -> str:
    """The JSON Schema as it is kept in mappings/schema/."""
    return json.dumps(json_schema(), indent=2, ensure_ascii=False) + "\n"
