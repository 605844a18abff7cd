"""English words for other people, and for who hires out, lends and advises: one place for all."""

from __future__ import annotations

from typing import Final

#: People whom somebody knows, one by one.
KIN: Final = (
    r"wife|husband|hubby|partner|fianc[eé]e?|friend|mate|buddy|pal|brother|sister|bro|sis|son"
    r"|daughter|daddy|dad|father|mummy|mum|mommy|mom|mother|kid|child|boy|girl|baby|twins?|uncle"
    r"|auntie|aunt|boyfriend|girlfriend|cousin|colleague|co-?worker|neighbou?r|teacher|guide"
    r"|instructor|nephew|niece|granny|gran|nana|nan|grandma|grandmother|grandpa|grandad|granddad"
    r"|grandfather|grandson|granddaughter|grandchild|flatmate|room ?mate|boss|student|pupil"
    r"|companion|in-law|(?:brother|sister|mother|father|son|daughter)[ -]in[ -]law|leader|tutor"
    r"|coach|driver|landlord|landlady|host"
)
#: People whom somebody only meets.
STRANGER: Final = (
    r"(?:guy|man|woman|lady|girl|lad|bloke|chap|dude|fella|fellow|person|photographer|tourist"
    r"|hiker|ranger|warden|couple|family|other one|other (?:guy|person|photographer))"
)
#: Who hires out, sells or keeps kit for others.
HOUSE: Final = (
    r"(?:shop|store|rental(?: (?:shop|place|desk|office|company|people|guys))?|hire (?:shop|place)"
    r"|visitor cent(?:er|re)|info(?:rmation)? (?:desk|office|point|cent(?:er|re))|hotel|hostel"
    r"|lodge|club|school|museum|library|outfitter|company)"
)
#: What gives advice without knowing the place.
ADVISER: Final = (
    r"(?:guide ?book|videos?|article|forum|book|tutorial|blog|internet|magazine|manual|course"
    r"|pages?|leaflet|brochure|apps?|website|web ?page|channel|podcast|poster|workshop)"
)
