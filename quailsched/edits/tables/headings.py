"""What the heading of a column means, in the words that people use, English and German; and the unit it names."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Mapping
from enum import StrEnum
from typing import Final

from quailsched.words import marked


class Column(StrEnum):
    """A column that is taken in. Its value is the heading under which tables are given out."""

    NAME = "batch"
    KIND = "kind"
    PLACE = "place"
    DAY = "day"  # of setting in a hatch log, else of everything in the row
    SET_DAY = "set on"
    NUMBER_SET = "eggs set"
    CANDLE_DAY = "candled on"
    CLEAR = "clear"
    QUIT_DAY = "quit on"
    QUIT = "quit"
    HATCH_DAY = "hatched on"
    HATCHED = "hatched"
    EGGS = "eggs"  # set in a hatch log, else laid
    LAID = "laid"
    FED = "feed"
    BOUGHT = "feed bought"
    DIED = "died"
    WEIGHED = "birds weighed"
    WEIGHT = "weight"  # of those weighed, together
    WEIGHT_EACH = "average weight"
    NOTE = "note"

    @property
    def is_day(self) -> bool:
        return self in (Column.DAY, Column.SET_DAY, Column.CANDLE_DAY, Column.QUIT_DAY, Column.HATCH_DAY)

    @property
    def is_weight(self) -> bool:
        return self in (Column.FED, Column.BOUGHT, Column.WEIGHT, Column.WEIGHT_EACH)

    @property
    def is_words(self) -> bool:
        return self in (Column.NAME, Column.KIND, Column.PLACE, Column.NOTE)


COLUMN_WORDS: Final = (  # to be said where a table has no such heading
    *(marked("batch"), marked("kind"), marked("place"), marked("day"), marked("set on"), marked("eggs set")),
    *(marked("candled on"), marked("clear"), marked("quit on"), marked("quit"), marked("hatched on")),
    *(marked("hatched"), marked("eggs"), marked("laid"), marked("feed"), marked("feed bought"), marked("died")),
    *(marked("birds weighed"), marked("weight"), marked("average weight"), marked("note")),
)
# As ``plain`` writes them, parted by ";".
_SYNONYMS: Final[Mapping[Column, str]] = {
    Column.NAME: "batch;batch name;batch no;batch number;hatch;hatch no;hatch nr;name;group;flock;clutch;"
    "satz;brut;brut nr;brutnummer;charge;gruppe;herde;gelege",
    Column.KIND: "kind;species;strain;breed;type;art;rasse;schlag",
    Column.PLACE: "place;pen;incubator;setter;cabinet;machine;cage;house;brooder;coop;ort;platz;stall;gehege;kaefig;"
    "voliere;brueter;brutmaschine;brutapparat;inkubator;brutschrank",
    Column.DAY: "day;date;datum;tag",
    Column.SET_DAY: "set on;set date;date set;day set;set day;setting date;setting day;eggs set on;start;start date;"
    "incubation start;eingelegt am;einlegedatum;einlegetag;einlage am;brutbeginn;beginn;eier eingelegt am",
    Column.NUMBER_SET: "eggs set;set;number set;number of eggs set;number of eggs;eggs in;eggs incubated;eingelegt;"
    "eier eingelegt;eingelegte eier;bruteier;anzahl eier;anzahl bruteier;eier in der brut",
    Column.CANDLE_DAY: "candled on;candled;candle date;candling date;date candled;day candled;candling;"
    "geschiert am;schiertag;schierdatum;geschiert",
    Column.CLEAR: "clear;clears;clear eggs;infertile;infertile eggs;unfertile;not fertile;klar;klare;klare eier;"
    "unbefruchtet;unbefruchtete;unbefruchtete eier",
    Column.QUIT_DAY: "quit on;abgestorben am",
    Column.QUIT: "quit;quits;quitters;blood ring;blood rings;dead in shell;died in shell;dead germ;dead germs;"
    "early dead;blutring;blutringe;abgestorben;abgestorbene;abgestorbene eier;steckengeblieben;stecken geblieben",
    Column.HATCH_DAY: "hatched on;hatch date;hatch day;date hatched;day hatched;hatching date;"
    "schlupftag;schlupfdatum;geschluepft am;schlupf am",
    Column.HATCHED: "hatched;chicks;chicks hatched;hatched chicks;number hatched;live chicks;hatchlings;"
    "geschluepft;geschluepfte;geschluepfte kueken;kueken;kueken geschluepft;schlupf",
    Column.EGGS: "eggs;eier;number;anzahl;total eggs;stueck",
    Column.LAID: "laid;eggs laid;eggs collected;collected;eggs gathered;lay;gelegt;gelegte eier;eier gelegt;"
    "gesammelt;eier gesammelt",
    Column.FED: "feed;fed;feed given;feed used;feed eaten;futter;gefuettert;verfuettert;futterverbrauch",
    Column.BOUGHT: "feed bought;bought feed;futter gekauft;gekauftes futter;futterkauf",
    Column.DIED: "died;dead;deaths;losses;mortality;birds died;dead birds;gestorben;verendet;verluste;tot;tote;"
    "tote tiere;abgaenge",
    Column.WEIGHED: "birds weighed;weighed;number weighed;gewogen;tiere gewogen;gewogene tiere",
    Column.WEIGHT: "weight;total weight;weight together;gewicht;gesamtgewicht;gewicht zusammen",
    Column.WEIGHT_EACH: "average weight;mean weight;weight each;weight per bird;durchschnittsgewicht;gewicht je tier",
    Column.NOTE: "note;notes;remark;remarks;comment;comments;bemerkung;bemerkungen;notiz;notizen;anmerkung;kommentar",
}
_MEANS: Final = {words: column for column, all_words in _SYNONYMS.items() for words in all_words.split(";")}
# Grams of one; the avoirdupois pound is 453.59237 g exactly (NIST SP 811), an ounce the sixteenth of it.
GRAMS: Final[Mapping[str, float]] = {
    **dict.fromkeys(("g", "gr", "gram", "grams", "gramm"), 1.0),
    **dict.fromkeys(("kg", "kilo", "kilos", "kilogram", "kilograms", "kilogramm"), 1_000.0),
    **dict.fromkeys(("oz", "ounce", "ounces", "unze", "unzen"), 453.59237 / 16),
    **dict.fromkeys(("lb", "lbs", "pound", "pounds"), 453.59237),
}
_RATES = re.compile(r"%|\b(percent|rate|prozent|quote)\b")


def plain(text: str) -> str:
    """``text`` as headings and names are compared: small letters, "ue" for "ü", single blanks, no marks."""
    small = unicodedata.normalize("NFKC", text).casefold()
    for letter, letters in (("ä", "ae"), ("ö", "oe"), ("ü", "ue")):
        small = small.replace(letter, letters)
    return " ".join(re.findall(r"\w+", small))


def meaning(heading: str) -> tuple[Column | None, float | None]:
    """The column that ``heading`` names, and the grams of its unit if it names one: "Feed (kg)" is (FED, 1000.0).

    A share in percent is none: it follows from the numbers.
    """
    if len(heading) > 80 or _RATES.search(heading.casefold()):
        return None, None
    words = plain(heading).split()
    grams = None
    if len(words) > 1 and words[-1] in GRAMS:
        grams = GRAMS[words.pop()]
        if len(words) > 1 and words[-1] == "in":
            words.pop()
    return _MEANS.get(" ".join(words)), grams
