"""Sensor format and pixels as typed."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.draft import Draft
from bot.dialogue.reading.inventory import is_wished

_FORMATS: Final = (
    (
        "phone",
        re.compile(
            r"\b(?:smart|tele)?phone\b(?!(?:'s| is| just|'s just)? (?:ringing|rang|buzz\w*|dying"
            r"|dead"
            r"|died|says|shows|thinks|reckons|going|low|nearly|almost"
            r"|(?:at |on |has )?\d+ ?(?:%|percent|prozent|\d)))"
            r"(?! (?:battery|number|signal|call|reception|line|is dead|inside"
            r"|(?:is )?(?:in |on )?flight))"
            r"|\b(?:cell|mobile)(?: ?phone)? (?:camera|only)\b"
            r"|^(?:just |only )?(?:the |my )?mobile\b(?! (?:signal|reception|network|data))"
            r"|\b(?:the|my|on|a) (?:mobile|cell)(?=$|[,;.!)]| (?:with|and|today|here|for)\b)"
        ),
    ),
    ("44x33", re.compile(r"\bformatmedium\b")),
    ("full frame", re.compile(r"\bformatfull\b")),
    ("aps-c 1.6", re.compile(r"\bformatsmallcrop\b")),
    (
        "aps-c",
        re.compile(
            r"\bformatcrop\b|\bcrop(?:ped)?[ -]?(?:sensor|body|camera|frame|dslr|mirrorless)\b"
            r"|\b(?:on|a|my|is|it's|its|i'm|im|use|have|shoot|shooting) crop\b"
            r"(?! (?:it|the|later|in|of|off|out))|(?<=pixel )crop\b|(?<=pixels )crop\b"
            r"|(?<=mp )crop\b|^crop(?=$|[,;.]| \d)"
        ),
    ),
    ("four thirds", re.compile(r"\bformatmft\b")),
    ("1-inch", re.compile(r"\bformatinch\b")),
)
#: Of several cameras, the one that is said to be in use.
_IN_USE: Final = re.compile(
    r"\b(?:using|use|today|shooting|took|brought|i'm on|im on"
    r"|now)\b[^,;.]*$"
)


#: "It's not full frame, it's APS-C": the other one is meant.
_DENIED: Final = re.compile(
    r"\b(?:not|isn't|isnt|no|never|wasn't|instead of|rather than)"
    r"(?: (?:is|es|a|an|the|my|really))* ?$"
)
_TOOL: Final = (
    r"(?:maps?|mapa|card|route|navigation|gps|torch|light|lamp|emergenc\w*|calls?|compass|weather"
    r"|forecast|time|music|notes)"
)
_NETWORK: Final = r"(?:signal|reception|coverage|network|service|bars?|connection|data|internet)"
#: "Looked it up on my phone", "the torch on my phone": no camera.
_PHONE_AS_TOOL: Final = re.compile(
    r"\b(?:typ\w+|writ\w+|text\w+|look\w* (?:\w+ )?up|check\w*|read\w*|saw|see|torch|signal|maps?"
    r"|apps?|weather|timer|compass|gps|notes?|chat\w*|calculat\w+|forecast|browser|screen)\b"
    r"[^,;.]{0,24}\b(?:on|with|from|in|off) (?:my|the|a|his|her) (?:smart)?phone\b"
    r"|\bdrop(?:ped|s)? (?:my|the) phone\b|\bphone (?:(?:got|is|was|went) wet|in rice)\b"
    r"|\b(?:cables?|chargers?|case|holder|cover) (?:for|of) (?:my|the) phone\b"
    r"|\b(?:talk\w*|speak\w*|spoke|call\w*|cat|mum|mom|wife|husband|dad|boss) (?:\w+ )?(?:on"
    r"|over) the phone\b"
    r"|\b(?:too|fit|big|small|long) (?:\w+ )?for my phone\b|\bphone (?:case|cable|charger|cover"
    r"|holder|box|shop)\b"
    r"|\bphone's (?:\w+ )?(?:gps|apps?|maps?|torch|compass|clock|weather|screen)\b"
    # it calls, finds the way, or does not
    rf"|\bphone(?: (?:only|just|is|with me))* for (?:the |my |a |an )?{_TOOL}\b"
    rf"|\bphone (?:has|had|have|gets?|got|loses?|lost|shows?|finds?|hasn't|doesn't have|with)"
    rf"(?: got| get| any)* (?:(?:no|zero|any|bad|poor|weak|one bar of) )?{_NETWORK}\b"
    rf"|\bphone's (?:got |lost )?(?:no |without )?{_NETWORK}\b"
    rf"|\b(?:no|without|lost|any|zero) {_NETWORK}\b[^,;.]{{0,24}}\bphone\b"
    r"|\bphone (?:(?:just|always|often|usually) )*(?:dies|drops out|cuts out|goes (?:dead|off|flat)"
    r"|won't (?:work|ring|call)|(?:doesn't|does not|didn't) (?:work|ring|call|connect))\b"
    r"|\bphone(?:'s| is) (?:switched |turned )?(?:off|flat|charging|useless|no use|in (?:the|my))\b"
    r"|\b(?:can't|cannot|can|could|i'll|we'll|i will|we will|should|must) phone\b"
    r"|\b(?:left|forgot|lost) (?:my|the|our) phone\b"
)


def _named_format(text: str) -> str | None:
    """The one format that is named; of several the one in use, or none."""
    text = _PHONE_AS_TOOL.sub(" ", text)
    found = {name: match for name, pattern in _FORMATS if (match := _last(pattern, text))}
    if "aps-c 1.6" in found:
        found.pop("aps-c", None)  # the same camera, said more closely
    if len(found) > 1:
        found = {
            name: match
            for name, match in found.items()
            if not _DENIED.search(text[: match.start()])
        }
    if len(found) > 1:
        in_use = {
            name: match for name, match in found.items() if _IN_USE.search(text[: match.start()])
        }
        found = in_use if len(in_use) == 1 else {}
    return next(iter(found), None)


def _last(pattern: re.Pattern[str], text: str) -> re.Match[str] | None:
    last = None
    for match in pattern.finditer(text):
        if not is_wished(text[: match.start()]):
            last = match
    return last


def read_camera(draft: Draft) -> None:
    """Sensor format and megapixels."""
    named = _named_format(draft.text)
    if named is not None:
        draft.note("camera_format", named)
    for quantity in draft.free("mp"):
        if quantity.is_range:
            draft.refuse(quantity)
        else:
            draft.put("megapixels", quantity.value, quantity)
    for quantity in draft.free("x"):
        draft.claim(quantity)
