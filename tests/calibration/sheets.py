"""Pictures of a sheet or a card before a room, rendered with an exact camera."""

from __future__ import annotations

from dataclasses import dataclass

import cv2
import numpy as np
from numpy.typing import NDArray

from tracker.head.perspective import rotation_of_vector

FINE = 2


@dataclass(frozen=True)
class View:
    """A rendered picture and the true corners of the sheet in it."""

    image: NDArray[np.uint8]
    corners_px: NDArray[np.float64]


def focal_px(fov_deg: float, height_px: int) -> float:
    return 0.5 * height_px / np.tan(np.radians(fov_deg / 2))


def room(rng: np.random.Generator, width: int, height: int) -> NDArray[np.uint8]:
    """Clutter: boxes, discs and lines of all shades."""
    image = np.full((height, width, 3), rng.uniform(40, 150), np.float32)
    ramp = np.linspace(-25, 25, width, dtype=np.float32)
    image += ramp[None, :, None] * rng.choice([-1, 1])
    for _ in range(25):
        a = rng.uniform([0, 0], [width, height]).astype(int)
        b = a + rng.uniform(-0.25, 0.25, 2) * width
        shade = tuple(float(v) for v in rng.uniform(10, 190) + rng.uniform(-15, 15, 3))
        kind = rng.integers(3)
        if kind == 0:
            cv2.rectangle(image, a.tolist(), b.astype(int).tolist(), shade, -1)
        elif kind == 1:
            cv2.circle(image, a.tolist(), int(rng.uniform(0.02, 0.1) * width), shade, -1)
        else:
            cv2.line(image, a.tolist(), b.astype(int).tolist(), shade, int(rng.integers(1, 9)))
    return np.clip(image, 0, 255).astype(np.uint8)


def render(
    rng: np.random.Generator,
    fov_deg: float,
    *,
    turn_rad: tuple[float, float, float],
    away_mm: float,
    sides_mm: tuple[float, float] = (297.0, 210.0),
    upright: bool = True,
    size: tuple[int, int] = (640, 480),
    shade: float = 215.0,
    blur_px: float = 0.6,
    noise: float = 3.0,
    beside: tuple[float, float] = (0.0, 0.0),
    fingers: bool = True,
    bend: float = 0.0,
    off_axis: float = 0.0,
) -> View:
    """One view: a shaded sheet held by two fingers before clutter, blurred, with noise.

    ``bend`` is the first radial coefficient of the lens, ``off_axis`` how far its axis lies
    beside the middle as a share of the width.
    """
    width, height = size
    focal = focal_px(fov_deg, height)
    across, down = sides_mm[::-1] if upright else sides_mm
    x, y = across / 2, down / 2
    body = np.array([[-x, -y, 0], [x, -y, 0], [x, y, 0], [-x, y, 0]])
    place = np.array([beside[0], beside[1], away_mm])

    def seen(points: NDArray[np.float64]) -> NDArray[np.float64]:
        p = points @ rotation_of_vector(np.array(turn_rad)).T + place
        flat = p[:, :2] / p[:, 2:]
        flat = flat * (1 + bend * (flat**2).sum(axis=1, keepdims=True))
        middle = np.array([(width - 1) / 2 + off_axis * width, (height - 1) / 2])
        return np.asarray(focal * flat + middle)

    steps = np.linspace(0, 1, 40)[:-1, None]
    rim = np.concatenate(
        [a + steps * (b - a) for a, b in zip(body, np.roll(body, -1, 0), strict=True)]
    )
    outline = (seen(rim) + 0.5) * FINE - 0.5
    fine = cv2.resize(room(rng, width, height), (width * FINE, height * FINE))
    light = float(rng.uniform(0.85, 1.0)) * shade
    cv2.fillPoly(fine, [np.round(outline * 16).astype(np.int32)], (light,) * 3, cv2.LINE_8, 4)
    if fingers:
        for k in (1, 3):
            tip = 0.5 * (outline[39 * k] + outline[(39 * k + 20) % len(outline)])
            radius = 9.0 * focal / away_mm * FINE
            cv2.circle(fine, np.round(tip).astype(int).tolist(), int(radius), (95, 115, 150), -1)
    image = cv2.resize(fine, size, interpolation=cv2.INTER_AREA).astype(np.float32)
    image = cv2.GaussianBlur(image, (0, 0), blur_px) + noise * rng.standard_normal(
        image.shape, np.float32
    )
    return View(np.clip(image, 0, 255).astype(np.uint8), seen(body))


def held(rng: np.random.Generator, fov_deg: float, count: int = 6, **more: object) -> list[View]:
    """Views as somebody holds a sheet: tilted by 25 to 40 degrees, to another side each time."""
    sides = more.get("sides_mm", (297.0, 210.0))
    long_mm = float(sides[0])  # type: ignore[index]
    # So near that the longer side fills half to two thirds of the picture's height.
    share = rng.uniform(0.5, 0.65, count)
    out = []
    for k in range(count):
        way = 2 * np.pi * (k + rng.uniform(-0.2, 0.2)) / count
        tilt = np.radians(rng.uniform(25, 40))
        turn = (tilt * np.cos(way), tilt * np.sin(way), float(rng.uniform(-0.15, 0.15)))
        away = long_mm / (2 * np.tan(np.radians(fov_deg / 2))) / share[k]
        beside = tuple(float(v) for v in rng.uniform(-0.06, 0.06, 2) * away)
        out.append(render(rng, fov_deg, turn_rad=turn, away_mm=away, beside=beside, **more))  # type: ignore[arg-type]
    return out
