"""What goes between the program and its measuring process: sources, orders, news.

Nothing here imports OpenCV or MediaPipe, so the program can use it freely.
"""

from __future__ import annotations

import importlib
import math
from collections.abc import Sequence
from dataclasses import dataclass, field
from enum import StrEnum
from pathlib import Path
from typing import Any, Protocol

from tracker.frame import Frame
from tracker.sample import Sample
from tracker.session.stage import Step


@dataclass(frozen=True, slots=True)
class CameraSource:
    """A camera and what is asked of it.

    ``index`` is its number, ``device_id`` (Linux: a path under
    ``/dev/v4l/by-id``) finds the same camera again after it was unplugged and
    comes first where it is given. What is asked for is common practice: what most webcams give.
    """

    index: int
    name: str = ""
    device_id: str = ""
    width: int = 1280
    height: int = 720
    rate_hz: float = 30.0


@dataclass(frozen=True, slots=True)
class ClipSource:
    """A clip; ``paced`` plays it at its own speed, as if it were a camera."""

    path: Path
    paced: bool = True


class SourceState(StrEnum):
    """How it stands with the pictures."""

    opening = "opening"
    running = "running"
    no_camera = "no_camera"
    busy = "busy"
    #: Where the system does not say why: it is there, and gives nothing.
    perhaps_busy = "perhaps_busy"
    #: The same where a permission is the likeliest to be missing (macOS).
    perhaps_forbidden = "perhaps_forbidden"
    no_permission = "no_permission"
    unplugged = "unplugged"
    hanging = "hanging"
    ended = "ended"
    failed = "failed"
    silent = "silent"
    restarting = "restarting"


@dataclass(frozen=True, slots=True)
class SourceStats:
    """What a source has really given so far: size, measured rate, frames that were passed over."""

    width_px: int = 0
    height_px: int = 0
    rate_hz: float = math.nan
    frames: int = 0
    dropped: int = 0


@dataclass(frozen=True, slots=True)
class Measured:
    """A sample.

    ``facing_deg`` is roughly where the face looks (yaw, pitch), from a measurer that tells it
    while it doesn't know the person yet, ``away_mm`` how far from the camera its eyes are.
    """

    sample: Sample
    facing_deg: tuple[float, float] | None = None
    away_mm: float | None = None


@dataclass(frozen=True, slots=True)
class Fitted:
    """A set-up was fitted; ``report`` is what the measurer's ``fit`` gave."""

    report: Any


@dataclass(frozen=True, slots=True)
class FitFailed:
    """A set-up could not be fitted; ``message`` is one plain line."""

    message: str


@dataclass(frozen=True, slots=True)
class SourceChanged:
    """The state of the source is another than before."""

    state: SourceState
    detail: str = ""


Message = Measured | Fitted | FitFailed | SourceChanged


class MeasurerLike(Protocol):
    """What the measuring process asks of a measurer.

    After a fit, a replaced process makes its measurer by the same factory with
    the keyword ``profile``; a measurer with a method ``use_profile(profile)``
    is kept and given the profile by that. One with a method ``watch_body(on, every_s)`` is told
    when an exercise needs shoulders and hands, one with ``hold_setup(keep=, take=)`` that a part
    of the set-up is about to be done again, for ``fit_again(steps, part)``, or none will be.
    """

    def take(self, frame: Frame) -> Sample:
        """Measure one frame."""
        ...

    def fit(self, steps: Sequence[Step]) -> Any:
        """Fit the person; raises InputError with a plain message."""
        ...

    def close(self) -> None:
        """Free native parts."""
        ...


@dataclass(frozen=True)
class LazyFactory:
    """A factory named by its place, imported only where it is called.

    It keeps the libraries of a measurer out of the program's own process.

    Parameters
    ----------
    target
        ``package.module:function``.
    arguments
        Keyword arguments of the function.
    """

    target: str
    arguments: dict[str, Any] = field(default_factory=dict)

    def __call__(self, **more: Any) -> Any:
        """Import the function and call it."""
        module, _, name = self.target.partition(":")
        return getattr(importlib.import_module(module), name)(**(self.arguments | more))


# --- orders to the child and news from it that go no further than the service ---


@dataclass(frozen=True, slots=True)
class Resume:
    """Where a clip goes on: after the frame at ``time_s``, the last that was delivered.

    It passes over ``discard`` frames more (those that may have killed the process
    before). With ``again`` the frames up to ``time_s`` are measured once more,
    quickly and without being told: a set-up that isn't fitted yet needs them.
    """

    time_s: float
    discard: int = 0
    again: bool = False

    @property
    def known_s(self) -> float:
        """Frames up to this time are known: a little more than ``time_s``, for its rounding."""
        return self.time_s + 1e-4


@dataclass(frozen=True, slots=True)
class Begin:
    """Begin to measure; ``origin_s`` is the clock's reading at the session's time 0."""

    source: Any
    origin_s: float
    profile: Any = None
    resume: Resume | None = None


@dataclass(frozen=True, slots=True)
class Fit:
    """Fit the person on the frames taken so far; with ``part`` that one was done again."""

    steps: list[Step]
    part: str = ""


@dataclass(frozen=True, slots=True)
class HoldSetup:
    """Keep the pictures of the set-up, or let them go; ``take`` what comes as a part done again."""

    keep: bool
    take: bool


@dataclass(frozen=True, slots=True)
class WatchBody:
    """Look for shoulders and hands, too, or no longer; not more often than every ``every_s``."""

    on: bool
    every_s: float = 0.0


@dataclass(frozen=True, slots=True)
class ShowPreview:
    """Write pictures into the shared memory, or no longer."""

    on: bool


@dataclass(frozen=True, slots=True)
class Stop:
    """Close the source and end."""


@dataclass(frozen=True, slots=True)
class Ready:
    """The libraries and models are loaded."""


@dataclass(frozen=True, slots=True)
class Beat:
    """The child's measuring loop is alive."""

    stats: SourceStats


@dataclass(frozen=True, slots=True)
class Pulse:
    """Sent by a thread of the child's own: rounds of its work, processor seconds used."""

    rounds: int
    cpu_s: float


@dataclass(frozen=True, slots=True)
class GivingUp:
    """The child can't go on; ``final`` if another one couldn't either."""

    detail: str
    final: bool
