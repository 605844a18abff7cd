"""A "no" that leaves it open whether anybody is out there: things there, a later, a refusal."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.danger.came_away import things_came_along
from bot.dialogue.folding import folded

_THINGS: Final = (
    r"(?:tripod|camera|gear|kit|bag|backpack|remote|dog|stativ|kamera|ausrustung|rucksack"
    r"|fernausloser|hund|tripode|camara|equipo|mochila|mando|disparador|perro)"
)
#: Where a camera is, pictures are made; and somebody goes for it, or after a dog.
_LEFT_THERE: Final = re.compile(rf"\b{_THINGS}\b")
_LATER: Final = re.compile(
    r"\b(?:later|soon|in (?:a|\d+|one|two|five|ten) (?:\w+ )?(?:minutes?|mins?|moment|sec\w*)"
    r"|(?:will|ill|well|going to|gonna|about to) (?:go|be|climb|stand|step|walk) (?:back )?"
    r"(?:out )?there|(?<!dann )(?:gleich|bald|nachher|spater)\b(?! wieder weg)"
    r"|luego|en un (?:rato|momento|minuto)|ahora (?:voy|vamos)|despues)\b"
)
#: Down from there, but where to: the path, or a ledge.
_CLIMBED: Final = re.compile(
    r"\b(?:climbed|climbing|scrambled) (?:\w+ )?(?:down|off|back)(?= [.,]|$)"
    r"|\b(?:runter|herunter|hinunter)(?:geklettert|gestiegen)(?= [.,]|$)|^ya bajamos(?= [.,]|$)"
)
_BOTH: Final = re.compile(
    r"^(?:no|nope|nein|nee)\b.*\b(?:yes|yeah|yep|ja|jo|si)\b(?! (?:es|no|se|la|el)\b)"
)
_REFUSED: Final = re.compile(
    r"^(?:no|nope|nah|nein|nee|ne|none)(?: ,| [.])?(?: no)? (?:thanks?(?: you)?"
    r"|way|chance|need|danke"
    r"|gracias|hace falta|(?:its|thats|it is|that is|das|es) (?:is |ist |geht )?(?:fine|ok|okay"
    r"|passt|gut)|passt"
    r"|of your (?:business|concern)|i know\b.*|i wont (?:move|leave|come)\b.*"
    r"|im not (?:moving|leaving|coming)\b.*|ich weiss\b.*"
    r"|ich geh\w* nicht (?:weg|zuruck|runter)\b.*"
    r"|ich bleib\w*|se lo que\b.*|no me (?:muevo|voy)\b.*"
    r"|(?:im|i am|were|we are|ich|wir|estoy|estamos) (?:sitting|standing|sitze|stehe|sitzen|stehen"
    r"|sentad\w+|de pie))(?: here| hier| aqui)?[ .,]*$"
)
_LEAVING_IT: Final = (_LATER, _CLIMBED, _BOTH, _REFUSED)


#: A setting that is asked for behind an answer: "back on the path, which shutter?"
_SETTING_ASKED: Final = re.compile(
    r"[.,;!\n-]+\s*(?:(?:so|and|now|und|jetzt|y|ahora|¿)\s*)*(?:(?:what|which|how|welche\w*|was|wie"
    r"|qu[eé]|cu[aá]l|cu[aá]nto)\b[^.,;!?\n]{0,40}\b)?"
    r"(?:settings?|shutter|time|f|iso|aperture|f-?number|lens|filter|long|exposure|zeit|blende"
    r"|filter|einstellung\w*|objektiv|lange|tiempo|diafragma|filtro|objetivo|velocidad|ajustes"
    r"|f/?\d[\d.]*|1/\d+(?: ?s)?)\s*\?+\s*$",
    re.IGNORECASE,
)


def without_setting_asked(text: str) -> str:
    """A reply without the setting that is asked for behind it.

    Args:
        text: as typed, in any of Linn's languages.
    """
    return _SETTING_ASKED.sub("", text)


def leaves_open(text: str) -> bool:
    """Whether words that sound like "nobody" leave something there, or refuse to come.

    Args:
        text: as typed, in any of Linn's languages.
    """
    said = folded(text)
    there = _LEFT_THERE.search(things_came_along(said.replace(" . ", " , ")))
    return "?" in text or there is not None or any(words.search(said) for words in _LEAVING_IT)
