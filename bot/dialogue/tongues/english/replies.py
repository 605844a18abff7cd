"""English words of replies to a question of danger, where any language may stand beside another."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # "This is no joke", "nicht nur ein Test".
    "replies.no": r"no|not|isnt",
    "replies.only_a": r"just|only|a|an",
    "replies.joke": r"joke|joking|kidding|test|testing|false alarm",
    # What calms without telling anything.
    "replies.comfort": r"no worries|no problem|never ?mind|do(?:n'?t| not) worry|not to worry",
    # Who speaks of all of them, wherever they are.
    "replies.everybody": r"all|both|every(?:one|body)|together",
    # What stands before an answer without telling anything.
    "replies.lead": r"ok|okay|alright|fine|then|so|well|and|sorry|oh",
    # What a "no" may deny in the same breath: "no, we're not", "no, it was only the light".
    "replies.with_no": r"not|no|nope|only|nobody|think|just",
    # What answers a question alone, or before a comma.
    "replies.bare": r"no",
    # Where nobody is.
    "replies.is": r"is|are",
    "replies.out_there": r"(?:down|out|over|in) there",
}
