"""Cold hands and feet, and nothing worse: they are warmed, and the walk goes on."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.danger.folding import folded

#: Cold that hurts but does its work. Numb ones count only where the person says that they are fine.
_COLD: Final = r"(?:freezing|cold|icy|frozen|like ice|ice cold|freezing cold|getting cold)"
_SO: Final = (
    r"(?:(?:are|r|is|feel|get|got|getting|so|very|really|all|too|a bit|bit|pretty|quite) )*"
)
_HANDS: Final = r"(?:hands?|fingers?|thumbs?|feet|toes)"
_KALT: Final = r"(?:eiskalt\w*|kalt\w*|eisig\w*|klamm\w*|durchgefroren)"
_HANDE: Final = r"(?:hande|haende|hand|finger|fusse|fuesse|zehen)"
_GANZ: Final = r"(?:(?:sind|werden|ganz|so|sehr|echt|ziemlich|schon|etwas|richtig) )*"
_FRIO: Final = r"(?:fri[oa]s?|helad[oa]s?|congelad[oa]s?)"
_MANOS: Final = r"(?:manos|dedos|pies)"
_MUY: Final = r"(?:(?:estan|se me ponen|muy|tan|bastante|un poco|super) )*"
_TOLD: Final = re.compile(
    rf"\b(?:{_HANDS} {_SO}{_COLD}|(?:freezing|cold|icy) {_HANDS}"
    rf"|{_HANDE} {_GANZ}{_KALT}|{_KALT} {_HANDE}"
    rf"|{_MANOS} {_MUY}{_FRIO}|frio en (?:las|los) {_MANOS}"
    r"|what (?:can|do|should) (?:i|we) do (?:about|against) the cold"
    r"|how (?:do|can|should) (?:i|we) (?:keep|stay) warm|(?:was hilft|was tun) gegen (?:die )?kalte"
    r"|que (?:hago|hacemos) (?:contra|con) el frio)\b"
)
_NUMB_BUT: Final = re.compile(
    rf"\b(?:{_HANDS} {_SO}numb|numb {_HANDS}|{_HANDE} {_GANZ}taub|{_MANOS} {_MUY}(?:dormid|"
    r"entumecid)[oa]s) (?:, )?(?:but|aber|pero) (?:(?:i|im|am|we|are|were|they|otherwise|sonst|"
    r"estoy|still|all|es geht|geht|mir|alles|todo) )*(?:ok|okay|fine|good|alright|gut|bien|moving|"
    r"working|work|move)\b"
)
#: More than cold hands: no feeling or use left, a clouded head, wet to the skin, a fall, hours,
#: or somebody else who may not say it.
_WORSE: Final = re.compile(
    r"\b(?:cant|cannot|can not|wont|dont|didnt|doesnt|unable|no longer|hardly|barely|feeling|gone"
    r"|white|blue|grey|purple|waxy|black|shiver\w*|shak\w*|trembl\w*|confus\w*|sleepy|drows\w*"
    r"|tired|dizzy|weak|slurr\w*|stumbl\w*|drop\w*|soaked|drenched|wet through|fell|fallen|lost"
    r"|stuck|alone|hours?|since|help|emergency|stone|fish|wood|he|she|his|her|him|they|kid|kids"
    r"|child|baby|son|daughter|old|walk|climb|was i|nicht mehr|kein gefuhl|spur\w*|weiss|blau"
    r"|zitter\w*|verwirrt|mude|schwindlig|steif\w*|stiff|alles nass|nass bis|durchnasst"
    r"|gefallen|allein|stunden?|seit|hilfe|kind\w*|er|sie ist|puedo|siento|blanc[oa]s|azul\w*"
    r"|tiembl\w*|tirit\w*|confus[oa]|sueno"
    r"|cansad[oa]|empapad[oa]|cai|perdid[oa]|sol[oa]|horas?|desde|ayuda|nin[oa]s?|el|ella)\b"
)
#: So many words may stand beside it (own rule); a longer message tells of more.
_BESIDE: Final = 9


def only_cold_hands(text: str) -> bool:
    """Whether a message tells of cold hands or feet, and of nothing that is worse.

    Args:
        text: as typed or dictated, in any of Linn's languages.
    """
    said = folded(text)
    found = _NUMB_BUT.search(said) or _TOLD.search(said)
    if found is None:
        return False
    rest = said[: found.start()] + " , " + said[found.end() :]
    if "numb" in rest or _WORSE.search(rest):
        return False
    return sum(word.isalnum() for word in rest.split()) <= _BESIDE
