"""The words that work anywhere, as people type them."""

from __future__ import annotations

from typing import Final

_BY_COMMAND: Final[dict[str, tuple[str, ...]]] = {
    "start": ("start", "begin", "go", "new walk", "lets start", "let's start", "restart"),
    "back": ("back", "undo", "go back", "one back"),
    "skip": ("skip", "next", "pass", "dont know", "don't know", "no idea", "i dont know"),
    "why": ("why", "why so", "how come", "explain", "why that", "reasons"),
    "where": ("where am i", "where are we", "status", "where was i", "summary"),
    "kit": ("kit", "my kit", "gear", "my gear"),
    "plan": ("plan",),
    "card": ("card", "cards"),
    "log": ("log",),
    "units": ("units", "unit"),
    "metric": ("metres", "meters", "metric", "units metric", "units metres", "units meters"),
    "imperial": ("feet", "imperial", "units feet", "units imperial", "units ft"),
    "taps": ("taps", "tap", "polls", "poll"),
    "help": ("help", "commands", "what can you do", "help me", "menu"),
    "stop": ("stop", "quit", "end", "exit", "finish"),
    "cancel": ("cancel", "stop measuring", "cancel measuring", "cancel that"),
    "keep": ("keep", "keep it", "keep this", "keep that", "keep this one", "keeper", "a keeper"),
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
    "hello": ("hello", "hi", "hey", "good morning", "good evening", "good afternoon", "hi linn"),
}

#: Command by the bare words of a whole message.
COMMAND_WORDS: Final[dict[str, str]] = {
    word.replace("'", ""): command for command, words in _BY_COMMAND.items() for word in words
}
