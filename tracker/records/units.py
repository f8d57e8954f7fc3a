"""Units of the figures: their UCUM code, how they are shown, and with how many decimals.

UCUM is the Unified Code for Units of Measure (ucum.org), which FHIR asks for.
"""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Unit:
    """A unit.

    Attributes
    ----------
    ucum
        Its UCUM code; "1" for a plain number. Braces hold a remark without meaning.
    shown
        How it is written behind a number; empty for a count.
    decimals
        Decimals that are shown: no more than the measuring is good for.
    spaced
        Whether a space stands before it.
    """

    ucum: str
    shown: str
    decimals: int
    spaced: bool = True


COUNT = Unit("1", "", 0)
SCORE = Unit("{score}", "of 10", 0)
RATIO = Unit("1", "", 2)
PERCENT = Unit("%", "%", 0)
DEGREES = Unit("deg", "°", 1, spaced=False)
DEGREES_S = Unit("deg/s", "°/s", 0, spaced=False)
BEATS = Unit("/min", "beats/min", 0)
SECONDS = Unit("s", "s", 1)
MINUTES = Unit("min", "min", 1)
MILLIMETRES = Unit("mm", "mm", 0)
SQUARE_MILLIMETRES = Unit("mm2", "mm²", 0)
MILLIMETRES_S = Unit("mm/s", "mm/s", 0)
CENTIMETRES = Unit("cm", "cm", 0)
HERTZ = Unit("Hz", "frames/s", 0)
#: A word or a sentence, not a number.
WORDS = Unit("", "", 0)
