"""Languages: everything that is seen or heard comes through translation, and nothing is cut."""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator
from dataclasses import astuple
from itertools import product
from pathlib import Path
from typing import Any

import pytest
from PySide6.QtCore import QLocale, Qt, QTranslator
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget

import calibration
from tests.ui.fakes import SIZE, FakeWorld, Make, Voice
from tests.ui.marked import shown_texts, unmarked
from tests.ui.patient import Person
from tests.ui.pictures import keep
from tests.ui.test_every_page import WALKS, pages
from tests.ui.test_window import cut_in, pixels
from tracker.handover.word_list import WORD_LIST
from tracker.plan.starter import starter_plan
from ui import words
from ui.app import SMALLEST, Window
from ui.keys import KEYS, PAGE_KEYS
from ui.languages import CODES, FOLDER, LANGUAGES, SOURCE, language_of
from ui.share import Board
from ui.sounds.engine import Engine
from ui.sounds.voice import QtVoice
from ui.translating import (
    brought_up,
    compile_to,
    compiled,
    faults,
    file_of,
    read,
    sources,
    write,
)
from ui.widgets.basic import Words
from ui.widgets.choices import OneOf
from ui.widgets.field import TargetField
from ui.widgets.header import CameraMark
from ui.widgets.paths import shown_path
from ui.widgets.scale import Scale
from ui.widgets.share_board import ShareBoard
from ui.widgets.share_text import text_of
from ui.words.told import TOLD_WORDS

TRANSLATED = [code for code in CODES if code != SOURCE]


# --- the files ---


@pytest.mark.parametrize("code", TRANSLATED)
def test_nothing_is_untranslated(code: str) -> None:
    assert not faults(read(file_of(code)), sources())


@pytest.mark.parametrize("code", TRANSLATED)
def test_the_compiled_file_is_that_of_the_words(code: str) -> None:
    assert (FOLDER / f"turnpost_{code}.qm").read_bytes() == compiled(code)


@pytest.mark.parametrize("code", TRANSLATED)
def test_the_file_is_as_the_script_writes_it(code: str, tmp_path: Path) -> None:
    path = tmp_path / "again.ts"
    write(path, code, brought_up(read(file_of(code)), sources()))
    assert path.read_text(encoding="utf-8") == file_of(code).read_text(encoding="utf-8")


def test_new_changed_and_lost_words_are_told(tmp_path: Path) -> None:
    path = tmp_path / "a.ts"
    old = {("c", "same"): "Stay {n}", ("c", "new_words"): "Once", ("c", "gone"): "Gone"}
    texts = brought_up({}, old)
    assert len(faults(texts, old)) == 3
    done = {k: type(t)(t.source, f"x {t.source}", True) for k, t in texts.items()}
    write(path, "de", done)
    assert read(path) == done
    wanted = {("c", "same"): "Stay {n}", ("c", "new_words"): "Other", ("c", "added"): "More"}
    assert len(faults(done, wanted)) == 3
    after = brought_up(done, wanted)
    assert after["c", "same"].finished and not after["c", "new_words"].finished
    assert after.keys() == wanted.keys() and len(faults(after, wanted)) == 2


@pytest.mark.parametrize("wrong", ["Zwei von", "{m} von {goal}", ""])
def test_a_field_that_is_missing_is_told(wrong: str) -> None:
    wanted = {("c", "k"): "{n} of {goal}"}
    (text,) = brought_up({}, wanted).values()
    assert faults({("c", "k"): type(text)(text.source, wrong, True)}, wanted)


def test_an_unfinished_text_is_not_shown(tmp_path: Path) -> None:
    """Rather the English than an older meaning."""
    changed = {("turnpost", "ask.yes"): "Yes, please"}
    path = tmp_path / "a.ts"
    write(path, "de", brought_up(read(file_of("de")), changed))
    compile_to(path, path.with_suffix(".qm"))
    translator = QTranslator()
    translator.load(str(path.with_suffix(".qm")))
    assert not translator.translate("turnpost", "Yes, please", "ask.yes")


# --- every word goes through it ---


#: What is no word: units and names of keys and devices, and the languages' own names.
_NO_WORDS = {"cm", "r", "Test camera", "A +", "A −", "A", *(name for _, name in LANGUAGES)}
#: Keys that bear the same on every keyboard, and what is left of those beside a translated one.
_NO_WORDS |= {
    k.sequence.replace("Ctrl", "⟦Ctrl⟧")
    for k in (*KEYS, *PAGE_KEYS)
    if f"help.name.{k.sequence}" not in words.WORDS
}


def no_values(text: str, fake: FakeWorld) -> str:
    """A text without what is filled in and is no word of ours: paths, a plan's name, its words."""
    plain = text.replace("\u200b", "").replace(str(fake.folder.parent), "")
    plain = re.sub(r"/data-of-turnpost(/sessions/[\w-]+)?", "", plain)
    plain = re.sub(r"(?<=⟧)/?file \d\.age|plan-7(?= \(\d+\))", "", plain)
    numbered = re.fullmatch(r"⟦⟧\d⟦\. ⟧(\w+)⟦⟧", plain)
    return "" if numbered and numbered[1] in WORD_LIST else plain


def texts_of(window: Window) -> Iterator[str]:
    """Likewise, with what is drawn, not laid out, and the title."""
    yield from shown_texts(window)
    for widget in window.findChildren(QWidget):
        if not widget.isVisible():
            continue
        if isinstance(widget, TargetField):
            yield widget.hint
        if isinstance(widget, CameraMark):
            yield from (widget.text, widget.drawn)
        if isinstance(widget, ShareBoard):
            # As whole texts: it may break them.
            for text in astuple(widget.board):
                yield from text if isinstance(text, tuple) else (text,)
            yield from (text_of(r.line) for r in widget.rows(Board()) if r.line)
    yield window.windowTitle()


@pytest.mark.slow
@pytest.mark.usefixtures("marked")
@pytest.mark.parametrize("which", sorted(WALKS))
def test_every_text_that_is_seen_goes_through_translation(
    make: Make, fake: FakeWorld, which: str
) -> None:
    voice = fake.voice = Voice()
    window = make()
    looked, faults = 0, set()
    for name in pages(window, fake, which):
        for text in (*texts_of(window), *voice.texts):
            looked += bool(text)
            left = unmarked(no_values(text.replace(shown_path(fake.folder), ""), fake))
            if left and left not in _NO_WORDS and text not in _NO_WORDS:
                faults.add(f"{name}: {text!r}")
    assert looked > 100 and (which != "planned" or len(voice.texts) > 4)
    assert not faults


def test_a_text_beside_translation_would_be_found() -> None:
    assert unmarked("⟦Go on⟧ 12 °, ⟦⟧3⟦ of ⟧⟦ten⟧⟦⟧") == ""
    assert unmarked("⟦Go on⟧ now") == "now"
    assert unmarked("⟦Not measured: ⟧too dark⟦⟧") == "too dark"


# --- what comes from below ---


def _refusals() -> set[str]:
    """Forms of the sentences that calibration refuses with, fields as ``{}``."""
    found = set()
    folder = Path(calibration.__file__).parent
    for name in ("face_template", "fit", "lens_fit", "mark", "measurer", "reuse"):
        tree = ast.parse((folder / f"{name}.py").read_text(encoding="utf-8"))
        named = {
            n.targets[0].id: n.value.value
            for n in tree.body
            if isinstance(n, ast.Assign)
            and isinstance(n.targets[0], ast.Name)
            and isinstance(n.value, ast.Constant)
        }
        for node in ast.walk(tree):
            called = isinstance(node, ast.Call) and getattr(node.func, "id", "") == "InputError"
            if called:
                found.add(_form(node.args[0], named))
    return found


def _form(node: ast.expr, named: dict[str, Any]) -> str:
    if isinstance(node, ast.Constant):
        return str(node.value)
    assert isinstance(node, ast.JoinedStr)
    parts = []
    for part in node.values:
        if isinstance(part, ast.Constant):
            parts.append(str(part.value))
        else:
            assert isinstance(part, ast.FormattedValue)
            name = part.value.id if isinstance(part.value, ast.Name) else ""
            parts.append(str(named.get(name, "{}")))
    return "".join(parts)


def test_every_refusal_of_a_set_up_has_words() -> None:
    refusals = _refusals()
    assert len(refusals) >= 10
    told = [str(text) for text in TOLD_WORDS.values()]
    for form in refusals:
        # A field of theirs may hold a word or a number.
        like = re.compile(re.escape(form).replace(r"\{\}", ".+"))
        assert any(like.fullmatch(text) for text in told), form


def test_a_sentence_from_below_is_said_in_the_language_chosen(make: Make) -> None:
    make(language="de")
    text = "the mark would ask for a turn of 42 degrees; put it farther in"
    assert words.told(text) == words.say("told.mark_in", turn="42") != text
    assert words.told("something odd of the system") == "something odd of the system"


def test_stages_of_the_starter_have_words() -> None:
    assert {s.name for s in starter_plan().stages} <= set(TOLD_WORDS.values())


# --- every page in every language ---


#: Twice the usual text, in the window of a laptop and in the smallest (there every walk comes in
#: two languages, the next walk in the other two); and the usual text, which shows what has no room
#: at 200 %, such as the exercise's name beside a set. There German stands for all: of our
#: languages it has the most words that are too long for a narrow place.
_LOOKS = [
    *product(CODES, [200], (SIZE,), sorted(WALKS)),
    *((c, 200, SMALLEST, w) for k, w in enumerate(sorted(WALKS)) for c in CODES[k % 2 :: 2]),
    *(("de", 100, SIZE, which) for which in sorted(WALKS)),
]


@pytest.mark.slow
@pytest.mark.parametrize(("language", "percent", "size", "which"), _LOOKS)
def test_nothing_is_cut_in_any_language(
    make: Make, fake: FakeWorld, language: str, percent: int, size: tuple[int, int], which: str
) -> None:
    window = make(percent=percent, language=language)
    window.resize(*size)
    faults = []
    for k, name in enumerate(pages(window, fake, which)):
        keep(window, f"pages/languages/{language}-{percent}-{size[0]}-{which}-{k:02d}-{name}")
        assert window.size().toTuple() == size, f"{name} made the window larger"
        faults += [f"{name}: {fault}" for fault in cut_in(window)]
    assert not faults


# --- what a text says of others ---


@pytest.mark.parametrize("code", TRANSLATED)
def test_a_text_that_names_a_button_names_it_as_it_is_called(code: str) -> None:
    texts = read(file_of(code))
    looked = 0
    for (context, key), text in texts.items():
        for quoted in re.findall(r"“([^{]+?)”", text.source):
            called = {t.words for t in texts.values() if t.source == quoted}
            assert any(words in text.words for words in called), (context, key, called)
            looked += 1
    assert looked >= 3


@pytest.mark.parametrize("code", TRANSLATED)
def test_letters_of_keys_stay(code: str) -> None:
    """Longer keys have names of their own on keyboards: space, and control in German."""
    for (_, key), text in read(file_of(code)).items():
        for pressed in re.findall(r"\((Esc|F\d+|[A-Z])\)|, key ([A-Z])$", text.source):
            letter = "".join(pressed)
            assert re.search(rf"\b{letter}\b", text.words), key


def test_the_voice_asked_for_speaks_the_language(
    make: Make, monkeypatch: pytest.MonkeyPatch
) -> None:
    opened: list[tuple[str, ...]] = []
    monkeypatch.setattr(Engine, "open", lambda _self, *given: opened.append(given))
    for code in TRANSLATED:
        make(language=code)
        QtVoice(apart=False).prepare()
    assert [language for _, language, _ in opened] == TRANSLATED


# --- right to left ---


def test_in_arabic_what_is_read_changes_sides_and_what_is_measured_does_not(
    make: Make, fake: FakeWorld
) -> None:
    window = make(language="ar")
    person = Person(window, fake)
    person.settle()
    mark, button = window.header.mark, window.header.buttons[-1]
    assert mark.x() > button.x()
    welcome = window.pages["welcome"]
    assert welcome.layoutDirection() == Qt.LayoutDirection.RightToLeft
    field = window.fields.practice
    field.resize(600, 400)
    right, left = field.centre_px((50.0, 0.0)), field.centre_px((-50.0, 0.0))
    assert right.x() > left.x()
    assert field._bow_angle(15.0) > 0
    scale = Scale()
    scale.resize(1000, 100)
    scale.show()
    QApplication.processEvents()
    steps = scale._group
    assert steps.button(0).x() > steps.button(10).x()
    scale.choose(3)
    for key, value in ((Qt.Key.Key_Left, 4), (Qt.Key.Key_Right, 3), (Qt.Key.Key_Up, 4)):
        QTest.keyClick(scale, key)
        assert scale.value == value
    scale.close()


@pytest.mark.parametrize("percent", [100, 200])
def test_a_full_line_of_arabic_is_not_cut_at_its_end(make: Make, percent: int) -> None:
    """No ink in the outermost column, however wide: what went on beyond it would leave some."""
    make(language="ar")
    label = Words(words.say("caution.help"))
    label.set_percent(percent)
    touched = []
    for width in range(300, 900, 5):
        label.resize(width, label.heightForWidth(width))
        drawn = pixels(label.grab().toImage())
        assert (drawn != drawn[0, 0]).any()
        if (drawn[:, 0] != drawn[0, 0]).any():
            touched.append(width)
    assert not touched


def test_choices_stand_in_reading_order(make: Make) -> None:
    for code, mirrored in (("de", False), ("ar", True)):
        window = make(first=None, language=code)
        buttons = window.pages["first"].looks.findChildren(OneOf)
        (first, second) = buttons[0], buttons[1]
        assert (first.x() > second.x()) == mirrored
        window.close()


@pytest.mark.parametrize(("code", "isolated"), [("de", False), ("ar", True)])
def test_a_path_keeps_its_order_among_words(make: Make, code: str, isolated: bool) -> None:
    make(language=code)
    assert shown_path(Path("/a/b")).startswith("\u2066") == isolated


def test_the_systems_language_is_spoken_where_none_is_chosen(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    for name, code in (("ar_MA", "ar"), ("de_AT", "de"), ("fi_FI", "en"), ("C", "en")):
        monkeypatch.setattr(QLocale, "system", lambda name=name: QLocale(name))
        assert language_of("") == code
    assert language_of("es") == "es" and language_of("xx") == "en"


# --- words of safety ---

#: What each has to name, as stems, in every language: a half that is lost is a half unsaid.
_NAMED: dict[str, dict[str, tuple[str, ...]]] = {
    "care.flashes": {
        "en": ("moving", "flashing", "seizure", "migraine", "not do"),
        "de": ("bewegte", "flackernde", "Krampfanfall", "Migräne", "nicht"),
        "es": ("mueven", "parpadean", "convulsión", "migraña", "no haga"),
        "ar": ("متحركة", "وامضة", "تشنج", "شقيقة", "لا تفعل"),
    },
    "care.walk": {
        "en": ("at your side", "behind", "backward"),
        "de": ("neben", "hinter", "rückwärts"),
        "es": ("a su lado", "detrás", "hacia atrás"),
        "ar": ("جانبك", "وخلفك", "إلى الخلف"),
    },
    "exercise.walk": {
        "en": ("forward", "backward"),
        "de": ("Vorwärts", "rückwärts"),
        "es": ("delante", "atrás"),
        "ar": ("الأمام", "الخلف"),
    },
    "caution.help": {
        "en": ("sudden bad headache", "stand or walk", "sudden loss of hearing"),
        "de": ("plötzlichen starken Kopfschmerzen", "stehen oder gehen", "plötzlichem Hörverlust"),
        "es": ("fuerte y repentino", "de pie o caminar", "pérdida repentina"),
        "ar": ("صداع شديد مفاجئ", "الوقوف أو المشي", "فقدان مفاجئ"),
    },
    "sheet.support.helper": {
        "en": ("close", "hold you"),
        "de": ("nahe", "zu halten"),
        "es": ("cerca", "sujetarle"),
        "ar": ("قريبًا", "تصل يده إليك"),
    },
    "caution.stop": {
        "en": ("unwell", "pain", "dizziness"),
        "de": ("unwohl", "Schmerzen", "Schwindel"),
        "es": ("mal", "dolor", "mareo"),
        "ar": ("بسوء", "تألمت", "الدوخة"),
    },
    # All symptoms that the plan asks for are meant, not dizziness alone.
    "sheet.stop.settle": {
        "en": ("symptoms", "more than"),
        "de": ("Beschwerden", "mehr als"),
        "es": ("síntomas", "más de"),
        "ar": ("الأعراض", "أكثر من"),
    },
}


@pytest.mark.parametrize("key", sorted(_NAMED))
def test_no_half_of_a_word_of_safety_is_lost(key: str) -> None:
    for code, named in _NAMED[key].items():
        text = str(words.WORDS[key])
        if code != SOURCE:
            text = read(file_of(code))[words.CONTEXT, key].words
        assert not [part for part in named if part not in text], (code, text)


@pytest.mark.parametrize(("code", "near"), [("de", "weit"), ("es", "lejos"), ("ar", "بعد")])
def test_a_movement_that_is_too_small_is_not_called_too_near(code: str, near: str) -> None:
    """In these languages "further" also means to sit farther away."""
    texts = read(file_of(code))
    for key in ("cue.too_small", "cue.too_large"):
        assert near not in texts[words.CONTEXT, key].words
