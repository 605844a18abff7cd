"""German words: who is in the danger that a message tells of."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "whose.own": (
        r"ich (?:bin|hab\w*|stecke?|hange?|kann|lieg\w*|frier\w*|blut\w*|zitter\w*|komm\w*"
        r"|ertrink\w*)|mir|mich|meine?m? (?:bein|knochel|arm|fuss|kopf|hand|knie|rucken|finger)"
    ),
    "whose.we": r"wir|uns|ich und mein\w*|mein\w* \w+ und ich",
    "whose.several": (
        r"sie sind|zwei|drei|beide|leute|kinder|freunde|kumpels|schuler\w*|jungs|madchen|eltern"
        r"|wanderer"
        r"|teilnehmer\w*|gruppe|einige"
    ),
    "whose.other": r"er|jemand|einer|kumpels?|jungs|madels|eine frau|ein mann",
    "whose.first": r"ich|mir|mich|meine?[mnrs]?|bin|hab|habe",
}
