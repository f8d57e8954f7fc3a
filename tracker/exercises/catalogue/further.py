"""Exercises of the trade beyond the home programme's own row."""

from __future__ import annotations

from tracker.exercises.catalogue import sources as src
from tracker.exercises.catalogue.gaze import BEATS, EYES_ONLY_NOTE, PITCH_DEG, YAW_DEG
from tracker.exercises.catalogue.model import HEAD_FORWARD, HELD, Exercise, watch

_HEAD = watch("too_small", "too_large", "too_slow", "too_fast", "not_measured")
_X2_SOURCES = {"dose": src.X2_VIEWING, "amplitude_deg": src.HEAD_RANGE, "tempo_bpm": src.COMMON}
_HEAD_SOURCES = {"dose": src.COMMON, "amplitude_deg": src.HEAD_RANGE, "tempo_bpm": src.COMMON}
_ON_FEET = watch("possible_fall", "left_picture", "not_measured", "eyes_closed", "eyes_opened")
#: A turn takes two seconds: time to look first (common practice).
SLOW_BEATS = 30.0
#: A sweep takes three seconds: with the largest swing about half of the pursuit limit (derived from
#: ``PURSUIT_SWING_DEG`` and the limit).
PURSUIT_BEATS = 20.0
_HOLD = (*_ON_FEET, HEAD_FORWARD, *watch("chin_down"))
_CHAIR = watch("possible_fall", "not_measured", "not_upright", "too_small")

GAZE: tuple[Exercise, ...] = (
    Exercise(
        "turns-x2",
        "head_yaw",
        (*watch("gaze_off_target", "eyes_closed", "head_with_target"), *_HEAD),
        therapist="x2 viewing, yaw: the target moves against the head, the eyes stay on it",
        cautions=("settle", "neck", "blur"),
        sources=_X2_SOURCES,
        dose_repetitions=20,
        amplitude_deg=YAW_DEG,
        tempo_bpm=BEATS,
        needs=("face", "eyes"),
        on_target=True,
        target="against",
        gaze_minutes=True,
        not_measured=("blur_of_target", "hand_target"),
    ),
    Exercise(
        "nods-x2",
        "head_pitch",
        (*watch("gaze_off_target", "eyes_closed", "head_with_target"), *_HEAD),
        therapist="x2 viewing, pitch: the target moves against the head, the eyes stay on it",
        cautions=("settle", "neck", "blur"),
        sources=_X2_SOURCES,
        dose_repetitions=20,
        amplitude_deg=PITCH_DEG,
        tempo_bpm=BEATS,
        needs=("face", "eyes"),
        on_target=True,
        target="against",
        gaze_minutes=True,
        not_measured=("blur_of_target", "hand_target"),
    ),
    Exercise(
        "eyes-then-head",
        "head_to_mark",
        (*watch("head_first", "moved_together", "eyes_closed"), *_HEAD),
        therapist="Turning between two targets: the eyes first, then the head",
        cautions=("settle", "neck"),
        sources=_HEAD_SOURCES,
        dose_repetitions=20,
        amplitude_deg=YAW_DEG,
        tempo_bpm=SLOW_BEATS,
        needs=("face", "eyes"),
        looks_at=True,
        target="places",
    ),
    Exercise(
        "remembered-target",
        "head_yaw",
        _HEAD,
        therapist="Remembered target: eyes shut, head turns, eyes kept where the target was",
        cautions=("settle", "neck"),
        sources=_HEAD_SOURCES,
        dose_repetitions=20,
        amplitude_deg=YAW_DEG,
        tempo_bpm=BEATS,
        eyes="closed",
        looks_at=True,
        gaze_minutes=True,
        not_measured=("gaze_eyes_shut", "eyes_opened"),
    ),
    Exercise(
        "follow-slowly",
        "eye_sweep",
        watch("head_moved", "gaze_off_target", "eyes_closed", "not_measured"),
        therapist="Smooth pursuit of a slow target, head still",
        cautions=("settle",),
        sources={"dose": src.COMMON, "tempo_bpm": src.PURSUIT},
        dose_seconds=30.0,
        tempo_bpm=PURSUIT_BEATS,
        needs=("face", "eyes"),
        on_target=True,
        head_still=True,
        target="sweep",
        asks_note=EYES_ONLY_NOTE,
        not_measured=("small_jumps",),
    ),
    Exercise(
        "thumb-together",
        "head_yaw",
        (*watch("eyes_not_with_head"), *_HEAD),
        therapist="Eyes and head together on a thumb held out that moves from side to side",
        cautions=("settle", "neck"),
        sources=_HEAD_SOURCES,
        dose_repetitions=20,
        amplitude_deg=YAW_DEG,
        tempo_bpm=BEATS,
        needs=("face", "eyes"),
        looks_at=True,
        not_measured=("hand",),
    ),
    Exercise(
        "head-tilts",
        "head_roll",
        watch("head_turned", "eyes_closed", "too_large", "not_measured"),
        therapist="Head tilts, ear towards the shoulder, right and left",
        cautions=("settle", "neck", "bend"),
        sources={"dose": src.COMMON},
        dose_repetitions=10,
        repetition_s=6.0,
    ),
    Exercise(
        "near-hold",
        HELD,
        watch("head_moved", "eyes_closed", "not_measured"),
        therapist="Convergence hold on a fingertip, as near as it stays single",
        cautions=("settle", "double"),
        sources={"dose": src.COMMON, "seat_mm": src.ARM_FREE},
        dose_seconds=10.0,
        seat_mm=1000.0,
        head_still=True,
        asks_note=EYES_ONLY_NOTE,
        not_measured=("hand", "vergence", "double_image"),
    ),
    Exercise(
        "moving-background",
        HELD,
        watch("gaze_off_target", "head_moved", "eyes_closed", "not_measured"),
        therapist="Tolerance of a small, slow moving background (optokinetic habituation)",
        cautions=("settle", "flashes"),
        sources={"dose": src.FLASHES},
        dose_seconds=30.0,
        needs=("face", "eyes"),
        on_target=True,
        head_still=True,
        target="background",
        asks_note=(
            "a moving background can bring on strong symptoms and is off unless you want it; "
            "say what it is for"
        ),
        off_by_default=True,
    ),
)

BALANCE: tuple[Exercise, ...] = (
    Exercise(
        "stand-tandem",
        HELD,
        _HOLD,
        therapist="Tandem standing, heel to toe",
        cautions=("stand", "steady"),
        sources={"dose": src.STAGES},
        dose_seconds=10.0,
        posture="standing",
        support="corner_and_chair",
        not_measured=("feet", "steadied"),
    ),
    Exercise(
        "stand-one-leg",
        HELD,
        _HOLD,
        therapist="One-leg standing, each leg in turn",
        cautions=("stand", "steady"),
        sources={"dose": src.STAGES},
        dose_seconds=10.0,
        posture="standing",
        support="corner_and_chair",
        not_measured=("feet", "steadied"),
    ),
    Exercise(
        "chair-stands-five",
        "head_rise",
        _CHAIR,
        therapist="Five-times sit-to-stand: 43 cm chair, arms crossed, as fast as is safe",
        cautions=("settle", "chair", "stand"),
        sources={"dose": src.FIVE_STANDS},
        dose_repetitions=5,
        posture="standing",
        support="corner_and_chair",
        not_measured=("hands", "chair"),
    ),
    Exercise(
        "chair-stands-30-s",
        "head_rise",
        _CHAIR,
        therapist="30-second chair stand: 43 cm chair, arms crossed, as many as is safe",
        cautions=("settle", "chair", "stand"),
        sources={"dose": src.CHAIR_30_S},
        dose_seconds=30.0,
        posture="standing",
        support="corner_and_chair",
        not_measured=("hands", "chair"),
    ),
)
