"""How a set-up came out: light enough for the window's process to read."""

from __future__ import annotations

from dataclasses import dataclass

from calibration.check import GazeCheck, HeadReach
from tracker.profile import Profile
from tracker.sample import Reach
from tracker.session.stage import Step


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
    wall_check: GazeCheck | None = None
