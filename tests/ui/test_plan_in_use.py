"""The copy of the plan opened last: one of a newer version of the program stays as it is."""

from __future__ import annotations

import json
from collections.abc import Callable
from pathlib import Path

import pytest

from tests.stored.made import plan_with
from tracker.plan.files import format_plan, load_plan
from tracker.plan.model import FORMAT_VERSION
from ui.plan_in_use import (
    BEFORE,
    NAME,
    forget_plan_before,
    forget_plan_in_use,
    keep_plan_in_use,
    plan_in_use,
)

PLAN, OTHER = plan_with(plain=True), plan_with(plain=True, person="P-09")


def kept(folder: Path, name: str, version: int) -> bytes:
    """A copy of a plan as a version of the program has kept it; what it holds."""
    data = json.loads(format_plan(PLAN)) | {"format_version": version, "of_that_version": [1]}
    folder.mkdir(exist_ok=True)
    (folder / name).write_text(json.dumps(data), encoding="utf-8")
    return (folder / name).read_bytes()


@pytest.mark.parametrize(
    "act",
    [
        lambda: keep_plan_in_use(OTHER),
        lambda: keep_plan_in_use(OTHER, new=True),
        forget_plan_in_use,
        forget_plan_before,
    ],
)
def test_what_a_newer_version_has_kept_stays_as_it_is(
    private_data_folder: Path, act: Callable[[], None]
) -> None:
    names = (NAME, BEFORE)
    held = [kept(private_data_folder, name, FORMAT_VERSION + 1) for name in names]
    act()
    assert [(private_data_folder / name).read_bytes() for name in names] == held


def test_what_can_only_be_damaged_is_written_over(private_data_folder: Path) -> None:
    # Of this version, with a field that it does not know.
    kept(private_data_folder, NAME, FORMAT_VERSION)
    keep_plan_in_use(OTHER)
    copy = plan_in_use()
    assert copy is not None and load_plan(copy) == OTHER
    forget_plan_in_use()
    assert plan_in_use() is None


def test_the_plan_before_comes_back_where_a_new_one_is_refused(private_data_folder: Path) -> None:
    keep_plan_in_use(PLAN)
    keep_plan_in_use(OTHER, new=True)
    assert load_plan(private_data_folder / NAME) == OTHER
    forget_plan_in_use()
    assert load_plan(private_data_folder / NAME) == PLAN
    assert not (private_data_folder / BEFORE).exists()
