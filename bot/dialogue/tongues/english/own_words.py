"""English words: how the meaning of one of Linn's own words is asked, and those words."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "own_words.before": (
        r"what (?:does|do|is|are|was|did|means?|s) (?:(?:you )?meant? (?:(?:by|with) )?)?"
        r"|whats (?:meant by )?|wots "
        r"|explain (?:to me )?(?:what )?|define |meaning of "
        r"|(?:no idea|not sure|(?:dont|do not|didnt|did not)"
        r" (?:quite |really )?(?:know|get|understand|follow)|(?:cant|cannot) (?:follow|understand)"
        r"|dunno|(?:you )?lost me (?:at|with)|confused by"
        r"|idk|never heard) (?:of )?(?:what )?(?:is |does |do )?"
    ),
    "own_words.filler": r"(?:the|a|an|this|that|these|those|your|with|by|in|my|is|are|means?)",
    "own_words.behind": (
        r"(?:what )?(?:does (?:that|it|this) )?means?|stands? for|(?:is |s )?what"
        r"|(?:what|wot) ?(?:is|s|does) (?:that|it|this)(?: mean)?"
        r"|(?:what|wot)s (?:that|it|this)(?: mean)?|meaning what"
    ),
    "own_words.tail": (
        r"means?|is|are|was|please|pls|again|exactly|even|here|for|then|supposed to mean"
        r"|about|actually|bit|part|thing|stuff"
    ),
    "own_words.goes_on": r"and|but|so|i|im|ive|my|because|cos",
    "own_words.share": (
        r"(?:water )?cross(?:es|ing)? (?:\d+(?:[.,]\d+)? ?(?:percent )?)?(?:of )?(?:the )?frame"
        r"|\d+(?:[.,]\d+)? (?:percent )?(?:, )?(?:textured|silky|crisp|misty|of the frame)"
        r"|\d+(?:[.,]\d+)? percent|(?:the )?percent(?:age)?s?|per cent|share of the frame"
        r"|water crosses"
    ),
    "own_words.look": r"textured|silky|crisp|misty",
    "own_words.meter": r"(?:about )?right on the meter|right on (?:my|the) meter",
    "own_words.lip": r"lip",
    "own_words.letters": (
        r"(?:area )?[ab]\b|letters?(?: things?| boxes)?(?: (?:in|on) (?:the|my) (?:picture|frame"
        r"|photo|image))?|area [a-f]|marked (?:areas?|picture)|outlined? areas?"
    ),
    "own_words.sparkle": r"sparkles?(?: fine)?",
    "own_words.tilt": (
        r"tilted(?: \d+(?:[.,]\d+)?)?(?: (?:degrees? )?(?:up|down))?|camera level|tilt"
    ),
    "own_words.spare": (
        r"(?:the whole fall )?(?:with )?\d+(?:[.,]\d+)? (?:percent )?to spare|to spare"
    ),
    "own_words.focal": (
        r"(?:\d+ ?mm )?as full frame|full ?frame (?:equivalents?|terms)|equivalents?|\d+ ?mm"
    ),
    "own_words.nearest": r"nearest(?: (?:thing|rock|sharp))?",
    "own_words.turn_back": r"turn ?back(?: time| by)?|turn around time",
    "own_words.last_frames": r"light of (?:your|my) last frames",
    "own_words.portrait": r"portrait|landscape format|upright",
    "own_words.leaf_frame": r"leaf frame",
    "own_words.ladder": r"ladder",
    "own_words.overcast": r"(?:heavy )?overcast|bright cloud",
}
