"""The open clashes in words, in columns below the season: sentences, or headings, or as many as there is room for."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import date

from quailsched.desktop.paper.lines import Block, Line, block
from quailsched.desktop.paper.sheet import ON_PAPER
from quailsched.desktop.season_canvas.fonts import Fonts
from quailsched.farm.records import Farm
from quailsched.farm.units import count_text, span_text
from quailsched.report.clashes import ACCEPTED, in_groups, title_of
from quailsched.season.clash import Clash
from quailsched.season.severity import open_clashes
from quailsched.words import number_text, say

_COLUMN_PX, _GAP_PX, _BETWEEN_PX = 330.0, 18.0, 2.5


def clash_list(farm: Farm, clashes: Sequence[Clash], today: date, fonts: Fonts, width: float, room: float) -> Block:
    """Those of ``clashes`` that nobody has accepted, numbered as by the word ``clashes``, the grave ones first.

    As much of them as ``room`` pixels hold; what is left out is counted.
    """
    many = max(round(width / _COLUMN_PX), 1)
    wide = (width - (many - 1) * _GAP_PX) / many
    heading = block(fonts.bold, _heading(farm, clashes), ON_PAPER.ink, width)
    whole, brief = (_entries(farm, clashes, today, fonts, wide, is_whole) for is_whole in (True, False))
    top = heading.height + _BETWEEN_PX
    entries = next(
        one for one in (whole, brief, *_fewer(brief, fonts)) if _height(one, many) <= room - top or len(one) <= 1
    )
    height = _height(entries, many)
    lines = (
        line.moved(at * (wide + _GAP_PX), top)
        for at, column in enumerate(_columns(entries, height))
        for line in _stacked(column).lines
    )
    return Block((*heading.lines, *lines), top + height)


def _heading(farm: Farm, clashes: Sequence[Clash]) -> str:
    many = len(open_clashes(farm, clashes))
    count, accepted = count_text(many, "clash", "clashes"), number_text(len(clashes) - many)
    if many == len(clashes):
        return say("{clashes} ahead", clashes=count) if many else say("No clash ahead")
    if not many:
        return say("No clash ahead but accepted ones")
    return say("{count} ahead, {accepted} more accepted", count=count, accepted=accepted)


def _entries(
    farm: Farm, clashes: Sequence[Clash], today: date, fonts: Fonts, width: float, is_whole: bool
) -> list[Block]:
    """A block for each clash; the first of each gravity stands under the word for it."""
    entries = []
    for title, group in in_groups(farm, clashes):
        if title == say(ACCEPTED):
            continue
        of_group = [_entry(farm, *one, today, fonts, width, is_whole) for one in group]
        above = block(fonts.tiny, f"{title} ({len(group)})", ON_PAPER.soft, width)
        entries += [_stacked([above, of_group[0]], gap=0.0), *of_group[1:]]
    return entries


def _entry(farm: Farm, number: int, clash: Clash, today: date, fonts: Fonts, width: float, is_whole: bool) -> Block:
    days = f"{number}.  {span_text(clash.first, clash.last, today)}  "
    indent = fonts.tiny_bold.width(days)
    title = block(fonts.tiny_bold, title_of(farm, clash), ON_PAPER.ink, width - indent, indent)
    lines = [Line(fonts.tiny_bold, days, ON_PAPER.clash, 0.0, title.lines[0].base), *title.lines]
    if not is_whole:
        return Block(tuple(lines), title.height)
    sentence = block(fonts.tiny, clash.sentence, ON_PAPER.ink, width, top=title.height)
    return Block((*lines, *sentence.lines), title.height + sentence.height)


def _fewer(entries: Sequence[Block], fonts: Fonts) -> Iterator[list[Block]]:
    """Fewer and fewer of ``entries``, with how many are left out."""
    for kept in range(len(entries) - 1, -1, -1):
        left_out = say("and {count} more", count=number_text(len(entries) - kept))
        yield [*entries[:kept], block(fonts.tiny_bold, left_out, ON_PAPER.clash, _COLUMN_PX)]


def _height(entries: Sequence[Block], many: int) -> float:
    """The least height at which ``entries`` stand in ``many`` columns."""
    if not entries:
        return 0.0
    low, high = max(one.height for one in entries), sum(one.height + _BETWEEN_PX for one in entries)
    while high - low > 0.5:
        middle = (low + high) / 2
        low, high = (low, middle) if len(_columns(entries, middle)) <= many else (middle, high)
    return high


def _columns(entries: Sequence[Block], height: float) -> list[list[Block]]:
    """``entries`` one below the other, a new column where the next would go beyond ``height``."""
    columns: list[list[Block]] = []
    end = height + 1
    for one in entries:
        if end + one.height > height:
            columns.append([])
            end = 0.0
        columns[-1].append(one)
        end += one.height + _BETWEEN_PX
    return columns


def _stacked(column: Sequence[Block], gap: float = _BETWEEN_PX) -> Block:
    lines: list[Line] = []
    top = 0.0
    for one in column:
        lines += one.moved(0.0, top)
        top += one.height + gap
    return Block(tuple(lines), top - gap)
