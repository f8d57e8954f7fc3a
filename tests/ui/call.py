"""What a video call does to a window, and what can be read of it then."""

from __future__ import annotations

import os
import re
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
        # As a call has it: no looking ahead, and no more bits than the line takes. With several
        # threads each coding comes out a little different, as they happen to get the processor.
        stream.thread_count = 1
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


#: Height of a line of text that the reader is given, and the room around it.
LINE_PX, ROOM_PX = 48, 24


def read_figures(boards: Sequence[Sequence[Any]], folder: Path) -> list[str]:
    """The figures of each board, cut out one by one, as the program ``tesseract`` reads them.

    Beside smaller words it takes them for capitals (0 for O), and one that stands alone in its line
    it often does not see; so seven stand in a row, and it is told that they are figures.
    """
    pages = []
    for figures in boards:
        cut = [levelled(figure) for figure in figures]
        pages.append(page_of([beside(cut[k : k + 7], 40) for k in range(0, len(cut), 7)]))
    return _read(pages, folder, "eng", "-c", "tessedit_char_whitelist=0123456789")


def read_words(boards: Sequence[Sequence[Sequence[Any]]], folder: Path, language: str) -> list[str]:
    """The words of each board, cut out one by one and put into the rows in which they stood."""
    from_right = language == "ara"
    pages = []
    for rows in boards:
        lines = [[levelled(word) for word in row] for row in rows]
        made = [beside(line[::-1] if from_right else line, 8) for line in lines]
        pages.append(page_of(made, to_the_right=from_right))
    return _read(pages, folder, language)


#: Arabic vowel signs and stops: the reader of pictures drops and swaps them in any picture.
_SIGNS = re.compile("[\u064b-\u0652،,.؟?:°»\"'“]")


def plain_arabic(text: str) -> str:
    """The letters of a text, without vowel signs and stops.

    No word ends on a hamza after a closed ta: the reader takes a comma there for one.
    """
    return _SIGNS.sub("", text).replace("ةء", "ة")


def _read(pages: Sequence[Any], folder: Path, language: str, *options: str) -> list[str]:
    """What is read of each page, its lines joined."""
    paths = [folder / f"page-{k}.png" for k in range(len(pages))]
    for path, page in zip(paths, pages, strict=True):
        cv2.imwrite(str(path), page)
    # All in one go: to begin takes it as long as to read a page.
    everything = folder / "pages.txt"
    everything.write_text("".join(f"{path}\n" for path in paths))
    command = ["tesseract", str(everything), "-", "--psm", "6", "-l", language, *options]
    # Its threads wait for each other longer than they work.
    alone = {**os.environ, "OMP_THREAD_LIMIT": "1"}
    done = subprocess.run(
        command, capture_output=True, text=True, check=True, timeout=300, env=alone
    )
    found = [" ".join(text.split()) for text in done.stdout.split("\f")[: len(pages)]]
    assert len(found) == len(pages)
    return found


def levelled(piece: Any) -> Any:
    """A piece of a picture in grey, dark on white, as high as the reader likes it."""
    grey = cv2.cvtColor(piece, cv2.COLOR_BGR2GRAY)
    scale = LINE_PX / grey.shape[0]
    grey = cv2.resize(grey, None, fx=scale, fy=scale, interpolation=cv2.INTER_CUBIC)
    grey = 255 - grey if np.median(grey) < 128 else grey
    # The same white behind all of them.
    return np.clip(grey.astype(float) * 255 / np.median(grey), 0, 255).astype(np.uint8)


def beside(pieces: Sequence[Any], gap: int) -> Any:
    """Pieces in a row, white between them."""
    white = np.full((pieces[0].shape[0], gap), 255, np.uint8)
    return np.hstack([white, *(part for piece in pieces for part in (piece, white))])


def page_of(rows: Sequence[Any], *, to_the_right: bool = False) -> Any:
    """Rows under each other."""
    wide = max(r.shape[1] for r in rows) + 2 * ROOM_PX
    page = np.full((sum(r.shape[0] + ROOM_PX for r in rows) + ROOM_PX, wide), 255, np.uint8)
    top = ROOM_PX
    for row in rows:
        left = wide - ROOM_PX - row.shape[1] if to_the_right else ROOM_PX
        page[top : top + row.shape[0], left : left + row.shape[1]] = row
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
