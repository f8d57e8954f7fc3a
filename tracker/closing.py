"""What has to be closed, closed at the end of a ``with``."""

from __future__ import annotations

from abc import ABC, abstractmethod
from typing import Self


class Closing(ABC):
    """Something with a ``close``; ``with`` calls it, however its block ends."""

    @abstractmethod
    def close(self) -> None:
        """Let everything go; once or more often."""

    def __enter__(self) -> Self:
        return self

    def __exit__(self, *_: object) -> None:
        self.close()
