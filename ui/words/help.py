"""The words of the page of keys and help.

Keys: ``help.KEY``, ``help.group.GROUP`` and ``help.key.ACTION`` of :mod:`ui.keys`,
``help.name.KEY`` for a key that is called differently on other keyboards.
"""

from __future__ import annotations

from PySide6.QtCore import QT_TRANSLATE_NOOP

HELP_WORDS: dict[str, object] = {
    "help.open": QT_TRANSLATE_NOOP("turnpost", "Keys and help (F1)"),
    "help.title": QT_TRANSLATE_NOOP("turnpost", "Keys and help"),
    "help.back": QT_TRANSLATE_NOOP("turnpost", "Back"),
    "help.unwell": QT_TRANSLATE_NOOP("turnpost", "If you feel unwell"),
    "help.unwell.how": QT_TRANSLATE_NOOP(
        "turnpost",
        "Press Esc: what goes on stops at once. While you practise or just after, press U instead: "
        "everything stops, and a few questions follow. Sit down, or hold on to something firm.",
    ),
    "help.scores": QT_TRANSLATE_NOOP("turnpost", "How to give a score"),
    "help.scores.enter": QT_TRANSLATE_NOOP("turnpost", "Then press Enter."),
    "help.group.always": QT_TRANSLATE_NOOP("turnpost", "In the whole program"),
    "help.group.set": QT_TRANSLATE_NOOP("turnpost", "While a set goes on"),
    "help.group.picture": QT_TRANSLATE_NOOP("turnpost", "Where you can see yourself"),
    "help.group.call": QT_TRANSLATE_NOOP(
        "turnpost", "In the layout for a call, between two sets: for your therapist"
    ),
    # What a group's heading says too simply; it stands below the group.
    "help.note.always": QT_TRANSLATE_NOOP(
        "turnpost",
        "F1, Ctrl+M and the text size do nothing while a set or the set-up goes on. Between two "
        "sets, Esc asks first if that is all for today, and does nothing for two seconds after a "
        "page has come by itself.",
    ),
    "help.note.set": QT_TRANSLATE_NOOP(
        "turnpost", "Where something moves behind the target, any key stops the set."
    ),
    "help.group.page": QT_TRANSLATE_NOOP("turnpost", "To get about on a page"),
    "help.key.stop": QT_TRANSLATE_NOOP("turnpost", "Stop at once, or leave the page"),
    "help.key.pause": QT_TRANSLATE_NOOP("turnpost", "Pause, and go on"),
    "help.key.double": QT_TRANSLATE_NOOP(
        "turnpost", "I see double: stop (with a fingertip near your eyes)"
    ),
    "help.key.picture": QT_TRANSLATE_NOOP("turnpost", "Show or hide your picture"),
    "help.key.unwell": QT_TRANSLATE_NOOP("turnpost", "I feel unwell (at any time)"),
    "help.key.text_larger": QT_TRANSLATE_NOOP("turnpost", "Larger text"),
    "help.key.text_smaller": QT_TRANSLATE_NOOP("turnpost", "Smaller text"),
    "help.key.text_normal": QT_TRANSLATE_NOOP("turnpost", "Text in its usual size"),
    "help.key.colours": QT_TRANSLATE_NOOP("turnpost", "Light or dark"),
    "help.key.still": QT_TRANSLATE_NOOP("turnpost", "Hold drawings still, or let them move"),
    "help.key.share": QT_TRANSLATE_NOOP(
        "turnpost", "Layout for a video call, and back (not in the set-up)"
    ),
    "help.key.mark": QT_TRANSLATE_NOOP(
        "turnpost", "Mark this moment for your therapist (in a session)"
    ),
    "help.key.slower": QT_TRANSLATE_NOOP("turnpost", "Slower"),
    "help.key.faster": QT_TRANSLATE_NOOP("turnpost", "Faster"),
    "help.key.smaller": QT_TRANSLATE_NOOP("turnpost", "Smaller movement"),
    "help.key.larger": QT_TRANSLATE_NOOP("turnpost", "Larger movement"),
    "help.key.other_next": QT_TRANSLATE_NOOP("turnpost", "Another exercise first"),
    "help.key.take_back": QT_TRANSLATE_NOOP("turnpost", "Take the change back"),
    "help.key.sound": QT_TRANSLATE_NOOP("turnpost", "Sound: voice, beats or none"),
    "help.key.help": QT_TRANSLATE_NOOP("turnpost", "This page, and back"),
    "help.key.full_screen": QT_TRANSLATE_NOOP("turnpost", "Full screen, and back"),
    "help.key.quit": QT_TRANSLATE_NOOP("turnpost", "End Turnpost; what was done is saved"),
    "help.key.next": QT_TRANSLATE_NOOP("turnpost", "To the next button"),
    "help.key.press": QT_TRANSLATE_NOOP("turnpost", "Press the button that has the ring"),
    "help.key.down": QT_TRANSLATE_NOOP("turnpost", "Read on below"),
    "help.key.up": QT_TRANSLATE_NOOP("turnpost", "Back up"),
    "help.name.Space": QT_TRANSLATE_NOOP("turnpost", "Space"),
    "help.name.Ctrl": QT_TRANSLATE_NOOP("turnpost", "Ctrl"),
    "help.name.Enter": QT_TRANSLATE_NOOP("turnpost", "Enter"),
    "help.name.PgDown": QT_TRANSLATE_NOOP("turnpost", "Page Down"),
    "help.name.PgUp": QT_TRANSLATE_NOOP("turnpost", "Page Up"),
}
