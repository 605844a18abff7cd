"""What is said of limits, of what is kept, and of being forgotten."""

from __future__ import annotations

from typing import Final

PRIVACY: Final[dict[str, str]] = {
    # limits; the first line says what was reached, what becomes of this one, and when it goes on
    "limit.messages": (
        "Not read: more than {most} messages within a minute. Send it again in {wait}; "
        "what comes before then stays unread too."
    ),
    "limit.messages.why": (
        "A flood from one would keep the others waiting. Danger, `stop`, `help` and "
        "`forget me` I read at any time."
    ),
    "limit.frames": (
        "Not measured: {most} frames within 24 hours are one person's share. "
        "Send it again after {time}; until then nothing is measured."
    ),
    "limit.frames.why": (
        "Measuring takes the machine that the others wait for. Words and captions I read as ever."
    ),
    "limit.bytes": (
        "Not measured: my pictures of your frames fill {most} MB, one person's share of the "
        "disk. Send it again after {time}."
    ),
    "limit.bytes.why": (
        "They go {days} days after their frame, or when you delete a frame here. "
        "Words and captions I read as ever."
    ),
    # what is kept
    "data.comes": (
        "All that I keep about you follows as files: linn-my-data.json, and the pictures "
        "that I keep."
    ),
    "data.not_here": (
        "Your frames themselves I don't keep. Your messages and all files of this room lie on "
        "the homeserver. `forget me` deletes my part."
    ),
    "data.in_private": "What I keep about you I tell in our direct room only. Ask me there.",
    "kit.in_private": "I reckon with your kit here too, but I list it in our direct room only.",
    # being forgotten
    "forget.what": (
        "That deletes your kit, places, walk, frames and everything of you here, and takes my "
        "messages to you back. Your own messages stay on the homeserver."
    ),
    "ask.forget": "Sure?",
    "ask.forget.keep": "keep it",
    "ask.forget.delete": "delete it all",
    "forget.kept": "Nothing was deleted.",
    "forget.too_late": "That question is {minutes} old, so nothing was deleted.",
    "forget.done": "Deleted: all that I kept of you. My messages to you are taken back.",
    "forget.stays": (
        "What stays: your messages and files, and copies of my pictures, on the homeserver; my "
        "operator's backups, for at most {days} days; your devices' keys while we share a room."
    ),
}
