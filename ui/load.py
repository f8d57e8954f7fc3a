"""Whether the measuring keeps up with the camera, and what gives way where it does not.

The picture of oneself gives way first, in the measuring process itself
(``tracker.vision.worker``); then the words and gauges of the window are drawn less often;
and where pictures of the camera still go unmeasured, the window says so.
"""

from __future__ import annotations

from collections import deque

from tracker.vision.messages import SourceStats

#: Time over which pictures are compared: shorter hiccups are nobody's concern.
OVER_S = 3.0
#: Share of pictures passed over from which the computer counts as busy, and up to which it
#: does no longer (common practice: apart, so that it does not go to and fro).
BUSY_FROM, BUSY_UP_TO = 0.1, 0.03


class Load:
    """Judges a source's own numbers; knows no window and no clock."""

    def __init__(self) -> None:
        self._seen: deque[tuple[float, int, int]] = deque()
        self.forget()

    def forget(self) -> None:
        """Begin anew, as with another source."""
        self._seen.clear()
        self._busy = False
        self._measured_hz = self._given_hz = 0.0

    @property
    def busy(self) -> bool:
        """Whether pictures of the camera go unmeasured."""
        return self._busy

    @property
    def measured_hz(self) -> float:
        """Pictures a second that are measured, of ``given_hz``; both 0 before they are known."""
        return self._measured_hz

    @property
    def given_hz(self) -> float:
        """Pictures a second that the camera gives."""
        return self._given_hz

    def see(self, now_s: float, stats: SourceStats) -> None:
        """Take the numbers as they are now.

        Parameters
        ----------
        now_s
            Time on any clock that only rises; one that falls begins anew.
        stats
            Pictures so far, those passed over among them. Fewer than before: another source.
        """
        seen = self._seen
        if seen and (now_s < seen[-1][0] or stats.frames < seen[-1][1]):
            self.forget()
        if seen and stats.frames == seen[-1][1]:
            return
        seen.append((now_s, stats.frames, stats.dropped))
        while len(seen) > 2 and seen[1][0] <= now_s - OVER_S:
            seen.popleft()
        from_s, frames, dropped = seen[0]
        if now_s - from_s < OVER_S:
            return
        given = stats.frames - frames
        missed = stats.dropped - dropped
        self._given_hz = given / (now_s - from_s)
        self._measured_hz = (given - missed) / (now_s - from_s)
        self._busy = missed > (BUSY_UP_TO if self._busy else BUSY_FROM) * given
