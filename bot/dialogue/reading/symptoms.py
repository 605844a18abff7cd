"""Complaints of a frame that was taken, in the many words that people find for them."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.facts import Symptom
from bot.dialogue.reading.draft import Draft
from bot.dialogue.reading.needed import may_match, needed_by
from bot.dialogue.reading.phrases import any_of, exactly
from bot.dialogue.reading.soft_words import LOW_CORNERS, SOFT, SOFTNESS
from bot.dialogue.reading.symptom_words import COMPLAINTS, LEAF

_ALL_SOFT: Final = exactly(
    rf"(?:a bit |bit |all |quite |very |still )*{SOFT}(?: pictures?| again)?"
)
_DENIED: Final = re.compile(
    r"\b(?:no|not|isn't|aren't|without|doesn't|don't|never|no more|nothing|any|less|least|minimum"
    r"|minimal|avoid|if"
    r"|stopped|stops|no longer|kill\w*|cut(?:s|ting)?|remov\w+|reduc\w+|gets? rid of"
    r"|got rid of)(?: (?:the|most|all|of|too|really|look|looks|it|that|so|more|\w+ing))*,? ?$"
)
#: These hold a "no" of their own: "no texture", "no motion".
_OWN_DENIAL: Final = re.compile(r"(?:no|without|any)\b")
#: Words of a complaint that are a wish when somebody asks for them.
_WISHABLE: Final = frozenset({Symptom.NO_TEXTURE, Symptom.TOO_FROZEN})
_WISH: Final = any_of(
    "wants?|wanted|like to|i'd like|id like|love|prefer|make it|please|go for|going for|aim|after"
    "|get|look for|looking for|can it be|could it be|can (?:i|we|you) (?:make|have)"
)
_PLAIN_COMPLAINT: Final = any_of("too|mush|soup|cotton wool|lost|looks|came out|like ice")
#: "Dense forest, pretty dark" is the place; these are the frame.
_FRAME_DARK: Final = any_of("too (?:dark|dim)", "under-?exposed")


#: "The glare is gone now".
_NO_MORE: Final = re.compile(
    r"^(?:(?:'s| is| are| has| have)(?: all| now| nearly| mostly)* (?:gone|away|no more|over)"
    r"|(?: all| just| finally)* (?:went(?: away)?|goes(?: away)?|disappear\w*|vanish\w*|died))"
    r"(?=\W*$|[,.;!]| now\b)"
)


def _holds(symptom: Symptom, pattern: re.Pattern[str], text: str) -> bool:
    return any(
        (symptom in _WISHABLE and _OWN_DENIAL.match(match.group()))
        or not _DENIED.search(text[: match.start()])
        for match in pattern.finditer(text)
        if not _NO_MORE.match(text[match.end() :])
        if symptom not in _WISHABLE or not _is_wished(text, match)
    )


#: "Water frozen solid but i wanted silk": what stands behind the "but" is the wish.
_BUT: Final = re.compile(
    r"\bbut\b|\bthough\b|[,;.] ?(?:and )?i(?:'d| would)? (?:really )?(?:want|wanted|prefer|like"
    r"|rather)\b"
)


#: "I not want this": no wish.
_NOT_WISHED: Final = re.compile(
    r"\b(?:not|n't|don't|dont|didn't|doesn't|never|nobody|not what i|isn't what i)(?: \w+)?"
    r" (?:wants?|wanted|like|love|prefer|was after|am after|i'm after)\b"
)


def _is_wished(text: str, match: re.Match[str]) -> bool:
    """Whether words of a complaint are what the person asks for."""
    if _PLAIN_COMPLAINT.search(text):
        return False
    parted = _BUT.search(text, match.end())
    said = _NOT_WISHED.sub("", text[: parted.start()] if parted else text)
    return bool(_WISH.search(said))


def _softness(text: str) -> list[Symptom]:
    """Where the frame is soft; all of it only when no part is named."""
    text = LOW_CORNERS.sub("foreground", text)
    parts = [symptom for symptom, pattern in SOFTNESS if _holds(symptom, pattern, text)]
    if not parts and _ALL_SOFT.match(text):
        return [Symptom.SOFT_ALL]
    if len(parts) > 1 and Symptom.SOFT_ALL in parts:
        parts.remove(Symptom.SOFT_ALL)
    return parts


#: "The sun's a pale disc" is the sky; "is 1/4 too long?" asks; "ferns up close" are the front.
_FOOD: Final = (
    r"(?:soup|porridge|milk|cream|custard|popcorn|yogh?urt|milk ?shakes?|shakes?|candy ?floss"
    r"|cotton candy"
    r"|marshmallows?|(?:rice )?pudding|ice ?cream|treacle|jelly)"
)
_NO_FAULT: Final = re.compile(
    r"\b(?:for|some|hot|warm|cold|my|our|her|his|ate|eat|eating|had|have|having|drink\w*|with"
    r"|cup of"
    rf"|bowl of|mug of|glass of|pint of|flask of|buy|bought|chocolate|tomato|chicken|pea|lentil"
    rf"|strawberry|sell|sells|oat|or|and|more|nice|good|lovely|the) {_FOOD}\b"
    rf"|\b{_FOOD} (?:in (?:the|a|my|our) (?:flask|thermos|mug|pot|bag|van)|at the|for (?:lunch|tea"
    r"|us"
    rf"|breakfast|me)|on the (?:stove|fire))"
    r"|\bto the (?:left|right)\b"
    # foam in an eddy is no drop on the glass
    r"|\b(?:go(?:es|ing)?|went|turn\w*|spin\w*|swirl\w*|runs?|running|drift\w*|float\w*|moves?)"
    r"(?: (?:round|around|about|and round))* in (?:\w+ )?(?:circles?|rings?)\b"
    r"|\b(?:fingers?|hands?|toes|feet|nose|thumbs?|ears|face|i|we|i'm|we're)"
    r"(?: (?:am|are|is|all|so|half|nearly|almost|totally|absolutely|completely))*"
    r" (?:frozen|freezing)(?: (?:stiff|solid|through))?\b"
    r"|\b(?:sensor|camera|tripod|screen|bag|lens|phone|path|ledge|spot|place|group|car ?park"
    r"|display"
    r"|writing|letters?|print|dog|steps?|creek|stream|bridge|pool)(?:'s| is| are| looks)?"
    r"(?: \w+){0,2} (?:tiny|small|little)\b"
    r"|\b(?:he|she|they|i|i'm|she's|he's|face|wife|husband|friend|mate|son|daughter|kid|sun)"
    r"(?:'s| is| are| am| looks?| looked| went| gone)?(?: \w+){0,2} pale\b"
    r"|\bsk(?:y|ies)(?:'s| is| are| was| so| all| still| now)*(?: \w+)? blue\b"
    r"|\b(?:trees?|branches|leaves) (?:lean|leaning|hang|bend|tip)\w*(?: in)? over\b"
    r"|\b(?:tiny|small|little|wee)\b[^.;!?]{0,24}\bfall_height_m\b"
    r"|\b(?:sun|moon)(?:'s| is| like)?(?: just| only)? an? (?:\w+ ){0,2}dis[ck]\b"
    r"|(?:^|[.;!,] ?)(?:is|are|would|will|isn't|won't) (?:it |that |this )?(?:\w+ ){0,2}?"
    r"(?:shutter_s|f_number|iso|that|it|this) (?:be )?too \w+(?=[^.;!]*\?)"
)
_MUSHY_LEAVES: Final = re.compile(
    rf"\b({LEAF})(?: (?:on|to|in|at|by) the \w+)? (?:(?:are|is|all|just|went|turned|to|into|look"
    r"|like) )*(?:mush\w*|soup|porridge)\b"
)
_MOVED: Final = re.compile(r"\b(?:smear\w*|smudg\w*|streak\w*|moved|moving|wind\w*|doubled?)\b")
_FAR_LEAVES: Final = re.compile(
    rf"\b{LEAF} (?:behind(?: (?:it|the falls?))?|at the back|in the (?:back|background|distance))\b"
)
_CLOSE_LEAVES: Final = re.compile(
    rf"\b{LEAF} (?:up close|up front|close (?:by|up|to me)|in front|at the front|nearest(?: me)?"
    r"|next to me|in the foreground|at my feet)\b"
)


_PARTS: Final = re.compile(r"[,;.!] ?|\b(?:and|but|while)\b")
_OF_LEAVES: Final = re.compile(rf"\b{LEAF}\b")


#: White sky is a gap at the top, no water that lost its texture.
_WHITE_SKY: Final = re.compile(r"\bsky\b[^.;]{0,24}\bwhite\b|\bwhite\b[^.;,]{0,16}\bsky\b")
_WATER: Final = any_of("water|falls?|cascade|foam|stream|curtain|main")


_COMPLAINTS: Final = tuple(
    (symptom, pattern, needed_by(pattern)) for symptom, pattern in COMPLAINTS
)


def read_symptoms(draft: Draft) -> None:
    """Complaints of a frame, each once, in the order of their table."""
    text = _MUSHY_LEAVES.sub(r"\1 smeared", _NO_FAULT.sub("", draft.skeleton()))
    found = [
        symptom
        for symptom, pattern, needed in _COMPLAINTS
        if may_match(needed, text) and _holds(symptom, pattern, text)
    ]
    if "light" in draft.values and not _FRAME_DARK.search(text):
        found = [symptom for symptom in found if symptom is not Symptom.TOO_DARK]
    if Symptom.JUST_WHITE in found and _WHITE_SKY.search(text) and not _WATER.search(text):
        found.remove(Symptom.JUST_WHITE)
    if Symptom.LEAVES_SMEARED in found and _CLOSE_LEAVES.search(text) and not _MOVED.search(text):
        found.remove(Symptom.LEAVES_SMEARED)
        text = _CLOSE_LEAVES.sub("foreground", text)
    if Symptom.LEAVES_SMEARED in found and _FAR_LEAVES.search(text) and not _MOVED.search(text):
        found.remove(Symptom.LEAVES_SMEARED)
        text = _FAR_LEAVES.sub("background", text)
    if Symptom.LEAVES_SMEARED in found:
        beside = "; ".join(part for part in _PARTS.split(text) if not _OF_LEAVES.search(part))
        found += [part for part in _softness(beside) if part is not Symptom.SOFT_ALL]
    elif Symptom.SOFT_SPOTS not in found:
        found += _softness(text)
    if found:
        draft.note("symptoms", tuple(found))
