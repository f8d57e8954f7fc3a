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
    "sheet.posture.sitting": QT_TRANSLATE_NOOP("turnpost", "Sitting on a firm chair"),
    "sheet.posture.standing": QT_TRANSLATE_NOOP("turnpost", "Standing"),
    "sheet.posture.walking": QT_TRANSLATE_NOOP("turnpost", "Walking"),
    "sheet.posture.chair": QT_TRANSLATE_NOOP("turnpost", "From a firm chair"),
    "sheet.range": QT_TRANSLATE_NOOP("turnpost", "up to {most} degrees to each side"),
    "sheet.range.nod": QT_TRANSLATE_NOOP("turnpost", "up to {most} degrees up and down"),
    "sheet.neck": QT_TRANSLATE_NOOP(
        "turnpost",
        "Your neck: turn or tilt your head {turn} degrees at most to each side. Nod {nod} degrees "
        "at most up and down.",
    ),
    "sheet.own_pace": QT_TRANSLATE_NOOP("turnpost", "at your own pace"),
    "sheet.support.corner_and_chair": QT_TRANSLATE_NOOP(
        "turnpost", "Stand with a corner behind you and a firm chair in front."
    ),
    "sheet.support.helper": QT_TRANSLATE_NOOP(
        "turnpost", "Only with a helper who is close enough to hold you."
    ),
    "sheet.emergency": QT_TRANSLATE_NOOP("turnpost", "Call {number} at once if this is new:"),
    "sheet.emergency.no_number": QT_TRANSLATE_NOOP(
        "turnpost", "Call for emergency help at once if this is new:"
    ),
    "sheet.call": QT_TRANSLATE_NOOP(
        "turnpost", "Do not practise, and call your therapist first, if:"
    ),
    "sheet.stop": QT_TRANSLATE_NOOP("turnpost", "Stop for today when:"),
    "sheet.stop.score.dizziness": QT_TRANSLATE_NOOP(
        "turnpost",
        "You are dizzier than {most} of 10. None at all is 0. As bad as it can be is 10.",
    ),
    "sheet.stop.score.nausea": QT_TRANSLATE_NOOP(
        "turnpost", "You feel sick, and more so than {most} of 10."
    ),
    "sheet.stop.score.unsteadiness": QT_TRANSLATE_NOOP(
        "turnpost", "You feel unsteady, and more so than {most} of 10."
    ),
    "sheet.stop.worst.dizziness": QT_TRANSLATE_NOOP(
        "turnpost", "You are as dizzy as you can imagine."
    ),
    "sheet.stop.worst.nausea": QT_TRANSLATE_NOOP(
        "turnpost", "You feel as sick as you can imagine."
    ),
    "sheet.stop.worst.unsteadiness": QT_TRANSLATE_NOOP(
        "turnpost", "You feel as unsteady as you can imagine."
    ),
    "sheet.stop.settle": QT_TRANSLATE_NOOP(
        "turnpost", "After an exercise your symptoms need more than {minutes} minutes to settle."
    ),
    "sheet.stop.spin": QT_TRANSLATE_NOOP(
        "turnpost", "{what}. Hold on, sit still until it is over, and tell your therapist."
    ),
    "sheet.stop.unwell": QT_TRANSLATE_NOOP("turnpost", "You feel unwell in any other way."),
    "sheet.screen": QT_TRANSLATE_NOOP(
        "turnpost", "Only with the program, as something has to move on the screen:"
    ),
    "sheet.later": QT_TRANSLATE_NOOP("turnpost", "Later, when your therapist says so:"),
    "sheet.picture": QT_TRANSLATE_NOOP("turnpost", "Drawing: {name}"),
}
