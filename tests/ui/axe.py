"""Runs the accessibility checker axe-core on an HTML file in headless Chromium."""

from __future__ import annotations

import json
import re
import shutil
import subprocess
from html import unescape
from importlib import resources
from pathlib import Path
from typing import Any

NAMES = ("chromium", "chromium-browser", "google-chrome", "google-chrome-stable")
#: Rules of these groups are run: WCAG 2.1 A and AA, and axe-core's good practice.
TAGS = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "best-practice"]


def browser() -> str | None:
    """A Chromium on this machine."""
    return next((found for n in NAMES if (found := shutil.which(n))), None)


def check(html: str, folder: Path, *, dark: bool = False) -> dict[str, Any]:
    """Violations, and how many rules passed.

    The file's own policy forbids scripts, so the checker runs on a copy without it.
    """
    checker = resources.files("axe_core_python").joinpath("axe.min.js").read_text("utf-8")
    html, without = re.subn(r"<meta http-equiv=\"Content-Security-Policy\"[^>]*>", "", html)
    assert without == 1
    script = (
        "axe.run(document, {runOnly: " + json.dumps(TAGS) + "}).then(r => {"
        "const found = {violations: r.violations.map(v => ({id: v.id, nodes: v.nodes.map("
        "n => n.html + ' ' + n.failureSummary)})), passes: r.passes.map(p => p.id),"
        "dark: matchMedia('(prefers-color-scheme: dark)').matches};"
        "document.body.innerHTML = '<pre id=axe-result></pre>';"
        "document.getElementById('axe-result').textContent = JSON.stringify(found);})"
    )
    page = folder / "checked.html"
    page.write_text(
        html.replace("</body>", f"<script>{checker}</script><script>{script}</script></body>"),
        encoding="utf-8",
    )
    words = [
        str(browser()),
        "--headless",
        "--no-sandbox",
        "--disable-gpu",
        # A browser's own errands are none of a test's.
        "--no-first-run",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
        f"--user-data-dir={folder / 'profile'}",
        "--virtual-time-budget=30000",
        *(["--blink-settings=preferredColorScheme=0"] if dark else []),
        "--dump-dom",
        page.as_uri(),
    ]
    done = subprocess.run(words, capture_output=True, text=True, timeout=110, check=True)
    found = re.search(r'<pre id="axe-result">(.*?)</pre>', done.stdout, re.DOTALL)
    assert found, done.stderr[-2000:]
    result: dict[str, Any] = json.loads(unescape(found[1]))
    return result
