"""``export --recipe``: the malts in use for a recipe tool, and what differs from what was handed out before."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

from importer.commands.read import STANDARD_OUTPUT, to_standard_output
from importer.commands.run import READ, UsageError, check_target, tell
from importer.commands.stored import opened, stored_analyses, told_where_nothing_is_kept
from importer.deciding.feed import Feed, recipe_feed
from importer.output.atomic import write_text
from importer.output.csv_out import schema_path
from importer.output.terminal import clean
from importer.store.handed_out import handed_out, record_handed_out
from importer.store.selection import Wanted, days, nothing_chosen
from importer.telling.recipe_out import change_words, to_recipe_csv, to_recipe_json


def export_recipe(target: str, wanted: Wanted, pins: Sequence[str], store_folder: Path | None) -> int:
    """Writes the CSV with its schema and the JSON beside it; ``-`` is the CSV on standard output."""
    given = pins_of(pins)
    if target != STANDARD_OUTPUT:
        _check(Path(target))
    with opened(store_folder) as store:
        try:
            analyses = stored_analyses(store, wanted)
            if not analyses:
                tell(clean(nothing_chosen(store, wanted)))
            feed = recipe_feed(analyses, given, handed_out(store), days(store))
        except ValueError as fault:
            raise UsageError(f"--pin: {fault}") from None
        _write(feed, target)
        if not told_where_nothing_is_kept(store, "what was handed out is not remembered"):
            record_handed_out(store, [malt.model_dump() for malt in feed.malts])
    _tell(feed, target)
    return READ


def pins_of(texts: Sequence[str]) -> dict[str, str]:
    """``malt=batch`` as a table. Raises UsageError."""
    pins: dict[str, str] = {}
    for text in texts:
        malt, equals, batch = (part.strip() for part in text.rpartition("="))
        if not (malt and equals and batch):
            raise UsageError(f"--pin: {text!r} is not like 'Best Pale Ale Malt=Q4127'.")
        if pins.setdefault(malt, batch) != batch:
            raise UsageError(f"--pin: two batches are given for {malt}.")
    return pins


def _check(path: Path) -> None:
    if path.suffix.lower() == ".json":
        raise UsageError("--recipe needs the name of the CSV file; the JSON file is written beside it.")
    check_target("--recipe", path)


def _write(feed: Feed, target: str) -> None:
    text, schema = to_recipe_csv(feed)
    if target == STANDARD_OUTPUT:
        to_standard_output(text.encode("utf-8"))
        return
    path = Path(target)
    write_text(path.with_suffix(".json"), to_recipe_json(feed))
    write_text(schema_path(path), schema)
    write_text(path, text)


def _tell(feed: Feed, target: str) -> None:
    if target != STANDARD_OUTPUT:
        count = len(feed.malts)
        tell(f"Wrote {count} {'malt' if count == 1 else 'malts'} to {target}, and as JSON beside it.")
    for remark in feed.remarks:
        tell(clean(remark))
    if feed.changes:
        tell("These numbers are others than those handed out before:")
    for change in feed.changes:
        tell(f"  {change_words(change)}")
