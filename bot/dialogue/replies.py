"""A reply to an open question: which of its options a number or words name."""

from __future__ import annotations

import re
from collections.abc import Mapping
from functools import cache
from typing import Final

from bot.dialogue.all_well import all_well
from bot.dialogue.facts import Facts, Symptom
from bot.dialogue.questions import Asked
from bot.dialogue.reading import number_answer, read
from bot.dialogue.reading.edges import edges_told
from bot.dialogue.reading.foreign import glossed
from bot.dialogue.reading.not_known import is_no_answer
from bot.dialogue.texts import TEXTS, speaking
from bot.dialogue.texts.languages import spoken_language

_YES: Final = frozenset({"yes", "y", "yeah", "yep", "ok", "sure"})
_NO: Final = frozenset({"no", "n", "nope", "none", "nothing"})
_YES_VALUES: Final = frozenset({"yes", "delete"})
_NO_VALUES: Final = frozenset({"no", "nothing", "not_yet", "keep"})
#: Longer messages tell more than one option (own rule) [words].
_MOST_WORDS: Final = 9

#: "no sky", "not all of it", "they don't move": what is denied names no option.
_DENIED: Final = re.compile(
    r"\b(?:no|not|without|isn t|aren t|don t|doesn t)\b"
    r"(?: (?:more|all|any|longer))?(?: of)?(?: \w+){0,2}"
)
_ALL_WELL: Final = re.compile(r"\ball (?:gone|good|clean|clear|fine|covered)\b|\bany ?more\b")
_FILLERS: Final = re.compile(
    r"\b(?:all right|they|it|its|the|there|is|are|s|re|i|see|just|now|at|so|but)\b"
)
#: Words of a complaint that hold an option's words by chance.
_COMPLAINT: Final = re.compile(
    r"\b(?:blur|smear|soft|focus|sharp)\w*"
    # the picture as a whole, and no corner of it
    r"|\b(?:photo|picture|image|shot)s?(?: \w+){0,4}? too (?:bright|light|dark)\b"
    r"|\btoo (?:bright|light|dark)(?: \w+){0,2}? (?:photo|picture|image|shot)s?\b"
)

#: What may be denied of leaves without an option's own words.
_MOVES: Final = r"\b(?:wind|breeze|moving|movement)\b"
#: Facts that words of an option are read as too; any other makes a message more than a reply.
ABOUT_OPTIONS: Final = frozenset({"blink", "wind", "symptoms", "section"})

_NOTHING_BUT: Final = re.compile(r"\bnothing but\b", re.IGNORECASE)
_NOTHING: Final = r"nothing|none|gone|clean|clear|stopped|never blinks?"
_DOTS: Final = r"dots?|points?|specks?|sparkles?|pinpricks?"
#: "A bit in the middle", without its fillers.
_PART: Final = r"(?:bit|little)(?: of)?(?: +(?:in|on|near))? {2,}(?:middle|left|right|top|lip|foam)"
_PATCHES: Final = rf"patch(?:es|y)?|blobs?|areas?|parts|bits|places|some|{_PART}"
_SHEET: Final = r"all|whole|everything|sheet|entire|most|everywhere"
_BLINKS: Final = {
    "nothing": _NOTHING,
    "dots": _DOTS,
    "patches": _PATCHES,
    "sheet": _SHEET,
}

_LIGHT: Final = {
    "yes": r"same|still|unchanged|yes|no change",
    "darker": r"darker|dimmer|clouds?|clouded|shade|shady|duller",
    "brighter": r"brighter|lighter|sun|sunny",
    "left": r"left|leaving|gone|home|car|hotel|over|packed|walking",
}
#: White that is lost, and where it is denied.
_LOST: Final = re.compile(
    r"\b(?:white|bright|paper|sheet|clipped|clips|overexposed|blown|burn(?:s|t|ed)?|washed)\b"
)
_NOT_LOST: Final = re.compile(
    r"\b(?:no|not|nothing|none|never|isn't|aren't|doesn't|without)(?: \w+){0,2}? (?:white|bright"
    r"|clipped|overexposed|blown|burnt|washed)\b"
)
#: Of these, "clean" and "gone" say nothing of the warning.
_NOT_OF_THE_WARNING: Final = re.compile(
    r"\b(?:edges?|borders?|corners?|sides?|frames?|lens|glass|filter|branch(?:es)?|twigs?|sky"
    r"|wind|breeze|leaves|ferns?"
    r"|spray(?: is| gets| goes| comes| blows)*(?: all)? (?:everywhere|over|on everything)"
    r"|everything(?: is| gets)* (?:wet|soaked|dripping))\b"
)
#: What blinks, in front of where it stands.
_SPOTS: Final = r"(?:(?:some|a few|only|just|small|big|little) )*(?:patches|dots|specks|blobs)"
#: "Patches on the left side", in front of all else.
_AT_A_SIDE: Final = re.compile(
    rf"^{_SPOTS} (?:on|in|at|along|near|to) (?:the |its )?(?:(?:left|right|upper|lower|other) )?"
    r"(?:sides?|edges?|borders?|corners?)\b"
)
#: The same anywhere in the frame, as a whole message.
_PLACED: Final = re.compile(
    rf"\W*{_SPOTS} (?:on|in|at|along|near|to|around|down|up)\b[^?]*$", re.IGNORECASE
)
#: By question and option: words that name it.
_HEARD: Final[Mapping[str, Mapping[str, str]]] = {
    "top": {
        "covered": r"leaf|leaves|branch(?:es)?|trees?|foliage|rocks?|moss|covered|clean|clear|fine"
        r"|good|nothing|dark",
        "sky": r"sky|white|bright",
        "lip": r"lip|touch(?:es|ing)?|edge",
    },
    "sides": {
        "clean": r"clean|clear|nothing|none|fine|good|empty|tidy",
        "twig": r"twigs?|trunks?|branch(?:es)?|sticks?|logs?|leaf|leaves|ferns?|grass",
        "bright": r"bright|white|foam|sunny|light|sky",
    },
    "anchor": {
        "clear": r"rocks?|logs?|boulders?|stones?|clear|whole|good|yes",
        "none": r"nothing|none|empty|water only|only water",
        "cut": r"cut|half|cropped",
    },
    "blink": _BLINKS,
    "blink_again": _BLINKS,
    "screen_says": _BLINKS,
    "phone_again": {
        "nothing": r"nothing|none|fine|good|great|ok|okay|better|perfect|no",
        "white": r"white|blown(?: out)?|burnt|burned|bright|clipped|still",
        "dark": r"dark",
        "mush": r"mush|soup|milk|milky|smear\w*|no texture|blurred|blurry",
    },
    "leaves": {
        "no": r"still|calm|windless|quiet",
        "yes": r"yes|mov(?:e|es|ing)|little|bit|lot|slightly|windy|swaying|they do",
    },
    "next": {
        "again": r"another (?:frame|one|shot)|again|same|one more|more",
        "other_lens": r"lens|longer|wider|tele|zoom",
        "finish": r"finish(?:ed)?|done|end|stop|home|enough|leave|leaving",
    },
    "too_near": {
        "farther": r"go back|further|farther|move|walk",
        "section": r"section|part|detail|crop|stay",
    },
    "sky_gap": {"moved": r"moved?|tilt(?:ed)?|done", "bracket": r"bracket(?:ed|ing)?|two frames"},
    "border": {
        "yes": r"meant|intended|purpose|keep|wanted",
        "no": r"mistake|intruder|unwanted|accident|out",
        "none": r"nothing|none|empty|see no",
    },
    "glass": {
        "dry": r"dry|clean|clear|nothing|none|no",
        "drops": r"drops?|wet|droplets?|spots?|water",
    },
    "light_still": _LIGHT,
    "light_still_frame": _LIGHT
    | {"clock": r"clock|just (?:now|taken|took)|wrong (?:time|date|hour)"},
    "area": {"water": r"water|foam|fall", "sky": r"sky|clouds?", "neither": r"neither|none"},
}


#: "Grey sky, drizzle, all even light" tells of the day, not of the edge.
_WEATHER: Final = re.compile(
    r"\b(?:drizzl\w*|rain\w*|overcast|cloudy|dull|(?:even|flat|soft) light)\b"
)


def chosen(asked: Asked, text: str) -> str | None:
    """The option that a reply names by its number or in its own words, None for anything else.

    The options' own words are those of the language that is being spoken; so is a bare yes or no.
    """
    said = dict.fromkeys((text, glossed(text, spoken_language())))  # in English they are one
    return next((value for one in said if (value := _chosen(asked, one))), None)


def _chosen(asked: Asked, text: str) -> str | None:
    number = number_answer(text)
    if number is not None:
        return asked.options[number - 1] if 1 <= number <= len(asked.options) else None
    said = bare(text)
    named = _option_words(asked, spoken_language()).get(said)
    if named is not None:
        return named
    if said in _YES:
        return next((value for value in asked.options if value in _YES_VALUES), None)
    if said in _NO:
        return _denial(asked)
    return None


@cache
def _option_words(asked: Asked, language: str) -> Mapping[str, str]:
    """The options of a question by their own words, in the language that is being spoken."""
    with speaking(language):
        texts = [TEXTS[key] for key in asked.option_keys]
    named: dict[str, str] = {}
    for number, (value, text) in enumerate(zip(asked.options, texts, strict=True), 1):
        for word in (bare(text), bare(value.replace("_", " "))):
            named.setdefault(word, value)
            named.setdefault(f"{number} {word}", value)  # "1 no", as it is printed
    return named


def shown(asked: Asked, text: str) -> str | None:
    """The option that a frame has shown: leaves that came out smeared do move."""
    if asked.name != "leaves" or text.strip().endswith("?"):
        return None
    return "yes" if read(text).known() == {"symptoms": (Symptom.LEAVES_SMEARED,)} else None


def meant(asked: Asked, text: str) -> str | None:
    """The option that other words name: "it's clean", "just dots"; None unless it is only one."""
    text = _NOTHING_BUT.sub("all", text)  # "nothing but white" is a sheet of it
    if asked.name in {"top", "sides", "anchor"} and read(text).blink is not None:
        return None  # "took one, nothing blinks" is of the water
    if asked.name in OF_WATER and is_no_answer(text):
        return None  # "no, we're all fine" is of people
    return all_well(asked.name, bare(text)) or _worded(asked, text)


#: Questions of the white water: who is well says nothing of it.
OF_WATER: Final = frozenset({"blink", "blink_again", "screen_says", "phone_again"})


def _worded(asked: Asked, text: str) -> str | None:
    """The one option whose own words a reply has."""
    said = bare(text)
    heard = _HEARD.get(asked.name)
    long = len(said.split()) > _MOST_WORDS or re.search(r"\d", said)
    too_much = long or _is_of_another_thing(asked, said, text)
    lost = heard is _BLINKS and is_lost(said)
    if heard is None or too_much or text.strip().endswith("?") or _COMPLAINT.search(said):
        return None
    edge = asked.name == "top" and "sky" in said and not _WEATHER.search(said)
    sky = {"light"} if edge else set()  # "a bit of white sky"
    facts = read(text)
    if set(facts.known()) - ABOUT_OPTIONS - sky:
        return None
    if asked.name == "leaves" and facts.wind is not None:
        return "yes" if facts.wind else "no"
    if heard is _BLINKS and _is_not_of_the_warning(facts, said):
        return None
    told = _ALL_WELL.sub("clean" if asked.name != "leaves" else "still", _clauses(text))
    left = _FILLERS.sub(" ", _DENIED.sub(" ", told)).strip(" ;")
    if not left:
        return _denial(asked) if _named(heard, told) or re.search(_MOVES, told) else None
    named = _named(heard, left)
    return named[0] if len(named) == 1 and not (lost and named[0] == "nothing") else None


def _is_not_of_the_warning(facts: Facts, said: str) -> bool:
    """Whether a message tells of wind, edges or spray; where patches stand tells of no edge."""
    left = _AT_A_SIDE.sub("", said)
    return facts.wind is not None or _NOT_OF_THE_WARNING.search(left) is not None


def places_what_blinks(text: str) -> bool:
    """Whether a message names what blinks and where: "patches on the left side" is a reply.

    Args:
        text: in English.
    """
    return _PLACED.match(text) is not None


def is_lost(said: str) -> bool:
    """Whether the white of the water is gone, whatever else is nothing: "a bright nothing"."""
    return _LOST.search(said) is not None and not _NOT_LOST.search(said)


def _is_of_another_thing(asked: Asked, said: str, text: str) -> bool:
    """A ladder that is done is no end of the walk, white water no white sky."""
    if asked.name == "next":
        return "ladder" in said
    if asked.name in {"top", "sides"} and (told := edges_told(text)) and asked.name not in told:
        return True  # "leaves at the top" is no answer of the sides
    if asked.name == "phone_again":
        return "sky" in said  # "the sky is super bright" is not of the water
    return asked.name == "top" and "water" in said and "sky" not in said


def _named(heard: Mapping[str, str], said: str) -> list[str]:
    return [value for value, words in heard.items() if re.search(rf"\b(?:{words})\b", said)]


def says_yes_or_no(text: str) -> bool:
    """Whether a message is a bare yes or no."""
    return bare(text) in _YES | _NO


def _denial(asked: Asked) -> str | None:
    return next((value for value in asked.options if value in _NO_VALUES), None)


def _clauses(text: str) -> str:
    """The words in lower case, with a semicolon where a sign parts them."""
    plain = re.sub(r"['’]", " ", text.casefold())
    return " ".join(re.sub(r"[^\w\s]", " ; ", plain).split())


def bare(text: str) -> str:
    """The words alone, in lower case."""
    return " ".join(re.sub(r"[^\w ]", " ", text.casefold()).split())


#: Questions about what stands in the frame.
_OF_THE_FRAME: Final = frozenset(
    {"top", "sides", "anchor", "blink", "blink_again", "screen_says", "border", "sky_gap", "area"}
)


def names_part_of_frame(asked: Asked, text: str) -> bool:
    """Whether a message has words of an option of a question about the frame."""
    heard = _HEARD.get(asked.name, {}) if asked.name in _OF_THE_FRAME else {}
    return bool(_named(heard, bare(text)))
