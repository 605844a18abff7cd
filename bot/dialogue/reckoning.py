"""From what is known to what the core computes with; every assumption is named."""

from __future__ import annotations

import math
from dataclasses import dataclass, field
from typing import Final

from bot.dialogue.facts import Facts, Flow, LensFact
from bot.dialogue.flowing import Flowing
from core import water, water_speed
from core.camera import FORMATS, Camera, Lens, SensorFormat
from core.f_number import FNumberChoice, choose_f_number
from core.framing import Framing, frame_fall
from core.optics import focus_distance_m
from core.series import Dial, exact_f_number, exact_iso, exact_shutter_s
from core.water import Look

#: Camera above the level of the rocks when nobody says [m]: knee to hip (common practice).
CAMERA_HEIGHT_M: Final = 0.9
#: Speed of a lively stream when nobody timed a leaf [m/s] (own rule; the reach means measured in
#: mountain streams lie near 0.44, Yochum et al. 2012, the fast thread that is photographed above).
STREAM_SPEED_MPS: Final = 1.5
#: Speed of water over a lip [m/s] when nothing tells it: the square root of g times the depth, of
#: a creek of 15 cm (own rule).
CREST_SPEED_MPS: Final = 1.2
#: Flow that runs to or from the camera is taken at this angle to the lens axis [deg] (own rule).
TOWARDS_DEG: Final = 30.0
#: Focal length of a phone's main camera, as on full frame [mm] (common practice).
PHONE_FULL_FRAME_MM: Final = 26.0
#: The case on which the bands of the looks were set (common practice, see `core.water`).
USUAL_HEIGHT_M: Final = 10.0
USUAL_DISTANCE_M: Final = 15.0
#: How far a stream is when nobody says [m] (own rule: near enough for the rock to lead in).
USUAL_STREAM_M: Final = 3.0
USUAL_FULL_FRAME_MM: Final = 24.0
#: Far side of the depth when nothing tells it: the far wall may be anywhere (own rule).
FAR_M: Final = math.inf


@dataclass
class Assumed:
    """Assumptions made on the way, as keys of texts with their values, each once."""

    keys: dict[str, dict[str, float]] = field(default_factory=dict)

    def note(self, key: str, **numbers: float) -> None:
        """Name an assumption; the text's key is `assumed.KEY`."""
        self.keys.setdefault(key, numbers)


def _note(assumed: Assumed | None, key: str, **numbers: float) -> None:
    if assumed is not None:  # else the caller says nothing of it
        assumed.note(key, **numbers)


def sensor_of(facts: Facts, assumed: Assumed | None = None) -> SensorFormat:
    """The person's format: as told, else as a frame's data tell it; full frame while unknown."""
    if facts.camera_format is None and facts.crop_factor is not None:
        return nearest_format(facts.crop_factor)
    if facts.camera_format is None:
        _note(assumed, "full_frame")
        return FORMATS["full frame"]
    return FORMATS[facts.camera_format]


def nearest_format(crop_factor: float) -> SensorFormat:
    """The format whose crop factor comes nearest, in ratio."""
    return min(FORMATS.values(), key=lambda one: abs(math.log(one.crop_factor / crop_factor)))


def dial_of(facts: Facts) -> Dial:
    """How finely the person's dials are marked; thirds unless they say halves."""
    return Dial.HALVES if facts.dial_halves else Dial.THIRDS


def camera_of(facts: Facts, assumed: Assumed | None = None) -> Camera:
    """The person's camera as far as it is known."""
    sensor = sensor_of(facts, assumed)
    base = exact_iso(facts.base_iso) if facts.base_iso else sensor.base_iso
    return Camera(sensor=sensor, dial=dial_of(facts), base_iso=base)


def is_phone(facts: Facts) -> bool:
    """Whether the person photographs with a phone."""
    return facts.camera_format == "phone"


def by_hand(facts: Facts) -> bool:
    """Whether nothing holds the camera: no tripod, and no wall or bag that was told of."""
    return bool(facts.hand_held) or (facts.has_tripod is False and facts.hand_held is None)


def has_no_nd(facts: Facts) -> bool:
    """Whether the person said that there is no ND, and has none on."""
    return facts.nd_stops == () and not facts.nd_on_stops


def lens_of(fact: LensFact) -> Lens:
    """A lens as the core knows it; marked f-numbers become exact ones."""
    ends = (fact.widest_at_shortest, fact.widest_at_longest)
    widest = [exact_f_number(f) if f else None for f in ends]
    return Lens(fact.shortest_mm, fact.longest_mm, widest[0], widest[1])


def lenses_of(facts: Facts) -> list[Lens]:
    """The person's lenses; a phone has its own."""
    if is_phone(facts) and not facts.lenses:
        sensor = FORMATS["phone"]
        real = PHONE_FULL_FRAME_MM / sensor.crop_factor
        return [Lens(real, real, sensor.fixed_f_number, sensor.fixed_f_number)]
    lenses = [lens_of(fact) for fact in facts.lenses]
    return [_of_a_phone(facts, lens) for lens in lenses] if is_phone(facts) else lenses


def _of_a_phone(facts: Facts, lens: Lens) -> Lens:
    """A lens of a phone: told as on full frame, its opening fixed."""
    fixed = FORMATS["phone"].fixed_f_number
    ends = (_real_focal(facts, lens.shortest_mm), _real_focal(facts, lens.longest_mm))
    return Lens(*ends, fixed, fixed)


def focal_of(facts: Facts) -> float | None:
    """The focal length in use [mm]: the one said, a phone's own, the only fixed lens."""
    if facts.focal_mm is not None:
        return _real_focal(facts, facts.focal_mm)
    lenses = lenses_of(facts)
    if len(lenses) == 1 and not lenses[0].is_zoom:
        return lenses[0].shortest_mm
    return None


def usual_focal_mm(facts: Facts, assumed: Assumed | None = None) -> float:
    """The focal length that is taken while none is known [mm].

    The one that frames the whole fall where its height and distance are known, else the usual
    one; of the person's lenses the nearest to it.
    """
    wanted_mm = USUAL_FULL_FRAME_MM / sensor_of(facts, assumed).crop_factor
    framed = not (is_stream(facts) or facts.section) and facts.distance_m is not None
    if framed and facts.fall_height_m is not None:
        wanted_mm = framing_of(facts, nearest_of(facts)).focal_mm
    return within_kit(lenses_of(facts), wanted_mm)


def within_kit(lenses: list[Lens], wanted_mm: float) -> float:
    """The focal length of some lenses nearest to a wanted one [mm]; itself without any."""
    if not lenses:
        return wanted_mm
    reachable = [min(max(wanted_mm, lens.shortest_mm), lens.longest_mm) for lens in lenses]
    return min(reachable, key=lambda focal: max(focal / wanted_mm, wanted_mm / focal))


def _real_focal(facts: Facts, focal_mm: float) -> float:
    """Phones are told as on full frame (`26 mm`); a number too long for one is read so."""
    crop = FORMATS["phone"].crop_factor
    return focal_mm / crop if is_phone(facts) and focal_mm > 12 else focal_mm


def lens_at(facts: Facts, focal_mm: float) -> Lens:
    """The lens of the kit that is used at a focal length; an unknown one otherwise."""
    fitting = [lens for lens in lenses_of(facts) if lens.covers(focal_mm)]
    return fitting[0] if fitting else Lens(focal_mm, focal_mm)


def camera_height_of(facts: Facts, assumed: Assumed | None = None) -> float:
    """Height of the camera above the level of the rocks [m]."""
    if facts.camera_height_m is None:
        _note(assumed, "camera_height", height_m=CAMERA_HEIGHT_M)
        return CAMERA_HEIGHT_M
    return facts.camera_height_m


def is_stream(facts: Facts) -> bool:
    """Whether the water runs rather than falls."""
    return bool(facts.stream) or (facts.fall_height_m is None and facts.water_speed_mps is not None)


def upright(facts: Facts) -> bool:
    """Whether the frame stands on its short side: as said, else a fall upright, a stream flat."""
    if facts.portrait is not None:
        return facts.portrait
    if facts.fall_width_m and facts.fall_height_m:
        return facts.fall_width_m <= facts.fall_height_m
    return not is_stream(facts)


def vertical_side_mm(facts: Facts, sensor: SensorFormat) -> float:
    """The side of the sensor that stands upright [mm]."""
    return sensor.long_mm if upright(facts) else sensor.short_mm


def framing_of(facts: Facts, near_m: float | None, *, distance_m: float | None = None) -> Framing:
    """The whole fall from where the person stands, on their format and as they hold it.

    Args:
        facts: what is known; the height of the fall and the distance among it.
        near_m: the nearest thing, at the lower edge [m]; None puts the fall's foot there.
        distance_m: another place to stand [m].
    """
    height_m, from_m = facts.fall_height_m or 0.0, distance_m or facts.distance_m or 1.0
    sensor, eye_m = sensor_of(facts), camera_height_of(facts)
    return frame_fall(height_m, from_m, eye_m, near_m, vertical_side_mm(facts, sensor))


def speed_of(facts: Facts, assumed: Assumed | None = None) -> tuple[float, str] | None:
    """Speed of the water [m/s] and how it was found; None when nothing tells it.

    A timed leaf beats all; then a chute's depth; a whole fall by the mean of free fall; a
    section of it near the foot by the middle between drag-limited and free fall, one at the lip
    by the speed with which a shallow creek goes over.
    """
    if facts.water_speed_mps is not None:
        return facts.water_speed_mps, "leaf"
    if facts.at_crest and facts.section:
        _note(assumed, "crest_speed", speed_mps=CREST_SPEED_MPS)
        return CREST_SPEED_MPS, "crest"
    if facts.fall_height_m is not None and not facts.stream:
        return _falling(facts, facts.fall_height_m)
    if facts.water_depth_m is not None:
        return float(water_speed.chute_speed_mps(facts.water_depth_m)), "chute"
    if facts.stream:
        _note(assumed, "stream_speed", speed_mps=STREAM_SPEED_MPS)
        return STREAM_SPEED_MPS, "stream_guess"
    return None


def _falling(facts: Facts, height_m: float) -> tuple[float, str]:
    """Speed of a fall's water [m/s], at its foot where a section is shown, else its mean."""
    if facts.section or facts.section_height_m is not None:
        low, high = water_speed.foot_speed_range_mps(height_m)
        return math.sqrt(low * high), "foot"
    return float(water_speed.mean_fall_speed_mps(height_m)), "mean_fall"


def _flowing(facts: Facts, focal_mm: float, assumed: Assumed | None = None) -> Flowing:
    found, distance_m = speed_of(facts, assumed), facts.distance_m
    assert found is not None  # noqa: S101  # the caller has set what was unknown
    assert distance_m is not None  # noqa: S101
    side_mm, angle_deg = _along_flow(facts, sensor_of(facts, assumed))
    coverage_m = float(water.coverage_m(distance_m, side_mm, focal_mm))
    from_m = facts.water_depth_m if found[1] == "chute" else facts.fall_height_m
    return Flowing(found[0], coverage_m, angle_deg, found[1], from_m)


def flowing_or_usual(
    facts: Facts, focal_mm: float | None, assumed: Assumed | None = None
) -> Flowing:
    """The water in this frame; what is unknown is taken from the usual case, and named.

    The usual case is the one on which the bands of the looks were set: a fall of 10 m from
    15 m, 24 mm as on full frame (common practice).
    """
    if focal_mm is None:
        focal_mm = usual_focal_mm(facts, assumed)
        _note(assumed, "focal", focal_mm=focal_mm)
    told = facts
    if facts.distance_m is None:
        distance_m = USUAL_STREAM_M if is_stream(facts) else USUAL_DISTANCE_M
        told = told.updated(Facts(distance_m=distance_m))
        _note(assumed, "distance", distance_m=distance_m)
    if speed_of(told) is None:
        told = told.updated(Facts(fall_height_m=USUAL_HEIGHT_M))
        _note(assumed, "height", height_m=USUAL_HEIGHT_M)
    return _flowing(told, focal_mm, assumed)


def flow_of(facts: Facts) -> Flowing:
    """The water in this frame, with what is assumed of it left unsaid."""
    return flowing_or_usual(facts, focal_of(facts))


def _along_flow(facts: Facts, sensor: SensorFormat) -> tuple[float, float]:
    """The side of the sensor along the flow [mm] and the flow's angle to the lens axis [deg]."""
    flow = facts.flow or (Flow.ACROSS if is_stream(facts) else Flow.DOWN)
    standing = vertical_side_mm(facts, sensor)
    lying = sensor.long_mm + sensor.short_mm - standing
    if flow is Flow.ACROSS:
        return lying, 90.0
    return standing, TOWARDS_DEG if flow is Flow.TOWARDS else 90.0


def wished_look(facts: Facts) -> Look:
    """The look that the person wants; textured while they have not said."""
    return Look(facts.look) if facts.look else Look.TEXTURED


def depth_of(facts: Facts, focal_mm: float, assumed: Assumed | None = None) -> FNumberChoice:
    """The f-number for the depth that the frame needs on this format and lens."""
    sensor = sensor_of(facts, assumed)
    lens = lens_at(facts, focal_mm)
    far = farthest_of(facts) or FAR_M
    near = nearest_of(facts)
    if sensor.fixed_f_number is not None:
        widest = narrowest = sensor.fixed_f_number
    else:
        widest, narrowest = lens.widest_at(focal_mm), lens.narrowest
    return choose_f_number(sensor, focal_mm, near, far, widest, narrowest, dial_of(facts))


def farthest_of(facts: Facts) -> float | None:
    """The farthest thing that must be sharp [m]: as told, else the water."""
    return facts.farthest_m or facts.distance_m


def nearest_of(facts: Facts) -> float | None:
    """The nearest thing [m]; one that lies behind the water is none."""
    far = farthest_of(facts)
    if facts.nearest_m is None or (far is not None and facts.nearest_m >= far):
        return None
    return facts.nearest_m


def focus_of(facts: Facts) -> float | None:
    """Where to focus [m]: between the nearest and the farthest; on the water without a near."""
    far, near = farthest_of(facts), nearest_of(facts)
    if near is None:
        return far
    return float(focus_distance_m(near, far or FAR_M))


def exact_settings(facts: Facts) -> tuple[float | None, float | None, float | None]:
    """F-number, time [s] and speed that the person told, as the exact values behind the marks."""
    dial = dial_of(facts)
    f_number = exact_f_number(facts.f_number, dial) if facts.f_number else None
    shutter_s = exact_shutter_s(facts.shutter_s, dial) if facts.shutter_s else None
    return f_number, shutter_s, exact_iso(facts.iso) if facts.iso else None
