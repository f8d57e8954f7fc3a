"""What limits the figures of a summary, each limit with its reason."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from math import isfinite
from typing import Any

import numpy as np
from pydantic import BaseModel, ConfigDict

from tracker.sample import Sample
from tracker.session import figures
from tracker.session.derive import BESIDE, BEYOND, UNLIKE, UNLIKE_AROUND
from tracker.session.journal_line import is_number
from tracker.session.projections import SessionRecord

#: A little below 15 frames a second, the lowest rate at which films were measured (DEVELOPERS.md):
#: how far the figures are off with fewer is not known. This project's own choice.
LOW_FRAME_RATE_HZ = 14.0
#: Common practice: below these a summary carries a flag.
LOW_MEASURED = 0.8
LOW_LIGHT = 0.15
MUCH_UNREAD = 0.1
MUCH_SLOW = 0.2
#: Longer without a picture is an outage, which ``little_measured`` is for, and no slow camera; and
#: of fewer seconds than this one alone would be more than :data:`MUCH_SLOW` (both this project's
#: own choice).
OUTAGE_S, LEAST_JUDGED_S = 1.0, 5
#: Below this quality at the ends of its turns the head is read degrees short there: on three
#: rendered heads that turned 38 degrees after a set-up of 26 it was .3, .4 and .65, and the
#: amplitude 25, 5 and 1 % off; at 15 to 21 degrees it is .8 and more.
LOW_AT_ENDS = 0.6
#: A sample so near to a turn's end is that of the end; seconds (this project's own choice).
AT_END_S = 0.15


class Flag(BaseModel):
    """Something that limits the figures, and why."""

    model_config = ConfigDict(extra="allow")

    flag: str
    reason: str


#: Note of a session, and flag of all its sets: no camera saw them, somebody said so.
REPORTED = "reported"
#: Movements of before, gone through with nobody there.
FROM_CLIPS = "from_clips"
#: Answer and flag of a set: the camera was gone for some of it.
COUNT_LOST = "count_lost"
#: Answer and flag of a set: it was surely done at another distance than was asked for.
SEAT_OFF = "seat_off"

_NOTES = {
    REPORTED: Flag(flag=REPORTED, reason="practised away from the camera, as the patient says"),
    COUNT_LOST: Flag(
        flag=COUNT_LOST,
        reason="the camera was gone for a while: what was done then is missing in its count",
    ),
    "no_setup": Flag(flag="no_setup", reason="no set-up for this person: generic values were used"),
    "setup_unknown": Flag(
        flag="setup_unknown",
        reason="a trace alone: whether there was a set-up, and how well the gaze was read, is not "
        "known",
    ),
    "setup_failed": Flag(
        flag="setup_failed", reason="the set-up could not be used, so nothing rests on it"
    ),
    "other_exercise": Flag(
        flag="other_exercise", reason="the stage log says that another exercise was asked for"
    ),
    FROM_CLIPS: Flag(
        flag=FROM_CLIPS,
        reason="made from clips: the times between the sets are the plan's, nobody was there",
    ),
    "first_try": Flag(
        flag="first_try", reason="half a minute to try the program out: not counted as practice"
    ),
    "gaze_not_fitted": Flag(
        flag="gaze_not_fitted", reason="the set-up was too poor for the line of sight"
    ),
    "coarse_picture": Flag(
        flag="coarse_picture",
        reason="the set-up's picture told too little of the moving face: the head may be "
        "1 to 2 degrees off, turns by a tenth",
    ),
}

#: Flag of eyes that were not read -> reasons that it stands for, and what they did.
_EYES = {
    BEYOND: ((BEYOND,), "went beyond the set-up's range"),
    BESIDE: (
        (BESIDE,),
        "rested a little beside the target: misread (other lids, light, glasses), or really there",
    ),
    UNLIKE: (
        (UNLIKE, UNLIKE_AROUND),
        "were not read: they looked unlike those of the set-up (another light, or other glasses)",
    ),
}

#: Notes that say nothing of a single exercise.
_OF_THE_SESSION = {FROM_CLIPS, "first_try"}


def flags_of(
    samples: Sequence[Sample], fraction: float, notes: Sequence[str], ends_s: Sequence[float] = ()
) -> list[Flag]:
    """Flags of one exercise: from its samples, the measured share of its time, and notes.

    ``ends_s`` are the times at which the head's turns were farthest.
    """
    flags = [_NOTES[n] for n in notes if n in _NOTES and n not in _OF_THE_SESSION]
    rate = figures.frame_rate_hz(samples)
    if rate is not None and rate < LOW_FRAME_RATE_HZ:
        flags.append(Flag(flag="low_frame_rate", reason=f"{rate:.1f} pictures a second"))
    elif (slow := _slow_share(samples)) > MUCH_SLOW:
        few = f"fewer than {LOW_FRAME_RATE_HZ:.0f} pictures a second"
        flags.append(Flag(flag="low_frame_rate", reason=f"{100 * slow:.0f} % of the time {few}"))
    if fraction < LOW_MEASURED and REPORTED not in notes:
        flags.append(Flag(flag="little_measured", reason=f"{100 * fraction:.0f} % of the time"))
    for flag, (reasons, what) in _EYES.items():
        share = figures.reason_fraction(samples, *reasons)
        if share > MUCH_UNREAD:
            flags.append(Flag(flag=flag, reason=f"{100 * share:.0f} % of the time the eyes {what}"))
    at_ends = _quality_at(samples, ends_s)
    if at_ends is not None and at_ends < LOW_AT_ENDS:
        reason = "at the ends of the turns the face is little like that of the set-up"
        flags.append(Flag(flag="far_turned", reason=f"{reason}: angles there may be degrees short"))
    light = figures.light_of(samples)
    if light is not None and light < LOW_LIGHT:
        flags.append(Flag(flag="dark", reason=f"light on the face {light:.2f} of 1"))
    return flags


def _slow_share(samples: Sequence[Sample]) -> float:
    """Share of the whole seconds that had fewer pictures than :data:`LOW_FRAME_RATE_HZ`.

    The rate over all of a set is a good one where a fast camera made up for a slow time. Seconds
    that an outage touches are not slow ones; of fewer than :data:`LEAST_JUDGED_S` nothing is told.
    """
    times_s = np.array([s.time_s for s in samples])
    if times_s.size < 2:
        return 0.0
    second = np.floor(times_s - times_s[0])
    outages = np.flatnonzero(np.diff(times_s) > OUTAGE_S)
    touched = np.concatenate([second[outages], second[outages + 1], second[-1:]])
    _, pictures = np.unique(second[~np.isin(second, touched)], return_counts=True)
    # The last one isn't whole.
    whole = float(second[-1])
    slow = np.count_nonzero(pictures < LOW_FRAME_RATE_HZ)
    return slow / whole if whole >= LEAST_JUDGED_S else 0.0


def flags_of_hand(hand: Mapping[str, Any] | None) -> list[Flag]:
    """That the eyes did not go along with the fingertip, where their error lets that be told."""
    followed = (hand or {}).get("eyes_followed") or {}
    if followed.get("value") is not False:
        return []
    change, error = followed["vergence_change_deg"], followed["error_deg"]
    reason = (
        f"the eyes turned in by {change:.1f} degrees (within {error:.1f}) as the finger came near"
    )
    return [Flag(flag="eyes_not_with_finger", reason=reason)]


def _quality_at(samples: Sequence[Sample], times_s: Sequence[float]) -> float | None:
    """Median quality of the samples nearest to some times; None without a time.

    Where nothing was measured near by it counts as none.
    """
    if not samples or not times_s:
        return None
    at = np.array([s.time_s for s in samples])
    found = []
    for time_s in times_s:
        k = int(np.argmin(np.abs(at - time_s)))
        near = abs(samples[k].time_s - time_s) <= AT_END_S
        found.append(samples[k].quality if near else 0.0)
    # A trace of another maker may say nothing of its quality.
    known = [q for q in found if isfinite(q)]
    return float(np.median(known)) if known else None


def seat_flag(found: object) -> list[Flag]:
    """The flag of a set that was done at another distance, from its answer; none without."""
    if not isinstance(found, Mapping):
        return []
    values = [found.get(k) for k in ("asked_mm", "measured_mm", "low_mm", "high_mm")]
    if not all(is_number(v) for v in values):
        return []
    asked, here, low, high = (float(v or 0) for v in values)
    at = f"about {here / 10:.0f} cm ({low / 10:.0f} to {high / 10:.0f}) from the screen"
    return [Flag(flag=SEAT_OFF, reason=f"done at {at}; {asked / 10:.0f} cm were asked for")]


def flags_of_session(record: SessionRecord) -> list[Flag]:
    """Flags of the whole session."""
    flags = [_NOTES[n] for n in record.about.notes if n in _NOTES]
    head = record.damaged_head
    if head is not None:
        reason = f"{record.damaged_lines} lines could not be read, the first one too: whose it is"
        reason += " and of which plan is not known"
        if not head.marked:
            reason += "; it may be from the sample"
        flags.append(Flag(flag="journal_damaged", reason=reason))
    elif record.damaged_lines:
        flags.append(
            Flag(flag="journal_damaged", reason=f"{record.damaged_lines} lines could not be read")
        )
    return flags
