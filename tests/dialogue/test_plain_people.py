"""What fresh people typed in English on their walks: of the frame, in few words, asked plainly."""

from __future__ import annotations

import pytest

from bot.dialogue.danger import DangerKind, read_danger
from bot.dialogue.danger.frame_talk import without_frame_talk
from bot.dialogue.facts import Blink
from bot.dialogue.reading import read
from bot.dialogue.reading.asked_behind import tried_in
from bot.dialogue.reading.edges import edges_told
from bot.dialogue.reading.frame_words import names_no_cell
from bot.dialogue.reading.texting import in_full
from bot.dialogue.reading.unit_lists import with_units
from bot.dialogue.steps.asked.questions_asked import topic_asked
from tests.dialogue.player import Player
from tests.dialogue.walked import keys_of, known, walked

# what is said of the frame is no danger


@pytest.mark.parametrize(
    "text",
    [
        "there's a big slimy boulder roughly three feet in front of me",
        "wet log at 2 m from the camera, sharp please",
        "yes, ivy hangs over the top edge",
        "nope, I don't see any flashing bits",
        "I can't see blinkies anywhere",
    ],
)
def test_words_of_the_frame_are_no_danger(text: str) -> None:
    """A near rock with its distance, green at the top, a warning that is not there."""
    assert read_danger(text) is None


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("I slipped on the moss at the top edge", DangerKind.LIP),
        ("I can't see the path any more, no white spots either", DangerKind.DARK),
    ],
)
def test_danger_beside_such_words_is_heard(text: str, kind: DangerKind) -> None:
    """Only the words of the frame are left out."""
    danger = read_danger(text)
    assert danger is not None
    assert danger.kind is kind


def test_a_rock_that_falls_is_no_anchor() -> None:
    """Where something moves, the distance takes nothing out of the message."""
    text = "a big rock 3 m in front of me came loose and fell"
    assert without_frame_talk(text) == text


def test_who_tells_of_the_frame_while_a_place_is_closed_hears_how_to_go_on() -> None:
    """A question that nobody answers is no dead end: after four times the way out is named."""
    player = walked("can I stand on the lip for a better view")
    for line in ("the left side is clean", "a few dots blink", "f/8", "1/8 s"):
        assert "danger.insist_how" not in keys_of(player, line)
    assert keys_of(player, "f/11 and 1/4 s") == ("danger.insist_how", "ask.out_there")


# thumbs


@pytest.mark.parametrize(
    ("typed", "full"),
    [
        ("its about 20ft n im 40ft away", "it's about 20ft and i'm 40ft away"),
        ("wat f stop do u want", "what f stop do you want"),
        ("way 2 bright", "way too bright"),
        ("how do i get it 2 look silky lol", "how do i get it to look silky"),
        ("gud spot 4 a pic", "good spot for a pic"),
        ("nothin blinkin", "nothing blinking"),
        ("here w my dads camera", "here with my dads camera"),
        ("w/o tripod", "without tripod"),
        ("f/4 the light is low", "f/4 the light is low"),
        ("at 4 the sun goes", "at 4 the sun goes"),
        ("do I need the ND here", "do I need the ND here"),
        ("lol", "lol"),
    ],
)
def test_short_words_are_read_in_full(typed: str, full: str) -> None:
    """What a thumb leaves out is put back; numbers and signs of cameras stay."""
    assert in_full(typed) == full


def test_a_walk_in_short_words() -> None:
    """A teenager's lengths are read, and what is too dark is."""
    player = Player()
    assert "caution.arrive" in keys_of(player, "at hollow falls w my mums camera lol")
    player.say("its like 9m n im prolly 14m off, phone")
    assert known(player).facts.fall_height_m == 9
    assert known(player).facts.distance_m == 14


def test_other_languages_are_left_as_typed() -> None:
    """An English short word may be a word in another language."""
    player = Player()
    player.say("deutsch")
    player.say("12 m hoch, 18 m weg, u 2 m zum Stein")
    assert known(player).facts.fall_height_m == 12


# readers


@pytest.mark.parametrize(
    "text", ["no white spots", "I cannot see any bright patches", "no, no blown bits at all"]
)
def test_a_warning_by_how_it_looks(text: str) -> None:
    """Who does not know the word names what it shows."""
    assert read(text).blink is Blink.NOTHING


@pytest.mark.parametrize(
    ("text", "light"),
    [
        ("full sun up there but the cascade is in the shade", "open shade"),
        ("blue sky, the water is completely shaded", "open shade"),
        ("sunny and shady spots", None),
        ("we are at Bracken Glen", None),
        ("Otter Gorge Falls today", None),
        ("in a deep glen", "deep slot"),
    ],
)
def test_the_light_on_the_water_counts(text: str, light: str | None) -> None:
    """Sun elsewhere and names of places are no light of the water."""
    assert read(text).light == light


@pytest.mark.parametrize(
    ("text", "halves"),
    [
        ("crop sensor, 18-55, half stops", True),
        ("half-stops", True),
        ("aps-c, third stops", False),
        ("half a stop", None),
    ],
)
def test_dials_in_a_list_of_kit(text: str, *, halves: bool | None) -> None:
    """Steps in the plural are the dials'; one half of a stop is a change."""
    assert read(text).dial_halves is halves


def test_lenses_and_times_in_a_list_share_a_unit() -> None:
    """The last member's unit holds for all."""
    told = read("I have a twenty, a thirty-five and a ninety millimetre prime lens")
    assert [lens.shortest_mm for lens in told.lenses] == [20, 35, 90]
    assert with_units("1/8, .5 and 2 s") == "1/8, .5 s and 2 s"
    assert with_units("f/8, 0.5 m and 2 m") == "f/8, 0.5 m and 2 m"


@pytest.mark.parametrize(
    ("text", "asked", "told"),
    [
        ("all clean except a fern at the left edge", "sides", {"sides": "twig"}),
        ("the sky is really white at the top", "anchor", {"top": "sky"}),
        ("stepped two feet to the right and the twig is gone", "", {"sides": "clean"}),
    ],
)
def test_edges_in_other_words(text: str, asked: str, told: dict[str, str]) -> None:
    """An exception is what counts, the sky is at the top, and what is gone is clean."""
    assert edges_told(text, asked) == told


@pytest.mark.parametrize(
    ("text", "none"), [("e1", True), ("b3 c7", True), ("b2", False), ("f11", False), ("hi", False)]
)
def test_cells_outside_the_grid(text: str, *, none: bool) -> None:
    """A letter and a number that name no cell; an f-number is none."""
    assert names_no_cell(text) is none


@pytest.mark.parametrize(
    ("text", "tried"),
    [
        ("she wants f/8 too, what would it change?", "f/8"),
        ("1/30 instead, what happens", "1/30"),
        ("I took 1/30", None),
    ],
)
def test_a_setting_that_is_only_tried(text: str, tried: str | None) -> None:
    """What it would change is asked, and nothing is set."""
    assert tried_in(text) == tried


# what is asked


@pytest.mark.parametrize(
    ("text", "topic"),
    [
        ("where can i change the aperture", "find_setting"),
        ("how do I turn on the timer", "find_setting"),
        ("how can I tell if it is in focus", "sharp_check"),
        ("could my son stand in the shot", "people_in_frame"),
        ("do I focus before the filter goes on?", "meter_after"),
        ("can the whites be rescued?", "recover_white"),
        ("when should I delete the bad ones", "rejects"),
        ("what should i dial in now", "rough_card"),
        ("what does silky mean", "term.look"),
        ("what is clipped?", "term.clipped"),
        ("what's the hyperfocal distance", "term.hyperfocal"),
    ],
)
def test_questions_in_plain_words(text: str, topic: str) -> None:
    """Each has its own answer."""
    assert topic_asked(text) == topic


def test_where_a_setting_is_on_a_phone() -> None:
    """A phone has no wheels."""
    player = walked(told="9 m tall, 14 m away, rock at 2 m, phone")
    assert keys_of(player, "where do I find the shutter speed")[0] == "asked.find_setting_phone"
    assert keys_of(walked(), "where do I set the iso")[0] == "asked.find_setting"


def test_a_phone_makes_its_time_by_a_mode() -> None:
    """Who asks a phone for silky water hears of the mode, not of a dial."""
    player = walked(told="9 m tall, 14 m away, rock at 2 m, phone")
    assert keys_of(player, "how long for soft water?")[0] == "asked.time_phone"


def test_whether_the_stabiliser_shows() -> None:
    """It is looked for at a rock."""
    text = "the stabilizer was still on, will I see that"
    assert keys_of(walked(), text)[0] == "asked.stabiliser_seen"


# the walk


def test_nothing_near_beside_other_facts() -> None:
    """Told in one sentence of a message, neither rock nor anchor is asked for."""
    player = Player()
    player.say("4 m tall")
    keys = keys_of(player, "i'm 6 m away, nothing close in front of me")
    assert not any("nearest" in key for key in keys)
    assert known(player).conversation.walk is not None
    assert keys_of(player, "full frame, 24-70, tripod")[-1] == "ask.top"
    player.say("1")
    assert "ask.anchor" not in keys_of(player, "1")


def test_a_warning_is_no_edge() -> None:
    """While the top is looked at, what does not blink is the water."""
    player = Player()
    player.say("9 m tall, 14 m away, rock at 2 m, full frame 24-70")
    assert keys_of(player, "nothing blinks")[:2] == ("plain.holds", "ask.top")
    assert keys_of(player, "it blinks all over")[-1] == "ask.settings"


def test_a_phone_shows_no_warning() -> None:
    """Nothing that blinks on a phone tells little; the walk goes on."""
    player = Player()
    player.say("9 m tall, 14 m away, rock at 2 m, phone")
    assert keys_of(player, "took one, no blinking") == ("phone.no_warning", "ask.top")


@pytest.mark.parametrize(
    ("text", "key"),
    [("the water came out like milk", "plain.no_texture"), ("it's too dark", "plain.too_dark")],
)
def test_a_complaint_without_numbers_has_a_remedy(text: str, key: str) -> None:
    """Before its settings are asked for, one thing to do is named."""
    assert keys_of(Player(), text)[-2:] == (key, "ask.settings")


def test_the_sky_is_no_white_water() -> None:
    """A phone's next frame: white sky is left out, not tapped."""
    player = Player()
    for line in ("phone", "the water is just white"):
        player.say(line)
    assert "phone.darker" not in keys_of(player, "the sky is very bright at the top")


def test_the_top_edge_tells_of_no_light() -> None:
    """Dark trees along the edge are an edge; what stands beside may be the light."""
    player = Player()
    player.say("9 m tall, 14 m away, rock at 2 m, full frame 24-70")
    player.say("the top is dark forest, no sky")
    assert known(player).facts.light is None


def test_a_cell_that_the_grid_has_not() -> None:
    """Who names one of a frame hears which there are; without a frame it is nothing."""
    player = walked()
    assert "together.no_cell" not in keys_of(player, "d9")
    player.frame("clean")
    assert keys_of(player, "d9")[0] == "together.no_cell"


# home


def test_frames_from_a_time_on_and_the_chosen_one() -> None:
    """A range names them all; a praised frame may borrow leaves; the log takes the named one."""
    player = Player()
    for line in ("I'm home", "1/30, 1/15, 1/8 and 1/4 s, f/8, ISO 100"):
        player.say(line)
    (said,) = player.say("leaves are smeared from 1/8 up")
    assert "1/8 s and 1/4 s" in said.body
    player.say("1/8 has lovely strands")
    (said,) = player.say("which one do I keep")
    assert said.body.startswith("Keep 1/8 s")
    (said,) = player.say("log 1/15 please")
    assert "1/15 s" in said.body
    (said,) = player.say("log it")
    assert said.body.startswith("Log:")
    (said,) = player.say("1/15 and faster are too dark")
    assert "1/30 s" in said.body
