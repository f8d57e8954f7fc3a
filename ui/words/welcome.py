"""The words of the first page: what this is, what to take care of, what broke off last time.

Keys: ``welcome.KEY``, ``caution.KEY``, ``recover.KEY`` (sessions that broke off).
"""

from __future__ import annotations

from PySide6.QtCore import QT_TRANSLATE_NOOP

WELCOME_WORDS: dict[str, object] = {
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
    "welcome.start": QT_TRANSLATE_NOOP("turnpost", "Turn on the camera"),
    "welcome.start_demo": QT_TRANSLATE_NOOP("turnpost", "Start the sample"),
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
    # sessions that broke off
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
    "recover.newer": QT_TRANSLATE_NOOP(
        "turnpost",
        "A newer version of Turnpost has recorded something here that broke off. It stays as it "
        "is. Open the newer version to save it.",
    ),
    "recover.damaged.one": QT_TRANSLATE_NOOP(
        "turnpost",
        "A recording of {when} broke off, and its beginning is damaged: whose it is can't be told. "
        "It can be saved without a name, but does not count for the plan. Repetitions: {count}.",
    ),
    "recover.damaged": QT_TRANSLATE_NOOP(
        "turnpost",
        "Recordings that broke off and are damaged at the beginning: {n}. Whose they are can't be "
        "told. They can be saved without a name, but do not count for the plan. Repetitions in "
        "all: {count}.",
    ),
    "recover.unsure": QT_TRANSLATE_NOOP(
        "turnpost",
        "Broken off, and too damaged at the beginning to tell whether it is yours or from trying "
        "the sample: {n}. It can be saved, but does not count for the plan. Repetitions in it: "
        "{count}.",
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
}
