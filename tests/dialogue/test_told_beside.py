"""What is told beside a question, by a slip, for somebody else, or by a phone's owner is kept."""

from __future__ import annotations

import pytest

from bot.dialogue.context import Context
from bot.dialogue.danger import read_danger
from bot.dialogue.danger.wished_look import only_wishes_look
from bot.dialogue.facts import Facts
from bot.dialogue.meaning.said import in_english
from bot.dialogue.reading import read
from bot.dialogue.reading.others_wish import wish_of_another
from bot.dialogue.reading.reply_corrected import reply_meant
from bot.dialogue.steps.asked.told_beside_question import learn
from bot.dialogue.turn import Turn
from tests.dialogue.player import Player
from tests.dialogue.walked import keys_of, known, walked

_PHONE = "phone, 12 m tall, 18 m away, rock at 2 m"


# the look that somebody else wishes


@pytest.mark.parametrize(
    "text",
    [
        "he wants it frozen, like little drops",
        "Tom wants the WATER frozen",
        "my friend would like it silky",
        "one of my students likes it misty",
        "the kids want it textured",
        "they want it textured but i am not sure",
    ],
)
def test_another_s_wish_is_answered_and_not_kept(text: str) -> None:
    """The times for it are told; one's own look stays what it was."""
    player = walked()
    assert keys_of(player, text)[0] in {"group.wish", "group.wish_frozen"}
    assert known(player).facts.look is None


@pytest.mark.parametrize(
    "text",
    [
        "i want it frozen",
        "we like it frozen",
        "my wife wants it frozen",
        "she wants me to make it frozen",
    ],
)
def test_an_own_wish_is_kept(text: str) -> None:
    """Who writes sets it, whoever told them to."""
    assert wish_of_another(text) is None
    assert read(text).look == "frozen"


def test_a_wish_beside_facts_is_left_out_of_them() -> None:
    """The fall is kept, and a wish without a look is no matter of the water."""
    player = walked()
    keys = keys_of(player, "Tom wants it frozen. we have overcast now")
    assert known(player).facts.light == "overcast"
    assert known(player).facts.look is None
    assert not any(key.startswith("group.wish") for key in keys)
    assert not any(key.startswith("group.wish") for key in keys_of(player, "she wants a coffee"))
    assert not any(key.startswith("group.wish") for key in keys_of(player, "he's got wet feet"))


def test_frozen_water_alarms_nobody_and_frozen_people_do() -> None:
    """Only small words may stand beside the wish."""
    assert only_wishes_look("he wants it frozen, like little drops")
    assert read_danger("he wants it frozen, like little drops") is None
    for text in ("he wants out, frozen stiff", "he wants it, he's frozen", "he's frozen"):
        assert not only_wishes_look(text)
        assert read_danger(text) is not None
    assert read_danger("he wants it frozen but he slipped") is not None
    # a place to be in is no look
    for text in ("he wants to be in the water", "my son wants to be with the water"):
        assert not only_wishes_look(text)
        assert read_danger(text) is not None
    assert not only_wishes_look("the kids want in the water")
    assert not only_wishes_look("i want it frozen")


# a numbered reply that was a slip


@pytest.mark.parametrize(
    "text",
    [
        "wait no I meant one leaves",
        "no I meant leaves, 1",
        "sorry, 1",
        "oops 1",
        "actually one",
        "make that 1",
        "i meant to type 1",
    ],
)
def test_a_reply_is_put_right(text: str) -> None:
    """The check before is answered anew, and the next one stands open again."""
    player = Player()
    for line in ("12 m tall, 18 m away, rock at 1.5 m, full frame 24-70", "3", text):
        player.say(line)
    assert known(player).conversation.walk is not None
    assert known(player).conversation.walk.checks["top"] == "covered"  # type: ignore[union-attr]
    assert known(player).conversation.question.name == "sides"  # type: ignore[union-attr]


@pytest.mark.parametrize(
    "text",
    [
        "no 2",
        "no, 15",
        "wait no 4 m",
        "sorry, 2 stops",
        "no i mean 2 people",
        "one leaf is moving",
        "wait a minute",
        "actually 2 metres away",
        "no one is hurt",
        "i mean rock at 1",
        "1",
    ],
)
def test_other_numbers_put_no_reply_right(text: str) -> None:
    """Lengths, counts and plain replies are what they are."""
    assert reply_meant(text) is None


@pytest.mark.parametrize("text", ["sorry one more question", "sorry, 5", "oops 1 twig"])
def test_a_slip_names_an_option_of_its_question(text: str) -> None:
    """A number that the question has not, or another option's words, undo nothing."""
    player = Player()
    for line in ("12 m tall, 18 m away, rock at 1.5 m, full frame 24-70", "3", text):
        player.say(line)
    assert known(player).conversation.walk.checks["top"] == "lip"  # type: ignore[union-attr]


def test_before_any_reply_nothing_is_put_right() -> None:
    """A length that is put right answered no numbered question."""
    player = Player()
    player.say("sorry, 2")
    player.say("12 m tall")
    assert known(player).facts.fall_height_m == 12.0
    player.say("sorry, 3")
    assert known(player).conversation.history


# the light of a phone


@pytest.mark.parametrize(
    ("reply", "light"),
    [
        ("1", "full sun"),
        ("2", "overcast"),
        ("3", "light canopy"),
        ("4", "wooded gorge"),
        ("it's overcast", "overcast"),
        ("shade", "open shade"),
        ("we're in the shade of some trees", "light canopy"),
        ("skip", None),
    ],
)
def test_who_has_a_phone_is_asked_for_the_light(reply: str, light: str | None) -> None:
    """Before the first settings, since they have no meter to read; once."""
    player = walked(told=_PHONE)
    assert known(player).conversation.question.name == "light"  # type: ignore[union-attr]
    assert keys_of(player, reply)[0] == "base.phone"
    assert known(player).facts.light == light


def test_a_light_that_was_told_is_not_asked_for() -> None:
    """Nor of a camera, whose meter tells it; nobody who does not answer is asked for ever."""
    assert keys_of(walked(told=f"{_PHONE}, overcast"), "why")
    player = walked(told=f"{_PHONE}, overcast")
    assert known(player).conversation.question.name == "blink"  # type: ignore[union-attr]
    assert known(walked()).conversation.question.name == "blink"  # type: ignore[union-attr]
    player = walked("what iso?", "which f-number?", "what is raw?", "what is iso?", told=_PHONE)
    assert known(player).conversation.question.name == "blink"  # type: ignore[union-attr]


# what stands beside a question


def test_light_and_look_beside_a_question_are_kept() -> None:
    """The answer goes by the light that is now."""
    player = walked()
    keys = keys_of(player, "sun's gone now, whats my exposure and do i take the pola off")
    assert keys[0] == "base.settings"
    assert known(player).facts.light == "open shade"
    player.say("why 1/8, i want it smooth")
    assert known(player).facts.look == "silky"


def test_a_question_at_the_fall_begins_the_walk_with_its_caution() -> None:
    """The look that is asked for is the one to go on with."""
    player = Player()
    keys = keys_of(player, "im at a waterfall with my phone, how do i make the water look soft")
    assert "caution.arrive_short" in keys
    assert known(player).facts.look == "silky"
    assert known(player).facts.camera_format == "phone"


def test_a_question_from_elsewhere_begins_none() -> None:
    """Only the kit is kept; the caution comes with the walk, which was never begun."""
    player = Player()
    keys = keys_of(player, "with my phone, how do i make the water look soft?")
    assert "caution.arrive_short" not in keys
    assert known(player).conversation.walk is None
    assert known(player).facts.camera_format == "phone"
    assert "caution.arrive_short" in keys_of(player, "12 m tall, 18 m away")


@pytest.mark.parametrize(
    ("text", "calm"),
    [
        ("leaves are fine", True),
        ("the leaves are ok.", True),
        ("ferns are good", True),
        ("leaves are fine-toothed", None),
        ("are the leaves fine for you there", None),
    ],
)
def test_leaves_that_are_fine_do_not_move(text: str, calm: bool | None) -> None:
    """Said of them alone."""
    assert read(text).wind is (None if calm is None else False)


@pytest.mark.parametrize(
    ("text", "light"),
    [
        ("its super bright today", "full sun"),
        ("really bright out here", "full sun"),
        ("its kinda shady with trees", "light canopy"),
        ("trees everywhere so it's shady", "light canopy"),
        ("the water is super bright", None),
        ("too bright today at 1/4", None),
        ("sky is super bright", None),
        ("the shadow of the trees is black in my frame", None),
        ("shady", "open shade"),
    ],
)
def test_light_by_more_words(text: str, light: str | None) -> None:
    """Of the day, not of a thing in the frame."""
    assert read(text).light == light


# at home


def test_a_bare_number_at_home_names_a_frame() -> None:
    """By its seconds, else by its place in the list; another number names none."""
    player = Player()
    player.say("home now. 1/15 1/8 1/4 1/2 and 1, all f/11 iso 100")
    assert player.say("1")[0].body.startswith("1 s")
    assert player.say("2")[0].body.startswith("1/8 s")
    assert keys_of(player, "9")[0] == "unread"


def test_a_sky_in_the_frame_is_no_light() -> None:
    """Who asks what to do about it tells of an edge."""
    player = walked()
    player.say("theres white sky above the edge, is it bad?")
    assert known(player).facts.light is None


@pytest.mark.parametrize(
    ("text", "key"),
    [
        ("patches on the left side", "highlights.darker"),
        ("just dots at the right edge", "highlights.dots"),
        ("patches on the left", "highlights.darker"),
    ],
)
def test_where_it_blinks_is_no_edge(text: str, key: str) -> None:
    """The side of the water, not of the frame."""
    assert keys_of(walked(), text)[0].startswith(key)


@pytest.mark.parametrize(
    "text", ["the edges are clean", "something on the left side", "branches on the right edge"]
)
def test_what_stands_at_an_edge_answers_no_warning(text: str) -> None:
    """Nothing was said of what blinks."""
    keys = keys_of(walked(), text)
    assert not any(key.startswith(("highlights.darker", "highlights.brighter")) for key in keys)


def test_a_wish_from_elsewhere_is_kept_for_no_walk() -> None:
    """What is wished for is learned at a fall, not before any walk."""
    player = Player()
    turn = Turn(Context.fresh(player.origin()), player.origin(), player.now)
    learn(turn, in_english("I want it silky"), Facts())
    assert turn.context.conversation.walk is None
    learn(turn, in_english("I'm at a waterfall and I want it silky"), Facts())
    assert turn.facts.look == "silky"
