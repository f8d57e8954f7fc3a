"""Films on request, and what they came to."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.sample_clips.table import PROPERTY, as_csv


@pytest.fixture
def films(request: pytest.FixtureRequest, tmp_path: Path) -> Path:
    """Where films lie: a folder that is kept, or one of the test's own."""
    kept: str | None = request.config.getoption("--films")
    return tmp_path if kept is None else Path(kept)


def pytest_terminal_summary(terminalreporter: pytest.TerminalReporter) -> None:
    """Print what the films came to."""
    reports = (r for kind in ("passed", "failed") for r in terminalreporter.getreports(kind))
    results = [v for r in reports for name, v in r.user_properties if name == PROPERTY]
    if results:
        terminalreporter.section("films of the home programme")
        terminalreporter.write(as_csv(results))
