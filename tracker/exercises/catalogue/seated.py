"""The body, sitting on a chair and standing up from it."""

from __future__ import annotations

from tracker.exercises.catalogue import sources as src
from tracker.exercises.catalogue.model import (
    HANDS_SEEN,
    HEAD_ABOUT_LEVEL,
    SEEN_BETWEEN_BENDS,
    Exercise,
    watch,
)

EXERCISES: tuple[Exercise, ...] = (
    Exercise(
        "shoulders-back",
        "shoulder_lift",
        (HEAD_ABOUT_LEVEL, *watch("eyes_opened", "not_measured")),
        therapist="Backward shoulder circles, slow",
        cautions=("settle", "shoulder"),
        sources={"dose": src.COMMON},
        dose_repetitions=10,
        needs=("face", "body"),
        not_measured=("shoulder_height", "direction"),
    ),
    Exercise(
        "shoulders-forward",
        "shoulder_lift",
        (HEAD_ABOUT_LEVEL, *watch("eyes_opened", "not_measured")),
        therapist="Forward shoulder circles, slow",
        cautions=("settle", "shoulder"),
        sources={"dose": src.COMMON},
        dose_repetitions=10,
        needs=("face", "body"),
        not_measured=("shoulder_height", "direction"),
    ),
    Exercise(
        "floor-reach",
        "head_reach",
        (*watch("not_upright"), SEEN_BETWEEN_BENDS),
        therapist="Forward bends from a chair to put down and fetch an object (both = 1)",
        cautions=("settle", "bend", "slide"),
        sources={"dose": src.TWENTY_REACHES, "seat_mm": src.BENT_SEEN},
        dose_repetitions=20,
        needs=("face", "body"),
        seat_mm=900.0,
        repetition_s=12.0,
        not_measured=("arm", "gaze_bent"),
    ),
    Exercise(
        "sit-to-stand",
        "head_rise",
        watch("possible_fall", "not_measured", "eyes_opened", "not_upright", "too_small"),
        therapist="Sit-to-stand, arm support permitted",
        cautions=("settle", "chair", "stand"),
        sources={"dose": src.COMMON},
        dose_repetitions=20,
        posture="standing",
        support="corner_and_chair",
        not_measured=("hands",),
    ),
    Exercise(
        "hand-toss",
        "hand_throw",
        (HANDS_SEEN, *watch("possible_fall", "throw_low")),
        therapist="Hand-to-hand toss over eye height, tracked with eyes and head",
        cautions=("settle", "toss"),
        sources={"dose": src.TWENTY_EACH, "seat_mm": src.ROOM_TO_THROW},
        dose_repetitions=20,
        needs=("face", "body"),
        seat_mm=900.0,
        repetition_s=2.0,
        not_measured=("object", "eyes_follow"),
    ),
)
