"""Slow or hanging: what pulses say of a process."""

from __future__ import annotations

import pytest

from tracker.vision.patience import Patience


def after(pulses: int, *, every_s: float, share: float, rounds_each: int = 0) -> float:
    """Seconds without progress after pulses of a process with a share of a processor."""
    patience = Patience(100.0)
    for k in range(pulses + 1):
        at_s = 100.0 + k * every_s
        patience.pulse(at_s, k * rounds_each, k * every_s * share)
    return patience.without_progress_s(100.0 + pulses * every_s)


def test_work_that_goes_on_is_never_without_progress() -> None:
    assert after(50, every_s=0.2, share=0.3, rounds_each=1) == 0.0


def test_a_process_that_waits_for_something_that_never_comes_counts_in_full() -> None:
    assert after(50, every_s=0.2, share=0.001) == pytest.approx(10.0)


def test_a_process_in_an_endless_loop_counts_in_full() -> None:
    assert after(50, every_s=0.2, share=1.0) == pytest.approx(10.0)
    assert after(50, every_s=0.2, share=3.0) == pytest.approx(10.0), "with several threads too"


def test_a_process_that_is_given_little_of_the_processor_counts_for_that() -> None:
    assert after(50, every_s=0.2, share=0.1) == pytest.approx(1.0)


def test_no_pulse_counts_in_full_until_one_comes() -> None:
    patience = Patience(0.0)
    patience.pulse(0.2, 5, 0.1)
    assert patience.without_progress_s(4.2) == pytest.approx(4.0)
    patience.pulse(4.2, 5, 0.5)  # it was held up, and worked a little
    assert patience.without_progress_s(4.2) == pytest.approx(0.4)
    patience.pulse(4.4, 6, 0.5)
    assert patience.without_progress_s(4.4) == 0.0


def test_something_new_begins_from_nothing() -> None:
    patience = Patience(0.0)
    assert patience.without_progress_s(9.0) == pytest.approx(9.0)
    patience.begin(9.0)
    assert patience.without_progress_s(9.5) == pytest.approx(0.5)
