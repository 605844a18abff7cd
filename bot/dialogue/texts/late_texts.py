"""What is said of light that has passed: when it was, whether it still is, and reviews."""

from __future__ import annotations

from typing import Final

LATE: Final[dict[str, str]] = {
    "late.seen": "That was {when}, {age} ago: first the light, then settings.",
    "late.seen_about": "That was {when}: first the light, then settings.",
    "ask.light_still": "Is the light still as {when}?",
    "ask.light_still.yes": "yes",
    "ask.light_still.darker": "darker",
    "ask.light_still.brighter": "brighter",
    "ask.light_still.left": "we have left",
    "ask.light_still_frame": "Is the light still as {when}?",
    "ask.light_still_frame.yes": "yes",
    "ask.light_still_frame.darker": "darker",
    "ask.light_still_frame.brighter": "brighter",
    "ask.light_still_frame.left": "we have left",
    "ask.light_still_frame.clock": "its clock is off",
    "late.new_frame": "The old frame says nothing for this light: a new one decides.",
    "late.noted": "Noted.",
    "late.settings": "settings",
    "light.at": "For the light {when}.",
    "light.if": "Only if the light is still as {when}.",
    "light.if_silent": "Only if the light is still as you said: nothing came for {age}.",
    "card.light": "Light",
    # reviews
    "review.held": "{when}: that held.",
    "review.room": "{when}: nothing was lost; up to {stops} brighter would have been room.",
    "review.clipped": "{when}: too bright; {stops} darker would have been the next try.",
    "review.dark": "{when}: too dark by about {stops}.",
    "review.sky": "{when}: only sky was clipped, the water held.",
    "review.look": "{when}: for {look} water from there, {shortest} to {longest}.",
    "review.settings": "{when}: {settings}; {look}.",
    "review.light": "{when}: {light}, noted.",
    "review.leaves": "{when}: moving leaves wanted a second, short frame.",
    "review.frame_held": "{when}: the whites hold.",
    "review.frame_room": "{when}: nothing lost; about {stops} of room to the right was left.",
    "review.frame_darker": "{when}: {stops} darker would have been the next try.",
    "review.frame_sky": "{when}: a sky gap, {position}, {share} of the frame; the water held.",
    "review.frame_unsure": (
        "{when}: area {letter}, {position}, is white without detail; a fault in water, not in sky."
    ),
    "review.next": "For the next light send a new frame.",
    "review.leave": "Your turn-back time was {time}: pack up and walk out now.",
    "when.at": "at {time}",
    "when.yesterday": "yesterday at {time}",
    "when.day": "on {date} at {time}",
    "when.by_camera": "on {date} at {time} by the camera's clock",
    "when.this.morning": "this morning",
    "when.this.afternoon": "this afternoon",
    "when.this.evening": "this evening",
    "when.ago": "{age} ago",
}
