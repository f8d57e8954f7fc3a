"""The plan editor and the patient's sheet in every language: nothing is cut."""

from __future__ import annotations

import re
from itertools import product
from typing import Any

import pytest
from tests.ui.editing import OpenEditor
from tests.ui.test_desk import look
from tests.ui.test_desk_languages import spoken  # noqa: F401 - a fixture
from tests.ui.test_every_page import editor_pages
from tests.ui.test_languages import TRANSLATED


@pytest.mark.slow
@pytest.mark.parametrize(("code", "percent"), list(product(TRANSLATED, (100, 200))))
def test_nothing_of_the_editor_is_cut(
    open_editor: OpenEditor, spoken: Any, code: str, percent: int  # noqa: F811
) -> None:
    spoken(code)
    window = open_editor(percent=percent)
    faults = []
    for name in editor_pages(window):
        slug = re.sub(r"[^a-z0-9]", "", name)
        faults += [f"{name}: {fault}" for fault in look(window, f"{code}-editor-{slug}-{percent}")]
    assert not faults
