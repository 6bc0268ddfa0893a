"""The season alone as a picture: PNG, or SVG, which stays sharp at any size."""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import QBuffer, QIODevice, QRectF, QSize
from PySide6.QtGui import QColor, QFontInfo, QImage, QPainter
from PySide6.QtSvg import QSvgGenerator

from quailsched import __version__
from quailsched.desktop.paper.lines import draw, painting_on
from quailsched.desktop.paper.season_page import SeasonPage
from quailsched.desktop.paper.season_scene import lanes_height, paper_layout, whole_scene
from quailsched.desktop.paper.sheet import PX_PER_INCH, fonts_on_paper
from quailsched.desktop.season_canvas.fonts import Fonts
from quailsched.desktop.season_canvas.layout import SeasonLayout, fit_span
from quailsched.desktop.season_canvas.paint import SeasonPainter
from quailsched.desktop.season_canvas.paint_frame import names_width
from quailsched.desktop.season_canvas.pens import Pens
from quailsched.desktop.theme import LIGHT

_MARGIN: Final = 12
_LEAST_WIDTH, _MOST_WIDTH, _USUAL_HEIGHT = 1440, 4800, 810
_LEAST_DAY_PX: Final = 2.2  # below which names and days have no room
_INCHES_PER_METRE: Final = 39.3701
_MAKER: Final = f"Quailsched {__version__}"


class SeasonPicture:
    """The season of a page without head and clash list, as large as it needs to be read."""

    def __init__(self, page: SeasonPage) -> None:
        self._page = page
        self._fonts = fonts_on_paper(13)
        self._layout = paper_layout(page.now, page.today, page.grouping)
        self._width = _width(self._layout, page, self._fonts)
        self._advice = page.advice(self._width - 4 * _MARGIN)
        self._season_height = lanes_height(self._layout, self._fonts, _USUAL_HEIGHT)
        below = self._advice.height + _MARGIN if self._advice is not None else 0.0
        self._height = round(self._season_height + below + _MARGIN)

    def png(self, sharp: int = 1) -> bytes:
        """``sharp``: dots to a pixel each way, 2 for a screen at 200 %."""
        image = QImage(self._width * sharp, self._height * sharp, QImage.Format.Format_RGB32)
        image.setDevicePixelRatio(sharp)
        for set_dots in (image.setDotsPerMeterX, image.setDotsPerMeterY):
            set_dots(round(PX_PER_INCH * sharp * _INCHES_PER_METRE))
        image.setText("Software", _MAKER)
        image.setText("Title", self._page.title)
        with painting_on(image) as painter:
            self._paint(painter)
        buffer = QBuffer()
        buffer.open(QIODevice.OpenModeFlag.WriteOnly)
        image.save(buffer, "PNG")  # type: ignore[call-overload]  # a device is accepted too
        return bytes(buffer.data().data())

    def svg(self) -> bytes:
        """Its words stay words: they are shown in the font of the program, or in another one without serifs."""
        buffer = QBuffer()
        buffer.open(QIODevice.OpenModeFlag.WriteOnly)
        maker = QSvgGenerator(QSvgGenerator.SvgVersion.Svg11)  # the older one, Tiny, cannot clip
        maker.setOutputDevice(buffer)
        maker.setResolution(round(PX_PER_INCH))
        maker.setSize(QSize(self._width, self._height))
        maker.setViewBox(QRectF(0, 0, self._width, self._height))
        maker.setTitle(self._page.title)
        maker.setDescription(_MAKER)
        with painting_on(maker) as painter:
            self._paint(painter)
        return _in_known_fonts(bytes(buffer.data().data()), self._fonts)

    def _paint(self, painter: QPainter) -> None:
        painter.fillRect(QRectF(0, 0, self._width, self._height), QColor(LIGHT.paper))
        if self._advice is not None:
            draw(painter, self._advice.moved(2 * _MARGIN, self._season_height + _MARGIN))
        if self._layout.lanes:
            width = float(self._width - _MARGIN)
            scene = whole_scene(self._layout, self._fonts, self._page.today, width, self._season_height)
            units = self._page.farm.settings.units
            SeasonPainter(Pens(painter, scene, LIGHT, self._fonts, units, is_still=True)).paint()


def _width(layout: SeasonLayout, page: SeasonPage, fonts: Fonts) -> int:
    start, end = fit_span(layout, page.today)
    names = names_width(page.now.season, layout.lanes, fonts)
    wanted = names + (end - start).days * _LEAST_DAY_PX + _MARGIN
    return round(min(max(wanted, _LEAST_WIDTH), _MOST_WIDTH))


def _in_known_fonts(svg: bytes, fonts: Fonts) -> bytes:
    """Qt names the font by a word that may mean something to Qt alone, such as "Sans Serif"."""
    asked, found = fonts.plain.font.family(), QFontInfo(fonts.plain.font).family()
    return svg.replace(f'font-family="{asked}"'.encode(), f'font-family="{found}, sans-serif"'.encode())
