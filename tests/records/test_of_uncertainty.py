"""How an uncertainty is told, and that summaries of before, which have none, tell nothing of it."""

from __future__ import annotations

import json
import re
from typing import Any

import jsonschema
import pytest

from tests.records import made
from tracker.records import terms
from tracker.records import units as u
from tracker.records.figure import Making, error_text, shown_with_error, shown_with_unit
from tracker.records.figures import record_of
from tracker.session.summary_file import Summary
from tracker.session.uncertain import OF_STAYS
from ui.commands.schema import published
from ui.documents.csv import sessions_csv
from ui.documents.fhir import fhir_bundle

AMPLITUDE = Making("movement", "amplitude_deg", "Amplitude", u.DEGREES)


@pytest.mark.parametrize(
    ("error", "told"), [(0.36, "0.4"), (0.31, "0.4"), (0.3, "0.3"), (0.004, "0.1"), (0.0, "0.1")]
)
def test_it_is_rounded_up_and_never_nothing(error: float, told: str) -> None:
    """JCGM 100:2008, 7.2.6: it may be appropriate to round an uncertainty up."""
    figure = AMPLITUDE.of(18.24, error=error)
    assert error_text(figure) == told
    assert shown_with_error(figure) == f"18.2 ± {told}"
    assert shown_with_unit(figure) == f"18.2 ± {told}°"


def test_what_was_not_measured_has_no_error() -> None:
    figure = AMPLITUDE.of(None, "no turn was counted", error=0.4)
    assert figure.error is None
    assert shown_with_unit(figure) == "not measured (no turn was counted)"


def test_every_part_of_a_figure_has_its_own() -> None:
    record = record_of(made.finished())
    (turns, *_) = record.exercises
    for key in ("", ".right", ".left", ".first_five", ".last_five", ".spread", ".difference"):
        for measure in ("amplitude_deg", "peak_speed_deg_s"):
            figure = turns.find(f"{measure}{key}")
            assert figure is not None and figure.error is not None and figure.error > 0, key
    for key in ("tempo_bpm", "tempo_bpm.spread", "tempo_bpm.difference"):
        figure = turns.find(key)
        assert figure is not None and figure.error is not None, key
    verdict = turns.find("amplitude_deg.verdict")
    assert verdict is not None
    assert re.fullmatch(r"rose|fell|no change|too uneven to tell", str(verdict.value))
    assert turns.find("uncertainty") is None
    says = record.find("uncertainty")
    assert says is not None and says.value == terms.UNCERTAINTY_SAYS


def test_where_it_is_not_known_the_exercise_says_why() -> None:
    found = {e.exercise: e for e in record_of(made.varied()).exercises}
    figure = found["sit-to-stand"].find("tempo_bpm.uncertainty")
    assert figure is not None and figure.value is None and figure.reason == OF_STAYS
    for exercise, key in (
        ("near-far", "vergence_change_deg"),
        ("sit-to-stand", "amplitude_mm"),
        ("weight-shift", "swing_mm"),
    ):
        figure = found[exercise].find(key)
        assert figure is not None and figure.error is not None and figure.error > 0


def test_sway_while_standing_carries_its_own() -> None:
    """The root mean squares do; what single samples make, ranges and the ellipse, does not."""
    found = next(e for e in record_of(made.finished()).exercises if e.exercise == "stand")
    for key in ("sway", "sway.sideways", "sway.fore_aft"):
        figure = found.find(key)
        assert figure is not None and figure.error is not None and figure.error > 1.0
    ranged = found.find("sway_range.sideways")
    assert ranged is not None and ranged.value is not None and ranged.error is None


def _without(value: Any) -> Any:
    """As a summary was before there were uncertainties."""
    new = ("uncertainty", "spread_uncertainty", "difference")
    if isinstance(value, dict):
        return {k: _without(v) for k, v in value.items() if not k.startswith(new)}
    return [_without(v) for v in value] if isinstance(value, list) else value


def test_a_summary_of_before_opens_and_tells_none() -> None:
    data = _without(json.loads(made.finished().model_dump_json()))
    jsonschema.validate(data, published("summary"))
    record = record_of(Summary.model_validate(data))
    figures = [*record.figures, *(f for e in record.exercises for f in e.figures)]
    assert all(f.error is None and f.measure != "uncertainty" for f in figures)
    texts = sessions_csv([record]).decode("utf-8-sig"), fhir_bundle([record])
    assert not any("uncertainty" in text for text in texts)
    assert "uncertainty" in fhir_bundle([record_of(made.finished())])
