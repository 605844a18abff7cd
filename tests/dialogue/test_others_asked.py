"""Scenes and frames of somebody else's: answered from what is told of them, and never kept."""

from __future__ import annotations

import pytest

from bot.dialogue.meaning.of_others import as_own
from bot.dialogue.reading import read
from bot.dialogue.reading.visit import read_visit
from tests.dialogue.player import Player
from tests.dialogue.test_two_settings import in_the_gorge
from tests.dialogue.walked import keys_of, known

_SCENE = {
    "en": (
        "Suppose a student: 10 m fall, she stands 15 m back, full frame 24 mm in portrait, wet "
        "boulder at 1.5 m. Deep overcast in a wooded gorge. Where would you start her?"
    ),
    "de": (
        "Angenommen eine Schülerin: 10 m Fall, sie steht 15 m weg, Vollformat 24 mm hochkant, "
        "Stein bei 1,5 m, bewaldete Schlucht. Womit soll sie anfangen?"
    ),
    "es": (
        "Imagina una alumna: cascada de 10 m, está a 15 m, full frame 24 mm vertical, roca a "
        "1,5 m, barranco boscoso. ¿Con qué empieza?"
    ),
}


@pytest.mark.parametrize("language", _SCENE)
def test_a_supposed_scene_is_reckoned_and_not_kept(language: str) -> None:
    """Settings for it, within a walk and before any; neither fall nor lens of it stay."""
    for player in (in_the_gorge(language), Player()):
        before = None if player.context is None else player.context.conversation.walk
        body = player.say(_SCENE[language])[0].body
        assert "f/9, ISO 100, 0.3 s" in body.replace("0,3", "0.3")
        assert "9,8 %" in body or "9.8 %" in body
        assert known(player).conversation.walk == before
        assert known(player).person.kit.camera_format in {None, "full frame"}
        assert "21 mm" not in body


@pytest.mark.parametrize(
    ("line", "told"),
    [
        (
            "A student with a 16-50 on APS-C, 18 m from a 12 m fall, overcast. What should he set?",
            "34 mm (52 as full frame) holds the whole fall",
        ),
        ("Imagine one of mine at a 20 m fall, 30 m away, bright cloud. what settings?", "53 mm"),
        (
            "Say a beginner is 5 m from a stream, full frame 24 mm, under trees, what settings?",
            "Assumed: water at 1.5 m/s",
        ),
        ("suppose 10 m fall, 15 m back, 24 mm, overcast. what settings?", "In heavy overcast"),
        (
            "A student on a phone, shaded stream: can she get it smooth? What would you tell her?",
            "phone propped",
        ),
    ],
)
def test_other_scenes(line: str, told: str) -> None:
    """One's lens is chosen for the fall, what is not told is assumed; a phone has its mode."""
    for player in (in_the_gorge(), Player()):
        before = None if player.context is None else player.context.conversation.walk
        said = player.say(line)[0]
        assert told.split(" (", 1)[0] in said.body, said.body
        assert known(player).conversation.walk == before
        assert not any(key.startswith("note.") for key in said.keys)


def test_frames_of_others_have_their_causes() -> None:
    """From their own settings; the walk keeps its lens, and "another one" goes on from it."""
    player = in_the_gorge()
    walk = known(player).conversation.walk
    body = player.say(
        "Now a bad frame from last spring's class: 1/60, f/22, ISO 1600, full frame at 35 mm on a "
        "tripod, everything is slightly soft, rocks as well as water. What went wrong?"
    )[0].body
    assert "f/22 softens everything by diffraction: use f/11." in body
    body = player.say(
        "Another one. 2 s, f/11, ISO 100, the fall is one white slab with no lines in it. "
        "Is that overexposure or too long a time?"
    )[0].body
    assert "If the body of the water blinks, it is blown." in body
    assert "2 s is misty: try 0.3 s and 1/6 s, equally bright." in body
    body = player.say(
        "You've muddled that. 35 mm was the old class photo, she's at 27. My question: blown or "
        "too long, how do you tell?"
    )[0].body
    assert "it is blown" in body
    assert "1/4 s is textured, so rather blown" in body
    assert known(player).conversation.walk == walk


@pytest.mark.parametrize(
    ("language", "line", "told"),
    [
        ("en", "one of my students shot f/8 1/4 s by hand, all is blurred, why?", "camera moved"),
        ("en", "a student's frame: f/4, 1/30 s, the near rock is soft. cause?", "Focus at twice"),
        ("en", "half the class had f/16 1 s and cotton wool. what do I tell them?", "1/6 s"),
        ("en", "a student took f/8 1 s. what went wrong?", "What is wrong with it?"),
        ("de", "Ein Bild von einer Schülerin: 1/60, f/22, alles weich. Was ging schief?", "f/11"),
        ("es", "Una foto de un alumno: 1/60, f/22, todo borroso. ¿Qué falló?", "f/11"),
    ],
)
def test_causes_of_other_frames(language: str, line: str, told: str) -> None:
    """Shake, depth, time: each by its sight; nothing of it is the walk's."""
    player = in_the_gorge(language)
    walk = known(player).conversation.walk
    assert told in player.say(line)[0].body
    assert known(player).conversation.walk == walk


def test_another_one_is_theirs_only_for_a_while() -> None:
    """Later, and of nobody, it is the person's own frame."""
    player = in_the_gorge()
    player.say("a student took f/8 1 s. what went wrong?")
    player.happen("later 40 min")
    assert "others.line" not in keys_of(player, "next one: f/8, 1/8 s, too dark, why?")
    assert "others.line" in keys_of(player, "next one: he had f/8, 1/8 s, too dark, why?")


@pytest.mark.parametrize(
    ("line", "key"),
    [
        ("one of mine has APS-C with a 16-50, what does she set?", "group.one"),
        (
            "eight students, different cameras, 12 m fall from 18 m, overcast: one line?",
            "asked.group",
        ),
        ("f/8, 1/4 s, too dark, why?", "adjust.next"),
        ("a student asks what f/8 means?", ""),
        ("suppose f/16?", "what_if"),
        ("what if he uses f/16?", "what_if"),
    ],
)
def test_what_is_no_scene_of_theirs(line: str, key: str) -> None:
    """Another's kit alone, a group, one's own frame, and a try."""
    keys = keys_of(in_the_gorge(), line)
    assert "others.line" not in keys
    assert any(one.startswith(key) for one in keys), keys


def test_white_without_lines_before_any_frame() -> None:
    """Without a time there is only what blinking tells."""
    player = Player()
    assert keys_of(player, "blown or too long, how do you tell?")[0] == "white.which"


def test_planning_and_home_have_their_own() -> None:
    """A day that is planned, and frames gone through at home, are not interrupted."""
    player = Player()
    player.say("help me plan a visit tomorrow")
    assert "others.line" not in keys_of(player, _SCENE["en"])


@pytest.mark.parametrize(
    ("text", "slowest"),
    [
        ("half my students stop right down by habit", None),
        ("my students never believe me", None),
        ("my students come along", "students"),
        ("with my students", "students"),
        ("I bring six students", "students"),
    ],
)
def test_students_who_are_spoken_of_walk_nowhere(text: str, slowest: str | None) -> None:
    """Only those who come along set the pace; "Noted: students" told nobody anything."""
    assert read_visit(text).slowest == slowest


def test_one_who_is_spoken_of_is_read_as_who_writes() -> None:
    """So that her place is read, where it is left out of one's own facts."""
    text = "a student has a 24-70, she's 15 m away, her rock is at 2 m"
    told = read(as_own(text))
    assert (told.distance_m, told.nearest_m) == (15.0, 2.0)
    assert len(told.lenses) == 1


def test_leaves_that_are_smeared_have_a_cause() -> None:
    """The wind, and the frame that holds them."""
    keys = keys_of(in_the_gorge(), "ferns smeared, the rock beside them sharp. cause?")
    assert keys[:2] == ("verdict.wind", "keep.leaf_frame")
    line = "No trip plan please. Can you do it with just a phone, handheld?"
    keys = keys_of(in_the_gorge(), line)
    assert "asked.phone" in keys
