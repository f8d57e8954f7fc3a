"""The therapist's words for the keys of a summary.

The patient's words for the same keys are in the user interface.
"""

from __future__ import annotations

ENDED: dict[str, str] = {
    "finished": "finished",
    "stopped": "stopped early",
    "stopped_unwell": "stopped unwell",
    "symptom_rule": "ended by the symptom rule",
    "red_flag": "red-flag answer: no practice",
    "possible_fall": "possible fall",
    "interrupted": "broke off (program or computer)",
}

#: How somebody was after a sudden drop of the head, as asked.
AFTER_DROP: dict[str, str] = {
    "fine": "said to be all right",
    "not_well": "said not to be well",
    "no_answer": "did not answer",
    "closed_unsaid": "closed the question without saying",
    "not_asked": "nobody was asked",
}

#: Safety questions, and other keys of why a session ended.
BECAUSE: dict[str, str] = {
    "day_is_over": "an earlier session of the day had to be ended",
    "severe_headache": "sudden severe headache",
    "double_vision": "double vision",
    "slurred_speech": "slurred speech",
    "weak_or_numb": "weakness or numbness of face, arm or leg",
    "cannot_stand": "unable to stand or walk",
    "blackout": "blackout",
    "chest_pain": "chest pain",
    "hearing_loss": "sudden hearing loss",
    "neck_pain": "neck pain",
    "tingling_arm": "tingling arm",
    "fall": "fall since the last session",
    "fall_weekly": "a fall, told in the question of the week",
    "unlike_usual": "dizziness unlike the usual",
    "positional_spin": "positional spin on bending, looking up or tilting",
    "score_above": "symptom score above the limit of the plan",
    "not_settled": "symptoms not settled within the time of the plan",
    "not_answered": "symptom score not answered",
    **AFTER_DROP,
}

NOT_DONE: dict[str, str] = {
    "no_session": "no practice that day",
    "locked": "not unlocked yet",
    "not_cleared": "clearance checklist not ticked",
    "no_start_score": "no score at the start",
    "high_start": "score too high at the start for more than seated work",
    "no_voice": "neither voice nor reader",
    "no_helper": "no helper",
    "support_not_confirmed": "support not confirmed",
    "moving_target": "its target can only be shown to who sits before the screen",
    "still_screen": "the patient wants nothing to move on the screen",
    "small_screen": "its target had too little room on the screen for anything to be counted",
    "not_in_place": "left out by the patient",
    "no_camera": "left out by the patient, as no camera could be used",
    "no_marks": "no marks on the wall",
    "session_ended": "session ended before it",
    "no_clip": "no clip of it",
    "saw_double": "seen double in today already",
}

#: With which arm something was reached for, as asked.
ARMS: dict[str, str] = {
    "right": "right",
    "left": "left",
    "both": "both, in turn",
    "not_sure": "not sure",
}

#: Where eyes that had been shut were as they opened, as asked.
LANDED: dict[str, str] = {
    "on": "on the target",
    "beside": "beside the target",
    "not_sure": "not sure",
}

#: How often somebody fell, as asked once a week.
FALLS: dict[str, str] = {"none": "no fall", "once": "one fall", "more": "more than one fall"}

#: What can be changed between two sets of a call.
CHANGES: dict[str, str] = {"tempo": "tempo", "amplitude": "amplitude", "next": "order"}

EVENTS: dict[str, str] = {
    "head_moved": "head moved along",
    "head_turned": "head turned in place of tilting",
    "gaze_off_target": "gaze off target",
    "gaze_short": "eye movement short of the target",
    "eyes_opened": "eyes opened",
    "eyes_closed": "eyes closed",
    "eyes_not_with_head": "eyes not with the head",
    "head_first": "head before the eyes",
    "moved_together": "eyes and head together, not the eyes first",
    "head_with_target": "head with the target, not against it",
    "too_small": "amplitude too small",
    "too_large": "amplitude too large",
    "too_slow": "slower than the beat",
    "too_fast": "faster than the beat",
    "chin_down": "chin down",
    "not_upright": "not fully upright",
    "throw_low": "throw too low",
    "steadied": "held on",
    "left_picture": "left the picture",
    "possible_fall": "possible fall",
    "not_measured": "stretch not measured",
}

#: What is to be looked at first, whatever else happened more often, the gravest first (own choice).
EVENTS_FIRST = ("possible_fall", "steadied", "left_picture", "eyes_opened")

#: Why a stretch was not measured.
REASONS: dict[str, str] = {
    "no_face": "no face in the picture",
    "too_dark": "too dark",
    "too_far": "too far from the camera",
    "turned_too_far": "head turned too far",
    "covered": "face covered, or its light changed",
    "blurred": "picture blurred",
    "gap": "pictures missing",
    "eyes_shut": "eyes shut",
    "eyes_unlike": "eyes unlike those of the set-up",
    "eyes_unlike_around": "eyes unlike those of the set-up around then",
    "gaze_beside": "line of sight steadily beside the target",
    "varifocal": "bi- or varifocal glasses in nods",
    "beyond_setup": "eyes beyond the range of the set-up",
    "cut_off": "the set ended while the head dropped",
    "no_body": "shoulders and hands not all seen",
    "eyes_not_with_finger": "eyes did not follow the finger",
    "no_setup": "no set-up",
    "silent": "no picture from the camera",
    "restarting": "measuring was starting again",
}

SIDES: dict[str, str] = {
    "right": "right",
    "left": "left",
    "up": "up",
    "down": "down",
    "forward": "forward",
    "back": "back",
    "near": "near",
    "far": "far",
}

SUPPORT: dict[str, str] = {
    "none": "none",
    "corner_and_chair": "corner and chair",
    "helper": "helper within reach",
}

PLAIN: dict[str, str] = {
    "none": "none",
    "single": "single vision",
    "varifocal": "bi- or varifocal",
    "both": "both",
    "left": "left eye only",
    "right": "right eye only",
    "default": "usual value",
    "stated": "typed in",
    "paper": "measured with a sheet",
    "card": "measured with a card",
}

FLAGS: dict[str, str] = {
    "journal_damaged": "record damaged",
    "other_exercise": "another exercise was asked for",
    "from_clips": "made from clips",
    "first_try": "a try of the program, not practice",
    "reported": "reported by the patient, not seen",
    "setup_failed": "set-up unusable",
    "no_setup": "no set-up",
    "setup_unknown": "set-up not known",
    "far_turned": "turned farther than the set-up holds",
    "count_lost": "camera gone for some of it",
    "seat_off": "sat at another distance",
    "little_measured": "measured only part of the time",
    "no_body": "shoulders and hands not all seen",
    "eyes_not_with_finger": "eyes did not follow the finger",
    "gaze_not_fitted": "line of sight not fitted",
    "beyond_setup": "eyes beyond the set-up",
    "eyes_unlike": "eyes unlike the set-up",
    "gaze_beside": "line of sight steadily beside the target",
    "low_frame_rate": "low frame rate",
    "dark": "dark",
    "coarse_picture": "picture too coarse",
}

#: What stands behind a figure with a "±": its name, and what it says.
UNCERTAINTY = "Uncertainty, ±"
UNCERTAINTY_SAYS = (
    "k = 2 (some 95 %): noise and times of the pictures, error of the set-up; not the person's "
    "own spread"
)

#: What every document says of itself. The figures of accuracy are those of "How accurate
#: it was, by lot" in DEVELOPERS.md: the worst of 18 rendered clips.
LIMITS: tuple[str, ...] = (
    "Records exercises that a clinician has prescribed; makes no diagnosis.",
    "Measured by webcam. Checked on rendered heads only, not yet on people: on the worst of 18 "
    "clips amplitude was 10 % off, peak speed 17 %, gaze 1.5 degrees.",
)


def word(table: dict[str, str], key: str) -> str:
    """The words for a key; an unknown key stands for itself."""
    return table.get(key, key.replace("_", " "))
