"""Kit and settings of others: shops, rangers, kin, strangers; and what is lent to the person."""

from __future__ import annotations

import pytest

from bot.dialogue.reading import read
from bot.dialogue.reading.foreign import glossed


@pytest.mark.parametrize(
    ("language", "text"),
    [
        *(
            ("en", text)
            for text in (
                "the shop rents tripods",
                "the rental shop had a polariser and a 6 stop nd",
                "the ranger has a tripod and a 70-200",
                "our workshop leader has an nd1000",
                "grandma has a full frame with a 24-70",
                "granny shoots f/8",
                "my mother-in-law uses a phone",
                "you can rent tripods at the visitor centre",
                "a man with a 400 mm next to me",
                "two other photographers with tripods",
                "the family next to us has a tripod",
                "the leaflet says f/16",
                "the forum recommends a 6-stop",
                "shop guy said use a 6 stop",
                "my mate's phone does 48 megapixels",
                "should I buy a 16-35",
            )
        ),
        *(
            ("de", text)
            for text in (
                "der Verleih hatte nur ein 50 mm",
                "im Laden gibt es Polfilter",
                "man kann Stative ausleihen",
                "die Oma hat ein Vollformat mit 24-70",
                "der Ranger hat ein Stativ",
                "der Kursleiter steht auf f/16",
                "im Heft steht f/16",
                "ein Mann mit Stativ steht neben mir",
            )
        ),
        *(
            ("es", text)
            for text in (
                "la tienda solo tenía un 50 mm",
                "se puede alquilar trípodes",
                "la abuela tiene full frame con un 24-70",
                "el guardaparques tiene un trípode",
                "el profe recomienda f/16 y 2 s",
                "un hombre con trípode está a mi lado",
            )
        ),
    ],
)
def test_what_others_have_is_not_the_persons(language: str, text: str) -> None:
    """Shops, rangers, kin and strangers leave the person's own kit unknown."""
    assert read(glossed(text, language)).known() == {}


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "my dad lent me his tripod"),
        ("en", "I rented a tripod from the shop"),
        ("en", "our guide carries a tripod for us"),
        ("en", "the guide lent me a tripod"),
        ("de", "mein Vater hat mir sein Stativ geliehen"),
        ("es", "mi mujer me presta su trípode"),
    ],
)
def test_what_is_lent_is_there(language: str, text: str) -> None:
    """A tripod that somebody lends, or carries for the person, can be used."""
    assert read(glossed(text, language)).has_tripod is True


@pytest.mark.parametrize(
    ("language", "text", "slot"),
    [
        ("en", "my mate has a tripod, I don't", "has_tripod"),
        ("en", "my wife has a polariser but I haven't", "has_polariser"),
        ("de", "der Nachbar hat ein Stativ, ich selber hab keins", "has_tripod"),
        ("es", "mi hermano lleva trípode, yo no", "has_tripod"),
    ],
)
def test_who_has_none_of_it_says_so_beside(language: str, text: str, slot: str) -> None:
    """What somebody else has and the person lacks is missing."""
    assert read(glossed(text, language)).known() == {slot: False}


@pytest.mark.parametrize(
    ("language", "text"),
    [
        *(
            ("en", text)
            for text in (
                "a breeze now and then",
                "gusts come and go",
                "calm between gusts",
                "the leaves are still between gusts",
                "wind on and off",
                "the odd gust",
                "it blows from time to time",
            )
        ),
        *(
            ("de", text)
            for text in (
                "ab und zu ein Lüftchen",
                "zwischen den Böen ruhig",
                "manchmal weht es",
                "mal Wind mal nicht",
                "hin und wieder ein Windstoß",
            )
        ),
        *(
            ("es", text)
            for text in (
                "una brisa de vez en cuando",
                "calma entre ráfagas",
                "viento a ratos",
                "cada tanto una ráfaga",
            )
        ),
    ],
)
def test_wind_that_comes_and_goes_is_wind(language: str, text: str) -> None:
    """Leaves move, though not all the time."""
    assert read(glossed(text, language)).known() == {"wind": True}
