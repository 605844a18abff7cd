"""English words of white that may be lost in a frame: what is asked of it, how wide it is."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "white_asked.white": (
        r"whites?|blob|patch(?:es)?|blown(?: out)?|clipp\w+|highlights?|burn(?:t|ed)(?: out)?"
        r"|hot ?spot|blinkies|overexposed"
    ),
    # What is asked of it: may it be kept, does it come back.
    "white_asked.fate": (
        r"(?:can|could|will) (?:i|we|you|it|that|this|raw|the raw)\b[^.;!?]{0,40}?\b(?:use|save"
        r"|rescue|recover|keep|salvage|pull|bring|get|fix|come back)"
        r"|keep(?:er)? or|toast or|or (?:is it |just )?(?:toast|toss|toss it|bin|bin it|trash"
        r"|garbage|a goner|lost|gone)|still use|worth (?:keeping|saving)"
        r"|(?:usable|useable|lost|toast|gone|keeper|any good|salvageable|recoverable|trash)(?= ?\?)"
        r"|should (?:i|we) (?:keep|toss|bin|delete|trash|use|scrap)"
    ),
    # Asked only with its mark: "is it gone?".
    "white_asked.fate_marked": (
        r"(?:is|are|was)\b[^.;!?]{0,40}?\b(?:gone|lost|blown|usable|useable|salvageable|toast|dead"
        r"|hopeless|any good|too far gone|recoverable|a keeper)"
    ),
    # Sparkle, which does no harm.
    "white_asked.dots": (
        r"(?:scattered|single|tiny|few|little|some) (?:dots|specks|points|pixels|sparkles?|glints)"
        r"|pinpricks?|sparkles?|only dots|just dots|a few pixels|specks"
    ),
    "white_asked.all_channels": (
        r"(?:all|every|each)(?: of)?(?: the)?(?: three| 3)? (?:channels?|graphs?|histograms?"
        r"|colou?rs?|curves)|(?:red|r),? (?:green|g),? (?:and )?(?:blue|b)\b"
    ),
    "white_asked.one_channel": (
        r"(?:only|just|one|a single|single)(?: the)?(?: one)? (?:channel|graph|histogram|colou?r)"
        r"|(?:only|just)(?: in)? (?:the )?(?:red|green|blue)|(?:red|green"
        r"|blue) (?:channel )?(?:only"
        r"|alone)|one of the (?:three|3)"
    ),
    # Things that a patch on a screen is as wide as.
    "white_asked.pinhead": r"pin ?heads?|match ?heads?|grain of rice|ants?",
    "white_asked.pea": r"peas?|lentils?|pencil",
    "white_asked.fingernail": r"finger ?nails?|thumb ?nails?|buttons?",
    "white_asked.finger": r"fingers?(?! ?nail)(?: ?tips?)?|pinky",
    "white_asked.thumb": r"thumbs?(?! ?nail)|coins?|stamps?|walnut",
    "white_asked.fist": r"fists?|hands?|palms?|mugs?",
    "white_asked.screen": r"screen|monitor|display|laptop",
    "white_asked.rear_screen": (
        r"rear screen|back of the camera|camera(?:'s)? (?:screen|display)|lcd"
    ),
    "white_asked.inch": r"inch(?:es)?|in|''",
}
