"""The words of what is asked once a week, and of scores from questionnaires on the desk."""

from __future__ import annotations

from PySide6.QtCore import QT_TRANSLATE_NOOP

WEEKLY_WORDS: dict[str, object] = {
    "ask.weekly.falls": QT_TRANSLATE_NOOP("turnpost", "Did you fall in the last week?"),
    "ask.weekly.falls.how": QT_TRANSLATE_NOOP(
        "turnpost",
        "A slip or a trip counts too if you ended up on the ground. This comes once a week, for "
        "your therapist.",
    ),
    "ask.weekly.falls.none": QT_TRANSLATE_NOOP("turnpost", "No, I did not fall"),
    "ask.weekly.falls.once": QT_TRANSLATE_NOOP("turnpost", "Yes, once"),
    "ask.weekly.falls.more": QT_TRANSLATE_NOOP("turnpost", "Yes, more than once"),
    "ask.weekly.hurt": QT_TRANSLATE_NOOP("turnpost", "Were you hurt?"),
    "ask.weekly.hurt.how": QT_TRANSLATE_NOOP(
        "turnpost", "A bruise counts. If you need help, get it now."
    ),
    "ask.weekly.medicines_changed": QT_TRANSLATE_NOOP("turnpost", "Have your medicines changed?"),
    "ask.weekly.medicines_changed.how": QT_TRANSLATE_NOOP(
        "turnpost",
        "A new one, more or less of one, or one that you stopped, since this was asked last. "
        "Yes or no is enough: no names are kept.",
    ),
    "ask.weekly.skip": QT_TRANSLATE_NOOP("turnpost", "I would rather not say"),
    # scores from questionnaires, on the desk
    "scores.tab": QT_TRANSLATE_NOOP("turnpost", "Questionnaires"),
    "scores.name": QT_TRANSLATE_NOOP("turnpost", "Questionnaire"),
    "scores.day": QT_TRANSLATE_NOOP("turnpost", "Filled in on"),
    "scores.score": QT_TRANSLATE_NOOP("turnpost", "Score"),
    "scores.least": QT_TRANSLATE_NOOP("turnpost", "Least possible"),
    "scores.most": QT_TRANSLATE_NOOP("turnpost", "Most possible"),
    "scores.add": QT_TRANSLATE_NOOP("turnpost", "Add the score"),
    "scores.undo": QT_TRANSLATE_NOOP("turnpost", "Undo my last score"),
    "scores.col.name": QT_TRANSLATE_NOOP("turnpost", "Questionnaire"),
    "scores.col.first": QT_TRANSLATE_NOOP("turnpost", "First"),
    "scores.col.last": QT_TRANSLATE_NOOP("turnpost", "Last"),
    "scores.col.change": QT_TRANSLATE_NOOP("turnpost", "Last against first"),
    "scores.col.trend": QT_TRANSLATE_NOOP("turnpost", "All scores"),
    "scores.course": QT_TRANSLATE_NOOP("turnpost", "{name} ({least} to {most})"),
    "scores.on": QT_TRANSLATE_NOOP("turnpost", "{score}, {day}"),
    "scores.higher": QT_TRANSLATE_NOOP("turnpost", "{by} higher"),
    "scores.lower": QT_TRANSLATE_NOOP("turnpost", "{by} lower"),
    "scores.same": QT_TRANSLATE_NOOP("turnpost", "the same"),
    "scores.only": QT_TRANSLATE_NOOP("turnpost", "only one score"),
    "scores.how": QT_TRANSLATE_NOOP(
        "turnpost",
        "Only the score is kept, not the questions. How much a score varies by itself, and which "
        "end is the better one, is not known here.",
    ),
    "scores.added": QT_TRANSLATE_NOOP(
        "turnpost", "Kept: {name}, {score} ({least} to {most}), {day}."
    ),
    "scores.undone": QT_TRANSLATE_NOOP("turnpost", "Taken back: {name}, {score}, {day}."),
    "scores.older": QT_TRANSLATE_NOOP(
        "turnpost", "Entered some time ago and still there: {name}, {score}, {day}."
    ),
    "scores.unsigned": QT_TRANSLATE_NOOP(
        "turnpost",
        "This older score may be of another computer with the same login: {name}, {score}, {day}.",
    ),
    "scores.sure": QT_TRANSLATE_NOOP("turnpost", "Take this old score back"),
    "scores.no_undo": QT_TRANSLATE_NOOP("turnpost", "There is no score of yours to take back."),
    "scores.no_person": QT_TRANSLATE_NOOP(
        "turnpost", "These sessions name nobody: a score would be nobody's."
    ),
    "scores.no_name": QT_TRANSLATE_NOOP("turnpost", "Type the name of the questionnaire."),
    "scores.no_number": QT_TRANSLATE_NOOP(
        "turnpost", "“{field}” needs a number between -{most} and {most}."
    ),
    "scores.ends": QT_TRANSLATE_NOOP("turnpost", "The least possible must be below the most."),
    "scores.outside": QT_TRANSLATE_NOOP(
        "turnpost", "The score must lie between {least} and {most}."
    ),
    "scores.ahead": QT_TRANSLATE_NOOP("turnpost", "That day is still to come."),
    "scores.failed": QT_TRANSLATE_NOOP("turnpost", "Not kept: {why}"),
}
