"""The voice as a process of its own: takes orders as lines of JSON, answers in the same way.

``python -m ui.sounds.voice_child ENGINE LANGUAGE LOCALE`` ends when its input does.
"""

from __future__ import annotations

import json
import os
import sys

from PySide6.QtCore import QCoreApplication, QSocketNotifier

from ui.reserve import keep_constants_alive
from ui.sounds.engine import Engine


class Orders:
    """Reads orders from a pipe and has the engine follow them."""

    def __init__(self, pipe: int, engine: Engine) -> None:
        self._pipe, self._engine, self._rest = pipe, engine, b""
        self.notifier = QSocketNotifier(pipe, QSocketNotifier.Type.Read)
        self.notifier.activated.connect(self.read)

    def read(self) -> None:
        """Take what has come; the end of it is the end of the process."""
        found = os.read(self._pipe, 1 << 16)
        if not found:
            self.notifier.setEnabled(False)
            self._engine.close()
            QCoreApplication.quit()
            return
        *lines, self._rest = (self._rest + found).split(b"\n")
        for line in lines:
            order = json.loads(line)
            if "say" in order:
                self._engine.say(order["say"], order["number"])
                answer(taken=order["number"])
            else:
                self._engine.stop()


def answer(**values: object) -> None:
    """One line to whoever gives the orders."""
    sys.stdout.write(json.dumps(values) + "\n")
    sys.stdout.flush()


def main(engine_name: str, language: str, locale: str) -> int:
    """Speak until there are no more orders."""
    keep_constants_alive()
    app = QCoreApplication(["turnpost-voice"])
    engine = Engine()
    engine.found.connect(lambda lack: answer(found=lack))
    engine.said.connect(lambda number: answer(said=number))
    engine.open(engine_name, language, locale)
    orders = Orders(sys.stdin.fileno(), engine)
    result = app.exec()
    del orders
    return result


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:4]))
