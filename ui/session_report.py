"""Practice done away from the laptop: put down in one step, and taken back in one."""

from __future__ import annotations

from datetime import date

from tracker.plan.asked import week_of
from tracker.plan.model import Plan
from tracker.practice.reported import reported_entries, write_reported
from ui.ports import Job
from ui.session_call import CallPart
from ui.session_state import Phase


class ReportPart(CallPart):
    """Saves a session that the person tells of, and that no camera saw."""

    #: Whether the session that was just saved is one that was told.
    reported = False
    _read_before_report: Job | None = None

    def report_practice(self, plan: Plan) -> None:
        """From the welcome: what the plan asks for today was done elsewhere."""
        if self.phase != Phase.welcome or self.clip is not None or self._history is not None:
            return
        if self._read_before_report is None:
            self.plan = plan
            self._read_before_report = self._world.run(lambda: self._world.history(plan, None))
            self._write_report()

    def start_plan(self, plan: Plan) -> None:
        """Not while one is put down."""
        if self._read_before_report is None:
            super().start_plan(plan)

    def take_report_back(self) -> None:
        """From the summary: it was a mistake, and is as if it had not been told."""
        if self.phase != Phase.summary or not self.reported or self.saved is None:
            return
        self._world.forget(self.saved.folder)
        self.again()

    def _write_report(self) -> None:
        """Once what was done before has been read."""
        job, plan = self._read_before_report, self.plan
        if job is None or not job.done or plan is None:
            return
        self._read_before_report = None
        if self.phase != Phase.welcome:
            return
        self._forget_session()
        recording = self._recording = self._world.make_reported(plan)
        write_reported(
            recording, reported_entries(plan, job.result or []), week_of(plan, date.today())
        )
        self.reported = True
        self._finish("finished")

    def _forget_session(self) -> None:
        super()._forget_session()
        self.reported = False

    def _advance_plan(self) -> None:
        self._write_report()
        super()._advance_plan()
