"""Which clip shows which entry of a plan."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path

from tracker.errors import InputError
from tracker.plan.asked import Asked, asked_of
from tracker.plan.model import Entry, Plan
from tracker.session.stage import StageLog, Step, is_judged


@dataclass(frozen=True, slots=True)
class StagedClip:
    """A clip with its stage log, which asks for one exercise."""

    path: Path
    stage: StageLog

    @property
    def sets(self) -> list[Step]:
        """Its exercise steps."""
        return [s for s in self.stage.steps if is_judged(s)]


def staged_clip(path: Path, stage: StageLog) -> StagedClip:
    """A clip that can stand for an entry.

    Raises
    ------
    InputError
        If its stage log asks for no exercise, or for several.
    """
    clip = StagedClip(path, stage)
    named = list(dict.fromkeys(s.exercise for s in clip.sets))
    if not named:
        raise InputError(f"{path}: its stage log names no exercise, so that no entry fits it")
    if len(named) > 1:
        raise InputError(f"{path}: its stage log names several exercises; give a clip for each")
    return clip


def match_clips(
    plan: Plan, clips: Sequence[StagedClip], stage_id: str | None = None
) -> dict[str, StagedClip]:
    """Entry -> its clip; all of one stage.

    A clip goes to the entry that its stage log names, if the plan has it with that
    exercise; else to the first entry without a clip that has its exercise and none
    of whose options (eyes, posture, surface) its stage log denies.

    Raises
    ------
    InputError
        If a clip fits no entry, or the clips fit several stages.
    """
    found: dict[str, StagedClip] = {}
    named = [(c, _named(plan, c)) for c in clips]
    for clip, entry in sorted(named, key=lambda pair: pair[1] is None):
        entry = entry or _first_fitting(plan, clip, set(found), stage_id)
        if entry.entry_id in found:
            raise InputError(f"{clip.path}: entry {entry.entry_id!r} has a clip already")
        if stage_id is not None and entry.stage != stage_id:
            raise InputError(f"{clip.path}: entry {entry.entry_id!r} is not in stage {stage_id!r}")
        found[entry.entry_id] = clip
    stages = {e.stage for e in plan.entries if e.entry_id in found}
    if len(stages) > 1:
        names = ", ".join(sorted(str(s) for s in stages))
        raise InputError(f"the clips belong to several stages ({names}); practise one at a time")
    return found


def _named(plan: Plan, clip: StagedClip) -> Entry | None:
    step = clip.sets[0]
    fits = (e for e in plan.entries if e.entry_id == step.entry_id and e.exercise == step.exercise)
    return next((e for e in fits if _agrees(asked_of(e), step)), None)


def _first_fitting(plan: Plan, clip: StagedClip, taken: set[str], stage_id: str | None) -> Entry:
    step = clip.sets[0]
    same = [e for e in plan.entries if e.exercise == step.exercise and stage_id in (None, e.stage)]
    free = [e for e in same if e.entry_id not in taken]
    fitting = [e for e in free if _agrees(asked_of(e), step)]
    if fitting:
        return fitting[0]
    where = f"plan {plan.plan_id!r}" + (f", stage {stage_id!r}" if stage_id else "")
    if not same:
        raise InputError(f"{clip.path}: {where} has no entry for {step.exercise!r}")
    if not free:
        raise InputError(f"{clip.path}: {where} has no more entries for {step.exercise!r}")
    raise InputError(
        f"{clip.path}: {where} asks for {step.exercise!r} with other eyes, posture or surface"
    )


def _agrees(asked: Asked, step: Step) -> bool:
    return (
        step.eyes in (None, asked.eyes)
        and step.posture in (None, asked.posture)
        and step.surface in (None, asked.surface)
    )
