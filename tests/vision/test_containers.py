"""What a file is and whether its end is there, from bytes made by the open descriptions.

ISO/IEC 14496-12, 4.2 (boxes: size, name; size 1: 8 more bytes hold it; 0: to the end of the
file); RFC 8794, 4.4 (a length's first byte tells how many it has; all ones: not known); RFC 9559
(a Matroska file is an EBML header and a segment, 18538067); the RIFF form: name, length in
little-endian order, an odd one padded (all from memory of their texts).
"""

from __future__ import annotations

from pathlib import Path

import pytest

from tracker.vision.containers import Container, inspect


def box(name: bytes, content: bytes) -> bytes:
    return (8 + len(content)).to_bytes(4, "big") + name + content


FIRST = box(b"ftyp", b"isom" + bytes(8))
INDEX = box(b"moov", bytes(8) + b"vide" + bytes(8))
SOUND_INDEX = box(b"moov", bytes(8) + b"soun" + bytes(8))
DATA = box(b"mdat", bytes(64))
LONG = (1).to_bytes(4, "big") + b"mdat" + (16 + 32).to_bytes(8, "big") + bytes(32)
TO_THE_END = bytes(4) + b"mdat" + bytes(50)
PIECE = box(b"moof", bytes(16))

MP4S = {
    "whole": (FIRST + INDEX + DATA, Container("mp4", has_pictures=True)),
    "index last": (FIRST + DATA + INDEX, Container("mp4", has_pictures=True)),
    "no index": (FIRST + DATA, Container("mp4", has_index=False)),
    "in pieces": (FIRST + PIECE + DATA, Container("mp4")),
    "sound alone": (FIRST + SOUND_INDEX, Container("mp4", has_pictures=False)),
    "a long box": (FIRST + INDEX + LONG, Container("mp4", has_pictures=True)),
    "to the end": (FIRST + INDEX + TO_THE_END, Container("mp4", has_pictures=True)),
    "cut": (FIRST + INDEX + DATA[:-1], Container("mp4", True, True, True)),
    "cut in a name": (FIRST + INDEX + DATA[:6], Container("mp4", True, True, True)),
    "cut in the index": (FIRST + DATA + INDEX[:-2], Container("mp4", True, False)),
    "a box below its own head": (
        FIRST + INDEX + (7).to_bytes(4, "big") + b"free" + bytes(9),
        Container("mp4", True, True, True),
    ),
}


@pytest.mark.parametrize("name", MP4S)
def test_an_mp4_is_gone_along_box_by_box(name: str, tmp_path: Path) -> None:
    content, found = MP4S[name]
    (tmp_path / "a").write_bytes(content)
    assert inspect(tmp_path / "a") == found


EBML = b"\x1aE\xdf\xa3"
SEGMENT = b"\x18S\x80g"
MKVS = {
    "whole": (EBML + b"\x84" + bytes(4) + SEGMENT + b"\x90" + bytes(16), False),
    "cut": (EBML + b"\x84" + bytes(4) + SEGMENT + b"\x90" + bytes(15), True),
    "two bytes of length": (
        EBML + b"\x40\x04" + bytes(4) + SEGMENT + b"\x40\x10" + bytes(15),
        True,
    ),
    "of a live recording": (EBML + b"\x84" + bytes(4) + SEGMENT + b"\xff" + bytes(3), False),
    "no length at all": (EBML + b"\x00", False),
    "nothing after its name": (EBML, False),
    "something else in the segment's place": (EBML + b"\x84" + bytes(40), False),
    "cut before the segment's length": (EBML + b"\x84" + bytes(4) + SEGMENT, False),
}


@pytest.mark.parametrize("name", MKVS)
def test_a_matroska_file_breaks_off_where_its_segment_does(name: str, tmp_path: Path) -> None:
    content, breaks_off = MKVS[name]
    (tmp_path / "a").write_bytes(content)
    assert inspect(tmp_path / "a") == Container("mkv", breaks_off=breaks_off)


def riff(form: bytes, content: bytes, length: int | None = None) -> bytes:
    told = 4 + len(content) if length is None else length
    return b"RIFF" + told.to_bytes(4, "little") + form + content


AVIS = {
    "whole": (riff(b"AVI ", bytes(20)), False),
    "in two parts": (riff(b"AVI ", bytes(20)) + riff(b"AVIX", bytes(12)), False),
    "odd and padded": (riff(b"AVI ", bytes(21)) + b"\0", False),
    "odd and not padded": (riff(b"AVI ", bytes(21)), False),
    "cut": (riff(b"AVI ", bytes(20))[:-3], True),
    "cut in its second part": (riff(b"AVI ", bytes(20)) + riff(b"AVIX", bytes(12))[:-5], True),
    "never closed": (riff(b"AVI ", bytes(20), length=0), False),
    "followed by something else": (riff(b"AVI ", bytes(20)) + b"JUNKJUNKJUNK", False),
}


@pytest.mark.parametrize("name", AVIS)
def test_an_avi_breaks_off_where_a_part_does(name: str, tmp_path: Path) -> None:
    content, breaks_off = AVIS[name]
    (tmp_path / "a").write_bytes(content)
    assert inspect(tmp_path / "a") == Container("avi", breaks_off=breaks_off)


@pytest.mark.parametrize(
    ("content", "kind"),
    [
        (riff(b"WAVE", bytes(20)), "sound"),
        (riff(b"ACON", bytes(20)), "foreign"),
        ((b"\x47" + bytes(187)) * 3, "ts"),
        (bytes(4) + (b"\x47" + bytes(191)) * 3, "ts"),
        (b"\x47" + bytes(600), "foreign"),
        (b"\x00\x00\x01\xba" + bytes(20), "ps"),
        (b"OggS" + bytes(20), "ogg"),
        (b"fLaC" + bytes(20), "sound"),
        (b"ffconcat version 1.0\nfile '/etc/hosts'\n", "foreign"),
        (b"#EXTM3U\nhttp://example.org/a.ts\n", "foreign"),
        (b"", "foreign"),
    ],
)
def test_other_files_are_told_apart_by_how_they_begin(
    content: bytes, kind: str, tmp_path: Path
) -> None:
    (tmp_path / "a").write_bytes(content)
    assert inspect(tmp_path / "a") == Container(kind)
