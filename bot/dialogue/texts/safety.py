"""What is said in danger: the instruction that protects first, never a setting."""

from __future__ import annotations

from typing import Final

SAFETY: Final[dict[str, str]] = {
    "danger.in_water": (
        "Call the emergency number now (112, 911 or the local one): I can't call. "
        "Throw a rope or branch, don't go in."
    ),
    "danger.in_water.again": (
        "Keep eyes on them. Shout: float, breathe, feet first downstream. "
        "Meet them below with something to throw."
    ),
    "danger.position": "Your last shared position: {place} at {time}. Read it to rescuers.",
    "danger.position_unknown": (
        "No shared position here: read the coordinates or the last sign from your phone's map."
    ),
    "danger.held": "First the people. Everything else waits, your walk is kept.",
    "danger.over": "Good. Warm, dry, sit down before anything else. The walk is as it was.",
    "danger.call_back": (
        "Call them back now, one at a time, three points on rock, away from the edge. "
        "Nobody jumps, nobody wades above the fall."
    ),
    "danger.nobody_there": "Good. Stay on the path side; local signs and rangers decide.",
    "danger.from_afar": (
        "A longer lens from the path or the railing makes a like picture: 100 to 200 mm as on "
        "full frame."
    ),
    "danger.from_there": (
        "From where you said, {distance} off, {focal} shows {shown}: stay at the path or railing."
    ),
    "ask.safe": "Are all safe?",
    "ask.safe.not_yet": "not yet",
    "ask.safe.yes": "yes",
    "ask.out_there": "Is anyone out there now?",
    "ask.out_there.no": "no",
    "ask.out_there.yes": "yes",
}
