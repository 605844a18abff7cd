"""English words by which somebody only tries a change."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # How a message begins that only tries something.
    "trials.begins": (
        r"(?:(?:ok(?:ay)?|so|but|hmm?|and|now)\W+)*(?:what if|what about|how about|suppose"
        r"|what (?:would|will|does|happens?|changes?)(?: (?:happen|change|that do|it do))?"
        r"(?: (?:to|with) (?:the |my )?\w+)? (?:if|when)|how (?:would|will|does) (?:it|that"
        r"|the water)"
        r" look (?:if|with|at)|would(?:n['’]?t)? (?:it (?:help|matter) if|(?:open|clos|go|stopp"
        r"|rais"
        r"|push|lower|dropp|us|tak)ing)"
        r"|supposing|imagine|say|if|redo|recalculate|rework|do it again (?:with|at)"
        r"|again (?:with|at))"
    ),
    # By which somebody asks whether a value would do, and by which they ask for something else.
    "trials.may": (
        r"(?:could|can|can't|couldn't|may|might) (?:i|we)|would|get away with|do i lose|look like"
        r"|instead|enough|sufficient"
    ),
    "trials.asks_for": (
        r"why|which|(?:what|which) (?:f|aperture|iso|lens|focal|number)|where|when|have you|did you"
        r"|how (?:many|far|long|much|grainy)|you (?:said|gave)|same"
        r"|(?:can|could|might|may) (?:that|this|it) (?:be|come from)"
    ),
    # Whoever asks of a place to go to.
    "trials.goes": (
        r"climb\w*|safe\w*|stand\w*|step\w*|wad(?:e|ing)|cross\w*|jump\w*|lean\w*|slip\w*|walk\w*"
        r"|swim\w*|get (?:closer|down|up)|go (?:up|down|closer|nearer|behind|under|out)"
    ),
    "trials.what_time": (
        r"(?:what|which) (?:time|shutter(?: speed)?|exposure)(?: (?:do i (?:get|need)|is that|then"
        r"|is it|would that be|there))?"
    ),
    # How one goes on that builds on what was tried just before.
    "trials.goes_on": r"and|or|plus|then|at|with|without|from|in|if|same (?:at|with|from)",
    # Steps away from the water, and towards it.
    "trials.unit": r"m|met(?:er|re)s?|ft|feet|foot",
    "trials.back": r"(?:further |farther |more )?(?:back|backwards)",
    "trials.closer": r"(?:further |farther |more )?(?:closer|nearer|forward)",
    # Without the filter that was tried, or is on.
    "trials.without": r"without (?:it|that|them|one|(?:the |any )?filters?)",
}
