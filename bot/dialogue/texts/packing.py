"""What is said of the bag the day before: lenses, filters, the weather; and of permits."""

from __future__ import annotations

from typing import Final

PACKING: Final[dict[str, str]] = {
    "bag.yes": "Yes",
    "bag.no": "No",
    "bag.leave": "leave the {thing}",
    "bag.take": "take the {thing}",
    # 24 to 70 mm does most, wider is a luxury, 70 to 200 mm is for sections (common practice).
    "bag.lens_level": (
        "{word}, {what}: from {off} off your {other} at {focal} holds all {height} with a level "
        "camera."
    ),
    "bag.lens_tilted": (
        "{word}, {what}: from {off} off your {other} at {focal} holds all {height}, tilted up a "
        "little."
    ),
    "bag.lens_widest": "{word}, {what}: nothing else you have is wide enough for all {height}.",
    "bag.lens_widest_plain": (
        "{word}, {what}: nothing else you have is wide enough for a whole fall."
    ),
    "bag.lens_luxury": (
        "{word}, {what}: 24 to 70 mm does most falls whole; wider is a luxury (common practice)."
    ),
    "bag.lens_only": "{word}, {what}: you have named no other.",
    "bag.lens_covered": "{word}, {what}: your {other} covers it.",
    "bag.lens_long": (
        "{word}, {what} if its weight counts: it is for sections, strands and far falls, not for "
        "the whole one."
    ),
    "bag.lens_long_take": (
        "{word}, {what} if you can carry it: it is for sections, strands and far falls."
    ),
    "bag.lens_most": "{word}, {what}: 24 to 70 mm does most of a fall (common practice).",
    "bag.lens_bring": "Bring the {most} for the whole fall, the {long} for sections.",
    # Filters
    "bag.usual_nd": "3- and 6-stop ND",
    "bag.filters": "Bring {bring}; leave {leave}.",
    "bag.filters_all": "Bring {bring}.",
    "bag.filters_none": "Leave {leave}: none of it is of use in that light.",
    "bag.filters_usual": "Most carry {list} (common practice).",
    "bag.nd": "{word}, {what}: in {sky} it makes {time}.",
    "bag.light": "For {time} at {f_number}: {sky} takes {open}, {shade} {trees}.",
    "bag.no_filter": "no filter",
    "bag.of_filter": "{stops} of filter",
    "bag.polariser_dim": "Under trees even the polariser may take too much: off, or half.",
    # The weather
    "asked.pack_camera": "Camera: tripod, {filters}, release, hood, a second battery.",
    "asked.pack_bare": "Camera: tripod, release, hood, a second battery.",
    "asked.pack_rain": "Rain: a cover for bag and camera, one more cloth, soles that grip.",
    "asked.pack_cold": "Cold: gloves, hat, a hot drink.",
    # Permits: rules differ by country, state and owner (common practice: ask, never assume).
    "permit.ask": "Only the land manager knows: ask whether {list}.",
    "permit.and": "and whether",
    "permit.tripod": "tripods are barred on platforms or boardwalks",
    "permit.selling": "selling prints makes it commercial",
    "permit.group": "a paid workshop needs a permit",
    "permit.drone": "drones are allowed at all",
    "permit.usual": (
        "Usually tripods are fine on paths, not on narrow platforms; workshops need a permit."
    ),
}
