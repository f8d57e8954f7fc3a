"""What is said of a guided exercise, line by line, for a patient and the helper beside.

Each line leaves it to the patient when to begin; none names a time.
"""

from __future__ import annotations

from PySide6.QtCore import QT_TRANSLATE_NOOP

GUIDE_WORDS: dict[str, object] = {
    "guide.stop": QT_TRANSLATE_NOOP(
        "turnpost",
        "To stop, say stop and hold on. Your helper stays and helps you sit down. The Escape key "
        "can wait.",
    ),
    "guide.count": QT_TRANSLATE_NOOP(
        "turnpost", "Nothing is measured here. Please count for yourself."
    ),
    "guide.over": QT_TRANSLATE_NOOP(
        "turnpost", "That was all of it. Stand still, or sit down. Your helper presses “Done”."
    ),
    "guide.walk.stand": QT_TRANSLATE_NOOP(
        "turnpost", "First stand still. Your helper is at your side."
    ),
    "guide.walk.forward": QT_TRANSLATE_NOOP(
        "turnpost", "When you are ready, walk ten steps forward. Take your time."
    ),
    "guide.walk.halt": QT_TRANSLATE_NOOP(
        "turnpost", "After the tenth step stop, and stand until all is steady."
    ),
    "guide.walk.back": QT_TRANSLATE_NOOP(
        "turnpost",
        "Your helper goes behind you. When you are ready, walk ten steps backward. Take your time.",
    ),
    "guide.stairs.stand": QT_TRANSLATE_NOOP(
        "turnpost",
        "Stand before the step, your hand on the rail. Your helper stands close behind you.",
    ),
    "guide.stairs.up": QT_TRANSLATE_NOOP(
        "turnpost",
        "Your helper stays close behind you. When you are ready, go up one step, "
        "one foot after the other.",
    ),
    "guide.stairs.down": QT_TRANSLATE_NOOP(
        "turnpost",
        "Your helper stays one step below you. When you are steady, go down again. "
        "Your hand stays on the rail.",
    ),
    "guide.partner.stand": QT_TRANSLATE_NOOP(
        "turnpost", "First stand still. Your partner is close to you, with the ball."
    ),
    "guide.partner.take": QT_TRANSLATE_NOOP(
        "turnpost", "When you are ready, turn slowly to one side and take the ball."
    ),
    "guide.partner.give": QT_TRANSLATE_NOOP(
        "turnpost", "Turn slowly to the other side and give the ball back."
    ),
}
