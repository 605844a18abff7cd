"""Good news, assent, pauses, goodbyes, and questions that were put often enough."""

from __future__ import annotations

import pytest

from bot.dialogue.meaning.asides import Aside, aside_of, praises, took_off
from tests.dialogue.player import Player
from tests.dialogue.walked import keys_of

TOLD = "12 m tall, 18 m away, rock at 1.5 m, full frame, 24-70, tripod"


def walked(*more: str) -> Player:
    """Somebody who stands at the first settings, and what they said since."""
    player = Player()
    for line in ("start", TOLD, "1", "1", *more):
        player.say(line)
    return player


@pytest.mark.parametrize(
    ("text", "aside"),
    [
        ("much better now, there are real strands in it", Aside.PRAISE),
        ("wow, that looks gorgeous", Aside.PRAISE),
        ("the slab doesn't shine any more", Aside.PRAISE),
        ("jetzt sieht es richtig gut aus", Aside.PRAISE),
        ("ahora queda muy bien", Aside.PRAISE),
        ("looks good but the rock is soft", None),
        ("not better at all", None),
        ("is that better?", None),
        ("alright, makes sense", Aside.ASSENT),
        ("ok then we stay behind the fence", Aside.ASSENT),
        ("alles klar", Aside.ASSENT),
        ("yes", None),
        ("i'll wait for the cloud", Aside.WAIT),
        ("we are going to have a quick lunch", Aside.WAIT),
        ("einen moment", Aside.WAIT),
        ("i don't want to wait", None),
        ("thanks, we grab a coffee", Aside.THANKS),
        ("thank you, that worked", Aside.THANKS),
        ("right, I'm off to bed", Aside.BYE),
        ("we're packing up, heading back home", Aside.BYE),
        ("tschüss, bis morgen", Aside.BYE),
        ("nos vemos, buenas noches", Aside.BYE),
        ("how do I get back to the car?", None),
        ("the branch on the left is gone and so is the bright pebble, " * 3, None),
    ],
)
def test_asides_are_heard_in_many_voices(text: str, aside: Aside | None) -> None:
    """A goodbye, a pause, good news and assent are known; complaints and questions are none."""
    assert aside_of(text) is aside


def test_praise_is_taken_back_by_what_is_wished_beside() -> None:
    """What is good "but" or "only with" is no good news yet."""
    assert praises("lovely, like silver")
    assert not praises("lovely but a bit dark")
    assert took_off("okay, took it off now")
    assert not took_off("I took it with me")


@pytest.mark.parametrize(
    ("lines", "text", "key"),
    [
        ([], "bye then, see you tomorrow", "aside.bye"),
        (["start"], "that's all, off to bed", "aside.bye_plan"),
        (["start"], "give me a minute", "aside.wait"),
        (["start", "full sun"], "fine, i'll have a sandwich", "aside.wait_sun"),
        ([], "ok great", "aside.good"),
    ],
)
def test_one_line_and_no_question(lines: list[str], text: str, key: str) -> None:
    """A goodbye and a pause are answered by one line; nothing is asked."""
    player = Player()
    for line in lines:
        player.say(line)
    assert keys_of(player, text) == (key,)


def test_a_goodbye_closes_a_kept_walk_with_its_note() -> None:
    """Who goes when the frame holds hears what was kept; who goes earlier, the last settings."""
    assert keys_of(walked("just dots"), "back to the car for us") == (
        "keep.log_line",
        "keep.finished",
    )
    assert keys_of(walked(), "we are leaving now") == ("aside.bye_kept",)


def test_an_interruption_is_answered_first() -> None:
    """While it is asked whether anybody is in danger, a goodbye is no answer of its own."""
    player = walked()
    player.say("start")  # "go on or new?"
    assert "aside.bye_kept" not in keys_of(player, "good night")


def test_good_news_keeps_the_settings() -> None:
    """What is called good stays; the warning is still asked for, and after that the frame holds."""
    player = walked()
    assert keys_of(player, "that looks great")[0] == "aside.kept"
    assert "highlights.held_own" in keys_of(player, "no")


def test_good_news_of_a_frame_that_held_goes_on_to_the_ladder() -> None:
    """Once it is known that nothing clips there, good news needs no further question."""
    player = walked("f/11 1/8 s iso 100, patches blink")
    player.say("f/11 1/15 s iso 100, nothing blinks")
    player.say("back")
    assert "aside.kept" in keys_of(player, "lovely")
    player = walked("blub", "blub", "blub")
    assert "highlights.held" in keys_of(player, "lovely")


def test_good_news_before_any_frame_or_after_all_of_them() -> None:
    """Then it is only heard."""
    player = Player()
    player.say("start")
    assert keys_of(player, "great, lovely spot")[0] == "aside.good"
    assert keys_of(walked("just dots"), "that's perfect")[0] == "aside.good"
    assert keys_of(Player(), "wonderful") == ("aside.good",)


@pytest.mark.parametrize("before", [("the leaves are smeared",), ("just dots", "2")])
def test_the_leaf_frame_is_the_last_one(before: tuple[str, ...]) -> None:
    """Who says that it worked is told what to check, and asked what comes next."""
    keys = keys_of(walked(*before), "the ferns came out lovely")
    assert keys[:2] == ("aside.both_frames", "keep.check")


def test_the_filter_that_is_on_is_taken_off() -> None:
    """What "it" means is the one filter on the lens; with none on nobody knows."""
    player = walked("polariser on")
    assert "base.settings" in keys_of(player, "it is off now")
    assert player.context is not None
    assert player.context.facts.polariser_on is False
    player = walked("f/11 1/4 s iso 100 with the 3-stop nd on")
    player.say("took it off")
    assert player.context is not None
    assert player.context.facts.nd_on_stops == 0.0
    assert "base.settings" not in keys_of(walked(), "took it off")


def test_a_time_that_is_liked_is_kept_when_the_white_clips() -> None:
    """Patches are then mended by other levers; where none is left, by the time."""
    player = walked("f/11 1/4 s iso 400, lovely water")
    assert "1/4 s" in player.say("patches blink")[0].body
    player = walked("f/16 1/4 s iso 100, lovely water")
    assert "1/4 s" not in player.say("patches blink")[0].body.split("\n")[0]


def test_a_question_is_not_put_for_the_third_time() -> None:
    """After one repeat it is only named; `where am i` shows it whole again."""
    player = walked()
    assert [keys_of(player, "blub")[-1] for _ in range(3)] == [
        "ask.blink",
        "still_open",
        "still_open",
    ]
    assert keys_of(player, "where am i")[-1] == "ask.blink"
    assert keys_of(player, "2")[0] == "highlights.dots"


def test_a_check_that_nobody_answers_is_let_go() -> None:
    """Asked twice, it is assumed, which is said; the walk goes on to the next check."""
    player = Player()
    player.say("start")
    player.say(TOLD)
    keys = [keys_of(player, "blub") for _ in range(2)]
    assert [said[-1] for said in keys] == ["ask.top", "ask.sides"]
    assert "let_go.top" in keys[1]


def test_what_can_be_assumed_is_let_go_on_the_way_to_the_lens() -> None:
    """How tall and how far cannot be assumed so: they stay open, in a few words."""
    player = Player()
    player.say("start")
    player.say("12 m tall, 18 m away")
    keys = [keys_of(player, "blub")[-1] for _ in range(3)]
    assert keys == ["ask.nearest", "still_open", "ask.kit"]
    player = Player()
    player.say("start")
    assert [keys_of(player, "blub")[-1] for _ in range(4)][2:] == ["still_open", "still_open"]


def test_the_settings_of_the_leaf_frame_are_not_those_of_the_water() -> None:
    """What was set for the leaves is heard, and the water's time stays."""
    player = walked("f/11 1/4 s iso 100", "did 1/125 for the ferns with iso 3200")
    assert player.context is not None
    walk = player.context.conversation.walk
    assert walk is not None
    assert walk.given is not None
    assert walk.given.shutter_s == pytest.approx(0.25)
    assert "told.settings" in keys_of(player, "1/100 s at f/8")


@pytest.mark.parametrize(
    "text",
    [
        "when should I turn back if the creek rises?",
        "when do we have to turn around if there is thunder?",
    ],
)
def test_signs_of_a_flood_turn_back_at_once(text: str) -> None:
    """No hour holds then."""
    assert keys_of(walked(), text)[0] == "answer.turn_back_at_once"


def test_settings_beside_other_words_are_no_complaint_of_a_mode() -> None:
    """Numbers stand beside the names of modes, too; who dials them has left the automatic."""
    said = keys_of(walked(), "f11 and half a second iso 100 like my friend said")
    assert said[0] == "told.settings"


def test_the_way_in_a_question_how_long_to_stay_is_taken() -> None:
    """What is told inside of a question is not lost: the turn-back time is the answer."""
    player = walked()
    first = keys_of(player, "how long can I stay, sun sets 20:10 and it is 2 km back")
    assert "arrive.turn_back" in first
    assert "arrive.turn_back" in keys_of(player, "so how long can I stay")
    assert "asked.stay" in keys_of(walked(), "how long can I stay")


def test_smeared_leaves_answer_whether_they_move() -> None:
    """The leaf frame follows, and the question is not put again."""
    player = walked("f/11 1/6 s iso 100", "1")
    assert keys_of(player, "leaves are a bit smeary") == (
        "keep.leaf_frame",
        "keep.check",
        "ask.next",
    )
