"""The notice of the morning: once a day, from a chosen time on, the desktop tells what is due."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import date, datetime, time
from typing import Protocol

from PySide6.QtCore import QObject, QTimer

from quailsched.chores.work_out import chores_between, overdue_chores
from quailsched.farm.units import count_text
from quailsched.season.season import Season
from quailsched.session.paths import remember, remembered
from quailsched.words import say

_LOOK_MS = 30_000
_USUAL = time(6, 30)


class Tray(Protocol):
    """What of a tray is needed; ``QTray`` is the desktop's."""

    def tell(self, title: str, text: str) -> None: ...

    def show(self) -> None: ...

    def hide(self) -> None: ...


@dataclass(frozen=True, slots=True)
class Morning:
    """What the keeper wants: off at first."""

    is_wanted: bool = False
    at: time = _USUAL


def morning_wanted() -> Morning:
    """What was kept; what cannot be read is as at first."""
    kept = remembered().get("morning_notice")
    try:
        return Morning(True, time.fromisoformat(kept)) if isinstance(kept, str) else Morning()
    except ValueError:
        return Morning()


def keep_morning(morning: Morning) -> None:
    remember(morning_notice=morning.at.isoformat("minutes") if morning.is_wanted else None)


def notice_text(season: Season, today: date) -> str:
    """ "9 chores today, 1 overdue. First: Hatch day, Bracken."; "" if nothing is to be done."""
    due = [chore for chore in chores_between(season, today, date.fromordinal(today.toordinal() + 1)) if chore.is_open]
    overdue = overdue_chores(season, today)
    if not due and not overdue:
        return ""
    first = next((chore for chore in due if chore.urgent), (*due, *overdue)[0])
    text = say("{chores} today", chores=count_text(len(due), "chore"))
    if overdue:
        text = say("{chores}, {overdue} overdue", chores=text, overdue=len(overdue))
    return say("{chores}. First: {chore}.", chores=text, chore=first.title)


class MorningNotice(QObject):
    """Looks at the clock from time to time, and tells once a day; never twice, also after a new start."""

    def __init__(
        self,
        season: Callable[[], Season],
        now: Callable[[], datetime],
        tray: Callable[[], Tray | None],
        parent: QObject | None = None,
    ) -> None:
        """``tray`` gives the tray when it is first needed; None where the desktop has none."""
        super().__init__(parent)
        self._season, self._now, self._make_tray = season, now, tray
        self._tray: Tray | None = None
        self._timer = QTimer(self, interval=_LOOK_MS)
        self._timer.timeout.connect(self.look)
        self.follow()

    @property
    def is_on(self) -> bool:
        return self._timer.isActive()

    def follow(self) -> None:
        """Begin or end, as the keeper wants it now."""
        if not morning_wanted().is_wanted:
            self._timer.stop()
            if self._tray is not None:
                self._tray.hide()
            return
        self._tray = self._tray or self._make_tray()
        if self._tray is None:
            return
        self._tray.show()
        self._timer.start()
        self.look()

    def look(self) -> None:
        """Tell, if it is time and today nothing was told."""
        now, morning = self._now(), morning_wanted()
        today = now.date()
        if self._tray is None or not morning.is_wanted or now.time() < morning.at:
            return
        if remembered().get("morning_told") == today.isoformat():
            return
        remember(morning_told=today.isoformat())
        season = self._season()
        text = notice_text(season, today)
        if text:
            self._tray.tell(season.farm.settings.name, text)
