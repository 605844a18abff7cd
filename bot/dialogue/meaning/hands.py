"""Whether somebody says that they can hardly type: gloves, cold or wet fingers, one free hand."""

from __future__ import annotations

from typing import Final

from bot.dialogue.reading.phrases import any_of, plain

_STIFF: Final = r"(?:cold|wet|numb|frozen|freezing|stiff|icy|muddy|clumsy|dirty|slippery)"
_HANDS: Final = r"(?:hands?|fingers?|thumbs?)"
_CANT: Final = (
    r"(?:can'?t|cannot|can not|hardly|barely|don'?t want to|hard to|difficult to|no way to)"
)
_KLAMM: Final = r"(?:kalt\w*|nass\w*|klamm\w*|steif\w*|gefroren\w*|eisig\w*|taub\w*|schmutzig\w*)"
_FRIO: Final = (
    r"(?:frí[oa]s?|fri[oa]s?|mojad[oa]s?|helad[oa]s?|congelad[oa]s?|entumecid[oa]s?|suci[oa]s?)"
)
_TOLD: Final = any_of(
    rf"{_STIFF} (?:and \w+ )?{_HANDS}|{_HANDS} (?:are |is |so |too |very |really |all )*{_STIFF}",
    r"(?:wear\w*|got|have|having|in|with|through|my) (?:my |the |on )?(?:\w+ )?(?:gloves|mittens)"
    r"|(?:gloves|mittens) (?:are )?on|^(?:\w+ )?(?:gloves|mittens)$",
    rf"(?:i )?{_CANT} (?:really |easily )?type(?: (?:much|well|long|a lot))?|typing is (?:\w+ )?"
    r"(?:hard|slow|difficult|a pain|impossible)",
    r"(?:only )?(?:one|1) (?:free )?hand(?: free| only)?$|(?:only|just) (?:one|1) (?:free )?hand",
    r"keep it short|short(?:er)? (?:answers?|messages?|replies) please",
    rf"{_KLAMM} (?:hände|haende|hande|finger)"
    rf"|(?:hände|haende|hande|finger) (?:sind |ganz |so |zu )*{_KLAMM}",
    r"(?:mit|habe?|trage?|nasse|dicke|meine?) (?:\w+ )?handschuhe?n?(?: an)?|handschuhe? an"
    r"|^(?:\w+ )?handschuhe$",
    r"(?:kann|können) (?:kaum|nicht|schlecht|gerade nicht)(?: \w+)? (?:tippen|schreiben)"
    r"|(?:kaum|schlecht) tippen|nur eine hand frei|(?:fass|fasse) dich kurz|kurze antworten bitte",
    rf"(?:manos|dedos) (?:están |muy |tan )*{_FRIO}|guantes(?: puestos)?$"
    r"|(?:con|llevo|tengo) (?:\w+ )?guantes",
    r"no puedo (?:escribir|teclear)(?: (?:mucho|bien))?|me cuesta (?:escribir|teclear)"
    r"|(?:solo|sólo) (?:tengo )?una mano|respuestas cortas por favor",
)
_ADVICE: Final = any_of(
    "should|need|bring|pack|forgot|recommend|soll|brauche?|mitnehmen|debo|necesito|llevar"
)


def can_hardly_type(text: str) -> bool:
    """Whether a message says so; who asks for gloves does not.

    Args:
        text: as typed, in any of Linn's languages.
    """
    said = plain(text, " .!,")
    return "?" not in said and _TOLD.search(said) is not None and not _ADVICE.search(said)
