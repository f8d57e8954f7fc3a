"""Which entries may be practised now, and why not. Keys, not words."""

from __future__ import annotations

from dataclasses import dataclass

from tracker.plan.asked import Asked, asked_of
from tracker.plan.gate import Gate
from tracker.plan.model import Entry
from tracker.plan.starter import needs_no_clearance
from tracker.plan.symptoms import Start

#: Why an entry isn't offered; the user interface has the words.
REFUSALS: tuple[str, ...] = (
    "no_session",
    "locked",
    "not_cleared",
    "no_start_score",
    "high_start",
    "no_voice",
    "no_helper",
    "support_not_confirmed",
)


@dataclass(frozen=True, slots=True)
class Around:
    """What is so at this moment.

    Attributes
    ----------
    sound_works
        Whether the person has heard the test sound.
    helper_here, helper_reads
        Whether a helper is within arm's reach, and reads the screen aloud.
    support_confirmed
        Whether the patient has confirmed the entry's support, this time.
    """

    sound_works: bool = False
    helper_here: bool = False
    helper_reads: bool = False
    support_confirmed: bool = False


def refusals(
    entry: Entry,
    gate: Gate,
    start: Start,
    around: Around,
    *,
    unlocked: bool,
    asked: Asked | None = None,
) -> tuple[str, ...]:
    """Every reason why an entry may not begin now; none means it may.

    Standing and eyes-closed work needs a voice, as nobody looks at the screen;
    what needs support needs it confirmed each time. Seated work needs no helper.
    Without clearance only what the seated starter has may begin.

    Parameters
    ----------
    asked
        What the entry asks for now; without it, what it asks for in the first week.
    """
    asked = asked or asked_of(entry)
    seated = asked.posture == "sitting"
    voice = around.sound_works or (around.helper_here and around.helper_reads)
    found = {
        "no_session": not gate.open,
        "locked": not unlocked,
        "not_cleared": gate.outcome == "seated_only" and not needs_no_clearance(asked),
        "no_start_score": start.limit is None,
        "high_start": start.seated_only and not seated,
        "no_voice": voice_needed(entry) and not voice,
        "no_helper": asked.support == "helper" and not around.helper_here,
        "support_not_confirmed": asked.support != "none" and not around.support_confirmed,
    }
    return tuple(key for key in REFUSALS if found[key])


def voice_needed(entry: Entry) -> bool:
    """Whether an entry is led by voice: nobody looks at the screen."""
    asked = asked_of(entry)
    return asked.posture != "sitting" or asked.eyes == "closed" or asked.wall is not None
