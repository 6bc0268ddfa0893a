"""Where the files that the program brings along are: figures, icons, schema, texts.

In a checkout they stand in ``resources/`` beside the package; in a wheel they are packed inside it.
"""

from __future__ import annotations

from pathlib import Path

_PACKED = Path(__file__).parent / "resources_packed"
_CHECKOUT = Path(__file__).parent.parent / "resources"
ROOT = _PACKED if _PACKED.is_dir() else _CHECKOUT


def resource(*parts: str) -> Path:
    """The path of one file. Raises FileNotFoundError if the installation lacks it."""
    path = ROOT.joinpath(*parts)
    if not path.exists():
        raise FileNotFoundError(f"this installation lacks its file {'/'.join(parts)}")
    return path
