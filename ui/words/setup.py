"""The words of the set-up: its steps, and how it came out."""

from __future__ import annotations

from PySide6.QtCore import QT_TRANSLATE_NOOP

SETUP_WORDS: dict[str, object] = {
    # its steps
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
    "setup.look.note": QT_TRANSLATE_NOOP(
        "turnpost", "Look at the note on the wall. Keep your head still."
    ),
    "setup.look.right": QT_TRANSLATE_NOOP(
        "turnpost", "Look at the right note on the wall. Keep your head still."
    ),
    "setup.look.left": QT_TRANSLATE_NOOP(
        "turnpost", "Look at the left note on the wall. Keep your head still."
    ),
    "setup.look.upper": QT_TRANSLATE_NOOP(
        "turnpost", "Look at the upper note on the wall. Keep your head still."
    ),
    "setup.look.lower": QT_TRANSLATE_NOOP(
        "turnpost", "Look at the lower note on the wall. Keep your head still."
    ),
    # how it came out
    "setup.told": QT_TRANSLATE_NOOP("turnpost", "The set-up is done. This could be better:"),
    "came.gaze": QT_TRANSLATE_NOOP(
        "turnpost", "Your eyes, checked on {points} points: {off}. {verdict}"
    ),
    "came.gaze.unseen": QT_TRANSLATE_NOOP(
        "turnpost", "Your eyes were not seen on the points that check the set-up."
    ),
    "came.wall": QT_TRANSLATE_NOOP("turnpost", "Your eyes, checked at the wall: {off}. {verdict}"),
    "came.wall.one": QT_TRANSLATE_NOOP(
        "turnpost", "At one of the two notes on the wall your eyes were not seen."
    ),
    "came.wall.unseen": QT_TRANSLATE_NOOP(
        "turnpost", "Looking at the wall, your eyes were not seen."
    ),
    "came.off.half": QT_TRANSLATE_NOOP("turnpost", "about half a degree off"),
    "came.off.one": QT_TRANSLATE_NOOP("turnpost", "about one degree off"),
    "came.off.more": QT_TRANSLATE_NOOP("turnpost", "about {degrees} degrees off"),
    "came.verdict.good": QT_TRANSLATE_NOOP("turnpost", "That is good."),
    "came.verdict.fair": QT_TRANSLATE_NOOP(
        "turnpost", "That will do: only larger looks away are noticed."
    ),
    "came.verdict.poor": QT_TRANSLATE_NOOP(
        "turnpost", "That is too far off: whether your eyes stay on the target is not judged."
    ),
    "came.reach": QT_TRANSLATE_NOOP("turnpost", "Your head went far enough to every side."),
    "came.short.right": QT_TRANSLATE_NOOP(
        "turnpost", "To the right your head went {went}°, the exercises need {asked}°."
    ),
    "came.short.left": QT_TRANSLATE_NOOP(
        "turnpost", "To the left your head went {went}°, the exercises need {asked}°."
    ),
    "came.short.up": QT_TRANSLATE_NOOP(
        "turnpost", "Upwards your head went {went}°, the exercises need {asked}°."
    ),
    "came.short.down": QT_TRANSLATE_NOOP(
        "turnpost", "Downwards your head went {went}°, the exercises need {asked}°."
    ),
    "came.short.why": QT_TRANSLATE_NOOP(
        "turnpost",
        "Farther out your eyes may not be judged. Turn farther only if that is comfortable.",
    ),
    "came.figures": QT_TRANSLATE_NOOP("turnpost", "For your therapist: {figures}"),
    "came.figures.gaze": QT_TRANSLATE_NOOP("turnpost", "gaze {degrees}° off"),
    "came.figures.wall": QT_TRANSLATE_NOOP("turnpost", "at the wall {degrees}° off"),
    "came.figures.turn": QT_TRANSLATE_NOOP("turnpost", "turn {right}° right, {left}° left"),
    "came.figures.nod": QT_TRANSLATE_NOOP("turnpost", "nod {up}° up, {down}° down"),
    "came.title": QT_TRANSLATE_NOOP("turnpost", "How the set-up came out"),
    "came.open": QT_TRANSLATE_NOOP("turnpost", "See each step"),
    "came.part.rest": QT_TRANSLATE_NOOP("turnpost", "Keeping still"),
    "came.part.looks": QT_TRANSLATE_NOOP("turnpost", "Looking at points"),
    "came.part.check": QT_TRANSLATE_NOOP("turnpost", "Checking your eyes"),
    "came.part.turn": QT_TRANSLATE_NOOP("turnpost", "Turning the head"),
    "came.part.nod": QT_TRANSLATE_NOOP("turnpost", "Nodding"),
    "came.part.mark": QT_TRANSLATE_NOOP("turnpost", "Mark on the wall"),
    "came.part.unseen": QT_TRANSLATE_NOOP(
        "turnpost", "Your face was seen in only {percent} % of it."
    ),
    "came.part.still": QT_TRANSLATE_NOOP("turnpost", "Your head stayed still."),
    "came.part.moved": QT_TRANSLATE_NOOP("turnpost", "Your head moved by about {degrees}°."),
    "came.part.missed": QT_TRANSLATE_NOOP(
        "turnpost", "On {count} of {points} points your face was not seen."
    ),
    "came.part.eyes_unseen": QT_TRANSLATE_NOOP("turnpost", "Your eyes were not seen."),
    "came.part.read": QT_TRANSLATE_NOOP("turnpost", "Your eyes on these points: {off}. {verdict}"),
    "came.part.turn.far": QT_TRANSLATE_NOOP("turnpost", "{plus}° to the right, {minus}° left."),
    "came.part.nod.far": QT_TRANSLATE_NOOP("turnpost", "{plus}° up, {minus}° down."),
    "came.part.enough": QT_TRANSLATE_NOOP("turnpost", "That is far enough."),
    "came.part.need": QT_TRANSLATE_NOOP("turnpost", "Your exercises need {asked}°."),
    "came.mark": QT_TRANSLATE_NOOP(
        "turnpost", "The camera read {measured}°, the tape says {expected}°: {off}."
    ),
    "came.mark.none": QT_TRANSLATE_NOOP("turnpost", "Not done with this set-up."),
    "came.mark.do": QT_TRANSLATE_NOOP("turnpost", "Do the check"),
    "came.mark.again": QT_TRANSLATE_NOOP("turnpost", "Do the check again"),
    # one step again
    "part.seen": QT_TRANSLATE_NOOP("turnpost", "{part}: seen well."),
    "part.unseen": QT_TRANSLATE_NOOP("turnpost", "{part}: your face was often not seen."),
    "part.moved": QT_TRANSLATE_NOOP("turnpost", "{part}: your head moved."),
    "part.short": QT_TRANSLATE_NOOP(
        "turnpost", "{part}: your head went less far than your exercises need."
    ),
    "again.before": QT_TRANSLATE_NOOP("turnpost", "Repeat: {part}"),
    "again.do": QT_TRANSLATE_NOOP("turnpost", "Do this step again"),
    "again.name": QT_TRANSLATE_NOOP("turnpost", "{part}: do this step again"),
    "again.sits": QT_TRANSLATE_NOOP(
        "turnpost",
        "One step can be done again while you sit as before. "
        "If you have moved, repeat the whole set-up.",
    ),
    "again.gone": QT_TRANSLATE_NOOP(
        "turnpost", "Single steps can be done again only right after the set-up."
    ),
    "again.taken": QT_TRANSLATE_NOOP("turnpost", "{part}: the new step is used now."),
    "again.check": QT_TRANSLATE_NOOP("turnpost", "{part}: the newer check counts now."),
    "again.kept.unseen": QT_TRANSLATE_NOOP(
        "turnpost", "{part}: the earlier step is kept. This time your face was hardly seen."
    ),
    "again.kept.moved": QT_TRANSLATE_NOOP(
        "turnpost",
        "{part}: the earlier step is kept. You sit or hold your head differently now. "
        "If you have moved, repeat the whole set-up.",
    ),
    "again.kept.eyes": QT_TRANSLATE_NOOP(
        "turnpost",
        "{part}: the earlier step is kept. With the new one it is harder to tell where you look.",
    ),
    "again.kept.coarse": QT_TRANSLATE_NOOP(
        "turnpost", "{part}: the earlier step is kept. This time your face was seen less well."
    ),
    "again.kept.less_far": QT_TRANSLATE_NOOP(
        "turnpost", "{part}: the earlier step is kept. This time your head went less far."
    ),
    "again.kept.left": QT_TRANSLATE_NOOP(
        "turnpost", "{part}: the earlier step is kept. The new one was not finished."
    ),
    "again.kept.failed": QT_TRANSLATE_NOOP(
        "turnpost", "{part}: the earlier step is kept. The new one could not be used. {why}"
    ),
    # the seat that an exercise asks for
    "seat.about": QT_TRANSLATE_NOOP(
        "turnpost", "You sit about {cm} cm from the screen, give or take {error} cm."
    ),
    "seat.rough": QT_TRANSLATE_NOOP("turnpost", "This is only a rough figure."),
    "seat.back": QT_TRANSLATE_NOOP(
        "turnpost", "Too near for this exercise. Move back by about {cm} cm."
    ),
    "seat.back.hand": QT_TRANSLATE_NOOP(
        "turnpost", "A little near for this exercise. Move back by about the width of your hand."
    ),
    "seat.closer": QT_TRANSLATE_NOOP(
        "turnpost", "Too far for this exercise. Come closer by about {cm} cm."
    ),
    "seat.closer.hand": QT_TRANSLATE_NOOP(
        "turnpost", "A little far for this exercise. Come closer by about the width of your hand."
    ),
    "seat.told": QT_TRANSLATE_NOOP("turnpost", "If you can't move, go on as you sit."),
    "seat.anyway": QT_TRANSLATE_NOOP("turnpost", "Go on as I sit"),
    "seat.done": QT_TRANSLATE_NOOP(
        "turnpost", "Done at about {cm} cm from the screen; {asked} cm were asked for."
    ),
}
