"""Languages, the next step, short messages and `why`: asked for as people say it."""

from __future__ import annotations

import pytest

from bot.dialogue.meaning.arrival import is_arrival
from bot.dialogue.meaning.hands import can_hardly_type
from bot.dialogue.reading.command_words import command_of
from tests.dialogue.player import Player
from tests.dialogue.walked import TOLD, keys_of, walked


def test_who_first_asked_of_a_phone_is_cautioned_at_the_fall() -> None:
    """A question that tells of a camera begins no walk: the caution comes with the fall."""
    player = Player()
    assert "asked.phone" in keys_of(player, "I only have my phone. How do I make the water soft?")
    assert "caution.arrive_short" in keys_of(player, "it is 8 m tall, I'm 12 m away")
    assert "caution.arrive_short" not in keys_of(player, "nearest log at 2 m")


def test_what_is_told_with_all_is_well_is_kept() -> None:
    """Where danger was asked about, nothing that is told with the "no" is lost, nor the caution."""
    player = Player()
    player.say("I feel odd and everything spins a little bit up here")
    player.say("no, nobody is in danger: it is 18 m tall")
    keys = keys_of(player, "30 m away")
    assert "caution.arrive_short" in keys
    assert player.context is not None
    assert player.context.place is not None
    assert player.context.place.facts.fall_height_m == 18


@pytest.mark.parametrize(
    ("text", "command"),
    [
        ("sprache deutsch", "german"),
        ("Auf Deutsch, bitte!", "german"),
        ("language german", "german"),
        ("kannst du deutsch sprechen?", "german"),
        ("please answer in German", "german"),
        ("idioma español", "spanish"),
        ("habla en español por favor", "spanish"),
        ("hola, en castellano", "spanish"),
        ("in english please", "english"),
        ("cambia al inglés", "english"),
        ("english or german?", None),
        ("my german guide says no", None),
        ("i don't speak german", None),
        ("was mach ich jetzt", "now"),
        ("und jetzt?", "now"),
        ("wie geht's weiter", "now"),
        ("what do i do", "now"),
        ("ok, what now?", "now"),
        ("and now?", "now"),
        ("what's next", "now"),
        ("where do I start", "now"),
        ("I don't know what to do", "now"),
        ("¿ahora qué?", "now"),
        ("¿qué hago ahora?", "now"),
        ("next", "skip"),
        ("now", None),
        ("wie geht es", None),
        ("what do you do", None),
        ("what is that now", None),
        ("how do i hold it", None),
        ("and", None),
        ("what does that mean?", "unclear"),
        ("what is blinking", "unclear"),
        ("where do I see that", "unclear"),
        ("huh?", "unclear"),
        ("was heißt das", "unclear"),
        ("wo sehe ich das", "unclear"),
        ("no entiendo", "unclear"),
        ("how do i find the edge", "unclear"),
        ("where is it", None),
        ("was ist", None),
        ("that is it", None),
        ("dots", None),
    ],
)
def test_what_is_asked_for_in_a_few_words(text: str, command: str | None) -> None:
    """A word that works anywhere is known in a plain request, and in nothing else."""
    assert command_of(text) == command


@pytest.mark.parametrize(
    ("text", "hardly"),
    [
        ("i have wet gloves", True),
        ("Can't type much", True),
        ("my fingers are frozen", True),
        ("only one hand free", True),
        ("nasse Handschuhe an", True),
        ("kann kaum tippen", True),
        ("manos frías", True),
        ("no puedo escribir mucho", True),
        ("should i bring gloves", False),
        ("gloves?", False),
        ("a cold day", False),
        ("on the other hand it is dark", False),
    ],
)
def test_who_can_hardly_type(text: str, *, hardly: bool) -> None:
    """Cold or wet hands are heard where they are told, not where gloves are asked for."""
    assert can_hardly_type(text) is hardly


def test_cold_hands_make_messages_short() -> None:
    """The answer is one line and the question; what was told beside it is answered, too."""
    player = walked()
    assert "length.hands" in keys_of(player, "cold hands")
    assert player.context is not None
    assert player.context.person.length == "short"
    (message,) = player.say("1")
    assert len(message.body.split("\n")) == 2
    fresh = Player()
    assert "ask.top" in keys_of(fresh, f"wet gloves on. {TOLD}")
    assert fresh.context is not None
    assert fresh.context.person.length == "short"


@pytest.mark.parametrize(
    ("lines", "key"),
    [
        ((), "caution.arrive"),
        (("start",), "now.lens"),
        ((TOLD,), "now.composition"),
        ((TOLD, "1", "1"), "now.frame"),
        ((TOLD, "1", "1", "2"), "now.keep"),
        (("phone", "too white"), "now.take"),
        ((TOLD, "finish"), "help.first"),
        (("start", "bye"), "now.lens"),
        ((TOLD, "1", "1", "bye"), "now.frame"),
        ((TOLD, "1", "bye"), "now.composition"),
        ((TOLD, "1", "1", "2", "1", "i'm home"), "home.send"),
    ],
)
def test_the_next_step_is_one_line_and_its_question(lines: tuple[str, ...], key: str) -> None:
    """Whoever lost the thread hears the step at which they stand, and what is asked there."""
    player = Player()
    for line in lines:
        player.say(line)
    messages = player.say("what do i do now")
    assert key in messages[0].keys
    assert key in {"help.first", "home.send"} or messages[0].question


def test_no_reason_is_told_twice() -> None:
    """Page by page, then what it rests on, then one line."""
    player = walked("1")
    told = [player.say("why")[0].body for _ in range(4)]
    assert "full frame" in told[-3] if told[-3] != told[-2] else True
    assert told[0] != told[1]
    assert told[-1] == told[-2] == "That was all behind it."
    assert len(set(told)) == len(told) - 1


def test_the_light_is_named_once_until_it_changes() -> None:
    """The clock time of the light stands on the first answer, on a changed one, after a pause."""
    player = walked()
    named = []
    for line in ("1", "1", "overcast", "1", "! later 20 m", "1"):
        if line.startswith("!"):
            player.happen(line[2:])
            continue
        named.append("light.at" in keys_of(player, line))
    assert named == [True, False, True, False, True]


def test_time_left_is_said_after_a_pause_alone() -> None:
    """Within three hours of the turn-back time who was silent hears how long it is."""
    player = Player()
    player.happen("place 44.15 -71.35")
    for line in ("1 km walk out", TOLD, "1"):
        player.say(line)
    player.happen("later 8 h")
    assert "resume" not in keys_of(player, "what now")
    player.now = player.now.replace(hour=20, minute=50)
    assert "light.time_left" in keys_of(player, "1")
    assert "light.time_left" not in keys_of(player, "what now")


@pytest.mark.parametrize(
    ("text", "arrived"),
    [
        ("i'm at a little waterfall with my new camera", True),
        ("we are at a small creek", True),
        ("we stand at a small fall", True),
        ("its a tiny fall in the woods", True),
        ("hello, we reached the falls", True),
        ("wir sind an einem kleinen Bach", True),
        ("ich stehe am Wasserfall", True),
        ("estoy en una cascada pequeña", True),
        ("we're here", True),
        ("the fall is too small", False),
        ("i'm at the fall, it is lost in the picture", False),
        ("Hello, I'm standing in front of a waterfall and would like to photograph it", True),
        ("Hi, I'm standing on the platform below a waterfall and want to shoot it", True),
        ("Grüezi, ich stehe vor einem Wasserfall und möchte ihn fotografieren", True),
        ("Hola, estoy delante de una cascada y me gustaría fotografiarla", True),
        ("I'm standing in front of a waterfall, everything is too dark", False),
        ("I'm standing at a fall and would like to know the shutter", False),
        ("we go to the falls on saturday", False),
        ("are we at the right fall?", False),
        ("wir gehen zum Wasserfall", False),
    ],
)
def test_who_tells_where_they_stand(text: str, *, arrived: bool) -> None:
    """Where somebody stands is no complaint of a frame."""
    assert is_arrival(text) is arrived


def test_an_arrival_begins_the_walk_and_goes_on_with_it() -> None:
    """First what is dangerous and what is asked first; later the question that stands open."""
    player = Player()
    assert "caution.arrive" in keys_of(player, "i'm at a little waterfall with my new camera")
    assert keys_of(player, "we are at the fall now") == ("ask.geometry",)


@pytest.mark.parametrize(
    ("lines", "key"),
    [
        ((), "help.first"),
        (("start",), "explain.geometry"),
        (("stream",), "explain.water_speed"),
        (("12 m tall, 18 m away",), "explain.nearest"),
        (("12 m tall, 18 m away", "skip"), "explain.kit"),
        (("12 m tall, 18 m away, rock at 1 m, 24-70",), "explain.format"),
        ((TOLD,), "explain.top"),
        ((TOLD, "1"), "explain.sides"),
        ((TOLD, "1", "1"), "explain.blink"),
        ((TOLD, "1", "1", "1"), "explain.blink"),
        ((TOLD, "1", "1", "2"), "explain.leaves"),
        ((TOLD, "1", "1", "2", "1"), "explain.any"),
        (("too white",), "explain.settings"),
    ],
)
def test_a_question_is_explained(lines: tuple[str, ...], key: str) -> None:
    """Whoever does not know a word of the question hears where to look, and is asked again."""
    player = Player()
    for line in lines:
        player.say(line)
    (message,) = player.say("what does that mean")
    assert message.keys[0] == key
    assert (message.question != "") is (key != "help.first")


def test_a_frame_that_was_taken_is_asked_about() -> None:
    """Words that it is taken answer nothing and are no riddle: the question comes again."""
    assert keys_of(walked(), "ok took it") == ("aside.good", "ask.blink")


def test_kit_beside_an_arrival_is_no_complaint() -> None:
    """A small fall and a tripod tell of no frame that went wrong."""
    keys = keys_of(Player(), "i'm at a little waterfall with my tripod")
    assert not any(key.startswith("symptom.") for key in keys)


def test_who_comes_back_to_a_kept_frame_is_asked_what_next() -> None:
    """At the water again, with no question open, the small things that are left come."""
    player = walked("2", "i'm home")
    player.happen("place 44.15 -71.35")
    player.say("skip")
    keys = keys_of(player, "what now")
    assert keys[0] == "now.keep"
    assert keys[-1] == "ask.next"
