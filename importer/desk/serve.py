"""Serves the desk on this machine until it is stopped."""

from __future__ import annotations

import logging
import signal
import socket
import threading
import webbrowser
from collections.abc import Callable
from pathlib import Path
from types import FrameType

from waitress.server import create_server

from importer.desk.app import create_app
from importer.desk.guarding import LOOPBACK, Gate
from importer.drawing.pages import Pictures
from importer.store.ledger import Store

THREADS = 6


class AddressTakenError(Exception):
    """The desk cannot listen there; the message says why."""


def serve(folder: Path, host: str, port: int, *, browser: bool, told: Callable[[str], None]) -> None:
    """Runs until interrupted. ``told`` gets the address, which opens once. Raises AddressTakenError."""
    gate, pictures = Gate(), Pictures()
    app = create_app(folder, gate, (host,), pictures)
    try:
        server = create_server(app, host=host, port=port, threads=THREADS, ident=None, channel_timeout=60)
    except (OSError, ValueError) as error:
        reason = getattr(error, "strerror", None) or error
        raise AddressTakenError(
            f"The desk cannot listen at {host}, port {port}: {reason}. Name another with --port."
        ) from None
    chosen = int(server.effective_port)
    gate.cookie = f"onebasis-desk-{chosen}"
    address = f"http://{_name(host)}:{chosen}/?token={gate.token}"
    told(f"The review desk is at {address}")
    told("The address works once, for one browser. Stop the desk with Ctrl-C.")
    if host not in LOOPBACK:
        told(
            f"Warning: it listens at {host}, so others in your network can reach it. What is sent is not encrypted; do "
            "this in a network that you trust only."
        )
    pictures.warm_up()
    signal.signal(signal.SIGTERM, _stop)
    logging.getLogger("waitress").setLevel(logging.ERROR)
    if browser:
        threading.Thread(target=webbrowser.open, args=(address,), daemon=True).start()
    try:
        # One connection stays open: the last one that closes writes the whole log back into the store.
        with Store(folder):
            server.run()
    finally:
        app.extensions["follower"].done()
        pictures.close()


def _stop(number: int, frame: FrameType | None) -> None:
    """Being told to end is as good as Ctrl-C: what is going on is brought to its end."""
    raise KeyboardInterrupt


def _name(host: str) -> str:
    if host in ("0.0.0.0", "::"):
        return socket.gethostbyname(socket.gethostname())
    return f"[{host}]" if ":" in host else host
