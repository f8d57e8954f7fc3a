"""The director: takes a session from the welcome to the saved summary.

A plain object without widgets. One timer calls :meth:`Director.tick`; the pages
show its state and send it commands. It owns the measuring service and the
recording of the session, and nothing it does waits: what may take long runs as a
job beside the window.
"""

from __future__ import annotations

from dataclasses import replace
from math import isfinite, nan
from pathlib import Path
from typing import Any

from tracker.errors import TurnpostError
from tracker.exercises.catalogue import CATALOGUE
from tracker.session.stage import SETUP_STEPS, Step
from tracker.vision.messages import FitFailed, Fitted, Measured, Message, SourceChanged, SourceState
from ui.asked import Asked, clip_asked, exercise_asked, setup_asked
from ui.geometry import Point, believable_distance_mm, facing_map, fitted_map
from ui.ports import CameraChoice, ClipPlan
from ui.session_state import (
    COUNTDOWN_S,
    LIVE_PHASES,
    TROUBLES,
    Dose,
    Phase,
    SessionState,
    Trouble,
)

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


class Director(SessionState):
    """Takes one person through set-up and exercise; its arguments are those of its state."""

    # --- commands ---

    def look_for_interrupted(self) -> None:
        """Look for sessions that broke off before; a demo does not."""
        if self.clip is None:
            self.recovering.look()

    def look_for_cameras(self) -> None:
        """Ask the system for its cameras, beside the window."""
        if self.clip is None:
            self.cameras = self._world.cameras()

    def start(self) -> None:
        """From the welcome on: the clip's set-up, or the choice of the camera."""
        if self.phase != Phase.welcome:
            return
        if self.clip is not None:
            self._open(self.clip.path)
            self._begin_setup()
            return
        self.look_for_cameras()
        self._enter(Phase.camera)
        self.use_camera(self.camera or (self.cameras[0] if self.cameras else None))

    def use_camera(self, camera: CameraChoice | None) -> None:
        """Open a camera to see whether it sees the person."""
        self._close_service()
        self._profile, self.report = None, None
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
        """Go on with a clip in place of the camera."""
        self._close_service()
        self.clip = clip
        self.trouble = None
        self.phase = Phase.welcome
        self.start()

    def begin_setup(self) -> None:
        """Start the set-up with the camera, or repeat it."""
        if self.clip is not None or self.phase not in (
            Phase.camera,
            Phase.setup_failed,
            Phase.choose,
        ):
            return
        if self._service is None or self._profile is not None:
            # A measurer that knows a person keeps that person: begin with a fresh one.
            self._close_service()
            self._profile = None
            if self.camera is None:
                return
            self._open(self.camera)
        self.show_picture(False)
        self._begin_setup()

    def start_exercise(self, dose: Dose) -> None:
        """Count down to an exercise."""
        if self.clip is not None or self.phase != Phase.choose:
            return
        if self._service is None and self.camera is not None:
            # The steps of the set-up belong to the clock of the service before.
            self._asked = []
            self._open(self.camera)
        self.dose = dose
        self.show_picture(False)
        self._record()
        self._count_from_s = self.now_s
        self._enter(Phase.countdown)

    def pause_or_go_on(self) -> None:
        """Space: rest in a set, or go on with what is left of it."""
        if self.clip is not None:
            return
        if self.phase == Phase.exercise:
            self._pause()
        elif self.phase == Phase.paused:
            self._count_from_s = self.now_s
            self._enter(Phase.countdown)

    def stop(self, ended: str = "stopped") -> None:
        """Stop at once, whatever happens; what was done is saved."""
        if self.phase in LIVE_PHASES:
            self._finish(ended)
        elif self.phase in (Phase.setup, Phase.fitting, Phase.setup_failed, Phase.camera):
            self._close_service()
            self.trouble = None
            self._enter(Phase.welcome)
        elif self.phase == Phase.choose:
            self._close_service()
            self._enter(Phase.welcome)

    def again(self) -> None:
        """From the summary: once more."""
        if self.phase != Phase.summary or self.unsaved:
            return
        self._recording, self.saved, self.save_error = None, None, ""
        if self.clip is not None or self._map is None:
            self._enter(Phase.welcome)
            self.start()
            return
        self._enter(Phase.choose)

    def save_again(self, into: Path | None = None) -> None:
        """From the summary: try to save once more, where it belongs or in another folder."""
        recording = self._recording
        if not self.unsaved or recording is None:
            return
        self.save_error = ""
        self._enter(Phase.saving)
        self._job = self._world.run(lambda: recording.save(into))
        self._collect_saved()

    def show_picture(self, on: bool) -> None:
        """Want the picture of oneself, or not."""
        self._preview_wanted = on
        if self._service is not None:
            self._service.set_preview(on)

    @property
    def picture_shown(self) -> bool:
        """Whether the picture of oneself is wanted."""
        return self._preview_wanted

    def close(self, timeout_s: float = 4.0) -> None:
        """The window closes: save what there is and end the measuring."""
        if self.phase in LIVE_PHASES:
            self._finish("stopped")
        self._close_service()
        for job in [*self._stopping, *([self._job] if self._job else [])]:
            job.wait(timeout_s)
        self._collect_saved()
        self.recovering.close(timeout_s)
        if self._recording is not None:
            self._recording.close()
        self._world.beats.stop()

    # --- time ---

    def tick(self) -> None:
        """Take the news, let time go on."""
        self.recovering.tick()
        self._stopping = [j for j in self._stopping if not j.done]
        if self.phase == Phase.setup and not self._asked:
            self._ask_setup()
        if self._service is not None:
            for message in self._service.poll():
                self._take(message)
        if self._service is not None:
            self._go_on(self.now_s)
        self._collect_saved()

    def _take(self, message: Message) -> None:
        match message:
            case Measured(sample):
                self._news_s = sample.time_s
                self.sample = sample
                self._begin_steps(sample.time_s)
                if self._recording is not None:
                    self._recording.feed(sample)
                elif self.phase in (Phase.setup, Phase.fitting) and len(self._held) < _MAX_HELD:
                    self._held.append(sample)
                self._go_on(sample.time_s)
            case Fitted(report):
                self._fitted(report)
            case FitFailed(text):
                self._fit_failed(text)
            case SourceChanged(state, detail):
                self._source_changed(state, detail)

    def _source_changed(self, state: SourceState, detail: str) -> None:
        self.source = state
        if state in TROUBLES:
            self.trouble = Trouble(state, detail)
        elif state in (SourceState.running, SourceState.opening):
            self.trouble = None
        elif state == SourceState.ended and self.phase == Phase.exercise:
            self._finish("finished")
        elif state == SourceState.ended and self.phase == Phase.setup and self._asked:
            self._ask_for_fit()
        self._changed()

    def _go_on(self, now_s: float) -> None:
        if self.phase == Phase.setup:
            last = self._last_setup()
            early_s = _FIT_EARLY_S if self.clip is not None else 0.0
            if last is not None and now_s >= last.step.to_s - early_s:
                self._ask_for_fit()
        elif self.phase == Phase.countdown and now_s >= self._count_from_s + COUNTDOWN_S:
            self._begin_exercise()
        if self._recording is not None and self.phase in LIVE_PHASES:
            self._begin_steps(now_s)
            self._recording.advance(now_s)
            self._look_at_disk(now_s)
            if self.phase == Phase.exercise:
                self._end_when_done(now_s)

    def _look_at_disk(self, now_s: float) -> None:
        recording = self._recording
        live = self.phase == Phase.exercise and recording is not None
        if live and recording.fault and not isfinite(self._disk_said_s):
            self._disk_said_s = now_s

    def _end_when_done(self, now_s: float) -> None:
        live = self.live
        step = self._asked[-1].step
        enough = (
            self.clip is None
            and live is not None
            and live.goal_repetitions is not None
            and live.repetitions >= live.goal_repetitions
        )
        if enough or now_s >= step.to_s:
            self._finish("finished")

    # --- set-up ---

    def _ask_setup(self) -> None:
        """Ask for the set-up's steps, once its page stands and the field has its size."""
        if self.clip is not None:
            self._asked = clip_asked(self.clip.steps, self._extent())
        else:
            self._asked = setup_asked(self.now_s, self._extent(), self.distance_mm)
        self._changed()

    def _begin_setup(self) -> None:
        self._asked = []
        self._begun, self._held = 0, []
        self._recording, self.report, self.fit_message = None, None, ""
        self.saved, self.save_error, self.dose = None, "", None
        self._enter(Phase.setup)

    def _last_setup(self) -> Asked | None:
        parts = [a for a in self._asked if a.step.step in SETUP_STEPS]
        return parts[-1] if parts else None

    def _ask_for_fit(self) -> None:
        if self._service is not None:
            self._service.request_fit([a.step for a in self._setup_asked()])
        self._enter(Phase.fitting)

    def _setup_asked(self) -> list[Asked]:
        return [a for a in self._asked if a.step.step in SETUP_STEPS]

    def _fitted(self, report: Any) -> None:
        if self.phase != Phase.fitting:
            return
        self.report, self._profile = report, report.profile
        drawn = self._setup_asked()
        places = [p for p in (_screen_of(a.step) for a in drawn) if p is not None]
        found = [s.target_mm for s in report.steps if s.target_mm is not None]
        if self.clip is None and len(places) == len(found):
            self._map = fitted_map(places, found)
        middle = next((s.target_mm for s in report.steps if s.target_mm is not None), None)
        if middle is not None:
            self._rest_distance_mm = believable_distance_mm(middle[2])
        steps = {(s.from_s, s.step): s for s in report.steps}
        self._asked = [
            replace(a, step=steps.get((a.step.from_s, a.step.step), a.step)) for a in self._asked
        ]
        self._after_setup()

    def _fit_failed(self, text: str) -> None:
        if self.phase != Phase.fitting:
            return
        self.fit_message = text
        if self.clip is not None:
            self._after_setup()
        else:
            self._enter(Phase.setup_failed)

    def _after_setup(self) -> None:
        if self.clip is None:
            self._enter(Phase.choose)
            return
        step = self._asked[-1].step
        exercise = CATALOGUE[step.exercise or ""]
        self.dose = Dose(exercise.id, exercise.dose_repetitions, step.tempo_at(step.from_s))
        self._record()
        self._sound(step)
        self._enter(Phase.exercise)

    # --- exercise ---

    def _record(self) -> None:
        """Start the recording with what the set-up has shown."""
        report = self.report
        error_deg = float(getattr(report, "error_deg", nan))
        found = {
            "camera": self._about_camera(),
            "distance_mm": round(self._rest_distance_mm),
            "calibration": report is not None,
            "gaze_error_deg": error_deg if isfinite(error_deg) else None,
            "findings": list(getattr(report, "findings", ())),
        }
        self._recording = self._world.make_recording(found)
        self._disk_said_s = nan
        if self.clip is None:
            self._asked = self._setup_asked()
        self._begun = 0
        held, self._held = self._held, []
        for sample in held:
            self._begin_steps(sample.time_s)
            self._recording.feed(sample)

    def _about_camera(self) -> dict[str, Any]:
        if self.clip is not None:
            fov_deg = self.clip.vertical_fov_deg
            return {"name": "sample clip", "vertical_fov_deg": fov_deg}
        known = getattr(self._profile, "vertical_fov_deg", None)
        name = self.camera.name if self.camera is not None else None
        return {"name": name, "vertical_fov_deg": known}

    def _begin_steps(self, time_s: float) -> None:
        """Tell the recording of the steps that have begun by a time."""
        if self._recording is None:
            return
        while self._begun < len(self._asked):
            step = self._asked[self._begun].step
            if step.from_s > time_s:
                return
            self._recording.begin(step)
            self._begun += 1

    def _begin_exercise(self) -> None:
        dose, recording = self.dose, self._recording
        if dose is None or recording is None:
            return
        left = dose.repetitions - recording.repetitions
        if left <= 0:
            self._finish("finished")
            return
        extent = self._extent()
        asked = exercise_asked(
            self.now_s,
            dose.exercise,
            repetitions=left,
            tempo_bpm=dose.tempo_bpm,
            jumps=CATALOGUE[dose.exercise].head_still,
            extent=extent,
            to_rest=self._map or facing_map(self._rest_distance_mm, extent.centre_mm),
            distance_mm=self._rest_distance_mm,
        )
        self._add(asked)
        self._sound(asked.step)
        self._enter(Phase.exercise)

    def _sound(self, step: Step) -> None:
        left_s = step.to_s - max(self.now_s, step.from_s)
        self._world.beats.start(step.tempo_bpm, max(left_s, 0.0))

    def _add(self, asked: Asked) -> None:
        """A step from now on; the one before it ends."""
        from_s = asked.step.from_s
        self._asked = [
            replace(a, step=a.step.model_copy(update={"to_s": min(a.step.to_s, from_s)}))
            for a in self._asked
        ]
        self._asked.append(asked)
        self._begin_steps(from_s)

    def _pause(self) -> None:
        now_s = self.now_s
        self._add(Asked(Step(from_s=now_s, to_s=now_s + 3600.0, step="rest")))
        self._world.beats.stop()
        self._enter(Phase.paused)

    # --- the end ---

    def _finish(self, ended: str) -> None:
        self.ended = ended
        recording = self._recording
        self._world.beats.stop()
        self._close_service()
        if recording is None:
            self._enter(Phase.welcome)
            return
        self._enter(Phase.saving)

        recording.finish(ended)
        self._job = self._world.run(recording.save)
        self._collect_saved()

    def _collect_saved(self) -> None:
        job = self._job
        if job is None or not job.done:
            return
        self._job = None
        if job.error is not None:
            self.save_error = str(job.error)
        else:
            self.saved = job.result
        self._enter(Phase.summary)

    # --- the service ---

    def _open(self, source: CameraChoice | Any) -> None:
        self.trouble, self.sample = None, None
        self.source = SourceState.opening
        self._news_s = nan
        try:
            service = self._world.make_service(source, self._profile)
            service.start()
        except (OSError, RuntimeError, TurnpostError) as error:
            # No process, no memory, no file: said like any other trouble of the source.
            self.source = SourceState.failed
            self.trouble = Trouble(SourceState.failed, str(error).strip())
            return
        self._service = service
        service.set_preview(self._preview_wanted)

    def _close_service(self) -> None:
        """End the measuring, beside the window: a camera's driver may hang."""
        service, self._service = self._service, None
        if service is not None:
            self._preview_wanted = False
            self._stopping.append(self._world.run(service.stop))
        self.source = SourceState.ended

    def _enter(self, phase: Phase) -> None:
        self.phase = phase
        self._changed()


def _screen_of(step: Step) -> Point | None:
    place = (step.model_extra or {}).get("screen_mm")
    return (float(place[0]), float(place[1])) if place is not None else None
