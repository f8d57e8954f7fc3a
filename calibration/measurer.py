"""One source's measurer: holds the set-up back, fits the person, then measures frame by frame."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from pathlib import Path

from calibration.check import check_gaze, head_reach, is_coarse, moving_samples
from calibration.fit import fit_profile
from calibration.profile_file import load_profile
from calibration.report import SetupReport
from calibration.reuse import rest_anew, still_reads
from tracker.errors import InputError
from tracker.frame import Frame
from tracker.head.facing import facing_deg
from tracker.head.perspective import Pinhole
from tracker.head.shape import FaceShape, generic_shape
from tracker.lens import DEFAULT_LENS, Lens, lens_of
from tracker.measure import measure
from tracker.profile import Profile
from tracker.sample import Sample
from tracker.session.stage import Step
from tracker.vision.landmarks import Face
from tracker.vision.models import canonical_face_triangles, canonical_face_vertices_cm
from tracker.vision.observer import Observation, Observer

#: Frames of a set-up that are kept at most (two minutes at 30 frames/s).
MAX_HELD = 3600


class Measurer:
    """Pixels of one source to samples.

    Until a profile is known every observation is held back, and samples carry
    only what needs no person (time, light, face height); after :meth:`fit` the
    held frames can be measured again with :meth:`remeasure`.
    """

    def __init__(
        self,
        lens: Lens = DEFAULT_LENS,
        profile: Profile | None = None,
        kept: Profile | None = None,
    ) -> None:
        self._observer = Observer()
        self._shape: FaceShape = generic_shape(
            canonical_face_vertices_cm(), canonical_face_triangles()
        )
        self._lens = lens
        self._profile = profile
        self._kept = kept
        self._held: list[Observation] = []
        #: Where the face looks, yaw and pitch in degrees, before anything is known of the
        #: person: rough, but its changes tell how far a head is turned. None without a face.
        self.facing_deg: tuple[float, float] | None = None

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
        if self._profile is not None:
            self.facing_deg = None
            # Who has gone on without measuring the set-up again does not want it.
            self._held.clear()
            return measure(observation, self._profile)
        if len(self._held) < MAX_HELD:
            self._held.append(observation)
        face = observation.face
        self.facing_deg = None if face is None else self._facing(observation, face)
        return Sample(
            observation.time_s,
            face_height_px=float("nan") if face is None else face.height_px,
            light=observation.light,
            reason="no_setup" if face is not None else "no_face",
        )

    def _facing(self, seen: Observation, face: Face) -> tuple[float, float]:
        """Where a face looks, with the lens as far as it is known."""
        camera = Pinhole.from_fov(seen.width_px, seen.height_px, self._lens.known_deg)
        return facing_deg(self._shape, face.points_px, face.depth_px, camera)

    def fit(self, steps: Sequence[Step]) -> SetupReport:
        """Fit the person on the frames held back so far.

        Raises
        ------
        InputError
            When too little was seen; the frames stay held, so that a set-up can
            be repeated.
        """
        if self._kept is not None:
            profile, placed = rest_anew(self._kept, self._held, steps)
        else:
            profile, placed = self._whole(steps)
        self._profile = profile
        error = profile.gaze.error_deg if profile.gaze is not None else float("nan")
        findings = () if profile.gaze is not None else ("gaze_not_fitted",)
        moving = moving_samples(profile, self._held, placed)
        if is_coarse(moving):
            findings = (*findings, "coarse_picture")
        reach = None if profile.gaze is None else profile.gaze.reach
        check = check_gaze(profile, self._held, placed)
        if self._kept is not None and profile.gaze is not None and not still_reads(check):
            raise InputError("your eyes look another way than last time; do the whole set-up")
        return SetupReport(
            profile,
            placed,
            error,
            reach,
            findings,
            profile.gaze is not None,
            check,
            head_reach(moving),
            check_gaze(profile, self._held, placed, wall=True),
        )

    def _whole(self, steps: Sequence[Step]) -> tuple[Profile, list[Step]]:
        """A whole set-up, with the lens where it holds for these pictures."""
        lens = self._lens
        if self._held and not lens.fits(self._held[0].width_px, self._held[0].height_px):
            lens = DEFAULT_LENS
        profile, placed = fit_profile(self._held, steps, self._shape, lens.known_deg)
        return replace(profile, fov_source=lens.source, fov_error_deg=lens.error_deg), placed

    def remeasure(self) -> list[Sample]:
        """Samples of the held frames with the fitted profile; lets the frames go."""
        if self._profile is None:
            return []
        samples = [measure(o, self._profile) for o in self._held]
        self._held.clear()
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
