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
    r"\blast (?:year|time|week|month|summer|winter|spring|autumn|season|trip|visit"
    r"|weekend|\w+day"
    r"|january|february|march|april|may|june|july|august|september|october|november"
    r"|december)\b"
    r"|\b(?:years?|months?|weeks?|days?) ago\b|(?<!since )\byesterday\b|\bused to\b"
    r"|\bback in\b"
    r"|\bin (?:19|20)\d\d\b|\bonce (?=i|we|he|she|a|my|had|the)\b|\bthe other day\b"
    r"|\b(?:heard|read|reading|watched|story|stories|news|movie|film|book|article|video"
    r"|podcast)"
    r" (?:of|about|that|where|how|story|stories)\b|\bthey say\b|\bpeople say\b|\bwhen i "
    r"was (?:a|\d)"
)
_NOW: Final = re.compile(
    r"\b(?:right now|now|today|still|again|at the moment|this (?:morning|minute|second)"
    r"|(?:seconds?|minutes?|mins?|hours?) ago|just (?:fell|slipped|went|got|saw|heard"
    r"|now))\b"
)
_SUPPOSED: Final = re.compile(
    r"\b(?:if|in case|unless|suppose|supposing|imagine|whenever|before|until"
    r"|hopefully)\b(?!.*\bif\b)"
)
#: "not sure if he's breathing", "what do I do if my friend fell in": the thing itself is real.
_REAL_IF: Final = re.compile(
    r"\b(?:sure|know|see|wonder|wondering|ask|tell|check|as|even|do) if (?!it|there"
    r"|somebody"
    r"|someone|anyone|anybody|one|a |the )"
)
_PERHAPS: Final = re.compile(
    r"\b(?:risk|chance|danger|odds|likelihood|probability) of\b|\bforecast\w*\b"
    r"|\btomorrow\b"
    r"|\bnext (?:week|month|year|time|weekend)\b|\bprone\b|\bhow (?:do|would|can) (?:i|we"
    r"|you) "
    r"(?:know|tell|recogni[sz]e|notice|avoid|prevent)\b|\bhow to (?:avoid|recogni[sz]e"
    r"|tell|prevent)\b"
    r"|\b(?:worried|afraid|scared|nervous) (?:about|of)\b|\b(?:what|which) (?:are|is) "
    r"the signs?\b"
    r"|\blook(?:s|ed)? like\b(?=.*\bin the (?:frame|picture|photo|shot))"
)
_FINE: Final = re.compile(
    r"\b(?:he|she|they|all|everyone|everybody|both|both of (?:us|them)|we|it|nobody|now)"
    r"(?: (?:is|are|was|were|am|got|all|all are|feels?|both))* (?:\w+ )?"
    r"(?:fine|ok|okay|safe|alright|unhurt|unharmed|back out|out again|dry again|laughing"
    r"|found)\b"
    r"|\bfalse alarm\b|\bnobody(?: is| was| got)? (?:hurt|injured)\b|\bno harm\b"
    r"|\b(?:he|she|they|we) (?:is|are|got|climbed) (?:safely |straight |right )?(?:back "
    r")?out"
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
    | {"comes", "come", "coming", "shines", "shine", "glows", "reflects", "appears", "starts"}
    | {"looks", "look", "seems", "a", "bit", "little", "which", "that", "my", "the", "somehow"}
)
#: What is no person, though it falls, drifts and breaks like one.
THINGS: Final = frozenset(
    """
    accessories adapter air aperture app apps autofocus backdrop background backpack bag bags
    ball bank bark batteries battery beam beetle bird birds blanks bokeh border borders bottle
    boulder boulders bow box bracket bracketing branch branches bridge brightness bubbles bush
    bushes cable camera cameras canopy cap caps card cascade cast charger cliff clip cloth
    cloths cloud clouds color colors colour colouring colours column composition contrast
    contrasts cord corner corners cover creek crop crowd crowds cup curtain curve data deer
    detail details dial dipper dirt door dots drop droplets drops duck ducks dust edge edges
    exposure eye eyepiece eyes fall falls fern ferns file files filter filters fish flare flow
    flower flowers fly foam focus fog foliage foot foreground frame frames frog gear glare
    glass glasses glove gloves gradient graph grass grip ground hat haze head heron highlight
    highlights hill hint histogram hood horizon hotshoe image images insect interest iso it
    jacket kingfisher knob ladder lead leaf leaves leg legs lens lenses level light lights
    line lines log logs lupe map mat meter midtones mist mode mood moss mosses mount mountain
    nd noise notebook nothing otter overhang patches path pattern pebbles phone phones photo
    photos picture pictures piece pixel pixels plants plate point points polariser polarizer
    pool print program quality rail rails rainbow raw ray rays reflection reflections remote
    rest ridge ring river road rock rocks roof root roots salamander salmon saturation scene
    screen screens sd section sensor settings shade shadow shadows shape sharpness shine shoot
    shot shots shutter side sides sign silhouette sky slab snow softness something sound
    sparkle spot spots spray squirrel stabiliser stabilizer stand step steps stick sticks
    stone stones stool stop stops strap streak streaks stream streaming structure stuff
    subject sun sunlight tap tent texel texture thing things timer tip tone tones top towel
    trail tree trees triangle tripod trout trunk trunks twig twigs umbrella value values valve
    vegetation vibration video view viewfinder vignette wall wallet walls warmth warning water
    waterfall wave waves white whites wind wood zoom
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
    return next(nouns, "") in THINGS
