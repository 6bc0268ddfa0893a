"""Commands that put the season and the chores on paper or into a picture. What they look like: ``paper``.

Nothing of that is loaded before it is asked for: the window opens without it.
"""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QDialog, QFileDialog

from quailsched.desktop.paper.papers import ENDINGS, Paper, usual_paper
from quailsched.session.faults import StoreError
from quailsched.session.paths import remember, remembered
from quailsched.session.pictures import give_picture
from quailsched.words import marked, say

if TYPE_CHECKING:
    from quailsched.desktop.main_window import MainWindow
    from quailsched.desktop.paper.chore_sheet import ChoreSheet
    from quailsched.desktop.paper.season_page import SeasonPage

_FILES = (marked("A page (*.pdf)"), marked("A picture (*.png)"), marked("A drawing, sharp at any size (*.svg)"))
_SHARP = 2  # so that a picture is not blurred where it is shown larger


class PaperCommands:
    """Print, and save a picture, for one window."""

    def __init__(self, window: MainWindow) -> None:
        self._window = window

    def print_chores(self) -> None:
        """The same, with the chores chosen."""
        self.print_out(chores=True)

    def print_out(self, *, chores: bool = False) -> None:
        """Ask what and on which paper; then for the printer, or for the name of a file."""
        from quailsched.desktop.paper.print_form import PrintForm

        trial = self._window.opened.trial
        form = PrintForm(self._window, self._paper(), trial.name if trial is not None else "")
        form.choose(chores=chores)
        if form.exec() == QDialog.DialogCode.Accepted:
            remember(paper=form.paper)
            wanted = self._chores(form.weeks) if form.is_chores else self._season()
            if form.is_file:
                self._save_pdf(wanted, form.paper)
            else:
                self._window.attempt(lambda: self._to_printer(wanted, form.paper))
        form.deleteLater()

    def save_picture(self) -> None:
        """The whole season, in the lanes that are shown, as a page or a picture."""
        page = self._season()
        name = str(Path.home() / f"{page.title}{ENDINGS[0]}")
        kinds = [say(one) for one in _FILES]
        chosen, kind = QFileDialog.getSaveFileName(self._window, say("Save a picture"), name, ";;".join(kinds))
        if chosen:
            path = Path(chosen)
            ending = ENDINGS[kinds.index(kind)] if kind in kinds else ENDINGS[0]
            self._window.attempt(lambda: self._save(page, path if path.suffix else path.with_name(path.name + ending)))

    def _season(self) -> SeasonPage:
        from quailsched.desktop.paper.season_page import SeasonPage

        opened, today, canvas = self._window.opened, self._window.today, self._window.season.canvas
        trial = opened.trial.name if opened.trial is not None else ""
        return SeasonPage(opened.checked, today, today, canvas.grouping, trial)

    def _chores(self, weeks: int) -> ChoreSheet:
        """Of the plan, whatever is looked at: they go to the outside world."""
        from quailsched.desktop.paper.chore_sheet import ChoreSheet

        return ChoreSheet(self._window.opened.plan_season, self._window.today, self._window.today, weeks)

    def _paper(self) -> Paper:
        kept = remembered().get("paper")
        return Paper(kept) if kept in set(Paper) else usual_paper(self._window.opened.farm.settings.units)

    def _to_printer(self, wanted: SeasonPage | ChoreSheet, paper: Paper) -> None:
        from PySide6.QtPrintSupport import QPrintDialog, QPrinter

        from quailsched.desktop.paper.pages import print_on
        from quailsched.desktop.paper.sheet import page_layout

        printer = QPrinter(QPrinter.PrinterMode.HighResolution)
        printer.setPageLayout(page_layout(paper, wanted.is_upright))
        printer.setDocName(wanted.title)
        dialog = QPrintDialog(printer, self._window)
        if dialog.exec() == QDialog.DialogCode.Accepted:
            print_on(printer, wanted)  # on the sheets of the dialog, which may be others
            self._window.say(say("{title}: on its way to the printer.", title=wanted.title))
        dialog.deleteLater()

    def _save_pdf(self, wanted: SeasonPage | ChoreSheet, paper: Paper) -> None:
        from quailsched.desktop.paper.pages import pdf_of

        path = self._window.commands.files.ask_new_file(
            say("Save as PDF"), f"{wanted.title}.pdf", say(_FILES[0]), ".pdf"
        )
        if path is not None:
            self._window.attempt(lambda: self._give(path, pdf_of(wanted, paper), wanted.title))

    def _save(self, page: SeasonPage, path: Path) -> None:
        from quailsched.desktop.paper.give import season_file

        if path.suffix.lower() not in ENDINGS:
            known = ", ".join(ENDINGS)
            raise StoreError(
                say("{file} cannot be written: a name that ends in {known} is accepted.", file=path.name, known=known)
            )
        self._give(path, season_file(page, path.suffix.lower(), self._paper(), _SHARP), page.title)

    def _give(self, path: Path, data: bytes, title: str) -> None:
        give_picture(path, data)
        self._window.say(say("{title} is in {file}.", title=title, file=path.name))
