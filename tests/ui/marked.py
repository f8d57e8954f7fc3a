"""A language of marks: what is seen unmarked never went through translation."""

from __future__ import annotations

import re
from collections.abc import Iterator

from PySide6.QtCore import QTranslator
from PySide6.QtGui import QTextDocumentFragment
from PySide6.QtWidgets import (
    QAbstractButton,
    QComboBox,
    QLabel,
    QListWidget,
    QTableView,
    QWidget,
)

from ui import words
from ui.desk import trade_words
from ui.editor import telling


class Marked(QTranslator):
    """A language that puts its words between two marks, and what is filled in outside them."""

    def isEmpty(self) -> bool:
        return False

    def translate(self, context: str, text: str, comment: str = "", n: int = -1) -> str:  # noqa: ARG002
        if context not in (words.CONTEXT, trade_words.CONTEXT, telling.CONTEXT):
            return ""
        return re.sub(r"(\{\w+\})", r"⟧\1⟦", f"⟦{text}⟧")


def unmarked(text: str) -> str:
    """What is left of a text without its marked parts, numbers and signs."""
    return re.sub(r"[^\w ]|\d|_", "", re.sub(r"⟦[^⟦⟧]*⟧", "", text)).strip()


def shown_texts(window: QWidget) -> Iterator[str]:
    """All words that are seen of a window, and that a screen reader would say of it."""
    for widget in window.findChildren(QWidget):
        if not widget.isVisible():
            continue
        yield widget.accessibleName()
        yield widget.accessibleDescription()
        yield QTextDocumentFragment.fromHtml(widget.toolTip()).toPlainText()
        if isinstance(widget, QLabel | QAbstractButton):
            yield widget.text()
        if isinstance(widget, QListWidget):
            yield from (widget.item(k).text() for k in range(widget.count()))
        if isinstance(widget, QComboBox):
            yield from (widget.itemText(k) for k in range(widget.count()))
        if isinstance(widget, QTableView):
            model = widget.model()
            for row in range(model.rowCount()):
                for column in range(model.columnCount()):
                    yield str(model.index(row, column).data() or "")
