"""A plan that says to whom its sessions are handed over."""

from __future__ import annotations

from collections.abc import Sequence

from tracker.errors import InputError
from tracker.handover.crypt import is_public_key
from tracker.handover.keys import clinic_keys, name_of
from tracker.plan.files import format_plan, parse_plan
from tracker.plan.model import HandOver, Plan


def with_keys(plan: Plan, further: Sequence[str] = (), *, plain: bool = False) -> Plan:
    """The plan with the public keys of this computer and further ones, or with none, knowingly.

    Keys that stand in the plan already stay, as colleagues read with them.

    Raises
    ------
    InputError
        If there is no key, a further one is none, or both keys and plain files are asked for.
    """
    if plain and further:
        raise InputError("plain files have no key; leave out --key or --plain")
    bad = next((k for k in further if not is_public_key(k)), None)
    if bad is not None:
        raise InputError(f"{bad!r} is no public key (age1 and 58 more letters)")
    own = [] if plain else [k.public for k in clinic_keys()]
    if not plain and not own and not further:
        raise InputError(
            "there is no key on this computer; make one ('turnpost keys new'), or choose plain "
            "files knowingly (--plain)"
        )
    before = plan.hand_over.keys if plan.hand_over is not None else []
    keys = list(dict.fromkeys([*own, *before, *further]))
    way = HandOver(plain=True) if plain else HandOver(keys=keys)
    # Read again, so that the file that is written is one that can be used.
    return parse_plan(format_plan(plan.model_copy(update={"hand_over": way})))


def readers(plan: Plan) -> list[tuple[str, bool]]:
    """Short names of the keys that can open what a plan hands over; whether each is here."""
    own = {k.public for k in clinic_keys()}
    keys = plan.hand_over.keys if plan.hand_over is not None else []
    return [(name_of(k), k in own) for k in keys]
