"""Watchers of standing, rising and bending: what each finds, and what it must not find."""

from __future__ import annotations

from collections.abc import Callable
from math import nan

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.motion.stands import Path, bends, rise, stands
from tests.session.synthetic import FROM_S, TO_S, WELL_READ, steps
from tracker.exercises.catalogue import CATALOGUE, permission
from tracker.exercises.events import Event
from tracker.exercises.watchers import EyesOpened, PossibleFall
from tracker.sample import Sample
from tracker.session.clip_run import run_samples
from tracker.session.live import SessionInfo
from tracker.session.projections import ExerciseRecord
from tracker.session.summary import summarise

Curve = Callable[[float], float]
RATES = st.sampled_from([15, 20, 30, 60])


#: Usually done sitting, and not watched for falls then; a plan may have them done standing.
STOOD_FOR = [
    e.id
    for e in CATALOGUE.values()
    if e.posture == "sitting"
    and permission(e.id, "standing") != "never"
    and "possible_fall" not in {w.name for w in e.watchers}
]


def zero(_: float) -> float:
    return 0.0


def samples(
    *,
    rate_hz: float = 30.0,
    to_s: float = TO_S,
    lost: Callable[[float], bool] = lambda _: False,
    noise: float = 0.0,
    number: int = 0,
    **curves: Curve,
) -> list[Sample]:
    """Samples of curves over time; the neck goes along with the head where nothing is said."""
    rng = np.random.default_rng(number)
    full: dict[str, Curve] = {
        f"{part}_{axis}_mm": curves.get(f"head_{axis}_mm", zero)
        for part in ("head", "neck")
        for axis in "xyz"
    }
    full |= {f"head_{a}_deg": zero for a in ("yaw", "pitch", "roll")}
    full |= {"eye_open": lambda _: 0.9, **curves}
    out = []
    for t in np.arange(0.0, to_s, 1.0 / rate_hz):
        if lost(float(t)):
            out.append(Sample(float(t), reason="no_face"))
            continue
        values = {k: c(float(t)) for k, c in full.items()}
        for k in values:
            if k.endswith(("_mm", "_deg")):
                values[k] += rng.normal(0, noise * (3.0 if k.endswith("_mm") else 0.3))
        out.append(Sample(float(t), **values))
    return out


def run(exercise: str, made: list[Sample], **step: object) -> ExerciseRecord:
    return run_samples(made, steps(exercise, **step), SessionInfo(setup=WELL_READ)).exercises[0]


def found(exercise: str, made: list[Sample], code: str, **step: object) -> list[Event]:
    return [e for e in run(exercise, made, **step).events if e.code == code]


def between(*spans: tuple[float, float], inside: float, outside: float) -> Curve:
    return lambda t: inside if any(a <= t < b for a, b in spans) else outside


class TestEyesOpened:
    def test_shut_all_along_is_well(self) -> None:
        made = samples(eye_open=between((3.0, 99), inside=0.05, outside=0.9))
        record = run("stand", made, eyes="closed")
        assert record.events == []

    @settings(deadline=None)
    @given(st.floats(5, 17), st.floats(0.5, 3.0), RATES)
    def test_a_look_is_found_dated_and_said(self, start: float, lasts: float, rate: float) -> None:
        look = between((0, 3.0), (start, start + lasts), inside=0.85, outside=0.08)
        events = found("stand", samples(eye_open=look, rate_hz=rate), "eyes_opened", eyes="closed")
        assert len(events) == 1
        assert events[0].start_s == pytest.approx(start, abs=0.15)
        assert events[0].end_s == pytest.approx(start + lasts, abs=0.15)
        assert events[0].decided_s <= start + 0.3 + 0.3
        assert events[0].said_at_s == pytest.approx(events[0].decided_s, abs=0.1)

    @pytest.mark.parametrize(("openness", "lasts"), [(0.85, 0.2), (0.4, 3.0), (0.28, 3.0)])
    def test_flickers_and_trembling_lids_are_no_look(self, openness: float, lasts: float) -> None:
        curve = between((9, 9 + lasts), inside=openness, outside=0.08)
        assert found("stand", samples(eye_open=curve), "eyes_opened", eyes="closed") == []

    def test_never_shut_is_found_once_there_was_time_to_shut_them(self) -> None:
        (event,) = found("stand", samples(), "eyes_opened", eyes="closed")
        assert event.start_s == pytest.approx(FROM_S + 3.0, abs=0.1)
        assert event.end_s == pytest.approx(TO_S, abs=0.1)

    def test_open_eyes_that_were_asked_for_are_not_watched(self) -> None:
        codes = {e.code for e in run("stand", samples()).events}
        assert codes == set()
        shut = samples(eye_open=between((8, 10), inside=0.05, outside=0.9))
        assert {e.code for e in run("stand", shut, eyes="open").events} == {"eyes_closed"}

    def test_a_lost_face_opens_no_eyes(self) -> None:
        watcher = EyesOpened(0.0)
        for k in range(300):
            watcher.feed(Sample(k / 30, eye_open=0.05 if k < 150 else nan))
        assert not watcher.on

    @pytest.mark.parametrize("exercise", CATALOGUE.values(), ids=lambda e: e.id)
    def test_whatever_may_be_done_with_shut_eyes_watches_them_or_says_not(self, exercise) -> None:
        watched = "eyes_opened" in {w.name for w in exercise.watchers}
        if permission(exercise.id, "eyes_closed") != "never":
            assert watched != ("eyes_opened" in exercise.not_measured)


class TestChinDown:
    @settings(deadline=None)
    @given(st.floats(4, 16), st.floats(16, 40), st.floats(0.9, 4), RATES)
    def test_looking_down_is_found(
        self, start: float, size: float, lasts: float, rate: float
    ) -> None:
        def pitch(t: float) -> float:
            return float(-size * (rise((t - start) / 0.4) - rise((t - start - lasts - 0.4) / 0.4)))

        made = samples(head_pitch_deg=pitch, rate_hz=rate, noise=1.0)
        events = found("stand", made, "chin_down")
        assert len(events) == 1
        # From rest it is slow at first: it is dated to where 4 degrees are passed.
        assert start - 0.1 <= events[0].start_s <= start + 0.2
        # The chin is not told twice.
        assert found("stand", made, "head_moved") == []

    @pytest.mark.parametrize(
        "pitch",
        [
            lambda _: -9.0,
            lambda t: -20.0 if 9 < t < 9.5 else 0.0,
            lambda t: 25.0 if t > 9 else 0.0,
            lambda t: 3.0 * np.sin(2 * t),
        ],
        ids=["a little low", "a glance down", "chin up", "sway"],
    )
    def test_what_is_no_sinking_chin(self, pitch: Curve) -> None:
        assert found("stand", samples(head_pitch_deg=pitch), "chin_down") == []

    def test_a_head_turned_aside_is_another_matter(self) -> None:
        made = samples(head_yaw_deg=lambda t: 25.0 if 9 < t < 12 else 0.0)
        assert {e.code for e in run("stand", made).events} == {"head_moved"}


class TestFartherThanAsked:
    @pytest.mark.parametrize(
        ("exercise", "axis"), [("stand-head-shake", "yaw"), ("head-tilts", "roll")]
    )
    @pytest.mark.parametrize(
        ("asked", "told"), [([10.0, 15.0], True), ([20.0, 30.0], False), (None, False)]
    )
    def test_where_a_range_is_asked(
        self, exercise: str, axis: str, asked: list[float] | None, told: bool
    ) -> None:
        """A therapist who limits the neck gives one; nothing is usual here."""
        made = samples(**{f"head_{axis}_deg": lambda t: 25.0 * np.sin(np.pi * 0.6 * t)})
        assert bool(found(exercise, made, "too_large", amplitude_deg=asked)) is told


class TestLeftPicture:
    @settings(deadline=None)
    @given(st.floats(5, 15), st.sampled_from([-1, 1]), st.floats(1, 4), RATES)
    def test_stepping_out_is_found(self, start: float, side: int, away: float, rate: float) -> None:
        made = samples(
            head_x_mm=lambda t: side * 600 * float(rise((t - start) / 1.2)),
            lost=lambda t: start + 0.7 <= t < start + 0.7 + away,
            rate_hz=rate,
        )
        record = run("stand", made)
        events = [e for e in record.events if e.code == "left_picture"]
        assert len(events) == 1
        assert events[0].start_s == pytest.approx(start + 0.7, abs=0.15)
        assert events[0].end_s == pytest.approx(start + 0.7 + away, abs=0.15)
        # That it isn't measured is noted, but only this is said.
        said = {e.code for e in record.events if e.said_at_s == e.said_at_s}
        assert "left_picture" in said and "not_measured" not in said

    @pytest.mark.parametrize("x", [0.0, 200.0], ids=["in place", "aside for long"])
    def test_a_face_that_is_covered_has_not_left(self, x: float) -> None:
        made = samples(head_x_mm=lambda t: x * float(rise(t - 4)), lost=lambda t: 10 <= t < 12)
        codes = {e.code for e in run("stand", made).events}
        assert codes == {"not_measured"}

    def test_a_short_hole_is_none(self) -> None:
        made = samples(head_x_mm=lambda t: 400 * float(rise(t - 9)), lost=lambda t: 9.6 <= t < 10.0)
        assert found("stand", made, "left_picture") == []


def fall(start: float, drop: float, lasts: float) -> Curve:
    """A fall that gathers speed all the way and stops at once, as on a floor."""
    return lambda t: -drop * float(np.clip((t - start) / lasts, 0, 1)) ** 2


class TestPossibleFall:
    @settings(deadline=None)
    @given(st.floats(4, 14), st.floats(800, 1400), st.floats(1.0, 1.7), RATES)
    def test_falls_are_found_and_said_at_once(
        self, start: float, drop: float, slower: float, rate: float
    ) -> None:
        lasts = slower * float(np.sqrt(2 * drop / 9810))  # than free fall
        made = samples(head_y_mm=fall(start, drop, lasts), rate_hz=rate, noise=1.0)
        events = found("stand", made, "possible_fall")
        assert len(events) == 1
        assert start - 0.1 <= events[0].start_s <= start + 0.3
        assert events[0].decided_s <= start + lasts + 0.5 + 0.3
        assert events[0].said_at_s == events[0].decided_s

    def test_a_drop_that_is_not_deep_yet_is_undecided_for_three_seconds_at_most(self) -> None:
        """So long nobody is believed to be fine (``practice.dropped``)."""
        watcher, undecided, deep = PossibleFall(), [], []
        for sample in samples(head_y_mm=fall(4.0, 300.0, 0.2)):
            watcher.feed(sample)
            undecided += [sample.time_s] if watcher.undecided else []
            deep += [sample.time_s] if watcher.cut_short else []
        assert not watcher.on and undecided
        # In mid-drop it counts as deep sooner.
        assert len(deep) < 0.1 * len(undecided)
        assert undecided[-1] - undecided[0] <= 3.0 + 0.1

    @pytest.mark.parametrize("exercise", STOOD_FOR)
    def test_whoever_stands_for_a_seated_exercise_is_watched_too(self, exercise: str) -> None:
        made = samples(head_y_mm=fall(12.0, 1300.0, 0.6), noise=1.0)
        events = found(exercise, made, "possible_fall", posture="standing")
        assert len(events) == 1 and events[0].said_at_s == events[0].decided_s
        assert found(exercise, made, "possible_fall") == []
        still = run(exercise, samples(), posture="standing")
        assert not {e.code for e in still.events} & {"possible_fall", "left_picture"}

    @settings(deadline=None)
    @given(st.floats(4, 14), st.floats(500, 700), RATES)
    def test_falls_out_of_the_picture_are_found(
        self, start: float, edge: float, rate: float
    ) -> None:
        height = fall(start, 1300, 0.6)
        made = samples(head_y_mm=height, lost=lambda t: height(t) < -edge, rate_hz=rate)
        events = found("stand", made, "possible_fall")
        assert len(events) == 1
        assert start - 0.1 <= events[0].start_s <= start + 0.3

    @settings(deadline=None)
    @given(st.integers(0, 10_000), st.booleans())
    def test_standing_up_and_sitting_down_is_none(self, number: int, hesitate: bool) -> None:
        times, heights, _ = stands(np.random.default_rng(number), hesitate)
        assert not fell(times, heights)

    @settings(deadline=None)
    @given(st.integers(0, 10_000))
    def test_bending_is_none_in_and_out_of_the_picture(self, number: int) -> None:
        times, heights, _ = bends(np.random.default_rng(number), quickest_s=1.0)
        assert not fell(times, heights)

    @pytest.mark.parametrize("rate", [15, 30, 60])
    def test_dropping_into_a_chair_is_none(self, rate: float) -> None:
        times, heights = Path().wait(3).go(-420, 0.55).wait(5).sampled(rate)
        assert not fell(times, heights)

    def test_a_lost_face_is_none(self) -> None:
        times = np.arange(0, 12, 1 / 30)
        for heights in (np.zeros_like(times), -200 * rise((times - 3) / 1.0)):
            assert not fell(times, np.where(times > 3.8, nan, heights))

    @pytest.mark.parametrize("back_s", [0.3, 6.0])
    def test_another_face_taken_for_this_one_is_none(self, back_s: float) -> None:
        times = np.arange(0, 12, 1 / 30)
        heights = np.where((times > 5) & (times < 5 + back_s), -700.0, 0.0)
        assert not fell(times, heights)
        lost = (times > 4.8) & (times < 5.1)
        assert not fell(times, np.where(lost, nan, heights))

    def test_a_face_lost_once_one_sits_is_none(self) -> None:
        """Quick, but not far enough, and it was not lost on its way."""
        times, heights = Path().wait(3).go(-400, 0.45).wait(5).sampled(30)
        assert not fell(times, np.where(times > 4.0, nan, heights))

    def test_it_is_over_when_the_head_is_up_again(self) -> None:
        times, heights = Path().wait(3).go(-900, 0.6).wait(2).go(-100, 2.0).wait(2).sampled(30)
        watcher = PossibleFall()
        changes = [
            c
            for t, y in zip(times, heights, strict=True)
            for c in watcher.feed(Sample(float(t), head_y_mm=float(y)))
        ]
        assert [c.began for c in changes] == [True, False]
        # Half of the way up, of two seconds from 5.6 s on.
        assert changes[1].time_s == pytest.approx(6.6, abs=0.3)

    def test_a_quick_bow_that_comes_up_again_is_none(self) -> None:
        times, heights = Path().wait(3).go(-500, 0.45).go(0, 0.5).wait(3).sampled(30)
        assert not fell(times, heights)

    @settings(deadline=None)
    @given(st.floats(0.12, 0.9), st.booleans(), RATES)
    def test_a_fall_that_the_end_of_the_set_cuts_off_is_found_all_the_same(
        self, before: float, lost: bool, rate: float
    ) -> None:
        """It takes 0.6 s and half a second to be decided; the set ends meanwhile."""
        height = fall(TO_S - before, 1300.0, 0.6)
        made = samples(
            head_y_mm=height,
            to_s=TO_S + 4.0,
            lost=lambda t: lost and height(t) < -600,
            rate_hz=rate,
        )
        (event,) = found("stand", late(made), "possible_fall")
        assert TO_S - before - 0.1 <= event.start_s < event.end_s <= TO_S
        assert event.reason == ("no_face" if lost else "")
        assert event.said_at_s == event.decided_s <= TO_S - before + 0.6 + 0.5 + 0.3

    @pytest.mark.parametrize(
        ("begins_s", "drop", "back"),
        [
            (TO_S + 0.2, 1300.0, False),  # after the set: who was about it has done with it
            (TO_S - 0.3, 420.0, False),  # into a chair
            (TO_S - 0.3, 1300.0, True),  # up again at once
        ],
    )
    def test_what_ends_with_a_set_and_is_no_fall_of_it(
        self, begins_s: float, drop: float, back: bool
    ) -> None:
        down = fall(begins_s, drop, 0.6)
        up_s = begins_s + 0.6
        height: Curve = lambda t: down(t) * (1 - float(rise((t - up_s) / 0.4))) if back else down(t)  # noqa: E731
        made = samples(head_y_mm=height, to_s=TO_S + 5.0)
        assert found("stand", late(made), "possible_fall") == []

    @pytest.mark.parametrize(("for_s", "is_found"), [(0.3, False), (0.45, True), (0.8, True)])
    def test_where_nothing_comes_after_the_set_what_there_is_decides(
        self, for_s: float, is_found: bool
    ) -> None:
        """By a quarter of a metre, as where the face is lost on its way."""
        made = samples(head_y_mm=fall(TO_S - for_s, 1300.0, 0.6))
        record = run_samples(late(made), steps("stand"), SessionInfo())
        events = [e for e in record.exercises[0].events if e.code == "possible_fall"]
        assert len(events) == is_found
        drop = summarise(record).after_drop
        assert (drop is not None) is is_found and (drop is None or drop["seen"] is False)
        for event in events:
            # Nobody is there any more to whom it could be said.
            assert event.reason == "cut_off" and event.said_at_s != event.said_at_s


def late(made: list[Sample]) -> list[Sample]:
    """The last seconds of a set, and what comes after it: nothing before is of interest."""
    return [s for s in made if s.time_s > TO_S - 3.0]


def fell(times: np.ndarray, heights: np.ndarray) -> bool:
    watcher = PossibleFall()
    for t, y in zip(times, heights, strict=True):
        if any(c.began for c in watcher.feed(Sample(float(t), head_y_mm=float(y)))):
            return True
    return any(c.began for c in watcher.wait(float(times[-1]) + 5.0))


def heights_of(path: Path) -> list[Sample]:
    times, heights = path.sampled(30)
    return samples(to_s=path.at_s, head_y_mm=lambda t: float(np.interp(t, times, heights)))


class TestAllTheWay:
    def chairs(self, *heights: float, seat: float = 0.0) -> list[Sample]:
        path = Path().wait(FROM_S + 1.0)
        for height in heights:
            path.go(height, 1.3).wait(0.5).go(seat, 1.3).wait(0.5)
        return heights_of(path.go(0, 0.5).wait(0.5))

    def test_full_stands_raise_nothing(self) -> None:
        record = run("sit-to-stand", self.chairs(380, 370, 390, 360))
        assert record.events == [] and len(record.turns) == 8

    def test_a_stand_of_half_the_height_is_found_until_the_next_full_one(self) -> None:
        made = self.chairs(380, 190, 190, 380, 380)
        (event,) = found("sit-to-stand", made, "not_upright")
        second_s, fourth_s = FROM_S + 1 + 3.6, FROM_S + 1 + 3 * 3.6
        assert second_s < event.start_s < second_s + 1.3
        assert fourth_s < event.end_s < fourth_s + 1.3
        assert len(run("sit-to-stand", made).turns) == 10

    def test_half_the_height_from_the_first_one_on(self) -> None:
        assert len(found("sit-to-stand", self.chairs(190, 190, 190), "not_upright")) == 1

    def test_who_never_sits_down_fully(self) -> None:
        made = self.chairs(400, 400, 400, seat=170)
        assert {e.code for e in run("sit-to-stand", made).events} == {"too_small"}

    def floor(self, *ups: float) -> list[Sample]:
        path = Path().wait(FROM_S + 1.0)
        for up in ups:
            path.go(-520, 1.4).wait(0.8).go(up, 1.4).wait(0.8)
        return heights_of(path.go(0, 0.5).wait(1.0))

    def test_up_fully_between_bends_raises_nothing(self) -> None:
        record = run("floor-reach", self.floor(0, -30, 20, 0))
        assert record.events == [] and len(record.turns) == 4

    def test_not_fully_up_between_bends_is_found(self) -> None:
        record = run("floor-reach", self.floor(0, -160, -160, 0))
        assert len(record.turns) == 4  # still two repetitions
        (event,) = record.events
        assert event.code == "not_upright"
        assert FROM_S + 1 + 4.4 + 3 < event.start_s < FROM_S + 1 + 2 * 4.4 + 1.5


class TestEyesWithHead:
    def turning(self, follow: Callable[[float], bool], **extra: object) -> list[Sample]:
        """Turns of 18 degrees; eyes jump ahead where they go along, else stay in the room."""

        def yaw(t: float) -> float:
            return 18 * float(np.sin(np.pi * (t - FROM_S))) if t > FROM_S else 0.0

        def eye(t: float) -> float:
            if not follow(t):
                return -yaw(t)
            going = 18 * np.sign(np.cos(np.pi * (t - FROM_S)))  # where the turn leads
            return float(going - yaw(t)) if t > FROM_S else 0.0

        return samples(head_yaw_deg=yaw, eye_yaw_deg=eye, noise=1.0, **extra)  # type: ignore[arg-type]

    def test_eyes_that_jump_ahead_go_along(self) -> None:
        made = self.turning(lambda _: True)
        assert found("turns-together", made, "eyes_not_with_head", tempo_bpm=60.0) == []

    def test_eyes_that_lie_in_the_middle_go_along(self) -> None:
        still = samples(
            head_yaw_deg=lambda t: 18 * float(np.sin(np.pi * t)), eye_yaw_deg=lambda _: 3.0
        )
        assert found("turns-together", still, "eyes_not_with_head") == []

    def test_eyes_that_stay_behind_are_found_from_where_they_did(self) -> None:
        made = self.turning(lambda t: not 9.5 < t < 16.5)
        (event,) = found("turns-together", made, "eyes_not_with_head")
        assert event.start_s == pytest.approx(9.5, abs=0.3)
        assert event.end_s == pytest.approx(16.5, abs=0.6)

    def test_one_turn_alone_says_nothing(self) -> None:
        made = self.turning(lambda t: not 9.6 < t < 10.5)
        assert found("turns-together", made, "eyes_not_with_head") == []

    def test_shut_or_unmeasured_eyes_decide_nothing(self) -> None:
        shut = samples(
            head_yaw_deg=lambda t: 18 * float(np.sin(np.pi * t)),
            eye_yaw_deg=lambda t: -18 * float(np.sin(np.pi * t)),
            eye_open=lambda _: 0.05,
        )
        assert found("turns-together", shut, "eyes_not_with_head", eyes="closed") == []

    def test_nods_are_judged_by_pitch(self) -> None:
        made = samples(
            head_pitch_deg=lambda t: 13 * float(np.sin(np.pi * t)),
            eye_pitch_deg=lambda t: -13 * float(np.sin(np.pi * t)),
        )
        assert len(found("nods-together", made, "eyes_not_with_head")) == 1
