"""English wordings: thunder and storms, near and far."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

STORM: Final[Mapping[str, str]] = {
    "thunder": """
        thundered, (hear|heard) it rumble, (strike|bolt|one) was ~ (close|near), (sky|clouds|
        cloud|heavens) ~ (growl|growls|growling|rumbling|rumbles|grumbling), flicker* (behind|
        over|in the (sky|clouds|west|east|north|south)), when it flashes, electric storm, (is|
        was|starts|started|keeps) (to)? thunder*, (hear|heard|hearing|distant|and|cloud|clouds|
        sky) (a|some|the|deep|loud)? (distant|low|deep|loud)? (rumble|rumbling|rumbles|rumbled),
        thunder, thunderstorm*, thundering (now|again|closer|here), thunderclap*, thunderhead*,
        thunderous sky""",
    "lightning": """
        lightning, struck by, thunderbolt*""",
    "storm": """
        (storm|storms|electrical storm|thunderstorm|cell|squall|lightning|thunder|tempest)""",
    "near": """
        in the (cloud|clouds|sky), clouds, (over|above|behind|near|on|onto|towards) (the|us|our)
        ~ (ridge|hill|mountain|valley|us|head|heads|peak|top|gorge|col|summit), (coming|rolling|
        moving|building|closing|getting|drawing|heading) ~ (in|closer|near|nearer|up|our way|
        this way|over|fast|towards us|here), overhead, on top of us, almost here, nearly here,
        right above, approaching, about to (break|hit), before it (is|gets|hits|arrives|
        reaches), breaking, started, catching us, caught us""",
    "shelter": """
        (shelter|sheltering|hide|wait|hiding|waiting|huddled|huddling|stand|standing|sit|
        sitting|safe) ~ (under|beneath|below|by|against|until) ~ (tree|trees|pine|oak|fir|
        spruce|larch|overhang|passes|metal|pole|over|through)""",
    "flash": """
        (first|second|another|big) bolt, flashes (in|over|behind|above), (flash|flashes|flashed|
        flashing|bolt|fork) (over|behind|in|and|that|was|then|of light|above|across|on the|from
        the|just|every)*""",
    "bang": """
        counted *, counting *, (bang|boom|rumble|rumbling|rumbles|crack|clap|grumble|grumbling|
        crash) ~ (later|after|seconds|behind|sky|closer|distance|far|away|again|away|over)?,
        seconds (later|after|between|apart)""",
    "hair_stands": """
        everything (hums|buzzes|is humming|is buzzing|crackles), (gave me|got) a ~ shock, hair ~
        (standing|stands|on end|up|rising|lifting|prickling), hairs ~ (standing|stand|on end|
        prickling), (tripod|poles|pole|metal|rocks|fence|ice axe|air|umbrella) (is|are|starts|
        started|keeps)? (humming|buzzing|crackling|fizzing|tingling), (buzzing|humming|
        crackling) ~ (tripod|poles|metal|rocks|air|legs), smell* ~ ozone""",
    "sky_black": """
        sky ~ (gone|turned|turning|going|went|is|goes|getting) ~ (black|inky|green|purple) ~
        (hail|rumbl*|wind|growl*|west|fast|quickly|us), (huge|big|black|massive|towering)
        anvil*, hail (is|has|started|the|big)* (coming|falling|started|size)*, anvil (cloud|
        over|above|building)*""",
}
