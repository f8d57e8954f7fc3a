"""How well a length in millimetres is known that was measured by the size of a face."""

from __future__ import annotations

from collections.abc import Mapping
from math import hypot, radians, tan
from typing import Any

from tracker.lens import DEFAULT_ERROR_DEG, DEFAULT_LENS, LEAST_DEG, Lens

#: Two standard deviations of the distance between the pupils of adults, as a share: 3.83 of
#: 63.36 mm (Dodgson 2004, Proc SPIE 5291:36; 3,976 people). A face of one size for all stands in.
FACE_SHARE = 2 * 3.83 / 63.36


def distance_shares(lens: Lens) -> tuple[float, float]:
    """By what shares a distance may be nearer, and farther, for the error of the lens.

    A pinhole: the same face is so much farther in a camera that sees less wide. The error of a
    lens of which none is known is taken as that of the usual one.
    """
    error = DEFAULT_ERROR_DEG if lens.error_deg is None else lens.error_deg
    fov = lens.vertical_fov_deg
    taken = tan(radians(fov / 2))
    wide = tan(radians(min(fov + error, 170.0) / 2))
    narrow = tan(radians(max(fov - error, LEAST_DEG) / 2))
    return 1 - taken / wide, taken / narrow - 1


def length_share(lens: Lens, *, depth: bool) -> float:
    """Standard uncertainty of a length, as a share of it.

    Parameters
    ----------
    lens
        The camera's.
    depth
        Whether it goes towards the camera. Across the line of sight a length is to the face's as
        their pictures are, whatever the lens; along it, it grows with the distance itself.
    """
    # Both are two standard deviations; of the lens the larger side.
    return 0.5 * hypot(FACE_SHARE, max(distance_shares(lens)) if depth else 0.0)


def lens_of_setup(setup: Mapping[str, Any]) -> Lens:
    """The lens that a set-up was made with; the usual one where it says none."""
    camera = setup.get("camera")
    fov = camera.get("vertical_fov_deg") if isinstance(camera, Mapping) else None
    if not isinstance(camera, Mapping) or not isinstance(fov, int | float):
        return DEFAULT_LENS
    error = camera.get("vertical_fov_error_deg")
    source = str(camera.get("vertical_fov_source") or DEFAULT_LENS.source)
    return Lens(float(fov), source, float(error) if isinstance(error, int | float) else None)
