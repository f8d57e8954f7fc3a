"""The languages that there are words in, and the one that the program speaks.

The translations are Qt's own files (``ui/translations``). Left and right on the targets, the
gauge and the figures are the patient's and stay where they are when a language is written
from right to left; only what is read changes sides.
"""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QLibraryInfo, QLocale, QTranslator
from PySide6.QtWidgets import QApplication

#: Code and own name, in the order that they are offered; the first one's words are in the code.
LANGUAGES: tuple[tuple[str, str], ...] = (
    ("en", "English"),
    ("de", "Deutsch"),
    ("es", "Español"),
    ("ar", "العربية"),
)
CODES = tuple(code for code, _ in LANGUAGES)
SOURCE = CODES[0]
FOLDER = Path(__file__).parent / "translations"


def language_of(chosen: str) -> str:
    """Code of the language to speak: the one chosen, else the system's, else English."""
    if chosen in CODES:
        return chosen
    systems = QLocale.system().name().split("_")[0]
    return systems if systems in CODES else SOURCE


#: Where the language is not one of the user's country: in Arabic with the digits that every
#: keyboard has.
_ELSEWHERE = {"ar": "ar_001"}


def locale_of(code: str, territory: QLocale.Country | None = None) -> QLocale:
    """How numbers and dates are written: in the language's way, as in the user's country."""
    country = QLocale.system().territory() if territory is None else territory
    found = QLocale(QLocale(code).language(), country)
    return found if found.territory() == country else QLocale(_ELSEWHERE.get(code, code))


def speak(app: QApplication, code: str) -> None:
    """Have all words that are made from now on in a language; windows that stand keep theirs."""
    hush(app)
    if code != SOURCE:
        for name, folder in (
            (f"qtbase_{code}", QLibraryInfo.path(QLibraryInfo.LibraryPath.TranslationsPath)),
            (f"turnpost_{code}", str(FOLDER)),
        ):
            translator = QTranslator(app)
            if translator.load(name, folder):
                app.installTranslator(translator)
                _installed.append(translator)
    locale = locale_of(code)
    QLocale.setDefault(locale)
    # Without this the system's language would decide.
    app.setLayoutDirection(locale.textDirection())


def hush(app: QApplication) -> None:
    """Take the translations away."""
    while _installed:
        translator = _installed.pop()
        app.removeTranslator(translator)
        translator.deleteLater()


_installed: list[QTranslator] = []
