"""The session's exercise: its recording, its steps, its end, and the saving."""

from __future__ import annotations

from dataclasses import replace
from math import isfinite, nan
from pathlib import Path
from typing import Any

from tracker.errors import in_words
from tracker.exercises.catalogue import CATALOGUE, body_every_s, needs_body
from tracker.exercises.events import Cue
from tracker.lens import DEFAULT_LENS, lens_of
from tracker.session.live import SAMPLE_CLIP, check_found, head_reach_found, mark_found, wall_found
from tracker.session.stage import Step
from ui.geometry import facing_map
from ui.ports import RecordingLike, Saved
from ui.session.again import AgainPart
from ui.session.asked import Asked, exercise_asked
from ui.session.state import Dose, Phase


class ExercisePart(AgainPart):
    """Records an exercise from its countdown to the saved files."""

    #: Number of the step that the recording was told of last.
    _step_number: int | None = None

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

    def _tell_cue(self, cue: Cue) -> bool:
        """Whether the person gets to know of a cue now."""
        raise NotImplementedError

    def _found(self) -> dict[str, Any]:
        """What the set-up has shown."""
        report = self.report
        error_deg = float(getattr(report, "error_deg", nan))
        return {
            "camera": self._about_camera(),
            "screen": self._about_screen(),
            "distance_mm": round(self._rest_distance_mm),
            "calibration": report is not None,
            "gaze_error_deg": error_deg if isfinite(error_deg) else None,
            "gaze_reach_deg": getattr(report, "reach_deg", None),
            "head_reach_deg": head_reach_found(getattr(report, "head_reach", None)),
            "check": check_found(getattr(report, "check", None)),
            "mark": mark_found(self.mark_found),
            **wall_found(report),
            "glasses": self.glasses or None,
            "eyes": "both" if self.clip is not None else self.eyes,
            "profile": "kept" if self._short else "new",
            "findings": list(getattr(report, "findings", ())),
        }

    def _record(self) -> None:
        """Start the recording with what the set-up has shown."""
        self.let_setup_go()
        self._recording = self._world.make_recording(self._found())
        self._recording.tell_by(self._tell_cue)
        self._reps_before = 0
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
            return {"name": SAMPLE_CLIP, **lens_of(self.clip.vertical_fov_deg).found()}
        lens = getattr(self._profile, "lens", DEFAULT_LENS)
        name = self.camera.name if self.camera is not None else None
        return {"name": name, **lens.found()}

    def _about_screen(self) -> dict[str, Any] | None:
        """Width of the screen and how it is known; a clip's targets were on another."""
        screen = self._extent().screen
        if self.clip is not None or screen is None:
            return None
        return {"width_mm": round(screen.width_mm, 1), "source": screen.source}

    def _begin_steps(self, time_s: float) -> None:
        """Tell the recording of the steps that have begun by a time."""
        if self._recording is None:
            return
        while self._begun < len(self._asked):
            step = self._asked[self._begun].step
            if step.from_s > time_s:
                return
            self._step_number = self._recording.begin(step)
            self._begun += 1

    def _begin_exercise(self) -> None:
        dose, recording = self.dose, self._recording
        if dose is None or recording is None:
            return
        left = (dose.repetitions or 0) - recording.repetitions
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

    def _add(self, asked: Asked, *, begin: bool = True) -> None:
        """A step from now on; the one before it ends. The recording is told of it, or was."""
        from_s = asked.step.from_s
        self._asked = [
            replace(a, step=a.step.model_copy(update={"to_s": min(a.step.to_s, from_s)}))
            for a in self._asked
        ]
        self._asked.append(asked)
        self._watch_body(asked.step.exercise)
        if begin:
            self._begin_steps(from_s)
        else:
            self._begun = len(self._asked)

    def _watch_body(self, exercise: str | None) -> None:
        """Shoulders and hands cost time: they are looked for only where they are needed."""
        if self._service is not None:
            self._service.watch_body(needs_body(exercise), body_every_s(exercise))

    def _pause(self) -> None:
        now_s = self.now_s
        self._add(Asked(Step(from_s=now_s, to_s=now_s + 3600.0, step="rest")))
        self._world.beats.stop()
        self._enter(Phase.paused)

    def _look_at_disk(self, now_s: float) -> None:
        recording = self._recording
        live = self.phase == Phase.exercise and recording is not None
        if live and recording.fault and not isfinite(self._disk_said_s):
            self._disk_said_s = now_s

    def _look_at_load(self, now_s: float) -> None:
        """See whether the measuring keeps up in a set; between sets nobody's figures suffer."""
        if self._service is None or self.phase != Phase.exercise:
            self.load.forget()
            self._busy_said_s = nan
            return
        self.load.see(now_s, self._service.stats)
        if self.load.busy and not isfinite(self._busy_said_s):
            self._busy_said_s = now_s

    def _end_when_done(self, now_s: float) -> None:
        live = self.live
        step = self._asked[-1].step
        enough = (
            self.clip is None
            and live is not None
            and live.goal_repetitions is not None
            and self._count_to_end >= live.goal_repetitions
        )
        if enough or now_s >= step.to_s:
            self._set_over("finished")

    @property
    def _count_to_end(self) -> int:
        """Repetitions that the end of a set goes by."""
        live = self.live
        return 0 if live is None else live.repetitions

    def _set_over(self, ended: str) -> None:
        """The dose is done: with one exercise the session is over too."""
        self._finish(ended)

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
        self._job = self._world.run(lambda: self._save_all(recording, None))
        self._collect_saved()

    def save_again(self, into: Path | None = None) -> None:
        """From the summary: try to save once more, where it belongs or in another folder."""
        recording = self._recording
        if not self.unsaved or recording is None:
            return
        self.save_error = ""
        self._enter(Phase.saving)
        self._job = self._world.run(lambda: self._save_all(recording, into))
        self._collect_saved()

    def _save_all(self, recording: RecordingLike, into: Path | None) -> Saved:
        """Save what has waited for its place, then the session that is over now."""
        while self._unsaved_before:
            self._saved_before.append(self._unsaved_before[0].save(into))
            del self._unsaved_before[0]
        return recording.save(into)

    def _keep_unsaved(self) -> None:
        """Another record is to begin: what is not saved yet waits, and is saved with it."""
        if self.unsaved and self._recording is not None:
            self._unsaved_before.append(self._recording)

    def _collect_saved(self) -> None:
        job = self._job
        if job is None or not job.done:
            return
        self._job = None
        if job.error is not None:
            self.save_error = in_words(job.error)
        else:
            self.saved = job.result
        self._enter(Phase.summary)
