"""The pages of the desk and what their buttons do."""

from __future__ import annotations

import os
import sqlite3
from collections.abc import Iterable
from pathlib import Path
from typing import Any
from urllib.parse import quote

from flask import Flask, abort, g, make_response, redirect, render_template, request
from werkzeug.exceptions import HTTPException

from importer.desk import missing, queue, teaching, views
from importer.desk.context import REVIEWER, StoredNumber, case_of, own_address, page_asked, reviewer, store
from importer.desk.following import Follower
from importer.desk.guarding import Gate, install
from importer.drawing.pages import Pictures
from importer.models import FAMILIES, HEADER_KEYS, Family, HeaderField
from importer.output.words import CAUTION
from importer.store import learned, settling
from importer.store.corrections import HEADER, Case, RefusedError, StaleError
from importer.store.originals import original
from importer.store.places import family_waits
from importer.store.schema import StoreError, explained
from importer.words import Box

_YEAR = 365 * 24 * 3600
_MOST_BYTES = 64 * 1024
Answer = Any


def create_app(folder: Path, gate: Gate, hosts: Iterable[str] = (), pictures: Pictures | None = None) -> Flask:
    """The desk over the store in a folder."""
    app = Flask(__name__)
    app.config.update(MAX_CONTENT_LENGTH=_MOST_BYTES, MAX_FORM_PARTS=100)
    app.url_map.converters["int"] = StoredNumber
    app.jinja_env.trim_blocks = app.jinja_env.lstrip_blocks = True
    install(app, gate, hosts)
    drawn = pictures or Pictures()
    follower = Follower(folder)
    app.extensions["follower"] = follower
    _store_per_request(app, folder)
    _errors(app)
    _lists(app)
    _steps(app, follower)
    _sheets(app, drawn)
    app.register_blueprint(teaching.pages(follower))
    app.register_blueprint(missing.pages(drawn))
    return app


def _store_per_request(app: Flask, folder: Path) -> None:
    @app.before_request
    def name_is_known() -> Answer:
        free = ("/static/", "/who")
        if request.path.startswith(free) or reviewer() or request.path.startswith("/page/"):
            return None
        return redirect(
            f"/who?to={quote(request.full_path.rstrip('?'), safe='')}" if request.method == "GET" else "/who", 303
        )

    @app.teardown_appcontext
    def close(_: BaseException | None) -> None:
        opened = g.pop("store", None)
        if opened is not None:
            opened.close()

    @app.context_processor
    def everywhere() -> dict[str, Any]:
        return {"reviewer": reviewer()}

    app.config["FOLDER"] = folder


def _errors(app: Flask) -> None:
    @app.errorhandler(HTTPException)
    def told(error: HTTPException) -> Answer:
        return render_template("message.html", title=error.name, message=error.description), error.code or 500

    @app.errorhandler(StoreError)
    def store_told(error: StoreError) -> Answer:
        return render_template("message.html", title="That did not work", message=str(error)), 409

    @app.errorhandler(Exception)
    def fault_told(error: Exception) -> Answer:
        if os.environ.get("ONEBASIS_DEBUG"):
            raise error
        told = f"This is a fault of the program ({type(error).__name__}). Nothing was saved. Please report it; with "
        told += "ONEBASIS_DEBUG=1 set, the terminal shows the details."
        return render_template("message.html", title="That did not work", message=told), 500

    @app.errorhandler(sqlite3.Error)
    def base_told(error: sqlite3.Error) -> Answer:
        return store_told(explained(app.config["FOLDER"], error))


# ---------------------------------------------------------------------------------------------- lists


def _lists(app: Flask) -> None:
    @app.get("/who")
    def who() -> Answer:
        return render_template("who.html", to=own_address(request.args.get("to", "/")))

    @app.post("/who")
    def name() -> Answer:
        named = " ".join(request.form.get("name", "").split())[:60]
        if not named:
            return redirect("/who", 303)
        answer = redirect(own_address(request.form.get("to", "/")), 303)
        answer.set_cookie(REVIEWER, quote(named), max_age=_YEAR, httponly=True, samesite="Strict")
        return answer

    @app.get("/")
    def listed() -> Answer:
        page = page_asked()
        connection = store().connection
        waiting, rows = queue.count(connection), queue.number_of(connection, "rows")
        return render_template(
            "list.html",
            sheets=queue.sheets(connection, page),
            waiting=waiting,
            aside=queue.sheets(connection, kind="aside"),
            rows=rows,
            only_rows=queue.sheets(connection, kind="rows") if rows else [],
            page=page,
            pages=-(-waiting.sheets // queue.PAGE),
            told=request.args.get("told", ""),
            last=_last_saved(),
        )

    @app.get("/sheets")
    def sheets() -> Answer:
        kind: queue.Kind = "unknown" if request.args.get("kind") == "unknown" else "all"
        page = page_asked()
        pages = -(-queue.number_of(store().connection, kind) // queue.PAGE)
        found = queue.sheets(store().connection, page, kind)
        return render_template("sheets.html", sheets=found, kind=kind, page=page, pages=pages)


# ---------------------------------------------------------------------------------------------- steps


def _steps(app: Flask, follower: Follower) -> None:
    @app.get("/sheet/<identity>")
    def sheet(identity: str) -> Answer:
        found = queue.steps(case_of(identity))
        step = found[-1 if request.args.get("last") else 0] if found else None
        return redirect(step.address if step else f"/batch/{identity}", 303)

    @app.get("/sheet/<identity>/<what>")
    def step(identity: str, what: str) -> Answer:
        return _show(case_of(identity), what)

    @app.post("/sheet/<identity>/<what>")
    def settle(identity: str, what: str) -> Answer:
        case = case_of(identity)
        if what != queue.HEAD:
            _row(case, what)
        try:
            seen = settling.with_revision(case, request.form.get("revision", -1, type=int))
            saved = _say(seen, what)
        except (RefusedError, StaleError) as error:
            stale = isinstance(error, StaleError)
            return _show(case, what, problem=str(error), typed=request.form.to_dict()), 409 if stale else 422
        follower.follow(learned.supplier_key(saved.case.built.analysis), saved.lessons, saved.case.id)
        if saved.case.built.analysis.state == "accepted":
            follower.tidy()
        return _go_on(saved, what)

    @app.post("/undo/<int:record>")
    def undo(record: int) -> Answer:
        row = store().connection.execute("SELECT analysis, target FROM corrections WHERE id = ?", (record,)).fetchone()
        if row is None:
            abort(404, "There is nothing to take back.")
        case = case_of(row[0])
        try:
            saved = settling.undo(store(), case, record, reviewer())
        except (RefusedError, StaleError) as error:
            abort(409, str(error))
        follower.follow(learned.supplier_key(saved.case.built.analysis), saved.lessons, saved.case.id)
        what = row[1].partition("/")[2] or queue.HEAD
        return redirect(f"/sheet/{case.id}/{what}?told=undone", 303)


def _row(case: Case, what: str) -> int:
    if not (what.isascii() and what.isdigit()) or len(what) > 6 or int(what) >= len(case.part.figures):
        abort(404, "There is no such row on this sheet.")
    return int(what)


def _say(case: Case, what: str) -> settling.Saved:
    """Does what a button of a step says."""
    form, person, action = request.form, reviewer(), request.form.get("action", "")
    if action == "set-aside":
        return settling.set_aside(store(), case, person, form.get("why", ""))
    if what == queue.HEAD:
        entries = {key: form[f"h-{key}"] for key in HEADER_KEYS if f"h-{key}" in form}
        settled = {key: text for key, text in entries.items() if _is_new(case, key, text)}
        return settling.say_header(store(), case, person, settled, form.get("family") or None)
    row = _row(case, what)
    if action == "accept":
        return settling.accept(store(), case, row, person)
    if action == "reject":
        return settling.reject(store(), case, row, person)
    if action == "column":
        return settling.say_column(store(), case, row, person)
    if action != "change":
        abort(400, "There is no such button.")
    said = {name: form.get(name, "") for name in settling.SETTLES}
    said = {name: text for name, text in said.items() if text.strip() and text != form.get(f"was-{name}")}
    return settling.change(store(), case, row, person, said)


def _is_new(case: Case, key: str, text: str) -> bool:
    """True for an entry that was typed anew or is in doubt: one that was sure and is unchanged needs no word."""
    field = case.built.analysis.header.get(key)
    if field is None:
        return bool(text.strip())
    return field.state == "review" or " ".join(text.split()) != field.value


def _go_on(saved: settling.Saved, what: str) -> Answer:
    """To the next step; back to this one where a new doubt came up, with the list at the end."""
    case = saved.case
    again = [step for step in queue.steps(case) if step.what == what and what != queue.HEAD]
    if again and case.set_aside is None:
        return redirect(f"{again[0].address}?told=again", 303)
    step = queue.next_step(store(), case, what)
    if case.set_aside is not None and step is not None and step.sheet == case.id:
        step = None
    return redirect(f"{step.address}?told=saved" if step else "/?told=saved", 303)


def _last_saved() -> dict[str, Any] | None:
    """The last thing that this person said and has not taken back."""
    row = (
        store()
        .connection.execute(
            "SELECT c.id, c.analysis, c.action, json_extract(c.value, '$.after'), c.target FROM corrections c"
            " WHERE c.person = ? AND c.action <> 'withdraw' AND NOT EXISTS (SELECT 1 FROM corrections w"
            " WHERE w.analysis = c.analysis AND w.action = 'withdraw' AND json_extract(w.value, '$.withdraws') = c.id)"
            " ORDER BY c.id DESC LIMIT 1",
            (reviewer(),),
        )
        .fetchone()
    )
    if row is None:
        return None
    told = "head of the sheet" if row[4] == HEADER else row[3]
    return {"id": row[0], "analysis": row[1], "told": f"{views.ACTION_WORDS[row[2]]}: {told or 'left out'}"}


def _show(case: Case, what: str, problem: str = "", typed: dict[str, str] | None = None) -> str:
    row = None if what == queue.HEAD else _row(case, what)
    steps = queue.steps(case)
    common = {
        "case": case,
        "analysis": case.built.analysis,
        "name": views.name_of(case.built.analysis),
        "what": what,
        "position": next((n for n, step in enumerate(steps, 1) if step.what == what), 0),
        "steps": len(steps),
        "next": queue.next_address(store(), case, what),
        "previous": queue.previous_address(store(), case, what),
        "problem": problem,
        "typed": typed or {},
        "told": request.args.get("told", ""),
        "last": _last_saved(),
    }
    if row is None:
        return render_template(
            "head.html",
            fields=_head_fields(case),
            family_waits=family_waits(case),
            families=FAMILIES,
            **common,
        )
    view = views.figure_view(store(), case, row)
    parameter = view.place.figure.parameter if view.place.figure else None
    return render_template(
        "figure.html",
        view=view,
        parameter=parameter,
        choices=views.all_parameters(),
        units=views.units_for(parameter),
        families=FAMILIES,
        **common,
    )


def _head_fields(case: Case) -> list[dict[str, Any]]:
    """The entries of the head, those in doubt first with their place on the page."""
    header = case.built.analysis.header
    missing = {"batch"} if case.built.analysis.kind == "batch" and "batch" not in header else set()

    def entry(key: str, field: HeaderField | None) -> dict[str, Any]:
        doubtful = key in missing or (field is not None and field.state == "review")
        crop = None
        if field is not None and doubtful:
            crop = views.crop_of(case, field.page, Box(*field.box), strip=True)
        return {"key": key, "title": views.HEADER_WORDS[key], "field": field, "doubtful": doubtful, "crop": crop}

    fields = [entry(key, header.get(key)) for key in HEADER_KEYS]
    return sorted(fields, key=lambda one: not one["doubtful"])


# ---------------------------------------------------------------------------------------------- sheets


def _sheets(app: Flask, drawn: Pictures) -> None:
    @app.get("/page/<identity>/<int:number>.png")
    def page(identity: str, number: int) -> Answer:
        row = (
            store()
            .connection.execute(
                "SELECT sha256, json_extract(json, '$.source.file'), json_extract(json, '$.source.reading')"
                " FROM analyses WHERE id = ?",
                (identity,),
            )
            .fetchone()
        )
        data = original(store(), row[0]) if row is not None else None
        picture = drawn.draw(row[0], data, row[1], number, row[2]) if data is not None else None
        if picture is None:
            abort(404, "The original is not there any more, or this page of it cannot be drawn.")
        answer = make_response(picture)
        answer.headers["Content-Type"] = "image/png"
        answer.headers["Cache-Control"] = "private, max-age=86400, immutable"
        return answer

    @app.get("/batch/<identity>")
    def batch(identity: str) -> Answer:
        from importer.meaning.build import Options

        case = case_of(identity)
        wanted = request.args.get("basis", "EBC")
        basis: Family = next((family for family in FAMILIES if family == wanted), "EBC")
        built = case.built if basis == "EBC" else case.with_statements(case.statements, Options(basis))
        groups = [[one.row for one in group] for group in built.groups]
        lines = views.lines_of(case, built.analysis, groups)
        return render_template(
            "batch.html",
            case=case,
            analysis=built.analysis,
            name=views.name_of(built.analysis),
            basis=basis,
            waits=bool(queue.steps(case)),
            families=FAMILIES,
            lines=lines,
            unknown=list(zip(built.unknown_rows, built.analysis.unrecognised, strict=True)),
            methods=views.methods_of(built.analysis),
            titles=views.HEADER_WORDS,
            actions=views.ACTION_WORDS,
            words=views.told_of_record,
            caution=CAUTION if any(line.food_safety for line in lines) else "",
            told=request.args.get("told", ""),
        )
