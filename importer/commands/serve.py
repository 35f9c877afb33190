"""The command ``serve``: a read-only endpoint on this machine."""

from __future__ import annotations

import logging
import signal
from pathlib import Path
from types import FrameType

from importer.commands.run import READ, UsageError, tell
from importer.commands.stored import opened

LOOPBACK = "127.0.0.1"
THREADS = 4
MOST_CONNECTIONS = 500


def serve(store: Path | None, port: int) -> int:
    """Answers until it is interrupted. Raises UsageError where there is no store, or the port is taken."""
    try:
        from waitress.server import create_server

        from importer.serving.app import make_app
    except ImportError:
        raise UsageError("serve needs more packages: pip install 'onebasis[serve]'.") from None
    with opened(store) as found:  # an older store is brought up to date here, as readers cannot
        folder = found.folder
    logging.getLogger("waitress.queue").setLevel(logging.ERROR)  # many readers at once are no news
    try:
        server = create_server(
            make_app(folder),
            host=LOOPBACK,
            port=port,
            threads=THREADS,
            connection_limit=MOST_CONNECTIONS,
            ident=None,
        )
    except (OSError, ValueError) as error:
        reason = getattr(error, "strerror", None) or error
        raise UsageError(f"Port {port} cannot be used: {reason}. Name another with --port.") from None
    address = f"http://{LOOPBACK}:{server.effective_port}"
    tell(f"Answers at {address}/v1/malts, for this machine only; described at {address}/openapi.json. Ctrl+C ends it.")
    signal.signal(signal.SIGTERM, _stop)
    server.run()  # comes back when it is interrupted
    server.close()
    tell("Ended.")
    return READ


def _stop(number: int, frame: FrameType | None) -> None:
    """Being told to end is as good as Ctrl+C."""
    raise KeyboardInterrupt
