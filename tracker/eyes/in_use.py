"""Which eye is watched: both, or one where the other is covered, blind or turned aside."""

from __future__ import annotations

from collections.abc import Sequence

from tracker.session.stage import Step

#: Name -> rows of what is measured of both eyes, the right one first.
EYES: dict[str, tuple[int, ...]] = {"both": (0, 1), "right": (0,), "left": (1,)}


def eye_in_use(steps: Sequence[Step]) -> str:
    """The eye that a set-up's steps say is in use (``use_eye``); both where they say nothing."""
    for step in steps:
        named = (step.model_extra or {}).get("use_eye")
        if named in EYES:
            return str(named)
    return "both"
