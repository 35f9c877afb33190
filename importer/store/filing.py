"""Where originals go: planned with what was read of them, checked, then carried out. Each step can be done again.

A file leaves the inbox only after everything in it is in its place. Nothing is ever written over, and nothing outside
the store's folder.
"""

from __future__ import annotations

import contextlib
import os
import sqlite3
import tempfile
import unicodedata
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from pathlib import Path, PurePosixPath

from importer.intake.names import safe_name
from importer.output.atomic import WriteError, sync_folder
from importer.store import notes, rows
from importer.store.ledger import Delivery, Store, Taken
from importer.store.lock import only_writer
from importer.store.moving import move
from importer.store.names import safe_file, safe_part
from importer.store.originals import hash_of, original_of_arrival
from importer.store.schema import explained, transaction
from importer.walk import is_own_output

FILED = "filed"
TO_REVIEW = "set-aside/to-review"
UNREADABLE = "set-aside/unreadable"
WORKSHOP = ".unfinished"


@dataclass(frozen=True, slots=True)
class Stuck:
    """A file that could not be taken out of the inbox; it is tried again at every look. ``reason`` follows its name."""

    path: Path
    reason: str


class Filer:
    """Files originals into the store's folder."""

    def __init__(self, store: Store) -> None:
        self._store = store
        self._root = store.folder
        self._db: sqlite3.Connection = store.connection
        self.stuck: list[Stuck] = []
        self._clear_workshop()

    def _clear_workshop(self) -> None:
        """What an earlier run was in the midst of writing when it ended: it is written anew."""
        workshop = self._root / WORKSHOP
        workshop.mkdir(exist_ok=True)
        for path in workshop.iterdir():
            with contextlib.suppress(OSError):
                path.unlink()

    def plan(self, delivery: Delivery, taken: Iterable[Taken]) -> None:
        """Writes down what will be moved where; to be called in the transaction that stores the delivery."""
        taken = list(taken)
        for one in taken:
            if one.state != "passed-over" and not self._is_settled(one):
                self._plan_one(delivery, one)
        self._db.execute(
            "INSERT INTO removals VALUES (?, ?, ?)",
            (taken[0].arrival, rows.path_value(delivery.path), delivery.item.sha256),
        )

    def _is_settled(self, one: Taken) -> bool:
        sha256 = one.item.sha256
        if self._db.execute("SELECT 1 FROM filings WHERE sha256 = ? AND state = 'planned'", (sha256,)).fetchone():
            return True
        (filed,) = self._db.execute("SELECT filed FROM documents WHERE sha256 = ?", (sha256,)).fetchone()
        if filed is None or hash_of(self._root / filed) != sha256:
            return False  # gone, or altered by somebody: what has come in now is filed beside it
        # Something that was set aside may have become readable since.
        return PurePosixPath(filed).is_relative_to(self._folder_kind(one))

    def _folder_kind(self, one: Taken) -> str:
        return {"accepted": FILED, "review": TO_REVIEW}.get(one.state, UNREADABLE)

    def _plan_one(self, delivery: Delivery, one: Taken) -> None:
        folder = self._folder_of(delivery, one)
        note = None if one.state == "accepted" else self._note(one)
        self._db.execute(
            "DELETE FROM filings WHERE sha256 = ? AND state <> 'planned'", (one.item.sha256,)
        )  # its name is free for another try
        target = self._free_name(folder, safe_file(one.item.name), one.item.sha256, noted=note is not None)
        self._db.execute(
            "INSERT INTO filings (sha256, arrival, target, target_key, note, state) VALUES (?, ?, ?, ?, ?, 'planned')",
            (one.item.sha256, one.arrival, target, _target_key(target), note),
        )

    def _note(self, one: Taken) -> str:
        """Why it is set aside. What was read of it before has its reasons in the text of that time."""
        if one.again and not one.analyses and not one.problems:
            before = self._db.execute(
                "SELECT note FROM filings WHERE sha256 = ? AND note IS NOT NULL ORDER BY id DESC LIMIT 1",
                (one.item.sha256,),
            ).fetchone()
            if before is not None:
                return str(before[0])
        return notes.why(one)

    def _folder_of(self, delivery: Delivery, one: Taken) -> str:
        if one.state != "accepted":
            return self._folder_kind(one)
        if one.item.kind != "sheet":
            sent = one.item.letter.sent if one.item.letter else None
            return f"{FILED}/_{one.item.kind}s/{(sent or delivery.written)[:4]}"
        return self._sheet_folder(one.item.sha256, delivery.written)

    def _sheet_folder(self, sha256: str, written: str) -> str:
        found = self._db.execute(
            "SELECT supplier, batch, kind, dated FROM analyses WHERE sha256 = ? ORDER BY number", (sha256,)
        ).fetchall()
        suppliers = {supplier for supplier, *_ in found if supplier}
        batches = {batch for _, batch, *_ in found if batch}
        supplier = next(iter(suppliers)) if len(suppliers) == 1 else None
        year = safe_part(min((dated for *_, dated in found), default=written)[:4], "undated")
        if len(batches) == 1:
            batch = safe_part(next(iter(batches)), "unknown batch")
        elif batches:
            batch = "several batches"
        else:
            batch = "specifications" if any(kind == "specification" for *_, kind, _ in found) else "unknown batch"
        return f"{FILED}/{safe_part(supplier, 'unknown supplier')}/{year}/{batch}"

    def tidy(self) -> None:
        """Carries out what is planned, and files what was set aside and has been settled since."""
        found = self._db.execute(
            "SELECT sha256, d.name, MAX(a.id), a.modified FROM documents d JOIN arrivals a USING (sha256)"
            " WHERE d.state = 'accepted' AND d.kind = 'sheet' AND d.filed LIKE ? AND NOT EXISTS"
            " (SELECT 1 FROM filings f WHERE f.sha256 = d.sha256 AND f.state = 'planned') GROUP BY sha256",
            (f"{TO_REVIEW}/%",),
        ).fetchall()
        for sha256, name, arrival, written in found:
            with transaction(self._db):
                self._db.execute("DELETE FROM filings WHERE sha256 = ? AND state <> 'planned'", (sha256,))
                target = self._free_name(self._sheet_folder(sha256, written), safe_file(name), sha256)
                self._db.execute(
                    "INSERT INTO filings (sha256, arrival, target, target_key, note, state)"
                    " VALUES (?, ?, ?, ?, NULL, 'planned')",
                    (sha256, arrival, target, _target_key(target)),
                )
        self.carry_out()

    def _free_name(self, folder: str, name: str, sha256: str, *, noted: bool = False) -> str:
        """A target that is in nobody's way; a name that is taken gets a part of the content's hash.

        With ``noted`` there has to be room beside it for the text that says why.
        """
        for addition in ("", f"-{sha256[:8]}", f"-{sha256}"):
            target = _added_to(f"{folder}/{name}", addition)
            if not self._is_planned(target) and self._has_room(target, sha256, noted=noted):
                return target
        raise WriteError(f"{self._root / folder / name} is in the way. Move it elsewhere, then run again.")

    def _is_planned(self, target: str) -> bool:
        """Whether something else is filed there, or the text beside something else."""
        key = _target_key(target)
        if self._db.execute("SELECT 1 FROM filings WHERE target_key = ?", (key,)).fetchone():
            return True
        about = key.removesuffix(notes.ENDING)
        return about != key and bool(
            self._db.execute("SELECT 1 FROM filings WHERE target_key = ? AND note IS NOT NULL", (about,)).fetchone()
        )

    def _has_room(self, target: str, sha256: str | None, *, noted: bool) -> bool:
        path = self._root / target
        if _is_there(path) and (sha256 is None or hash_of(path) != sha256):
            return False
        beside = _note_of(path)
        return not noted or not _is_there(beside) or is_own_output(beside)

    def set_aside_unopened(self, path: Path, reason: str) -> str | Stuck:
        """Moves a file that is too large to be taken in; returns where to, or why it cannot be moved.

        It is no document, only the history tells of it. Should the machine stop in the midst, it is in the inbox
        still, or where it belongs; of a file from another disk there may be a copy at both.
        """
        plain = f"{UNREADABLE}/{safe_file(path.name)}"
        names = (_added_to(plain, addition) for addition in ("", *(f"-{number}" for number in range(2, 1000))))
        target = next(name for name in names if not self._is_planned(name) and self._has_room(name, None, noted=True))
        place = self._root / target
        note = notes.why_unopened(safe_name(path), reason)
        self._put(_note_of(place), note.encode("utf-8"), None, over=True)
        try:
            move(path, place, self._root / WORKSHOP)
        except OSError as error:
            _note_of(place).unlink(missing_ok=True)
            return Stuck(path, f"is too large to be opened and cannot be moved: {error.strerror or error}")
        try:
            self._store.tell("set-aside", detail=target)
        except sqlite3.Error as error:
            raise explained(self._store.path, error) from None
        return target

    def carry_out(self, contents: Mapping[str, bytes] | None = None) -> None:
        """Does everything that is planned; ``contents`` are those at hand, by hash. Raises WriteError, StoreError."""
        self.stuck.clear()
        try:
            planned = self._db.execute(
                "SELECT id, sha256, arrival, target, note FROM filings WHERE state = 'planned' ORDER BY id"
            ).fetchall()
            for number, sha256, arrival, target, note in planned:
                data = (contents or {}).get(sha256)
                if data is None:
                    data = original_of_arrival(self._store, arrival, sha256)
                self._file(number, sha256, arrival, target, note, data)
            self._remove()
        except sqlite3.Error as error:
            raise explained(self._store.path, error) from None

    def _file(self, number: int, sha256: str, arrival: int, target: str, note: str | None, data: bytes | None) -> None:
        path = self._root / target
        if data is None and hash_of(path) != sha256:
            # Taken away between reading and filing, by someone else: what was read of it stays.
            with transaction(self._db):
                self._db.execute("UPDATE filings SET state = 'left' WHERE id = ?", (number,))
                self._store.tell("left", sha256, detail="the original was gone before it could be filed")
            return
        if not self._has_room(target, sha256, noted=note is not None):
            folder, _, name = target.rpartition("/")
            target = self._free_name(folder, name, sha256, noted=note is not None)
            path = self._root / target
            with transaction(self._db):
                self._db.execute(
                    "UPDATE filings SET target = ?, target_key = ? WHERE id = ?", (target, _target_key(target), number)
                )
        if note is not None:
            self._put(_note_of(path), note.encode("utf-8"), None, over=True)
        if data is not None:
            (modified,) = self._db.execute("SELECT modified FROM arrivals WHERE id = ?", (arrival,)).fetchone()
            self._put(path, data, modified)
        (before,) = self._db.execute("SELECT filed FROM documents WHERE sha256 = ?", (sha256,)).fetchone()
        with transaction(self._db):
            self._db.execute("UPDATE filings SET state = 'done' WHERE id = ?", (number,))
            self._db.execute("UPDATE documents SET filed = ? WHERE sha256 = ?", (target, sha256))
            self._store.tell("filed" if note is None else "set-aside", sha256, detail=target)
        if before is not None and before != target:
            self._forget(before, sha256)

    def _forget(self, target: str, sha256: str) -> None:
        """Takes away an earlier copy of what has been filed elsewhere now."""
        path = self._root / target
        if hash_of(path) == sha256:
            path.unlink()
            if is_own_output(_note_of(path)):
                _note_of(path).unlink()

    def _put(self, path: Path, data: bytes, modified: str | None, *, over: bool = False) -> None:
        """Writes a file whole or not at all; one that is there already stays, unless ``over``."""
        if not over and _is_there(path):
            return
        try:
            self._make_folder(path.parent)
            handle, name = tempfile.mkstemp(dir=self._root / WORKSHOP)
            unfinished = Path(name)
            try:
                with os.fdopen(handle, "wb") as stream:
                    stream.write(data)
                    stream.flush()
                    os.fsync(stream.fileno())
                unfinished.chmod(0o644)
                if modified is not None:
                    _set_time(unfinished, modified)
                unfinished.replace(path)
            except BaseException:
                with contextlib.suppress(OSError):
                    unfinished.unlink()
                raise
            sync_folder(path.parent)
        except OSError as error:
            raise WriteError(
                f"{path} could not be written: {error.strerror or error}. Nothing was taken out of the inbox for it; "
                "once that is put right, run again: it goes on where it was."
            ) from None

    def _make_folder(self, folder: Path) -> None:
        folder.mkdir(parents=True, exist_ok=True)
        if not folder.resolve().is_relative_to(self._root.resolve()):
            raise WriteError(f"{folder} leads out of the store's folder through a link. Remove the link.")

    def _remove(self) -> None:
        """Takes out of the inbox what is filed in all its parts."""
        found = self._db.execute(
            "SELECT arrival, path, sha256 FROM removals"
            " WHERE NOT EXISTS (SELECT 1 FROM filings WHERE state = 'planned') ORDER BY arrival"
        ).fetchall()
        for arrival, value, sha256 in found:
            path = rows.path_of(value)
            if hash_of(path) == sha256:
                try:
                    path.unlink()
                except OSError as error:
                    reason = f"is filed, but cannot be taken out of the inbox: {error.strerror or error}"
                    self.stuck.append(Stuck(path, reason))
                    continue
            with transaction(self._db):
                self._db.execute("DELETE FROM removals WHERE arrival = ?", (arrival,))

    def place_of(self, sha256: str) -> str | None:
        """Where a document is filed, below the store's folder; None where it is not."""
        row = self._db.execute("SELECT filed FROM documents WHERE sha256 = ?", (sha256,)).fetchone()
        return str(row[0]) if row and row[0] else None

    def waiting(self) -> set[rows.PathValue]:
        """Files that are taken in but could not be taken out of the inbox yet."""
        return {path for (path,) in self._db.execute("SELECT path FROM removals")}


def file_settled(store: Store) -> None:
    """Files what was set aside and has been settled since. Raises StoreError where another process takes in."""
    with only_writer(store.folder):
        Filer(store).tidy()


def _target_key(target: str) -> str:
    return unicodedata.normalize("NFC", target).casefold()


def _note_of(path: Path) -> Path:
    return path.with_name(path.name + notes.ENDING)


def _added_to(target: str, addition: str) -> str:
    """A target with something added to its name, before the ending."""
    path = PurePosixPath(target)
    return str(path.with_name(f"{path.stem}{addition}{path.suffix}"))


def _is_there(path: Path) -> bool:
    try:
        path.lstat()
    except FileNotFoundError:
        return False
    return True


def _set_time(path: Path, modified: str) -> None:
    from datetime import datetime

    with contextlib.suppress(OSError, ValueError):
        moment = datetime.fromisoformat(modified).timestamp()
        os.utime(path, (moment, moment))
