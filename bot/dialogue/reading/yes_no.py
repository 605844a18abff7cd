"""A bare yes or no where the open question asks for one thing that is there or not."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.draft import Draft
from bot.dialogue.reading.inventory import NOT_HERE
from bot.dialogue.reading.phrases import exactly

_GOT: Final = (
    r"(?:,? (?:i )?(?:have|do|got|brought)(?: (?:got|it|one|mine|that))*(?: with me| here)?)?"
)
_YES: Final = exactly(rf"(?:yes|yep|yeah|yup|sure|of course|got one|i do|i have){_GOT}")
_LACK: Final = (
    r"(?:,? (?:i )?(?:don't|do not|haven't|didn't|not)(?: (?:have|got|bring|own|it|one|any))*)?"
)
_NO: Final = exactly(rf"(?:no|nope|nah|none|sadly not|i don't|not today){_LACK}")


#: Slots that one word answers, and what else says yes or no to each.
_SLOTS: Final = {
    "has_tripod": (None, None),
    "has_polariser": (None, None),
    "polariser_on": (exactly("(?:it's |its |is )?on"), exactly("(?:it's |its |is )?off")),
    "wind": (
        exactly(
            "(?:yes|yep|yeah)?,? ?(?:just |only |quite )?(?:a )?(?:little|bit|some|touch|tad"
            "|fair bit"
            "|slight\\w*|lots|loads|plenty|now and then|sometimes|on and off"
            "|quite a bit)(?: of it)?"
        ),
        exactly(
            "(?:no|nope|nah)?,? ?(?:not really|hardly|barely|not much|not any|none|nothing|zero)"
            "(?: any| at all| much| to speak of)*"
        ),
    ),
}


#: "It has a crack and I've no spare, so no", "at home, that's a no".
#: "Yeah, a small one", "nope, handheld": what the answer begins with.
_BEGINS: Final = re.compile(
    r"(?:(?P<yes>yes|yep|yeah|yup|sure)|nope|nah|no)(?:,| (?=an?\b|i\b|my\b|the\b|it\b|just\b"
    r"|not\b|hand))"
    r"(?!.*\b(?:but|home|car|yes|no|not)\b)"
)
_OWNED: Final = frozenset({"has_tripod", "has_polariser"})
_ENDS: Final = re.compile(r"\b(?:so|that's a|thats a|so that's a|so it's a) (?P<answer>no|yes)\W*$")


#: "Yep but it's in the car": owned, though not under the camera.
_BUT_ELSEWHERE: Final = re.compile(
    rf"(?:yes|yep|yeah|yup|sure)\b.*\b(?:but|only)\b.*\b{NOT_HERE}(?!\w)"
)


def read_yes_no(draft: Draft) -> None:
    """Yes or no to the one thing that the question asks for, and nothing else typed."""
    if len(draft.expecting) != 1:
        return
    (slot,) = draft.expecting
    if slot not in _SLOTS:
        return
    on, off = _SLOTS[slot]
    if slot == "has_tripod" and slot not in draft.values and _BUT_ELSEWHERE.match(draft.text):
        draft.note(slot, value=True)
        draft.note("hand_held", value=True)
    elif _YES.match(draft.text) or (on and on.match(draft.text)):
        draft.note(slot, value=True)
    elif _NO.match(draft.text) or (off and off.match(draft.text)):
        draft.note(slot, value=False)
    elif slot in _OWNED and slot not in draft.values and (begin := _BEGINS.match(draft.text)):
        draft.note(slot, value=begin["yes"] is not None)
    elif (end := _ENDS.search(draft.text)) and slot not in draft.values:
        draft.note(slot, value=end["answer"] == "yes")
