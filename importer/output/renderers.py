"""The output formats by option: what each makes of a document. A new one is an entry of RENDERERS."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from importer.models import Document


@dataclass(frozen=True, slots=True)
class Rendered:
    """The content of one output, and the text of the Table Schema that goes beside it; None where there is none."""

    data: bytes
    schema: str | None = None


@dataclass(frozen=True, slots=True)
class Renderer:
    """A format: its name as told to a person, whether a schema is written beside it, and what makes it.

    ``render`` takes the document and whether figures in review are filled in (wide CSV only).
    """

    kind: str
    with_schema: bool
    render: Callable[[Document, bool], Rendered]


def _json(doc: Document, include_review: bool) -> Rendered:
    from importer.output.json_out import to_json

    return Rendered(to_json(doc).encode("utf-8"))


def _csv(doc: Document, include_review: bool) -> Rendered:
    from importer.output.csv_out import to_csv

    text, schema = to_csv(doc)
    return Rendered(text.encode("utf-8"), schema)


def _wide(doc: Document, include_review: bool) -> Rendered:
    from importer.output.wide_out import to_wide

    text, schema = to_wide(doc, include_review=include_review)
    return Rendered(text.encode("utf-8"), schema)


def _parquet(doc: Document, include_review: bool) -> Rendered:
    from importer.output.parquet_out import to_parquet

    return Rendered(to_parquet(doc))


RENDERERS = {
    "--json": Renderer("JSON", False, _json),
    "--csv": Renderer("CSV", True, _csv),
    "--wide": Renderer("CSV", True, _wide),
    "--parquet": Renderer("Parquet", False, _parquet),
}
