"""What is said of a frame that is kept, its ladder and leaf frame, and at the end."""

from __future__ import annotations

from typing import Final

KEEPING: Final[dict[str, str]] = {
    "keep.all_sharp": "Good: sharp where it counts.",
    "keep.ladder": "Now the ladder, same frame: {ladder}. Choose at home.",
    "ask.leaves": "Do the leaves move?",
    "ask.leaves.no": "no",
    "ask.leaves.yes": "yes",
    "keep.leaf_frame": (
        "Leaf frame: {settings}, same brightness, touch nothing else. Five to ten, in a lull."
    ),
    "keep.leaf_frame_dark": (
        "Leaf frame: {settings}, {stops} darker: lift it at home; or {time}, as bright, in a lull."
    ),
    "keep.check": "At 100 %: nearest rock, rock beside the fall, a far corner, drops on the glass.",
    "ask.next": "What next?",
    "ask.next.again": "another frame here",
    "ask.next.other_lens": "another lens",
    "ask.next.finish": "finish",
    "keep.log_line": (
        "Note: {settings}, kept here. Copy the files twice before the card is used again."
    ),
    "keep.finished": (
        "Walk closed, your kit is kept. `start` opens the next. Walk out with dry hands."
    ),
}
