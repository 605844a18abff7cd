"""The settings to begin with, the light they are for, and what blinks in their frame."""

from __future__ import annotations

from typing import Final

BASE_SETTINGS: Final[dict[str, str]] = {
    "base.settings": "{settings}{filters}. Focus at {focus}.",
    "base.settings_no_focus": "{settings}{filters}. Focus on the rock beside the water.",
    "base.stack": (
        "{settings}{filters}. Too near for one frame: {frames} frames, focus from {near} to {far}."
    ),
    "base.stack_too_many": (
        "{settings}{filters}. Focus at {far}: the rock at {near} stays soft, so step back from it "
        "or go wider."
    ),
    "base.phone": (
        "{settings}{filters}, phone propped on rock or bag. Tap the rock beside the water to focus."
    ),
    "base.polariser": ", polariser turned until the rock stops shining",
    "base.offer_polariser": (
        "Rock or leaves shine? `polariser on`, turned until they stop: about 1.7 stops, {time} "
        "becomes {longer}."
    ),
    "base.leave_polariser": "Leave the polariser off: in {light} it takes light that you need.",
    "base.polariser_off": ", take the polariser off",
    "base.bare": ", no filter",
    "base.nd": ", {stops}-stop ND on",
    "base.nd_off": ", take the ND off",
    "base.tripod": "Timer 2 s, stabiliser off. Take one.",
    "base.no_tripod": "No tripod: rest it on rock or bag, timer 2 s, stabiliser on, take five.",
    "base.rested": "Rested like that: timer 2 s, hands off, five frames; keep the sharpest.",
    "base.manual": "Turn the dial to M, ISO to its number, not to automatic; timer 2 s. Take one.",
    "base.phone_take": (
        "Manual or long-exposure mode if it has one, timer on. Take one, zoom in: "
        "pure white counts as blinking."
    ),
    "base.phone_average": (
        "Longer: {frames} frames averaged make about {time}; long-exposure mode does that. Timer "
        "on. Zoom in: pure white counts as blinking."
    ),
    # Common practice: a stop is twice the time, or twice the ISO.
    "light_changed.darker": (
        "Meter again: each stop darker doubles the time, {time} becomes {then}; or {iso}. Tell me "
        "by how many stops it got darker, or the light by its name."
    ),
    "light_changed.brighter": (
        "Meter again: each stop brighter halves the time, {time} becomes {then}. Tell me by how "
        "many stops it got brighter, or the light by its name."
    ),
    "base.level_ok": "In {light} that is about right on the meter.",
    "base.level_at_least": (
        "Your last frame was darker than can be told: this may be too dark still."
    ),
    "base.light_untold": "Light not told: name it, like `overcast`, and the time follows.",
    "base.borders_first": "First look round all four borders.",
    "base.by_turns": "Sun by turns: shoot while cloud covers all of it; sun is about 3 stops more.",
    "base.level_over": "In {light} it stays about {stops} too bright: {others}.",
    "base.bright_gives": "In {light} no longer time fits: {look}. For {wished} water: {others}.",
    "base.level_over_phone": (
        "In {light} one frame gives no longer time: for {wished} water take the long-exposure "
        "mode, or wait for less light. Zoom in: pure white counts as blinking."
    ),
    "base.level_over_dusk": (
        "In {light} no longer time fits yet: {look}; the light falls by itself, minute by minute."
    ),
    "base.dark_gives": "In {light} no shorter time fits: {look}. For {wished} water: {others}.",
    "base.level_under": "In {light} it stays about {stops} too dark: {others}.",
    "ask.blink": "Does the main water blink?",
    "ask.blink.nothing": "no",
    "ask.blink.dots": "dots",
    "ask.blink.patches": "patches",
    "ask.blink.sheet": "all of it",
    "ask.blink_again": "Take it. Blinking now?",
    "ask.blink_again.nothing": "no",
    "ask.blink_again.dots": "dots",
    "ask.blink_again.patches": "patches",
    "ask.blink_again.sheet": "all of it",
}
