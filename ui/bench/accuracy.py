"""``turnpost bench accuracy``: errors against truth on rendered heads."""

from __future__ import annotations

from collections.abc import Iterable
from pathlib import Path

from tracker.errors import InputError
from tracker.session.stage import is_judged, load_stage_log, stage_path_of
from ui.bench.truth import ANGLES, Comparison, compare, load_truth
from ui.commands.judging import measure_clip

_HEADINGS = ("yaw", "pitch", "roll", "eye yaw", "eye pit.", "gaze yaw", "gaze pit.")


def compare_clip(clip: Path) -> Comparison:
    """Measure a clip with its stage log and compare it with its truth."""
    truth, stage = load_truth(clip), load_stage_log(stage_path_of(clip))
    if not any(map(is_judged, stage.steps)):
        raise InputError(f"{stage_path_of(clip)}: names no exercise")
    record = measure_clip(clip, stage, (), lambda _: None)
    if not record.exercises:
        raise InputError(f"{clip}: ends before its exercise begins")
    return compare(record, truth)


def accuracy_table(clips: Iterable[Path]) -> Iterable[str]:
    """Lines of the table, one a clip, as they are worked out."""
    yield "On rendered heads, after the clip's own set-up; mean absolute error in degrees."
    yield f"{'clip':22}" + "".join(f"{h:>10}" for h in _HEADINGS) + "  slope  counted  events"
    worst: dict[str, float] = {}
    for clip in clips:
        result = compare_clip(clip)
        cells = []
        for name in ANGLES:
            value = result.error_deg.get(name)
            cells.append(f"{'-' if value is None else f'{value:.2f}':>10}")
            if value is not None:
                worst[name] = max(worst.get(name, 0.0), value)
        slope = result.slope.get("head_yaw_deg") or result.slope.get("head_pitch_deg")
        yield (
            f"{clip.stem:22}"
            + "".join(cells)
            + f"{'-' if slope is None else f'{slope:.3f}':>7}"
            + f"{result.repetitions:>5}/{result.true_repetitions}"
            + f"   {result.found} found, {result.missed} missed, {result.false} false"
        )
    row = (f"{f'{worst[n]:.2f}' if n in worst else '-':>10}" for n in ANGLES)
    yield f"{'worst':22}" + "".join(row)
