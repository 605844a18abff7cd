"""A bare yes or no where the open question asks for one thing that is there or not."""

from __future__ import annotations

from typing import Final

from bot.dialogue.reading.draft import Draft
from bot.dialogue.reading.phrases import exactly

_GOT: Final = (
    r"(?:,? (?:i )?(?:have|do|got|brought)(?: (?:got|it|one|mine|that))*(?: with me| here)?)?"
)
_YES: Final = exactly(rf"(?:yes|yep|yeah|yup|sure|of course|got one|i do|i have){_GOT}")
_LACK: Final = (
    r"(?:,? (?:i )?(?:don't|do not|haven't|didn't|not)(?: (?:have|got|bring|own|it|one|any))*)?"
)
_NO: Final = exactly(rf"(?:no|nope|nah|none|sadly not|i don't|not today){_LACK}")


def answers(draft: Draft, slot: str) -> bool | None:
    """Yes or no to the one thing that the question asks for; None where it is no answer.

    Args:
        draft: the message.
        slot: the thing's slot.
    """
    if draft.expecting != {slot}:
        return None
    if _YES.match(draft.text):
        return True
    return False if _NO.match(draft.text) else None
