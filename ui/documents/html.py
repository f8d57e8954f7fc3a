"""The page of a session, or of several, as one HTML file.

It needs nothing from elsewhere, runs no script (its own policy forbids that), and
escapes all text. It follows the reader's light or dark setting and prints on A4 or
Letter in black on white.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from html import escape

from tracker.records.figures import SessionFigures
from tracker.records.over_time import OverTime
from tracker.records.questionnaires import Score
from ui.documents.charts import Band, Chart, Item, Label, Line, Mark
from ui.documents.over_time import OverTimePart, part_of
from ui.documents.overview import sessions_overview
from ui.documents.page import NOTHING_LESS, page_of
from ui.documents.parts import Cell, Fact, Page, Row, Section, Table
from ui.documents.questionnaires import scores_table

#: Colours of the light and the dark page: text, soft text, ground, pale ground, lines, warning.
LIGHT = {
    "ink": "#1a1a1a",
    "soft": "#4a4a4a",
    "ground": "#ffffff",
    "pale": "#ececec",
    "line": "#767676",
    "warn": "#8a1c00",
}
DARK = {
    "ink": "#f0f0f0",
    "soft": "#c4c4c4",
    "ground": "#161616",
    "pale": "#333333",
    "line": "#949494",
    "warn": "#ffb59f",
}

#: What was not measured looks unlike a figure.
NONE = ' class="none"'

#: Cells of fewer letters stay on one line.
SHORT = 18

_STYLE = """
:root { color-scheme: light dark; LIGHT }
@media (prefers-color-scheme: dark) { :root { DARK } }
* { box-sizing: border-box }
body { margin: 0 auto; padding: 1.5rem; max-width: 62rem; color: var(--ink);
  background: var(--ground); font: 1rem/1.45 system-ui, sans-serif; overflow-wrap: anywhere }
h1 { font-size: 1.6rem; margin: 0 0 .5rem }
h2 { font-size: 1.35rem; margin: 2rem 0 .25rem; border-top: 2px solid var(--line);
  padding-top: .75rem }
h3 { font-size: 1.1rem; margin: 1.4rem 0 .25rem }
p { margin: .25rem 0 }
.soft { color: var(--soft) }
.alert { border: 3px solid var(--warn); padding: .5rem .75rem; margin: .5rem 0 }
.alert li { color: var(--warn); font-weight: bold }
ul { margin: .25rem 0; padding-left: 1.25rem }
.scroll { overflow-x: auto }
table { border-collapse: collapse; margin: .5rem 0; font-variant-numeric: tabular-nums }
caption { text-align: left; font-weight: bold; padding: .25rem 0 }
th, td { border: 1px solid var(--line); padding: .15rem .5rem; text-align: right;
  overflow-wrap: normal }
tbody th, thead th:first-child { text-align: left; font-weight: normal; overflow-wrap: anywhere }
thead th { background: var(--pale) }
td.none, dd.none { font-style: italic; color: var(--soft) }
td.wide { text-align: left }
td.short { white-space: nowrap }
dl { display: grid; grid-template-columns: max-content 1fr; gap: .1rem 1rem; margin: .5rem 0 }
dt { color: var(--soft); max-width: 22rem } dd { margin: 0 }
figure { margin: .5rem 0 } figcaption { color: var(--soft); font-size: .9rem }
svg { width: 100%; max-width: 26rem; height: auto; display: block }
@media (max-width: 40rem) { dl { grid-template-columns: 1fr } dd { margin: 0 0 .4rem 0 } }
@page { size: PAPER; margin: 14mm }
@media print { :root { LIGHT }
  body { padding: 0; max-width: none; font-size: 9.5pt } article { break-before: page }
  article:first-of-type { break-before: auto } section, figure, tr { break-inside: avoid }
  .scroll { overflow: visible } svg { max-width: 7.5cm } dl { gap: 0 1rem }
  th, td { padding: .05rem .3rem; font-size: 8.5pt }
  h2, h3 { margin-top: .8rem; break-after: avoid } }
"""


def html_document(
    records: Sequence[SessionFigures],
    paper: str = "A4",
    scores: Sequence[Score] = (),
    over_time: Sequence[OverTime] = (),
) -> str:
    """The whole file; ``paper`` is the size on which it prints (A4 or Letter)."""
    answered = scores_table(records, scores)
    pages = [page_of(r, answered if len(records) == 1 else None) for r in records]
    title = "Practice session" if len(pages) == 1 else f"{len(pages)} practice sessions"
    named = f"{title}: {pages[0].title}, {pages[0].when}" if len(pages) == 1 else title
    heading = _text(title) + (f": <bdi>{_text(pages[0].title)}</bdi>" if len(pages) == 1 else "")
    glance: list[str] = [line for one in over_time for line in _one_over_time(part_of(one))]
    if len(pages) > 1:
        if over_time:
            glance.append("<h2>The sessions</h2>")
        glance += _table(sessions_overview(records), "this document")
        glance += _scores(answered, "this document", "h2")
    body = [f"<h1>{heading}</h1>", *glance, *(line for p in pages for line in _article(p))]
    return "\n".join(
        [
            "<!DOCTYPE html>",
            '<html lang="en">',
            "<head>",
            '<meta charset="utf-8">',
            '<meta name="viewport" content="width=device-width, initial-scale=1">',
            '<meta http-equiv="Content-Security-Policy" '
            "content=\"default-src 'none'; style-src 'unsafe-inline'\">",
            f"<title>{_text(named)}</title>",
            f"<style>{_style(paper)}</style>",
            "</head>",
            "<body>",
            "<main>",
            *body,
            "</main>",
            "</body>",
            "</html>",
            "",
        ]
    )


def _style(paper: str) -> str:
    style = _STYLE.replace("PAPER", "letter" if paper.lower() == "letter" else "A4")
    for word, colours in (("LIGHT", LIGHT), ("DARK", DARK)):
        style = style.replace(word, " ".join(f"--{k}: {v};" for k, v in colours.items()))
    return style


def _text(text: str) -> str:
    return escape(text, quote=True)


def _article(page: Page) -> Iterator[str]:
    whose = f"{page.title}, {page.when}"
    yield "<article>"
    yield f"<h2><bdi>{_text(page.title)}</bdi>, {_text(page.when)}</h2>"
    yield f'<p class="soft">{_text(page.origin)}</p>'
    if page.alert:
        yield '<div class="alert">'
        yield "<p>Read first:</p>"
        yield from _list(page.alert)
        yield "</div>"
    else:
        yield f"<p>{_text(page.calm)}</p>"
    yield from _facts([page.ended, *page.facts])
    yield from _chart(page.chart)
    yield "<h3>What to trust less</h3>"
    yield from _list(page.warnings or (NOTHING_LESS,))
    if page.glance is not None:
        yield "<h3>The exercises</h3>"
        yield from _table(page.glance, whose)
    if page.left_out:
        yield "<h3>Not begun</h3>"
        yield from _list(page.left_out)
    for section in page.sections:
        yield from _section(section, whose)
    yield from _scores(page.scores, whose, "h3")
    yield "<h3>Set-up</h3>"
    yield from _facts(page.setup)
    yield "<h3>Limits</h3>"
    yield from _list(page.limits)
    yield "</article>"


def _one_over_time(part: OverTimePart) -> Iterator[str]:
    yield f"<h2><bdi>{_text(part.title)}</bdi></h2>"
    yield f"<p>{_text(part.span)}</p>"
    yield from _facts(part.practice)
    for where, table in part.tables:
        yield f"<h3>{_text(where)}</h3>"
        yield from _table(table, part.title)


def _scores(table: Table | None, whose: str, level: str) -> Iterator[str]:
    if table is not None:
        yield f"<{level}>Questionnaires</{level}>"
        yield from _table(table, whose)


def _section(section: Section, whose: str) -> Iterator[str]:
    yield "<section>"
    yield f"<h3>{_text(section.title)}</h3>"
    yield f'<p class="soft">{_text(section.subtitle)}</p>'
    if section.warnings:
        yield "<p>Trust less:</p>"
        yield from _list(section.warnings)
    for table in section.tables:
        yield from _table(table, whose)
    yield from _chart(section.chart)
    yield from _facts(section.facts)
    if section.notes:
        yield from _list(section.notes)
    yield "</section>"


def _list(lines: Iterable[str]) -> Iterator[str]:
    yield "<ul>"
    yield from (f"<li>{_text(line)}</li>" for line in lines)
    yield "</ul>"


def _facts(facts: Sequence[Fact]) -> Iterator[str]:
    if not facts:
        return
    yield "<dl>"
    for f in facts:
        yield f"<dt>{_text(f.label)}</dt><dd{NONE if f.absent else ''}>{_text(f.text)}</dd>"
    yield "</dl>"


def _table(table: Table, whose: str) -> Iterator[str]:
    # A wide table scrolls by itself, so it has to be reachable by keyboard, under its own name.
    name = _text(f"{table.caption}; {whose}")
    yield f'<div class="scroll" tabindex="0" role="region" aria-label="{name}">'
    yield "<table>"
    yield f"<caption>{_text(table.caption)}</caption>"
    heads = "".join(f'<th scope="col">{_text(c)}</th>' for c in (table.corner, *table.columns))
    yield f"<thead><tr>{heads}</tr></thead>"
    yield "<tbody>"
    for row in table.rows:
        yield f'<tr><th scope="row">{_text(row.head)}</th>{_cells(row, len(table.columns))}</tr>'
    yield "</tbody>"
    yield "</table>"
    yield "</div>"


def _cells(row: Row, columns: int) -> str:
    if row.across:
        return f'<td class="none wide" colspan="{columns}">{_text(row.cells[0].text)}</td>'
    return "".join(_cell(cell) for cell in row.cells)


def _cell(cell: Cell) -> str:
    kinds = [*(["none"] if cell.absent else []), *(["short"] if len(cell.text) < SHORT else [])]
    return f'<td class="{" ".join(kinds)}">{_text(cell.text)}</td>'


def _chart(chart: Chart | None) -> Iterator[str]:
    if chart is None:
        return
    yield "<figure>"
    yield (
        f'<svg viewBox="0 0 {chart.width:g} {chart.height:g}" role="img" '
        f'aria-label="{_text(chart.title)}. {_text(chart.description)}">'
    )
    yield f"<title>{_text(chart.title)}</title>"
    yield f"<desc>{_text(chart.description)}</desc>"
    yield from (_item(item) for item in chart.items)
    yield "</svg>"
    yield f"<figcaption>{_text(chart.title)}. {_text(chart.description)}</figcaption>"
    yield "</figure>"


def _item(item: Item) -> str:
    match item:
        case Line(x1, y1, x2, y2, width, dashed):
            dash = ' stroke-dasharray="2 2"' if dashed else ""
            return (
                f'<line x1="{x1:.1f}" y1="{y1:.1f}" x2="{x2:.1f}" y2="{y2:.1f}" '
                f'stroke="currentColor" stroke-width="{width:g}"{dash}/>'
            )
        case Band(x, y, width, height):
            return (
                f'<rect x="{x:.1f}" y="{y:.1f}" width="{width:.1f}" height="{height:.1f}" '
                'fill="var(--pale)"/>'
            )
        case Label(x, y, text, anchor, size):
            return (
                f'<text x="{x:.1f}" y="{y:.1f}" text-anchor="{anchor}" font-size="{size:g}" '
                f'fill="currentColor">{_text(text)}</text>'
            )
        case Mark():
            return _mark(item)


def _mark(mark: Mark) -> str:
    half = mark.size / 2
    if mark.kind == "circle":
        return f'<circle cx="{mark.x:.1f}" cy="{mark.y:.1f}" r="{half:g}" fill="currentColor"/>'
    stroke = 'fill="var(--ground)" stroke="currentColor" stroke-width="0.7"'
    if mark.kind == "square":
        corner = f'x="{mark.x - half:.1f}" y="{mark.y - half:.1f}"'
        return f'<rect {corner} width="{mark.size:g}" height="{mark.size:g}" {stroke}/>'
    a, b, c, d = mark.x - half, mark.y - half, mark.x + half, mark.y + half
    return f'<path d="M{a:.1f} {b:.1f}L{c:.1f} {d:.1f}M{a:.1f} {d:.1f}L{c:.1f} {b:.1f}" {stroke}/>'
