"""What somebody meant who misspelt a name."""

from __future__ import annotations

from collections.abc import Iterable

_MOST = 3


def did_you_mean(name: str, known: Iterable[str]) -> str:
    """A question that names the known names that are spelt most like it, with a space before; empty where none is."""
    import difflib  # loads much, and is needed where something is wrong only

    names: dict[str, str] = {}
    for one in known:
        names.setdefault(one.casefold(), one)
    near = difflib.get_close_matches(name.casefold(), names, _MOST)
    return f" Did you mean {' or '.join(names[one] for one in near)}?" if near else ""
