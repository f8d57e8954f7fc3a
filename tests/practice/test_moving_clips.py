"""A session of a plan with moving targets, from clips, to its saved summary."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from sample_clips.score import Score
from sample_clips.truth import stage_log
from tests.exercises.test_moving_sets import FOLLOW, MARKS, NODS, SETUP, X2, score_of, summary_of
from tests.practice.person import plan_of
from tracker.practice.from_clips import run_plan
from tracker.practice.matching import StagedClip, match_clips, staged_clip
from tracker.practice.scripted import NO_ANSWERS
from tracker.session.clip_run import MeasuredClip
from tracker.session.engine import Engine
from tracker.session.files import new_folder
from tracker.session.journal import FileJournal
from tracker.session.live import SessionInfo
from tracker.session.saving import save_session
from tracker.session.stage import StageLog, load_stage_log
from tracker.session.summary_file import load_summary
from ui.bench.sets import samples_of

BEHIND = {"kind": "still", "repetitions": 6}
DONE = {
    "turns-x2": X2,
    "nods-x2": NODS,
    "follow-slowly": FOLLOW,
    "eyes-then-head": MARKS,
    "moving-background": BEHIND,
}


def test_all_five_in_one_session_and_each_as_alone(tmp_path: Path) -> None:
    scores: dict[str, Score] = {name: score_of(name, move) for name, move in DONE.items()}
    tempi = {name: score.scenario.movement.tempo_bpm for name, score in scores.items()}
    entries = [
        {"entry_id": name, "exercise": name, "note": "asked for"}
        | ({} if name == "moving-background" else {"tempo_bpm": tempi[name]})
        for name in DONE
    ]
    plan = plan_of(*entries)

    def staged(name: str) -> StagedClip:
        return staged_clip(Path(f"{name}.mp4"), StageLog.model_validate(stage_log(scores[name])))

    @contextmanager
    def measured(clip: StagedClip) -> Iterator[MeasuredClip]:
        samples = samples_of(scores[clip.path.stem])
        yield MeasuredClip(list(clip.stage.steps), dict(SETUP), (), iter(samples))

    folder = tmp_path / "session"
    clips = match_clips(plan, [staged(n) for n in DONE])
    with new_folder(folder) as made:
        with FileJournal(made / "journal.jsonl") as journal:
            engine = Engine(journal, about=SessionInfo(session_id="s", plan_id=plan.plan_id))
            over = run_plan(plan, engine, clips, measured, NO_ANSWERS)
        save_session(made)
    assert over.ended == "finished"
    summary = load_summary(folder / "summary.json")
    assert [e.exercise for e in summary.exercises] == list(DONE)
    for found in summary.exercises:
        alone = summary_of(scores[found.exercise])
        assert found.done == alone.done, found.exercise
        assert (found.order, found.catch_up_jumps) == (alone.order, alone.catch_up_jumps)
        assert [e.code for e in found.events] == [e.code for e in alone.events]
    # The plan wants 15 to 20 degrees; what the clip's target carried is what was asked.
    assert summary.exercises[0].prescribed["amplitude_deg"][1] < 12.0
    log = load_stage_log(folder / "stage.json")
    moving = [s for s in log.steps if s.exercise == "turns-x2"]
    assert moving and moving[0].target_track is not None and len(moving[0].target_track) > 100
