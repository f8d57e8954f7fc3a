"""A computer that can't keep up: told by the source's numbers, said once, drawn less often."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest

from tests.ui.conftest import Make
from tests.ui.fakes import EXTENT, FakeWorld, feed, turning
from tests.ui.test_session_flow import through_setup
from tracker.vision.messages import SourceStats
from ui import app as app_module
from ui.app import BUSY_REFRESH_MS, REFRESH_MS
from ui.load import Load
from ui.session.flow import Director, Dose, Phase
from ui.words import say


@pytest.fixture
def fake(tmp_path: Path) -> FakeWorld:
    return FakeWorld(tmp_path)


@pytest.fixture
def live(fake: FakeWorld) -> Director:
    return Director(fake.world(), lambda: EXTENT)


def numbers(shares: list[tuple[float, float]], rate_hz: float = 30.0) -> Iterator[tuple]:
    """Times and numbers of a camera that loses a share of its pictures for so many seconds."""
    now_s, frames, dropped = 0.0, 0.0, 0.0
    for lasts_s, share in shares:
        for _ in range(round(lasts_s * 4)):
            now_s += 0.25
            frames += 0.25 * rate_hz
            dropped += 0.25 * rate_hz * share
            yield now_s, SourceStats(frames=int(frames), dropped=int(dropped))


def busy_s(shares: list[tuple[float, float]], rate_hz: float = 30.0) -> float:
    """For how many seconds a computer counts as busy."""
    load, lasts_s = Load(), 0.0
    for now_s, stats in numbers(shares, rate_hz):
        load.see(now_s, stats)
        lasts_s += 0.25 * load.busy
    return lasts_s


@pytest.mark.parametrize("rate_hz", [10.0, 15.0, 30.0, 60.0])
def test_who_keeps_up_is_never_busy_at_any_rate(rate_hz: float) -> None:
    assert busy_s([(60.0, 0.0)], rate_hz) == 0.0
    assert busy_s([(60.0, 0.02)], rate_hz) == 0.0


def test_a_hiccup_is_nobodys_concern() -> None:
    assert busy_s([(10.0, 0.0), (0.25, 1.0), (30.0, 0.0)]) == 0.0


def test_lost_pictures_make_it_busy_within_seconds_and_it_stays_so_until_they_all_come() -> None:
    assert busy_s([(10.0, 0.0), (20.0, 0.4)]) == pytest.approx(20.0, abs=1.5)
    # Between both limits it stays what it was.
    assert busy_s([(10.0, 0.0), (20.0, 0.07)]) == 0.0
    assert busy_s([(10.0, 0.4), (20.0, 0.07)]) == pytest.approx(27.0, abs=0.5)
    assert busy_s([(10.0, 0.4), (20.0, 0.0)]) == pytest.approx(10.0, abs=0.5)


def test_the_rates_are_those_of_the_last_seconds() -> None:
    load = Load()
    for now_s, stats in numbers([(10.0, 0.0), (10.0, 0.5)]):
        load.see(now_s, stats)
    assert load.given_hz == pytest.approx(30.0, abs=1.0)
    assert load.measured_hz == pytest.approx(15.0, abs=1.0)


def test_another_source_begins_anew() -> None:
    load = Load()
    for now_s, stats in numbers([(10.0, 0.5)]):
        load.see(now_s, stats)
    assert load.busy
    load.see(10.5, SourceStats(frames=3, dropped=0))
    assert not load.busy and load.given_hz == 0.0


def test_it_is_said_once_in_a_set_for_a_while_and_the_set_goes_on(
    fake: FakeWorld, live: Director
) -> None:
    through_setup(fake, live)
    fake.service.stats = SourceStats(frames=2000, dropped=1500)
    live.tick()
    live.start_exercise(Dose("turns-on-target", 60, 60.0))
    start_s = fake.service.time_s + 3.1
    feed(fake.service, live, start_s, lambda t: turning(t, 1e9))
    assert not live.busy_note, "what was lost before the set is not told in it"
    shown = []
    while fake.service.time_s < start_s + 40:
        stats = fake.service.stats
        fake.service.stats = SourceStats(frames=stats.frames + 30, dropped=stats.dropped + 15)
        feed(fake.service, live, fake.service.time_s + 1.0, lambda t: turning(t, start_s))
        shown.append(live.busy_note)
    assert live.phase == Phase.exercise and live.load.busy
    assert 6 <= sum(shown) <= 9
    first = shown.index(True)
    assert 2 <= first <= 5
    assert not any(shown[first + sum(shown) :]), "once, not again"


@pytest.mark.gui
def test_a_busy_window_is_drawn_less_often_and_says_why(
    make: Make, monkeypatch: pytest.MonkeyPatch
) -> None:
    window = make()
    director = window.director
    drawn: list[float] = []
    now = [100.0]
    monkeypatch.setattr(app_module.time, "monotonic", lambda: now[0])
    monkeypatch.setattr(window, "refresh", lambda: drawn.append(now[0]))

    def drawn_in_a_second() -> int:
        drawn.clear()
        for _ in range(100):
            now[0] += 0.01
            window.tick()
        return len(drawn)

    calm = drawn_in_a_second()
    monkeypatch.setattr(type(director.load), "busy", property(lambda _: True))
    busy = drawn_in_a_second()
    assert calm > 2 * busy > 0
    assert calm <= 1000 / REFRESH_MS + 1 and busy <= 1000 / BUSY_REFRESH_MS + 1


def test_the_words_are_there() -> None:
    assert "busy" in say("practice.busy")
