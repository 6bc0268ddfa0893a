"""Writes ``resources/MEASURES.md``, the page of definitions, from ``resources/husbandry/measures.csv``.

Run from the top of a checkout: ``.venv/bin/python packaging/measures_page.py``.
"""

import sys
from pathlib import Path

TOP = Path(__file__).parent.parent

if __name__ == "__main__":
    sys.path.insert(0, str(TOP))
    from quailsched.report.definitions_page import definitions_page

    (TOP / "resources" / "MEASURES.md").write_text(definitions_page(), encoding="utf-8")
