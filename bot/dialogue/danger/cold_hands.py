"""Cold hands and feet, and nothing worse: they are warmed, and the walk goes on."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.folding import folded

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
    r"|que (?:hago|hacemos) (?:contra|con) el frio"
    rf"|{_MANOS} {_MUY}(?:dormid|entumecid)[oa]s)\b"
)
#: Cold as such, without a word for how much: shivering, numb and very cold people say more.
_COLD_ALONE: Final = re.compile(
    r"\b(?:(?:i am|im|we are|were|i feel|we feel) (?:a (?:bit|little) |slightly |getting )?cold"
    r"|(?:mir|uns) (?:ist|wird) (?:(?:ein bisschen|etwas|langsam) )?kalt"
    r"|(?:tengo|tenemos) (?:algo de |un poco de )?frio)\b"
)
_NUMB_BUT: Final = re.compile(
    rf"\b(?:{_HANDS} {_SO}numb|numb {_HANDS}|{_HANDE} {_GANZ}taub|{_MANOS} {_MUY}(?:dormid|"
    r"entumecid)[oa]s) (?:, )?(?:but|aber|pero) (?:(?:i|im|am|we|are|were|they|otherwise|sonst|"
    r"estoy|still|all|es geht|geht|mir|alles|todo) )*(?:ok|okay|fine|good|alright|gut|bien|moving|"
    r"working|work|move)\b"
)
#: What may stand beside it: gloves, thumbs that hardly type, the air, a frame's numbers, and small
#: words. Anything else may tell of more, whatever it is: water, a fall, somebody else, a "not".
_BESIDE: Final = re.compile(
    r"\b(?:(?:(?:warm|wet|dry|thin|thick|new|spare) )*(?:gloves?|mittens?|socks?)"
    r"(?: (?:are|were|got|now|all|too))*(?: (?:wet|damp|thin|dry|on|off))?"
    r"|what (?:can|do|should) (?:i|we) do (?:about|against)"
    r"|(?:can )?hardly type|kann kaum tippen|(?:nasse |dicke )?handschuhen?(?: (?:an|sind nass))?"
    r"|guantes(?: (?:mojados|puestos))?"
    r"|(?:i |we )?(?:cant|cannot|can hardly|can barely) (?:turn|press|use|work) (?:the |my )?"
    r"(?:ring|dial|button|shutter|filter|phone|camera|screen|wheel|focus ring)s?"
    r"|my|mine|our|the|a|i|im|am|we|have|got|it|its|are|is|feel|so|all|and|but|with|for|today"
    r"|just|lol|brr+|ok|okay|fine|good|great|happy|ready|please|pls|can|use|you|short|answers?|voice|phone"
    r"|anything else|next step|f\d*|iso|s|degrees?|celsius"
    r"|mir|uns|ich|hab|habe|meine?|die|und|aber|mit|sind|heute?|so|gut|alles|gehts|geht|es|bitte|kurz|grad"
    r"|tengo|tenemos|mis|las|los|hoy|y|pero|con|todo|bien|a|grados|por favor"
    r"|\d+)\b"
)


def only_cold_hands(text: str) -> bool:
    """Whether a message tells of cold hands or feet, and of nothing that is worse.

    Args:
        text: as typed or dictated, in any of Linn's languages.
    """
    said = folded(text)
    return _is_only(said, _NUMB_BUT.search(said) or _TOLD.search(said))


def only_cold(text: str) -> bool:
    """Whether a message says that somebody is cold, and nothing that is worse.

    Args:
        text: as typed or dictated, in any of Linn's languages.
    """
    said = folded(text)
    return _is_only(said, _COLD_ALONE.search(said))


def _is_only(said: str, found: re.Match[str] | None) -> bool:
    """Whether nothing but what is known to be harmless stands beside what was found."""
    if found is None:
        return False
    rest = _BESIDE.sub(" ", said[: found.start()] + " , " + said[found.end() :])
    return not any(word.isalnum() for word in rest.split())
