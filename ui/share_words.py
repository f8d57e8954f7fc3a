"""The words of the sharing layout, for the patient and the therapist at the far end."""

from __future__ import annotations

from PySide6.QtCore import QT_TRANSLATE_NOOP

SHARE_WORDS: dict[str, object] = {
    "share.open": QT_TRANSLATE_NOOP("turnpost", "Layout for a video call (F4)"),
    "share.name": QT_TRANSLATE_NOOP("turnpost", "Figures for the call"),
    "share.call": QT_TRANSLATE_NOOP("turnpost", "Call"),
    "share.right": QT_TRANSLATE_NOOP("turnpost", "Right"),
    "share.left": QT_TRANSLATE_NOOP("turnpost", "Left"),
    "share.up": QT_TRANSLATE_NOOP("turnpost", "Up"),
    "share.down": QT_TRANSLATE_NOOP("turnpost", "Down"),
    "share.degrees": QT_TRANSLATE_NOOP("turnpost", "{value} degrees"),
    "share.speed": QT_TRANSLATE_NOOP("turnpost", "{value} a second"),
    "share.of": QT_TRANSLATE_NOOP("turnpost", "of {goal}"),
    "share.done": QT_TRANSLATE_NOOP("turnpost", "done"),
    "share.left_s": QT_TRANSLATE_NOOP("turnpost", "{time} left"),
    "share.tempo": QT_TRANSLATE_NOOP("turnpost", "{tempo} beats a minute"),
    "share.asked": QT_TRANSLATE_NOOP("turnpost", "asked: {what}"),
    "share.before": QT_TRANSLATE_NOOP("turnpost", "Before: {scores}"),
    "share.after": QT_TRANSLATE_NOOP("turnpost", "After the last set: {scores}"),
    "share.no_scores": QT_TRANSLATE_NOOP("turnpost", "Symptoms: not asked yet"),
    "share.score.dizziness": QT_TRANSLATE_NOOP("turnpost", "dizziness {value}"),
    "share.score.nausea": QT_TRANSLATE_NOOP("turnpost", "nausea {value}"),
    "share.score.unsteadiness": QT_TRANSLATE_NOOP("turnpost", "unsteadiness {value}"),
    "share.consent": QT_TRANSLATE_NOOP(
        "turnpost", "Record this call only if everyone in it has agreed."
    ),
    "share.outline": QT_TRANSLATE_NOOP("turnpost", "Outline of your head, as in a mirror"),
    "share.unseen": QT_TRANSLATE_NOOP("turnpost", "not seen"),
    "share.hidden": QT_TRANSLATE_NOOP("turnpost", "No picture while you share"),
    "share.show": QT_TRANSLATE_NOOP("turnpost", "Show outline (P)"),
    "share.hide": QT_TRANSLATE_NOOP("turnpost", "Hide outline (P)"),
    "share.helper": QT_TRANSLATE_NOOP(
        "turnpost",
        "In the call only this window is seen, not you. To stand you need a helper in the room, "
        "or a second device that shows you.",
    ),
    "share.saved": QT_TRANSLATE_NOOP("turnpost", "Saved."),
    "share.not_saved": QT_TRANSLATE_NOOP("turnpost", "Not saved."),
    "share.plan_bad": QT_TRANSLATE_NOOP(
        "turnpost", "This plan can't be used. End the sharing layout to read why."
    ),
}
