"""A camera that goes outside a set of a plan: in an exercise alone, in a set-up, in a check.

What is done alone is seated with the eyes on the screen, so that nothing of it is unsafe
without pictures: it goes on, and the person counts. A set-up waits, and begins anew once the
camera is back: it may have been plugged in elsewhere. So it is with the check by a mark, which
ends.
"""

from __future__ import annotations

from math import inf
from typing import Any

from calibration.mark import MarkCheck
from tracker.session.flags import COUNT_LOST
from tracker.vision.messages import SourceState
from ui import words
from ui.session.lost import LostPart
from ui.session.set_clock import SetClock
from ui.session.state import Phase
from ui.sounds.speaking import Grave

#: Why a check by a mark ended (a key of the words, after "mark.").
MARK_LOST = "camera_lost"


class LostAlonePart(LostPart):
    """Says that the camera has gone, and goes on with what is left."""

    #: The check by a mark, while it goes on; and why none began or came to its end.
    mark: MarkCheck | None = None
    mark_why = ""
    _setup_waits = False

    @property
    def setup_waits(self) -> bool:
        """Whether nothing is asked for in the set-up, because it waits for something."""
        return self._camera_awaited

    @property
    def _camera_awaited(self) -> bool:
        """Whether the set-up waits for a camera that has gone."""
        return self._setup_waits and self.phase == Phase.setup

    @property
    def camera_gone(self) -> bool:
        """Whether the camera is surely gone; what a set-up waits for is, however short it is."""
        return self._camera_awaited or super().camera_gone

    @property
    def _relies_on_news(self) -> bool:
        # One that failed for good ends the set-up, and that says why.
        waits = self._camera_awaited and self._gone is not SourceState.failed
        return waits or super()._relies_on_news

    def _open(self, source: Any) -> None:
        super()._open(source)
        if self.phase != Phase.paused:
            # Another one may give pictures at once; a pause for the camera's sake lasts until
            # there are some.
            self._gone = None
        if self._service is None:
            self._note_source(SourceState.failed)

    # --- an exercise alone ---

    def _begin_alone(self) -> None:
        """Count down to an exercise alone: nothing of it has been missed."""
        self._set_clock = SetClock(inf)
        self._begin_anew()

    def _begin_exercise(self) -> None:
        super()._begin_exercise()
        if self.phase == Phase.exercise:
            self._set_clock.go(self.now_s)
            self._keep_lost()

    def _keep_lost(self) -> None:
        if self.conductor is not None:
            super()._keep_lost()
        elif self.count_lost and self._recording is not None:
            self._recording.answer(COUNT_LOST, True, self._step_number)

    def set_done(self) -> None:
        """The person says that the exercise alone is done."""
        if self.phase == Phase.exercise and self.count_lost:
            self._set_over("finished")

    # --- a set-up, and a check by a mark ---

    def _look_for_camera_alone(self) -> None:
        """Outside a set of a plan: see whether the camera is gone for longer than a stutter."""
        if self.clip is not None or not self.camera_gone:
            return
        if self.phase == Phase.exercise and self.conductor is None:
            self._lose_count()
        elif self.phase == Phase.setup and self._asked and not self.part_again:
            if not self._setup_waits:
                self._wait_for_camera()
        elif self.phase == Phase.mark and self.mark is not None:
            self.mark, self.mark_why = None, MARK_LOST
            self._say((Grave.edge, 0), *self.lost_keys)
            self._changed()

    def _wait_for_camera(self) -> None:
        """Nothing is asked for in the set-up until the camera is back."""
        self._setup_waits = True
        self._note_told()
        self._say((Grave.edge, 0), *self.lost_keys)
        self._enter(Phase.setup)

    def _note_source(self, state: SourceState) -> None:
        waited = self._camera_awaited
        super()._note_source(state)
        setting_up = self.phase in (Phase.setup, Phase.fitting) and not self.part_again
        if state is SourceState.restarting and setting_up and self.clip is None and not waited:
            # However soon another process measures: the pictures went with the one before.
            self._wait_for_camera()
        if state is SourceState.running and waited:
            self._say((Grave.edge, 0), "lost.setup_again")
            self._begin_setup()
        elif state is SourceState.failed and self.clip is None and not self.part_again:
            self._setup_failed_for_good()

    def _setup_failed_for_good(self) -> None:
        """Such a camera is not tried again by itself: the person can do that."""
        if self.phase in (Phase.setup, Phase.fitting):
            self.fit_message = words.say("trouble.failed")
            self._say((Grave.edge, 0), "trouble.failed")
            self._enter(Phase.setup_failed)

    def _begin_setup(self) -> None:
        self._setup_waits = False
        super()._begin_setup()
        if self._service is None:
            self._setup_failed_for_good()
