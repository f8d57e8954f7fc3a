"""Python's collector of garbage: where it runs, and what it leaves alone."""

from __future__ import annotations

import gc

#: Objects made, and looks at the younger ones, after which each generation is looked at:
#: Python's own numbers.
DUE = (700, 10, 10)


def spare_what_stays() -> None:
    """Have the collector no longer look through what is in memory now.

    Libraries and windows stay as long as the process. A look through all of them stopped the
    window for 46 ms in the middle of an exercise (measured; some 110,000 objects); what an
    exercise makes is a few thousand. Called again, what has become garbage since goes first.
    """
    gc.unfreeze()
    gc.collect()
    gc.freeze()


def collect_by_hand() -> None:
    """Have the collector run only where :func:`collect_what_is_due` is called.

    By itself it runs in whichever thread makes the object that is one too many, and what it
    frees dies there. A window that dies in another thread than the one that draws, while that
    one is at work in Qt, takes the program with it.
    """
    gc.disable()


def collect_what_is_due() -> None:
    """Look for garbage, in this thread, if enough has been made since the last time."""
    made = gc.get_count()
    for generation in (2, 1, 0):
        if made[generation] > DUE[generation]:
            gc.collect(generation)
            return
