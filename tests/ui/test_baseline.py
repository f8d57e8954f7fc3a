"""The baseline together: how it is begun, seen on the desk, and offered to the plan."""

from __future__ import annotations

import json
import subprocess
from collections.abc import Callable
from dataclasses import replace
from datetime import timedelta
from pathlib import Path
from typing import Any

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QFileDialog
from pytestqt.qtbot import QtBot

from tests.records import made
from tests.records.clinic import FIRST_DAY, TODAY
from tests.ui.editing import OpenEditor, choose, data_in, settle
from tests.ui.fakes import FakeWorld, Make, seen
from tests.ui.patient import ENTER, EYES, TURNS, Person, plan_of
from tests.ui.pictures import keep
from tests.ui.test_desk import Open, folder, look, open_desk  # noqa: F401 - fixtures
from tests.ui.test_desk import choose as choose_person
from tests.ui.test_editor_files import answer
from tests.ui.test_window import cut_in
from tracker.exercises.catalogue import CATALOGUE
from tracker.plan.draft import data_of
from tracker.plan.model import Entry
from tracker.practice.tasks import AskGate
from tracker.records.index import read_folder
from tracker.records.people import people_of
from tracker.records.rows import SessionRow, row_of
from tracker.session.files import data_folder, make_private_folder
from tracker.session.lock import LOCK_NAME, OnlyCopy
from tracker.session.summary_file import Summary, load_summary, save_summary
from ui import wiring
from ui.begun_from_desk import begin_baseline
from ui.cli import main
from ui.desk import text as desk_text
from ui.desk import together
from ui.desk.session_table import session_cells
from ui.desk.trend_table import TrendRow
from ui.desk.window import DeskWindow
from ui.editor.baseline import TAKE, plan_section
from ui.editor.row_view import RowView
from ui.editor.rows import PLAN
from ui.editor.state import State
from ui.editor.window import EditorWindow
from ui.ports import Baseline

pytestmark = pytest.mark.timeout(300)
Begin = Callable[..., Person]


# --- in the program ---


def test_it_is_begun_from_the_tools_and_holds_for_one_session(make: Make, fake: FakeWorld) -> None:
    window = make()
    window.pages["welcome"].offer(plan_of(TURNS))
    person = Person(window, fake)
    person.settle()
    window.director.open_tools()
    person.settle()
    tools = window.pages["tools"]
    person.choose("For therapists: baseline together")
    # Who is alone, or presses twice, changes nothing.
    assert tools.ask.isVisible() and tools.no.hasFocus()
    person.press(ENTER)
    assert person.director.baseline is None and not tools.ask.isVisible()
    person.choose("For therapists: baseline together")
    person.choose("Yes, we do it together")
    welcome = window.pages["welcome"]
    assert window.stack.currentWidget() is welcome and welcome.together.isVisible()
    assert welcome.practise.text() == "Begin the baseline"
    person.choose("No baseline today")
    assert not welcome.together.isVisible() and welcome.practise.text() == "Practise my plan"
    window.expect_baseline(Baseline())
    person.settle()
    person.choose("Begin the baseline")
    # The questions on safety come as ever.
    assert isinstance(person.director.task, AskGate)
    person.director.end_today()
    person.settle()
    (recording,) = fake.recordings
    assert recording.save().summary["baseline"] is True
    # It ended before anything was done, so that the next one is still to be it.
    assert person.director.baseline == Baseline().of(plan_of(TURNS))
    person.choose("Practise again")
    assert welcome.together.isVisible()
    person.choose("Begin the baseline")
    begin_and_turn(person)
    person.director.end_today()
    person.settle()
    assert fake.recordings[-1].save().summary["baseline"] is True
    assert person.director.baseline is None


def begin_and_turn(person: Person) -> None:
    person.none_of_these()
    person.press("0", ENTER)
    person.choose("Begin")
    person.choose("I am in place")
    person.set_up()
    person.measured(8.0, seen)


def test_a_try_is_no_baseline_and_uses_none_up(make: Make, fake: FakeWorld) -> None:
    window = make()
    window.pages["welcome"].offer(plan_of(TURNS))
    person = Person(window, fake)
    person.settle()
    window.expect_baseline(Baseline())
    window.director.open_first("try")
    person.settle()
    person.choose("Try it now")
    assert isinstance(person.director.task, AskGate)
    person.director.end_today()
    person.settle()
    assert fake.recordings[-1].save().summary["baseline"] is not True
    assert person.director.baseline == Baseline().of(plan_of(TURNS))


def test_the_next_baseline_has_a_folder_of_its_own(tmp_path: Path) -> None:
    first = Baseline(tmp_path / "b")
    assert first.anew() == first and Baseline().anew() == Baseline()
    (tmp_path / "b").mkdir()
    (tmp_path / "b-2").mkdir()
    assert first.anew() == Baseline(tmp_path / "b-3")


def test_without_a_plan_it_is_not_offered(make: Make) -> None:
    window = make()
    window.director.open_tools()
    assert not window.pages["tools"].baseline.isVisible()


def test_of_a_plan_that_names_nobody_it_is_not_offered(make: Make) -> None:
    window = make()
    window.pages["welcome"].offer(plan_of(TURNS, person=None))
    window.director.open_tools()
    window.refresh()
    assert not window.pages["tools"].baseline.isVisible()
    window.director.stop()
    window.pages["welcome"].offer(plan_of(TURNS))
    window.director.open_tools()
    window.refresh()
    assert window.pages["tools"].baseline.isVisible()


def test_it_is_for_the_plan_at_hand_alone(make: Make) -> None:
    window = make()
    welcome, director = window.pages["welcome"], window.director
    window.expect_baseline(Baseline())
    assert director.baseline is None
    own = plan_of(TURNS)
    welcome.offer(own)
    window.expect_baseline(Baseline(Path("new")))
    kept = director.baseline
    assert kept == Baseline(Path("new"), own.plan_id, "Wren")
    # Opened once more it is the same; another plan, or another person's, takes it away.
    welcome.offer(plan_of(TURNS))
    assert director.baseline == kept
    for other in ({"plan_id": "another"}, {"person": "Swift"}):
        welcome.offer(own)
        window.expect_baseline(kept)
        welcome.offer(own.model_copy(update=other))
        assert director.baseline is None
        window.expect_baseline(kept)
        assert director.baseline is None
    # So does a plan whose words differed.
    welcome.offer(own)
    window.expect_baseline(kept)
    window.handing_over.take(own)
    window.handing_over._compared(False)
    assert director.baseline is None


def test_a_recording_of_another_plan_is_no_baseline(tmp_path: Path) -> None:
    wanted = Baseline(tmp_path / "wanted").of(plan_of(TURNS, person="Swift"))
    recording = wiring.make_planned(plan_of(TURNS), wanted)
    recording.finish("stopped")
    saved = recording.save()
    assert saved.summary["baseline"] is False and saved.folder != tmp_path / "wanted"


@pytest.mark.parametrize("percent", [100, 200])
def test_nothing_is_cut_on_the_first_page(make: Make, percent: int) -> None:
    window = make(percent=percent)
    window.pages["welcome"].offer(plan_of(TURNS))
    window.expect_baseline(Baseline())
    for _ in range(3):
        window.refresh()
        QApplication.processEvents()
    keep(window, f"pages/baseline-{percent}")
    assert cut_in(window) == []


def test_the_real_recording_says_so_and_lies_where_it_was_wanted(tmp_path: Path) -> None:
    wanted = tmp_path / "clinic" / "baseline-wren"
    recording = wiring.make_planned(plan_of(TURNS), Baseline(wanted))
    recording.finish("stopped")
    saved = recording.save()
    assert saved.folder == wanted and load_summary(wanted / "summary.json").baseline
    plain = wiring.make_planned(plan_of(TURNS), None)
    plain.finish("stopped")
    saved = plain.save()
    assert saved.summary["baseline"] is False and saved.folder.parent != wanted.parent


def test_in_the_clinic_what_was_done_at_home_is_known(
    tmp_path: Path, private_data_folder: Path
) -> None:
    root = write_folder(tmp_path / "one")
    other = session(9, 18.0).model_copy(update={"person": "Swift"})
    for place, one in (
        (root / "swift", other),
        (private_data_folder / "sessions" / "twice", session(1, 18.0)),
        (private_data_folder / "sessions" / "own", session(7, 18.0)),
    ):
        place.mkdir(parents=True)
        save_summary(place / "summary.json", one)
    plan = plan_of(TURNS)
    assert [s.session_id for s in wiring.history_of(plan)] == ["s1", "s7"]
    known = wiring.history_of(plan, root / "baseline-new")
    assert [s.session_id for s in known] == ["s0", "s1", "s2", "s3", "s4", "s5", "s7"]


def test_the_history_is_asked_for_with_the_baselines_folder(make: Make, fake: FakeWorld) -> None:
    window = make()
    asked: list[Path | None] = []
    window.director._world.history = lambda _plan, new: asked.append(new) or []
    window.pages["welcome"].offer(plan_of(TURNS))
    window.expect_baseline(Baseline(Path("there/new")))
    person = Person(window, fake)
    person.settle()
    person.choose("Begin the baseline")
    assert asked == [Path("there/new")]


# --- on the desk ---


def session(day: int, amplitude: float, *, baseline: bool = False) -> Summary:
    """A finished session some days after the first, with turns of one size."""
    found = made.finished().model_dump()
    (turns, *_) = found["exercises"]
    figure = turns["head"]["amplitude_deg"]
    figure |= {"median": amplitude}
    for side in figure["by_side"].values():
        side["median"] = amplitude
    turns["symptoms"] = {"before": 2, "after": 3, "settled_minutes": 1.0, "reasons": {}}
    turns["clarity"] = {"value": "clear", "reason": None}
    when = FIRST_DAY + timedelta(days=day)
    found |= {
        "session_id": f"s{day}",
        "person": "Wren",
        "plan_id": "p1",
        "started_at": f"{when}T09:00:00+01:00",
        "exercises": [turns],
        "baseline": baseline,
    }
    return Summary.model_validate(found)


def sessions(count: int = 5) -> list[Summary]:
    """A baseline at 12 degrees, and sessions at 18 after it."""
    return [session(0, 12.0, baseline=True), *(session(k + 1, 18.0) for k in range(count))]


def write_folder(root: Path) -> Path:
    plan = plan_of(TURNS)
    root.mkdir()
    (root / "plan.json").write_text(
        json.dumps(plan.model_dump(mode="json", exclude_none=True)), encoding="utf-8"
    )
    for k, one in enumerate(sessions()):
        (root / f"s{k}").mkdir()
        save_summary(root / f"s{k}" / "summary.json", one)
    return root


def test_the_desk_names_it_and_compares_with_it(
    open_desk: Open,  # noqa: F811
    tmp_path: Path,
) -> None:
    window = open_desk(write_folder(tmp_path / "one"))
    choose_person(window, "Wren")
    page = window.person_page
    assert "baseline of 28 Sep 2026" in page.about.text()
    rows = [r for r in page.trends.trends.rows if isinstance(r, TrendRow)]
    (row,) = [r for r in rows if r.series.figure == "amplitude_deg" and not r.series.side]
    assert row.cells[1] == "◆ 12.0°" and row.verdict == "▲ rose"
    model = page.trends.trends
    spoken = model.index(model.rows.index(row), 0).data(Qt.ItemDataRole.AccessibleTextRole)
    assert "▲ rose, against the baseline of 28 Sep 2026" in spoken
    told = [session_cells(r, {})[1] for r in page.sessions.sessions.rows]
    assert told[-1] == "◆ baseline, finished" and not any("baseline" in t for t in told[:-1])
    faults = look(window, "baseline-1366-100")
    assert faults == []


def test_the_text_without_a_window_names_it_too(tmp_path: Path) -> None:
    records = read_folder(write_folder(tmp_path / "one"))
    (person,) = people_of(records, FIRST_DAY + timedelta(days=7))
    lines = list(desk_text.person_lines(person))
    assert "  Baseline, taken together in the clinic: 28 Sep 2026" in lines
    assert any("rose since the baseline of 28 Sep 2026" in line for line in lines)
    assert any("28 Sep 2026: baseline, finished" in line for line in lines)
    # One that was over before anything was practised is none.
    empty = [r._replace(sets=()) for r in person.rows]
    assert replace(person, rows=empty).baseline_day is None


def test_the_desk_opens_the_program_with_the_persons_plan(
    open_desk: Open,  # noqa: F811
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    root = write_folder(tmp_path / "one")
    window = open_desk(root)
    choose_person(window, "Wren")
    called: list[tuple[str, ...]] = []
    monkeypatch.setattr(together, "start", lambda words: called.append(words) or True)
    assert window.person_page.baseline.isEnabled()
    window.person_page.baseline.click()
    assert "opens beside this window" in window.person_page.report.said.text()
    (words,) = called
    opened: list[Any] = []
    monkeypatch.setattr(
        "ui.commands.open.open_program",
        lambda *, plan, baseline: opened.append((plan, baseline)) or 0,
    )
    assert main(list(words[words.index("practise") :])) == 0
    ((plan, baseline),) = opened
    assert plan == root / "plan.json" and baseline.folder.parent == root


def test_while_the_program_is_open_the_desk_says_to_close_it_first(
    open_desk: Open,  # noqa: F811
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    window = open_desk(write_folder(tmp_path / "one"))
    choose_person(window, "Wren")
    called: list[tuple[str, ...]] = []
    monkeypatch.setattr(together, "start", lambda words: called.append(words) or True)
    program = OnlyCopy(make_private_folder(data_folder()) / LOCK_NAME)
    assert program.mine
    window.person_page.baseline.click()
    assert called == [] and "Close its window first" in window.person_page.report.said.text()
    program.close()
    window.person_page.baseline.click()
    assert len(called) == 1
    # The desk has let the lock go again.
    program = OnlyCopy(make_private_folder(data_folder()) / LOCK_NAME)
    assert program.mine
    program.close()


def test_from_the_programs_own_window_it_is_begun_in_that_window(
    make: Make, fake: FakeWorld, qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    root = write_folder(tmp_path / "one")
    window = make()
    person = Person(window, fake)
    program = OnlyCopy(make_private_folder(data_folder()) / LOCK_NAME)
    window.director.open_tools()
    monkeypatch.setattr(QFileDialog, "getExistingDirectory", lambda *_: str(root))
    window.pages["tools"].review.click()
    desk = window.beside.desk
    assert isinstance(desk, DeskWindow)
    qtbot.addWidget(desk)
    qtbot.waitUntil(lambda: desk.found is not None, timeout=30_000)
    choose_person(desk, "Wren")
    said, welcome = desk.person_page.report.said, window.pages["welcome"]
    # Nobody has to close this window, which would close the desk with it.
    desk.person_page.baseline.click()
    assert "window is ready for it" in said.text() and desk.isVisible()
    person.settle()
    assert window.stack.currentWidget() is welcome
    assert welcome.practise.text() == "Begin the baseline"
    baseline = window.director.baseline
    assert baseline is not None and baseline.folder is not None
    assert baseline.folder.parent == root and baseline.person == "Wren"
    # The words of the plan are still to be compared, but not now.
    plan = welcome.plan
    assert plan is not None and window.handing_over._check.is_unchecked(plan)
    # While a session goes on it stays as it is.
    person.choose("Begin the baseline")
    assert isinstance(person.director.task, AskGate)
    desk.person_page.baseline.click()
    assert "Something goes on" in said.text()
    assert isinstance(person.director.task, AskGate)
    person.director.end_today()
    person.settle()
    assert fake.recordings[-1].save().summary["baseline"] is True
    # From the page of its figures one more can be begun.
    desk.person_page.baseline.click()
    assert window.stack.currentWidget() is welcome and "is ready" in said.text()
    assert begin_baseline(window, tmp_path / "none.json", root / "new") == "refused"
    program.close()
    desk.close()


def test_the_program_that_is_called_is_really_there() -> None:
    program = list(together.call(Path("none.json"), Path("out")))
    done = subprocess.run(program, capture_output=True, text=True, timeout=60, check=False)
    assert done.returncode == 2 and "none.json: can't be read" in done.stderr


def test_of_a_plan_that_is_nobodys_no_baseline_is_begun(
    open_desk: Open,  # noqa: F811
    tmp_path: Path,
) -> None:
    root = write_folder(tmp_path / "one")
    plan = plan_of(TURNS, person=None)
    (root / "plan.json").write_text(plan.model_dump_json(exclude_none=True), encoding="utf-8")
    window = open_desk(root)
    choose_person(window, "Wren")
    assert not window.person_page.baseline.isEnabled()
    assert "Make one first" in window.person_page.baseline.toolTip()


def test_after_a_baseline_of_today_one_button_shows_what_it_offers(
    open_desk: Open,  # noqa: F811
    tmp_path: Path,
    qtbot: QtBot,
) -> None:
    """In the clinic: the baseline comes into the folder, its ranges and tempo into the plan."""
    root = write_folder(tmp_path / "one")
    plan = plan_of(TURNS.model_copy(update={"tempo_bpm": 40.0}))
    (root / "plan.json").write_text(plan.model_dump_json(exclude_unset=True), encoding="utf-8")
    window = open_desk(root)
    choose_person(window, "Wren")
    page = window.person_page
    assert not page.offer.isVisible()  # the baseline is of another day
    (root / "new").mkdir()
    days = (TODAY - FIRST_DAY).days
    save_summary(root / "new" / "summary.json", session(days, 12.0, baseline=True))
    window.look_again()
    qtbot.waitUntil(page.offer.isVisible, timeout=30_000)
    before = (root / "plan.json").read_bytes()
    page.ranges.click()
    editor = window.editor
    assert editor is not None
    settle()
    # Nothing is changed yet: what would be stands there beside what it is now.
    assert data_in(editor)["entries"][0]["tempo_bpm"] == 40.0
    assert "amplitude_deg" not in data_in(editor)["entries"][0]
    note, button = offer_of(editor)
    low, high = CATALOGUE[TURNS.exercise].amplitude_deg or (0, 0)
    assert f"7 to 12° instead of {low:.0f} to {high:.0f}°" in note.row.text
    assert "60 beats a minute instead of 40 beats a minute" in note.row.text
    assert note.visibleRegion().boundingRect() == note.rect()
    assert button.act is not None and editor.focusWidget() is button.act
    keep(editor, "pages/editor-offer")
    button.act.click()
    settle()
    assert "ranges and tempo" in editor.document.stack.undoText().lower()
    assert data_in(editor)["entries"][0]["tempo_bpm"] == 60.0
    assert data_in(editor)["entries"][0]["amplitude_deg"] == [7, 12]
    assert any("Baseline of 26 Nov 2026" in s.title for s in editor.editing.sections())
    # Nothing is written unasked, and it is one step to take back.
    assert (root / "plan.json").read_bytes() == before
    editor.files.save()
    answer(editor, "edit.replace")
    assert json.loads((root / "plan.json").read_text())["entries"][0]["amplitude_deg"] == [7, 12]
    editor.editing.undo()
    settle()
    assert "amplitude_deg" not in data_in(editor)["entries"][0]
    assert data_in(editor)["entries"][0]["tempo_bpm"] == 40.0
    editor.editing.redo()
    editor.files.save()
    editor.close()
    # The plan has them: there is nothing left to set.
    window.look_again()
    qtbot.waitUntil(lambda: not page.offer.isVisible(), timeout=30_000)
    assert "ranges and tempo" in page.ranges.text().lower()
    for percent in (100, 200):
        window.appearance.set_text(percent)
        page.offer.show()
        settle()
        assert not [f for f in look(window, f"desk-ranges-{percent}") if "ranges" in f.lower()]


def offer_of(window: EditorWindow) -> list[RowView]:
    """What the baseline offers for all entries, and the button."""
    return [v for v in window.editing.form.views if v.row.path == ("entries",)]


# --- in the plan editor ---


def test_sessions_of_nobody_offer_nothing(open_editor: OpenEditor, tmp_path: Path) -> None:
    path = tmp_path / "plan.json"
    path.write_text(plan_of(TURNS, person=None).model_dump_json(exclude_unset=True))
    (tmp_path / "s0").mkdir()
    one = session(0, 12.0, baseline=True).model_copy(update={"person": None})
    save_summary(tmp_path / "s0" / "summary.json", one)
    (nobody,) = people_of(read_folder(tmp_path), FIRST_DAY)
    assert nobody.rows
    window = open_editor(path)
    window.open_for(nobody, tmp_path, path)
    window.files.open(path)
    settle()
    choose(window, ("entry", 0))
    assert acts(window) == []
    assert not any("Baseline" in s.title for s in window.editing.sections())


def open_plan(
    open_editor: OpenEditor, tmp_path: Path, rows: list[SessionRow], turns: Entry = TURNS
) -> EditorWindow:
    path = tmp_path / "plan.json"
    plan = plan_of(turns, EYES)
    # What stands there as null is asked for: nobody's beat.
    path.write_text(plan.model_dump_json(exclude_unset=True), encoding="utf-8")
    window = open_editor(path)
    window.document.know_sessions("Wren", rows)
    window.editing.refresh()
    settle()
    return window


def rows_of(*found: Summary) -> list[SessionRow]:
    return [row_of(s, f"s{k}/summary.json") for k, s in enumerate(found)]


def acts(window: EditorWindow) -> list[str]:
    return [v.row.act_text for v in window.editing.form.views if v.row.act == TAKE]


def take(window: EditorWindow) -> None:
    (button,) = [v.act for v in window.editing.form.views if v.row.act == TAKE]
    assert button is not None
    button.click()


def test_ranges_are_taken_over_by_hand_and_undone(open_editor: OpenEditor, tmp_path: Path) -> None:
    window = open_plan(open_editor, tmp_path, rows_of(*sessions(1)))
    choose(window, ("entry", 0))
    before = data_in(window)
    (text,) = acts(window)
    assert text.startswith("Take over: ") and "°" in text
    assert data_in(window) == before
    take(window)
    settle()
    entry = data_in(window)["entries"][0]
    low, high = entry["amplitude_deg"]
    assert (low, high) == (7, 12)
    # There is nothing left to take over, and nothing wrong with the plan.
    assert acts(window) == [] and window.document.state.plan is not None
    window.editing.undo()
    settle()
    assert data_in(window) == before and len(acts(window)) == 1


def test_all_are_taken_over_in_one_step(open_editor: OpenEditor, tmp_path: Path) -> None:
    window = open_plan(open_editor, tmp_path, rows_of(*sessions(1)))
    choose(window, PLAN)
    before = data_in(window)
    assert acts(window) == ["Take over for all exercises"]
    # What it would change is listed beside it.
    notes = [v.row.text for v in window.editing.form.views if v.row.kind == "note"]
    assert any("symptoms +1. To take over: 7 to 12°" in n for n in notes)
    take(window)
    settle()
    assert "amplitude_deg" in data_in(window)["entries"][0]
    assert data_in(window)["entries"][1] == before["entries"][1]
    window.editing.undo()
    settle()
    assert data_in(window) == before


def test_what_was_not_comfortable_says_why_and_has_no_button(
    open_editor: OpenEditor, tmp_path: Path
) -> None:
    bad = session(0, 12.0, baseline=True)
    bad.exercises[0].symptoms = {"before": 2, "after": 6, "reasons": {}}
    window = open_plan(open_editor, tmp_path, rows_of(bad))
    choose(window, ("entry", 0))
    notes = [v.row.text for v in window.editing.form.views if v.row.kind == "note"]
    assert any("Not offered: symptoms rose by more than 2" in n for n in notes)
    assert acts(window) == []


@pytest.mark.parametrize(
    ("tempo", "takes"), [(40.0, True), (None, False), ((30.0, 50.0), False)], ids=str
)
def test_who_goes_at_their_own_pace_gets_no_beat(
    open_editor: OpenEditor, tmp_path: Path, tempo: Any, takes: bool
) -> None:
    entry = Entry(entry_id="turns", exercise=TURNS.exercise, tempo_bpm=tempo, repetitions=3)
    window = open_plan(open_editor, tmp_path, rows_of(*sessions(1)), entry)
    choose(window, ("entry", 0))
    before = data_in(window)["entries"][0]["tempo_bpm"]
    (text,) = acts(window)
    assert ("beats" in text) == takes
    take(window)
    settle()
    after = data_in(window)["entries"][0]
    assert "amplitude_deg" in after
    assert after["tempo_bpm"] == (60.0 if takes else before)


def test_what_was_done_sitting_is_not_offered_to_the_same_work_standing(
    open_editor: OpenEditor, tmp_path: Path
) -> None:
    standing = TURNS.model_copy(update={"posture": "standing"})
    rows = rows_of(session(0, 12.0, baseline=True))
    window = open_plan(open_editor, tmp_path, rows, standing)
    choose(window, ("entry", 0))
    notes = [v.row.text for v in window.editing.form.views if v.row.kind == "note"]
    assert "done as another exercise" in notes and acts(window) == []


def test_each_entry_that_was_not_done_that_day_says_so(
    open_editor: OpenEditor, tmp_path: Path
) -> None:
    window = open_plan(open_editor, tmp_path, rows_of(session(0, 12.0, baseline=True)))
    choose(window, PLAN)
    notes = [v.row.text for v in window.editing.form.views if v.row.kind == "note"]
    assert any(n.endswith("eyes: not done that day") for n in notes)


def test_what_was_not_done_that_day_is_one_line_after_what_was() -> None:
    # Of a programme of twenty what can be taken over stood among nineteen lines of nothing.
    plan = plan_of(EYES, TURNS, EYES.model_copy(update={"entry_id": "eyes-2"}))
    state = State.of(data_of(plan), rows_of(session(0, 12.0, baseline=True)), None)
    (section,) = plan_section(state)
    first, last = section.rows[0].text.split("\n")
    assert first.startswith(TURNS.entry_id) and "12" in first
    assert last == f"{EYES.entry_id}, eyes-2: not done that day"


def test_without_a_baseline_nothing_is_said_of_one(open_editor: OpenEditor, tmp_path: Path) -> None:
    window = open_plan(open_editor, tmp_path, rows_of(session(0, 12.0)))
    for item in (PLAN, ("entry", 0)):
        choose(window, item)
        assert acts(window) == []
        assert not any("Baseline" in s.title for s in window.editing.sections())


@pytest.mark.parametrize("percent", [100, 200])
def test_the_offer_is_seen_whole(
    open_editor: OpenEditor, tmp_path: Path, qtbot: QtBot, percent: int
) -> None:
    window = open_plan(open_editor, tmp_path, rows_of(*sessions(1)))
    window.appearance.set_text(percent)
    for name, item in (("plan", PLAN), ("entry", ("entry", 0))):
        choose(window, item)
        settle()
        views = [v for v in window.editing.form.views if v.row.act == TAKE]
        window.editing.form.ensureWidgetVisible(views[0])
        faults = look(window, f"editor-baseline-{name}-{percent}")
        assert not [f for f in faults if "Take over" in f or "beats" in f]
