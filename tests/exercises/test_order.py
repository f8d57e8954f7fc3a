"""Which goes first, where it can be told, and where a beginning was not seen."""

from __future__ import annotations

from math import isnan, nan

import numpy as np
import pytest

from tests.motion.stands import rise
from tracker.exercises.order import lead_s, order_of
from tracker.motion.turning import Turn

#: A turn from 20 degrees to the left to 20 to the right, half over at 2 s.
HEAD_S, LASTS_S = 1.6, 0.8
TURN = Turn(1, "right", HEAD_S, HEAD_S + LASTS_S, 3.0, 20.0, 40.0, 90.0)


def rows(gaze_s: float = 1.2, to_deg: float = 20.0) -> np.ndarray:
    """Time, head and gaze of the turn; the gaze goes at its own time, in .1 s."""
    times = np.arange(0.0, 4.0, 1 / 30)
    head = -20.0 + 40.0 * rise((times - HEAD_S) / LASTS_S)
    gaze = -20.0 + (to_deg + 20.0) * rise((times - gaze_s) / 0.1)
    return np.stack([times, head, gaze], axis=1)


def without(column: int, from_s: float, to_s: float) -> np.ndarray:
    found = rows()
    found[(found[:, 0] >= from_s) & (found[:, 0] < to_s), column] = nan
    return found


@pytest.mark.parametrize(
    ("gaze_s", "order"), [(1.2, "eyes_first"), (1.65, "together"), (2.0, "head_first")]
)
def test_the_lead_is_the_time_between_the_beginnings(gaze_s: float, order: str) -> None:
    lead = lead_s(rows(gaze_s), TURN)
    # The gaze's .1 s lie between three pictures.
    assert lead == pytest.approx(HEAD_S - gaze_s, abs=0.06)
    assert order_of(lead) == order


@pytest.mark.parametrize(
    "seen",
    [
        without(1, 1.0, 2.5),  # no head
        without(1, 1.0, 1.9),  # the head not before it was well on its way
        without(1, 1.62, 1.95),  # nor as it began
        without(2, 0.0, 4.0),  # no gaze
        without(2, 0.0, 1.25),  # the gaze not before it went
        without(2, 1.3, 4.0),  # nor where it went
        rows(to_deg=-18.0),  # a gaze that stays
    ],
)
def test_it_is_not_told_where_a_beginning_was_not_seen(seen: np.ndarray) -> None:
    lead = lead_s(seen, TURN)
    assert isnan(lead) and order_of(lead) == "not_told"
