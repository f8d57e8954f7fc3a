"""Where measuring takes nearly all the time, the picture of oneself gives way, no sample does."""

from __future__ import annotations

import queue
from collections.abc import Iterator
from typing import Any

import numpy as np
import pytest

from tracker.frame import Frame
from tracker.sample import Sample
from tracker.vision.messages import Measured
from tracker.vision.preview import Preview
from tracker.vision.worker import Line, Worker

GAP_S = 1 / 30
SECONDS = 10


class Clock:
    def __init__(self) -> None:
        self.now_s = 0.0

    def __call__(self) -> float:
        return self.now_s


class Slow:
    """A measurer that takes a part of the time between two pictures."""

    def __init__(self, clock: Clock, share: float) -> None:
        self._clock, self._spent_s = clock, share * GAP_S

    def take(self, frame: Frame) -> Sample:
        self._clock.now_s += self._spent_s
        return Sample(frame.time_s)


class Sent(Line):
    def __init__(self) -> None:
        self.rounds, self.samples = 0, 0

    def send(self, message: Any) -> None:
        self.samples += isinstance(message, Measured)


@pytest.fixture
def block() -> Iterator[Preview]:
    preview = Preview()
    yield preview
    preview.unlink()


@pytest.mark.parametrize(
    # The usual 25 a second at most, of 30 every second one; five where hardly any time is left.
    ("share", "pictures_s"),
    [(0.3, 15), (0.7, 15), (0.95, 5)],
)
def test_the_picture_of_oneself_gives_way_first(
    block: Preview, share: float, pictures_s: int
) -> None:
    clock, sent = Clock(), Sent()
    worker = Worker(sent, queue.SimpleQueue(), block.name)
    worker._clock, worker._measurer, worker._show = clock, Slow(clock, share), True
    shown = 0
    seen: Any = None
    for k in range(SECONDS * 30):
        clock.now_s = (k + 1) * GAP_S
        worker._take(Frame(k, clock.now_s, np.full((12, 16, 3), k % 251, np.uint8)))
        now = block.read()
        if k >= 30 and (seen is None or not np.array_equal(now, seen)):
            shown += 1
        seen = now
    assert shown == pytest.approx(pictures_s * (SECONDS - 1), abs=5)
    assert sent.samples == SECONDS * 30
    worker._measurer = None
    worker.close()
