"""Questions in everyday words: where a dial is, whether it is sharp, who may be in the picture."""

from __future__ import annotations

from typing import Final

_I: Final = r"(?:i|we|you|one)"
_EVEN: Final = r"(?: (?:even|actually|usually|normally))?"
_SETTING: Final = (
    r"(?:iso|aperture|f-? ?(?:stop|number)s?|shutter(?: ?speed)?|exposure time|self[ -]?timer|timer"
    r"|raw|manual(?: mode)?|m mode|stabili[sz]\w+|histogram|blink\w*|highlight \w+|live view"
    r"|exposure comp\w*|brightness|settings?)"
)
_PERSON: Final = (
    r"(?:(?:girl|boy)?friend|wife|husband|partner|kids?|child(?:ren)?|son|daughter|mum|mom|dad|dog"
    r"|someone|somebody|person|people|sister|brother|mate|buddy|me|him|her|she|he|they)"
)
_PICTURE: Final = r"(?:picture|photo|pic|frame|shot|image)"

#: Patterns of a question's words and its topic, the more special first.
PLAIN: Final[tuple[tuple[str, str], ...]] = (
    (
        (
            rf"\bwhere(?: (?:on earth|the (?:heck|hell|devil)))?(?:'s| is| are"
            rf"| do {_I}{_EVEN} (?:find|change|set|get)| can {_I}{_EVEN} (?:find|change|set"
            rf"|see)| would {_I}{_EVEN} find| to find| do they (?:hide|keep|put))"
            rf"(?: (?:the|my|this|that|a))* {_SETTING}\b"
            rf"|\bhow (?:do|can|would) {_I} (?:even |actually )?(?:find|get to|get into|turn on"
            rf"|switch on|switch|enable|change|adjust|turn (?:off|down|up))"
            rf"(?: (?:the|my|this|that|to|into|in|on))* {_SETTING}\b(?! to \d)"
            rf"|\b(?:which|what) (?:button|menu|dial|wheel|knob)\b"
        ),
        "find_setting",
    ),
    (
        (
            rf"\b(?:how|where) (?:do|can|would|should|to)(?: {_I})? (?:know|see|tell|check|be sure"
            r"|make sure)\b[^?]*\b(?:sharp|in focus|blurry|shaky|shook|moved|focus(?:ed)?)\b"
            r"|\bis (?:it|this|that|mine) sharp\b|\bsharp enough\b"
        ),
        "sharp_check",
    ),
    (
        (
            rf"\b(?:can|could|should|shall|may|ok(?:ay)?|fine|nice|good idea)\b[^?]*\b{_PERSON}\b"
            rf"[^?]*\b(?:in|into) (?:the|my|our|this) {_PICTURE}\b|\bfor scale\b"
            rf"|\b(?:include|add|have|put|want|get) (?:a |my |some |the )?{_PERSON}\b[^?]*"
            rf"\b(?:in|into) (?:the|my|our|this) {_PICTURE}\b"
        ),
        "people_in_frame",
    ),
    (
        (
            r"(?:polari\w+|cpl|filters?|nd)\b[^?]*\b(?:before|after|first)\b[^?]*"
            r"\b(?:meter\w*|measur\w*|exposure|reading|focus\w*)"
            r"|\b(?:meter\w*|measur\w*|exposure|reading|focus\w*)\b[^?]*\b(?:before|after|first)\b"
            r"[^?]*\b(?:polari\w+|cpl|filters?|nd)\b"
            r"|\b(?:meter|focus|measure)\b[^?]*\b(?:with|without|through)\b[^?]*"
            r"\b(?:polari\w+|cpl|filters?|nd)\b[^?]*\b(?:on|off|or)\b"
        ),
        "meter_after",
    ),
    (
        (
            r"\b(?:pull|recover|rescue|save|restor)\w*\b[^?]*\b(?:highlights?|whites?|blown)\b"
            r"|\b(?:highlights?|whites?)\b[^?]*\b(?:pulled|recovered|rescued|saved|restored)\b"
            r"|\b(?:bring|get)\b[^?]*\b(?:highlights?|whites?|blown)\b[^?]*\b(?:back|again)\b"
            r"|\b(?:bring|get) (?:back|down) (?:the |my )?(?:highlights?|whites?|blown)\b"
            r"|\b(?:save|rescue|recover|fix) (?:it|this|that|them) (?:in|from|with|out of) "
            r"(?:the |a )?raws?\b"
        ),
        "recover_white",
    ),
    (
        (
            r"\bwhat (?:should|do|must|shall) (?:i|we) (?:tell|say to|explain to) (?:them|everyone"
            r"|everybody|the (?:group|others|people|students|participants))\b[^.;]*\b(?:before"
            r"|at the (?:car|start|water))\b|\b(?:safety )?briefing\b"
        ),
        "briefing",
    ),
    (
        r"\bwhy\b[^?]*\bf ?/? ?(?!16|18|22|32)\d+(?:\.\d)?\b[^?]*\bnot\b",
        "f_number",
    ),
    (
        (
            r"\bis f ?/? ?(?!16|18|22|32)\d+(?:\.\d)?\b[^?]*\b(?:ok|okay|fine|too|right|good"
            r"|alright)"
            r"\b"
        ),
        "f_number",
    ),
    (
        (
            r"\bhistogram\b[^?]*\b(?:trust\w*|true|believe|reliable|lie|lies|lying|right with"
            r"|correct)"
            r"\b|\b(?:trust|believe|rely on)\b[^?]*\bhistogram\b"
        ),
        "histogram_trust",
    ),
    (
        r"\b(?:rinse|wash|clean|dry|wipe)\b[^?]*\b(?:tripod|kit|gear|bag|boots|everything|legs)\b",
        "dry_gear",
    ),
    (
        (
            r"\b(?:save|rescue|fix|retouch|remove|clone|heal|repair)\b[^?]*\b(?:drops?|droplets?"
            r"|water ?spots?)\b"
        ),
        "save_drops",
    ),
    (
        (
            r"\bhow (?:do|can|would|to)(?: (?:i|we|you))? (?:do|make|get|take|shoot) (?:a "
            r"|the )?long"
            r"[ -]?exposures?\b"
        ),
        "silky_time",
    ),
    (
        (
            r"\b(?:reject\w*|bad ones|failures|failed (?:ones|frames|shots)|the rest of them"
            r"|duplicates|bin them|delete (?:them|the rest|the others|the bad))\b"
        ),
        "rejects",
    ),
    (
        (
            r"\bwhat (?:do|should|must|shall|would) (?:i|we) (?:set|dial(?: in)?|put in)"
            r"(?: (?:now|then|here|it to|on it|on the camera|on my camera))*\W*$"
        ),
        "rough_card",
    ),
)
