"""The command ``serve``: a read-only endpoint on this machine."""

from __future__ import annotations

import logging
import socket
from pathlib import Path

from importer.commands.run import READ, UsageError, tell
from importer.commands.stored import opened

LOOPBACK = "127.0.0.1"
WAITING = 256


def serve(store: Path | None, port: int) -> int:
    """Answers until it is interrupted. Raises UsageError where there is no store, or the port is taken."""
    try:
        from werkzeug.serving import make_server

        from importer.serving.app import make_app
    except ImportError:
        raise UsageError("serve needs one more package: pip install 'onebasis[serve]'.") from None
    with opened(store) as found:  # an older store is brought up to date here, as readers cannot
        folder = found.folder
    listening = _listen(port)
    logging.getLogger("werkzeug").setLevel(logging.WARNING)
    server = make_server(LOOPBACK, port, make_app(folder), threaded=True, fd=listening.fileno())
    address = f"http://{LOOPBACK}:{listening.getsockname()[1]}"
    tell(f"Answers at {address}/v1/malts, for this machine only; described at {address}/openapi.json. Ctrl+C ends it.")
    try:
        server.serve_forever()  # comes back when it is interrupted
    finally:
        server.server_close()
        listening.close()
    tell("Ended.")
    return READ


def _listen(port: int) -> socket.socket:
    listening = socket.socket(socket.AF_INET, socket.SOCK_STREAM)
    try:
        listening.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
        listening.bind((LOOPBACK, port))
        listening.listen(WAITING)
    except OSError as error:
        listening.close()
        raise UsageError(f"Port {port} cannot be used: {error.strerror or error}. Name another with --port.") from None
    return listening
