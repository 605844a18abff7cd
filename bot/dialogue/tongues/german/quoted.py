"""German words of a setting that only quotes the bot, as glossed; the number is "#"."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_GESAGT: Final = (
    r"(?:gesagt|g'sagt|gsagt|geschrieben|empfohlen|genannt|gemeint|vorgeschlagen|geraten)"
)
_DU_HAST: Final = r"(?:you|du) (?:hast|hattest)|(?:hast|hattest) (?:you|du)"

WORDS: Final[Mapping[str, str]] = {
    "quoted.verbs": r"\b(?:hast|hattest|meintest|sagtest|sagst|schriebst|laut)\b",
    "quoted.you_said": (
        rf"(?:{_DU_HAST})\b[^,;.!?\d#]{{0,24}}# {_GESAGT}|#,? (?:{_DU_HAST}) (?:\w+ )?{_GESAGT}"
        r"|(?:(?:you|du) (?:meintest|sagtest|sagst|schriebst)|laut dir|(?:meintest"
        r"|sagtest) (?:you|du))"
        r"\b[^,;.!?\d#]{0,16}#"
    ),
    "quoted.done": (
        r"genommen|gemacht|eingestellt|gestellt|probiert|versucht|fotografiert|ausgel[öo]st"
        r"|wie (?:you"
        r"|du)|like (?:you|du)|hab ich|have i|blinkt\w*|zu (?:hell|dunkel)|jetzt|bleibt|bleib"
    ),
}
