"""The endpoint itself: a few addresses, each answered from the store, none of which can change anything."""

from __future__ import annotations

import threading
from collections.abc import Callable
from pathlib import Path
from typing import Any

from flask import Flask, Response, request
from werkzeug.exceptions import HTTPException

from importer.deciding.choosing import named_batch
from importer.deciding.compare import compare
from importer.deciding.feed import Feed, recipe_feed
from importer.deciding.ground import header
from importer.deciding.meaning_of import batch_meaning
from importer.models import Analysis, Document
from importer.output.atomic import WriteError
from importer.serving.openapi import describe
from importer.store.looking_in import Current
from importer.store.rows import key
from importer.telling.recipe_out import to_recipe_csv, to_recipe_json

# A page of another site that got its name to point at this machine still sends that name.
HOSTS = frozenset({"localhost", "127.0.0.1", "[::1]"})
JSON = "application/json"
_MOST = 1000
_MOST_COMPARED = 20
_LONGEST = 200


class FaultError(Exception):
    """A request that cannot be answered, with its status."""

    def __init__(self, status: int, message: str) -> None:
        super().__init__(message)
        self.status = status


def make_app(folder: Path) -> Flask:
    """The application for the store in a folder."""
    app = Flask("onebasis", static_folder=None)
    current = Current(folder)
    kept = _Kept()

    @app.before_request
    def _guard() -> None:
        _check_host(request.host)

    @app.after_request
    def _plain(response: Response) -> Response:
        response.headers["X-Content-Type-Options"] = "nosniff"
        response.headers["Cache-Control"] = "no-store"
        response.headers["Cross-Origin-Resource-Policy"] = "same-origin"
        return response

    @app.get("/openapi.json")
    def description() -> Any:
        return describe(request.host_url)

    @app.get("/")
    def start() -> Any:
        return {"description": "/openapi.json", "malts": "/v1/malts", "analyses": "/v1/analyses"}

    @app.get("/v1/malts")
    def malts() -> Response:
        return _answer(kept.get(current, "json", lambda feed: to_recipe_json(feed)), JSON)

    @app.get("/v1/malts.csv")
    def malts_csv() -> Response:
        return _answer(kept.get(current, "csv", lambda feed: to_recipe_csv(feed)[0]), "text/csv; charset=utf-8")

    @app.get("/v1/analyses")
    def analyses() -> Response:
        found = [a for a in current.get()[1] if _wanted(a, "supplier") and _wanted(a, "malt") and _wanted(a, "batch")]
        start_at, most = _number("offset", 0, 10**9), max(1, _number("limit", 100, _MOST))
        return _document(found[start_at : start_at + most])

    @app.get("/v1/analyses/<name>")
    def analysis(name: str) -> Response:
        return _document([_one([a for a in current.get()[1] if a.id == name], name)])

    @app.get("/v1/batches/<path:name>")
    def batch(name: str) -> Response:
        everything = current.get()[1]
        one = _one(list(named_batch(everything, name)), name)
        return _answer(batch_meaning(one, everything).model_dump_json(by_alias=True, indent=2) + "\n", JSON)

    @app.get("/v1/compare")
    def side_by_side() -> Response:
        everything = current.get()[1]
        names = dict.fromkeys(request.args.getlist("batch"))
        if not 2 <= len(names) <= _MOST_COMPARED:
            raise FaultError(400, f"Name from 2 to {_MOST_COMPARED} batches: ?batch=Q4127&batch=Q4163.")
        found = compare([_one(list(named_batch(everything, name)), name) for name in names])
        return _answer(found.model_dump_json(by_alias=True, indent=2) + "\n", JSON)

    @app.errorhandler(Exception)
    def _fault(error: Exception) -> tuple[dict[str, str], int]:
        return _told(error)

    return app


class _Kept:
    """Answers that are the same until something changes; a few of them."""

    def __init__(self) -> None:
        self._lock = threading.Lock()
        self._answers: dict[tuple[str, str], tuple[int, str]] = {}

    def get(self, current: Current, kind: str, render: Callable[[Feed], str]) -> str:
        """The feed that the request asks for."""
        change, analyses = current.get()
        name = (kind, request.query_string.decode("ascii", "replace"))
        found = self._answers.get(name)
        if found is not None and found[0] == change:
            return found[1]
        with self._lock:
            found = self._answers.get(name)
            if found is not None and found[0] >= change:
                return found[1]
            text = render(_feed(analyses))
            if len(self._answers) > _LONGEST:
                self._answers.clear()
            self._answers[name] = (change, text)
            return text


def _feed(analyses: tuple[Analysis, ...]) -> Feed:
    pins: dict[str, str] = {}
    for text in request.args.getlist("pin"):
        malt, equals, number = text.rpartition("=")
        if not equals:
            raise FaultError(400, f"pin={text[:_LONGEST]} is not like pin=Best Pale Ale Malt=Q4127.")
        pins[malt] = number
    try:
        return recipe_feed([a for a in analyses if _wanted(a, "supplier") and _wanted(a, "malt")], pins)
    except ValueError as fault:
        raise FaultError(404, str(fault)) from None


def _wanted(analysis: Analysis, name: str) -> bool:
    text = request.args.get(name)
    return text is None or (key(text) or "\0") in (key(header(analysis, name)) or "")


def _number(name: str, default: int, most: int) -> int:
    text = request.args.get(name)
    if text is None:
        return default
    if not text.isascii() or not text.isdigit() or len(text) > 9:
        raise FaultError(400, f"{name} must be a whole number from 0 to {most}.")
    return min(int(text), most)


def _one(found: list[Analysis], name: str) -> Analysis:
    if not found:
        raise FaultError(404, f"There is no {name[:_LONGEST]} in the store.")
    if len(found) > 1:
        ids = ", ".join(a.id for a in found)
        raise FaultError(409, f"There are {len(found)} analyses of {name[:_LONGEST]}; ask for one by its id: {ids}.")
    return found[0]


def _document(analyses: list[Analysis]) -> Response:
    return _answer(Document(basis="EBC", analyses=tuple(analyses)).model_dump_json(by_alias=True) + "\n", JSON)


def _answer(text: str, kind: str) -> Response:
    return Response(text, mimetype=None, content_type=kind)


def _check_host(host: str) -> None:
    """Refuses a request that was not meant for this machine's own name."""
    name = host.rpartition(":")[0] if not host.endswith("]") and ":" in host else host
    if name not in HOSTS:
        raise FaultError(421, "This endpoint answers to localhost only.")


def _told(error: Exception) -> tuple[dict[str, str], int]:
    if isinstance(error, FaultError):
        return {"message": str(error)}, error.status
    if isinstance(error, HTTPException):
        return {"message": error.description or error.name}, error.code or 500
    if isinstance(error, WriteError):  # what the store complains about
        return {"message": str(error)}, 503
    return {"message": "A fault of the program. Please report it."}, 500
