"""Blocks on pages: what stays together, what may be cut, and where a page ends.

All lengths are in points.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from PySide6.QtGui import QPainter

#: From the edges of the paper.
MARGIN = 36.0
#: Draws a block with its upper edge at a height.
Draw = Callable[[QPainter, float], None]


@dataclass(frozen=True, slots=True)
class Block:
    """Something that is never cut.

    Attributes
    ----------
    height
        What it takes of the page.
    needs
        What it draws on at least, where that is more than its height: a chart that
        stands beside the blocks after it.
    again
        The block that is repeated above it where it begins a page (a table's head).
    """

    height: float
    draw: Draw
    needs: float = 0.0
    again: Block | None = None


@dataclass(frozen=True, slots=True)
class Group:
    """Blocks that stay on one page if they fit on one; ``gap`` is the space above them."""

    blocks: tuple[Block, ...]
    gap: float = 0.0

    @property
    def height(self) -> float:
        """Height of all of it."""
        return max(
            (self._top(k) + max(b.height, b.needs) for k, b in enumerate(self.blocks)), default=0.0
        )

    def _top(self, k: int) -> float:
        return sum(b.height for b in self.blocks[:k])


#: A page: blocks with the height of their upper edges.
Sheet = list[tuple[Block, float]]


def paginate(groups: Sequence[Group], top: float, bottom: float) -> list[Sheet]:
    """Put groups on pages, between two heights of the paper."""
    sheets: list[Sheet] = [[]]
    y = top
    for group in groups:
        gap = group.gap if sheets[-1] else 0.0
        fits = y + gap + group.height <= bottom
        # A group longer than a page has to be cut anyway, so it begins where there is room.
        if sheets[-1] and not fits and group.height <= bottom - top:
            sheets.append([])
            y, gap = top, 0.0
        y = _place(sheets, group, y + gap, top, bottom)
    return sheets


def _place(sheets: list[Sheet], group: Group, y: float, top: float, bottom: float) -> float:
    deepest = y
    for block in group.blocks:
        if y + max(block.height, block.needs) > bottom and sheets[-1]:
            sheets.append([])
            y = deepest = top
            if block.again is not None:
                sheets[-1].append((block.again, y))
                y += block.again.height
        sheets[-1].append((block, y))
        deepest = max(deepest, y + max(block.height, block.needs))
        y += block.height
    return max(y, deepest)
