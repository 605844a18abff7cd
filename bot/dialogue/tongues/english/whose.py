"""English words: who is in the danger that a message tells of."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # Who writes, as the one that it happens to.
    "whose.own": (
        r"(?:i|ive|im)(?: (?:have|am|just|also|too|then|even|myself))*"
        r" (?:fell|fallen|slipped|slid|went in|tripped|broke|broken|hurt|twisted|sprained|cut|hit"
        r"|stuck|trapped|lost|cold|freezing|shivering|bleeding|injured|drowning|in the"
        r"|cant (?:get|swim|move|feel|walk|hold|stand|breathe)|cannot)"
        r"|(?:help|pulled|dragged|got|swept|took|hit) me"
        r"|my (?:leg|ankle|arm|foot|head|wrist|knee|hand|fingers|back|chest)"
    ),
    # The whole group, who writes among them.
    "whose.we": (
        r"we|us|weve|were (?:lost|stuck|cut|trapped|cold|freezing|in|all|both)|both of us"
        r"|my \w+ and i|me and my"
    ),
    "whose.several": (
        r"they|them|two|three|four|both|several|people|children|kids|friends|students|boys|girls"
        r"|hikers|mates|lads|parents|others|twins|couple|participants|guests|members|group"
    ),
    # Somebody else, where the cue words of the languages leave one out.
    "whose.other": (
        r"he|she|hes|shes|they|theyre|someone|somebody|mates|my mate"
        r"|(?:some|the|two|three|my|those|couple of) lads"
    ),
    # Who writes, in any part of a sentence.
    "whose.first": r"i|im|ive|ill|me|my|myself",
}
