"""Eyes and head, sitting."""

from __future__ import annotations

from tracker.exercises.catalogue import sources as src
from tracker.exercises.catalogue.model import Exercise, watch

#: 15-20 degrees to each side in yaw, 10-15 in pitch, 60 beats a minute: common practice.
YAW_DEG = (15.0, 20.0)
PITCH_DEG = (10.0, 15.0)
BEATS = 60.0
#: Two fifths: 3 of 8 degrees, "small at first" and still beyond what is counted (common practice).
SMALL_FIRST = 0.4

EYES_ONLY_NOTE = (
    "the guideline advises against eye movements with a still head as gaze stabilisation "
    f"({src.GUIDELINE}); say what this one is for"
)

_EYES = watch("head_moved", "eyes_closed", "too_slow", "too_fast", "not_measured")
_JUMPS = (*_EYES, *watch("gaze_short"))
_HEAD = watch("too_small", "too_large", "too_slow", "too_fast", "not_measured")
_TOGETHER = (*watch("eyes_not_with_head", "eyes_opened"), *_HEAD)
_HEAD_ON_TARGET = (*watch("gaze_off_target", "eyes_closed"), *_HEAD)
_EYES_SOURCES = {"dose": src.TWENTY_EACH, "tempo_bpm": src.COMMON}
_HEAD_SOURCES = {**_EYES_SOURCES, "amplitude_deg": src.HEAD_RANGE}

EXERCISES: tuple[Exercise, ...] = (
    Exercise(
        "eyes-up-down",
        "eye_pitch",
        _EYES,
        therapist="Vertical saccades between two targets, small at first, head still",
        cautions=("settle",),
        sources={**_EYES_SOURCES, "begins_with": src.COMMON},
        dose_repetitions=20,
        begins_with=SMALL_FIRST,
        tempo_bpm=BEATS,
        needs=("face", "eyes"),
        looks_at=True,
        head_still=True,
        asks_note=EYES_ONLY_NOTE,
        not_measured=("reach_vertical", "gaze_short", "peak_speed_of_eyes"),
    ),
    Exercise(
        "eyes-side-to-side",
        "eye_yaw",
        _JUMPS,
        therapist="Horizontal saccades between two targets, head still",
        cautions=("settle",),
        sources=_EYES_SOURCES,
        dose_repetitions=20,
        tempo_bpm=BEATS,
        needs=("face", "eyes"),
        looks_at=True,
        head_still=True,
        asks_note=EYES_ONLY_NOTE,
        not_measured=("peak_speed_of_eyes",),
    ),
    Exercise(
        "nods-on-target",
        "head_pitch",
        _HEAD_ON_TARGET,
        therapist="x1 viewing, pitch: the head nods, the eyes stay on a still target",
        cautions=("settle", "neck", "blur"),
        sources=_HEAD_SOURCES,
        dose_repetitions=20,
        amplitude_deg=PITCH_DEG,
        tempo_bpm=BEATS,
        needs=("face", "eyes"),
        on_target=True,
        gaze_minutes=True,
        not_measured=("blur_of_target",),
    ),
    Exercise(
        "turns-on-target",
        "head_yaw",
        _HEAD_ON_TARGET,
        therapist="x1 viewing, yaw: the head turns, the eyes stay on a still target",
        cautions=("settle", "neck", "blur"),
        sources=_HEAD_SOURCES,
        dose_repetitions=20,
        amplitude_deg=YAW_DEG,
        tempo_bpm=BEATS,
        needs=("face", "eyes"),
        on_target=True,
        gaze_minutes=True,
        not_measured=("blur_of_target",),
    ),
    Exercise(
        "nods-together",
        "head_pitch",
        _TOGETHER,
        therapist="Active head pitch with the gaze following (habituation)",
        cautions=("settle", "neck"),
        sources=_HEAD_SOURCES,
        dose_repetitions=20,
        amplitude_deg=PITCH_DEG,
        tempo_bpm=BEATS,
        needs=("face", "eyes"),
    ),
    Exercise(
        "turns-together",
        "head_yaw",
        _TOGETHER,
        therapist="Active head yaw with the gaze following (habituation)",
        cautions=("settle", "neck"),
        sources=_HEAD_SOURCES,
        dose_repetitions=20,
        amplitude_deg=YAW_DEG,
        tempo_bpm=BEATS,
        needs=("face", "eyes"),
    ),
    Exercise(
        "near-far",
        "eye_vergence",
        watch("head_moved", "eyes_closed", "not_measured"),
        therapist="Slow vergence with a fingertip, arm's length to 30 cm, head still",
        cautions=("settle", "double"),
        sources={"dose": src.FINGER_DISTANCE, "seat_mm": src.ARM_FREE},
        dose_repetitions=20,
        seat_mm=1000.0,
        needs=("face", "eyes", "body"),
        head_still=True,
        asks_note=EYES_ONLY_NOTE,
        repetition_s=6.0,
        not_measured=("hand_place", "double_image"),
    ),
)
