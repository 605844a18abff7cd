"""Turns of speech about things beside the fall: what a sign says, where the car is, old gear."""

from __future__ import annotations

from typing import Final

from bot.dialogue.reading.spoken_numbers import WORD_NUMBER

_NUMBER: Final = rf"(?:\d[\d.]*|(?:{WORD_NUMBER})\b)"
_HEDGE: Final = r"(?:(?:about|maybe|like|some|roughly|around|approximately|only|just|a good) )*"
_UNIT: Final = r"(m|met(?:er|re)s?|ft|foot|feet|yds?|yards?)"
_BODY: Final = r"(?:ankle|shin|knee|thigh|hip|waist|belly|chest|shoulder|eye|head)"

PLAIN_TURNS: Final = (
    #: "The sign says 13 m": signs at falls tell their height.
    (
        (
            rf"\b(?:sign|board|plaque|info panel) (?:says|reads|shows|gives|claims)"
            rf"(?: it's| it is)? {_HEDGE}({_NUMBER}) ?(m|met(?:er|re)s?|ft|foot|feet)\b"
            r"(?! ?(?:away|to|deep|wide|across|back|up|down|walk|above|tall|high|from|of|in|long"
            r"|further|on|and|but)\b)(?=[^.;]*\d[^.;]* (?:away|back|from it|off)\b)"
        ),
        r"height is \1 \2",
    ),
    #: "The car park is 900 m back".
    (
        (
            rf"\b(?:car ?park|parking(?: lot)?|car|trail ?head)(?:'s| is| was)? {_HEDGE}({_NUMBER})"
            r" ?(m|km|k|miles?|mi|met(?:er|re)s|yards|yds?|ft|feet)"
            r" (?:back(?! and)|behind (?:us|me)|down the (?:path|trail|road))\b"
        ),
        r"\1 \2 walk out",
    ),
    #: "The bit I want is about 3 m tall".
    (
        (
            r"\b(?:bit|part|piece|section|portion|chunk|slice|stretch)(?: of (?:it|the fall))?"
            r" (?:that |which )?(?:i|we)(?:'m| am|'d| would)? (?:want|like|need|frame|show|after)"
            rf"(?: to (?:show|frame|have|get))?(?: is| would be|'s)? {_HEDGE}({_NUMBER}) ?{_UNIT}"
            r" (?:tall|high)\b"
        ),
        r"a \1 \2 tall section",
    ),
    #: "Camera on the tripod, waist height roughly 1 metre".
    (
        (
            rf"\b((?:camera|cam|tripod)\b[^.;\d]{{0,30}}?)\b{_BODY}[ -](?:height|level|high),?"
            rf" (?:so |that's |which is |say )*{_HEDGE}(?={_NUMBER} ?(?:m|cm|met|ft|feet|inch))"
        ),
        r"\1camera height ",
    ),
    #: "Took it off because it got too dark": why, not what is wrong with a frame.
    (
        (
            r"\b(off|removed),? (?:because|cause|cos|coz|cuz|since)\b[^.;,\d]{0,20}?"
            r"\b(?:too|so|very) (?:dark|bright)\b"
        ),
        r"\1",
    ),
    #: "Want the whole fall in, top to bottom": no way that water runs.
    (r"\b(whole (?:fall|waterfall|thing)(?: in)?),? (?:from )?top to bottom", r"\1"),
    #: "The rock is 1 m away and the actual fall 14".
    (
        (
            r"\b((?:away|from (?:me|us|the camera|here)|off),? (?:and|but|while)?) ?(?:then )?"
            r"(?:the )?(?:actual |real )?(?:water)?fall(?:s)?(?: itself| proper)?"
            rf"(?: is| at| a)* {_HEDGE}({_NUMBER})(?: ?{_UNIT})?(?=$|[.,;!])"
        ),
        r"\1 fall \2 \3 away",
    ),
    (r"\bsays (?:0|zero) on the (?:light )?(?:meter|scale)", "meter at 0"),
)
