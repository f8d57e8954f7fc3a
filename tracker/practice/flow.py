"""The order of a session, as it is gone through: from the first question to the end."""

from __future__ import annotations

from collections.abc import Generator, Mapping, Sequence
from typing import Any

from tracker.plan.asked import Asked, seat_mm
from tracker.plan.changes import What
from tracker.plan.model import Entry, Plan
from tracker.plan.offering import voice_needed
from tracker.plan.symptoms import Verdict, judge_set
from tracker.practice.asking import (
    CantBegin,
    Dropped,
    End,
    Flow,
    Recorder,
    Reordered,
    Unwell,
    picked,
)
from tracker.practice.changing import Changed
from tracker.practice.dropped import AskingWell
from tracker.practice.earlier import Earlier
from tracker.practice.tasks import (
    ANEW,
    NO_CAMERA,
    AskAfterSet,
    AskScores,
    CountDown,
    DoSet,
    Over,
    Prepare,
    Settle,
    ShowToday,
    Task,
    Voice,
    Wait,
)
from tracker.practice.today import Openings, entries_of_today
from tracker.session.flags import COUNT_LOST
from tracker.session.said import ENDED_OUTSIDE

#: After a set the score is asked for once 10 s are over (common practice).
SCORE_AFTER_S = 10.0
#: Own choice: no condition looks back on more sessions (``plan.model.Unlock.sessions``).
OUTSIDE_MOST = 100


class SessionFlow(AskingWell):
    """One session; the arguments are those of the conductor.

    Attributes
    ----------
    not_done
        Entries that were passed over so far, each with its reasons.
    confirmed
        Whether it was said that the therapist asks for what is changed now.
    """

    confirmed = False
    #: Whether only that was asked, and practice outside a plan may begin now.
    may_begin = False
    #: Whether a set of this session has begun.
    anything_begun = False

    def __init__(
        self,
        plan: Plan,
        recorder: Recorder,
        openings: Openings,
        *,
        week: int,
        stage_id: str | None,
        absent: Mapping[str, str],
        attended: bool,
        countdown_s: tuple[float, float],
        earlier: Earlier,
        only_whether: bool = False,
        supervised: bool = False,
    ) -> None:
        super().__init__(
            plan,
            recorder,
            openings,
            week=week,
            stage_id=stage_id,
            absent=absent,
            attended=attended,
            earlier=earlier,
            supervised=supervised,
        )
        self._countdown_s, self._only_whether = countdown_s, only_whether
        self._left: list[Entry] = []
        self._double_told = False
        self._changed_of_set: dict[str, Any] | None = None
        #: Whether the camera has missed some of the set that goes on.
        self.count_lost = False
        #: Whether the last set is just over, and a drop of the head in it may still come out.
        self.just_over = False
        self.not_done: list[tuple[str, tuple[str, ...]]] = []

    def session(self) -> Flow:
        """From the first question to the end."""
        try:
            yield from self._practice()
            end = End("finished")
        except Unwell:
            end = yield from self._after_unwell()
        except End as stopped:
            end = stopped
        end = self._judged_anew(end)
        for entry in self._left:
            absent = self._absent.get(entry.entry_id)
            self._not_done(entry, ("session_ended", *([] if absent is None else [absent])))
        if end.because:
            self._recorder.answer("ended_because", list(end.because))
        self._recorder.finish(end.ended)
        while True:
            yield Over(ended=end.ended, because=end.because)

    def _tell_outside(self) -> None:
        """Have the summary say what holds back something new, and that no other one can."""
        found = self._openings.outside[-OUTSIDE_MOST:]
        if found:
            told = [{"started_at": s.started_at, "ended": s.ended} for s in found]
            self._recorder.answer(ENDED_OUTSIDE, told)

    def _practice(self) -> Flow:
        self._tell_outside()
        # Who comes back although it was all for today may need help now.
        yield from self._ask_gate("start")
        if self._earlier.day.is_over and not self._earlier.week.fall_open:
            yield from self._ask_day_over()
        if self._only_whether:
            self.may_begin = True
            raise End("stopped")
        yield from self._ask_weekly()
        if self._earlier.ask_since_last:
            yield from self._ask_since_last()
        yield from self._ask_before()
        stage_id = yield from self._choose_stage()
        self._left = entries_of_today(self._plan, stage_id)
        while self._attended:
            entries = tuple((e.entry_id, self._waits(e)) for e in self._left)
            if (yield ShowToday(stage_id=stage_id, entries=entries)) is not ANEW:
                break
        while self._left:
            entry = self._left[0]
            try:
                refused = yield from self._refused(entry)
                if not refused and not (yield from self._do(entry)):
                    refused = ("not_in_place",)
            except Reordered:
                continue
            except CantBegin as found:
                refused = (found.reason,)
            if refused:
                self._not_done(entry, refused)
                self._left = self._left[1:]

    # --- what a therapist has changed between two sets ---

    @property
    def coming(self) -> Entry | None:
        """The entry that comes next, those that can't be done passed over; None after the last."""
        return next((e for e in self._left if not self._waits(e)), None)

    def _from_coming(self, coming: Entry) -> list[Entry]:
        """What is left, with what comes next in front."""
        return [coming, *(e for e in self._left if e is not coming)]

    def asked_of_coming(self) -> Asked | None:
        """What it asks for, with what was changed."""
        return None if self.coming is None else self._asked(self.coming)

    def change_dose(self, coming: Entry, what: What, steps: int) -> Changed | str:
        """Change tempo or amplitude of the entry that comes next; or say why not."""
        found = self._changes.dose(coming, what, steps)
        return found if isinstance(found, str) else self._noted(found)

    def change_next(self, coming: Entry) -> Changed | str:
        """Have another entry come next; or say why not."""
        left = self._from_coming(coming)
        found = self._changes.other_next(left, lambda e: not self._waits(e))
        return found if isinstance(found, str) else self._reordered(*found)

    def undo_change(self, coming: Entry) -> Changed | str:
        """Take the last change back; or say why not."""
        found = self._changes.undo(self._from_coming(coming))
        return found if isinstance(found, str) else self._reordered(*found)

    def _reordered(self, left: list[Entry], changed: Changed) -> Changed:
        self._left = left
        return self._noted(changed)

    def _noted(self, changed: Changed) -> Changed:
        self._recorder.mark(
            "changed",
            self.now_s,
            entry_id=changed.asked.entry_id,
            what=changed.what,
            before=changed.before,
            after=changed.after,
            undone=changed.undone,
            confirmed=self.confirmed,
        )
        return changed

    def _after_unwell(self) -> Generator[Task, Any, End]:
        """The safety questions again; the session ends whatever is answered."""
        end = yield from self._safety_again()
        # Who stops while being asked has still felt unwell; the therapist must see it.
        if end is not None and end.ended != "stopped":
            return end
        return End("stopped_unwell", ("unwell",))

    def _not_done(self, entry: Entry, reasons: Sequence[str]) -> None:
        self.not_done.append((entry.entry_id, tuple(reasons)))
        values = {"entry_id": entry.entry_id, "exercise": entry.exercise}
        self._recorder.mark("not_done", self.now_s, **values, reasons=list(reasons))

    # --- one entry ---

    def begin_step(self, number: int) -> None:
        """A step of the set has begun: what was changed of it is kept at once.

        A session that breaks off within the set must still say that it was changed.
        """
        self.numbers.append(number)
        self.anything_begun = True
        if self._changed_of_set:
            self._recorder.answer("changed", self._changed_of_set, number)
        if self.count_lost:
            self._recorder.answer(COUNT_LOST, True, number)

    def lose_count(self) -> None:
        """The camera has missed some of the set: that is kept at once, too."""
        self.count_lost = True
        self._of_set(COUNT_LOST, True)

    def saw_double(self) -> None:
        """The patient sees double in the set that is done: kept at once, and not asked again."""
        self._double_told = True
        self._of_set("clarity", "double")
        self._of_set("stopped_double", True)

    def _get_ready(self, entry: Entry) -> Generator[Task, Any, Asked | None]:
        """Have the person get into place, and count down; None if they did not get there."""
        known, called_off = self._known, ANEW
        while called_off is ANEW:
            asked = self._asked(entry)
            standing = asked.posture != "sitting"
            # From another seat distance and rest are others, and with them every angle.
            moved = known.chair_mm != seat_mm(asked, self._plan)
            # Nor have the eyes been led to other marks on a wall.
            places = asked.mark_places_mm
            other_wall = bool(places) and places != known.learnt
            rest_pose = standing or not known.seated_in_place or moved or other_wall
            ready = yield Prepare(
                asked=asked,
                rest_pose=rest_pose,
                voice=self._voice(entry),
                chair_mm=known.chair_mm,
            )
            if ready is ANEW:
                continue
            if ready == NO_CAMERA:
                raise CantBegin(NO_CAMERA)
            if ready is not True:
                return None
            # Who has stood up sits differently afterwards.
            known.seated_in_place = not standing
            if rest_pose:
                known.learnt = places
            if not standing and "face" in asked.exercise.needs:
                # Elsewhere no distance is asked for.
                known.chair_mm = seat_mm(asked, self._plan)
            self.numbers, self.count_lost, self._double_told = [], False, False
            until_s = self.now_s + self._countdown_s[standing]
            called_off = yield CountDown(asked=asked, until_s=until_s)
        self._changes.begin_set()
        self._changed_of_set = self._changes.told(entry)
        return asked

    def _do(self, entry: Entry) -> Generator[Task, Any, bool]:
        """Do one entry; false if the person did not get into place."""
        asked = yield from self._get_ready(entry)
        if asked is None:
            return False
        dropped = None
        try:
            yield DoSet(asked=asked)
        except Dropped as found:
            dropped = found
        finally:
            if self.numbers:
                self._left = self._left[1:]
            self._of_set("support", self._about_support(asked))
        ended_s = self.now_s
        if dropped is None:
            dropped = yield from self._after_set(asked, ended_s)
        if dropped is not None:
            yield from self._ask_well(dropped)
            yield from self._ask_after(asked)
            yield from self._watch_symptoms(asked, ended_s)
        self._known.rest_until_s = self.now_s + self._plan.rest_s
        return True

    def _after_set(self, asked: Asked, ended_s: float) -> Generator[Task, Any, Dropped | None]:
        """All that comes after a set, unless it comes out that the head dropped at its end."""
        self.just_over = True
        try:
            yield from self._ask_after(asked)
            yield from self._watch_symptoms(asked, ended_s)
        except Dropped as found:
            return found
        finally:
            self.just_over = False
        return None

    def _voice(self, entry: Entry) -> Voice:
        """What leads a set whose screen nobody looks at."""
        if not voice_needed(entry):
            return ""
        return "sound" if self._heard(entry) else "reader" if self._known.reader else ""

    def _about_support(self, asked: Asked) -> dict[str, Any]:
        known = self._known
        return {
            "asked": asked.support,
            "confirmed": known.support,
            "sound": known.sound,
            "reader": known.reader,
        }

    def _ask_after(self, asked: Asked) -> Flow:
        """What only the patient knows of the set."""
        exercise = asked.exercise
        if self._double_told:
            self._doubled.add(exercise.id)
        held_on = asked.seconds is not None or "steadied" in exercise.not_measured
        # Of shut eyes it is asked what they saw once they opened.
        opened = "gaze_eyes_shut" in exercise.not_measured
        looked = asked.eyes == "open" or opened
        wanted = {
            "landed": opened,
            "clarity": looked and exercise.asks_clarity and not self._double_told,
            "steadied": asked.posture == "standing" and held_on,
            "arm": "arm" in self._recorder.untold(self.numbers),
            "own_count": (self.count_lost or not exercise.counted)
            and asked.repetitions is not None,
        }
        questions = tuple(q for q, is_wanted in wanted.items() if is_wanted)
        if not questions:
            return
        task = AskAfterSet(entry_id=asked.entry_id, questions=questions)
        given = (yield task) or {}
        for question in questions:
            self._of_set(question, given.get(question))
        if given.get("clarity") != "double":
            return
        if exercise.near_work:
            self._doubled.add(exercise.id)
        else:
            # Seeing double where nothing was near may be new: the safety questions tell.
            yield from self._ask_gate("double")

    def _watch_symptoms(self, asked: Asked, ended_s: float) -> Flow:
        """Score 10 s after, then "back to usual"; the rules may end the session."""
        names = ("dizziness", *self._plan.symptom_rules.also_ask)
        yield Wait(until_s=ended_s + SCORE_AFTER_S, saw_double=self._double_told)
        while True:
            task = AskScores(when="after", names=names, entry_id=asked.entry_id)
            given = picked((yield task), names)
            verdict = self._judged(given, False, ended_s)
            if verdict.outcome != "ask" or not self._attended:
                break
        self._of_set("scores_after", given)
        if verdict.outcome == "wait":
            verdict = yield from self._settle(asked.entry_id, given, ended_s)
        if verdict.outcome == "end_today":
            raise End("symptom_rule", (verdict.reason,))

    def _settle(
        self, entry_id: str, given: Mapping[str, int | None], ended_s: float
    ) -> Generator[Task, Any, Verdict]:
        until_s = ended_s + 60.0 * self._plan.symptom_rules.settle_minutes_most
        while self.now_s < until_s:
            task = Settle(until_s=until_s, since_s=ended_s, entry_id=entry_id)
            if (yield task) is True:
                self._of_set("settled_minutes", round((self.now_s - ended_s) / 60.0, 2))
                return self._judged(given, True, ended_s)
            if not self._attended and self.now_s < until_s:
                return Verdict("go_on", "not_asked")
        self._of_set("settled_minutes", None)
        return Verdict("end_today", "not_settled")

    def _judged(self, given: Mapping[str, int | None], settled: bool, ended_s: float) -> Verdict:
        rules, minutes = self._plan.symptom_rules, (self.now_s - ended_s) / 60.0
        return judge_set(rules, self._known.start, given, settled, minutes)
