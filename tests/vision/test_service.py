"""The measuring process: news, pace, fits, and what happens when it dies or hangs."""

from __future__ import annotations

import math
import os
import random
import signal
import subprocess
import sys
import threading
import time
from collections.abc import Callable, Iterator
from functools import partial
from multiprocessing.shared_memory import SharedMemory
from pathlib import Path
from typing import Any

import numpy as np
import pytest

from tests.vision import fakes
from tests.vision.clip_files import write_clip
from tests.vision.fakes import EndlessSource
from tracker.sample import Sample
from tracker.session.stage import Step
from tracker.vision.messages import (
    ClipSource,
    FitFailed,
    Fitted,
    LazyFactory,
    Measured,
    Message,
    SourceChanged,
    SourceState,
)
from tracker.vision.service import Limits, Service

pytestmark = pytest.mark.alone

STEPS = [Step(from_s=0, to_s=1, step="rest")]
#: With the figures that hold by default, but for those that only bound a test's length.
QUICK = Limits(spare_after_s=0.1)


class Watch:
    """Asks a service as a window does, and keeps everything with the time of its coming."""

    def __init__(self, service: Service) -> None:
        self.service = service
        self.news: list[tuple[float, Message]] = []

    def until(self, reached: Callable[[], bool], limit_s: float = 15.0) -> None:
        end_s = time.perf_counter() + limit_s
        while not reached():
            assert time.perf_counter() < end_s, [*self.states, len(self.samples)]
            before_s = time.perf_counter()
            fresh = self.service.poll()
            assert time.perf_counter() - before_s < 0.25, "asking for news had to wait"
            self.news += [(time.perf_counter(), message) for message in fresh]
            time.sleep(0.004)

    def for_s(self, duration_s: float) -> None:
        end_s = time.perf_counter() + duration_s
        self.until(lambda: time.perf_counter() >= end_s)

    @property
    def samples(self) -> list[Sample]:
        return [m.sample for _, m in self.news if isinstance(m, Measured)]

    @property
    def states(self) -> list[SourceState]:
        return [m.state for _, m in self.news if isinstance(m, SourceChanged)]

    @property
    def details(self) -> list[str]:
        return [m.detail for _, m in self.news if isinstance(m, SourceChanged)]

    @property
    def fits(self) -> list[Fitted | FitFailed]:
        return [m for _, m in self.news if isinstance(m, Fitted | FitFailed)]

    def at_s(self, state: SourceState) -> float:
        found = [t for t, m in self.news if isinstance(m, SourceChanged) and m.state is state]
        return found[-1]

    @property
    def pid(self) -> int:
        return int(self.samples[-1].light)


Start = Callable[..., Watch]


@pytest.fixture
def start() -> Iterator[Start]:
    """Start services that are stopped after the test, whatever becomes of it."""
    services: list[Service] = []
    names: list[str] = []

    def begin(source: object, limits: Limits = QUICK, spare: bool = False, **options: Any) -> Watch:
        factory = options.pop("factory", None) or partial(fakes.make, **options)
        service = Service(source, factory, limits=limits, keep_spare=spare)
        services.append(service)
        service.start()
        assert service._block is not None
        names.append(service._block.name)
        return Watch(service)

    yield begin
    for service in services:
        service.stop()
    for name in names:
        with pytest.raises(FileNotFoundError):
            SharedMemory(name=name)


def rises(watch: Watch) -> bool:
    return bool(np.all(np.diff([s.time_s for s in watch.samples]) > 0))


# --- clips ---------------------------------------------------------------------------


def test_clip_as_fast_as_it_is_measured_every_frame(tmp_path: Path, start: Start) -> None:
    clip = write_clip(tmp_path / "c.mp4", 150)
    watch = start(ClipSource(clip, paced=False))
    watch.until(lambda: SourceState.ended in watch.states)
    assert [s.quality for s in watch.samples] == list(range(150))
    assert np.allclose([s.time_s for s in watch.samples], np.arange(150) / 30, atol=1e-6)
    assert watch.states == [SourceState.opening, SourceState.running, SourceState.ended]
    assert watch.service.now_s() == pytest.approx(149 / 30)
    watch.for_s(0.7)  # a clip that ended is not silent
    assert watch.states[-1] is SourceState.ended


def test_paced_clip_takes_its_own_time(tmp_path: Path, start: Start) -> None:
    watch = start(ClipSource(write_clip(tmp_path / "c.mp4", 45)))
    watch.until(lambda: SourceState.ended in watch.states)
    times = [t for t, m in watch.news if isinstance(m, Measured)]
    assert [s.quality for s in watch.samples] == list(range(45))
    assert times[-1] - times[0] == pytest.approx(44 / 30, abs=0.15)
    # Not merely in the whole: each frame comes when it is due, within the jitter of a busy machine.
    off = np.array(times) - times[0] - np.arange(45) / 30
    assert np.percentile(np.abs(off), 80) < 0.1


def test_slow_measuring_loses_no_frame_of_a_clip(tmp_path: Path, start: Start) -> None:
    watch = start(ClipSource(write_clip(tmp_path / "c.mp4", 20)), slow_s=0.06)
    watch.until(lambda: SourceState.ended in watch.states)
    assert [s.quality for s in watch.samples] == list(range(20))
    times = [t for t, m in watch.news if isinstance(m, Measured)]
    assert times[-1] - times[0] > 19 * 0.06 - 0.05


def test_fit_goes_both_ways_and_holds_the_clip(tmp_path: Path, start: Start) -> None:
    watch = start(ClipSource(write_clip(tmp_path / "c.mp4", 40)), fit_s=0.7)
    watch.until(lambda: len(watch.samples) > 8)
    watch.service.request_fit(STEPS)
    watch.until(lambda: bool(watch.fits))
    (fit,) = watch.fits
    assert isinstance(fit, Fitted) and fit.report.profile == "a person"
    at = fit.report.frames
    assert at > 8
    watch.until(lambda: SourceState.ended in watch.states)
    assert [s.quality for s in watch.samples] == list(range(40))
    assert [s.face_height_px for s in watch.samples] == [0.0] * at + [1.0] * (40 - at)
    assert SourceState.silent not in watch.states
    # The clip's clock was held too: no burst of frames after the fit.
    times = [t for t, m in watch.news if isinstance(m, Measured)]
    assert times[-1] - times[at] > (39 - at) / 30 - 0.15


def test_a_part_done_again_reaches_the_measurer_and_so_does_what_is_held(start: Start) -> None:
    watch = start(EndlessSource())
    watch.until(lambda: len(watch.samples) >= 3)
    watch.service.request_fit(STEPS)
    watch.until(lambda: bool(watch.fits))
    watch.service.hold_setup(keep=True, take=True)
    watch.service.request_fit(STEPS, "turn")
    watch.until(lambda: len(watch.fits) == 2)
    first, again = watch.fits
    assert isinstance(first, Fitted) and isinstance(again, Fitted)
    assert first.report.profile == "a person"
    assert again.report.profile == "again: turn (True, True)"


def test_fit_that_fails_says_why_and_measuring_goes_on(start: Start) -> None:
    watch = start(EndlessSource())
    watch.until(lambda: len(watch.samples) >= 3)
    watch.service.request_fit([])
    watch.until(lambda: bool(watch.fits))
    assert watch.fits == [FitFailed("too little was seen")]
    n = len(watch.samples)
    watch.until(lambda: len(watch.samples) > n + 5)


def test_broken_off_clip_ends_with_a_note(tmp_path: Path, start: Start) -> None:
    whole = write_clip(tmp_path / "w.avi", 60, 30.0, "MJPG").read_bytes()
    (tmp_path / "cut.avi").write_bytes(whole[: len(whole) // 2])
    watch = start(ClipSource(tmp_path / "cut.avi", paced=False))
    watch.until(lambda: SourceState.ended in watch.states)
    assert len(watch.samples) > 15 and "breaks off" in watch.details[-1]


# --- what can't begin ------------------------------------------------------------------


def test_bad_clip_missing_models_and_lost_factory_fail_in_one_line(
    tmp_path: Path, start: Start, capfd: pytest.CaptureFixture[str]
) -> None:
    (tmp_path / "no.mp4").write_bytes(b"nothing of the kind")
    cases = [
        (start(ClipSource(tmp_path / "no.mp4")), "not a video clip"),
        (start(EndlessSource(), factory=fakes.make_without_models), "model file for the face"),
        (start(EndlessSource(), factory=LazyFactory("tracker.nothing:make")), "tracker.nothing"),
    ]
    for watch, words in cases:
        watch.until(lambda w=watch: w.states[-1:] == [SourceState.failed])
        assert words in watch.details[-1] and "\n" not in watch.details[-1]
        watch.for_s(0.1)
        watch.service.request_fit(STEPS)
        watch.until(lambda w=watch: bool(w.fits))
        assert isinstance(watch.fits[0], FitFailed)
    assert capfd.readouterr() == ("", "")


@pytest.mark.skipif(
    sys.platform != "linux" or any(Path("/dev").glob("video*")), reason="there is a camera"
)
def test_no_camera_is_said(start: Start) -> None:
    from tracker.vision.service import CameraSource

    watch = start(CameraSource(0))
    watch.until(lambda: SourceState.no_camera in watch.states)
    watch.for_s(0.8)
    assert watch.states == [SourceState.opening, SourceState.no_camera]


# --- death and hanging ------------------------------------------------------------------


@pytest.mark.timeout(3600)
def test_killed_at_random_moments_it_goes_on_each_time(
    start: Start, request: pytest.FixtureRequest
) -> None:
    """``--kills 200 -s`` does more of it; each process had its first second, or it is a strike."""
    count, seed = request.config.getoption("--kills"), random.randrange(10**6)
    rng, gaps_s = random.Random(seed), []
    watch = start(EndlessSource(), spare=True)
    watch.until(lambda: len(watch.samples) >= 20)
    watch.service.request_fit(STEPS)
    watch.until(lambda: bool(watch.fits))
    for _ in range(count):
        watch.until(lambda: watch.service._spare is not None and watch.service._spare.ready)
        watch.for_s(rng.uniform(1.1, 1.7))
        killed, killed_s = watch.pid, time.perf_counter()
        os.kill(killed, signal.SIGKILL)
        watch.until(lambda pid=killed: watch.pid != pid)
        gaps_s.append(time.perf_counter() - killed_s)
        assert watch.at_s(SourceState.restarting) - killed_s < 0.5
    line = f"seed {seed}: {count} times killed, back after {max(gaps_s):.2f} s at the most"
    request.config.get_terminal_writer().line(line)
    watch.for_s(0.3)
    assert watch.states.count(SourceState.restarting) == count
    assert watch.states[-1] == SourceState.running and SourceState.failed not in watch.states
    assert rises(watch) and max(gaps_s) < 3.0
    assert watch.samples[-1].face_height_px == 1.0, "the last process was given the profile"


def test_stopped_process_is_silent_then_replaced(start: Start) -> None:
    watch = start(EndlessSource(), spare=True)
    watch.until(lambda: len(watch.samples) >= 20)
    watch.until(lambda: watch.service._spare is not None and watch.service._spare.ready)
    first = watch.pid
    os.kill(first, signal.SIGSTOP)
    stopped_s = time.perf_counter()
    watch.until(lambda: watch.pid != first)
    again_s = time.perf_counter() - stopped_s
    assert 0.3 < watch.at_s(SourceState.silent) - stopped_s < 0.7
    assert 1.2 < watch.at_s(SourceState.restarting) - stopped_s < 2.0
    assert again_s < 3.0 and rises(watch)


def test_hanging_measurer_is_replaced_and_the_clip_has_waited(tmp_path: Path, start: Start) -> None:
    clip, marker = write_clip(tmp_path / "c.mp4", 90), str(tmp_path / "hung")
    limits = Limits(clip_s=0.8, spare_after_s=0)
    watch = start(ClipSource(clip), limits, spare=True, hang_at=45, hang_once=marker)
    clock: list[float] = []

    def reached() -> bool:
        clock.append(watch.service.now_s())
        return SourceState.ended in watch.states

    watch.until(reached)
    assert SourceState.restarting in watch.states
    assert [s.quality for s in watch.samples] == list(range(90)), "no frame is lost"
    assert np.all(np.diff(clock) >= 0), "the session's clock never goes back"
    assert clock[-1] == pytest.approx(89 / 30)
    arrived = [t for t, m in watch.news if isinstance(m, Measured)]
    assert arrived[-1] - arrived[45] > 44 / 30 - 0.15, "and none comes before it is due"


def test_slow_measuring_is_not_taken_for_a_hanging_one(tmp_path: Path, start: Start) -> None:
    limits = Limits(dead_s=0.4)
    watch = start(ClipSource(write_clip(tmp_path / "c.mp4", 5)), limits, slow_s=0.8)
    watch.until(lambda: SourceState.ended in watch.states)
    assert [s.quality for s in watch.samples] == list(range(5))
    assert SourceState.restarting not in watch.states
    assert len({s.light for s in watch.samples}) == 1


def test_a_clip_waits_for_a_machine_that_gives_its_process_no_time(
    tmp_path: Path, start: Start
) -> None:
    """Stopping and letting go in turns stands in for a machine with too much to do."""
    watch = start(ClipSource(write_clip(tmp_path / "c.mp4", 60)))
    watch.until(lambda: len(watch.samples) >= 10)
    pid = watch.pid
    for stopped_s in (2.5, 0.9, 0.9):  # 1.5 s would cost a camera's process its life
        os.kill(pid, signal.SIGSTOP)
        watch.for_s(0.2)
        before_s = watch.service.now_s()
        watch.for_s(stopped_s)
        assert watch.service.now_s() == before_s, "the clip's time stands"
        os.kill(pid, signal.SIGCONT)
        watch.for_s(0.1)
    watch.until(lambda: SourceState.ended in watch.states)
    assert [s.quality for s in watch.samples] == list(range(60))
    assert SourceState.restarting not in watch.states


@pytest.mark.parametrize("fitted", [True, False], ids=["after the fit", "before the fit"])
def test_a_killed_process_costs_a_clip_no_frame(tmp_path: Path, start: Start, fitted: bool) -> None:
    watch = start(ClipSource(write_clip(tmp_path / "c.mp4", 70)), spare=True)
    watch.until(lambda: len(watch.samples) >= 20)
    if fitted:
        watch.service.request_fit(STEPS)
        watch.until(lambda: bool(watch.fits))
    first = watch.pid
    os.kill(first, signal.SIGKILL)
    watch.until(lambda: watch.pid != first)
    if not fitted:
        watch.service.request_fit(STEPS)
        watch.until(lambda: bool(watch.fits))
        (fit,) = watch.fits
        assert isinstance(fit, Fitted)
        # The new process has seen the set-up from its beginning.
        assert fit.report.frames in (len(watch.samples), len(watch.samples) + 1)
    watch.until(lambda: SourceState.ended in watch.states)
    assert [s.quality for s in watch.samples] == list(range(70))
    assert watch.samples[-1].face_height_px == 1.0


def test_unpaced_clip_goes_on_with_the_next_frame(tmp_path: Path, start: Start) -> None:
    clip, marker = write_clip(tmp_path / "c.mp4", 60), str(tmp_path / "hung")
    watch = start(ClipSource(clip, paced=False), Limits(clip_s=0.5), hang_at=30, hang_once=marker)
    watch.until(lambda: SourceState.ended in watch.states)
    assert [s.quality for s in watch.samples] == list(range(60))


@pytest.mark.parametrize("paced", [True, False])
def test_a_frame_that_kills_is_passed_over(tmp_path: Path, start: Start, paced: bool) -> None:
    clip = ClipSource(write_clip(tmp_path / "c.mp4", 45), paced=paced)
    watch = start(clip, exit_from=30, exit_to=31)
    watch.until(lambda: SourceState.ended in watch.states)
    assert [s.quality for s in watch.samples] == [k for k in range(45) if k != 30]


def test_frames_that_raise_are_not_measured_and_the_rest_is(tmp_path: Path, start: Start) -> None:
    clip = ClipSource(write_clip(tmp_path / "c.mp4", 30), paced=False)
    watch = start(clip, raise_from=10, raise_to=15)
    watch.until(lambda: SourceState.ended in watch.states)
    assert len(watch.samples) == 30
    gaps = [k for k, s in enumerate(watch.samples) if s.reason == "gap"]
    assert gaps == [10, 11, 12, 13, 14]
    assert all(math.isnan(watch.samples[k].quality) for k in gaps)


@pytest.mark.parametrize("fault", [{"raise_from": 0}, {"exit_from": 0}])
def test_measurer_that_never_works_is_given_up(start: Start, fault: dict[str, int]) -> None:
    watch = start(EndlessSource(rate_hz=200), Limits(strikes=1), **fault)
    watch.until(lambda: SourceState.failed in watch.states)
    assert SourceState.restarting in watch.states and watch.states[-1] is SourceState.failed
    assert "2 times in a row" in watch.details[-1]


def test_source_that_gives_nothing_is_silent_but_its_process_lives(start: Start) -> None:
    watch = start(EndlessSource(mute_after_s=0.3), Limits(dead_s=0.6))
    watch.until(lambda: SourceState.silent in watch.states)
    watch.for_s(0.8)
    assert watch.states[-1] is SourceState.silent
    assert SourceState.restarting not in watch.states


def test_driver_that_never_comes_back_costs_the_process(start: Start) -> None:
    watch = start(EndlessSource(stuck=True))
    watch.until(lambda: SourceState.restarting in watch.states)


def test_death_during_a_fit_is_told(start: Start) -> None:
    watch = start(EndlessSource(), fit_s=30.0)
    watch.until(lambda: len(watch.samples) >= 5)
    watch.service.request_fit(STEPS)
    watch.for_s(0.3)
    os.kill(watch.pid, signal.SIGKILL)
    watch.until(lambda: bool(watch.fits))
    assert isinstance(watch.fits[0], FitFailed)


# --- stopping, pictures, manners ---------------------------------------------------------


@pytest.mark.parametrize("when", ["at once", "loading", "hanging"])
def test_stop_always_ends_in_time(tmp_path: Path, start: Start, when: str) -> None:
    options = {"loading": {"load_s": 60.0}, "hanging": {"hang_at": 0, "hang_once": "x"}}
    if when == "hanging":
        options["hanging"]["hang_once"] = str(tmp_path / "h")
    watch = start(EndlessSource(), **options.get(when, {}))
    if when != "at once":
        watch.for_s(0.6)
    before_s = time.perf_counter()
    watch.service.stop(1.0)
    assert time.perf_counter() - before_s < 1.3
    watch.service.stop()
    assert watch.service.poll() == [] and watch.service.preview() is None


def test_stop_of_a_stopped_process(start: Start) -> None:
    watch = start(EndlessSource())
    watch.until(lambda: len(watch.samples) > 2)
    os.kill(watch.pid, signal.SIGSTOP)
    before_s = time.perf_counter()
    watch.service.stop(1.0)
    assert time.perf_counter() - before_s < 1.3


def test_preview_only_on_request_whole_and_small(start: Start) -> None:
    watch = start(EndlessSource(rate_hz=100, width=1280, height=720))
    watch.until(lambda: len(watch.samples) > 5)
    assert watch.service.preview() is None
    watch.service.set_preview(True)
    seen: set[int] = set()

    def look() -> bool:
        image = watch.service.preview()
        if image is not None:
            assert image.shape == (360, 640, 3)
            assert image.min() == image.max(), "parts of two pictures"
            seen.add(int(image[0, 0, 0]))
        return len(seen) >= 15

    watch.until(look)
    watch.service.set_preview(False)
    assert watch.service.preview() is None
    watch.for_s(0.3)
    assert watch.service._block is not None and watch.service._block.read() is None
    assert not any(bytes(watch.service._block._memory[200:300_000])), "a trace is left"


def test_preview_comes_back_after_a_restart(start: Start) -> None:
    watch = start(EndlessSource())
    watch.service.set_preview(True)
    watch.until(lambda: watch.service.preview() is not None and bool(watch.samples))
    first = watch.pid
    os.kill(first, signal.SIGKILL)
    watch.until(lambda: watch.pid != first)
    old = watch.service.preview()
    assert old is not None
    watch.until(lambda: not np.array_equal(watch.service.preview(), old))


def test_a_body_is_looked_for_on_request_and_by_a_new_process_too(start: Start) -> None:
    watch = start(EndlessSource())
    watch.until(lambda: len(watch.samples) > 3)
    assert watch.samples[-1].body_seen == 0.0
    watch.service.watch_body(True)
    watch.until(lambda: watch.samples[-1].body_seen == 1.0)
    first = watch.pid
    os.kill(first, signal.SIGKILL)
    watch.until(lambda: watch.pid != first and watch.samples[-1].body_seen == 1.0)
    watch.service.watch_body(False)
    watch.until(lambda: watch.samples[-1].body_seen == 0.0)


def test_program_that_does_not_ask_for_news_is_waited_for(start: Start) -> None:
    watch = start(EndlessSource(), Limits(dead_s=0.6))
    watch.until(lambda: len(watch.samples) > 5)
    time.sleep(1.0)  # longer than a process may be silent
    watch.for_s(0.3)
    assert SourceState.restarting not in watch.states
    assert rises(watch) and len(watch.samples) > 30


def test_no_orphan_and_no_word_on_ctrl_c(tmp_path: Path) -> None:
    """A program that is interrupted, then killed: its processes end, and say nothing."""
    script = """
import sys, time
from tests.vision.fakes import EndlessSource
from tracker.vision.messages import LazyFactory
from tracker.vision.service import Service
import signal
def main():
    signal.signal(signal.SIGINT, signal.SIG_IGN)
    service = Service(EndlessSource(), LazyFactory("tests.vision.fakes:make"))
    service.start()
    print("started", flush=True)
    end = time.perf_counter() + 30
    told = False
    while time.perf_counter() < end:
        service.poll()
        if not told and service._spare is not None and service._spare.ready:
            told = True
            print(service._child.pid, service._spare.pid, flush=True)
        time.sleep(0.01)
if __name__ == "__main__":
    main()
"""
    path = tmp_path / "program.py"
    path.write_text(script)
    program = subprocess.Popen(
        [sys.executable, str(path)],
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
        text=True,
        start_new_session=True,
        env=os.environ | {"PYTHONPATH": str(Path(__file__).parents[2])},
    )
    assert program.stdout is not None and program.stderr is not None
    try:
        said = interrupt_and_kill(program)
    finally:
        program.kill()
        program.wait()
        program.stdout.close()
        program.stderr.close()
    assert "Traceback" not in said and "Interrupt" not in said


def interrupt_and_kill(program: subprocess.Popen[str]) -> str:
    assert program.stdout is not None and program.stderr is not None
    assert program.stdout.readline() == "started\n"
    os.killpg(program.pid, signal.SIGINT)  # as the terminal does, while the child starts
    pids = [int(word) for word in program.stdout.readline().split()]
    os.killpg(program.pid, signal.SIGINT)
    time.sleep(0.2)
    assert len(pids) == 2 and all(alive(pid) for pid in pids)
    program.kill()
    program.wait()
    end_s = time.perf_counter() + 3
    while any(alive(pid) for pid in pids):
        assert time.perf_counter() < end_s, "an orphan"
        time.sleep(0.02)
    return program.stderr.read()


def alive(pid: int) -> bool:
    try:
        return Path(f"/proc/{pid}/stat").read_text().rpartition(")")[2].split()[0] not in "ZX"
    except OSError:
        return False


def test_the_program_itself_imports_nothing_heavy() -> None:
    code = (
        "import sys; import tracker.vision.service, tracker.vision.cameras;"
        "tracker.vision.cameras.list_cameras();"
        "print([m for m in ('cv2', 'mediapipe', 'PySide6') if m in sys.modules])"
    )
    done = subprocess.run(
        [sys.executable, "-c", code], capture_output=True, text=True, cwd=Path(__file__).parents[2]
    )
    assert (done.stdout.strip(), done.stderr) == ("[]", "")


def test_no_thread_of_a_stopped_service_is_left(start: Start) -> None:
    before = threading.active_count()
    watch = start(EndlessSource(), spare=True)
    watch.until(lambda: watch.service._spare is not None)
    watch.service.stop()
    assert threading.active_count() == before
