"""What the program remembers: window, text, colours, camera, screens, eyes, sound, plan."""

from __future__ import annotations

import contextlib
import errno
import os
import re
import secrets
import stat
from collections.abc import Sequence
from math import isfinite
from pathlib import Path
from typing import Any

from PySide6.QtCore import QByteArray, QSettings

from ui.geometry import PX_MM_RANGE
from ui.settings_file import make_harmless
from ui.theme import TEXT_STEPS

#: Size of the target against half a degree of detail, in percent.
TARGET_STEPS = (75, 100, 150, 200)

#: What may be worn before the screen.
GLASSES = ("none", "single", "varifocal")
#: The eye that is watched.
EYES = ("both", "left", "right")

#: Whether drawn movements move: as the system says, never, or always.
MOTIONS = ("system", "still", "moving")

#: Lengths in whole cm that a mark on the wall may have had: those that can be chosen.
MARK_CM = range(10, 401)
#: What may be heard in seated work with the eyes open; the voice comes with the beats.
SOUNDS = ("voice", "beats", "silence")


class _Store(QSettings):
    """Writes values only while it is to remember any; others count until the program ends."""

    def __init__(self, path: Path) -> None:
        super().__init__(str(path), QSettings.Format.IniFormat)
        #: What is not to be written, None for what is gone; None while all is.
        self.unwritten: dict[str, Any] | None = None

    def value(self, key: str, default: Any = None) -> Any:  # type: ignore[override]
        """A value, or the default."""
        if self.unwritten is not None and key in self.unwritten:
            found = self.unwritten[key]
            return default if found is None else found
        return super().value(key, default)

    def setValue(self, key: str, value: Any) -> None:  # noqa: N802 - Qt's name
        """Keep a value."""
        if self.unwritten is None:
            super().setValue(key, value)
        else:
            self.unwritten[key] = value

    def remove(self, key: str) -> None:
        """Forget a value."""
        if self.unwritten is None:
            super().remove(key)
        else:
            self.unwritten[key] = None


class Settings:
    """Settings in one small file; a value that makes no sense reads as its default."""

    def __init__(self, path: Path) -> None:
        path = make_harmless(path)
        _keep_private(path)
        self._store = _Store(path)

    def _number(self, key: str, default: float) -> float:
        try:
            found = float(str(self._store.value(key, default)))
        except ValueError:
            return default
        return found if isfinite(found) else default

    @property
    def text_percent(self) -> int:
        """Text size in percent."""
        found = int(self._number("text_percent", 100))
        return found if found in TEXT_STEPS else 100

    @text_percent.setter
    def text_percent(self, value: int) -> None:
        self._store.setValue("text_percent", value)

    @property
    def target_percent(self) -> int:
        """Target size in percent."""
        found = int(self._number("target_percent", 100))
        return found if found in TARGET_STEPS else 100

    @target_percent.setter
    def target_percent(self, value: int) -> None:
        self._store.setValue("target_percent", value)

    def screen_px_mm(self, screen: str) -> float | None:
        """Logical pixels a millimetre of a screen, measured with a card; None if it was not."""
        found = self._number(f"screens/{screen}", 0.0)
        low, high = PX_MM_RANGE
        return found if low <= found <= high else None

    def set_screen_px_mm(self, screen: str, value: float | None) -> None:
        """Keep a screen's measure, or forget it."""
        if value is None:
            self._store.remove(f"screens/{screen}")
        else:
            self._store.setValue(f"screens/{screen}", round(value, 4))

    @property
    def colours(self) -> str:
        """The colours chosen: "system", "light" or "dark"."""
        found = str(self._store.value("colours", "system"))
        return found if found in ("system", "light", "dark") else "system"

    @colours.setter
    def colours(self, value: str) -> None:
        self._store.setValue("colours", value)

    @property
    def camera(self) -> str:
        """Name and lasting id of the camera used last."""
        return str(self._store.value("camera", ""))

    @camera.setter
    def camera(self, value: str) -> None:
        self._store.setValue("camera", value)

    @property
    def glasses(self) -> str:
        """The glasses worn last time: one of :data:`GLASSES`."""
        found = str(self._store.value("glasses", GLASSES[0]))
        return found if found in GLASSES else GLASSES[0]

    @glasses.setter
    def glasses(self, value: str) -> None:
        self._store.setValue("glasses", value)

    @property
    def sounds(self) -> str:
        """What is to be heard: one of :data:`SOUNDS`."""
        found = str(self._store.value("sounds", SOUNDS[0]))
        return found if found in SOUNDS else SOUNDS[0]

    @sounds.setter
    def sounds(self, value: str) -> None:
        self._store.setValue("sounds", value)

    @property
    def motion(self) -> str:
        """Whether drawn movements move: one of :data:`MOTIONS`."""
        found = str(self._store.value("motion", MOTIONS[0]))
        return found if found in MOTIONS else MOTIONS[0]

    @motion.setter
    def motion(self, value: str) -> None:
        self._store.setValue("motion", value)

    @property
    def eyes(self) -> str:
        """The eye that is watched: one of :data:`EYES`."""
        found = str(self._store.value("eyes", EYES[0]))
        return found if found in EYES else EYES[0]

    @eyes.setter
    def eyes(self, value: str) -> None:
        self._store.setValue("eyes", value)

    @property
    def first_step(self) -> str:
        """The one of the first steps that comes next; empty once they are over."""
        return str(self._store.value("first_step", "text"))

    @first_step.setter
    def first_step(self, value: str) -> None:
        self._store.setValue("first_step", value)

    @property
    def language(self) -> str:
        """Code of the language chosen; empty for the system's."""
        return str(self._store.value("language", ""))

    @language.setter
    def language(self, value: str) -> None:
        self._store.setValue("language", value)

    @property
    def plan(self) -> Path | None:
        """The plan opened last; None too for what no file of a plan can be."""
        found = str(self._store.value("plan", ""))
        return Path(found) if found and _can_be_a_file(found) else None

    @plan.setter
    def plan(self, value: Path | None) -> None:
        self._store.setValue("plan", "" if value is None else str(value.absolute()))

    @property
    def plain_files(self) -> bool:
        """Whether the clinic has chosen hand-overs without a lock, when it was asked."""
        return str(self._store.value("plain_files", "")) == "yes"

    @plain_files.setter
    def plain_files(self, value: bool) -> None:
        self._store.setValue("plain_files", "yes" if value else "")

    @property
    def words_seen(self) -> str:
        """The words of the plan that was shown last."""
        return str(self._store.value("words_seen", ""))

    @words_seen.setter
    def words_seen(self, value: str) -> None:
        self._store.setValue("words_seen", value)

    @property
    def words_checked(self) -> str:
        """The words that the therapist has read out, too; empty before that."""
        return str(self._store.value("words_checked", ""))

    @words_checked.setter
    def words_checked(self, value: str) -> None:
        self._store.setValue("words_checked", value)

    @property
    def words_refused(self) -> tuple[str, ...]:
        """Words of plans that were other than those the therapist has read out."""
        return tuple(t for t in str(self._store.value("words_refused", "")).split(";") if t)

    @words_refused.setter
    def words_refused(self, value: Sequence[str]) -> None:
        self._store.setValue("words_refused", ";".join(value))

    @property
    def writer(self) -> str:
        """ID of this installation among those that write notes: made once, by chance."""
        found = str(self._store.value("writer", ""))
        if not re.fullmatch(r"[0-9a-f]{8}", found):
            found = secrets.token_hex(4)
            self._store.setValue("writer", found)
            self._store.sync()
        return found

    @property
    def starter(self) -> bool:
        """Whether the starter that comes with the program was chosen last."""
        return str(self._store.value("starter", "")) == "yes"

    @starter.setter
    def starter(self, value: bool) -> None:
        self._store.setValue("starter", "yes" if value else "")

    @property
    def window(self) -> QByteArray | None:
        """The window's place."""
        found = self._store.value("window")
        return found if isinstance(found, QByteArray) else None

    @window.setter
    def window(self, value: QByteArray) -> None:
        self._store.setValue("window", value)

    @property
    def mark(self) -> tuple[int, int, str] | None:
        """Where a mark on the wall was last: how far the wall, how far along it (cm), the side."""
        parts = str(self._store.value("mark", "")).split(";")
        if len(parts) != 3 or not all(p.isdecimal() and len(p) <= 3 for p in parts[:2]):
            return None
        distance, offset, side = int(parts[0]), int(parts[1]), parts[2]
        fits = distance in MARK_CM and offset in MARK_CM and side in ("right", "left")
        return (distance, offset, side) if fits else None

    @mark.setter
    def mark(self, value: tuple[int, int, str]) -> None:
        self._store.setValue("mark", ";".join(map(str, value)))

    def hold(self) -> None:
        """Write nothing until :meth:`release` or :meth:`remember`: the file is being deleted."""
        self._store.sync()
        self._store.unwritten = {}

    @property
    def held(self) -> bool:
        """Whether nothing is written: all is deleted, or is being deleted."""
        return self._store.unwritten is not None

    def forget(self) -> None:
        """Forget all, its file too, and write nothing until :meth:`remember`."""
        self._store.unwritten = {}
        self._store.clear()
        self._store.sync()
        with contextlib.suppress(OSError):
            Path(self._store.fileName()).unlink(missing_ok=True)

    def release(self) -> None:
        """Write again, and what was set meanwhile: not all was deleted.

        What stood in the file before comes back only where the file is still there.
        """
        unwritten, self._store.unwritten = self._store.unwritten or {}, None
        _keep_private(Path(self._store.fileName()))
        for key, value in unwritten.items():
            if value is None:
                self._store.remove(key)
            else:
                self._store.setValue(key, value)
        self._store.sync()

    def remember(self) -> None:
        """Remember again, from here on."""
        _keep_private(Path(self._store.fileName()))
        self._store.unwritten = None

    def sync(self) -> None:
        """Write to disk."""
        self._store.sync()


def _keep_private(path: Path) -> None:
    """See to it that only its owner can read the file: it names the plan and its words.

    Qt would make it readable for everybody, and keeps what there is.
    """
    with contextlib.suppress(OSError, ValueError):
        os.close(os.open(path, os.O_RDWR | os.O_CREAT, 0o600))
        if path.stat().st_mode & 0o077:
            path.chmod(0o600)


def _can_be_a_file(name: str) -> bool:
    """Whether a name is that of an ordinary file, or of one that is gone for now.

    A file on a stick that is not plugged in can come back; a name that no file can have, a
    folder and a device can't become a plan.
    """
    try:
        return stat.S_ISREG(Path(name).stat().st_mode)
    except OSError as error:
        return error.errno != errno.ENAMETOOLONG
    except ValueError:
        return False
