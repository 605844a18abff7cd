"""A message in one spelling for the danger rules: sentences of plain words, slips mended."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Mapping
from typing import Final

from bot.dialogue.folding import LONGEST_TEXT
from bot.dialogue.one_letter import cuts

_SIGNS: Final = str.maketrans(dict.fromkeys("‘’‚‛′`´ʹʼ", "'") | dict.fromkeys("‐‑‒–—−_/", " "))
_STOP: Final = re.compile(r"[.!?]+(?!\d)|[;:\r\n()]+|\.{2,}")
_COMMA: Final = re.compile(r",(?!\d)")
_OTHER: Final = re.compile(r"[^\w',.\n ]+")
_WORD: Final = re.compile(r"[^\s]+")

#: Short forms with or without their apostrophe.
_SHORT: Final[Mapping[str, str]] = {
    **{
        f"{verb}{ending}": f"{full} not"
        for verb, full in {
            "do": "do",
            "does": "does",
            "did": "did",
            "is": "is",
            "are": "are",
            "was": "was",
            "were": "were",
            "has": "has",
            "have": "have",
            "had": "had",
            "wo": "will",
            "would": "would",
            "could": "could",
            "should": "should",
        }.items()
        for ending in ("nt", "n't", "n")
        if f"{verb}{ending}" not in {"don", "won", "haven", "shouldn", "wasn", "hasn"}
    },
    "can't": "cannot",
    "cant": "cannot",
    "cnt": "cannot",
    "cann't": "cannot",
    "ain't": "is not",
    "aint": "is not",
    "im": "i am",
    "ive": "i have",
    "id": "i would",
    "hes": "he is",
    "shes": "she is",
    "theyre": "they are",
    "theyve": "they have",
    "weve": "we have",
    "youre": "you are",
    "its": "it is",
    "thats": "that is",
    "theres": "there is",
    "waters": "water is",
    "whats": "what is",
    "wheres": "where is",
    "someones": "someone is",
    "somebodys": "somebody is",
    "gonna": "going to",
    "wanna": "want to",
    "gotta": "got to",
    "tryna": "trying to",
    "u": "you",
    "r": "are",
    "pls": "please",
    "plz": "please",
    "noone": "nobody",
    "no-one": "nobody",
    "creak": "creek",  # dictated
    "crick": "creek",
    "thru": "through",
    "prolly": "probably",
    "headtorch": "headlamp",
    "bf": "boyfriend",
    "gf": "girlfriend",
}
_ENDINGS: Final = (
    ("n't", " not"),
    ("'s", " is"),
    ("'re", " are"),
    ("'ve", " have"),
    ("'ll", " will"),
    ("'d", " would"),
    ("'m", " am"),
    ("in'", "ing"),
)
#: Several words heard or typed as others.
_PHRASES: Final = tuple(
    (re.compile(pattern), replacement)
    for pattern, replacement in (
        (r"\bno one\b", "nobody"),
        (r"\bcan not\b", "cannot"),
        (r"\bable to not\b", "cannot"),
        (
            (
                r"^(?:were|where) (?=lost|stuck|cold|freezing|shivering|trapped|stranded"
                r"|caught|soaked"
                r"|both|at the (?:lip|edge|top)|on (?:the|top))"
            ),
            "we are ",
        ),
        (r"\bweighed (?=out|across|in\b|into|over|through)", "wade "),
        (
            (
                r"\blightening (?=over|behind|near|strik|bolt|flash|everywhere|far|close|hit"
                r"|in the sky"
                r"|in the distance|above|across|storm|and thunder|$)"
            ),
            "lightning ",
        ),
        (r"\b(thunder|and|saw|see|of|is) lightening\b", r"\1 lightning"),
        (r"\bhead (?=torch)", "head"),
        (r"\bunder water\b", "underwater"),
        (r"\bflash light\b", "flashlight"),
        (r"\bhead light\b", "headlamp"),
        (r"\bhead lamp\b", "headlamp"),
        (r"\bwater fall(s?)\b", r"waterfall\1"),
        (r"\bhead count\b", "headcount"),
    )
)

#: Words that the rules hang on; a slip of one letter is mended to them. A list of its own, since
#: the networks were trained on what these rules find: another way of mending needs them anew.
KEY_WORDS: Final = (
    *("thunder", "thunderstorm", "lightning", "rumbling", "shivering", "hypothermia", "freezing"),
    *("unconscious", "bleeding", "breathing", "broken", "ankle", "twisted", "sprained", "injured"),
    *("drowning", "slipped", "stuck", "trapped", "swept", "missing", "friend", "rescue"),
    *("ambulance", "helicopter", "water", "river", "creek", "stream", "current", "rising"),
    *("brown", "muddy", "flooding", "flood", "railing", "fence", "barrier", "climb", "climbing"),
    *("scramble", "wading", "standing", "crossing", "overhang", "waterfall", "behind", "curtain"),
    *("trail", "headlamp", "flashlight", "upstream", "downstream", "fingers", "answering"),
    *("underwater", "icicles", "coming", "dark", "lost", "fell", "edge", "wade", "numb", "cliff"),
    *("chattering", "swollen", "closure", "closed", "ignore", "dislocated"),
)
#: Real words that are one letter from a key word and stay what they are.
_REAL_WORDS: Final = frozenset(
    """
    ambulances angle anker ankles anklet barnier baron barrera barrie barriers behinds biron
    bleeping blending blown boron bowen bown bowne brawn breaching breeding broke broker bron
    bronc bronn bronx brony brooke broun brow browne browns brows bryon byron calif certain
    chartering cheek claim claiming clattering cliffe cliffs clift climbs clime clojure cloned
    close closer closes closet closures cloture coding coking combing comings cooing
    coping coring costed creak cree creed creeks creel creep creme crepe crete crewe crossings
    cuming currant curren currents curtail curtains curtin darko darks dislocate downing
    droning drownings edged edger edges faried feces fella fells fenced fencer fences fiend
    fiends finders finger flashlights fleshlight floods floof floor flooring floyd food foods
    freeing freund fried frieda friends fringes headlamps helicopters hypothermic icicle
    ignored ignores indore injure injures insured inured lightening lighting maddy massing
    messing mission misting misusing mudd mundy numbs overhand overhangs raiding railings
    raining raisin raising rambling raver recuse rescued rescuer rescues resume rider riding
    rifling riker riling rinsing riper riser risings risking rive riven rivera rivero rivers
    rives rivet roiling roisin rover rumblings sanding scrabble scrambled scrambler scrambles
    scream sept septa shipped shuck sipped skipped slapped slept slipper snipped snuck
    sprinted stack staining standin standings stanning steam steams steamy stick stock
    strained stranding streak streams struck stucky stunk suck sucka sucks sucky sweat sweep
    sweet swett tail tails tamil tapped terai thunders thunderstorms traci trails train trait
    trappe trapper trawl trial trill tripped twister ustream wadding waded wades wafer wager
    waging waite waiter waker waking walter waning warde warding waring waste waster
    waterfalls waters watery waver waving waxing
    """.split()  # noqa: SIM905  # a list of words reads better in lines
)


_MENDED: Final[Mapping[str, str]] = {
    short: word for word in KEY_WORDS for short in cuts(word) if len(short) >= 4
}


def _mend(word: str) -> str:
    """The key word that is one slip away: a letter too few, too many, wrong, or two swapped."""
    if len(word) < 4 or word in _REAL_WORDS or not word.isalpha():
        return word
    for short in cuts(word):
        key = _MENDED.get(short)
        if key is not None and key[0] == word[0]:
            return key
    return word


def _plain(word: str) -> str:
    short = _SHORT.get(word)
    if short is not None:
        return short
    for ending, full in _ENDINGS:
        if word.endswith(ending) and len(word) > len(ending):
            return _mend(word[: -len(ending)]) + full if ending != "in'" else word[:-1] + "g"
    return _mend(word.strip("'"))


def sentences(text: str) -> tuple[str, ...]:
    """The sentences of a message in one spelling.

    Args:
        text: any text; cut at `LONGEST_TEXT` characters.

    Returns:
        Sentences without their stops: lower case, words parted by one space, commas as words of
        their own, short forms written out ("can't" is "cannot", "he's" is "he is").
    """
    plain = unicodedata.normalize("NFKC", text[:LONGEST_TEXT].translate(_SIGNS)).casefold()
    plain = _COMMA.sub(" , ", _OTHER.sub(" ", _STOP.sub("\n", plain)))
    said = (_sentence(piece) for piece in plain.split("\n"))
    return tuple(sentence for sentence in said if sentence)


def _sentence(piece: str) -> str:
    sentence = " ".join(_plain(word) for word in _WORD.findall(piece))
    for pattern, replacement in _PHRASES:
        sentence = pattern.sub(replacement, sentence)
    return sentence
