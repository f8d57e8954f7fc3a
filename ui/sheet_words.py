"""The words of the patient's printed sheet."""

from __future__ import annotations

from PySide6.QtCore import QT_TRANSLATE_NOOP

SHEET_WORDS: dict[str, object] = {
    "sheet.language": QT_TRANSLATE_NOOP("turnpost", "en"),
    "sheet.page": QT_TRANSLATE_NOOP("turnpost", "Page {number} of {pages}"),
    "sheet.title": QT_TRANSLATE_NOOP("turnpost", "Your exercises at home"),
    "sheet.for": QT_TRANSLATE_NOOP("turnpost", "For {person}, week {week}"),
    "sheet.for_nobody": QT_TRANSLATE_NOOP("turnpost", "Week {week}"),
    "sheet.foot": QT_TRANSLATE_NOOP("turnpost", "Plan {plan}, week {week}"),
    "sheet.words": QT_TRANSLATE_NOOP("turnpost", "From your therapist"),
    "sheet.often": QT_TRANSLATE_NOOP("turnpost", "{bouts}, {days}. {rest}"),
    "sheet.bouts": QT_TRANSLATE_NOOP("turnpost", "Practise {n} times a day"),
    "sheet.bouts.one": QT_TRANSLATE_NOOP("turnpost", "Practise once a day"),
    "sheet.days": QT_TRANSLATE_NOOP("turnpost", "on {n} days a week"),
    "sheet.days.all": QT_TRANSLATE_NOOP("turnpost", "every day"),
    "sheet.rest": QT_TRANSLATE_NOOP("turnpost", "Rest for {seconds} seconds after each exercise."),
    "sheet.exercises": QT_TRANSLATE_NOOP("turnpost", "Exercises"),
    "sheet.tempo": QT_TRANSLATE_NOOP("turnpost", "{tempo} moves a minute"),
    "sheet.tempo.changes": QT_TRANSLATE_NOOP(
        "turnpost", "first {low} moves a minute, at the end {high}"
    ),
    "sheet.own_pace": QT_TRANSLATE_NOOP("turnpost", "at your own pace"),
    "sheet.support.corner_and_chair": QT_TRANSLATE_NOOP(
        "turnpost", "Stand with a corner behind you and a firm chair in front."
    ),
    "sheet.support.helper": QT_TRANSLATE_NOOP("turnpost", "Only with a helper who can reach you."),
    "sheet.emergency": QT_TRANSLATE_NOOP("turnpost", "Call {number} at once if this is new:"),
    "sheet.emergency.no_number": QT_TRANSLATE_NOOP(
        "turnpost", "Call for emergency help at once if this is new:"
    ),
    "sheet.call": QT_TRANSLATE_NOOP(
        "turnpost", "Do not practise, and call your therapist first, if:"
    ),
    "sheet.stop": QT_TRANSLATE_NOOP("turnpost", "Stop for today when:"),
    "sheet.stop.score": QT_TRANSLATE_NOOP(
        "turnpost",
        "You are dizzier than {most} of 10. None at all is 0. As bad as it can be is 10.",
    ),
    "sheet.stop.settle": QT_TRANSLATE_NOOP(
        "turnpost", "After an exercise it does not settle within {minutes} minutes."
    ),
    "sheet.stop.spin": QT_TRANSLATE_NOOP(
        "turnpost", "{what}. Hold on, sit still until it is over, and tell your therapist."
    ),
    "sheet.stop.unwell": QT_TRANSLATE_NOOP("turnpost", "You feel unwell in any other way."),
    "sheet.later": QT_TRANSLATE_NOOP("turnpost", "Later, when your therapist says so:"),
    "sheet.picture": QT_TRANSLATE_NOOP("turnpost", "Drawing: {name}"),
}
