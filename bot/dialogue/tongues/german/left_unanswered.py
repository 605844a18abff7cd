"""German words of a question that no answer of the walk is about, and of those that one is."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # What a sentence with a question's mark begins with, or holds, that surely asks.
    "left_unanswered.asks": (
        r"w(?:as|ie|o|er|en|em|ann|arum|ieso|eshalb|ozu|oran|orauf|ohin|elche\w*)\b|oder\b"
        r"|(?:ist|sind|war|kann|könn\w*|konn\w*|darf|soll\w*|muss|müss\w*|hab\w*|hat|geht|gehts|gibt"
        r"|gibts|wird|werd\w*|würd\w*|brauch\w*|macht?|bringt|hilft|lohnt|reicht|stört|verwackelt) "
        r"(?:ich|man|ma|wir|du|es|das|die|der|dies\w*|sie|er|da|mein\w*|n?icht)\b"
    ),
    # What a clause begins with that asks, its mark left out.
    "left_unanswered.opens": (
        r"(?:kann|darf|soll|muss|reicht|geht|passt|lohnt|stimmt|gibt|bin|ist|is|sind|habe?|hast|wird"
        r"|brauch|brauche|brauchts|wars?|macht) (?:ich|man|wir|das|des|es|der|die|da|hier|du|ihr"
        r"|sich|mein\w*|so|noch|denn)"
        r"|(?:was|wie|wieso|warum|wo|wann|wer|welche[rsn]?|woran|wofür) (?:ist|is|mach\w*|stell\w*"
        r"|soll|kann|muss|viel|lang\w*|weit|zeit|blende|objektiv|habe?|hast|sind|geht|heißt|wird"
        r"|nehm\w*|nimmt)"
    ),
    # Who ends so wants a nod.
    "left_unanswered.tag": (
        r"(?:oder(?: nicht)?|ne|gell|ok(?:ay)?|richtig|ja|nein|stimmt['’]?s|nicht wahr|klar"
        r"|einverstanden|passt(?: das)?|stimmt das|verstanden|weißt du)"
    ),
    # Words that what is set answers; what a border, a lens, or the way there answers.
    "left_unanswered.of_settings": (
        r"einstell\w*|zeit\w*|blende\w*|iso|f ?/? ?\d[\d.,]*|sek\w*|lang\w*|kurz\w*|schnell\w*"
        r"|hell\w*|dunk\w*|belicht\w*|weiß\w*|weiss\w*|blink\w*|ausgefress\w*|seidig\w*|weich\w*"
        r"|fokus\w*|scharf\w*|schärf\w*|unscharf\w*|verwack\w*|verwisch\w*|filter\w*|pol\w*|nd\w*|graufilter|stativ\w*|hand\w*"
        r"|rausch\w*|werte?|zahlen?|stell\w*|was (?:jetzt|nun|tun|dann)|was (?:soll|muss|mach\w*)"
        r" (?:ich|man|ma|wir)|schl(?:ag|äg)\w* (?:du|sie) vor"
        r"|(?:empfehl|empfiehl|rat|rät)\w* (?:du|sie)"
        r"|teil\w*|ausschnitt\w*|sonne\w*|schatt\w*"
        r"|wie (?:mach|krieg|schaff|geht|ging|hat)\w*"
    ),
    # What answers it at once, or takes it back.
    "left_unanswered.yes_no": r"ja|nein|nee?|egal|vergiss es",
    "left_unanswered.of_view": (
        r"objektiv\w*|zoom\w*|weit\w*|brennweite\w*|mm|rahmen|bild\w*|hochformat|querformat|rand"
        r"|ränder\w*|ast|äste|zweig\w*|ecken?|seiten?|himmel|oben|kante|schneid\w*|näher|ran|zurück"
        r"|winkel|ausschnitt"
    ),
}
