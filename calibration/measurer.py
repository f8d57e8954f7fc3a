"""One source's measurer: holds the set-up back, fits the person, then measures frame by frame."""

from __future__ import annotations

from collections import deque
from collections.abc import Sequence
from dataclasses import replace
from pathlib import Path

from calibration.again import hindrance, worse
from calibration.check import check_gaze, head_reach, is_coarse, moving_samples
from calibration.fit import fit_profile
from calibration.parts import MAX_HELD, part_of
from calibration.parts_found import find_parts, seen_in
from calibration.placing import placed as placed_in
from calibration.profile_file import load_profile
from calibration.report import Again, SetupReport
from calibration.reuse import rest_anew, still_reads
from calibration.whose import Whose
from tracker.errors import InputError
from tracker.frame import Frame
from tracker.head.facing import facing_deg
from tracker.head.perspective import Pinhole
from tracker.head.shape import FaceShape, generic_shape, pose_of_landmarks
from tracker.lens import DEFAULT_LENS, Lens, lens_of
from tracker.measure import measure
from tracker.profile import Profile
from tracker.sample import Sample
from tracker.session.stage import Step
from tracker.vision.models import canonical_face_triangles, canonical_face_vertices_cm
from tracker.vision.observer import Observation, Observer


class Measurer:
    """Pixels of one source to samples.

    Until a profile is known every observation is held back, and samples carry
    only what needs no person (time, light, face height); after :meth:`fit` the
    held frames can be measured again with :meth:`remeasure`. Those of the set-up itself stay
    until :meth:`hold_setup` lets them go, so that one part of it can be done again.
    """

    def __init__(
        self,
        lens: Lens = DEFAULT_LENS,
        profile: Profile | None = None,
        kept: Profile | None = None,
    ) -> None:
        self._observer, self._whose = Observer(), Whose()
        self._shape: FaceShape = generic_shape(
            canonical_face_vertices_cm(), canonical_face_triangles()
        )
        self._lens = lens
        self._profile = profile
        self._kept = kept
        # The newest, however long one has looked at oneself before the set-up.
        self._held: deque[Observation] = deque(maxlen=MAX_HELD)
        self._setup: list[Observation] = []
        self._report: SetupReport | None = None
        self._again = False
        #: Where the face looks, yaw and pitch in degrees, before anything is known of the
        #: person: rough, but its changes tell how far a head is turned. None without a face.
        self.facing_deg: tuple[float, float] | None = None
        #: How far from the camera the eyes are then, by a face of the usual size; mm.
        self.away_mm: float | None = None

    @property
    def profile(self) -> Profile | None:
        """The person in use, None before a set-up."""
        return self._profile

    def watch_body(self, on: bool, every_s: float = 0.0) -> None:
        """Look for shoulders and hands, too, or no longer; not more often than every so long."""
        self._observer.watch_body(on, every_s)

    def take(self, frame: Frame) -> Sample:
        """Measure one frame."""
        observation = self._observer.observe(frame)
        if self._profile is not None and not self._again:
            self.facing_deg = self.away_mm = None
            # Who has gone on without measuring the set-up again does not want it.
            self._held.clear()
            return self._theirs(observation, self._profile)
        self._held.append(observation)
        face = observation.face
        self.facing_deg = self.away_mm = None
        if face is not None:
            camera = self._rough_camera(observation)
            self.facing_deg = facing_deg(self._shape, face.points_px, face.depth_px, camera)
            pose, _ = pose_of_landmarks(self._shape, face.points_px, camera)
            self.away_mm = float(pose.apply(self._shape.eyes_mm).mean(axis=0)[2])
        return Sample(
            observation.time_s,
            face_height_px=float("nan") if face is None else face.height_px,
            light=observation.light,
            reason="no_setup" if face is not None else "no_face",
        )

    def _theirs(self, seen: Observation, profile: Profile) -> Sample:
        """Sample of the patient, without figures while the face may be another's."""
        other = None if seen.other is None else measure(seen.other, profile)
        sample = self._whose.take(seen, measure(seen, profile), other)
        if self._whose.follow_other and seen.other is not None:
            self._observer.follow(seen.other)
        self._observer.look_for_others(self._whose.in_doubt)
        return sample

    def _rough_camera(self, seen: Observation) -> Pinhole:
        """The camera, with the lens as far as it is known."""
        return Pinhole.from_fov(seen.width_px, seen.height_px, self._lens.known_deg)

    def hold_setup(self, *, keep: bool, take: bool) -> None:
        """Keep the pictures of the set-up for a part of it to be done again, or let them go.

        Parameters
        ----------
        keep
            Whether those that were fitted stay.
        take
            Whether the frames from now on are that part, and measured by nothing yet.
        """
        self._held.clear()
        self._again = keep and take and self._profile is not None
        if take:
            self._forget_doubt()
        if not keep:
            self._setup, self._report = [], None

    def _forget_doubt(self) -> None:
        """Whoever sits there for a set-up is the patient."""
        self._whose = Whose()
        self._observer.look_for_others(False)

    def fit(self, steps: Sequence[Step]) -> SetupReport:
        """Fit the person on the frames held back so far.

        Raises
        ------
        InputError
            When too little was seen; the frames stay held, so that a set-up can
            be repeated.
        """
        observations = list(self._held)
        report = self._fitted(observations, steps)
        # What is done again later is held against this one (``calibration.again.worse``), and a
        # check done again counts, however it comes out.
        if self._kept is not None and report.ok and not still_reads(report.check):
            raise InputError("your eyes look another way than last time; do the whole set-up")
        self._take_over(report, observations)
        return report

    def fit_again(self, steps: Sequence[Step], part: str) -> SetupReport:
        """Fit the person anew with one part in place of the old one, where that is no worse.

        Else, and after an error, everything stays as it was.

        Parameters
        ----------
        steps
            All steps of the set-up, in the order of its parts, those of ``part`` the new ones.
        part
            One of ``calibration.parts.PARTS``.

        Raises
        ------
        InputError
            When the pictures of the other parts are gone, or too little was seen.
        """
        old, fresh, self._again = self._report, list(self._held), False
        self._held.clear()
        if old is None or not self._setup:
            raise InputError("the pictures of the other steps are gone; do the whole set-up")
        own = [s for s in steps if part_of(s) == part]
        why = hindrance(old.profile, fresh, own)
        if why:
            return replace(old, again=Again(part, why))
        others = [s for s in steps if part_of(s) != part]
        observations = [*seen_in(self._setup, others), *seen_in(fresh, own)]
        observations.sort(key=lambda o: o.time_s)
        if part == "check":
            # Nothing is learnt from it: the person stays the same to the last bit.
            laid = [placed_in(s, old.profile.rest) for s in steps]
            report = self._reported(old.profile, laid, observations)
        else:
            report = self._fitted(observations, steps)
        why = worse(old, report, part)
        if why:
            return replace(old, again=Again(part, why))
        self._take_over(report, observations)
        return replace(report, again=Again(part))

    def _take_over(self, report: SetupReport, observations: Sequence[Observation]) -> None:
        """From now on this is the person."""
        self._profile, self._report = report.profile, report
        self._forget_doubt()
        self._setup = seen_in(observations, report.steps)

    def _fitted(self, observations: Sequence[Observation], steps: Sequence[Step]) -> SetupReport:
        """A fit and how it came out; nothing is taken over yet."""
        if self._kept is not None:
            profile, laid = rest_anew(self._kept, observations, steps)
        else:
            profile, laid = self._whole(observations, steps)
        return self._reported(profile, laid, observations)

    def _reported(
        self, profile: Profile, laid: list[Step], observations: Sequence[Observation]
    ) -> SetupReport:
        """How a set-up came out, for a person as fitted."""
        error = profile.gaze.error_deg if profile.gaze is not None else float("nan")
        findings = () if profile.gaze is not None else ("gaze_not_fitted",)
        moving = moving_samples(profile, observations, laid)
        if is_coarse(moving):
            findings = (*findings, "coarse_picture")
        gaze_reach = None if profile.gaze is None else profile.gaze.reach
        check, reach = check_gaze(profile, observations, laid), head_reach(moving)
        return SetupReport(
            profile,
            laid,
            error,
            gaze_reach,
            findings,
            profile.gaze is not None,
            check,
            reach,
            find_parts(profile, observations, laid, check, reach),
            wall_check=check_gaze(profile, observations, laid, wall=True),
        )

    def _whole(
        self, observations: Sequence[Observation], steps: Sequence[Step]
    ) -> tuple[Profile, list[Step]]:
        """A whole set-up, with the lens where it holds for these pictures."""
        lens = self._lens
        if observations and not lens.fits(observations[0].width_px, observations[0].height_px):
            lens = DEFAULT_LENS
        profile, laid = fit_profile(observations, steps, self._shape, lens.known_deg)
        return replace(profile, fov_source=lens.source, fov_error_deg=lens.error_deg), laid

    def remeasure(self) -> list[Sample]:
        """Samples of the held frames with the fitted profile; lets the frames go."""
        if self._profile is None:
            return []
        samples = [measure(o, self._profile) for o in self._held]
        self.hold_setup(keep=False, take=False)
        return samples

    def close(self) -> None:
        """Free native parts."""
        self._observer.close()


def make_measurer(
    vertical_fov_deg: float | None = None,
    profile: Profile | None = None,
    kept: Path | None = None,
    lens: Lens | None = None,
) -> Measurer:
    """Measurer for a fresh source; a child process imports and calls it.

    Parameters
    ----------
    vertical_fov_deg
        Field of view that a clip's stage log states.
    profile
        A person whose set-up was done in front of this source.
    kept
        A profile's file: its set-up is taken anew in short.
    lens
        The camera's lens, where more is known of it than ``vertical_fov_deg`` says.
    """
    person = None if kept is None else load_profile(kept).profile
    return Measurer(lens or lens_of(vertical_fov_deg), profile, person)
