"""Questions around a visit: packing, who waits at home, cards, groups, wind and light as told."""

from __future__ import annotations

import pytest

from bot.dialogue.meaning.group import is_mixed
from bot.dialogue.meaning.wordings import topic_by_words
from tests.dialogue.player import Player

TOLD = "12 m tall, 18 m away, rock at 1.5 m, full frame, 24-70, tripod, polariser"


def walked(*more: str, told: str = TOLD) -> Player:
    """Somebody who stands at the first settings, and what they said since."""
    player = Player()
    for line in ("start", told, "1", "1", *more):
        player.say(line)
    return player


def answered(player: Player, text: str) -> tuple[tuple[str, ...], str]:
    """The keys and the words of what is answered."""
    messages = player.say(text)
    keys = tuple(key for message in messages for key in message.keys)
    return keys, "\n".join(message.body for message in messages)


@pytest.mark.parametrize(
    ("text", "key"),
    [
        ("3 cloths, a lamp and a flask. Enough?", "asked.pack"),
        ("what should I text my wife before the walk?", "note.copy"),
        ("our van is parked at the upper trailhead", "note.car"),
        ("is the trail open, I heard of a rockfall", "asked.path_open"),
        ("when does it get shade at this wall?", "asked.shade"),
        ("which filter goes on first?", "asked.filter_order"),
        ("how do I know when the polariser is turned right?", "asked.polariser_seen"),
        ("how do I put both together at home?", "asked.join"),
        ("battery says 12 percent, is it broken?", "asked.battery"),
        ("which of the five should I keep?", "asked.choose"),
        ("I haven't copied the card yet, is that urgent?", "asked.copy"),
        ("what do I tell the group? all have other cameras", "asked.group"),
        ("I can see grain, can that be ISO 400?", "asked.grain"),
        ("is the noise bad?", "asked.grain"),
        ("what shall I do differently next time", "asked.next_time"),
        ("only the red graph is at the right end", "asked.channel_now"),
        ("we don't want to wait", "asked.no_wait"),
        ("rock is sharp, leaves are not, is that focus?", "keep.leaf_frame"),
        ("where should I focus?", "asked.focus"),
        ("which iso?", "asked.iso"),
        ("settings please", "where.given"),
        ("can you sing a song?", "talk.other"),
        ("my sister bakes the best plum cake", "talk.other_told"),
        ("we go to the falls on sunday and want to plan the trip", "asked.plan"),
    ],
)
def test_questions_around_a_visit(text: str, key: str) -> None:
    """Each has its own short answer, with the person's numbers where there are some."""
    assert key in answered(walked("f/11 1/4 s iso 100"), text)[0]


def test_the_turn_back_time_goes_into_the_message_home() -> None:
    """Sunset 18:40 − 60 min − 4 km with 250 m of climb (1 h 13 min) × 1.5 = 15:50."""
    player = walked("4 km walk out, 250 m climb, sunset 18:40")
    assert "15:50" in answered(player, "what do I write to my wife?")[1]


def test_a_card_before_the_trip() -> None:
    """f/13 (exactly 12.7) at ISO 100 in heavy overcast, EV 12 as in `core.light`: 161 / 4096 s."""
    player = Player()
    player.say("full frame, 24-70, 12 m tall, 18 m away, rock at 2 m")
    keys, body = answered(player, "give me a rough setting for a card")
    assert "asked.card" in keys
    assert "1/25 s in the open" in body
    player.say("only my phone")
    assert "asked.card_phone" in answered(player, "give me a rough setting for a card")[0]


def test_a_long_card_is_said_in_whole_seconds() -> None:
    """Past the dial's longest time the seconds are counted; polariser and ND lengthen it."""
    player = Player()
    player.say("full frame, 24-70, 3 m away, rock at 0.4 m")
    assert " s" in answered(player, "rough settings please, for a card")[1]


def test_one_channel_before_any_frame() -> None:
    """Without settings the answer says what to do, not with which."""
    assert "asked.channel" in answered(Player(), "only the red graph is at the right end")[0]


@pytest.mark.parametrize(
    ("text", "first", "other"),
    [
        ("why 1/5 and not 1 s", "1/5 s is textured", "1 s is silky"),
        ("why so short a time, what is the reason?", "1/4 s is textured", "1 s is silky"),
        ("why 1/8 and not 0 s", "× 1/8 s ÷", "3.9 %"),
    ],
)
def test_why_this_time_and_not_that(text: str, first: str, other: str) -> None:
    """Both shares are reckoned: 7.7 m/s × time ÷ 24 m; nothing is changed by asking."""
    body = answered(walked("f/11 1/4 s iso 100"), text)[1]
    assert first in body
    assert other in body


def test_wind_is_answered_with_a_lull_and_a_leaf_frame() -> None:
    """Once the settings are given; before that it is only noted."""
    keys = answered(walked(), "there's a little breeze now")[0]
    assert keys[:2] == ("keep.leaf_frame", "wind.lull")
    keys = answered(walked("just dots"), "yes, wind comes and goes from the fall")[0]
    assert keys[-1] == "light.at" or "ask.next" in keys
    assert "wind.calm" in answered(walked(), "the wind has dropped")[0]
    assert "wind.calm" in answered(walked("just dots", "1"), "the wind has dropped")[0]
    player = Player()
    player.say("start")
    assert "noted" in answered(player, "a little breeze")[0]


def test_light_means_something_at_once() -> None:
    """Full sun is the hard case, and after sunset filters stay off; each is said once."""
    player = Player()
    player.say("start")
    assert "light_told.sun" in answered(player, "full sun")[0]
    assert "light_told.sun" not in answered(player, "it is full sun")[0]
    assert "light_told.dusk" in answered(player, "the sun has set, it is blue and dim here")[0]
    player = Player()
    player.say("only my phone")
    assert "light_told.dusk_phone" in answered(player, "dusk already")[0]


def test_filters_stay_off_after_sunset() -> None:
    """A polariser that is on is taken off, and too much light is waited for."""
    player = walked("polariser on, 3-stop nd on", "after sunset")
    assert player.context is not None
    walk = player.context.conversation.walk
    assert walk is not None
    assert walk.given is not None
    assert not walk.given.polariser_on
    assert walk.given.nd_on_stops == 0.0
    keys = answered(walked("misty"), "after sunset")[0]
    assert "base.level_over_dusk" in keys


@pytest.mark.parametrize(
    ("told", "key"),
    [
        ("only my phone, 5 m tall, 8 m away, rock at 1 m", "symptom.shake_phone"),
        ("full frame, 24-70, no tripod, 12 m tall, 18 m away, rock at 2 m", "symptom.shake_hand"),
        (TOLD, "symptom.shake"),
    ],
)
def test_shake_is_cured_with_what_is_there(told: str, key: str) -> None:
    """Who has no tripod hears nothing of columns and legs."""
    assert key in answered(walked(told=told), "everything is wobbly, the rocks too")[0]


def test_plain_words_name_a_topic() -> None:
    """However short, and whatever else is told."""
    assert topic_by_words("settings. quick.") == "rough_card"
    assert is_mixed("two full frames, three aps-c and a phone here")
    assert topic_by_words("I lean it against a birch") == "support"
    assert topic_by_words("f/11, 1/4 s") is None
