"""A plan that says to whom its sessions are handed over."""

from __future__ import annotations

from collections.abc import Sequence

from tracker.errors import InputError
from tracker.handover.crypt import is_public_key
from tracker.handover.keys import clinic_keys, name_of
from tracker.plan.files import format_plan, parse_plan
from tracker.plan.model import HandOver, Plan


def with_keys(
    plan: Plan,
    further: Sequence[str] = (),
    *,
    plain: bool = False,
    only: Sequence[str] = (),
    own_only: bool = False,
    drop: Sequence[str] = (),
) -> Plan:
    """The plan with the public keys of this computer and further ones, or with none, knowingly.

    Parameters
    ----------
    plan
        The plan. Keys that stand in it already stay, as colleagues read with them.
    further
        Public keys to add.
    plain
        No keys: files are not encrypted.
    only
        These keys and no others, each public or the short name of one that is here or in the
        plan: not even those of this computer, of which one may be stolen.
    own_only
        Of the keys that stand in the plan only those that are on this computer.
    drop
        Keys to take out, named likewise.

    Raises
    ------
    InputError
        If the plan has no pseudonym, a key is none or is not there, no key is left, or both
        keys and plain files are asked for.
    """
    if plan.person is None:
        raise InputError(
            "this plan has no pseudonym, so nobody could tell whose sessions come back: set "
            "'person' in it first"
        )
    if plain and (further or only or drop or own_only):
        raise InputError("plain files have no key; leave out the keys or --plain")
    bad = next((k for k in further if not is_public_key(k)), None)
    if bad is not None:
        raise InputError(f"{bad!r} is no public key (age1 and 58 more letters)")
    own = [] if plain else [k.public for k in clinic_keys()]
    if not plain and not own and not further and not only:
        raise InputError(
            "there is no key on this computer; make one ('turnpost keys new'), or choose plain "
            "files knowingly (--plain)"
        )
    before = plan.hand_over.keys if plan.hand_over is not None else []
    keys = list(dict.fromkeys([*own, *([] if own_only else before), *further]))
    if only:
        keys = list(dict.fromkeys(_named(k, [*keys, *before]) for k in only))
    away = {_named(k, [*keys, *before]) for k in drop}
    keys = [k for k in keys if k not in away]
    if not keys and not plain:
        raise InputError("no key would be left; add one, or choose plain files knowingly (--plain)")
    way = HandOver(plain=True) if plain else HandOver(keys=keys)
    # Read again, so that the file that is written is one that can be used.
    return parse_plan(format_plan(plan.model_copy(update={"hand_over": way})))


def _named(key: str, known: Sequence[str]) -> str:
    """A public key from itself, or from its short name."""
    if is_public_key(key):
        return key
    found = dict.fromkeys(k for k in known if name_of(k) == key)
    if len(found) != 1:
        names = ", ".join(name_of(k) for k in dict.fromkeys(known)) or "none"
        raise InputError(f"{key!r} is neither a public key nor one of these: {names}")
    return next(iter(found))


def readers(plan: Plan) -> list[tuple[str, bool]]:
    """Short names of the keys that can open what a plan hands over; whether each is here."""
    own = {k.public for k in clinic_keys()}
    keys = plan.hand_over.keys if plan.hand_over is not None else []
    return [(name_of(k), k in own) for k in keys]
