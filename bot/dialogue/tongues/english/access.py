"""English words of what people say of their ears and eyes."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_CANT: Final = r"(?:can'?t|cannot|don'?t|hardly|barely)"
_WEAK: Final = r"(?:is|are|isn'?t|aren'?t|'s)? ?(?:\w+ )?(?:bad|poor|weak|gone|going|good|great)"

WORDS: Final[Mapping[str, str]] = {
    "access.colour": (
        r"colou?r[ -]?(?:blind|deficien\w+|weak)|colou?r vision (?:is|problem)|red[ -/]*green"
        rf"|{_CANT} (?:tell|see|distinguish) (?:the )?(?:red|green|colou?rs)"
    ),
    "access.hearing": (
        r"hard of hearing|hearing aids?|deaf$|(?:i'?m|i am|am|being) (?:\w+ ){0,2}deaf"
        rf"|my hearing ?{_WEAK}"
        rf"|i {_CANT} hear (?:well|much|very well|anything much)"
        r"|i hear (?:very )?(?:little|badly|poorly)"
    ),
    "access.sight": (
        r"screen[ -]?reader|(?:low|poor|bad|weak|impaired) (?:vision|eyesight|sight)"
        r"|(?:partially|visually|badly) (?:sighted|impaired)"
        r"|(?:i'?m|i am|am) (?:nearly |half )?blind"
        rf"|i {_CANT} see (?:well|much|pictures|the pictures|the screen)"
        rf"|my (?:eyes|eyesight|sight|vision) ?{_WEAK}"
        rf"|i {_CANT} (?:read|see) (?:the |your )?(?:small|tiny|little) (?:text|print|letters|type)"
        r"|my reading glasses (?:are )?(?:off|at home|forgotten)"
    ),
    "access.no_needs": r"my (?:hearing|eyes|sight|eyesight) (?:is|are) fine|(?:no|forget my) notes",
}
