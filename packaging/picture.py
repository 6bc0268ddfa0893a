"""Makes the picture of the README: the window on the example farm, around 6 April 2027.

Run from the top of a checkout: ``QT_QPA_PLATFORM=offscreen .venv/bin/python packaging/picture.py [OUT.png]``.
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

        from quailsched.desktop.main_window import MainWindow
        from quailsched.desktop.tasks import run_at_once
        from quailsched.desktop.theme import LIGHT, show_theme
        from quailsched.season.clashes import clashes_of
        from quailsched.session.farms import make_example

        app = QApplication([])
        show_theme(app, LIGHT)
        opened = make_example(Path(folder) / "Pebble Bank.quail", TODAY)
        window = MainWindow(opened, TODAY, run_at_once)
        window.resize(1440, 900)
        window.show()
        app.processEvents()
        floor = next(clash for clash in clashes_of(opened.season, TODAY) if clash.kind == "floor")
        window.season.canvas.show_clash(floor)
        window.say("")  # where the file lies is no matter of the picture
        app.processEvents()
        window.grab().save(str(out))


if __name__ == "__main__":
    sys.path.insert(0, str(Path(__file__).parent.parent))
    main(Path(sys.argv[1] if len(sys.argv) > 1 else "resources/pictures/season.png"))
