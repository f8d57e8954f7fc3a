"""Standing on a firm floor and on a soft surface, and walking."""

from __future__ import annotations

from tracker.exercises.catalogue import sources as src
from tracker.exercises.catalogue.model import (
    GUIDED,
    HEAD_FORWARD,
    HELD,
    Exercise,
    Guide,
    watch,
)

_ON_FEET = watch("possible_fall", "left_picture", "not_measured", "eyes_closed", "eyes_opened")
_STAND = (*_ON_FEET, HEAD_FORWARD, *watch("chin_down"))
#: One beat a turn: 0.3 Hz is 36 turns a minute (arithmetic; the rate: ``src.SHAKE_RATE``).
SHAKE_BEATS = 36.0

#: How to stop, and that nothing is measured, is said before each (all seconds are
#: this project's own choice).
_BEFORE = (("stop", 4.0), ("count", 3.0))
_WALK = Guide(
    first=(*_BEFORE, ("walk.stand", 6.0)),
    each=(("walk.forward", 20.0), ("walk.halt", 10.0), ("walk.back", 25.0), ("walk.halt", 10.0)),
)
_STAIRS = Guide(
    first=(*_BEFORE, ("stairs.stand", 6.0)),
    each=(("stairs.up", 6.0), ("stairs.down", 6.0)),
)
_PARTNER = Guide(
    first=(*_BEFORE, ("partner.stand", 6.0)),
    each=(("partner.take", 5.0), ("partner.give", 5.0)),
)

EXERCISES: tuple[Exercise, ...] = (
    Exercise(
        "stand",
        HELD,
        _STAND,
        therapist="Quiet stance in a corner, gaze level on a wall mark (eyes open or closed)",
        cautions=("stand", "steady"),
        sources={"dose": src.HOLD},
        dose_seconds=30.0,
        posture="standing",
        support="corner_and_chair",
        not_measured=("feet", "steadied"),
    ),
    Exercise(
        "ankle-sway",
        "neck_fore_aft",
        (*_ON_FEET, *watch("chin_down")),
        therapist="Fore-aft weight shift about the ankles, gaze level",
        cautions=("stand", "steady"),
        sources={"dose": src.COMMON},
        dose_repetitions=20,
        posture="standing",
        support="corner_and_chair",
        not_measured=("hip_bend", "steadied"),
    ),
    Exercise(
        "stand-head-shake",
        "head_yaw",
        (*_ON_FEET, *watch("too_large", "too_slow", "too_fast")),
        therapist="Head shaking in stance on a compliant surface",
        cautions=("stand", "soft", "neck"),
        sources={"dose": src.HOLD, "tempo_bpm": src.SHAKE_RATE},
        dose_seconds=30.0,
        tempo_bpm=SHAKE_BEATS,
        posture="standing",
        surface="soft",
        head_shake=True,
        support="helper",
        not_measured=("feet", "steadied"),
    ),
    Exercise(
        "weight-shift",
        "neck_sideways",
        _ON_FEET,
        therapist="Lateral weight shift on a compliant surface",
        cautions=("stand", "soft"),
        sources={"dose": src.HOLD},
        dose_seconds=30.0,
        posture="standing",
        surface="soft",
        support="helper",
        not_measured=("feet", "steadied"),
    ),
    Exercise(
        "walk",
        GUIDED,
        (),
        therapist="Gait forward and backward, ten steps each way (= 1)",
        cautions=("walk",),
        sources={"dose": src.COMMON},
        dose_repetitions=1,
        posture="walking",
        support="helper",
        needs=(),
        guide=_WALK,
        not_measured=("everything",),
    ),
    Exercise(
        "stairs",
        GUIDED,
        (),
        therapist="Step up and down with the rail (= 1)",
        cautions=("stairs",),
        sources={"dose": src.COMMON},
        dose_repetitions=10,
        posture="walking",
        support="helper",
        needs=(),
        guide=_STAIRS,
        not_measured=("everything",),
    ),
    Exercise(
        "partner-turns",
        GUIDED,
        (),
        therapist="Trunk turns with a partner who hands over an object on either side",
        cautions=("partner", "stand"),
        sources={"dose": src.COMMON},
        dose_repetitions=10,
        posture="standing",
        support="helper",
        needs=(),
        guide=_PARTNER,
        not_measured=("everything",),
    ),
)
