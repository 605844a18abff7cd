"""Settings of the bot's that are disputed: where they come from in stops, or the sum checked."""

from __future__ import annotations

import math
import re
from typing import Final, NamedTuple

from bot.dialogue import solving
from bot.dialogue.compose import Role
from bot.dialogue.folding import folded
from bot.dialogue.meaning.claims import claim_in
from bot.dialogue.meaning.said import Said
from bot.dialogue.meaning.sentences import sentences_of
from bot.dialogue.meaning.values_named import Named, named_in, plainly
from bot.dialogue.reading.foreign import glossed
from bot.dialogue.solving import watch_text
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.tongues import in_any, whole_words
from bot.dialogue.turn import Turn
from bot.dialogue.walk_state import GivenSettings
from core.series import SAME_STOPS, exact_f_number, exact_shutter_s, f_number_label, is_same_mark

_DISPUTES: Final = whole_words("disputed.disputes")
_OWN_SUM: Final = whole_words("disputed.own_sum")
_STOPS: Final = re.compile(r"\d ?(?:stops?|ev)\b")
_MAKES: Final = re.compile(
    rf"\W*{in_any('disputed.makes')}(?: (?:at|bei|a|about|rund|unos|roughly|around|then))*\W*"
)
_DIALS: Final = frozenset({"f_number", "shutter_s"})
_TWO: Final = 2


class _Pair(NamedTuple):
    """An f-number and a time that stand together."""

    f_number: float
    shutter_s: float


def answer(turn: Turn, said: Said) -> str | None:
    """Give the reason, or check the sum; nothing that is quoted is set anew.

    Args:
        turn: the answer under construction.
        said: the message.

    Returns:
        What else the message tells; None when it disputes nothing.
    """
    given = turn.walk.given
    if given is None:
        return None
    answered = _says_sum(turn, said, given) or _says_reason(turn, said, given)
    if not answered:
        return None
    turn.white = None  # "for 1.4 % clipped" is quoted, too
    turn.reason("why.practice")
    return _rest(said)


def _says_reason(turn: Turn, said: Said, given: GivenSettings) -> bool:
    """Say what the last plan began from, and how far it is from what is held against it."""
    pairs = [pair for pair, _ in _pairs(plainly(said.english))]
    typed = folded(said.typed)
    of_mine = bool(pairs) and _is(pairs[0], given) and _DISPUTES.search(typed)
    if not of_mine and not (_OWN_SUM.search(typed) and _STOPS.search(said.english.casefold())):
        return False
    before, others = turn.walk.planned_from, [pair for pair in pairs if not _is(pair, given)]
    if before is not None:
        turn.say(
            Role.SETTINGS,
            "disputed.from",
            before=solving.settings_on(before, turn.camera),
            after=solving.settings_on(given, turn.camera),
            **_difference(solving.level_of(given) - solving.level_of(before)),
        )
    mine = _Pair(given.f_number, given.shutter_s)
    for other in others[:1]:
        turn.say(
            Role.SETTINGS,
            "disputed.against",
            other=_named(turn, other),
            **_difference(_brightness(mine) - _brightness(other)),
        )
    return before is not None or bool(others)


def _says_sum(turn: Turn, said: Said, given: GivenSettings) -> bool:
    """Check "1/2 s at f/11 makes 1/3 s at f/9", and hold the bot's own against it."""
    text = plainly(said.english)
    pairs = _pairs(text)
    if len(pairs) != _TWO or claim_in(said) is not None:
        return False
    (one, (_, end)), (other, (start, _)) = pairs
    if not _MAKES.fullmatch(text[end:start]) or not is_same_mark(other.f_number, given.f_number):
        return False
    right = _Pair(other.f_number, one.shutter_s * (other.f_number / one.f_number) ** 2)
    same = abs(math.log2(other.shutter_s / right.shutter_s)) <= SAME_STOPS
    turn.say(
        Role.SETTINGS,
        "disputed.sum_yes" if same else "disputed.sum_no",
        one=_named(turn, one),
        other=_named(turn, right),
    )
    mine = _Pair(given.f_number, given.shutter_s)
    turn.say(
        Role.SETTINGS,
        "disputed.mine",
        mine=_named(turn, mine),
        **_difference(_brightness(mine) - _brightness(right)),
    )
    return True


def _pairs(text: str) -> list[tuple[_Pair, tuple[int, int]]]:
    """The f-numbers and times that stand together, in their order, with their places."""
    found: list[tuple[_Pair, tuple[int, int]]] = []
    waiting: Named | None = None
    for one in named_in(text):
        if one.slot not in _DIALS:
            continue
        if waiting is None or waiting.slot == one.slot:
            waiting = one
            continue
        values = {waiting.slot: waiting.value, one.slot: one.value}
        exact = (exact_f_number(values["f_number"]), exact_shutter_s(values["shutter_s"]))
        found.append((_Pair(*exact), (waiting.start, one.end)))
        waiting = None
    return found


def _brightness(pair: _Pair) -> float:
    """How bright a pair is against others [stops], at one ISO and behind one glass."""
    return math.log2(pair.shutter_s / pair.f_number**2)


def _is(pair: _Pair, given: GivenSettings) -> bool:
    same_f = is_same_mark(pair.f_number, given.f_number)
    return same_f and is_same_mark(pair.shutter_s, given.shutter_s)


def _named(turn: Turn, pair: _Pair) -> str:
    dial = turn.camera.dial
    return f"{f_number_label(pair.f_number, dial)} {watch_text(pair.shutter_s, turn.camera)}"


def _difference(stops: float) -> dict[str, str]:
    side = TEXTS["brighter" if stops > 0 else "darker"]
    return {"stops": measures.stops(abs(stops)), "side": side}


def _rest(said: Said) -> str:
    """The sentences that quote no number of a setting, of stops or a share, and ask nothing."""
    rest = [
        one
        for one in sentences_of(said.typed)
        if not one.rstrip().endswith("?") and not _quotes(glossed(one, said.language))
    ]
    return glossed(" ".join(rest), said.language)


def _quotes(sentence: str) -> bool:
    named = any(one.slot in _DIALS | {"share"} for one in named_in(plainly(sentence)))
    return named or _STOPS.search(sentence.casefold()) is not None
