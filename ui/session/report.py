"""Practice done away from the laptop: put down in one step, and taken back in one."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from math import inf

from tracker.errors import RunError
from tracker.plan.asked import week_of
from tracker.plan.model import Plan
from tracker.practice.reported import reported_entries, write_reported
from tracker.session.flags import REPORTED
from tracker.session.summary_file import Summary
from ui.ports import Job
from ui.session.call import CallPart
from ui.session.state import Phase

#: How often it is looked whether a session was handed over meanwhile.
LOOK_EVERY_S = 1.0


class ReportPart(CallPart):
    """Saves a session that the person tells of, and that no camera saw."""

    #: Whether the session that was just saved is one that was told.
    reported = False
    #: Time of day at which one was noted today, while it is asked whether another is meant.
    noted_today = ""
    #: Why the last one could not be taken back; empty where it was not tried.
    take_back_error = ""
    _read_before_report: Job | None = None
    _looked_s = -inf
    _was_sent = False

    def report_practice(self, plan: Plan) -> None:
        """From the welcome: what the plan asks for today was done elsewhere."""
        if self.phase != Phase.welcome or self.clip is not None or not self.at_rest:
            return
        self.plan = plan
        self._read_before_report = self._world.run(lambda: self._world.history(plan, None))
        self._changed()
        self._write_report()

    @property
    def reading_report(self) -> bool:
        """Whether what was done before is read; nothing else begins meanwhile."""
        return self._read_before_report is not None

    @property
    def at_rest(self) -> bool:
        """Nor is one put down that was told of."""
        return super().at_rest and not self.reading_report

    def take_report_back(self) -> None:
        """From the summary: it was a mistake, and is as if it had not been told."""
        self._looked_s = -inf
        if self.phase != Phase.summary or self.saved is None or not self.can_take_back:
            self._changed()
            return
        try:
            self._world.forget(self.saved.folder)
        except RunError as error:
            self.take_back_error = str(error)
            self._changed()
            return
        self.again()

    @property
    def can_take_back(self) -> bool:
        """Whether the session was told of, and nobody has got it yet."""
        if not self.reported or self.saved is None:
            return False
        # The page asks many times a second, and the answer stands on the disk.
        now_s = self.clock()
        if now_s - self._looked_s >= LOOK_EVERY_S:
            self._looked_s = now_s
            self._was_sent = self._world.was_sent(self.saved.folder)
        return not self._was_sent

    def _write_report(self) -> None:
        """Once what was done before has been read."""
        job, plan = self._read_before_report, self.plan
        if job is None or not job.done or plan is None:
            return
        self._read_before_report = None
        if self.phase != Phase.welcome:
            return
        today = date.today()
        told = _told_on(today, plan, job.result or [])
        if told and not self.noted_today:
            # A second one is meant only if the person says so.
            self.noted_today, self.plan = told, None
            self._changed()
            return
        self.noted_today = ""
        self._forget_session()
        recording = self._recording = self._world.make_reported(plan)
        week = week_of(plan, today)
        write_reported(recording, reported_entries(plan, job.result or [], today, week), week)
        self.reported = True
        self._finish("finished")

    def _forget_session(self) -> None:
        super()._forget_session()
        self.noted_today = ""
        self.reported, self.take_back_error = False, ""
        self._looked_s = -inf

    def _advance_plan(self) -> None:
        self._write_report()
        super()._advance_plan()


def _told_on(day: date, plan: Plan, history: Sequence[Summary]) -> str:
    """Time of the last one that was told of on a day with a plan; empty where there is none."""
    told = ""
    for summary in history:
        at = summary.started_at or ""
        flags = {f.flag for f in summary.quality}
        if summary.plan_id == plan.plan_id and REPORTED in flags and at[:10] == day.isoformat():
            told = at[11:16]
    return told
