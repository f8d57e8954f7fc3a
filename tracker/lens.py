"""How wide a camera sees, how that is known, and how well."""

from __future__ import annotations

from dataclasses import dataclass
from math import atan, degrees, hypot, isfinite, radians, tan
from typing import Any

from tracker.errors import InputError

#: Vertical field of view taken where none is known. Laptop webcams lie at
#: about 40-60 degrees (common practice); a wrong value moves angles by about
#: 5 % at the ends of that range and distances in proportion.
DEFAULT_VERTICAL_FOV_DEG = 52.0
#: Where a field of view may come from: taken for granted, typed, a sheet of ISO 216 A4
#: paper, or a card of ISO/IEC 7810 ID-1.
SOURCES = ("default", "stated", "paper", "card")
#: The value taken for granted misses the ends of 40 to 60 degrees, where laptop webcams
#: lie (common practice), by so much.
DEFAULT_ERROR_DEG = 12.0
#: Makers round, and some state the lens alone, not the picture (common practice).
STATED_ERROR_DEG = 3.0
#: Vertical fields that a webcam can have, in degrees (common practice).
LEAST_DEG, MOST_DEG = 20.0, 110.0
#: Pictures whose shapes differ by less are of one kind (this project's own choice).
_SAME_SHAPE = 0.02


@dataclass(frozen=True, slots=True)
class Lens:
    """A camera's vertical field of view.

    Attributes
    ----------
    vertical_fov_deg
        The angle from the picture's upper to its lower edge.
    source
        One of :data:`SOURCES`.
    error_deg
        Half width of the range in which it lies in 19 of 20 cases; None where unknown.
    aspect
        Width by height of the pictures that it holds for: a camera that gives pictures
        of another shape cuts off other parts of them. None for any.
    """

    vertical_fov_deg: float
    source: str
    error_deg: float | None
    aspect: float | None = None

    def fits(self, width_px: int, height_px: int) -> bool:
        """Whether it holds for pictures of a size."""
        if self.aspect is None:
            return True
        return abs(width_px / max(height_px, 1) / self.aspect - 1.0) < _SAME_SHAPE

    @property
    def known_deg(self) -> float | None:
        """The field of view where it is known, None where it is only taken for granted."""
        return None if self.source == "default" else self.vertical_fov_deg

    def found(self) -> dict[str, Any]:
        """What a summary says of it under ``setup.camera``."""
        return {
            "vertical_fov_deg": round(self.vertical_fov_deg, 2),
            "vertical_fov_source": self.source,
            "vertical_fov_error_deg": None if self.error_deg is None else round(self.error_deg, 2),
        }


DEFAULT_LENS = Lens(DEFAULT_VERTICAL_FOV_DEG, "default", DEFAULT_ERROR_DEG)


def lens_of(vertical_fov_deg: float | None) -> Lens:
    """A field of view that came with a clip, or the usual one without."""
    if vertical_fov_deg is None:
        return DEFAULT_LENS
    return Lens(vertical_fov_deg, "stated", None)


def stated_lens(fov_deg: float, width_px: int, height_px: int, *, diagonal: bool) -> Lens:
    """The lens of a field of view that somebody has typed.

    Parameters
    ----------
    fov_deg
        The angle, from the upper edge to the lower or from corner to corner.
    width_px, height_px
        The picture's size.
    diagonal
        Whether it is the angle from corner to corner: that of a pinhole camera with
        square pixels, ``tan(v / 2) / tan(d / 2) = height / diagonal``.

    Raises
    ------
    InputError
        If no webcam sees so wide or so narrow.
    """
    vertical_deg = fov_deg
    if diagonal and isfinite(fov_deg) and 0 < fov_deg < 180:
        share = height_px / hypot(width_px, height_px)
        vertical_deg = degrees(2 * atan(tan(radians(fov_deg / 2)) * share))
    if not LEAST_DEG <= vertical_deg <= MOST_DEG:
        raise InputError(
            f"a camera that sees {fov_deg:g} degrees can't be used; look the figure up again"
        )
    return Lens(vertical_deg, "stated", STATED_ERROR_DEG, width_px / max(height_px, 1))


def vertical_fov_deg(focal_px: float, height_px: int) -> float:
    """Vertical field of view of a focal length in pixels."""
    return degrees(2 * atan(0.5 * height_px / focal_px))
