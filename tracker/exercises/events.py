"""What watchers notice, and which of it is said."""

from __future__ import annotations

from dataclasses import dataclass
from math import nan


@dataclass(frozen=True, slots=True)
class Event:
    """Something noticed while an exercise ran.

    Attributes
    ----------
    code
        An event code, for example ``gaze_off_target``.
    start_s, end_s
        When it began, dated back, and when it ended; ``end_s`` is NaN while it lasts.
    decided_s
        When enough had been seen to decide it.
    said_at_s
        When it was first said to the patient, or shown, NaN if it never was: with the eyes shut
        and no voice it can't be.
    reason
        Why nothing was measured (``not_measured``); ``no_face`` for a head that was lost while
        it dropped (``possible_fall``).
    """

    code: str
    start_s: float
    end_s: float = nan
    decided_s: float = nan
    said_at_s: float = nan
    reason: str = ""


@dataclass(frozen=True, slots=True)
class Cue:
    """An event that is said to the patient; ``reason`` as the watcher gave it."""

    code: str
    said_at_s: float
    reason: str = ""


#: What is said first when several things could be. A fall comes before all; where the
#: eyes and the head are comes before how fast, and slowing down before speeding up:
#: common practice.
PRIORITY: tuple[str, ...] = (
    "possible_fall",
    "left_picture",
    "not_measured",
    "eyes_closed",
    "eyes_opened",
    "gaze_off_target",
    "eyes_not_with_head",
    "head_with_target",
    "head_first",
    "moved_together",
    "chin_down",
    "head_turned",
    "head_moved",
    "gaze_short",
    "not_upright",
    "throw_low",
    "too_fast",
    "too_large",
    "too_small",
    "too_slow",
)

#: These don't wait for a turning point.
AT_ONCE = frozenset({"possible_fall", "left_picture", "not_measured"})

#: What isn't counted gives no turning points: this is found at one of its own and said there.
AT_ITS_OWN = frozenset({"head_turned"})

#: Least time between two cues (one calm cue at a time; this project's own choice).
CUE_SPACING_S = 2.0
#: An event that ended longer ago than this is no longer said (this project's own choice).
CUE_STALE_S = 3.0
#: A head that keeps moving, or turning, is one event, however long, and is said again after so
#: long: who goes on may not have understood (this project's own choice). The rest is said once
#: an event.
SAID_AGAIN = frozenset({"head_moved", "head_turned"})
AGAIN_S = 12.0
