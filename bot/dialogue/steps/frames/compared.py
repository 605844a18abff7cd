"""What a comparison of frames found, in words: the one to take, why, and what to mind."""

from __future__ import annotations

from typing import Final

from bot.dialogue import reckoning
from bot.dialogue.compose import Role
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.turn import Turn
from core.frame.comparison import (
    Comparison,
    FramePair,
    Gap,
    LeafVerdict,
    Reason,
    Recommendation,
)
from core.series import SAME_STOPS, Dial, shutter_label
from core.water import Look

#: Reasons whose sentence tells the look of the frame; the others tell the one that is wished.
_OWN_LOOK: Final = frozenset({Reason.SHARE, Reason.SEEN})

#: No frame has the look that is wished for.
_MISSED: Final = frozenset({Reason.TOO_SHORT, Reason.TOO_LONG})


def say(turn: Turn, found: Comparison) -> None:
    """Say which frame to take, the order of their water, and what disagrees."""
    pair = next((pair for pair in found.pairs if pair.identical), None)
    if pair is not None and len(found.frames) == 2:
        first, second = _letter(pair.first), _letter(pair.second)
        turn.say(Role.SETTINGS, "compared.same", first=first, second=second)
        return
    if found.pairs and not any(pair.aligned for pair in found.pairs):
        _say_misfit(turn, Role.SETTINGS, found.pairs[0])
        return
    _say_recommended(turn, found)
    _say_doubts(turn, found)
    alike = found.recommendation is not None and found.recommendation.reason is Reason.ALIKE
    if len(found.order) > 1 and not alike:
        frames = ", ".join(named(turn, found, place) for place in found.order)
        turn.say(Role.CHECK, "compared.order", frames=frames)
    if found.leaf is not None:
        _say_leaf(turn, found.leaf)
    for gap in _between_water(found)[:1]:
        turn.say(
            Role.ASSUMPTION,
            _at_home(turn, "compared.gap"),
            crisper=_letter(gap.crisper),
            smoother=_letter(gap.smoother),
            time=shutter_label(gap.shutter_s, _dial(turn)),
        )
    _explain(turn, found)


def _between_water(found: Comparison) -> list[Gap]:
    """The gaps of the ladder; beside the frame for the leaves there is none."""
    leaf = None if found.leaf is None else found.leaf.leaf
    return [gap for gap in found.gaps if leaf not in {gap.crisper, gap.smoother}]


def named(turn: Turn, found: Comparison, place: int) -> str:
    """A frame by its letter and its time, as on the pictures: `B (1/4 s)`."""
    shutter_s = found.frames[place].shutter_s
    if shutter_s is None:
        return TEXTS["together.frame_untimed"].format(letter=_letter(place))
    time = shutter_label(shutter_s, _dial(turn))
    return TEXTS["together.frame"].format(letter=_letter(place), time=time)


def _letter(place: int) -> str:
    return chr(ord("A") + place)


def _dial(turn: Turn) -> Dial:
    return reckoning.dial_of(turn.facts)


def _say_recommended(turn: Turn, found: Comparison) -> None:
    chosen = found.recommendation
    if chosen is None:
        turn.say(Role.SETTINGS, "compared.no_water")
        return
    frame = found.frames[chosen.frame]
    seen = frame.look if frame.look and chosen.reason in _OWN_LOOK else chosen.wished
    name = chosen.reason.value.replace(" ", "_")
    by_pictures = chosen.reason in _MISSED and frame.share is None
    turn.say(
        Role.SETTINGS,
        f"compared.{name}_seen" if by_pictures else f"compared.{name}",
        frame=named(turn, found, chosen.frame),
        look=TEXTS[f"look.{seen.value}"],
        share=measures.crossed(frame.share or 0.0),
        go=_where_to_go(turn, chosen, name),
    )
    for caveat in chosen.caveats:
        key = f"compared.caveat.{caveat.value.replace(' ', '_')}"
        turn.say(Role.CHECK, key, letter=_letter(chosen.frame))
    if chosen.leaves_from is not None:
        turn.say(Role.CHECK, "compared.leaves_from", letter=_letter(chosen.leaves_from))


def _where_to_go(turn: Turn, chosen: Recommendation, name: str) -> str:
    """To which time, or in which direction, where no frame has the wished look."""
    if chosen.reason not in _MISSED:
        return ""
    time = ""
    if chosen.try_shutter_s is not None:
        label = shutter_label(chosen.try_shutter_s, _dial(turn))
        time = TEXTS["compared.try"].format(time=label)
    return TEXTS[_at_home(turn, f"compared.go.{name}")].format(time=time)


def _at_home(turn: Turn, key: str) -> str:
    """The sentence for who is at home, where nothing more can be taken today."""
    return f"{key}_then" if turn.is_at_home else key


def _say_doubts(turn: Turn, found: Comparison) -> None:
    """Frames that don't lie on the others, and brightness that is not as the data say."""
    for pair in found.pairs:
        if not pair.aligned:
            _say_misfit(turn, Role.CHECK, pair)
        elif pair.disagree and pair.measured_stops is not None and pair.stated_stops is not None:
            turn.say(
                Role.CHECK,
                "compared.disagree",
                first=_letter(pair.first),
                second=_letter(pair.second),
                measured=_brighter("compared.", pair.measured_stops, "as_bright"),
                stated=_brighter("compared.stated_", pair.stated_stops, "same"),
            )


def _brighter(keys: str, stops: float, same: str) -> str:
    if abs(stops) < SAME_STOPS:
        return TEXTS[f"{keys}{same}"]
    side = "brighter" if stops > 0 else "darker"
    return TEXTS[f"{keys}{side}"].format(stops=measures.stops(stops))


def _say_misfit(turn: Turn, role: Role, pair: FramePair) -> None:
    assert pair.misfit is not None  # noqa: S101  # the callers ask only about such pairs
    turn.say(
        role,
        f"compared.misfit.{pair.misfit.value.replace(' ', '_')}",
        first=_letter(pair.first),
        second=_letter(pair.second),
    )
    if pair.shared_spots:
        turn.say(Role.CHECK, "compared.drops")


def _say_leaf(turn: Turn, leaf: LeafVerdict) -> None:
    key = "good" if leaf.matches else "brighter" if leaf.stops > 0 else "darker"
    turn.say(
        Role.CHECK,
        f"compared.leaf.{key if leaf.sharp else 'moved'}",
        leaf=_letter(leaf.leaf),
        main=_letter(leaf.main),
        stops=measures.stops(leaf.stops),
    )


def _explain(turn: Turn, found: Comparison) -> None:
    """For `why`: the other looks, and what was measured of each frame."""
    wished = found.recommendation.wished if found.recommendation else None
    for suited in found.suited:
        if suited.look is not wished:
            look = TEXTS[f"look.{suited.look.value}"]
            turn.reason("why.compared.suited", look=look, letter=_letter(suited.frame))
    for place, frame in enumerate(found.frames):
        name = named(turn, found, place)
        if frame.share is not None:
            share = measures.crossed(frame.share)
            turn.reason("why.compared.share", frame=name, share=share)
        if frame.texture is not None:
            texture = measures.percent(frame.texture)
            turn.reason("why.compared.texture", frame=name, texture=texture)


def look_named(look: Look | None, key: str) -> str:
    """A look put into a piece of a sentence; "" where it is not known."""
    return "" if look is None else TEXTS[key].format(look=TEXTS[f"look.{look.value}"])
