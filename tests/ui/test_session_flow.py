"""The director, in the test's own time."""

from __future__ import annotations

import errno
import os
from pathlib import Path

import pytest

from calibration.check import is_held_out
from tests.ui.fakes import (
    CAMERA,
    EXTENT,
    FakeService,
    FakeWorld,
    answer_fit,
    clip_steps,
    feed,
    seen,
    turning,
)
from tracker.errors import RunError
from tracker.eyes.in_use import eye_in_use
from tracker.vision.messages import FitFailed, SourceChanged, SourceState
from ui.ports import CameraChoice, ClipPlan
from ui.session.flow import COUNTDOWN_S, Director, Dose, Phase
from ui.session.state import TROUBLES


@pytest.fixture
def fake(tmp_path: Path) -> FakeWorld:
    return FakeWorld(tmp_path)


@pytest.fixture
def live(fake: FakeWorld) -> Director:
    return Director(fake.world(), lambda: EXTENT)


@pytest.fixture
def demo(fake: FakeWorld) -> Director:
    return Director(fake.world(), lambda: EXTENT, ClipPlan(Path("a.mp4"), clip_steps()))


def through_setup(fake: FakeWorld, director: Director) -> None:
    director.start()
    feed(fake.service, director, 1.0, seen)
    director.begin_setup()
    feed(
        fake.service,
        director,
        90.0,
        seen,
    )
    answer_fit(fake.service, director)


def test_a_clip_goes_from_welcome_to_a_saved_summary(fake: FakeWorld, demo: Director) -> None:
    demo.start()
    assert demo.phase == Phase.setup and not demo.camera_on
    feed(fake.service, demo, 8.97, lambda t: turning(t, 9.0))
    assert demo.phase == Phase.fitting
    assert [s.step for s in fake.service.fit_steps or []].count("look") == 4
    answer_fit(fake.service, demo)
    assert demo.phase == Phase.exercise
    feed(fake.service, demo, 15.4, lambda t: turning(t, 9.0))
    assert demo.live is not None and demo.live.repetitions == 3
    feed(fake.service, demo, 16.0, lambda t: turning(t, 9.0))
    assert demo.phase == Phase.summary and demo.ended == "finished"
    assert demo.saved is not None
    assert demo.saved.summary["exercises"][0]["done"]["repetitions"] == 3
    assert fake.service.stopped


def test_the_recording_knows_the_set_up_too(fake: FakeWorld, demo: Director) -> None:
    demo.start()
    feed(fake.service, demo, 8.97, lambda t: turning(t, 9.0))
    answer_fit(fake.service, demo)
    kinds = [r["kind"] for r in fake.recordings[0].journal.records]
    assert kinds.count("step") == 7
    assert kinds.count("sample") > 200
    assert fake.recordings[0].setup["gaze_error_deg"] == 0.7


def test_a_clip_whose_fit_fails_still_runs_and_says_so(fake: FakeWorld, demo: Director) -> None:
    demo.start()
    feed(fake.service, demo, 8.97, seen)
    fake.service.news.append(FitFailed("too little was seen"))
    demo.tick()
    assert demo.phase == Phase.exercise
    assert fake.recordings[0].setup["calibration"] is False


def test_a_clip_that_ends_early_is_finished(fake: FakeWorld, demo: Director) -> None:
    demo.start()
    feed(fake.service, demo, 8.97, seen)
    answer_fit(fake.service, demo)
    fake.service.news.append(SourceChanged(SourceState.ended))
    demo.tick()
    assert demo.phase == Phase.summary


def test_the_camera_goes_through_set_up_countdown_and_a_whole_set(
    fake: FakeWorld, live: Director
) -> None:
    through_setup(fake, live)
    assert live.phase == Phase.choose and live.camera_on
    steps = fake.service.fit_steps or []
    assert [s.step for s in steps] == ["rest", *["look"] * 10, "turn_slowly", "nod_slowly"]
    # The last two looks are kept from the fit, to check it.
    assert [is_held_out(s) for s in steps].count(True) == 2 and is_held_out(steps[10])
    assert all((s.model_extra or {}).get("screen_mm") for s in steps)
    live.start_exercise(Dose("turns-on-target", 4, 60.0))
    assert live.phase == Phase.countdown
    begin_s = fake.service.time_s
    feed(fake.service, live, begin_s + COUNTDOWN_S + 0.1, lambda t: turning(t, 1e9))
    assert live.phase == Phase.exercise
    assert fake.beats.sounding is not None and fake.beats.sounding[0] == 60.0
    start_s = fake.service.time_s
    feed(fake.service, live, start_s + 30, lambda t: turning(t, start_s))
    assert live.phase == Phase.summary and live.ended == "finished"
    assert live.saved is not None
    assert live.saved.summary["exercises"][0]["done"]["repetitions"] == 4
    assert fake.beats.sounding is None
    assert not live.camera_on


def test_a_pause_keeps_the_count_and_the_rest_is_done_after_it(
    fake: FakeWorld, live: Director
) -> None:
    through_setup(fake, live)
    live.start_exercise(Dose("turns-on-target", 5, 60.0))
    feed(fake.service, live, fake.service.time_s + 3.1, lambda t: turning(t, 1e9))
    start_s = fake.service.time_s
    feed(fake.service, live, start_s + 5.2, lambda t: turning(t, start_s))
    before = live.live.repetitions if live.live else 0
    assert before == 2
    live.pause_or_go_on()
    assert live.phase == Phase.paused and fake.beats.sounding is None
    feed(fake.service, live, fake.service.time_s + 10, lambda t: turning(t, 1e9))
    assert live.phase == Phase.paused
    live.pause_or_go_on()
    feed(fake.service, live, fake.service.time_s + 3.1, lambda t: turning(t, 1e9))
    assert live.phase == Phase.exercise
    assert (
        live.live is not None and live.live.repetitions == 3
    )  # the last turn, judged at the pause
    again_s = fake.service.time_s
    feed(fake.service, live, again_s + 30, lambda t: turning(t, again_s))
    assert live.phase == Phase.summary and live.saved is not None
    done = [e["done"]["repetitions"] for e in live.saved.summary["exercises"]]
    assert sum(done) == 5


@pytest.mark.parametrize("wait_s", [0.5, 3.5, 6.0])
def test_stop_works_at_once_and_saves(fake: FakeWorld, live: Director, wait_s: float) -> None:
    through_setup(fake, live)
    live.start_exercise(Dose("turns-on-target", 5, 60.0))
    begin_s = fake.service.time_s
    feed(fake.service, live, begin_s + wait_s, lambda t: turning(t, begin_s + 3))
    live.stop()
    assert live.phase == Phase.summary and live.ended == "stopped"
    assert live.saved is not None and live.saved.summary_path.is_file()
    assert fake.service.stopped


def test_stop_works_while_nothing_is_measured(fake: FakeWorld, live: Director) -> None:
    through_setup(fake, live)
    live.start_exercise(Dose("turns-on-target", 5, 60.0))
    feed(fake.service, live, fake.service.time_s + 4, lambda t: turning(t, 1e9))
    fake.service.news.append(SourceChanged(SourceState.hanging, "no picture for 2 s"))
    fake.service.time_s += 5
    live.tick()
    assert live.phase == Phase.exercise  # the session goes on
    assert live.trouble is not None and live.not_measured
    live.stop()
    assert live.phase == Phase.summary


def test_half_a_second_of_silence_is_not_measured_with_a_reason(
    fake: FakeWorld, live: Director
) -> None:
    through_setup(fake, live)
    live.start_exercise(Dose("turns-on-target", 5, 60.0))
    start_s = fake.service.time_s + 3
    feed(fake.service, live, start_s + 2, lambda t: turning(t, start_s))
    assert live.not_measured == ""
    fake.service.time_s += 0.6
    live.tick()
    assert live.not_measured == "gap"
    fake.service.news.append(SourceChanged(SourceState.restarting))
    live.tick()
    assert live.not_measured == "restarting"
    fake.service.news.append(SourceChanged(SourceState.running))
    feed(fake.service, live, fake.service.time_s + 0.5, lambda t: turning(t, start_s))
    assert live.not_measured == ""


def test_a_failed_set_up_can_be_repeated(fake: FakeWorld, live: Director) -> None:
    live.start()
    feed(fake.service, live, 1.0, seen)
    live.begin_setup()
    feed(fake.service, live, 90.0, seen)
    fake.service.news.append(FitFailed("The eyes were not seen."))
    live.tick()
    assert live.phase == Phase.setup_failed and live.fit_message == "The eyes were not seen."
    live.begin_setup()
    assert live.phase == Phase.setup
    assert len(fake.services) == 1


def test_repeating_a_good_set_up_begins_with_a_fresh_measurer(
    fake: FakeWorld, live: Director
) -> None:
    through_setup(fake, live)
    live.begin_setup()
    assert len(fake.services) == 2 and fake.services[0].stopped
    assert fake.service.profile is None


def test_once_more_keeps_the_person(fake: FakeWorld, live: Director) -> None:
    through_setup(fake, live)
    live.start_exercise(Dose("turns-on-target", 5, 60.0))
    live.stop()
    live.again()
    assert live.phase == Phase.choose and not live.camera_on
    live.start_exercise(Dose("eyes-side-to-side", 5, 60.0))
    assert fake.service.profile == "the person"
    assert len(fake.recordings) == 2
    feed(fake.service, live, 3.1, seen)
    assert live.phase == Phase.exercise
    assert live.live is not None and live.live.step is not None
    assert live.live.step.exercise == "eyes-side-to-side"


def test_the_eye_targets_jump_with_the_beat(fake: FakeWorld, live: Director) -> None:
    through_setup(fake, live)
    live.start_exercise(Dose("eyes-side-to-side", 5, 60.0))
    feed(fake.service, live, fake.service.time_s + 3.05, seen)
    asked = live.asked
    assert asked is not None and asked.offsets is not None
    start_s = asked.step.from_s
    places = [asked.place_at(start_s + t) for t in (0.5, 1.5, 2.5, 3.5)]
    assert places == [0, 1, 0, 1]
    right = asked.step.target_at(start_s + 0.5)
    left = asked.step.target_at(start_s + 1.5)
    assert right is not None and left is not None and right[0] > 0 > left[0]


@pytest.mark.parametrize(
    "state",
    sorted(TROUBLES),
)
def test_each_trouble_is_kept_and_goes_when_pictures_come(
    fake: FakeWorld, live: Director, state: str
) -> None:
    live.start()
    fake.service.news.append(SourceChanged(SourceState(state), "why"))
    live.tick()
    assert live.trouble is not None and str(live.trouble.state) == state
    fake.service.news.append(SourceChanged(SourceState.running))
    live.tick()
    assert live.trouble is None


def test_no_camera_at_all_then_one_is_plugged_in(fake: FakeWorld, live: Director) -> None:
    fake.cameras = []
    live.start()
    assert live.trouble is not None and live.trouble.state == SourceState.no_camera
    assert not live.camera_on
    fake.cameras = [CameraChoice(2, "Other"), CAMERA]
    live.retry()
    assert live.trouble is None and live.camera == CameraChoice(2, "Other")


def test_a_measuring_process_that_cannot_start_is_trouble_not_a_crash(
    fake: FakeWorld, live: Director, monkeypatch: pytest.MonkeyPatch
) -> None:
    def fail(_: FakeService) -> None:
        raise OSError(errno.EMFILE, os.strerror(errno.EMFILE), "somewhere")

    with monkeypatch.context() as patched:
        patched.setattr(FakeService, "start", fail)
        live.start()
        live.tick()
        assert live.trouble is not None and live.trouble.detail == "too many files are open"
        assert not live.camera_on
    live.retry()
    assert live.trouble is None


def test_a_session_that_cannot_be_saved_says_why(fake: FakeWorld, live: Director) -> None:
    through_setup(fake, live)
    live.start_exercise(Dose("turns-on-target", 5, 60.0))
    fake.recordings[-1].fail = RunError("the disk is full")
    live.stop()
    assert live.phase == Phase.summary and live.save_error == "the disk is full"


def test_closing_in_the_middle_saves(fake: FakeWorld, live: Director) -> None:
    through_setup(fake, live)
    live.start_exercise(Dose("turns-on-target", 5, 60.0))
    feed(fake.service, live, fake.service.time_s + 5, lambda t: turning(t, 1e9))
    live.close()
    assert live.saved is not None and live.saved.summary["ended"] == "stopped"
    assert fake.service.stopped


def test_commands_out_of_place_do_nothing(fake: FakeWorld, live: Director) -> None:
    live.pause_or_go_on()
    live.begin_setup()
    live.start_exercise(Dose("turns-on-target", 5, 60.0))
    live.again()
    live.stop()
    assert live.phase == Phase.welcome and not fake.services


# --- a kept set-up ---


def to_camera(fake: FakeWorld, extent: object = None) -> Director:
    """A director that has opened the camera, for somebody without glasses."""
    director = Director(fake.world(), lambda: EXTENT)
    director.glasses = "none"
    director.start()
    feed(fake.service, director, 0.5, seen)
    return director


def set_up(director: Director, fake: FakeWorld) -> list[str]:
    """Go through the set-up that is asked for; the steps it had."""
    while director.phase == Phase.setup:
        feed(fake.service, director, fake.service.time_s + 1.0, seen)
    assert fake.service.fit_steps is not None
    return [s.step for s in fake.service.fit_steps]


def test_a_set_up_is_kept_and_used_in_short_the_next_time(tmp_path: Path) -> None:
    fake = FakeWorld(tmp_path)
    director = to_camera(fake)
    assert director.kept is None
    director.use_kept()  # nothing is kept: nothing happens
    assert director.phase == Phase.camera
    director.begin_setup()
    assert len(set_up(director, fake)) == 13
    answer_fit(fake.service, director)
    assert fake.profiles == {("Test camera", "none"): "the person"}
    assert director._found()["profile"] == "new"
    director.close()

    director = to_camera(fake)
    assert director.kept == Path("kept.npz")
    director.use_kept()
    assert fake.service.profile == Path("kept.npz")
    steps = set_up(director, fake)
    assert steps == ["rest", "look", "look", "look", "turn_slowly"]
    assert fake.service.fit_steps is not None
    assert [is_held_out(s) for s in fake.service.fit_steps] == [False, True, True, True, False]
    fake.profiles.clear()
    answer_fit(fake.service, director)
    assert director.phase == Phase.choose
    assert director._found()["profile"] == "kept"
    assert fake.profiles == {}  # a kept one is not kept again
    # The exercise goes on with what the short set-up found.
    director.start_exercise(Dose("turns-on-target", 3, 60.0))
    assert fake.service.profile == Path("kept.npz") and not fake.service.stopped
    director.close()


def test_one_eye_alone_has_a_set_up_of_its_own(tmp_path: Path) -> None:
    fake = FakeWorld(tmp_path)
    fake.profiles["Test camera", "none"] = "with both eyes"
    director = to_camera(fake)
    director.eyes = "right"
    assert director.kept is None
    director.begin_setup()
    set_up(director, fake)
    assert fake.service.fit_steps is not None
    assert eye_in_use(fake.service.fit_steps) == "right"
    answer_fit(fake.service, director)
    assert fake.profiles["Test camera", "none-right"] == "the person"
    assert fake.profiles["Test camera", "none"] == "with both eyes"
    assert director._found()["eyes"] == "right"
    director.close()


def test_a_kept_set_up_that_does_not_fit_leads_to_the_whole_one(tmp_path: Path) -> None:
    fake = FakeWorld(tmp_path)
    fake.profiles["Test camera", "none"] = "somebody"
    director = to_camera(fake)
    director.use_kept()
    set_up(director, fake)
    fake.service.news.append(FitFailed("does not fit; do the whole set-up"))
    director.tick()
    assert director.phase == Phase.setup_failed
    director.begin_setup()
    assert fake.service.profile is None and len(fake.services) == 3
    feed(fake.service, director, 0.2, seen)
    assert len(set_up(director, fake)) == 13
    director.close()


def test_other_glasses_have_their_own_set_up(tmp_path: Path) -> None:
    fake = FakeWorld(tmp_path)
    fake.profiles["Test camera", "none"] = "somebody"
    director = to_camera(fake)
    director.glasses = "varifocal"
    assert director.kept is None
    director.close()
