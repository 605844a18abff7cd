"""English as it is typed with one thumb, in full: `u`, `wat`, `2 dark`, `its 6m n im 10m off`."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.phrases import straight
from bot.dialogue.reading.rewriting import Rewriting

_TOO: Final = (
    r"(?:dark|bright|white|long|short|slow|fast|much|far|close|near|soft|blurry|small|big|wide"
    r"|high|low|late|early|hard|milky|smooth|sharp|light|strong|busy|shaky)"
)
_TO: Final = (
    r"(?:the top|get|go|make|see|be|do|use|set|take|put|change|climb|look|try|show|keep"
    r"|the (?:left|right|edge))"
)
_IN: Final = (
    r"blink|shoot|tak|look|com|go|gett|mov|do|try|noth|someth|anyth|stand|flow|runn|shin|flash"
    r"|us|work|play|sitt|hold|poke|pok|mak|sett|zoom|shak|walk|happen|be"
)
_WORDS: Final = {
    "yh": "yeah", "prolly": "probably", "probs": "probably",
    "wat": "what", "wut": "what", "wot": "what",
    "wats": "what's", "wuts": "what's", "whats": "what's", "wher": "where", "wheres": "where's",
    "hows": "how's", "watr": "water", "wata": "water", "u": "you", "ur": "your", "pls": "please",
    "plz": "please", "cuz": "because", "coz": "because", "cos": "because", "rn": "right now",
    "dunno": "don't know", "idk": "don't know", "wanna": "want to", "smth": "something",
    "sumthin": "something", "sumthing": "something", "somethin": "something", "rite": "right",
    "abt": "about", "bout": "about", "ppl": "people", "tripd": "tripod", "thru": "through",
    "tho": "though", "thro": "through", "lil": "little", "gud": "good", "nuthin": "nothing",
    "nothin": "nothing", "teh": "the", "hav": "have", "wen": "when", "becuase": "because",
    "cld": "could",
    "shld": "should", "wld": "would", "ive": "i've", "im": "i'm", "theres": "there's",
    "thats": "that's", "dont": "don't", "doesnt": "doesn't", "cant": "can't", "isnt": "isn't",
    "didnt": "didn't", "havent": "haven't", "wont": "won't", "wasnt": "wasn't",
    "arent": "aren't", "fone": "phone", "tripid": "tripod", "shuter": "shutter",
}  # fmt: skip
#: Words that only colour what is said.
_FILLERS: Final = r"(?:lol|lmao|rofl|af|ngl|tbh|haha+|hehe+|omg|bruh|bro|fam|lmk|xd|imo|smh)"
_IN_FULL: Final = Rewriting(
    (
        (re.compile(rf"(?<=\w)[ ,]+{_FILLERS}\b(?!')"), ""),
        (re.compile(rf"\b{_FILLERS}\b[ ,]+(?=\w)"), ""),
        (re.compile(rf"(?<!\S)2+ (?={_TOO}\b)"), "too "),
        (re.compile(rf"(?<=[a-z] )2 (?={_TO}\b)"), "to "),
        (
            re.compile(
                r"(?<!\bat )(?<!\bf )(?<!\bnd )(?<!\biso )(?<!\bby )(?<!til )(?<!till )(?<=[a-z] )4"
                r" (?=(?:a|the|my|this|that|me|it)\b)"
            ),
            "for ",
        ),
        (re.compile(r"(?<=[\w,] )(?:n|&)(?= (?!\d)[a-z'])"), "and"),
        (
            re.compile(
                r"(?<=[a-z] )r(?= (?:fine|ok|good|clean|u|you|we|they|there|the|all|not|white"
                r"|too|so)\b)"
            ),
            "are",
        ),
        (re.compile(r"\bw/o\b"), "without"),
        (re.compile(r"(?<=[a-z] )w/? (?=(?:a|my|the|dad|mum|mom|an)\b|\w+s\b)"), "with "),
        (re.compile(rf"\b({_IN})in'?(?= |$|[.,!?])"), r"\1ing"),
        (
            re.compile(
                r"\bits(?= (?:like|about|around|a|an|the|so|too|not|only|just|maybe|probably|all"
                r"|still|now|really|very|pretty|quite|kinda|getting|gone|cloudy|sunny|raining|dark"
                r"|bright|overcast|\d))"
            ),
            "it's",
        ),
    )
)
_WORD: Final = re.compile(r"(?<![\w'/])[a-z]+(?![\w'/])")


def in_full(text: str) -> str:
    """The message with its shortened words in full; one that has none stays as it was typed.

    Args:
        text: as typed, in English.
    """
    said = straight(text).lower()
    full = _WORD.sub(lambda match: _WORDS.get(match.group(), match.group()), said)
    full = _IN_FULL.of(full)
    return text if full == said else full
