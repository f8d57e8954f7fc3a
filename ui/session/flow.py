"""The director: takes a session from the welcome to the saved summary.

A plain object without widgets. One timer calls :meth:`Director.tick`; the pages
show its state and send it commands. It owns the measuring service and the
recording of the session, and nothing it does waits: what may take long runs as a
job beside the window.
"""

from __future__ import annotations

from calibration.parts import part_of
from tracker.practice.tasks import DoSet
from tracker.sample import Sample
from tracker.vision.messages import FitFailed, Fitted, Measured, Message, SourceChanged, SourceState
from ui.ports import CameraChoice, ClipPlan
from ui.session.leaving import LeavingPart
from ui.session.state import (
    COUNTDOWN_S,
    LIVE_PHASES,
    TROUBLES,
    Dose,
    Phase,
    Trouble,
)
from ui.sounds.speaking import Grave

__all__ = [
    "COUNTDOWN_S",
    "LIVE_PHASES",
    "TROUBLES",
    "Director",
    "Dose",
    "Phase",
    "Trouble",
]

#: A clip's fit is asked for this long before its set-up ends, so that the exercise has it.
_FIT_EARLY_S = 0.04
#: Set-up samples that are kept for the recording (five minutes at 60 frames/s).
_MAX_HELD = 18_000


class Director(LeavingPart):
    """Takes one person through set-up and exercise; its arguments are those of its state."""

    #: While a sample plays in place of the camera: how far off the person was taken to be.
    _before_sample_mm: float | None = None

    @property
    def sample_chosen(self) -> bool:
        """Whether a sample plays that was chosen here: it ends with the way to the first page."""
        return self.clip is not None and self._before_sample_mm is not None

    # --- commands ---

    def look_for_interrupted(self) -> None:
        """Look for sessions that broke off before; a demo does not."""
        if self.clip is None:
            self.recovering.look()

    def start(self) -> None:
        """From the welcome on: the clip's set-up, or the choice of the camera.

        Before a camera it is asked first what a day that was over asks.
        """
        if self.phase != Phase.welcome or not self.at_rest:
            return
        if self.clip is not None:
            self._open(self.clip.path)
            self._begin_setup()
            return
        self.prepare_voice()
        self._begin_outside()

    def _look_for_camera_first(self) -> None:
        """Outside a plan all begins with a camera that sees the person."""
        self.look_for_cameras()
        self._enter(Phase.camera)
        self.use_camera(self.camera or (self.cameras[0] if self.cameras else None))

    def use_camera(self, camera: CameraChoice | None) -> None:
        """Open a camera to see whether it sees the person."""
        self._close_service()
        self._profile, self.report, self._short = None, None, False
        self.camera = camera
        if camera is None:
            self.trouble = Trouble(SourceState.no_camera)
            self._changed()
            return
        self._open(camera)
        self.show_picture(True)
        self._changed()

    def retry(self) -> None:
        """Look for cameras again and open the one in use, or the first."""
        self.look_for_cameras()
        known = {(c.index, c.name): c for c in self.cameras}
        wanted = self.camera
        again = known.get((wanted.index, wanted.name)) if wanted is not None else None
        self.use_camera(again or (self.cameras[0] if self.cameras else wanted))

    def use_clip(self, clip: ClipPlan) -> None:
        """Go on with a clip in place of the camera, until one is back on the first page."""
        if self.conductor is not None:
            return
        self._close_service()
        self._before_sample_mm = self._rest_distance_mm
        self.clip = clip
        self.trouble = None
        self.phase = Phase.welcome
        self.start()

    def begin_setup(self) -> None:
        """Start the set-up with the camera, or repeat it."""
        if self.clip is not None or self.phase not in (
            Phase.camera,
            Phase.setup_failed,
            Phase.setup_told,
            Phase.choose,
        ):
            return
        if self.refuse_seat():
            return
        over = self._service is None or self.source is SourceState.failed
        if over or self._profile is not None or self._short:
            # A measurer that knows a person keeps that person: begin with a fresh one.
            self._close_service()
            self._profile, self._short = None, False
            if self.camera is None:
                return
            self._open(self.camera)
        self.show_picture(False)
        self._begin_setup()

    def use_kept(self) -> None:
        """Take the set-up of last time, and see in short whether it still fits."""
        path, camera = self.kept, self.camera
        if self.phase != Phase.camera or path is None or camera is None or self.refuse_seat():
            return
        self._close_service()
        self._profile, self._short = path, True
        self._open(camera)
        self._profile = None
        self.show_picture(False)
        self._begin_setup()

    def start_exercise(self, dose: Dose) -> None:
        """Count down to an exercise."""
        if self.clip is not None or self.phase != Phase.choose:
            return
        self._open_anew_if_over()
        if self._service is None:
            # Without a measuring there is no clock to count down by; the page says what to do.
            self._changed()
            return
        self.dose = dose
        self._begin_alone()
        self.show_picture(False)
        self._record()
        self._count_from_s = self.now_s
        self._lead_in(None, self.countdown_s)
        self._enter(Phase.countdown)

    def pause_or_go_on(self) -> None:
        """Space: rest in a set, or go on with what is left of it."""
        if self.clip is not None:
            return
        if self.phase == Phase.exercise:
            self._pause()
        elif self.phase == Phase.paused and not self.go_on_without():
            self._count_from_s = self.now_s
            self._count_on()
            self._enter(Phase.countdown)

    def stop(self, ended: str = "stopped") -> None:
        """Stop at once, whatever happens; what was done is saved."""
        self._hush()
        if self.leave_again() or self.leave_tools():
            return
        if self.conductor is not None:
            self.stop_plan(ended)
        elif self.phase in LIVE_PHASES:
            self._finish(ended)
            if self.clip is None:
                self._say((Grave.stop, 0), "say.stopped")
        elif self.phase in (Phase.setup, Phase.fitting, Phase.setup_failed, Phase.camera):
            self._close_service()
            self.trouble = None
            self._enter(Phase.welcome)
        elif self.phase == Phase.choose:
            self._close_service()
            self._enter(Phase.welcome)

    def again(self) -> None:
        """From the summary: once more; to the first page where it was all for today."""
        if self.phase != Phase.summary or self.unsaved:
            return
        if self.plan is not None or self.is_over_for_today:
            self.leave_summary()
            return
        self._put_away()
        if self.clip is not None or self._map is None:
            sample = self._before_sample_mm is not None
            self._enter(Phase.welcome)
            if not sample:
                self.start()
            return
        self._enter(Phase.choose)

    def _enter(self, phase: Phase) -> None:
        """Another page; on the first one everything is as it was before a sample."""
        distance_mm = self._before_sample_mm
        if phase == Phase.welcome and distance_mm is not None:
            self.clip, self._before_sample_mm = None, None
            self._rest_distance_mm = distance_mm
            self.report, self._profile, self.dose = None, None, None
        super()._enter(phase)

    def leave_summary(self) -> None:
        """From the summary of any session: to the first page."""
        if self.phase != Phase.summary or self.unsaved:
            return
        self._put_away()
        self.plan = None
        self._close_service()
        self._enter(Phase.welcome)

    def _put_away(self) -> None:
        """The session that was saved is not shown any more."""
        self._done_before = self.something_done
        self._recording, self.saved, self.save_error = None, None, ""
        self._saved_before = []
        self.scores, self.trouble = None, None
        # It was said once, on the page that is left now.
        self._keeping = None

    def close(self, timeout_s: float = 4.0) -> None:
        """The window closes: save what there is and end the measuring."""
        if self.conductor is not None or self.phase in LIVE_PHASES:
            self._finish("stopped")
        self._close_service()
        self._wait_for_jobs(timeout_s)
        if self.conductor is not None:
            # Who felt unwell while it was being saved is asked only now, and nobody is there.
            self._finish("stopped")
            self._wait_for_jobs(timeout_s)
        self.recovering.close(timeout_s)
        self.lens.close(timeout_s)
        for recording in (*self._unsaved_before, self._recording):
            if recording is not None:
                recording.close()
        self._world.beats.stop()
        self._world.voice.close()

    def _wait_for_jobs(self, timeout_s: float) -> None:
        for job in [*self._stopping, *(j for j in (self._job, self._keeping) if j)]:
            job.wait(timeout_s)
        self._collect_saved()

    # --- time ---

    def tick(self) -> None:
        """Take the news, let time go on."""
        before, asked = self._page_now, self.asks_to_leave()
        self._work()
        self._note_page(before, asked=asked)

    def _work(self) -> None:
        self.recovering.tick()
        self.lens.tick()
        self._stopping = [j for j in self._stopping if not j.done]
        if self.setup_to_ask:
            self._ask_setup()
        if self._service is not None:
            for message in self._service.poll():
                self._take(message)
        self._tell_look()
        self._look_for_camera_alone()
        self._look_for_move()
        if self._service is not None:
            self._go_on(self.now_s)
        self._look_at_load(self.now_s)
        self._advance_plan()
        self._collect_saved()

    def _take(self, message: Message) -> None:
        match message:
            case Measured(sample, facing_deg, away_mm):
                self._see_reach(facing_deg)
                self.see_seat(sample, away_mm)
                self._measured(self._moved(sample))
            case Fitted(report):
                self._fitted(report)
            case FitFailed(text):
                self._fit_failed(text)
            case SourceChanged(state, detail):
                self._source_changed(state, detail)

    def _measured(self, sample: Sample) -> None:
        self._news_s = sample.time_s
        self.sample = sample
        if self.phase in (Phase.setup, Phase.fitting):
            if len(self._held) < _MAX_HELD:
                self._held.append(sample)
        elif self._recording is not None and self.phase in LIVE_PHASES:
            self._begin_steps(sample.time_s)
            self._recording.feed(sample)
            self._look_for_stop(sample)
        elif self._recording is not None and self._looks_on():
            self._recording.feed(sample)
        elif self.phase == Phase.mark:
            self._look_at_mark(sample)
        self._go_on(sample.time_s)

    def _looks_on(self) -> bool:
        """Whether a drop of the head that the end of a set has cut off may still come out."""
        recording, conductor = self._recording, self.conductor
        if self.phase != Phase.asking or recording is None or conductor is None:
            return False
        return not isinstance(conductor.task, DoSet) and recording.looks_on

    def _see_reach(self, facing_deg: tuple[float, float] | None) -> None:
        asked = self.asked
        if self.phase == Phase.setup and asked is not None:
            self.reach.see(asked.step.step, facing_deg)
            self.part_watch.see(part_of(asked.step), facing_deg)

    def _source_changed(self, state: SourceState, detail: str) -> None:
        self.source = state
        self._note_source(state)
        if state in TROUBLES:
            self.trouble = Trouble(state, detail)
        elif state in (SourceState.running, SourceState.opening):
            self.trouble = None
        elif state == SourceState.ended and self.phase == Phase.exercise:
            self._finish("finished")
        elif state == SourceState.ended and self.phase == Phase.setup and self._asked:
            self._ask_for_fit()
        self._source_of_again(state)
        self._changed()

    def _go_on(self, now_s: float) -> None:
        if self.phase == Phase.setup and not self.setup_waits:
            self._say_setup()
            last = self._last_setup()
            early_s = _FIT_EARLY_S if self.clip is not None else 0.0
            if last is not None and now_s >= last.step.to_s - early_s:
                self._ask_for_fit()
        elif (
            self.conductor is None
            and self.phase == Phase.countdown
            and now_s >= self._count_from_s + COUNTDOWN_S
        ):
            self._begin_exercise()
            if self.phase == Phase.exercise:
                self._say_begin()
        if self._recording is not None and self.phase in LIVE_PHASES:
            self._begin_steps(now_s)
            self._recording.advance(now_s)
            self._look_at_disk(now_s)
            if self.phase == Phase.exercise:
                if self.conductor is None and self.clip is None:
                    self._say_alone(self.live)
                self._end_when_done(now_s)
