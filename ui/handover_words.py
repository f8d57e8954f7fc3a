"""The words of the hand-over, at both ends.

Keys: ``same.KEY`` (is this the therapist's plan?), ``handover.KEY`` (the patient's file),
``exchange.KEY`` (the therapist's desk).
"""

from __future__ import annotations

from PySide6.QtCore import QT_TRANSLATE_NOOP

HANDOVER_WORDS: dict[str, object] = {
    # is this plan the therapist's?
    "same.title": QT_TRANSLATE_NOOP("turnpost", "Does this plan come from your therapist?"),
    "same.ask": QT_TRANSLATE_NOOP(
        "turnpost",
        "Phone your therapist, or wait for your next call. Ask them to read out the words of "
        "your plan. They must be these, in this order:",
    ),
    "same.word": QT_TRANSLATE_NOOP("turnpost", "{number}. {word}"),
    "same.why": QT_TRANSLATE_NOOP(
        "turnpost",
        "One other word, and somebody may have changed the plan on its way. Then do not use it.",
    ),
    "same.yes": QT_TRANSLATE_NOOP("turnpost", "All words are the same"),
    "same.no": QT_TRANSLATE_NOOP("turnpost", "A word is different"),
    "same.later": QT_TRANSLATE_NOOP("turnpost", "Compare later"),
    "same.refused": QT_TRANSLATE_NOOP(
        "turnpost",
        "The words did not match, so this plan is put away. Ask your therapist to give you the "
        "plan again.",
    ),
    "same.open": QT_TRANSLATE_NOOP("turnpost", "Compare the words"),
    # the patient's file
    "handover.open": QT_TRANSLATE_NOOP("turnpost", "Hand over to my therapist"),
    "handover.title": QT_TRANSLATE_NOOP("turnpost", "Hand over to your therapist"),
    "handover.looking": QT_TRANSLATE_NOOP("turnpost", "Looking at what you have practised ..."),
    "handover.failed": QT_TRANSLATE_NOOP("turnpost", "That did not work: {why}"),
    "handover.no_plan": QT_TRANSLATE_NOOP(
        "turnpost",
        "You have no plan from your therapist open. Open it on the first page, then come back.",
    ),
    "handover.no_way": QT_TRANSLATE_NOOP(
        "turnpost",
        "Your plan does not name a clinic that can receive files. Ask your therapist for a plan "
        "with the clinic's key in it.",
    ),
    "handover.none": QT_TRANSLATE_NOOP(
        "turnpost", "There is nothing to hand over yet. Practise once, then come back."
    ),
    "handover.no_new": QT_TRANSLATE_NOOP(
        "turnpost",
        "You have handed over all you practised. If a file was lost, you can make one with "
        "everything again.",
    ),
    "handover.one_new": QT_TRANSLATE_NOOP("turnpost", "One session waits to be handed over."),
    "handover.new": QT_TRANSLATE_NOOP("turnpost", "{count} sessions wait to be handed over."),
    "handover.inside": QT_TRANSLATE_NOOP(
        "turnpost",
        "Turnpost puts them into one file. In it are your answers and what was measured. There is "
        "no picture in it, nor the shape of your face, nor your name.",
    ),
    "handover.locked": QT_TRANSLATE_NOOP(
        "turnpost", "The file is locked: only your clinic can open it."
    ),
    "handover.plain": QT_TRANSLATE_NOOP(
        "turnpost",
        "Your clinic has chosen files without a lock. Whoever gets hold of this file can read it, "
        "so give it to your therapist by hand if you can.",
    ),
    "handover.unread": QT_TRANSLATE_NOOP(
        "turnpost", "{count} could not be read and stay behind. Tell your therapist."
    ),
    "handover.unchecked": QT_TRANSLATE_NOOP(
        "turnpost",
        "You have not compared the words of your plan yet. Do it first: then you know that the "
        "file goes to your clinic.",
    ),
    "handover.make_one": QT_TRANSLATE_NOOP("turnpost", "Make the file"),
    "handover.make_new": QT_TRANSLATE_NOOP("turnpost", "Make the file"),
    "handover.make_all": QT_TRANSLATE_NOOP("turnpost", "Make one with all {count}"),
    "handover.where": QT_TRANSLATE_NOOP("turnpost", "Where to put the file"),
    "handover.kinds": QT_TRANSLATE_NOOP("turnpost", "Files for the clinic (*.age *.turnpost)"),
    "handover.made": QT_TRANSLATE_NOOP("turnpost", "The file is made, with {count} in it: {path}"),
    "handover.send": QT_TRANSLATE_NOOP(
        "turnpost",
        "Now send it to your therapist: attach it to an e-mail, or bring it along on a memory "
        "stick.",
    ),
    "handover.left": QT_TRANSLATE_NOOP(
        "turnpost", "{count} did not fit. Make a second file for them."
    ),
    "handover.in_call": QT_TRANSLATE_NOOP(
        "turnpost", "Names of files are not shown in a call. Leave the call's layout (F4) first."
    ),
    "handover.back": QT_TRANSLATE_NOOP("turnpost", "Back"),
}
