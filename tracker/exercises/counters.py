"""What one repetition is: a channel of the samples and the rule for its turning points."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from math import nan

from tracker.motion.turning import Turn, TurningFinder, TurningRule
from tracker.sample import Sample

#: Below this the eyes' angles are those of a lid in movement and aren't used.
EYE_OPEN_LEAST = 0.3


@dataclass(frozen=True, slots=True)
class Channel:
    """One number of a sample, with the names of its two sides."""

    name: str
    read: Callable[[Sample], float]
    sides: tuple[str, str]
    rule: TurningRule


def eyes_usable(sample: Sample) -> bool:
    """Whether the eyes are open enough to be read (or their openness isn't known)."""
    return not sample.eye_open < EYE_OPEN_LEAST


def _eye_yaw(sample: Sample) -> float:
    return sample.eye_yaw_deg if eyes_usable(sample) else nan


def _eye_pitch(sample: Sample) -> float:
    return sample.eye_pitch_deg if eyes_usable(sample) else nan


#: Eye jumps rest at their ends. The floor is above the eyes' error with the head
#: still (0.8 to 0.9 degrees, issue 3) and below the smallest pair of targets (4
#: degrees to each side).
_JUMPS = TurningRule(floor_deg=4.0, first_deg=4.0, plateau=True)
_HEAD = TurningRule()
#: Without a set-up the rest pose and the face's depth are guesses, and a person
#: who only looks about turns by some degrees: 8 to each side at least.
_UNKNOWN_PERSON = TurningRule(floor_deg=16.0, first_deg=16.0)

CHANNELS: dict[str, Channel] = {
    c.name: c
    for c in (
        Channel("head_yaw", lambda s: s.head_yaw_deg, ("right", "left"), _HEAD),
        Channel("head_pitch", lambda s: s.head_pitch_deg, ("up", "down"), _HEAD),
        Channel("eye_yaw", _eye_yaw, ("right", "left"), _JUMPS),
        Channel("eye_pitch", _eye_pitch, ("up", "down"), _JUMPS),
    )
}


#: Not counted: tells only whether the person is seen, for what is held or guided.
SEEN = Channel("seen", lambda s: s.head_yaw_deg, ("", ""), _HEAD)


def channel_of(name: str) -> Channel:
    """The channel of an exercise; :data:`SEEN` for one that the camera doesn't count."""
    return CHANNELS.get(name, SEEN)


class Counter:
    """Counts the turns of one set in one channel; two of them are a repetition.

    Parameters
    ----------
    channel
        What is counted.
    known_person
        Whether a set-up has been measured; without one only large head turns count.

    Notes
    -----
    In the channel :data:`SEEN` there are no turns.
    """

    def __init__(self, channel: Channel, *, known_person: bool = True) -> None:
        self.channel = channel
        self.turns: list[Turn] = []
        rule = channel.rule if known_person or channel.rule is not _HEAD else _UNKNOWN_PERSON
        self._finder = TurningFinder(channel.sides, rule)

    def feed(self, sample: Sample) -> list[Turn]:
        """Take a sample; gives the turns that count from now on."""
        if self.channel is SEEN:
            return []
        return self._keep(self._finder.feed(sample.time_s, self.channel.read(sample)))

    def finish(self) -> list[Turn]:
        """End the set."""
        return self._keep(self._finder.finish())

    def _keep(self, turns: list[Turn]) -> list[Turn]:
        self.turns += turns
        return turns

    @property
    def repetitions(self) -> int:
        """Whole there-and-back cycles."""
        return len(self.turns) // 2
