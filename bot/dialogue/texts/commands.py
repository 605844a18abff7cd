"""The words that work anywhere, as people type them, in each language; all are read at any time."""

from __future__ import annotations

import unicodedata
from collections.abc import Mapping
from functools import lru_cache
from typing import Final

_ENGLISH: Final[dict[str, tuple[str, ...]]] = {
    "start": ("start", "begin", "go", "new walk", "lets start", "let's start", "restart"),
    "back": ("back", "undo", "go back", "one back"),
    "skip": ("skip", "next", "pass", "dont know", "don't know", "no idea", "i dont know"),
    "why": ("why", "why so", "how come", "explain", "why that", "reasons"),
    "now": ("what now", "what next", "what do i do", "next step"),
    "unclear": ("what does that mean", "i dont understand", "what do you mean", "huh"),
    "where": ("where am i", "where are we", "status", "where was i", "summary"),
    "kit": ("kit", "my kit", "gear", "my gear"),
    "plan": ("plan",),
    "card": ("card", "cards"),
    "log": ("log",),
    "units": ("units", "unit"),
    "metric": ("metres", "meters", "metric", "units metric", "units metres", "units meters"),
    "imperial": ("feet", "imperial", "units feet", "units imperial", "units ft"),
    "taps": ("taps", "tap", "polls", "poll", "buttons"),
    "short": ("short", "short messages", "shorter messages"),
    "usual": ("usual", "usual length", "usual messages"),
    "long": ("long", "long messages", "longer messages"),
    "language": ("language", "languages"),
    "english": ("english", "in english", "speak english"),
    "german": ("german", "in german"),
    "spanish": ("spanish", "in spanish"),
    "help": ("help", "help me", "please help"),
    "commands": ("commands", "what can you do", "menu"),
    "stop": (*("stop", "quit", "end", "exit", "finish", "i'm done", "im done", "all done"),),
    "cancel": ("cancel", "stop measuring", "cancel measuring", "cancel that"),
    "keep": ("keep", "keep it", "keep this", "keep that", "keep this one", "keeper", "a keeper"),
    "leaf_frame": ("leaf frame", "the leaf frame", "leaf shot", "frame for the leaves"),
    "my_look": ("my look", "my looks", "my style"),
    "reset_look": ("reset my look", "reset my looks", "forget my look", "forget my looks"),
    "forget": (
        "forget me",
        "delete me",
        "delete my data",
        "forget everything",
        "delete everything",
    ),
    "data": (
        "my data",
        "what do you know about me",
        "what do you know of me",
        "what do you keep about me",
        "export",
        "export my data",
        "show my data",
    ),
    "thanks": ("thanks", "thank you", "thx", "cheers", "great thanks", "ok thanks", "ty"),
    "hello": (
        "hello",
        "hi",
        "hey",
        "yo",
        "sup",
        "wassup",
        "howdy",
        "hiya",
        "heya",
        "g'day",
        "hi there",
        "hey there",
        "hello there",
        "morning",
        "evening",
        "good morning",
        "good evening",
        "good afternoon",
        "hi linn",
    ),
}

_GERMAN: Final[dict[str, tuple[str, ...]]] = {
    "start": (
        "start",
        "starten",
        "anfangen",
        "beginnen",
        "los",
        "los gehts",
        "neuer gang",
        "neue tour",
    ),
    "back": ("zurück", "zurueck", "einen zurück", "rückgängig", "rueckgaengig"),
    "skip": (
        "weiter",
        "überspringen",
        "ueberspringen",
        "weiß nicht",
        "weiss nicht",
        "keine ahnung",
    ),
    "why": ("warum", "wieso", "weshalb", "wieso das", "warum das", "gründe", "erkläre"),
    "now": ("was jetzt", "was nun", "wie geht es weiter", "nächster schritt"),
    "unclear": ("was heißt das", "was bedeutet das", "verstehe ich nicht", "hä"),
    "where": ("wo bin ich", "wo sind wir", "wo waren wir", "stand", "status"),
    "kit": ("ausrüstung", "ausruestung", "meine ausrüstung", "meine ausruestung"),
    "plan": ("planen",),
    "card": ("karte", "karten"),
    "log": ("protokoll",),
    "units": ("einheiten", "einheit"),
    "metric": ("meter", "metrisch", "in metern"),
    "imperial": ("fuß", "fuss", "in fuß"),
    "taps": ("tippen", "antippen", "umfrage", "umfragen", "knöpfe"),
    "short": ("kurz", "kürzer", "kurze nachrichten"),
    "usual": ("normal", "wie üblich", "übliche länge"),
    "long": ("lang", "länger", "lange nachrichten", "ausführlich"),
    "language": ("sprache", "sprachen"),
    "english": ("englisch", "auf englisch"),
    "german": ("deutsch", "auf deutsch", "sprich deutsch"),
    "spanish": ("spanisch", "auf spanisch"),
    "help": ("hilfe", "hilf mir", "bitte hilfe"),
    "commands": ("befehle", "was kannst du", "menü"),
    "stop": (
        *("stopp", "beenden", "ende", "schluss", "aufhören", "aufhoeren"),
        *("ich bin fertig", "fertig für heute"),
    ),
    "cancel": ("abbrechen", "messung abbrechen"),
    "keep": ("behalten", "behalt es", "behalte es", "behalte das", "das behalte ich"),
    "leaf_frame": ("blätterbild", "das blätterbild", "bild für die blätter"),
    "my_look": ("mein stil", "meine wirkung"),
    "reset_look": ("vergiss meinen stil", "meinen stil vergessen", "stil zurücksetzen"),
    "forget": (
        "vergiss mich",
        "lösch mich",
        "lösche mich",
        "meine daten löschen",
        "lösche meine daten",
        "alles löschen",
        "vergiss alles",
    ),
    "data": (
        "meine daten",
        "was weißt du über mich",
        "was weisst du ueber mich",
        "was weißt du von mir",
        "zeig meine daten",
    ),
    "thanks": ("danke", "vielen dank", "danke schön", "dankeschön", "besten dank", "ok danke"),
    "hello": ("hallo", "guten morgen", "guten tag", "guten abend", "moin", "servus", "grüß gott"),
}

_SPANISH: Final[dict[str, tuple[str, ...]]] = {
    "start": ("empezar", "empieza", "empecemos", "comenzar", "vamos", "nuevo paseo", "inicio"),
    "back": ("atrás", "volver", "deshacer", "vuelve"),
    "skip": ("saltar", "siguiente", "paso", "no sé", "no lo sé", "ni idea"),
    "why": ("por qué", "porqué", "por qué eso", "explica", "explícalo", "razones"),
    "now": ("ahora qué", "qué hago", "qué sigue", "siguiente paso"),
    "unclear": ("qué significa", "qué significa eso", "no entiendo"),
    "where": ("dónde estoy", "dónde estamos", "dónde íbamos", "estado", "resumen"),
    "kit": ("equipo", "mi equipo"),
    "plan": ("planear", "planificar"),
    "card": ("tarjeta", "tarjetas", "ficha"),
    "log": ("registro",),
    "units": ("unidades", "unidad"),
    "metric": ("metros", "métrico", "en metros"),
    "imperial": ("pies", "en pies"),
    "taps": ("toques", "toque", "encuesta", "encuestas", "botones"),
    "short": ("corto", "breve", "mensajes cortos"),
    "usual": ("normal", "lo habitual", "habitual"),
    "long": ("largo", "mensajes largos", "detallado"),
    "language": ("idioma", "idiomas", "lengua"),
    "english": ("inglés", "en inglés"),
    "german": ("alemán", "en alemán"),
    "spanish": ("español", "en español", "castellano", "habla español"),
    "help": ("ayuda", "ayúdame", "por favor ayuda"),
    "commands": ("comandos", "qué puedes hacer", "qué sabes hacer", "menú"),
    "stop": ("parar", "terminar", "fin", "acabar", "salir", "he terminado"),
    "cancel": ("cancelar", "cancela", "cancelar medición"),
    "keep": ("guardar", "guárdala", "guárdalo", "la guardo", "me la quedo", "me quedo con esta"),
    "leaf_frame": ("foto de hojas", "la foto de hojas", "foto para las hojas"),
    "my_look": ("mi estilo", "mis estilos"),
    "reset_look": ("olvida mi estilo", "reiniciar mi estilo", "borra mi estilo"),
    "forget": (
        "olvídame",
        "bórrame",
        "borra mis datos",
        "borrar mis datos",
        "borra todo",
        "olvida todo",
    ),
    "data": (
        "mis datos",
        "qué sabes de mí",
        "qué sabes sobre mí",
        "muéstrame mis datos",
        "exportar mis datos",
    ),
    "thanks": ("gracias", "muchas gracias", "mil gracias", "vale gracias", "ok gracias"),
    "hello": ("hola", "buenos días", "buenas tardes", "buenas noches", "buenas", "hola linn"),
}

#: By language and command: the words of a whole message.
BY_LANGUAGE: Final[Mapping[str, Mapping[str, tuple[str, ...]]]] = {
    "en": _ENGLISH,
    "de": _GERMAN,
    "es": _SPANISH,
}


@lru_cache(maxsize=32)
def folded(text: str) -> str:
    """Words in lower case, without signs and without marks on letters: `por que`, `zuruck`."""
    parts = unicodedata.normalize("NFKD", text.casefold())
    return " ".join("".join(c for c in parts if c.isalnum() or c.isspace()).split())


#: Command by the folded words of a whole message.
COMMAND_WORDS: Final[dict[str, str]] = {
    folded(word): command
    for commands in BY_LANGUAGE.values()
    for command, words in commands.items()
    for word in words
}

#: Small words before a command that change nothing of it: "now where am I", "actually back".
_BEFORE: Final = frozenset(
    {"now", "ok", "okay", "so", "and", "actually", "then", "hm", "linn"}
    | {"jetzt", "nun", "also", "und", "dann", "ahora", "y", "pues", "entonces"}
)
#: Commands that are heard behind them; a cry for help, or what can't be taken back, is none.
_HEARD_BEHIND: Final = frozenset(
    {"start", "back", "skip", "why", "where", "kit", "plan", "card", "log", "units", "keep", "stop"}
)


def command_word(text: str) -> str | None:
    """The command that a whole message names by its word, small words before it left out.

    Args:
        text: as typed, in any of the languages.
    """
    said = folded(text)
    if said in COMMAND_WORDS:
        return COMMAND_WORDS[said]
    first, _, rest = said.partition(" ")
    while rest and first in _BEFORE:
        if COMMAND_WORDS.get(rest) in _HEARD_BEHIND:
            return COMMAND_WORDS[rest]
        first, _, rest = rest.partition(" ")
    return None
