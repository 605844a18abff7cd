"""Answers to what is matched by meaning, in each state; each has its reason."""

from __future__ import annotations

import pytest

from bot.dialogue.context import Context
from bot.dialogue.meaning.tables import examples
from bot.dialogue.steps.asked import by_meaning, topic_or_cause
from bot.dialogue.steps.asked.topic_answers import TOPICS
from bot.dialogue.turn import Turn
from tests.dialogue.player import Player
from tests.dialogue.test_message_rules import check

#: A walk up to the first test frame, with a near rock and a known camera.
WALKED = ("12 m tall, 18 m away, rock at 1.5 m, full frame 24-70 at 24", "1", "1")


def walked(*more: str) -> Player:
    """Somebody who has base settings."""
    player = Player()
    for line in (*WALKED, *more):
        player.say(line)
    return player


def keys(player: Player, text: str) -> tuple[str, ...]:
    """The texts of an answer."""
    (said, *_) = player.say(text)
    return said.keys


@pytest.mark.parametrize("started", [False, True], ids=["before", "within a walk"])
@pytest.mark.parametrize("topic", [*examples("topics"), *examples("small_talk")])
def test_every_topic_has_an_answer_and_a_reason(topic: str, *, started: bool) -> None:
    """Before and within a walk something is said, and `why` finds a reason."""
    player = walked() if started else Player()
    player.say("thanks")
    context = player.context
    assert context is not None
    turn = Turn(context, player.origin(), player.now)
    TOPICS[topic](turn, examples("topics").get(topic, ("how",))[0])
    assert turn.parts
    check([action for action in turn.finish()[1] if action.kind == "say"])


@pytest.mark.parametrize("cause", by_meaning.CAUSES)
def test_every_cause_has_an_answer(cause: str) -> None:
    """Causes that no symptom treats have a line of their own."""
    turn = Turn(Context.fresh(Player().origin()), Player().origin(), Player().now)
    by_meaning.CAUSES[cause](turn, "")
    assert turn.parts


def test_all_causes_are_treated() -> None:
    """Each cause has an answer here or is treated as a symptom."""
    assert {*by_meaning.CAUSES, *topic_or_cause.SYMPTOMS} == set(examples("sights"))


@pytest.mark.parametrize(
    ("text", "key"),
    [
        ("is the smallest hole in the lens a bad idea?", "asked.why_not_f22"),
        ("forgot to take the pola off in the gloom, bad?", "answer.polariser_left"),
        ("I took a single exposure and packed up", "answer.one_frame"),
        ("row of little many-sided light spots", "cause.stray_light"),
        ("the graph hits both ends, whatever I set", "cause.contrast_too_great"),
        ("needles and splinters instead of a stream", "adjust.settings"),
        ("what a stupid machine you are", "talk.insult"),
        ("is the weather going to hold tomorrow?", "talk.weather"),
        ("what is my mother called", "talk.other"),
    ],
)
def test_words_of_their_own_are_answered(text: str, key: str) -> None:
    """People find other words than ours."""
    player = walked()
    said = keys(player, text)
    assert key in said or key == "adjust.settings", said
    assert player.context is not None
    question = player.context.conversation.question
    assert question is not None, "the walk's question stands"


def test_why_names_all_causes() -> None:
    """The other causes stand under `why`, with how they were found."""
    player = walked()
    player.say("f/22, 1/4 s, everything is soft")
    said = " ".join(player.say("why")[0].body for _ in range(3))
    assert "Likeliest first: f-number too high" in said


def test_a_plain_answer_names_common_practice() -> None:
    """An answer without numbers says what it rests on."""
    player = Player()
    player.say("raw or jpeg?")
    assert keys(player, "why") == ("why.practice",)


@pytest.mark.parametrize(
    "text",
    [
        "no, my horizon is crooked in all of them",  # answers something
        "fall 20 ft wide and 12 ft tall",  # facts of the place
        "what if my horizon is crooked at f/8",
    ],
)
def test_facts_and_replies_are_no_topic(text: str) -> None:
    """What tells or answers something is taken for that."""
    assert not {"answer.tilted", "symptom.too_small"} & set(keys(walked(), text))


def test_words_of_an_option_in_a_complaint_choose_nothing() -> None:
    """Everything slides to the left: that is not the option of all the water."""
    said = keys(walked(), "everything slides to the left in my pond pictures")
    assert "answer.tilted" in said


def test_another_cause_is_preferred_to_a_word_that_was_read() -> None:
    """What is milky took too long; after a warm car it is fog on the glass."""
    assert "cause.fogged_glass" in keys(walked(), "came from the warm car, every frame is milky")


def test_a_topic_with_vague_facts_must_be_sure() -> None:
    """The brook in a question is no fact; beside a number the number counts."""
    assert "asked.time" in keys(walked(), "which exposure time makes a brook look like silk?")
    assert "answer.carrying" not in keys(walked(), "moved 30 m away with the rig on my shoulder")


def test_noise_names_the_iso_that_made_it() -> None:
    """The ISO of the frame and the base ISO, where it was raised."""
    player = walked("f/11 iso 3200 1/30 s")
    (said, *_) = player.say("coarse grain and sand in the dark parts")
    assert "ISO 3200" in said.body
    assert "ISO 100" in said.body


@pytest.mark.parametrize(
    ("lines", "key"),
    [
        (["what if I go to f/8", "and with the 3-stop"], "what_if.exposure"),
        (["what if f/8", "and without the nd"], "what_if.exposure"),
        (["what if f/8", "and use the polariser"], "what_if.exposure"),
        (["what if 35 mm", "and from 10 m back"], "what_if.geometry"),
        (["what if 5 ft closer"], "what_if.geometry"),
        (["what if in landscape"], "what_if.geometry"),
        (["what if the sun comes out"], "what_if.light"),
        (["what if clouds come over"], "what_if.light"),
        (
            ["in a wooded gorge it is", "what if the sun comes out", "and at f/16"],
            "what_if.light_time",
        ),
        (["what if 1/30 s and iso 400"], "what_if.time"),
        (["suppose f/4"], "told.too_open"),
    ],
)
def test_what_if_is_answered_without_moving_the_walk(lines: list[str], key: str) -> None:
    """The settings stay as they were, several changes add up."""
    player = walked(*lines[:-1])
    assert player.context is not None
    walk = player.context.conversation.walk
    assert key in keys(player, lines[-1])
    assert player.context.conversation.walk == walk


@pytest.mark.parametrize("text", ["suppose a heron lands there", "and then we had lunch"])
def test_nothing_to_try_is_no_what_if(text: str) -> None:
    """Without a value there is no difference to tell."""
    said = keys(walked("what if f/8"), text)
    assert not any(key.startswith("what_if") for key in said)


def test_a_fact_ends_what_was_tried() -> None:
    """After something was told for good, "and …" tells too."""
    player = walked("what if f/8", "rock at 2 m")
    assert not any(key.startswith("what_if") for key in keys(player, "and at 35 mm"))


def test_closer_needs_a_distance_and_stays_off_the_fall() -> None:
    """Nobody is reckoned into the water; without a distance nothing moves."""
    assert "what_if.geometry" in keys(walked(), "what if 30 m closer")
    player = Player()
    for line in ("f/11 1/4 s iso 100, full frame, 24 mm", "what if 30 m closer"):
        said = keys(player, line)
    assert said


def test_depth_is_not_told_of_phones() -> None:
    """A phone's f-number can't be chosen."""
    player = Player()
    for line in ("phone, 12 m tall, 18 m away, rock at 1.5 m", "1", "1"):
        player.say(line)
    assert "told.too_open" not in keys(player, "what if 40 m away")


def test_who_forgets_the_time_hears_when_to_turn_back() -> None:
    """With the way out known the turn-back time is said, else what is needed for it."""
    player = walked("3 km walk out, sunset 18:40")
    assert player.context is not None
    turn = Turn(player.context, player.origin(), player.now)
    TOPICS["time_forgotten"](turn, "I lose track of the time")
    assert turn.parts[0].key.startswith("arrive.turn_back")


def test_thanks_by_meaning_put_no_question() -> None:
    """Thanks in words of one's own are answered, and the open question is not put again."""
    player = Player()
    player.say("start")
    assert keys(player, "ever so kind of you") == ("thanks",)


def test_a_soft_frame_without_settings_is_taken_once_more() -> None:
    """A frame that tells no settings, and for which none were told, keeps those it had."""
    player = Player()
    player.say("start")
    said = [key for one in player.frame("soft_without_data") for key in one.keys]
    assert "seen.unsharp" in said
    assert player.context is not None
    assert player.context.conversation.walk is not None
