"""Capture and measuring in a process that can be killed and replaced.

The program asks :meth:`Service.poll` for news, some 60 times a second; nothing
in here waits, apart from :meth:`Service.stop`, which ends within its time. When
the process dies or says nothing for too long, a warm spare (interpreter started,
libraries and models loaded) takes its place.
"""

from __future__ import annotations

import pickle
import time
from collections.abc import Callable
from dataclasses import dataclass
from typing import Any, Self

import numpy as np
from numpy.typing import NDArray

from tracker.session.stage import Step
from tracker.vision.child import Child
from tracker.vision.messages import (
    Beat,
    Begin,
    CameraSource,
    ClipSource,
    Fit,
    FitFailed,
    Fitted,
    GivingUp,
    HoldSetup,
    LazyFactory,
    Measured,
    MeasurerLike,
    Message,
    Resume,
    ShowPreview,
    SourceChanged,
    SourceState,
    SourceStats,
    WatchBody,
)
from tracker.vision.preview import Preview

__all__ = [
    "CameraSource",
    "ClipSource",
    "FitFailed",
    "Fitted",
    "LazyFactory",
    "Limits",
    "Measured",
    "Message",
    "Service",
    "SourceChanged",
    "SourceState",
    "SourceStats",
]

_OVER = (SourceState.ended, SourceState.failed)


@dataclass(frozen=True, slots=True)
class Limits:
    """How long what may take, in seconds.

    Attributes
    ----------
    silent_s
        Without a sample for so long it is "not measured".
    dead_s
        Without any news for so long the process that measures a camera is replaced.
    clip_s
        The same for a clip, in seconds in which it could have made progress: a clip
        waits, so there is no hurry, and a slow machine is no reason.
    first_s
        The same until the first sample after it was told to begin.
    load_s
        The same while it loads libraries and models.
    fit_s
        The same while a set-up is fitted.
    spare_after_s
        A spare is started so long after the first sample.
    strikes
        So many processes in a row may fail before their first second of samples.

    Notes
    -----
    After half a second anything counts as not measured. All is this project's own choice: a
    camera is missed at once, a start and a fit may be slow, and a clip has no hurry.
    """

    silent_s: float = 0.5
    dead_s: float = 1.5
    clip_s: float = 6.0
    first_s: float = 15.0
    load_s: float = 60.0
    fit_s: float = 90.0
    spare_after_s: float = 1.0
    strikes: int = 3


class Service:
    """Measures a camera or a clip in a process of its own.

    Parameters
    ----------
    source
        A :class:`CameraSource`, a :class:`ClipSource`, or a picklable object
        whose ``open_feed(begin)`` gives frames in the child.
    make_measurer
        Picklable factory of the measurer. After a fit it is called with the
        keyword ``profile`` in a replaced process. A :class:`LazyFactory` keeps
        the measurer's libraries out of this process.
    limits
        Time limits.
    keep_spare
        Whether to keep a second process ready: it costs the memory of its
        libraries and saves the time of loading them when one is replaced.
    """

    def __init__(
        self,
        source: Any,
        make_measurer: Callable[[], MeasurerLike],
        *,
        limits: Limits | None = None,
        keep_spare: bool = True,
    ) -> None:
        self._source = source
        self._clip = isinstance(source, ClipSource)
        self._factory = pickle.dumps(make_measurer)
        self._limits = limits or Limits()
        self._keep_spare = keep_spare
        self._child: Child | None = None
        self._spare: Child | None = None
        self._gone: list[Child] = []
        self._block: Preview | None = None
        self._show = False
        self._body = WatchBody(False)
        self._stopped = False
        self._state: SourceState | None = None
        self._state_said: tuple[SourceState, str] | None = None
        self._stats = SourceStats()
        self._profile: Any = None
        self._origin_s = self._polled_s = self._pardon_s = 0.0
        self._newest_s = self._newest_at_s = self._time_s = 0.0
        self._first_at_s = 0.0
        self._counted = self._of_child = self._strikes = self._spares = self._discard = 0
        self._has_begun = False
        self._fit_s: float | None = None
        self._note = ""
        self._waiting: list[Message] = []

    # --- for the program ---

    @property
    def stats(self) -> SourceStats:
        """What the source really gives: size, measured rate, dropped frames."""
        return self._stats

    @property
    def state(self) -> SourceState:
        """The state that :meth:`poll` told last."""
        return self._state or SourceState.opening

    def start(self) -> None:
        """Start the process; the first news is that the source is being opened."""
        if self._child is not None or self._stopped:
            raise RuntimeError("a service is started once")
        self._block = Preview()
        self._origin_s = self._polled_s = time.perf_counter()
        try:
            self._child = self._new_child()
        except BaseException:
            self._block.unlink()
            raise
        self._begin(self._child, None)

    def poll(self) -> list[Message]:
        """Take the news; never waits."""
        out: list[Message] = []
        now_s = time.perf_counter()
        if self._stopped or self._block is None:
            return out
        if now_s - self._polled_s > 0.5:
            # We were held up ourselves, and the thread that listens perhaps too.
            self._pardon_s = now_s + 1.0
        self._polled_s = now_s
        if self._state is None:
            self._say(SourceState.opening, "", out)
        out += self._waiting
        self._waiting.clear()
        child, heard = self._child, False
        if child is not None:
            for at_s, message in child.news():
                heard = True
                self._hear(message, at_s, out)
        if self._child is not None and self._child is child:
            self._judge(child, now_s, heard, out)
        self._tend_spare(now_s)
        self._gone = [c for c in self._gone if not c.reap()]
        return out

    def hold_setup(self, *, keep: bool, take: bool) -> None:
        """Keep the pictures of the set-up, or let them go; ``take`` what comes for a part of it.

        A replaced process has none: a fit of one part then fails.
        """
        if self._child is not None:
            self._child.tell(HoldSetup(keep, take))

    def request_fit(self, steps: list[Step], part: str = "") -> None:
        """Have the person fitted; the answer is a :class:`Fitted` or a :class:`FitFailed`.

        With ``part`` that one was done again, and the others are as they were.
        """
        self._fit_s = time.perf_counter()
        if self._child is not None:
            self._child.tell(Fit(list(steps), part))
        else:
            self._fit_s = None
            self._waiting.append(FitFailed("nothing is being measured"))

    def watch_body(self, on: bool, every_s: float = 0.0) -> None:
        """Have shoulders and hands measured, too (not at first): they cost time.

        ``every_s`` is the least time between two looks; 0 for as often as a movement needs.
        """
        wanted = WatchBody(on, every_s)
        if wanted != self._body:
            self._body = wanted
            if self._child is not None:
                self._child.tell(wanted)

    def set_preview(self, on: bool) -> None:
        """Have pictures written to the shared memory, or none at all (as at first)."""
        self._show = on
        if self._child is not None:
            self._child.tell(ShowPreview(on))
        if not on and self._block is not None:
            self._block.blank()

    def preview(self) -> NDArray[np.uint8] | None:
        """The newest picture, BGR, not mirrored, at most 640 px long; None if there is none."""
        if not self._show or self._block is None or self._stopped:
            return None
        return self._block.read()

    def now_s(self) -> float:
        """The session's clock; it never goes back.

        For a camera the seconds since :meth:`start`. For a clip the time of its
        newest frame: it waits while nothing is measured.
        """
        now_s = time.perf_counter()
        if self._block is None:
            return 0.0
        value = self._newest_s if self._clip else now_s - self._origin_s
        if not self._stopped:
            self._time_s = max(self._time_s, value)
        return self._time_s

    def stop(self, timeout_s: float = 2.0) -> None:
        """End everything within ``timeout_s``: asked first, then ended, then killed.

        The usual time is this project's own choice: a closing window must not seem to hang.
        """
        if self._stopped:
            return
        self.now_s()
        self._stopped = True
        deadline_s = time.perf_counter() + timeout_s
        if self._spare is not None:
            self._spare.kill()
            self._gone.append(self._spare)
        if self._child is not None:
            self._child.end(deadline_s)
            self._gone.append(self._child)
        self._child = self._spare = None
        for child in self._gone:
            child.reap(max(0.05, deadline_s - time.perf_counter()))
        self._gone.clear()
        if self._block is not None:
            self._block.unlink()

    def __enter__(self) -> Self:
        return self

    def __exit__(self, *_: object) -> None:
        self.stop()

    # --- news ---

    def _hear(self, message: Any, at_s: float, out: list[Message]) -> None:
        if isinstance(message, Measured):
            self._measured(message, at_s, out)
        elif isinstance(message, SourceChanged):
            self._has_begun = True
            # Running is said with the first sample: it means "measured". And to open
            # the source again is a part of restarting.
            if message.state not in (SourceState.opening, SourceState.running):
                self._say(message.state, message.detail, out)
        elif isinstance(message, Beat):
            self._stats = message.stats
        elif isinstance(message, Fitted):
            self._fit_s = None
            self._newest_at_s = at_s
            self._profile = getattr(message.report, "profile", None)
            out.append(message)
        elif isinstance(message, FitFailed):
            self._fit_s = None
            self._newest_at_s = at_s
            out.append(message)
        elif isinstance(message, GivingUp):
            self._note = message.detail
            if message.final:
                self._fail(message.detail, out)

    def _measured(self, message: Measured, at_s: float, out: list[Message]) -> None:
        if self._counted and message.sample.time_s <= self._newest_s:
            return  # can only come from a source whose clock went back
        self._newest_s, self._newest_at_s = message.sample.time_s, at_s
        self._counted += 1
        if self._of_child == 0:
            self._first_at_s = at_s
        self._of_child += 1
        if self._state is not SourceState.running:
            self._say(SourceState.running, "", out)
        out.append(message)

    def _say(self, state: SourceState, detail: str, out: list[Message]) -> None:
        if (state, detail) != self._state_said:
            self._state, self._state_said = state, (state, detail)
            out.append(SourceChanged(state, detail))

    # --- life and death of the child ---

    def _judge(self, child: Child, now_s: float, heard: bool, out: list[Message]) -> None:
        if child.drained:
            self._replace("the measuring process ended", out)
            return
        if heard or self._state in _OVER or now_s < self._pardon_s:
            return
        silent_s = now_s - child.heard_s
        if self._clip:
            silent_s = min(silent_s, child.patience.without_progress_s(now_s))
        if silent_s > self._limit_s(child):
            self._replace("the measuring process stopped answering", out)
        elif (
            self._state is SourceState.running
            and self._fit_s is None
            and now_s - self._newest_at_s > self._limits.silent_s
        ):
            self._say(SourceState.silent, "", out)

    def _limit_s(self, child: Child) -> float:
        if not child.ready:
            return self._limits.load_s
        if self._fit_s is not None:
            return self._limits.fit_s
        if not self._of_child:
            return self._limits.first_s
        return self._limits.clip_s if self._clip else self._limits.dead_s

    def _replace(self, why: str, out: list[Message]) -> None:
        child = self._child
        if child is None:
            return
        child.kill()
        self._gone.append(child)
        self._child = None
        why = self._note or why
        if self._fit_s is not None:
            self._fit_s = None
            out.append(FitFailed("the measuring process ended while the set-up was being used"))
        if self._state in _OVER:
            return
        lasted = self._of_child > 0 and self._newest_at_s - self._first_at_s >= 1.0
        self._strikes = 1 if lasted else self._strikes + 1
        # The next frame is to blame if a process began with it and ended.
        self._discard = 0 if self._of_child else self._discard + int(self._has_begun)
        if self._strikes > self._limits.strikes:
            self._fail(f"{why}, {self._strikes} times in a row", out)
            return
        self._say(SourceState.restarting, why, out)
        resume = None
        if self._counted:
            again = self._clip and self._profile is None
            resume = Resume(self._newest_s, discard=self._discard, again=again)
        self._child = self._spare or self._new_child()
        self._spare = None
        self._begin(self._child, resume)

    def _begin(self, child: Child, resume: Resume | None) -> None:
        self._of_child, self._note, self._has_begun = 0, "", False
        child.heard_s = time.perf_counter()
        child.patience.begin(child.heard_s)
        child.tell(Begin(self._source, self._origin_s, self._profile, resume))
        if self._body.on:
            child.tell(self._body)
        if self._show:
            child.tell(ShowPreview(True))

    def _fail(self, why: str, out: list[Message]) -> None:
        self._say(SourceState.failed, why, out)

    def _new_child(self) -> Child:
        assert self._block is not None
        return Child(self._factory, self._block.name)

    def _tend_spare(self, now_s: float) -> None:
        """Start a spare once all runs well; a spare that fails is tried again twice."""
        spare = self._spare
        if spare is not None:
            late = not spare.ready and now_s - spare.started_s > self._limits.load_s
            if spare.closed or late:
                spare.kill()
                self._gone.append(spare)
                self._spare = None
                self._spares += 1
        elif (
            self._keep_spare
            and self._state is SourceState.running
            and self._of_child
            and now_s - self._first_at_s > self._limits.spare_after_s
            and self._spares < 3
        ):
            self._spare = self._new_child()
