"""Emails and archives for tests."""

from __future__ import annotations

import io
import struct
import zipfile
from email.message import EmailMessage

Tree = dict[str, "bytes | Tree"]


def mail(
    *attachments: tuple[str, bytes],
    sender: str = "Käthe Muster <lab@example.org>",
    subject: str = "Prüfzeugnis 24/0417",
    date: str | None = "Mon, 18 Nov 2024 10:00:00 +0100",
    forwards: EmailMessage | None = None,
) -> EmailMessage:
    """An email with attachments and, maybe, another email forwarded in it."""
    message = EmailMessage()
    message["From"], message["To"], message["Subject"] = sender, "brewer@example.org", subject
    if date:
        message["Date"] = date
    message.set_content("Please find the certificate attached.\n")
    for name, data in attachments:
        message.add_attachment(data, maintype="application", subtype="octet-stream", filename=name)
    if forwards is not None:
        message.add_attachment(forwards)
    return message


def zipped(*files: tuple[str, bytes]) -> bytes:
    """A ZIP archive."""
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as archive:
        for name, data in files:
            archive.writestr(name, data)
    return out.getvalue()


def outlook(
    *attachments: tuple[str, bytes],
    sender: str = "Käthe Muster",
    address: str = "lab@example.org",
    subject: str = "Prüfzeugnis",
    sent: int = 133_764_012_000_000_000,
    forwards: Tree | None = None,
) -> Tree:
    """A message as [MS-OXMSG] lays it out: storages and streams by name. ``sent`` is in 100 ns since 1601."""
    tree: Tree = {
        "__properties_version1.0": bytes(32) + struct.pack("<IIQ", 0x0039_0040, 6, sent),
        "__substg1.0_0037001F": subject.encode("utf-16-le"),
        "__substg1.0_0C1A001F": sender.encode("utf-16-le"),
        "__substg1.0_5D01001F": address.encode("utf-16-le"),
    }
    for number, (name, data) in enumerate(attachments):
        tree[f"__attach_version1.0_#{number:08X}"] = {
            "__properties_version1.0": bytes(8),
            "__substg1.0_3707001F": name.encode("utf-16-le"),
            "__substg1.0_37010102": data,
        }
    if forwards is not None:
        inner = dict(forwards)
        properties = inner["__properties_version1.0"]
        assert isinstance(properties, bytes)
        inner["__properties_version1.0"] = properties[8:]  # 24 bytes come first within another message
        tree[f"__attach_version1.0_#{len(attachments):08X}"] = {
            "__properties_version1.0": bytes(8),
            "__substg1.0_3701000D": inner,
        }
    return tree


_SECTOR, _FREE, _END, _FAT = 512, 0xFFFFFFFF, 0xFFFFFFFE, 0xFFFFFFFD


def compound(tree: Tree) -> bytes:
    """A compound file, version 3, as [MS-CFB] lays it out; streams are padded beyond the size of mini streams."""
    entries: list[dict[str, object]] = [{"name": "Root Entry", "type": 5, "child": _FREE, "data": b""}]
    _add(entries, 0, tree)
    sectors: list[bytes] = []
    fat: list[int] = []

    def store(data: bytes) -> int:
        start = len(sectors)
        pieces = [data[at : at + _SECTOR].ljust(_SECTOR, b"\0") for at in range(0, len(data), _SECTOR)] or [bytes(512)]
        sectors.extend(pieces)
        fat.extend([*range(start + 1, start + len(pieces)), _END])
        return start

    small = bytearray()
    mini_fat: list[int] = []
    for entry in entries:
        data = entry["data"]
        assert isinstance(data, bytes)
        if entry["type"] != 2:
            entry["start"] = 0
        elif len(data) >= 4096:
            entry["start"] = store(data)
        elif data:
            first, count = len(mini_fat), -(-len(data) // 64)
            entry["start"] = first
            mini_fat.extend([*range(first + 1, first + count), _END])
            small += data.ljust(count * 64, b"\0")
        else:
            entry["start"] = _END
    entries[0]["start"] = store(bytes(small)) if small else _END
    entries[0]["data"] = bytes(small)
    mini_start = store(b"".join(struct.pack("<I", value) for value in mini_fat + [_FREE] * (-len(mini_fat) % 128)))
    directory = b"".join(_entry(entry) for entry in entries)
    directory_start = store(directory)
    count = 1
    while count * 128 < len(sectors) + count:
        count += 1
    fat_start = len(sectors)
    fat += [_FAT] * count
    fat += [_FREE] * (count * 128 - len(fat))
    table = struct.pack(f"<{len(fat)}I", *fat)
    sectors += [table[at : at + _SECTOR] for at in range(0, len(table), _SECTOR)]
    difat = [*range(fat_start, fat_start + count)] + [_FREE] * (109 - count)
    mini_sectors = -(-len(mini_fat) // 128) or 1
    header = struct.pack(
        "<8s16sHHHHH6sIIIIIIIII109I",
        b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1",
        bytes(16), 0x3E, 3, 0xFFFE, 9, 6, bytes(6), 0, count, directory_start, 0, 4096,
        mini_start, mini_sectors, _END, 0, *difat,
    )  # fmt: skip
    return header + b"".join(sectors)


def _add(entries: list[dict[str, object]], parent: int, tree: Tree) -> None:
    """Children as a chain of right-hand siblings, in the order that compound files sort names."""
    before: int | None = None
    for name in sorted(tree, key=lambda name: (len(name), name.upper())):
        value = tree[name]
        number = len(entries)
        is_stream = isinstance(value, bytes)
        entries.append(
            {"name": name, "type": 2 if is_stream else 1, "child": _FREE, "data": value if is_stream else b""}
        )
        entries[parent if before is None else before]["child" if before is None else "right"] = number
        before = number
        if not isinstance(value, bytes):
            _add(entries, number, value)


def _entry(entry: dict[str, object]) -> bytes:
    name = str(entry["name"]).encode("utf-16-le")
    data = entry["data"]
    assert isinstance(data, bytes)
    return struct.pack(
        "<64sHBBIII16sIQQIQ",
        name, len(name) + 2, entry["type"], 1, _FREE, entry.get("right", _FREE), entry["child"],
        bytes(16), 0, 0, 0, entry["start"], len(data),
    )  # fmt: skip
