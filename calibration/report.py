"""How a set-up came out: light enough for the window's process to read."""

from __future__ import annotations

from dataclasses import dataclass

from calibration.check import GazeCheck, HeadReach
from calibration.parts import PartFound
from tracker.profile import Profile
from tracker.sample import Reach
from tracker.session.stage import Step


@dataclass(frozen=True, slots=True)
class Again:
    """A part that was done again, and why the old one stays; empty where the new one is taken.

    ``why`` is ``unseen``, ``moved``, ``eyes``, ``coarse`` or ``less_far`` (``calibration.again``).
    """

    part: str
    why: str = ""


@dataclass(frozen=True, slots=True)
class SetupReport:
    """How a set-up came out.

    Attributes
    ----------
    profile
        The person.
    steps
        The set-up's steps with their targets in the rest frame.
    error_deg
        Median gaze error on looks that the fit had not seen, NaN without any.
    reach_deg
        Lowest and highest eye-in-head yaw, and pitch, that the set-up taught; None
        without a gaze model.
    findings
        Keys of what should be said about it.
    ok
        Whether gaze verdicts can rest on it.
    check
        What the looks that were kept from the fit showed; None where there were none.
    head_reach
        How far the head went in its moving part.
    parts
        How each part of it came out.
    again
        The part that was done again last, if one was.
    wall_check
        The same as ``check``, at marks on the wall; None where there were none.
    """

    profile: Profile
    steps: list[Step]
    error_deg: float
    reach_deg: Reach | None
    findings: tuple[str, ...]
    ok: bool
    check: GazeCheck | None = None
    head_reach: HeadReach | None = None
    parts: tuple[PartFound, ...] = ()
    again: Again | None = None
    wall_check: GazeCheck | None = None
