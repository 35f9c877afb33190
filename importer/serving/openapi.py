"""The description of the endpoint (OpenAPI 3.1), made from the models that it answers with."""

from __future__ import annotations

from typing import Any, Literal

from pydantic import BaseModel
from pydantic.json_schema import models_json_schema

from importer import __version__
from importer.deciding.feed import Feed
from importer.deciding.results import Batch, Comparison
from importer.models import Document

_FILTERS = {
    "supplier": "Only of this supplier, or part of a name; case, spaces and marks do not matter.",
    "malt": "Only of this malt, likewise.",
    "batch": "Only this batch, likewise.",
}


def describe(address: str = "/") -> dict[str, Any]:
    """The description; ``address`` is where the endpoint is."""
    kinds: list[tuple[type[BaseModel], Literal["validation", "serialization"]]] = [
        (model, "serialization") for model in (Document, Feed, Batch, Comparison)
    ]
    _, definitions = models_json_schema(kinds, by_alias=True, ref_template="#/components/schemas/{model}")
    schemas = dict(definitions["$defs"])
    schemas["Fault"] = {
        "type": "object",
        "properties": {"message": {"type": "string"}},
        "required": ["message"],
        "description": "What is wrong with a request, and what to do.",
    }
    return {
        "openapi": "3.1.0",
        "info": {
            "title": "onebasis",
            "version": __version__,
            "summary": "Malt analyses on one basis, to be read only.",
            "description": "Answers on this machine only. Nothing can be changed through it.",
        },
        "servers": [{"url": address}],
        "paths": _paths(),
        "components": {"schemas": schemas},
    }


def _paths() -> dict[str, Any]:
    pin = _query("pin", "Use this batch of a malt: malt=batch; may be repeated.")
    pin["schema"] = {"type": "array", "items": {"type": "string"}}
    compared = _query("batch", "Batch number, or id of the analysis; two or more.")
    compared |= {"required": True, "schema": {"type": "array", "items": {"type": "string"}, "minItems": 2}}
    pages = [
        _query("limit", "At most so many, from 1 to 1000; 100 if left out.", {"type": "integer", "default": 100}),
        _query("offset", "Leave out so many at the start.", {"type": "integer", "default": 0}),
    ]
    filters = [_query(name, text) for name, text in _FILTERS.items()]
    feed_filters = [pin, *filters[:2]]
    return {
        "/v1/malts": _get("The malts in use, with the numbers that a recipe needs", "malts", "Feed", feed_filters),
        "/v1/malts.csv": _get("The same as CSV, for a spreadsheet", "malts_csv", None, feed_filters),
        "/v1/analyses": _get("Current analyses, oldest first", "analyses", "Document", [*filters, *pages]),
        "/v1/analyses/{id}": _get("One analysis", "analysis", "Document", [_path("id", "Id of the analysis.")]),
        "/v1/batches/{batch}": _get(
            "What a batch means: against the last one, the mean of some before, and its cautions",
            "batch",
            "Batch",
            [_path("batch", "Batch number, or id of the analysis.")],
        ),
        "/v1/compare": _get("Batches side by side, each held against the first", "compare", "Comparison", [compared]),
    }


def _get(summary: str, name: str, model: str | None, parameters: list[dict[str, Any]]) -> dict[str, Any]:
    content = (
        {"application/json": {"schema": {"$ref": f"#/components/schemas/{model}"}}}
        if model
        else {"text/csv": {"schema": {"type": "string"}}}
    )
    fault = {"application/json": {"schema": {"$ref": "#/components/schemas/Fault"}}}
    return {
        "get": {
            "operationId": name,
            "summary": summary,
            "parameters": parameters,
            "responses": {
                "200": {"description": "As asked for.", "content": content},
                "4XX": {"description": "The request cannot be answered.", "content": fault},
                "503": {"description": "The store cannot be read now.", "content": fault},
            },
        }
    }


def _query(name: str, text: str, schema: dict[str, Any] | None = None) -> dict[str, Any]:
    return {"name": name, "in": "query", "description": text, "schema": schema or {"type": "string"}}


def _path(name: str, text: str) -> dict[str, Any]:
    return {"name": name, "in": "path", "required": True, "description": text, "schema": {"type": "string"}}
