"""What takes a danger back: it is denied, long past, only supposed, or happened to a thing."""

from __future__ import annotations

import re
from typing import Final

_DENIALS: Final = frozenset(
    {"not", "no", "never", "nobody", "none", "without", "neither", "nor", "avoid", "cannot"}
)
#: A denial reaches over this many words (own rule).
_REACH: Final = 5
#: Words after which a denial has ended.
_BREAKS: Final = frozenset(
    {",", "if", "but", "and", "so", "because", "that", "then", "while", "when", "though", "until"}
    | {"i", "we", "he", "she", "they", "you", "cause", "cuz", "since", "or else", "there"}
)
#: "can't I just …", "why not …", "isn't it …" ask, they do not deny.
_ASKING: Final = frozenset({"i", "we", "you", "it", "he", "she", "they", "just", "only", "sure"})

_LONG_AGO: Final = re.compile(
    r"\blast (?:year|time|week|month|summer|winter|spring|autumn|season|trip|visit|weekend|\w+day"
    r"|january|february|march|april|may|june|july|august|september|october|november|december)\b"
    r"|\b(?:years?|months?|weeks?|days?) ago\b|(?<!since )\byesterday\b|\bused to\b|\bback in\b"
    r"|\bin (?:19|20)\d\d\b|\bonce (?=i|we|he|she|a|my|had|the)\b|\bthe other day\b"
    r"|\b(?:heard|read|reading|watched|story|stories|news|movie|film|book|article|video|podcast)"
    r" (?:of|about|that|where|how|story|stories)\b|\bthey say\b|\bpeople say\b|\bwhen i was (?:a|\d)"
)
_NOW: Final = re.compile(
    r"\b(?:right now|now|today|still|again|at the moment|this (?:morning|minute|second)"
    r"|(?:seconds?|minutes?|mins?|hours?) ago|just (?:fell|slipped|went|got|saw|heard|now))\b"
)
_SUPPOSED: Final = re.compile(
    r"\b(?:if|in case|unless|suppose|supposing|imagine|whenever|before|until|hopefully)\b(?!.*\bif\b)"
)
#: "not sure if he's breathing", "what do I do if my friend fell in": the thing itself is real.
_REAL_IF: Final = re.compile(
    r"\b(?:sure|know|see|wonder|wondering|ask|tell|check|as|even|do) if (?!it|there|somebody"
    r"|someone|anyone|anybody|one|a |the )"
)
_PERHAPS: Final = re.compile(
    r"\b(?:risk|chance|danger|odds|likelihood|probability) of\b|\bforecast\w*\b|\btomorrow\b"
    r"|\bnext (?:week|month|year|time|weekend)\b|\bprone\b|\bhow (?:do|would|can) (?:i|we|you) "
    r"(?:know|tell|recogni[sz]e|notice|avoid|prevent)\b|\bhow to (?:avoid|recogni[sz]e|tell|prevent)\b"
    r"|\b(?:worried|afraid|scared|nervous) (?:about|of)\b|\b(?:what|which) (?:are|is) the signs?\b"
    r"|\blook(?:s|ed)? like\b(?=.*\bin the (?:frame|picture|photo|shot))"
)
_FINE: Final = re.compile(
    r"\b(?:he|she|they|all|everyone|everybody|both|both of (?:us|them)|we|it|nobody|now)"
    r"(?: (?:is|are|was|were|am|got|all|all are|feels?|both))* (?:\w+ )?"
    r"(?:fine|ok|okay|safe|alright|unhurt|unharmed|back out|out again|dry again|laughing|found)\b"
    r"|\bfalse alarm\b|\bnobody(?: is| was| got)? (?:hurt|injured)\b|\bno harm\b"
    r"|\b(?:he|she|they|we) (?:is|are|got|climbed) (?:safely |straight |right )?(?:back )?out"
    r"(?: of the \w+)?\b(?! of (?:breath|reach))"
)
_I_AM_FINE: Final = re.compile(r"\bi am (?:\w+ )?(?:fine|ok|okay|safe|alright|unhurt|out again)\b")

#: "Is it safe to swim": what stands before is no swimmer.
_ASKS: Final = re.compile(r"(?:safe|ok|okay|fine|alright|allowed|good)\b")

_AUXILIARY: Final = frozenset(
    {"is", "are", "was", "were", "am", "be", "been", "being", "has", "have", "had", "gets", "got"}
    | {"get", "just", "already", "almost", "nearly", "now", "then", "all", "really", "suddenly"}
    | {"keeps", "keep", "kept", "still", "also", "only", "both", "quite", "totally", "completely"}
    | {"simply", "always", "actually", "does", "do", "did", "not", "will", "so", "very", "too"}
    | {"looks", "look", "seems", "a", "bit", "little", "which", "that", "my", "the", "somehow"}
)
_THINGS: Final = frozenset(
    """
    accessories adapter air apps app autofocus background bag bags ball bank bark battery batteries
    bird birds blanks bokeh border borders bottle boulder boulders bow box branch branches bridge
    brightness bubbles bush bushes camera cameras canopy cap caps card cascade cast cliff clip
    cloth cloths cloud clouds colour colours color colors column composition contrast corner
    corners crowd crowds cup curve data deer detail details dial dipper dots drop droplets drops
    dust edge edges exposure eye eyes eyepiece fall falls fern ferns file files filter filters
    flow fly foam focus fog foliage foot foreground frame frames gear glass glasses glove gloves
    gradient grass ground hat heron highlight highlights histogram hood horizon hotshoe image
    images iso it knob lead leaf leaves lens lenses level light lights line lines log logs lupe
    map meter midtones mist moss mosses mount nd noise notebook path patches pattern pebbles
    phone phones picture pictures photo photos plate polariser polarizer pool print rail rails
    rainbow ray rays raw reflection reflections remote river ring rock rocks roof root roots
    screen screens sd sensor shadow shadows shoot shot shots shutter side sides sign silhouette
    sky slab snow softness something sound spot spots spray stabiliser stabilizer stick sticks stop
    stops stone stones strap stream streak streaks stuff subject sun sunlight tap texture texel
    timer tip tone tones trail tree trees tripod trunk trunks twig twigs umbrella vegetation view
    viewfinder vignette wall walls warmth water waterfall wave waves white whites wind wood zoom
    aperture backdrop backpack beam beetle bracket bracketing cable charger colouring contrasts cover
    creek crop curtain dirt door fish flare flower flowers frog glare graph grip haze head hill hint
    insect interest jacket ladder leg legs mat mode mood mountain nothing overhang piece pixel pixels
    plants point points program quality rest ridge road salamander saturation scene section settings
    shade shape sharpness shine sparkle stand step steps stool streaming structure tent thing things
    top towel triangle value values valve video vibration wallet warning cord
    """.split()  # noqa: SIM905  # a list of words reads better in lines
)


class Guards:
    """Looks around what a rule has found.

    Args:
        sentence: the sentence in the one spelling.
        message: all sentences of the message, for what is said later ("she is fine").
    """

    def __init__(self, sentence: str, message: str) -> None:
        self.sentence = sentence
        self._after = message.partition(sentence)[2]
        self._long_ago = bool(_LONG_AGO.search(sentence)) and not _NOW.search(sentence)
        self._perhaps = bool(_PERHAPS.search(sentence)) and not _NOW.search(sentence)

    def take_back(self, match: re.Match[str], *, emergency: bool, by_people: bool) -> bool:
        """Whether what was found is no danger now.

        Args:
            match: what a rule found in the sentence.
            emergency: whether the rule's kind is an emergency; a wish to go to a bad place is
                one also with an "if".
            by_people: whether only people can be in this danger.

        Returns:
            True when it is denied, long past, supposed, over, or about a thing.
        """
        before = self.sentence[: match.start()].split()
        if self._long_ago or _denied(before):
            return True
        if by_people and not _ASKS.match(match.group()) and _is_thing(before):
            return True
        return emergency and (self._perhaps or _supposed(before) or self._is_over(match))

    def _is_over(self, match: re.Match[str]) -> bool:
        """Whether it is said afterwards that they are fine, and nothing follows that."""
        after = self.sentence[match.end() :] + self._after
        found = _FINE.search(after)
        if found is None and re.search(r"\bi\b", self.sentence[: match.end()]):
            found = _I_AM_FINE.search(after)
        return found is not None and not re.match(r"(?: now)? ,? ?but\b|\?", after[found.end() :])


def _denied(before: list[str]) -> bool:
    """Whether a denial stands close before, in the same clause, and is none that asks."""
    following = ""
    for word in reversed(before[-_REACH:]):
        if word in _DENIALS:
            return following not in _ASKING
        if word in _BREAKS and following:
            return False
        if word in _BREAKS and word not in _ASKING:
            return False
        following = word
    return False


def _supposed(before: list[str]) -> bool:
    clause = " ".join(before)
    return bool(_SUPPOSED.search(clause)) and not _REAL_IF.search(f"{clause} ")


def _is_thing(before: list[str]) -> bool:
    """Whether the last noun before, auxiliaries skipped, is a thing."""
    nouns = (word for word in reversed(before) if word not in _AUXILIARY)
    return next(nouns, "") in _THINGS
