"""The words of the first steps: keys ``first.KEY``; ``first.STEP`` and ``first.STEP.KEY``."""

from __future__ import annotations

from PySide6.QtCore import QT_TRANSLATE_NOOP

FIRST_WORDS: dict[str, object] = {
    "first.open": QT_TRANSLATE_NOOP("turnpost", "First steps"),
    "first.overview": QT_TRANSLATE_NOOP("turnpost", "The first steps"),
    "first.overview.how": QT_TRANSLATE_NOOP(
        "turnpost", "Take any of them again, in any order. Nothing you did is lost."
    ),
    "first.progress": QT_TRANSLATE_NOOP("turnpost", "Step {at} of {of}"),
    "first.next": QT_TRANSLATE_NOOP("turnpost", "Go on"),
    "first.before": QT_TRANSLATE_NOOP("turnpost", "One step back"),
    "first.leave": QT_TRANSLATE_NOOP("turnpost", "Skip the rest"),
    "first.leave_name": QT_TRANSLATE_NOOP(
        "turnpost", "Skip the rest; you find these steps again under “Camera, screen, more”"
    ),
    "first.finish": QT_TRANSLATE_NOOP("turnpost", "Finish"),
    # text
    "first.text": QT_TRANSLATE_NOOP("turnpost", "Can you read this with ease?"),
    "first.text.how": QT_TRANSLATE_NOOP(
        "turnpost",
        "Sit as you will when you practise, and choose. The buttons at the top right do the same "
        "at any time.",
    ),
    "first.text.size": QT_TRANSLATE_NOOP("turnpost", "Size of the text"),
    "first.text.percent": QT_TRANSLATE_NOOP("turnpost", "{percent} %"),
    "first.text.language": QT_TRANSLATE_NOOP("turnpost", "Language"),
    "first.text.unchecked": QT_TRANSLATE_NOOP(
        "turnpost", "No clinician who speaks this language has checked these words yet."
    ),
    "first.text.colours": QT_TRANSLATE_NOOP("turnpost", "Colours"),
    "first.text.light": QT_TRANSLATE_NOOP("turnpost", "Light"),
    "first.text.dark": QT_TRANSLATE_NOOP("turnpost", "Dark"),
    "first.text.motion": QT_TRANSLATE_NOOP("turnpost", "Drawings of the exercises"),
    "first.text.moving": QT_TRANSLATE_NOOP("turnpost", "Move slowly"),
    "first.text.still": QT_TRANSLATE_NOOP("turnpost", "Hold still"),
    # about
    "first.about": QT_TRANSLATE_NOOP("turnpost", "What Turnpost does, and what it does not"),
    "first.about.does": QT_TRANSLATE_NOOP(
        "turnpost",
        "It watches your head and eyes through the camera while you do the exercises that your "
        "therapist has given you. It counts, keeps the beat, and says when something is off.",
    ),
    "first.about.saves": QT_TRANSLATE_NOOP(
        "turnpost", "At the end you get a summary that you can hand to your therapist."
    ),
    "first.about.not": QT_TRANSLATE_NOOP(
        "turnpost",
        "It does not find out what you have, and it does not choose or change your treatment. It "
        "can't hold you, and it calls nobody.",
    ),
    # red flags
    "first.stop": QT_TRANSLATE_NOOP("turnpost", "When to stop, and when to get help"),
    # privacy
    "first.privacy": QT_TRANSLATE_NOOP("turnpost", "What stays with you"),
    "first.privacy.mark": QT_TRANSLATE_NOOP(
        "turnpost", "At the top left you always see whether the camera is on."
    ),
    # camera and sound are pages of their own
    "first.camera": QT_TRANSLATE_NOOP("turnpost", "Camera, light and glasses"),
    "first.sound": QT_TRANSLATE_NOOP("turnpost", "Sound and voice"),
    # places
    "first.sitting": QT_TRANSLATE_NOOP("turnpost", "Your place for sitting"),
    "first.sitting.chair": QT_TRANSLATE_NOOP(
        "turnpost", "A firm chair with a back and no wheels, both feet on the floor."
    ),
    "first.sitting.screen": QT_TRANSLATE_NOOP(
        "turnpost",
        "The screen straight ahead at arm's length, its camera about as high as your eyes. A few "
        "books under the laptop help.",
    ),
    "first.sitting.light": QT_TRANSLATE_NOOP(
        "turnpost", "A lamp or a window in front of you, not behind you."
    ),
    "first.standing": QT_TRANSLATE_NOOP("turnpost", "Your place for standing"),
    "first.standing.only": QT_TRANSLATE_NOOP(
        "turnpost", "You need it only if your plan has exercises for standing."
    ),
    "first.standing.corner": QT_TRANSLATE_NOOP(
        "turnpost",
        "A corner of the room behind you. A heavy chair without wheels in front of you, so near "
        "that you can hold its back.",
    ),
    "first.standing.laptop": QT_TRANSLATE_NOOP(
        "turnpost",
        "The laptop on something high and firm, out of your reach, its cable where nobody trips.",
    ),
    "first.standing.helper": QT_TRANSLATE_NOOP(
        "turnpost", "Where your plan asks for a helper, never stand without one."
    ),
    # try
    "first.try": QT_TRANSLATE_NOOP("turnpost", "Half a minute to try it"),
    "first.try.how": QT_TRANSLATE_NOOP(
        "turnpost",
        "A few questions about today come first. Then the camera gets to know you, which takes "
        "about a minute. Then you turn your head gently for half a minute.",
    ),
    "first.try.care": QT_TRANSLATE_NOOP(
        "turnpost", "Leave it out if you were not told that you may turn your head."
    ),
    "first.try.none": QT_TRANSLATE_NOOP(
        "turnpost",
        "Your plan lets the head turn only a little, too little for this try. Leave it out, "
        "and ask your therapist how you begin.",
    ),
    "first.try.begin": QT_TRANSLATE_NOOP("turnpost", "Try it now"),
}
