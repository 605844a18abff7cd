"""English words: leave that was only asked, and what is let be."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "given_up.left": (
        r"(?:nvm|never ?mind|forget (?:it|that|about it)|(?:i|we|they|he|she)(?:'ll"
        r"| will)? ?(?:won't|wont"
        r"|will not|not)(?: (?:do|go|try|risk)(?: (?:it|that|there|in|up))?)?|(?:i'll|i will|we'll"
        r"|we will"
        r"|i'm|im|i am|we're|we are)? ?(?:stay|staying|keep|keeping|remain|remaining) (?:here|put"
        r"|back|away"
        r"|off(?: it)?|where (?:i am|we are)|down(?: here)?|on the (?:path|trail|bank))|(?:he|she"
        r"|they)(?:'s| is|'re| are) staying(?: (?:here|back|with (?:me|us)|put))?"
        r"|(?:nobody|no one|none of us|(?:he|she|they|we)(?:'s| is|'re| are) not|(?:he|she|they|we)"
        r" (?:isn't|aren't))(?:'s| is)? (?:crossing|going|climbing|wading|doing it)"
        r"(?: (?:there|it|up|in|anywhere))?(?: now| today)?"
        r"|not (?:going"
        r"|doing"
        r"|worth it)(?: (?:it|there|in|up|then))?|(?:i was |it was )?(?:just"
        r"|only) (?:asking|wondering"
        r"|checking|curious|a question)|too (?:risky|dangerous)|fair enough"
        r"|no (?:paddling|wading|swimming|climbing|standing|bathing|dip)(?: for (?:him|her|us"
        r"|them|me"
        r"|anyone|the (?:kids|dog)))?(?: then| today)*|we(?:'ll| will)? skip (?:it|that)"
        r"|better not|rather not"
        r"|then not)"
    ),
    "given_up.small": (
        r"(?:ok(?:ay)?|no|nope|nah|fine|alright|well|then|so|and|but|sorry|thanks|good|right|i see)"
    ),
    # Who only wishes to go there.
    "given_up.wishes": (
        r"want(?:s|ed)? to|would like to|'d like to|(?:is |am |are |'m |'s "
        r"|'re )?(?:thinking (?:of|about)"
        r"|hoping to|tempted to)|wonder(?:s|ing)?"
    ),
}
