"""Danger is heard in every voice, and not in harmless words that sound like it."""

from __future__ import annotations

import json
import string
import time
from pathlib import Path
from typing import Final

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.dialogue.danger import (
    Danger,
    DangerKind,
    Level,
    Safe,
    Whose,
    anyone_out_there,
    gravest,
    in_danger,
    read_danger,
    who_is_safe,
    whose,
)
from bot.dialogue.danger.kinds import LEVELS
from bot.dialogue.danger.spelling import sentences
from bot.dialogue.folding import LONGEST_TEXT
from bot.dialogue.own_words import is_own
from bot.dialogue.texts import TEXTS
from tests.dialogue.player import Player
from tests.every import holds_for_every
from tests.training.danger import TOPICS_BETWEEN

CORPUS = Path(__file__).parent / "corpus"


def _rows(name: str) -> list[list[str]]:
    lines = (CORPUS / name).read_text(encoding="utf-8").splitlines()[1:]
    return [line.split("\t") for line in lines]


_SETS = ("", "fresh_", "last_", "unseen_", "final_")
DANGERS = [row for name in _SETS for row in _rows(f"{name}dangers.tsv")]
_KINDS = sorted({kind for kind, _, _ in DANGERS})


@pytest.mark.parametrize("kind", _KINDS)
def test_danger_is_heard(kind: str) -> None:
    """Each way of saying it is heard, at the level that the corpus names."""
    holds_for_every((row for row in DANGERS if row[0] == kind), _is_heard_at_its_level)


def _is_heard_at_its_level(row: list[str]) -> None:
    _, level, text = row
    danger = read_danger(text)
    assert danger is not None
    assert danger.level is Level(level)


def test_kinds_are_told_apart() -> None:
    """At least 97 of 100 dangers get the words for their own kind (pins current behaviour)."""
    right = sum(_kind(text) == kind for kind, _, text in DANGERS)
    assert right >= 0.97 * len(DANGERS)


def _kind(text: str) -> str | None:
    danger = read_danger(text)
    return danger.kind.value if danger else None


@pytest.mark.parametrize("name", _SETS)
def test_harmless_words_stay_harmless(name: str) -> None:
    """The same words about the picture, the past or nobody are no danger."""
    harmless = [row[-1] for row in _rows(f"{name}harmless.tsv")]
    assert [text for text in harmless if read_danger(text)] == []


#: Strangers' facts that are no plain talk: a leader would speak up at the first two. Of the others
#: each is asked about, which is one question too many.
SPEAKS_UP: Final = frozenset(
    {
        "wasser geht mir bis zum schienbein, 35 cm tief",
        "luna llena y nada más, ni una linterna",
        "stockdunkle klamm, ganz schmaler spalt über mir",
        "up to my waist",
        "u said 1/4 but i only dare 1/10, hands shaking, no tripod",
        "the stream comes down the valley right towards me and under my feet",
    }
)


def test_messages_full_of_facts_are_harmless() -> None:
    """None of the messages that other tests read for facts or topics is taken for a danger.

    Questions about dangers are neither: see the topics between.
    """
    lines = (
        line
        for path in sorted(CORPUS.glob("*.jsonl"))
        for line in path.read_text(encoding="utf-8").splitlines()
    )
    told = [row["text"] for row in map(json.loads, lines) if row.get("topic") not in TOPICS_BETWEEN]
    assert {text for text in told if read_danger(text)} <= SPEAKS_UP


def test_own_words_are_harmless() -> None:
    """A person who types an option's words, or sends a question back, is in no danger."""
    of_danger = ("ask.out_there", "ask.in_danger")
    own = [key for key in TEXTS if key.startswith("ask.") and not key.startswith(of_danger)]
    fired = {TEXTS[key] for key in own if read_danger(TEXTS[key])}
    assert not fired


@pytest.mark.parametrize("text", ["where am I", "Wo sind wir?", "nada cerca", "Leaves or rock"])
def test_words_that_linn_offers_alarm_nobody(text: str) -> None:
    """A command or an option, typed as a whole message, is answered as what it is."""
    assert is_own(text)
    assert "safe" not in {said.question for said in Player().say(text)}


def test_own_words_within_a_message_are_read_on() -> None:
    """Only a whole message is Linn's own word."""
    assert not is_own("where am I, I see no path any more")
    assert read_danger("where am I, I see no path any more") is not None


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("how deep can I go in? my friend slipped in", DangerKind.IN_WATER),
        ("hopped the rail, now the water is rising fast", DangerKind.FLOOD),
        ("may I stand in the stream? I hear thunder", DangerKind.THUNDER),
        ("f/11, 1/4 s, and he broke his leg", DangerKind.HURT),
    ],
)
def test_the_graver_danger_wins(text: str, kind: DangerKind) -> None:
    """Of two dangers in a message the graver is answered, an emergency before any place."""
    assert read_danger(text) == Danger(kind, Level.EMERGENCY)


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("the water is rising", DangerKind.FLOOD),
        ("water brown", DangerKind.FLOOD),
        ("das Wasser steigt", DangerKind.FLOOD),
        ("it is thundering", DangerKind.THUNDER),
        ("lost", DangerKind.LOST),
        ("is the water rising?", None),
        ("is the water rising", None),
        ("water up to my shins", None),
        ("auto iso landed on 640", None),
    ],
)
def test_the_shortest_words_are_heard(text: str, kind: DangerKind | None) -> None:
    """A few words that are nothing but an emergency are one; a question about it is none."""
    danger = read_danger(text)
    assert (danger.kind if danger else None) is kind


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("Tom slipped in!", DangerKind.UNCLEAR),
        ("anna is missing", DangerKind.MISSING),
        ("lukas ist reingefallen", DangerKind.UNCLEAR),
        ("juan está herido", DangerKind.HURT),
        ("filter fell in", None),
        ("nobody is hurt", None),
        ("polarizer is missing", None),
        ("anna is happy", None),
    ],
)
def test_a_name_may_be_somebody(text: str, kind: DangerKind | None) -> None:
    """Who is called by a name is asked about, if not sure; a thing is none, nobody is nobody."""
    assert read_danger(text) == (Danger(kind, LEVELS[kind]) if kind else None)


@pytest.mark.parametrize(
    "text",
    [
        "last year a friend slipped in",
        "nobody slipped in",
        "if somebody slipped in, what then",
        "my friend slipped in but she is out again",
        "i slipped and cut my hand but i am fine",
        "is there a risk of flash floods",
        "my lens cap fell into the river",
    ],
)
def test_what_is_no_danger_now(text: str) -> None:
    """Long past, denied, supposed, over, or happened to a thing: no emergency."""
    assert read_danger(text) is None


@pytest.mark.parametrize(
    "text",
    [
        "last year it was fine, now my friend slipped in",
        "not sure if he's breathing",
        "nobody is here but my friend slipped in",
        "what do I do if my friend fell in",
        "my friend slipped in, i am fine",
        "missing since yesterday: my brother is missing",
        "he is out now but his leg is broken",
        "can't I just hop the rail",
    ],
)
def test_what_is_danger_all_the_same(text: str) -> None:
    """A past, a denial or an "if" nearby does not hide what is happening."""
    assert read_danger(text) is not None


@given(st.text(max_size=400))
def test_any_text_can_be_read(text: str) -> None:
    """Nothing raises, and case does not matter."""
    assert read_danger(text.upper().lower()) == read_danger(text.upper().lower().casefold())
    read_danger(text)


@given(
    st.sampled_from([row[-1] for row in DANGERS]), st.sampled_from(["!", "...", "!!", " :(", ""])
)
def test_case_and_ends_do_not_matter(text: str, end: str) -> None:
    """Shouted, whispered, with or without a stop: the same danger."""
    assert read_danger(text.upper() + end) == read_danger(text)
    assert read_danger(f"  {text.capitalize()}{end}") == read_danger(text)


@given(st.sampled_from([row[-1] for row in DANGERS]))
def test_apostrophes_do_not_matter(text: str) -> None:
    """Typed with a typographic apostrophe, the same danger."""
    assert read_danger(text.replace("'", "’")) == read_danger(text)


def test_long_messages_take_no_longer_for_each_letter() -> None:
    """No pattern runs away: a message of ten times the length takes its part, with room."""
    words = "the water is in the river and i am not so "
    short, long = (min(_seconds([words * times]) for _ in range(3)) for times in (4, 40))
    assert long < 10 * 10 * max(short, 1e-4)


def _seconds(texts: list[str]) -> float:
    start = time.process_time()
    for text in texts:
        read_danger(text)
    return time.process_time() - start


def test_every_kind_has_its_words() -> None:
    """Each kind has an instruction of 160 characters at most; each emergency a second one."""
    for kind, level in LEVELS.items():
        keys = [f"danger.{kind.value}"]
        keys += [f"danger.{kind.value}.again"] if level is Level.EMERGENCY else []
        for key in keys:
            assert len(TEXTS[key]) <= 160, key


def test_danger_texts_hold_no_settings() -> None:
    """No f-number, ISO or shutter time where somebody is in danger."""
    for kind in DangerKind:
        text = TEXTS[f"danger.{kind.value}"] + TEXTS.get(f"danger.{kind.value}.again", "")
        assert not any(word in text for word in ("f/", "ISO", "1/", " mm")), kind


def test_sentences_have_one_spelling() -> None:
    """Short forms are written out, slips mended, decimals kept; long text is cut."""
    said = sentences("He's cant't... thundr! 1.5 m, dont; thinkin’ (it’s) ’ n't")
    assert "thunder" in said[1]
    assert said[2].startswith("1.5 m , do not")
    assert len(" ".join(sentences("ab " * LONGEST_TEXT))) <= LONGEST_TEXT
    assert sentences(string.punctuation) is not None


_ALL, _ONE, _OWN, _NOT = Safe.ALL, Safe.ONE, Safe.OWN, Safe.NOT


@pytest.mark.parametrize(
    ("text", "safe"),
    [
        ("yes all safe", _ALL),
        ("we're back at the car", _ALL),
        ("nobody is hurt, we're all fine", _ALL),
        ("no one is hurt", _ALL),
        ("me and my friend are safe", _ALL),
        ("I am fine, and so is she", _ALL),
        ("found the path again", _ALL),
        ("all seven of us at the shelter", _ALL),
        ("wir sind alle in Sicherheit", _ALL),
        ("es ist nichts passiert", _ALL),
        ("alles gut", _ALL),
        ("todo bien, ya salimos", _ALL),
        ("no pasó nada", _ALL),
        ("we are all up on the road", _ALL),
        ("all three are out", _ALL),
        ("we can see the car", _ALL),
        ("i can see the car now", _OWN),
        ("two are out", _ONE),
        ("she managed to climb out by herself", _ONE),
        ("paramedics are with him", _ONE),
        ("die Bergwacht ist bei ihm", _ONE),
        ("la ambulancia ya está aquí", _ONE),
        ("they are out", Safe.THEY),
        ("sie sind in Sicherheit", Safe.THEY),
        ("ya salieron", Safe.THEY),
        ("she's out and ok", _ONE),
        ("shes ok too", _ONE),
        ("got him out, he's fine", _ONE),
        ("the helicopter took him", _ONE),
        ("er ist wieder raus", _ONE),
        ("ihm geht es gut", _ONE),
        ("la sacamos, está bien", _ONE),
        ("I am safe", _OWN),
        ("mir geht es gut", _OWN),
        ("estoy bien", _OWN),
        ("yes", Safe.YES),
        ("ja", Safe.YES),
        ("sí", Safe.YES),
        ("ok", Safe.HEARD),
        ("fine", Safe.HEARD),
        ("OK, thanks!", Safe.HEARD),
        ("alles klar", Safe.HEARD),
        ("vale", Safe.HEARD),
        ("false alarm", Safe.RETRACTED),
        ("was just a joke", Safe.RETRACTED),
        ("war nur Spaß", Safe.RETRACTED),
        ("era broma", Safe.RETRACTED),
        ("no i meant the camera fell in", Safe.RETRACTED),
        ("nur die Kamera ist reingefallen", Safe.RETRACTED),
        ("solo se cayó la cámara", Safe.RETRACTED),
        ("no, he's still in there", _NOT),
        ("not all of us are safe", _NOT),
        ("noch nicht", _NOT),
        ("no se mueve", _NOT),
        ("this is no joke", None),
        ("all safe?", None),
        ("was it a joke?", None),
        ("was it only my camera?", None),
        ("yes but he is cold", None),
        ("almost out", None),
        ("hope she's fine", None),
        ("she is out of sight", None),
        ("i'm fine with f/8", None),
        ("alle ok bis auf Tom", None),
        ("todos bien menos mi hijo", None),
        ("my friend fell in, just the tripod is out", None),
        ("f/8", None),
        ("", None),
        ("alle sind oben am weg", Safe.ALL),
        ("estamos todos arriba en el camino", Safe.ALL),
        ("wir sind oben an der kante", None),
    ],
)
def test_who_is_safe_in_words(text: str, safe: Safe | None) -> None:
    """Only a plain statement says that somebody is safe, and it says who."""
    assert who_is_safe(text) is safe


@pytest.mark.parametrize(
    ("text", "out"),
    [
        ("yes, someone is out there", True),
        ("me", True),
        ("sí, mi hijo", True),
        ("no, all back", False),
        ("nobody", False),
        ("niemand", False),
        ("nadie", False),
        ("todo bien, ya salimos", False),
        ("estoy en el mirador", False),
        ("ok i'm back", False),
        ("ok i won't", False),
        ("i stepped back from it", False),
        ("ok dann nicht", False),
        ("bin zurück", False),
        ("me he apartado", False),
        ("no problem, i won't fall", None),
        ("nobody but me", None),
        ("nobody?", None),
        ("not yet", None),
        ("it was just my tripod", None),
        ("si no vuelvo a las seis", None),
        ("f/8", None),
    ],
)
def test_anyone_out_there_in_words(text: str, *, out: bool | None) -> None:
    """Whether somebody is still at the bad place."""
    assert anyone_out_there(text) is out


@pytest.mark.parametrize(
    ("text", "danger"),
    [
        ("no all good", False),
        ("nobody's out there", False),
        ("no we're just taking pictures", False),
        ("nein wir sind auf dem weg", False),
        ("no, todo bien", False),
        ("i meant the light is dying", False),
        ("we're sitting in the cafe", False),
        ("fine", False),
        ("she is fine", False),
        ("yes my friend is", True),
        ("ja mein bruder", True),
        ("my friend", True),
        ("yes theres wind, comes and goes", None),
        ("no, he's still in there", None),
        ("no idea", None),
        ("no puedo salir", None),
        ("ok", None),
        ("12 m tall, 18 m away", None),
        ("i meant what?", None),
    ],
)
def test_in_danger_in_words(text: str, *, danger: bool | None) -> None:
    """Whether somebody is in danger, whatever words the answer takes."""
    assert in_danger(text, others=True) is danger


def test_who_is_fine_speaks_for_nobody_else() -> None:
    """That I am fine answers a doubt about me, not one about another."""
    assert in_danger("I'm fine", others=False) is False
    assert in_danger("I'm fine", others=True) is None


@pytest.mark.parametrize(
    ("text", "who"),
    [
        ("my friend slipped in", Whose(own=False, others=1)),
        ("my two friends slipped in", Whose(own=False, others=2)),
        ("I slipped and broke my ankle", Whose(own=True, others=0)),
        ("we are lost", Whose(own=True, others=2)),
        ("my friend and I fell in", Whose(own=True, others=1)),
        ("mein Bruder ist in den Bach gerutscht", Whose(own=False, others=1)),
        ("ich bin in den Bach gefallen", Whose(own=True, others=0)),
        ("mi hija se resbaló y cayó al río", Whose(own=False, others=1)),
        ("me caí al río", Whose(own=True, others=0)),
        ("estamos perdidos", Whose(own=True, others=2)),
    ],
)
def test_whose_danger_it_is(text: str, who: Whose) -> None:
    """Who writes, another, several: who is safe later speaks for these alone."""
    assert whose(text) == who
    assert whose("the water is rising", DangerKind.FLOOD) == Whose(own=True, others=0)
    assert whose("seen tom?", DangerKind.MISSING) == Whose(own=False, others=1)
    assert whose("slipped in!", DangerKind.IN_WATER) == Whose(own=True, others=1)
    assert who.with_also(Whose(own=True, others=2)) == Whose(own=True, others=2)


def test_gravest_of_kinds() -> None:
    """The order of the kinds decides; a kind from an older version counts least."""
    assert gravest("cold", "in_water") == "in_water"
    assert gravest("older", "lost") == "lost"
