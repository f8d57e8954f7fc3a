"""The words of an exercise: choosing it, what stands beside the target, cues, what is missing.

Keys: ``choose.KEY``, ``practice.KEY``, ``field.KEY`` (the target, for screen readers),
``cue.CODE`` (of events) and ``reason.KEY`` (why something is not measured).
"""

from __future__ import annotations

from PySide6.QtCore import QT_TRANSLATE_NOOP

PRACTICE_WORDS: dict[str, object] = {
    # choose
    "choose.title": QT_TRANSLATE_NOOP("turnpost", "Choose an exercise"),
    "choose.ok": QT_TRANSLATE_NOOP(
        "turnpost", "The set-up worked. Choose what your therapist has asked for."
    ),
    "choose.repetitions": QT_TRANSLATE_NOOP("turnpost", "Repetitions"),
    "choose.tempo": QT_TRANSLATE_NOOP("turnpost", "Beats a minute"),
    "choose.target": QT_TRANSLATE_NOOP("turnpost", "Target size"),
    "choose.target_value": QT_TRANSLATE_NOOP("turnpost", "{percent} %"),
    "choose.less": QT_TRANSLATE_NOOP("turnpost", "{what}: less"),
    "choose.none_yet": QT_TRANSLATE_NOOP("turnpost", "?"),
    "choose.more": QT_TRANSLATE_NOOP("turnpost", "{what}: more"),
    "choose.leave": QT_TRANSLATE_NOOP("turnpost", "Leave"),
    "choose.start": QT_TRANSLATE_NOOP("turnpost", "Start exercise"),
    # practice
    "practice.countdown": QT_TRANSLATE_NOOP("turnpost", "Starting in {seconds}"),
    "practice.asked": QT_TRANSLATE_NOOP(
        "turnpost", "{low} to {high} degrees to each side, {tempo} beats a minute"
    ),
    "practice.asked_about": QT_TRANSLATE_NOOP(
        "turnpost", "About {about} degrees to each side, {tempo} beats a minute"
    ),
    "practice.asked_less": QT_TRANSLATE_NOOP(
        "turnpost", "{low} to {high}° (this screen's limit), {tempo} beats a minute"
    ),
    "practice.any_key": QT_TRANSLATE_NOOP("turnpost", "any key stops"),
    "practice.asked_tempo": QT_TRANSLATE_NOOP("turnpost", "{tempo} beats a minute"),
    "practice.of": QT_TRANSLATE_NOOP("turnpost", "{done} of {goal}"),
    "practice.stop": QT_TRANSLATE_NOOP("turnpost", "Stop (Esc)"),
    "practice.stop_name": QT_TRANSLATE_NOOP("turnpost", "Stop at once, key Escape"),
    "practice.double": QT_TRANSLATE_NOOP("turnpost", "I see double (D)"),
    "practice.double_name": QT_TRANSLATE_NOOP("turnpost", "I see double: stop, key D"),
    "practice.pause": QT_TRANSLATE_NOOP("turnpost", "Pause (Space)"),
    "practice.go_on": QT_TRANSLATE_NOOP("turnpost", "Go on (Space)"),
    "practice.paused": QT_TRANSLATE_NOOP("turnpost", "Paused. Rest as long as you like."),
    "practice.picture_show": QT_TRANSLATE_NOOP("turnpost", "Show me (P)"),
    "practice.picture_hide": QT_TRANSLATE_NOOP("turnpost", "Hide me (P)"),
    "practice.not_measured": QT_TRANSLATE_NOOP("turnpost", "Not measured: {reason}"),
    "practice.disk": QT_TRANSLATE_NOOP(
        "turnpost", "The disk takes nothing just now. Carry on: you can save at the end."
    ),
    "practice.busy": QT_TRANSLATE_NOOP(
        "turnpost",
        "This computer is busy and measures fewer pictures. Carry on.",
    ),
    "practice.saving": QT_TRANSLATE_NOOP("turnpost", "Saving your session ..."),
    "field.name": QT_TRANSLATE_NOOP("turnpost", "Target with repetition count"),
    "field.text": QT_TRANSLATE_NOOP(
        "turnpost", "{count} repetitions. Left {left}, right {right}, {tempo} beats a minute."
    ),
    "field.text_up": QT_TRANSLATE_NOOP(
        "turnpost", "{count} repetitions. Down {down}, up {up}, {tempo} beats a minute."
    ),
    "demo.cannot_pause": QT_TRANSLATE_NOOP("turnpost", "The sample clip can't be paused."),
    # cues, by event code: calm, what to do, no blame
    "cue.gaze_off_target": QT_TRANSLATE_NOOP("turnpost", "Eyes on the target"),
    "cue.head_turned": QT_TRANSLATE_NOOP("turnpost", "Ear to the shoulder, nose ahead"),
    "cue.head_moved": QT_TRANSLATE_NOOP("turnpost", "Keep your head still"),
    "cue.gaze_short": QT_TRANSLATE_NOOP("turnpost", "Look all the way to the target"),
    "cue.eyes_closed": QT_TRANSLATE_NOOP("turnpost", "Keep your eyes open"),
    "cue.eyes_opened": QT_TRANSLATE_NOOP("turnpost", "Keep your eyes closed"),
    "cue.eyes_not_with_head": QT_TRANSLATE_NOOP("turnpost", "Let your eyes go with your head"),
    "cue.head_with_target": QT_TRANSLATE_NOOP("turnpost", "Turn the other way than the target"),
    "cue.head_first": QT_TRANSLATE_NOOP("turnpost", "Eyes first, then let your head come"),
    "cue.moved_together": QT_TRANSLATE_NOOP("turnpost", "Nearly: let your eyes get there first"),
    "cue.too_small": QT_TRANSLATE_NOOP("turnpost", "A little bigger"),
    "cue.too_large": QT_TRANSLATE_NOOP("turnpost", "A little smaller"),
    "cue.too_slow": QT_TRANSLATE_NOOP("turnpost", "A little faster"),
    "cue.too_fast": QT_TRANSLATE_NOOP("turnpost", "A little slower"),
    "cue.chin_down": QT_TRANSLATE_NOOP("turnpost", "Chin up a little"),
    "cue.not_upright": QT_TRANSLATE_NOOP("turnpost", "All the way up"),
    "cue.steadied": QT_TRANSLATE_NOOP("turnpost", "Let go when you feel steady"),
    "cue.left_picture": QT_TRANSLATE_NOOP("turnpost", "Come back into the picture"),
    "cue.possible_fall": QT_TRANSLATE_NOOP("turnpost", "Are you all right?"),
    "cue.not_measured": QT_TRANSLATE_NOOP("turnpost", "Not measured just now"),
    "cue.throw_low": QT_TRANSLATE_NOOP("turnpost", "A little higher, above your eyes"),
    # reasons
    "reason.no_face": QT_TRANSLATE_NOOP("turnpost", "your face is not in the picture"),
    "reason.too_dark": QT_TRANSLATE_NOOP("turnpost", "it is too dark"),
    "reason.too_far": QT_TRANSLATE_NOOP("turnpost", "you are too far away"),
    "reason.turned_too_far": QT_TRANSLATE_NOOP("turnpost", "your head is turned too far"),
    "reason.covered": QT_TRANSLATE_NOOP(
        "turnpost", "something covers your face, or the light on it has changed"
    ),
    "reason.blurred": QT_TRANSLATE_NOOP("turnpost", "the picture is blurred"),
    "reason.gap": QT_TRANSLATE_NOOP("turnpost", "pictures are missing"),
    "reason.eyes_shut": QT_TRANSLATE_NOOP("turnpost", "your eyes are shut"),
    "reason.eyes_unlike": QT_TRANSLATE_NOOP(
        "turnpost", "the light on your eyes, or your glasses, changed since the set-up"
    ),
    "reason.eyes_unlike_around": QT_TRANSLATE_NOOP(
        "turnpost", "the light on your eyes, or your glasses, changed since the set-up"
    ),
    "reason.gaze_beside": QT_TRANSLATE_NOOP(
        "turnpost", "your eyes seem to rest beside the target: do the set-up again"
    ),
    "reason.varifocal": QT_TRANSLATE_NOOP("turnpost", "your glasses change as you nod"),
    "reason.beyond_setup": QT_TRANSLATE_NOOP(
        "turnpost", "your eyes went farther to the side than in the set-up"
    ),
    "reason.no_body": QT_TRANSLATE_NOOP("turnpost", "your shoulders and hands are not all seen"),
    "reason.no_setup": QT_TRANSLATE_NOOP("turnpost", "there was no set-up"),
    "reason.silent": QT_TRANSLATE_NOOP("turnpost", "no picture comes from the camera"),
    "reason.restarting": QT_TRANSLATE_NOOP("turnpost", "the measuring is starting again"),
    "reason.other": QT_TRANSLATE_NOOP("turnpost", "there is nothing to measure by"),
}
