"""Topics that a few plain words name, whatever else is told and however short the message is."""

from __future__ import annotations

import re
from typing import Final

_GRAPH: Final = r"(?:graph|histogram|channel|curve)s?"
_NAMED: Final = (
    (
        "one_channel",
        (
            rf"\b(?:(?:just |only )?one|first|second|third|red|green|blue|single)"
            rf"(?: of (?:the |my )?(?:three|3|colou?r)?)? ?(?:little |small |colou?r )?{_GRAPH}\b"
            rf"|\bone of (?:the|my) (?:\w+ )?{_GRAPH}\b"
        ),
    ),
    (
        "stabiliser_seen",
        (
            r"\b(?:stabili[sz]\w+|vibration reduction|steady ?shot)\b[^.;]*\b(?:show|see|visible"
            r"|matter|ruin\w*|harm|notice|spoil\w*|tell)\b"
        ),
    ),
    (
        "wobbly",
        (
            r"\b(?:bridge|boardwalk|platform|deck|planks?|walkway|jetty)\b[^.;]*\b(?:wobbl\w*|shak\w*"
            r"|vibrat\w*|bounc\w*|sway\w*|trembl\w*|moves?|moving)\b"
        ),
    ),
    (
        "term.burst",
        (
            r"\bburst\b[^.;]*\bwhat(?:'s| is| does)? (?:that|this|it)\b"
            r"|\bwhat(?:'s| is| does)(?: a| the)? burst\b"
        ),
    ),
    (
        "sinking",
        r"\btripod(?:'s)?(?: \w+){0,3} (?:sink\w*|sank|creep\w*|crept|slid\w*|slip\w*)\b",
    ),
    (
        "print_big",
        (
            r"\bprint(?:s|ing|ed)?\b[^.;]*\b(?:big|bigger|large|larger|a[0-4]|poster|wall|huge"
            r"|how (?:big"
            r"|large))\b|\b(?:big|large)\b[^.;]{0,12}\bprints?\b"
        ),
    ),
    ("clone_sky", r"\b(?:clone|retouch|remove|paint|replace|fix)\w*\b[^.;]*\bsky\b"),
    (
        "bracket_or_not",
        (
            r"\bbracket(?:ing|ed)? or not\b|\b(?:should|shall|must|do|need"
            r"|worth)\b[^.;]*\bbracket\w*"
            r"|\bbracket\w* (?:needed|necessary|worth it)\b"
        ),
    ),
    ("pack", r"\bpack(?:ing)? list\b"),
    (
        "keep_few",
        r"\bhow many (?:\w+ ){0,3}?(?:(?:do|should|shall|must|can) )?(?:i|we) (?:\w+ )?keep\b",
    ),
    (
        "head_count",
        (
            r"\bhow often (?:do|should|shall|must) (?:i|we) (?:\w+ ){0,4}?(?:meet|gather|count"
            r"|check|call|assemble|see (?:them|each other))\b"
        ),
    ),
    (
        "tell_home",
        r"\bnote (?:for )?(?:home\b|(?:for )?my \w+|for the one)|\bleav\w+ (?:a|the) note\b",
    ),
    (
        "rough_card",
        (
            r"^\W*(?:a |my |the |rough )*card(?: please| for tomorrow)+\W*$|"
            r"\brough settings?\b|\bmine\b.*\bwhat (?:do|should|must|shall) i (?:set|dial)\b"
            r"|\b(?:settings?|numbers?|values?) for (?:my|the|a) card\b"
            r"|\b(?:what|which)(?: are| were|'s| is)?(?: (?:the|my))? (?:final|last) settings?\b"
            r"|^\W*(?:and |so |ok )*(?:what|which) (?:settings?|numbers?|values?)"
            r"(?: (?:(?:do|should|shall|can|would|must|to) )?(?:(?:i|we) )?"
            r"(?:use|set|take|need|dial(?: in)?|try|start with)?)?(?: now| then| here)?\W*$"
            r"|^\W*(?:just |only |give me |i want |need |some |the )*(?:settings?|numbers?|values?)"
            r"(?:\W+(?:please|quick\w*|now|fast|for me|only))*\W*$"
        ),
    ),
    (
        "tell_home",
        (
            r"\b(?:car|van|camper|truck)(?:'s| is| will be| was)?"
            r" (?:(?:stands|standing|parked|left) )?(?:at|in|on|by) (?:the |a )?(?:\w+ ){0,3}"
            r"(?:car ?park|parking|trailhead|lay-?by)\b"
        ),
    ),
    (
        "battery_cold",
        (
            r"\bbatter(?:y|ies)\b.*\b(?:\d+ ?(?:%|percent)|empty|dead|dies|dying|died|drain\w*"
            r"|drops?|dropped|low|cold|frost|freezing|broken)\b"
        ),
    ),
    (
        "support",
        (
            r"\b(?:put|rest|lean|prop|set|lay|hold|press)\w* (?:it|(?:the|my) (?:phone|camera))"
            r" (?:up )?(?:on|against|onto) (?!the tripod|my tripod|a tripod|auto|manual)"
        ),
    ),
    (
        "planning",
        (
            r"\b(?:want|like|love|going|need|help me|let's|trying)(?: \w+){0,3} (?:plan|prepare)\b"
            r"|\bplan(?:ning)? (?:the|a|my|our|this) (?:\w+ )?(?:trip|visit|walk|day|tour|hike)\b"
        ),
    ),
    (
        "after_rain",
        (
            r"\b(?:rain\w*|poured)\b.*\b(?:(?:an)?other|different|next|later|otro)"
            r" (?:day|time|week|dia)"
            r"|it rained a lot|\b(?:rained|poured) (?:\w+ ){0,3}?"
            r"(?:all night|overnight|last night|heavily|hard|a lot|yesterday)\b"
        ),
    ),
    (
        "fogged",
        (
            r"\b(?:breathed|breathing|breath) (?:\w+ )?(?:on|onto|at|over)\b"
            r"|\b(?:fogged|steamed|misted) (?:up|over)\b"
        ),
    ),
    (
        "spray",
        (
            r"\b(?:lens|glass|filter)\b[^.;]*\b(?:gets?|got|getting|is|was|comes?) (?:\w+ )?wet\b"
            r"|\bspray(?: is| gets| goes| comes| blows)*(?: all)? (?:everywhere|over"
            r"|on everything)\b"
        ),
    ),
    ("silky_time", r"^\W*(?:so |and )?(?:what|which) look\b.*\b(?:you|go|best|try|start)\b"),
    ("leaves", r"^\W*(?:and |but )?wind\W*$"),
    (
        "mode",
        (
            r"\b(?:wheel|dial|knob)\b[^.;]*\b(?:p ?a ?s ?m|a ?s ?m|p ?tv ?av ?m"
            r"|a,? s,? (?:and )?m)\b"
            r"|\b(?:a|p|s|m|tv|av|auto)(?: or (?:a|p|s|m|tv|av|auto)){1,3} (?:mode"
            r"|on the (?:dial|wheel))\b"
        ),
    ),
    (
        "polariser_turn",
        (
            r"\b(?:never|not|didn't|forgot to|without)\b(?: \w+)? (?:turn|rotat)\w*"
            r"[^.;]*\b(?:polari\w+|cpl)\b"
            r"|\b(?:polari\w+|cpl)\b[^.;]*\b(?:never|not|forgot to) (?:turn|rotat)\w*"
        ),
    ),
    (
        "eye_height",
        (
            r"\beye[ -](?:height|level) (?:for (?:all|every)|all the|every|always)"
            r"|\b(?:always|all the time|every time|only ever)\b[^.;]*\beye[ -](?:height|level)"
        ),
    ),
    (
        "talk.weather",
        (
            r"\b(?:look up|check|find out|tell me|do you know|get me)\b[^.;]*\b(?:water level|gauge"
            r"|forecast|weather|closures?|how much water)\b"
        ),
    ),
    ("time_forgotten", r"\b(?:forgot|forgotten|lost track of) (?:about )?(?:the )?time\b"),
    (
        "carrying",
        (
            r"\bcarr\w+ (?:it|the (?:camera|tripod))[^.;]*\b(?:over|on) (?:my|the) shoulder"
            r"|\bover (?:my|the) shoulder\b[^.;]*\bcamera on\b"
            r"|\bcamera\b[^.;]*\btripod\b[^.;]*\b(?:over|on) (?:my|the|one) shoulder\b"
        ),
    ),
    (
        "tilted",
        (
            r"\b(?:whole|entire) (?:picture|frame|thing|photo) (?:leans?|tilts?|slopes?|tips?)\b"
            r"|\b(?:leans?|tilts?|slopes?|tips?) to (?:one side|the (?:left|right))\b"
            r"|\b(?:picture|photo|frame|image|shot)s?(?: \w+){0,3} (?:crooked|slanted|wonky"
            r"|askew)\b"
        ),
    ),
    (
        "sky",
        (
            r"\bsky\b[^.;]{0,24}\bwhite (?:\w+ )?(?:blob|hole|patch|mass|nothing|sheet)\b"
            r"|\bwhite (?:blob|hole|patch|mass) of sky\b"
            r"|\b(?:hole|gap|patch|blob|strip) (?:of|with) (?:(?:a|the|white|bright|blank) )*sky\b"
        ),
    ),
    (
        "histogram",
        r"\bgraph\b[^.;]*\b(?:right|edge|wall)\b[^.;]*\b(?:lost|gone|bad|too (?:bright|far))\b",
    ),
    (
        "exercise",
        (
            r"\b(?:exercise|assignment|homework)s?\b"
            r"|\b(?:a |some )?tasks? for (?:them|everybody|everyone|the|my)\b"
        ),
    ),
    (
        "spray_again",
        (
            r"\bwiped\b.*\b(?:back|again)\b|\b(?:drops?|droplets|spots?)\b.*\b(?:are|keep|come|came"
            r"|comes) (?:\w+ )?(?:back|coming|returning|again)\b"
        ),
    ),
    (
        "cannot_move",
        (
            r"^(?!.*\b(?:stuck|trapped|help|ledge|cliff|edge|legs?|foot|feet|arms?|ris\w+|flood\w*"
            r"|lost|slipp\w*|hurt|cold|he|she|they|him|her|them)\b).*?"
            r"(?:\b(?:can't|cant|cannot|can not|couldn't) (?:really )?(?:move|go|step|stand)"
            r"(?: to)?(?: (?:any|an|some))? ?(?:(?:other|another) (?:place|spot|side)|elsewhere"
            r"|anywhere else|sideways|aside|(?:to the )?(?:left|right)"
            r"|[,.;]? ?there(?:'s|s| is) a (?:\w+ )?(?:fence|rail\w*|barrier|wall)"
            r"|because of the (?:fence|rail\w*|barrier|crowd))\b"
            r"|\b(?:no|not any|not much) (?:room|space) to move (?:sideways|aside|left|right"
            r"|here)\b"
            r"|\bonly (?:a |one )?(?:small |tiny |narrow |little )*(?:platform|viewpoint)\b)"
        ),
    ),
    (
        "noon",
        r"\bwait\b.{0,30}\bor\b.{0,30}\b(?:filter|nd)\b|\b(?:filter|nd)\b.{0,20}\bor\b.{0,20}\bwait\b",
    ),
    (
        "people_in_frame",
        (
            r"\b(?:people|persons?|tourists?|somebody|someone|(?:wo)?m[ae]n|kids?|children|crowds?"
            r"|hikers?|lady|guy|famil(?:y|ies)|group)\b[^.;?]{0,30}?\b(?:in|into|through|across)"
            r" (?:the |my |our )*(?:middle of (?:the |my )?)?(?:picture|frame|photo|shot|image)\b"
        ),
    ),
    (
        "tired",
        (
            r"\b(?:somebody|someone|everybody|everyone|(?:one|some|all|most) of us|we|i|he|she|they"
            r"|kids?|children|group|legs|(?:mum|mom|dad|wife|husband|friend|son|daughter|brother|sister"
            r"|partner|mother|father|grand\w+))(?:'re|'m|'s)?(?: (?:is|are|am|gets?|getting|feels?"
            r"|looks?|already|all|very|really|so|too|quite|rather|pretty|a bit|a little|now))*"
            r" (?:tired|exhausted|worn[ -]?out|knackered|pooped|bushed|dead beat)(?! of)\b"
        ),
    ),
    ("no_wait", r"\b(?:don't|dont|do not|can't|cant|cannot|won't) (?:want to |like to )?wait\b"),
)
_TOPICS: Final = tuple((topic, re.compile(pattern)) for topic, pattern in _NAMED)


def topic_by_words(text: str) -> str | None:
    """The topic that plain words of a message name; None for the rest.

    Args:
        text: the message in English.
    """
    said = " ".join(re.sub(r"[’`]", "'", text.casefold()).split())
    return next((topic for topic, pattern in _TOPICS if pattern.search(said)), None)
