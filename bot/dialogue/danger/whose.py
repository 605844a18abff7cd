"""Who is in the danger that a message tells of: who writes, another one, several others."""

from __future__ import annotations

import re
from typing import Final, NamedTuple

from bot.dialogue.danger.kinds import DangerKind
from bot.dialogue.danger.meaning import all_cues
from bot.dialogue.folding import folded


class Whose(NamedTuple):
    """Whose danger it is."""

    own: bool
    #: 0, 1, or 2 for several.
    others: int

    def with_also(self, more: Whose) -> Whose:
        """Both of two."""
        return Whose(self.own or more.own, max(self.others, more.others))


#: Who writes, as the one that it happens to. The message is folded: "I'm" is "im".
_OWN: Final = re.compile(
    r"\b(?:i|ive|im)(?: (?:have|am|just|also|too|then|even|myself))*"
    r" (?:fell|fallen|slipped|slid|went in|tripped|broke|broken|hurt|twisted|sprained|cut|hit|stuck"
    r"|trapped|lost|cold|freezing|shivering|bleeding|injured|drowning|in the|cant (?:get|swim|move"
    r"|feel|walk|hold|stand|breathe)|cannot)\b"
    r"|\b(?:help|pulled|dragged|got|swept|took|hit) me\b"
    r"|\bmy (?:leg|ankle|arm|foot|head|wrist|knee|hand|fingers|back|chest)\b"
    r"|\bich (?:bin|hab\w*|stecke?|hange?|kann|lieg\w*|frier\w*|blut\w*|zitter\w*|komm\w*"
    r"|ertrink\w*)\b"
    r"|\b(?:mir|mich)\b|\bmeine?m? (?:bein|knochel|arm|fuss|kopf|hand|knie|rucken|finger)\b"
    r"|\b(?:me (?:cai|he|caigo|resbale|rompi|torci|duele|ahogo|sangra|corte|golpee|perdi)"
    r"|estoy (?:en|atrapad\w|herid\w|perdid\w|solo|sola|mojad\w|congelad\w|temblando|sangrando)"
    r"|no puedo (?:salir|moverme|andar|caminar|respirar|nadar)"
    r"|mi (?:pierna|tobillo|brazo|pie|cabeza|mano|rodilla))\b"
)
#: The whole group, who writes among them.
_WE: Final = re.compile(
    r"\b(?:we|us|weve|were (?:lost|stuck|cut|trapped|cold|freezing|in|all|both)|both of us"
    r"|my \w+ and i|me and my|wir|uns|ich und mein\w*|mein\w* \w+ und ich|estamos|nos|nosotros"
    r"|nosotras|hemos|somos|mi \w+ y yo)\b"
)
_SEVERAL: Final = re.compile(
    r"\b(?:they|them|two|three|four|both|several|people|children|kids|friends|students|boys|girls"
    r"|hikers|parents|others|twins|couple|participants|guests|members|group|sie sind|zwei|drei"
    r"|beide|leute|kinder|freunde|schuler\w*|jungs|madchen|eltern|wanderer|teilnehmer\w*|gruppe"
    r"|einige|dos|tres|ambos|varios|ninos|amigos|alumnos|padres|chicos|chicas|hijos|gente|grupo"
    r"|estan|se han|cayeron|han caido)\b"
)
#: Somebody else, where the cue words of the languages leave one out.
_OTHER: Final = re.compile(
    r"\b(?:he|she|hes|shes|they|theyre|someone|somebody|er|jemand|einer|eine frau|ein mann|ella"
    r"|alguien|mi (?:amig\w|hij\w|marido|mujer|esposa|novi\w|hermano|hermana|padre|madre))\b"
)


def names_somebody(text: str) -> bool:
    """Whether a message names another person, or who writes as one in trouble."""
    said = folded(text)
    return any(words.search(said) for words in (_OWN, _WE, _OTHER)) or "other" in all_cues(text)


#: Who writes, in any part of a sentence.
_FIRST: Final = re.compile(
    r"\b(?:i|im|ive|ill|me|my|myself|ich|mir|mich|meine?[mnrs]?|bin|hab|habe|yo|mi|mis|conmigo|estoy"
    r"|tengo|puedo|veo|oigo|siento|encuentro)\b"
)
#: What comes over everybody who is there.
_OF_THE_PLACE: Final = frozenset({DangerKind.FLOOD, DangerKind.THUNDER, DangerKind.DARK})


def whose(text: str, kind: DangerKind = DangerKind.UNCLEAR) -> Whose:
    """Whose danger a message tells of.

    Args:
        text: a message that tells of danger, as typed.
        kind: what danger that is.

    Returns:
        The whole group ("we are lost") is who writes and others; so is a message that names
        nobody. Nobody misses themselves.
    """
    if kind is DangerKind.MISSING:
        return Whose(own=False, others=2 if _SEVERAL.search(folded(text)) else 1)
    said = folded(text)
    own, together = _OWN.search(said) is not None, _WE.search(said) is not None
    named = "other" in all_cues(text) or _OTHER.search(said) is not None
    if not named:
        nobody = kind not in _OF_THE_PLACE and _FIRST.search(said) is None
        return Whose(own=True, others=2 if together else int(nobody))
    return Whose(own=own, others=2 if _SEVERAL.search(said) else 1)
