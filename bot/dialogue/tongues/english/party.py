"""English words of which a message is made that tells who walks along, and nothing else."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "party.plain": (
        r"i|me|my|we|us|our|he|she|they|them|his|her|you|a|an|the|of|in|and|or|but|so|with|also"
        r"|too|not|is|are|am|be|will|was|'s|'re|'ve|'ll|'m|i'm|we're|we've|i've|he's|she's|there"
        r"|there's|have|has|got|had|come|comes|coming|bring|bringing|take|taking|go|goes|going"
        r"|walk|walks|walking|hike|along|together|all|only|just|very|rather|quite|bit|little|small"
        r"|old|older|young|years?|aged|slow|slower|slowly|slowest|unfit|fit|unsteady|tomorrow"
        r"|today|wet|rock|rocks|on|bad|dodgy|sore|weak|stiff|knees?|hips?|ankles?|start|at|each"
        r"|one|both|group|people|persons|adults|walkers|when|if|it|it's|gets|slippery"
    ),
}
