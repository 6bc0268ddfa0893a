"""Quailsched: a planning tool for small keepers of quail. The layers are drawn in DEVELOPERS.md."""

__version__ = "0.1.0"
