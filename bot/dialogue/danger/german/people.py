"""German wordings: who and what a message speaks of."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

PEOPLE: Final[Mapping[str, str]] = {
    "person": """
        (ich|wir|er|sie|ihn|ihm|ihr|uns|mich|mir|einer|eine|jemand|keiner|alle|beide|der|die|
        leute|typ|mann|frau), (kind|kinder|junge|jungs|jungen|madchen|bub|sohn|tochter|bruder|
        schwester|mutter|vater|mama|papa|opa|oma), (freund|freundin|kollege|kollegin|partner|
        partnerin|schuler|schulerin|lehrer|lehrerin|teilnehmer|teilnehmerin), (gruppe|braut|
        wanderer|hund|kumpel|onkel|tante|nichte|neffe|enkel|herr|tourist|touristen|kleine|
        kleiner|dame)""",
    "other": """
        (er|sie|ihn|ihm|ihr|einer|eine|jemand|mann|frau|kind|kinder|junge|jungs|madchen|bub|
        sohn|tochter|bruder|schwester), (mutter|vater|mama|papa|opa|oma|freund|freundin|kollege|
        kollegin|partner|partnerin|schuler|schulerin|lehrer), (teilnehmer|teilnehmerin|wanderer|
        hund|kumpel|onkel|tante|nichte|neffe|enkel|herr|frau|zwei von|drei von|kleine|kleiner|
        beiden|dame|leute)""",
    "thing": """
        (kappe|hut|mutze|objektiv|deckel|objektivdeckel|stativ|kamera|handy|blatt|blatter|ast|
        ente|filter|regler|schatten|farben|histogramm|bild|foto|licht)""",
    "thing_adrift": """
        (deckel|hut|mutze|blatt|blatter|ente|filter|flasche|schaum|nebel|blasen|laub|efeu|
        horizont|fokus|stein)""",
    "water": """
        (wasser|bach|fluss|strom|stromung|pool|becken|gumpe|kolk|tumpel|see|wasserfall|fall|
        klamm|pegel|furt|wildbach|flut|schnelle|stromschnelle|stromschnellen|fluten|wehr|
        strudel|zug)""",
}
