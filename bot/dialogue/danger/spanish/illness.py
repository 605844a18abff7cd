"""Spanish wordings: illnesses that turn bad in minutes, what was eaten, and how it shows."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

ILLNESS: Final[Mapping[str, str]] = {
    "illness": """
        diabet*, insulina, (bajon|bajada|baja) de azucar, (azucar|glucosa) ~ (baja|bajo|suelo|
        cayo), hipoglucemi*, asma, asmatic*, inhalador, alergi*, epilep*, convulsion*, demencia,
        alzheimer, embaraz*, (rompio|roto) aguas, contracciones, infarto, del corazon,
        marcapasos, ictus, derrame, golpe de calor, insolacion, anafila*, anticoagulante*,
        pastillas, apendic*, (boligrafo|inyeccion|pluma) de adrenalina, la inyeccion, (avispa|
        avispas|abeja|abejas|avispon|vibora|serpiente|culebra|alacran|escorpion|arana|garrapata)""",
    "unwell": """
        (confuso|confusa|desorientad*|suda|sudando|sudorosa|sudoroso|temblorosa|tembloroso|silba|
        pita|mareado|mareada|desmayado|desmayada|desmayo|floja|flojo|dormida|dormido|adormilad*|
        vomita|vomitando|vomito|vomitar|nauseas|convulsiona|hinchado|hinchada|hincha|hinchan|
        ronchas|urticaria|ahoga|jadea|balbucea|murmura|palida|palido|gris|morado|morada),
        (dice|dicen|hablando|habla) (cosas|tonterias|incoherencias|raro|sin sentido)*, sin
        sentido, (parece|como) (borracho|borracha), no (le)? (salen|encuentra|halla) (las|la)?
        (palabras|palabra), pregunta lo mismo, lo mismo todo el rato, (ruidos|ronquidos) ~
        (respirar|raros), silba al respirar, (se|se le) (acabo|termino|olvido) (el|la)
        (inhalador|insulina|medicina|inyeccion), (no trajo|olvido|dejo|sin) (la|el|su)
        (inyeccion|inhalador|insulina|medicina|medicacion), (en la otra mochila|en el coche|en el
        carro|en el hotel), (le|me) (aprieta|oprime) ~ pecho, (se le|se me) ~ (duerme|hormiguea)
        ~ (brazo|mano|cara), hormigue*, (muy|tan|super) (dormida|dormido|cansada|callada|callado),
        no contesta (bien|claro)""",
    "ate_bad": """
        (comio|comi|comido|probo|probe|trago|trague|mastico|mordisqueo) ~ (seta|setas|hongo|
        hongos|bayas|baya|planta|hoja|hojas|raiz|semillas|pastillas|moras), bebio ~ (rio|arroyo|
        gasolina|lejia)""",
}
