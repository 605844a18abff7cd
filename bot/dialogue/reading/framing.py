"""Portrait or landscape, the whole fall or a section, stream or fall, camera height by body."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.draft import Draft
from bot.dialogue.reading.phrases import any_of, exactly

_NOT_FORMAT: Final = (
    r"(?! (?:photo\w*|lens|shooter|picture|painter|drop|wall|gain|climb|lines?|edges?|stripes?))"
)
_PORTRAIT: Final = any_of(
    rf"portrait{_NOT_FORMAT}",
    rf"vertical{_NOT_FORMAT}",
    "upright",
    r"(?:tipped|turned|flipped|rotated) (?:it|the camera|my camera) "
    r"(?:sideways|on (?:its|the) (?:side|end)|90)",
    r"(?:camera|cam|phone|it)(?:'s)? (?:(?:is|turned|tipped|flipped|set|stood) )*(?:on its side"
    r"|on end)",
    r"tall (?:format|frame|orientation)",
    r"(?:hold\w*|held|turned?|shoot\w*|shot|camera)\b[^,;.]{0,16} vertically",
)
_LANDSCAPE: Final = any_of(rf"landscape{_NOT_FORMAT}", r"horizontal(?:ly)?")


#: "Landscape, not portrait": what it is not.
_OTHER_FORMAT: Final = re.compile(
    r"\b(?:not|no|instead of|rather than|isn't) (?:in )?"
    r"(?:portrait|vertical|upright|landscape|horizontal)\b"
)


#: "From portrait to landscape", "thought of upright but": which it is no more.
_FORMAT: Final = r"(?:portrait|vertical|upright|landscape|horizontal)"
_WAS_FORMAT: Final = re.compile(
    rf"\bfrom {_FORMAT}(?= (?:format )?(?:to|over to|into)\b)"
    r"|\b(?:thought (?:of|about)|tried|was(?: in| on| at)?|had(?: it)?(?: in| on)?|started(?: in"
    r"| off| with"
    rf"| on)?|considered)(?: (?:going|shooting|doing|the|it|in|a))* {_FORMAT}\b"
    rf"(?=[^.]{{0,30}}\b(?:but|now|then|though)\b[^.]{{0,30}}\b{_FORMAT}\b)"
)


def read_format(draft: Draft) -> None:
    """Portrait or landscape; both words together say neither."""
    text = _OTHER_FORMAT.sub("", draft.text)
    text = _WAS_FORMAT.sub("", text)
    portrait, landscape = _PORTRAIT.search(text), _LANDSCAPE.search(text)
    if (portrait is None) != (landscape is None):
        draft.note("portrait", value=portrait is not None)


_SIDE: Final = r"(?:upper|lower|top|bottom|left|right|middle)"
_WHOLE: Final = any_of(
    r"(?:whole|entire|full|complete) (?:(?:water)?falls?|drop|cascade)",
    r"all of the (?:water)?falls?|(?:all of it|it all|everything|the lot) in(?=$|[,.;!]"
    r"| (?:please|the"
    r" frame|frame|one))",
    r"(?:get|show|want|fit|have|keep|frame|take) (?:in )?the whole thing",
    r"everything from (?:the )?(?:lip|top) to (?:the )?(?:pool|bottom|foot|base)",
    r"(?:whole|entire) (?:thing|lot)(?: is|'s)? (?:now )?in (?:the )?(?:frame|picture|shot|view)",
    r"(?:show|want|fit|frame|get|have|take|keep)\b[^,;.]{0,24}\b(?:top to bottom|lip to pool)",
    r"top to bottom(?= (?:in|please)|\W*$)(?<!m top to bottom)(?<!ft top to bottom)"
    r"(?<!metres top to bottom)(?<!meters top to bottom)(?<!feet top to bottom)(?<!yards"
    r" top to bottom)",
)
#: "The water runs down the frame, top to bottom" tells which way it runs.
_RUNS: Final = any_of("runs|running|flows|flowing|falls down|drops|comes down|pours|plunges|goes")
_WHOLE_ALONE: Final = exactly("the whole thing", "all of it", "whole")
_SECTION: Final = any_of(
    r"(?:just|only) (?:a |the )?(?:(?!(?:up|at|on|in|near|from|by|along"
    r"|over)\b)\w+ )?(?:section|part|piece|bit|detail|slice|corner|splash"
    r"|steps?|tiers?|lip|base|foot|ledges?|pools?|top|bottom|middle|lower|upper)"
    r"(?! (?:of the (?:frame|picture|hill|path)|is|lights?))(?=$|[,.;!]| (?:of|where|bit|part|half"
    r"|third|please|with|in|for|and some|and the (?:pool|foot|base|ledges?)))",
    r"not (?:all|the whole|everything|the lot)(?: of (?:it|the fall))?(?=$|[,.;!]| (?:just|only))",
    r"(?:a|the|this) section(?! of (?:the )?(?:trail|path))",
    r"details? of",
    r"(?:zoom(?:ed|ing)|clos(?:ed|ing)|mov(?:ed|ing)|cropp(?:ed|ing)|fram(?:ed|ing))"
    r" (?:right |way |all the way |straight |tight(?:ly)? |close )?(?:in )?(?:on|to)"
    r" (?:just |only )?(?:the |a |one )?(?:\w+ )?(?:half|third|part|section"
    r"|bit|slice"
    r"|ledge|step|lip|splash)",
    rf"{_SIDE} (?:half|third) (?:only|please)",
    rf"{_SIDE} (?:part|section|ledge|bit|tier|drop)"
    r"(?!'s| (?:is|was|looks|of the (?:image|frame|picture|photo|shot)))",
    rf"^(?:just |only )?(?:the )?{_SIDE} (?:half|third)(?! of the (?:frame|picture))",
    "close-?up",
)
_SECTION_ALONE: Final = exactly("section", "a part", "part of it", "detail")
_SENTENCES: Final = re.compile(r"[.;!?] +")
#: "The lower part blinks" speaks of the frame that was taken.
_JUDGED: Final = any_of(
    r"alerts?|warnings?|alarms?|indicators?",
    r"lights? up|mush\w*|soup\w*|white|shaky|milky|frozen|small|tiny|lean\w*|blink\w*|zebras?"
    r"|flash\w*"
    r"|clip\w*|soft|sharp|dark|bright|blurr?\w*|black|burn\w*",
)


_TOP_TO_BOTTOM: Final = re.compile(r"\b(?:from )?top to bottom\b")
#: "Not all of it", "not the whole thing".
_PARTLY: Final = any_of(
    r"not (?:quite )?(?:all|the whole|everything|the lot|the entire)(?: (?:of (?:it|the fall)"
    r"|fall|thing))?"
    r"(?=$|[,.;!]| (?:just|only|but))"
)


def read_extent(draft: Draft) -> None:
    """The whole fall or a section of it."""
    parts = _SENTENCES.split(draft.text)
    text = ". ".join(part for part in parts if not _JUDGED.search(part))
    if not text:
        return
    text = _TOP_TO_BOTTOM.sub("", text) if _RUNS.search(text) else text
    if _PARTLY.search(text):
        draft.note("section", value=True)
    elif _WHOLE.search(text) or _WHOLE_ALONE.match(text):
        draft.note("section", value=False)
    elif _SECTION.search(text) or _SECTION_ALONE.match(text) or "section_height_m" in draft.values:
        draft.note("section", value=True)
        if _CREST.search(text):
            draft.note("at_crest", value=True)


#: "Just the lip": the part where the water is slow still.
_CREST: Final = any_of(
    r"(?:just|only|details? of) (?:the |a bit of the |part of the )?(?:lip|crest)"
)
_STREAM: Final = any_of(
    r"^(?:i'm|im|we're|we are|mir are|i am) (?:at|by) (?:a |the )?(?:small |little )?"
    r"(?:stream|creek)(?! ?bed)",
    r"(?<!in the )(?<!in a )(?<!by the )(?<!by a )(?<!near the )(?<!into the )(?<!from the )"
    r"(?<!along the )(?<!live )(?<!main )(?:streams?(?! (?:it|live|videos?|music|on my)\b)|creeks?"
    r"|brooks?|becks?"
    r"|(?:(?<=\ba )|(?<=\bthe )|(?<=\blittle )|(?<=\bsmall )|(?<=\bwee )"
    r"|(?<=\btiny ))burn(?! (?:in|out"
    r"|time|mark|tool))"
    r"|cascades?|rapids|riffles?"
    r"|small river|little river)(?! ?bed| ?bank)",
    r"water(?:'s| is)? (?:just |only )?(?:running|runs|flowing|flows|trickling|tumbling) (?:over"
    r"|between"
    r"|through|among|around) (?:the |some |a few |mossy |small )*(?:stones|rocks|pebbles|boulders)",
)
_FALL: Final = any_of(r"(?:water)?falls?")
_NO_FALL: Final = any_of(
    r"(?:no|not(?: really)? a|isn't(?: really)? a|without(?: a| any)?) (?:(?:real|proper|big"
    r"|single|actual|true|one|main|tall|high) )?"
    r"(?:water)?falls?"
)
_NOT_STREAM: Final = any_of(
    r"(?:not|no|isn't)(?: a)? (?:stream|creek|cascade|river)",
    r"(?:it's|its|it is) a (?:water)?fall",
)
_FALL_ALONE: Final = exactly(r"(?:a )?(?:water)?falls?")


def read_kind_of_water(draft: Draft) -> None:
    """A stream or a fall; a message that names both says neither."""
    text = _NO_FALL.sub("", draft.text)
    if _NOT_STREAM.search(text) or _FALL_ALONE.match(text):
        draft.note("stream", value=False)
    elif _STREAM.search(text) and not _FALL.search(text):
        draft.note("stream", value=True)


#: Heights on a grown person [m], rounded (own rule).
_BODY_HEIGHTS_M: Final = {
    "ankle": 0.1,
    "shin": 0.3,
    "calf": 0.35,
    "knee": 0.5,
    "thigh": 0.75,
    "hip": 1.0,
    "waist": 1.0,
    "belly": 1.1,
    "chest": 1.3,
    "shoulder": 1.45,
    "head": 1.6,
    "eye": 1.6,
}
_GROUND_M: Final = 0.2  # a tripod splayed flat (common practice)
_BODY: Final = "|".join(_BODY_HEIGHTS_M)
_BODY_HIGH: Final = any_of(
    rf"({_BODY})[ -](?:high|height|level)", rf"at (?:the )?({_BODY})s?(?! depth)"
)
#: "Knee deep in editing".
_IN_WORK: Final = (
    r"(?! in (?!(?:the |a |cold |fast |icy )*"
    r"(?:water|stream|creek|pool|river|it|there|current)\b)"
    r"| (?:snow|mud|grass|leaves|sand|bracken|heather))"
)
_BODY_DEEP: Final = any_of(
    rf"({_BODY})[ -](?:deep|depth){_IN_WORK}",
    r"(?:water|it|depth)(?:'s| is| comes| reaches)?(?: (?:only|just|barely|not even|nearly|about"
    rf"|a bit))* (?:over|above|past|below|under) (?:my |the )({_BODY})s?",
    rf"(?:up|deep|comes?|reach(?:es)?|goes) to (?:my |the |mid[ -]?)({_BODY})s?",
)
_ON_GROUND: Final = any_of(r"(?:at|on the|near the) ground(?: level)?", "ground level")
_BODY_ALONE: Final = exactly(rf"(?:about |at |roughly )*(?:my |the )?({_BODY})s?")
_CAMERA: Final = any_of("camera|tripod")


def read_body_heights(draft: Draft) -> None:
    """Heights by parts of the body: `knee high camera`, `ankle deep`."""
    deep, high = _BODY_DEEP.search(draft.text), _BODY_HIGH.search(draft.text)
    if "camera_height_m" in draft.expecting:
        high = high or _BODY_ALONE.match(draft.text)
    if deep and "water_depth_m" in draft.values:
        return
    if deep:
        draft.note("water_depth_m", _BODY_HEIGHTS_M[next(part for part in deep.groups() if part)])
    elif high and "camera_height_m" not in draft.values:
        draft.note("camera_height_m", _BODY_HEIGHTS_M[next(part for part in high.groups() if part)])
    elif not high and _ON_GROUND.search(draft.text) and _CAMERA.search(draft.text):
        draft.note("camera_height_m", _GROUND_M)
