"""The one page to file: a session's verdict and its exercises at a glance, in letters to be read.

It has what :mod:`ui.documents.page` has but for the figures of each exercise, which need pages
of their own; the HTML file, drawn from the same, has those. What else finds no room is left out
in a fixed order, and the page says what that was.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from tracker.records.over_time import OverTime
from ui.documents.charts import SMALL, WIDTH
from ui.documents.over_time import part_of
from ui.documents.page import NOTHING_LESS
from ui.documents.parts import Page
from ui.documents.pdf_layout import MARGIN, Block, Group, Sheet, paginate
from ui.documents.pdf_setting import GAP, Setter
from ui.documents.pdf_table import READ
from ui.documents.pdf_text import LEAST_READ, Run, Style

#: A chart so wide that the smallest letters in it can be read.
CHART_WIDTH = WIDTH * LEAST_READ / SMALL
#: What is left out for want of room, in this order, and what the page calls it.
LEFT_OUT = {
    "setup": "the set-up",
    "chart": "the chart of symptoms",
    "scores": "questionnaires",
    "warnings": "further remarks on what to trust less",
    "begun": "what was not begun, and why",
}
#: So many remarks stay where there is no room for all.
FEW = 3
DETAILS = "the figures and turns of each exercise"


def one_page(page: Page, width: float, bottom: float) -> list[Sheet]:
    """A session on one sheet; on more only where even its verdict needs more.

    Parameters
    ----------
    page
        What stands on it.
    width, bottom
        Of the paper, and where its words end, in points.
    """
    names = list(LEFT_OUT)
    sheets: list[Sheet] = []
    for count in range(len(names) + 1):
        sheets = _sheets(page, width, bottom, set(names[:count]))
        if len(sheets) == 1:
            return sheets
    # A table longer than the page: as many exercises as there is room for.
    rows = page.glance.rows if page.glance is not None else ()
    for kept in range(len(rows) - 1, 0, -1):
        assert page.glance is not None
        cut = replace(page, glance=replace(page.glance, rows=rows[:kept]))
        shorter = _sheets(cut, width, bottom, set(names), len(rows) - kept)
        if len(shorter) == 1:
            return shorter
    return sheets


def _sheets(
    page: Page, width: float, bottom: float, without: set[str], rows_out: int = 0
) -> list[Sheet]:
    return paginate([*_groups(page, width, without, rows_out)], MARGIN, bottom)


def _groups(page: Page, width: float, without: set[str], rows_out: int) -> Iterator[Group]:
    setter = Setter(width, READ, CHART_WIDTH)
    yield Group(tuple(_top(setter, page, without)))
    if page.glance is not None:
        yield Group(tuple(setter.titled("The exercises", setter.table(page.glance))), GAP)
    if page.left_out and "begun" not in without:
        yield Group(tuple(setter.titled("Not begun", setter.lines(page.left_out))), GAP)
    if page.scores is not None and "scores" not in without:
        yield Group(tuple(setter.titled("Questionnaires", setter.table(page.scores))), GAP)
    if page.setup and "setup" not in without:
        yield Group(tuple(setter.titled("Set-up", [setter.facts(page.setup)])), GAP)
    yield Group(tuple(setter.titled("Limits", setter.lines(page.limits))), GAP)
    yield Group((setter.words([Run(_elsewhere(page, without, rows_out), READ.bold)]),), GAP)


def _top(setter: Setter, page: Page, without: set[str]) -> Iterator[Block]:
    """Who, when, what to see first, and how it went."""
    yield setter.words([Run(page.title, Style.TITLE)])
    yield setter.heading(f"Practice session, {page.when}")
    yield setter.words([Run(page.origin, READ.body)], below=4.0)
    if page.alert:
        yield setter.box(page.alert)
    room = setter.room
    if page.chart is not None and "chart" not in without:
        room -= CHART_WIDTH + GAP
        yield setter.chart(page.chart)
    if not page.alert:
        yield setter.words([Run(page.calm, READ.body)], room)
    yield setter.facts((page.ended, *page.facts), room)
    yield setter.words([Run("What to trust less", READ.bold)], room, above=3.0)
    warnings = page.warnings or (NOTHING_LESS,)
    if "warnings" in without and len(warnings) > FEW:
        warnings = (*warnings[:FEW], f"and {len(warnings) - FEW} more")
    yield from setter.lines(warnings, room=room)


def _elsewhere(page: Page, without: set[str], rows_out: int) -> str:
    """What is not on this page, and where it is."""
    there = {
        "setup": bool(page.setup),
        "chart": page.chart is not None,
        "scores": page.scores is not None,
        "warnings": len(page.warnings) > FEW,
        "begun": bool(page.left_out),
    }
    missing = [DETAILS] if page.sections else []
    missing += [f"{rows_out} more exercises"] if rows_out else []
    missing += [words for name, words in LEFT_OUT.items() if name in without and there[name]]
    if not missing:
        return "Everything that is told of this session stands on this page."
    listed = missing[0] if len(missing) == 1 else f"{', '.join(missing[:-1])} and {missing[-1]}"
    return f"Not on this page: {listed}. The HTML report has them."


def over_time_sheets(one: OverTime, width: float, bottom: float) -> list[Sheet]:
    """A person over a span: practice, then the trends, on as many sheets as they need."""
    part, setter = part_of(one), Setter(width, READ)
    blocks = [
        setter.words([Run(part.title, Style.TITLE)]),
        setter.heading(part.span),
        setter.facts(part.practice),
    ]
    for where, table in part.tables:
        rows = list(setter.table(table))
        name = setter.words([Run(where, READ.heading)], above=GAP)
        # No name stands at the foot of a page without the beginning of its table.
        needs = name.height + sum(row.height for row in rows[:2])
        blocks += [replace(name, needs=needs), *rows]
    return paginate([Group(tuple(blocks))], MARGIN, bottom)
