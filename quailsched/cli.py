"""The command line: reads the words, hands them to ``commands`` or opens the window, tells faults as sentences.

The only place that knows all layers. Nothing of the window or the calendar library is loaded before it is needed.
"""

from __future__ import annotations

import argparse
import io
import os
import re
import sys
from collections.abc import Callable, Mapping, Sequence
from datetime import date
from pathlib import Path
from typing import NoReturn

from quailsched import __version__

FAULT = 2
INNER_FAULT = 70  # EX_SOFTWARE of sysexits.h, so that it is not taken for an answer
_Command = Callable[[argparse.Namespace, date], int]
# What argparse says, and how we say it; what is not here is told in its own words.
_SENTENCES = (
    (r"argument (.+): ignored explicit argument '(.*)'", r"\1: “\2” cannot be used; it is accepted without a value"),
    (r"argument (.+): expected one argument", r"\1: nothing is there; a value after it is accepted"),
    (r"unrecognized arguments: (.+)", r"“\1” cannot be used; only what the help tells is accepted here"),
)


class _Parser(argparse.ArgumentParser):
    def error(self, message: str) -> NoReturn:
        for theirs, ours in _SENTENCES:
            message = re.sub(f"^{theirs}$", ours, message, flags=re.DOTALL)
        raise _WordsError(f"{message[:1].upper()}{message[1:]}. Try: {self.prog} --help")


class _WordsError(Exception):
    """The words of the command line cannot be used."""


def _day(text: str) -> date:
    from quailsched.farm.range import EARLIEST, LATEST

    try:
        day = date.fromisoformat(text)
    except ValueError:
        raise argparse.ArgumentTypeError(f"“{text}” is no day; a day like 2027-04-06 is accepted") from None
    if not EARLIEST <= day <= LATEST:
        raise argparse.ArgumentTypeError(f"“{text}” cannot be used; a day from {EARLIEST} to {LATEST} is accepted")
    return day


def _count(most: int, least: int = 1) -> Callable[[str], int]:
    def read(text: str) -> int:
        # Python reads no number of more than 4,300 digits.
        is_number = text.isascii() and text.isdigit() and len(text) <= 9
        if not is_number or not least <= int(text) <= most:
            accepted = f"a whole number from {least} to {most} is accepted"
            raise argparse.ArgumentTypeError(f"“{text}” cannot be used; {accepted}")
        return int(text)

    return read


def _kind(text: str) -> str:
    from quailsched.husbandry.handbook import handbook

    if text not in handbook():
        raise argparse.ArgumentTypeError(f"“{text}” is no kind; one of {', '.join(handbook())} is accepted")
    return text


def _paper(text: str) -> object:
    from quailsched.desktop.paper.papers import Paper

    for paper in Paper:
        if text.lower() == paper.lower():
            return paper
    raise argparse.ArgumentTypeError(f"“{text}” is no paper that is known; one of {', '.join(Paper)} is accepted")


def _picture_name(text: str) -> Path:
    from quailsched.desktop.paper.papers import ENDINGS

    if Path(text).suffix.lower() not in ENDINGS:
        accepted = f"a name that ends in {', '.join(ENDINGS[:-1])} or {ENDINGS[-1]} is accepted"
        raise argparse.ArgumentTypeError(f"“{text}” cannot be used; {accepted}")
    return Path(text)


def _want(text: str) -> tuple[object, int]:
    from quailsched.outlook.reaching import Wanted

    what, _, number = text.partition(":")
    if what not in set(Wanted) or not (number.isascii() and number.isdigit() and len(number) <= 4 and int(number)):
        known = ", ".join(f"{one}:40" for one in Wanted)
        raise argparse.ArgumentTypeError(f"“{text}” cannot be used; what and how many is accepted, such as {known}")
    return Wanted(what), int(number)


def parser() -> argparse.ArgumentParser:
    """The words that are understood. ``quailsched FILE`` and ``quailsched`` alone open the window (``main``)."""
    top = _Parser(
        prog="quailsched",
        description="Plan a season of quail: set eggs, see what clashes, get every chore. "
        "Without a word, or with a FILE alone, the window opens.",
    )
    top.add_argument("--version", action="version", version=f"Quailsched {__version__}")
    words = top.add_subparsers(dest="word", metavar="WORD", required=True)

    def word(
        name: str, text: str, *, json: bool = True, since: str = "", file: str = "the farm"
    ) -> argparse.ArgumentParser:
        sub = words.add_parser(name, help=text, description=text[:1].upper() + text[1:] + ".")
        if file:
            sub.add_argument("file", metavar="FILE", type=Path, help=file)
        if json:
            sub.add_argument("--json", action="store_true", help="for machines")
        if since:
            sub.add_argument("--from", dest="since", metavar="DATE", type=_day, help=since)
        return sub

    word(
        "example", "write the example farm", json=False, since="the day that it lies around (today)", file="a new file"
    )
    word(
        "clashes",
        "every clash ahead; exit code 1 if there are any but accepted ones",
        since="clashes from this day on (today)",
    )
    sub = word(
        "ways-out",
        "small changes that remove a clash, each re-checked; exit code 1 if a clash has none",
        since="clashes from this day on (today)",
    )
    sub.add_argument("--clash", type=_count(10_000), metavar="N", help="of the clash with this number in the list only")
    sub = word("next-set", "when the next eggs can go in, and how many", since="the first day to try (today)")
    sub.add_argument("--days", type=_count(366), metavar="N", help="how many days (120); not with --want")
    sub.add_argument("--kind", type=_kind, default="coturnix", metavar="KIND", help="kind of quail (coturnix)")
    sub.add_argument(
        "--want",
        type=_want,
        metavar="WHAT:N",
        help="birds by a day: hens:40, started:40 or chicks:40; exit code 1 if not",
    )
    sub.add_argument("--by", type=_day, metavar="DATE", help="the day by which they are wanted")
    sub.add_argument(
        "--sure",
        type=_count(99),
        metavar="PERCENT",
        help="with --want: in how many hatches of 100 (as the farm wants: 90)",
    )
    word("trials", "every trial beside the plan", since="compared from this day on (today)")
    sub = word("places", "when each place frees up and the room left", since="the day to look at (today)")
    sub.add_argument("--weeks", type=_count(104), default=12, metavar="N", help="weeks ahead (12)")
    sub = word("chores", "chores of the coming days", since="the first day (today)")
    sub.add_argument("--days", type=_count(400), default=14, metavar="N", help="how many days (14)")
    sub = word("calendar", "write a calendar file", json=False, since="the day that it is made for (today)")
    sub.add_argument("--out", type=Path, required=True, metavar="X.ics", help="the calendar file")
    sub.add_argument("--alarms", action="store_true", help="ring for what cannot wait")
    text = "the season on one page or as a picture, or a sheet of chores to tick"
    _add_picture(word("picture", text, json=False, since="as it is on this day (today)"))
    word("measures", "fertility, hatch, livability, lay and feed by what was counted")
    sub = word("figures", "every figure of husbandry with its source", file="")
    sub.add_argument("kind", nargs="?", type=_kind, metavar="KIND", help="one kind only")
    sub.add_argument("--farm", type=Path, metavar="FILE", help="with the figures that this farm replaces")
    sub = word("export", "everything in the farm as one JSON document", json=False)
    sub.add_argument("document", metavar="X.json", type=Path, help="the document")
    sub = words.add_parser(
        "import", help="a farm file from a JSON document", description="A farm file from a JSON document."
    )
    sub.add_argument("document", metavar="X.json", type=Path, help="the document")
    sub.add_argument("file", metavar="FILE", type=Path, help="a new file")
    _add_import_records(words)
    sub = word("records", "every kind of record as tables (CSV), a hatch log and an egg log too", json=False)
    sub.add_argument("--out", type=Path, required=True, metavar="FOLDER", help="the folder, made if it is not there")
    return top


def _add_import_records(words: argparse._SubParsersAction[_Parser]) -> None:
    text = "a hatch log or an egg log from a table, the good rows in one step"
    ending = "exit code 1 if rows were left out, 2 if nothing could be read"
    sub = words.add_parser("import-records", help=f"{text}; {ending}", description=f"{text.capitalize()}; {ending}.")
    sub.add_argument("table", metavar="FILE.csv", type=Path, help="the table")
    sub.add_argument("file", metavar="FILE", type=Path, help="the farm")
    sub.add_argument("--preview", action="store_true", help="what would become of each row; nothing is changed")
    sub.add_argument("--json", action="store_true", help="for machines")
    sub.add_argument("--kind", type=_kind, default="coturnix", metavar="KIND", help="of new batches (coturnix)")
    sub.add_argument("--place", metavar="NAME", help="of rows that name neither a place nor a batch")
    about = {
        "--sort": ("what it is", {"hatches": "hatches", "eggs": "eggs"}),
        "--day-order": (
            "what stands first in 3/4/2027",
            {"day": "day first", "month": "month first", "year": "year first"},
        ),
        "--delimiter": ("what parts the columns", {"comma": ",", "semicolon": ";", "tab": "\t", "bar": "|"}),
        "--decimal": ("what parts decimals", {"comma": ",", "point": "."}),
    }
    for name, (what, choices) in about.items():
        sub.add_argument(name, type=_choice(choices), metavar="|".join(choices), help=f"{what} (found by itself)")


def _choice(choices: Mapping[str, str]) -> Callable[[str], object]:
    def read(text: str) -> object:
        if text not in choices:
            raise argparse.ArgumentTypeError(f"“{text}” cannot be used; one of {', '.join(choices)} is accepted")
        return choices[text]

    return read


def _add_picture(sub: argparse.ArgumentParser) -> None:
    from quailsched.desktop.paper.papers import LEAST_WEEKS, MOST_SHARP, MOST_WEEKS

    sub.add_argument("--out", type=_picture_name, required=True, metavar="X.pdf|png|svg", help="the file")
    sub.add_argument(
        "--paper", type=_paper, metavar="A4|A3|Letter", help="of a PDF (A4; Letter for a farm in US units)"
    )
    sub.add_argument("--sharp", type=_count(MOST_SHARP), metavar="N", help="dots to a pixel of a PNG, each way (1)")
    sub.add_argument("--chores", action="store_true", help="the chores instead, each with a box to tick, as a PDF")
    weeks = _count(MOST_WEEKS, LEAST_WEEKS)
    sub.add_argument("--weeks", type=weeks, metavar="N", help=f"how many weeks of chores ({LEAST_WEEKS})")


WORDS = (
    *("example", "clashes", "ways-out", "next-set", "trials", "places", "chores", "calendar", "picture", "measures"),
    *("figures", "export", "import", "import-records", "records"),
)


def main(argv: Sequence[str] | None = None, today: date | None = None) -> int:
    """Run the words; the exit code. 2 for a fault, which is told as a sentence on standard error; 70 for one of the
    program itself."""
    from quailsched.calendars.errors import CalendarError
    from quailsched.farm.faults import FarmError
    from quailsched.store.errors import StoreError

    arguments = list(sys.argv[1:] if argv is None else argv)
    if isinstance(sys.stdout, io.TextIOWrapper):  # a terminal that has no "–" or "²" shows "?" instead
        sys.stdout.reconfigure(errors="replace")
    try:
        code = _run(arguments, today or date.today())
        sys.stdout.flush()
        return code
    except (_WordsError, FarmError, StoreError, CalendarError) as error:
        print(error, file=sys.stderr)
        return FAULT
    except BrokenPipeError:  # the reader of our output has gone (a pager was closed)
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return 0
    except KeyboardInterrupt:
        return 130
    except Exception as error:  # the last resort: a traceback says nothing to a keeper, and would end with 1
        from quailsched.session.inner_faults import told_in_words

        print(told_in_words(error), file=sys.stderr)
        return INNER_FAULT


def _run(arguments: list[str], today: date) -> int:
    if not arguments or _is_file_alone(arguments):
        return _window(Path(arguments[0]) if arguments else None, today)
    _require_word(arguments[0])
    from quailsched import commands

    words = parser().parse_args(arguments)
    name = {"import": "import_", "ways-out": "ways_out_"}.get(words.word, words.word.replace("-", "_"))
    command: _Command = getattr(commands, name)
    return command(words, today)


def _require_word(first: str) -> None:
    if first not in WORDS and not first.startswith("-"):
        raise _WordsError(
            f"“{first}” is no word of the program; one of {', '.join(WORDS)} is accepted. Try: quailsched --help"
        )


def _is_file_alone(arguments: list[str]) -> bool:
    first = arguments[0]
    return len(arguments) == 1 and first not in WORDS and not first.startswith("-")


def has_screen() -> bool:
    """Whether a window can open: on Linux, a display server or a Qt platform that was asked for."""
    if not sys.platform.startswith("linux"):
        return True
    return any(os.environ.get(name) for name in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"))


def _is_there(file: Path) -> bool:
    try:
        return file.exists()
    except (OSError, ValueError):  # a name too long, or a folder that may not be looked into
        return False


def _window(file: Path | None, today: date) -> int:
    if file is not None and not _is_there(file):
        known = ", ".join(WORDS)
        raise _WordsError(f"“{file}” is neither a farm file that exists nor a word of the program ({known})")
    if not has_screen():
        from quailsched.commands import no_screen

        return no_screen(file, today)
    from quailsched.desktop.app import run

    return run(file)
