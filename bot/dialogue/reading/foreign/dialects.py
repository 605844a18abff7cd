"""German as the south and the Swiss write it, in the standard words that wordings know."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.foreign.numerals import Rules, rules

#: "Gschraubt", "runtergnommen": participles without their e.
_PARTICIPLE: Final = re.compile(
    r"\b((?:runter|herunter|drauf|auf|ab|weg|vor|an|hin|raus|rein|aus|ein|um)?)g"
    r"(?=[bdfhkmnpstwz])(\w{3,}(?:t|en))\b"
)
#: "Belichtn", "eistelln": infinitives without their e.
_INFINITIVE: Final = re.compile(r"\b(\w{2,}(?:cht|ck|ft|ll|lt|nk|pf|rt|ss|st|tz))n\b")
_KIT: Final = r"(?=(?:nd|pol|polfilter|graufilter|stativ)(?:\b|\d))"
_WORDS: Final[Rules] = rules(
    (r"\b(?:w[ao]sser)?foi\b", "fall"),
    (r"\bisch\b", "ist"),
    (r"\bsto(?:a|an)\b", "stein"),
    (r"\bgua[td]\b", "gut"),
    (r"\bois\b", "alles"),
    (r"\bwos\b", "was"),
    (r"\bwia\b", "wie"),
    (r"\bsoi\b(?= (?:i|ich|ma|mir|man|des|das)\b)", "soll"),
    (r"\b(?:ei|oi)(?=stell)", "ein"),
    (r"\bobn\b", "oben"),
    (r"\bhimme\b", "himmel"),
    (r"\blinsn\b", "linse"),
    (r"\bnoss\b", "nass"),
    (r"\bvo (?=da|der|dem|de)\b", "von "),
    (r"\baiso\b", "also"),
    (r"\b(?:iatz|jetz|jetzad|iazt)\b", "jetzt"),
    (r"\bdoa\b", "da"),
    (r"\b(soll|kann|muss|darf) i\b", r"\1 ich"),
    (r"\bw[ao]ss(?:a|er)\b", "wasser"),
    (r"\bolles\b", "alles"),
    (r"\bmuass\b", "muss"),
    (r"\b(?:oiwei|ollaweil|allaweil)\b", "dauernd"),
    (r"\bkemma\b", "können wir"),
    (r"\bmog\b", "mag"),
    (r"\bkonn\b", "kann"),
    (r"\bderf\b", "darf"),
    (r"\ba(?:u?f?)fi\b", "hinauf"),
    (r"\b(?:obi|owi)\b", "hinunter"),
    (r"\bowa(?=$|[,.;!?]| (?:fotografier|schau|knips|gehn|gehen)\w*)", "herunter"),
    (r"\beini\b", "hinein"),
    (r"\baussi\b", "hinaus"),
    (r"\bumi\b", "hinüber"),
    (r"\buntn\b", "unten"),
    (r"\bvoi\b", "voll"),
    (r"\bschee\b", "schön"),
    (r"\bzruck\b", "zurück"),
    (r"\bnimma\b", "nimmer"),
    (r"\bgrod\b", "gerade"),
    (r"\bwieda\b", "wieder"),
    (r"\bkloan(?=(?:s|e|er|en|a)?\b)", "klein"),
    (r"\bstoana?\b", "steine"),
    (r"\b(?:koans|kans|koan)\b", "keins"),
    (r"\bu?f ?em\b", "auf dem"),
    (r"\buf\b", "auf"),
    (r"\bdruf\b", "drauf"),
    (r"\b(?:(?:han|hob|hab) i|hani)\b", "hab ich"),
    (r"\b(auf)(?=(?:baut|stellt|spreizt)\b)", r"\1ge"),
    (rf"\b(?:an|en|nen) {_KIT}", "ein "),
)
#: What nobody else writes: two of them make a message plainly southern (own rule).
_SOUTHERN: Final = re.compile(
    r"\b(?:w[ao]ssa|wosser|olles|muass|oiwei|ollaweil|kemma|mog|konn|derf|auff?i|obi|owi|owa|eini"
    r"|aussi|umi|obn|untn|voi|schee|zruck|nimma|grod|wieda|kloan\w*|stoa\w*|koan\w*|hob|hobn|hom"
    r"|mia (?:san|hom|gengan)|olle|wos|wia|ois|gua[td]|bissl|bisserl|ned|nix|heit|gwitta|dunnert"
    r"|kimmt)\b"
)
_PLAINLY: Final = 2
#: Small words that are other ones elsewhere: read only where a message is plainly southern.
_SMALL: Final[Rules] = rules(
    (r"^na\b(?=,? )", "nein,"),
    (r"\bis\b", "ist"),
    (r"\bi\b", "ich"),
    (r"\bmia\b", "wir"),
    (r"\bdo\b", "da"),
    (r"\bdes\b", "das"),
    (r"\bde\b", "die"),
    (r"\b(?:san|sand)\b", "sind"),
    (r"\b(?:hom|hobn)\b", "haben"),
    (r"\bhob\b", "habe"),
    (r"\bned\b", "nicht"),
    (r"\bheit\b", "heute"),
    (r"\b(?:an|a) (?=(?:donner|gwitter|gewitter|blitz))", "einen "),
    (r"\bgwitt(?:er|a)\b", "gewitter"),
    (r"\bdunnert\b", "donnert"),
    (r"\bkimmt\b", "kommt"),
    (r"\bg(?=foin|fallen)(?:foin|fallen)\b", "gefallen"),
)


def in_plain_german(text: str) -> str:
    """A message that is plainly southern German in standard words; any other as it is.

    Args:
        text: as typed.
    """
    said = text.casefold()
    if len(set(_SOUTHERN.findall(said))) < _PLAINLY:
        return text
    for pattern, standard in _SMALL:
        said = pattern.sub(standard, said)
    return in_standard(said)


def in_standard(text: str) -> str:
    """The message with the words of dialects that matter to the trade in standard German.

    Args:
        text: in lower case.
    """
    text = _INFINITIVE.sub(r"\1en", _PARTICIPLE.sub(r"\1ge\2", text))
    for pattern, standard in _WORDS:
        text = pattern.sub(standard, text)
    return text
