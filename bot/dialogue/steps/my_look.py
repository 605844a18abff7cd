"""The looks that a person's kept frames have taught: kept, shown, and forgotten again."""

from __future__ import annotations

from bot.dialogue.aims import LEAST_KEPT, own_aim, with_kept
from bot.dialogue.by_numbers import share_told
from bot.dialogue.compose import Role
from bot.dialogue.steps import repeat
from bot.dialogue.steps.at_hand import the_one
from bot.dialogue.steps.views import same_stops
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.turn import Turn
from core.water import Look, look_of


def keep(turn: Turn) -> None:
    """`keep`: the person likes the share of the last frame, or of the one replied to."""
    name = the_one(turn)
    frame = turn.context.conversation.measured.get(name or "")
    if frame is None:
        turn.say(Role.SETTINGS, "keep.which")
        repeat.put_again_if_open(turn, whole=False)
        return
    share = share_told(turn.facts, frame.shutter_s)
    if share is None or name is None:
        turn.say(Role.SETTINGS, "my_look.kept_only")
    else:
        _learn(turn, name, share)
        look = TEXTS[f"look.{look_of(share).value}"]
        turn.say(Role.SETTINGS, "my_look.kept", look=look, share=measures.percent(share))
        _say_aim(turn, look_of(share))
    repeat.put_again_if_open(turn, whole=False)


def kept_on_walk(turn: Turn) -> None:
    """The walk ends with a kept frame: where its time is that of a measured one, it teaches."""
    given = turn.walk.given
    for name, frame in reversed(turn.context.conversation.measured.items()):
        if given is None or frame.shutter_s is None:
            continue
        if same_stops(frame.shutter_s, given.shutter_s):
            share = share_told(turn.facts, frame.shutter_s)
            if share is not None:
                _learn(turn, name, share)
            return


def _learn(turn: Turn, name: str, share: float) -> None:
    """Each frame teaches once."""
    measured = turn.context.conversation.measured
    frame = measured[name]
    if not frame.kept:
        turn.change_person(kept_shares=with_kept(turn.context.person, share))
        kept = {name: frame.model_copy(update={"kept": True})}
        turn.change_conversation(measured=measured | kept)


def _say_aim(turn: Turn, look: Look) -> None:
    own = own_aim(turn.context.person, look)
    if own is not None and turn.origin.direct:
        share, name = measures.percent(own), TEXTS[f"look.{look.value}"]
        turn.say(Role.CHECK, "my_look.aims_now", look=name, share=share)


def show(turn: Turn) -> None:
    """`my look`: what the kept frames have taught."""
    if not turn.origin.direct:
        turn.say(Role.SETTINGS, "my_look.in_private")
    elif not turn.context.person.kept_shares:
        turn.say(Role.SETTINGS, "my_look.nothing")
    else:
        told = [_one(turn, look) for look in Look if look.value in turn.context.person.kept_shares]
        turn.say(Role.SETTINGS, "my_look.list", list=", ".join(told))
        turn.say(Role.CHECK, "my_look.reset_how")
    repeat.put_again_if_open(turn, whole=False)


def _one(turn: Turn, look: Look) -> str:
    person, name = turn.context.person, TEXTS[f"look.{look.value}"]
    own = own_aim(person, look)
    if own is not None:
        return TEXTS["my_look.one"].format(look=name, share=measures.percent(own))
    number = str(len(person.kept_shares[look.value]))
    return TEXTS["my_look.few"].format(look=name, number=number, least=str(LEAST_KEPT))


def reset(turn: Turn) -> None:
    """`reset my look`: the usual aims again."""
    turn.change_person(kept_shares={})
    turn.say(Role.SETTINGS, "my_look.reset")
    repeat.put_again_if_open(turn, whole=False)
