"""The page for a row that the reading missed: a box is drawn, what stands in it is read and offered, then saved."""

from __future__ import annotations

from typing import Any

from flask import Blueprint, abort, redirect, render_template, request

from importer.desk.context import case_of, reviewer, store
from importer.desk.views import all_parameters, crop_of, name_of
from importer.drawing.pages import Pictures
from importer.meaning.labels import describe
from importer.store import settling
from importer.store.corrections import Case, RefusedError, StaleError
from importer.store.originals import original

Answer = Any
_EDGES = ("x0", "top", "x1", "bottom")
_NOTHING = "Nothing could be read in this box. Type what stands there."


def pages(drawn: Pictures) -> Blueprint:
    """The page under /sheet/…/missing."""
    part = Blueprint("missing", __name__)

    @part.get("/sheet/<identity>/missing")
    def draw(identity: str) -> Answer:
        return _show(case_of(identity), request.args.get("page", 0, type=int))

    @part.post("/sheet/<identity>/missing")
    def settle(identity: str) -> Answer:
        case = case_of(identity)
        number = request.form.get("page", 0, type=int)
        typed = request.form.to_dict()
        if request.form.get("action") == "read":
            return _show(case, number, **_read(case, number, drawn))
        try:
            seen = settling.with_revision(case, request.form.get("revision", -1, type=int))
            printed = {name: typed.get(name, "") for name in ("label", "value", "unit")}
            where = {"page": number, "box": _box(case, number)}
            saved = settling.add_row(store(), seen, reviewer(), {**printed, **where}, typed.get("parameter", ""))
        except (RefusedError, StaleError) as error:
            return _show(case, number, problem=str(error), typed=typed), 409 if isinstance(error, StaleError) else 422
        return redirect(f"/sheet/{identity}/{len(saved.case.part.figures) - 1}?told=saved", 303)

    return part


def _box(case: Case, number: int) -> tuple[float, float, float, float]:
    """The box that was drawn, within the page. Raises RefusedError."""
    page = case.kept.by_number.get(number)
    if page is None:
        abort(404, "There is no such page.")
    try:
        x0, top, x1, bottom = (float(request.form.get(edge, "")) for edge in _EDGES)
    except ValueError:
        raise RefusedError("Draw a box around the row first, or give its four edges.") from None
    x0, x1 = sorted((min(max(0.0, x0), page.width), min(max(0.0, x1), page.width)))
    top, bottom = sorted((min(max(0.0, top), page.height), min(max(0.0, bottom), page.height)))
    if not (x1 - x0 >= 2 and bottom - top >= 2):
        raise RefusedError("The box is too small to hold a row.")
    return x0, top, x1, bottom


def _read(case: Case, number: int, drawn: Pictures) -> dict[str, Any]:
    typed = request.form.to_dict()
    try:
        box = _box(case, number)
    except RefusedError as error:
        return {"problem": str(error), "typed": typed}
    data = original(store(), case.sha256)
    source, page = case.as_read.source, case.kept.by_number[number]
    read = drawn.read(data, source.file, number, page.reading, box, page.width) if data is not None else None
    if read is None or not (read.label or read.value):
        return {"problem": _NOTHING, "typed": typed}
    guess = describe(read.label, read.unit or None)
    return {
        "typed": {**typed, "label": read.label, "value": read.value, "unit": read.unit, "parameter": guess.parameter}
    }


def _show(case: Case, number: int, problem: str = "", typed: dict[str, Any] | None = None) -> str:
    known = sorted(case.kept.by_number)
    number = number if number in known else next(iter(known), 1)
    return render_template(
        "missing.html",
        case=case,
        analysis=case.built.analysis,
        name=name_of(case.built.analysis),
        page=number,
        pages=known,
        crop=crop_of(case, number, None),
        choices=all_parameters(),
        problem=problem,
        typed=typed or {},
        edges=_EDGES,
    )
