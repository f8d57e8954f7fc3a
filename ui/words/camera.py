"""The words of the camera: choosing it, what it sees, and what to do when it goes.

Keys: ``camera.KEY``, ``verdict.KEY``, ``trouble.STATE``, ``trouble.STATE.do`` (what to do) and
``trouble.STATE.do.retry`` (the same where a button tries again).
"""

from __future__ import annotations

from PySide6.QtCore import QT_TRANSLATE_NOOP

CAMERA_WORDS: dict[str, object] = {
    "camera.title": QT_TRANSLATE_NOOP("turnpost", "Can the camera see you?"),
    "camera.choose": QT_TRANSLATE_NOOP("turnpost", "Camera"),
    "camera.picture": QT_TRANSLATE_NOOP("turnpost", "You, as in a mirror"),
    "camera.next": QT_TRANSLATE_NOOP("turnpost", "Start the set-up"),
    "camera.default": QT_TRANSLATE_NOOP("turnpost", "First camera found"),
    "camera.without": QT_TRANSLATE_NOOP(
        "turnpost",
        "If it stays so, press “{button}”. You can note on the first page what you practise "
        "without the laptop.",
    ),
    "verdict.opening": QT_TRANSLATE_NOOP(
        "turnpost", "Getting the camera ready. This can take half a minute."
    ),
    "verdict.good": QT_TRANSLATE_NOOP("turnpost", "Good. Your face is well lit and near enough."),
    "verdict.no_face": QT_TRANSLATE_NOOP(
        "turnpost", "Your face is not in the picture. Face the screen, in front of its camera."
    ),
    "verdict.dark": QT_TRANSLATE_NOOP("turnpost", "It is dark. Put more light in front of you."),
    "verdict.bright": QT_TRANSLATE_NOOP(
        "turnpost", "It is too bright. Turn the light a little aside."
    ),
    "verdict.far": QT_TRANSLATE_NOOP("turnpost", "You are far away. Come a hand closer."),
    "verdict.near": QT_TRANSLATE_NOOP("turnpost", "You are very near. Move back by a hand."),
    "verdict.slow": QT_TRANSLATE_NOOP("turnpost", "The camera is slow. More light may help."),
    # trouble with the camera: what it is, and what to do; "retry" where a button tries again
    "trouble.no_camera": QT_TRANSLATE_NOOP("turnpost", "No camera was found."),
    "trouble.no_camera.do": QT_TRANSLATE_NOOP(
        "turnpost", "Plug a camera in, or open its cover or switch."
    ),
    "trouble.no_camera.do.retry": QT_TRANSLATE_NOOP(
        "turnpost", "Plug a camera in, or open its cover or switch, then try again."
    ),
    "trouble.busy": QT_TRANSLATE_NOOP("turnpost", "Another program is using the camera."),
    "trouble.busy.do": QT_TRANSLATE_NOOP(
        "turnpost",
        "Close the other program. In a video call, switch your video off there and share this "
        "window. To stand you then need a helper in the room, or a second device that shows you.",
    ),
    "trouble.perhaps_busy": QT_TRANSLATE_NOOP(
        "turnpost", "The camera gives no picture. Perhaps another program is using it."
    ),
    "trouble.perhaps_busy.do": QT_TRANSLATE_NOOP(
        "turnpost",
        "Close the other program. In a call, switch your video off there and share this window. "
        "To stand you then need a helper, or a second device. If it is not that, open the "
        "camera's cover, or allow it under Privacy.",
    ),
    "trouble.perhaps_forbidden": QT_TRANSLATE_NOOP(
        "turnpost", "The camera gives no picture. Perhaps Turnpost may not use it."
    ),
    "trouble.perhaps_forbidden.do": QT_TRANSLATE_NOOP(
        "turnpost",
        "Allow the camera in the settings under Privacy. If it is allowed, open its cover, or "
        "close other programs.",
    ),
    "trouble.no_permission": QT_TRANSLATE_NOOP("turnpost", "Turnpost may not use the camera."),
    "trouble.no_permission.do": QT_TRANSLATE_NOOP(
        "turnpost", "Allow the camera in the settings of your computer under Privacy."
    ),
    "trouble.no_permission.do.retry": QT_TRANSLATE_NOOP(
        "turnpost",
        "Allow the camera in the settings of your computer under Privacy, then try again.",
    ),
    "trouble.unplugged": QT_TRANSLATE_NOOP("turnpost", "The camera has been unplugged."),
    "trouble.unplugged.do": QT_TRANSLATE_NOOP("turnpost", "Plug it in again."),
    "trouble.unplugged.do.retry": QT_TRANSLATE_NOOP(
        "turnpost", "Plug it in again, then try again."
    ),
    "trouble.hanging": QT_TRANSLATE_NOOP("turnpost", "The camera does not answer."),
    "trouble.hanging.do": QT_TRANSLATE_NOOP(
        "turnpost", "Wait a moment. If nothing comes, unplug it or restart the computer."
    ),
    "trouble.failed": QT_TRANSLATE_NOOP("turnpost", "The camera can't be used."),
    "trouble.failed.do": QT_TRANSLATE_NOOP(
        "turnpost", 'If it stays so, run "turnpost doctor" with a helper.'
    ),
    "trouble.failed.do.retry": QT_TRANSLATE_NOOP(
        "turnpost", 'Try again. If it stays so, run "turnpost doctor" with a helper.'
    ),
    "trouble.retry": QT_TRANSLATE_NOOP("turnpost", "Try again"),
    "trouble.demo": QT_TRANSLATE_NOOP("turnpost", "Use the sample clip"),
    "trouble.back": QT_TRANSLATE_NOOP("turnpost", "Back"),
}
