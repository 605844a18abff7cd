"""Somebody else's scene or frame, told to ask about it: answered from it alone, the walk stays."""

from __future__ import annotations

from datetime import timedelta
from typing import Final

from bot.dialogue import reckoning, solving
from bot.dialogue.compose import Role
from bot.dialogue.facts import Facts
from bot.dialogue.meaning import group, of_others
from bot.dialogue.meaning.asking import asks
from bot.dialogue.meaning.said import Said
from bot.dialogue.reading import read
from bot.dialogue.steps.anywhere import planning, repeat
from bot.dialogue.steps.asked import on_paper, trade_answers, trials
from bot.dialogue.steps.asked.topic_or_cause import with_sight
from bot.dialogue.steps.asked.what_is_white import say_which
from bot.dialogue.steps.walk import adjust, base
from bot.dialogue.steps.walk.taken import take_settings
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.turn import Turn
from core.water import look_of

#: What a place is told by, and what else makes a scene of it; so many of them do (own rule).
_PLACE: Final = frozenset({"fall_height_m", "distance_m", "stream", "water_speed_mps", "light"})
_SCENE: Final = _PLACE | {"nearest_m", "focal_mm", "lenses", "camera_format", "section_height_m"}
_LEAST: Final = 2
#: With these told a supposition is of another place than the walk's.
_ELSEWHERE: Final = frozenset({"fall_height_m", "distance_m"})
_SETTINGS: Final = frozenset({"f_number", "shutter_s", "iso"})
#: "Another one" is another of them for so long (own rule: a pause between two questions).
_GOES_ON: Final = timedelta(minutes=30)
#: Said of frames that are to be taken now, by who stands there.
_OF_NOW: Final = ("base.tripod", "base.offer_polariser", "light.")


def answer(turn: Turn, said: Said) -> bool:
    """Answer what is asked of somebody else's scene or frame; whether the message was of one.

    Args:
        turn: the answer under construction.
        said: the message.
    """
    if planning.is_planning(turn) or not asks(said):
        return False
    facts = read(of_others.as_own(said.english), units=turn.units)
    if _is_frame(turn, said, facts):
        _say_cause(turn, said, facts)
    elif _is_scene(turn, said, facts):
        _say_start(turn, said, facts)
    else:
        return False
    turn.change_conversation(others_at=turn.now)
    repeat.put_again_if_open(turn)
    return True


# a frame that somebody else took


def _is_frame(turn: Turn, said: Said, facts: Facts) -> bool:
    """Whether a frame of theirs is told, with what it was taken with, to ask what went wrong."""
    known = facts.known().keys()
    if len(known & _SETTINGS) < _LEAST or not (facts.symptoms or of_others.asks_for_cause(said)):
        return False
    if of_others.is_their_frame(said):
        return True
    before = turn.context.conversation.others_at
    goes_on = before is not None and turn.now - before <= _GOES_ON
    return of_others.is_next_case(said) and (goes_on or of_others.speaks_of_them(said))


def _say_cause(turn: Turn, said: Said, facts: Facts) -> None:
    """The cause of what is wrong with it, from its own settings alone."""
    told = facts.only(facts.known().keys() - {"symptoms"})
    paper = on_paper.empty(turn, told)
    if of_others.asks_blown_or_long(said):
        say_which(paper, facts.shutter_s)
    else:
        own = said._replace(english=of_others.as_own(said.english))
        seen = with_sight(paper, own, facts)
        if adjust.is_complaint(seen):
            adjust.trouble(paper, seen)
        else:
            given = take_settings(paper)
            time_s = 1.0 if given is None else given.shutter_s
            paper.say(Role.SETTINGS, "others.frame", look=solving.look_is(told, time_s))
    on_paper.take_over(turn, paper, without=_OF_NOW)


# a scene that somebody else stands in


def _is_scene(turn: Turn, said: Said, facts: Facts) -> bool:
    """Whether a scene is supposed that is not the walk's: of somebody else, or of another fall."""
    known = facts.known().keys()
    if known & _SETTINGS or group.is_mixed(said.typed) or of_others.asks_blown_or_long(said):
        return False
    if of_others.speaks_of_one(said) and reckoning.is_phone(facts):
        return True
    if len(known & _SCENE) < _LEAST or not known & _PLACE:
        return False
    if of_others.speaks_of_one(said):
        return True
    elsewhere = turn.context.conversation.walk is None or known >= _ELSEWHERE
    return trials.supposes(said) and (of_others.speaks_of_them(said) or elsewhere)


def _say_start(turn: Turn, said: Said, facts: Facts) -> None:
    """What to set there: by the light that is told, else by the look."""
    facts = _with_lens(turn, facts)
    own = not (of_others.speaks_of_one(said) or of_others.speaks_of_them(said))
    paper = on_paper.empty(turn, facts, kit=turn.context.person.kit if own else Facts())
    if reckoning.is_phone(facts):
        trade_answers.say_time(paper, said.english)
        on_paper.take_over(turn, paper)
        return
    base.give(paper)
    share = reckoning.flow_of(paper.facts).share(paper.given.shutter_s)
    on_paper.take_over(turn, paper, without=_OF_NOW)
    turn.say(
        Role.CHECK,
        "others.look",
        look=TEXTS[f"look.{look_of(share).value}"],
        share=measures.crossed(share),
    )


def _with_lens(turn: Turn, facts: Facts) -> Facts:
    """The focal length that holds the whole fall, where none is told."""
    told = facts.focal_mm is not None or facts.fall_height_m is None or facts.distance_m is None
    if told or reckoning.is_phone(facts):
        return facts
    framing = reckoning.framing_of(facts, reckoning.nearest_of(facts))
    ends = [end for lens in facts.lenses for end in (lens.shortest_mm, lens.longest_mm)]
    focal_mm = min(max(framing.focal_mm, min(ends)), max(ends)) if ends else framing.focal_mm
    crop = reckoning.sensor_of(facts).crop_factor
    turn.say(Role.CHECK, "others.lens", focal=measures.focal(focal_mm, crop))
    return facts.updated(Facts(focal_mm=focal_mm))
