"""Words for a place in a list of frames, in the languages of the dialogue: one place for all."""

from __future__ import annotations

from typing import Final

from bot.dialogue.tongues import in_any, of_each

FIRST: Final = in_any("ordinals.first")
LAST: Final = in_any("ordinals.last")
_PLACES: Final = {2: "second", 3: "third", 4: "fourth", 5: "fifth", 6: "sixth", 7: "seventh"}
#: From the second on, by the place that they name: in English, and in the other languages.
ENGLISH: Final = {place: of_each(f"ordinals.{name}")["en"] for place, name in _PLACES.items()}
FOREIGN: Final = {
    place: "|".join(words for code, words in of_each(f"ordinals.{name}").items() if code != "en")
    for place, name in _PLACES.items()
}
