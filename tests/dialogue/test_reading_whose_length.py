"""Which thing a length is about: a camera, the stand, the end of a list, or no fall at all."""

from __future__ import annotations

from typing import Final

import pytest

from bot.dialogue.reading import read
from bot.dialogue.reading.foreign import glossed

FOOT_M = 0.3048  # international foot, exact
#: The slots that a length may fill.
LENGTHS: Final = frozenset(
    {"distance_m", "fall_height_m", "fall_width_m", "nearest_m", "farthest_m", "camera_height_m"}
    | {"section_height_m", "water_depth_m", "walk_km", "climb_m"}
)

_CAMERA: Final = [
    ("camera's at navel height, so 1.05 m", {"camera_height_m": 1.05}),
    ("holding it at chin height, 1.5 m", {"camera_height_m": 1.5}),
    ("cam at pocket level, 80 cm", {"camera_height_m": 0.8}),
    ("lens sits at 1.1 m", {"camera_height_m": 1.1}),
    ("the lens is at four feet", {"camera_height_m": 4 * FOOT_M}),
    ("front glass is 30 cm above the boards", {"camera_height_m": 0.3}),
    ("came down with the tripod from 1.6 m to 70 cm", {"camera_height_m": 0.7}),
    ("raised the tripod from 80 cm to 1.3 m", {"camera_height_m": 1.3}),
    ("you told me to go lower so now I'm down from 1.5 m to 50 cm", {"camera_height_m": 0.5}),
    ("lens hovers 15 cm over the duckboards", {"camera_height_m": 0.15}),
    ("lowered the camera from 5 ft to 2 ft", {"camera_height_m": 2 * FOOT_M}),
    ("tripod legs half out, 95 centimetres at the camera", {"camera_height_m": 0.95}),
    ("gone up from 60 cm to 1.4 m so the grass is out", {"camera_height_m": 1.4}),
    ("camera on the beanbag, 25 cm over the deck", {"camera_height_m": 0.25}),
    ("shoulder height camera, 1.45 m, water at 12 m", {"camera_height_m": 1.45, "distance_m": 12}),
    ("i went from 12 m to 8 m", {"distance_m": 8}),
]
_LIST: Final = [
    (
        "moss 50 cm / falls 18 m / far bank 30 m",
        {"nearest_m": 0.5, "distance_m": 18, "farthest_m": 30},
    ),
    (
        "root 0.7, waterfall 15, back wall 28, all metres",
        {"nearest_m": 0.7, "distance_m": 15, "farthest_m": 28},
    ),
    (
        "where do i put focus: fern 1 m, fall 20 m, pines behind 45 m",
        {"nearest_m": 1, "distance_m": 20, "farthest_m": 45},
    ),
    ("how sharp can it be, log 90 cm and fall 14 m", {"nearest_m": 0.9, "distance_m": 14}),
    (
        "focus question. boulder 4 ft, waterfall 50 ft",
        {"nearest_m": 4 * FOOT_M, "distance_m": 15.24},
    ),
    (
        "pebbles 40cm; cascade 9m; cliff at the back 16m",
        {"nearest_m": 0.4, "distance_m": 9, "farthest_m": 16},
    ),
    ("boulder 1.2m, fall 14m", {"nearest_m": 1.2, "fall_height_m": 14}),
    ("focus? far rock at 20 m, fall 12 m", {"farthest_m": 20, "fall_height_m": 12}),
    ("sharp from the log at 15 m, fall 12 m", {"nearest_m": 15, "fall_height_m": 12}),
    ("rock 1 m, fall 12 m high", {"nearest_m": 1, "fall_height_m": 12}),
    (
        "depth of field: flowers 2 ft, falls 40 ft, ridge behind 200 ft",
        {"nearest_m": 2 * FOOT_M, "distance_m": 40 * FOOT_M, "farthest_m": 60.96},
    ),
]
_DISTANCE: Final = [
    ("the fall is 30 m off", {"distance_m": 30}),
    ("somebody said 200 mm. I am at thirty two and happy", {}),
    ("I'm 12 off, metres", {"distance_m": 12}),
    ("I'm 15 off it", {"distance_m": 15}),
    ("pine behind at 60 m and the curtain hangs at twenty", {"farthest_m": 60, "distance_m": 20}),
    ("nearest rock 2 m, the fall sits at 18", {"nearest_m": 2, "distance_m": 18}),
    ("standing two car lengths off the fall, call it 9 m", {"distance_m": 9}),
    ("I'm about a tennis court off the water, say 24 m", {"distance_m": 24}),
    ("maybe three canoe lengths from the drop, so 15 m", {"distance_m": 15}),
    ("shooting from the opposite bank, 35 m", {"distance_m": 35}),
    ("I shoot across from the far bank, 18 m or so", {"distance_m": 18}),
    ("photographing it from the viewpoint, 60 m", {"distance_m": 60}),
    ("I stand on the other shore, 25 m", {"distance_m": 25}),
    ("from here another eighty metres to the fall itself", {"distance_m": 80}),
    ("path ends here, it's still 40 m to the drop", {"distance_m": 40}),
    ("car to the deck 150 m, and from the deck another 70 over to the fall", {"distance_m": 70}),
    ("the waterfall is 80 m far", {"distance_m": 80}),
    ("its 120 metres far from me", {"distance_m": 120}),
    ("fall is small from here, far away, 200 m", {"distance_m": 200}),
    ("the rope stops us at 25 m so 25 m it is", {"distance_m": 25}),
    ("sign says keep 15 m back, so 15 m it is", {"distance_m": 15}),
    ("dad says stay 5 m from the edge. I'm further, 20 m from the fall", {"distance_m": 20}),
    ("50 paces off, no idea how long my paces are", {}),
    ("as high as a four storey house, and 20 m away", {"fall_height_m": 12, "distance_m": 20}),
    ("I'm 40 paces off", {"distance_m": 30}),
    (
        "whole fall from 28 m, 14 high, 6 wide",
        {"distance_m": 28, "fall_height_m": 14, "fall_width_m": 6},
    ),
    (
        "all of it from 60 ft, 30 tall, 10 across",
        {"distance_m": 60 * FOOT_M, "fall_height_m": 30 * FOOT_M, "fall_width_m": 10 * FOOT_M},
    ),
    ("12 m high. I shoot from the bridge, 30 m.", {"fall_height_m": 12, "distance_m": 30}),
]
_FAR: Final = [
    ("nothing closer than 2 m, nothing farther than 40 m", {"nearest_m": 2, "farthest_m": 40}),
    ("nothing further away than 25 m", {"farthest_m": 25}),
    ("nothing beyond 30 m in the frame", {"farthest_m": 30}),
    (
        "nothing nearer than six feet and nothing further than ninety",
        {"nearest_m": 6 * FOOT_M, "farthest_m": 90 * FOOT_M},
    ),
    ("I want it sharp as far as the cliff, 35 m", {"farthest_m": 35}),
    ("sharp up to the trees behind, 50 m", {"farthest_m": 50}),
    (
        "from the moss 60 cm right through to the rock wall, 18 m",
        {"nearest_m": 0.6, "farthest_m": 18},
    ),
    ("should be in focus until the ridge, 300 m", {"farthest_m": 300}),
    ("the last thing that must be sharp is the barn, 90 m", {"farthest_m": 90}),
    (
        "the ferns 50 cm first. in focus till the back wall, 20 m",
        {"nearest_m": 0.5, "farthest_m": 20},
    ),
]
_CHOICE: Final = [
    ("spot one is 10 m from it, spot two 18 m. took spot two", {"distance_m": 18}),
    ("place A 12 m, place B 20 m, I'm at A", {"distance_m": 12}),
    ("left spot is 9 m away, right spot 16 m. I went for the right", {"distance_m": 16}),
    ("either the bridge at 30 m or the bank at 12 m, I picked the bridge", {"distance_m": 30}),
    ("two spots: upper 25 m off, lower 14 m off. went with the lower", {"distance_m": 14}),
    ("spot A 14 m away, spot B 22 m away, which is better?", {}),
    ("he stood at 10 m, I at 16, we swapped so I'm at ten now", {"distance_m": 10}),
    ("traded places with my daughter: she had 8 m, I had 15 m, so now 8", {"distance_m": 8}),
    ("swapped with Jo, was at 20 m, she was at 12 m, now I'm at 12", {"distance_m": 12}),
]
_NOFACT: Final = [
    ("my tent is 40 m from the fall", {}),
    ("our camp was 60 m from the falls", {}),
    ("there's a bench 10 m from the fall", {}),
    ("the hut is 200 m from the waterfall, we sleep there", {}),
    ("car's parked 90 m from the drop", {}),
    ("the umbrella is 1.2 m wide", {}),
    ("my tarp is 3 m across", {}),
    ("poncho 1.5 m wide, covers both of us", {}),
    ("the footbridge is 30 m long", {}),
    ("monopod 1.6 m", {}),
    ("the railing is 1.1 m high", {}),
    ("the plunge pool must be 4 m deep", {}),
    ("my wife is 200 m behind me", {}),
    ("he's still 100 m back", {}),
    ("log across it is 12 ft long", {}),
    ("rope's 20 m long", {}),
    ("my friend stands 5 m from the fall", {}),
    ("the kids play 30 m from the fall", {}),
    ("sign says 2 km to the upper fall, we stop at the lower", {}),
    ("yesterday we saw the big 60 m one, today's is 7 m tall", {"fall_height_m": 7}),
    ("rail is 1.1 m, lens above it at 1.3 m", {"camera_height_m": 1.3}),
    ("selfie stick 90 cm", {}),
    ("the trail is 80 cm wide", {}),
    ("my tent stands right there, fall 30 m away", {"distance_m": 30}),
]
_FIX: Final = [
    ("Thirty yards. No, feet! Thirty feet to the water.", {"distance_m": 30 * FOOT_M}),
    ("20 feet, no wait metres! 20 metres to the fall", {"distance_m": 20}),
    ("15 m was rubbish, misread it. 11 m to the fall", {"distance_m": 11}),
    ("forget the ten meters, it is fourteen meters to the drop", {"distance_m": 14}),
    ("eight feet was wrong, I make it six feet to the rock", {"nearest_m": 6 * FOOT_M}),
    ("12 m high was nonsense, the sign says 9 m high", {"fall_height_m": 9}),
    ("18 yards. sorry, meters. 18 meters away", {"distance_m": 18}),
    ("a bit under 3 m, well 2.8, is the log in front", {"nearest_m": 2.8}),
    ("just over a metre, ok 1.1, to the nearest stone", {"nearest_m": 1.1}),
    ("said 20 m before, that was nonsense: 26 m to the fall", {"distance_m": 26}),
    ("yards, no, feet: 40 feet away", {"distance_m": 40 * FOOT_M}),
]
_BARE: Final = [
    ("back wall 40 m, and the drop hangs at twenty five", {"farthest_m": 40, "distance_m": 25}),
    ("fall is 30 m off, first rock at two", {"distance_m": 30, "nearest_m": 2}),
    ("nearest stone 1.5 m, farthest tree sixty", {"nearest_m": 1.5, "farthest_m": 60}),
    ("20 m high, and I stand thirty away", {"fall_height_m": 20, "distance_m": 30}),
    ("20 m tall, eight wide", {"fall_height_m": 20, "fall_width_m": 8}),
    (
        "the big cliff behind is at 80 m, and the fall stands at forty",
        {"farthest_m": 80, "distance_m": 40},
    ),
    ("the waterfall stands at 40 m tall", {"fall_height_m": 40}),
    (
        "cliff behind 70 feet, the curtain at fifty",
        {"farthest_m": 70 * FOOT_M, "distance_m": 15.24},
    ),
    ("grotto wall 22 metres, the veil hangs at nine", {"farthest_m": 22, "distance_m": 9}),
]
_FOREIGN: Final = [
    ("de", "Kamera auf Bauchnabelhöhe, 1,05 m", {"camera_height_m": 1.05}),
    ("de", "das Objektiv ist 20 cm über den Brettern", {"camera_height_m": 0.2}),
    ("es", "cámara a la altura del cinturón, 95 cm", {"camera_height_m": 0.95}),
    ("es", "el objetivo está a 30 cm sobre las tablas", {"camera_height_m": 0.3}),
    (
        "de",
        "Farn 0,9 m / Fall 22 m / hintere Bäume 70 m",
        {"nearest_m": 0.9, "distance_m": 22, "farthest_m": 70},
    ),
    ("de", "Wohin fokussieren: Stein 70 cm, Wasserfall 16 m", {"nearest_m": 0.7, "distance_m": 16}),
    (
        "es",
        "helecho 0,9 m / cascada 22 m / árboles del fondo 70 m",
        {"nearest_m": 0.9, "distance_m": 22, "farthest_m": 70},
    ),
    ("es", "¿dónde enfoco? piedra 70 cm, cascada 16 m", {"nearest_m": 0.7, "distance_m": 16}),
    ("de", "der Fall ist 55 m entfernt von mir", {"distance_m": 55}),
    ("de", "ich fotografiere vom anderen Ufer, 21 m", {"distance_m": 21}),
    ("es", "la caída está a 55 m", {"distance_m": 55}),
    ("es", "disparo desde la otra orilla, 21 m", {"distance_m": 21}),
    ("de", "nichts näher als 2 m, nichts weiter weg als 30 m", {"nearest_m": 2, "farthest_m": 30}),
    ("de", "scharf bis zur Felswand, 24 m", {"farthest_m": 24}),
    ("es", "nada más cerca de 2 m, nada más lejos de 30 m", {"nearest_m": 2, "farthest_m": 30}),
    ("es", "nítido hasta el acantilado, 24 m", {"farthest_m": 24}),
    ("de", "Platz A 14 m weg, Platz B 22 m weg. Hab B genommen", {"distance_m": 22}),
    ("es", "sitio A a 14 m, sitio B a 22 m. Elegí el B", {"distance_m": 22}),
    ("de", "mein Zelt steht 40 m vom Wasserfall", {}),
    ("de", "der Schirm ist 1,2 m breit", {}),
    ("es", "mi tienda está a 40 m de la cascada", {}),
    ("es", "el paraguas mide 1,2 m de ancho", {}),
    ("de", "zwölf Meter war Quatsch. neun Meter zum Fall", {"distance_m": 9}),
    ("de", "Vierzig Schritte. Nein, Meter! Vierzig Meter zum Fall", {"distance_m": 40}),
    ("es", "doce metros era una tontería. nueve metros hasta la cascada", {"distance_m": 9}),
    ("es", "cuarenta pies. No, metros! cuarenta metros a la cascada", {"distance_m": 40}),
    ("de", "Wegweiser: Wasserfall 250 m", {}),
    ("de", "mein Hund ist 5 m vom Fall weg", {}),
    ("es", "flecha: cascada 250 m", {}),
    ("es", "mi mujer está a 20 m de la cascada", {}),
    ("es", "la barandilla mide 1,1 m", {}),
    ("de", "das Becken ist bestimmt 3 m tief", {}),
    ("es", "la poza tendrá 3 m de profundidad", {}),
    ("de", "Rückwand 26 m, der Vorhang hängt bei elf", {"farthest_m": 26, "distance_m": 11}),
    ("es", "la pared del fondo a 26 m, la cortina a once", {"farthest_m": 26, "distance_m": 11}),
]


def _lengths(text: str) -> dict[str, object]:
    """The lengths that a message fills, by name."""
    return {name: value for name, value in read(text).known().items() if name in LENGTHS}


@pytest.mark.parametrize(
    ("text", "expected"),
    [*_CAMERA, *_LIST, *_DISTANCE, *_FAR, *_CHOICE, *_NOFACT, *_FIX, *_BARE],
)
def test_a_length_goes_to_the_thing_that_it_is_about(text: str, expected: dict[str, float]) -> None:
    """Camera, list, stand, far end, chosen place, another thing, correction, bare number."""
    assert _lengths(text) == pytest.approx(expected)


@pytest.mark.parametrize(("language", "text", "expected"), _FOREIGN)
def test_so_it_does_in_other_languages(
    language: str, text: str, expected: dict[str, float]
) -> None:
    """The same through glosses."""
    assert _lengths(glossed(text, language)) == pytest.approx(expected)
