"""Which options an exercise may be given at home: allowed, with a helper only, or never.

The camera can't catch a fall, so what takes away the eyes or the floor while a
person stands needs a helper's arm, and some things are never done alone. The
table is this project's own: shut eyes and head shakes are never allowed while
tossing, walking, on stairs or with a partner; shut eyes and soft surfaces in
standing "with helper or rail only" is an inference from the leaflets that tell
people to keep a corner, a chair or a person within reach (Northern Care Alliance
NHS); the rest is common practice.
"""

from __future__ import annotations

from typing import Literal, get_args

Option = Literal["eyes_closed", "head_shake", "sitting", "standing", "walking", "soft_surface"]
Permission = Literal["allowed", "helper", "never"]

OPTIONS: tuple[Option, ...] = get_args(Option)

_LETTERS: dict[str, Permission] = {"a": "allowed", "h": "helper", "n": "never"}

#: Columns as in OPTIONS: eyes closed, head shake, sitting, standing, walking, soft surface.
_TABLE = """
eyes-up-down        n n a a n n
eyes-side-to-side   n n a a n n
nods-on-target      n n a a n h
turns-on-target     n n a a n h
nods-together       a n a a n h
turns-together      a n a a n h
near-far            n n a a n n
shoulders-back      a n a a n n
shoulders-forward   a n a a n n
floor-reach         n n a n n n
sit-to-stand        h n n a n n
hand-toss           n n a a n n
stand               h h n a n a
ankle-sway          h n n a n n
stand-head-shake    h a n a n h
weight-shift        h n n a n h
walk                n n n n a n
stairs              n n n n a n
partner-turns       n n n a n n
turns-x2            n n a a n h
nods-x2             n n a a n h
eyes-then-head      n n a a n n
remembered-target   a n a h n n
follow-slowly       n n a a n n
thumb-together      n n a a n n
head-tilts          n n a n n n
near-hold           n n a n n n
moving-background   n n a n n n
stand-tandem        h h n a n h
stand-one-leg       n n n a n n
chair-stands-five   n n n a n n
chair-stands-30-s   n n n a n n
"""

#: Exercise -> option -> permission.
PERMISSIONS: dict[str, dict[Option, Permission]] = {
    name: {o: _LETTERS[letter] for o, letter in zip(OPTIONS, letters, strict=True)}
    for name, *letters in (line.split() for line in _TABLE.strip().splitlines())
}

_MOVING = ("hand-toss", "walk", "stairs", "partner-turns")
_WHY: dict[Option, str] = {
    "eyes_closed": "it is done with the eyes open",
    "head_shake": "a head shake is no part of it",
    "sitting": "it is not done sitting",
    "standing": "it is not done standing",
    "walking": "it is not done walking",
    "soft_surface": "it is done on a firm floor",
}


def permission(exercise_id: str, option: Option) -> Permission:
    """What the table says of an option; KeyError for an unknown exercise."""
    return PERMISSIONS[exercise_id][option]


def why_never(exercise_id: str, option: Option) -> str:
    """Why an option is never given, in words."""
    if exercise_id in _MOVING and option in ("eyes_closed", "head_shake"):
        return "never while tossing, walking, on stairs or with a partner"
    return _WHY[option]
