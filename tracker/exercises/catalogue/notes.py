"""Cautions and what isn't measured, by key, in the therapist's words.

The patient's words for the same keys are in the user interface.
"""

from __future__ import annotations

CAUTIONS: dict[str, str] = {
    "settle": "stop when dizziness goes beyond the agreed score or does not settle",
    "neck": "stay within the neck limit; stop at neck pain or a tingling arm",
    "blur": "slow down when the target blurs or jumps",
    "double": "stop where the image doubles, then move the finger back out",
    "shoulder": "no pain in shoulder or neck; keep the movement small at first",
    "bend": "a short spin on bending or tilting ends it: hold on and sit; you read of it first",
    "slide": "firm chair without wheels; feet flat, no reaching beyond the knees at first",
    "chair": "chair against the wall, no wheels",
    "toss": "seated until mastered; a soft object; a dropped one stays on the floor",
    "stand": "corner behind, stable chair in front or a helper; flat closed shoes, or bare feet",
    "steady": "some sway is normal; hands go to the wall or the chair as soon as needed",
    "soft": "helper within arm's reach; a firm cushion that does not slip",
    "walk": "clear lit floor; helper at the side, behind when walking backward",
    "stairs": "hand on the rail, helper one step below, shoes on, eyes open",
    "partner": "partner near and steady on their feet; hand over, do not throw",
    "flashes": "never with photosensitive epilepsy or migraine set off by patterns; "
    "no more than three flashes in any second",
}

NOT_MEASURED: dict[str, str] = {
    "count": "the camera does not count it in this version; it is led and timed",
    "everything": "nothing is measured: led by voice and timed, the patient's own count",
    "reach_vertical": "how far the eyes go up and down (only coarsely)",
    "gaze_short": "eye movements that stop short of the target",
    "peak_speed_of_eyes": "peak speed of an eye jump (beyond a webcam's frame rate)",
    "blur_of_target": "whether the target was clear (asked after the set)",
    "hand_target": "a target held in the hand",
    "gaze_eyes_shut": "where the eyes point behind shut lids (asked when they open)",
    "eyes_opened": "no cue when shut eyes open; the summary gives the share of time shut",
    "small_jumps": "catch-up saccades below 2 degrees, and how fast any of them are",
    "double_image": "double image (asked)",
    "vergence": "how far the eyes turn in",
    "hand_place": "how near the finger really comes (its cycles are counted where the arm is seen)",
    "hand": "the hand, its distance and its side",
    "hands": "the hands",
    "arm": "which arm, unless both wrists are seen in the bend (then it is asked)",
    "shoulder_height": "how high the shoulders really go (their landmarks follow about half)",
    "direction": "the way of the roll, where the width between the shoulders does not tell it",
    "gaze_bent": "gaze while bent",
    "object": "the object itself: the height of a throw is judged from the wrists",
    "eyes_follow": "whether the eyes followed the object (whether the head went along is told)",
    "feet": "the feet and the stance",
    "steadied": "holding on to the wall or the chair (asked)",
    "hip_bend": "bending at the hip",
    "chair": "the chair's height: the table holds for 43 cm and arms crossed only",
}
