"""Who is in the danger that a message tells of: who writes, another one, several others."""

from __future__ import annotations

from typing import Final, NamedTuple

from bot.dialogue.danger.kinds import DangerKind
from bot.dialogue.danger.meaning import all_cues
from bot.dialogue.folding import folded
from bot.dialogue.tongues import whole_words


class Whose(NamedTuple):
    """Whose danger it is."""

    own: bool
    #: 0, 1, or 2 for several.
    others: int

    def with_also(self, more: Whose) -> Whose:
        """Both of two."""
        return Whose(self.own or more.own, max(self.others, more.others))


#: Who writes, as the one that it happens to. The message is folded: "I'm" is "im".
_OWN: Final = whole_words("whose.own")
#: The whole group, who writes among them.
_WE: Final = whole_words("whose.we")
_SEVERAL: Final = whole_words("whose.several")
#: Somebody else, where the cue words of the languages leave one out.
_OTHER: Final = whole_words("whose.other")


def names_somebody(text: str) -> bool:
    """Whether a message names another person, or who writes as one in trouble."""
    said = folded(text)
    return any(words.search(said) for words in (_OWN, _WE)) or names_another(text)


def names_another(text: str) -> bool:
    """Whether a message names another person than who writes."""
    return _OTHER.search(folded(text)) is not None or "other" in all_cues(text)


#: Who writes, in any part of a sentence.
_FIRST: Final = whole_words("whose.first")


def names_myself(text: str) -> bool:
    """Whether who writes is named, in trouble or not."""
    return _FIRST.search(folded(text)) is not None


#: What comes over everybody who is there.
_OF_THE_PLACE: Final = frozenset({DangerKind.FLOOD, DangerKind.THUNDER, DangerKind.DARK})


def whose(text: str, kind: DangerKind = DangerKind.UNCLEAR) -> Whose:
    """Whose danger a message tells of.

    Args:
        text: a message that tells of danger, as typed.
        kind: what danger that is.

    Returns:
        The whole group ("we are lost") is who writes and others; so is a message that names
        nobody. Nobody misses themselves.
    """
    if kind is DangerKind.MISSING:
        return Whose(own=False, others=2 if _SEVERAL.search(folded(text)) else 1)
    said = folded(text)
    own, together = _OWN.search(said) is not None, _WE.search(said) is not None
    if not names_another(text):
        nobody = kind not in _OF_THE_PLACE and _FIRST.search(said) is None
        return Whose(own=True, others=2 if together else int(nobody))
    return Whose(own=own, others=2 if _SEVERAL.search(said) else 1)
