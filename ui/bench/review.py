"""How long the review of a folder takes, with many sessions, cold and warm."""

from __future__ import annotations

import os
import time
from collections.abc import Iterator, Sequence
from datetime import UTC, date, datetime, timedelta
from pathlib import Path

from sample_clips import shipped
from tracker.records.index import index_path, read_folder
from tracker.records.people import people_of
from tracker.session.clip_run import run_samples
from tracker.session.live import SessionInfo
from tracker.session.saving import SUMMARY_NAME
from tracker.session.stage import load_stage_log, stage_path_of
from tracker.session.summary import summarise
from tracker.session.summary_file import Summary, save_summary
from tracker.session.trace import load_trace

COUNTS = (500, 1000, 5000)
MANY = 20_000
#: Aims, the project's own: so many sessions open in so many seconds with their index, and a
#: session takes at most so many times as long among the most as among the fewest.
AIM_COUNT, AIM_S = 5000, 2.0
LINEAR = 1.5
#: Sessions of one person: two a day for some seven weeks.
EACH = 100
FIRST = datetime(2026, 1, 5, 9, tzinfo=UTC)
#: The truth reads the gaze without an error.
EXACT = {"calibration": "fitted", "gaze_error_deg": 0.0}


def real_summary() -> Summary:
    """A session with every shipped clip as one of its exercises, judged by the engine."""
    summaries = [_of_clip(clip) for clip in shipped()]
    return summaries[0].model_copy(
        update={"exercises": [e for s in summaries for e in s.exercises]}
    )


def _of_clip(clip: Path) -> Summary:
    samples = load_trace(clip.with_suffix(".truth.csv"))
    steps = load_stage_log(stage_path_of(clip)).steps
    about = SessionInfo(program_version="bench", setup=EXACT)
    return summarise(run_samples(samples, steps, about))


def write_sessions(folder: Path, summary: Summary, numbers: Sequence[int]) -> None:
    """Write sessions, each in a folder of its own in that of its person."""
    for number in numbers:
        person, which = f"P-{number // EACH:03d}", number % EACH
        name = f"{person}-{which:03d}"
        place = folder / person / name
        place.mkdir(parents=True)
        started = FIRST + timedelta(hours=12 * which)
        symptoms = {"before": 3, "after": 2 + number % 3, "settled_minutes": 1.0, "reasons": {}}
        own = {"session_id": name, "person": person, "started_at": started.isoformat()}
        path = place / SUMMARY_NAME
        save_summary(path, summary.model_copy(update={**own, "symptoms": symptoms}))
        # A file that was just written would be read again (see UNSURE_NS).
        os.utime(path, (started.timestamp(), started.timestamp()))


def review_table(folder: Path, counts: Sequence[int] = COUNTS) -> Iterator[str]:
    """Lines of the table; sessions are added to the folder, row after row.

    "Cold" is without an index (the system's own cache of files is not emptied), "warm" with
    the index that it left. Both go up to the list of people in their order.
    """
    summary = real_summary()
    yield f"{len(summary.exercises)} exercises a session, {EACH} sessions a person"
    yield f"{'sessions':>9} {'cold s':>8} {'warm s':>8} {'warm, of CPU s':>15} {'ms each':>8}"
    written = 0
    each: list[float] = []
    for count in counts:
        write_sessions(folder, summary, range(written, count))
        written = count
        index_path(folder).unlink(missing_ok=True)
        cold_s, _ = _timed(folder, count)
        warm_s, cpu_s = _timed(folder, count)
        each_ms = 1000 * warm_s / count
        # By the processor's time: what else runs on the machine makes no part of it slower.
        each.append(cpu_s / count)
        verdict = ""
        if count == AIM_COUNT:
            in_time, of_cpu = kept(warm_s <= AIM_S), kept(cpu_s <= AIM_S)
            verdict = f"  aim {AIM_S:g} s: {in_time}, of CPU {of_cpu}"
        yield f"{count:>9} {cold_s:>8.2f} {warm_s:>8.2f} {cpu_s:>15.2f} {each_ms:>8.3f}{verdict}"
    ratio = each[-1] / each[0]
    yield (
        f"a session among {counts[-1]} against one among {counts[0]}, of CPU: {ratio:.2f}"
        f"  aim {LINEAR:g} (linear): {kept(ratio <= LINEAR)}"
    )
    yield f"index: {index_path(folder).stat().st_size / 1e6:.1f} MB"
    index_path(folder).unlink(missing_ok=True)


def kept(holds: bool) -> str:
    """Whether an aim was kept, in words."""
    return "kept" if holds else "not kept"


def _timed(folder: Path, count: int) -> tuple[float, float]:
    """Seconds by the clock, and of the processor."""
    start_s, start_cpu_s = time.perf_counter(), time.process_time()
    records = read_folder(folder)
    people = people_of(records, date(2026, 3, 1))
    took_s, cpu_s = time.perf_counter() - start_s, time.process_time() - start_cpu_s
    if len(records.rows) != count or len(people) != -(-count // EACH):
        raise AssertionError(f"{len(records.rows)} sessions, {len(people)} people")
    return took_s, cpu_s
