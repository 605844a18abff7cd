"""Who says not to know, or that all of them are well: no answer to what the frame shows."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.folding import folded
from bot.dialogue.tongues import in_any, whole_words

_SAID: Final = whole_words("not_known.said")
#: "No, no. No filter is on": a protest, twice said.
_TWICE: Final = re.compile(r"(?:no|nope|nein|doch)(?:[ ,.]+(?:no|nope|nein|not|doch))+")
_NO: Final = r"(?:no|nope|nah|nein|noe|ne|yes|yeah|ja|si|ok|okay|thanks|danke|gracias)"
_SMALL: Final = (
    r"(?:lol|haha\w*|thanks|thx|danke|gracias|here|hier|aqui|now|jetzt|really|wirklich|you know)"
)
_WELL: Final = re.compile(
    rf"(?:{_NO}[ ,]+)*{in_any('not_known.people_well')}(?:[ ,]+{_SMALL})*[ .]*"
)


#: "No, quite the contrary": of what was said, not of the frame.
_CONTRADICTS: Final = re.compile(
    rf"(?:{_NO}[ ,.]+)*(?:doch |but |pero |aber |wait |moment )?{in_any('contradicts.said')}[ .,]*"
)


def says_not_known(text: str) -> bool:
    """Whether somebody says not to know, in any language.

    Args:
        text: one clause or more, as typed or glossed.
    """
    return _SAID.search(folded(text)) is not None


def is_no_answer(text: str) -> bool:
    """Whether a sentence says that people are well, contradicts, or is no more than "no, no".

    Args:
        text: one sentence, as typed.
    """
    said = folded(text).strip(" .")
    protests = _TWICE.fullmatch(said) or _CONTRADICTS.fullmatch(said)
    return says_all_well(text) or protests is not None


def says_all_well(text: str) -> bool:
    """Whether all of a message is that the people are well: "no, we're all fine"."""
    return _WELL.fullmatch(folded(text)) is not None
