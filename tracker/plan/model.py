"""What a plan holds.

Every default says in its description where it comes from; the published JSON
Schema carries those descriptions.
"""

from __future__ import annotations

from datetime import date
from typing import Annotated, Literal

from pydantic import BaseModel, ConfigDict, Field, StringConstraints

from tracker.exercises.catalogue import Eyes, Posture, Support, Surface
from tracker.exercises.catalogue import sources as src
from tracker.session.chair_stands import AgeGroup, Sex
from tracker.wall import LEAST_MM, MOST_MM

FORMAT = "turnpost-plan"
FORMAT_VERSION = 1

#: Bounds of the format, here and below, wide of any plan that is meant: this project's own choice.
MAX_ENTRIES = 100
MAX_STAGES = 20
MAX_RUNGS = 26

#: 240 beats a minute by 20 degrees go beyond the fastest head turns that a study of x1 viewing
#: trained (240 degrees a second, J Vestib Res, ves633), by arithmetic; the rest is this
#: project's own choice.
Name = Annotated[str, StringConstraints(pattern=r"^[A-Za-z0-9][A-Za-z0-9._-]{0,63}$")]
Line = Annotated[str, StringConstraints(min_length=1, max_length=300)]
Text = Annotated[str, StringConstraints(max_length=2000)]
Beats = Annotated[float, Field(ge=10, le=240, allow_inf_nan=False)]
Tempo = Beats | tuple[Beats, Beats] | None
Degrees = Annotated[float, Field(ge=1, le=80, allow_inf_nan=False)]
Range = tuple[Degrees, Degrees]
Share = Annotated[float, Field(ge=0, le=1, allow_inf_nan=False)]
Score = Annotated[int, Field(ge=0, le=10)]
#: A public key of the format age: bech32, "age1" and 58 more of its letters.
PublicKey = Annotated[str, StringConstraints(pattern=r"^age1[02-9ac-hj-np-z]{58}$")]
#: Bounds of ``tracker.wall``: the programme asks for a mark 0.9 to 3 m away (derived there; the
#: outermost are this project's own choice).
WallDistance = Annotated[float, Field(ge=LEAST_MM, le=MOST_MM, allow_inf_nan=False)]
WallSpacing = Annotated[float, Field(ge=50, le=3000, allow_inf_nan=False)]
WallOffset = Annotated[float, Field(ge=-700, le=700, allow_inf_nan=False)]
Minutes = Annotated[float, Field(gt=0, le=60, allow_inf_nan=False)]


class Part(BaseModel):
    """A part of a plan; a field it doesn't know is a mistake, not a wish."""

    model_config = ConfigDict(extra="forbid", frozen=True)


class Rung(Part):
    """One rung of a ladder: what is asked from a week on."""

    from_week: Annotated[int, Field(ge=2, le=52)]
    tempo_bpm: Tempo = None
    amplitude_deg: Range | None = None


class Unlock(Part):
    """When a stage or an entry opens.

    The therapist's condition in words, and figures that stand for it if there are
    any. It opens once the figures are reached in so many sessions in a row, or the
    therapist has written ``met_on``, and the patient says yes; never by itself.
    """

    condition: Line
    after: Name | None = Field(
        None, description="ID of the entry or stage, further up, that the figures are taken from."
    )
    sessions: Annotated[int, Field(ge=1, le=100)] | None = Field(
        None, description="So many of the last sessions in a row; 1 if figures are given without."
    )
    rise_most: Score | None = Field(
        None, description="Most rise of the symptom score from before to 10 s after."
    )
    settle_minutes_most: Minutes | None = None
    on_target_least: Share | None = None
    measured_least: Share | None = None
    clear: Literal[True] | None = Field(None, description="The target was said to be clear.")
    met_on: date | None = Field(
        None, description="Day on which the therapist found the condition met."
    )

    @property
    def has_figures(self) -> bool:
        """Whether figures stand for the condition."""
        figures = (
            self.sessions,
            self.rise_most,
            self.settle_minutes_most,
            self.on_target_least,
            self.measured_least,
            self.clear,
        )
        return any(f is not None for f in figures)


class WallMarks(Part):
    """A mark on the wall, or two, to look at in place of the screen; measured with a tape.

    A length that is left out is asked of the patient before the set.
    """

    distance_mm: WallDistance | None = Field(
        None, description="From the eyes straight to the wall; null: the patient is asked."
    )
    spacing_mm: WallSpacing | None = Field(
        None, description="From mark to mark where there are two; null: the patient is asked."
    )
    above_mm: WallOffset = Field(
        100.0,
        description="From the height of the camera up to the marks; below zero: lower. "
        f"Default: just above the screen's edge, {src.COMMON}.",
    )
    right_mm: WallOffset = Field(
        0.0,
        description="From the camera to the patient's right, to the mark or to the middle "
        f"between two; below zero: to the left. Default: {src.COMMON}.",
    )


class Entry(Part):
    """One exercise of the plan, with its dose and options.

    What is left out is as in the catalogue; a ``tempo_bpm`` of null is the patient's
    own pace, a pair rises or falls within the set.
    """

    entry_id: Name
    exercise: Annotated[str, StringConstraints(max_length=64)]
    stage: Name | None = None
    repetitions: Annotated[int, Field(ge=1, le=200)] | None = None
    seconds: Annotated[float, Field(ge=1, le=600, allow_inf_nan=False)] | None = None
    tempo_bpm: Tempo = None
    amplitude_deg: Range | None = Field(
        None, description="Least and most to each side of rest; null for the usual."
    )
    ladder: Annotated[list[Rung], Field(max_length=MAX_RUNGS)] = []
    eyes: Eyes | None = None
    posture: Posture | None = None
    surface: Surface | None = None
    head_shake: bool | None = None
    support: Support | None = None
    wall: WallMarks | None = Field(
        None, description="Marks on the wall in place of a target on the screen; null: the screen."
    )
    unlock_after: Unlock | None = None
    note: Text = Field("", description="The therapist's note on this entry.")


class Stage(Part):
    """A group of entries that is practised together."""

    stage_id: Name
    name: Line
    unlock_after: Unlock | None = None


class SymptomRules(Part):
    """When it is enough for today."""

    score_most: Score = Field(5, description=f"Most symptom score of 10. Default: {src.LEAFLET}.")
    settle_minutes_most: Minutes = Field(
        5.0, description=f"Longest time to settle. Default: {src.LEAFLET}."
    )
    also_ask: list[Literal["nausea", "unsteadiness"]] = Field(
        [], description=f"Asked beside dizziness. Default: none, {src.COMMON}."
    )
    high_start: Literal["seated_only", "baseline"] = Field(
        "seated_only",
        description="For a person who starts above score_most: seated work only, or all work "
        f"within baseline_rise_most of the start. Default: {src.COMMON}, the stricter one.",
    )
    baseline_rise_most: Score | None = Field(
        None, description="Most rise above a high start; needed for the baseline rule."
    )


class NeckLimit(Part):
    """How far the head may go to each side of rest, in degrees; set by the therapist."""

    yaw: Degrees
    pitch: Degrees


class ClearanceItem(Part):
    """Something the therapist has to be satisfied of before anything but the seated start."""

    item: Line
    cleared: bool = False


class HandOver(Part):
    """How sessions go back to the clinic: encrypted to its keys, or plain, knowingly."""

    keys: Annotated[list[PublicKey], Field(max_length=20)] = Field(
        [], description="Public keys of the clinic; whoever has one of the secret ones can read."
    )
    plain: bool = Field(
        False, description="True where the clinic has chosen to go without keys; no default."
    )


class Plan(Part):
    """A whole plan."""

    format: Literal["turnpost-plan"]
    format_version: Literal[1]
    plan_id: Name
    person: Name | None = Field(None, description="A pseudonym, never a name.")
    starts_on: date | None = Field(None, description="First day; weeks of ladders count from it.")
    affected_side: Literal["right", "left", "both", "unknown"] = "unknown"
    kind_of_loss: Literal["acute", "chronic", "bilateral", "other"] = "other"
    age_group: AgeGroup | None = Field(
        None, description="For the published tables of chair stands only; no default."
    )
    sex: Sex | None = Field(None, description="For the same tables only; no default.")
    words: Text = Field("", description="From the therapist to the patient.")
    bouts_a_day: Annotated[int, Field(ge=1, le=12)] = Field(
        3, description=f"Default: at least 3 times a day, {src.GUIDELINE}."
    )
    days_a_week: Annotated[int, Field(ge=1, le=7)] = Field(7, description=f"Default: {src.COMMON}.")
    rest_s: Annotated[float, Field(ge=0, le=600, allow_inf_nan=False)] = Field(
        30.0, description=f"Rest between entries. Default: {src.COMMON}."
    )
    seat_distance_mm: Annotated[float, Field(ge=400, le=4000, allow_inf_nan=False)] = Field(
        750.0, description=f"From the eyes to the target. Default: {src.COMMON}."
    )
    neck_limit_deg: NeckLimit | None = Field(None, description="Set by the therapist; no default.")
    emergency_number: (
        Annotated[str, StringConstraints(pattern=r"^\+?[0-9][0-9 ()/-]{1,19}$")] | None
    ) = Field(None, description="Set by the clinic; no default.")
    symptom_rules: SymptomRules = SymptomRules()
    hand_over: HandOver | None = Field(
        None, description="To whom sessions are handed over. Default: nobody."
    )
    clearance: Annotated[list[ClearanceItem], Field(max_length=40)] = []
    stages: Annotated[list[Stage], Field(max_length=MAX_STAGES)] = []
    entries: Annotated[list[Entry], Field(min_length=1, max_length=MAX_ENTRIES)]

    @property
    def table_group(self) -> dict[str, str | None] | None:
        """Age group and sex for the tables of chair stands; None where neither is given."""
        if self.age_group is None and self.sex is None:
            return None
        return {"age_group": self.age_group, "sex": self.sex}

    def entries_of(self, stage_id: str) -> list[Entry]:
        """Entries of a stage, in order."""
        return [e for e in self.entries if e.stage == stage_id]
