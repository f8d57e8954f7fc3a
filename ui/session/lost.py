"""A camera that goes in the middle of a set: who relies on it is told, and the set pauses.

Standing, or with the eyes shut, a set may be stopped without hands, and a fall is noticed:
both need pictures. Without them such a set doesn't go on, and goes on again only by the
person's own key. So it is with bends to the floor: the head is low and the eyes are off the
page, where nothing is read and no key is at hand; and with what is done further back than the
plan's own seat, where the keys are out of reach. Any other set seated with the eyes open goes
on: the person has the page and the keys, and counts, which is asked for afterwards.

What was done without the camera is missing in its count for good, so that the set doesn't end
by that count alone, nor is anything said or shown of it: "Done" ends it. So that nobody does
more than is asked for, it also ends once the camera's count, and what the tempo leaves room for
in the time without pictures, come to the dose together.
"""

from __future__ import annotations

from math import ceil, isfinite, nan

from tracker.exercises.catalogue import CATALOGUE
from tracker.plan.asked import seat_mm
from tracker.practice.tasks import CountDown, DoSet
from tracker.session.stage import Step
from tracker.vision.messages import SourceState
from ui import words
from ui.session.clock import is_seen
from ui.session.one_set import SetPart
from ui.session.state import NO_PICTURE, NOTE_SHOWN_S, TROUBLES, Phase
from ui.sounds.speaking import Grave

#: So long a source gives nothing before a set pauses (common practice: a stutter is shorter,
#: and a step aside or a hand held up takes about as long to be seen).
LOST_S = 2.0
#: So long "begin now" is let be heard.
_BEGUN_S = 1.0
#: What is counted where the person bends so low.
_BENDS = "head_reach"
#: For who hears no voice: three quick beats, as at the end of a set.
_OVER_BPM, _OVER_S = 180.0, 0.99


class LostPart(SetPart):
    """Pauses a set that needs the camera for safety once there is none, or has it counted."""

    _again_s = nan
    _gone: SourceState | None = None
    _gone_since_s = nan
    _paused_by_camera = False
    #: How long the set had gone on when the last picture came; and how long before it went on
    #: without any.
    _gone_ran_s = nan
    _missed_s = 0.0
    #: The troubles that were said aloud since the last picture.
    _told_gone: frozenset[SourceState] = frozenset()

    def _begin_anew(self) -> None:
        """A set is to begin, in a plan or alone: nothing of it is missed so far, nor paused."""
        self._paused_by_camera = self.count_lost = False
        # A camera that is gone already misses it from its beginning.
        self._missed_s, self._gone_ran_s = 0.0, 0.0

    def _finish(self, ended: str) -> None:
        self._paused_by_camera = False
        super()._finish(ended)

    @property
    def camera_gone(self) -> bool:
        """Whether the camera has given nothing for so long that it is no stutter."""
        return self._gone is not None and self.now_s - self._gone_since_s >= LOST_S

    @property
    def paused_by_camera(self) -> bool:
        """Whether this pause is one for the camera's sake, be it back by now or not."""
        return self.phase == Phase.paused and self._paused_by_camera

    @property
    def counts_alone(self) -> bool:
        """Whether the person counts now, because the camera can't."""
        return self.count_lost and self.phase == Phase.exercise and self.camera_gone

    @property
    def counted_with_gap(self) -> int | None:
        """What the camera counted of a set that it missed some of; None where it missed nothing."""
        return self._reps_done if self.count_lost else None

    @property
    def again_note(self) -> bool:
        """Whether to say now that the camera counts again: for a while."""
        return self.count_lost and 0 <= self.now_s - self._again_s < NOTE_SHOWN_S

    @property
    def lost_keys(self) -> tuple[str, ...]:
        """Keys of the words for a camera that is gone: what it is, and what to do."""
        if self._gone is None:
            return ()
        name = f"trouble.{self._gone}"
        return (name, f"{name}.do")

    @property
    def lost_words_now(self) -> tuple[str, str]:
        """What is wrong with the camera and what to do, in words; empty where nothing is."""
        trouble = self.trouble
        keys = self.lost_keys if trouble is None and self.camera_gone else ()
        if trouble is not None:
            keys = (f"trouble.{trouble.state}", f"trouble.{trouble.state}.do")
        if not keys:
            return "", ""
        what, to_do = keys
        return words.say_or(what, "trouble.failed"), words.say_or(to_do, "trouble.failed.do")

    def go_on_without(self) -> bool:
        """Space in such a pause with the camera still gone: said once more; True if it was."""
        if not self.paused_by_camera or self._gone is None:
            return False
        self._say_lost()
        if self.source is SourceState.failed and self.camera is not None:
            # This one is not tried again by itself; the person's measures are kept.
            self._close_service()
            self._open(self.camera)
        self._changed()
        return True

    @property
    def _count_to_end(self) -> int:
        """The camera's count, with what may have been done while it was gone: rather too many.

        At one's own pace the usual length of a repetition stands for the tempo.
        """
        counted, entry, dose = super()._count_to_end, self.entry, self.dose
        if not self.count_lost or dose is None or not dose.repetitions:
            return counted
        # Two beats are one repetition; a tempo that rises leaves most room at its end.
        tempo = dose.tempo_bpm if entry is None else entry.tempo_bpm
        one_s = CATALOGUE[dose.exercise].repetition_s
        if tempo is not None:
            one_s = 2 * 60.0 / (max(tempo) if isinstance(tempo, tuple) else tempo)
        missed_s = self._missed_s + (0.0 if self._gone is None else self._gap_s)
        return counted + ceil(missed_s / one_s - 1e-6)

    @property
    def _gap_s(self) -> float:
        """How long the set has gone on since the last picture."""
        since_s = self.set_ran_s - self._gone_ran_s
        return max(since_s, 0.0) if isfinite(since_s) else 0.0

    def _note_source(self, state: SourceState) -> None:
        """The source's state is another: one trouble after another counts as one."""
        if state in NO_PICTURE:
            if self._gone is None:
                self._told_gone = frozenset()
                self._gone_since_s = self.now_s
                unseen_s = self.now_s - self._news_s
                self._gone_ran_s = self.set_ran_s - (max(unseen_s, 0) if isfinite(unseen_s) else 0)
            was, self._gone = self._gone, state
            if was is not state:
                self._say_other_trouble(state)
        elif state is SourceState.running:
            was, self._gone = self._gone, None
            if was is not None:
                self._missed_s += self._gap_s
            if was is not None and self.paused_by_camera:
                self._say((Grave.edge, 0), "lost.back")
            elif was is not None and self.count_lost and self.phase == Phase.exercise:
                self._again_s = self.now_s
                self._say((Grave.edge, 0), "lost.again")

    @property
    def _relies_on_news(self) -> bool:
        """Whether somebody was told of the camera, and waits for it or counts meanwhile."""
        return self.paused_by_camera or self.counts_alone

    def _say_other_trouble(self, state: SourceState) -> None:
        """What was said of the camera holds no more: another trouble, said once in a gap."""
        told = self._told_gone
        if told and state in TROUBLES - told and self._relies_on_news:
            self._told_gone = told | {state}
            self._say((Grave.edge, 0), *self.lost_keys)

    def _note_told(self) -> None:
        """The trouble that there is now is said aloud."""
        if self._gone is not None:
            self._told_gone |= {self._gone}

    def _needs_camera(self) -> bool:
        """Whether the set relies on the camera for a stop without hands, or on a look at it."""
        entry, plan = self.entry, self.plan
        if entry is None or not is_seen(entry):
            return False
        # Further back than usual the keys are out of reach.
        far = plan is not None and seat_mm(entry, plan) > plan.seat_distance_mm
        return self.by_ear or far or entry.exercise.channel == _BENDS

    def _look_for_camera(self) -> None:
        """Pause a set, or the countdown back to it, that must not go on without pictures."""
        going_on = self.phase in (Phase.exercise, Phase.countdown)
        lost = going_on and isinstance(self.task, DoSet) and self.camera_gone
        if not lost:
            return
        if not self._needs_camera():
            self._lose_count()
            return
        if self._recording is not None:
            self._recording.mark("camera_lost", self.now_s, state=str(self._gone))
        # Before the pages hear of the pause.
        self._paused_by_camera = True
        self._pause()
        self._say_lost()
        if self.led == "beats":
            self._world.beats.start(_OVER_BPM, _OVER_S)

    def _lose_count(self) -> None:
        """The camera doesn't count any more: the person does, and says when it is done."""
        dose = self.dose
        if self.count_lost or self.phase != Phase.exercise or dose is None:
            return
        counted = CATALOGUE[dose.exercise].counted and dose.repetitions is not None
        if not counted or self.set_ran_s < _BEGUN_S:
            return
        self.count_lost = True
        # The button that would put it away gives its place to "Done".
        self.show_picture(False)
        self._keep_lost()
        if self._recording is not None:
            self._recording.mark("count_lost", self.now_s, state=str(self._gone))
        self._note_told()
        self._say((Grave.edge, 0), *self.lost_keys[:1], "lost.count")
        self._changed()

    def _keep_lost(self) -> None:
        """That the camera has missed some of the set is kept with it."""
        if self.conductor is not None:
            self.conductor.lose_count()

    def _say_lost(self) -> None:
        entry = self.entry
        keys = []
        if entry is not None and entry.eyes == "closed":
            keys.append("say.open_eyes")
        keys.append("lost.paused")
        if entry is not None and entry.posture != "sitting":
            keys.append("lost.hold")
        self._note_told()
        self._say((Grave.stop, 0), *keys, *self.lost_keys)

    def _sound(self, step: Step) -> None:
        if not (self.camera_gone and self._needs_camera()):
            super()._sound(step)

    def _say_begin(self) -> None:
        if not (self.camera_gone and self._needs_camera()):
            super()._say_begin()

    def _count_on(self) -> None:
        self._paused_by_camera = False
        super()._count_on()

    def _count_down(self, task: CountDown) -> None:
        self._begin_anew()
        super()._count_down(task)

    def _say_two_left(self, goal: int | None, done: int) -> None:
        if not self.count_lost:
            super()._say_two_left(goal, done)

    def lost_words(self) -> tuple[str, str]:
        """What is to be read in such a pause: what to do at once, and about the camera."""
        entry = self.entry
        standing = entry is not None and entry.posture != "sitting"
        hold = "lost.hold" if standing and self._gone is not None else "lost.paused"
        keys = self.lost_keys or ("lost.back",)
        return words.say(hold), " ".join(words.say(key) for key in keys)
