"""The season on one page: a small head, the whole season as the window paints it, the open clashes in words."""

from __future__ import annotations

from datetime import date
from typing import Final

from PySide6.QtGui import QPainter

from quailsched.desktop.paper.clash_list import clash_list
from quailsched.desktop.paper.lines import Block, block, draw, head, printed_words
from quailsched.desktop.paper.season_scene import PaperLayout, lanes_height, paper_layout, whole_scene
from quailsched.desktop.paper.sheet import GRAIN, ON_PAPER, Sheet, fonts_on_paper
from quailsched.desktop.season_canvas.fonts import Fonts
from quailsched.desktop.season_canvas.lanes import Grouping
from quailsched.desktop.season_canvas.paint import SeasonPainter
from quailsched.desktop.season_canvas.pens import Pens
from quailsched.farm.records import Farm
from quailsched.quick import dataclass
from quailsched.report.season_name import season_name
from quailsched.season.clashes import Checked
from quailsched.words import marked, say

_LEAST_FOR_CLASHES, _MOST_FOR_CLASHES = 0.16, 0.36  # of the height
_EASY: Final = 1.15  # times the least height the lanes are easy to read
_GAP_PX: Final = 8.0
_NO_PLACE = marked(
    "There is nothing to show yet. Add your places (Change › Add a place): what holds the eggs, the brooder, the pen. "
    "Then add a batch (Change › Add a batch), and print this page again."
)
_NO_BATCH = marked("No batch is planned yet. Add one (Change › Add a batch), and print this page again.")


@dataclass(frozen=True, slots=True)
class SeasonPage:
    """What the page tells: the season around ``today``, in the lanes of a grouping; ``trial`` is its name if it is
    not the plan."""

    now: Checked
    today: date
    printed: date
    grouping: Grouping = Grouping.PLACES
    trial: str = ""

    @property
    def farm(self) -> Farm:
        return self.now.season.farm

    @property
    def title(self) -> str:
        """What the document is called."""
        return f"{self.farm.settings.name}, {self._about()}"

    @property
    def is_upright(self) -> bool:
        """Time runs along the longer side."""
        return False

    def pages(self, sheet: Sheet) -> tuple[SeasonPage, ...]:
        """Itself, whatever the sheet."""
        return (self,)

    def _about(self) -> str:
        season = season_name(self.farm, self.today)
        return say("{name}, trial “{trial}”", name=season, trial=self.trial) if self.trial else season

    def paint(self, painter: QPainter, sheet: Sheet) -> None:
        """All of it, from the top left of ``sheet``, in pixels."""
        top = head(sheet.width, self.farm.settings.name, self._about(), printed_words(self.today, self.printed))
        draw(painter, top.lines)
        layout, fonts = paper_layout(self.now, self.today, self.grouping), fonts_on_paper()
        words = self.advice(sheet.width)
        if not layout.lanes and words is not None:
            draw(painter, words.moved(0, top.height + 20))
            return
        if words is None:
            words = self._clashes(fonts, sheet, top.height + _EASY * lanes_height(layout, fonts))
        painter.save()
        painter.translate(0, top.height)
        self._season(painter, layout, fonts, sheet.width, sheet.height - top.height - words.height - _GAP_PX)
        painter.restore()
        draw(painter, words.moved(0, sheet.height - words.height))

    def _clashes(self, fonts: Fonts, sheet: Sheet, taken: float) -> Block:
        """What has room in words where the season wants ``taken`` pixels of the height."""
        least, most = (share * sheet.height for share in (_LEAST_FOR_CLASHES, _MOST_FOR_CLASHES))
        room = min(max(sheet.height - taken - _GAP_PX, least), most)
        return clash_list(self.farm, self.now.since(self.today), self.today, fonts, sheet.width, room)

    def advice(self, width: float) -> Block | None:
        """What to do where there is no season yet; None where there is one."""
        if self.farm.places and self.farm.batches:
            return None
        text = say(_NO_BATCH) if self.farm.places else say(_NO_PLACE)
        return block(fonts_on_paper(14).plain, text, ON_PAPER.ink, min(width, 640.0))

    def _season(self, painter: QPainter, layout: PaperLayout, fonts: Fonts, width: float, height: float) -> None:
        """At the size of the words, or as much smaller as it takes to have all lanes on the page."""
        smaller = max(lanes_height(layout, fonts) / height, 1.0)
        painter.scale(1 / smaller, 1 / smaller)
        scene = whole_scene(layout, fonts, self.today, width * smaller, height * smaller)
        units = self.farm.settings.units
        pens = Pens(painter, scene, ON_PAPER, fonts, units, grain=GRAIN * smaller, is_still=True)
        SeasonPainter(pens).paint()
