"""Rasteriser and shading: triangles to pixels, and the procedural look of skin, eyes and hair.

Compiled with numba. Colours are worked out for every pixel from where it lies
on the resting face, so that skin texture sticks to the skin.
"""

from __future__ import annotations

import numba
import numpy as np

SKIN, RIGHT_EYE, LEFT_EYE, FRAME = 0, 1, 2, 3
IRIS_RADIUS_MM = 5.85  # white-to-white 11.7 mm: Rufer 2005, Cornea 24:259
PUPIL_RADIUS_MM = 2.0
EYE_RADIUS_SQUARED = 144.0


@numba.njit(fastmath=True, cache=True)
def rasterise(
    points, triangles, rest, normals, material, focal, cx, cy, inverse, place, facing, kind
):
    """Fill the buffers with the nearest surface of each pixel (z-buffer, perspective-right)."""
    height, width = inverse.shape
    for t in range(triangles.shape[0]):
        a, b, c = triangles[t, 0], triangles[t, 1], triangles[t, 2]
        if points[a, 2] < 50 or points[b, 2] < 50 or points[c, 2] < 50:
            continue
        ax = points[a, 0] * focal / points[a, 2] + cx
        ay = points[a, 1] * focal / points[a, 2] + cy
        bx = points[b, 0] * focal / points[b, 2] + cx
        by = points[b, 1] * focal / points[b, 2] + cy
        gx = points[c, 0] * focal / points[c, 2] + cx
        gy = points[c, 1] * focal / points[c, 2] + cy
        area = (by - gy) * (ax - gx) + (gx - bx) * (ay - gy)
        if abs(area) < 1e-9:
            continue
        x0, x1 = (
            max(0, int(np.floor(min(ax, bx, gx)))),
            min(width - 1, int(np.ceil(max(ax, bx, gx)))),
        )
        y0 = max(0, int(np.floor(min(ay, by, gy))))
        y1 = min(height - 1, int(np.ceil(max(ay, by, gy))))
        ia, ib, ic = 1 / points[a, 2], 1 / points[b, 2], 1 / points[c, 2]
        for y in range(y0, y1 + 1):
            for x in range(x0, x1 + 1):
                wa = ((by - gy) * (x - gx) + (gx - bx) * (y - gy)) / area
                wb = ((gy - ay) * (x - gx) + (ax - gx) * (y - gy)) / area
                wc = 1 - wa - wb
                if wa < 0 or wb < 0 or wc < 0:
                    continue
                near = wa * ia + wb * ib + wc * ic
                if near > inverse[y, x]:
                    inverse[y, x] = near
                    pa, pb, pc = wa * ia / near, wb * ib / near, wc * ic / near
                    for k in range(3):
                        place[y, x, k] = pa * rest[a, k] + pb * rest[b, k] + pc * rest[c, k]
                        facing[y, x, k] = (
                            pa * normals[a, k] + pb * normals[b, k] + pc * normals[c, k]
                        )
                    kind[y, x] = material[a]


@numba.njit(fastmath=True, cache=True)
def value_noise(lattice, x, y, z):
    """Smooth noise between -0.5 and 0.5 from a lattice of 64^3 random numbers."""
    xi, yi, zi = int(np.floor(x)), int(np.floor(y)), int(np.floor(z))
    fx, fy, fz = x - xi, y - yi, z - zi
    fx = fx * fx * (3 - 2 * fx)
    fy = fy * fy * (3 - 2 * fy)
    fz = fz * fz * (3 - 2 * fz)
    total = 0.0
    for i in range(2):
        for j in range(2):
            for k in range(2):
                weight = (fx if i else 1 - fx) * (fy if j else 1 - fy) * (fz if k else 1 - fz)
                total += weight * lattice[(xi + i) & 63, (yi + j) & 63, (zi + k) & 63]
    return total - 0.5


@numba.njit(fastmath=True, cache=True)
def eye_colour(lattice, place, eye, look, viewer, iris):
    """Colour of a pixel of the eye: the ray from the camera meets a life-size ball."""
    dx, dy, dz = place[0] - viewer[0], place[1] - viewer[1], place[2] - viewer[2]
    length = np.sqrt(dx * dx + dy * dy + dz * dz)
    dx, dy, dz = dx / length, dy / length, dz / length
    ox, oy, oz = viewer[0] - eye[0], viewer[1] - eye[1], viewer[2] - eye[2]
    along = ox * dx + oy * dy + oz * dz
    under = along * along - (ox * ox + oy * oy + oz * oz - EYE_RADIUS_SQUARED)
    vein = 1 + 0.1 * value_noise(lattice, place[0] * 0.9, place[1] * 0.9, place[2] * 0.9)
    r, g, b = 235.0 * vein, 226.0 * vein, 218.0 * vein
    if under > 0:
        t = -along - np.sqrt(under)
        hx, hy, hz = (ox + t * dx) / 12, (oy + t * dy) / 12, (oz + t * dz) / 12
        cosine = hx * look[0] + hy * look[1] + hz * look[2]
        if cosine > 0:
            radius = 12 * np.sqrt(max(0.0, 1 - cosine * cosine))
            if radius < IRIS_RADIUS_MM:
                edge = min(1.0, (IRIS_RADIUS_MM - radius) / 0.6)
                grain = 0.85 + 0.4 * value_noise(lattice, hx * 30, hy * 30, hz * 30)
                ir, ig, ib = iris[0] * grain, iris[1] * grain, iris[2] * grain
                if radius < PUPIL_RADIUS_MM:
                    ir, ig, ib = 12.0, 12.0, 12.0
                r, g, b = r + edge * (ir - r), g + edge * (ig - g), b + edge * (ib - b)
    return r, g, b


@numba.njit(fastmath=True, cache=True)
def skin_colour(lattice, p, skin, hair, balls, ball, eyes, mouth, shirt):
    """Colour of a pixel of head or clothes from its place on the resting face."""
    p0, p1, p2 = p[0], p[1], p[2]
    if p1 < -165:
        k = 1 + 0.12 * value_noise(lattice, p0 * 0.5, p1 * 0.5, p2 * 0.5)
        return shirt[0] * k, shirt[1] * k, shirt[2] * k
    line = 66.0 - 0.010 * p0 * p0 + 6 * value_noise(lattice, p0 * 0.1, p1 * 0.02, p2 * 0.02)
    ear = abs(p0) > 66 and -52 < p1 < 20 and p2 > -112
    if p1 > line or (p2 < -78 + 0.25 * p1 and p1 > -80 and not ear):
        k = 1 + 0.6 * value_noise(lattice, p0 * 0.7, p1 * 0.12, p2 * 0.7)
        return hair[0] * k, hair[1] * k, hair[2] * k
    broad = value_noise(lattice, p0 * 0.06, p1 * 0.06, p2 * 0.06)
    middle = value_noise(lattice, p0 * 0.25 + 9, p1 * 0.25, p2 * 0.25)
    fine = value_noise(lattice, p0 * 0.8, p1 * 0.8 + 5, p2 * 0.8)
    f = 1 + 0.10 * (broad + middle + fine)
    r, g, b = skin[0] * f, skin[1] * f * (1 - 0.04 * broad), skin[2] * f
    spot = value_noise(lattice, p0 * 0.35 + 3, p1 * 0.35 + 7, p2 * 0.35)
    if spot > 0.3:
        k = (spot - 0.3) * 2.0
        r, g, b = r * (1 - 0.5 * k), g * (1 - 0.6 * k), b * (1 - 0.6 * k)
    for e in range(2):
        across = p0 - eyes[e, 0]
        over = p1 - eyes[e, 1] - (23.0 - 0.012 * across * across)
        if abs(across) < 23 and abs(over) < 4.0 and p2 > -35:
            k = 1.6 * (1 - (across / 23.0) ** 2) * (1 - (over / 4.0) ** 2)
            k = min(1.0, k) * (0.75 + 0.9 * value_noise(lattice, p0 * 0.9, p1 * 2.0, p2 * 0.5))
            k = min(max(k, 0.0), 0.9)
            r, g, b = r + k * (hair[0] - r), g + k * (hair[1] - g), b + k * (hair[2] - b)
        qx, qy, qz = p0 - balls[e, 0], p1 - balls[e, 1], p2 - balls[e, 2]
        reach = np.sqrt(qx * qx + qy * qy + qz * qz)
        if qz > 0 and reach < ball + 2.0:
            # The edge of the lid with its lashes.
            k = 0.62 * min(1.0, (ball + 2.0 - reach) / 1.2)
            r, g, b = r * (1 - k), g * (1 - k), b * (1 - k)
    lip = 1 - ((p0 - mouth[0]) / 25.0) ** 2 - ((p1 - mouth[1]) / 9.0) ** 2
    if lip > 0 and p2 > mouth[2] - 30:
        k = 0.45 * min(1.0, 3 * lip)
        r, g, b = (
            r + k * (0.85 * skin[0] - r),
            g + k * (0.58 * skin[1] - g),
            b + k * (0.6 * skin[2] - b),
        )
    return r, g, b


@numba.njit(fastmath=True, cache=True)
def shade(
    inverse, behind, place, facing, kind, out, lattice, skin, hair, iris, shirt,
    balls, ball, eyes, mouth, look, viewer, light,
):  # fmt: skip
    """Colour (blue, green, red) of every pixel in which this is nearer than what is there."""
    height, width = inverse.shape
    for y in range(height):
        for x in range(width):
            if inverse[y, x] <= behind[y, x]:
                continue
            behind[y, x] = inverse[y, x]
            n = facing[y, x]
            length = np.sqrt(n[0] * n[0] + n[1] * n[1] + n[2] * n[2]) + 1e-9
            lit = max(0.0, (n[0] * light[0] + n[1] * light[1] + n[2] * light[2]) / length)
            if kind[y, x] == FRAME:
                r, g, b, shine = 58.0, 52.0, 50.0, 0.6 + 0.6 * lit
            elif kind[y, x] > 0:
                e = kind[y, x] - 1
                r, g, b = eye_colour(lattice, place[y, x], eyes[e], look[e], viewer, iris)
                under_lid = max(0.0, (place[y, x, 1] - balls[e, 1]) / ball)
                shine = (0.75 + 0.25 * lit) * (1 - 0.54 * under_lid)
            else:
                r, g, b = skin_colour(
                    lattice, place[y, x], skin, hair, balls, ball, eyes, mouth, shirt
                )
                shine = 0.55 + 0.5 * lit
            out[y, x, 0], out[y, x, 1], out[y, x, 2] = b * shine, g * shine, r * shine


@numba.njit(cache=True)
def coarse(fine, size):
    """Mean of each block of ``size`` by ``size`` pixels of ``(h, w, 3)``."""
    height, width = fine.shape[0] // size, fine.shape[1] // size
    out = np.empty((height, width, 3), np.float32)
    share = np.float32(1.0 / (size * size))
    for y in range(height):
        for x in range(width):
            for k in range(3):
                total = np.float32(0.0)
                for row in range(size):
                    for column in range(size):
                        total += fine[y * size + row, x * size + column, k]
                out[y, x, k] = total * share
    return out
