"""How an exercise is done where a plan asks for it in another way, and on paper.

Keys: ``how.ID.closed`` with the eyes shut, ``how.ID.soft`` and ``how.ID.soft.closed`` on the
mat where the firm floor is usual, ``how.ID.wall`` with notes on the wall, ``how.ID.paper`` where
nothing watches, ``how.shake`` where the head is turned besides, and ``how.shut`` with the eyes
shut where nothing else says so.
Where there is none, ``exercise.ID.how`` holds.
"""

from __future__ import annotations

from PySide6.QtCore import QT_TRANSLATE_NOOP

MANNER_WORDS: dict[str, object] = {
    "how.shake": QT_TRANSLATE_NOOP("turnpost", "Turn your head from side to side."),
    "how.shut": QT_TRANSLATE_NOOP("turnpost", "Keep your eyes shut."),
    "how.eyes-side-to-side.wall": QT_TRANSLATE_NOOP(
        "turnpost", "Look from one note to the other, once a beat. Your head stays still."
    ),
    "how.eyes-up-down.wall": QT_TRANSLATE_NOOP(
        "turnpost",
        "Look from the upper note to the lower one and back, once a beat. Your head stays still.",
    ),
    "how.nods-on-target.wall": QT_TRANSLATE_NOOP(
        "turnpost", "Nod up and down, one nod a beat. Your eyes stay on the note on the wall."
    ),
    "how.turns-on-target.wall": QT_TRANSLATE_NOOP(
        "turnpost",
        "Turn your head from side to side, one turn a beat. Your eyes stay on the note on the "
        "wall.",
    ),
    "how.eyes-then-head.wall": QT_TRANSLATE_NOOP(
        "turnpost",
        "Look at one note with your eyes. Then turn your head to it. Now look at the other "
        "note, and turn again.",
    ),
    "how.nods-together.closed": QT_TRANSLATE_NOOP(
        "turnpost", "Lift your head, then lower it. Keep your eyes shut. Move once a beat."
    ),
    "how.turns-together.closed": QT_TRANSLATE_NOOP(
        "turnpost",
        "Turn your head to the right, then to the left. Keep your eyes shut. Move once a beat.",
    ),
    "how.stand.closed": QT_TRANSLATE_NOOP(
        "turnpost",
        "Stand with your back to the corner, feet as wide as your shoulders. Let your arms "
        "hang. Chin up. Keep your eyes shut.",
    ),
    "how.stand.soft": QT_TRANSLATE_NOOP(
        "turnpost",
        "Stand with your back to the corner, feet as wide as your hips. Let your arms hang. "
        "Chin up. Look at a mark on the wall, as high as your eyes.",
    ),
    "how.stand.soft.closed": QT_TRANSLATE_NOOP(
        "turnpost",
        "Stand with your back to the corner, feet as wide as your hips. Let your arms hang. "
        "Chin up. Keep your eyes shut.",
    ),
    "how.ankle-sway.closed": QT_TRANSLATE_NOOP(
        "turnpost",
        "Stand tall. Lean slowly to your toes, then to your heels. Bend at the ankles, not at "
        "the hips. Keep your eyes shut.",
    ),
    "how.stand-tandem.closed": QT_TRANSLATE_NOOP(
        "turnpost",
        "Put one foot right in front of the other. Shut your eyes and stand still.",
    ),
    "how.near-far.paper": QT_TRANSLATE_NOOP(
        "turnpost",
        "Hold one finger up at arm's length. Bring it slowly to about 30 cm from your eyes, then "
        "back out. Your eyes stay on the tip. Your head stays still.",
    ),
    "how.shoulders-back.paper": QT_TRANSLATE_NOOP(
        "turnpost",
        "Lift both shoulders, roll them back, and let them drop. Go slowly. Keep your head level.",
    ),
    "how.shoulders-forward.paper": QT_TRANSLATE_NOOP(
        "turnpost",
        "Lift both shoulders, roll them forward, and let them drop. Go slowly. Keep your head "
        "level.",
    ),
    "how.hand-toss.paper": QT_TRANSLATE_NOOP(
        "turnpost",
        "Toss a soft ball or rolled sock from hand to hand, just above your eyes. Let your "
        "eyes and head go with it. If it drops, let it lie and take a new one.",
    ),
    "how.chair-stands-30-s.paper": QT_TRANSLATE_NOOP(
        "turnpost",
        "Cross your arms. Stand up and sit down as often as is safe, until the time is up.",
    ),
}
