"""What a person says of their ears and eyes, so that messages can be made to fit."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.facts import Need
from bot.dialogue.reading.phrases import any_of, plain

#: How each need is told of oneself; "colour-blind" is not "blind", and a loud fall deafens nobody
#: for good.
_CANT: Final = r"(?:can'?t|cannot|don'?t|hardly|barely)"
_WEAK: Final = r"(?:is|are|isn'?t|aren'?t|'s)? ?(?:\w+ )?(?:bad|poor|weak|gone|going|good|great)"
_TOLD: Final = {
    Need.COLOUR: any_of(
        r"colou?r[ -]?(?:blind|deficien\w+|weak)|colou?r vision (?:is|problem)|red[ -/]*green",
        rf"{_CANT} (?:tell|see|distinguish) (?:the )?(?:red|green|colou?rs)",
        r"farben ?blind\w*|farb(?:en)?(?:fehlsichtig|schwach|schwäche)\w*",
        r"rot[- ]grün[- ](?:blind|schw[aä]ch)\w*|rot und grün (?:\w+ ){0,3}(?:nicht|kaum|schlecht)",
        r"dalt[oó]nic[oa]s?|daltonismo",
        r"no (?:distingo|diferencio) (?:bien )?(?:el rojo|los colores)",
    ),
    Need.HEARING: any_of(
        r"hard of hearing|hearing aids?|deaf$|(?:i'?m|i am|am|being) (?:\w+ ){0,2}deaf",
        rf"my hearing ?{_WEAK}",
        rf"i {_CANT} hear (?:well|much|very well|anything much)",
        r"i hear (?:very )?(?:little|badly|poorly)",
        r"(?:ich )?höre?(?: \w+){0,2} (?:schlecht|schwer)|schwerhörig|gehörlos|hörgeräte?",
        r"bin(?: (?:fast|halb|leider|auf \w+ ohr))* taub",
        r"sord[oa]s?|oigo (?:muy |bastante )?mal|no oigo bien",
    ),
    Need.SIGHT: any_of(
        r"screen[ -]?reader|(?:low|poor|bad|weak|impaired) (?:vision|eyesight|sight)",
        r"(?:partially|visually|badly) (?:sighted|impaired)",
        r"(?:i'?m|i am|am) (?:nearly |half )?blind",
        rf"i {_CANT} see (?:well|much|pictures|the pictures|the screen)",
        rf"my (?:eyes|eyesight|sight|vision) ?{_WEAK}",
        rf"i {_CANT} (?:read|see) (?:the |your )?(?:small|tiny|little) (?:text|print|letters|type)",
        r"my reading glasses (?:are )?(?:off|at home|forgotten)",
        r"bildschirm(?:leser|vorlese)\w*|sehbehindert\w*|(?:ich bin|bin)(?: \w+){0,2} blind",
        r"(?:ich )?sehe?(?: \w+){0,2} schlecht(?! aus)|kleine schrift|lesebrille vergessen",
        r"lector de pantalla|veo (?:muy |bastante )?mal(?= ?(?:$|[,.;]| y\b| de))",
        r"soy (?:casi )?cieg[oa]|letra pequeña|baja visi[oó]n",
    ),
}
_NO_NEEDS: Final = re.compile(
    r"my (?:hearing|eyes|sight|eyesight) (?:is|are) fine|(?:no|forget my) notes|keine notizen"
    r"|sin notas"
)


def needs_of(text: str) -> frozenset[Need] | None:
    """What a message says of the person's ears and eyes.

    Args:
        text: as typed, in any of the languages, or glossed.

    Returns:
        The needs that it tells; an empty set where it says that there are none any more; None
        where it speaks of nothing like that.
    """
    said = plain(text, " .!")
    if _NO_NEEDS.fullmatch(said):
        return frozenset()
    told = frozenset(need for need, pattern in _TOLD.items() if pattern.search(said))
    return told or None
