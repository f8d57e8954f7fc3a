"""A target that gets another place on the screen: its window is moved, or has another size.

What was asked for was told in millimetres of where the target was. So a set-up waits until the
window rests, and begins again; a set with a target on the screen pauses, and goes on with the
target's new place. Anything else just goes on.
"""

from __future__ import annotations

from collections.abc import Callable
from math import isfinite, nan

from tracker.practice.tasks import DoSet
from ui.geometry import FieldPlace
from ui.session.lost_alone import LostAlonePart
from ui.session.state import Phase
from ui.sounds.speaking import Grave

#: A window that has not moved for so long rests (own choice: a hand that drags halts for less).
RESTS_S = 1.0


class MovedPart(LostAlonePart):
    """Sees where the target's field lies, and asks anew where that has changed."""

    #: Gives where the field of what goes on lies now; None where nothing is drawn.
    field_place: Callable[[], FieldPlace | None] = staticmethod(lambda: None)
    #: Where it lay when what goes on was asked for.
    _stood: FieldPlace | None = None
    _setup_moved_s = nan
    _paused_by_move = False

    @property
    def setup_moved(self) -> bool:
        """Whether the set-up waits for its window to rest."""
        return isfinite(self._setup_moved_s) and self.phase == Phase.setup

    @property
    def setup_waits(self) -> bool:
        """Whether the set-up waits: for a camera, or for its window to rest."""
        return self.setup_moved or super().setup_waits

    @property
    def paused_by_move(self) -> bool:
        """Whether this pause is one because the target got another place."""
        return self.phase == Phase.paused and self._paused_by_move

    @property
    def place_matters(self) -> bool:
        """Whether targets are looked at whose place must stay: text keeps its size meanwhile."""
        return self.phase == Phase.exercise or (self.phase == Phase.setup and not self.setup_waits)

    def _ask_setup(self) -> None:
        super()._ask_setup()
        self._stood = self.field_place()

    def _begin_set(self, task: DoSet) -> None:
        super()._begin_set(task)
        self._stood = self.field_place()

    def _begin_exercise(self) -> None:
        super()._begin_exercise()
        self._stood = self.field_place()

    def _begin_setup(self) -> None:
        self._setup_moved_s = nan
        super()._begin_setup()

    def _pause(self) -> None:
        self._paused_by_move = False
        super()._pause()

    def _has_moved(self) -> bool:
        place, stood = self.field_place(), self._stood
        return place is not None and stood is not None and place.moved_from(stood)

    def _look_for_move(self) -> None:
        """See whether the target is elsewhere than where what goes on was asked for."""
        if self.clip is not None:
            return
        if self.phase == Phase.setup:
            self._look_at_setup()
        elif self.phase == Phase.exercise and self.target_coming and self._has_moved():
            self._pause()
            self._paused_by_move = True
            self._say((Grave.edge, 0), "moved.set")
            self._changed()

    def _look_at_setup(self) -> None:
        if self.setup_moved:
            if self._has_moved():
                self._stood, self._setup_moved_s = self.field_place(), self.now_s
            elif self._camera_awaited:
                # It begins again by itself once there are pictures.
                self._setup_moved_s = nan
            elif self.now_s - self._setup_moved_s >= RESTS_S:
                self._ask_again()
        elif not (self._camera_awaited or self.setup_to_ask) and self._has_moved():
            self._stood, self._setup_moved_s = self.field_place(), self.now_s
            self._say((Grave.edge, 0), "moved.setup", "moved.setup_again")
            self._enter(Phase.setup)

    def _ask_again(self) -> None:
        """The set-up begins again, or the part of it that was being done once more."""
        self._setup_moved_s = nan
        if not self.part_again:
            self._begin_setup()
            return
        self._asked, self._again_to_ask = list(self._before), True
        self._enter(Phase.setup)
