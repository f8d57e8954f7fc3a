"""Where the frozen program begins: as the program, as its voice, or as its measuring process."""

from __future__ import annotations

import multiprocessing
import sys


def main() -> int:
    """Run what this process was started for."""
    # A measuring process ends in here; it must come before all else.
    multiprocessing.freeze_support()
    from ui.sounds.voice_apart import VOICE_WORD

    if sys.argv[1:2] == [VOICE_WORD]:
        from ui.sounds.voice_child import main as speak

        return speak(*sys.argv[2:5])
    from ui.cli import main as turnpost

    return turnpost()


if __name__ == "__main__":
    sys.exit(main())
