"""A clip or a trace through the engine, from the first sample to the finished journal."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from math import isfinite
from typing import Any, Protocol

from tracker.errors import InputError
from tracker.exercises.catalogue import body_every_s, needs_body
from tracker.frame import Frame
from tracker.sample import NO_SETUP, Reach, Sample
from tracker.session.engine import Engine
from tracker.session.journal import MemoryJournal
from tracker.session.live import SessionInfo, check_found, head_reach_found, wall_found
from tracker.session.projections import SessionRecord, session_record
from tracker.session.stage import StageLog, Step, setup_steps

#: Without a stage log the first second is taken for the rest pose (own choice).
REST_S = 1.0


class Report(Protocol):
    """What a fit answers with."""

    @property
    def steps(self) -> list[Step]:
        """The set-up's steps."""

    @property
    def error_deg(self) -> float:
        """Gaze error on looks that the fit had not seen."""

    @property
    def reach_deg(self) -> Reach | None:
        """Eye-in-head angles that the set-up taught."""

    @property
    def findings(self) -> Sequence[str]:
        """Keys of what should be said."""


class ClipMeasurer(Protocol):
    """Pixels to samples; holds the frames of a set-up back until it is fitted."""

    def take(self, frame: Frame) -> Sample:
        """Measure one frame."""

    def fit(self, steps: Sequence[Step]) -> Report:
        """Fit the person on the frames held back."""

    def remeasure(self) -> list[Sample]:
        """Samples of the frames held back."""


@dataclass(frozen=True, slots=True)
class MeasuredClip:
    """A clip on its own clock, its set-up fitted.

    Attributes
    ----------
    steps
        Of its stage log, those of the set-up as the fit gives them back.
    found, notes
        What the set-up found, and keys of what limits it.
    samples
        Of the whole clip, measured while they are taken; to be gone through once.
    """

    steps: list[Step]
    found: dict[str, Any]
    notes: tuple[str, ...]
    samples: Iterator[Sample]


def run_clip(
    frames: Iterable[Frame], measurer: ClipMeasurer, stage: StageLog | None, about: SessionInfo
) -> SessionRecord:
    """Measure and judge a clip, frame by frame; none is dropped.

    Parameters
    ----------
    frames
        In the order of time.
    measurer
        Fresh; the caller closes it.
    stage
        What was asked and shown, or None: then only measuring, with generic values.
    about
        What is known of the session; what the set-up found is added.

    Returns
    -------
    SessionRecord
        Read back from the journal.
    """
    clip = measured_clip(frames, measurer, stage)
    about = about.model_copy(
        update={"setup": {**about.setup, **clip.found}, "notes": (*about.notes, *clip.notes)}
    )
    return run_samples(clip.samples, clip.steps, about)


def measured_clip(
    frames: Iterable[Frame], measurer: ClipMeasurer, stage: StageLog | None
) -> MeasuredClip:
    """Fit a clip's set-up; the rest of it is measured as its samples are taken."""
    asked = list(stage.steps) if stage is not None else []
    setup = setup_steps(asked)
    setup_end_s = max((s.to_s for s in setup), default=None)
    held: list[Sample] = []
    source = _watching(frames, measurer, asked)
    first_after: Sample | None = None
    notes: list[str] = [] if setup else ["no_setup"]
    found: dict[str, object] = {}
    start_s: float | None = None
    report: Report | None = None
    for frame in source:
        if start_s is None:
            start_s = frame.time_s
        end_s = setup_end_s if setup_end_s is not None else start_s + REST_S
        if frame.time_s >= end_s:
            held, report = _fit(measurer, setup or [_rest(start_s)], held, notes)
            first_after = measurer.take(frame)
            break
        held.append(measurer.take(frame))
    else:
        if start_s is not None:
            held, report = _fit(measurer, setup or [_rest(start_s)], held, notes)
    if report is not None:
        notes += [n for n in report.findings if n not in notes]
        found = {
            "calibration": "fitted" if setup else "generic",
            "gaze_error_deg": report.error_deg,
            "gaze_reach_deg": report.reach_deg,
            "head_reach_deg": head_reach_found(getattr(report, "head_reach", None)),
            "check": check_found(getattr(report, "check", None)),
            **wall_found(report),
        }
        found = {k: v for k, v in found.items() if v is not None and v == v}
    steps = _with_targets(asked, report) if setup else asked
    samples = _chain(held, first_after, source, measurer)
    if not setup:
        samples = map(_without_setup, samples)
    return MeasuredClip(steps, found, tuple(notes), samples)


def run_samples(
    samples: Iterable[Sample], steps: Sequence[Step], about: SessionInfo
) -> SessionRecord:
    """Judge samples against the steps of a stage log."""
    journal = MemoryJournal()
    engine = Engine(journal, about=about)
    for step in steps:
        engine.begin(step)
    last_s: float | None = None
    for sample in samples:
        engine.feed(sample)
        last_s = sample.time_s
    ends = [s.to_s for s in steps if last_s is not None and s.from_s <= last_s <= s.to_s]
    if last_s is not None and ends and max(ends) - last_s < 0.2:
        # The last frame lasts to the end of its step.
        engine.advance(max(ends))
    engine.finish("finished")
    return session_record(journal.content())


def _watching(
    frames: Iterable[Frame], measurer: ClipMeasurer, steps: Sequence[Step]
) -> Iterator[Frame]:
    """The frames; before each the measurer knows whether a body is to be looked for."""
    spans = [(s.from_s, s.to_s, body_every_s(s.exercise)) for s in steps if needs_body(s.exercise)]
    watch = getattr(measurer, "watch_body", None)
    on: float | None = None
    for frame in frames:
        at = [every_s for from_s, to_s, every_s in spans if from_s <= frame.time_s < to_s]
        wanted = at[0] if at else None
        if watch is not None and wanted != on:
            watch(wanted is not None, wanted or 0.0)
            on = wanted
        yield frame


def _fit(
    measurer: ClipMeasurer, steps: Sequence[Step], held: list[Sample], notes: list[str]
) -> tuple[list[Sample], Report | None]:
    """Fit and measure the set-up again; a set-up that can't be used is noted, not fatal."""
    try:
        report = measurer.fit(steps)
    except InputError:
        if "no_setup" not in notes:
            notes.append("setup_failed")
        return held, None
    return measurer.remeasure() or held, report


def _rest(start_s: float) -> Step:
    return Step(from_s=start_s, to_s=start_s + REST_S, step="rest")


def _with_targets(asked: Sequence[Step], report: Report | None) -> list[Step]:
    """The steps, those of the set-up as the fit gives them back."""
    fitted = {s.from_s: s for s in report.steps} if report is not None else {}
    return [fitted.get(s.from_s, s) if s.step != "exercise" else s for s in asked]


def _without_setup(sample: Sample) -> Sample:
    """The sample; where nothing else is why its eyes are missing, it says that no set-up is."""
    if sample.reason or isfinite(sample.gaze_yaw_deg) or isfinite(sample.eye_yaw_deg):
        return sample
    return replace(sample, reason=NO_SETUP)


def _chain(
    held: list[Sample], first: Sample | None, rest: Iterable[Frame], measurer: ClipMeasurer
) -> Iterator[Sample]:
    yield from held
    if first is not None:
        yield first
        for frame in rest:
            yield measurer.take(frame)
