"""One part of the set-up done again: while the set-up goes on, or once it is over.

While it goes on nothing has been fitted yet, so the part's steps are asked for once more and
what comes after it follows. Once it is over the measuring still has the pictures of the other
parts, until one goes on: it fits the person anew, and keeps the old fit where the new one is
worse (``calibration.again``). What was left half-way changes nothing.
"""

from __future__ import annotations

from math import inf
from typing import Any

from calibration.parts import MAX_HELD, PARTS, in_order, on_wall, part_of
from tracker.session.stage import Step
from tracker.vision.messages import SourceState
from ui import words
from ui.session.asked import Asked
from ui.session.asked_setup import READ_S, setup_asked
from ui.session.setup import SetupPart
from ui.session.state import TROUBLES, Phase
from ui.setup.parts import PartWatch

#: Parts that go into each other are done again together while the set-up goes on.
_TOGETHER = {"check": ("looks", "check"), "looks": ("looks", "check")}
_STEP_OF = {"turn": "turn_slowly", "nod": "nod_slowly"}
#: A camera that does not say how fast it is gives at most so many pictures a second.
_RATE_HZ = 30.0


class AgainPart(SetupPart):
    """Repeats a part of the set-up, and keeps what was there where that is better."""

    #: The part that is being done again after the set-up, or empty.
    part_again = ""
    #: The part that was done again last, and why the old one stays: as in
    #: ``calibration.report.Again``, ``left`` or ``failed``.
    again_told: tuple[str, str] = ("", "")
    _again_to_ask = False
    _before: tuple[Asked, ...] = ()
    _fitted_by: Any = None
    #: When a part that was asked for again at once begins; the button of the one before it must
    #: not be pressed unseen by a hand that shakes.
    _repeat_from_s = -inf
    #: What was wrong with the camera while a part was being done again.
    _camera_went: SourceState | None = None
    #: The step that was announced last (``ui.session.voice``).
    _setup_said = ""

    def __init__(self, *args: Any, **more: Any) -> None:
        super().__init__(*args, **more)
        #: How the parts of the set-up that goes on were seen, before anything is fitted.
        self.part_watch = PartWatch()

    # --- while the set-up goes on ---

    @property
    def part_over(self) -> str:
        """The part that was over last in the set-up that goes on; empty before the first."""
        if self.phase != Phase.setup or self.clip is not None or self.part_again:
            return ""
        now_s, over = self.now_s, ""
        for part in self._parts_asked():
            steps = [a.step for a in self._setup_asked() if part_of(a.step) == part]
            if all(s.to_s <= now_s for s in steps):
                over = part
        # The looks that check go on from the others without a pause.
        return "" if over == "looks" and "check" in self._parts_asked() else over

    @property
    def can_repeat(self) -> bool:
        """Whether the part that was over last can be done again before the others."""
        over = self.part_over
        if not over or self.now_s < self._repeat_from_s:
            return False
        return self._held_after(over) <= MAX_HELD

    @property
    def repeats(self) -> str:
        """The part that would be done again now, with what goes into it; empty for none."""
        return self._together(self.part_over)[0] if self.can_repeat else ""

    @property
    def part_note(self) -> tuple[str, str]:
        """A part that has just come to its end, and the key of how it was seen; else empty.

        Only until the next part begins: within a part there are pauses, too, before each note
        on the wall.
        """
        over, coming = self.part_over, self.next_asked
        if not over or coming is None or self.asked is not None:
            return "", ""
        part = part_of(coming.step)
        begun = [a for a in self._setup_asked() if a.step.from_s <= self.now_s]
        if any(part_of(a.step) == part for a in begun):
            return "", ""
        together = self._together(over)
        keys = [self.part_watch.key(p, self.reach) for p in together]
        return together[0], next((k for k in keys if k != "part.seen"), "part.seen")

    def repeat_part(self) -> None:
        """The part that was over last once more; what comes after it follows."""
        over = self.part_over
        if not self.can_repeat:
            return
        for part in self._together(over):
            self.part_watch.forget(part)
            self.reach.forget(_STEP_OF.get(part, ""))
        anew = self._still_to_do(over)
        kept = [a for a in self._setup_asked() if part_of(a.step) not in anew]
        steps = self._asked_for(anew)
        self._asked, self._repeat_from_s = [*kept, *steps], steps[0].step.from_s
        self._setup_said = ""
        self._changed()

    def _together(self, over: str) -> list[str]:
        """A part with what goes into it without a pause, as far as it was asked for."""
        asked = self._parts_asked()
        return [p for p in _TOGETHER.get(over, (over,)) if p in asked]

    def _still_to_do(self, over: str) -> list[str]:
        """A part that is over, and those that are not."""
        anew = set(self._together(over))
        anew |= {part_of(a.step) for a in self._setup_asked() if a.step.to_s > self.now_s}
        return [p for p in PARTS if p in anew]

    def _held_after(self, over: str) -> float:
        """How many pictures the measuring would hold from the first step to the last."""
        asked, parts = self._setup_asked(), self._still_to_do(over)
        anew = [a.step for a in asked if part_of(a.step) in parts]
        # Before each part, and before each note on the wall.
        pauses = len(parts) + sum(on_wall(s) is not None for s in anew)
        anew_s = sum(s.to_s - s.from_s for s in anew) + READ_S * pauses
        seconds = self.now_s - asked[0].step.from_s + anew_s
        rate_hz = _RATE_HZ if self._service is None else self._service.stats.rate_hz
        # One that doesn't say how fast it is says so as NaN.
        return seconds * (rate_hz if rate_hz > _RATE_HZ else _RATE_HZ)

    def _parts_asked(self) -> list[str]:
        return list(dict.fromkeys(part_of(a.step) for a in self._setup_asked()))

    def _asked_for(self, parts: list[str]) -> list[Asked]:
        """Steps of some parts from now on."""
        return setup_asked(
            self.now_s,
            self._extent(),
            self.distance_mm,
            short=self._short,
            use_eye=self.eyes,
            parts=parts,
            marks=self.wall_looks,
        )

    # --- once it is over ---

    @property
    def can_do_again(self) -> bool:
        """Whether the measuring still has the pictures of the other parts."""
        held = self._service is not None and self._service is self._fitted_by
        return held and self.clip is None and self.report is not None

    def do_again(self, part: str) -> None:
        """Do one part again, from the page that says how the set-up came out."""
        if self.phase != Phase.setup_told or not self.can_do_again or self._service is None:
            return
        self._service.hold_setup(keep=True, take=True)
        self._before = tuple(self._asked)
        self.part_again, self.again_told, self._again_to_ask = part, ("", ""), True
        self._camera_went = self.source if self.source in TROUBLES else None
        self.reach.forget(_STEP_OF.get(part, ""))
        self.show_picture(False)
        self._enter(Phase.setup)

    @property
    def setup_to_ask(self) -> bool:
        """Whether the set-up's page stands and its steps are still to be asked for."""
        return self.phase == Phase.setup and (not self._asked or self._again_to_ask)

    def _ask_setup(self) -> None:
        if not self.part_again:
            self.part_watch, self._repeat_from_s = PartWatch(), -inf
            super()._ask_setup()
            return
        self._again_to_ask = False
        others = [a for a in self._before if part_of(a.step) != self.part_again]
        self._asked = [*others, *self._asked_for([self.part_again])]
        self._changed()

    @property
    def setup_part(self) -> tuple[int, int]:
        """Which step of what is done now it is, of how many."""
        if not self.part_again:
            return super().setup_part
        steps = [a.step for a in self._setup_asked() if part_of(a.step) == self.part_again]
        begun = sum(1 for s in steps if s.from_s <= self.now_s)
        return max(begun, 1), max(len(steps), 1)

    def leave_again(self) -> bool:
        """Leave a part that is being done again: what was there stays. True if there was one."""
        if not self.part_again or self.phase not in (Phase.setup, Phase.fitting):
            return False
        if self.phase == Phase.fitting and self.camera is not None:
            # The fit can't be called back, and must not come to hold after all.
            self._close_service()
            self._open(self.camera)
            self._forget_steps()
        elif self._service is not None:
            self._service.hold_setup(keep=True, take=False)
        self._old_stays("left")
        return True

    def _forget_steps(self) -> None:
        """The steps belong to the clock of a measuring that has ended."""
        self._before, self._held = (), []

    def _old_stays(self, why: str) -> None:
        self._asked, self.again_told = list(self._before), (self.part_again, why)
        self.part_again, self._again_to_ask, self._before = "", False, ()
        if self._service is not None and self.source not in TROUBLES:
            self.trouble = None
        self._enter(Phase.setup_told)

    def _source_of_again(self, state: SourceState) -> None:
        """The source's state is another: what that means for a part that is done again."""
        if self.part_again and state in TROUBLES:
            self._camera_went = state
        if state not in (SourceState.restarting, SourceState.failed):
            return
        # Another process measures from now on, or none: the pictures went with the one before.
        self._fitted_by = None
        if self.part_again and self.phase in (Phase.setup, Phase.fitting):
            gone = words.say("told.pictures_gone")
            self.fit_message = _camera_words(state) if state in TROUBLES else gone
            self._old_stays("failed")

    def _forget_again(self) -> None:
        self.part_again, self._again_to_ask, self._before = "", False, ()
        self.again_told, self._fitted_by = ("", ""), None

    def _begin_setup(self) -> None:
        self._forget_again()
        super()._begin_setup()

    def _fit_steps(self) -> list[Step]:
        return in_order(super()._fit_steps())

    def _fit_part(self) -> str:
        return self.part_again

    def _fitted(self, report: Any) -> None:
        if self.phase != Phase.fitting:
            return
        part, self._fitted_by = self.part_again, self._service
        if not part:
            super()._fitted(report)
            return
        again = report.again
        if again is not None and again.why:
            why = again.why
            if why == "unseen" and self._camera_went is not None:
                # Not the face was missing, but the picture of it.
                why, self.fit_message = "failed", _camera_words(self._camera_went)
            self._old_stays(why)
            return
        self.again_told = (part, "")
        self.part_again, self._before = "", ()
        # What was only checked is the same person: the mark on the wall still holds for it.
        self._take_report(report, same_person=part == "check")
        self._enter(Phase.setup_told)

    def _fit_failed(self, text: str) -> None:
        if self.phase == Phase.fitting and self.part_again:
            self.fit_message = text
            self._old_stays("failed")
            return
        super()._fit_failed(text)

    def let_setup_go(self) -> None:
        """One goes on: no part of the set-up is done again."""
        if self._service is not None and self._fitted_by is self._service:
            self._service.hold_setup(keep=False, take=False)
        self._forget_again()


def _camera_words(state: SourceState) -> str:
    """What is wrong with the camera, as it is said everywhere."""
    return words.say_or(f"trouble.{state}", "trouble.failed")
