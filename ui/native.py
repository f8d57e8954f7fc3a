"""The libraries with native code that come with the program, and the versions looked into.

What native code does can't be read in it, and a later version may send usage figures, as one of
these does. Of each version named here every compiled file was looked through for the calls that
open a connection (``socket``, ``connect``, ``getaddrinfo`` and the like, on Linux), on 27 November
2026. ``opens`` names the files that have some: what they are made for is named beside them, and
nothing of the program asks for it. ``tests/test_native.py`` looks again at what is installed.

Only the standard library: ``turnpost doctor`` asks when much is missing.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Examined:
    """What was looked into.

    Attributes
    ----------
    versions
        Those that were, one or more: for older Pythons there may be no newer one.
    opens
        How the names of files begin that can open a connection.
    """

    versions: tuple[str, ...]
    opens: tuple[str, ...] = ()


#: By distribution; those that others bring as well.
NATIVE: Mapping[str, Examined] = {
    "mediapipe": Examined(("0.10.31",)),
    # Reads videos from a network, which it has to be given an address for; and what encrypts them.
    "opencv-python": Examined(("5.0.0.93",), ("libavformat", "libcrypto")),
    "PySide6-Essentials": Examined(("6.12.0",), ("libQt6Network",)),
    # Sounds and videos from a network; radios and field buses, which nothing loads.
    "PySide6-Addons": Examined(
        ("6.12.0",), ("libavformat", "libQt6Bluetooth", "libqtsocketcanbus")
    ),
    "shiboken6": Examined(("6.12.0",)),
    # numpy and scipy have no newer ones for Python 3.11.
    "numpy": Examined(("2.4.6", "2.5.5")),
    "scipy": Examined(("1.17.1", "1.18.1")),
    "numba": Examined(("0.68.1",)),
    "llvmlite": Examined(("0.50.0",)),
    "pydantic-core": Examined(("2.50.5",)),
    "pyrage": Examined(("1.4.0",)),
    "cffi": Examined(("2.1.1",)),
}


def is_examined(name: str, version: str) -> bool:
    """Whether a library is none with native code, or of a version that was looked into."""
    return name not in NATIVE or version in NATIVE[name].versions
