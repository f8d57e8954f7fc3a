"""What is told of shoulders, hands and stands besides the movement's size and speed."""

from __future__ import annotations

from collections.abc import Iterator

from tracker.records import units as u
from tracker.records.figure import Figure, Making
from tracker.records.places import Place

#: Counts of a kind: key in the summary -> name, and the kinds in order with their words.
COUNTED: dict[str, tuple[str, dict[str, str]]] = {
    "direction": (
        "Way of the rolls",
        {"back": "back", "forward": "forward", "not_told": "not told"},
    ),
    "head_follows": (
        "Head with the throws",
        {"followed": "went along", "stayed": "stayed", "not_told": "not told"},
    ),
    "arm": ("Arm of the bends", {"right": "right", "left": "left", "not_seen": "not seen"}),
}


def body_figures(place: Place) -> Iterator[Figure]:
    """Which way the shoulders rolled, how high was thrown, with which arm was reached."""
    body = place.at("body")
    for key, (name, kinds) in COUNTED.items():
        found = body.at(key)
        if found.value is not None:
            yield counts_figure(Making("movement", f"body_{key}", name, u.WORDS), found, kinds)
    throws = body.at("throw_height_mm")
    if throws.value is not None:
        make = Making("movement", "throw_height_mm", "Throw above the eyes", u.MILLIMETRES)
        yield make.read(throws)
        yield from make.spread(throws)
    eyes = body.at("eyes_follow")
    if eyes.value is not None:
        make = Making("movement", "eyes_follow", "Eyes on the object", u.WORDS)
        yield make.of(None, eyes.at("reason").text())


#: What the count of near and far rests on.
COUNTED_FROM = {
    "vergence": "how far the eyes turn in",
    "hand": "the arm that carries the fingertip",
}
#: Whether the eyes went along with it.
WITH_FINGER = {True: "yes", False: "no"}


def hand_figures(place: Place) -> Iterator[Figure]:
    """How often the hand came near, whether the eyes went along, and what the counts rest on."""
    hand = place.at("hand")
    if hand.value is None:
        return
    reason = hand.at("reason").text()
    make = Making("movement", "hand_cycles", "Near and far by the hand", u.COUNT)
    yield make.of(hand.at("cycles").number(), reason)
    by_eyes = hand.at("vergence_cycles").number()
    if by_eyes is not None:
        yield Making("movement", "eye_cycles", "Near and far by the eyes", u.COUNT).of(by_eyes)
    sources = [COUNTED_FROM.get(p.text() or "", p.text()) for p in hand.at("counted_from").rows()]
    told = Making("movement", "counted_from", "Counted from", u.WORDS)
    yield told.of(" and ".join(s for s in sources if s) or None, "nothing that it is counted from")
    followed = hand.at("eyes_followed")
    if followed.value is not None:
        words = Making("movement", "eyes_followed", "Eyes went along with the finger", u.WORDS)
        found = followed.at("value").truth()
        yield words.of(None if found is None else WITH_FINGER[found], followed.at("reason").text())


def counts_figure(make: Making, found: Place, kinds: dict[str, str]) -> Figure:
    """Counts of several kinds in one line; those of which there were none are left out."""
    counts = {words: int(found.at(kind).number() or 0) for kind, words in kinds.items()}
    told = ", ".join(f"{words} {count}" for words, count in counts.items() if count)
    return make.of(told or None, "none was counted")


def table_figures(place: Place) -> Iterator[Figure]:
    """A chair stand test against its published table: a comparison, no finding."""
    table = place.at("table")
    if table.value is None:
        return
    reason = table.at("reason").text()
    seconds = table.at("unit").text() == "s"
    name = "Five stands" if seconds else "Stands in 30 s"
    make = Making("dose", "chair_stands", name, u.SECONDS if seconds else u.COUNT)
    yield make.of(table.at("value").number(), reason)
    limit = table.at("limit").number()
    words = Making("dose", "chair_table", "Against the published table", u.WORDS)
    below = table.at("below_average").truth()
    if below is None:
        yield words.of(None, reason)
        return
    if limit is None:
        raise table.wrong("has a verdict and no limit")
    bound = "longer than" if seconds else "fewer than"
    verdict = "below average" if below else "not below average"
    yield words.of(f"{verdict} ({bound} {limit:g} is below)")
    yield words.of(table.at("source").text(), aspect="source")
    yield words.of(table.at("holds_for").text(), aspect="holds_for")
