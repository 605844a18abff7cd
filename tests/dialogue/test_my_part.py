"""What is kept of a person: asking for it, being forgotten, and what a group room never reads."""

from __future__ import annotations

from datetime import timedelta

import pytest

from bot.dialogue.actions import ForgetPerson, Say, TellData
from bot.dialogue.context import Context, Room
from bot.dialogue.events import Origin
from bot.dialogue.terms import Terms
from bot.dialogue.texts import TEXTS
from tests.dialogue.player import Player
from tests.dialogue.test_message_rules import check


def kinds(player: Player) -> list[str]:
    """What was asked of the runtime beside messages."""
    return [action.kind for action in player.actions if not isinstance(action, Say)]


@pytest.mark.parametrize("answer", ["yes", "2", "delete it all", "Delete", "ok"])
def test_a_fresh_yes_deletes(answer: str) -> None:
    """The wish is asked about once, then everything goes, and the farewell says what stays."""
    player = Player()
    player.say("start")
    check(player.say("forget me"))
    assert kinds(player) == []
    grant = {"terms": Terms(backup_days=9)}
    assert player.context is not None
    player.context = player.context.model_copy(update=grant)
    player.say(answer)
    (action,) = player.actions
    assert isinstance(action, ForgetPerson)
    check([action.farewell])
    assert "for at most 9 days" in action.farewell.body
    assert player.context.person.spent == {}


@pytest.mark.parametrize("answer", ["no", "1", "keep it"])
def test_no_keeps_all(answer: str) -> None:
    """Nothing is deleted, and the walk's own question stands again."""
    player = Player()
    player.say("start")
    player.say("forget me")
    said = player.say(answer)
    assert said[0].body.startswith(TEXTS["forget.kept"])
    assert kinds(player) == []


@pytest.mark.parametrize("between", ["kit", "f/11 1/4 s iso 100", "thanks", "blub"])
def test_a_yes_after_anything_else_deletes_nothing(between: str) -> None:
    """Only the very next message is taken for the answer to "Sure?"."""
    for later in ("2", "yes", "delete it all"):
        player = Player()
        player.say("start")
        player.say("forget me")
        player.say(between)
        player.say(later)
        assert kinds(player) == [], later


def test_a_stale_yes_deletes_nothing() -> None:
    """Eleven minutes later nothing is deleted, and the question is put again."""
    player = Player()
    player.say("forget me")
    player.now += timedelta(minutes=11)
    said = player.say("yes")
    assert said[0].body.startswith("That question is 11 min old, so nothing was deleted.")
    assert kinds(player) == []
    player.say("yes")
    assert kinds(player) == ["forget_person"]


@pytest.mark.parametrize("words", ["my data", "What do you know about me?", "export", "My data!"])
def test_my_data_in_the_direct_room(words: str) -> None:
    """The files are asked for, and the walk's question stands again."""
    player = Player()
    player.say("start")
    said = player.say(words)
    check(said)
    assert said[0].body.startswith(TEXTS["data.comes"])
    assert said[0].question == "geometry"
    assert player.actions[-1] == TellData()


def test_my_data_is_not_told_in_a_group_room() -> None:
    """There a sentence says where to ask, and nothing else happens."""
    player = group()
    said = player.say("my data")
    assert said[0].body == TEXTS["data.in_private"]
    assert kinds(player) == []


class Group(Player):
    """The same person in a group room."""

    def origin(self, minutes: float = 0.0) -> Origin:
        """Addressed to the bot, with others in the room."""
        return super().origin(minutes).model_copy(update={"direct": False, "room_id": "!group"})


def group(direct: Player | None = None) -> Group:
    """A new conversation in a group room, of somebody who has talked in the direct room."""
    player = Group()
    if direct is not None and direct.context is not None:
        player.context = Context(
            person=direct.context.person, place=direct.context.place, room=Room(direct=False)
        )
    else:
        player.context = Context(room=Room(direct=False))
    return player


def everything(player: Player, *lines: str) -> str:
    """All that is said to these lines."""
    said = []
    for line in lines:
        messages = player.happen(line[2:]) if line.startswith("! ") else player.say(line)
        check(messages)
        said += [f"{message.body}\n{message.formatted_body}" for message in messages]
        said += [action.model_dump_json() for action in player.actions if action.kind != "say"]
    return "\n".join(said)


def test_a_group_room_reads_nothing_of_the_direct_one() -> None:
    """Kit, place and position told in the direct room are named there alone."""
    player = Player()
    everything(
        player,
        "start",
        "full frame, 17-28 and 70-180, tripod, polariser",
        "13.7 m tall, 18 m away, rock at 1.5 m, 3.3 km walk out, 170 m climb",
        "! place 44.1512 -71.3498",
    )
    assert "17-28" in everything(player, "kit")
    other = group(player)
    said = everything(
        other,
        "kit",
        "where am i",
        "start",
        "18 m away, rock at 1.5 m, 9 m tall",
        "1",
        "1",
        "1",
        "where am i",
        "why",
        "card",
        "3 km walk out, 150 m climb, sunset 18:40",
    )
    for marker in ("17-28", "70-180", "13.7", "3.3 km", "44.15", "71.34", "EDT"):
        assert marker not in said, marker
    assert "9 m" in said
    assert other.context is not None
    assert other.context.place == player.context.place  # type: ignore[union-attr]


def test_a_position_shared_in_the_group_room_is_used_there() -> None:
    """Who shares it with all may be answered before all."""
    said = everything(group(), "! place 44.1512 -71.3498", "3 km walk out, 150 m climb", "card")
    assert "EDT" in said
