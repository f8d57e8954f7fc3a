"""What a video call does to a window, and what can be read of it then."""

from __future__ import annotations

import os
import shutil
import subprocess
from collections.abc import Sequence
from fractions import Fraction
from io import BytesIO
from pathlib import Path
from typing import Any

import av
import cv2
import numpy as np

#: Pictures a second of a shared window in a call (common practice).
RATE = 15


def through_a_call(pictures: Sequence[Any], size: tuple[int, int], bits_s: int) -> list[Any]:
    """Pictures (height, width, 3; blue, green, red) after a call's coding at a size and rate."""
    out = BytesIO()
    with av.open(out, "w", format="mp4") as file:
        stream = file.add_stream("libx264", rate=Fraction(RATE))
        stream.width, stream.height = size
        stream.pix_fmt = "yuv420p"
        stream.bit_rate = bits_s
        # As a call has it: no looking ahead, and no more bits than the line takes.
        kilobits = bits_s // 1000
        stream.options = {
            "preset": "veryfast",
            "tune": "zerolatency",
            "maxrate": f"{kilobits}k",
            "bufsize": f"{kilobits}k",
        }
        for picture in pictures:
            small = cv2.resize(picture, size, interpolation=cv2.INTER_AREA)
            file.mux(stream.encode(av.VideoFrame.from_ndarray(small, format="bgr24")))
        file.mux(stream.encode())
    coded = out.getbuffer().nbytes * 8 / (len(pictures) / RATE)
    assert coded < 1.25 * bits_s, "the coder took more than the line has"
    out.seek(0)
    with av.open(out) as file:
        return [f.to_ndarray(format="bgr24") for f in file.decode(video=0)]


def noise(number: int, high: int, wide: int) -> Any:
    """A picture that changes all over, as of a face that moves before a wall."""
    y, x = np.mgrid[:high, :wide]
    shift = 7.0 * number
    waves = 90 + 50 * np.sin((x + shift) / 9.0) + 40 * np.cos((y - shift / 2) / 13.0)
    grain = np.random.default_rng(number).normal(0, 12, (high, wide))
    grey = np.clip(waves + grain, 0, 255).astype(np.uint8)
    return np.repeat(grey[:, :, None], 3, axis=2)


def reads() -> list[str]:
    """Languages that the program that reads pictures knows; none where it is missing."""
    if shutil.which("tesseract") is None:
        return []
    command = ["tesseract", "--list-langs"]
    done = subprocess.run(command, capture_output=True, text=True, check=True, timeout=60)
    return done.stdout.split()


#: Height of a line of text that the reader is given, and the room around it. The reader takes
#: large figures beside small words for capitals now and then (0 for O), more often when larger:
#: at 64 and 100 px it came to 98.9 and 98.5 % in one of the four films.
LINE_PX, ROOM_PX = 48, 24


def read(lines: Sequence[Any], folder: Path, language: str = "eng") -> str:
    """Lines of text cut out of a picture, as the program ``tesseract`` reads them."""
    path = folder / "lines.png"
    cv2.imwrite(str(path), page_of(lines))
    command = ["tesseract", str(path), "-", "--psm", "6", "-l", language]
    # Its threads wait for each other longer than they work.
    alone = {**os.environ, "OMP_THREAD_LIMIT": "1"}
    done = subprocess.run(
        command, capture_output=True, text=True, check=True, timeout=60, env=alone
    )
    return " ".join(done.stdout.split())


def page_of(lines: Sequence[Any]) -> Any:
    """Lines under each other, dark on light, each as high as the reader likes it."""
    rows = []
    for line in lines:
        grey = cv2.cvtColor(line, cv2.COLOR_BGR2GRAY)
        scale = LINE_PX / grey.shape[0]
        grey = cv2.resize(grey, None, fx=scale, fy=scale, interpolation=cv2.INTER_CUBIC)
        grey = 255 - grey if np.median(grey) < 128 else grey
        # The same white behind all of them.
        grey = np.clip(grey.astype(float) * 255 / np.median(grey), 0, 255).astype(np.uint8)
        rows.append(grey)
    wide = max(r.shape[1] for r in rows) + 2 * ROOM_PX
    page = np.full((sum(r.shape[0] + ROOM_PX for r in rows) + ROOM_PX, wide), 255, np.uint8)
    top = ROOM_PX
    for row in rows:
        page[top : top + row.shape[0], ROOM_PX : ROOM_PX + row.shape[1]] = row
        top += row.shape[0] + ROOM_PX
    return page


def wrong_characters(wanted: str, found: str) -> int:
    """Number of characters that were put in, left out or read as others.

    Spaces are left out, and a dash that is read as a hyphen is read.
    """
    a, b = (text.replace(" ", "").replace("–", "-").replace("—", "-") for text in (wanted, found))
    row = list(range(len(b) + 1))
    for i, one in enumerate(a, 1):
        before, row[0] = row[0], i
        for j, other in enumerate(b, 1):
            before, row[j] = row[j], min(row[j] + 1, row[j - 1] + 1, before + (one != other))
    return row[-1]
