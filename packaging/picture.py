"""Makes the pictures: of the README, the window on the example farm around 6 April 2027; and one of each clash.

Run from the top of a checkout: ``QT_QPA_PLATFORM=offscreen .venv/bin/python packaging/picture.py [OUT.png]``, or with
``clashes`` for the pictures of ``resources/pictures/clashes``, on the farm of the tests that breaks everything at once.
"""

import os
import sys
import tempfile
from datetime import date
from pathlib import Path

TODAY = date(2027, 4, 6)


def main(out: Path) -> None:
    with tempfile.TemporaryDirectory() as folder:
        os.environ["XDG_CONFIG_HOME"] = folder
        from PySide6.QtWidgets import QApplication

        from quailsched.desktop.app import STYLE
        from quailsched.desktop.main_window import MainWindow
        from quailsched.desktop.tasks import run_at_once
        from quailsched.desktop.theme import LIGHT, show_theme
        from quailsched.season.clashes import clashes_of
        from quailsched.session.farms import make_example

        app = QApplication(list(STYLE))
        show_theme(app, LIGHT)
        opened = make_example(Path(folder) / "Pebble Bank.quail", TODAY)
        window = MainWindow(opened, TODAY, run_at_once)
        window.resize(1440, 900)
        window.show()
        while window.later.step():  # what follows the first picture of a window belongs to this one
            pass
        app.processEvents()
        floor = next(clash for clash in clashes_of(opened.season, TODAY) if clash.kind == "floor")
        window.season.canvas.show_clash(floor)
        window.say("")  # where the file lies is no matter of the picture
        for _ in range(3):  # texts that wrap take their height in the second round
            app.processEvents()
        window.grab().save(str(out))


def picture_clashes(folder_out: Path) -> None:
    """One picture for each kind: the clash picked, where it is, why, and the ways out of it."""
    with tempfile.TemporaryDirectory() as folder:
        os.environ["XDG_CONFIG_HOME"] = folder
        from PySide6.QtWidgets import QApplication

        from quailsched.desktop.app import STYLE
        from quailsched.desktop.main_window import MainWindow
        from quailsched.desktop.tasks import run_at_once
        from quailsched.desktop.theme import LIGHT, show_theme
        from quailsched.session.open_farm import OpenFarm
        from quailsched.store.farm_file import FarmFile
        from tests.builders import MONDAY, farm
        from tests.season.test_everything_breaks import CHILLY, everything

        app = QApplication(list(STYLE))
        show_theme(app, LIGHT)
        opened = OpenFarm(FarmFile.create(Path(folder) / "everything.quail", farm(*everything(), settings=CHILLY)))
        window = MainWindow(opened, MONDAY, run_at_once)
        window.resize(1000, 620)
        window.show()
        while window.later.step():
            pass
        folder_out.mkdir(parents=True, exist_ok=True)
        for clash in opened.checked.clashes:
            window.season.canvas.show_clash(clash)
            window.say("")
            for _ in range(3):  # texts that wrap take their height in the second round
                app.processEvents()
            window.grab().save(str(folder_out / f"{clash.kind}.png"))


if __name__ == "__main__":
    sys.path.insert(0, str(Path(__file__).parent.parent))
    if sys.argv[1:] == ["clashes"]:
        picture_clashes(Path("resources/pictures/clashes"))
        sys.exit()
    main(Path(sys.argv[1] if len(sys.argv) > 1 else "resources/pictures/season.png"))
