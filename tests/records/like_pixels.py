"""Whether a film's pixels give figures as the invented clinic's made-up errors do.

Nothing of the clinic was ever drawn: its sets are the truth of drawn heads with errors put upon
it (``tests.records.acted``). Here a set that was drawn and measured is held against the same set
with such errors.
"""

from __future__ import annotations

import numpy as np

from sample_clips import FOLDER, shipped_clip
from sample_clips.render import make_score
from sample_clips.scenario import load_scenario
from sample_clips.truth import stage_log
from tests.records.acted import RATE_HZ
from tracker.records.rows import row_of
from tracker.records.trends import SPECS
from tracker.sample import TEXT_COLUMNS, TRACE_COLUMNS, Sample
from tracker.session.clip_run import run_samples
from tracker.session.live import SessionInfo
from tracker.session.projections import SessionRecord
from tracker.session.stage import StageLog, load_stage_log, stage_path_of
from tracker.session.summary import summarise
from ui.bench.sets import EYE_SLOW_DEG, samples_of
from ui.bench.truth import Truth, load_truth

FIGURES = ("repetitions", "amplitude_deg", "peak_speed_deg_s", "tempo_bpm", "on_target")


def unlike_made_up(name: str, record: SessionRecord) -> dict[str, tuple[float, float, float]]:
    """Figures of a shipped clip that differ from its truth, or from made-up errors, by too much.

    Too much is the error of a value that the desk reckons with over time (``trends.SPECS``,
    which has the sources): a coarse bound, some times what was found. It doesn't show that the
    errors are of one size. For each of these: from pixels, in truth, and with made-up errors.
    """
    clip = shipped_clip(name)
    steps = load_stage_log(stage_path_of(clip)).steps
    scenario = load_scenario(FOLDER / "scenarios" / f"{name}.json")
    # The set alone, as often a second as the clinic has it: of its set-up nothing is compared.
    camera = scenario.camera.model_copy(update={"rate_hz": RATE_HZ})
    score = make_score(scenario.model_copy(update={"setup": False, "camera": camera}))
    set_steps = StageLog.model_validate(stage_log(score)).steps
    exact, read = (SessionInfo(setup={"gaze_error_deg": e}) for e in (0.0, EYE_SLOW_DEG))
    true = _figures(run_samples(_of(load_truth(clip)), steps, exact))
    made = _figures(run_samples(samples_of(score), set_steps, read))
    seen = _figures(record)
    compared = [k for k in true if k.partition(".")[0] in FIGURES]
    assert len(compared) == 11, compared
    return {
        k: (seen[k], true[k], made[k])
        for k in compared
        if max(abs(seen[k] - true[k]), abs(seen[k] - made[k]))
        > SPECS[k.partition(".")[0]].error(true[k])
    }


def _of(truth: Truth) -> list[Sample]:
    names = [n for n in TRACE_COLUMNS if n not in TEXT_COLUMNS and n in truth.columns]
    rows = np.stack([truth.columns[n] for n in names], axis=1)
    return [Sample(**dict(zip(names, row, strict=True))) for row in rows.tolist()]


def _figures(record: SessionRecord) -> dict[str, float]:
    (done,) = row_of(summarise(record), "").sets
    return {k: v for k, v in done.figures.items() if v is not None}
