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
}
