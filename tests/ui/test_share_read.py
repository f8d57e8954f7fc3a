"""What a call leaves of the sharing layout is read back, as it is painted, in all languages."""

from __future__ import annotations

from dataclasses import dataclass, replace
from pathlib import Path
from typing import Any

import pytest
from PySide6.QtCore import QRect, QRectF

from tests.ui import call
from tests.ui.fakes import FakeWorld, Make, turning
from tests.ui.painted import Run, painted_by
from tests.ui.pictures import keep
from tests.ui.test_share import share, turn
from tests.ui.test_window import pixels, to_exercise
from tracker.exercises.events import PRIORITY
from tracker.session.live import LiveState
from ui import words
from ui.share import Board, Sides, board_of

#: What the reader of pictures calls the languages that it reads by lines, and of how many states
#: one is read: all in two of them, a third in the other, whose layout is the same.
READ_AS = {"en": ("eng", 1), "de": ("deu", 1), "es": ("spa", 3)}
#: Least share of the figures that is right in any call (own choice: one read wrong is believed,
#: while a word with a wrong letter is still read).
FIGURES = 0.99
#: Least share of the characters of words that is right, by what a call does to the window.
CALLS = [((1280, 720), 500_000, 0.99, "light"), ((640, 360), 250_000, 0.95, "dark")]
MISSING = "tesseract or one of its languages is missing; ui/start.py test installs it"
_ALL = ("dizziness", "nausea", "unsteadiness")


def states() -> list[Board]:
    """All figures and every cue that a set may show, in the language spoken now."""
    made = []
    for k, code in enumerate(PRIORITY):
        sides = Sides()
        sides.take(turn("right", 0, 11 + 3 * k, 48 + 13 * k))
        sides.take(turn("left", 1, 28 - k, 153 - 7 * k))
        live = LiveState(
            repetitions=7 * k + 3,
            goal_repetitions=20 + 9 * k,
            goal_amplitude_range_deg=(8.0 + k, 17.0 + 2 * k),
            goal_tempo_bpm=40.0 + 7 * k,
            tempo_bpm=43.0 + 6 * k,
        )
        scores = dict(zip(_ALL, (k % 11, (k + 4) % 11, (k + 7) % 11), strict=True))
        when = "after" if k % 2 else "before"
        cue = words.say(f"cue.{code}")
        made.append(board_of(live, sides, counted=True, cue=cue, scores=(when, scores)))
    return made


def film(window: Any, fake: FakeWorld, shown: list[Board]) -> list[Any]:
    """Each board for a second beside a picture that moves."""
    board = window.pages["practice"].share
    start_s = fake.service.time_s
    pictures: list[Any] = []
    for state in shown:
        board.show_board(state)
        for _ in range(call.RATE):
            number = len(pictures)
            angle = turning(start_s + number / call.RATE, start_s, 20.0)
            # Its waits go by the clock, and here a second is as many pictures, not a second.
            board.outline._drawn_s = board.outline._turned_s = 0.0
            board.outline.show_sample(angle)
            frame = pixels(window.grab().toImage())
            corner = frame[90:290, 60:400]
            corner[:] = call.noise(number, *corner.shape[:2])
            pictures.append(frame)
    return pictures


@dataclass(frozen=True, slots=True)
class Text:
    """What is painted of a board: its figures, and its words in rows, with the place of each."""

    figures: list[tuple[str, QRect]]
    rows: list[list[tuple[str, QRect]]]

    def in_figures(self) -> str:
        return "".join(figure for figure, _ in self.figures)

    def in_words(self) -> str:
        return " ".join(word for row in self.rows for word, _ in row)


def texts_of(board: Any, state: Board) -> Text:
    """What is painted of a state, without the line on consent and the exercise's name."""
    board.show_board(state)
    runs = [run for run in painted_by(board).runs if any(c.isalnum() for c in run.text)]
    figures = [run for run in runs if run.text.isdigit()]
    rows = in_rows([run for run in runs if not run.text.isdigit()])
    text = Text([(run.text, run.box.toAlignedRect()) for run in figures], rows)
    told = {*text.in_words().split(), *(figure for figure, _ in text.figures)}
    for part in (state.count, state.tempo, state.asked, state.symptoms, state.cue):
        missing = {word.strip(",،") for word in part.split()} - {w.strip(",،") for w in told}
        assert not missing, f"{missing} of {part!r} is not painted"
    unread = {words.say("share.consent"), state.name}
    return replace(text, rows=[r for r in rows if " ".join(w for w, _ in r) not in unread])


def in_rows(runs: list[Run]) -> list[list[tuple[str, QRect]]]:
    """Words of one size that stand in a line, in reading order, each as high as the whole line."""
    rows: list[list[Run]] = []
    for run in runs:
        last = rows[-1][-1] if rows else None
        if (
            last
            and last.capital_px == run.capital_px
            and min(last.box.bottom(), run.box.bottom()) > max(last.box.top(), run.box.top())
        ):
            rows[-1].append(run)
        else:
            rows.append([run])
    found = []
    for row in rows:
        top, bottom = min(r.box.top() for r in row), max(r.box.bottom() for r in row)
        boxes = [QRectF(r.box.left(), top, r.box.width(), bottom - top) for r in row]
        found.append([(r.text, b.toAlignedRect()) for r, b in zip(row, boxes, strict=True)])
    return found


def opened(make: Make, fake: FakeWorld, language: str, colours: str) -> Any:
    """A window in the layout for a call, in a set."""
    window = make(colours=colours, language=language)
    window.resize(1280, 720)
    to_exercise(window, fake)
    share(window)
    return window


def read_back(
    window: Any, pictures: list[Any], texts: list[Text], folder: Path, reader: str
) -> tuple[list[str], list[str]]:
    """Figures and words of each state, as they stand when it gives way to the next."""
    board = window.pages["practice"].share
    frames = pictures[call.RATE - 1 :: call.RATE]
    both = list(zip(frames, texts, strict=True))
    figures = [[cut_out(f, window, board, box) for _, box in t.figures] for f, t in both]
    rows = [[[cut_out(f, window, board, box) for _, box in row] for row in t.rows] for f, t in both]
    return call.read_figures(figures, folder), call.read_words(rows, folder, reader)


def wrong_of(wanted: list[str], found: list[str]) -> tuple[int, list[tuple[str, str]]]:
    """How many characters are wrong, and the texts that they are in."""
    pairs = list(zip(wanted, found, strict=True))
    wrong = [call.wrong_characters(a, b) for a, b in pairs]
    return sum(wrong), [pair for pair, many in zip(pairs, wrong, strict=True) if many]


def length(texts: list[str]) -> int:
    return sum(len(text.replace(" ", "")) for text in texts)


@pytest.mark.slow
@pytest.mark.timeout(400)
@pytest.mark.parametrize("language", sorted(READ_AS))
@pytest.mark.parametrize(("size", "bits_s", "least", "colours"), CALLS)
def test_a_call_can_be_read(
    make: Make,
    fake: FakeWorld,
    tmp_path: Path,
    size: tuple[int, int],
    bits_s: int,
    least: float,
    colours: str,
    language: str,
) -> None:
    """Every cue and value, tempo, what is asked and symptoms among them; as they are painted."""
    reader, every = READ_AS[language]
    assert {reader, "eng"} <= set(call.reads()), MISSING
    window = opened(make, fake, language, colours)
    shown = states()[::every]
    texts = [texts_of(window.pages["practice"].share, state) for state in shown]
    pictures = film(window, fake, shown)
    received = call.through_a_call(pictures, size, bits_s)
    assert len(received) == len(pictures)
    keep(window, f"pages/call-{size[1]}-{colours}-{language}")
    figures, told = [t.in_figures() for t in texts], [t.in_words() for t in texts]
    # Read in vain would count as right.
    assert length(figures) > 20 * len(shown) and length(told) > 90 * len(shown)
    found = read_back(window, received, texts, tmp_path, reader)
    for wanted, read, right in zip((figures, told), found, (FIGURES, least), strict=True):
        wrong, misread = wrong_of(wanted, read)
        assert 1 - wrong / length(wanted) >= right, (wrong, length(wanted), misread)


@pytest.mark.slow
@pytest.mark.timeout(400)
@pytest.mark.parametrize(("size", "bits_s", "least", "colours"), CALLS)
def test_a_call_in_arabic_can_be_read(
    make: Make,
    fake: FakeWorld,
    tmp_path: Path,
    size: tuple[int, int],
    bits_s: int,
    least: float,
    colours: str,
) -> None:
    """Figures as in the others; words as far as the reader reads them before the call.

    It loses a line with a vowel sign there already (98 % of the characters were right), so words
    are held to what the call takes from them.
    """
    assert {"ara", "eng"} <= set(call.reads()), MISSING
    window = opened(make, fake, "ar", colours)
    shown = states()[::3]
    texts = [texts_of(window.pages["practice"].share, state) for state in shown]
    pictures = film(window, fake, shown)
    received = call.through_a_call(pictures, size, bits_s)
    keep(window, f"pages/call-{size[1]}-{colours}-ar")
    figures = [t.in_figures() for t in texts]
    told = [call.plain_arabic(t.in_words()) for t in texts]
    _, before = read_back(window, pictures, texts, tmp_path, "ara")
    read, after = read_back(window, received, texts, tmp_path, "ara")
    before, after = ([call.plain_arabic(text) for text in t] for t in (before, after))
    wrong, misread = wrong_of(figures, read)
    assert 1 - wrong / length(figures) >= FIGURES, (wrong, length(figures), misread)
    # So that what the call takes is not taken of nothing.
    unread, _ = wrong_of(told, before)
    assert length(told) > 90 * len(shown) and unread <= 0.05 * length(told)
    lost, misread = wrong_of(before, after)
    assert 1 - lost / length(told) >= least, (lost, length(told), misread)


def cut_out(frame: Any, window: Any, board: Any, box: QRect) -> Any:
    """A text of the board in a received picture, without the lines above and below it."""
    scale = frame.shape[1] / window.width()
    whole = QRect(board.mapTo(window, box.topLeft()), box.size()).adjusted(-6, -2, 6, 2)
    left, top = int(whole.left() * scale), int(whole.top() * scale)
    right, bottom = int((whole.right() + 1) * scale) + 1, int((whole.bottom() + 1) * scale) + 1
    return frame[max(top, 0) : bottom, max(left, 0) : right]


def test_the_reader_of_pictures_counts_wrong_characters() -> None:
    assert call.wrong_characters("A little bigger", "A little biger") == 1
    assert call.wrong_characters("17 °", "17°") == 0
    assert call.wrong_characters("104 a second", "") == 10
