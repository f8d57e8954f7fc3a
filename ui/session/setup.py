"""The session's set-up: what is asked for in it, and what becomes of the fit."""

from __future__ import annotations

import contextlib
from dataclasses import replace
from pathlib import Path
from typing import Any

from tracker.errors import TurnpostError, in_words
from tracker.session.stage import SETUP_STEPS, Step
from ui.geometry import Point, believable_distance_mm, fitted_map
from ui.session.asked import Asked, clip_asked
from ui.session.asked_setup import setup_asked
from ui.session.source import SourcePart
from ui.session.state import Phase
from ui.setup.hint import hint_key, share_of
from ui.setup.reach import ReachWatch, Wanted, wanted_of
from ui.setup.told import Told, told_of

#: The exercises outside a plan: those that are complete with the camera so far.
OFFERED = ("turns-on-target", "eyes-side-to-side")


class SetupPart(SourcePart):
    """Asks for the set-up's steps and has the person fitted."""

    def _after_setup(self) -> None:
        """The set-up is over; what comes then belongs to the exercise."""
        raise NotImplementedError

    def _ask_setup(self) -> None:
        """Ask for the set-up's steps, once its page stands and the field has its size."""
        if self.clip is not None:
            self._asked = clip_asked(self.clip.steps, self._extent())
        else:
            self._asked = setup_asked(
                self.now_s,
                self._extent(),
                self.distance_mm,
                short=self._short,
                use_eye=self.eyes,
                marks=self.wall_looks,
            )
        self.reach = ReachWatch(self.wanted_reach)
        self._changed()

    @property
    def wall_looks(self) -> tuple[tuple[float, float, float], ...]:
        """Marks on the wall that are looked at in the set-up: right of the camera, above, away."""
        return ()

    @property
    def wanted_reach(self) -> Wanted:
        """How far the head should go in this set-up; a short one teaches the eyes nothing."""
        return Wanted() if self._short else wanted_of(None, offered=OFFERED)

    @property
    def setup_hint(self) -> str:
        """Key of what to say in a slow turn or nod: where to now, or that it is far enough."""
        asked = self.asked
        if asked is None or self.clip is not None:
            return ""
        share = share_of(asked, self.now_s)
        return self.reach.hint(asked.step.step, share) or hint_key(asked, self.now_s)

    @property
    def told(self) -> Told:
        """How the set-up came out, in words."""
        return told_of(self.report, self.wanted_reach)

    def _begin_setup(self) -> None:
        self._forget_session()
        self._enter(Phase.setup)

    def _forget_session(self) -> None:
        """A new session begins with nothing of the one before."""
        self._asked = []
        self._begun, self._held = 0, []
        self._recording, self.report, self.fit_message = None, None, ""
        self.saved, self.save_error, self.dose = None, "", None
        if self._keeping is not None:
            self._stopping.append(self._keeping)
            self._keeping = None

    def _last_setup(self) -> Asked | None:
        parts = [a for a in self._asked if a.step.step in SETUP_STEPS]
        return parts[-1] if parts else None

    def _setup_asked(self) -> list[Asked]:
        return [a for a in self._asked if a.step.step in SETUP_STEPS]

    def _ask_for_fit(self) -> None:
        if self._service is not None:
            self._service.request_fit(self._fit_steps(), self._fit_part())
        self._enter(Phase.fitting)

    def _fit_steps(self) -> list[Step]:
        """The steps that the person is fitted on."""
        return [a.step for a in self._setup_asked()]

    def _fit_part(self) -> str:
        """The part that was done again; empty for a whole set-up."""
        return ""

    def _fitted(self, report: Any) -> None:
        if self.phase != Phase.fitting:
            return
        self._take_report(report)
        self._after_setup()

    def _take_report(self, report: Any, *, same_person: bool = False) -> None:
        """From now on this is the person, and the targets are where they were found.

        ``same_person`` if nothing of the profile is another than before.
        """
        self.report, self._profile = report, report.profile
        if not same_person:
            self._find_mark()
        # Of marks on the wall only the set-up knows; the map is that of the screen.
        found = [s for s in report.steps if _screen_of(s) is not None and s.target_mm is not None]
        places = [p for p in map(_screen_of, found) if p is not None]
        if self.clip is None and len(places) == len(found):
            self._map = fitted_map(places, [s.target_mm for s in found])
        self._keep()
        middle = next((s.target_mm for s in found), None)
        if middle is not None:
            self._rest_distance_mm = believable_distance_mm(middle[2])
        steps = {(s.from_s, s.step): s for s in report.steps}
        self._asked = [
            replace(a, step=steps.get((a.step.from_s, a.step.step), a.step)) for a in self._asked
        ]

    @property
    def kept(self) -> Path | None:
        """The file of the profile that was kept for this camera and these glasses."""
        if self.camera is None:
            return None
        path, marks = self._world.kept_profile(self.camera, self.worn), self.wall_looks
        if path is not None and marks and not self._world.reads_marks(path, marks):
            # The eyes were not led that far; only a whole set-up can do that.
            return None
        return path

    @property
    def worn(self) -> str:
        """What a profile belongs to besides the camera: glasses, and the eye in use."""
        return self.glasses if self.eyes == "both" else f"{self.glasses}-{self.eyes}"

    @property
    def keep_error(self) -> str:
        """Why the set-up could not be kept for the next time, empty where nothing is to be said."""
        error = None if self._keeping is None else self._keeping.error
        if error is None:
            return ""
        # A path says nothing to a patient.
        return in_words(error)

    def _keep(self) -> None:
        """Keep a whole set-up that came out well, for the next time."""
        camera, profile, worn = self.camera, self._profile, self.worn
        if self.clip is None and camera is not None and not self._short and self.report.ok:
            self._keeping = self._world.run(lambda: self._world.keep_profile(profile, camera, worn))

    def _find_mark(self) -> None:
        """The check by a mark belongs to a person's profile: a new one has none yet."""
        self.mark_found = None
        if self.clip is not None or self.camera is None:
            return
        if self._short:
            self.mark_found = self._world.mark(self.camera, self.worn)
        else:
            self._keep_mark()

    def _keep_mark(self) -> None:
        """Keep what the check showed, or that there is none; a full disk loses that alone."""
        if self.camera is not None:
            with contextlib.suppress(OSError, TurnpostError):
                self._world.keep_mark(self.camera, self.worn, self.mark_found)

    def _fit_failed(self, text: str) -> None:
        if self.phase != Phase.fitting:
            return
        self.fit_message = text
        if self.clip is not None:
            self._after_setup()
        else:
            self._enter(Phase.setup_failed)


def _screen_of(step: Step) -> Point | None:
    place = (step.model_extra or {}).get("screen_mm")
    return (float(place[0]), float(place[1])) if place is not None else None
