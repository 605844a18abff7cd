"""Turns of speech in the plain form that the readers know: `one by eight`, `24 to one oh five`."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.kit_turns import KIT_TURNS
from bot.dialogue.reading.made_zooms import said_zooms
from bot.dialogue.reading.plain_turns import PLAIN_TURNS
from bot.dialogue.reading.rewriting import Rewriting
from bot.dialogue.reading.spoken_numbers import SIMPLE, WORD_NUMBER
from bot.dialogue.reading.unit_words import LENGTH

_NUMBER: Final = rf"(?:\d|(?:{WORD_NUMBER})\b)"
#: f-numbers that nothing else is marked with.
_F_DECIMAL: Final = r"(?:1\.[48]|2\.8|3\.5|4\.5|5\.6|6\.3|7\.1)"
_F_MARK: Final = rf"(?:{_F_DECIMAL}|[489]|1[01346]|18|2[02])"
_DENSITY: Final = r"(?:0\.[369]|1\.[258]|2\.[147]|3\.0)"
_NAME: Final = (
    r"height|distance|width|depth|nearest(?: \w+)?|closest(?: \w+)?|farthest(?: \w+)?|foreground"
    r"|focal(?: length)?|aperture|shutter(?: speed)?|iso|sunset|climb|walk"
)
_FACTOR: Final = r"(2|4|8|16|32|64|400|500|1000)"
_STRENGTH: Final = r"(?:two|three|four|five|six|eight|ten)"


def _in_figures(match: re.Match[str]) -> str:
    return str(SIMPLE[match.group()])


_TURNS: Final = (
    #: "F by 11", "f slash eight".
    (rf"\bf (?:by|over|slash|stroke|upon) (?={_NUMBER})", "f "),
    #: "18-55mm 1:3.5-5.6", as it stands on the ring.
    (r"(?<=\d)( ?mm)?,? 1:(?=[1-7](?:\.\d)?(?:-[1-7]\.\d)?(?![\d:]))", r"\1 f/"),
    #: "A mile and a quarter", "two miles and three quarters".
    (r"\b(?:a|an|one|1) (k(?:m|ilomet(?:er|re))) and a half\b", r"1.5 \1"),
    (r"\b(?:a|one|1) (mile|km|kilomet(?:er|re)) and (?:a|one) quarter\b", r"1.25 \1"),
    (r"\b(?:a|one|1) (mile|km|kilomet(?:er|re)) and three[ -]quarters\b", r"1.75 \1"),
    (
        r"\b(\d{1,2}|two|three|four|five|six) (miles|km|kilomet(?:er|re)s) and a half\b",
        r"\1 1/2 \2",
    ),
    (
        r"\b(\d{1,2}|two|three|four|five|six) (miles|km|kilomet(?:er|re)s) and (?:a|one) quarter\b",
        r"\1 1/4 \2",
    ),
    (
        r"\b(\d{1,2}|two|three|four|five) (miles|km|kilomet(?:er|re)s) and three[ -]quarters\b",
        r"\1 3/4 \2",
    ),
    #: "Five k to the car", "2.3 k's down the track".
    (r"(?<=\d) ?(?:k's|ks|kays|klicks)\b|(?<=\d) ?k(?= (?:to|back|down|up|out|in|away) )", " km"),
    (
        (
            rf"\b({'|'.join(SIMPLE)}) (?:k's|ks|kays|klicks|k(?= (?:to|back|from|out|in|down|up"
            r"|walk"
            r"|hike)\b))"
        ),
        r"\1 km",
    ),
    #: "From 5.6 to 11", one of which only an f-number can be.
    (
        (
            rf"\bfrom ({_F_DECIMAL}) to (?:f ?/? ?)?({_F_MARK})"
            rf"(?![\d./:-]| ?(?:{LENGTH}|s|secs?|mm)\b)"
            rf"|\bfrom ({_F_MARK}) to ({_F_DECIMAL})(?![\d./:-]| ?(?:{LENGTH}|s|secs?|mm)\b)"
        ),
        r"from f/\1\3 to f/\2\4",
    ),
    #: "Two more stops of light".
    (r"\b(\w+) (?:more|extra|additional|further) stops? of (?:light|exposure)\b", r"\1 stops more"),
    #: "A 0.9 and a 1.8 nd".
    (rf"(?<![\d/.f])({_DENSITY})(?=(?:,| and| &| \+|/)(?: an?)? ?\d\.\d ?(?:nd|gr[ea]y))", r"nd\1"),
    (rf"\bdensity (?:of )?({_DENSITY})(?: nd)?\b|\b({_DENSITY}) density(?: nd)?\b", r"nd\1\2"),
    #: Who asks and answers in one breath: "distance? eighty".
    (rf"\b({_NAME})\? ?(?=(?:(?:about|maybe|roughly|say|around) )?{_NUMBER})", r"\1: "),
    #: "ISO isn't 400, it's 100".
    (
        (
            rf"\b({_NAME}) (?:isn't|is not|wasn't|was not|not) (?:f ?/? ?)?[\d./]+(?: ?(?:{LENGTH}"
            r"|mm))?,? "
            r"(?:but |rather )?(?:it's |it is |its |it was |should be )?(?:actually )?"
            r"(?=\d|f ?/?\d)"
        ),
        r"\1 is ",
    ),
    (rf"\b({_NAME})'s (?={_NUMBER})", r"\1 is "),
    #: "Suns down", "isos on 320": the apostrophe that thumbs leave out.
    (
        (
            r"\b(sun|wind|sky|pola|pol|cpl|polari[sz]er|tripod|iso|aperture|shutter|needle|bar"
            r"|histogram|current|moon"
            r"|air|sensitivity|sunset|sundown|camera|(?:^|(?<=the )|(?<=my )"
            r"|(?<=light ))meter)s (?=(?:on|off|in|at|up"
            r"|down|out|set|gone|just|been|about|dead|still|now|a|very|so|too|all|picking|clipping"
            r"|blown|weak|low"
            r"|behind|mounted|turned|not(?! allowed)|really|quite|full|bang|around|half|quarter"
            r"|going"
            r"|over|under|always|both)\b"
            rf"|{_NUMBER})"
        ),
        r"\1's ",
    ),
    (
        (
            r"\b(?:puts?|gives?|lists?|quotes?|rates?|makes?|states?) (?:the "
            r"|this )?(?:height of the )?(?:water)?falls?"
            r" (?:at|as)\b"
        ),
        "height is",
    ),
    (r"(?:^|(?<=[,;.] ))am (?=(?:now |about |some |maybe |right )*(?:at|on) )", "i'm "),
    #: "Two NDs here, an 8 and a 64".
    (
        (
            rf"\b(nds?)\b[^.;\d]{{0,14}}?,? (?:an? |the )?{_FACTOR} and (?:an? "
            rf"|the )?{_FACTOR}(?! ?-?(?:stops?|mm|m)\b|[\d./])"
        ),
        r"\1 \2 and \3",
    ),
    #: "A three, a six and a ten stop".
    (
        (
            rf"\b{_STRENGTH}(?=(?:,| and|, and|,? or)(?: an?| the)? (?:{_STRENGTH}(?:,| and"
            r"|, and)(?: an?| the)? )?"
            rf"(?:{_STRENGTH}|\d+)[ -]stop)"
        ),
        _in_figures,
    ),
    (rf"\bsensitivity (?:(?:is|of|at|set to) )*(?={_NUMBER})", "iso "),
    (rf"\bwide open,? (?:at )?(?=(?:{_F_DECIMAL})(?![\d/]))", "wide open f/"),
    (
        (
            r"\b(?:closed|closing|opened|opening|stopped|stopping)(?: (?:it|her"
            r"|the (?:lens|aperture)"
            r"|up|down))* to "
            rf"(?:f ?/? ?)?(?={_NUMBER}(?!/))"
        ),
        "closed down to f ",
    ),
    (
        (
            r"\b(?:an|a) (?:easy|short|good|full|long|flat|steep|bare|solid|quick|whole) (?=(?:mile"
            r"|kilomet(?:er|re)|km)\b)"
        ),
        "1 ",
    ),
    (
        (
            r"\bnds?,? (?:the|a|an|it's a|my|that's a) (?=(?:4|8|16|32|64|400|500"
            r"|1000)\b(?! ?-?(?:stop|mm)))"
        ),
        "nd",
    ),
    (r"\b(50|64|100|125|160|200|400|800|1600) speed(?: film)?\b", r"iso \1"),
    (r"\b(?:idk|dunno|no clue|beats me|search me|who knows|god knows)\b", "not sure"),
    (r"(?:^|\bi |(?<=[,;.] ))(?:reckon|recon|rekon)\b", "i guess"),
    (
        (
            r"(?:^|(?<=the )|(?<=my )|(?<=[,;.] ))pod(?=(?:'s| is)? (?:(?:all|now|set|standing) )*"
            r"(?:up|out|planted|down|standing)\b)"
        ),
        "tripod",
    ),
    #: "Stacked 3 and 6, so nine stops", "the big stopper on, 10 stops": filters that are on.
    (
        (
            rf"\b(?:stacked|both)\b[^.;]{{0,14}}?\b(?:\d+|{_STRENGTH})(?:[ -]stop)? (?:and|plus|\+"
            rf"|with)"
            rf"(?: the| an?| my)? (?:\d+|{_STRENGTH})(?:[ -]stop)?\b(?: nds?)?[^.;\d]{{0,16}}?"
            rf"\b(\d+|{_STRENGTH}|seven|nine|thirteen|sixteen) stops?(?: on(?: there)?| total| in"
            rf" total)*"
        ),
        r"\1 stop nd on",
    ),
    (
        rf"\bstopper(?:'s| is)? on,? (?:so |that's |it's |the )?(\d+|{_STRENGTH})[ -]stops?\b",
        r"\1 stop nd on",
    ),
    #: "We walked 3 miles and it's the same back".
    (
        (
            rf"\b(?:walked|hiked|came|did) (?:about |some )?({_NUMBER}[\d.]*) ?(km|k|miles?|mi)\b"
            r"(?: in| here| already| so far| up| out)*,?(?: and)?(?: it'?s| its)?(?: the)? same"
            r"(?: way| distance| path| again)? (?:back|out|return)"
        ),
        r"\1 \2 walk out",
    ),
    #: "Four km back, 180 up".
    (
        (
            r"((?:km|kilomet\w+)\b[^.;\d]{0,15}[, ](?:and |with )?)(\d{2,3}) "
            r"(?=(?:up|of climb\w*|climb\w*|ascent)(?:\W*$|[,.;]))"
        ),
        r"\1\2 m ",
    ),
    #: "Top one 6 m, I'd say 15 overall".
    (
        (
            rf"(\d+(?:\.\d+)?) ?({LENGTH})\b([^.;\d]{{0,30}}?)((?:,| and| so| but)(?: id say| i'd"
            rf" say"
            r"| i guess| maybe| about| probably| call it| roughly)* )(\d+(?:\.\d+)?)"
            r" (?:overall|in total|all told|altogether|in all|total)\b"
        ),
        r"\1 \2\3\4\5 \2 in total",
    ),
    #: How near a number is; the number stays.
    (
        (
            r"\b(?:pushing|touching|near(?:ly)? on|not far off|somewhere (?:around|near|about|like)"
            rf"|in the (?:region|order) of|on the order of|north of|just shy of)(?= {_NUMBER})"
        ),
        "about",
    ),
    #: "Pours over a ledge 9 m up".
    (
        (
            r"\b(?:comes?|pours?|falls?|spills?|drops?|tumbles?|plunges?|shoots?) (?:down |out )?"
            r"(?:over|off|from) (?:a |the |its )?(?:ledge|lip|edge|rim|cliff|brink|top|crest|shelf)"
            rf"(?: at| of)?(?: about| some| maybe)? (?={_NUMBER}[^,;.]{{0,12}} (?:up|high|above)\b)"
        ),
        "height ",
    ),
)
_PLAIN: Final = Rewriting(
    (re.compile(pattern), said) for pattern, said in PLAIN_TURNS + KIT_TURNS + _TURNS
)
#: "Not 12 m, 15": the right one bears the unit of the wrong one.
_DENIED: Final = re.compile(
    r"(?!^)\b(?P<is>isn't|is not|wasn't|was not"
    rf"|not) (?:about )?\d+(?:\.\d+)? ?(?P<unit>{LENGTH}),?;?"
    r"(?! ?(?:/|a|per) ?s)"
    r"(?P<between>[^\d;.?!]{1,40})(?<!/)(?<!\bf )(?<!\biso )(?P<right>\d+(?:\.\d+)?)"
    r"(?=\s*(?:$|[,;!)]|\.(?!\d)))"
)
#: So tall is a fall, not somebody [m]; "she's about 22 metres".
_SHE: Final = re.compile(
    r"\b(?:she's|she is|he's)(?= (?:(?:about|around|roughly|maybe|some|a good|nearly|easily) )*"
    r"(?:\d\d+|[3-9]) ?(?:m|met(?:er|re)s)\b|"
    r" (?:(?:about|around|roughly|maybe|some|a good|nearly|easily) )*\d\d+ ?(?:ft|feet)\b)"
)
_ODD: Final = re.compile(r"(?<=\d) odd\b(?! (?:one|number|sock))")


def plainly(text: str) -> str:
    """The message with turns of speech in their plain form, its numbers still in words.

    Args:
        text: a message in lower case.
    """
    return said_zooms(_PLAIN.of(text))


def plainly_numbered(text: str) -> str:
    """The message with turns of speech that digits show: `not 12 m, 15`, `30 odd`.

    Args:
        text: a message in lower case, its numbers in digits.
    """
    text = _DENIED.sub(_right_alone, _ODD.sub("", text))
    return _SHE.sub("it's", text)


def _right_alone(match: re.Match[str]) -> str:
    be = "is " if match["is"] != "not" else ""
    return f"{be}{match['right']} {match['unit']}"
