"""Whether somebody says that they are home again, or wants to go through their frames."""

from __future__ import annotations

from typing import Final

from bot.dialogue.reading.phrases import any_of, plain

_PLACE: Final = (
    r"(?:at |in |back at |back in )?(?:home|the (?:hotel|hut|hostel|lodge|cabin|camper|flat|office)"
    r"|my (?:desk|computer|room|place|sofa|couch))"
)
_HOME: Final = any_of(
    rf"(?:i'?m|i am|we'?re|we are|am|got|getting|arrived|made it|now|finally|safely|just) "
    rf"(?:\w+ ){{0,2}}?{_PLACE}(?: (?:now|again|safe\w*))*(?! to\b)",
    r"(?:back |safe(?:ly)? )(?:at )?home",
    r"^(?:at )?home (?:now|again|safe\w*)(?= ?[,.;:!])",
    r"^(?:at )?home(?: now| again| safe\w*)?(?=$|[,.;:! ]+(?:here|and)\b)",
    r"(?:bin|sind|sitze|wieder|jetzt|endlich|gut) (?:\w+ ){0,2}?(?:zu ?hause|daheim|im hotel"
    r"|auf der hütte|am rechner|am computer)|^(?:zu ?hause|daheim)\b",
    r"(?:estoy|estamos|ya|llegué|llegamos) (?:\w+ ){0,2}?(?:a|en) (?:casa|el hotel)|^en casa\b",
)
_FRAMES: Final = r"(?:frames?|pictures?|photos?|shots?|pics?|images?|series|results?)"
_REVIEW: Final = any_of(
    r"^review$",
    rf"(?:review|critique|discuss|judge) (?:of )?(?:the |my |our |these |this |some )*{_FRAMES}",
    rf"(?:go|look|going) (?:through|over|at) (?:the |my |our |these |this |all )*{_FRAMES}",
    r"(?:die |meine |unsere )?(?:bilder|fotos|aufnahmen) (?:durchgehen|besprechen|ansehen"
    r"|anschauen)|^bildbesprechung$",
    r"(?:repasar|revisar|comentar|ver) (?:las |mis |estas )*(?:fotos|imágenes|tomas)|^repaso$",
)
_BRINGS: Final = any_of(
    r"here (?:is|are|comes?|it is|they are|you go|'s)|here's|(?:send|sending|sharing|share|show)\w*"
    rf" (?:you )?(?:the |my |one |it|them|a )*(?:{_FRAMES})?",
    r"hier (?:ist|sind|kommt|kommen)|(?:schick|sende|zeig)\w*",
    r"aquí (?:está|están|va|van)|(?:te )?(?:envío|mando|enseño)",
)
#: "I left it at home", "we are going home": said on the way, or of something else.
_NOT_YET: Final = any_of(
    r"left|forgot\w*|going(?! (?:through|over)\b)|heading|walk\w*|driv\w*"
    r"|on (?:my|our|the) way|when|once|before|until|if|will|tomorrow|later",
    r"vergessen|liegt|lassen|wenn|sobald|bevor|auf dem weg|fahre\w*|gehe\w*|später",
    r"olvid\w*|dej\w*|cuando|camino|mañana|luego",
)
#: What may stand around a message.
_ENDS: Final = " .!,"


def is_home(text: str) -> bool:
    """Whether a message or a caption says that the person is away from the water for the day.

    Args:
        text: as typed, in any of Linn's languages.
    """
    said = plain(text, _ENDS)
    return _HOME.search(said) is not None and not _NOT_YET.search(said)


def wants_review(text: str) -> bool:
    """Whether a message asks to go through frames that are taken."""
    said = plain(text, _ENDS)
    return _REVIEW.search(said) is not None and not _NOT_YET.search(said)


def brings_frame(text: str) -> bool:
    """Whether a message says that a frame comes with it or behind it."""
    return _BRINGS.search(plain(text, _ENDS)) is not None
