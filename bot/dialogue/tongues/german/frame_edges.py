"""German words that tell of a picture's edges apart from those that tell of people at an edge."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # Who looks at a picture, and stands nowhere in it.
    "frame_edges.looks": (
        r"(?:glaub|glaube|seh|sehe|hab|habe|würd|würde|denk|denke|mein|meine) ich"
        r"|ich (?:glaub|glaube|seh|sehe|hab|habe|würd|würde|denk|denke|mein|meine)(?: sagen)?"
    ),
    # What a body does or has; where one is named, nothing is of the frame.
    "frame_edges.body": (
        r"(?:steh|stand\b|sitz|saß|lehn|kletter|klettr|gehe?\b|geht\b|gegangen|lauf|tret|kriech|knie"
        r"|lieg|spring|balancier|gefallen|gestürzt|stürz|rutsch|füße|fuß|zehen|stiefel|schuh"
        r"|jemand|leute|kind|sohn|tochter|freund|hilfe)"
    ),
    "frame_edges.hangs": r"(?:häng|baumel)",
    # Where the verb comes first, it is of one thing: "da hängt ein Ast".
    "frame_edges.it_hangs": r"(?:hängt|baumelt)",
    # Without anybody named, who is placed there is who writes.
    "frame_edges.placed": (
        r"(?:(?:jetzt|grad|gerade|direkt|ganz|genau|oben|hier|noch|so) )*(?:auf|an|am)"
        r" (?:(?:dem|den|der|die|einem|einer) )?(?:\w+ )?(?:\w*ast|\w*stamm|baum|kante|abbruchkante"
        r"|abgrund|felsen|vorsprung)\b"
    ),
}
