"""Who says in usual words that they came away goes on; the tripod, a ledge or a refusal stay."""

from __future__ import annotations

import pytest

from bot.dialogue.danger.came_away import came_away, speaks_for_one, speaks_of_another
from bot.dialogue.danger.denied import nobody_is_there
from bot.dialogue.danger.left_open import leaves_open, without_setting_asked
from tests.dialogue.player import Player

LIP = "I'm on the lip of the falls, what shutter?"
WADING = "I'm standing in the middle of the stream knee deep, which shutter?"
KANTE = "ich stehe an der Kante oben am Wasserfall, welche Zeit?"
BORDE = "estoy en el borde de arriba de la cascada, ¿qué tiempo?"


def closed_after(*lines: str) -> bool:
    """Whether a place is closed after these lines."""
    player = Player()
    for line in lines:
        player.say(line)
    assert player.context is not None
    return player.context.conversation.closed


@pytest.mark.parametrize(
    "lines",
    [
        (LIP, "we went back to the trail"),
        (LIP, "moved to the platform"),
        (LIP, "walked back to the path with all my gear"),
        (LIP, "I've come down to the viewpoint"),
        (LIP, "down at the parking lot now"),
        (LIP, "I'm home already, that was this morning"),
        (LIP, "I was, this morning. now at home"),
        (LIP, "haha no I'm on the path"),
        (LIP, "stepped back"),
        (LIP, "no longer"),
        (LIP, "returned to the trail"),
        (BORDE, "ya regresé al sendero"),
        (LIP, "both of us are back on the path, tripod too"),
        (LIP, "fine, I stay on this side"),
        (LIP, "jk"),
        (LIP, "I'm back on the path, what shutter?"),
        (LIP, "no. 1/4 s?"),
        (WADING, "I'm out"),
        (WADING, "ok back on the bank"),
        (WADING, "out of the water"),
        ("I'm standing on the ice over the pool", "off the ice now"),
        ("I'm standing behind the curtain of the waterfall", "I'm out from behind it"),
        ("I'm climbing the wet rocks beside the fall", "ok I'm down again"),
        ("my son climbs over the railing for a selfie", "I called him, he came back over"),
        ("my dog is on the ledge above the falls", "got him on the leash now"),
        ("my friend stands on the lip, I'm on the path", "she's back with me"),
        ("two guys climbed over the rail, not mine", "they left"),
        (KANTE, "bin zur Plattform gegangen"),
        (KANTE, "hinterm Geländer jetzt"),
        (KANTE, "daheim, das war heut früh"),
        (KANTE, "wieder auf dem Weg, welche Zeit?"),
        ("mein Sohn klettert über das Geländer", "er ist wieder herüben"),
        ("mein Sohn klettert über das Geländer", "ist wieder da"),
        (BORDE, "he vuelto al camino"),
        (BORDE, "ya bajé al mirador"),
        (BORDE, "detrás de la barandilla otra vez"),
        ("estoy de pie en medio del río, ¿qué tiempo?", "ya salí"),
        ("estoy de pie en medio del río, ¿qué tiempo?", "fuera del agua"),
        ("estoy sobre el hielo", "ya no estoy en el hielo"),
        ("mi hijo trepa la barandilla", "ya volvió"),
    ],
)
def test_who_came_away_goes_on(lines: tuple[str, ...]) -> None:
    """In any usual wording, of each kind of place."""
    assert closed_after(lines[0])
    assert not closed_after(*lines)


@pytest.mark.parametrize(
    "lines",
    [
        (LIP, "we climbed down"),
        (LIP, "I moved away from the tripod"),
        (LIP, "I stepped back from the camera"),
        (LIP, "stepped back, tripod is still at the edge"),
        (LIP, "no. yes. both feet"),
        (LIP, "no, only the dog"),
        (LIP, "no one, just the tripod"),
        (LIP, "nobody, I use a remote from here"),
        (LIP, "the tripod stands there, I'm on the path"),
        (LIP, "left the tripod there and went to the path"),
        (LIP, "I am on the path to the edge"),
        (LIP, "no thanks"),
        (LIP, "no it's fine"),
        (LIP, "no, I know what I'm doing"),
        (LIP, "no, I'm sitting"),
        (LIP, "none of your business"),
        (LIP, "no??"),
        (LIP, "no, can my son stay there?"),
        (LIP, "No we will go there later"),
        (LIP, "my wife is with me"),
        (LIP, "he's back on the path"),
        ("my son is on the lip", "I'm on the path"),
        ("my son is on the lip", "now I'm on the lip too", "he's back on the path"),
        (LIP, "actually I'm wading in the creek above it", "out of the water"),
        (KANTE, "ich bin vom Stativ weg"),
        (KANTE, "niemand, nur das Stativ"),
        (KANTE, "nein. ja. beide Füße"),
        (KANTE, "ich geh gleich zurück"),
        (KANTE, "wir sind runtergeklettert"),
        (BORDE, "me aparté del trípode"),
        (BORDE, "nadie, solo el trípode"),
        (BORDE, "bajamos"),
    ],
)
def test_what_leaves_it_open_is_asked_again(lines: tuple[str, ...]) -> None:
    """A tripod at the lip is a picture from there; down from there may be a ledge."""
    assert closed_after(*lines)


def test_a_doubt_ends_where_somebody_is_ashore_again() -> None:
    """Whoever answers in other words than "no" is not asked for ever."""
    player = Player()
    for line in ("deutsch", "ich stehe mitten im Bach, welche Zeit?", "wieder am Ufer"):
        player.say(line)
    assert player.context is not None
    assert player.context.conversation.doubted is None


def test_what_is_said_of_whom() -> None:
    """Who writes speaks for nobody else, and another's path is none of who writes."""
    assert speaks_for_one("I'm on the path")
    assert not speaks_for_one("I'm on the path, he is, too")
    assert speaks_of_another("he's on the path")
    assert not speaks_of_another("he and I are on the path")


@pytest.mark.parametrize("text", ["on the path?", "on the path near the cliff", "lunch"])
def test_only_known_words_say_it(text: str) -> None:
    """A question, an edge beside the path, or no place at all."""
    assert not came_away(text)


def test_a_setting_asked_behind_an_answer_is_no_doubt() -> None:
    """The answer in front of it is read for itself."""
    assert without_setting_asked("nobody there. what settings?") == "nobody there"
    assert without_setting_asked("no, is he?") == "no, is he?"
    assert leaves_open("no, is he?")
    assert not leaves_open("nobody there")


@pytest.mark.parametrize(
    ("text", "alone", "nobody"),
    [
        ("no, nobody is out there", False, True),
        ("im still on the bank, staying dry then", True, True),
        ("im still on the bank, staying dry then", False, False),  # and the friend?
        ("bin am Ufer geblieben", True, True),
        ("keiner ist draußen", False, True),
        ("no, no hay nadie", False, True),
        ("estoy en el camino", True, True),
        ("on the bank but my friend is in the water", True, False),
        ("no one is there, she is gone", False, False),
        ("we're at the railing, he climbed over it", True, False),
    ],
)
def test_nobody_is_there_in_words(text: str, *, alone: bool, nobody: bool) -> None:
    """Who else went there is told of, or the place stays closed."""
    assert nobody_is_there(text, alone=alone) is nobody


def test_a_place_opens_when_nobody_is_there() -> None:
    """The question is answered in words as by its number."""
    assert not closed_after(LIP, "no, nobody is out there")
