"""What is said beside the target in a slow turn or nod of the set-up."""

from __future__ import annotations

from ui.session.asked import Asked

#: The four parts of a slow turn or nod.
_QUARTERS = ("plus", "back", "minus", "back")


def quarter_of(share: float) -> str:
    """Which part of a slow turn or nod it is, by the share of its time that is over."""
    return _QUARTERS[min(max(int(share * 4), 0), 3)]


def share_of(asked: Asked, now_s: float) -> float:
    """Share of a step's time that is over."""
    step = asked.step
    return (now_s - step.from_s) / max(step.to_s - step.from_s, 1e-9)


def hint_key(asked: Asked | None, now_s: float) -> str:
    """Key of the words for where a slow turn or nod should be now; empty at other steps."""
    if asked is None or asked.step.step not in ("turn_slowly", "nod_slowly"):
        return ""
    return f"setup.{asked.step.step}.{quarter_of(share_of(asked, now_s))}"
