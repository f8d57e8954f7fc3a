"""The loops over patches and their pixels, compiled: every frame runs them several times."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from tracker.compiled import compiled, solve_positive
from tracker.head.patch_looks import compare
from tracker.head.perspective import Array, move, pose_rows, turn

#: A patch whose picture has less contrast than this (grey levels, standard
#: deviation) holds noise, not structure (this project's own choice).
MIN_CONTRAST = 1.2
#: A patch seen more edge-on than this (cosine of the angle to the line of
#: sight) is left out: about 75 degrees (this project's own choice).
MIN_COSINE = 0.26
#: A patch with less weight than this is not in use (this project's own choice).
IN_USE = 0.05
#: Fewer patches in use than this can't carry six degrees of freedom (twice six are this project's
#: own choice).
MIN_USED = 12
#: A step that turns less than a hundredth of a degree and moves less than a
#: tenth of a millimetre is the last: a webcam's noise is larger (this project's own choice).
SETTLED_RAD, SETTLED_MM = 2e-4, 0.1
#: How much farther than asked each step goes. Gauss-Newton's own steps shrink to a fifth or
#: a third of the one before, all on one side; over-relaxed they settle in fewer, and nearer
#: to where an endless run ends (this project's own choice).
LEAP = 1.25
#: The first steps, of degrees, need only some of the patches: one of so many, in so many steps
#: (this project's own choice; with it the fit takes half the time).
FEW_OF, FEW_ROUNDS = 3, 2

#: What :func:`settle` takes of a template.
Patches = tuple[Array, Array, Array, Array, Array, Array, Array]

#: Below this a patch is seen edge-on and its share of the tangent plane has no inverse (arithmetic:
#: nothing that small is in use, see ``MIN_COSINE``).
_EDGE_ON = 1e-3


@compiled
def moves(
    centres_mm: Array,
    normals: Array,
    tangents_mm: Array,
    rest_mm: Array,
    rotation: Array,
    position_mm: Array,
    focal_px: float,
) -> tuple[Array, Array, Array, Array]:
    """How far each patch moves, in pixels of the rest picture.

    The derivative is that of :func:`tracker.head.perspective.pose_rows`, carried over
    to the rest picture by the patch's tangent plane.

    Returns
    -------
    by_pose
        ``(k, 2, 6)`` for each radian and millimetre of the pose.
    by_depth
        ``(k, 2)`` for each millimetre along the ray at rest.
    to_here
        ``(k, 2, 2)`` pixels of this picture for each pixel of the rest picture.
    cosine
        ``(k,)`` of the angle between the patch's normal and the line of sight.
    """
    count = len(centres_mm)
    by_pose = np.empty((count, 2, 6))
    by_depth = np.empty((count, 2))
    to_here, cosine = np.empty((count, 2, 2)), np.empty(count)
    turned, seen, normal = np.empty(3), np.empty(3), np.empty(3)
    here, place = np.empty((2, 6)), np.empty((2, 3))
    for k in range(count):
        turn(rotation, centres_mm[k], turned)
        turn(rotation, normals[k], normal)
        facing, square = 0.0, 0.0
        for i in range(3):
            seen[i] = turned[i] + position_mm[i]
            facing -= normal[i] * seen[i]
            square += seen[i] * seen[i]
        cosine[k] = facing / np.sqrt(square)
        pose_rows(turned, seen, focal_px, here)
        _in_own_axes(here, rotation, place)
        # Pixels here for a pixel at rest, whose inverse brings shifts back to rest.
        a = _slope(place, tangents_mm, k, 0, 0)
        b = _slope(place, tangents_mm, k, 0, 1)
        c = _slope(place, tangents_mm, k, 1, 0)
        d = _slope(place, tangents_mm, k, 1, 1)
        to_here[k, 0, 0], to_here[k, 0, 1] = a, b
        to_here[k, 1, 0], to_here[k, 1, 1] = c, d
        area = a * d - b * c
        # A patch seen exactly edge-on gets a huge shift, and no weight.
        if abs(area) < _EDGE_ON:
            area = _EDGE_ON
        for j in range(6):
            by_pose[k, 0, j] = (d * here[0, j] - b * here[1, j]) / area
            by_pose[k, 1, j] = (a * here[1, j] - c * here[0, j]) / area
        x, y = _along_ray(place, centres_mm, k, rest_mm)
        by_depth[k, 0] = (d * x - b * y) / area
        by_depth[k, 1] = (a * y - c * x) / area
    return by_pose, by_depth, to_here, cosine


@compiled
def _in_own_axes(here: Array, rotation: Array, place: Array) -> None:
    """Fill in ``(2, 3)`` pixels for a move of the body point in its own axes."""
    for i in range(2):
        for j in range(3):
            place[i, j] = (
                here[i, 3] * rotation[0, j]
                + here[i, 4] * rotation[1, j]
                + here[i, 5] * rotation[2, j]
            )


@compiled
def _along_ray(place: Array, centres_mm: Array, k: int, rest_mm: Array) -> tuple[float, float]:
    """Pixels for a millimetre of depth along the ray at rest, sideways and upwards."""
    depth = centres_mm[k, 2] + rest_mm[2]
    x, y = 0.0, 0.0
    for j in range(3):
        ray = (centres_mm[k, j] + rest_mm[j]) / depth
        x += place[0, j] * ray
        y += place[1, j] * ray
    return x, y


@compiled
def _slope(place: Array, tangents_mm: Array, k: int, i: int, j: int) -> float:
    return float(
        place[i, 0] * tangents_mm[k, 0, j]
        + place[i, 1] * tangents_mm[k, 1, j]
        + place[i, 2] * tangents_mm[k, 2, j]
    )


@compiled
def normal_equations(
    weight: Array, structure: Array, by_pose: Array, pull: Array
) -> tuple[Array, Array]:
    """Left side ``(6, 6)`` and right side ``(6,)`` of the Gauss-Newton step of a pose."""
    normal = np.zeros((6, 6))
    right = np.zeros(6)
    for k in range(len(weight)):
        w = weight[k]
        if w == 0.0:
            continue
        for i in range(6):
            m0, m1 = by_pose[k, 0, i], by_pose[k, 1, i]
            s0 = w * (m0 * structure[k, 0, 0] + m1 * structure[k, 1, 0])
            s1 = w * (m0 * structure[k, 0, 1] + m1 * structure[k, 1, 1])
            right[i] += w * (m0 * pull[k, 0] + m1 * pull[k, 1])
            for j in range(i, 6):
                normal[i, j] += s0 * by_pose[k, 0, j] + s1 * by_pose[k, 1, j]
    for i in range(6):
        for j in range(i):
            normal[i, j] = normal[j, i]
    return normal, right


@compiled
def weights(cosine: Array, contrast: Array, misfit: Array) -> Array:
    """Weight ``(k,)`` of each patch: seen from the front, with structure, and alike (Tukey)."""
    count = len(misfit)
    out, known = np.zeros(count), np.empty(count)
    n = 0
    for k in range(count):
        if cosine[k] > MIN_COSINE and contrast[k] > MIN_CONTRAST:
            out[k] = cosine[k]
            known[n] = misfit[k]
            n += 1
    if n == 0:
        return out
    limit = 3.0 * max(_middle(known, n), 0.15)
    for k in range(count):
        alike = 1.0 - (misfit[k] / limit) ** 2
        out[k] *= alike * alike if alike > 0.0 else 0.0
    return out


@compiled
def _middle(values: Array, n: int) -> float:
    """Median of the first ``n`` values, which are sorted in place."""
    for i in range(1, n):
        value = values[i]
        j = i - 1
        while j >= 0 and values[j] > value:
            values[j + 1] = values[j]
            j -= 1
        values[j + 1] = value
    return float(0.5 * (values[(n - 1) // 2] + values[n // 2]))


@compiled
def _every(template: Patches, n: int) -> Patches:
    """Every ``n``-th patch of a template."""
    pixels, values, gradients, centres, normals, tangents, rest = template
    return (
        pixels[::n].copy(),
        values[::n].copy(),
        gradients[::n].copy(),
        centres[::n].copy(),
        normals[::n].copy(),
        tangents[::n].copy(),
        rest,
    )


@compiled
def _look(
    image: NDArray[np.float32], lens: Array, template: Patches, rotation: Array, position_mm: Array
) -> tuple[Array, Array, int, Array]:
    """Weights, misfits, the number of patches in use and the step that they ask for."""
    pixels, values, gradients, centres, normals, tangents, rest = template
    by_pose, _, to_here, cosine = moves(
        centres, normals, tangents, rest, rotation, position_mm, lens[0]
    )
    pull, structure, misfit, contrast = compare(
        image, pixels, values, gradients, to_here, rotation, position_mm, lens
    )
    weight = weights(cosine, contrast, misfit)
    used = 0
    for k in range(len(weight)):
        used += weight[k] > IN_USE
    normal, right = normal_equations(weight, structure, by_pose, pull)
    for i in range(6):
        normal[i, i] *= 1.0 + 1e-6
    return weight, misfit, used, LEAP * solve_positive(normal, right)


@compiled
def _is_finite(step: Array) -> bool:
    """Whether all of a step are numbers."""
    return bool(np.isfinite(step).all())


@compiled
def settle(
    image: NDArray[np.float32],
    lens: Array,
    template: Patches,
    rotation: Array,
    position_mm: Array,
    rounds: int,
) -> tuple[Array, Array, Array, Array]:
    """Gauss-Newton steps from a first pose until they no longer matter.

    Parameters
    ----------
    image, lens
        As for :func:`compare`.
    template
        Its pixels, values, gradients, centres, normals, tangents, rest position.
    rotation, position_mm
        The first pose.
    rounds
        Steps of all patches at most.

    Returns
    -------
    rotation, position_mm
        The pose found.
    weight, misfit
        ``(k,)`` of the patches before the last step, which no longer mattered; at the pose
        found where the rounds ran out before. No weight anywhere where too few could be used,
        or where a step is not a number: that is no fit.
    """
    few = _every(template, FEW_OF)
    for _ in range(FEW_ROUNDS):
        _, _, used, step = _look(image, lens, few, rotation, position_mm)
        if used < MIN_USED or not _is_finite(step):
            break
        rotation, position_mm, _, _ = move(rotation, position_mm, step)
    weight, misfit, used, step = _look(image, lens, template, rotation, position_mm)
    for _ in range(rounds):
        if used < MIN_USED or not _is_finite(step):
            break
        rotation, position_mm, most_rad, most_mm = move(rotation, position_mm, step)
        if most_rad < SETTLED_RAD and most_mm < SETTLED_MM:
            # The weights are those of a pose that can't be told from this one.
            return rotation, position_mm, weight, misfit
        weight, misfit, used, step = _look(image, lens, template, rotation, position_mm)
    if used < MIN_USED or not _is_finite(step):
        weight[:] = 0.0
    return rotation, position_mm, weight, misfit
