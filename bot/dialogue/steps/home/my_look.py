"""The looks that a person's kept frames have taught: kept, shown, and forgotten again."""

from __future__ import annotations

from typing import Final

from bot.dialogue import reckoning
from bot.dialogue.aims import LEAST_KEPT, own_aim
from bot.dialogue.compose import Role
from bot.dialogue.facts import Facts
from bot.dialogue.kept import Measured
from bot.dialogue.solving import look_is, settings_text
from bot.dialogue.states import State, Trigger
from bot.dialogue.steps.anywhere import repeat
from bot.dialogue.steps.frames.at_hand import known, the_one
from bot.dialogue.steps.home import told_frames, told_seen
from bot.dialogue.steps.walk import keep as walk_keep
from bot.dialogue.steps.walk.taught import learn, share_of
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.turn import Turn
from bot.dialogue.walk_state import GivenSettings
from core.water import Look, look_of

#: Steps in which a frame was taken, so that `keep` without a shared one means the walk's own.
_TAKEN: Final = frozenset({State.HIGHLIGHTS, State.ADJUST, State.KEEP})


def keep(turn: Turn) -> None:
    """`keep`: the person likes the share of the last frame of theirs, or of the one replied to."""
    meant, frames = the_one(turn), turn.context.conversation.measured
    name = meant if meant in frames and _is_own(turn, meant) else _last_own(turn)
    if meant in frames and frames[meant].foreign:
        turn.say(Role.CHECK, "my_look.not_own")
    spoken = told_frames.spoken_of(turn) if turn.replies_to is None else None
    if spoken is not None:
        name = told_frames.shared_as(turn, spoken)
    if name is None and told_frames.frames_of(turn):
        told_seen.like(turn)
        return
    if name is None or (frames[name].shutter_s is None and _has_taken(turn)):
        _keep_walk(turn)  # a file without camera data was judged by the walk's settings, too
        return
    share = share_of(turn, frames[name])
    if share is None:
        turn.say(Role.SETTINGS, "my_look.kept_only")
    else:
        learn(turn, name, share)
        look = TEXTS[f"look.{look_of(share).value}"]
        turn.say(Role.SETTINGS, "my_look.kept", look=look, share=measures.crossed(share))
        _say_aim(turn, look_of(share))
    _stand_at(turn, frames[name])
    repeat.put_again_if_open(turn, whole=False)


def _last_own(turn: Turn) -> str | None:
    """The newest measured frame that is the person's own."""
    return next((name for name in reversed(known(turn)) if _is_own(turn, name)), None)


def _is_own(turn: Turn, name: str) -> bool:
    """Whether a frame is the person's own, and of the water unless it is the one replied to."""
    frame = turn.context.conversation.measured[name]
    return not frame.foreign and (not frame.leaf or turn.replies_to == name)


def _has_taken(turn: Turn) -> bool:
    """Whether a walk is under way on which a frame was taken with known settings."""
    walk = turn.context.conversation.walk
    return walk is not None and walk.given is not None and walk.state in _TAKEN


def _keep_walk(turn: Turn) -> None:
    """No frame with a time was shared: the one of the walk, by the settings that were given."""
    before = turn.walk.kept
    if turn.walk.given is None and before is not None:
        _say_kept(turn, before)
        repeat.put_again_if_open(turn, whole=False)
        return
    given = turn.walk.given
    if given is None or not _has_taken(turn):
        turn.say(Role.SETTINGS, "keep.which")
        repeat.put_again_if_open(turn, whole=False)
        return
    _say_kept(turn, given)
    if not turn.is_at_home:
        turn.be_in(State.KEEP, Trigger.HELD)
        walk_keep.ask_on(turn)


def _say_kept(turn: Turn, given: GivenSettings) -> None:
    settings, look = settings_text(given, turn.camera), look_is(turn.facts, given.shutter_s)
    turn.say(Role.SETTINGS, "my_look.kept_walk", settings=settings, look=look)


def _stand_at(turn: Turn, frame: Measured) -> None:
    """What is asked from now on is asked of the kept frame: its settings are the walk's."""
    given = turn.walk.given
    told = Facts(f_number=frame.f_number, shutter_s=frame.shutter_s, iso=frame.iso)
    exact = zip(("f_number", "shutter_s", "iso"), reckoning.exact_settings(told), strict=True)
    values = {name: value for name, value in exact if value is not None}
    if given is not None and turn.walk.state in _TAKEN and "shutter_s" in values:
        turn.change_walk(given=given.model_copy(update=values))


def _say_aim(turn: Turn, look: Look) -> None:
    own = own_aim(turn.context.person, look)
    if own is not None and turn.origin.direct:
        share, name = measures.crossed(own), TEXTS[f"look.{look.value}"]
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
        return TEXTS["my_look.one"].format(look=name, share=measures.crossed(own))
    number = str(len(person.kept_shares[look.value]))
    return TEXTS["my_look.few"].format(look=name, number=number, least=str(LEAST_KEPT))


def reset(turn: Turn) -> None:
    """`reset my look`: the usual aims again."""
    turn.change_person(kept_shares={})
    turn.say(Role.SETTINGS, "my_look.reset")
    repeat.put_again_if_open(turn, whole=False)
