"""Where the bot's own numbers come from: the sum with its numbers put in, and what it rests on."""

from __future__ import annotations

import math
import re
from collections.abc import Callable, Iterable, Mapping
from typing import Final

from bot.dialogue import reckoning
from bot.dialogue.compose import Role
from bot.dialogue.facts import Facts
from bot.dialogue.meaning.asking import asks
from bot.dialogue.meaning.own_asked import CLAUSE, OwnAsked, own_asked
from bot.dialogue.meaning.said import Said
from bot.dialogue.meaning.values_named import Named, named_in, plainly
from bot.dialogue.reading import read
from bot.dialogue.steps.asked import own_reasons
from bot.dialogue.steps.asked.told_around import rest_of
from bot.dialogue.tongues import in_any
from bot.dialogue.turn import Turn
from bot.dialogue.walk_state import Note
from core.series import is_same_mark

#: A whole number behind no "why" may be anything; with a decimal it is hardly by chance the same.
_BY_CHANCE: Final = 1e-6

_Explain = Callable[[Turn, Named, tuple[Note, ...]], None]
_EXPLAINED: Final[Mapping[str, _Explain]] = {
    "share": own_reasons.say_share,
    "shutter_s": own_reasons.say_share,
    "f_number": own_reasons.say_f_number,
    "iso": own_reasons.say_iso,
    "focal_mm": own_reasons.say_focal,
    "length": own_reasons.say_length,
}


def answer(turn: Turn, said: Said) -> str | None:
    """Say where a number of the bot's comes from, or what it reckons with.

    Args:
        turn: the answer under construction.
        said: the message.

    Returns:
        What else the message tells of the scene; None when it asks nothing of the kind.
    """
    asked = own_asked(said)
    if asked is None:
        return None
    own = turn.context.conversation.own
    mine = [
        found
        for one in asked.numbers
        if (found := _mine(turn, one, own) or _of_a_share(one, asked)) is not None
    ]
    about = _about(asked, mine)
    if not about and not asked.reckons:
        return None
    if not about and not own:
        turn.say(Role.SETTINGS, "why.nothing")
        return ""
    rest = rest_of(_around(asked))
    told = read(rest, units=turn.units)
    _explain(turn, asked, about, own)
    if "light" in asked.facets:
        own_reasons.say_light(turn, told.light)
    full = rest or any(part.role is Role.CHECK for part in turn.parts)
    own_reasons.say_inputs(turn, asked.facets, Role.ASSUMPTION if full else Role.CHECK)
    return rest


def _explain(turn: Turn, asked: OwnAsked, about: list[Named], own: tuple[Note, ...]) -> None:
    """The sum behind each number that is asked about, else behind the share."""
    shares = [one for one in about if one.slot == "share"]
    if len(shares) > 1 and own_reasons.say_both(turn, shares, own):
        return
    for one in about[:1]:
        _EXPLAINED[one.slot](turn, one, own)
    if not about and set(asked.facets) <= _OF_A_SHARE:
        own_reasons.say_share(turn, None, own)


#: With these, or nothing, named it is the share that is reckoned.
_OF_A_SHARE: Final = frozenset({"speed", "all"})


def _about(asked: OwnAsked, mine: list[Named]) -> list[Named]:
    """The bot's numbers that are asked about, the ones right behind a "why" first."""
    places = {one.start for one in asked.sure}
    chance = {one.start for one in asked.numbers if not _is_no_chance(one)}
    sure = [one for one in mine if one.start in places]
    # A bare number that only comes near a length or a dial is the bot's by chance.
    bare = {one.start for one in asked.numbers if not one.slot}
    chance |= {one.start for one in mine if one.start in bare and one.slot != "share"}
    others = [one for one in mine if one not in sure and (asked.reckons or one.start not in chance)]
    return [*sure, *others]


def _is_no_chance(one: Named) -> bool:
    """Whether a number is hardly the same as the bot's by chance: a share, or with a decimal."""
    decimal = abs(one.value - round(one.value)) > _BY_CHANCE
    return one.slot == "share" or (one.slot in {"", "length", "focal_mm"} and decimal)


def _mine(turn: Turn, one: Named, own: tuple[Note, ...]) -> Named | None:
    """A number as the bot said it last, or as it is set, with its slot; None for any other."""
    now = next((said for said in _set_now(turn) if _is_same(one, said)), None)
    if now is not None:
        return one._replace(slot=now.slot)
    found = (said for note in reversed(own) for said in numbers_of(note) if _is_same(one, said))
    named = next(found, None)
    return None if named is None or not named.slot else one._replace(slot=named.slot)


def _of_a_share(one: Named, asked: OwnAsked) -> Named | None:
    """A share that was not said lately: nobody but the bot names one where it is asked about."""
    return one if one.slot == "share" and (one in asked.sure or asked.reckons) else None


def _set_now(turn: Turn) -> list[Named]:
    """What is set now: the settings given last, and the focal length in use."""
    given, focal_mm = turn.walk.given, reckoning.focal_of(turn.facts)
    found = [] if focal_mm is None else [Named("focal_mm", focal_mm, 0, 0)]
    if given is None:
        return found
    dials = ("f_number", "shutter_s", "iso")
    return [*found, *(Named(slot, getattr(given, slot), 0, 0) for slot in dials)]


def numbers_of(note: Note) -> Iterable[Named]:
    """The numbers of a line that was said, by their slots."""
    return (one for value in note.values.values() for one in named_in(plainly(value)))


def _is_same(typed: Named, said: Named) -> bool:
    """Whether a typed number is one that was said, rounded as it was typed."""
    if typed.slot and typed.slot != said.slot:
        return False
    if typed.slot in {"f_number", "shutter_s", "iso"}:
        return is_same_mark(typed.value, said.value)
    _, _, decimals = f"{typed.value:g}".partition(".")
    return math.isclose(typed.value, said.value, abs_tol=0.51 * 10.0 ** -len(decimals), rel_tol=0)


def without_own(turn: Turn, said: Said, facts: Facts) -> Facts:
    """The facts of a message without the bot's own numbers that a question only points at.

    Args:
        turn: the answer under construction.
        said: the message.
        facts: what was read in it.
    """
    text = plainly(said.english)
    if not asks(said) or not (facts.unread or facts.known().keys() & _NUMBERS):
        return facts
    own = turn.context.conversation.own
    pointed = [
        one
        for one in named_in(text)
        if _POINTED.search(text[: one.start]) and _mine(turn, one, own) is not None
    ]
    if not pointed:
        return facts
    pieces = {" ".join(text[one.start : one.end].split()) for one in pointed}
    gone: dict[str, object] = {
        slot: None
        for slot in facts.known().keys() & _NUMBERS
        if any(math.isclose(getattr(facts, slot), one.value, rel_tol=0.01) for one in pointed)
    }
    gone["unread"] = tuple(piece for piece in facts.unread if piece not in pieces)
    return facts.model_copy(update=gone)


#: What points at a number that was said: "for that 0.6 s", "mit deinen 2,8 m".
_POINTED: Final = re.compile(rf"\b{in_any('own_asked.pointed')} $")
#: Slots that a number of the bot's may fill by mistake.
_NUMBERS: Final = frozenset(
    {"f_number", "shutter_s", "iso", "focal_mm", "distance_m", "nearest_m", "fall_height_m"}
)


def _around(asked: OwnAsked) -> str:
    """The clauses of a message without those of the question."""
    text = asked.text
    places = [one.start for one in asked.numbers]
    pieces, start = [], 0
    for border in [*(match.end() for match in CLAUSE.finditer(text)), len(text)]:
        if not any(start <= place < border for place in places):
            pieces.append(text[start:border])
        start = border
    return " ".join(piece for piece in pieces if not piece.rstrip().endswith("?"))
