"""Before the desk closes: what was typed as a note and not added yet would be gone."""

from __future__ import annotations

from collections.abc import Callable

from ui import words
from ui.desk.notes_panel import NotesPanel
from ui.editor.bar import Bar


class Leaving:
    """Asks in the window itself whether to close it.

    Parameters
    ----------
    notes
        Know what was typed.
    show
        Shows the session with this key, if it is at hand.
    close
        Closes the window, which asks here again.
    """

    def __init__(
        self, notes: NotesPanel, show: Callable[[str], None], close: Callable[[], object]
    ) -> None:
        self.bar = Bar()
        self._notes, self._show, self._close = notes, show, close
        self._dropped = False

    def may_close(self) -> bool:
        """Whether nothing would be lost, or that is meant; else it is asked."""
        texts = self._notes.drafts().values()
        if not texts or self._dropped:
            return True
        answers = [
            (words.say("desk.draft.show"), self._show_first),
            (words.say("desk.draft.drop"), self.drop),
        ]
        self.bar.ask(words.say("desk.draft", text="\n".join(texts)), answers)
        return False

    def drop(self) -> None:
        """Close without what was typed."""
        self._dropped = True
        self._close()
        # Something else may have kept it open.
        self._dropped = False

    def _show_first(self) -> None:
        for folder, session in self._notes.drafts():
            if folder == self._notes.book.folder:
                self._show(session)
                self._notes.note.setFocus()
                return
