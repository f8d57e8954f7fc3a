"""What must hold while an exercise runs. Each watcher notices one thing.

A watcher takes every sample (and, if it judges turns, every turn) of one set and
answers with :class:`Change`: it began, dated back to when it really did, or it
ended. Nothing is decided on what was not measured.
"""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from tracker.exercises.catalogue import WatcherSpec
from tracker.exercises.counters import Channel
from tracker.exercises.watchers.base import Asked, Change, Excursion, Watcher
from tracker.exercises.watchers.falls import PossibleFall
from tracker.exercises.watchers.gaze import (
    EyesNotWithHead,
    GazeOffTarget,
    least_turn_deg,
    off_target_limit_deg,
)
from tracker.exercises.watchers.hands import ThrowLow
from tracker.exercises.watchers.head import ChinDown, HeadMoved
from tracker.exercises.watchers.lids import EyesClosed, EyesOpened
from tracker.exercises.watchers.seen import LeftPicture, NotMeasured, is_measured
from tracker.exercises.watchers.targets import GazeShort, HeadWithTarget, NotEyesFirst
from tracker.exercises.watchers.tilts import HeadTurned
from tracker.exercises.watchers.turns import Amplitude, FallsShort, OfTurns, Tempo, tempo_of
from tracker.sample import Sample

__all__ = [
    "Amplitude",
    "Asked",
    "Change",
    "ChinDown",
    "Excursion",
    "EyesClosed",
    "EyesNotWithHead",
    "EyesOpened",
    "FallsShort",
    "GazeOffTarget",
    "GazeShort",
    "HeadMoved",
    "HeadTurned",
    "HeadWithTarget",
    "LeftPicture",
    "NotEyesFirst",
    "NotMeasured",
    "OfTurns",
    "PossibleFall",
    "Tempo",
    "ThrowLow",
    "Watcher",
    "is_measured",
    "least_turn_deg",
    "make_watcher",
    "off_target_limit_deg",
    "tempo_of",
]

#: Those that need nothing but their own parameters.
_PLAIN: dict[str, Callable[..., Watcher]] = {
    "gaze_off_target": GazeOffTarget,
    "gaze_short": GazeShort,
    "head_moved": HeadMoved,
    "head_turned": HeadTurned,
    "chin_down": ChinDown,
    "eyes_closed": EyesClosed,
    "left_picture": LeftPicture,
    "possible_fall": PossibleFall,
    "throw_low": ThrowLow,
    "head_first": partial(NotEyesFirst, "head_first"),
    "moved_together": partial(NotEyesFirst, "moved_together"),
    "too_large": partial(Amplitude, "too_large"),
    "too_slow": partial(Tempo, "too_slow"),
    "too_fast": partial(Tempo, "too_fast"),
}


def make_watcher(
    spec: WatcherSpec,
    channel: Channel,
    from_s: float,
    explained: Callable[[Sample], bool] = lambda _: False,
) -> Watcher:
    """Watcher of a name, fresh for one set that begins at ``from_s``; KeyError if unknown.

    ``explained``: whether another event says already why a sample holds no measurement.
    """
    p = dict(spec.parameters)
    if spec.name == "not_measured":
        otherwise = "no_body" if channel.body else "gap"
        return NotMeasured(
            lambda s: is_measured(s, channel) or explained(s), from_s, otherwise=otherwise, **p
        )
    if spec.name == "eyes_opened":
        return EyesOpened(from_s, **p)
    if spec.name == "eyes_not_with_head":
        return EyesNotWithHead(channel.name, **p)
    if spec.name == "head_with_target":
        return HeadWithTarget(channel.name, **p)
    if (spec.name, channel.name) in FallsShort.SIDES:
        return FallsShort(spec.name, channel, **p)
    if spec.name == "too_small":
        return Amplitude(spec.name, **p)
    return _PLAIN[spec.name](**p)
