"""The farm file (one SQLite file a farm, with its history) and the JSON document of everything in it.

Opening and reading use the standard library only, so that a window is up before SQLModel is imported;
the first write imports it (``writing``, ``tables``).
"""
