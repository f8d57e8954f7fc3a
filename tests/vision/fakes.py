"""Measurers and sources for tests; the measuring process imports them from here."""

from __future__ import annotations

import os
import time
from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from pathlib import Path
from typing import Any

import numpy as np
from numpy.typing import NDArray

from tracker.errors import InputError, RunError
from tracker.frame import Frame
from tracker.sample import Sample
from tracker.session.stage import Step
from tracker.vision.messages import Begin, SourceState, SourceStats


def number_in(image: NDArray[np.uint8]) -> int:
    """The number of a picture that was compressed and read again."""
    width = image.shape[1]
    grey = image.mean(axis=(0, 2))
    middles = [grey[bit * width // 8 + width // 16] for bit in range(8)]
    return sum(1 << bit for bit, level in enumerate(middles) if level > 128)


@dataclass(frozen=True)
class Report:
    """What a fit gives here."""

    profile: str
    steps: int
    frames: int


@dataclass
class FakeMeasurer:
    """Reads the number in a picture: ``quality``; ``face_height_px`` is 1 with a profile.

    ``light`` is the number of its process, ``eye_open`` the number of frames it has seen.
    """

    profile: str | None = None
    slow_s: float = 0.0
    hang_at: int | None = None
    hang_once: str = ""
    raise_from: int | None = None
    raise_to: int = 10**9
    exit_from: int | None = None
    exit_to: int = 10**9
    fit_s: float = 0.0
    seen: int = 0
    numbers: list[int] = field(default_factory=list)
    body: bool = False

    def take(self, frame: Frame) -> Sample:
        number = number_in(frame.image)
        self.seen += 1
        time.sleep(self.slow_s)
        if self.exit_from is not None and self.exit_from <= frame.index < self.exit_to:
            os._exit(7)
        if self.raise_from is not None and self.raise_from <= frame.index < self.raise_to:
            raise ValueError("this picture can't be measured")
        if self.hang_at is not None and frame.index >= self.hang_at and self._first_time():
            time.sleep(1000)
        return Sample(
            frame.time_s,
            quality=number,
            light=os.getpid(),
            eye_open=self.seen,
            face_height_px=float(self.profile is not None),
            body_seen=float(self.body),
        )

    def watch_body(self, on: bool, every_s: float = 0.0) -> None:  # noqa: ARG002
        self.body = on

    def _first_time(self) -> bool:
        if Path(self.hang_once).exists():
            return False
        Path(self.hang_once).touch()
        return True

    def fit(self, steps: Sequence[Step]) -> Report:
        time.sleep(self.fit_s)
        if not steps:
            raise InputError("too little was seen")
        self.profile = "a person"
        return Report(self.profile, len(steps), self.seen)

    def hold_setup(self, *, keep: bool, take: bool) -> None:
        self.held = (keep, take)

    def fit_again(self, steps: Sequence[Step], part: str) -> Report:
        return Report(f"again: {part} {getattr(self, 'held', None)}", len(steps), self.seen)

    def close(self) -> None:
        pass


def make(profile: str | None = None, load_s: float = 0.0, **options: Any) -> FakeMeasurer:
    time.sleep(load_s)
    return FakeMeasurer(profile, **options)


def make_without_models() -> FakeMeasurer:
    raise RunError("the model file for the face is missing; put it in the folder models")


@dataclass(frozen=True)
class EndlessSource:
    """Numbered pictures at a rate, without an end; can stop giving any, as a camera can."""

    rate_hz: float = 50.0
    mute_after_s: float = 1e9
    width: int = 160
    height: int = 120
    stuck: bool = False

    def open_feed(self, begin: Begin) -> EndlessFeed:
        return EndlessFeed(self, begin.origin_s)


class EndlessFeed:
    def __init__(self, source: EndlessSource, origin_s: float) -> None:
        self._source, self._origin_s, self._k = source, origin_s, 0
        self._began_s = time.perf_counter()

    def get(self, timeout_s: float) -> Frame | None:
        if time.perf_counter() - self._began_s > self._source.mute_after_s:
            time.sleep(timeout_s)
            return None
        time.sleep(1 / self._source.rate_hz)
        self._k += 1
        size = (self._source.height, self._source.width, 3)
        image = np.full(size, self._k % 251, np.uint8)
        return Frame(self._k, time.perf_counter() - self._origin_s, image)

    @property
    def state(self) -> tuple[SourceState, str]:
        return SourceState.running, ""

    @property
    def stuck(self) -> bool:
        return self._source.stuck and self._k > 5

    def stats(self) -> SourceStats:
        stats = SourceStats(self._source.width, self._source.height, frames=self._k)
        return replace(stats, rate_hz=self._source.rate_hz)

    def pause(self) -> None:
        pass

    def go_on(self) -> None:
        pass

    def close(self) -> None:
        pass
