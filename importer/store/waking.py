"""Waits for something to happen in a folder; without watchfiles, or on a share that tells nothing, just for a while."""

from __future__ import annotations

import threading
import time
from pathlib import Path
from types import TracebackType
from typing import Any, Self

_STEP_MILLISECONDS = 200


class Waking:
    """Use it in a ``with`` block. What happened between two waits counts for the next."""

    def __init__(self, folder: Path) -> None:
        self._folder = folder
        self._stop = threading.Event()
        self._woken = threading.Event()
        self._thread: threading.Thread | None = None

    def __enter__(self) -> Self:
        try:
            from watchfiles import watch
        except ImportError:
            return self
        self._thread = threading.Thread(target=self._listen, args=(watch,), daemon=True)
        self._thread.start()
        return self

    def _listen(self, watch: Any) -> None:
        try:
            changes = watch(
                self._folder,
                watch_filter=None,
                stop_event=self._stop,
                step=_STEP_MILLISECONDS,
                rust_timeout=1000,
                raise_interrupt=False,
                ignore_permission_denied=True,
            )
            for _ in changes:
                self._woken.set()
        except (OSError, RuntimeError):
            return  # the regular look goes on without

    def wait(self, seconds: float) -> None:
        """Returns when something happened, at the latest after so many seconds."""
        end = time.monotonic() + seconds
        # In short waits, because on Windows an interruption is only noticed between them.
        while (left := end - time.monotonic()) > 0 and not self._woken.wait(min(left, 0.5)):
            pass
        self._woken.clear()

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        self._stop.set()
        if self._thread is not None:
            self._thread.join(timeout=5)
