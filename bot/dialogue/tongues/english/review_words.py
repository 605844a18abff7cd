"""English words of what is wanted of a review at home: an intent, a choice, next time."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from bot.dialogue.tongues.pieces import NOTHING

WORDS: Final[Mapping[str, str]] = {
    "review_words.intent": (
        r"(?:what|all) (?:i|we) (?:really |actually )?(?:wanted|meant|hoped|tried|was trying"
        r"|was after|want)(?: to (?:show|say|get|catch|tell|have|photograph))?(?: was| is|:|,)+"
        r"|(?:i|we) (?:really |only |just )?(?:wanted|meant|hoped|tried|was trying) to (?:show|say"
        r"|catch|tell)|(?:the |my )(?:idea|intent|intention|point|subject|plan)(?: of it"
        r"| here)? (?:was|is)(?: to show)?|it(?:'s| is| was) (?:all |meant to be "
        r"|supposed to be )?about|(?:i was|we were) after"
    ),
    "review_words.keep": (
        r"which (?!filter|lens|nd|iso|card|f\b)(?:\w+ ){0,4}?(?:keep|take|choose|pick|prefer|better"
        r"|best|show|print(?:ing)?|delete|winner|wins?|go (?:with|for))"
        r"|what (?:would|should|do) (?:you|i|we) (?:keep|choose|pick|print|delete)"
        r"|(?:your|the) (?:pick|favou?rite|choice|verdict)"
        r"|keep which|(?:which|the) (?:one is |one's |is )?(?:the )?keeper|which one(?= ?$)"
        r"|keep (?:the )?\d\S* ?(?:,|and|but) ?(?:toss|bin|delete|drop|throw)"
        r"|(?:pick|choose) (?:one|some|for me)|help me (?:choose|pick|decide)"
    ),
    # "How do I pick": by which rule, before the choice itself.
    "review_words.how": (
        r"how (?:do|would|should|can|does) (?:i|we|you|one) (?:even |then |best )?(?:pick|choose"
        r"|decide|select|tell which|know which)"
    ),
    "review_words.equal": (
        r"equal(?:ly)? (?:bright\w*|exposed)|(?:the )?same brightness|brightness(?:es)? equal"
        r"|equali[sz]e\w*|(?:compare|judge)\b.*\bfair\w*|fair(?:ly)? (?:compar\w+|comparison)"
        r"|side by side"
    ),
    "review_words.dropped": r"forget|delete|deleted|drop|remove|leave out|ignore|scrap|binned?",
    "review_words.taken": (
        r"(?:shot|took|taken|made|got|have|brought (?:home|back)) (?:\w+ ){0,3}?(?:frames?"
        r"|pictures?|photos?|shots?|images?|of (?:it|them))|(?:frames?|pictures?|photos?|shots?"
        r"|images?) (?:from |of )?(?:today|this (?:morning|afternoon|evening)|yesterday|earlier)"
    ),
    "review_words.next_time": (
        r"next (?:time|trip|visit)|another time|(?:could|should) (?:i|we|it) have (?:done|been)"
        r"|what went wrong"
        r"|do (?:different(?:ly)?|better)"
    ),
    "review_words.log": (
        r"log(?: ?line| ?book)?|note (?:it|that|this) down|(?:note ?book|journal|diary)"
        r"|(?:line|note|entry) (?:for|about) (?:my (?:note|log)\w*|today|the day|this (?:visit"
        r"|trip))"
    ),
    # "Copied the card to the laptop and a backup drive".
    "review_words.copied": (
        r"(?:copied|backed up|saved)\b[^.;!?]{0,40}\b(?:card|files|everything|them|it|drive|laptop"
        r"|twice)|(?:card|files|everything|frames) (?:is|are)? ?(?:copied|backed up|saved)"
    ),
    "review_words.not_yet": (
        r"haven't|havent|hasn't|not|never|should i|do i|must i|to be|have to|need to"
    ),
    # "The focus was on 4 m".
    "review_words.focus": r"focus(?:ed|sed|ing)?",
    "review_words.was": r"was|is|set",
    "review_words.on": r"on|at|to|standing",
    # What a name of water ends with, or begins with.
    "review_words.water_behind": (
        r"Force|Foss|Falls?|Linn|Spout|Beck|Burn|Creek|Cascades?|Brook|Gill|Ghyll|Cataract"
    ),
    "review_words.water_before": NOTHING,
    # What opens a sentence is no part of a name.
    "review_words.opens": r"The|It|It's|At|In|We|I|This",
    "review_words.ahead": r"next (?:week\w*|month|saturday|sunday|trip)",
    # Frames that are taken, of which some are kept.
    "review_words.of_taken": (
        r"keep(?:er|s|ing)?|toss|delete|bin|throw (?:it |them )?(?:out|away)|(?:the|my"
        r"|of the) (?:two|three|four )?(?:frames|shots|pictures|photos|pics)|took|(?:two|three"
        r"|both|all) (?:frames|shots|pictures|photos|pics)"
    ),
}
