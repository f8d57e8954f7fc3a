"""The drawing language: colours, spacing, type. Written down once, used everywhere.

Manner
    A still page of paper or slate with ink on it. One colour of action (pine),
    one colour of attention (ochre), and shapes that say the same as the colours
    do. Nothing moves unless it is exercise. No red and green as a pair; good and
    other are told by words and shapes.
Palette
    ``LIGHT`` and ``DARK``. Words have a contrast of at least 7:1, shapes of at
    least 3:1 against what is behind them (computed in the tests, WCAG 2.2
    1.4.6 and 1.4.11). When the system asks for high contrast its own colours are
    taken: those of its words, its fields and its choice, as those alone are sure to
    stand out from each other.
Spacing
    Steps of 4 px: ``S`` 8, ``M`` 16, ``L`` 24, ``XL`` 40; corners of 10 px.
Type
    The system's typeface in a few sizes, given in pixels of a 96-dpi screen at
    100 % and turned into points: body 20, lead 24, title 36, count 72, far 144. A title
    grows half as fast as the text when the text is enlarged, and what is read from
    afar not at all: they are large enough already, and lines must stay whole. The
    therapist's desk has much on one page and is read at a table: desk 16.
"""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import Qt
from PySide6.QtGui import QColor, QFont, QFontDatabase, QGuiApplication, QPalette
from PySide6.QtWidgets import QApplication

S, M, L, XL = 8, 16, 24, 40
CORNER = 10
FOCUS_WIDTH = 4
#: Width of every line that means something: thinner ones are lost in a video call.
LINE = 3
#: Qt's own style, drawn alike on every system.
STYLE = "fusion"
#: Smallest height of a button (40 effective px and more are advised; older hands get 56).
BUTTON_HEIGHT = 56
#: Width of a page's text: about 60 characters a line.
TEXT_WIDTH = 880
#: Width of a page's buttons: those of a page stand in one row where the window has room.
FOOT_WIDTH = 1100

#: Least contrast of shapes (WCAG 2.2, 1.4.11).
SHAPES_LEAST = 3.0

TEXT_STEPS = (100, 125, 150, 175, 200)

_SIZES_PX = {
    "desk": 16.0,
    "small": 20.0,
    "body": 20.0,
    "lead": 24.0,
    "title": 36.0,
    "ask": 56.0,
    "count": 72.0,
    "far": 144.0,
}
_GROWTH = {
    "desk": 1.0,
    "small": 1.0,
    "body": 1.0,
    "lead": 0.9,
    "title": 0.5,
    "ask": 0.5,
    "count": 1.0,
    "far": 0.0,
}


@dataclass(frozen=True, slots=True)
class Colours:
    """The colours of one scheme."""

    paper: str
    card: str
    ink: str
    soft_ink: str
    action: str
    on_action: str
    line: str
    attention: str
    attention_ink: str
    target: str
    target_detail: str
    focus: str


LIGHT = Colours(
    paper="#f7f4ec",
    card="#ffffff",
    ink="#17252c",
    soft_ink="#38464d",
    action="#0b4f4a",
    on_action="#ffffff",
    line="#6f7b80",
    attention="#b25a00",
    attention_ink="#6b3300",
    target="#17252c",
    target_detail="#f7f4ec",
    focus="#1f4fbf",
)
DARK = Colours(
    paper="#131d23",
    card="#1d2a32",
    ink="#f3efe4",
    soft_ink="#cfd4d2",
    action="#8fd3c4",
    on_action="#0c1a1c",
    line="#8a979c",
    attention="#f0a94b",
    attention_ink="#ffcf8f",
    target="#f3efe4",
    target_detail="#131d23",
    focus="#ffe08a",
)


def luminance(colour: str) -> float:
    """Relative luminance of a colour (WCAG 2.2, "relative luminance")."""
    parts = (int(colour[k : k + 2], 16) / 255.0 for k in (1, 3, 5))
    linear = [p / 12.92 if p <= 0.04045 else ((p + 0.055) / 1.055) ** 2.4 for p in parts]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


def contrast(one: str, other: str) -> float:
    """Contrast ratio of two colours, 1 to 21 (WCAG 2.2, "contrast ratio")."""
    low, high = sorted((luminance(one), luminance(other)))
    return (high + 0.05) / (low + 0.05)


def palette_of(colours: Colours) -> QPalette:
    """Qt's palette in our colours."""
    roles = {
        QPalette.ColorRole.Window: colours.paper,
        QPalette.ColorRole.WindowText: colours.ink,
        QPalette.ColorRole.Base: colours.card,
        QPalette.ColorRole.AlternateBase: colours.paper,
        QPalette.ColorRole.Text: colours.ink,
        QPalette.ColorRole.PlaceholderText: colours.soft_ink,
        QPalette.ColorRole.Button: colours.card,
        QPalette.ColorRole.ButtonText: colours.ink,
        QPalette.ColorRole.Highlight: colours.action,
        QPalette.ColorRole.HighlightedText: colours.on_action,
        QPalette.ColorRole.Mid: colours.line,
        QPalette.ColorRole.Accent: colours.attention,
        QPalette.ColorRole.BrightText: colours.attention_ink,
        QPalette.ColorRole.Link: colours.focus,
        QPalette.ColorRole.ToolTipBase: colours.card,
        QPalette.ColorRole.ToolTipText: colours.ink,
    }
    palette = QPalette()
    for role, colour in roles.items():
        palette.setColor(role, QColor(colour))
    for role in (QPalette.ColorRole.ButtonText, QPalette.ColorRole.WindowText):
        palette.setColor(QPalette.ColorGroup.Disabled, role, QColor(colours.soft_ink))
    return palette


def high_contrast_palette(system: QPalette) -> QPalette:
    """The system's palette of high contrast, with every role that we draw with.

    Roles beyond words, fields and what is chosen are often left by a system as they were,
    so that they may be of the ground's own colour.
    """
    role = QPalette.ColorRole
    palette = QPalette(system)
    ink, ground = system.color(role.WindowText), system.color(role.Window)
    focus = system.color(role.Highlight)
    if contrast(focus.name(), ground.name()) < SHAPES_LEAST:
        focus = ink
    roles = {
        role.Button: system.color(role.Base),
        role.ButtonText: system.color(role.Text),
        role.PlaceholderText: ink,
        role.Mid: ink,
        role.Accent: ink,
        role.BrightText: ink,
        role.Link: focus,
    }
    for which, colour in roles.items():
        palette.setColor(which, colour)
    return palette


def system_palette(app: QApplication) -> QPalette:
    """The system's own palette; what we have set before is taken away."""
    app.setPalette(QPalette())
    return app.palette()


def wants_high_contrast() -> bool:
    """Whether the system asks for high contrast; its colours are then taken."""
    hints = QGuiApplication.styleHints()
    return hints.accessibility().contrastPreference() == Qt.ContrastPreference.HighContrast


def is_dark(choice: str = "system") -> bool:
    """Whether to draw dark: as chosen ("light", "dark"), else as the system says."""
    if choice in ("light", "dark"):
        return choice == "dark"
    return QGuiApplication.styleHints().colorScheme() == Qt.ColorScheme.Dark


def apply(app: QApplication, choice: str = "system") -> None:
    """Give the program its colours."""
    # A style that is set anew looks at every widget, though nothing changes.
    if app.style().name() != STYLE:
        app.setStyle(STYLE)
    if wants_high_contrast():
        app.setPalette(high_contrast_palette(system_palette(app)))
    else:
        app.setPalette(palette_of(DARK if is_dark(choice) else LIGHT))


def size_px(role: str, percent: int) -> float:
    """Size of a text role in pixels of a 96-dpi screen at a text size in percent."""
    return _SIZES_PX[role] * (1.0 + _GROWTH[role] * (percent / 100.0 - 1.0))


def font(role: str, percent: int, *, bold: bool = False) -> QFont:
    """The system's typeface in one of our sizes, in points of this screen."""
    made = QFontDatabase.systemFont(QFontDatabase.SystemFont.GeneralFont)
    screen = QGuiApplication.primaryScreen()
    dpi = screen.logicalDotsPerInch() if screen is not None else 96.0
    made.setPointSizeF(size_px(role, percent) * 72.0 / dpi)
    made.setWeight(
        QFont.Weight.DemiBold
        if bold or role in ("title", "ask", "count", "far")
        else QFont.Weight.Normal
    )
    return made
