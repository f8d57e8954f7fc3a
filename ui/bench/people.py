"""``turnpost bench sets --people N``: each person's set-up and ten sets, drawn and measured.

The pictures go from the drawing to the measuring as from a camera, with no film between. The
person is fitted on their own set-up; what follows is measured with that, as in a session.
"""

from __future__ import annotations

import datetime as dt
import multiprocessing
from collections import defaultdict
from collections.abc import Iterable, Iterator, Sequence
from concurrent.futures import ProcessPoolExecutor
from dataclasses import replace
from functools import partial
from typing import Any

import numpy as np

from sample_clips.matrix import Drawn
from sample_clips.people_sets import KINDS, sets_of
from sample_clips.render import frames, make_score
from sample_clips.scenario import Scenario
from sample_clips.truth import events, stage_log
from tracker.frame import Frame
from tracker.lens import lens_of
from tracker.sample import TEXT_COLUMNS, TRACE_COLUMNS, Sample
from tracker.session.clip_run import ClipMeasurer, measured_clip, run_samples
from tracker.session.projections import SessionRecord
from tracker.session.stage import StageLog
from ui.bench.aims import said_of
from ui.bench.table import Reading, readings_of, table_lines
from ui.bench.tally import SetResult, Tally
from ui.bench.truth import Comparison, Truth, compare
from ui.commands.judging import session_about


class Drawing:
    """The pictures of a scenario as a camera gives them; keeps their truth.

    Parameters
    ----------
    scenario
        What is drawn.
    from_s
        When its first picture is taken, on the camera's clock.
    """

    def __init__(self, scenario: Scenario, from_s: float = 0.0) -> None:
        self.scenario = scenario
        self.from_s = self.until_s = from_s
        self._rows: list[dict[str, float | str]] = []

    def __iter__(self) -> Iterator[Frame]:
        for number, (time_s, picture, row) in enumerate(frames(self.scenario)):
            self._rows.append(row)
            self.until_s = self.from_s + time_s + 1.0 / self.scenario.camera.rate_hz
            yield Frame(number, self.from_s + time_s, picture)

    def truth(self) -> Truth:
        """What was true in the pictures given so far, times from the scenario's start."""
        columns = {
            name: np.array([float(row.get(name, "nan")) for row in self._rows])
            for name in TRACE_COLUMNS
            if name not in TEXT_COLUMNS
        }
        return Truth(columns, events(make_score(self.scenario)))


def measured_sets(
    sets: Sequence[Drawn], measurer: ClipMeasurer
) -> Iterator[tuple[Drawn, SessionRecord, Truth]]:
    """Measure and judge one person's sets; the first has the set-up.

    Parameters
    ----------
    sets
        As :func:`sample_clips.people_sets.sets_of` gives them.
    measurer
        Fresh; the caller closes it.
    """
    first = Drawing(sets[0].scenario)
    clip = measured_clip(first, measurer, _stage(sets[0].scenario))
    camera = sets[0].scenario.camera
    seen: dict[str, Any] = {"width_px": camera.width_px, "height_px": camera.height_px}
    seen |= lens_of(camera.vertical_fov_deg).found()
    about = session_about(clip.notes, camera=seen, **clip.found)
    yield sets[0], run_samples(clip.samples, clip.steps, about), first.truth()
    now_s = first.until_s
    for one in sets[1:]:
        pictures = Drawing(one.scenario, now_s)
        samples = _from_start(pictures, measurer)
        yield one, run_samples(samples, _stage(one.scenario).steps, about), pictures.truth()
        now_s = pictures.until_s


def _stage(scenario: Scenario) -> StageLog:
    return StageLog.model_validate(stage_log(make_score(scenario)))


def _from_start(pictures: Drawing, measurer: ClipMeasurer) -> Iterator[Sample]:
    """Samples whose times count from the set's own start."""
    for frame in pictures:
        sample = measurer.take(frame)
        yield replace(sample, time_s=sample.time_s - pictures.from_s)


def judged(record: SessionRecord, truth: Truth, scenario: Scenario) -> SetResult:
    """What was made of a set, beside what was true in it."""
    exercise = record.exercises[0]
    score = make_score(scenario)
    blinks = [b for b in truth.events["blinks"] if b[1] > score.start_s]
    return SetResult(
        len(exercise.turns) // 2,
        int(truth.events["repetitions"]),
        [(e.code, e.start_s) for e in exercise.events],
        truth.events["events"],
        score.end_s - score.start_s,
        len(blinks),
    )


def person_results(
    number: int, seed: int, rate_hz: int
) -> list[tuple[Drawn, SetResult, Comparison]]:
    """Draw, measure and judge all sets of one person."""
    from calibration.measurer import make_measurer

    sets = sets_of(number, seed, rate_hz)
    measurer = make_measurer(vertical_fov_deg=sets[0].scenario.camera.vertical_fov_deg)
    try:
        return [
            (one, judged(record, truth, one.scenario), compare(record, truth))
            for one, record, truth in measured_sets(sets, measurer)
        ]
    finally:
        measurer.close()


def people_table(numbers: Sequence[int], seed: int, rate_hz: int = 30) -> Iterable[str]:
    """Lines of the table: what was wrong with each set, the counts, then the errors.

    The people are shared out among as many processes as there are processors.

    Parameters
    ----------
    numbers
        Of the people.
    seed
        Other seeds draw other people.
    rate_hz
        Pictures a second.
    """
    tally = Tally()
    readings: dict[str, list[Reading]] = defaultdict(list)
    lot: list[Drawn] = []
    for sets in _shared_out(numbers, seed, rate_hz):
        yield f"{sets[0][0].scenario.name}: {sets[0][0].conditions}"
        for one, result, comparison in sets:
            lot.append(one)
            yield from tally.add(one.scenario.name, one.kind, result)
            for name, reading in readings_of(one, comparison):
                readings[name].append(reading)
    yield ""
    yield (
        f"On rendered heads, {len(numbers)} people drawn with seed {seed}, each with one set-up "
        f"and {len(KINDS)} sets, {dt.date.today():%Y-%m-%d}"
    )
    yield from tally.lines()
    yield ""
    yield "Mean absolute errors in degrees unless said."
    yield f"{said_of(lot)}: the aim, and how many of those sets keep it."
    yield from table_lines(readings)


def _shared_out(
    numbers: Sequence[int], seed: int, rate_hz: int
) -> Iterator[list[tuple[Drawn, SetResult, Comparison]]]:
    """Results of each person, in their order."""
    if len(numbers) == 1:
        yield person_results(numbers[0], seed, rate_hz)
        return
    with ProcessPoolExecutor(mp_context=multiprocessing.get_context("spawn")) as pool:
        yield from pool.map(partial(person_results, seed=seed, rate_hz=rate_hz), numbers)
