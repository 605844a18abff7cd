"""The English names of the 64 emoji that two sides compare."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Final

#: Specification 1.16, "SAS method: emoji", the table by number (its file sas-emoji.json).
NAMES: Final = (
    *("Dog", "Cat", "Lion", "Horse", "Unicorn", "Pig", "Elephant", "Rabbit"),
    *("Panda", "Rooster", "Penguin", "Turtle", "Fish", "Octopus", "Butterfly", "Flower"),
    *("Tree", "Cactus", "Mushroom", "Globe", "Moon", "Cloud", "Fire", "Banana"),
    *("Apple", "Strawberry", "Corn", "Pizza", "Cake", "Heart", "Smiley", "Robot"),
    *("Hat", "Glasses", "Spanner", "Santa", "Thumbs Up", "Umbrella", "Hourglass", "Clock"),
    *("Gift", "Light Bulb", "Book", "Pencil", "Paperclip", "Scissors", "Lock", "Key"),
    *("Hammer", "Telephone", "Flag", "Train", "Bicycle", "Aeroplane", "Rocket", "Trophy"),
    *("Ball", "Guitar", "Trumpet", "Bell", "Anchor", "Headphones", "Folder", "Pin"),
)


def names_of(numbers: Iterable[int]) -> tuple[str, ...]:
    """The names behind the numbers, each 0 to 63."""
    return tuple(NAMES[number] for number in numbers)
