"""Parquet: the rows of the long CSV as typed columns. Needs the extra ``parquet``."""

from __future__ import annotations

import io
from typing import Any

from importer.errors import DataError
from importer.models import Document
from importer.output.csv_out import LONG_COLUMNS, long_rows


def to_parquet(doc: Document) -> bytes:
    """One row a figure; an empty cell is null. Raises DataError where pyarrow is not installed."""
    try:
        import pyarrow
        import pyarrow.parquet
    except ImportError:
        raise DataError("Parquet needs one more package: pip install 'onebasis[parquet]'.") from None
    kinds = {
        "string": pyarrow.string(),
        "number": pyarrow.float64(),
        "integer": pyarrow.int64(),
        "boolean": pyarrow.bool_(),
    }
    fields = [
        pyarrow.field(column.name, kinds[column.type], metadata={"description": column.description})
        for column in LONG_COLUMNS
    ]
    columns: list[list[Any]] = [[] for _ in LONG_COLUMNS]
    for row in long_rows(doc):
        for values, value in zip(columns, row, strict=True):
            values.append(None if value == "" else value)
    schema = pyarrow.schema(fields, metadata={"format": "onebasis/1", "basis": doc.basis})
    arrays = [pyarrow.array(values, field.type) for values, field in zip(columns, fields, strict=True)]
    table = pyarrow.Table.from_arrays(arrays, schema=schema)
    out = io.BytesIO()
    pyarrow.parquet.write_table(table, out)
    return out.getvalue()
