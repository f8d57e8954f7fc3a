"""Eyes that lag behind the head in a set-up are read where they are, not where they should be.

The pictures are those of a shipped clip, in whose set-up the eyes hold the target. For eyes that
lag the target is put ahead of them instead, by what they would be behind: how eyes lag is written
down here, apart from what the program fits.
"""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from calibration import fit
from calibration.gaze_fit import GAP_S, LAG_S, LabelledEyes, fit_gaze, just_turned
from tests.calibration.conftest import FOV_DEG, SHAPE
from tracker.session.stage import Step
from tracker.vision.observer import Observation


@pytest.fixture(scope="module")
def held(seen: tuple[list[Observation], list[Step]]) -> LabelledEyes:
    """The labelled eyes of a set-up in which they held the target."""
    kept: list[LabelledEyes] = []
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(fit, "fit_gaze", kept.append)
        fit.fit_profile(*seen, SHAPE, FOV_DEG)
    return kept[0]


def behind(way_deg: np.ndarray, gain: float) -> np.ndarray:
    """How far eyes that turn back by ``gain`` are behind, after each way of the head.

    They jump onto the target once they are 2 degrees off, .25 s after the last jump at the soonest.
    """
    off, now, since = [], np.zeros(2), 1.0
    for way in way_deg:
        now, since = now + (1.0 - gain) * way, since + 1 / 15
        if since > 0.25 and float(np.hypot(*now)) > 2.0:
            now, since = np.zeros(2), 0.0
        off.append(now)
    return np.array(off)


def asked_ahead(eyes: LabelledEyes, how: str) -> LabelledEyes:
    """The same pictures, of eyes that would have been asked to be ahead of where they are."""
    # The eyes turn against the head, which is all that moves here.
    head = -eyes.mean_deg
    way = np.diff(head, axis=0, prepend=head[:1])
    # A frame and a half of 15 a second, or the half of each turn.
    off = 1.5 * way if how == "late by .1 s" else behind(way * eyes.moving[:, None], 0.5)
    off = np.where(np.abs(way) < 5.0, off, 0.0) * eyes.moving[:, None]
    return replace(eyes, angles_deg=eyes.angles_deg - off[:, None])


def read(eyes: LabelledEyes, pictures: LabelledEyes) -> np.ndarray:
    """What the fit to ``eyes`` reads of the pictures, yaw and pitch."""
    model = fit_gaze(eyes)
    assert model is not None
    both = [
        m.predict(pictures.rectified[:, k], pictures.cornered[:, k])
        for k, m in enumerate(model.eyes)
    ]
    return np.asarray(np.mean(both, axis=0)[pictures.moving])


@pytest.mark.parametrize("how", ["late by .1 s", "half of each turn"])
def test_what_eyes_lag_behind_is_not_learned_as_their_look(held: LabelledEyes, how: str) -> None:
    """Against the fit to the same pictures of eyes on the target, mean of the moving part.

    At most a third of what they are behind is read (common practice).
    """
    lagging, pictures = asked_ahead(held, how), read(held, held)
    third = np.abs(lagging.mean_deg - held.mean_deg)[held.moving].mean(axis=0) / 3
    assert (np.abs(read(lagging, held) - pictures).mean(axis=0) < third).all()
    # And there was something to be undone.
    untold = replace(lagging, turned_deg=np.zeros_like(lagging.turned_deg))
    assert (np.abs(read(untold, held) - pictures).mean(axis=0) > third).all()


def test_eyes_that_hold_the_target_are_read_as_before(held: LabelledEyes) -> None:
    """What is fitted beside costs them next to nothing: .15 degrees, common practice."""
    untold = replace(held, turned_deg=np.zeros_like(held.turned_deg))
    assert np.abs(read(held, held) - read(untold, held)).mean(axis=0).max() < 0.15


def test_what_a_head_has_just_turned() -> None:
    """An even turn comes to its speed times the memory (the integral of an exponential)."""
    times = np.arange(0, 3, 0.01)
    even = np.column_stack([20.0 * times, -5.0 * times])
    assert just_turned(times, even)[-1] == pytest.approx([20 * LAG_S, -5 * LAG_S], rel=0.01)
    jump = np.where(times[:, None] < 1.0, 0.0, [[8.0, 0.0]])
    later = just_turned(times, jump)[round((1.0 + LAG_S) * 100)]
    assert later == pytest.approx([8.0 / np.e, 0.0], rel=0.05)


def test_what_it_turned_in_a_gap_is_not_known() -> None:
    """Frames farther apart begin anew."""
    times = np.array([0.0, 0.1, 0.2, 0.2 + 1.1 * GAP_S])
    assert just_turned(times, np.cumsum(np.ones((4, 2)), axis=0))[-1] == pytest.approx([0, 0])
