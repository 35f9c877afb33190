"""What every page of a request needs: the store, the sheet, and who is at the desk."""

from __future__ import annotations

from urllib.parse import unquote

from flask import abort, current_app, g, request
from werkzeug.routing import IntegerConverter

from importer.store.catching_up import load_anyway
from importer.store.corrections import Case
from importer.store.ledger import Store

REVIEWER = "onebasis-reviewer"
"""The cookie with the name that was typed once."""
MOST_PAGES = 1_000_000


def store() -> Store:
    """The store, opened for this request."""
    if "store" not in g:
        g.store = Store(current_app.config["FOLDER"])
    opened: Store = g.store
    return opened


def reviewer() -> str:
    """The name that was typed once; "" before that."""
    return " ".join(unquote(request.cookies.get(REVIEWER, "")).split())[:60]


def case_of(identity: str) -> Case:
    """An analysis; the page is not found where there is none."""
    if store().connection.execute("SELECT 1 FROM analyses WHERE id = ?", (identity,)).fetchone() is None:
        abort(404, "There is no such sheet in the store.")
    return load_anyway(store(), identity)


def own_address(address: str) -> str:
    """An address within the desk, whatever was asked for."""
    return address if address.startswith("/") and not address.startswith(("//", "/\\")) else "/"


def page_asked() -> int:
    """The page of a list that was asked for, the first where that is no sensible number."""
    return min(max(1, request.args.get("page", 1, type=int)), MOST_PAGES)


class StoredNumber(IntegerConverter):
    """A number in an address, no longer than one that the store can hold."""

    regex = "[0-9]{1,18}"
