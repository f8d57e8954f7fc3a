"""The list of people: who, why, when last, how much; by words and shape, not by colour alone."""

# ruff: noqa: N802 - the names and arguments are Qt's

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from PySide6.QtCore import (
    QAbstractListModel,
    QModelIndex,
    QPersistentModelIndex,
    QPointF,
    QRect,
    QSize,
    Qt,
    Signal,
)
from PySide6.QtGui import QFontMetrics, QPainter, QPalette, QPen, QPolygonF, QResizeEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QListView,
    QStyle,
    QStyledItemDelegate,
    QStyleOptionViewItem,
)

from tracker.records.attention import FIRST, Reason
from tracker.records.people import Person
from ui import theme, words
from ui.desk import trade
from ui.desk.small import as_tip
from ui.desk.text import dated

Index = QModelIndex | QPersistentModelIndex
PERSON_ROLE = int(Qt.ItemDataRole.UserRole) + 1


def reason_word(person: Person) -> str:
    """The word before a person's gravest reason."""
    return words.say("desk.first" if person.reasons[0].first else "desk.then")


def shown_name(person: Person) -> str:
    """The pseudonym, or what those without one are called."""
    return words.say("desk.nameless") if person.nameless else person.name


def lines_of(person: Person) -> list[str]:
    """The lines under a name: why to look, then practice."""
    if person.reasons:
        told = _told(person.reasons)
        why = f"{reason_word(person)}: {'; '.join(_shown(r) for r in told)}{more_of(person)}"
    else:
        why = words.say("desk.nothing_first")
    share = person.adherence.share
    days = person.adherence.length_days
    key = "desk.share.one" if days == 1 else "desk.share"
    practice = (
        words.say("desk.no_plan")
        if share is None
        else words.say(key, share=words.number(100 * share), days=days)
    )
    if person.nameless:
        practice = words.say("desk.nameless.each")
    year = person.adherence.to_day.year
    # A line of its own: beside the share it would be read as that day's.
    return [why, practice, words.say("desk.last", day=trade.day(person.last_day, year))]


def more_of(person: Person) -> str:
    """How many more reasons there are than are named, to stand behind them; empty if none."""
    count = len(person.reasons) - len(_told(person.reasons))
    return f" ({words.say('desk.more', count=count)})" if count > 0 else ""


def _told(reasons: Sequence[Reason]) -> list[Reason]:
    """Two of the gravest, older ones too, which must not hide behind a number; else the first."""
    return [r for r in reasons if r.kind in FIRST][:2] or list(reasons[:1])


def _shown(reason: Reason) -> str:
    """A reason in the list; an older one says of when it is."""
    return trade.shown(dated(reason) if reason.older else reason.text)


class PeopleModel(QAbstractListModel):
    """People in their order."""

    def __init__(self) -> None:
        super().__init__()
        self.people: list[Person] = []

    def show(self, people: Sequence[Person]) -> None:
        """Show others."""
        self.beginResetModel()
        self.people = list(people)
        self.endResetModel()

    def rowCount(self, parent: Index | None = None) -> int:
        """How many."""
        return 0 if parent is not None and parent.isValid() else len(self.people)

    def data(self, index: Index, role: int = int(Qt.ItemDataRole.DisplayRole)) -> Any:
        """The name; all lines for a screen reader; everything on hover."""
        if not index.isValid():
            return None
        person = self.people[index.row()]
        if role == Qt.ItemDataRole.DisplayRole:
            return shown_name(person)
        if role == Qt.ItemDataRole.AccessibleTextRole:
            return ". ".join([shown_name(person), *lines_of(person)])
        if role == Qt.ItemDataRole.ToolTipRole:
            reasons = [trade.shown(dated(r)) for r in person.reasons]
            return as_tip("\n".join([shown_name(person), *reasons]))
        return person if role == PERSON_ROLE else None


class _Delegate(QStyledItemDelegate):
    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        line = QFontMetrics(option.font).height()
        return QSize(10 * line, (4 + self._practice_lines(option, index)) * line + 2 * theme.S)

    def _practice_lines(self, option: QStyleOptionViewItem, index: Index) -> int:
        """Lines for practice: rows are alike, so two if anybody needs them."""
        view, model = option.widget, index.model()
        if not isinstance(view, QListView) or not isinstance(model, PeopleModel):
            return 1
        metrics, wide = QFontMetrics(option.font), view.viewport().width() - theme.M - theme.S
        texts = (lines_of(person)[1] for person in model.people)
        return 2 if any(metrics.horizontalAdvance(text) > wide for text in texts) else 1

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        person: Person = index.data(PERSON_ROLE)
        painter.save()
        role = QPalette.ColorRole
        chosen = bool(option.state & QStyle.StateFlag.State_Selected)
        palette = option.palette
        painter.fillRect(option.rect, palette.color(role.AlternateBase if chosen else role.Base))
        ink, soft = palette.color(role.Text), palette.color(role.PlaceholderText)
        urgent = bool(person.reasons) and person.reasons[0].first
        bar = QRect(option.rect.left(), option.rect.top() + 3, 6, option.rect.height() - 6)
        if chosen:
            painter.fillRect(bar, palette.color(role.Highlight))
        line = QFontMetrics(option.font).height()
        box = option.rect.adjusted(theme.M, theme.S, -theme.S, -theme.S)
        if urgent:
            _triangle(painter, box.left(), box.top(), line, palette)
        bold = option.font
        bold.setBold(True)
        painter.setFont(bold)
        painter.setPen(ink)
        left = box.left() + (line + theme.S if urgent else 0)
        _text(painter, QRect(left, box.top(), box.right() - left, line), shown_name(person))
        bold.setBold(False)
        painter.setFont(bold)
        why, practice, seen = lines_of(person)
        painter.setPen(palette.color(role.BrightText) if urgent else ink)
        middle = QRect(box.left(), box.top() + line, box.width(), 2 * line)
        _wrapped(painter, middle, why, more_of(person))
        painter.setPen(soft)
        low = QRect(box.left(), box.top() + 3 * line, box.width(), box.height() - 4 * line)
        if low.height() >= 2 * line:
            _wrapped(painter, low, practice)
        else:
            _text(painter, low, practice)
        _text(painter, QRect(box.left(), box.bottom() - line + 1, box.width(), line), seen)
        painter.setPen(QPen(palette.color(role.Mid), 1))
        painter.drawLine(option.rect.bottomLeft(), option.rect.bottomRight())
        if option.state & QStyle.StateFlag.State_HasFocus:
            # The triangle's brush would fill the frame, and hide the words.
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.setPen(QPen(palette.color(role.Link), 3))
            painter.drawRect(option.rect.adjusted(2, 2, -2, -2))
        painter.restore()


def _triangle(painter: QPainter, x: int, y: int, size: int, palette: QPalette) -> None:
    """A mark of its own shape for who comes first."""
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(palette.color(QPalette.ColorRole.Accent))
    top, low = y + 0.15 * size, y + 0.85 * size
    painter.drawPolygon(
        QPolygonF([QPointF(x, low), QPointF(x + 0.8 * size, low), QPointF(x + 0.4 * size, top)])
    )


def _text(painter: QPainter, box: QRect, text: str, end: str = "") -> None:
    """A line; where it doesn't fit, dots stand before its ``end``, which is never cut."""
    metrics = painter.fontMetrics()
    room = box.width() - (metrics.horizontalAdvance(end) if end else 0)
    shown = metrics.elidedText(text.removesuffix(end), Qt.TextElideMode.ElideRight, room) + end
    painter.drawText(box, Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft, shown)


def _wrapped(painter: QPainter, box: QRect, text: str, end: str = "") -> None:
    """Two lines at most; what doesn't fit ends with dots, and with the ``end`` of the text."""
    metrics = painter.fontMetrics()
    words_left, first = text.removesuffix(end).split(" "), ""
    # A text that just fits would be given dots.
    room = box.width() - 2
    while words_left and metrics.horizontalAdvance(f"{first} {words_left[0]}") <= room:
        first = f"{first} {words_left.pop(0)}".strip()
    if not words_left and metrics.horizontalAdvance(first + end) <= room:
        first, end = first + end, ""
    line = metrics.height()
    top = QRect(box.left(), box.top(), box.width(), line)
    _text(painter, top, first or (words_left.pop(0) if words_left else ""))
    rest = " ".join(words_left)
    end = end if rest else end.strip()
    _text(painter, top.translated(0, line), rest + end, end)


class PeopleList(QListView):
    """The list itself; arrow keys choose."""

    chosen = Signal(object)

    def __init__(self) -> None:
        super().__init__()
        self.people = PeopleModel()
        self.setModel(self.people)
        self.setItemDelegate(_Delegate(self))
        self.setAccessibleName(words.say("desk.people"))
        self.setUniformItemSizes(True)
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.selectionModel().currentChanged.connect(self._changed)
        self.set_percent(100)

    def set_percent(self, percent: int) -> None:
        """Draw at a text size in percent."""
        self.setFont(theme.font("desk", percent))
        self.setMinimumWidth(14 * self.fontMetrics().height())
        self.scheduleDelayedItemsLayout()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """A narrower list has higher rows."""
        super().resizeEvent(event)
        if event.size().width() != event.oldSize().width():
            self.scheduleDelayedItemsLayout()

    def show_people(self, people: Sequence[Person]) -> None:
        """Show people; who was chosen stays chosen."""
        was = self.current
        self.people.show(people)
        if not people:
            self.chosen.emit(None)
            return
        names = [p.name for p in people]
        row = names.index(was.name) if was is not None and was.name in names else 0
        self.setCurrentIndex(self.people.index(row))

    @property
    def current(self) -> Person | None:
        """Who is chosen."""
        index = self.currentIndex()
        return index.data(PERSON_ROLE) if index.isValid() else None

    def _changed(self, index: QModelIndex) -> None:
        if index.isValid():
            self.chosen.emit(index.data(PERSON_ROLE))
