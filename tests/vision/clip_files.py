"""Small clips made for the tests, with known pictures and times."""

from __future__ import annotations

import json
from collections.abc import Sequence
from pathlib import Path

import av
import cv2
import numpy as np
from numpy.typing import NDArray

from tracker.session.stage import stage_path_of

WIDTH_PX, HEIGHT_PX = 160, 120


def picture(k: int, width: int = WIDTH_PX, height: int = HEIGHT_PX) -> NDArray[np.uint8]:
    """Picture number ``k``: its number is in the grey of eight blocks, one a binary digit."""
    image = np.full((height, width, 3), 128, np.uint8)
    for bit in range(8):
        left = bit * width // 8
        image[:, left : left + width // 8] = 235 if (k >> bit) & 1 else 20
    return image


def write_clip(
    path: Path,
    n: int = 60,
    rate_hz: float = 30.0,
    fourcc: str = "mp4v",
    size: tuple[int, int] = (
        WIDTH_PX,
        HEIGHT_PX,
    ),
) -> Path:
    """A clip of ``n`` numbered pictures at a constant rate."""
    code = cv2.VideoWriter_fourcc(*fourcc)
    writer = cv2.VideoWriter(str(path), cv2.CAP_FFMPEG, code, rate_hz, size)
    assert writer.isOpened()
    for k in range(n):
        writer.write(picture(k % 256, *size))
    writer.release()
    return path


def first_part(clip: Path, folder: Path, until_s: float) -> Path:
    """The beginning of a clip, picture for picture as it was, and its stage log so far."""
    path = folder / clip.name
    with av.open(str(clip)) as whole, av.open(str(path), "w") as part:
        stream = part.add_stream_from_template(whole.streams.video[0])
        for packet in whole.demux(video=0):
            # In the order of decoding, so that what a picture needs comes before it.
            if packet.dts is None or packet.dts * packet.time_base >= until_s:
                break
            packet.stream = stream
            part.mux(packet)
    log = json.loads(stage_path_of(clip).read_text(encoding="utf-8"))
    log["steps"] = [s | {"to_s": min(s["to_s"], until_s)} for s in log["steps"]]
    stage_path_of(path).write_text(json.dumps(log), encoding="utf-8")
    return path


def _element(number: str, content: bytes) -> bytes:
    """A Matroska element: its number, its length in eight bytes, its content."""
    return bytes.fromhex(number) + (len(content) | 1 << 56).to_bytes(8, "big") + content


def _number(value: int) -> bytes:
    return value.to_bytes(max(1, (value.bit_length() + 7) // 8), "big")


def write_matroska(
    path: Path, times_ms: Sequence[int] | None, *, sound: bool = False, live: bool = False
) -> Path:
    """A Matroska clip of numbered JPEG pictures at given times (a sound track alone if None).

    With ``live`` its lengths are "not known", as in a recording from a browser.
    """
    head = _element("1A45DFA3", _element("4282", b"matroska"))
    info = _element("1549A966", _element("2AD7B1", _number(1_000_000)))
    if times_ms is None or sound:
        tracks = _element("83", _number(2)) + _element("86", b"A_PCM/INT/LIT")
        tracks += _element("E1", _element("9F", _number(1)) + _element("6264", _number(16)))
    else:
        tracks = _element("83", _number(1)) + _element("86", b"V_MJPEG")
        tracks += _element("E0", _element("B0", _number(WIDTH_PX)) + _element("BA", _number(120)))
    entry = _element("D7", _number(1)) + _element("73C5", _number(1)) + tracks
    body = info + _element("1654AE6B", _element("AE", entry))
    for k, time_ms in enumerate(range(0, 1000, 100) if times_ms is None else times_ms):
        _, jpeg = cv2.imencode(".jpg", picture(k % 256))
        data = bytes(3200) if times_ms is None else jpeg.tobytes()
        block = _element("A3", b"\x81\x00\x00\x80" + data)
        body += _element("1F43B675", _element("E7", _number(time_ms)) + block)
    length = b"\x01" + b"\xff" * 7 if live else (len(body) | 1 << 56).to_bytes(8, "big")
    path.write_bytes(head + bytes.fromhex("18538067") + length + body)
    return path
