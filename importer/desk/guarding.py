"""Who may use the desk: whoever opened it with its one-time address, from this machine's own pages only."""

from __future__ import annotations

import ipaddress
import secrets
import threading
from collections.abc import Iterable
from urllib.parse import urlsplit

from flask import Flask, Request, Response, abort, redirect, request

POLICY = (
    "default-src 'none'; style-src 'self'; script-src 'self'; img-src 'self'; form-action 'self'; base-uri 'none'; "
    "frame-ancestors 'none'"
)
HEADERS = {
    "Content-Security-Policy": POLICY,
    "X-Content-Type-Options": "nosniff",
    "Referrer-Policy": "same-origin",
    "Cross-Origin-Opener-Policy": "same-origin",
    "Cross-Origin-Resource-Policy": "same-origin",
}
LOOPBACK = ("127.0.0.1", "localhost", "::1")
CLOSED = (
    "This desk opens with the address that `onebasis review` prints when it starts. That address works once; start the "
    "desk again for a new one."
)


class Gate:
    """The token of the opened address, good for one use, and the cookie that it is exchanged for."""

    def __init__(self) -> None:
        self._token: str | None = secrets.token_urlsafe(24)
        self._pass = secrets.token_urlsafe(32)
        self._guard = threading.Lock()
        self.cookie = "onebasis-desk"

    @property
    def token(self) -> str:
        """The one-time token; "" once it was used."""
        return self._token or ""

    def exchange(self, given: str) -> str | None:
        """The value of the cookie for the token; None for a wrong or a used one."""
        with self._guard:
            if self._token is None or not secrets.compare_digest(given.encode(), self._token.encode()):
                return None
            self._token = None
            return self._pass

    def lets_in(self, cookie: str | None) -> bool:
        """True for the cookie that was given out."""
        return cookie is not None and secrets.compare_digest(cookie.encode(), self._pass.encode())


def install(app: Flask, gate: Gate, hosts: Iterable[str]) -> None:
    """Has every request checked before anything of the store is looked at. ``hosts`` may be asked for by name."""
    names = {name.lower() for name in (*LOOPBACK, *hosts)}
    anywhere = bool(names & {"0.0.0.0", "::"})

    @app.before_request
    def check() -> Response | None:
        if not _is_own_host(request.host, names, anywhere):
            abort(400, "This desk does not answer under that name.")
        if request.method not in ("GET", "HEAD", "POST"):
            abort(405)
        if request.method == "POST" and not _is_own_page(request):
            abort(403, "This came from another page than the desk's own, so nothing was done.")
        if request.path.startswith("/static/"):
            return None
        token = request.args.get("token")
        if token is not None and request.method == "GET":
            given = gate.exchange(token)
            if given is None and not gate.lets_in(request.cookies.get(gate.cookie)):
                abort(403, CLOSED)
            answer = redirect("/", 303)
            if given is not None:
                answer.set_cookie(gate.cookie, given, httponly=True, samesite="Strict")
            return answer  # type: ignore[return-value]
        if not gate.lets_in(request.cookies.get(gate.cookie)):
            abort(403, CLOSED)
        return None

    @app.after_request
    def protect(answer: Response) -> Response:
        for name, value in HEADERS.items():
            answer.headers[name] = value
        answer.headers.setdefault("Cache-Control", "no-store")
        return answer


def _is_own_host(host: str, names: set[str], anywhere: bool) -> bool:
    """True for a name that the desk was started under: any other could be a foreign site that points here."""
    name = (urlsplit(f"//{host}").hostname or "").lower()
    if name in names:
        return True
    if not anywhere:
        return False
    try:
        ipaddress.ip_address(name)
    except ValueError:
        return False
    return True


def _is_own_page(asked: Request) -> bool:
    """True where the browser says that one of the desk's own pages sent this; false where it says nothing."""
    site = asked.headers.get("Sec-Fetch-Site")
    origin = asked.headers.get("Origin")
    if site is None and origin is None:
        return False
    if site not in (None, "same-origin"):
        return False
    return origin is None or origin.lower() == f"{asked.scheme}://{asked.host}".lower()
