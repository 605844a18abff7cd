"""What a message tells of the white of the water, beside whatever else it says."""

from __future__ import annotations

import pytest

from bot.dialogue.facts import Blink
from bot.dialogue.meaning.said import Said
from bot.dialogue.meaning.whites import Told, told
from bot.dialogue.reading.foreign import glossed


def _told(language: str, text: str, *, asked: bool = False) -> Told | None:
    return told(Said(glossed(text, language), text, language), asked=asked)


#: Told outright, by the warning or by white that is lost: language, message, what blinks.
_OUTRIGHT = (
    ("en", "some blinkies in the main drop, fist sized, plus a white sliver of sky", "patches"),
    ("en", "not only sky, the water blinks too", "patches"),
    ("en", "only the sky blinks", "sky"),
    ("en", "nothing blinks but the sky", "sky"),
    ("en", "nothing blinks except the sky", "sky"),
    ("en", "nothing's blinking apart from a spark here and there", "dots"),
    ("en", "took it with the filter on nothing is blinking only a few dots", "dots"),
    ("en", "no blinkies in the main drop, a few specks at the foot where it hits", "dots"),
    ("en", "it wont stop blinking", "patches"),
    ("en", "all of it flashes, and a corner of sky", "sheet"),
    ("en", "the whole top is blinking", "patches"),
    ("en", "not all of it blinks", "patches"),
    ("en", "the sunlit bit has gone a solid white lump as big as my thumb", "patches"),
    ("en", "the water flickers in no dots but blobs", "patches"),
    ("de", "nur unten in der mitte blinkt so n fleck", "patches"),
    ("de", "nee keine punkte, das is schon n richtiger weißer fleck so handgroß", "patches"),
    ("de", "blinkt nix mehr ausser paar einzelne pünktchen", "dots"),
    ("de", "füße auf nen stein gestellt und blinken tut auch nix", "nothing"),
    ("de", "blinkt immer noch, aber nur der himmel", "sky"),
    ("es", "parpadea un trozo gordo en medio del chorro, no son puntitos sueltos", "patches"),
    ("es", "ya no parpadea nada, pero queda oscuro", "nothing"),
    ("es", "parpadea una zona del tamaño de un pulgar", "patches"),
)


@pytest.mark.parametrize(("language", "text", "blink"), _OUTRIGHT)
def test_the_white_is_told_outright(language: str, text: str, blink: str) -> None:
    """The water counts before the sky, what is denied does not count, a German Fleck is a patch."""
    found = _told(language, text)
    assert found is not None
    assert found.white.blink is Blink(blink)


#: Where it was asked for, a size is enough: language, message, what blinks.
_ASKED = (
    ("en", "went to 1/8, still a patch but smaller", "patches"),
    ("en", "a patch, smaller, said that", "patches"),
    ("en", "i said the top not all of it", "patches"),
    ("en", "right waited got one in the shade only dots now but it looks green", "dots"),
    ("en", "no dots", "nothing"),
    ("en", "everything", "sheet"),
    ("de", "sind nur punkte", "dots"),
    ("de", "ein paar flecken links", "patches"),
    ("es", "son manchas, te dije, no puntos", "patches"),
    ("es", "no todo, solo arriba", "patches"),
)


@pytest.mark.parametrize(("language", "text", "blink"), _ASKED)
def test_a_size_tells_it_where_it_was_asked_for(language: str, text: str, blink: str) -> None:
    """And nowhere else: patches and dots are of many things."""
    found = _told(language, text, asked=True)
    assert found is not None
    assert found.white.blink is Blink(blink)
    assert _told(language, text) is None


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "what does it mean when it blinks?"),
        ("en", "how do i tell if its blinking? nothings blinking, it just shows the pic"),
        ("de", "woran seh ich ob was blinkt? bei mir blinkt nix"),
        ("es", "como veo si parpadea? no parpadea nada"),
        ("en", "is it bad if the sky blinks?"),
        ("en", "what do i do if it blinks in patches"),
        ("en", "patches were blinking before"),
        ("en", "suppose it blinks again"),
        ("en", "the sky never blinks"),
        ("en", "theres a mossy patch i could stand on"),
        ("en", "patches of snow on the rocks"),
        ("en", "spray everywhere"),
        ("en", "took one, everything is wobbly, trees too"),
        ("en", "I took just one exposure and left"),
        ("en", "all right, eleven it is"),
        ("en", "white sky at the top"),
        ("de", "überall gischt"),
        ("de", "lauter helle flecken aufm wasser und auf den steinen"),
        ("de", "sind die punkte schlimm?"),
        ("es", "hay gotas en el cristal"),
    ],
)
def test_other_things_tell_nothing_of_it(language: str, text: str) -> None:
    """Questions, what was before, what is only supposed, and patches of all else."""
    assert _told(language, text, asked=True) is None


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "still blinking only when the sun comes out, when the cloud goes over a few dots"),
        ("de", "der obere teil blinkt wenn die sonne draufscheint, im schatten nur punkte"),
        ("es", "parpadea arriba cuando le da el sol, a la sombra solo puntos"),
    ],
)
def test_sun_and_shade_are_told_apart(language: str, text: str) -> None:
    """What blinks in the sun is no word on the frame of the shade."""
    found = _told(language, text, asked=True)
    assert found is not None
    assert found.white.in_sun
    assert (found.white.blink, found.white.in_shade) == (Blink.PATCHES, Blink.DOTS)


def test_a_part_is_told_beside_a_rest_that_holds() -> None:
    """So it is sun or contrast rather than too much light on all of it."""
    found = _told("en", "the top half is blinking like mad but the bottom is fine")
    assert found is not None
    assert found.white.part
    assert not found.rest


@pytest.mark.parametrize(
    ("text", "rest"),
    [
        ("dots. what next", "what next."),
        ("f/11 1/4 and half of it flashes, the rest is ok. why so dark?", "f/11 1/4. why so dark?"),
        ("a big patch blinks, without texture, leaves move", "leaves move."),
        ("a patch blinks", ""),
        ("the water blinks white at 1/8 and f/11", "the water blinks white at 1/8 and f/11"),
    ],
)
def test_the_rest_is_what_stands_beside_it(text: str, rest: str) -> None:
    """Where something is taken out of it, a sentence ends; what tells more stays whole."""
    found = _told("en", text, asked=True)
    assert found is not None
    assert found.rest == rest
