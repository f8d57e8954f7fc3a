"""Depth fit and alignment on an ellipsoid whose picture is drawn exactly."""

import numpy as np
import pytest

from calibration.face_depth import body_pixels, fit_depth
from calibration.face_surface import Surface
from calibration.face_template import View, own_template
from tests.head.ellipsoid import CENTRE_MM, RADII_MM, Ellipsoid, about_neck
from tracker.head.alignment import align
from tracker.head.perspective import Pinhole, Pose, rotation_of_vector, vector_of_rotation
from tracker.head.template import Template

CAMERA = Pinhole.from_fov(640, 480, 52.0)
REST_MM = np.array([15.0, -20.0, 600.0])
HEAD = Ellipsoid()


def surface_of(shape: Ellipsoid) -> Surface:
    """Patches on a grid over the face's front, with the depths of a (wrong) shape."""
    rest = Pose(np.eye(3), REST_MM)
    xs, ys = np.meshgrid(np.arange(-40, 41, 8.0), np.arange(-40, 49, 8.0))
    centres = CAMERA.project(
        np.stack([xs.ravel(), ys.ravel(), np.zeros(xs.size)], axis=1) + REST_MM
    )
    offsets = (np.arange(6) - 2.5) * 1.6
    grid = np.stack(np.meshgrid(offsets, offsets), axis=-1).reshape(-1, 2)
    pixels = centres[:, None] + grid
    depth = shape.depth(CAMERA.rays(pixels.reshape(-1, 2)), rest).reshape(pixels.shape[:2])
    body = CAMERA.rays(centres) * depth.mean(axis=1)[:, None] - REST_MM
    return Surface(pixels, depth, shape.normals(body))


def turn(yaw_deg, pitch_deg, roll_deg=0.0):
    return about_neck(rotation_of_vector(np.radians([-pitch_deg, yaw_deg, roll_deg])), REST_MM)


def angle_deg(pose, truth):
    return np.degrees(vector_of_rotation(pose.rotation @ truth.rotation.T))


@pytest.fixture(scope="module")
def rest_crop():
    return HEAD.picture(CAMERA, Pose(np.eye(3), REST_MM))


@pytest.mark.parametrize(("yaw", "pitch"), [(0, 0), (12, 0), (-25, 4), (0, 14), (10, -15), (35, 0)])
def test_with_the_true_shape_the_pose_is_exact(rest_crop, yaw, pitch):
    surface = surface_of(HEAD)
    pixels = body_pixels(surface, np.zeros(len(surface.depth_mm)), CAMERA, REST_MM)
    template = Template.cut(rest_crop, CAMERA, REST_MM, pixels, surface.normals)
    truth = turn(yaw, pitch)
    start = truth.moved(np.radians([1.0, -1.5, 0.7, 0, 0, 0]) + np.array([0, 0, 0, 1.0, 1.0, 5.0]))
    found = align(template, HEAD.picture(CAMERA, truth, noise=2.0), CAMERA, start, rounds=10)
    assert np.abs(angle_deg(found.pose, truth)).max() < 0.2
    assert found.likeness > 0.8


def test_depth_is_recovered_from_a_face_a_fifth_too_flat(rest_crop):
    # Three quarters of the depth, with its front where the true face has it.
    flat = Ellipsoid(RADII_MM * [1.0, 1.0, 0.75], CENTRE_MM - [0, 0, 0.25 * RADII_MM[2]])
    surface = surface_of(flat)
    frames = []
    for k, t in enumerate(np.linspace(0, 2 * np.pi, 24)):
        for pose in (turn(22 * np.sin(t), 0.5), turn(0.3, 13 * np.sin(t))):
            start = pose.moved(np.radians([0.6, -0.8, 0.3, 0, 0, 0]))
            frames.append((HEAD.picture(CAMERA, pose, noise=2.0, seed=k), start))
    before = body_pixels(surface, np.zeros(len(surface.depth_mm)), CAMERA, REST_MM)
    generic = Template.cut(rest_crop, CAMERA, REST_MM, before, surface.normals)
    fitted = fit_depth(surface, generic, CAMERA, CAMERA, frames)

    slopes = {}
    truth_pixels = body_pixels(surface_of(HEAD), np.zeros(len(before)), CAMERA, REST_MM)
    for name, template in (("generic", generic), ("personal", fitted.template)):
        read = []
        # How deep the whole face lies can't be seen; the start allows for it.
        deeper = (template.pixels_mm - truth_pixels).mean(axis=(0, 1))
        for yaw, pitch in ((20, 0), (-20, 0), (0, 12), (0, -12)):
            truth = turn(yaw, pitch)
            start = truth.moved(np.r_[0, 0, 0, deeper - truth.rotation @ deeper])
            found = align(template, HEAD.picture(CAMERA, truth), CAMERA, start)
            x, y, _ = np.degrees(vector_of_rotation(found.pose.rotation))
            read.append((y / yaw) if yaw else (-x / pitch))
        slopes[name] = np.array(read)
    assert np.abs(slopes["generic"] - 1).max() > 0.04, slopes
    assert np.abs(slopes["personal"] - 1).max() < 0.02, slopes


def test_the_mean_look_of_noisy_pictures_is_nearer_to_the_skin_than_one_of_them():
    surface = surface_of(HEAD)
    pixels = body_pixels(surface, np.zeros(len(surface.depth_mm)), CAMERA, REST_MM)
    clean = Template.cut(
        HEAD.picture(CAMERA, Pose(np.eye(3), REST_MM)), CAMERA, REST_MM, pixels, surface.normals
    )
    poses = [turn(2.5 * np.sin(k), 2.0 * np.cos(1.7 * k)) for k in range(12)]
    views = [(HEAD.picture(CAMERA, p, noise=12.0, seed=k), p) for k, p in enumerate(poses)]
    noisy = HEAD.picture(CAMERA, Pose(np.eye(3), REST_MM), noise=12.0, seed=99)
    one = Template.cut(noisy, CAMERA, REST_MM, pixels, surface.normals)
    mean = one.averaged(views, CAMERA)
    for name in ("values", "gradients"):
        off = [
            float(np.sqrt(((getattr(t, name) - getattr(clean, name)) ** 2).mean()))
            for t in (one, mean)
        ]
        assert off[1] < 0.5 * off[0], name


def own(surface, rest_crop, angles):
    """A template from pictures at some yaws and pitches, whose poses are known to a degree."""
    views = []
    for k, (yaw, pitch) in enumerate(angles):
        pose = turn(yaw, pitch)
        start = pose.moved(np.radians([0.6, -0.8, 0.3, 0, 0, 0]))
        views.append(View(HEAD.picture(CAMERA, pose, noise=2.0, seed=k), start, True))
    return own_template(surface, rest_crop, CAMERA, REST_MM, views)


def test_a_head_that_keeps_still_leaves_the_generic_depth(rest_crop):
    surface = surface_of(HEAD)
    wander = np.random.default_rng(3).normal(0, 0.3, (24, 2))
    template = own(surface, rest_crop, wander)
    # A step aside is no turn.
    aside = Pose(np.eye(3), REST_MM + np.array([60.0, 0, 0]))
    found = align(template, HEAD.picture(CAMERA, aside, noise=2.0), CAMERA, aside)
    assert np.abs(angle_deg(found.pose, aside)).max() < 0.3
    generic = body_pixels(surface, np.zeros(len(surface.depth_mm)), CAMERA, REST_MM)
    assert np.abs(template.pixels_mm - generic).max() < 1e-6


def test_a_head_that_turns_gives_its_own_depth(rest_crop):
    flat = Ellipsoid(RADII_MM * [1.0, 1.0, 0.75], CENTRE_MM - [0, 0, 0.25 * RADII_MM[2]])
    waves = np.sin(np.linspace(0, 2 * np.pi, 16))
    template = own(
        surface_of(flat), rest_crop, [(22 * w, 0.5) for w in waves] + [(0.3, 13 * w) for w in waves]
    )
    truth = turn(20, 0)
    found = align(template, HEAD.picture(CAMERA, truth), CAMERA, truth)
    assert np.degrees(vector_of_rotation(found.pose.rotation))[1] == pytest.approx(20, rel=0.03)
