"""The one page to file: a session's verdict and its exercises at a glance, in letters to be read.

It has what :mod:`ui.documents.page` has but for the figures of each exercise, which need pages
of their own; the report with all figures, drawn from the same, has those. What else finds no
room is told in fewer words or left out, in a fixed order, and the page says what that was. No
exercise is left out: a longer session goes on on a second page, and one beyond that is whole.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import replace

from tracker.records import terms
from tracker.records.of_session import BENCH_TOLD, REACH_TOLD
from tracker.records.over_time import OverTime
from ui.documents.charts import SMALL, WIDTH
from ui.documents.over_time import part_of
from ui.documents.page import NOTHING_LESS
from ui.documents.parts import Page
from ui.documents.pdf_layout import MARGIN, Block, Group, Sheet, paginate
from ui.documents.pdf_setting import GAP, Setter
from ui.documents.pdf_table import READ, TIGHT, Look
from ui.documents.pdf_text import LEAST_READ, Run, Style

#: A chart so wide that the smallest letters in it can be read.
CHART_WIDTH = WIDTH * LEAST_READ / SMALL
#: Facts of the set-up that stand in the report with all figures alone: what its "±" says, the
#: program's own errors, and how far the head went; where that was too short for the set, a
#: remark says so.
_ELSEWHERE = frozenset(
    (
        terms.UNCERTAINTY,
        *(name for name, _, _ in BENCH_TOLD.values()),
        *(f"{name}, {side}" for name, sides in REACH_TOLD for side in sides),
    )
)
#: What is told shorter (``begun``) or left out for want of room, in this order.
STEPS = ("setup", "kinds", "chart", "scores", "begun", "warnings")
#: What the page calls what was left out.
LEFT_OUT = {
    "setup": "the set-up",
    "kinds": "further kinds of what was noticed",
    "chart": "the chart of symptoms",
    "scores": "questionnaires",
    "warnings": "further remarks on what to trust less",
}
#: So many remarks stay where there is no room for all.
FEW = 3
#: Sheets, what they are called, and their letters, in the order in which they are tried.
WAYS = ((1, "this page", READ), (1, "this page", TIGHT), (2, "these pages", READ))
#: Up to so many exercises the letters stay as they are, and what was not begun goes on on a second
#: sheet: a usual session is to be read by everybody.
USUAL = 9
DETAILS = "the figures and turns of each exercise"


def one_page(page: Page, width: float, bottom: float) -> list[Sheet]:
    """A session on one sheet; on two or more where its verdict and its exercises need more.

    Where the letters of the page have no room for more than :data:`USUAL` exercises, those of its
    table are smaller (:data:`~ui.documents.pdf_text.LEAST_TIGHT`), before a second sheet is begun.

    Parameters
    ----------
    page
        What stands on it.
    width, bottom
        Of the paper, and where its words end, in points.
    """
    many = page.glance is not None and len(page.glance.rows) > USUAL
    for most, pages, look in WAYS:
        if look is TIGHT and not many:
            continue
        for count in range(len(STEPS) + 1):
            blocks = tuple(_flowing(_groups(page, width, set(STEPS[:count]), pages, look)))
            # All in one group, so that a table may be cut where a page ends.
            sheets = paginate([Group(blocks)], MARGIN, bottom)
            if len(sheets) <= most:
                return sheets
    blocks = tuple(_flowing(_groups(page, width, set(), "these pages")))
    return paginate([Group(blocks)], MARGIN, bottom)


def _flowing(groups: Iterable[Group]) -> Iterator[Block]:
    """Blocks one after the other; none stands at the foot of a page without what it heads."""
    for k, group in enumerate(groups):
        first, *rest = group.blocks
        if not k:
            yield from group.blocks
            # What stands beside them may be higher.
            yield _space(group.height - sum(b.height for b in group.blocks))
            continue
        needs = first.height + sum(b.height for b in rest[:2])
        yield replace(_space(group.gap), needs=group.gap + needs)
        yield from group.blocks


def _space(height: float) -> Block:
    return Block(height, lambda *_: None)


def _groups(
    page: Page, width: float, without: set[str], pages: str, look: Look = READ
) -> Iterator[Group]:
    setter = Setter(width, look, CHART_WIDTH)
    yield Group(tuple(_top(setter, page, without)))
    glance = page.glance_short if "kinds" in without else page.glance
    if glance is not None:
        yield Group(tuple(setter.titled("The exercises", setter.table(glance))), GAP)
    if page.left_out and "begun" in without:
        yield Group((setter.words([Run(f"Not begun: {page.begun_short}.", READ.bold)]),), GAP)
    elif page.left_out:
        yield Group(tuple(setter.titled("Not begun", setter.lines(page.left_out))), GAP)
    if page.scores is not None and "scores" not in without:
        yield Group(tuple(setter.titled("Questionnaires", setter.table(page.scores))), GAP)
    if page.setup and "setup" not in without:
        own = [f for f in page.setup if f.label not in _ELSEWHERE]
        yield Group(tuple(setter.titled("Set-up", [setter.facts(own)])), GAP)
    yield Group(tuple(setter.titled("Limits", setter.lines(page.limits))), GAP)
    yield Group((setter.words([Run(_elsewhere(page, without, pages), READ.bold)]),), GAP)


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


def _elsewhere(page: Page, without: set[str], pages: str) -> str:
    """What is not on this page, or pages, and where it is."""
    there = {
        "setup": bool(page.setup),
        "kinds": page.glance_short != page.glance,
        "chart": page.chart is not None,
        "scores": page.scores is not None,
        "warnings": len(page.warnings) > FEW,
    }
    missing = [DETAILS] if page.sections else []
    missing += [words for name, words in LEFT_OUT.items() if name in without and there[name]]
    if not missing:
        return f"Everything that is told of this session stands on {pages}."
    listed = missing[0] if len(missing) == 1 else f"{', '.join(missing[:-1])} and {missing[-1]}"
    return f"Not on {pages}: {listed}. A report with all figures has them."


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
