"""Words of the frame that might tell of a place: a near rock, its top edge, no warning."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.phrases import straight

_NUMBER: Final = (
    r"(?:\d[\d.,/]*|an?|one|two|three|four|five|six|seven|eight|nine|ten|twelve|half an?"
    r"|(?:a )?couple of)"
)
_HEDGE: Final = r"(?:(?:is|it's|its|about|maybe|like|some|roughly|only|just|at|right|around) )*"
_UNIT: Final = (
    r"(?:m|met(?:er|re)s?|cm|centimet(?:er|re)s?|ft|foot|feet|yds?|yards?|inch(?:es)?|steps?)"
)
_ROCK: Final = (
    r"(?:(?:big|small|flat|nice|wet|mossy|slimy|dark|round|little|large|green|slippery|old|moss"
    r"|covered|fallen) )*(?:rocks?|boulders?|stones?|logs?|trunks?|slabs?|stumps?|ferns?|moss)"
)
#: "A mossy boulder about four feet in front of me": nobody stands on what is so far off.
_NEAR: Final = (
    rf"\b{_ROCK} {_HEDGE}{_NUMBER} ?{_UNIT} (?:in front of|ahead of|away from|from)"
    r" (?:me|us|the (?:camera|lens|tripod)|my (?:camera|lens|tripod|feet))\b"
    r"(?![^.;!?]*\b(?:f[ae]ll\w*|moved?|moving|land\w*|crash\w*|roll\w*|slid\w*|slip\w*|loose"
    r"|climb\w*|onto|jump\w*|step\w*|cross\w*|stand\w*|hit|came)\b)"
)
_GREEN: Final = (
    r"(?:ferns?|leaves|leaf|ivy|branch(?:es)?|twigs?|moss|trees?|grass(?:es)?|foliage|bushes|rocks?"
    r"|green(?:ery)?)"
)
#: "I see ferns all along the top edge": of the frame, since plants are what is there.
_TOP: Final = (
    rf"(?:^|(?<=[.;,:!?] )|\b(?:see|is|are|there's|got|have|only|just|some|with|and) ){_GREEN}"
    rf"(?: (?:and|or) {_GREEN})?(?: (?:all|right|hang\w*|grow\w*|go\w*|run\w*|reach\w*|down"
    r"|cover\w*|fill\w*|everywhere|now))* (?:along|over|across|at|on|above|around)? ?"
    r"(?:all )?the (?:very )?"
    r"top(?: edge| border)?(?: of (?:the |my |it)?(?:frame|picture|photo|shot|image|screen)?)?"
    r"(?= ?(?:$|[.;,!?]|and\b|but\b|now\b))"
)
#: "No, I can't see white spots": of the camera's warning.
_UNSEEN: Final = (
    r"\b(?:can't|cant|cannot|can not|don't|dont|do not|didn't|couldn't|not)"
    r"(?: (?:really|actually))? (?:see|find|spot|notice|have|get) (?:any |a |the |one )*"
    r"(?:(?:white|bright|blinking|flashing|blown|clipped|tiny|little) )*"
    r"(?:spots?|dots?|patch(?:es)?|blinkies|blink\w*|flash(?:es|ing)?|zebras?|highlights?|warnings?"
    r"|blobs?|speck(?:s|les)?|(?<=white )(?:bits?|areas?|parts?))\b"
)
#: "My hands are wet so short answers": of the thumb, not of the cold.
_WET: Final = (
    r"\b(?:hands?|fingers|gloves|screen|phone)(?:'s| is| are|'re) (?:all |so |a bit )?wet\b"
    r"(?=[^.;!?]*\b(?:short|brief|quick|type|typing|answers?)\b)"
)
_OF_THE_FRAME: Final = re.compile(f"{_NEAR}|{_TOP}|{_UNSEEN}|{_WET}", re.IGNORECASE)


def without_frame_talk(text: str) -> str:
    """A message without what it says of the frame, whatever else it tells.

    Args:
        text: as typed.
    """
    said = straight(text)
    bare = _OF_THE_FRAME.sub(",", said)
    return text if bare == said else bare
