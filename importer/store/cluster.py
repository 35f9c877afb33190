"""Reading on a Dask cluster, through Dask's own executor. Contents travel as bytes: no shared disk is needed.

Each thread of a Dask worker keeps a watched reading process of its own, so that limits hold there as they do here.
onebasis of the same version has to be installed on the workers.
"""

from __future__ import annotations

import contextlib
from collections.abc import Iterator
from concurrent.futures import Executor
from typing import Any

_PATIENCE = "30s"


class ClusterError(Exception):
    """The cluster cannot be used; the message says why and what to do."""


@contextlib.contextmanager
def cluster_readers(address: str) -> Iterator[tuple[Executor, int]]:
    """An executor on the cluster of a scheduler, and how many files it reads at once. Raises ClusterError."""
    try:
        import distributed
    except ImportError:
        raise ClusterError(
            "--scheduler needs Dask: pip install 'onebasis[cluster]', here and on the workers."
        ) from None
    try:
        make: Any = distributed.Client  # it has no types
        client = make(address, timeout=_PATIENCE, set_as_default=False)
    except (OSError, TimeoutError, ValueError) as error:
        raise ClusterError(f"There is no Dask scheduler at {address} ({error}).") from None
    with client:
        threads = sum(client.nthreads().values())
        if not threads:
            raise ClusterError(f"The Dask scheduler at {address} has no workers. Start some and try again.")
        try:
            yield client.get_executor(pure=False, retries=2), threads
        except Exception as error:
            if not type(error).__module__.startswith(("distributed", "concurrent.futures")):
                raise
            raise ClusterError(
                f"The Dask cluster at {address} gave up ({type(error).__name__}: {error}). What was read so far is in "
                "the store; run again to go on."
            ) from None
