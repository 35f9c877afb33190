"""The JSON document: complete, stable, readable by its own models, and described by the schema in the repository."""

from __future__ import annotations

import json

import jsonschema
import pytest
from pydantic import ValidationError

from importer.data import mappings_folder
from importer.models import Document, Figure, Sheet
from importer.output.json_out import document, json_schema, json_schema_text, to_json
from importer.walk import is_own_output
from tests.outputs import factory


def test_the_document_survives_the_way_to_json_and_back() -> None:
    doc = factory.document()
    assert Document.model_validate_json(to_json(doc)) == doc


def test_keys_are_those_of_the_published_shape() -> None:
    data = json.loads(to_json(factory.document()))
    assert list(data) == ["format", "basis", "analyses", "problems"]
    assert data["format"] == "onebasis/1"
    (analysis,) = data["analyses"]
    assert analysis["id"] == "3f6c000000000000-1"
    assert analysis["source"] == {"file": "sheet.pdf", "sha256": factory.HASH, "pages": [1], "reading": "text"}
    assert analysis["header"]["supplier"]["box"] == [56.0, 120.5, 90.25, 131.0]
    assert "certificate" not in analysis["header"]
    by_name = {figure["parameter"]: figure for figure in analysis["figures"]}
    step = by_name["extract_fine_dry"]["steps"][0]
    assert step["from"] == {"value": 309.0, "unit": "L°/kg", "family": "IoB"}
    assert step["to"]["family"] == "EBC"
    assert by_name["nitrogen_ratio"]["method_offset"] == {"applied": True, "points": 4.8, "from": "IoB", "to": "EBC"}
    assert by_name["nitrogen_ratio"]["limits"] == {"low": None, "high": 45.0}
    assert by_name["saccharification_time"]["range"] == [10.0, 15.0]
    assert by_name["saccharification_time"]["value"] is None
    assert by_name["ndma"]["bound"] == "<"
    assert by_name["odour"]["text"] == "normal"
    assert analysis["derived"][0]["printed"] is None
    assert analysis["derived"][0]["from"] == ["total_nitrogen"]
    assert data["problems"] == [
        {"file": "locked.pdf", "code": "password-protected", "message": "locked.pdf is locked with a password."}
    ]


def test_sheets_become_one_document_in_order() -> None:
    first = Sheet(analyses=(factory.analysis(id="a-1"), factory.analysis(id="a-2")))
    second = Sheet(problems=(factory.problem("b.pdf"),))
    doc = document([first, second], "ASBC")
    assert doc.basis == "ASBC"
    assert [analysis.id for analysis in doc.analyses] == ["a-1", "a-2"]
    assert [problem.file for problem in doc.problems] == ["b.pdf"]


def test_the_schema_in_the_repository_is_current() -> None:
    path = mappings_folder() / "schema" / "onebasis-1.schema.json"
    assert path.read_text(encoding="utf-8") == json_schema_text(), f"write json_schema_text() to {path}"


def test_documents_follow_the_schema() -> None:
    schema = json_schema()
    jsonschema.Draft202012Validator.check_schema(schema)
    jsonschema.validate(json.loads(to_json(factory.document())), schema, cls=jsonschema.Draft202012Validator)
    with pytest.raises(jsonschema.ValidationError):
        jsonschema.validate({"format": "onebasis/2", "basis": "EBC"}, schema)


def test_a_number_that_is_none_cannot_be_written() -> None:
    with pytest.raises(ValidationError):
        Figure(parameter="moisture", value=float("nan"), unit="%", family="EBC", state="accepted")


def test_own_output_is_recognised(tmp_path) -> None:  # type: ignore[no-untyped-def]
    path = tmp_path / "x.json"
    path.write_text(to_json(factory.document()), encoding="utf-8")
    assert is_own_output(path)
