"""One part of a set-up done again: what is taken, what is refused, what stays.

The pictures are those of a shipped clip; a part "done again" is such pictures at a later time.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

import numpy as np
import pytest

from calibration.again import (
    LEAST_SEEN,
    MOVED_DEG,
    MOVED_MM,
    SHORTER_DEG,
    WORSE_DEG,
    hindrance,
    worse,
)
from calibration.check import GazeCheck, check_gaze
from calibration.measurer import Measurer, make_measurer
from calibration.parts import PARTS, PartFound, in_order, part_of, parts_in
from calibration.parts_found import find_parts, seen_in
from calibration.report import Again, SetupReport
from tests.calibration.conftest import FOV_DEG
from tests.calibration.test_check import held_out
from tracker.errors import InputError
from tracker.frame import Frame
from tracker.head.perspective import rotation_of_vector
from tracker.measure import measure
from tracker.profile import Profile
from tracker.session.stage import Step
from tracker.vision.observer import Observation, Observer

Seen = tuple[list[Observation], list[Step]]
LATER_S = 100.0


@pytest.fixture(scope="module")
def done(seen: Seen) -> tuple[Measurer, SetupReport]:
    """A set-up with two looks kept from the fit, and the measurer that fitted it."""
    observations, steps = seen
    measurer = make_measurer(FOV_DEG)
    measurer._held.extend(observations)
    return measurer, measurer.fit(in_order(held_out(steps)))


@pytest.fixture
def measurer(done: tuple[Measurer, SetupReport]) -> Measurer:
    """The same as it was after its fit."""
    fitted, report = done
    again = Measurer.__new__(Measurer)
    again.__dict__.update(fitted.__dict__)
    again._held = fitted._held.copy()
    again._setup = list(fitted._setup)
    assert again._report is report
    return again


def own(steps: Sequence[Step], part: str) -> list[Step]:
    return [s for s in steps if part_of(s) == part]


def later(step: Step, by_s: float = LATER_S) -> Step:
    return step.model_copy(update={"from_s": step.from_s + by_s, "to_s": step.to_s + by_s})


def done_again(
    measurer: Measurer, part: str, seen: Sequence[Observation], steps: Sequence[Step]
) -> SetupReport:
    """Do a part again: these pictures and steps, so much later."""
    assert measurer._report is not None
    measurer.hold_setup(keep=True, take=True)
    measurer._held.extend(replace(o, time_s=o.time_s + LATER_S) for o in seen_in(seen, steps))
    others = [s for s in measurer._report.steps if part_of(s) != part]
    return measurer.fit_again(in_order([*others, *map(later, steps)]), part)


def test_every_part_says_how_it_came_out(done: tuple[Measurer, SetupReport]) -> None:
    report = done[1]
    parts = {p.part: p for p in report.parts}
    assert tuple(parts) == PARTS
    # The rendered head is in every picture, and its still parts sway by a fraction of a degree.
    assert all(p.seen == 1.0 for p in report.parts)
    assert parts["rest"].wander_deg < 1.0
    assert report.check is not None and parts["check"].error_deg == report.check.error_deg
    assert parts["check"].points == parts["check"].points_seen == 2
    assert parts["looks"].error_deg == report.error_deg and parts["looks"].points > 2
    reach = report.head_reach
    assert reach is not None
    assert (parts["turn"].plus_deg, parts["turn"].minus_deg) == (reach.right, reach.left)
    assert (parts["nod"].plus_deg, parts["nod"].minus_deg) == (reach.up, reach.down)
    assert np.isnan(parts["turn"].wander_deg) and np.isnan(parts["rest"].plus_deg)
    assert report.again is None


def test_a_check_counts_the_looks_at_the_screen_alone(
    done: tuple[Measurer, SetupReport], seen: Seen
) -> None:
    """Its figure is that of the screen; marks on the wall have one of their own."""
    report = done[1]
    first = own(report.steps, "check")[0]
    row = {**first.model_dump(), "wall_mm": [100.0, 50.0, 900.0], "note": "right"}
    steps = [Step.model_validate(row) if s == first else s for s in report.steps]
    check = check_gaze(report.profile, seen[0], steps)
    assert check is not None and check.looks == 1 and report.head_reach is not None
    parts = find_parts(report.profile, seen[0], steps, check, report.head_reach)
    (part,) = (p for p in parts if p.part == "check")
    assert (part.points, part.points_seen) == (1, 1) and part.error_deg == check.error_deg


def test_pictures_are_held_in_bytes_and_read_as_in_floats(
    done: tuple[Measurer, SetupReport],
) -> None:
    measurer, report = done
    for seen_now in measurer._setup[::40]:
        crop = seen_now.crop
        assert crop is not None and crop.pixels.dtype == np.uint8
        assert crop.image.dtype == np.float32
        wide = replace(seen_now, crop=replace(crop, pixels=crop.pixels.astype(np.float32)))
        assert repr(measure(wide, report.profile)) == repr(measure(seen_now, report.profile))


def test_steps_done_again_take_the_place_of_the_old_ones(seen: Seen) -> None:
    steps = held_out(seen[1])
    rest, *others = steps
    mixed = in_order([*others, later(rest)])
    assert part_of(mixed[0]) == "rest" and [part_of(s) for s in mixed] == sorted(
        (part_of(s) for s in steps), key=PARTS.index
    )
    assert parts_in(reversed(steps)) == list(PARTS)


@pytest.mark.parametrize("part", ["rest", "turn", "nod"])
def test_a_part_that_came_out_the_same_is_taken(
    measurer: Measurer, done: tuple[Measurer, SetupReport], seen: Seen, part: str
) -> None:
    before = done[1]
    report = done_again(measurer, part, seen[0], own(before.steps, part))
    assert report.again == Again(part)
    assert measurer.profile is report.profile and report.profile is not before.profile
    assert report.check is not None and before.check is not None
    assert report.check.error_deg == pytest.approx(before.check.error_deg, abs=WORSE_DEG)
    # Nothing was learnt from the old pictures of it: they are gone.
    (first, *_) = own(report.steps, part)
    assert first.from_s >= LATER_S
    assert all(o.time_s >= LATER_S for o in seen_in(measurer._setup, own(report.steps, part)))
    old = own(before.steps, part)
    assert not seen_in(measurer._setup, old) and len(measurer._setup) > 100
    # And it can be done again once more.
    assert measurer._report is not None


def test_a_check_done_again_counts_whatever_it_shows_and_teaches_nothing(
    measurer: Measurer, done: tuple[Measurer, SetupReport], seen: Seen
) -> None:
    before = done[1]
    # Two other looks stand for somebody who does not look where the targets are.
    looked = own(before.steps, "looks")[:2]
    asked = own(before.steps, "check")
    steps = [
        look.model_copy(update={"target_mm": check.target_mm, "step": "look"})
        for look, check in zip(looked, asked, strict=True)
    ]
    steps = [Step.model_validate({**s.model_dump(), "held_out": True}) for s in steps]
    report = done_again(measurer, "check", seen[0], steps)
    assert report.again == Again("check") and report.profile is before.profile
    assert report.check is not None and before.check is not None
    assert report.check.error_deg > before.check.error_deg + 2.0


def test_a_turn_that_goes_less_far_is_not_taken(
    measurer: Measurer, done: tuple[Measurer, SetupReport], seen: Seen
) -> None:
    before = done[1]
    # The head that stays still in the looks stands for one that hardly turns.
    rows = [s.model_dump() | {"step": "turn_slowly"} for s in own(before.steps, "looks")]
    steps = [Step.model_validate(r) for r in rows]
    report = done_again(measurer, "turn", seen[0], steps)
    assert report.again is not None and report.again.why in ("less_far", "eyes")
    assert measurer.profile is before.profile and report.profile is before.profile
    assert own(report.steps, "turn") == own(before.steps, "turn")
    assert len(seen_in(measurer._setup, own(before.steps, "turn"))) > 20


def test_eyes_that_looked_elsewhere_are_not_taken(
    measurer: Measurer, done: tuple[Measurer, SetupReport], seen: Seen
) -> None:
    before = done[1]
    looks = own(before.steps, "looks")
    # Each target as if it had been where another one was: the eyes never were on it.
    targets = [s.target_mm for s in looks]
    wrong = [
        s.model_copy(update={"target_mm": t})
        for s, t in zip(looks, [*targets[2:], *targets[:2]], strict=True)
    ]
    report = done_again(measurer, "looks", seen[0], wrong)
    assert report.again == Again("looks", "eyes")
    assert measurer.profile is before.profile


@pytest.mark.parametrize(
    ("shift_mm", "nod_deg", "why"),
    [
        (0.6 * MOVED_MM, 0.0, ""),
        (1.4 * MOVED_MM, 0.0, "moved"),
        (0.0, 0.6 * MOVED_DEG, ""),
        (0.0, 1.4 * MOVED_DEG, "moved"),
    ],
)
def test_who_sits_elsewhere_is_told_to_do_all_of_it(
    done: tuple[Measurer, SetupReport], seen: Seen, shift_mm: float, nod_deg: float, why: str
) -> None:
    """As if the other parts had been seen so far from here."""
    report = done[1]
    nodded = rotation_of_vector(np.radians([nod_deg, 0.0, 0.0]))
    before = report.profile.rest
    rest = replace(
        before,
        turned=nodded @ before.turned,
        origin_mm=before.origin_mm + np.array([shift_mm, 0.0, 0.0]),
    )
    moved: Profile = replace(report.profile, rest=rest)
    assert hindrance(moved, seen[0], own(report.steps, "rest")) == why


def test_a_head_that_turns_as_asked_has_not_moved_the_seat(
    done: tuple[Measurer, SetupReport], seen: Seen
) -> None:
    report = done[1]
    for part in PARTS:
        assert hindrance(report.profile, seen[0], own(report.steps, part)) == ""


def test_a_part_that_was_hardly_seen_is_not_taken(
    done: tuple[Measurer, SetupReport], seen: Seen
) -> None:
    report = done[1]
    steps = own(report.steps, "turn")
    frames = seen_in(seen[0], steps)
    for share, why in ((LEAST_SEEN + 0.1, ""), (LEAST_SEEN - 0.1, "unseen"), (0.0, "unseen")):
        lost = [
            o if k % 10 < 10 * share else replace(o, face=None, crop=None)
            for k, o in enumerate(frames)
        ]
        assert hindrance(report.profile, lost, steps) == why
    assert hindrance(report.profile, [], steps) == "unseen"


def test_left_half_way_the_old_one_goes_on(
    measurer: Measurer, done: tuple[Measurer, SetupReport], seen: Seen
) -> None:
    before = done[1]
    frame = Frame(0, 200.0, np.full((480, 640, 3), 90, np.uint8))
    measurer._observer = Observer()
    measurer.hold_setup(keep=True, take=True)
    # While a part is done again nothing is measured by the old one.
    assert measurer.take(frame).reason == "no_face" and len(measurer._held) == 1
    measurer.hold_setup(keep=True, take=False)
    assert not measurer._held and measurer.profile is before.profile
    measurer.take(replace(frame, time_s=201.0))
    measurer.close()
    assert not measurer._held
    report = done_again(measurer, "nod", seen[0], own(before.steps, "nod"))
    assert report.again == Again("nod")


def test_without_the_other_pictures_it_is_refused(measurer: Measurer, seen: Seen) -> None:
    measurer.hold_setup(keep=False, take=False)
    with pytest.raises(InputError, match="the whole set-up"):
        measurer.fit_again(in_order(held_out(seen[1])), "rest")
    assert measurer.profile is not None


def test_however_long_one_has_sat_before_it_the_newest_pictures_are_held(
    monkeypatch: pytest.MonkeyPatch, seen: Seen
) -> None:
    monkeypatch.setattr("calibration.measurer.MAX_HELD", 50)
    measurer = make_measurer(FOV_DEG)
    measurer._held.extend(seen[0])
    assert list(measurer._held) == seen[0][-50:]
    measurer.close()


# --- which of two is worse, by hand-made figures ---


def report_of(
    error_deg: float = 0.8,
    *,
    ok: bool = True,
    turn: tuple[float, float] = (25.0, 25.0),
    **more: object,
) -> SetupReport:
    found = PartFound("turn", 1.0, plus_deg=turn[0], minus_deg=turn[1])
    made = SetupReport(None, [], 0.5, None, (), ok, GazeCheck(error_deg, 40, 2), None, (found,))  # type: ignore[arg-type]
    return replace(made, **more)  # type: ignore[arg-type]


@pytest.mark.parametrize(
    ("new", "part", "why"),
    [
        (report_of(), "rest", ""),
        (report_of(0.8 + 0.9 * WORSE_DEG), "looks", ""),
        (report_of(0.8 + 1.1 * WORSE_DEG), "looks", "eyes"),
        (report_of(float("nan")), "looks", "eyes"),
        (report_of(3.0), "check", ""),
        # Marks on the wall are looks that were kept back as well.
        (report_of(wall_check=GazeCheck(0.9 + 0.9 * WORSE_DEG, 40, 2)), "looks", ""),
        (report_of(wall_check=GazeCheck(0.9 + 1.1 * WORSE_DEG, 40, 2)), "looks", "eyes"),
        (report_of(wall_check=GazeCheck(float("nan"), 0, 0)), "rest", "eyes"),
        (report_of(wall_check=GazeCheck(3.0, 40, 2)), "check", ""),
        (report_of(0.3, ok=False), "turn", "eyes"),
        (report_of(findings=("coarse_picture",)), "turn", "coarse"),
        (report_of(turn=(40.0, 25.0 - 0.9 * SHORTER_DEG)), "turn", ""),
        (report_of(turn=(40.0, 25.0 - 1.1 * SHORTER_DEG)), "turn", "less_far"),
        # What a turn reached is no matter of the looks.
        (report_of(turn=(5.0, 5.0)), "looks", ""),
    ],
)
def test_worse_by_the_looks_that_were_kept_back_by_reach_and_by_picture(
    new: SetupReport, part: str, why: str
) -> None:
    before = report_of(wall_check=GazeCheck(0.9, 40, 2))
    assert worse(before, new, part) == why


def test_what_was_unread_before_can_only_become_better() -> None:
    blind = report_of(float("nan"), ok=False, findings=("gaze_not_fitted",))
    assert worse(blind, report_of(2.0), "looks") == ""
    assert worse(report_of(findings=("coarse_picture",)), report_of(), "turn") == ""
