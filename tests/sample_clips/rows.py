"""The rows of the home programme: for each a clip done well, and one or more done badly.

Rows 1 to 18; the last of the programme (walking, stairs, turning with a partner) is guided
and not measured. Clips of the folder ``sample_clips/scenarios`` that belong to rows are shipped as
films, those of ``body`` and ``eyes`` beside this file are judged from their exact truth
(``test_body_logic.py``), and as films with ``--rows`` (``test_rendered_rows.py``).
"""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Row:
    """One row: its number, its exercise, clips done well and badly, and what is bad in those."""

    number: int
    exercise: str
    well: tuple[str, ...]
    badly: dict[str, str]


ROWS = (
    Row(1, "eyes-up-down", ("up-down-good",), {"up-down-head-helps": "head_moved"}),
    Row(
        2,
        "eyes-side-to-side",
        ("jumps-good", "wall-marks-good"),
        {"jumps-head-helps": "head_moved", "wall-marks-short": "gaze_short"},
    ),
    Row(3, "nods-on-target", ("nods-good",), {"nods-gaze-drops": "gaze_off_target"}),
    Row(
        4,
        "turns-on-target",
        ("turns-good", "wall-turns-good", "standing-mark-good"),
        {
            "turns-gaze-drops": "gaze_off_target",
            "wall-turns-gaze-drops": "gaze_off_target",
            "standing-mark-gaze-drops": "gaze_off_target",
            "turns-looking-down": "gaze_off_target",
            "blinks-and-closed": "eyes_closed",
            "no-face-for-a-while": "not_measured",
        },
    ),
    Row(
        5,
        "nods-together",
        ("nods-together-good",),
        {"nods-together-eyes-stay": "eyes_not_with_head"},
    ),
    Row(
        6,
        "turns-together",
        ("turns-together-good",),
        {"turns-together-eyes-stay": "eyes_not_with_head"},
    ),
    Row(7, "near-far", ("near-far-good",), {"near-far-head-moves": "head_moved"}),
    Row(8, "shoulders-back", ("shoulders-back-good",), {"shoulders-back-chin-down": "head_moved"}),
    Row(
        9,
        "shoulders-forward",
        ("shoulders-forward-good",),
        {"shoulders-forward-chin-down": "head_moved"},
    ),
    Row(10, "floor-reach", ("reach-good",), {"reach-half-up": "not_upright"}),
    Row(11, "sit-to-stand", ("stands-good",), {"stands-half-height": "not_upright"}),
    Row(12, "hand-toss", ("toss-good",), {"toss-low": "throw_low"}),
    Row(13, "stand", ("standing-good",), {"standing-chin-down": "chin_down"}),
    Row(14, "stand", ("eyes-shut-good",), {"eyes-shut-opening": "eyes_opened"}),
    Row(15, "ankle-sway", ("ankles-good",), {"ankles-looking-down": "chin_down"}),
    Row(
        16,
        "stand",
        ("soft-standing-good",),
        {"soft-standing-chin-down": "chin_down", "soft-eyes-shut-opening": "eyes_opened"},
    ),
    Row(17, "stand-head-shake", ("shake-good",), {"shake-eyes-opening": "eyes_opened"}),
    Row(18, "weight-shift", ("shift-good",), {"shift-eyes-shutting": "eyes_closed"}),
)

#: Beyond the rows: targets that move, or what is behind them.
MOVING = (
    Row(0, "turns-x2", ("turns-x2-good",), {"turns-x2-with-target": "head_with_target"}),
    Row(0, "nods-x2", ("nods-x2-good",), {"nods-x2-with-target": "head_with_target"}),
    Row(0, "follow-slowly", ("follow-good",), {"follow-head-helps": "head_moved"}),
    Row(0, "eyes-then-head", ("marks-eyes-first",), {"marks-head-first": "head_first"}),
    Row(
        0,
        "moving-background",
        ("background-good",),
        {"background-looks-away": "gaze_off_target"},
    ),
)

#: Beyond the rows: what else of the catalogue is measured.
FURTHER = (
    Row(0, "remembered-target", ("remembered-good",), {"remembered-small": "too_small"}),
    Row(0, "thumb-together", ("thumb-good",), {"thumb-eyes-stay": "eyes_not_with_head"}),
    Row(
        0,
        "head-tilts",
        ("tilts-good",),
        {"tilts-turned": "head_turned", "tilts-eyes-shutting": "eyes_closed"},
    ),
    Row(0, "near-hold", ("near-hold-good",), {"near-hold-head-moves": "head_moved"}),
    Row(0, "stand-tandem", ("tandem-good",), {"tandem-chin-down": "chin_down"}),
    Row(0, "stand-one-leg", ("one-leg-good",), {"one-leg-eyes-shutting": "eyes_closed"}),
    Row(0, "chair-stands-five", ("five-stands-good",), {"five-stands-half-height": "not_upright"}),
    Row(0, "chair-stands-30-s", ("half-minute-good",), {"half-minute-half-height": "not_upright"}),
)
