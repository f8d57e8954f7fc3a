"""Every word that a patient reads, by key, through Qt's translation.

The tracker speaks in keys (event codes, reasons, findings, exercise ids); the
words for them are here and nowhere else. Plain words, second person, short
sentences, verbs on buttons.
"""

from __future__ import annotations

import re
from collections.abc import Iterable

from PySide6.QtCore import QT_TRANSLATE_NOOP, QCoreApplication, QLocale, Qt

from ui.desk_words import DESK_WORDS
from ui.editor_words import EDITOR_WORDS
from ui.exercise_words import EXERCISE_WORDS
from ui.figure_words import FIGURE_WORDS
from ui.first_words import FIRST_WORDS
from ui.guide_words import GUIDE_WORDS
from ui.handover_words import HANDOVER_WORDS
from ui.help_words import HELP_WORDS
from ui.manner_words import MANNER_WORDS
from ui.planned_words import PLANNED_WORDS
from ui.safety_words import SAFETY_WORDS
from ui.sentences import Sentences
from ui.setup_words import SETUP_WORDS
from ui.share_words import SHARE_WORDS
from ui.sheet_words import SHEET_WORDS
from ui.summary_words import SUMMARY_WORDS
from ui.told_words import TOLD_WORDS
from ui.tools_words import TOOLS_WORDS
from ui.voice_words import VOICE_WORDS
from ui.weekly_words import WEEKLY_WORDS

CONTEXT = "turnpost"

WORDS: dict[str, object] = {
    "program": QT_TRANSLATE_NOOP("turnpost", "Turnpost"),
    # header
    "camera_on": QT_TRANSLATE_NOOP("turnpost", "Camera on"),
    "camera_off": QT_TRANSLATE_NOOP("turnpost", "Camera off"),
    "camera_on.short": QT_TRANSLATE_NOOP("turnpost", "Cam. on"),
    "camera_off.short": QT_TRANSLATE_NOOP("turnpost", "Cam. off"),
    "clip_on.short": QT_TRANSLATE_NOOP("turnpost", "Sample"),
    "clip_on": QT_TRANSLATE_NOOP("turnpost", "Sample clip, no camera"),
    "text_smaller": QT_TRANSLATE_NOOP("turnpost", "Smaller text"),
    "text_larger": QT_TRANSLATE_NOOP("turnpost", "Larger text"),
    "switch_colours": QT_TRANSLATE_NOOP("turnpost", "Light or dark"),
    # between the parts of a line
    "comma": QT_TRANSLATE_NOOP("turnpost", ","),
    "read_on": QT_TRANSLATE_NOOP("turnpost", "Read on ↓"),
    # welcome
    "welcome.title": QT_TRANSLATE_NOOP("turnpost", "Time for your exercises"),
    "welcome.what": QT_TRANSLATE_NOOP(
        "turnpost",
        "Turnpost watches through the camera while you do the exercises that your therapist "
        "has given you. It counts, keeps the beat, and tells you when something is off.",
    ),
    "welcome.what_demo": QT_TRANSLATE_NOOP(
        "turnpost",
        "A short sample clip takes the place of the camera. You see what a person at home "
        "would see: the set-up, an exercise, and the summary.",
    ),
    "welcome.safe": QT_TRANSLATE_NOOP("turnpost", "Before you begin"),
    "caution.therapist": QT_TRANSLATE_NOOP(
        "turnpost",
        "Do only what your therapist has told you. Turnpost does not find out what you have "
        "and does not choose your treatment.",
    ),
    "caution.fall": QT_TRANSLATE_NOOP(
        "turnpost", "Sit on a firm chair. To stand, have a corner or a helper within reach."
    ),
    "caution.stop": QT_TRANSLATE_NOOP(
        "turnpost",
        "Some dizziness is expected. Stop and sit when you feel unwell, are in pain, or the "
        "dizziness does not settle.",
    ),
    "caution.help": QT_TRANSLATE_NOOP(
        "turnpost",
        "Call for emergency help at once for a sudden bad headache, double vision, trouble "
        "speaking or swallowing, weakness or numbness, not being able to stand or walk, fainting, "
        "chest pain, or sudden loss of hearing.",
    ),
    "privacy": QT_TRANSLATE_NOOP(
        "turnpost",
        "No picture is stored. Nothing leaves this computer. Your results are files in your own "
        "folder, and you can delete them.",
    ),
    # sessions that broke off, and a second copy of the program
    "recover.one": QT_TRANSLATE_NOOP(
        "turnpost",
        "Your session of {when} broke off before its end. What you did until then is kept. "
        "Repetitions: {count}.",
    ),
    "recover.many": QT_TRANSLATE_NOOP(
        "turnpost",
        "{n} of your sessions broke off before their end. What you did until then is kept. "
        "Repetitions in all: {count}.",
    ),
    "recover.save": QT_TRANSLATE_NOOP("turnpost", "Save what I did"),
    "recover.later": QT_TRANSLATE_NOOP("turnpost", "Ask me next time"),
    "recover.read": QT_TRANSLATE_NOOP("turnpost", "Good"),
    "recover.saving": QT_TRANSLATE_NOOP("turnpost", "Saving what you did ..."),
    "recover.saved": QT_TRANSLATE_NOOP(
        "turnpost", "Saved, and marked as broken off. It is in {folder}"
    ),
    "recover.failed": QT_TRANSLATE_NOOP(
        "turnpost",
        "Some of it could not be saved: {why}. It stays where it is, and Turnpost asks again "
        "next time.",
    ),
    "second.title": QT_TRANSLATE_NOOP("turnpost", "Turnpost is open already"),
    "second.what": QT_TRANSLATE_NOOP(
        "turnpost", "Look for its other window and go on there. Nothing is lost."
    ),
    "second.close": QT_TRANSLATE_NOOP("turnpost", "Close this note"),
    "welcome.start": QT_TRANSLATE_NOOP("turnpost", "Turn on the camera"),
    "welcome.start_demo": QT_TRANSLATE_NOOP("turnpost", "Start the sample"),
    # camera
    "camera.title": QT_TRANSLATE_NOOP("turnpost", "Can the camera see you?"),
    "camera.choose": QT_TRANSLATE_NOOP("turnpost", "Camera"),
    "camera.picture": QT_TRANSLATE_NOOP("turnpost", "You, as in a mirror"),
    "camera.next": QT_TRANSLATE_NOOP("turnpost", "Start the set-up"),
    "camera.default": QT_TRANSLATE_NOOP("turnpost", "First camera found"),
    "verdict.opening": QT_TRANSLATE_NOOP(
        "turnpost", "Getting the camera ready. This can take half a minute."
    ),
    "verdict.good": QT_TRANSLATE_NOOP("turnpost", "Good. Your face is well lit and near enough."),
    "verdict.no_face": QT_TRANSLATE_NOOP(
        "turnpost", "Your face is not in the picture. Face the screen, in front of its camera."
    ),
    "verdict.dark": QT_TRANSLATE_NOOP("turnpost", "It is dark. Put more light in front of you."),
    "verdict.bright": QT_TRANSLATE_NOOP(
        "turnpost", "It is too bright. Turn the light a little aside."
    ),
    "verdict.far": QT_TRANSLATE_NOOP("turnpost", "You are far away. Come a hand closer."),
    "verdict.near": QT_TRANSLATE_NOOP("turnpost", "You are very near. Move back by a hand."),
    # trouble with the camera: what it is, and what to do; "retry" where a button tries again
    "trouble.no_camera": QT_TRANSLATE_NOOP("turnpost", "No camera was found."),
    "trouble.no_camera.do": QT_TRANSLATE_NOOP(
        "turnpost", "Plug a camera in, or open its cover or switch."
    ),
    "trouble.no_camera.do.retry": QT_TRANSLATE_NOOP(
        "turnpost", "Plug a camera in, or open its cover or switch, then try again."
    ),
    "trouble.busy": QT_TRANSLATE_NOOP("turnpost", "Another program is using the camera."),
    "trouble.busy.do": QT_TRANSLATE_NOOP(
        "turnpost",
        "Close the other program. In a video call, switch your video off there and share this "
        "window. To stand you then need a helper in the room, or a second device that shows you.",
    ),
    "trouble.perhaps_busy": QT_TRANSLATE_NOOP(
        "turnpost", "The camera gives no picture. Perhaps another program is using it."
    ),
    "trouble.perhaps_busy.do": QT_TRANSLATE_NOOP(
        "turnpost",
        "Close the other program. In a call, switch your video off there and share this window. "
        "To stand you then need a helper, or a second device. If it is not that, open the "
        "camera's cover, or allow it under Privacy.",
    ),
    "trouble.perhaps_forbidden": QT_TRANSLATE_NOOP(
        "turnpost", "The camera gives no picture. Perhaps Turnpost may not use it."
    ),
    "trouble.perhaps_forbidden.do": QT_TRANSLATE_NOOP(
        "turnpost",
        "Allow the camera in the settings under Privacy. If it is allowed, open its cover, or "
        "close other programs.",
    ),
    "trouble.no_permission": QT_TRANSLATE_NOOP("turnpost", "Turnpost may not use the camera."),
    "trouble.no_permission.do": QT_TRANSLATE_NOOP(
        "turnpost", "Allow the camera in the settings of your computer under Privacy."
    ),
    "trouble.no_permission.do.retry": QT_TRANSLATE_NOOP(
        "turnpost",
        "Allow the camera in the settings of your computer under Privacy, then try again.",
    ),
    "trouble.unplugged": QT_TRANSLATE_NOOP("turnpost", "The camera has been unplugged."),
    "trouble.unplugged.do": QT_TRANSLATE_NOOP("turnpost", "Plug it in again."),
    "trouble.unplugged.do.retry": QT_TRANSLATE_NOOP(
        "turnpost", "Plug it in again, then try again."
    ),
    "trouble.hanging": QT_TRANSLATE_NOOP("turnpost", "The camera does not answer."),
    "trouble.hanging.do": QT_TRANSLATE_NOOP(
        "turnpost", "Wait a moment. If nothing comes, unplug it or restart the computer."
    ),
    "trouble.failed": QT_TRANSLATE_NOOP("turnpost", "The camera can't be used."),
    "trouble.failed.do": QT_TRANSLATE_NOOP(
        "turnpost", 'If it stays so, run "turnpost doctor" with a helper.'
    ),
    "trouble.failed.do.retry": QT_TRANSLATE_NOOP(
        "turnpost", 'Try again. If it stays so, run "turnpost doctor" with a helper.'
    ),
    "trouble.retry": QT_TRANSLATE_NOOP("turnpost", "Try again"),
    "trouble.demo": QT_TRANSLATE_NOOP("turnpost", "Use the sample clip"),
    "trouble.back": QT_TRANSLATE_NOOP("turnpost", "Back"),
    # set-up
    "setup.title": QT_TRANSLATE_NOOP("turnpost", "Set-up"),
    "setup.ready": QT_TRANSLATE_NOOP("turnpost", "Getting ready ..."),
    "setup.soon": QT_TRANSLATE_NOOP("turnpost", "Next: {what}"),
    "setup.rest": QT_TRANSLATE_NOOP("turnpost", "Keep still and look at the target."),
    "setup.look": QT_TRANSLATE_NOOP(
        "turnpost", "Follow the target with your eyes. Keep your head still."
    ),
    "setup.turn_slowly": QT_TRANSLATE_NOOP(
        "turnpost", "Turn your head slowly right, then left. Keep your eyes on the target."
    ),
    "setup.nod_slowly": QT_TRANSLATE_NOOP(
        "turnpost", "Nod slowly up, then down. Keep your eyes on the target."
    ),
    "setup.turn_slowly.plus": QT_TRANSLATE_NOOP("turnpost", "slowly to the right"),
    "setup.far_enough": QT_TRANSLATE_NOOP("turnpost", "far enough"),
    "setup.turn_slowly.back": QT_TRANSLATE_NOOP("turnpost", "back to the middle"),
    "setup.turn_slowly.minus": QT_TRANSLATE_NOOP("turnpost", "slowly to the left"),
    "setup.nod_slowly.plus": QT_TRANSLATE_NOOP("turnpost", "slowly up"),
    "setup.nod_slowly.back": QT_TRANSLATE_NOOP("turnpost", "back to the middle"),
    "setup.nod_slowly.minus": QT_TRANSLATE_NOOP("turnpost", "slowly down"),
    "setup.fitting": QT_TRANSLATE_NOOP("turnpost", "Thank you. Working out your measures ..."),
    "setup.fitting_wait": QT_TRANSLATE_NOOP(
        "turnpost", "This takes a few seconds. Rest your eyes."
    ),
    "setup.stop": QT_TRANSLATE_NOOP("turnpost", "Stop"),
    "setup.progress": QT_TRANSLATE_NOOP("turnpost", "Set-up, part {part} of {parts}"),
    "setup.failed": QT_TRANSLATE_NOOP("turnpost", "The set-up did not work."),
    "setup.again": QT_TRANSLATE_NOOP("turnpost", "Repeat the set-up"),
    "setup.shortened": QT_TRANSLATE_NOOP("turnpost", "Set-up done."),
    "finding.gaze_not_fitted": QT_TRANSLATE_NOOP(
        "turnpost",
        "Your eyes could not be followed well enough. Your head is measured, your gaze is not.",
    ),
    "finding.coarse_picture": QT_TRANSLATE_NOOP(
        "turnpost",
        "Your face can not be seen well while it moves. The numbers may be rough.",
    ),
    "finding.other": QT_TRANSLATE_NOOP(
        "turnpost", "The set-up has a weakness ({key}). Numbers may be rough."
    ),
    "finding.repeat_hint": QT_TRANSLATE_NOOP(
        "turnpost", "Repeat the set-up with more light if you can."
    ),
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
    "reason.frame_rate_too_low": QT_TRANSLATE_NOOP("turnpost", "the camera is too slow"),
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
    "demo.cannot_pause": QT_TRANSLATE_NOOP("turnpost", "The sample clip can't be paused."),
    "close.saving": QT_TRANSLATE_NOOP("turnpost", "Saving ..."),
    **EXERCISE_WORDS,
    **MANNER_WORDS,
    **FIGURE_WORDS,
    **FIRST_WORDS,
    **SAFETY_WORDS,
    **PLANNED_WORDS,
    **VOICE_WORDS,
    **WEEKLY_WORDS,
    **SHARE_WORDS,
    **TOOLS_WORDS,
    **HELP_WORDS,
    **HANDOVER_WORDS,
    **DESK_WORDS,
    **TOLD_WORDS,
    **GUIDE_WORDS,
    **EDITOR_WORDS,
    **SHEET_WORDS,
    **SETUP_WORDS,
    **SUMMARY_WORDS,
}


def has(key: str) -> bool:
    """Whether there are words for a key."""
    return key in WORDS


def say(key: str, /, **values: object) -> str:
    """The words for a key, in the user's language, with the values filled in.

    The same English may need other words elsewhere: the key tells the translation which.
    Whole numbers are written as the language does.
    """
    text = in_digits(QCoreApplication.translate(CONTEXT, str(WORDS[key]), key))
    if not values:
        return text
    return text.format(**{k: number(v) if type(v) is int else v for k, v in values.items()})


def times(count: float) -> str:
    """How often, in words."""
    if count == 1:
        return say("ask.dose.once")
    return say("ask.dose.repetitions", count=number(count))


def say_or(key: str, other: str, /, **values: object) -> str:
    """The words for a key, or those for another where there are none."""
    return say(key, **values) if key in WORDS else say(other, **values)


_TOLD = Sentences({key: str(text) for key, text in TOLD_WORDS.items()})


def told(text: str) -> str:
    """A sentence that came in English, in the user's language; an unknown one as it came.

    Paths and names in it keep their own order among words that are read from the right.
    """
    found = _TOLD.find(text)
    if found is None:
        return text
    key, fields = found
    return say(key, **{k: int(v) if v.isdecimal() else _as_it_is(v) for k, v in fields.items()})


def _as_it_is(value: str) -> str:
    """A value in a sentence: Latin letters with signs among them would fall apart in Arabic."""
    return apart(value) if re.search(r"[A-Za-z]", value) else value


def sentence(text: str) -> str:
    """A text that stands by itself: with a large first letter, and a stop at its end."""
    end = "" if text[-1:] in (".", "!", "?", "؟", "") else "."
    return f"{text[:1].upper()}{text[1:]}{end}"


def from_right() -> bool:
    """Whether the language is read from right to left."""
    return QLocale().textDirection() == Qt.LayoutDirection.RightToLeft


def apart(text: str) -> str:
    """A text that keeps its own order among words that are read from the right."""
    return f"\u2066{text}\u2069" if from_right() else text


def row_of(parts: Iterable[str]) -> str:
    """Parts of a line, with the language's comma between them."""
    return f"{say('comma')} ".join(parts)


def reason(key: str) -> str:
    """Why something is not measured, in words."""
    return say_or(f"reason.{key}", "reason.other")


def in_digits(text: str) -> str:
    """A text with its digits as the user's country writes them; those of F4 or A4 stay."""
    zero = QLocale().zeroDigit()
    if zero == "0":
        return text
    put = str.maketrans("0123456789", "".join(chr(ord(zero) + d) for d in range(10)))
    return re.sub(r"(?<![A-Za-z0-9])[0-9]+", lambda run: run[0].translate(put), text)


def number(value: float, decimals: int = 0) -> str:
    """A number as the user's country writes it."""
    return QLocale().toString(float(value), "f", decimals)
