"""What is said beside the target in a slow turn or nod of the set-up."""

from __future__ import annotations

from ui.asked import Asked

#: The four parts of a slow turn or nod.
_QUARTERS = ("plus", "back", "minus", "back")


def hint_key(asked: Asked | None, now_s: float) -> str:
    """Key of the words for where a slow turn or nod should be now; empty at other steps."""
    if asked is None or asked.step.step not in ("turn_slowly", "nod_slowly"):
        return ""
    step = asked.step
    share = (now_s - step.from_s) / max(step.to_s - step.from_s, 1e-9)
    quarter = _QUARTERS[min(max(int(share * 4), 0), 3)]
    return f"setup.{step.step}.{quarter}"
