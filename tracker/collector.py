"""Python's collector of garbage, kept from holding up pictures and windows."""

from __future__ import annotations

import gc


def spare_what_stays() -> None:
    """Have the collector no longer look through what is in memory now.

    Libraries and windows stay as long as the process. A look through all of them stopped the
    window for 46 ms in the middle of an exercise (measured; some 110,000 objects); what an
    exercise makes is a few thousand. Called again, what has become garbage since goes first.
    """
    gc.unfreeze()
    gc.collect()
    gc.freeze()
