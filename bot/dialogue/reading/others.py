"""What a message tells of somebody else's kit and settings, where it tells its own beside."""

from __future__ import annotations

import re
from typing import Final

_KIN: Final = (
    r"wife|husband|partner|friend|mate|buddy|brother|sister|son|daughter|dad|father|mum|mom|mother"
    r"|kid|uncle|aunt|boyfriend|girlfriend|cousin|colleague|neighbou?r|teacher|guide|instructor"
)
_OTHER: Final = (
    rf"(?:(?:my|our|the|his|her|a) (?:{_KIN})|(?:the |another )"
    r"(?:guy|man|woman|lady|bloke|other one)"
    r"(?: next to me| beside me)?|he|she|they|someone else)"
)
#: Having, using and setting; where somebody else stands is no matter of kit.
_HAS: Final = (
    r"(?:'s| is| are|'re)?(?: (?:has|have|had|got|shoots?|shot|shooting|uses?|used|using|owns?"
    r"|brought|carries|took|set|on|at (?=f|1/)))+"
)
_ME: Final = r"(?:i|i'm|i've|i'd|im|ive|i'll|mine|me|my (?:own|camera|kit|settings))\b"
_TO_ME: Final = r"(?:[,;.]+ ?(?:but |and |while |whereas )?| (?:but|and|while|whereas) )"
#: "My wife has the 24-70, i've got the 16-35".
_FIRST: Final = re.compile(rf"\b{_OTHER}{_HAS}\b[^,;.]*?{_TO_ME}(?={_ME})")
#: "I'm at f/11, my friend is on f/8".
_LAST: Final = re.compile(
    rf"{_TO_ME}{_OTHER}(?:{_HAS}|(?= f ?/?\d))\b(?:[^,;.]|\.(?=\d))*(?=$|[,;]|\.(?!\d))"
)
_MINE_FIRST: Final = re.compile(rf"^(?:\W|\b(?:so|ok|okay|well|hi|hey|hello)\b)*{_ME}")


def without_others(text: str) -> str:
    """The message without clauses on other people's kit that stand beside the person's own.

    A message that speaks of somebody else alone stays: that kit may be shared.

    Args:
        text: a message in lower case.
    """
    text = _FIRST.sub("", text)
    return _LAST.sub("", text) if _MINE_FIRST.match(text) else text
