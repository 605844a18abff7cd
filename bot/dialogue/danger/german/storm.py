"""German wordings: thunder and storms, near and far."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

STORM: Final[Mapping[str, str]] = {
    "thunder": """
        donner, donnert, donnern, gedonnert, donnerte, donnergrollen, donnerschlag, gewittert,
        (hor|hore|horen|gehort|hort) ~ (grollen|grummeln|rumpeln), (grollt|grummelt|rumpelt) ~
        (himmel|naher|hinten|grat|oben|berg|jetzt|wolken)*""",
    "lightning": """
        blitzt, blitzte, geblitzt, blitze, (ein|der|erste|erster|grad|naher|grosser) blitz
        (uber|am|schlug|eingeschlagen|hat|ist|da|hinter|war|gesehen|und), blitzeinschlag, blitz
        und donner, (schlagt|schlug|eingeschlagen) ~ (blitz|ein), blitzen (am|uber|hinter),
        wetterleuchten""",
    "storm": """
        (gewitter|gewitterfront|gewitterwolken|gewitterwolke|unwetter|sturm|gewitterzelle|
        wetter)""",
    "near": """
        (zieht|kommt|ziehen|rollt|braut|baut|steht|ist|kommen|naht|bricht|war) ~ (auf|naher|ran|
        heran|her|uber uns|druber|los|zu|zusammen|da|da .|rein|an|uber dem|schnell), uber uns,
        direkt uber, (im|von) anmarsch, nahert, hinterm (grat|berg|hang|kamm), im nacken,
        erwischt uns, uber dem (grat|kamm|berg|hang|tal)""",
    "shelter": """
        (unter|unterm|stellen|warten|unterstellen|hocken) ~ (baum|baume|fichte|eiche|buche|
        tanne|fichten|baumen|larche|kiefer|abwarten|unter), abwarten, unterstand""",
    "flash": """
        (blitz|leuchten|aufgeleuchtet|lichtblitz|geblitzt|zuckt|flackert|hell|blitzt)""",
    "bang": """
        (knall|rumms|krach|gekracht|gerumst|donner|sekunden spater|grollen|gerumpelt|grummelt|
        grollt|kracht|knallt|gezahlt)""",
    "hair_stands": """
        haare ~ (stehen|zu berge|stellen|hoch|aufgestellt|auf), (stativ|stocke|metall|pickel|
        geländer|schirm|stock|seil|drahtseil|felsen|luft) ~ (summt|surrt|brummt|knistert|
        kribbelt|summen|surren|knistern|brizzelt|bitzelt), (summt|surrt|knistert|kribbelt) ~
        (stativ|stocke|metall|luft|pickel|haut|drahtseil)""",
    "sky_black": """
        himmel ~ (schwarz|tiefschwarz|pechschwarz|stockfinster|lila|grunlich|gelb|zu) ~ (hagel*|
        grollt|wind|jetzt|.|westen|zieht|schnell), (schwarze|dunkle|riesige|grosse|turmt) ~
        (wand|gewitterwolke|wolkenwand|ambosswolke|wolkenturm) ~ (zieht|kommt|auf|uns|naher|
        grat), hagelt, hagelkorner""",
}
