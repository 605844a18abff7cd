"""Spanish words: a frame that is sharp all over."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "all_sharp.all": (
        r"(?:todo|toda|todas|ambas|esta|salio|sale|las? rocas?|las? esquinas?)(?: (?:esta|salio"
        r"|sale|muy|bien"
        r"|se|ve|ven|estan|y|las?|esquinas?|rocas?))* (?:nitid[oa]s?|en foco|enfocad[oa]s?)"
    ),
    "all_sharp.everywhere": (
        r"nitid[oa] (?:en todo|por todas partes|de lado a lado|hasta las esquinas)"
    ),
    "all_sharp.beside": (
        r"si|sip|ok|vale|bien|al|por ciento|en|la|pantalla|y|sin|gotas|ni|una|tambien|todo|ya"
        r"|mire|revise"
        r"|perfecto|ahora|las?|esquinas?|rocas?|cerca|lejos"
    ),
    "all_sharp.not": (
        r"no (?:esta\w*|sale\w*|salio|se|es|todo)|excepto|menos|pero|borros[oa]\w*|casi|solo|salvo"
    ),
}
