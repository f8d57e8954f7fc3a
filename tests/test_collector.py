"""What stays in memory is not looked through again; what is left over goes all the same."""

import gc
import weakref
from collections.abc import Iterator

import pytest

from tracker.collector import spare_what_stays


@pytest.fixture(autouse=True)
def thawed() -> Iterator[None]:
    yield
    gc.unfreeze()


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
