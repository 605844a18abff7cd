"""Which cues together tell of a danger, in any language, and which take it back."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from bot.dialogue.danger.kinds import DangerKind

#: From here on it is said that somebody is in danger.
ENOUGH: Final = 1.0

#: Cues that tell of a danger when all of a line stand together. A line's weight is 1; "!" before
#: it makes it 2 (it holds although one thing speaks against it), "-" before a cue forbids that cue.
#: Own rules, written on the older corpora and the even lines of the people's.
_LINES: Final[Mapping[DangerKind, str]] = {
    DangerKind.IN_WATER: """
        drowning
        ! person submerged
        person adrift -thing_adrift
        person into_water -thing
        into_water out_of_reach
        into_water help -thing
        fell water person -thing
        clinging water
        clinging person adrift
        jammed water
        out_of_reach water person
        midstream fell
        midstream out_of_reach
        struggling water
        adrift out_of_reach
        other out_of_reach -thing
        person out_of_reach struggling
    """,
    DangerKind.FLOOD: """
        ! flooding
        water rising
        ! siren
        water dirty sudden
        dirty sudden was_dry
        debris coming
        debris sudden bigger
        cut_off water
        water swallowed
        swallowed now
        swallowed soaked
        water sudden bigger
        water bigger dirty
        debris rising
        roar_new
        was_dry water
        was_dry rising
    """,
    DangerKind.HURT: """
        ! injured
        ! collapsed
        limb damaged -thing
        limb damaged person -tripod
        heavy_blood
        chest pain
        person breath_hard
        person no_standing -thing
        limb no_standing
        fell_far -thing
        person fell_far
        person fell dull
        head_hit person
        bitten
        bitten limb
        person dazed fell
        person dazed head_hit
        person illness unwell
        ate_bad unwell
    """,
    DangerKind.THUNDER: """
        thunder
        lightning
        storm near
        storm shelter
        flash bang
        flash near
        ! hair_stands
        sky_black
    """,
    DangerKind.MISSING: """
        overdue -thing
        other whereabouts
        other gone_off long_since
        overdue long_since
        abandoned whereabouts
        other gone_off no_answer
        other no_answer
        calling no_answer
        calling long_since whereabouts
        abandoned
        one_short
        search
        ! other wandered
        other overdue
    """,
    DangerKind.COLD: """
        ! hypothermic
        shivers -thing
        person shivers soaked
        soaked shivers
        freezing numb
        limb numb
        lips_blue
        ! lips_blue soaked
        soaked freezing
        soaked numb
        soaked dull
        freezing dull
        person soaked long_since
        dull pale
    """,
    DangerKind.DARK: """
        dark blind
        blind drop_below
        light_gone still_out
        dark still_out
        light_gone
        light_low dark
        light_low still_out
        blind way -lost_self
        ! night_caught
        dark way scared
        dark scared
    """,
    DangerKind.LOST: """
        lost_self
        circles -thing_adrift
        wrong_way
        path_gone
        map_fails whereabouts_own
        whereabouts_own
        fog blind
        fog way lost_word
        map_fails lost_word
    """,
    DangerKind.LIP: """
        ! lean_out
        brink goes
        brink look_down
        brink person sits
        brink tripod
        brink ask
        ! dangle
        brink drop_below
    """,
    DangerKind.ICE: """
        ice goes_on -thing_adrift
        ice creaks
        creaks goes_on goes tripod
        creaks goes_on goes thing
        ice below
        ice chunks
        ice go_anyway goes
    """,
    DangerKind.UNDER: """
        behind_fall goes
        behind_fall ask
        landing goes
        overhang goes
        overhang fresh_rock
        fresh_rock below
        stonefall
    """,
    DangerKind.WADING: """
        wade_in -limb -thing_adrift
        wade_in goes -thing_adrift
        wade_in person -thing_adrift
        deep_in
        waders go_in
        deep go_in
        deep water goes
        deep water_speed
        bottom_unseen
        island_target goes
        swim_in
        pushes_me
    """,
    DangerKind.CLIMB: """
        climb_up wet_rock
        climb_up fall_side
        climb_up no_rope
        wet_rock no_rope
        ! solo
        climb_up next_step
        climb_bad -thing_adrift
        climb_up ask in_picture
        climb_up stuck_up
    """,
    DangerKind.BARRIER: """
        bar pass_it
        ! closed go_anyway -editing -told
        bar go_anyway
        ! bar in_picture pass_it
        closed pass_it
        closed go_in
    """,
}

#: What speaks against any danger, and how much; most of it is outweighed by `now`.
AGAINST: Final[Mapping[str, float]] = {
    "past": -1.0,
    "told": -1.0,
    "editing": -1.0,
    "over": -1.0,
    "supposed": -2.0,
    "denied": -1.0,
    "plan": -1.0,
    # What a plain day out is full of speaks against nothing that is told outright; it is weighed.
    "errand": 0.0,
    "mild": 0.0,
    "shallow": 0.0,
}
#: Cues that undo one of `AGAINST` each: it is happening, or somebody calls for help.
FOR: Final[Mapping[str, float]] = {"now": 1.0, "help": 1.0}


Line = tuple[frozenset[str], frozenset[str], float]


def _line(text: str) -> Line:
    words = text.split()
    weight = 2.0 if words[0] == "!" else 1.0
    needed = frozenset(word for word in words if word[0] not in "!-")
    return needed, frozenset(word[1:] for word in words if word[0] == "-"), weight


CONSTELLATIONS: Final[Mapping[DangerKind, tuple[Line, ...]]] = {
    kind: tuple(_line(line) for line in lines.strip().splitlines())
    for kind, lines in _LINES.items()
}
#: All cues that a language may have words for.
CUES: Final = frozenset(AGAINST.keys() | FOR.keys()).union(
    *(needed | barred for lines in CONSTELLATIONS.values() for needed, barred, _ in lines)
)


def against(cues: frozenset[str]) -> float:
    """What speaks against a danger among some cues, less what says that it is happening."""
    told = sum(weight for cue, weight in AGAINST.items() if cue in cues)
    return min(0.0, told + sum(weight for cue, weight in FOR.items() if cue in cues))


def weigh(cues: frozenset[str]) -> DangerKind | None:
    """The gravest danger that some cues of one piece of a message tell of.

    Args:
        cues: names of cues that were found close together.

    Returns:
        The kind whose best constellation, less what speaks against it, is enough; else None.
    """
    balance = against(cues)
    for kind, lines in CONSTELLATIONS.items():
        for needed, barred, weight in lines:
            if weight + balance >= ENOUGH and needed <= cues and not barred & cues:
                return kind
    return None
