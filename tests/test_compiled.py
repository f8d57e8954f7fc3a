"""Compiled helpers against the libraries that they stand in for."""

import numba
import numpy as np
import pytest
from scipy.ndimage import map_coordinates

from tracker import compiled
from tracker.compiled import solve_positive
from tracker.head import patch_loops
from tracker.head.crop import _values as sample_loop
from tracker.head.crop import sample_bilinear
from tracker.head.perspective import _settle as fit_loop
from tracker.ready import make_ready

RNG = np.random.default_rng(3)


@pytest.mark.parametrize("size", [1, 3, 6])
def test_positive_equations_are_solved_as_by_numpy(size):
    root = RNG.normal(size=(size, size + 2)) * np.logspace(0, 3, size)[:, None]
    left, right = root @ root.T, RNG.normal(size=size)
    assert np.allclose(solve_positive(left, right), np.linalg.solve(left, right), rtol=1e-8)


def test_an_unknown_that_nothing_speaks_of_stays_zero():
    left, right = np.diag([4.0, 0.0, 2.0]), np.array([8.0, 0.0, 3.0])
    assert solve_positive(left, right) == pytest.approx([2.0, 0.0, 1.5])


def test_values_between_pixels_are_those_of_scipy():
    image = RNG.uniform(0, 255, (40, 50)).astype(np.float32)
    points = RNG.uniform([0, 0], [48.9, 38.9], (300, 2)).reshape(3, 100, 2)
    expected = map_coordinates(image.astype(float), [points[..., 1], points[..., 0]], order=1)
    assert np.allclose(sample_bilinear(image, points), expected, atol=1e-3)


def test_beyond_the_edge_the_edge_goes_on():
    image = np.arange(12, dtype=np.float32).reshape(3, 4)
    far = np.array([[-5.0, -5.0], [9.0, 9.0]])
    assert sample_bilinear(image, far) == pytest.approx([0.0, 11.0], abs=0.02)


def test_without_a_place_for_the_cache_it_is_compiled_all_the_same(monkeypatch):
    plain = numba.njit

    def no_locator(**options):
        if options.pop("cache", False):
            raise RuntimeError("cannot cache function: no locator available")
        return plain(**options)

    monkeypatch.setattr(numba, "njit", no_locator)
    assert compiled.compiled(lambda x: x + 1)(2) == 3


@pytest.mark.skipif(numba.config.DISABLE_JIT, reason="plain Python was asked for (coverage_run.py)")
def test_everything_compiled_is_ready_after_one_call():
    make_ready()
    called = (patch_loops.compare, patch_loops.moves, patch_loops.weights, patch_loops.settle)
    for function in (sample_loop, fit_loop, *called):
        assert len(function.signatures) >= 1, function
