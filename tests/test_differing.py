"""The one rule of when a difference is called: how often chance alone is called one."""

from __future__ import annotations

import numpy as np

from tracker.differing import by_spread, called, too_uneven


def test_chance_is_called_a_change_in_one_of_a_hundred() -> None:
    """Student's t, two-sided at 1 %: 2,000 pairs of alike groups of five, 20 expected."""
    rng = np.random.default_rng(6)
    found = 0
    for values in rng.normal(18.0, 1.5, (2000, 10)).tolist():
        first, last = values[:5], values[5:]
        difference = float(np.mean(last) - np.mean(first))
        found += called(difference, by_spread(first, last), 0.0) != "no_change"
    # Binomial: 20 give or take three times 4.4.
    assert 7 <= found <= 33


def test_it_has_to_be_larger_than_both() -> None:
    assert called(1.0, 0.9, 0.5) == "rose"
    assert called(-1.0, 0.9, 0.5) == "fell"
    assert called(1.0, 1.1, 0.5) == called(1.0, 0.5, 1.1) == called(-1.0, 1.0, 0.0) == "no_change"
    assert too_uneven(2.1, 1.0) and not too_uneven(1.9, 1.0)
