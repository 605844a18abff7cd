"""Danger in words that no rule knows: cues of three languages, weighed together."""

from __future__ import annotations

from functools import cache
from pathlib import Path

import numpy as np
import pytest

from bot.dialogue.danger import DangerKind, read_danger
from bot.dialogue.danger.constellations import AGAINST, CONSTELLATIONS, CUES, FOR, against, weigh
from bot.dialogue.danger.features import heard_in
from bot.dialogue.danger.lexicon import Lexicon
from bot.dialogue.danger.likelihood import PLACES, Weights, places_of
from bot.dialogue.danger.meaning import LEXICONS, cues_of, kind_meant
from bot.dialogue.folding import LONGEST_TEXT, folded
from tests.people import dangers
from tests.training import danger as training
from tests.training.ingredients import stored_fingerprint

CORPUS = Path(__file__).parent / "corpus"
PREFIXES = ("", "de_", "es_")


def _imagined(name: str) -> list[list[str]]:
    lines = [
        line
        for prefix in PREFIXES
        for line in (CORPUS / f"imagined_{prefix}{name}.tsv").read_text("utf-8").splitlines()[1:]
    ]
    return [line.split("\t") for line in lines]


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("Hilfe, mein Bruder ist in den Bach gerutscht und kommt nicht mehr raus", "in_water"),
        ("der Bach läuft jetzt über den Weg und wird immer lauter", "flood"),
        ("Oma ist gestürzt und kann nicht mehr auftreten", "hurt"),
        ("es blitzt und donnert, wir sind oben am Grat", "thunder"),
        ("meine Freundin ist oben am Bach und ich höre nicht, ob sie ruft", "missing"),
        ("meine Finger sind weiß und ich spür nix mehr", "cold"),
        ("Stirnlampe tot, noch eine Stunde bis zum Auto", "dark"),
        ("kann man hinter dem Wasserfall durchgehen", "under"),
        ("socorro, mi hija se resbaló y cayó al río", "in_water"),
        ("creo que me he roto el brazo", "hurt"),
        ("estamos perdidos, no encontramos el camino", "lost"),
        ("me tumbo en el borde de la cascada y saco la cámara", "lip"),
        ("paso por encima de la valla un momento", "barrier"),
    ],
)
def test_danger_is_heard_in_each_language(text: str, kind: str) -> None:
    """German and Spanish are heard, whatever the person has set; accents may be missing."""
    danger = read_danger(text)
    assert danger is not None
    assert danger.kind.value == kind
    assert read_danger(folded(text)) == danger


@pytest.mark.parametrize(
    "text",
    [
        "für morgen ist Gewitter gemeldet",
        "die Schatten saufen ab, wie viel heller?",
        "letztes Jahr ist hier einer in den Bach gefallen",
        "ese cielo blanco mata la foto",
        "la tormenta pasó el martes, hoy ni una nube",
    ],
)
def test_harmless_in_each_language(text: str) -> None:
    """Pictures, plans and the past are no danger in German and Spanish either."""
    assert read_danger(text) is None


def test_imagined_messages_are_told_apart() -> None:
    """What the weights were trained on stays heard, and stays harmless (pins current behaviour)."""
    heard = [read_danger(row[-1]) for row in _imagined("dangers")]
    alarms = [row[-1] for row in _imagined("harmless") if read_danger(row[-1])]
    assert sum(danger is not None for danger in heard) >= 0.97 * len(heard)
    assert len(alarms) <= 0.01 * len(_imagined("harmless")), alarms


#: What was reached on the half that no rule and no weight has seen: dangers heard at least, false
#: alarms at most (pins current behaviour; the aims are 99 % and 2 %).
REACHED = {"English": (65, 12), "German": (29, 4), "Spanish": (24, 5)}


@cache
def _odd_rates() -> dict[str, int]:
    return {rate.name: rate.hits for rate in dangers.figures("odd")}


@pytest.mark.parametrize("language", REACHED)
def test_reported_half_stays_as_good(language: str) -> None:
    """The odd lines, which nobody reads, are heard as well as they were."""
    rates = _odd_rates()
    heard, alarms = REACHED[language]
    assert rates[f"{language}: recall"] >= heard
    assert rates[f"{language}: false alarms"] <= alarms


def test_even_half_is_all_heard() -> None:
    """The lines on which rules may be written are read without a miss or a false alarm."""
    assert [line for line in dangers.misses() if "nothing" in line or "harmless" in line] == []


def test_weights_were_learned_from_what_is_there() -> None:
    """Corpora, what is found in messages, and the recipe are those that the weights came from."""
    assert training.ingredients(training.messages()) == stored_fingerprint(training.NUMBERS)


def test_notation_of_wordings() -> None:
    """Endings, gaps within a sentence, groups, and groups that may be missing."""
    lexicon = Lexicon(
        common="the is",
        wordings={
            "water": "river*, (creek|small stream) bed",
            "fell": "fell ~ (in|into (the)? water), slipped .",
            "adrift": "(was|is) (just)? swept (far|away)*",
        },
        spelling=folded,
    )
    assert lexicon.cues("the riverside") == {"water"}
    assert lexicon.cues("small stream bed") == lexicon.cues("creek bed") == {"water"}
    assert lexicon.cues("he fell right into the water") == {"fell"}
    assert lexicon.cues("he fell . the dog is in") == frozenset()
    assert lexicon.cues("he slipped") == {"fell"}
    assert lexicon.cues("he slipped a note") == frozenset()
    assert lexicon.cues("is swept") == lexicon.cues("was just swept far away") == {"adrift"}
    assert lexicon.likeness("the dog is here") == 2


def test_every_wording_can_be_looked_for() -> None:
    """Wordings are compiled when a message first may hold them: none may fail there."""
    listed = [found for lexicon in LEXICONS for found in lexicon._index.values()]
    assert all(wording.pattern.pattern for found in listed for wording in found)


def test_an_unknown_cue_is_refused() -> None:
    """A slip in the name of a cue would silence its wordings."""
    with pytest.raises(ValueError, match="wader"):
        Lexicon(common="", wordings={"wader": "waders"}, spelling=folded)


def test_constellations_are_weighed() -> None:
    """One thing against outweighs a plain constellation, not a strong one; calls for help count."""
    assert weigh(frozenset({"brink", "goes"})) is DangerKind.LIP
    assert weigh(frozenset({"brink", "goes", "past"})) is None
    assert weigh(frozenset({"brink", "goes", "past", "now"})) is DangerKind.LIP
    assert weigh(frozenset({"lean_out", "past"})) is DangerKind.LIP
    assert weigh(frozenset({"person", "into_water", "thing"})) is None
    assert against(frozenset({"help"})) == 0.0
    by_words = {DangerKind.UNCLEAR, DangerKind.DESPAIR}
    assert set(CONSTELLATIONS) == set(DangerKind) - by_words
    assert AGAINST.keys() | FOR.keys() <= CUES


def test_long_messages_are_read_by_neighbouring_sentences() -> None:
    """Cues that stand far apart belong to different matters."""
    talk = "The coffee was hot and the morning was soft and quiet and kind. " * 4
    assert kind_meant(cues_of(f"He stands there. {talk} The brink is bright.")) is None
    assert kind_meant(cues_of(f"{talk} He lies down. Right at the very edge of the drop.")) is (
        DangerKind.LIP
    )


def test_what_is_found_in_a_message() -> None:
    """Words, neighbours and pieces, each once; every number is the same one."""
    heard = heard_in("f/11, 1/4 s")
    pieces = {"piece <f>", "piece <0>", "piece <s>"}
    words = {"word f", "word 0", "word s", "pair f 0", "pair 0 0", "pair 0 s"}
    assert heard.features == words | pieces | {"over f 0", "over 0 0", "over 0 s"}
    assert (heard.worded.kind, heard.meant) == (None, None)


def test_what_rules_find_is_told() -> None:
    """Wordings, constellations of cues and what a guard takes back are features too."""
    assert {"worded in_water", "cue fell"} <= heard_in("he fell in the river").features
    assert "taken back" in heard_in("nobody fell in the river").features
    assert "meant hurt" in heard_in("Oma ist gestürzt und kann nicht mehr auftreten").features


def test_scores_add_up() -> None:
    """Rare features count more, length does not, and what is unknown changes nothing."""
    scores = np.zeros((PLACES, 3), dtype=np.int8)
    rarity = np.zeros(PLACES, dtype=np.float32)
    flood, frost = places_of(["word flood"]), places_of(["word frost"])
    scores[flood], scores[frost] = [-10, 20, 0], [-10, 0, 20]
    rarity[flood], rarity[frost] = 100.0, 300.0
    bias = np.array([1.0, 0.0, 0.0])
    weights = Weights((DangerKind.FLOOD, DangerKind.COLD), bias, scores, 0.1, rarity)
    nothing = weights.likely(["word tea"])
    assert nothing.odds == pytest.approx(np.log(2) - 1)
    assert nothing.part == pytest.approx(0.5)
    one = weights.likely(["word flood", "word tea"])
    assert one.odds == pytest.approx(np.log(np.exp(2) + 1))
    assert one.kind is DangerKind.FLOOD
    assert one.part == pytest.approx(np.exp(2) / (np.exp(2) + 1))
    assert weights.likely(["word flood", "word frost"]).kind is DangerKind.COLD


def test_folded_spelling() -> None:
    """Accents, capitals, drawn-out letters and signs go, sentences are parted, long text is cut."""
    assert folded("¡Ayudaaa! ¿Está el niño?") == "ayuda . esta el nino"
    assert folded("Füße naß, 1,5 m") == "fusse nass , 1,5 m"
    assert folded("can't") == folded("can’t") == "cant"
    assert len(folded("ab " * LONGEST_TEXT)) <= LONGEST_TEXT


def test_languages_have_all_that_matters() -> None:
    """Each language has words for the same cues, but for what another one never needs."""
    cues = [
        {wording.cue for listed in lexicon._index.values() for wording in listed}
        for lexicon in LEXICONS
    ]
    for has in cues:
        assert len(CUES - has) <= 8, sorted(CUES - has)
