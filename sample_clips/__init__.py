"""A rendered head with exact truth: scenarios, the renderer, and a few finished clips.

This package knows none of the others. Looking up the shipped clips needs
nothing; rendering needs the extra ``render``.
"""

from __future__ import annotations

from pathlib import Path

FOLDER = Path(__file__).parent
#: The clip that the demo plays.
DEMO_CLIP = "turns-good"


def shipped() -> list[Path]:
    """Paths of the clips that come with the program, in the order of their names."""
    return sorted((FOLDER / "clips").glob("*.mp4"))


def shipped_clip(name: str) -> Path:
    """Path of one shipped clip by its name without an ending."""
    return FOLDER / "clips" / f"{name}.mp4"


def scenarios() -> list[Path]:
    """Paths of the scenario files that come with the program."""
    return sorted((FOLDER / "scenarios").glob("*.json"))
