"""The words of how a set-up came out."""

from __future__ import annotations

from PySide6.QtCore import QT_TRANSLATE_NOOP

SETUP_WORDS: dict[str, object] = {
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
    "setup.told": QT_TRANSLATE_NOOP("turnpost", "The set-up is done. This could be better:"),
    "came.gaze": QT_TRANSLATE_NOOP(
        "turnpost", "Your eyes, checked on {points} points: {off}. {verdict}"
    ),
    "came.gaze.unseen": QT_TRANSLATE_NOOP(
        "turnpost", "Your eyes were not seen on the points that check the set-up."
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
    "came.figures.turn": QT_TRANSLATE_NOOP("turnpost", "turn {right}° right, {left}° left"),
    "came.figures.nod": QT_TRANSLATE_NOOP("turnpost", "nod {up}° up, {down}° down"),
}
