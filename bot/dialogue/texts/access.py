"""What is said to people who told of their ears or eyes."""

from __future__ import annotations

from typing import Final

ACCESS: Final[dict[str, str]] = {
    "access.noted": "Noted.",
    "access.name.hearing": "hearing",
    "access.name.sight": "sight",
    "access.name.colour": "colour vision",
    "where.needs": "Your notes: {list}. `no notes` takes them back.",
    "access.none": "Noted: messages as usual.",
    "access.hearing": (
        "Noted. At a fall nobody hears a call: phone on vibration, look at it at set times, agree "
        "hand signs with your buddy. `no notes` takes this back."
    ),
    "access.sight": (
        "Noted. Under each picture I write all that it shows, places in words. `short` makes "
        "messages shorter, `no notes` takes this back."
    ),
    "access.colour": (
        "Noted. Nothing I say rests on colour: areas have letters, graphs have names, places are "
        "in words. `no notes` takes this back."
    ),
}
