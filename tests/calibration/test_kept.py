"""A kept profile: the same after a round trip, refused when damaged, tried before it is used."""

from __future__ import annotations

import io
import json
import zipfile
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest

from calibration.check import GazeCheck, check_gaze
from calibration.measurer import make_measurer
from calibration.parts import in_order, part_of
from calibration.profile_file import (
    MAX_HEADER_BYTES,
    MAX_UNPACKED_BYTES,
    about_profile,
    load_profile,
    save_profile,
)
from calibration.report import Again
from calibration.reuse import rest_anew, still_reads
from sample_clips import shipped_clip
from tests.calibration.conftest import FOV_DEG, observed
from tracker.errors import InputError
from tracker.head.perspective import rotation_of_vector
from tracker.measure import measure
from tracker.profile import Profile
from tracker.session.stage import Step, load_stage_log, setup_steps, stage_path_of
from tracker.vision.clips import open_clip
from tracker.vision.observer import Observation

Seen = tuple[list[Observation], list[Step]]


def short(steps: list[Step]) -> list[Step]:
    """Rest, three looks that nothing is learnt from, and the slow turn."""
    looks = [s for s in steps if s.step == "look"][:3]
    kept = [Step.model_validate({**s.model_dump(), "held_out": True}) for s in looks]
    moving = [s for s in steps if s.step == "turn_slowly"]
    return [*[s for s in steps if s.step == "rest"], *kept, *moving]


# --- the file ---


@pytest.fixture
def file(tmp_path: Path, person: Profile) -> Path:
    path = tmp_path / "person.npz"
    save_profile(path, person, {"camera": "A camera", "glasses": "none"})
    return path


def test_what_was_kept_measures_to_the_last_bit_as_before(
    file: Path, person: Profile, seen: Seen
) -> None:
    kept = load_profile(file)
    assert kept.about == {"camera": "A camera", "glasses": "none"}
    for observation in seen[0][::20]:
        assert repr(measure(observation, kept.profile)) == repr(measure(observation, person))


def test_a_person_without_a_gaze_model_can_be_kept(tmp_path: Path, person: Profile) -> None:
    path = tmp_path / "p.npz"
    save_profile(path, replace(person, gaze=None), {})
    assert load_profile(path).profile.gaze is None


def test_only_its_owner_can_read_it(file: Path) -> None:
    assert file.stat().st_mode & 0o077 == 0


def test_a_small_file_that_unpacks_to_much_is_not_unpacked(tmp_path: Path) -> None:
    path = tmp_path / "p.npz"
    with zipfile.ZipFile(path, "w", zipfile.ZIP_DEFLATED) as packed:
        packed.writestr("header.npy", bytes(MAX_HEADER_BYTES + 1))
    assert about_profile(path) == {}
    with zipfile.ZipFile(path, "w", zipfile.ZIP_DEFLATED) as packed:
        packed.writestr("template.values.npy", bytes(MAX_UNPACKED_BYTES + 1))
    assert path.stat().st_size < MAX_UNPACKED_BYTES / 100
    with pytest.raises(InputError, match="too large for the profile"):
        load_profile(path)


def spoilt(file: Path, name: str, value: object) -> None:
    """Another value for one array, or none."""
    with np.load(file) as held:
        arrays = {n: held[n] for n in held.files}
    if value is None:
        del arrays[name]
    else:
        arrays[name] = np.asarray(value)
    content = io.BytesIO()
    np.savez(content, **arrays)
    file.write_bytes(content.getvalue())


@pytest.mark.parametrize(
    ("name", "value"),
    [
        ("template.values", None),
        ("template.values", np.zeros((3, 3))),
        ("rest.axes", np.full((3, 3), np.nan)),
        ("shape.triangles", [[0, 1, 468]]),
        ("gaze.eyes.0.rectified.weights", np.zeros((5, 2))),
        ("gaze.eyes.0.rectified.usual", 0.0),
        ("eyes_mm", [["a", "b", "c"], ["d", "e", "f"]]),
        ("header", np.frombuffer(b"{}", np.uint8)),
        ("header", np.frombuffer(b"[[[", np.uint8)),
        ("header", [1.5, 2.5]),
    ],
)
def test_a_damaged_one_is_refused_and_stays(file: Path, name: str, value: object) -> None:
    spoilt(file, name, value)
    before = file.read_bytes()
    with pytest.raises(InputError, match=r"person\.npz"):
        load_profile(file)
    assert file.read_bytes() == before


@pytest.mark.parametrize(
    ("field", "value"),
    [
        ("width_px", float("inf")),
        ("width_px", -5),
        ("vertical_fov_deg", 400),
        ("vertical_fov_deg", float("nan")),
        ("lens", [1.0]),
        ("lens", [-500.0, 320.0, 240.0]),
        ("lids", [0.05, 0.3]),
        ("eyes", "third"),
        ("fov_source", "guessed"),
        ("fov_error_deg", 120.0),
        ("about", None),
    ],
)
def test_a_header_that_makes_no_sense_is_refused(file: Path, field: str, value: object) -> None:
    with np.load(file) as held:
        header = json.loads(held["header"].tobytes())
    text = json.dumps(header | {field: value}).encode()
    spoilt(file, "header", np.frombuffer(text, np.uint8))
    with pytest.raises(InputError):
        load_profile(file)


@pytest.mark.parametrize(
    "member",
    [
        b"\x93NUMPY\x01\x00v\x00{'descr': '<f8', 'fortran_order': False, "
        b"'shape': (10000000000000,), }" + b" " * 40 + b"\n",
        b"no array at all",
        b"",
    ],
)
def test_members_that_are_no_arrays_are_refused(file: Path, member: bytes) -> None:
    with zipfile.ZipFile(file) as whole:
        parts = {n: whole.read(n) for n in whole.namelist()}
    with zipfile.ZipFile(file, "w") as packed:
        for name, content in parts.items():
            packed.writestr(name, member if name == "eyes_mm.npy" else content)
    with pytest.raises(InputError):
        load_profile(file)


def test_a_header_nested_without_end_is_refused(file: Path) -> None:
    spoilt(file, "header", np.frombuffer(b"[" * 100_000, np.uint8))
    with pytest.raises(InputError):
        load_profile(file)


def test_one_that_unpacks_to_too_much_is_refused_before_it_is(
    file: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("calibration.profile_file.MAX_UNPACKED_BYTES", 1000)
    monkeypatch.setattr("numpy.load", None)
    with pytest.raises(InputError, match="too large"):
        load_profile(file)


@pytest.mark.parametrize(("version", "said"), [(3, "another version"), (1, "earlier version")])
def test_one_of_another_version_is_refused_kindly(file: Path, version: int, said: str) -> None:
    with np.load(file) as held:
        header = json.loads(held["header"].tobytes())
    text = json.dumps(header | {"format_version": version}).encode()
    spoilt(file, "header", np.frombuffer(text, np.uint8))
    with pytest.raises(InputError, match=said):
        load_profile(file)


@pytest.mark.parametrize("share", [0.0, 0.3, 0.999])
def test_a_cut_one_is_refused(file: Path, share: float) -> None:
    whole = file.read_bytes()
    file.write_bytes(whole[: int(share * len(whole))])
    with pytest.raises(InputError):
        load_profile(file)


# --- using it ---


def test_the_same_person_moved_gets_a_new_rest(person: Profile, seen: Seen) -> None:
    """As if the head had been kept nodded by 4 degrees, 20 mm to the side and nearer by 30."""
    observations, steps = seen
    nodded = rotation_of_vector(np.radians([4.0, 0.0, 0.0]))
    assert person.gaze is not None
    rest = replace(
        person.rest,
        axes=nodded @ person.rest.axes,
        turned=nodded @ person.rest.turned,
        origin_mm=person.rest.origin_mm + np.array([20.0, 0.0, -30.0]),
        neck_mm=nodded @ person.rest.neck_mm,
    )
    moved = replace(person, rest=rest)
    again, placed = rest_anew(moved, observations, short(steps))
    still = [o for o in observations if 0.5 < o.time_s < 1.5]
    for observation in still[::6]:
        then, now = measure(observation, person), measure(observation, again)
        for name in ("head_yaw_deg", "head_pitch_deg", "head_roll_deg"):
            assert getattr(now, name) == pytest.approx(getattr(then, name), abs=0.4)
        assert abs(now.head_x_mm) < 2 and abs(now.head_z_mm) < 4
        if np.isfinite(then.gaze_yaw_deg):
            assert now.gaze_yaw_deg == pytest.approx(then.gaze_yaw_deg, abs=0.7)
    check = check_gaze(again, observations, placed)
    assert check is not None and check.looks == 3 and still_reads(check)


@pytest.mark.parametrize("other", ["jumps-good", "no-face-for-a-while"])
def test_another_face_is_refused(person: Profile, other: str) -> None:
    observations, steps = observed(other, until_s=4.5)
    with pytest.raises(InputError, match="does not fit this face"):
        rest_anew(person, observations, short(steps))


def test_another_camera_and_another_place_are_refused(person: Profile, seen: Seen) -> None:
    observations, steps = seen
    with pytest.raises(InputError, match="another camera"):
        rest_anew(replace(person, width_px=1280), observations, short(steps))
    with pytest.raises(InputError, match="another camera"):
        rest_anew(person, [], short(steps))
    far = replace(person.rest, origin_mm=person.rest.origin_mm * 1.6)
    with pytest.raises(InputError, match="nearer to"):
        rest_anew(replace(person, rest=far), observations, short(steps))
    with pytest.raises(InputError, match="long enough"):
        rest_anew(person, observations[:5], short(steps))


@pytest.mark.parametrize(
    ("check", "reads"),
    [(None, False), (GazeCheck(0.9, 40, 3), True), (GazeCheck(2.3, 40, 3), False)],
)
def test_eyes_that_are_read_too_coarsely_need_the_whole_set_up(
    check: GazeCheck | None, reads: bool
) -> None:
    assert still_reads(check) == reads
    assert not still_reads(GazeCheck(float("nan"), 0, 0))


def test_the_measurer_takes_a_kept_person_in_short(file: Path) -> None:
    clip = shipped_clip("turns-good")
    steps = setup_steps(load_stage_log(stage_path_of(clip)).steps)
    asked = short(steps)
    measurer = make_measurer(FOV_DEG, kept=file)
    with open_clip(clip) as frames:
        for frame in frames:
            if frame.time_s >= asked[-1].to_s:
                break
            assert np.isnan(measurer.take(frame).head_yaw_deg)  # nothing before the rest is known
        report = measurer.fit(asked)
        sample = measurer.take(frame)
    measurer.close()
    assert report.check is not None and report.check.looks == 3
    assert report.ok and [s.step for s in report.steps] == [s.step for s in asked]
    assert np.isfinite(sample.head_yaw_deg)


def test_a_check_done_again_counts_with_a_kept_person_too(file: Path, seen: Seen) -> None:
    """Only a whole short set-up is refused for it: the newer figure takes the old one's place."""
    observations, steps = seen
    asked = in_order(short(steps))
    measurer = make_measurer(FOV_DEG, kept=file)
    measurer._held.extend(observations)
    before = measurer.fit(asked)
    later = []
    for look in (s for s in asked if part_of(s) == "check"):
        x, y, z = look.target_mm or (0.0, 0.0, 600.0)
        # As if the eyes had been on something 200 mm beside the target.
        there = {"from_s": look.from_s + 100.0, "to_s": look.to_s + 100.0}
        later.append(look.model_copy(update=there | {"target_mm": (x + 200.0, y, z)}))
    measurer.hold_setup(keep=True, take=True)
    measurer._held.extend(replace(o, time_s=o.time_s + 100.0) for o in observations)
    others = [s for s in before.steps if part_of(s) != "check"]
    report = measurer.fit_again(in_order([*others, *later]), "check")
    measurer.close()
    assert report.again == Again("check") and report.profile is before.profile
    assert still_reads(before.check) and not still_reads(report.check)
    (part,) = (p for p in report.parts if p.part == "check")
    assert report.check is not None and part.error_deg == report.check.error_deg
    # From the beginning such a person is still sent to the whole set-up.
    fresh = make_measurer(FOV_DEG, kept=file)
    fresh._held.extend(replace(o, time_s=o.time_s + 100.0) for o in observations)
    moved = [
        s.model_copy(update={"from_s": s.from_s + 100.0, "to_s": s.to_s + 100.0})
        for s in asked
        if part_of(s) != "check"
    ]
    with pytest.raises(InputError, match="another way than last time"):
        fresh.fit(in_order([*moved, *later]))
    fresh.close()
