"""A message at home: frames told in words, what is seen in them, an intent, the one to keep."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Final

from bot.dialogue.compose import Role
from bot.dialogue.facts import Facts, Units
from bot.dialogue.meaning import at_home as at_home_words
from bot.dialogue.meaning import review_words
from bot.dialogue.meaning.asking import asks
from bot.dialogue.meaning.frame_named import named_in
from bot.dialogue.meaning.told_sights import Remark, remarks
from bot.dialogue.meaning.white_asked import asks_of_white, white_in
from bot.dialogue.reading import number_answer
from bot.dialogue.reading.foreign import glossed
from bot.dialogue.reading.frame_list import Told, laid, told_in
from bot.dialogue.reading.frame_times import plain_times
from bot.dialogue.slots import KIT_SLOTS
from bot.dialogue.steps.anywhere import manner, repeat
from bot.dialogue.steps.home import (
    at_home,
    blinked_before,
    last_frame,
    told_choice,
    told_facts,
    told_frames,
    told_listed,
    told_looks,
    told_names,
    told_seen,
    told_shares,
    white_verdict,
)
from bot.dialogue.texts.measures import FEET_PER_METRE
from bot.dialogue.turn import Turn
from core.water import Look

#: Said of a day and of the light as well as of a frame.
_ALSO_ELSEWHERE: Final = frozenset({"good", "best", "metered", "holds", "small", "blue"})
#: From so many frames on one is chosen.
_FEWEST: Final = 2
#: Nobody likes, or metered, what they ask about.
_ONLY_TOLD: Final = frozenset({"best", "metered"})
#: In these the water still shows where it goes; in the others it has run together.
_SHOWING: Final = frozenset({Look.FROZEN, Look.CRISP, Look.TEXTURED})


@dataclass(frozen=True)
class _Heard:
    """A message, read for a review."""

    typed: str
    said: str
    told: Told
    facts: Facts
    focus: tuple[float, str] | None


def answer(turn: Turn, typed: str, said: str, facts: Facts) -> bool:
    """Answer a message of somebody who is home, as far as it is about their frames.

    Args:
        turn: the answer under construction.
        typed: the message as it came.
        said: the message in English.
        facts: what was read in it.

    Returns:
        Whether it was answered; other questions are answered as anywhere.
    """
    if at_home.brings_list(turn, typed, said):
        at_home.arrive_home(turn)
    if not turn.is_at_home:
        if turn.context.conversation.review is not None:
            turn.change_conversation(review=None)
        return _chosen_at_the_water(
            turn, _Heard(typed, said, told_in(plain_times(said)), facts, None)
        )
    if facts.ask_what_if and not review_words.asks_to_choose(typed):
        return False
    if facts.known() and review_words.looks_ahead(typed):
        turn.change_conversation(home_at=None, review=None)
        return False
    told_frames.take_measured(turn)
    counted = told_frames.counted(turn, number_answer(typed))
    if counted is not None:
        typed = said = told_names.name(turn, counted)
        facts = Facts()
    plain = plain_times(said)
    focus = review_words.focus_told(plain)
    turn.roomy = _answered(turn, _Heard(typed, said, told_in(plain), facts, focus))
    return turn.roomy


def _chosen_at_the_water(turn: Turn, heard: _Heard) -> bool:
    """Which of some frames that are told to keep, asked before anybody is home; the walk stays.

    Args:
        turn: the answer under construction.
        heard: the message.
    """
    choice = review_words.asks_to_choose(heard.typed) and review_words.speaks_of_taken(heard.typed)
    if len(heard.told.times) < _FEWEST or not choice or heard.facts.ask_what_if:
        return False
    _take_list(turn, heard)
    blinked_before.keep(turn)
    told_choice.choose(turn)
    repeat.put_again_if_open(turn)
    turn.roomy = True
    return True


def _answered(turn: Turn, heard: _Heard) -> bool:
    """Answer white that may be lost, what is wanted of the frames, or what is told of them."""
    if review_words.tells_of_copies(heard.typed):
        told_frames.change(turn, copied=True)
    if asks_of_white(heard.typed):
        _judge_white(turn, heard)
        return True
    if len(heard.told.times) > 1 and review_words.asks_to_choose(heard.typed):
        _take_list(turn, heard)
    return _wanted(turn, heard.typed) or _told(turn, heard)


def _judge_white(turn: Turn, heard: _Heard) -> None:
    """White that may be lost: in the frame that is named, told, or was spoken of last."""
    turn.remember_for_back()
    _learn(turn, heard, _kept_facts(heard, says=True))
    frames = laid(last_frame.known(turn, heard.told), heard.told)
    told_frames.change(turn, frames=frames)
    named = named_in(plain_times(heard.said), frames).places
    alone = 0 if len(frames) == 1 else told_frames.spoken_of(turn)
    white_verdict.say(turn, named[0] if named else alone, white_in(heard.typed))
    if at_home_words.brings_frame(heard.typed) and not turn.context.conversation.measured:
        turn.say(Role.ASSUMPTION, "white.no_file")


def _take_list(turn: Turn, heard: _Heard) -> None:
    """Frames that are told with the question which of them to keep."""
    turn.remember_for_back()
    _learn(turn, heard, _kept_facts(heard, says=False))
    frames = laid(told_frames.frames_of(turn), heard.told)
    told_frames.change(turn, frames=frames)
    told_seen.keep(turn, remarks(plain_times(heard.said), frames))


def _wanted(turn: Turn, typed: str) -> bool:
    """What a message wants of the frames that were told; whether it wants anything."""
    frames = told_frames.frames_of(turn)
    intent = review_words.intent_of(typed)
    if intent is not None:
        turn.remember_for_back()
        _take_intent(turn, intent)
    elif frames and review_words.asks_how_to_choose(typed):
        told_looks.how(turn)
    elif frames and review_words.asks_to_choose(typed):
        told_choice.choose(turn)
    elif review_words.asks_for_log(typed):
        _write_log(turn, typed)
    elif frames and review_words.asks_for_next_time(typed):
        told_choice.next_time(turn)
    elif frames and review_words.asks_for_equal(typed):
        told_choice.equal(turn)
    else:
        return False
    return True


def _write_log(turn: Turn, typed: str) -> None:
    """The line for the log, of frames told or the walk's own; without any they are asked for."""
    if last_frame.take(turn):
        told_choice.log(turn, typed)
    else:
        turn.say(Role.SETTINGS, "home.which_frames")


def _take_intent(turn: Turn, intent: str) -> None:
    """What the pictures were to show: by it they are judged, and where to look for it."""
    told_frames.change(turn, intent=intent, asked_best=True)
    turn.say(Role.SETTINGS, "home.intent", intent=intent)
    places = range(len(told_frames.frames_of(turn)))
    shows = [place for place in places if told_shares.look_in(turn, place) in _SHOWING]
    melts = [place for place in places if place not in shows]
    if shows and melts:
        named = {"shows": told_names.names(turn, shows), "melts": told_names.names(turn, melts)}
        turn.say(Role.CHECK, "home.intent_look", **named)
    else:
        turn.say(Role.CHECK, "home.intent_shows")
    if len(places) > 1:
        turn.say(Role.CHECK, "home.intent_ask")


def _told(turn: Turn, heard: _Heard) -> bool:
    """What a message tells: of the place, of frames, of what is seen in them."""
    asking = asks(manner.said(turn, heard.said, heard.typed))
    before = last_frame.known(turn, heard.told)
    frames = before if asking else laid(before, heard.told)
    seen = remarks(plain_times(heard.said), frames)
    if asking and _asked_of_frames(turn, seen, heard.facts):
        return True
    seen = () if asking else seen
    says = any(remark.seen or remark.against is not None for remark in seen)
    if not frames and not _is_complaint(seen):
        seen, says = (), False
    if review_words.drops(heard.typed) and _dropped(turn, heard):
        return True
    facts = _kept_facts(heard, says=says)
    changed = frames != before
    focused = heard.focus is not None and not asking
    if not (changed or facts.known() or seen or focused):
        return False
    turn.remember_for_back()
    _learn(turn, heard, facts)
    told_frames.change(turn, frames=frames)
    new = len(frames) - len(before) if changed else -1
    _answer(turn, heard, facts, seen if says or not changed else (), new=new)
    return True


def _asked_of_frames(turn: Turn, seen: tuple[Remark, ...], facts: Facts) -> bool:
    """Answer a question that names frames, or a fault; what it only asks is not kept as seen."""
    named = any(remark.places for remark in seen) or bool(facts.symptoms)
    if not (told_frames.frames_of(turn) and named):
        return False
    before = told_frames.review_of(turn)
    asked = (
        replace(one, seen=tuple(name for name in one.seen if name not in _ONLY_TOLD))
        for one in seen
    )
    told_frames.change(turn, asked_best=False)
    told_seen.answer(turn, tuple(one for one in asked if one.places or one.seen))
    told_frames.change(turn, frames=before.frames, asked_best=before.asked_best)
    return True


def _is_complaint(seen: tuple[Remark, ...]) -> bool:
    """Whether something is said of a frame that can only be said of one."""
    return bool({name for remark in seen for name in remark.seen} - _ALSO_ELSEWHERE)


def _dropped(turn: Turn, heard: _Heard) -> bool:
    """Frames that are taken back; whether some were named of those that were told before."""
    seen = remarks(plain_times(heard.said), told_frames.frames_of(turn))
    gone = {place for remark in seen for place in remark.places}
    if not gone:
        return False
    turn.remember_for_back()
    turn.say(Role.SETTINGS, "home.dropped", **told_names.named(turn, sorted(gone)))
    frames = told_frames.frames_of(turn)
    left = tuple(frame for place, frame in enumerate(frames) if place not in gone)
    told_frames.change(turn, frames=left, about=())
    return True


def _kept_facts(heard: _Heard, *, says: bool) -> Facts:
    """What holds for the place and all frames."""
    focused = heard.focus is not None
    return told_facts.kept_of(heard.facts, heard.told, heard.said, says=says, focused=focused)


def _learn(turn: Turn, heard: _Heard, facts: Facts) -> None:
    """Kit stays with the person; the place and the light of the day with its review."""
    known = set(facts.known())
    if heard.facts.units is not None:
        turn.change_person(units=heard.facts.units)
    kit = turn.context.person.kit.updated(facts.only(known & KIT_SLOTS))
    turn.change_person(kit=kit)
    review = told_frames.review_of(turn)
    place = review_words.place_named(heard.typed) or review.place
    rest = review.facts.updated(facts.only(known - KIT_SLOTS))
    told_frames.change(turn, facts=rest, place=place)


def _answer(turn: Turn, heard: _Heard, facts: Facts, seen: tuple[Remark, ...], *, new: int) -> None:
    """One answer: what was seen, else the list of the frames, else the facts.

    `new` is how many frames are new; -1 where none of them changed at all.
    """
    frames = told_frames.frames_of(turn)
    if seen and not frames:
        turn.say(Role.SETTINGS, "home.which_frames")
    elif seen and told_seen.answer(turn, seen):
        pass
    elif new >= 0 or facts.known() or heard.focus is not None:
        focus_m = _focus_m(turn, heard.focus)
        told_listed.told(turn, facts, focus_m, new=new > 0, changed=new >= 0)
    else:
        say_how(turn)
    _say_unread(turn, heard)


def _focus_m(turn: Turn, focus: tuple[float, str] | None) -> float | None:
    """The focus in metres; a bare number is in the person's units."""
    if focus is None:
        return None
    feet = focus[1] == "ft" or (not focus[1] and turn.units is Units.IMPERIAL)
    return focus[0] / FEET_PER_METRE if feet else focus[0]


def _say_unread(turn: Turn, heard: _Heard) -> None:
    """Numbers that found no place, those of the frames left out."""
    unread = [
        piece
        for piece in heard.facts.unread
        if not (told_in(plain_times(piece)).is_any() or _is_meant(piece, heard))
    ]
    if unread:
        pieces = ", ".join(f"`{piece}`" for piece in unread[:3])
        turn.say(Role.ASSUMPTION, "unread_rest", pieces=pieces)


def _is_meant(piece: str, heard: _Heard) -> bool:
    """Whether a bare number was read: the focus, or a time of a list."""
    meant = {f"{time.shutter_s:g}" for time in heard.told.times}
    if heard.focus is not None:
        meant.add(f"{heard.focus[0]:g}")
    return piece.split(maxsplit=1)[0] in meant


def is_of_frames(turn: Turn, typed: str) -> bool:
    """Whether somebody at home says what is seen in the frames that were told."""
    frames = told_frames.frames_of(turn)
    if not (frames and turn.is_at_home):
        return False
    said = plain_times(glossed(typed, turn.context.person.language))
    return any(remark.seen for remark in remarks(said, frames))


def say_how(turn: Turn) -> None:
    """How to go on at home: which frames, or which of them."""
    frames = told_frames.frames_of(turn)
    if frames:
        turn.say(Role.CHECK, "home.name_it", frame=told_names.name(turn, 0))
    else:
        turn.say(Role.CHECK, "home.which_frames")
