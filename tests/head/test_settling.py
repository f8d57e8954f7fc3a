"""What the alignment says of the pose it ends at: the weights are its own, and no fit is none."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import numpy as np
import pytest

from calibration.face_depth import body_pixels
from tests.calibration.test_face_depth import CAMERA, HEAD, REST_MM, surface_of, turn
from tracker.head import patch_loops
from tracker.head.alignment import align
from tracker.head.crop import GreyCrop, sample_bilinear
from tracker.head.perspective import Pose
from tracker.head.template import LOOKED_AT, Template

TRUTH = turn(12.0, 3.0)
FAR = TRUTH.moved(np.array([0.02, -0.03, 0.01, 1.0, 1.0, 5.0]))


@pytest.fixture(scope="module")
def template() -> Template:
    surface = surface_of(HEAD)
    rest = HEAD.picture(CAMERA, Pose(np.eye(3), REST_MM))
    pixels = body_pixels(surface, np.zeros(len(surface.depth_mm)), CAMERA, REST_MM)
    return Template.cut(rest, CAMERA, REST_MM, pixels, surface.normals)


@pytest.fixture(scope="module")
def picture() -> GreyCrop:
    return HEAD.picture(CAMERA, TRUTH, noise=2.0)


def patches(template: Template) -> patch_loops.Patches:
    return (
        template.pixels_mm,
        template.values,
        template.gradients,
        template.centres_mm,
        template.normals,
        template.tangents_mm,
        template.rest_mm,
    )


def test_where_the_rounds_run_out_the_weights_are_those_of_the_pose_found(
    template: Template, picture: GreyCrop
) -> None:
    lens, of = picture.camera(CAMERA).numbers, patches(template)
    rotation, position, weight, misfit = patch_loops.settle(
        picture.image, lens, of, FAR.rotation, FAR.position_mm, 1
    )
    there = patch_loops._look(picture.image, lens, of, rotation, position)
    assert weight == pytest.approx(there[0]) and misfit == pytest.approx(there[1])
    # It can fail: at the pose before that one step they were others.
    before = patch_loops._look(picture.image, lens, of, FAR.rotation, FAR.position_mm)
    assert np.abs(before[1] - misfit).max() > 0.01


@pytest.mark.parametrize(("rounds", "more"), [(20, 0), (1, 1)])
def test_a_frame_that_settles_looks_no_oftener_than_it_steps(
    template: Template,
    picture: GreyCrop,
    rounds: int,
    more: int,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    count = {"look": 0, "move": 0}

    def counted(name: str, function: object) -> object:
        def inner(*args: object) -> object:
            count[name] += 1
            return function(*args)  # type: ignore[operator]

        return inner

    monkeypatch.setattr(patch_loops, "_look", counted("look", patch_loops._look))
    monkeypatch.setattr(patch_loops, "move", counted("move", patch_loops.move))
    # Where nothing is compiled, the function is plain already.
    plain = getattr(patch_loops.settle, "py_func", patch_loops.settle)
    plain(
        picture.image,
        picture.camera(CAMERA).numbers,
        patches(template),
        FAR.rotation,
        FAR.position_mm,
        rounds,
    )
    assert 3 <= count["move"] < 20
    assert count["look"] - count["move"] == more


@pytest.mark.parametrize("rounds", [1, 20])
@pytest.mark.parametrize("patch", [0, 1], ids=["in the first steps", "in the last ones"])
def test_a_step_that_is_not_a_number_is_no_fit(
    template: Template, picture: GreyCrop, rounds: int, patch: int
) -> None:
    spoilt = [part.copy() for part in patches(template)]
    used = patch_loops._look(
        picture.image,
        picture.camera(CAMERA).numbers,
        patches(template),
        TRUTH.rotation,
        TRUTH.position_mm,
    )[0]
    of_step = np.arange(len(used)) % patch_loops.FEW_OF == patch
    heavy = int(np.flatnonzero((used > 0.5) & of_step)[0])
    spoilt[2][heavy] = np.nan
    rotation, position, weight, _ = patch_loops.settle(
        picture.image,
        picture.camera(CAMERA).numbers,
        tuple(spoilt),  # type: ignore[arg-type]
        FAR.rotation,
        FAR.position_mm,
        rounds,
    )
    assert not weight.any()
    assert np.isfinite(rotation).all() and np.isfinite(position).all()
    broken = replace(template, gradients=spoilt[2])
    found = align(broken, picture, CAMERA, FAR, rounds=rounds)
    assert (found.likeness, found.good) == (0.0, 0.0) and found.pose is FAR


def test_a_smeared_picture_is_as_steep_as_the_smear_leaves(
    template: Template, picture: GreyCrop
) -> None:
    """Against the slopes of the patches as NumPy takes them, two-sided along one pixel."""
    rest = Pose(np.eye(3), REST_MM)
    sharp = HEAD.picture(CAMERA, rest)
    assert template.sharpness(sharp, rest, CAMERA) == pytest.approx(1.0, abs=0.15)
    rows = np.ones(9) / 9
    pixels = np.apply_along_axis(np.convolve, 1, sharp.pixels, rows, "same").astype(np.float32)
    smeared = GreyCrop(pixels, sharp.left_px, sharp.top_px, sharp.scale)
    found = template.sharpness(smeared, rest, CAMERA)
    assert found == pytest.approx(steep_by_numpy(template, smeared, rest), rel=0.02)
    assert found < 0.9 * template.sharpness(sharp, rest, CAMERA)


def steep_by_numpy(template: Template, crop: GreyCrop, pose: Pose) -> float:
    """The same from whole arrays: patches freed of mean and contrast, least of two directions."""
    some = slice(None, None, max(1, len(template.values) // LOOKED_AT))
    camera = crop.camera(CAMERA)

    def seen(aside_mm: Any) -> Any:
        places = camera.project(pose.apply(template.pixels_mm[some] + aside_mm))
        return sample_bilinear(crop.image, places).astype(float)

    steps = [0.5 * template.tangents_mm[some][:, None, :, axis] for axis in (0, 1)]
    patch = np.mean([seen(sign * s) for s in steps for sign in (1, -1)], axis=0)
    slopes = np.stack([seen(s) - seen(-s) for s in steps], axis=-1)
    patch -= patch.mean(axis=1, keepdims=True)
    slopes -= slopes.mean(axis=1, keepdims=True)
    spread = np.sqrt((patch**2).mean(axis=1))[:, None]
    unit = patch / spread
    along = (unit[..., None] * slopes).mean(axis=1, keepdims=True)
    slopes = (slopes - unit[..., None] * along) / spread[..., None]
    steep = np.sqrt((slopes**2).mean(axis=1))
    usual = np.sqrt((template.gradients[some].astype(float) ** 2).mean(axis=1))
    return float(np.median(steep / usual, axis=0).min())
