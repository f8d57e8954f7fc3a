"""The score of a scenario: what head, eyes and lids do at any time, and what that amounts to.

Everything is a function of time, so truth is exact at any moment and motion
blur can be drawn from moments between the frames.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field
from itertools import pairwise
from typing import Any

import numpy as np

from sample_clips.angles import Array, direction, turned, yaw_pitch
from sample_clips.bodies import Arm
from sample_clips.body_score import BODY_KINDS, arms_at
from sample_clips.face_score import blinks_of, jaw_at, shut_at, sunk
from sample_clips.head_score import (
    chin_deg,
    helped_deg,
    knots_of,
    share_turned,
    soft_ends,
    through,
    unrest,
    wandering,
)
from sample_clips.heads import Attitude, Head
from sample_clips.scenario import Scenario
from sample_clips.target_score import (
    ROW_S,
    SWEEPS,
    TARGET_KINDS,
    eyes_wait_s,
    followed_rows,
    head_share,
    head_to_marks,
    landings_s,
    smooth,
    stepped,
    target_angles,
)
from sample_clips.trunk_score import TRUNK_KINDS, bowed_deg, trunk_mm

#: A saccade starts this long after its target has moved (100-300 ms is usual).
LATENCY_S = 0.19
LOOKS_DEG = ((12, 0), (-12, 0), (0, 8), (0, -11), (10, -9), (-10, -9), (10, 7), (-10, 7))
LOOK_S, REST_S = 0.9, 2.0
#: Still time at both ends of an exercise.
LEAD_S, TAIL_S = 0.5, 0.5
#: Half the distance between the two targets of the jumps.
JUMP_DEG = 8.0
#: How long a fingertip takes to the place where it is held.
COME_NEAR_S = 1.5


def saccade(time_s: float, start_s: float, size_deg: float) -> float:
    """Progress 0 to 1 of a saccade; lasts 2.2 ms a degree + 21 ms (Carpenter 1988)."""
    return smooth((time_s - start_s) / ((2.2 * abs(size_deg) + 21.0) / 1000.0))


@dataclass
class Score:
    """A scenario worked out for one head."""

    scenario: Scenario
    head: Head
    steps: list[dict[str, Any]] = field(default_factory=list)
    start_s: float = 0.0
    end_s: float = 0.0
    turn_s: float = -1e9
    nod_s: float = -1e9
    jumps: list[tuple[float, int]] = field(default_factory=list)
    cycles: list[tuple[float, float, float]] = field(default_factory=list)
    blinks: list[tuple[float, float]] = field(default_factory=list)

    def __post_init__(self) -> None:
        rng = np.random.default_rng(self.scenario.seed)
        self._waves = rng.uniform(0.0, 6.28, 6)
        self._lay_out(rng)
        self.blinks = blinks_of(self.scenario, self.steps, (self.start_s, self.end_s), rng)
        self._knots = knots_of(self.cycles)
        self._lag = self._lag_of_the_eyes()

    # -- laying out the steps ------------------------------------------------

    def _marked(self, side: int) -> Array:
        """One of two marks on the wall: to the right or above (1), or the other way (-1)."""
        wall = self.scenario.wall
        assert wall is not None
        reach = side * wall.distance_mm * np.tan(np.radians(self._reach_deg))
        aside, up = (0.0, reach) if self.scenario.movement.vertical else (reach, 0.0)
        return np.array([aside, wall.height_mm + up, wall.distance_mm])

    def _aim(self, yaw_deg: float, pitch_deg: float) -> Array:
        """Point on the target's plane in a direction from the centre target's."""
        rise = np.degrees(
            np.arctan2(self.scenario.target_height_mm, self.scenario.target_distance_mm)
        )
        d = direction(yaw_deg, float(rise) + pitch_deg)
        return np.asarray(d / d[2] * self.scenario.target_distance_mm)

    @property
    def centre(self) -> Array:
        """The centre target."""
        return self._aim(0.0, 0.0)

    def _step(self, name: str, lasts_s: float, target: Array | None, **more: Any) -> None:
        start = self.end_s
        self.end_s = round(start + lasts_s, 6)
        entry: dict[str, Any] = {"from_s": start, "to_s": self.end_s, "step": name}
        if target is not None:
            entry["target_mm"] = [round(float(v), 2) for v in target]
        self.steps.append(entry | more)

    def _lay_out(self, rng: np.random.Generator) -> None:
        scenario = self.scenario
        if scenario.setup:
            self._step("rest", REST_S, self.centre)
            for yaw, pitch in LOOKS_DEG:
                self._step("look", LOOK_S, self._aim(yaw, pitch))
            if scenario.wall is not None and scenario.wall.learnt:
                for side in (1, -1):
                    self._step("look", LOOK_S, self._marked(side))
            self.turn_s = self.end_s
            self._step("turn_slowly", scenario.setup_turn_s, self.centre)
            self.nod_s = self.end_s
            self._step("nod_slowly", scenario.setup_nod_s, self.centre)
        self.start_s = self.end_s
        move = scenario.movement
        now = self.start_s + LEAD_S
        # A target that moves is led by an even beat.
        uneven = 0.0 if move.kind in TARGET_KINDS else move.uneven
        for _ in range(move.repetitions):
            lasts = 120.0 / move.tempo_bpm * (1 + uneven * rng.uniform(-1, 1))
            size = move.amplitude_deg * (1 + uneven * rng.uniform(-1, 1))
            for span in scenario.away:
                # Who leaves the picture stops, and goes on when back.
                if self.start_s + span.at_s < now + lasts + 0.3:
                    now = max(now, self.start_s + span.at_s + span.lasts_s + 0.3)
            self.cycles.append((now, lasts, size))
            now += lasts
        track = None
        if move.kind in ("jumps", "eyes_then_head"):
            self.jumps = [
                (start + self._latency_s + half * lasts / 2, 1 - 2 * half)
                for start, lasts, _ in self.cycles
                for half in (0, 1)
            ]
            track = self._jumping_target()
        elif move.kind in SWEEPS:
            track = self._sweeping_target(now + TAIL_S)
        self._step(
            "exercise",
            now - self.start_s + TAIL_S,
            None if track else self._still_target,
            exercise=scenario.exercise,
            entry_id="e1",
            tempo_bpm=move.tempo_bpm,
            eyes=scenario.eyes,
            posture=scenario.posture,
            surface=scenario.surface,
            **({"target_track": track} if track else {}),
            **self._wall_of_step(),
        )

    @property
    def _still_target(self) -> Array:
        """The target of an exercise in which it stays: on the screen, or on the wall."""
        wall = self.scenario.wall
        return self.centre if wall is None else np.array([0.0, wall.height_mm, wall.distance_mm])

    def _wall_of_step(self) -> dict[str, Any]:
        """The wall as it would have been typed: lengths from the eyes, and from the camera."""
        wall = self.scenario.wall
        if wall is None:
            return {}
        camera = self.scenario.camera.position_mm
        two = self.scenario.movement.kind in ("jumps", "eyes_then_head")
        typed = {
            "distance_mm": wall.distance_mm,
            "above_mm": wall.height_mm - camera[1],
            "right_mm": 0.0 - camera[0],
        }
        if two:
            apart = 2 * wall.distance_mm * np.tan(np.radians(self._reach_deg))
            typed["spacing_mm"] = round(float(apart), 1)
        return {"wall": typed}

    def _jumping_target(self) -> list[list[float]]:
        rows, last = [], self._still_target
        for start, side in self.jumps:
            place = self._jumped_to(side)
            shown = start - self._latency_s
            rows += [[shown, *last], [shown + 0.001, *place]]
            last = place
        return [[round(float(v), 4) for v in row] for row in rows]

    def _jumped_to(self, side: int) -> Array:
        """One of the two targets of the jumps: right or up (1), left or down (-1)."""
        if self.scenario.wall is not None:
            return self._marked(side)
        reach = self._reach_deg
        aside, up = (0.0, reach) if self.scenario.movement.vertical else (reach, 0.0)
        return self._aim(side * aside, side * up)

    @property
    def _latency_s(self) -> float:
        """How long after a target has changed its place the eyes go."""
        return LATENCY_S + eyes_wait_s(self.scenario.movement)

    @property
    def _reach_deg(self) -> float:
        """From the middle to each of two targets."""
        move = self.scenario.movement
        marks = move.kind == "eyes_then_head" or self.scenario.wall is not None
        return move.target_deg if marks else JUMP_DEG

    def _swept(self, t: float) -> Array:
        """Where a target is that goes to and fro."""
        move = self.scenario.movement
        share = through(self._knots, t) / max(move.amplitude_deg, 1e-9)
        return self._aim(*target_angles(move, share))

    def catch_up_jumps(self) -> list[tuple[float, float]]:
        """Times and sizes in degrees of the jumps of eyes that follow in steps."""
        move, first_s = self.scenario.movement, self.cycles[0][0]
        found = []
        for at_s in landings_s(move, first_s, self.end_s):
            before, after = (yaw_pitch(self._swept(t))[0] for t in (at_s - move.steps_s, at_s))
            found.append((at_s, after - before))
        return found

    def _sweeping_target(self, end_s: float) -> list[list[float]]:
        self._knots = knots_of(self.cycles)
        times = np.arange(self.start_s, end_s + ROW_S, ROW_S)
        return followed_rows([(float(t), self._swept(float(t))) for t in times])

    # -- what happens at a time ----------------------------------------------

    def head_angles(self, t: float) -> tuple[float, float, float]:
        """Yaw, pitch and roll in degrees; nobody's head is ever quite still."""
        yaw, pitch, roll = unrest(t, self._waves)
        turn_s, nod_s = self.scenario.setup_turn_s, self.scenario.setup_nod_s
        for start, lasts, kind in ((self.turn_s, turn_s, 0), (self.nod_s, nod_s, 1)):
            u = (t - start) / lasts
            if 0 <= u <= 1:
                wave = np.sin(2 * np.pi * u) * smooth(5 * u) * smooth(5 * (1 - u))
                turn, nod = self.scenario.setup_turn_deg, self.scenario.setup_nod_deg
                yaw += wave * (0.7 if kind else turn)
                pitch += wave * (nod if kind else 1.0)
        more = self._exercise_angles(t)
        return float(yaw + more[0]), float(pitch + more[1]), float(roll + more[2])

    def _exercise_angles(self, t: float) -> tuple[float, float, float]:
        kind = self.scenario.movement.kind
        if kind in ("turns", "nods"):
            wave = through(self._knots, t)
            side = 0.05 * wave
            chin = self._chin_deg(t)
            return (wave, side + chin, 0.0) if kind == "turns" else (side, wave + chin, 0.0)
        if kind == "tilts":
            wave = through(self._knots, t)
            chin = self._chin_deg(t) - 0.05 * abs(wave)
            turn = share_turned(t, self.scenario.movement, self.cycles)
            # Nobody tilts without turning a little, nor the other way round.
            return wave * (0.06 + 0.94 * turn), chin, wave * (1.0 - 0.94 * turn)
        if kind in SWEEPS:
            move = self.scenario.movement
            share = through(self._knots, t) / max(move.amplitude_deg, 1e-9)
            return (*head_share(move, share), 0.0)
        if kind == "eyes_then_head":
            return head_to_marks(self.scenario.movement, self.jumps, t), 0.0, 0.0
        if kind == "wander":
            size = self.scenario.movement.amplitude_deg * soft_ends(t, self.cycles)
            return wandering(t - self.start_s, size)
        helped = helped_deg(t, self.scenario.head_helps, self.jumps)
        chin = self._chin_deg(t) - bowed_deg(t, self.scenario.movement, self.cycles)
        if self.scenario.movement.vertical:
            return 0.0, helped + chin, 0.0
        return helped, chin, 0.0

    def _chin_deg(self, t: float) -> float:
        return chin_deg(t, self.scenario.chin_drops, self.start_s)

    def looked_at(self, t: float) -> Array:
        """The point in space that both eyes look at."""
        place = self.centre
        for step in self.steps:
            if step["step"] == "look" and t >= step["from_s"] + LATENCY_S:
                progress = saccade(t, step["from_s"] + LATENCY_S, 14.0)
                place = place + progress * (np.array(step["target_mm"]) - place)
        if self.scenario.setup and t >= self.turn_s:
            place = place + saccade(t, self.turn_s + 0.1, 12.0) * (self.centre - place)
        if self.scenario.wall is not None and t >= self.start_s:
            # From the screen to the wall, half a second before it begins.
            place = place + saccade(t, self.start_s, 8.0) * (self._still_target - place)
        move = self.scenario.movement
        for number, (start, side) in enumerate(self.jumps):
            if t >= start and number not in move.skipped:
                goal = self._jumped_to(side)
                if number in move.short:
                    goal = place + move.short_share * (goal - place)
                place = place + saccade(t, start, 2 * self._reach_deg) * (goal - place)
        if self.scenario.movement.kind in SWEEPS and t >= self.start_s:
            place = self._swept(stepped(self.scenario.movement, t, self.cycles[0][0]))
        if self.scenario.movement.kind in ("near_far", "near_hold") and t >= self.start_s:
            place = self._at_distance(self._distance_mm(t))
        for glance in self.scenario.glances:
            start = self.start_s + glance.at_s
            out = saccade(t, start, 10.0) - saccade(t, start + glance.lasts_s, 10.0)
            place = place + out * (self._aim(glance.yaw_deg, glance.pitch_deg) - place)
        return place

    def _distance_mm(self, t: float) -> float:
        """How far from the eyes a target is that comes near, and goes away again or stays."""
        move = self.scenario.movement
        if move.kind == "near_hold":
            come = smooth((t - self.start_s) / COME_NEAR_S)
            return self.scenario.target_distance_mm * (1 - come) + move.near_mm * come
        # From its place at the start it first goes to the far end.
        out = smooth((t - self.start_s) / LEAD_S)
        there = self.scenario.target_distance_mm * (1 - out) + move.far_mm * out
        for start, lasts, _ in self.cycles:
            u = min(max((t - start) / lasts, 0.0), 1.0)
            there += (move.near_mm - move.far_mm) * (0.5 - 0.5 * np.cos(2 * np.pi * u))
        return float(there)

    def _at_distance(self, distance_mm: float) -> Array:
        """Point on the line from the eyes at rest to the centre target."""
        return np.asarray(self.centre * distance_mm / float(np.linalg.norm(self.centre)))

    def _lag_of_the_eyes(self) -> Callable[[float], tuple[float, float]]:
        """Gaze error in yaw and pitch of eyes that turn back too little and catch up by jumps."""
        gain = self.scenario.counter_turn
        if gain >= 0.999:
            return lambda _: (0.0, 0.0)
        times = np.arange(0.0, self.end_s + 0.05, 0.004)
        angles = np.array([self.head_angles(float(t))[:2] for t in times])
        error, rows, jump, since = np.zeros(2), [], np.zeros(2), 1.0
        for before, after in pairwise(angles):
            error = error + (1 - gain) * (after - before) + jump
            since += 0.004
            if since > 0.25 and np.hypot(*error) > 2.0:
                # Spread over 40 ms.
                jump, since = -error / 10, 0.0
            elif since >= 0.04:
                jump = np.zeros(2)
            rows.append(error)
        table = np.array(rows)
        return lambda t: (
            float(np.interp(t, times[1:], table[:, 0])),
            float(np.interp(t, times[1:], table[:, 1])),
        )

    def shift(self, t: float) -> Array:
        """Sway of the neck point in mm, and the way out of the picture and back."""
        w = self._waves
        sway = np.array(
            [1.5 * np.sin(0.6 * t + w[4]), 0.4 * np.sin(0.5 * t), 2.0 * np.sin(0.4 * t + w[5])]
        )
        for span in self.scenario.away:
            start = self.start_s + span.at_s
            out = smooth((t - start) / 0.6) - smooth((t - start - span.lasts_s + 0.6) / 0.6)
            sway = sway + out * np.array([620.0, 0.0, 0.0])
        return sway + self._moved(t)

    def _moved(self, t: float) -> Array:
        """From place to place as the exercise asks, and the sway that goes on besides."""
        move, moved = self.scenario.movement, np.zeros(3)
        if move.sway_mm and self.start_s < t < self.end_s:
            w, soft = self._waves, smooth((t - self.start_s) / 0.5) * smooth((self.end_s - t) / 0.5)
            across = 0.7 * np.sin(1.9 * t + w[0]) + 0.3 * np.sin(0.8 * t + w[1])
            along = 0.6 * np.sin(1.3 * t + w[2]) + 0.4 * np.sin(2.6 * t + w[3])
            moved = soft * move.sway_mm * np.array([across, 0.0, along])
        if move.kind in TRUNK_KINDS:
            moved += trunk_mm(t, move, self.cycles)
        elif move.kind.startswith("sway_"):
            axis = 0 if move.kind == "sway_sideways" else 2
            # The knots are in degrees of the amplitude; here they stand for millimetres.
            share = through(self._knots, t) / max(move.amplitude_deg, 1e-9)
            moved[axis] += move.amplitude_mm * share
        return moved

    def attitude(self, t: float) -> Attitude:
        """Everything the head does at a time."""
        yaw, pitch, roll = self.head_angles(t)
        shift = self.shift(t)
        rotation = turned(yaw, pitch, roll)
        eyes = (self.head.eyes_mm - self.head.neck_mm) @ rotation.T + self.head.neck_mm + shift
        point = self.looked_at(t)
        if self.scenario.eyes_with_head and t >= self.start_s:
            point = eyes.mean(axis=0) + rotation @ self.centre
        off_yaw, off_pitch = self._lag(t)
        if off_yaw or off_pitch:
            away = point - eyes.mean(axis=0)
            a, b = yaw_pitch(away)
            point = eyes.mean(axis=0) + np.linalg.norm(away) * direction(a + off_yaw, b + off_pitch)
        look = point - eyes
        look = (look / np.linalg.norm(look, axis=1, keepdims=True)) @ rotation
        return Attitude(
            yaw,
            pitch,
            roll,
            shift,
            look,
            shut=shut_at(t, self.scenario, self.blinks, (self.start_s, self.end_s)),
            low=self.scenario.low_lids
            + self.head.spec.hooded
            + sunk(t, self.scenario, self.start_s),
            jaw=jaw_at(t, self.scenario, self.start_s),
            glasses=self.scenario.glasses,
            arms=self._arms(t),
        )

    def _arms(self, t: float) -> tuple[Arm, Arm] | None:
        move = self.scenario.movement
        if move.kind not in BODY_KINDS:
            return None
        return arms_at(t, move, self.cycles, self.start_s)
