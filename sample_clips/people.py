"""Who is drawn: invented people with names, and any number of others."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

Colour = tuple[int, int, int]


@dataclass(frozen=True, slots=True)
class HeadSpec:
    """An invented person: a mix of corners of the mesh's space, features and colours.

    Attributes
    ----------
    mix
        Ancestry, sex, age and share of each corner; the shares add up to 1.
    features
        Mesh targets and how much of each.
    skin, hair, iris
        Red, green, blue, 0 to 255.
    seed
        Of the skin's pattern.
    pupils_mm
        Distance of the eyeball centres.
    neck_mm
        The point about which the head turns, from between the eyeballs.
    hooded
        How far the lids hang at rest, 0 to 1.
    """

    mix: tuple[tuple[str, str, str, float], ...]
    features: tuple[tuple[str, float], ...]
    skin: Colour
    hair: Colour
    iris: Colour
    seed: int
    pupils_mm: float = 63.0
    neck_mm: tuple[float, float, float] = (0.0, -70.0, -100.0)
    hooded: float = 0.0


HEADS: dict[str, HeadSpec] = {
    "anna": HeadSpec(
        (("caucasian", "female", "young", 0.6), ("caucasian", "female", "old", 0.4)),
        (("nose/nose-scale-depth-incr", 0.3),),
        (205, 170, 150),
        (96, 78, 66),
        (96, 104, 110),
        1,
    ),
    "bo": HeadSpec(
        (("asian", "male", "young", 0.7), ("asian", "male", "old", 0.3)),
        (("head/head-round", 0.5),),
        (190, 150, 120),
        (52, 46, 44),
        (70, 48, 34),
        2,
    ),
    "cleo": HeadSpec(
        (("african", "female", "young", 1.0),),
        (("nose/nose-width2-incr", 0.3),),
        (120, 80, 60),
        (42, 36, 34),
        (58, 40, 30),
        3,
    ),
    "dirk": HeadSpec(
        (("caucasian", "male", "old", 1.0),),
        (("nose/nose-hump-incr", 0.5), ("head/head-rectangular", 0.4)),
        (200, 160, 140),
        (150, 148, 146),
        (84, 98, 120),
        4,
    ),
    "eva": HeadSpec(
        (("asian", "female", "old", 0.5), ("caucasian", "female", "old", 0.5)),
        (("nose/nose-scale-depth-decr", 0.4), ("head/head-scale-depth-decr", 0.5)),
        (195, 160, 135),
        (128, 122, 118),
        (88, 70, 46),
        5,
    ),
    "finn": HeadSpec(
        (("african", "male", "young", 0.5), ("caucasian", "male", "old", 0.5)),
        (("nose/nose-scale-depth-incr", 0.6), ("head/head-oval", 0.5)),
        (150, 110, 85),
        (60, 52, 48),
        (80, 56, 38),
        6,
    ),
}


#: A name that draws an unnamed person.
RANDOM = "random-"
_KINDS = ("caucasian", "asian", "african")
#: Mean skin of each kind in the mesh's own words, and its spread.
_TONES = np.array([[206, 170, 150], [194, 156, 128], [118, 80, 60]])
_FEATURES = (
    "nose/nose-scale-depth",
    "nose/nose-scale-vert",
    "nose/nose-hump",
    "head/head-scale-depth",
    "head/head-scale-horiz",
    "chin/chin-prominent",
    "chin/chin-width",
)


def find_head(name: str) -> HeadSpec:
    """Who has this name; KeyError when nobody has."""
    if name in HEADS:
        return HEADS[name]
    number = name.removeprefix(RANDOM)
    if not name.startswith(RANDOM) or not number.isdecimal() or len(number) > 9:
        raise KeyError(name)
    return random_head(int(number))


def random_head(number: int) -> HeadSpec:
    """Somebody; the same number gives the same person.

    Distances between pupils are those of adults: mean 63 mm, spread 3.5, hardly
    anybody outside 54 to 74 (Dodgson 2004, Proc SPIE 5291:36). The other spreads
    are chosen so that the faces look like different people.
    """
    rng = np.random.default_rng([number, 7])
    shares = rng.dirichlet([0.6, 0.6, 0.6])
    sex = "female" if rng.random() < 0.5 else "male"
    old = float(rng.uniform(0.0, 0.9))
    mix = tuple(
        (kind, sex, age, round(float(share * part), 3))
        for kind, share in zip(_KINDS, shares, strict=True)
        for age, part in (("young", 1.0 - old), ("old", old))
    )
    pulls = np.clip(rng.normal(0.0, 0.25, len(_FEATURES)), -0.6, 0.6)
    features = tuple(
        (f"{name}-{'incr' if pull > 0 else 'decr'}", round(abs(float(pull)), 3))
        for name, pull in zip(_FEATURES, pulls, strict=True)
    )
    grey = 1.4 * max(0.0, old - 0.3)
    hair = (1.0 - grey) * np.array([70, 56, 48]) * rng.uniform(0.6, 1.5) + grey * 180.0
    iris = np.array([86, 70, 54]) + shares[0] * rng.uniform() * np.array([10, 40, 60])
    return HeadSpec(
        mix,
        features,
        _colour(shares @ _TONES + rng.normal(0.0, 6.0)),
        _colour(hair),
        _colour(iris),
        number + 100,
        round(float(np.clip(rng.normal(63.0, 3.5), 54.0, 74.0)), 1),
        (0.0, round(float(rng.uniform(-85, -55)), 1), round(float(rng.uniform(-115, -85)), 1)),
        round(float(rng.uniform(0.0, 0.2)), 2),
    )


def _colour(values: np.ndarray) -> Colour:
    red, green, blue = (int(v) for v in np.clip(np.round(values), 10, 245))
    return red, green, blue
