"""Standing on a firm floor and on a soft surface, and walking."""

from __future__ import annotations

from tracker.exercises.catalogue import sources as src
from tracker.exercises.catalogue.model import GUIDED, HEAD_ABOUT_LEVEL, HELD, Exercise, watch

_STAND = (HEAD_ABOUT_LEVEL, *watch("eyes_closed", "not_measured"))
#: One beat a turn: 0.3 Hz is 36 turns a minute.
SHAKE_BEATS = 36.0

EXERCISES: tuple[Exercise, ...] = (
    Exercise(
        "stand",
        HELD,
        _STAND,
        therapist="Standing in a corner, arms down, chin up, eyes forward (Romberg-like hold)",
        cautions=("stand", "steady"),
        sources={"dose": src.HOLD},
        dose_seconds=30.0,
        posture="standing",
        support="corner_and_chair",
        not_measured=("sway", "feet", "steadied", "eyes_opened"),
    ),
    Exercise(
        "ankle-sway",
        GUIDED,
        watch("eyes_closed", "not_measured"),
        therapist="Sway from toes to heels, from the ankles, chin up, eyes forward",
        cautions=("stand", "steady"),
        sources={"dose": src.COMMON},
        dose_repetitions=20,
        posture="standing",
        support="corner_and_chair",
        not_measured=("count", "sway", "hip_bend", "chin"),
    ),
    Exercise(
        "stand-head-shake",
        "head_yaw",
        watch("eyes_closed", "too_slow", "too_fast", "not_measured"),
        therapist="Standing on a soft surface with head shakes, eyes open, later closed",
        cautions=("stand", "soft", "neck"),
        sources={"dose": src.HOLD, "tempo_bpm": src.SHAKE_RATE},
        dose_seconds=30.0,
        tempo_bpm=SHAKE_BEATS,
        posture="standing",
        surface="soft",
        head_shake=True,
        support="helper",
        not_measured=("sway", "feet", "steadied", "eyes_opened"),
    ),
    Exercise(
        "weight-shift",
        GUIDED,
        watch("eyes_closed", "not_measured"),
        therapist="Weight from foot to foot on a soft surface, eyes open, later closed",
        cautions=("stand", "soft"),
        sources={"dose": src.HOLD},
        dose_seconds=30.0,
        posture="standing",
        surface="soft",
        support="helper",
        not_measured=("count", "sway", "feet", "eyes_opened"),
    ),
    Exercise(
        "walk",
        GUIDED,
        (),
        therapist="Ten steps forward and ten back on a firm floor (= 1)",
        cautions=("walk", "stand"),
        sources={"dose": src.COMMON},
        dose_repetitions=1,
        posture="walking",
        support="helper",
        needs=(),
        not_measured=("everything",),
    ),
    Exercise(
        "stairs",
        GUIDED,
        (),
        therapist="Up and down the stairs with the rail (one step up and down = 1)",
        cautions=("stairs",),
        sources={"dose": src.COMMON},
        dose_repetitions=10,
        posture="walking",
        support="helper",
        needs=(),
        not_measured=("everything",),
    ),
    Exercise(
        "partner-turns",
        GUIDED,
        (),
        therapist="Turning with a partner: a soft object handed over, to the right and to the left",
        cautions=("partner", "stand"),
        sources={"dose": src.COMMON},
        dose_repetitions=10,
        posture="standing",
        support="helper",
        needs=(),
        not_measured=("everything",),
    ),
)
