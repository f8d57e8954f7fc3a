"""What stays in memory is not looked through again; what is left over goes all the same."""

import gc
import threading
import weakref
from collections.abc import Iterator

import pytest

from tracker.collector import DUE, collect_by_hand, collect_what_is_due, spare_what_stays


@pytest.fixture(autouse=True)
def thawed() -> Iterator[None]:
    on = gc.isenabled()
    yield
    gc.unfreeze()
    (gc.enable if on else gc.disable)()


class Ring:
    """Holds itself, so that only the collector can free it."""

    def __init__(self) -> None:
        self.itself = self


def test_what_is_there_is_left_alone() -> None:
    kept = [Ring() for _ in range(1000)]
    spare_what_stays()
    assert not any(found in kept for found in gc.get_objects() if isinstance(found, Ring))
    new = Ring()
    assert any(found is new for found in gc.get_objects())


def test_what_became_garbage_since_goes_at_the_next_call() -> None:
    ring = Ring()
    gone = weakref.ref(ring)
    spare_what_stays()
    del ring
    gc.collect()
    assert gone() is not None
    spare_what_stays()
    assert gone() is None


def test_by_hand_nothing_is_freed_by_another_thread() -> None:
    collect_by_hand()
    ring = Ring()
    gone = weakref.ref(ring)
    del ring
    made: list[list[int]] = []
    # So many that by itself it would have looked at all of them.
    many = DUE[0] * (DUE[1] + 2) * (DUE[2] + 2)
    thread = threading.Thread(target=lambda: made.extend([0] for _ in range(many)))
    thread.start()
    thread.join()
    assert gone() is not None
    gc.collect()
    assert gone() is None


def test_little_is_not_looked_through() -> None:
    collect_by_hand()
    gc.collect()
    ring = Ring()
    gone = weakref.ref(ring)
    del ring
    collect_what_is_due()
    assert gone() is not None
    kept = [[] for _ in range(2 * DUE[0])]
    collect_what_is_due()
    assert gone() is None and len(kept) == 2 * DUE[0]
