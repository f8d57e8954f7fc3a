"""The live page: a target, figures around it, one cue, and a stop that always works."""

# ruff: noqa: N802, ARG002 - the names and arguments are Qt's

from __future__ import annotations

import time
from dataclasses import replace
from math import ceil

from PySide6.QtCore import QRect, QSize, Qt
from PySide6.QtWidgets import QVBoxLayout, QWidget

from tracker.exercises.catalogue import CATALOGUE
from tracker.session.live import LiveState
from ui import theme, words
from ui.cards import dose_words
from ui.manner import how_of
from ui.pages.practice_buttons import PracticeButtons
from ui.pages.practice_figures import TargetFigures, set_line
from ui.session.flow import TROUBLES, Director, Phase
from ui.session.set_figure import Large, asked_words, clock_words, set_figure, time_left
from ui.share import Board, Held, Sides, board_of
from ui.widgets.basic import Words, keep_room
from ui.widgets.far import FarBoard
from ui.widgets.field import FieldState, TargetField
from ui.widgets.picture import Picture
from ui.widgets.remedy import Remedy, places_around, remedy_words
from ui.widgets.share_board import ShareBoard

#: Height that the target has at least, before the lines above it go.
LEAST_FIELD_PX = 200


class PracticePage(QWidget):
    """Countdown, exercise, pause, saving."""

    def __init__(self, director: Director, field: TargetField) -> None:
        super().__init__()
        self._director = director
        self.field = field
        self._figures = TargetFigures(director)
        self.title = Words(role="lead", bold=True, centred=True)
        self.asked = Words(role="body", soft=True, centred=True)
        self.cue = Words(role="title", centred=True)
        self.remedy = Remedy()
        self._buttons = made = PracticeButtons(self, director)
        self.stop, self.double, self.unwell = made.stop, made.double, made.unwell
        self.pause, self.done, self.show_me = made.pause, made.done, made.show_me
        self._row = made.row
        self.show_me.clicked.connect(self.toggle_picture)
        self.picture = Picture()
        self.picture.hide()
        self.board = FarBoard(field)
        self.share = ShareBoard(field)
        self._turns = Sides()
        self._hold_anew()
        self._lay_out()

    def _lay_out(self) -> None:
        column = self._column = QVBoxLayout(self)
        column.setContentsMargins(theme.L, 0, theme.L, theme.L)
        column.setSpacing(theme.S)
        column.addWidget(self.title)
        column.addWidget(self.asked)
        column.addWidget(self.field, 1)
        column.addWidget(self.share, 1)
        self.share.hide()
        column.addWidget(self.cue)
        column.addWidget(self.remedy)
        column.addLayout(self._row)
        self.picture.setParent(self)
        self.picture.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)

    def set_percent(self, percent: int) -> None:
        """Keep the lines' room."""
        self._keep_room()

    def _keep_room(self) -> None:
        """Nothing moves when a cue comes and goes: the target least of all."""
        width = self.width() - 2 * theme.L
        cues = [words.say(k) for k in words.WORDS if k.startswith("cue.")]
        missing = [
            words.say("practice.not_measured", reason=words.say(k))
            for k in words.WORDS
            if k.startswith("reason.")
        ]
        others = [words.say(f"practice.{k}") for k in ("paused", "disk", "busy")]
        others += [words.say(f"lost.{k}") for k in ("hold", "paused", "again")]
        others.append(words.say("moved.set"))
        others += [words.say_or(f"trouble.{state}", "trouble.failed") for state in TROUBLES]
        keep_room(self.cue, [*cues, *missing, *others], width)
        keep_room(self.title, [words.say(f"exercise.{e}") for e in CATALOGUE], width)
        longest = [
            f"{words.times(20)}   ·   {words.say(k, low=15, high=20, tempo=120)}"
            for k in ("practice.asked", "practice.asked_less")
        ]
        keep_room(self.asked, longest, width)
        if self.remedy.over:
            self._lay_over()
        elif not self.remedy.isHidden():
            # There is something to be read: the line over it takes no more than it needs.
            keep_room(self.cue, [self.cue.text()], width)
            over = 0 if self.cue.isHidden() else self.cue.height()
            row, field = self._row.heightForWidth(width), self.field.minimumSizeHint().height()
            self.remedy.fit(width, self.height() - over - row - field - theme.L - 4 * theme.S)
        self._show_heads()

    def _show_heads(self) -> None:
        """In a low window with large text the target needs the room of the lines above it."""
        width = self.width() - 2 * theme.L
        cue = 0 if self.cue.isHidden() else self.cue.height()
        row = self._row.heightForWidth(width)
        below = cue + self.remedy.takes_px(width) + row + theme.L + 4 * theme.S
        least = max(LEAST_FIELD_PX, 2 * self.field.bow_reach_px())
        free = self.height() - below - least
        # A target that goes up and down needs all there is.
        wanted = not self._director.sharing and not self._goes_up()
        asked = wanted and free >= self.asked.height()
        title = asked and free >= self.asked.height() + self.title.height()
        for part, on in ((self.title, title), (self.asked, asked)):
            if part.isHidden() == on:
                part.setVisible(on)

    def _goes_up(self) -> bool:
        """Whether the target moves up and down."""
        dose = self._director.dose
        exercise = CATALOGUE.get(dose.exercise) if dose is not None else None
        return exercise is not None and exercise.channel == "head_pitch" and bool(exercise.target)

    def resizeEvent(self, event: object) -> None:
        """Keep the lines' room, and the picture in the corner, away from the target."""
        self._keep_room()
        width = max(240, self.width() // 5)
        height = width * 9 // 16
        y = self.height() - height - theme.L
        # The other corner than that of the first buttons.
        mirrored = self.layoutDirection() == Qt.LayoutDirection.RightToLeft
        x = theme.L if mirrored else self.width() - width - theme.L
        self.picture.setGeometry(x, y, width, height)

    def enter(self) -> None:
        """The page comes to the front, clean."""
        self._figures.forget()
        self._turns = Sides()
        self._hold_anew()
        self._show_heads()
        self.field.show_backdrop(None)
        self._buttons.place_keys()

    def toggle_picture(self) -> None:
        """Show the picture of oneself, or hide it; while one shares, the outline."""
        if self._director.sharing:
            self.share.outline_wanted = not self.share.outline_wanted
            self.refresh()
            return
        self._director.show_picture(not self._director.picture_shown)
        self.refresh()

    def set_sharing(self, sharing: bool) -> None:
        """Lay the page out for a call, or for the person alone."""
        if sharing == (self.field.parentWidget() is self.share):
            return
        if sharing:
            self.field.setParent(self.share)
            self.field.lower()
        else:
            self._column.insertWidget(2, self.field, 1)
        self.field.figures = not sharing
        self.field.show()
        self.cue.setVisible(not sharing)
        self._show_heads()
        self.share.setVisible(sharing)
        self._hold_anew()
        self.refresh()

    def _hold_anew(self) -> None:
        """Nothing of the set stands at the far end yet; the bead's side is not for reading."""
        self._held = Held(Board())
        self._held_state = Held(FieldState(), apart=("side",))
        self._held_large = Held(Large())

    def _show_share(self) -> None:
        """The texts and the outline for the far end."""
        director, share = self._director, self.share
        # Only these have targets that lie far above and below.
        beside = self._jumps_up() or self._goes_up()
        if beside != share.beside:
            share.arrange(beside=beside)
        board = Board(cue=self.cue.text())
        if director.phase != Phase.saving:
            entry = director.entry
            # Elsewhere the count or the time stands large where the target would be.
            shown = director.target_coming
            timed = shown and entry is not None and entry.seconds is not None
            board = board_of(
                director.live if director.phase in (Phase.exercise, Phase.paused) else None,
                self._turns,
                counted=shown and not director.until_said and not director.count_lost,
                name=self.title.text(),
                time=clock_words(ceil(director.set_left_s)) if timed else "",
                cue=self.cue.text(),
                scores=director.scores,
            )
        if director.just_marked and not board.cue:
            board = replace(board, cue=words.say("call.marked"))
        if self.board.isHidden() or self.board.how.isHidden():
            board = replace(board, remedy=remedy_words(director))
        shown = self._held.offer(board, time.monotonic())
        share.show_board(shown)
        share.outline.setVisible(share.outline_wanted and not shown.remedy)
        share.outline.show_sample(director.sample)

    def prepare(self, exercise: str, size: QSize) -> None:
        """Take a size before being shown in it, to tell how much room a target will have."""
        self._buttons.show(outline=self.share.outline_wanted)
        self.resize(size)
        self._column.activate()
        channel = CATALOGUE[exercise].channel
        goes_up = channel == "head_pitch" and bool(CATALOGUE[exercise].target)
        self.share.arrange(beside=channel == "eye_pitch" or goes_up)

    def refresh(self) -> None:
        """Show the director's state."""
        self._refresh()
        self._show_remedy()
        if self._director.sharing:
            self._show_share()

    def _refresh(self) -> None:
        director = self._director
        dose = director.dose
        if dose is not None:
            self.title.setText(words.say_or(f"exercise.{dose.exercise}", "program"))
        self._buttons.show(outline=self.share.outline_wanted)
        live = director.live
        if director.phase == Phase.saving:
            self.board.hide()
            self._quiet(words.say("practice.saving"))
            return
        far = not director.target_coming
        if director.phase == Phase.countdown:
            seconds = max(1, -int(-director.countdown_s // 1))
            if director.waits_for_sight:
                self._quiet(words.say("cue.left_picture"))
                self._show_far(("–", words.say("cue.left_picture")))
                return
            starting = words.say("practice.countdown", seconds=seconds)
            number = words.number(seconds)
            # In a call it stands in the line that holds each number for a second.
            beside = "" if far or director.sharing else number
            self._quiet("" if far else starting, beside, target=not far)
            self._show_far((number, words.say("far.begins")))
            return
        if director.paused_by_camera:
            self._show_lost()
            return
        self._show_far()
        if director.phase == Phase.paused:
            self._quiet(words.say("moved.set" if director.paused_by_move else "practice.paused"))
            return
        if director.asks_if_well:
            asked = words.say("cue.possible_fall")
            self._quiet(asked)
            self._show_far(("?", asked), words.say("say.out_of_sight"))
            return
        if live is not None:
            self._show_live(live)

    def _show_lost(self) -> None:
        """Paused for the camera's sake: all that is to be read or read out, as large as it goes."""
        director = self._director
        at_once, about = director.lost_words()
        self._quiet(at_once)
        self.board.show_set("–", words.say("lost.figure"), f"{at_once} {about}")

    def _show_remedy(self) -> None:
        """What to do about the camera; in a pause for its sake large, if there is room."""
        director = self._director
        paused = director.paused_by_camera
        over = director.target_coming and not paused
        if over != self.remedy.over:
            self._switch_remedy(over=over)
        for _ in range(2):
            large = paused and not self.board.how.isHidden()
            if not self.remedy.follow(director, elsewhere=large):
                break
            under = paused and not self.remedy.isHidden()
            self.cue.setVisible(not director.sharing and not under)
            self._keep_room()
            # With the lines above it gone the large one may have room: both at once never stand.
            self._column.activate()
        if over:
            # The lines around it, and the field with them, may have come or gone since.
            self._lay_over()

    def _switch_remedy(self, *, over: bool) -> None:
        """Whoever looks at a target keeps it in its place: the words lie over what is around."""
        self.remedy.over = over
        if over:
            self._column.removeWidget(self.remedy)
        else:
            self._column.insertWidget(self._column.indexOf(self.cue) + 1, self.remedy)
        self.remedy.set_percent(self.remedy.percent)

    def _lay_over(self) -> None:
        """Place what is to be done about the camera: above the target or below, or beside it."""
        if self.remedy.isHidden():
            return
        field, left, right = self.field.geometry(), theme.L, self.width() - theme.L
        shown = [p.y() for p in (self.title, self.asked) if not p.isHidden()]
        top, band = min([field.y(), *shown]), round(self.field.disc_px()) + theme.S
        upright = self._jumps_up() or self._goes_up()
        if upright:
            # Beside the targets it would cover half of each line above them.
            top = field.y()
        page = QRect(left, top, right - left, field.bottom() - top)
        mirrored = self.layoutDirection() == Qt.LayoutDirection.RightToLeft
        places = places_around(page, field.center(), band, upright=upright, mirrored=mirrored)
        self.remedy.lie_over(places, field.y() - top)

    def _jumps_up(self) -> bool:
        """Whether the target jumps between a place above and one below."""
        dose = self._director.dose
        return dose is not None and CATALOGUE[dose.exercise].channel == "eye_pitch"

    def _quiet(self, text: str, number: str = "", *, target: bool = False) -> None:
        self.cue.setText(text)
        self.field.show_state(FieldState())
        self.field.show_hint(number, large=True)
        self.field.show_targets([(0.0, 0.0)] if target else [])
        self.picture.hide()

    def _show_far(self, figure: tuple[str, str] | None = None, how: str = "") -> None:
        """A large figure and large words, where the eyes have no target on the screen.

        ``how`` stands in place of how the exercise is done.
        """
        director, entry = self._director, self._director.entry
        if entry is None or director.target_coming:
            self.board.hide()
            return
        live = director.live
        figure = figure or set_figure(
            entry,
            repetitions=None if live is None or director.count_lost else live.repetitions,
            left_s=director.set_left_s,
            ran_s=director.set_ran_s,
        )
        how = how or how_of(entry)
        # A time is known whatever the camera sees; a count is not.
        counted = entry.exercise.counted and entry.seconds is None
        counted = counted and director.phase == Phase.exercise and not director.count_lost
        large = Large(*figure, how, measured=not (counted and director.not_measured))
        if director.sharing:
            large = self._held_large.offer(large, time.monotonic())
        self.board.show_set(large.figure, large.caption, large.how, measured=large.measured)
        self.asked.setText(dose_words(entry, tempo=False))

    def _show_live(self, live: LiveState) -> None:
        director = self._director
        asked = director.asked
        self.field.distance_mm = director.drawn_distance_mm
        self.field.show_hint("")
        if asked is not None:
            if asked.path is not None:
                self.move_target()
            else:
                now_s = director.now_s
                self.field.show_targets(asked.places_at(now_s), asked.place_at(now_s))
        self.cue.setText(set_line(director, live))
        if director.target_coming:
            left = time_left(director.set_left_s)
            any_key = words.say("practice.any_key") if director.any_key_stops else ""
            parts = (left, asked_words(live, director.entry), any_key)
            self.asked.setText("   ·   ".join(t for t in parts if t))
            state = self._figures.state(live, asked, upright=self._goes_up())
            if director.sharing:
                state = self._held_state.offer(state, time.monotonic())
            self.field.show_state(state)
        else:
            self.field.show_state(FieldState())
        shown = director.picture_shown and not director.sharing
        if shown:
            self.picture.show_bgr(director.preview())
        self.picture.setVisible(shown)

    def move_target(self) -> None:
        """Put what moves where it will be when it is seen: at the next picture.

        What a screen takes beyond that (often one picture more) isn't known here.
        """
        director = self._director
        self.field.show_sway(director.sway if director.sharing else None)
        asked = director.asked if director.phase == Phase.exercise else None
        seen_s = director.now_s + 1.0 / max(self.screen().refreshRate(), 30.0)
        if asked is None or asked.backdrop is None:
            self.field.show_backdrop(None)
        else:
            shift = asked.backdrop.shift_deg(seen_s - asked.step.from_s)
            self.field.show_backdrop(asked.backdrop, shift)
        if asked is not None and asked.path is not None:
            self.field.show_targets([asked.offset_at(seen_s)])
