"""Words that hint at danger: a line about it first, then the usual answer; alone they are asked."""

from __future__ import annotations

from collections.abc import Mapping

import pytest

from bot.dialogue.actions import CheckFrame
from bot.dialogue.danger import Danger, DangerKind, Level, people_here, read_danger
from bot.dialogue.danger.kinds import LEVELS
from bot.dialogue.steps.safety import closed_place, danger_here, doubt, doubt_reply, hint
from tests.dialogue.player import Player
from tests.dialogue.unsure import FACTS, hinted
from tests.dialogue.walked import keys_of, known, turn_of, walked

HINT = Danger(DangerKind.UNCLEAR, Level.HINT, certain=False)
UNSURE = Danger(DangerKind.UNCLEAR, Level.UNSURE, certain=False)
WATER = Danger(DangerKind.IN_WATER, Level.EMERGENCY)
LIP = Danger(DangerKind.LIP, Level.STOP)
#: Words of which no rule knows anything.
ODD = "the old pine there groans so oddly"
ASKED = ("danger.doubt", "ask.in_danger")


def reads(monkeypatch: pytest.MonkeyPatch, told: Mapping[str, Danger | None]) -> None:
    """From now on these texts tell of such dangers, and others of none."""
    monkeypatch.setattr(people_here, "read_danger", told.get)


def of_odd_words(monkeypatch: pytest.MonkeyPatch, danger: Danger, *more: str) -> None:
    """From now on the odd words tell of that, alone and with more."""
    reads(monkeypatch, dict.fromkeys((ODD, *more), danger))


def frame_keys(player: Player, caption: str) -> list[str]:
    return [key for one in player.share(caption) for key in one.keys]


# how far a danger goes


@pytest.mark.parametrize("level", Level)
def test_what_is_told_outright(level: Level) -> None:
    """An emergency and a place where nobody stands are; what only sounds so is asked about."""
    told = Danger(DangerKind.UNCLEAR, level).is_told
    assert told is (level in {Level.EMERGENCY, Level.STOP})


def test_every_kind_but_the_unclear_one_is_told() -> None:
    """Each by its own level."""
    told = {kind for kind in DangerKind if Danger(kind, LEVELS[kind]).is_told}
    assert told == set(DangerKind) - {DangerKind.UNCLEAR}


# in a conversation


def test_a_hint_beside_facts_is_said_first_and_all_else_answered() -> None:
    """By the weights as they are: nothing is asked, and the message is no doubt."""
    player = Player()
    player.say("start")
    said = keys_of(player, hinted())
    assert said[0] == "danger.hint"
    assert "ask.in_danger" not in said
    assert known(player).conversation.doubted is None


@pytest.mark.parametrize(
    "beside_it",
    [FACTS, "which ISO do I take?"],
)
def test_beside_a_fact_or_a_question_the_walk_goes_on(
    monkeypatch: pytest.MonkeyPatch, beside_it: str
) -> None:
    """The same answer as without the hint, behind one line."""
    text = f"{beside_it} {ODD}"
    of_odd_words(monkeypatch, HINT, text)
    said = keys_of(walked(), text)
    assert said[0] == "danger.hint"
    assert said[1:] == tuple(key for key in keys_of(_unheard(monkeypatch), text))


def _unheard(monkeypatch: pytest.MonkeyPatch) -> Player:
    """Somebody in whose words no danger is heard."""
    reads(monkeypatch, {})
    return walked()


def test_an_answer_to_the_open_question_goes_on(monkeypatch: pytest.MonkeyPatch) -> None:
    """A number is an answer, whatever it sounds like."""
    player = walked("dots")
    of_odd_words(monkeypatch, HINT, "2")
    said = keys_of(player, "2")
    assert said[0] == "danger.hint"
    assert len(said) > 1
    assert "ask.leaves" not in said


@pytest.mark.parametrize(
    ("text", "goes_on"), [("1", True), ("yes", True), ("nope", True), (ODD, False)]
)
def test_an_options_own_words_are_an_answer(text: str, goes_on: bool) -> None:
    """As a number is; other words that tell nothing are none."""
    turn = turn_of(walked("dots"))
    assert hint.goes_on(turn, text) is goes_on
    assert [part.key for part in turn.parts] == ["danger.hint"] * goes_on


@pytest.mark.parametrize("lines", [(), ("start",)])
def test_alone_it_is_asked_about(monkeypatch: pytest.MonkeyPatch, lines: tuple[str, ...]) -> None:
    """Nothing of a walk explains such words, with a question open or without."""
    player = Player()
    for line in ("metric", *lines):
        player.say(line)
    of_odd_words(monkeypatch, HINT)
    assert keys_of(player, ODD) == ASKED


def test_what_only_sounds_so_is_asked_about_beside_facts_too(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    """No more than a hint goes on."""
    text = f"{FACTS} {ODD}"
    of_odd_words(monkeypatch, UNSURE, text)
    assert keys_of(walked(), text) == ASKED


def test_leave_to_stand_in_water_is_refused_at_once(monkeypatch: pytest.MonkeyPatch) -> None:
    """What sounds like danger beside it need not be asked about: nobody goes in."""
    player, text = walked(), f"{ODD}, the water is ankle deep, can I stand in it"
    of_odd_words(monkeypatch, UNSURE, text)
    said = keys_of(player, text)
    assert said[0] == "danger.wading"
    assert said[-1] == "ask.out_there"


def test_a_hint_of_nothing_grave_says_nothing(monkeypatch: pytest.MonkeyPatch) -> None:
    """Who hears badly is in no danger; no line stands before the answer."""
    player, text = walked(), "I'm hard of hearing"
    of_odd_words(monkeypatch, HINT, text)
    said = keys_of(player, text)
    assert not {"danger.hint", "ask.in_danger"} & set(said)


def test_while_it_is_asked_a_hint_adds_nothing(monkeypatch: pytest.MonkeyPatch) -> None:
    """The question that stands open is put again, without a line about a hint."""
    player, text = walked(), f"{FACTS} {ODD}"
    of_odd_words(monkeypatch, HINT, text)
    player.say(ODD)
    said = keys_of(player, text)
    assert "danger.hint" not in said
    assert said[-1] == "ask.in_danger"


def test_at_a_closed_place_its_own_question_stands(monkeypatch: pytest.MonkeyPatch) -> None:
    """Whether somebody is out there is asked, not whether somebody is in danger."""
    player = walked("I'm at the lip")
    of_odd_words(monkeypatch, UNSURE)
    assert keys_of(player, ODD)[-1] == "ask.out_there"
    assert known(player).conversation.doubted is None


def test_one_sentence_of_several_tells_of_danger(monkeypatch: pytest.MonkeyPatch) -> None:
    """While a place is closed it is answered, whatever the others calm."""
    player = walked("I'm at the lip")
    reads(monkeypatch, {})
    monkeypatch.setattr(closed_place, "read_danger", lambda one: WATER if ODD in one else None)
    assert keys_of(player, f"I'd say most are back. {ODD}.")[0].startswith("danger.in_water")


def test_a_told_light_makes_a_hint_of_darkness(monkeypatch: pytest.MonkeyPatch) -> None:
    """Words that only sound like somebody in the dark are of the picture beside its light."""
    text = f"overcast, {ODD}"
    of_odd_words(monkeypatch, Danger(DangerKind.DARK, Level.EMERGENCY, certain=False), text)
    assert danger_here.danger_in(turn_of(walked()), ODD) is not None
    assert danger_here.danger_in(turn_of(walked()), text) == HINT


def test_a_hint_is_let_go_by_who_goes_on(monkeypatch: pytest.MonkeyPatch) -> None:
    """What was asked about is seldom danger, and who needs help asks for no ISO."""
    player = walked()
    of_odd_words(monkeypatch, HINT)
    monkeypatch.setattr(doubt, "read_danger", {ODD: HINT}.get)
    player.say(ODD)
    assert "ask.in_danger" not in keys_of(player, "which ISO do I take?")
    assert known(player).conversation.doubted is None


# captions


@pytest.mark.parametrize("danger", [HINT, UNSURE])
def test_a_caption_that_tells_nothing_else_is_asked_about(
    monkeypatch: pytest.MonkeyPatch, danger: Danger
) -> None:
    """The frame is measured, and its result waits."""
    player = walked()
    of_odd_words(monkeypatch, danger)
    assert tuple(frame_keys(player, ODD))[-2:] == ASKED
    assert any(isinstance(action, CheckFrame) for action in player.actions)
    assert player.result("clean") == []


def test_a_caption_that_tells_settings_goes_on_behind_the_line(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    """Its result comes at once."""
    player, text = walked(), f"f/11, 1/4 s {ODD}"
    of_odd_words(monkeypatch, HINT, text)
    said = frame_keys(player, text)
    assert "danger.hint" in said
    assert "ask.in_danger" not in said
    assert player.result("clean")


# people of the room


def test_names_of_the_room_are_read_as_friends() -> None:
    """Whole names, the longer first, with or without the sign before them; others stay."""
    people = ("Isk", "Isk Marrow")
    text = people_here.with_friends("@isk marrow waits, Isk too, Iskra not", people, "en")
    assert text == "my friend waits, my friend too, Iskra not"
    assert people_here.with_friends("Isk waits", (), "en") == "Isk waits"


@pytest.mark.parametrize(
    ("named", "friend", "heard"),
    [
        (None, None, None),
        (None, HINT, HINT),
        (None, WATER, WATER),
        (HINT, None, HINT),
        (UNSURE, HINT, UNSURE),
        (HINT, UNSURE, UNSURE),
        (UNSURE, WATER, WATER),
        (UNSURE, LIP, LIP),
        (LIP, WATER, LIP),  # what is told by the words as typed stands
    ],
)
def test_the_surer_of_both_readings_counts(
    monkeypatch: pytest.MonkeyPatch,
    named: Danger | None,
    friend: Danger | None,
    heard: Danger | None,
) -> None:
    """With the name and with a friend in its place; a hint takes nothing back."""
    reads(monkeypatch, {"Isk sways": named, "my friend sways": friend})
    found = people_here.danger_in("my friend sways", "Isk sways")
    assert found is heard
    assert people_here.danger_in("Isk sways", "Isk sways") is named


@pytest.mark.parametrize(
    ("text", "named", "of_him", "told"),
    [
        ("Isk fell off the rock", UNSURE, WATER, True),
        ("Isk fell off the rock", UNSURE, UNSURE, False),
        ("Isk fell off the rock", UNSURE, None, False),
        ("Isk fell off the rock", None, WATER, False),  # nothing sounds so
        ("Isk fell off the rock", WATER, WATER, False),  # it is told already
        ("did Isk fall off the rock?", UNSURE, WATER, False),  # who asks tells nothing
    ],
)
def test_whether_words_are_an_emergency_of_somebody(
    monkeypatch: pytest.MonkeyPatch,
    text: str,
    named: Danger | None,
    of_him: Danger | None,
    told: bool,
) -> None:
    """Of whoever is named at their start."""
    reads(monkeypatch, {text: named, "he fell off the rock": of_him})
    assert people_here.may_be_of_somebody(text) is told


def test_an_emergency_of_a_name_is_asked_about_in_a_room(monkeypatch: pytest.MonkeyPatch) -> None:
    """Though nobody asked Linn; other talk is left alone."""
    player, text = walked(), "Isk fell off the rock"
    reads(monkeypatch, {text: UNSURE, "he fell off the rock": WATER, ODD: UNSURE})
    assert player.happen(f"aside {ODD}") == []
    assert [key for one in player.happen(f"aside {text}") for key in one.keys][-2:] == list(ASKED)


# what is heard, by what is going on


def test_a_step_aside_is_of_a_twig(monkeypatch: pytest.MonkeyPatch) -> None:
    """While the frame's sides are looked at, "it's gone" is of what stood in there."""
    player = Player()
    text = "moved left, now it's gone"
    for line in ("12 m tall, 15 m away, rock at 1.5 m, full frame, 24-70", "leaves"):
        player.say(line)
    player.say("a branch on the left side")
    reads(monkeypatch, {text: UNSURE})
    assert danger_here.danger_in(turn_of(player), text) is None
    reads(monkeypatch, {text: WATER})
    assert danger_here.danger_in(turn_of(player), text) is WATER


@pytest.mark.parametrize(("danger", "left"), [(UNSURE, None), (WATER, WATER)])
def test_what_is_denied_is_none_unless_certain(
    monkeypatch: pytest.MonkeyPatch, danger: Danger, left: Danger | None
) -> None:
    """The sense of a reply denies what only sounds so."""
    of_odd_words(monkeypatch, danger)
    monkeypatch.setattr(doubt_reply, "denies", lambda _turn, _text: True)
    assert danger_here.danger_in(turn_of(walked()), ODD) is left


def test_a_hint_is_a_danger_that_nothing_is_sure_of() -> None:
    """As it is read by the weights as they are."""
    danger = read_danger(hinted())
    assert danger == HINT
    assert danger is not None
    assert not danger.certain
