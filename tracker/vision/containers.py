"""What kind of file a clip is, and whether its end is there: from its bytes alone.

Only known containers of pictures are handed to the decoder. Playlists, lists of
files and the like, which a decoder would follow elsewhere, never reach it.
"""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path
from typing import BinaryIO

from tracker.inputs import open_file

_MP4_FIRST = (b"ftyp", b"moov", b"mdat", b"wide", b"free", b"skip", b"pnot", b"styp", b"moof")
#: What an index may hold: far more than a clip of hours, far less than the memory (this project's
#: own choice).
_MAX_BOXES = 200_000
_MAX_INDEX_BYTES = 64_000_000


@dataclass(frozen=True, slots=True)
class Container:
    """A recognised file.

    Attributes
    ----------
    kind
        ``mp4``, ``mkv``, ``avi``, ``ts``, ``ps``, ``asf``, ``flv``, ``ogg``,
        ``sound`` (a sound file) or ``foreign`` (no clip at all).
    breaks_off
        The file is shorter than it says it is.
    has_index
        False for an mp4 file without its index, which no decoder can read.
    has_pictures
        False where the index names no picture track; None if not known.
    """

    kind: str
    breaks_off: bool = False
    has_index: bool = True
    has_pictures: bool | None = None


def inspect(path: Path) -> Container:
    """Look at the first bytes of ``path`` and at the sizes it gives.

    Raises
    ------
    OSError
        If the file can't be read.
    """
    with open_file(path) as file:
        size = file.seek(0, 2)
        file.seek(0)
        head = file.read(512)
        kind = _kind_of(head)
        if kind == "mp4":
            return _walk_mp4(file, size)
        if kind == "mkv":
            return Container(kind, breaks_off=_matroska_breaks_off(head, size))
        if kind == "avi":
            return Container(kind, breaks_off=_riff_breaks_off(file, size))
        return Container(kind)


def _kind_of(head: bytes) -> str:
    if head[4:8] in _MP4_FIRST:
        return "mp4"
    if head[:4] == b"RIFF":
        return {b"AVI ": "avi", b"WAVE": "sound"}.get(head[8:12], "foreign")
    if len(head) > 376 and (
        all(head[k] == 0x47 for k in (0, 188, 376)) or all(head[k] == 0x47 for k in (4, 196, 388))
    ):
        return "ts"
    starts = (
        (b"\x1aE\xdf\xa3", "mkv"),
        (b"\x00\x00\x01\xba", "ps"),
        (b"0&\xb2u", "asf"),
        (b"FLV\x01", "flv"),
        (b"OggS", "ogg"),
        (b"ID3", "sound"),
        (b"fLaC", "sound"),
        (b"\xff\xfb", "sound"),
        (b"\xff\xf1", "sound"),
        (b"FORM", "sound"),
    )
    return next((kind for start, kind in starts if head.startswith(start)), "foreign")


def _walk_mp4(file: BinaryIO, size: int) -> Container:
    """Go along the top-level boxes: a length of 4 bytes, a name of 4, then the contents."""
    at, index = 0, b""
    has_index = has_fragments = False
    for _ in range(_MAX_BOXES):
        if at + 8 > size:
            break
        file.seek(at)
        header = file.read(16)
        length, name = int.from_bytes(header[:4], "big"), header[4:8]
        if length == 1:
            length = int.from_bytes(header[8:16], "big")
        elif length == 0:
            length = size - at
        if length < 8:
            break
        if name == b"moov":
            has_index = at + length <= size
            file.seek(at)
            index = file.read(min(length, _MAX_INDEX_BYTES))
        has_fragments = has_fragments or name == b"moof"
        at += length
    pictures = (b"vide" in index) if has_index else None
    return Container("mp4", at != size, has_index or has_fragments, pictures)


def _matroska_breaks_off(head: bytes, size: int) -> bool:
    """Compare the length of the one segment with the file; live recordings give none."""
    length, at = _vint(head, 4)
    if length is None:
        return False
    at += length
    if head[at : at + 4] != b"\x18S\x80g":
        return False
    length, at = _vint(head, at + 4)
    return length is not None and at + length > size


def _vint(data: bytes, at: int) -> tuple[int | None, int]:
    """A Matroska length at ``at`` and where it ends; None if absent or "not known"."""
    if at >= len(data) or data[at] == 0:
        return None, at
    n = 9 - data[at].bit_length()
    raw = int.from_bytes(data[at : at + n], "big") & ((1 << (7 * n)) - 1)
    return (None if raw == (1 << (7 * n)) - 1 else raw), at + n


def _riff_breaks_off(file: BinaryIO, size: int) -> bool:
    """Go along the RIFF parts; a recording that was never closed says 0 and is left alone."""
    at = 0
    for _ in range(_MAX_BOXES):
        if at + 8 > size:
            return False
        file.seek(at)
        header = file.read(8)
        if header[:4] != b"RIFF":
            return False
        length = int.from_bytes(header[4:], "little")
        if length == 0:
            return False
        at += 8 + length + length % 2
        if at > size + 1:
            return True
    return False
