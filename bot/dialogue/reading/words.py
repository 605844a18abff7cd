"""Words without numbers: look, flow, format of the frame, wind, stream, group, sunset."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.facts import Flow, Symptom
from bot.dialogue.reading.draft import Draft

_NEGATED: Final = re.compile(
    r"\b(?:no|not|isn't|without|don't|too|never|less|little|lost|lacks)(?: (?:want|so|too|it|that|look|be))* ?$"
)
#: The looks by their words; values of core.water.Look.
_LOOKS: Final = tuple(
    (look, re.compile(pattern))
    for look, pattern in (
        (
            "frozen",
            r"\bfreeze\b|\bfreezing (?:the |every )(?:water|drops?|motion)\b|(?<!nearly )(?<!almost )\bfrozen\b|\bstop the (?:drops|water|motion)\b|\b(?:droplets|drops|splashes) (?:sharp|visible|in the air)\b",
        ),
        ("crisp", r"\bcrisp\b|\bshort (?:trails|streaks)\b|\b(?:nearly|almost) frozen\b"),
        (
            "textured",
            r"\btextured?\b|\bstrands?\b|\b(?:separate|single|fine|white|water) threads\b|\bstructure\b|\bstreaks\b(?! of light)|\bstringy\b",
        ),
        ("silky", r"\bsilk(?:y|en)?\b|\bsatin\b|\bvelvet\w*\b"),
        (
            "misty",
            r"\bmisty\b|\bdream(?:y|like)\b|\bethereal\b|\bmilky\b|\bghostly\b|\blike fog\b|\bfoggy\b",
        ),
    )
)
_MIST_IN_AIR: Final = re.compile(r"\b(?:spray|air|lens|weather|morning|day)\b")


def read_look(draft: Draft) -> None:
    """The look that is wished; what the person complains of is a symptom, not a wish."""
    complaints = set(draft.values.get("symptoms", ()))
    if complaints & {Symptom.NO_TEXTURE, Symptom.TOO_FROZEN, Symptom.SOFT_ALL, Symptom.JUST_WHITE}:
        return
    found = []
    for look, pattern in _LOOKS:
        match = pattern.search(draft.text)
        if match and not _NEGATED.search(draft.text[: match.start()]):
            found.append(look)
    if found and not (found == ["misty"] and _MIST_IN_AIR.search(draft.text)):
        draft.note("look", found[0])


_TOWARDS: Final = re.compile(
    r"\b(?:towards?|at|to|for|away from) (?:me|us|my (?:tripod|camera|lens|feet)|the camera|the lens|camera|you|where i)\b"
)
_WATER_MOVES: Final = re.compile(
    r"\b(?:flow\w*|runs?|running|comes?|coming|rush\w*|straight|pours?|pouring|head\w*|moves?|moving)\b"
)
_ACROSS: Final = re.compile(
    r"\bacross(?: (?:the (?:frame|picture|view)|my view))?\b|\b(?:left to right|right to left|side to side|sideways|from the (?:left|right))\b"
)
_DOWN: Final = re.compile(
    r"\bstraight down\b|\bdownwards?\b|\btop to bottom\b|\b(?:flows?|runs?|drops?|comes|pours?|falls|falling|plunges) (?:straight )?down\b|\bvertical(?:ly)? (?:drop|down)\b|^down$"
)


def read_flow(draft: Draft) -> None:
    """Which way the water runs in the picture."""
    text = draft.text
    if (_TOWARDS.search(text) and _WATER_MOVES.search(text)) or re.match(r"^towards?\b", text):
        draft.note("flow", Flow.TOWARDS)
    elif _ACROSS.search(text):
        draft.note("flow", Flow.ACROSS)
    elif _DOWN.search(text):
        draft.note("flow", Flow.DOWN)


_NOT_FORMAT: Final = (
    r"(?! (?:photo\w*|lens|shooter|picture of|pictures|painter|drop|wall|gain|climb))"
)
_PORTRAIT: Final = re.compile(rf"\bportrait\b{_NOT_FORMAT}|\bvertical\b{_NOT_FORMAT}|\bupright\b")
_LANDSCAPE: Final = re.compile(rf"\blandscape\b{_NOT_FORMAT}|\bhorizontal(?:ly)?\b")
_WHOLE: Final = re.compile(
    r"\b(?:whole|entire|full|complete) (?:water)?falls?\b|\ball of the (?:water)?falls?\b|\b(?:get|show|want|fit|have|keep|frame|take) (?:in )?the whole thing\b|^the whole thing$|\btop to bottom\b"
)
_SECTION: Final = re.compile(
    r"\b(?:just|only) (?:a |the )?(?:\w+ )?(?:section|part|piece|bit|detail|slice)\b|\b(?:a|the|this) section\b(?! of (?:the )?(?:trail|path))|^section\b"
    r"|\bdetails? of\b|\b(?:upper|lower|top|bottom|left|right) (?:half|third) (?:only|please)\b|\b(?:lower|upper|top|bottom|middle|left|right) (?:part|section|ledge|bit|tier|drop)\b|\bclose-?up\b"
)
_WARNED: Final = re.compile(r"\b(?:blink\w*|flash\w*|clipp\w*|soft|sharp|dark|bright|blurr?\w*)\b")
_STREAM: Final = re.compile(
    r"(?<!in the )(?<!in a )(?<!by the )(?<!by a )(?<!near the )(?<!into the )(?<!from the )(?<!along the )"
    r"\b(?:streams?|creeks?|brooks?|becks?|cascades?|rapids|riffles?|small river|little river)\b(?! ?bed| ?bank)"
)
_FALL: Final = re.compile(r"\b(?:water)?falls?\b")
_NOT_STREAM: Final = re.compile(
    r"\b(?:not|no|isn't)(?: a)? (?:stream|creek|cascade|river)\b|\b(?:it's|its|it is) a (?:water)?fall\b|^(?:a )?(?:water)?falls?$"
)


def read_framing(draft: Draft) -> None:
    """Portrait or landscape, the whole fall or a section, fall or stream."""
    text = draft.text
    portrait, landscape = _PORTRAIT.search(text), _LANDSCAPE.search(text)
    if bool(portrait) != bool(landscape):
        draft.note("portrait", value=portrait is not None)
    if not _WARNED.search(text):
        if _WHOLE.search(text):
            draft.note("section", value=False)
        elif _SECTION.search(text) or "section_height_m" in draft.values:
            draft.note("section", value=True)
    if _NOT_STREAM.search(text):
        draft.note("stream", value=False)
    elif _STREAM.search(text) and not _FALL.search(text):
        draft.note("stream", value=True)


_LEAVES: Final = r"(?:leaves|leaf|foliage|ferns?|branches|twigs|trees|grass|bushes)"
_CALM: Final = re.compile(
    rf"\bno (?:wind|breeze)\b|\bwindless\b|\b(?:wind|breeze) (?:is |has )?(?:gone|stopped|dropped|died)\b|\bdead calm\b|\b(?:it's|all|is) calm\b|^calm$"
    rf"|\b{_LEAVES} (?:are )?(?:still|not moving|don't move|aren't moving|hang still)\b|\bnothing moves\b"
)
_WINDY: Final = re.compile(
    rf"\bwindy\b|\bbreezy\b|\bgust\w*\b|\b(?:strong|bit of|some|light|much) (?:wind|breeze)\b|\bwind (?:is|from|moves|picks|blows)\b|(?<!out of )(?<!out )\b(?:from|in|by) the wind\b"
    rf"|\b{_LEAVES} (?:\w+ )?(?:moving|move|moves|shak\w+|wav\w+|flutter\w*|danc\w+|sway\w*|trembl\w*|in the wind)\b"
)


def read_wind(draft: Draft) -> None:
    """Whether leaves move."""
    if _CALM.search(draft.text):
        draft.note("wind", value=False)
    elif _WINDY.search(draft.text):
        draft.note("wind", value=True)


_SUNSET: Final = re.compile(
    r"\b(?:sunset|sundown|sun (?:goes down|sets|down|is down)|sunset time)\b(?: (?:is|today|tonight|at|around|about|will be|'s))*[ :=]*"
    r"(?P<hour>\d{1,2})[:.h]?(?P<minute>\d\d)? ?(?P<half>[ap]\.?m\b)?"
)
_SUNSET_AFTER: Final = re.compile(
    r"\b(?P<hour>\d{1,2})[:.](?P<minute>\d\d) ?(?P<half>[ap]\.?m\b)? (?:is )?(?:sunset|sundown)\b"
)


def read_sunset(draft: Draft) -> None:
    """The time of sunset as typed, in 24 hours; `7:05 pm` is 19:05, a bare `7` is nothing."""
    match = _SUNSET.search(draft.text) or _SUNSET_AFTER.search(draft.text)
    if match is None or not (match["minute"] or match["half"]):
        return
    hour, minute = int(match["hour"]), int(match["minute"] or 0)
    if match["half"] and match["half"].startswith("p") and hour < 12:
        hour += 12
    if hour < 24 and minute < 60:
        draft.note("sunset", f"{hour:02d}:{minute:02d}")
        for quantity in draft.free():
            if match.start() <= quantity.start < match.end():
                draft.claim(quantity)


_BODY_HEIGHTS_M: Final = (
    # Of a grown person, rounded (own rule); the bot says what it took.
    ("ankle", 0.1),
    ("shin", 0.3),
    ("knee", 0.5),
    ("thigh", 0.75),
    ("hip", 1.0),
    ("waist", 1.0),
    ("belly", 1.1),
    ("chest", 1.3),
    ("shoulder", 1.45),
    ("head", 1.6),
    ("eye", 1.6),
)
_BODY: Final = "|".join(name for name, _ in _BODY_HEIGHTS_M)
_BODY_HIGH: Final = re.compile(
    rf"\b({_BODY})[ -](?:high|height|level)\b|\bat (?:the )?({_BODY})s?\b"
)
_BODY_DEEP: Final = re.compile(rf"\b({_BODY})[ -]deep\b|\bup to (?:my|the) ({_BODY})s?\b")
_ON_GROUND: Final = re.compile(r"\b(?:at|on the|near the) ground(?: level)?\b|\bground level\b")
_CAMERA: Final = re.compile(r"\b(?:camera|tripod|lens|low|level|height|high)\b")


def read_body_heights(draft: Draft) -> None:
    """Heights by parts of the body: `knee high camera`, `ankle deep`."""
    heights = dict(_BODY_HEIGHTS_M)
    deep, high = _BODY_DEEP.search(draft.text), _BODY_HIGH.search(draft.text)
    if deep:
        draft.note("water_depth_m", heights[deep.group(1) or deep.group(2)])
    elif high:
        draft.note("camera_height_m", heights[high.group(1) or high.group(2)])
    elif _ON_GROUND.search(draft.text) and re.search(r"\b(?:camera|tripod)\b", draft.text):
        draft.note("camera_height_m", 0.2)  # a tripod splayed flat (common practice)


_MIXED: Final = re.compile(
    r"\bmixed (?:group|fitness|bunch|party|abilities|ability|levels)\b|\b(?:group|party|we)\b.{0,20}\bmixed\b|\bslow (?:walkers|group|people)\b|\b(?:of us|people|walkers|some) (?:are |is )?slow\b|\bwith (?:kids|children)\b"
)
_ALONE: Final = re.compile(
    r"\b(?:i'm|im|going|walking|hiking) (?:alone|solo|by myself)\b|^(?:alone|solo|just me)$"
)


def read_group(draft: Draft) -> None:
    """Whether the group's fitness is mixed."""
    if _MIXED.search(draft.text):
        draft.note("group_mixed", value=True)
    elif _ALONE.search(draft.text):
        draft.note("group_mixed", value=False)
