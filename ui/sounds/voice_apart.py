"""The engine in a process of its own: whatever its calls wait for, the window does not."""

from __future__ import annotations

import json
import sys

from PySide6.QtCore import QObject, QProcess, QTimer, Signal

#: First word of the frozen program's command line when it is to be the voice.
VOICE_WORD = "--be-the-voice"


def child() -> tuple[str, ...]:
    """The program that speaks; never one that happens to lie in the folder one is in (-P)."""
    if getattr(sys, "frozen", False):
        return (sys.executable, VOICE_WORD)
    return (sys.executable, "-P", "-m", "ui.sounds.voice_child")


CHILD = child()
#: How long it may take to be found, and to take an order (a daemon may have to start first);
#: how long it may take to end.
_FOUND_MS, _TAKEN_MS, _END_MS, _KILLED_MS = 15_000, 4_000, 500, 100


class EngineApart(QObject):
    """As ``ui.sounds.engine.Engine``, in another process."""

    found = Signal(str)
    said = Signal(int)

    def __init__(self) -> None:
        super().__init__()
        self._process: QProcess | None = None
        self._opened = False
        self._number = 0
        self._patience = QTimer(self)
        self._patience.setSingleShot(True)
        self._patience.timeout.connect(self._give_up)

    def open(self, engine: str, language: str, territory: str = "") -> None:
        """Start the process, which looks for an engine and a voice."""
        process = self._process = QProcess(self)
        process.setStandardErrorFile(QProcess.nullDevice())
        process.readyReadStandardOutput.connect(self._read)
        process.finished.connect(self._give_up)
        process.errorOccurred.connect(self._give_up)
        program, *arguments = CHILD
        process.start(program, [*arguments, engine, language, territory])
        self._patience.start(_FOUND_MS)

    def say(self, text: str, number: int) -> None:
        """Say it in place of what is being said."""
        self._number = number
        self._order(say=text, number=number)
        if not self._patience.isActive():
            self._patience.start(_TAKEN_MS)

    def stop(self) -> None:
        """Be silent."""
        self._order(stop=True)

    def close(self) -> None:
        """End the process; one that doesn't is killed."""
        self._patience.stop()
        process, self._process = self._process, None
        if process is None:
            return
        process.closeWriteChannel()
        if not process.waitForFinished(_END_MS):
            process.kill()
            process.waitForFinished(_END_MS)

    def _order(self, **order: object) -> None:
        if self._process is not None:
            self._process.write(json.dumps(order).encode() + b"\n")

    def _read(self) -> None:
        while self._process is not None and self._process.canReadLine():
            answer = json.loads(self._process.readLine().toStdString())
            if "found" in answer:
                self._patience.stop()
                self._opened = not answer["found"]
                self.found.emit(answer["found"])
            elif "said" in answer:
                self.said.emit(answer["said"])
            elif answer["taken"] == self._number:
                self._patience.stop()

    def _give_up(self) -> None:
        """It is gone, could not be started, or hangs."""
        if self._process is None:
            return
        self._patience.stop()
        process, self._process = self._process, None
        process.kill()
        # A killed process is gone at once; one that Qt destroys while it lives is a fault.
        process.waitForFinished(_KILLED_MS)
        self.found.emit("failed" if self._opened else "no_engine")
