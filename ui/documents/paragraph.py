"""A few lines to paste into a record: plain text, no table."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from tracker.records import terms
from tracker.records.figure import Figure, shown, shown_with_unit
from tracker.records.figures import ExerciseFigures, SessionFigures
from tracker.records.questionnaires import Score, courses_of
from tracker.session.weekly import QUESTIONS as WEEKLY
from ui.documents.overview import answered
from ui.documents.questionnaires import course_line, scores_for


def paragraph(record: SessionFigures, scores: Sequence[Score] = ()) -> str:
    """One session in five to nine lines, each about one thing."""
    return "\n".join(_lines(record, scores))


def _lines(r: SessionFigures, scores: Sequence[Score]) -> Iterator[str]:
    length = _said(r.find("duration"))
    version = r.program_version or "(version not recorded)"
    yield f"{r.person}, {r.when}: home practice by webcam, {length}, Turnpost {version}."
    yield f"Ended: {r.ended_words}." + (f" Read first: {' | '.join(r.alert)}." if r.alert else "")
    done = "; ".join(_exercise(e) for e in r.exercises)
    yield f"Done: {done or 'no exercise was begun'}."
    if r.left_out:
        yield f"Not begun: {'; '.join(f'{x.name} ({x.why})' for x in r.left_out)}."
    yield _symptoms(r)
    week = [f for f in r.figures if f.measure in WEEKLY]
    if week:
        yield f"Asked this week: {'; '.join(f'{f.label.lower()} {_said(f)}' for f in week)}."
    courses = courses_of(scores_for([r], scores))
    if courses:
        yield f"Questionnaires: {'; '.join(course_line(c) for c in courses)}."
    yield f"Noticed: {'; '.join(_noticed(r)) or 'nothing'}."
    flags = [*r.flags, *(f"{e.name}: {flag}" for e in r.exercises for flag in e.flags)]
    yield f"To be trusted less: {'; '.join(flags) or 'nothing beyond the limits below'}."
    yield f"Limits: {' '.join(terms.LIMITS)}"


def _said(figure: Figure | None) -> str:
    return "not recorded" if figure is None else shown_with_unit(figure)


def _exercise(e: ExerciseFigures) -> str:
    """What was done of it, how far, and where the eyes were."""
    parts = []
    for key, asked_key in (("repetitions", "repetitions.asked"), ("held", "duration.asked")):
        figure, asked = e.find(key), e.find(asked_key)
        if figure is not None:
            of = "" if asked is None else f" of {shown_with_unit(asked)}"
            if figure.value is None and asked is not None:
                of = f", asked {shown_with_unit(asked)}"
            parts.append(f"{key} {_said(figure)}{of}")
    for key, name in (
        ("own_count", "patient's count"),
        ("amplitude_deg.right", "right"),
        ("amplitude_deg.left", "left"),
        ("amplitude_deg.up", "up"),
        ("amplitude_deg.down", "down"),
        ("amplitude_deg.asked", "asked"),
        ("on_target", "gaze on target"),
        ("head_still.p95", "head 95 % of the time within"),
        ("sway", "sway (RMS)"),
        ("clarity", "target"),
    ):
        figure = e.find(key)
        # That a still head or a sway was not measured stands on the page.
        if figure is not None and (figure.value is not None or key in ("on_target", "clarity")):
            parts.append(f"{name} {_said(figure)}")
    return f"{e.name}: {', '.join(parts)}"


def _symptoms(r: SessionFigures) -> str:
    found = [f for f in r.figures if f.group == "symptoms"]
    if not found:
        return "Symptoms: not asked."
    return f"Symptoms: {'; '.join(f'{f.label.lower()} {shown_with_unit(f)}' for f in found)}."


def _noticed(r: SessionFigures) -> Iterator[str]:
    for e in r.exercises:
        events = [f for f in e.figures if f.group == "events" and f.aspect == "all"]
        events = [f for f in events if f.measure != "events"]
        kinds = [f"{f.name.lower()} {shown(f)}{answered(e, f)}" for f in events]
        if kinds:
            yield f"{e.name}: {', '.join(kinds)}"
