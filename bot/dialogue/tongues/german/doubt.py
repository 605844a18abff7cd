"""German words that begin a "no" to whether anybody is in danger."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # "Nein, nur das Bild ist nix": the rest is read for danger by itself.
    "doubt.no": (
        r"(?:1\W+)?(?:(?:nein|nee+|nö+|na+|überhaupt nicht|gar nicht)(?=\W*$|\s*[,.!;:]"
        r"|\s+(?:nur|bloß|bloss|alles|passt|danke|wir|ich|i|es geht|keine gefahr)\b)"
        r"|(?:niemand|keiner|koana)(?: ist)? (?:verletzt|in gefahr|in not|verloren"
        r"|vermisst)|alles (?:gut|ok|okay|bestens|in ordnung))"
    ),
    # "Nein, keiner ist draußen", asked whether anybody is where nobody should be.
    "doubt.nobody_there": (
        r"(?:(?:nein|nee+|nö+|na+)\W+)?(?:keiner|niemand|koana)(?: ist| is)?"
        r" (?:draußen|draussen|da|dort|drin|im wasser)"
        r"|(?:nein|nee+|nö+|na+)\W+(?:(?:wir|die|sie|sind|alle|beide|sitzen|stehen|jetzt|wieder) )+"
        r"(?:am ufer|am auto|aufm weg|auf dem weg|hinterm geländer|bei (?:mir|uns))"
    ),
    # "Bin am Ufer", of oneself.
    "doubt.on_the_bank": (
        r"(?:(?:nein|nee+|nö+|na+)\W+)?(?:ich |isch |i |wir )?(?:bin|sind|steh\w*)(?: \w+){0,2}"
        r" (?:am|auf dem|aufm|beim) (?:ufer|weg|geländer|pfad)"
    ),
    # Who is left out of it, behind it.
    "doubt.left_out": r"aber|nur|noch|da oben|dort oben|drauss?en|nicht \w+",
}
