"""What a message tells of water that somebody would stand in, in three languages."""

from __future__ import annotations

import re
from collections.abc import Mapping
from typing import Final

from bot.dialogue.folding import folded
from bot.dialogue.reading.cold_numbers import cold_water
from bot.dialogue.reading.numbers import METRES_A_SECOND
from core.wading import KNEE_M, WaterToStandIn

_LEAVE: Final = (
    r"(?:(?:can|may|could|should|shall|is it (?:ok|okay|safe|fine)(?: to| for)?|safe to|ok to)"
    r"(?: (?:i|we|you|one|he|she|somebody|anybody|to|my \w+|a child))*"
    r"|(?:darf|kann|konnen|durfen|soll)(?: (?:ich|wir|man|er|sie|mein \w+))*"
    r"|(?:puedo|podemos|se puede|puede(?: mi \w+)?))"
)
_INTO: Final = (
    r"(?: (?:stand|sit|step|walk|go|get|be)(?: \w+)? (?:in|into|through) (?:the |this |that )?"
    r"(?:water|stream|creek|river|brook|it)\b| (?:wade|ford)\b"
    r"|(?: \w+){0,3} (?:im|in den|ins|durch den|durchs) (?:wasser|bach|fluss)\b"
    r"(?! (?:spiegel|sehen))|(?: \w+){0,3} waten\b"
    r"| (?:estar|meterme|meternos|entrar|pararme|ponerme|caminar)(?: de pie)? (?:en|por)"
    r" (?:el |la )?(?:agua|rio|arroyo)\b| (?:vadear|meterme en))"
)
_IN_IT: Final = re.compile(rf"\b{_LEAVE}{_INTO}")
#: Beside a depth: "knee deep, can I stand there?".
_STAND: Final = re.compile(
    rf"\b{_LEAVE}(?: (?:stand|be|stay)| (?:da|dort|hier|drin|noch)* ?stehen| (?:estar|pararme))\b"
)
_WADING: Final = re.compile(r"\b(?:is|ist|es) (?:wading|waten|vadear)\b")
#: Heights of a body's marks [m]; own rule, on the deep side of what they mean.
_MARKS: Final[Mapping[str, float]] = {
    r"ankles?|knochel\w*|tobillos?": 0.15,
    r"(?:mid )?shins?|(?:mid )?calf|calves|schienbein\w*|waden\w*|pantorrillas?": 0.35,
    r"knees?|knie\w*|rodillas?": KNEE_M,
    r"thighs?|oberschenkel\w*|muslos?": 0.7,
    r"waist|hips?|huft\w*|bauch\w*|cintura|caderas?": 1.0,
    r"chest|brust\w*|pecho": 1.3,
}
_MARK_PATTERNS: Final = tuple((re.compile(rf"\b(?:{m})\b"), depth) for m, depth in _MARKS.items())
_DEPTH: Final = re.compile(
    r"(?<![\d/.,])(?P<number>\d{1,3}(?:[.,]\d{1,2})?) ?"
    r"(?P<unit>cm|m|met\w+|zentimeter|ft|feet|foot|inch(?:es)?|in|centimetros?)"
    r"(?: of)? (?:deep|depth|tief\w*|de profundidad|de hondo|hond[oa]|profund[oa]|water|wasser"
    r"|(?:de )?agua)\b"
)
_LENGTHS: Final[Mapping[str, float]] = {"c": 0.01, "z": 0.01, "m": 1.0, "f": 0.3048, "i": 0.0254}
_SPEED: Final = re.compile(
    r"(?<![\d/.,])(?P<number>\d{1,2}(?:[.,]\d{1,2})?) ?"
    r"(?P<unit>m ?/ ?s|m/sec|met\w+ (?:per|pro|a|por) (?:second|sekunde|segundo)|ft ?/ ?s|km ?/ ?h"
    r"|kmh|mph)\b"
)
_LEAF: Final = re.compile(
    r"(?P<first>\d{1,2}(?:[.,]\d)?) ?(?P<one>m|met\w+|ft|feet|s|sec\w*|sek\w*|seg\w*)\b"
    r"(?: (?!\d)\w+){0,4} (?P<second>\d{1,2}(?:[.,]\d)?) ?(?P<two>m|met\w+|ft|feet|s|sec\w*|sek\w*"
    r"|seg\w*)\b"
)
_LEAF_WORD: Final = re.compile(r"\b(?:leaf|twig|stick|blatt|zweig|hoja|ramita)\b")
#: "Fast" where no number is told [m/s]: a quick walk, own rule.
_FAST_MPS: Final = 2.0
_FAST: Final = re.compile(
    r"(?<!not )(?<!nicht )(?<!no es )\b(?:fast|swift|strong|quick|rushing|schnell\w*|reissend\w*"
    r"|stark\w*|rapid[oa]|fuerte)\b"
)
_SEEN: Final = re.compile(
    r"\b(?:(?:i )?(?:can )?see the (?:bottom|ground)|bottom (?:is )?visible|clear|klar\w*"
    r"|grund (?:ist )?(?:sichtbar|zu sehen)|seh\w* den grund|veo el fondo|fondo visible"
    r"|transparente|cristalina|(?:agua )?clara)\b"
)
_HIDDEN: Final = re.compile(
    r"\b(?:(?:cannot|cant|can not|not) see the (?:bottom|ground)|bottom (?:is )?(?:hidden"
    r"|not visible)|murky|not clear|seh\w* (?:den )?grund nicht|kein\w* grund|nicht klar"
    r"|no (?:se )?ve\w* el fondo|turbi[oa]|trub\w*)\b"
)
_FLAGS: Final[Mapping[str, re.Pattern[str]]] = {
    "above_a_drop": re.compile(
        r"\b(?:above (?:a|the|that) (?:\w+ )?(?:falls?|waterfall|drop|rapids?|lip|log ?jam)"
        r"|upstream of (?:a|the) (?:falls?|waterfall|drop|rapids?)"
        r"|(?:uber|oberhalb) (?:dem|des|vom|von dem|eines|einem) (?:\w*fall\w*|stromschnelle\w*)"
        r"|(?:encima|arriba) de (?:la|una) (?:cascada|caida)|rio arriba de la cascada)\b"
    ),
    "brown": re.compile(
        r"(?<!not )(?<!nicht )\b(?:brown|muddy|braun\w*|schlamm\w*|marron|barro\w*)\b"
    ),
    "rising": re.compile(
        r"(?<!not )(?<!nicht )(?<!no )\b(?:rising|steigt|steigend\w*|sube|subiendo"
        r"|crece)\b(?! nicht)"
    ),
    "alone": re.compile(
        r"(?<!not )(?<!nicht )(?<!no )\b(?:alone|by myself|on my own|allein\w*"
        r"|sol[oa](?= [.,]|$)|a solas)\b"
    ),
    "child_or_frail": re.compile(
        r"\b(?:child|children|kids?|son|daughter|toddler|grandma|grandpa|unsteady|kind\w*|sohn"
        r"|tochter|oma|opa|nin[oa]s?|hij[oa]s?|abuel[oa])\b"
    ),
}


#: What takes a danger of the water away, where it is told.
_HARMLESS: Final[Mapping[str, re.Pattern[str]]] = {
    "above_a_drop": re.compile(
        r"\b(?:nothing|no (?:falls?|drop|rapids?)) (?:below|downstream)"
        r"|nichts (?:darunter|unterhalb)|kein\w* (?:fall|absturz) (?:darunter|unterhalb)"
        r"|nada (?:abajo|rio abajo)\b"
    ),
    "brown": re.compile(r"\b(?:not brown|clear|nicht braun|klar\w*|clara|cristalina)\b"),
    "rising": re.compile(r"\b(?:not rising|steigt nicht|nicht steigend|no sube)\b"),
    "alone": re.compile(
        r"\b(?:not alone|with (?:my|a) \w+|nicht allein|zu zweit|mit mein\w* \w+"
        r"|no (?:estoy )?sol[oa]|con (?:mi|una?) \w+)\b"
    ),
}
_DRY: Final = re.compile(r"\b(?:(?:dry|spare) clothes|trockene \w+ dabei|ropa seca)\b")


def asks_to_stand(text: str) -> bool:
    """Whether a message asks to stand in water, or to wade.

    Args:
        text: as typed, in any of Linn's languages.
    """
    said = folded(text)
    if _IN_IT.search(said) or _WADING.search(said):
        return True
    return _STAND.search(said) is not None and _depth(said) is not None


def water_to_stand_in(text: str) -> WaterToStandIn:
    """All that a message tells of water that somebody would stand in.

    Args:
        text: as typed; where a depth or a speed has no number its word counts.
    """
    said = folded(text)
    flags = {name: False for name, found in _HARMLESS.items() if found.search(said)}
    flags |= {name: True for name, found in _FLAGS.items() if found.search(said)}
    cold = cold_water(text)
    return WaterToStandIn(
        depth_m=_depth(said),
        speed_mps=speed_told(text) or (_FAST_MPS if _FAST.search(said) else None),
        bottom_visible=_bottom(said),
        water_c=cold.water_c if cold else None,
        dry_clothes=True if _DRY.search(said) else None,
        **flags,
    )


def _bottom(said: str) -> bool | None:
    if _HIDDEN.search(said):
        return False
    return True if _SEEN.search(said) else None


def _depth(said: str) -> float | None:
    found = _DEPTH.search(said)
    if found is not None:
        return min(_number(found["number"]) * _LENGTHS[found["unit"][0]], 20.0)
    return next((depth for mark, depth in _MARK_PATTERNS if mark.search(said)), None)


def speed_told(text: str) -> float | None:
    """The speed that a message tells by a number, or by a leaf [m/s]; None without one."""
    said = text.casefold()
    found = _SPEED.search(said)
    if found is not None:
        unit = found["unit"].replace(" ", "")
        known = {"km/h": "km/h", "kmh": "km/h", "mph": "mph", "ft/s": "ft/s"}.get(unit, "m/s")
        return min(_number(found["number"]) * METRES_A_SECOND[known], 40.0)
    return _of_leaf(said)


def _of_leaf(said: str) -> float | None:
    found = _LEAF.search(said) if _LEAF_WORD.search(said) else None
    if found is None:
        return None
    told = {found["one"][0]: found["first"], found["two"][0]: found["second"]}
    way = next((unit for unit in told if unit in "mf"), None)
    if way is None or "s" not in told or _number(told["s"]) == 0:
        return None
    return min(_number(told[way]) * _LENGTHS[way] / _number(told["s"]), 40.0)


def _number(said: str) -> float:
    return float(said.replace(",", "."))
