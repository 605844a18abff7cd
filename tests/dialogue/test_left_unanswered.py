"""A question of a message that nothing answered is named, once, in the person's language."""

from __future__ import annotations

import pytest

from bot.dialogue.compose import Role
from bot.dialogue.meaning.left_unanswered import asking_clause, is_of_view, is_same, questions_in
from bot.dialogue.steps.asked import left_unanswered
from bot.dialogue.turn import Turn
from tests.dialogue.player import Player

_TOLD = {
    "en": (
        "14 m tall, 20 m away, rock at 2 m, full frame 24-105, tripod, polariser, heavy overcast",
        "1",
        "1",
    ),
    "de": (
        "deutsch",
        "14 m hoch, 20 m weg, Fels bei 2 m, Vollformat 24-105, Stativ, Polfilter, stark bewölkt",
        "1",
        "1",
    ),
    "es": (
        "español",
        "14 m de alto, a 20 m, roca a 2 m, full frame 24-105, trípode, polarizador, muy nublado",
        "1",
        "1",
    ),
}


def _begun(language: str = "en") -> Player:
    player = Player()
    for line in _TOLD[language]:
        player.say(line)
    return player


@pytest.mark.parametrize(
    ("language", "line", "told"),
    [
        ("en", "f/8, 1/15 s now. who owns the hut over there?", "Not answered: ‘who owns the hut"),
        ("en", "iso 100, 1/4 s, f/11. is that bird up there an eagle?", "Not answered: ‘is that"),
        (
            "en",
            "rock at 3 m, is that an eagle up there",
            "Not answered: ‘is that an eagle up there",
        ),
        ("de", "Fels bei 3 m, ist das da oben ein Adler", "Nicht beantwortet: ‘ist das da oben"),
        ("de", "f/8, 1/15 s jetzt. wem gehört die Hütte da drüben?", "Nicht beantwortet: ‘wem"),
        ("es", "f/8, 1/15 s ahora. ¿de quién es la cabaña de allí?", "Sin responder: ‘de quién"),
    ],
)
def test_what_nothing_answered_is_named(language: str, line: str, told: str) -> None:
    """The settings are taken, and the question beside them is said to be left."""
    said = _begun(language).say(line)[0]
    assert said.keys[0] in {"told.settings", "base.settings"}
    assert told in said.body
    assert said.question == "blink"


@pytest.mark.parametrize(
    "line",
    [
        "f/8, 1/15 s now, right?",
        "f/11, 1/4 s. what shutter should I take then?",
        "f/11, 1/4 s, patches. what do I do now?",
        "f/8, 1/15 s. should I leave the hut out? yes I do",
        "f/8, 1/15 s, ok?",
        "f/8, 1/15 s, the hut is old",
        "f/8, 1/15 s, is good",
        "f/8, 1/15 s, how cool is that",
        "rock at 3 m, what shutter do I take then",
    ],
)
def test_what_is_answered_or_asks_nothing(line: str) -> None:
    """No line beside an answer, for a tag, or for what the person answers at once."""
    assert not any(key.startswith("unanswered") for key in _begun().say(line)[0].keys)


def test_it_is_said_once_of_one_question() -> None:
    """Asked again in the next message it is not said again; another question is."""
    player = _begun()
    first = player.say("f/8, 1/15 s now. who owns the hut over there?")[0]
    again = player.say("f/8, 1/13 s now. so who owns that hut over there?")[0]
    other = player.say("f/8, 1/10 s now. is that bird up there an eagle?")[0]
    after = player.say("f/8, 1/8 s now")[0]
    assert "unanswered.among" in first.keys
    assert "unanswered.among" not in again.keys
    assert "unanswered.among" in other.keys
    assert not any(key.startswith("unanswered") for key in after.keys)
    assert player.context is not None
    assert player.context.conversation.unanswered == ""


def test_nothing_of_the_kind_beside_danger_or_an_interruption() -> None:
    """Danger is answered alone, and so is what another question waits for."""
    player = _begun()
    said = player.say("f/8, 1/15 s. my friend fell in, who owns the hut over there?")[0]
    assert not any(key.startswith("unanswered") for key in said.keys)


def test_a_full_answer_leaves_room_for_it() -> None:
    """What is least goes to `why`, and the walk's question stays."""
    said = _begun().say("f/4, 1/2 s, iso 400, sun came out. who owns the hut over there?")[0]
    assert len(said.body) <= 320
    assert any(key.startswith("ask.") for key in said.keys)


def test_a_question_that_stands_alone() -> None:
    """There is no use in asking it alone: other words may help."""
    said = _begun().say("quicker: wait it out or go home, f/8?")[0]
    assert not any(key == "unanswered.among" for key in said.keys)


def test_the_words_of_a_question() -> None:
    """Of a long one the clause that asks is named; tags and short ones are none."""
    long = (
        "is level better than tilted by four and a half degrees, yes or no, and what does it cost"
    )
    assert asking_clause(long, "en", 40) == "what does it cost"
    assert asking_clause("a very long tale without any sign that only goes on", "en", 40) is None
    assert questions_in("Right? Ok so far? What is that hut over there?", "en") == [
        "What is that hut over there?"
    ]
    assert is_same("who owns the hut there", "so who owns that hut there")
    assert not is_same("who owns the hut", "is that an eagle")
    assert not is_same("", "is that an eagle")
    assert is_of_view("which lens do I put on")
    assert not is_of_view("who owns the hut")


def test_a_crowded_answer_leaves_its_least_to_why() -> None:
    """The lines that are needed least go, until the new one fits beside the walk's question."""
    player = _begun()
    assert player.context is not None
    turn = Turn(player.context, player.origin(), player.now)
    turn.say(
        Role.SETTINGS,
        "told.better",
        look="crisp",
        settings="f/8, ISO 100, 1/15 s, the fall 14 m tall and 20 m away",
    )
    for word in ("a long line of what was not read here", "another long line of the same kind"):
        turn.say(Role.CHECK, "unread_rest", pieces=word)
    turn.say(Role.ASSUMPTION, "unread_rest", pieces="what matters least of all of these lines")
    turn.ask("blink")
    asked = "who on earth owns that old wooden hut over there by it?"
    left_unanswered.say(turn, f"f/8, 1/15 s. is the time long enough? {asked}")
    keys = [part.key for part in turn.parts]
    assert keys.count("unread_rest") < 3
    assert keys[-1] == "unanswered.among"
    assert "ask.blink" in keys
    assert turn.notes


def test_a_long_question_is_named_by_how_it_begins() -> None:
    """Where no clause of it is short enough, it is cut between words."""
    said = _begun().say(
        "f/8, 1/15 s now. who is the present owner of that old wooden hut over there?"
    )[0]
    assert "‘who is the present owner of that old …’" in said.body


def test_what_waits_for_an_interruption_is_not_left() -> None:
    """A question that is put in between may lead to the answer."""
    player = _begun()
    assert player.context is not None
    turn = Turn(player.context, player.origin(), player.now)
    turn.ask("walk_out")
    left_unanswered.say(turn, "f/8 now. who owns the hut over there?")
    assert [part.key for part in turn.parts] == ["ask.walk_out"]
