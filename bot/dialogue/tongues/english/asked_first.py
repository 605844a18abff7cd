"""English words: somebody out of hearing, loose rock, and when neither is an alarm."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_SOMEBODY: Final = (
    r"(?:him|her|them|if (?:he|she|they)|whether (?:he|she|they)|(?:my|our|the) (?:\w+ )?"
    r"(?:friends?|wife|husband|son|daughter|brother|sister|partner|buddy|mate|kids?|child|children"
    r"|group|others|mum|mom|dad|mother|father|girlfriend|boyfriend))"
)

WORDS: Final[Mapping[str, str]] = {
    "asked_first.unheard": (
        rf"(?:cant|cannot|can not|can hardly|can barely|dont|no longer) hear {_SOMEBODY}"
        rf"|no (?:contact|signal|word) (?:with|to|from|of) {_SOMEBODY}"
        r"|(?:friend|wife|husband|son|daughter|brother|sister|partner|buddy|mate)\b.* upstream\b.*"
        r"\bno contact"
    ),
    # Somebody who is held where they are, or hurt, in a few words.
    "asked_first.stuck": (
        r"(?:i am|im|we are|were) (?:stuck|hurt|injured|trapped) (?:at|in|on|by|near|under|below)"
        r" (?:the |a |this )?(?:\w+ )?(?:falls?|waterfall|gorge|canyon|creek|ledge|cliff|river)"
    ),
    "asked_first.loose": (
        r"(?:loose|falling|fresh fallen) (?:rocks?|boulders?)|(?:rocks?|stones?|boulders?)"
        r" (?:fell|came|come|fall|tumbled)(?: down| off)"
    ),
    # There loose rock is something to stand a tripod on, to frame, or what a sign tells of.
    "asked_first.of_picture": r"tripod|foreground|frame|picture|composition|sign|focus",
    # Loose rock that is behind who tells of it.
    "asked_first.passed": r"on (?:the|our|my) way (?:in|up|down|here|over)",
    # A fall that is louder than a voice, and nothing else.
    "asked_first.noise": (
        rf"(?:ok )?(?:i|we) (?:cant|cannot|can not|can hardly|can barely) hear {_SOMEBODY}"
        r" (?:over|through|because of|for) the (?:\w+ )?(?:water|noise|roar|falls?|waterfall|river)"
        r"(?: any ?more)?"
    ),
}
