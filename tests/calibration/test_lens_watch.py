"""Watching a sheet that somebody holds up: what is said, what is taken, when it is over."""

from __future__ import annotations

import numpy as np

from calibration.lens_watch import MOST, SheetWatcher, make_watcher
from tests.calibration.sheets import held, render
from tracker.frame import Frame
from tracker.vision.sheet import find_sheet


def show(watcher: SheetWatcher, image: np.ndarray, from_s: float, times: int = 3) -> list[str]:
    frames = [Frame(k, from_s + 0.12 * k, image) for k in range(times)]
    return [watcher.take(f).reason for f in frames]


def test_six_tilts_end_it() -> None:
    watcher = make_watcher("paper")
    rng = np.random.default_rng(1)
    views = [v for v in held(rng, 44.0, 8) if find_sheet(v.image) is not None]
    said = []
    for k, view in enumerate(views):
        said += show(watcher, view.image, 10.0 * k)
    report = watcher.fit([])
    assert "sheet_moving" in said and "sheet_taken" in said and "sheet_same" in said
    assert report.done and report.views >= 6
    assert report.lens is not None and abs(report.lens.vertical_fov_deg - 44.0) < 0.6
    assert report.lens.aspect == 640 / 480


def test_the_same_tilt_is_taken_once_and_nothing_comes_of_it() -> None:
    watcher = make_watcher("paper")
    rng = np.random.default_rng(2)
    view = render(rng, 52.0, turn_rad=(0.5, 0, 0), away_mm=500.0)
    said = show(watcher, view.image, 0.0, 12)
    assert said.count("sheet_taken") == 1 and said[-1] == "sheet_same"
    report = watcher.fit([])
    assert report.views == 1 and report.lens is None and not report.done


def test_with_a_measured_distance_three_looks_do() -> None:
    watcher = make_watcher("paper", 500.0)
    rng = np.random.default_rng(3)
    view = render(rng, 52.0, turn_rad=(0.03, 0.02, 0), away_mm=500.0)
    show(watcher, view.image, 0.0, 5)
    report = watcher.fit([])
    assert report.done and report.lens is not None
    assert abs(report.lens.vertical_fov_deg - 52.0) < 0.6


def test_nothing_held_up() -> None:
    watcher = make_watcher("card")
    assert set(show(watcher, np.full((480, 640, 3), 90, np.uint8), 0.0)) == {"sheet_none"}
    assert watcher.fit([]).views == 0


def test_sheets_held_square_are_said_to_be_so() -> None:
    watcher = make_watcher("paper")
    rng = np.random.default_rng(4)
    for k in range(7):
        # Turned in its own plane and by less than tells anything.
        turn = (0.1 * np.cos(k), 0.1 * np.sin(k), 0.0)
        show(watcher, render(rng, 52.0, turn_rad=turn, away_mm=500.0).image, 10.0 * k)
    report = watcher.fit([])
    assert report.lens is None


def test_views_that_do_not_go_together_are_forgotten_once_there_are_most() -> None:
    """Something of another shape was held up; of fewer views it may still come right."""
    watcher = make_watcher("paper")
    watcher._size = (640, 480)
    rng = np.random.default_rng(3)
    one = np.array([[200.0, 150.0], [420.0, 160.0], [430.0, 320.0], [190.0, 310.0]])
    for count in (MOST - 1, MOST):
        watcher._views = [one + rng.normal(0.0, 40.0, (4, 2)) for _ in range(count)]
        report = watcher.fit([])
        assert report.lens is None and not report.done and report.why
        assert len(watcher._views) == (count if count < MOST else 0)
