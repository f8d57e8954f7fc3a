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
    "share.tempo_now": QT_TRANSLATE_NOOP("turnpost", "now: {tempo} a minute"),
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
    "call.slower": QT_TRANSLATE_NOOP("turnpost", "Slower (F5)"),
    "call.faster": QT_TRANSLATE_NOOP("turnpost", "Faster (F6)"),
    "call.smaller": QT_TRANSLATE_NOOP("turnpost", "Smaller (F7)"),
    "call.larger": QT_TRANSLATE_NOOP("turnpost", "Larger (F8)"),
    "call.other_next": QT_TRANSLATE_NOOP("turnpost", "Another one first (F9)"),
    "call.take_back": QT_TRANSLATE_NOOP("turnpost", "Take it back (F10)"),
    "call.mark": QT_TRANSLATE_NOOP("turnpost", "Mark this moment (F2)"),
    "call.marked": QT_TRANSLATE_NOOP("turnpost", "Marked"),
    "call.title": QT_TRANSLATE_NOOP("turnpost", "For your therapist in the call"),
    "call.ask": QT_TRANSLATE_NOOP(
        "turnpost",
        "Only your therapist decides this. Is your therapist in this call now, and do they "
        "ask for the change?",
    ),
    "call.ask.yes": QT_TRANSLATE_NOOP("turnpost", "Yes, my therapist asks for it"),
    "call.ask.no": QT_TRANSLATE_NOOP("turnpost", "No, leave it as it is"),
    "call.coming": QT_TRANSLATE_NOOP("turnpost", "Next: {name}. {what}"),
    "call.amplitude": QT_TRANSLATE_NOOP("turnpost", "{low} to {high} degrees"),
    "call.taken_back": QT_TRANSLATE_NOOP("turnpost", "Taken back."),
    "call.changed.tempo": QT_TRANSLATE_NOOP("turnpost", "Now {tempo} beats a minute."),
    "call.changed.amplitude": QT_TRANSLATE_NOOP("turnpost", "Now {low} to {high} degrees."),
    "call.changed.next": QT_TRANSLATE_NOOP("turnpost", "Now this comes next: {name}."),
    "call.refused.own_pace": QT_TRANSLATE_NOOP("turnpost", "This one has no beat to change."),
    "call.refused.slowest": QT_TRANSLATE_NOOP("turnpost", "The plan allows no slower beat."),
    "call.refused.fastest": QT_TRANSLATE_NOOP("turnpost", "The plan allows no faster beat."),
    "call.refused.no_amplitude": QT_TRANSLATE_NOOP(
        "turnpost", "This one has no degrees to change."
    ),
    "call.refused.marks_on_wall": QT_TRANSLATE_NOOP(
        "turnpost", "The notes on the wall set how far this one goes. They stay where they are."
    ),
    "call.refused.smallest": QT_TRANSLATE_NOOP("turnpost", "The plan allows nothing smaller."),
    "call.refused.largest": QT_TRANSLATE_NOOP("turnpost", "The plan allows nothing larger."),
    "call.refused.screen": QT_TRANSLATE_NOOP(
        "turnpost", "This screen has no room for a larger movement."
    ),
    "call.refused.neck_limit": QT_TRANSLATE_NOOP(
        "turnpost", "The neck limit of the plan allows nothing larger."
    ),
    "call.refused.not_now": QT_TRANSLATE_NOOP("turnpost", "This can be changed between two sets."),
    "call.refused.only_one": QT_TRANSLATE_NOOP("turnpost", "Nothing else can come first."),
    "call.refused.nothing_to_undo": QT_TRANSLATE_NOOP("turnpost", "Nothing to take back."),
    "share.saved": QT_TRANSLATE_NOOP("turnpost", "Saved."),
    "share.not_saved": QT_TRANSLATE_NOOP("turnpost", "Not saved."),
    "share.plan_bad": QT_TRANSLATE_NOOP(
        "turnpost", "This plan can't be used. End the sharing layout to read why."
    ),
}
