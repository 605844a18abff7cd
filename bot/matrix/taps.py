"""Taps: a reaction or a poll's answer, read as the option that it names; pure."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.events import Event, Origin, TextReceived
from bot.matrix.plain import Source, part_of, text_of

_REACTION: Final = "m.reaction"
#: Polls are a proposal still, under its own name and under the one that it asks for.
_POLL_ANSWERS: Final = frozenset({"org.matrix.msc3381.poll.response", "m.poll.response"})
#: The types of events that tap on another one.
TAPS: Final = frozenset({_REACTION, *_POLL_ANSWERS})
#: A digit, alone or as a keycap (Unicode, enclosing keycap and variation selector 16).
_DIGIT: Final = re.compile("([1-9])\N{VARIATION SELECTOR-16}?\N{COMBINING ENCLOSING KEYCAP}?")
#: Thumbs may carry a skin tone (Unicode, Fitzpatrick modifiers) and a variation selector.
_THUMB: Final = re.compile(
    "([\U0001f44d\U0001f44e])[\U0001f3fb-\U0001f3ff]?\N{VARIATION SELECTOR-16}?"
)
_MEANT: Final = {"\N{THUMBS UP SIGN}": "yes", "\N{THUMBS DOWN SIGN}": "no"}


def tapped_event(source: Source) -> str | None:
    """The event that is tapped on; None for everything that is no tap."""
    relation = part_of(part_of(source, "content"), "m.relates_to")
    kind = "m.annotation" if source.get("type") == _REACTION else "m.reference"
    if source.get("type") not in TAPS or relation.get("rel_type") != kind:
        return None
    return text_of(relation.get("event_id")) or None


def read_tap(source: Source, origin: Origin, tapped_on: str) -> Event | None:
    """The tap as an answer to the tapped message; None when it names no option.

    Args:
        source: the decrypted event as JSON.
        origin: where it comes from, checked already.
        tapped_on: the bot's message, as `tapped_event` read it.
    """
    content = part_of(source, "content")
    option = _reaction(content) if source.get("type") == _REACTION else _poll_answer(content)
    if option is None:
        return None
    return TextReceived(origin=origin, text=option, replies_to=tapped_on, tapped=True)


def _reaction(content: Source) -> str | None:
    key = text_of(part_of(content, "m.relates_to").get("key")).strip()
    if digit := _DIGIT.fullmatch(key):
        return digit[1]
    thumb = _THUMB.fullmatch(key)
    return None if thumb is None else _MEANT[thumb[1]]


def _poll_answer(content: Source) -> str | None:
    """The first option that was taken, "" when the answer was taken back."""
    under_proposal = part_of(content, "org.matrix.msc3381.poll.response").get("answers")
    chosen = content.get("m.selections", under_proposal)
    if not isinstance(chosen, list):
        return None
    if not chosen:
        return ""
    digit = _DIGIT.fullmatch(text_of(chosen[0]))
    return None if digit is None else digit[1]
