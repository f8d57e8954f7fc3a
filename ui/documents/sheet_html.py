"""The patient's sheet as one HTML file: no script, nothing from elsewhere, prints as it reads."""

from __future__ import annotations

from collections.abc import Iterator
from html import escape

from ui import words
from ui.documents.html import DARK, LIGHT
from ui.documents.pdf import need_application
from ui.documents.sheet import Item, Listed, Sheet
from ui.documents.sheet_figures import svg_of

_STYLE = """
:root { color-scheme: light dark; LIGHT }
@media (prefers-color-scheme: dark) { :root { DARK } }
* { box-sizing: border-box }
body { margin: 0 auto; padding: 1.5rem; max-width: 54rem; color: var(--ink);
  background: var(--ground); font: 1.3rem/1.45 system-ui, sans-serif; overflow-wrap: anywhere }
h1 { font-size: 2.1rem; margin: 0 }
h2 { font-size: 1.6rem; margin: 1.6rem 0 .4rem }
h3 { font-size: 1.35rem; margin: 0 0 .2rem }
p { margin: .3rem 0 }
ul { margin: .2rem 0; padding-inline-start: 1.4rem }
.words { white-space: pre-line }
.box { border: 4px solid var(--ink); padding: .6rem 1rem; margin: 1rem 0 }
.box h2 { margin-top: 0 }
.dose { font-weight: bold }
.item { display: flex; gap: 1.2rem; border-top: 2px solid var(--line); padding: .8rem 0 }
.item > div { flex: 1 1 20rem }
figure { margin: 0; flex: 0 0 15rem; background: #ffffff; align-self: flex-start; padding: .3rem }
svg { width: 100%; height: auto; display: block }
@media (max-width: 44rem) { .item { flex-direction: column } figure { flex: none; width: 15rem } }
@page { size: PAPER; margin: 14mm }
@media print { :root { LIGHT }
  body { padding: 0; max-width: none; font-size: 14pt } .item, .box { break-inside: avoid }
  h1 { font-size: 24pt } h2 { font-size: 18pt; break-after: avoid } h3 { font-size: 16pt }
  figure { flex: 0 0 6cm } .item { flex-direction: row } }
"""


def sheet_html(sheet: Sheet, paper: str = "a4") -> str:
    """The whole file; ``paper`` is the size on which it prints (a4 or letter)."""
    need_application()
    style = _STYLE.replace("PAPER", "letter" if paper == "letter" else "A4")
    for word, colours in (("LIGHT", LIGHT), ("DARK", DARK)):
        style = style.replace(word, " ".join(f"--{k}: {v};" for k, v in colours.items()))
    return "\n".join(
        [
            "<!DOCTYPE html>",
            f'<html lang="{_text(words.say("sheet.language"))}" dir="{_way()}">',
            "<head>",
            '<meta charset="utf-8">',
            '<meta name="viewport" content="width=device-width, initial-scale=1">',
            '<meta http-equiv="Content-Security-Policy" '
            "content=\"default-src 'none'; style-src 'unsafe-inline'\">",
            f"<title>{_text(sheet.title)}: {_text(sheet.subtitle)}</title>",
            f"<style>{style}</style>",
            "</head>",
            "<body>",
            "<main>",
            *_body(sheet),
            "</main>",
            "</body>",
            "</html>",
            "",
        ]
    )


def _way() -> str:
    """Which way the language is read."""
    return "rtl" if words.from_right() else "ltr"


def _text(text: str) -> str:
    return escape(text, quote=True)


def _body(sheet: Sheet) -> Iterator[str]:
    yield f"<h1>{_text(sheet.title)}</h1>"
    yield f"<p><bdi>{_text(sheet.subtitle)}</bdi></p>"
    yield f'<p class="dose">{_text(sheet.often)}</p>'
    yield f"<p>{_text(sheet.mind)}</p>"
    if sheet.neck:
        yield f'<p class="dose">{_text(sheet.neck)}</p>'
    if sheet.words:
        yield f"<h2>{_text(words.say('sheet.words'))}</h2>"
        yield f'<p class="words"><bdi>{_text(sheet.words)}</bdi></p>'
    yield '<section class="box">'
    yield from _listed(sheet.emergency)
    yield "</section>"
    yield from _listed(sheet.call)
    yield from _listed(sheet.stop)
    for part in sheet.parts:
        yield f"<h2><bdi>{_text(part.title)}</bdi></h2>"
        for item in part.items:
            yield from _item(item)
    for listed in (sheet.screen, sheet.later):
        if listed is not None:
            yield from _listed(listed)
    yield f"<p>{_text(sheet.foot)}</p>"


def _listed(listed: Listed) -> Iterator[str]:
    yield f"<h2>{_text(listed.title)}</h2>"
    yield "<ul>"
    yield from (f"<li>{_text(line)}</li>" for line in listed.lines)
    yield "</ul>"


def _item(item: Item) -> Iterator[str]:
    name = _text(words.say("sheet.picture", name=item.name))
    yield '<section class="item">'
    if item.drawn:
        drawing = svg_of(item.exercise, item.eyes)
        yield f'<figure role="img" aria-label="{name}">{drawing}</figure>'
    yield "<div>"
    yield f"<h3>{item.number}. {_text(item.name)}</h3>"
    yield f'<p class="dose">{_text(item.dose)}</p>'
    yield f"<p>{_text(item.how)}</p>"
    if item.support:
        yield f'<p class="dose">{_text(item.support)}</p>'
    if item.cares:
        yield "<ul>"
        yield from (f"<li>{_text(care)}</li>" for care in item.cares)
        yield "</ul>"
    yield "</div>"
    yield "</section>"
